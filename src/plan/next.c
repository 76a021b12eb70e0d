/* next.c - see next.h. */
#include "plan/next.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

enum { MOST_SINGLE = 40, MOST_PAIRED = 8, MOST_HYPOTHESES = 1 + MOST_SINGLE + MOST_PAIRED * (MOST_PAIRED - 1) / 2 };

/* Minutes that are spent when nothing listed is to blame: strip and look further. */
static const double look_further = 120;
/* Minutes of a proof run that shows a sound machine to be sound. */
static const double prove_sound = 10;

/* Belief from which a check that a rule wants first comes before all others. */
static const double good_as_taken = 0.5;

/* A set of faults that may be present, with its chance given the evidence. */
struct hypothesis { int set[2]; size_t count; double weight; };

/* Everything the look-ahead needs, laid out once. */
struct ahead {
  struct casenet *n;
  const struct knowledge *k;
  struct hypothesis h[MOST_HYPOTHESES];
  size_t count;
  int fault[MOST_SINGLE]; /* places in the casenet of the faults that matter */
  double cost[MOST_SINGLE];
  size_t fault_count;
  int *place;                 /* index into fault[] of a place in the casenet, -1 */
  double chance[MOST_SINGLE]; /* scratch of expected_cost */
  int order[MOST_SINGLE];
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
  bool *seen = mem_array(k->cover_count, sizeof *seen);

  for (size_t i = 0; i < off->count; i++) own += cover_minutes(k, c, off->at[i], seen);
  free(seen);
  return own;
}

static double repair_cost(const struct knowledge *k, const struct bench_case *c, int fault)
{
  const struct repair *r;

  if (fault < 0) return look_further;
  r = &k->repairs[k->faults[fault].repair];
  return plan_minutes(k, c, r->minutes, &r->off) + r->parts_cost / knowledge_setting(k, "shop-rate", 0.7);
}

static void pick_faults(struct ahead *a, const struct bench_case *c, const double *belief)
{
  for (size_t f = 0; f < a->n->count; f++) {
    size_t at = a->fault_count;

    if (belief[f] < 1e-4) continue;
    while (at > 0 && belief[a->fault[at - 1]] < belief[f]) at--; /* highest first */
    if (at == MOST_SINGLE) continue;
    if (a->fault_count < MOST_SINGLE) a->fault_count++;
    memmove(&a->fault[at + 1], &a->fault[at], (a->fault_count - 1 - at) * sizeof a->fault[0]);
    a->fault[at] = (int)f;
  }
  for (size_t f = 0; f < a->n->count; f++) a->place[f] = -1;
  for (size_t i = 0; i < a->fault_count; i++) {
    a->place[a->fault[i]] = (int)i;
    a->cost[i] = repair_cost(a->k, c, a->n->fault_of[a->fault[i]]);
  }
}

static void add_hypothesis(struct ahead *a, const struct net *net, int x, int y)
{
  struct hypothesis *h = &a->h[a->count++];

  h->count = 0;
  if (x >= 0) h->set[h->count++] = x;
  if (y >= 0) h->set[h->count++] = y;
  h->weight = net_log_joint(net, h->set, h->count);
}

/* Nothing, each single fault, and pairs of the leading ones; weights made to add to 1. */
static void list_hypotheses(struct ahead *a)
{
  struct net net = casenet_view(a->n, a->n->evidence_count);
  size_t paired = a->fault_count < MOST_PAIRED ? a->fault_count : MOST_PAIRED;
  double most = -HUGE_VAL, sum = 0;

  add_hypothesis(a, &net, -1, -1);
  for (size_t i = 0; i < a->fault_count; i++) add_hypothesis(a, &net, a->fault[i], -1);
  for (size_t i = 0; i < paired; i++)
    for (size_t j = 0; j < i; j++) add_hypothesis(a, &net, a->fault[i], a->fault[j]);
  for (size_t i = 0; i < a->count; i++) most = fmax(most, a->h[i].weight);
  for (size_t i = 0; i < a->count; i++) sum += a->h[i].weight = exp(a->h[i].weight - most);
  for (size_t i = 0; i < a->count; i++) a->h[i].weight /= sum;
}

/* Expected minutes to repair in the order of chance over cost, for hypotheses of total
 * weight `sum`; a hypothesis of two faults counts half for each. Unnormalised: the result
 * is weighted by `sum` too. *first is the fault repaired first (index into fault[]). */
