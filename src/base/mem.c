/* mem.c - see mem.h. */
#include "base/mem.h"

#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <sysexits.h>
#include <unistd.h>

enum { FIRST_BLOCK = 4 * 1024, BLOCK = 64 * 1024, ALIGN = 16 };

struct arena_block {
  struct arena_block *next;
  size_t room, used;
};

static void out_of_memory(void)
{
  static const char text[] = "pullcord: out of memory; nothing recorded so far is lost\n";
  ssize_t n = write(STDERR_FILENO, text, sizeof text - 1);

  (void)n;
  _exit(EX_OSERR);
}

void *mem_new(size_t size)
{
  void *p = calloc(1, size ? size : 1);

  if (!p) out_of_memory();
  return p;
}

void *mem_array(size_t count, size_t size)
{
  if (size && count > SIZE_MAX / size) out_of_memory();
  return mem_new(count * size);
}

void mem_grow(void **items, size_t *room, size_t need, size_t size)
{
  size_t more = *room ? *room : 8;
  void *p;

  if (need <= *room) return;
  while (more < need) {
    if (more > SIZE_MAX / 2) out_of_memory();
    more *= 2;
  }
  if (size && more > SIZE_MAX / size) out_of_memory();
  p = realloc(*items, more * size);
  if (!p) out_of_memory();
  memset((char *)p + *room * size, 0, (more - *room) * size);
  *items = p;
  *room = more;
}

static size_t header(void) { return (sizeof(struct arena_block) + ALIGN - 1) / ALIGN * ALIGN; }

/* Blocks begin small, because to make them zero takes time, and double up to BLOCK. */
static size_t next_room(const struct arena *a, size_t need)
{
  size_t room = FIRST_BLOCK;

  while (room < BLOCK && (room < need || (a->head && room <= a->head->room))) room *= 2;
  return room;
}

/* Takes need bytes from a block of its own when they are many, so that the rest of the
 * current block is not lost. */
static void *from_new_block(struct arena *a, size_t need)
{
  bool own = need > BLOCK / 4;
  size_t room = own ? need : next_room(a, need);
  struct arena_block *b = a->spare;

  if (room > SIZE_MAX - header()) out_of_memory();
  if (b && b->room >= need) {
    a->spare = b->next;
  } else {
    b = mem_new(header() + room);
    b->room = room;
  }
  b->used = need;
  if (own && a->head) {
    b->next = a->head->next;
    a->head->next = b;
  } else {
    b->next = a->head;
    a->head = b;
  }
  return (char *)b + header();
}

static void *take(struct arena *a, size_t need, size_t align)
{
  struct arena_block *b = a->head;
  size_t at = b ? (b->used + align - 1) / align * align : 0;

  a->used += need;
  if (!b || at > b->room || b->room - at < need) return from_new_block(a, need);
  b->used = at + need;
  return (char *)b + header() + at;
}

void *arena_new(struct arena *a, size_t size) { return take(a, size ? size : 1, ALIGN); }

void *arena_array(struct arena *a, size_t count, size_t size)
{
  if (size && count > SIZE_MAX / size) out_of_memory();
  return arena_new(a, count * size);
}

char *arena_text(struct arena *a, const char *text, size_t len)
{
  char *p;

  if (len == SIZE_MAX) out_of_memory();
  p = take(a, len + 1, 1);
  memcpy(p, text, len);
  return p;
}

void arena_reset(struct arena *a)
{
  while (a->head) {
    struct arena_block *b = a->head;

    a->head = b->next;
    memset((char *)b + header(), 0, b->used);
    b->used = 0;
    b->next = a->spare;
    a->spare = b;
  }
  a->used = 0;
}

static void free_blocks(struct arena_block *b)
{
  while (b) {
    struct arena_block *next = b->next;

    free(b);
    b = next;
  }
}

void arena_free(struct arena *a)
{
  free_blocks(a->head);
  free_blocks(a->spare);
  *a = (struct arena){0};
}
