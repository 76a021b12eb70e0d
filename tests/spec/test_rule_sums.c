/* test_rule_sums.c - the sums that rules may call: right in the units of their names, no number where
 * they do not hold, and refused with the rule's name where they are given no number. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

#include "bench_engine.h"

static const char *const nothing[] = {NULL};
static const char *const wet[] = {"plug-look wet", NULL};

/* The value that a rule concludes from this call, NAN when it concludes none. */
static double worked_out(const char *call)
{
  static const char form[] = "(defrule sum \"[memory] x\" (logical (finding (check plug-look) (result wet))) => "
                             "(assert (counts-as (check squeeze) (value %s))))";
  struct bench_engine b;
  char rule[300];
  double out = (double)NAN;
  int at;

  snprintf(rule, sizeof rule, form, call);
  bench_begin(&b, false, rule, NULL, NULL);
  assert_int_equal(b.status, 0);
  assert_int_equal(bench_find(&b, wet), 0);
  at = conclusion_find(&b.drawn, COUNTS_AS, knowledge_find(&b.l.k, ENTRY_CHECK, "squeeze"), 0);
  if (at >= 0) out = b.drawn.items[at].number;
  assert_int_equal(bench_find(&b, nothing), 0); /* it goes with its reason */
  assert_int_equal(conclusion_find(&b.drawn, COUNTS_AS, knowledge_find(&b.l.k, ENTRY_CHECK, "squeeze"), 0), -1);
  bench_end(&b);
  return out;
}

static void test_values(void **state)
{
  static const struct { const char *call; double value, within; } rows[] = {
      /* 845.56 hPa at 1500 m, 1.1117 kg/m3 at 1000 m: ISO 2533 tables, from memory */
      {"(sea-level-psi 62 1500)", 62 * 1013.25 / 845.56, 0.01},
      {"(sea-level-psi 62 0)", 62, 1e-9},
      {"(air-kg-m3 1000 8.5)", 1.1117, 2e-4},
      /* 14.6959 psi (8^1.4 - 1), 8^1.4 = 2^4.2 = 18.379: worked by hand */
      {"(most-compression-psi 8 0)", 14.6959 * 17.3792, 0.05},
      /* 120 f / poles, Navy training course 14177, p. 3-14 */
      {"(engine-rpm 60 2)", 3600, 1e-9},
      {"(engine-rpm 50 4)", 1500, 1e-9},
      /* pi x 0.5334 m x 3100 / 60 s, worked by hand */
      {"(blade-tip-m-s 533.4 3100)", 86.580, 0.001},
      /* 14.7 / 14.10 sqrt(745 / 749.4): printed air needs, docs/arithmetic.md */
      {"(ethanol-lambda 0 10)", 1.0395, 0.001},
      /* 3.06 tsp of 4.92892 mL to the US gallon, UNL CropWatch */
      {"(water-held-ml 10 3.785412)", 15.082, 0.01},
      {"(petrol-stage 20)", 0, 0},
      {"(petrol-stage 40)", 1, 0},
      {"(petrol-stage 70)", 2, 0},
      {"(petrol-stage 100)", 3, 0}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    double got = worked_out(rows[i].call);

    if (!(fabs(got - rows[i].value) <= rows[i].within)) fail_msg("%s: %.9g", rows[i].call, got);
  }
}

/* Beyond its range a sum gives no number: nothing is concluded, and nothing stops. */
static void test_no_number(void **state)
{
  static const char *const calls[] = {"(sea-level-psi 62 20000)", "(sea-level-psi -5 0)", "(air-kg-m3 0 500)",
                                      "(most-compression-psi 1 0)", "(engine-rpm 60 3)", "(engine-rpm 60 0)",
                                      "(blade-tip-m-s 1 3000)", "(ethanol-lambda 0 100)", "(water-held-ml 40 1)",
                                      "(petrol-stage -1)", "(sea-level-psi (/ 1e308 1e-308) 0)"};

  (void)state;
  for (size_t i = 0; i < sizeof calls / sizeof calls[0]; i++)
    if (!isnan(worked_out(calls[i]))) fail_msg("%s gives a number", calls[i]);
}

