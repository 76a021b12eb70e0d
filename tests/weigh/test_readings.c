/* test_readings.c - how a reading falls on the results of its check. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "weigh/casenet.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static void near(double got, double want, double by, const char *what)
{
  if (!(fabs(got - want) <= by)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

/* A measured check with bands, made here so that nothing else is needed. */
struct measured {
  struct knowledge k;
  struct check check;
  struct bands bands;
};

static const char *names[] = {"r0", "r1", "r2", "r3"};

static void measure(struct measured *m, size_t results, int *order, double *limits, double tolerance)
{
  *m = (struct measured){
      .check = {.results = {names, results}, .tolerance = tolerance},
      .bands = {.results = {names, results}, .result_at = order, .limits = {limits, results - 1}}};
  m->k.checks = &m->check;
  m->k.check_count = 1;
  m->k.bands = &m->bands;
  m->k.bands_count = 1;
}

static double sum(const double *share, size_t n)
{
  double s = 0;

  for (size_t i = 0; i < n; i++) s += share[i];
  return s;
}

/* Share beyond a limit that lies so many standard deviations above the reading. Ten digits:
 * Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1, from memory. */
static void test_normal_curve(void **state)
{
  static const struct {
    double z, below;
  } table[] = {
      {0, .5},
      {0.1, .5398278373},
      {0.25, .5987063257},
      {0.5, .6914624613},
      {0.75, .7733726476},
      {1, .8413447461},
      {1.25, .8943502263},
      {1.5, .9331927987},
      {1.96, .9750021049},
      {2, .9772498681},
      {2.5, .9937903347},
      {3, .9986501020},
  };
  static int order[] = {1, 0};
  static double limits[] = {60};

  (void)state;
  for (size_t i = 0; i < COUNT(table); i++) {
    struct measured m;
    double share[2];

    measure(&m, 2, order, limits, 5);
    reading_shares(&m.k, 0, 0, NULL, 60 - 5 * table[i].z, share);
    near(share[1], table[i].below, 0.6e-10, "below the limit");
    near(share[0], 1 - table[i].below, 0.6e-10, "above it");
    reading_shares(&m.k, 0, 0, NULL, 60 + 5 * table[i].z, share);
    near(share[0], table[i].below, 0.6e-10, "the same on the other side");
  }
}

/* The far end of the curve, as printed in five digits in the z-distribution table at
 * math.com (tables/stat/distributions/z-dist.htm, read). */
static void test_far_end(void **state)
{
  static const struct {
    double z, beyond;
  } table[] = {{-4, 3e-05},     {-3.5, .00023}, {-3, .00135}, {-2.9, .00187},
               {-2.55, .00539}, {-2.5, .00621}, {-2.4, .0082}};
  static int order[] = {0, 1};
  static double limits[] = {-10};

  (void)state;
  for (size_t i = 0; i < COUNT(table); i++) {
    struct measured m;
    double share[2];

    measure(&m, 2, order, limits, 0.2);
    reading_shares(&m.k, 0, 0, NULL, -10 + 0.2 * table[i].z, share);
    near(share[1], table[i].beyond, 0.51e-5, "beyond the limit");
  }
}

static void test_three_ranges(void **state)
{
  static int order[] = {2, 1, 0}; /* very low, weak, good */
  static double limits[] = {35, 60};
  struct measured m;
  double share[3];

  (void)state;
  measure(&m, 3, order, limits, 5);
  reading_shares(&m.k, 0, 0, NULL, 55, share); /* one deviation under good, four over very low */
  near(share[0], 1 - .8413447461, 1e-10, "good");
  near(share[2], 3.167124e-05, 1e-10, "very low"); /* computed independently */
  near(share[1], 1 - share[0] - share[2], 1e-15, "weak");
  near(sum(share, 3), 1, 1e-15, "all");
  reading_shares(&m.k, 0, 0, NULL, 47.5, share);
  near(share[0], share[2], 1e-15, "half way");
  for (double value = -500; value <= 900; value += 100) {
    reading_shares(&m.k, 0, 0, NULL, value, share);
    near(share[value > 60 ? 0 : 2], 1, 1e-11, "far out");
    near(sum(share, 3), 1, 1e-15, "all");
  }
}

/* An instrument without error cuts sharply; the limit itself belongs above. */
static void test_no_tolerance(void **state)
{
  static int order[] = {1, 0, 2};
  static double limits[] = {10, 20};
  static const struct {
    double value;
    int result;
  } rows[] = {{9.999, 1}, {10, 0}, {15, 0}, {19.999, 0}, {20, 2}, {1e9, 2}, {-1e9, 1}};
  struct measured m;
  double share[3];

  (void)state;
  measure(&m, 3, order, limits, 0);
  for (size_t i = 0; i < COUNT(rows); i++) {
    reading_shares(&m.k, 0, 0, NULL, rows[i].value, share);
    for (int r = 0; r < 3; r++) near(share[r], r == rows[i].result, 0, "sharp");
  }
}

