/* similar.c - see similar.h. */
#include "shop/similar.h"

#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

/* Same class, same complaint, another job? */
static bool is_like(const struct outcome *now, const struct outcome *past)
{
  return past->machine_class == now->machine_class && past->complaint == now->complaint &&
         past->complaint >= 0 && strcmp(past->id, now->id) != 0;
}

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

    if (!is_like(now, o)) continue;
    compare(now, o, &s);
    for (at = count; at > 0 && comes_before(past, &s, &out[at - 1]); at--)
      if (at < most) out[at] = out[at - 1];
    if (at < most) out[at] = s;
    if (count < most) count++;
  }
  return count;
}

/* The most frequent causes, of a count per fault. */
static void list_causes(const size_t *times, size_t faults, struct similar_sum *out)
{
  for (size_t f = 0; f < faults; f++) {
    size_t at = out->cause_count;

    if (times[f] == 0) continue;
    for (; at > 0 && times[f] > out->causes[at - 1].times; at--)
      if (at < SIMILAR_CAUSES) out->causes[at] = out->causes[at - 1];
    if (at < SIMILAR_CAUSES) out->causes[at] = (struct similar_cause){(int)f, times[f]};
    if (out->cause_count < SIMILAR_CAUSES) out->cause_count++;
  }
}

void similar_sum(const struct knowledge *k, const struct outcome *now, const struct outcomes *past,
                 struct similar_sum *out)
{
  size_t *times = mem_array(k->fault_count + 1, sizeof *times);

  *out = (struct similar_sum){0};
  for (size_t i = 0; i < past->count; i++) {
    const struct outcome *o = &past->items[i];

    if (!is_like(now, o)) continue;
    out->jobs++;
    if (o->ending >= 0 && o->ending < SIMILAR_ENDINGS) out->endings[o->ending]++;
    out->proved += o->confirmed;
    for (size_t f = 0; o->confirmed && f < o->fault_count; f++) times[o->faults[f]]++;
  }
  list_causes(times, k->fault_count, out);
  free(times);
}