static double expected_cost(struct ahead *a, const double *weight, int *first)
{
  double left = 0, total = weight[0] * prove_sound;

  for (size_t i = 0; i < a->fault_count; i++) {
    a->chance[i] = weight[i + 1];
    a->order[i] = (int)i;
  }
  for (size_t i = 1 + a->fault_count; i < a->count; i++)
    for (int s = 0; s < 2; s++) a->chance[a->place[a->h[i].set[s]]] += weight[i] / 2;
  for (size_t i = 0; i < a->fault_count; i++) left += a->chance[i];
  for (size_t i = 1; i < a->fault_count; i++) { /* insertion sort: nearly in order already */
    int x = a->order[i];
    size_t j = i;

    for (; j > 0 && a->chance[x] * a->cost[a->order[j - 1]] > a->chance[a->order[j - 1]] * a->cost[x]; j--)
      a->order[j] = a->order[j - 1];
    a->order[j] = x;
  }
  for (size_t i = 0; i < a->fault_count; i++) {
    total += left * a->cost[a->order[i]];
    left -= a->chance[a->order[i]];
  }
  if (first) *first = a->fault_count ? a->order[0] : -1;
  return total;
}

/* What leads when the hypotheses weigh so. */
static void leading(struct ahead *a, const double *weight, double sum, struct next_outcome *o)
{
  double best = weight[0];

  o->fault = NEXT_NOTHING_BROKEN;
  for (size_t i = 0; i < a->fault_count; i++) a->chance[i] = weight[i + 1];
  for (size_t i = 1 + a->fault_count; i < a->count; i++)
    for (int s = 0; s < 2; s++) a->chance[a->place[a->h[i].set[s]]] += weight[i];
  for (size_t i = 0; i < a->fault_count; i++)
    if (a->chance[i] > best) {
      best = a->chance[i];
      o->fault = a->n->fault_of[a->fault[i]];
    }
  o->belief = sum > 0 ? best / sum : 0;
}

static void running_sum(const double *chance, int grades, double *out)
{
  double sum = 0;

  for (int g = 0; g < grades; g++) out[g] = sum += chance[g];
}

/* Weight of every hypothesis after each result. Only the faults of the hypotheses matter,
 * so their links are looked up once. */
static void split_weights(const struct ahead *a, const struct net_finding *f,
                          double weight[NET_MAX_GRADES][MOST_HYPOTHESES])
{
  double leak[NET_MAX_GRADES], sum[MOST_SINGLE][NET_MAX_GRADES];
  bool touched[MOST_SINGLE] = {false};

  running_sum(f->leak, f->grades, leak);
  for (size_t i = 0; i < f->link_count; i++) {
    int p = a->place[f->links[i].fault];

    if (p < 0) continue;
    touched[p] = true;
    running_sum(f->links[i].chance, f->grades, sum[p]);
  }
  for (size_t i = 0; i < a->count; i++) {
    double before = 0;

    for (int g = 0; g < f->grades; g++) {
      double cdf = leak[g];

      for (size_t s = 0; s < a->h[i].count; s++) {
        int p = a->place[a->h[i].set[s]];

        if (touched[p]) cdf *= sum[p][g];
      }
      weight[g][i] = a->h[i].weight * (cdf - before);
      before = cdf;
    }
  }
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

  if (case_result_of(c, check)) return false;
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
  double ra = a->saving / a->minutes, rb = b->saving / b->minutes;

  if ((a->ask_first >= 0) != (b->ask_first >= 0)) return a->ask_first >= 0 ? -1 : 1;
  if (ra != rb) return ra > rb ? -1 : 1;
  return a->check - b->check;
}

void next_plan(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
               const double *belief, struct next_plan *out)
{
  struct ahead *a = mem_new(sizeof *a);
  double weight[MOST_HYPOTHESES];
  int first;

  *out = (struct next_plan){.repair_first = -1};
  a->n = n;
  a->k = n->k;
  a->place = mem_array(n->count, sizeof *a->place);
  pick_faults(a, c, belief);
  list_hypotheses(a);
  for (size_t i = 0; i < a->count; i++) weight[i] = a->h[i].weight;
  out->cost_now = expected_cost(a, weight, &first);
  if (first >= 0) out->repair_first = n->fault_of[a->fault[first]];
  for (size_t i = 0; i < n->k->check_count; i++) {
    const struct check *check = &n->k->checks[i];
    struct next_step s = {.check = (int)i};
    struct net_finding f;
    void *items = out->steps;

    if (!wanted(n, c, drawn, (int)i)) continue;
    casenet_finding(n, (int)i, &f);
    s.minutes = plan_minutes(n->k, c, check->minutes, &check->off);
    look_ahead(a, &f, out->cost_now, &s);
    s.ask_first = asked_first(a, drawn, belief, (int)i);
    if (s.saving <= s.minutes && s.ask_first < 0) continue;
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
