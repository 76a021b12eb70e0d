/* test_sensitivity.c - at the tipped value the two faults are level, by weighing again. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <string.h>

#include "random_net.h"
#include "weigh/sensitivity.h"

/* Weighs again with the estimate at the value; the difference of the two beliefs. */
static double lead_at(struct random_net *r, const struct sensitivity *s, int first, int second, bool by_blame)
{
  double belief[RANDOM_MAX_FAULTS], blame[RANDOM_MAX_FAULTS], saved_prior = 0, saved[NET_MAX_GRADES];
  double *row = NULL;

  if (s->what.kind == ESTIMATE_PRIOR) {
    saved_prior = r->prior[s->what.fault];
    r->prior[s->what.fault] = s->tipped;
  } else {
    struct net_finding *f = &r->findings[s->what.finding];

    row = f->leak;
    for (size_t i = 0; s->what.kind == ESTIMATE_LINK && i < f->link_count; i++)
      if (r->links[s->what.finding][i].fault == s->what.fault) row = r->links[s->what.finding][i].chance;
    memcpy(saved, row, sizeof saved);
    row[0] += row[s->what.grade] - s->tipped;
    row[s->what.grade] = s->tipped;
  }
  assert_true(net_solve(&r->net, belief, blame, NULL));
  if (row) memcpy(row, saved, sizeof saved);
  else r->prior[s->what.fault] = saved_prior;
  return by_blame ? blame[first] - blame[second] : belief[first] - belief[second];
}

static void tipped_means_level(void **state)
{
  static const struct random_style style = {6, 6, 1e-3, false};
  uint64_t dice = 4;
  int tried = 0;

  (void)state;
  for (int n = 0; n < 2000; n++) {
    struct random_net r;
    struct sensitivity s;
    double belief[RANDOM_MAX_FAULTS], blame[RANDOM_MAX_FAULTS];
    bool by_blame = n % 2;
    int first = 0, second = 1;

    random_make(&r, &dice, &style);
    if (r.net.fault_count < 2 || !net_solve(&r.net, belief, blame, NULL)) continue;
    if ((by_blame ? blame[1] - blame[0] : belief[1] - belief[0]) > 0) {
      first = 1;
      second = 0;
    }
    if (!net_sensitivity(&r.net, first, second, by_blame, &s)) continue;
    assert_true(s.factor >= 1);
    assert_true(fabs(lead_at(&r, &s, first, second, by_blame)) < 1e-7);
    tried++;
  }
  assert_true(tried > 500);
}

/* One fault, one finding, by hand: prior .1 against .05, both bring it about with .5, no
 * leak to speak of: the prior of the first tips where the two are level, at .05. */
static void by_hand(void **state)
{
  double prior[2] = {.1, .05};
  struct net_link links[2] = {{0, {.5, .5}}, {1, {.5, .5}}};
  struct net_finding f = {.grades = 2, .leak = {.99, .01}, .seen = {0, 1}, .links = links, .link_count = 2};
  struct net net = {2, prior, NULL, &f, 1};
  struct sensitivity s;

  (void)state;
  assert_true(net_sensitivity(&net, 0, 1, false, &s));
  assert_true(s.what.kind == ESTIMATE_PRIOR);
  assert_true(s.what.fault == 0 ? fabs(s.tipped - .05) < 1e-9 : fabs(s.tipped - .1) < 1e-9);
  assert_true(fabs(s.factor - (.1 / .9) / (.05 / .95)) < 1e-9);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(tipped_means_level), cmocka_unit_test(by_hand)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
