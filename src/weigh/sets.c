/* sets.c - see sets.h. */
#include "weigh/sets.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

/* What a set weighs, from tables made once: per candidate its prior odds, and per finding
 * the running chances of its grades. */
struct scale {
  const struct net *net;
  const int *candidates;
  size_t count;
  double none;      /* log chance that no fault is there */
  double *odds;     /* log of prior over its complement, with the bias */
  double *sums;     /* [finding][candidate][grade]: chance of at most this grade; < 0: no link */
};

static double *sums_of(const struct scale *s, size_t finding, size_t candidate)
{
  return s->sums + (finding * s->count + candidate) * NET_MAX_GRADES;
}

static void make_scale(struct scale *s)
{
  const struct net *net = s->net;

  s->odds = mem_array(s->count + 1, sizeof *s->odds);
  s->sums = mem_array((net->finding_count * s->count + 1) * NET_MAX_GRADES, sizeof *s->sums);
  for (size_t f = 0; f < net->fault_count; f++) s->none += log(1 - net->prior[f]);
  for (size_t c = 0; c < s->count; c++) {
    int f = s->candidates[c];

    s->odds[c] = log(net->prior[f] * (net->bias ? net->bias[f] : 1)) - log(1 - net->prior[f]);
  }
  for (size_t i = 0; i < net->finding_count; i++)
    for (size_t c = 0; c < s->count; c++) {
      double *sums = sums_of(s, i, c), sum = 0;

      sums[0] = -1;
      for (size_t l = 0; l < net->findings[i].link_count; l++)
        if (net->findings[i].links[l].fault == s->candidates[c])
          for (int g = 0; g < net->findings[i].grades; g++)
            sums[g] = sum += net->findings[i].links[l].chance[g];
    }
}

/* Log joint of a set given as candidate numbers. */
static double weigh_set(const struct scale *s, const int *set, size_t count)
{
  double total = s->none;

  for (size_t j = 0; j < count; j++) total += s->odds[set[j]];
  for (size_t i = 0; i < s->net->finding_count; i++) {
    const struct net_finding *f = &s->net->findings[i];
    double chance = 0, leak = 0, before = 0, soft = 1 - f->soft_sound * (1 - f->leak[0]);

    for (int g = 0; g < f->grades; g++) {
      double cdf = leak += f->leak[g];

      for (size_t j = 0; j < count; j++) {
        const double *sums = sums_of(s, i, (size_t)set[j]);

        if (sums[0] >= 0) cdf *= sums[g];
      }
      chance += f->seen[g] * (cdf - before);
      before = cdf;
    }
    for (size_t j = 0; f->soft_sound > 0 && j < count; j++) {
      const double *sums = sums_of(s, i, (size_t)set[j]);

      if (sums[0] >= 0) soft *= 1 - f->soft_sound * (1 - sums[0]);
    }
    total += log(f->soft_sound > 0 ? soft : chance);
  }
  return total;
}

static int better(const void *x, const void *y)
{
  const struct fault_set *a = x, *b = y;

  if (a->log_joint != b->log_joint) return a->log_joint > b->log_joint ? -1 : 1;
  if (a->count != b->count) return a->count < b->count ? -1 : 1;
  return memcmp(a->fault, b->fault, sizeof a->fault);
}

/* Every set of the level grown by every candidate behind its last one. */
static size_t grow(const struct scale *s, const struct fault_set *level, size_t level_count,
                   struct fault_set *out)
{
  size_t n = 0;

  for (size_t i = 0; i < level_count; i++) {
    int from = level[i].count ? level[i].fault[level[i].count - 1] + 1 : 0;

    for (int c = from; c < (int)s->count; c++) {
      struct fault_set *x = &out[n++];

      *x = level[i];
      x->fault[x->count++] = c;
      x->log_joint = weigh_set(s, x->fault, x->count);
    }
  }
  if (n > 1) qsort(out, n, sizeof *out, better);
  return n;
}

/* Merges a level into the best sets so far. */
static size_t merge(struct fault_set *out, size_t count, size_t most, const struct fault_set *level, size_t n)
{
  for (size_t i = 0; i < n; i++) {
    size_t at = count;

    while (at > 0 && better(&level[i], &out[at - 1]) < 0) at--;
    if (at >= most) break; /* the level is sorted: the rest is no better */
    if (count < most) count++;
    memmove(&out[at + 1], &out[at], (count - 1 - at) * sizeof *out);
    out[at] = level[i];
  }
  return count;
}

static int by_number(const void *x, const void *y) { return *(const int *)x - *(const int *)y; }

size_t net_best_sets(const struct net *net, const int *candidates, size_t count, size_t beam,
                     struct fault_set *out, size_t most)
{
  struct scale s = {.net = net, .candidates = candidates, .count = count};
  struct fault_set *level = mem_array(beam + 1, sizeof *level);
  struct fault_set *next = mem_array((beam + 1) * (count + 1), sizeof *next);
  size_t n = 1, found;

  make_scale(&s);
  memset(level, 0, sizeof *level);
  level[0].log_joint = weigh_set(&s, NULL, 0);
  found = merge(out, 0, most, level, 1);
  for (size_t size = 1; size <= SETS_MOST_FAULTS && n > 0; size++) {
    n = grow(&s, level, n, next);
    found = merge(out, found, most, next, n);
    if (n > beam) n = beam;
    memcpy(level, next, n * sizeof *level);
  }
  for (size_t i = 0; i < found; i++) {
    for (size_t j = 0; j < out[i].count; j++) out[i].fault[j] = candidates[out[i].fault[j]];
    qsort(out[i].fault, out[i].count, sizeof out[i].fault[0], by_number);
  }
  free(level);
  free(next);
  free(s.odds);
  free(s.sums);
  return found;
}
