/* similar.c - see similar.h. */
#include "shop/similar.h"

#include <string.h>

static void compare(const struct outcome *a, const struct outcome *b, struct similar *s)
{
  for (size_t i = 0; i < a->result_count; i++)
    for (size_t j = 0; j < b->result_count; j++)
      if (a->results[i].check == b->results[j].check) {
        if (a->results[i].result == b->results[j].result) s->same++;
        else s->other++;
      }
  s->likeness = (s->same + 1) / (double)(s->same + s->other + 2);
}

static bool comes_before(const struct outcomes *past, const struct similar *a, const struct similar *b)
{
  const struct outcome *x = &past->items[a->job], *y = &past->items[b->job];

  if (a->likeness != b->likeness) return a->likeness > b->likeness;
  if (x->closed != y->closed) return x->closed > y->closed;
  return strcmp(x->id, y->id) < 0;
}

size_t similar_jobs(const struct outcome *now, const struct outcomes *past, struct similar *out, size_t most)
{
  size_t count = 0;

  for (size_t i = 0; i < past->count && most > 0; i++) {
    const struct outcome *o = &past->items[i];
    struct similar s = {.job = i};
    size_t at;

    if (o->machine_class != now->machine_class || o->complaint != now->complaint || o->complaint < 0)
      continue;
    if (strcmp(o->id, now->id) == 0) continue;
    compare(now, o, &s);
    for (at = count; at > 0 && comes_before(past, &s, &out[at - 1]); at--)
      if (at < most) out[at] = out[at - 1];
    if (at < most) out[at] = s;
    if (count < most) count++;
  }
  return count;
}
