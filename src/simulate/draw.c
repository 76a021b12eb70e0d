/* draw.c - see draw.h. */
#include "simulate/draw.h"

#include <stdlib.h>
#include <string.h>

#include "base/random.h"

void sim_machine_room(struct sim_machine *x, const struct sim_book *b)
{
  *x = (struct sim_machine){.there = mem_array(b->fault_count, sizeof *x->there)};
}

void sim_machine_free(struct sim_machine *x)
{
  free(x->there);
  *x = (struct sim_machine){0};
}

const struct sim_model *sim_pick_model(const struct simulator *s, int machine_class, double share)
{
  const struct sim_model *m = s->models + s->first[machine_class], *last = s->models + s->first[machine_class + 1];
  double sum = 0;

  if (m == last) return NULL;
  for (const struct sim_model *x = m; x < last; x++) sum += x->chance;
  for (share *= sum; m + 1 < last && share >= m->chance; m++) share -= m->chance;
  return m;
}

/* The faults are asked in turn. Until one was found to lead to the complaint, each does so with
 * its chance given that this one, a later one or nothing listed must; after that with its plain
 * chance. One number serves for both questions: does it lead there, and if not, is it there? */
void sim_draw(struct sim_machine *x, const struct sim_model *m, uint64_t seed)
{
  struct random r = {seed};
  size_t count = m->book->fault_count;

  x->model = x->drawn = m;
  x->seed = seed;
  x->behind_count = 0;
  for (size_t f = 0; f < count; f++) {
    double share = random_unit(&r), active = m->active[f];

    if (x->behind_count == 0 && active > 0) active /= m->later[f];
    if (share < active && x->behind_count < SIM_MOST_BEHIND) {
      x->behind[x->behind_count++] = (int)f;
      x->there[f] = true;
    } else {
      x->there[f] = share - active < m->idle[f] * (1 - active);
    }
  }
}

int sim_result(const struct sim_machine *x, int check)
{
  const struct sim_check *c = &x->drawn->book->checks[check];
  const struct sim_link *links = x->drawn->book->links;
  struct random r = {x->seed * UINT64_C(0xD1342543DE82EF95) + c->name};
  double upto[NET_MAX_GRADES], share = random_unit(&r);

  memcpy(upto, c->leak_upto, sizeof upto);
  for (size_t l = c->first; l < c->last; l++)
    if (x->there[links[l].fault])
      for (int g = 0; g < c->grades; g++) upto[g] *= links[l].upto[g];
  for (int g = 0; g + 1 < c->grades; g++)
    if (share < upto[g]) return g;
  return c->grades - 1;
}

bool sim_repair(struct sim_machine *x, int repair)
{
  const struct sim_book *b = x->model->book;
  size_t left = 0, before = x->behind_count;

  for (size_t f = 0; f < b->fault_count; f++)
    if (b->repair[f] == repair) x->there[f] = false;
  for (size_t i = 0; i < before; i++)
    if (x->there[x->behind[i]]) x->behind[left++] = x->behind[i];
  x->behind_count = left;
  return before > 0 && left == 0;
}
