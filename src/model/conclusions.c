/* conclusions.c - see conclusions.h. */
#include "model/conclusions.h"

#include <stdlib.h>

int conclusion_find(const struct conclusions *c, enum conclusion_kind kind, int a, size_t from)
{
  for (size_t i = from; i < c->count; i++)
    if (c->items[i].kind == kind && c->items[i].a == a) return (int)i;
  return -1;
}

void conclusions_free(struct conclusions *c)
{
  free(c->items);
  *c = (struct conclusions){0};
}
