/* test_engine_limits.c - rules that would run for ever or take all memory are stopped, say
 * which limit it was, and the program goes on. Those marked "scanned" pass the scan. */
#include <malloc.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/buf.h"
#include "bench_engine.h"

static const char *const nothing[] = {NULL};
static const char *const wet[] = {"plug-look wet", NULL};
static const char *const spark[] = {"spark-test none", NULL};
static const char *const squeeze[] = {"compression weak", NULL};

/* After a limit the engine stays stopped, can be closed, and a new one works. */
static void stopped(struct bench_engine *b, const char *says, double since, double seconds)
{
  double took = seconds_now() - since;
  struct err again = b->e;

  assert_int_equal(b->status, EX_TEMPFAIL);
  if (!strstr(b->e.text, says)) fail_msg("\"%s\" does not say \"%s\"", b->e.text, says);
  assert_non_null(strstr(b->e.text, "Nothing recorded is lost"));
  if (took > seconds) fail_msg("it took %.2f s", took);
  if (b->en) {
    assert_int_equal(bench_find(b, nothing), EX_TEMPFAIL);
    assert_string_equal(b->e.text, again.text);
    assert_int_equal(engine_run(b->en, &b->drawn, &b->e), EX_TEMPFAIL);
  }
  bench_end(b);
  assert_true(bench_works());
}

/* ---- firing without end ----------------------------------------------------------------- */

static const char endless[] =
    "(defrule seed \"[memory] x\" (logical (finding (check plug-look) (result wet))) => "
    "(assert (speaks (fault rings-worn) (decibans 20))))\n"
    "(defrule for-ever \"[memory] x\"\n (logical (speaks (fault rings-worn) (decibans ?d)))\n"
    " => (assert (speaks (fault rings-worn) (decibans (* ?d 0.9999)))))\n";

static void test_endless_firing_scanned(void **state)
{
  struct bench_engine b;
  double start;

  (void)state;
  bench_begin(&b, false, endless, NULL, NULL);
  assert_int_equal(b.status, 0);
  assert_int_equal(bench_find(&b, nothing), 0);
  start = seconds_now();
  assert_int_equal(bench_find(&b, wet), EX_TEMPFAIL);
  assert_non_null(strstr(b.e.text, "\"for-ever\"")); /* the rule, its file and its line */
  assert_non_null(strstr(b.e.file, "rules/try.clp"));
  assert_int_equal(b.e.line, 2);
  stopped(&b, "rule engine", start, 8);
}

static void test_firing_limit(void **state)
{
  struct engine_limits few = {.firings = 50};
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, endless, NULL, &few);
  bench_find(&b, wet);
  stopped(&b, "fired more rules than allowed", seconds_now(), 5);
}

static void test_time_limit(void **state)
{
  struct engine_limits quick = {.firings = 1000000000, .run_seconds = 0.2, .bytes = (size_t)1 << 30};
  struct bench_engine b;
  double start;

  (void)state;
  bench_begin(&b, false, endless, NULL, &quick);
  start = seconds_now();
  bench_find(&b, wet);
  stopped(&b, "took longer than allowed", start, 3);
}

static void test_memory_limit(void **state)
{
  struct engine_limits small = {.firings = 1000000000, .run_seconds = 100, .bytes = (size_t)16 << 20};
  struct bench_engine b;
  double start = seconds_now();

  (void)state;
  bench_begin(&b, false, endless, NULL, &small);
  assert_int_equal(b.status, 0);
  bench_find(&b, wet);
  stopped(&b, "used more memory than allowed", start, 20);
}

/* Rules that call each other round in a circle stop by themselves: a fact is there once. */
static void test_circle_comes_to_an_end_scanned(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false,
              "(defrule a \"[memory] x\" (logical (finding (check plug-look))) => (assert (unsafe (check "
              "squeeze))))\n"
              "(defrule b \"[memory] x\" (logical (unsafe (check squeeze))) => (assert (pointless (check "
              "plug-look))))\n"
              "(defrule c \"[memory] x\" (logical (pointless (check plug-look))) => (assert (unsafe (check "
              "squeeze))))\n",
              NULL, NULL);
  assert_int_equal(bench_find(&b, wet), 0);
  assert_true(bench_drew(&b, UNSAFE, "squeeze"));
  bench_end(&b);
}

