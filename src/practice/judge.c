/* judge.c - see judge.h. */
#include "practice/judge.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

const double judge_near = 0.02;

bool judge_moves(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *moves,
                 size_t count, long limit, double *cost)
{
  struct planner x;
  bool exact = true;

  planner_open(&x, p, limit);
  for (size_t i = 0; i < count && exact; i++) exact = plan_exact_move(&x, s, &moves[i], &cost[i]);
  planner_close(&x);
  if (exact) return true;
  planner_open(&x, p, 1L << 40);
  for (size_t i = 0; i < count; i++) cost[i] = plan_step_move(&x, s, &moves[i], PLAN_TO_THE_END);
  planner_close(&x);
  return false;
}

/* Was this tried on the run already, without a cure? The case keeps no word of it. */
static bool tried(const struct run *r, const struct advice_step *s)
{
  for (size_t i = 0; i < r->step_count; i++) {
    const struct entry *e = &r->steps[i].entry;

    if (s->kind == ADVICE_PROVE && e->act == ACT_PROVE) return true;
    if (s->kind == ADVICE_REPAIR && e->act == ACT_REPAIR && e->at == s->at) return true;
    if (s->kind == ADVICE_REPAIR && e->act == ACT_DECLARE && e->at >= 0 &&
        r->k->faults[e->at].repair == s->at)
      return true;
    if (s->kind == ADVICE_PROVE && e->act == ACT_DECLARE && e->at == -2) return true;
  }
  return false;
}

/* The planner knows nothing of machines that do not run: what is to be seen only while they do. */
static bool can_be_done(const struct run *r, const struct advice_step *s)
{
  char why[600];

  return s->kind != ADVICE_CHECK ||
         run_possible(r, &(struct entry){.act = ACT_CHECK, .at = s->at, .sure = -1}, why, sizeof why);
}

/* At the bench, of checks that come to nearly the same the most telling one goes first. Here
 * minutes given away are counted, so the least goes first, unless rules want a check before. */
static void least_first(struct advice *a)
{
  struct advice_option o;
  size_t least = 0;

  if (a->options[0].ask_first >= 0) return;
  for (size_t i = 1; i < a->count; i++)
    if (a->options[i].held_by < 0 && a->options[i].cost < a->options[least].cost) least = i;
  o = a->options[least];
  memmove(&a->options[1], &a->options[0], least * sizeof o);
  a->options[0] = o;
}

void judge_advise(struct run *r, const bool *off, struct advice *out)
{
  size_t n = 0;

  if (r->cheap) judge_quickly(r, off, out);
  else plan_advise(&r->a.net, &r->c, &r->a.drawn, r->a.belief, off, out);
  for (size_t i = 0; i < out->count; i++)
    if (!tried(r, &out->options[i].step) && can_be_done(r, &out->options[i].step))
      out->options[n++] = out->options[i];
  if (n == 0) out->options[n++].step = (struct advice_step){ADVICE_GIVE_UP, -1};
  out->count = n;
  if (r->cheap && !can_be_done(r, &r->ahead)) r->ahead = out->options[0].step;
  if (!r->cheap) least_first(out);
  out->cost = out->options[0].cost;
}

static const struct advice_option *option_of(const struct advice *a, enum advice_kind kind, int at)
{
  for (size_t i = 0; i < a->count; i++)
    if (a->options[i].step.kind == kind && a->options[i].step.at == at) return &a->options[i];
  return NULL;
}

/* The planner's word for what the entry does; a fault that is declared is its repair. */
static enum advice_kind kind_of(const struct run *r, const struct entry *entry, int *at)
{
  *at = entry->at;
  switch (entry->act) {
  case ACT_CHECK: return ADVICE_CHECK;
  case ACT_REPAIR: return ADVICE_REPAIR;
  case ACT_DECLARE:
    *at = entry->at >= 0 ? r->k->faults[entry->at].repair : -1;
    return entry->at >= 0 ? ADVICE_REPAIR : ADVICE_PROVE;
  case ACT_GIVE_UP: *at = -1; return ADVICE_GIVE_UP;
  default: *at = -1; return ADVICE_PROVE;
  }
}

/* A cover that comes off now: its minutes, and the job as it is with it off. */
static double cost_open(const struct run *r, int cover, double minutes)
{
  struct run *same = mem_new(sizeof *same);
  struct refs one = {.at = &cover, .count = 1};
  bool *before = mem_array(r->k->cover_count, sizeof *before);
  struct advice then;

  *same = *r;
  memcpy(before, r->c.off, r->k->cover_count * sizeof *before);
  case_take_off(&same->c, r->k, &one);
  judge_advise(same, same->c.off, &then);
  minutes += then.cost;
  advice_free(&then);
  memcpy(same->c.off, before, r->k->cover_count * sizeof *before);
  free(before);
  free(same);
  return minutes;
}

/* Least cost of any option; the first is not the least when rules want a check made first. */
static double least(const struct advice *a)
{
  double cost = a->options[0].cost;

  for (size_t i = 1; i < a->count; i++) cost = fmin(cost, a->options[i].cost);
  return cost;
}

static bool is_advised(const struct advice *a, enum advice_kind kind, int at)
{
  const struct advice_step *s = &a->options[0].step;

  if (s->kind == kind && s->at == at) return true;
  /* there is nothing to be found behind what is not listed: then one may as well stop */
  return s->kind == ADVICE_LOOK_FURTHER && kind == ADVICE_GIVE_UP;
}

static double own_minutes(const struct run *r, const struct advice_step *s)
{
  static const enum act act[] = {ACT_CHECK, ACT_REPAIR, ACT_PROVE, ACT_PROVE, ACT_GIVE_UP};
  double parts;

  if (s->kind == ADVICE_LOOK_FURTHER) return knowledge_setting(r->k, "look-further", 120);
  return run_minutes(r, &(struct entry){.act = act[s->kind], .at = s->at}, &parts);
}

void judge_entry(const struct run *r, const struct entry *entry, struct step_worth *out)
{
  const struct advice *a = &r->advice;
  int at;
  enum advice_kind kind = kind_of(r, entry, &at);
  const struct advice_option *o = entry->act == ACT_OPEN ? NULL : option_of(a, kind, at);
  double parts, minutes = run_minutes(r, entry, &parts);

  minutes += parts / knowledge_setting(r->k, "shop-rate", 0.7);
  *out = (struct step_worth){
      .best = least(a), .better = a->options[0].step, .better_minutes = own_minutes(r, &a->options[0].step)};
  if (entry->act == ACT_OPEN) out->chosen = cost_open(r, entry->at, minutes);
  else if (o) out->chosen = o->cost;
  else if (kind == ADVICE_GIVE_UP) out->chosen = a->give_up_cost;
  else out->chosen = out->best + minutes;
  /* what is declared but not worth its repair is told to the owner, not repaired */
  if (entry->act == ACT_DECLARE && entry->at >= 0) out->chosen = fmin(out->chosen, a->give_up_cost);
  /* whatever it tells can be left unused, so no step gives away more than it costs */
  if (entry->act != ACT_GIVE_UP)
    out->chosen = fmin(out->chosen, out->best + minutes + run_refit_minutes(r, entry));
  if (entry->act != ACT_OPEN && is_advised(a, kind, at)) out->chosen = fmin(out->chosen, out->best);
  out->regret = fmax(0, out->chosen - out->best);
  out->right = out->regret <= judge_near * out->best;
}
