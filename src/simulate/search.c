/* search.c - looking at a machine until it is clear what is behind it; see job.h. */
#include <stdlib.h>
#include <string.h>

#include "simulate/job.h"

/* One history: what is thought then, and the history after each result (0: none yet). */
struct node {
  enum sim_end end; /* when check is -1 */
  int check, leading;
  double chance, minutes;
  uint32_t after[NET_MAX_GRADES];
};

struct sim_memory {
  struct node *nodes; /* 0 is nobody's */
  size_t count, most;
  uint32_t *start;    /* of each model */
};

struct sim_memory *sim_memory_new(const struct simulator *s, size_t most)
{
  struct sim_memory *m = mem_new(sizeof *m);

  *m = (struct sim_memory){.count = 1, .most = most < UINT32_MAX ? most + 1 : UINT32_MAX};
  m->nodes = mem_array(m->most, sizeof *m->nodes);
  m->start = mem_array(s->model_count, sizeof *m->start);
  return m;
}

void sim_memory_free(struct sim_memory *m)
{
  if (!m) return;
  free(m->nodes);
  free(m->start);
  free(m);
}

size_t sim_memory_count(const struct sim_memory *m) { return m->count - 1; }

void sim_bench_open(struct sim_bench *x, const struct sim_book *b, struct sim_memory *memory)
{
  *x = (struct sim_bench){.memory = memory, .ahead = sim_ahead_new(b)};
  sim_belief_room(&x->belief, b);
}

void sim_bench_close(struct sim_bench *x)
{
  sim_belief_free(&x->belief);
  sim_ahead_free(x->ahead);
}

/* ---- what to do now --------------------------------------------------------------------- */

static struct node work_out(struct sim_bench *x, enum sim_policy policy)
{
  const struct sim_belief *b = &x->belief;
  struct node n = {.check = -1, .leading = sim_leading(b)};
  struct sim_pick pick;

  x->asked++;
  n.chance = n.leading >= 0 ? sim_behind(b, n.leading) : 0;
  if (b->sum > 0 && b->none / b->sum > n.chance) {
    n.leading = -1;
    n.chance = b->none / b->sum;
  }
  if (sim_is_sound(b)) n.end = SIM_END_SOUND;
  else if (sim_found(b)) n.end = SIM_END_FOUND;
  else {
    pick = sim_choose(x->ahead, b, policy);
    n.end = SIM_END_NOTHING_PAYS;
    n.check = pick.check;
    n.minutes = pick.minutes;
  }
  return n;
}

static void tell_end(struct sim_search *out, const struct node *n)
{
  out->end = n->check < 0 ? n->end : SIM_END_CHECKS_SPENT;
  out->leading = n->leading;
  out->chance = n->chance;
}

/* One step, looked and noted; its result. */
static int look(struct sim_search *out, const struct sim_machine *machine, const struct node *n)
{
  int result = sim_result(machine, n->check);

  out->minutes += n->minutes;
  out->seen[out->steps++] = (struct sim_seen){n->check, result};
  return result;
}

/* Follows what is remembered. Returns the place where the next history is to be kept, NULL when
 * the search ended on the way. */
static uint32_t *follow(struct sim_bench *x, const struct sim_machine *machine, size_t most,
                        struct sim_search *out)
{
  struct sim_memory *m = x->memory;
  uint32_t *at = &m->start[machine->model->number];

  while (*at) {
    struct node *n = &m->nodes[*at];

    x->remembered++;
    if (n->check < 0 || out->steps == most) {
      tell_end(out, n);
      return NULL;
    }
    at = &n->after[look(out, machine, n)];
  }
  return at;
}

/* Keeps a history if there is room; where the one after each result goes, or NULL. */
static uint32_t *keep(struct sim_memory *m, uint32_t *at, const struct node *n)
{
  if (!m || !at || m->count == m->most) return NULL;
  *at = (uint32_t)m->count;
  m->nodes[m->count] = *n;
  return m->nodes[m->count++].after;
}

void sim_search(struct sim_bench *x, const struct sim_machine *machine, enum sim_policy policy,
                size_t most_checks, struct sim_search *out)
{
  size_t most = most_checks < SIM_MOST_MADE ? most_checks : SIM_MOST_MADE;
  uint32_t *at = NULL;

  out->minutes = 0;
  out->steps = 0;
  if (x->memory && !(at = follow(x, machine, most, out))) return;
  sim_start(&x->belief, machine->model);
  for (size_t i = 0; i < out->steps; i++) sim_see(&x->belief, out->seen[i].check, out->seen[i].result);
  for (;;) {
    struct node n = work_out(x, policy);
    int result;

    at = keep(x->memory, at, &n);
    if (n.check < 0 || out->steps == most) {
      tell_end(out, &n);
      return;
    }
    result = look(out, machine, &n);
    sim_see(&x->belief, n.check, result);
    if (at) at += result;
  }
}
