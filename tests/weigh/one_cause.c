/* one_cause.c - see one_cause.h. */
#include "one_cause.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

void near_by(double got, double want, double by, const char *what)
{
  if (!(fabs(got - want) <= by)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

double decibans(double p) { return 10 * log10(p / (1 - p)); }

void one_cause(struct net_finding *f, struct net_link *l, double with, double without, bool yes)
{
  double reaches = 1 - (1 - with) / (1 - without);

  *l = (struct net_link){0, {1 - reaches, reaches}};
  *f = (struct net_finding){
      .grades = 2, .leak = {1 - without, without}, .focus = true, .links = l, .link_count = 1};
  f->seen[yes] = 1;
}

double believe(double prior, const struct net_finding *findings, size_t count, double *chance)
{
  struct net net = {.fault_count = 1, .prior = &prior, .findings = findings, .finding_count = count};
  double belief, log_chance;

  assert_true(net_solve(&net, &belief, NULL, &log_chance));
  if (chance) *chance = exp(log_chance);
  return belief;
}

double believe_one(double prior, double with, double without, double *chance)
{
  struct net_finding f;
  struct net_link l;
  bool speaks_for = with >= without;

  one_cause(&f, &l, speaks_for ? with : 1 - with, speaks_for ? without : 1 - without, speaks_for);
  return believe(prior, &f, 1, chance);
}