/* Is the rule with this condition on a reading of 62 quiet? */
static bool quiet(const char *condition)
{
  static const char form[] = "(defrule on \"[memory] x\" (logical (reading (check squeeze) (value ?v&:%s))) => "
                             "(assert (weakens (check squeeze) (by 0.5))))";
  struct conclusions drawn = {0};
  struct bench_engine b;
  char rule[300];
  struct err e;
  bool out;

  snprintf(rule, sizeof rule, form, condition);
  bench_begin(&b, false, rule, NULL, NULL);
  assert_int_equal(b.status, 0);
  case_set_result(&b.c, (struct case_result){knowledge_find(&b.l.k, ENTRY_CHECK, "squeeze"), -1, 62, 1});
  assert_int_equal(engine_tell(b.en, &b.c, NULL, 0, NULL, 0, &e), 0);
  assert_int_equal(engine_run(b.en, &drawn, &e), 0);
  out = conclusion_find(&drawn, WEAKENS, knowledge_find(&b.l.k, ENTRY_CHECK, "squeeze"), 0) < 0;
  conclusions_free(&drawn);
  bench_end(&b);
  return out;
}

static void test_conditions(void **state)
{
  (void)state;
  assert_false(quiet("(> (sea-level-psi ?v 1500) 70)"));
  assert_true(quiet("(> (sea-level-psi ?v 1500) 80)"));
  assert_true(quiet("(> (sea-level-psi ?v 20000) 0)")); /* no number: neither over nor under */
  assert_true(quiet("(< (sea-level-psi ?v 20000) 0)"));
  assert_true(quiet("(>= (sea-level-psi ?v 20000) 0)"));
  assert_true(quiet("(<= (sea-level-psi ?v 20000) 0)"));
  assert_true(quiet("(= (sea-level-psi ?v 20000) 0)"));
  assert_false(quiet("(< 1 ?v 62.5 63)")); /* and numbers compare as ever, in chains, too */
  assert_true(quiet("(< 1 ?v 61 63)"));
  assert_false(quiet("(>= ?v 62 62)"));
  assert_true(quiet("(> ?v 62)"));
  assert_false(quiet("(<= 3 ?v)"));
}

/* Too few, too many, or a word: refused when it is read, with file and line. */
static void test_refused_when_read(void **state)
{
  static const char *const calls[] = {"(sea-level-psi 62)", "(sea-level-psi 62 0 0)", "(petrol-stage)",
                                      "(petrol-stage old)", "(engine-rpm \"60\" 2)"};
  char rule[300];

  (void)state;
  for (size_t i = 0; i < sizeof calls / sizeof calls[0]; i++) {
    struct bench_engine b;

    snprintf(rule, sizeof rule,
             "(defrule sum \"[memory] x\" (logical (finding (check plug-look))) => "
             "(assert (counts-as (check squeeze) (value %s))))", calls[i]);
    bench_begin(&b, false, NULL, rule, NULL);
    if (b.status != EX_CONFIG) fail_msg("%s: status %d", calls[i], b.status);
    assert_string_equal(b.e.file, "evil.clp");
    bench_end(&b);
  }
}

/* A word that only turns up when the rule runs stops the rules, and says which. */
static void test_word_at_work(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false,
              "(defrule word-for-number \"[memory] x\" (logical (finding (check plug-look) (result ?r))) => "
              "(bind ?x ?r) (assert (counts-as (check squeeze) (value (petrol-stage ?x)))))", NULL, NULL);
  assert_int_equal(b.status, 0);
  assert_int_equal(bench_find(&b, wet), EX_CONFIG);
  assert_non_null(strstr(b.e.text, "word-for-number"));
  bench_end(&b);
  assert_true(bench_works());
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_values), cmocka_unit_test(test_no_number),
                                     cmocka_unit_test(test_conditions), cmocka_unit_test(test_refused_when_read),
                                     cmocka_unit_test(test_word_at_work)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
