/* test_sets.c - the most probable sets against going through every set. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <stdlib.h>

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
    f[i] = (struct net_finding){
        .grades = 2, .leak = {1 - leak[i], leak[i]}, .seen = {0, 1}, .links = links[i]};
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

enum { NETS = 10000, SHOWN = 5 };

static int falling(const void *a, const void *b)
{
  const long double *x = a, *y = b;

  return (*y > *x) - (*y < *x);
}

/* The weights of the SHOWN heaviest sets, heaviest first; sets larger than the search may
 * return are told of, since it cannot find those. */
static bool heaviest(const struct net *net, long double *out)
{
  static long double all[1 << RANDOM_MAX_FAULTS];
  size_t count = (size_t)1 << net->fault_count;
  long double least;

  for (size_t set = 0; set < count; set++) all[set] = brute_joint(net, (unsigned)set);
  qsort(all, count, sizeof *all, falling);
  for (size_t i = 0; i < SHOWN; i++) out[i] = i < count ? all[i] : 0;
  least = out[SHOWN - 1];
  for (size_t set = 0; set < count; set++)
    if (__builtin_popcount((unsigned)set) > SETS_MOST_FAULTS && brute_joint(net, (unsigned)set) >= least)
      return false;
  return true;
}

/* Networks of up to four grades, soft evidence and biases, by dice: every set
 * that is returned weighs what the definition says, and the five of them are the five heaviest
 * of all sets. */
static void best_is_best(void **state)
{
  static const struct random_style style = {8, 7, 1e-3, false};
  uint64_t dice = 20261125;
  int compared = 0;

  (void)state;
  for (int n = 0; n < NETS; n++) {
    struct random_net r;
    struct fault_set best[SHOWN];
    long double want[SHOWN];
    int candidates[RANDOM_MAX_FAULTS];
    size_t found;

    random_make(&r, &dice, &style);
    for (int i = 0; i < (int)r.net.fault_count; i++) candidates[i] = i;
    found = net_best_sets(&r.net, candidates, r.net.fault_count, 60, best, SHOWN);
    assert_true(found >= 1);
    for (size_t i = 0; i < found; i++) {
      long double joint = brute_joint(&r.net, bits(&best[i]));

      assert_true(joint > 0 ? fabsl(expl((long double)best[i].log_joint) / joint - 1) < 1e-9L
                            : best[i].log_joint < -700);
      if (i) assert_true(best[i].log_joint <= best[i - 1].log_joint);
    }
    if (!heaviest(&r.net, want)) continue;
    compared++;
    for (size_t i = 0; i < SHOWN && want[i] > 0; i++) {
      assert_true(i < found);
      assert_true(fabsl(expl((long double)best[i].log_joint) / want[i] - 1) < 1e-9L);
    }
  }
  assert_true(compared > NETS * 9 / 10);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(toy_most_probable), cmocka_unit_test(best_is_best)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
