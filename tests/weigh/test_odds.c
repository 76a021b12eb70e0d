/* test_odds.c - the odds as evidence comes in, and the answer as a whole. Runs the whole way
 * through rules and weighing with the small knowledge of tests/weigh/small.
 * Usage: test_odds TOP-OF-SOURCES */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "fixture.h"
#include "knowledge/load.h"

static const char *source;
static struct knowledge k;
static struct assessor *assessor;

static void near(double got, double want, double by, const char *what)
{
  if (!(fabs(got - want) <= by)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

static int fault_id(const char *id) { return fixture_id(&k, ENTRY_FAULT, id); }

static void assess(const struct bench_case *c, struct assessment *a)
{
  struct err e = {0};

  if (assess_case(assessor, c, a, &e)) fail_msg("%s", e.text);
}

/* A four-stroke mower that will not start; results are added by the test. */
static void begin(struct bench_case *c, const char *feature)
{
  fixture_case(&k, c, "mower", feature);
  case_add_complaint(c, fixture_id(&k, ENTRY_COMPLAINT, "no-start"));
}

static void fill(struct bench_case *c)
{
  begin(c, "-decompression");
  fixture_result(&k, c, "press", NULL, 58, 1);
  fixture_result(&k, c, "wet", "wet", 0, 1);
  fixture_result(&k, c, "gap", NULL, 0.88, 0.8);
}

/* ---- odds --------------------------------------------------------------------------- */

static double odds_of(double p) { return 10 * log10(p / (1 - p)); }

/* The weights of all pieces of evidence add up to the final odds of every fault. */
static void test_odds_add_up(void **state)
{
  struct bench_case c;
  struct assessment a;
  double *odds;

  (void)state;
  fill(&c);
  fixture_result(&k, &c, "choked", "many", 0, 0.8);
  fixture_result(&k, &c, "ran", "ran", 0, 1);
  fixture_result(&k, &c, "flash", "jumps", 0, 0.9);
  assess(&c, &a);
  odds = assess_odds(&a);
  assert_non_null(odds);
  assert_true(a.net.evidence_count >= 7);
  for (size_t p = 0; p < a.net.count; p++) {
    const double *last = odds + a.net.evidence_count * a.net.count;
    double sum = odds[p];

    near(odds[p], odds_of(a.net.prior[p]), 1e-9, "before anything");
    for (size_t i = 1; i <= a.net.evidence_count; i++)
      sum += odds[i * a.net.count + p] - odds[(i - 1) * a.net.count + p];
    assert_true(last[p] == odds_of(a.belief[p]));
    near(sum, last[p], 1e-9, "weights and final odds");
  }
  free(odds);
  assessment_free(&a);
  case_free(&c);
}

/* What results say in combination turns the odds by just its decibans. */
static void test_speaks(void **state)
{
  struct bench_case c;
  struct assessment a;
  double *odds;

  (void)state;
  begin(&c, NULL);
  fixture_result(&k, &c, "wet", "wet", 0, 1);
  fixture_result(&k, &c, "flash", "jumps", 0, 1);
  assess(&c, &a);
  odds = assess_odds(&a);
  assert_non_null(odds);
  for (size_t i = 0, p = fixture_place(&a, "bowl-floods"); i < a.net.evidence_count; i++)
    if (a.net.evidence[i].kind == EVIDENCE_SPEAKS) {
      near(a.net.evidence[i].decibans, 6, 0, "as the rule says");
      near(odds[(i + 1) * a.net.count + p] - odds[i * a.net.count + p], 6, 1e-9, "as it counts");
    }
  assert_non_null(fixture_evidence(&a, EVIDENCE_SPEAKS, fault_id("bowl-floods")));
  free(odds);
  assessment_free(&a);
  case_free(&c);
}

/* ---- the answer as a whole ---------------------------------------------------------- */

static void test_same_case_same_bytes(void **state)
{
  struct bench_case c;
  struct assessment a, b;

  (void)state;
  fill(&c);
  assess(&c, &a);
  assess(&c, &b);
  fixture_same(&a, &b);
  assessment_free(&a);
  assessment_free(&b);
  case_free(&c);
}

/* Without a complaint, what is unsound is what wants accounting for. */
static void test_blame_without_complaint(void **state)
{
  struct bench_case c;
  struct assessment a;

  (void)state;
  fixture_case(&k, &c, "mower", NULL);
  fixture_result(&k, &c, "flash", "none", 0, 1);
  assess(&c, &a);
  assert_int_equal(a.ranking[0].fault, fault_id("coil-gone"));
  assert_true(a.ranking[0].blame > 0.5 && a.ranking[0].blame <= a.ranking[0].belief);
  for (size_t i = 0; i < a.ranking_count; i++)
    assert_true(a.ranking[i].blame >= 0 && a.ranking[i].blame <= a.ranking[i].belief);
  assessment_free(&a);
  case_free(&c);
}

/* Sound and two-or-more of one result, by hand, in a network of one link. */
static void test_sound_and_two(void **state)
{
  struct bench_case c;
  struct assessment a;
  double coil = 0.1, other = 0.02, seen, none;

  (void)state;
  fixture_case(&k, &c, "saw", NULL); /* coil-gone 0.1, bowl-floods 0.08, not listed 0.02 */
  fixture_result(&k, &c, "flash", "none", 0, 1);
  assess(&c, &a);
  none = 0.98 * (1 - coil * 0.95) * (1 - other * 0.1);
  seen = 1 - none;
  near(exp(a.log_chance), seen, 1e-12, "chance of no spark");
  /* the leak alone, every fault held not to have brought it about */
  near(a.sound, 0.02 * (1 - coil * 0.95) * (1 - other * 0.1) / seen, 1e-12, "nothing broken");
  near(a.two_or_more,
       1 - (0.9 * 0.92 * 0.98 * 0.02 + coil * 0.92 * 0.98 * (1 - 0.98 * 0.05) + 0.9 * 0.08 * 0.98 * 0.02 +
            0.9 * 0.92 * other * (1 - 0.98 * 0.9)) /
               seen,
       1e-12, "two or more");
  assessment_free(&a);
  case_free(&c);
}

static int open_all(void **state)
{
  struct err e = {0};

  (void)state;
  fixture_small(source, &k);
  return assessor_open(&k, &assessor, &e);
}

static int close_all(void **state)
{
  (void)state;
  assessor_close(assessor);
  knowledge_free(&k);
  return 0;
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_odds_add_up),          cmocka_unit_test(test_speaks),
      cmocka_unit_test(test_same_case_same_bytes), cmocka_unit_test(test_blame_without_complaint),
      cmocka_unit_test(test_sound_and_two),
  };

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, open_all, close_all);
}