/* ---- while the rules are read ------------------------------------------------------------ */

/* Every (or ...) doubles the rules: 2 to the 24th. */
static void test_or_explosion(void **state)
{
  struct bench_engine b;
  struct buf text = {0};
  double start = seconds_now();

  (void)state;
  buf_add(&text, "(defrule evil (logical");
  for (int i = 0; i < 24; i++) buf_add(&text, " (or (has (feature a)) (lacks (feature a)))");
  buf_add(&text, ") => (assert (advise (about x))))");
  bench_begin(&b, false, NULL, text.text, NULL);
  stopped(&b, "while reading the rules", start, 12);
  buf_free(&text);
}

/* Three patterns that share nothing, over all that is known of the trade. */
static void test_cross_product(void **state)
{
  struct bench_engine b;
  double start = seconds_now();

  (void)state;
  bench_begin(
      &b, true, NULL,
      "(defrule evil (logical (fault-needs (fault ?a)) (check-needs (check ?b)) (check-engine (check ?c)) "
      "(fault-needs (feature ?d))) => (assert (advise (about x))))",
      NULL);
  stopped(&b, "while reading the rules", start, 12);
}

/* The same with constants, which the scan does not count as open. */
static void test_cross_product_scanned(void **state)
{
  struct bench_engine b;
  double start = seconds_now();

  (void)state;
  bench_begin(
      &b, true,
      "(defrule t \"[memory] x\" (logical (check-engine (check ?a) (engine any|stopped)) (check-engine "
      "(check ?b) "
      "(engine any|stopped)) (check-engine (check ?c) (engine any|stopped)) (check-engine (check ?d) (engine "
      "any|stopped))) => (assert (advise (about x))))",
      NULL, NULL);
  stopped(&b, "while reading the rules", start, 12);
}

/* A very long word: the library's time grows with the square of its length. */
static void test_long_word(void **state)
{
  struct engine_limits quick = {.load_seconds = 1};
  struct bench_engine b;
  struct buf text = {0};
  double start;

  (void)state;
  buf_add(&text, "(defrule evil (has (feature ");
  for (int i = 0; i < 3000000; i++) buf_addn(&text, "w", 1);
  buf_add(&text, ")) =>)");
  start = seconds_now();
  bench_begin(&b, false, NULL, text.text, &quick);
  if (b.status == 0) bench_end(&b); /* fast enough after all */
  else stopped(&b, "while reading the rules", start, 8);
  assert_true(seconds_now() - start < 10);
  buf_free(&text);
}

/* ---- while results are taken in and taken back -------------------------------------------- */

/* Joins that find nothing, on memory that was used before and is not asked for again: the
 * clock must be looked at although nothing is allocated. `last` is how they find nothing. */
#define THREE_PATTERNS                                                                                       \
  "(check-engine (check ?a) (engine ?x&any)) (check-engine (check ?b) (engine ?y&stopped)) "                 \
  "(check-engine (check ?c) (engine stopped)) "

static void slow_join(const char *last)
{
  struct engine_limits roomy = {.bytes = (size_t)1 << 30, .run_seconds = 2, .load_seconds = 20};
  struct bench_engine b;
  struct buf text = {0};
  double start;

  buf_add(&text, "(defrule fill (logical (finding (check compression)) " THREE_PATTERNS
                 "(finding (check main-jet-clean) (result none-such))) => (assert (advise (about x))))\n"
                 "(defrule slow (logical (finding (check spark-test)) " THREE_PATTERNS);
  buf_addf(&text, "%s) => (assert (advise (about x))))\n", last);
  bench_begin(&b, true, NULL, text.text, &roomy);
  assert_int_equal(b.status, 0);
  if (bench_find(&b, squeeze)) fail_msg("the first join says nothing of the second: %s", b.e.text);
  start = seconds_now();
  bench_find(&b, spark); /* compression is taken back first, in the order of the names */
  stopped(&b, "while taking in the results", start, 12);
  buf_free(&text);
}

