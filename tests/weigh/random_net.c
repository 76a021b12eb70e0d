/* random_net.c - see random_net.h. */
#include "random_net.h"

#include <math.h>

/* splitmix64: public domain, from memory */
uint64_t random_next(uint64_t *state)
{
  uint64_t x = *state += 0x9e3779b97f4a7c15u;

  x = (x ^ x >> 30) * 0xbf58476d1ce4e5b9u;
  x = (x ^ x >> 27) * 0x94d049bb133111ebu;
  return x ^ x >> 31;
}

double random_share(uint64_t *state) { return (double)(random_next(state) >> 11) * 0x1p-53; }

int random_below(uint64_t *state, int limit) { return (int)(random_next(state) % (uint64_t)limit); }

static bool one_in(uint64_t *state, int n) { return random_below(state, n) == 0; }

/* Evenly by size: as often between 0.001 and 0.01 as between 0.01 and 0.1. */
static double small_chance(uint64_t *state, double least) { return pow(least, random_share(state)) * 0.6; }

/* Chances of grades 1.. and the rest to grade 0. */
static void grade_chances(uint64_t *state, const struct random_style *style, int grades, double *out)
{
  double rest = 1;

  for (int g = 0; g < NET_MAX_GRADES; g++) out[g] = 0;
  if (style->edges && one_in(state, 8)) { /* surely one grade */
    out[random_below(state, grades)] = 1;
    return;
  }
  for (int g = 1; g < grades; g++) {
    if (style->edges && one_in(state, 5)) continue;
    out[g] = rest * (one_in(state, 2) ? random_share(state) : small_chance(state, style->least));
    rest -= out[g];
  }
  out[0] = rest;
}

static void see(uint64_t *state, const struct random_style *style, struct net_finding *f)
{
  int way = random_below(state, style->edges ? 8 : 7);

  if (way == 0) { /* believed to be sound */
    f->soft_sound = 0.05 + 0.95 * random_share(state);
  } else if (way <= 2) { /* may be several grades */
    for (int g = 0; g < f->grades; g++) f->seen[g] = one_in(state, 3) ? 0 : random_share(state);
    f->seen[random_below(state, f->grades)] = 0.1 + 0.9 * random_share(state);
  } else if (way == 7) { /* says nothing */
    for (int g = 0; g < f->grades; g++) f->seen[g] = 0.5;
  } else { /* plain */
    f->seen[random_below(state, f->grades)] = one_in(state, 4) ? 0.25 + 0.75 * random_share(state) : 1;
  }
}

static void finding(struct random_net *out, uint64_t *state, const struct random_style *style, int at)
{
  struct net_finding *f = &out->findings[at];
  int faults = (int)out->net.fault_count, skip = random_below(state, 3);

  *f = (struct net_finding){.grades = 2 + random_below(state, 3), .links = out->links[at]};
  f->focus = one_in(state, 2);
  grade_chances(state, style, f->grades, f->leak);
  for (int d = 0; d < faults; d++) {
    struct net_link *l = &out->links[at][f->link_count];

    if (random_below(state, 3) < skip) continue;
    l->fault = d;
    grade_chances(state, style, f->grades, l->chance);
    f->link_count++;
  }
  see(state, style, f);
}

void random_make(struct random_net *out, uint64_t *state, const struct random_style *style)
{
  bool biased = one_in(state, 2);

  *out = (struct random_net){.net = {.prior = out->prior, .findings = out->findings}};
  out->net.fault_count = (size_t)(1 + random_below(state, style->faults));
  out->net.finding_count = (size_t)(1 + random_below(state, style->findings));
  if (biased) out->net.bias = out->bias;
  for (size_t d = 0; d < out->net.fault_count; d++) {
    out->prior[d] = one_in(state, 2) ? 0.9 * random_share(state) : small_chance(state, style->least);
    if (style->edges && one_in(state, 20)) out->prior[d] = 0;
    out->bias[d] = one_in(state, 3) ? 1 : pow(10, 4 * random_share(state) - 2); /* -20 .. 20 db */
  }
  for (size_t i = 0; i < out->net.finding_count; i++) finding(out, state, style, (int)i);
}
