/* next.c - see next.h. */
#include "plan/next.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

enum { MOST_FAULTS = 40, MOST_HYPOTHESES = 1 + MOST_FAULTS };

/* Belief from which a check that a rule wants first comes before all others. */
static const double good_as_taken = 0.5;

/* Everything the look-ahead needs, laid out once. Hypothesis 0 is that nothing broken is
 * behind it, hypothesis i + 1 that fault[i] is. */
struct ahead {
  struct casenet *n;
  const struct knowledge *k;
  double prove_sound; /* minutes of a proof run that shows a sound machine to be sound */
  double weight[MOST_HYPOTHESES];
  size_t count;
  int fault[MOST_FAULTS]; /* places in the casenet of the faults that matter */
  double cost[MOST_FAULTS];
  size_t fault_count;
  int *place;                 /* index into fault[] of a place in the casenet, -1 */
  int order[MOST_FAULTS];     /* of repair by the weights last looked at */
  int start[MOST_FAULTS];     /* the order now: after one result it is nearly right, so sorting from it is short */
};

static double cover_minutes(const struct knowledge *k, const struct bench_case *c, int cover, bool *seen)
{
  double sum = 0;

  for (; cover >= 0 && !seen[cover]; cover = k->covers[cover].under) {
    size_t open;

    seen[cover] = true;
    if (!c->off[cover] && case_needs(c, &k->covers[cover].needs, &open) != TRI_LACKS)
      sum += k->covers[cover].minutes_off + k->covers[cover].minutes_on;
  }
  return sum;
}

double plan_minutes(const struct knowledge *k, const struct bench_case *c, double own,
                    const struct refs *off)
{
  bool *seen;

  if (off->count == 0) return own;
  seen = mem_array(k->cover_count, sizeof *seen);
  for (size_t i = 0; i < off->count; i++) own += cover_minutes(k, c, off->at[i], seen);
  free(seen);
  return own;
}

static double repair_cost(const struct knowledge *k, const struct bench_case *c, int fault)
{
  const struct repair *r;

  if (fault < 0) return knowledge_setting(k, "look-further", 120);
  r = &k->repairs[k->faults[fault].repair];
  return plan_minutes(k, c, r->minutes, &r->off) + r->parts_cost / knowledge_setting(k, "shop-rate", 0.7);
}

/* Less than this behind the trouble, a fault is not planned for. */
static const double least_blame = 1e-3;

static void pick_faults(struct ahead *a, const struct bench_case *c, const double *blame)
{
  for (size_t f = 0; f < a->n->count; f++) {
    size_t at = a->fault_count;

    a->place[f] = -1;
    if (blame[f] < least_blame) continue;
    while (at > 0 && blame[a->fault[at - 1]] < blame[f]) at--; /* highest first */
    if (at == MOST_FAULTS) continue;
    if (a->fault_count < MOST_FAULTS) a->fault_count++;
    memmove(&a->fault[at + 1], &a->fault[at], (a->fault_count - 1 - at) * sizeof a->fault[0]);
    a->fault[at] = (int)f;
  }
  for (size_t i = 0; i < a->fault_count; i++) {
    a->place[a->fault[i]] = (int)i;
    a->cost[i] = repair_cost(a->k, c, a->n->fault_of[a->fault[i]]);
  }
}

/* Weights of the hypotheses, made to add to 1. */
static void list_hypotheses(struct ahead *a, const double *blame, double sound)
{
  double sum = a->weight[0] = sound;

  a->count = 1 + a->fault_count;
  for (size_t i = 0; i < a->fault_count; i++) sum += a->weight[i + 1] = blame[a->fault[i]];
  for (size_t i = 0; sum > 0 && i < a->count; i++) a->weight[i] /= sum;
}

/* Expected minutes to repair in the order of chance over cost. Unnormalised: the result is
 * weighted by the sum of the weights too. *first is the fault repaired first (index into
 * fault[]). */
static double expected_cost(struct ahead *a, const double *weight, int *first)
{
  const double *chance = weight + 1;
  double left = 0, total = weight[0] * a->prove_sound;

  for (size_t i = 0; i < a->fault_count; i++) {
    int x = a->start[i];
    size_t j = i;

    left += chance[x];
    for (; j > 0 && chance[x] * a->cost[a->order[j - 1]] > chance[a->order[j - 1]] * a->cost[x]; j--)
      a->order[j] = a->order[j - 1];
    a->order[j] = x;
  }
  for (size_t i = 0; i < a->fault_count; i++) {
    total += left * a->cost[a->order[i]];
    left -= chance[a->order[i]];
  }
  if (first) *first = a->fault_count ? a->order[0] : -1;
  return total;
}

/* What leads when the hypotheses weigh so. */
static void leading(const struct ahead *a, const double *weight, double sum, struct next_outcome *o)
{
  double best = weight[0];

  o->fault = NEXT_NOTHING_BROKEN;
  for (size_t i = 0; i < a->fault_count; i++)
    if (weight[i + 1] > best) {
      best = weight[i + 1];
      o->fault = a->n->fault_of[a->fault[i]];
    }
  o->belief = sum > 0 ? best / sum : 0;
}

