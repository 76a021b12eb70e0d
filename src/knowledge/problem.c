/* problem.c - see problem.h. */
#include "knowledge/problem.h"

#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"

void problem_add(struct problems *p, bool serious, const char *kind, const char *file, int line,
                 const char *format, ...)
{
  struct buf b = {0};
  struct problem *n;
  void *items = p->items;
  va_list args;

  if (serious) p->serious++;
  p->count++;
  if (p->count > PROBLEMS_KEPT) return;
  mem_grow(&items, &p->room, p->count, sizeof *p->items);
  p->items = items;
  va_start(args, format);
  buf_addv(&b, format, args);
  va_end(args);
  n = &p->items[p->count - 1];
  *n = (struct problem){.kind = kind, .line = line, .serious = serious};
  n->file = arena_text(&p->arena, file ? file : "", strlen(file ? file : ""));
  n->text = arena_text(&p->arena, buf_text(&b), b.len);
  buf_free(&b);
}

static int by_place(const void *a, const void *b)
{
  const struct problem *x = a, *y = b;
  int d = strcmp(x->file, y->file);

  if (d == 0) d = x->line - y->line;
  if (d == 0) d = strcmp(x->kind, y->kind);
  return d ? d : strcmp(x->text, y->text);
}

void problems_sort(struct problems *p)
{
  size_t kept = p->count < PROBLEMS_KEPT ? p->count : PROBLEMS_KEPT;

  if (kept > 1) qsort(p->items, kept, sizeof *p->items, by_place);
}

void problems_free(struct problems *p)
{
  free(p->items);
  arena_free(&p->arena);
  *p = (struct problems){0};
}