/* One result may stand at both ends (too low and too high are both "off"). */
static void test_same_result_twice(void **state)
{
  static int order[] = {1, 0, 1};
  static double limits[] = {10, 20};
  struct measured m;
  double share[2];

  (void)state;
  measure(&m, 2, order, limits, 5);
  m.bands.results = (struct texts){names, 3};
  m.bands.limits.count = 2;
  reading_shares(&m.k, 0, 0, NULL, 15, share);
  near(share[0], 2 * .8413447461 - 1, 1.2e-10, "right");
  near(share[1], 2 - 2 * .8413447461, 1.2e-10, "off");
}

static void spec(const struct measured *m, double low, double high, double value, double *share)
{
  struct case_card card = {.check = 0, .low = low, .high = high};

  reading_shares(&m->k, 0, -1, &card, value, share);
}

/* The maker's figures take the place of the limits round the sound range; limits further
 * out keep their proportion. */
static void test_spec_card(void **state)
{
  static int order[] = {2, 1, 0}, both[] = {1, 0, 2};
  static double limits[] = {35, 60}, gap[] = {0.5, 0.9};
  struct measured m;
  double share[3];

  (void)state;
  measure(&m, 3, order, limits, 5);
  spec(&m, 80, 120, 85, share); /* 60 becomes 80, 35 becomes 46.667 */
  near(share[0], .8413447461, 1e-10, "good by the card");
  spec(&m, 80, 120, 35 * 80 / 60.0, share);
  near(share[2], .5, 1e-12, "very low by the card");
  spec(&m, 80, 120, 500, share);
  near(share[0], 1, 0, "there is no \"too good\" in these bands");
  measure(&m, 3, both, gap, 0.05);
  spec(&m, 0.7, 0.8, 0.65, share);
  near(share[1], .8413447461, 1e-10, "narrow by the card");
  near(share[0], 1 - .8413447461 - .0013498980, 1e-9, "right by the card"); /* z = 1 and 3 */
  spec(&m, 0.7, 0.8, 0.9, share);
  near(share[2], .9772498681, 1e-10, "wide by the card");
}

/* Limits that are 0 or on the other side of it cannot keep a proportion. */
static void test_spec_card_round_nought(void **state)
{
  static int order[] = {2, 1, 0, 3};
  static double limits[] = {-10, 0, 20};
  struct measured m;
  double share[4];

  (void)state;
  measure(&m, 4, order, limits, 1);
  spec(&m, 5, 15, 5, share);
  near(share[0], .5, 1e-12, "the card's low");
  spec(&m, 5, 15, 15, share);
  near(share[3], .5, 1e-12, "the card's high");
  spec(&m, 5, 15, -10, share);
  near(share[2], .5, 1e-12, "further out as it was");
  spec(&m, -15, 15, -12, share);
  near(share[1], 0, 1e-12, "a limit does not overtake the card's figure");
  near(share[0], .9986501020, 1e-9, "right");
}

/* Bands that do not name the sound result, or none at all: right, or not. */
static void test_spec_card_alone(void **state)
{
  static int order[] = {1, 2};
  static double limits[] = {20};
  struct measured m;
  double share[3];

  (void)state;
  measure(&m, 2, order, limits, 2);
  m.check.results.count = 3;
  for (size_t bands = 0; bands < 2; bands++) {
    m.k.bands_count = bands;
    spec(&m, 10, 30, 20, share);
    near(share[0], 1, 1e-6, "right");
    spec(&m, 10, 30, 30, share);
    near(share[0], .5, 1e-12, "at the upper figure");
    near(share[1], .5, 1e-12, "and not");
    spec(&m, 10, 30, 8, share);
    near(share[0], 1 - .8413447461, 1e-10, "under the lower figure");
    spec(&m, 10, 30, 99, share);
    near(share[1], 1, 1e-12, "far out");
  }
  m.check.tolerance = 0;
  spec(&m, 10, 30, 30, share);
  near(share[0], 1, 0, "the figures themselves are right");
  spec(&m, 10, 30, 30.001, share);
  near(share[0], 0, 0, "beyond");
}

/* With nothing to judge by, a reading says nothing. */
static void test_nothing_to_judge_by(void **state)
{
  static int order[] = {1, 0, 2};
  static double limits[] = {10, 20};
  struct measured m;
  double share[3];

  (void)state;
  measure(&m, 3, order, limits, 1);
  reading_shares(&m.k, 0, -1, NULL, 15, share);
  for (int r = 0; r < 3; r++) near(share[r], 1.0 / 3, 1e-15, "all alike");
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_normal_curve),           cmocka_unit_test(test_far_end),
      cmocka_unit_test(test_three_ranges),           cmocka_unit_test(test_no_tolerance),
      cmocka_unit_test(test_same_result_twice),      cmocka_unit_test(test_spec_card),
      cmocka_unit_test(test_spec_card_round_nought), cmocka_unit_test(test_spec_card_alone),
      cmocka_unit_test(test_nothing_to_judge_by),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
