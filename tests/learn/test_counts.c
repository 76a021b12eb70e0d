/* test_counts.c - chances from counts, and scores of forecasts, against worked numbers.
 *
 * The numbers of W18 and W19 were computed independently (not by this code). */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>

#include "weigh/counts.h"

static void near_by(double got, double expected, double within)
{
  if (!(fabs(got - expected) <= within)) fail_msg("got %.9f, expected %.9f", got, expected);
}

static void is_beta(struct beta b, double mean, double low, double high)
{
  struct limits l = beta_limits(b);

  near_by(beta_mean(b), mean, 5e-7);
  near_by(l.low, low, 5e-5);
  near_by(l.high, high, 5e-5);
}

/* W18, computed independently: means to six digits, 90 % limits to four. */
static void reliabilities(void **state)
{
  (void)state;
  is_beta((struct beta){9, 1}, .9, .7169, .9943);
  is_beta(beta_after(beta_worth(.9, 10), 3, 1), .857143, .6837, .9719);
  is_beta(beta_after(beta_worth(.9, 2), 3, 1), .8, .5018, .9812);
  is_beta(beta_after(beta_worth(.9, 20), 3, 1), .875, .7508, .9635);
  is_beta(beta_after((struct beta){1, 1}, 0, 10), .083333, .0047, .2384);
  is_beta(beta_after((struct beta){.5, .5}, 0, 10), .045455, .0002, .1708);
}

/* W18, computed independently: 3 hits then 1 miss under Beta(9, 1), one after the other. */
static void ordered_prediction(void **state)
{
  struct beta b = {9, 1};
  double chance = 1;

  (void)state;
  for (int i = 0; i < 3; i++) {
    chance *= beta_mean(b);
    b = beta_after(b, 1, 0);
  }
  near_by(chance * (1 - beta_mean(b)), .05769231, 5e-9);
}

/* W18, computed independently: Dirichlet(5, 3, 2) and (2, 0, 6), then a case of parts. */
static void shares(void **state)
{
  static const double before[3] = {.5, .3, .2}, hits[3] = {2, 0, 6}, part[3] = {.7, .2, .1};
  static const double after[3] = {.388889, .166667, .444444}, soft[3] = {.518182, .290909, .190909};

  (void)state;
  for (int i = 0; i < 3; i++) near_by(dirichlet_mean(before[i], 10, hits[i], 8), after[i], 5e-7);
  for (int i = 0; i < 3; i++) near_by(dirichlet_mean(before[i], 10, part[i], 1), soft[i], 5e-7);
}

/* W19, computed independently. */
static void scores(void **state)
{
  static const double chance[5] = {.9, .7, .6, .2, .1}, causes[3] = {.6, .3, .1};
  static const int came_true[5] = {1, 1, 0, 0, 0};
  static const struct forecast_bin bins[3] = {{.2, 10, 1}, {.5, 10, 6}, {.9, 10, 9}};
  double quadratic = 0, log_sum = 0;
  struct murphy m = murphy_of(bins, 3);

  (void)state;
  for (int i = 0; i < 5; i++) {
    quadratic += brier_one(chance[i], came_true[i]) / 5;
    log_sum += log_score(came_true[i] ? chance[i] : 1 - chance[i]) / 5;
  }
  near_by(quadratic, .102, 1e-12);
  near_by(log_sum, .341366, 5e-7);
  near_by(log_sum / log(2), .492487, 5e-7);
  near_by(brier(causes, 3, 0), .26, 1e-12);
  near_by(brier(causes, 3, 2), 1.26, 1e-12);
  near_by(log_score(causes[0]), .510826, 5e-7);
  near_by(log_score(causes[2]), 2.302585, 5e-7);
  near_by(m.reliability, .00666667, 5e-9);
  near_by(m.resolution, .10888889, 5e-9);
  near_by(m.uncertainty, .24888889, 5e-9);
  near_by(m.score, .14666667, 5e-9);
}

/* The floor, and nothing to score. */
static void edges(void **state)
{
  struct murphy none = murphy_of(NULL, 0);

  (void)state;
  near_by(log_score(0), -log(1e-4), 1e-12);
  near_by(log_score(1e-9), log_score(1e-4), 0);
  assert_true(none.score == 0 && none.uncertainty == 0);
  assert_true(beta_below((struct beta){2, 3}, 0) == 0 && beta_below((struct beta){2, 3}, 1) == 1);
}

/* For whole a and b the share below x is a binomial tail: another way to the same number. */
static void against_binomial(void **state)
{
  (void)state;
  for (int a = 1; a <= 40; a += 3)
    for (int b = 1; b <= 40; b += 3)
      for (double x = .02; x < 1; x += .07) {
        int n = a + b - 1;
        double tail = 0;

        for (int i = a; i <= n; i++) {
          double term = 1;

          for (int j = 1; j <= i; j++) term *= (double)(n - i + j) / j * x;
          tail += term * pow(1 - x, n - i);
        }
        near_by(beta_below((struct beta){a, b}, x), tail, 1e-11);
      }
}

/* The point found for a share has that share below it, for small and large weights. */
static void there_and_back(void **state)
{
  static const double weights[] = {.05, .5, 1, 7, 150, 4000};

  (void)state;
  for (size_t i = 0; i < 6; i++)
    for (size_t j = 1; j < 6; j++)
      for (double p = .05; p < 1; p += .3) {
        struct beta b = {weights[i], weights[j]};
        double x = beta_at(b, p);

        if (x > 1e-6) near_by(beta_below(b, x), p, 1e-6);
      }
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(reliabilities), cmocka_unit_test(ordered_prediction),
                                     cmocka_unit_test(shares),        cmocka_unit_test(scores),
                                     cmocka_unit_test(edges),         cmocka_unit_test(against_binomial),
                                     cmocka_unit_test(there_and_back)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
