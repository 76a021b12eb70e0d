/* suspects.c - see suspects.h.
 *
 * A fault that is there may bring a finding about or stay idle in it; idle, it leaves the
 * finding to the others. Being active somewhere is what is left when being idle everywhere is
 * taken away from being there. */
#include "plan/suspects.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

enum { PAIRED = 10, PAIRS = PAIRED * (PAIRED - 1) / 2 };

/* Weights smaller than this share of all are not worth planning for. */
static const double negligible = 1e-4;

struct lay {
  struct net net;
  double *idle; /* per fault: odds that it is there and idle in all findings */
  bool unsound; /* something unsound was found */
  int fault[SUSPECTS_MAX_FAULTS]; /* places, most active first */
  double active[SUSPECTS_MAX_FAULTS], weight[SUSPECTS_MAX_FAULTS]; /* weight: of it alone */
  size_t count;
};

static bool is_unsound(const struct net_finding *f)
{
  return f->soft_sound <= 0 && f->seen[0] < 0.999;
}

static double odds(const struct net *net, int fault)
{
  return net->prior[fault] * net->bias[fault] / (1 - net->prior[fault]);
}

static double stays_sound(const struct net_finding *f, int fault)
{
  for (size_t i = 0; i < f->link_count; i++)
    if (f->links[i].fault == fault) return f->links[i].chance[0];
  return 1;
}

/* Chance that a fault that is there is idle in this finding, as far as the finding goes. */
static double idle_chance(const struct net_finding *f, double stays)
{
  return f->soft_sound > 0 ? 1 - f->soft_sound * (1 - stays) : stays;
}

/* Chance of what was seen, given exactly these faults (net.h has the model). */
static double finding_chance(const struct net_finding *f, const int *set, size_t count)
{
  double grades[NET_MAX_GRADES], sum = 0;

  if (f->soft_sound > 0) {
    sum = idle_chance(f, f->leak[0]);
    for (size_t i = 0; i < count; i++) sum *= idle_chance(f, stays_sound(f, set[i]));
    return sum;
  }
  net_grade_chances(f, set, count, grades);
  for (int g = 0; g < f->grades; g++) sum += f->seen[g] * grades[g];
  return sum;
}

/* ---- who is looked at ------------------------------------------------------------------ */

static void work_out_idle(struct lay *l)
{
  for (size_t f = 0; f < l->net.fault_count; f++) l->idle[f] = odds(&l->net, (int)f);
  for (size_t i = 0; i < l->net.finding_count; i++) {
    const struct net_finding *f = &l->net.findings[i];

    l->unsound = l->unsound || is_unsound(f);
    for (size_t j = 0; j < f->link_count; j++)
      l->idle[f->links[j].fault] *= idle_chance(f, f->links[j].chance[0]);
  }
}

/* The faults most likely to have brought something about: believed, less the chance of being
 * there and idle. */
static void pick(struct lay *l, const double *belief)
{
  for (size_t f = 0; f < l->net.fault_count; f++) {
    double active = belief[f] - (l->unsound ? (1 - belief[f]) * l->idle[f] : 0);
    size_t at = l->count;

    if (active < 1e-4) continue;
    while (at > 0 && l->active[at - 1] < active) at--;
    if (at == SUSPECTS_MAX_FAULTS) continue;
    if (l->count < SUSPECTS_MAX_FAULTS) l->count++;
    memmove(&l->fault[at + 1], &l->fault[at], (l->count - 1 - at) * sizeof l->fault[0]);
    memmove(&l->active[at + 1], &l->active[at], (l->count - 1 - at) * sizeof l->active[0]);
    l->fault[at] = (int)f;
    l->active[at] = active;
  }
}

/* ---- weights --------------------------------------------------------------------------- */

static double positive(double x) { return x > 0 ? x : 0; }

static double weight_of_none(const struct lay *l)
{
  double product = 1;

  for (size_t i = 0; i < l->net.finding_count; i++) product *= finding_chance(&l->net.findings[i], NULL, 0);
  return product;
}

/* Every fault outside a set may be there and idle, which multiplies by 1 + its idle odds. Those
 * inside do not have that, so the factor common to all sets is divided out of theirs. */
static double single_weight(const struct lay *l, int fault, double none)
{
  double there = odds(&l->net, fault);

  for (size_t i = 0; i < l->net.finding_count; i++) there *= finding_chance(&l->net.findings[i], &fault, 1);
  return l->unsound ? positive(there - l->idle[fault] * none) / (1 + l->idle[fault]) : there;
}

/* Where a fault may be active: everywhere, only out of focus, nowhere. */
enum range { ANYWHERE, BESIDE, NOWHERE, RANGES };

static bool may_act(int range, bool focus) { return range == ANYWHERE || (range == BESIDE && !focus); }