/* Weight of every hypothesis after each result. */
static void split_weights(const struct ahead *a, const struct net_finding *f,
                          double weight[NET_MAX_GRADES][MOST_HYPOTHESES])
{
  for (size_t i = 0; i < a->count; i++)
    for (int g = 0; g < f->grades; g++) weight[g][i] = a->weight[i] * f->leak[g];
  for (size_t l = 0; l < f->link_count; l++) {
    int p = a->place[f->links[l].fault];
    double leak = 0, own = 0, before = 0;

    if (p < 0) continue;
    for (int g = 0; g < f->grades; g++) {
      double cdf = (leak += f->leak[g]) * (own += f->links[l].chance[g]);

      weight[g][p + 1] = a->weight[p + 1] * (cdf - before);
      before = cdf;
    }
  }
}

/* Does any fault that matters show in it? What none shows in can save nothing. What is not
 * listed shows a little in everything. */
static bool tells(const struct ahead *a, int check)
{
  size_t first, last;

  if (a->place[a->n->count - 1] >= 0) return true;
  knowledge_signs_of_check(a->k, check, &first, &last);
  for (size_t i = first; i < last; i++) {
    int p = a->n->place_of[a->k->signs[i].fault];

    if (p >= 0 && a->place[p] >= 0) return true;
  }
  return false;
}

/* What making this check would save, and what its results lead to. */
static void look_ahead(struct ahead *a, const struct net_finding *f, double now, struct next_step *s)
{
  double weight[NET_MAX_GRADES][MOST_HYPOTHESES], after = 0;

  split_weights(a, f, weight);
  s->outcome_count = f->grades;
  for (int g = 0; g < f->grades; g++) {
    struct next_outcome *o = &s->outcomes[g];

    o->result = g;
    o->chance = 0;
    for (size_t i = 0; i < a->count; i++) o->chance += weight[g][i];
    after += expected_cost(a, weight[g], NULL);
    leading(a, weight[g], o->chance, o);
  }
  s->saving = now - after;
}

static bool wanted(const struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
                   int check)
{
  size_t open;

  if (case_result_of(c, check) || n->k->checks[check].out_of_reach) return false;
  if (conclusion_find(drawn, RULES_OUT_CHECK, check, 0) >= 0) return false;
  if (case_needs(c, &n->k->checks[check].needs, &open) == TRI_LACKS) return false;
  if (conclusion_find(drawn, UNSAFE, check, 0) >= 0) return false;
  return conclusion_find(drawn, POINTLESS, check, 0) < 0;
}

/* The rule that wants this check made before a fault that is as good as taken is repaired,
 * or -1. */
static int asked_first(const struct ahead *a, const struct conclusions *drawn, const double *belief, int check)
{
  for (int i = conclusion_find(drawn, ASK_FIRST, check, 0); i >= 0;
       i = conclusion_find(drawn, ASK_FIRST, check, (size_t)i + 1))
    if (a->n->place_of[drawn->items[i].b] >= 0 && belief[a->n->place_of[drawn->items[i].b]] >= good_as_taken)
      return drawn->items[i].rule;
  return -1;
}

static int better(const void *x, const void *y)
{
  const struct next_step *a = x, *b = y;
  double ra = a->per_minute, rb = b->per_minute;

  if ((a->ask_first >= 0) != (b->ask_first >= 0)) return a->ask_first >= 0 ? -1 : 1;
  if (ra != rb) return ra > rb ? -1 : 1;
  return a->check - b->check;
}

void next_plan(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
               const double *belief, const double *blame, double sound, struct next_plan *out)
{
  struct ahead *a = mem_new(sizeof *a);
  double turn = knowledge_setting(n->k, "turn-minutes", 0);
  int first;

  *out = (struct next_plan){.repair_first = -1};
  a->n = n;
  a->k = n->k;
  a->prove_sound = knowledge_setting(n->k, "prove-sound", 10);
  a->place = mem_array(n->count, sizeof *a->place);
  pick_faults(a, c, blame);
  list_hypotheses(a, blame, sound);
  for (size_t i = 0; i < a->fault_count; i++) a->start[i] = (int)i;
  out->cost_now = expected_cost(a, a->weight, &first);
  memcpy(a->start, a->order, sizeof a->start);
  if (first >= 0) out->repair_first = n->fault_of[a->fault[first]];
  for (size_t i = 0; i < n->k->check_count; i++) {
    const struct check *check = &n->k->checks[i];
    struct next_step s = {.check = (int)i};
    struct net_finding f;
    void *items = out->steps;

    if (!wanted(n, c, drawn, (int)i)) continue;
    s.ask_first = asked_first(a, drawn, belief, (int)i);
    if (s.ask_first < 0 && !tells(a, (int)i)) continue;
    casenet_finding(n, (int)i, &f);
    s.minutes = plan_minutes(n->k, c, check->minutes, &check->off);
    look_ahead(a, &f, out->cost_now, &s);
    s.to_end = out->cost_now - s.saving + s.minutes + turn;
    s.per_minute = s.saving / (s.minutes + turn);
    if (s.saving <= s.minutes + turn && s.ask_first < 0) continue;
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->steps);
    out->steps = items;
    out->steps[out->count++] = s;
  }
  if (out->count > 1) qsort(out->steps, out->count, sizeof *out->steps, better);
  free(a->place);
  free(a);
}

void next_free(struct next_plan *p)
{
  free(p->steps);
  *p = (struct next_plan){0};
}
