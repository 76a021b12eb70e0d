/* deeper.c - see deeper.h. */
#include "assess/deeper.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "weigh/sets.h"

enum { IN_PLAY = 10, BEAM = 60 };

/* Beyond this many grade combinations the many weighings below would be felt. */
enum { MOST_CELLS = 1 << 10 };

static bool too_much(struct assessment *a)
{
  struct net net = casenet_view(&a->net, a->net.evidence_count);

  return a->bounded || net_cells(&net) > MOST_CELLS;
}

static int place_of(const struct assessment *a, int fault)
{
  return fault >= 0 ? a->net.place_of[fault] : (int)a->net.count - 1;
}

size_t deeper_in_play(const struct assessment *a, const struct knowledge *k, int *places, size_t most)
{
  double from = knowledge_setting(k, "show-belief", 0.02);
  size_t n = 0;

  while (n < most && n < a->ranking_count && a->ranking[n].blame >= from) {
    places[n] = place_of(a, a->ranking[n].fault);
    n++;
  }
  return n;
}

/* Chance that of the causes in play just the set is there, by holding each present or
 * absent and summing over all other faults. */
static double chance_together(struct assessment *a, const struct net *net, const int *places, size_t count,
                              const struct fault_set *set)
{
  double *prior = mem_array(a->net.count, sizeof *prior), *bias = mem_array(a->net.count, sizeof *bias);
  struct net held = *net;
  double log_chance, log_held = 0;
  bool good;

  memcpy(prior, net->prior, a->net.count * sizeof *prior);
  memcpy(bias, net->bias, a->net.count * sizeof *bias);
  for (size_t i = 0; i < count; i++) {
    bool present = false;

    for (size_t j = 0; j < set->count; j++) present = present || set->fault[j] == places[i];
    log_held += present ? log(prior[places[i]] * bias[places[i]]) : log(1 - prior[places[i]]);
    prior[places[i]] = present ? 1 : 0;
    bias[places[i]] = 1;
  }
  held.prior = prior;
  held.bias = bias;
  good = net_solve(&held, NULL, NULL, &log_chance);
  free(prior);
  free(bias);
  return good ? exp(log_chance + log_held - a->log_chance) : 0;
}

static int by_chance(const void *x, const void *y)
{
  const struct together *a = x, *b = y;

  if (a->chance != b->chance) return a->chance > b->chance ? -1 : 1;
  return memcmp(a->fault, b->fault, sizeof a->fault);
}

size_t deeper_together(struct assessment *a, const struct knowledge *k, struct together *out, size_t most)
{
  struct net net = casenet_view(&a->net, a->net.evidence_count);
  size_t room = most * 3, n = 0, count, sets;
  struct fault_set *set = mem_array(room, sizeof *set);
  struct together *all = mem_array(room, sizeof *all);
  int places[IN_PLAY];

  count = too_much(a) ? 0 : deeper_in_play(a, k, places, IN_PLAY);
  sets = count == 0 ? 0 : net_best_sets(&net, places, count, BEAM, set, room);
  for (size_t i = 0; i < sets; i++) {
    if (set[i].count > DEEPER_MOST_TOGETHER) continue;
    all[n].count = set[i].count;
    all[n].chance = chance_together(a, &net, places, count, &set[i]);
    for (size_t j = 0; j < set[i].count; j++) all[n].fault[j] = a->net.fault_of[set[i].fault[j]];
    n++;
  }
  if (n > 1) qsort(all, n, sizeof *all, by_chance);
  if (n > most) n = most;
  memcpy(out, all, n * sizeof *out);
  free(all);
  free(set);
  return n;
}

size_t deeper_accounted(struct assessment *a, struct accounted *out)
{
  struct net net = casenet_view(&a->net, a->net.evidence_count);
  double *belief = mem_array(a->net.count, sizeof *belief), *blame = mem_array(a->net.count, sizeof *blame);
  size_t n = 0, at = 0;
  bool too_heavy = too_much(a);

  for (size_t i = 0; !too_heavy && i < a->net.evidence_count; i++) {
    const struct evidence *e = &a->net.evidence[i];
    size_t best = 0, finding = at;

    if (e->kind == EVIDENCE_SPEAKS) continue;
    at++;
    if (e->result == 0 || e->kind == EVIDENCE_IMPLIED) continue;
    for (size_t j = 0; j < net.finding_count; j++) a->net.view[j].focus = j == finding;
    if (!net_solve(&net, belief, blame, NULL)) break;
    for (size_t f = 1; f < a->net.count; f++)
      if (blame[f] > blame[best]) best = f;
    out[n++] = (struct accounted){(int)i, a->net.fault_of[best], blame[best]};
  }
  free(belief);
  free(blame);
  return n;
}

size_t deeper_mend(struct assessment *a, struct bench_case *c, int fault)
{
  struct accounted *by = mem_array(a->net.evidence_count + 1, sizeof *by);
  size_t n = deeper_accounted(a, by), dropped = 0;

  for (size_t i = 0; i < n; i++) {
    const struct evidence *e = &a->net.evidence[by[i].evidence];

    if (by[i].fault == fault && e->kind == EVIDENCE_RESULT && case_drop_result(c, e->subject)) dropped++;
  }
  c->mended[fault] = true;
  free(by);
  return dropped;
}

bool deeper_hangs_on(struct assessment *a, struct sensitivity *out, int *evidence)
{
  struct net net = casenet_view(&a->net, a->net.evidence_count);
  int finding = 0;

  *evidence = -1;
  if (too_much(a) || a->ranking_count < 2 || a->net.evidence_count == 0) return false;
  if (!net_sensitivity(&net, place_of(a, a->ranking[0].fault), place_of(a, a->ranking[1].fault), true, out)) return false;
  if (out->what.kind == ESTIMATE_PRIOR) return true;
  for (size_t i = 0; i < a->net.evidence_count; i++) {
    if (a->net.evidence[i].kind == EVIDENCE_SPEAKS) continue;
    if (finding++ == out->what.finding) *evidence = (int)i;
  }
  return true;
}
