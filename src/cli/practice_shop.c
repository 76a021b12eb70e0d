/* practice_shop.c - machines as they come to this shop: the class by how many of its proved jobs
 * were of it, the faults by base rates that its history makes; see practice.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/random.h"
#include "cli/practice.h"
#include "shop/history.h"

static long jobs_of(const struct outcomes *o, int class)
{
  long sum = 0;

  for (size_t i = 0; i < o->count; i++)
    sum += o->items[i].confirmed && o->items[i].machine_class >= 0 &&
           (class < 0 || o->items[i].machine_class == class);
  return sum;
}

/* A class as often as its machines were proved. */
static int draw_class(const struct knowledge *k, const struct outcomes *o, uint64_t seed)
{
  double share = random_fixed(seed, "machine of this shop") * (double)jobs_of(o, -1);
  int class = 0;

  while (class + 1 < (int)k->class_count && (share -= (double)jobs_of(o, class)) >= 0) class ++;
  return class;
}

static int too_little(const char *why, struct err *e)
{
  return err_set(e, EX_NOINPUT, NULL, 0, "%s Leave --history out to practise on what is usual in the trade.",
                 why);
}

static int take(const struct practice *p, const struct history *h, struct sitting *s, struct err *e)
{
  int class = *s->machine ? knowledge_find(p->k, ENTRY_CLASS, s->machine)
                          : draw_class(p->k, &h->past, s->seed);

  if (h->jobs == 0)
    return too_little("No proved job of this shop counts (yet), or its history is switched off "
                      "(\"pullcord learned\").",
                      e);
  if (class < 0 || jobs_of(&h->past, class) == 0)
    return too_little("This shop has no proved job of such a machine.", e);
  snprintf(s->machine, sizeof s->machine, "%s", p->k->classes[class].id);
  sitting_take_rates(s, p->k, &h->chances, h->jobs);
  return 0;
}

int practice_shop(const struct practice *p, struct sitting *s, struct err *e)
{
  struct history h = {.jobs = 0};
  struct store *store = NULL;
  int status = store_open(p->state, false, &store, e);

  if (status == EX_NOINPUT) return too_little("This shop has no jobs yet.", e);
  if (status == 0) {
    status = history_learn(store, p->state, p->k, &h, e);
    if (status == 0) status = take(p, &h, s, e);
    history_free(&h);
    store_close(store);
  }
  return status;
}
