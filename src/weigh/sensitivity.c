/* sensitivity.c - see sensitivity.h. */
#include "weigh/sensitivity.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

/* A copy of the net in which one estimate can be changed. */
struct variant {
  struct net net;
  double *prior, *belief, *blame;
  struct net_finding *findings;
  struct net_link *links; /* of the finding that is changed */
};

static void open_variant(struct variant *v, const struct net *net)
{
  size_t most = 0;

  for (size_t i = 0; i < net->finding_count; i++)
    if (net->findings[i].link_count > most) most = net->findings[i].link_count;
  v->net = *net;
  v->prior = mem_array(net->fault_count + 1, sizeof *v->prior);
  v->belief = mem_array(net->fault_count + 1, sizeof *v->belief);
  v->blame = mem_array(net->fault_count + 1, sizeof *v->blame);
  v->findings = mem_array(net->finding_count + 1, sizeof *v->findings);
  v->links = mem_array(most + 1, sizeof *v->links);
  v->net.prior = v->prior;
  v->net.findings = v->findings;
}

static void close_variant(struct variant *v)
{
  free(v->prior);
  free(v->belief);
  free(v->blame);
  free(v->findings);
  free(v->links);
}

static const struct net_link *link_to(const struct net_finding *f, int fault)
{
  for (size_t i = 0; i < f->link_count; i++)
    if (f->links[i].fault == fault) return &f->links[i];
  return NULL;
}

static double value_of(const struct net *net, const struct estimate *e)
{
  if (e->kind == ESTIMATE_PRIOR) return net->prior[e->fault];
  if (e->kind == ESTIMATE_LEAK) return net->findings[e->finding].leak[e->grade];
  return link_to(&net->findings[e->finding], e->fault)->chance[e->grade];
}

/* Sets one chance of a row; what it gains the sound grade loses. */
static void set_row(double *row, int grade, double value)
{
  row[0] += row[grade] - value;
  row[grade] = value;
}

static void set_value(struct variant *v, const struct net *net, const struct estimate *e, double value)
{
  memcpy(v->prior, net->prior, net->fault_count * sizeof *v->prior);
  memcpy(v->findings, net->findings, net->finding_count * sizeof *v->findings);
  if (e->kind == ESTIMATE_PRIOR) {
    v->prior[e->fault] = value;
  } else if (e->kind == ESTIMATE_LEAK) {
    set_row(v->findings[e->finding].leak, e->grade, value);
  } else {
    struct net_finding *f = &v->findings[e->finding];

    memcpy(v->links, f->links, f->link_count * sizeof *v->links);
    f->links = v->links;
    for (size_t i = 0; i < f->link_count; i++)
      if (v->links[i].fault == e->fault) set_row(v->links[i].chance, e->grade, value);
  }
}

/* How far the first is ahead, as joint chances over `scale` (the log of the findings'
 * chance as it stands). */
static bool lead(struct variant *v, int first, int second, bool by_blame, double scale, double *out)
{
  double log_chance;
  const double *x = by_blame ? v->blame : v->belief;

  if (!net_solve(&v->net, v->belief, v->blame, &log_chance)) return false;
  *out = (x[first] - x[second]) * exp(log_chance - scale);
  return true;
}

/* A value nearer to 0 or to certainty than this is no estimate any more. */
static const double least = 1e-9;

/* The value at which the lead is gone, on the line through two points. */
static bool tip(struct variant *v, const struct net *net, const struct estimate *e, int first, int second,
                bool by_blame, double scale, double lead_now, struct sensitivity *out)
{
  double now = value_of(net, e), other, lead_other, at, room = 1;
  double odds_now, odds_at;

  if (e->kind == ESTIMATE_LINK)
    room = now + link_to(&net->findings[e->finding], e->fault)->chance[0];
  else if (e->kind == ESTIMATE_LEAK)
    room = now + net->findings[e->finding].leak[0];
  other = now < room / 2 ? now + (room - now) / 2 : now / 2;
  set_value(v, net, e, other);
  if (!lead(v, first, second, by_blame, scale, &lead_other) || lead_other == lead_now) return false;
  at = now + (0 - lead_now) * (other - now) / (lead_other - lead_now);
  if (!(at > least) || !(at < room - least) || now <= 0) return false;
  odds_now = now / (1 - now);
  odds_at = at / (1 - at);
  out->what = *e;
  out->now = now;
  out->tipped = at;
  out->factor = odds_at > odds_now ? odds_at / odds_now : odds_now / odds_at;
  return true;
}

/* Opens the variant with the net as it is: how far the first is ahead, and the scale. */
static bool lead_as_is(struct variant *v, const struct net *net, int first, int second, bool by_blame,
                       double *scale, double *lead_now)
{
  open_variant(v, net);
  set_value(v, net, &(struct estimate){ESTIMATE_PRIOR, first, 0, 0}, net->prior[first]);
  return net_solve(&v->net, v->belief, v->blame, scale) &&
         lead(v, first, second, by_blame, *scale, lead_now);
}

bool net_tipped(const struct net *net, const struct estimate *what, int first, int second, bool by_blame,
                struct sensitivity *out)
{
  struct variant v;
  double scale, lead_now;
  bool good = lead_as_is(&v, net, first, second, by_blame, &scale, &lead_now) &&
              tip(&v, net, what, first, second, by_blame, scale, lead_now, out);

  close_variant(&v);
  return good;
}

static void try_one(struct variant *v, const struct net *net, struct estimate e, const int *pair,
                    bool by_blame, double scale, double lead_now, struct sensitivity *best)
{
  struct sensitivity s;

  if (tip(v, net, &e, pair[0], pair[1], by_blame, scale, lead_now, &s) && s.factor < best->factor) *best = s;
}

bool net_sensitivity(const struct net *net, int first, int second, bool by_blame, struct sensitivity *out)
{
  struct variant v;
  int pair[2] = {first, second};
  double scale, lead_now;
  bool good;

  out->factor = HUGE_VAL;
  good = lead_as_is(&v, net, first, second, by_blame, &scale, &lead_now);
  for (int s = 0; good && s < 2; s++)
    try_one(&v, net, (struct estimate){ESTIMATE_PRIOR, pair[s], 0, 0}, pair, by_blame, scale, lead_now, out);
  for (size_t i = 0; good && i < net->finding_count; i++) {
    const struct net_finding *f = &net->findings[i];

    if (f->soft_sound > 0 || f->seen[0] >= 0.999) continue;
    for (int g = 1; g < f->grades; g++) {
      if (f->seen[g] <= 0) continue;
      if (f->leak[g] > 0)
        try_one(&v, net, (struct estimate){ESTIMATE_LEAK, -1, (int)i, g}, pair, by_blame, scale, lead_now,
                out);
      for (int s = 0; s < 2; s++)
        if (link_to(f, pair[s]) && link_to(f, pair[s])->chance[g] > 0)
          try_one(&v, net, (struct estimate){ESTIMATE_LINK, pair[s], (int)i, g}, pair, by_blame, scale,
                  lead_now, out);
    }
  }
  close_variant(&v);
  return good && out->factor < HUGE_VAL;
}
