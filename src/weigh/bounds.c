/* bounds.c - see bounds.h. */
#include "weigh/bounds.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "weigh/sets.h"

enum { EXACT_CELLS = 1 << 13, MOST_CANDIDATES = 40, MOST_SETS = 4000, BEAM = 400 };

/* Does this finding couple its causes, and with how many grades? */
static size_t coupled_grades(const struct net_finding *f)
{
  size_t possible = 0;

  if (f->soft_sound > 0) return 1;
  for (int g = 0; g < f->grades; g++) possible += f->seen[g] > 0;
  if (possible == 1 && f->seen[0] > 0) return 1;
  return possible == 1 ? 2 : (size_t)f->grades;
}

/* Findings for the exact part: all that do not couple, and of the rest those with most
 * causes, as far as the table reaches. */
static size_t choose_findings(const struct net *net, struct net_finding *out)
{
  bool *taken = mem_array(net->finding_count + 1, sizeof *taken);
  size_t cells = 1, count = 0;

  for (size_t i = 0; i < net->finding_count; i++)
    if (coupled_grades(&net->findings[i]) == 1) {
      taken[i] = true;
      out[count++] = net->findings[i];
    }
  for (;;) {
    size_t best = net->finding_count;

    for (size_t i = 0; i < net->finding_count; i++)
      if (!taken[i] && (best == net->finding_count ||
                        net->findings[i].link_count > net->findings[best].link_count))
        best = i;
    if (best == net->finding_count) break;
    taken[best] = true;
    if (cells * coupled_grades(&net->findings[best]) > EXACT_CELLS) continue;
    cells *= coupled_grades(&net->findings[best]);
    out[count++] = net->findings[best];
  }
  free(taken);
  return count;
}

struct believed { int fault; double belief; };

static int by_belief(const void *x, const void *y)
{
  const struct believed *a = x, *b = y;

  if (a->belief != b->belief) return a->belief > b->belief ? -1 : 1;
  return a->fault - b->fault;
}

static size_t pick_candidates(const double *belief, size_t n, int *out)
{
  struct believed *all = mem_array(n + 1, sizeof *all);
  size_t count = n < MOST_CANDIDATES ? n : MOST_CANDIDATES;

  for (size_t i = 0; i < n; i++) all[i] = (struct believed){(int)i, belief[i]};
  qsort(all, n, sizeof *all, by_belief);
  for (size_t i = 0; i < count; i++) out[i] = all[i].fault;
  free(all);
  return count;
}

/* Weights found, all over the largest chance that the exact part gives to its findings:
 * in full and by the exact part only, with each fault and altogether. */
struct found { double *full, *part, all_full, all_part; };

static void add_sets(const struct net *part, double log_part,
                     const struct fault_set *sets, size_t count, struct found *f)
{
  for (size_t i = 0; i < count; i++) {
    double full = exp(sets[i].log_joint - log_part);
    double by_part = exp(net_log_joint(part, sets[i].fault, sets[i].count) - log_part);

    f->all_full += full;
    f->all_part += by_part;
    for (size_t j = 0; j < sets[i].count; j++) {
      f->full[sets[i].fault[j]] += full;
      f->part[sets[i].fault[j]] += by_part;
    }
  }
}

/* The weight that the exact part leaves unexplored is the most that can be missing. */
static double missing(double whole, double explored) { return whole > explored ? whole - explored : 0; }

static void limits(const struct found *f, const double *belief, size_t n, double *low, double *high)
{
  for (size_t d = 0; d < n; d++) {
    double with = f->full[d], without = f->all_full - f->full[d];
    double with_most = with + missing(belief[d], f->part[d]);
    double without_most = without + missing(1 - belief[d], f->all_part - f->part[d]);

    low[d] = with + without_most > 0 ? with / (with + without_most) : 0;
    high[d] = with_most + without > 0 ? with_most / (with_most + without) : 1;
  }
}

bool net_bounds(const struct net *net, double *low, double *high)
{
  size_t n = net->fault_count;
  struct net_finding *findings = mem_array(net->finding_count + 1, sizeof *findings);
  struct fault_set *sets = mem_array(MOST_SETS, sizeof *sets);
  double *belief = mem_array(n + 1, sizeof *belief), log_part;
  struct net part = *net;
  struct found f = {mem_array(n + 1, sizeof(double)), mem_array(n + 1, sizeof(double)), 0, 0};
  int candidates[MOST_CANDIDATES];
  bool good;

  part.findings = findings;
  part.finding_count = choose_findings(net, findings);
  good = net_solve(&part, belief, NULL, &log_part);
  if (good) {
    size_t most = pick_candidates(belief, n, candidates);
    size_t count = net_best_sets(net, candidates, most, BEAM, sets, MOST_SETS);

    add_sets(&part, log_part, sets, count, &f);
    limits(&f, belief, n, low, high);
  }
  free(f.full);
  free(f.part);
  free(findings);
  free(sets);
  free(belief);
  return good;
}
