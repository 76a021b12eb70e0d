/* conclusions.c - see conclusions.h. */
#include "model/conclusions.h"

#include <stdlib.h>

int conclusion_find(const struct conclusions *c, enum conclusion_kind kind, int a, size_t from)
{
  size_t low = from, high = c->count;

  while (low < high) { /* the first that does not sort before (kind, a) */
    size_t mid = low + (high - low) / 2;
    const struct conclusion *x = &c->items[mid];

    if (x->kind < kind || (x->kind == kind && x->a < a)) low = mid + 1;
    else high = mid;
  }
  return low < c->count && c->items[low].kind == kind && c->items[low].a == a ? (int)low : -1;
}

void conclusions_free(struct conclusions *c)
{
  free(c->items);
  *c = (struct conclusions){0};
}