/* Weight of both being there, each active within its range at most. */
static void work_out_ranges(const struct lay *l, const int *pair, double weight[RANGES][RANGES])
{
  double both = odds(&l->net, pair[0]) * odds(&l->net, pair[1]);

  for (int x = 0; x < RANGES; x++)
    for (int y = 0; y < RANGES; y++) weight[x][y] = both;
  for (size_t i = 0; i < l->net.finding_count; i++) {
    const struct net_finding *f = &l->net.findings[i];
    double first = idle_chance(f, stays_sound(f, pair[0])), second = idle_chance(f, stays_sound(f, pair[1]));
    bool focus = f->focus && is_unsound(f);
    double chance[2][2]; /* by whether the first and the second may be active */

    chance[1][1] = finding_chance(f, pair, 2);
    chance[1][0] = finding_chance(f, pair, 1) * second;
    chance[0][1] = finding_chance(f, pair + 1, 1) * first;
    chance[0][0] = finding_chance(f, NULL, 0) * first * second;
    for (int x = 0; x < RANGES; x++)
      for (int y = 0; y < RANGES; y++) weight[x][y] *= chance[may_act(x, focus)][may_act(y, focus)];
  }
}

/* Both active somewhere within their ranges. */
static double both_active(double weight[RANGES][RANGES], enum range x, enum range y)
{
  return positive(weight[x][y] - weight[NOWHERE][y] - weight[x][NOWHERE] + weight[NOWHERE][NOWHERE]);
}

/* A fault of the pair is needed when it is active in focus; that neither is (the complaint came
 * about by itself) is left out of account. */
static struct suspect_set weigh_pair(const struct lay *l, int first, int second)
{
  struct suspect_set s = {{first, second}, 2, 0, {1, 1}};
  double weight[RANGES][RANGES], all, neither;

  work_out_ranges(l, s.place, weight);
  if (!l->unsound) {
    s.weight = weight[ANYWHERE][ANYWHERE];
    return s;
  }
  all = both_active(weight, ANYWHERE, ANYWHERE);
  neither = both_active(weight, BESIDE, BESIDE);
  s.weight = all / ((1 + l->idle[first]) * (1 + l->idle[second]));
  if (all - neither > 1e-9 * all) {
    s.needed[0] = fmin(1, positive(all - both_active(weight, BESIDE, ANYWHERE)) / (all - neither));
    s.needed[1] = fmin(1, positive(all - both_active(weight, ANYWHERE, BESIDE)) / (all - neither));
  }
  return s;
}

/* ---- the list -------------------------------------------------------------------------- */

static int by_weight(const void *x, const void *y)
{
  const struct suspect_set *a = x, *b = y;

  if (a->weight != b->weight) return a->weight > b->weight ? -1 : 1;
  if (a->place[0] != b->place[0]) return a->place[0] - b->place[0];
  return a->place[1] - b->place[1];
}

static size_t list_pairs(const struct lay *l, struct suspect_set *pairs)
{
  size_t n = 0;

  for (size_t i = 0; i < l->count && i < PAIRED; i++)
    for (size_t j = 0; j < i; j++) pairs[n++] = weigh_pair(l, l->fault[j], l->fault[i]);
  if (n > 1) qsort(pairs, n, sizeof *pairs, by_weight);
  return n;
}

static bool in_pair(const struct suspect_set *pairs, size_t count, int place)
{
  for (size_t i = 0; i < count; i++)
    if (pairs[i].place[0] == place || pairs[i].place[1] == place) return true;
  return false;
}

static void list_sets(struct lay *l, struct suspects *out)
{
  struct suspect_set pairs[PAIRS];
  size_t pair_count = list_pairs(l, pairs), room = SUSPECTS_MAX - 1 - l->count;
  double none = weight_of_none(l), all = none;

  for (size_t i = 0; i < l->count; i++) all += l->weight[i] = single_weight(l, l->fault[i], none);
  for (size_t i = 0; i < pair_count; i++) all += pairs[i].weight;
  if (pair_count > room) pair_count = room;
  while (pair_count > 0 && pairs[pair_count - 1].weight < negligible * all) pair_count--;
  out->set[0] = (struct suspect_set){.place = {-1, -1}, .weight = none};
  out->count = 1;
  for (size_t i = 0; i < l->count; i++)
    if (l->weight[i] >= negligible * all || in_pair(pairs, pair_count, l->fault[i]))
      out->set[out->count++] = (struct suspect_set){{l->fault[i], -1}, 1, l->weight[i], {1, 1}};
  out->singles = out->count - 1;
  for (size_t i = 0; i < pair_count; i++) out->set[out->count++] = pairs[i];
}

void suspects_list(struct casenet *n, const double *belief, struct suspects *out)
{
  struct lay l = {.net = casenet_view(n, n->evidence_count)};
  double sum = 0;

  memset(out, 0, sizeof *out);
  l.idle = mem_array(n->count, sizeof *l.idle);
  work_out_idle(&l);
  pick(&l, belief);
  list_sets(&l, out);
  for (size_t i = 0; i < out->count; i++) sum += out->set[i].weight;
  if (sum <= 0) { /* it takes three faults and more: each counts by its own belief */
    for (size_t i = 0; i < l.count; i++) sum += out->set[i + 1].weight = l.active[i];
    if (sum <= 0) sum = out->set[0].weight = 1;
  }
  for (size_t i = 0; i < out->count; i++) out->set[i].weight /= sum;
  free(l.idle);
}

int suspects_single(const struct suspects *s, int place)
{
  for (size_t i = 1; i <= s->singles; i++)
    if (s->set[i].place[0] == place) return (int)i;
  return -1;
}
