/* suspects.c - see suspects.h. */
#include "plan/suspects.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

enum { PAIRED = 10, PAIRS = PAIRED * (PAIRED - 1) / 2 };

/* Weights smaller than this share of all are not worth planning for. */
static const double negligible = 1e-5;

struct lay {
  struct net net;
  double *idle; /* per fault: odds that it is there and brings about nothing of what was found */
  bool unsound; /* something unsound was found */
  double none, scale; /* joint chance with nothing there; the logarithm that all are scaled by */
  int fault[SUSPECTS_MAX_FAULTS]; /* places, most active first */
  double active[SUSPECTS_MAX_FAULTS], alone[SUSPECTS_MAX_FAULTS]; /* alone: joint chance */
  size_t count;
};

static bool is_unsound(const struct net_finding *f)
{
  return f->soft_sound <= 0 && f->seen[0] < 0.999;
}

/* Being there and idle leaves every finding to the others; a soft sound one speaks a little
 * against being there at all. */
static void work_out_idle(struct lay *l)
{
  for (size_t f = 0; f < l->net.fault_count; f++)
    l->idle[f] = l->net.prior[f] * l->net.bias[f] / (1 - l->net.prior[f]);
  for (size_t i = 0; i < l->net.finding_count; i++) {
    const struct net_finding *f = &l->net.findings[i];

    l->unsound = l->unsound || is_unsound(f);
    for (size_t j = 0; j < f->link_count; j++) {
      double stays = f->links[j].chance[0];

      l->idle[f->links[j].fault] *= f->soft_sound > 0 ? 1 - f->soft_sound * (1 - stays) : stays;
    }
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

static double positive(double x) { return x > 0 ? x : 0; }

static double joint(const struct lay *l, const int *set, size_t count)
{
  return exp(net_log_joint(&l->net, set, count) - l->scale);
}

/* The scale keeps the largest single or pair near 1. */
static void set_scale(struct lay *l)
{
  double most = net_log_joint(&l->net, NULL, 0);

  for (size_t i = 0; i < l->count; i++) {
    most = fmax(most, net_log_joint(&l->net, &l->fault[i], 1));
    for (size_t j = 0; j < i && i < PAIRED; j++) {
      int pair[2] = {l->fault[j], l->fault[i]};

      most = fmax(most, net_log_joint(&l->net, pair, 2));
    }
  }
  l->scale = isfinite(most) ? most : 0;
  l->none = joint(l, NULL, 0);
  for (size_t i = 0; i < l->count; i++) l->alone[i] = joint(l, &l->fault[i], 1);
}

static double single_weight(const struct lay *l, size_t i)
{
  return l->unsound ? positive(l->alone[i] - l->idle[l->fault[i]] * l->none) : l->alone[i];
}

static double pair_weight(const struct lay *l, size_t i, size_t j)
{
  int pair[2] = {l->fault[i], l->fault[j]};
  double x = l->idle[pair[0]], y = l->idle[pair[1]], both = joint(l, pair, 2);

  return l->unsound ? positive(both - x * l->alone[j] - y * l->alone[i] + x * y * l->none) : both;
}

/* ---- is one of a pair needed? ---------------------------------------------------------- */

static double chance_brings(const struct net_finding *f, int place)
{
  for (size_t i = 0; i < f->link_count; i++)
    if (f->links[i].fault == place) return 1 - f->links[i].chance[0];
  return 0;
}

/* The chance, for each of the pair, that it brought about something in focus. That it had part
 * in a finding that showed is its own chance over the finding's (independent causes). */
static void work_out_needed(const struct lay *l, struct suspect_set *s)
{
  double without[2] = {1, 1}, sum;

  for (size_t i = 0; i < l->net.finding_count; i++) {
    const struct net_finding *f = &l->net.findings[i];
    double grades[NET_MAX_GRADES], shows;

    if (!f->focus || !is_unsound(f)) continue;
    net_grade_chances(f, s->place, 2, grades);
    shows = 1 - grades[0];
    for (int m = 0; m < 2 && shows > 0; m++)
      without[m] *= positive(1 - chance_brings(f, s->place[m]) / shows);
  }
  s->needed[0] = 1 - without[0];
  s->needed[1] = 1 - without[1];
  sum = s->needed[0] + s->needed[1];
  if (sum <= 0) s->needed[0] = s->needed[1] = 1; /* neither is behind the complaint */
  else if (sum < 1)
    for (int m = 0; m < 2; m++) s->needed[m] /= sum;
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
    for (size_t j = 0; j < i; j++)
      pairs[n++] = (struct suspect_set){.place = {l->fault[j], l->fault[i]}, .count = 2,
                                        .weight = pair_weight(l, j, i)};
  if (n > 1) qsort(pairs, n, sizeof *pairs, by_weight);
  return n;
}

static bool in_pair(const struct suspect_set *pairs, size_t count, int place)
{
  for (size_t i = 0; i < count; i++)
    if (pairs[i].place[0] == place || pairs[i].place[1] == place) return true;
  return false;
}

static void list_sets(const struct lay *l, struct suspects *out)
{
  struct suspect_set pairs[PAIRS];
  size_t pair_count = list_pairs(l, pairs), room = SUSPECTS_MAX - 1 - l->count;
  double all = l->none;

  for (size_t i = 0; i < l->count; i++) all += single_weight(l, i);
  for (size_t i = 0; i < pair_count; i++) all += pairs[i].weight;
  if (pair_count > room) pair_count = room;
  while (pair_count > 0 && pairs[pair_count - 1].weight < negligible * all) pair_count--;
  out->set[0] = (struct suspect_set){.place = {-1, -1}, .weight = l->none};
  out->count = 1;
  for (size_t i = 0; i < l->count; i++) {
    double weight = single_weight(l, i);

    if (weight < negligible * all && !in_pair(pairs, pair_count, l->fault[i])) continue;
    out->set[out->count++] = (struct suspect_set){{l->fault[i], -1}, 1, weight, {1, 1}};
  }
  out->singles = out->count - 1;
  for (size_t i = 0; i < pair_count; i++) {
    work_out_needed(l, &pairs[i]);
    out->set[out->count++] = pairs[i];
  }
}

void suspects_list(struct casenet *n, const double *belief, struct suspects *out)
{
  struct lay l = {.net = casenet_view(n, n->evidence_count)};
  double sum = 0;

  memset(out, 0, sizeof *out);
  l.idle = mem_array(n->count, sizeof *l.idle);
  work_out_idle(&l);
  pick(&l, belief);
  set_scale(&l);
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
