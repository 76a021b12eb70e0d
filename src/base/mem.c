/* mem.c - see mem.h. */
#include "base/mem.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <sysexits.h>
#include <unistd.h>

enum { BLOCK = 64 * 1024, ALIGN = 16 };

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

void *arena_new(struct arena *a, size_t size)
{
  size_t need = size ? (size + ALIGN - 1) / ALIGN * ALIGN : ALIGN;
  struct arena_block *b = a->head;
  void *p;

  if (need < size) out_of_memory();
  if (!b || b->room - b->used < need) {
    size_t room = need > BLOCK ? need : BLOCK;

    if (room > SIZE_MAX - header()) out_of_memory();
    b = mem_new(header() + room);
    b->room = room;
    b->next = a->head;
    a->head = b;
  }
  p = (char *)b + header() + b->used;
  b->used += need;
  a->used += need;
  return p;
}

void *arena_array(struct arena *a, size_t count, size_t size)
{
  if (size && count > SIZE_MAX / size) out_of_memory();
  return arena_new(a, count * size);
}

char *arena_text(struct arena *a, const char *text, size_t len)
{
  char *p = arena_new(a, len + 1);

  memcpy(p, text, len);
  return p;
}

void arena_free(struct arena *a)
{
  while (a->head) {
    struct arena_block *next = a->head->next;

    free(a->head);
    a->head = next;
  }
  a->used = 0;
}