static void test_slow_join(void **state)
{
  (void)state;
  slow_join("(check-engine (check ?d) (engine any|stopped)) (test (eq ?a ?b ?c ?d nothing))");
}

static void test_slow_join_by_comparing(void **state)
{
  (void)state;
  slow_join("(check-engine (check ?d) (engine ?z&~hot&~cold&~cranking&~running&~?x&~?y))");
}

/* Eighty thousand reasons for one conclusion, all taken back at once. */
static void test_many_reasons_scanned(void **state)
{
  struct engine_limits half = {.run_seconds = 0.5};
  struct bench_engine b;
  double start;

  (void)state;
  bench_begin(
      &b, true,
      "(defrule many \"[memory] x\" (logical (finding (check spark-test)) (check-engine (check ?a) (engine "
      "any|stopped)) (check-engine (check ?b) (engine any|stopped)) (or (machine) (machine (class ?k)))) => "
      "(assert (advise (about x))))",
      NULL, &half);
  assert_int_equal(b.status, 0);
  start = seconds_now();
  if (bench_find(&b, spark) == 0) bench_find(&b, nothing);
  if (b.status == 0) { /* a fast machine, within all limits */
    assert_true(seconds_now() - start < 3);
    bench_end(&b);
  } else {
    stopped(&b, "while taking in the results", start, 3);
  }
}

/* ---- again and again ---------------------------------------------------------------------- */

/* Bytes that malloc has handed out and not got back. Under AddressSanitizer this says nothing,
 * and its own look for leaks at the end takes over. */
static size_t bytes_in_use(void)
{
  struct mallinfo2 m = mallinfo2();

  return m.uordblks + m.hblkhd;
}

static void test_nothing_piles_up(void **state)
{
  struct engine_limits small = {.firings = 1000000000, .run_seconds = 100, .bytes = (size_t)16 << 20};
  size_t before = 0;

  (void)state;
  for (int i = 0; i < 6; i++) {
    struct bench_engine b;

    bench_begin(&b, false, endless, NULL, &small);
    assert_int_equal(bench_find(&b, wet), EX_TEMPFAIL);
    bench_end(&b);
    if (i == 0) before = bytes_in_use();
  }
  assert_true(bytes_in_use() < before + 100000); /* one engine left behind would be 16 MB */
}

/* Two engines at once: one that is stopped does not touch the other. */
static void test_engines_are_apart(void **state)
{
  struct engine_limits few = {.firings = 50};
  struct bench_engine bad, good;

  (void)state;
  bench_begin(&good, false, NULL, NULL, NULL);
  bench_begin(&bad, false, endless, NULL, &few);
  assert_int_equal(bench_find(&good, wet), 0);
  assert_int_equal(bench_find(&bad, wet), EX_TEMPFAIL);
  assert_true(bench_drew(&good, IMPLIES, "squeeze"));
  bench_end(&bad);
  assert_int_equal(bench_find(&good, nothing), 0);
  assert_false(bench_drew(&good, IMPLIES, "squeeze"));
  assert_int_equal(bench_find(&good, wet), 0);
  assert_true(bench_drew(&good, IMPLIES, "squeeze"));
  bench_end(&good);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_endless_firing_scanned),
      cmocka_unit_test(test_firing_limit),
      cmocka_unit_test(test_time_limit),
      cmocka_unit_test(test_memory_limit),
      cmocka_unit_test(test_circle_comes_to_an_end_scanned),
      cmocka_unit_test(test_or_explosion),
      cmocka_unit_test(test_cross_product),
      cmocka_unit_test(test_cross_product_scanned),
      cmocka_unit_test(test_long_word),
      cmocka_unit_test(test_slow_join),
      cmocka_unit_test(test_slow_join_by_comparing),
      cmocka_unit_test(test_many_reasons_scanned),
      cmocka_unit_test(test_nothing_piles_up),
      cmocka_unit_test(test_engines_are_apart),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
