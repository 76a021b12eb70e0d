/* test_bounds.c - limits always hold the exact belief, and are tight where little is left out. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <stdio.h>

#include "random_net.h"
#include "weigh/bounds.h"

enum { FAULTS = 40, MOST_LINKS = 6 };

/* A sparse net with `positives` plain unsound findings, most of them brought by two true
 * faults, as on a real machine. */
struct big {
  struct net net;
  double prior[FAULTS];
  struct net_finding f[24];
  struct net_link links[24][FAULTS];
};

static void make_big(struct big *b, int positives, uint64_t *dice)
{
  b->net = (struct net){FAULTS, b->prior, NULL, b->f, (size_t)positives};
  for (int i = 0; i < FAULTS; i++) b->prior[i] = 0.002 + 0.03 * random_share(dice);
  for (int i = 0; i < positives; i++) {
    double leak = 0.01 + 0.05 * random_share(dice);

    b->f[i] =
        (struct net_finding){.grades = 2, .leak = {1 - leak, leak}, .seen = {0, 1}, .links = b->links[i]};
    for (int d = 0; d < FAULTS; d++) {
      double q = d < 2 ? 0.3 + 0.6 * random_share(dice) : 0.1 + 0.8 * random_share(dice);

      if (d >= 2 && random_below(dice, FAULTS) >= MOST_LINKS) continue;
      b->links[i][b->f[i].link_count++] = (struct net_link){d, {1 - q, q}};
    }
  }
}

static void limits_hold_the_truth(void **state)
{
  uint64_t dice = 7;
  double widest = 0, sum = 0;
  int count = 0;

  (void)state;
  for (int n = 0; n < 32; n++) {
    static struct big b;
    double belief[FAULTS], low[FAULTS], high[FAULTS];

    make_big(&b, 14 + n % 4, &dice); /* beyond the table that the limits use (2^13) */
    assert_true(net_solve(&b.net, belief, NULL, NULL));
    assert_true(net_bounds(&b.net, low, high));
    for (int d = 0; d < FAULTS; d++) {
      assert_true(low[d] <= belief[d] + 1e-9);
      assert_true(high[d] >= belief[d] - 1e-9);
      if (high[d] - low[d] > widest) widest = high[d] - low[d];
      sum += high[d] - low[d];
      count++;
    }
  }
  print_message("widest limits %.3f, mean %.4f over %d beliefs\n", widest, sum / count, count);
  assert_true(sum / count < 0.2);
}

/* Within the reach of the table the limits close on the exact value. */
static void small_nets_are_exact(void **state)
{
  static const struct random_style style = {5, 6, 1e-3, false};
  uint64_t dice = 99;

  (void)state;
  for (int n = 0; n < 500; n++) {
    struct random_net r;
    double belief[RANDOM_MAX_FAULTS], low[RANDOM_MAX_FAULTS], high[RANDOM_MAX_FAULTS];

    random_make(&r, &dice, &style);
    if (!net_solve(&r.net, belief, NULL, NULL)) continue;
    assert_true(net_bounds(&r.net, low, high));
    for (size_t d = 0; d < r.net.fault_count; d++) {
      assert_true(fabs(low[d] - belief[d]) < 1e-6);
      assert_true(fabs(high[d] - belief[d]) < 1e-6);
    }
  }
}

static void beyond_reach(void **state)
{
  static struct big b;
  uint64_t dice = 3;
  double belief[FAULTS], low[FAULTS], high[FAULTS];

  (void)state;
  make_big(&b, 24, &dice);
  assert_false(net_solve(&b.net, belief, NULL, NULL)); /* 2^24 cells are refused */
  assert_true(net_bounds(&b.net, low, high));
  for (int d = 0; d < FAULTS; d++) assert_true(low[d] >= 0 && low[d] <= high[d] && high[d] <= 1);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(limits_hold_the_truth),
                                     cmocka_unit_test(small_nets_are_exact),
                                     cmocka_unit_test(beyond_reach)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
