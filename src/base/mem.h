/* mem.h - memory that is given back all at once, and checked growth. */
#ifndef BASE_MEM_H
#define BASE_MEM_H

#include <stddef.h>

/* When memory runs out there is nothing useful left to do: these functions say so
 * on standard error without allocating and end the program with status 71
 * (EX_OSERR). Whatever was recorded before is on disk already. */

/* size bytes, zeroed; size 0 counts as 1. The caller frees. */
void *mem_new(size_t size);

/* count * size bytes with the product checked, zeroed. The caller frees. */
void *mem_array(size_t count, size_t size);

/* Grows *items (of *room elements of `size` bytes) so that it holds `need`.
 * New elements are zeroed. */
void mem_grow(void **items, size_t *room, size_t need, size_t size);

/* An arena: pieces are allocated one by one and freed together. */
struct arena {
  struct arena_block *head, *spare; /* in use, the current one first; kept from before a reset */
  size_t used;                      /* bytes of the pieces handed out so far */
};

void *arena_new(struct arena *a, size_t size);                   /* zeroed, aligned to 16 */
void *arena_array(struct arena *a, size_t count, size_t size);   /* zeroed, product checked */
char *arena_text(struct arena *a, const char *text, size_t len); /* copy, with an end mark; not aligned */
void arena_reset(struct arena *a); /* all pieces are given back; memory stays for the next ones */
void arena_free(struct arena *a);

#endif
