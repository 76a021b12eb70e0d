/* test_sets.c - the most probable sets against going through every set. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <stdio.h>

#include "brute.h"
#include "random_net.h"
#include "weigh/sets.h"

static unsigned bits(const struct fault_set *s)
{
  unsigned set = 0;

  for (size_t i = 0; i < s->count; i++) set |= 1u << s->fault[i];
  return set;
}

/* W7: three faults, four findings; the most probable sets are published in the project's
 * reference (computed independently by brute force). */
static void toy_most_probable(void **state)
{
  static const double prior[3] = {.10, .05, .02}, leak[4] = {.01, .02, .05, .01};
  static const double q[4][3] = {{.8, 0, .6}, {.7, .9, 0}, {0, .5, .5}, {.3, 0, .9}};
  struct net_finding f[4];
  struct net_link links[4][3];
  struct net net = {3, prior, NULL, f, 4};
  int candidates[3] = {0, 1, 2};
  struct fault_set best[8];
  double log_chance, belief[3];

  (void)state;
  for (int i = 0; i < 4; i++) {
    f[i] = (struct net_finding){.grades = 2, .leak = {1 - leak[i], leak[i]}, .seen = {0, 1}, .links = links[i]};
    for (int d = 0; d < 3; d++)
      if (q[i][d] > 0) links[i][f[i].link_count++] = (struct net_link){d, {1 - q[i][d], q[i][d]}};
  }
  assert_true(net_solve(&net, belief, NULL, &log_chance));
  assert_int_equal(net_best_sets(&net, candidates, 3, 50, best, 8), 8);
  assert_int_equal(bits(&best[0]), 1);
  assert_true(fabs(exp(best[0].log_joint - log_chance) - .320129) < 1e-6);
  net.finding_count = 2; /* f0+ f1+ only */
  assert_true(net_solve(&net, belief, NULL, &log_chance));
  net_best_sets(&net, candidates, 3, 50, best, 8);
  assert_true(fabs(exp(best[0].log_joint - log_chance) - .891719) < 1e-6);
}

static void best_is_best(void **state)
{
  static const struct random_style style = {8, 7, 1e-3, false};
  uint64_t dice = 20261125;
  int compared = 0;

  (void)state;
  for (int n = 0; n < 4000; n++) {
    struct random_net r;
    struct brute b;
    struct fault_set best[5];
    int candidates[RANDOM_MAX_FAULTS];
    size_t found;

    random_make(&r, &dice, &style);
    brute_solve(&r.net, &b);
    if (b.chance <= 0) continue;
    for (int i = 0; i < (int)r.net.fault_count; i++) candidates[i] = i;
    found = net_best_sets(&r.net, candidates, r.net.fault_count, 200, best, 5);
    assert_true(found >= 1);
    /* the weight of every set is exact, and the order is right */
    for (size_t i = 0; i < found; i++) {
      long double joint = brute_joint(&r.net, bits(&best[i]));

      assert_true(fabsl(expl((long double)best[i].log_joint) / joint - 1) < 1e-9L);
      if (i) assert_true(best[i].log_joint <= best[i - 1].log_joint);
    }
    if (__builtin_popcount(b.best) <= SETS_MOST_FAULTS) {
      assert_true(fabsl(expl((long double)best[0].log_joint) / b.best_chance - 1) < 1e-9L);
      compared++;
    }
  }
  assert_true(compared > 3000);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(toy_most_probable), cmocka_unit_test(best_is_best)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
