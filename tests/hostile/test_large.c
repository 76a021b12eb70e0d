/* test_large.c - files as large as they may be, made to be slow: time and memory stay within
 * bounds. The bounds are wide, for a busy machine; what they are to catch takes minutes. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>

#include <cmocka.h>

#include "base/buf.h"
#include "knowledge/sexpr.h"
#include "sample.h"

#if defined(__SANITIZE_ADDRESS__)
#define INSTRUMENTED 1
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
#define INSTRUMENTED 1
#endif
#endif
#ifndef INSTRUMENTED
#define INSTRUMENTED 0
#endif

enum { SECONDS = INSTRUMENTED ? 60 : 20, MEGABYTES = 800 };

/* head, then `piece` (with the number of the piece, where it has a %d) until `bytes`, then tail. */
static void fill(struct buf *b, const char *head, const char *piece, const char *tail, size_t bytes)
{
  b->len = 0;
  buf_add(b, head);
  for (int i = 0; b->len + strlen(tail) + 200 < bytes; i++) {
    if (strstr(piece, "%d")) buf_addf(b, piece, i, i);
    else buf_add(b, piece);
  }
  buf_add(b, tail);
}

static const struct {
  const char *name, *head, *piece, *tail;
} shapes[] = {
    {"facts/words.clp", "(deffacts x (check (id c) (results ", "a ", ")))"},
    {"facts/unknown-ids.clp", "(deffacts x (repair (id r) (name \"n\") (minutes 1) (basis estimate) (off ",
     "nothing-such ", ")))"},
    {"facts/slots.clp", "(deffacts x (setting ", "(id s)", "))"},
    {"facts/wrong-slots.clp", "(deffacts x (setting ", "(vlaue 3)", "))"},
    {"facts/wrong-slot-facts.clp", "(deffacts x ", "(setting (vlaue 3))", ")"},
    {"facts/facts.clp", "(deffacts x ", "(setting (id s-%d) (value 1) (why \"w\") (basis estimate))", ")"},
    {"facts/twins.clp", "(deffacts x ", "(setting (id s) (value 1) (why \"w\") (basis estimate))", ")"},
    {"facts/retired.clp", "(deffacts x ", "(retired (id r-%d) (why \"w\"))", ")"},
    {"facts/covers.clp", "(deffacts x ",
     "(cover (id c-%d) (under c-%d1) (name \"n\") (minutes-off 1) (minutes-on 1) (run-without no) (basis "
     "estimate))",
     ")"},
    {"facts/loops.clp", "(deffacts x ",
     "(cover (id c-%d) (under c-%d) (name \"n\") (minutes-off 1) (minutes-on 1) (run-without no) (basis "
     "estimate))",
     ")"},
    {"facts/base-rates.clp", "(deffacts x ",
     "(base-rate (fault plug-fouled) (class saw) (chance 0.1) (basis estimate))", ")"},
    {"facts/bands.clp", "(deffacts x ",
     "(bands (id b-%d) (check squeeze) (results weak good) (limits 1) (unit \"psi\") (basis estimate))", ")"},
    {"facts/lists.clp", "", "()", ""},
    {"facts/brackets.clp", "", "(", ""},
    {"facts/closing.clp", "", ")", ""},
    {"facts/quotes.clp", "", "\"\"", ""},
    {"facts/comment.clp", ";", "x", ""},
    {"rules/rules.clp", "",
     "(defrule r-%d \"[memory] y\" (logical (has (feature plug))) => (assert (advise (about x))))", ""},
    {"rules/twins.clp", "",
     "(defrule r \"[memory] y\" (logical (has (feature plug))) => (assert (advise (about x))))", ""},
    {"rules/no-comment.clp", "", "(defrule r-%d)", ""},
    {"rules/patterns.clp", "(defrule r \"[memory] y\" (logical ", "(has (feature ?x%d))",
     ") => (assert (advise (about x))))"},
    {"rules/ors.clp", "(defrule r \"[memory] y\" (logical ", "(or (has (feature plug)) (has (feature plug)))",
     ") => (assert (advise (about x))))"},
    {"rules/asserts.clp", "(defrule r \"[memory] y\" (logical (has (feature plug))) => ",
     "(assert (nothing))", ")"},
    {"rules/calls.clp", "(defrule r \"[memory] y\" (logical (has (feature plug))) => (bind ?x (+ ", "(+ 1 2)",
     ")))"},
    {"rules/templates/more.clp", "", "(deftemplate t-%d (slot a))", ""},
    {"rules/templates/slots.clp", "(deftemplate t ", "(slot a-%d)", ")"},
    {"rules/templates/words.clp", "(deftemplate t (slot a (allowed-symbols ", "w ", ")))"},
};

static double megabytes_at_most(void)
{
  struct rusage u;

  assert_int_equal(getrusage(RUSAGE_SELF, &u), 0);
  return (double)u.ru_maxrss / 1024;
}

static void test_nearly_too_large(void **state)
{
  struct buf b = {0};

  (void)state;
  for (size_t i = 0; i < sizeof shapes / sizeof shapes[0]; i++) {
    struct sample s;
    struct loaded l;
    double start, took;

    fill(&b, shapes[i].head, shapes[i].piece, shapes[i].tail, SEXPR_MAX_BYTES);
    sample_begin(&s);
    sample_write(s.shipped, shapes[i].name, b.text, b.len);
    start = seconds_now();
    sample_load(&s, &l);
    took = seconds_now() - start;
    print_message("%-28s %6.2f s, %zu problems, status %d, %.0f MB\n", shapes[i].name, took, l.p.count,
                  l.status, megabytes_at_most());
    assert_int_equal(l.status, 0);
    if (took > SECONDS) fail_msg("%s took %.1f s", shapes[i].name, took);
    loaded_free(&l);
    sample_end(&s);
  }
  buf_free(&b);
  if (!INSTRUMENTED) assert_true(megabytes_at_most() < MEGABYTES);
}

static void test_five_megabytes(void **state)
{
  struct buf b = {0};
  struct sample s;
  struct loaded l;
  double start;

  (void)state;
  fill(&b, "", "; a comment that goes on and on\n", "", 5000000);
  sample_begin(&s);
  sample_write(s.shipped, "rules/large.clp", b.text, b.len);
  start = seconds_now();
  sample_load(&s, &l);
  assert_int_equal(l.status, EX_DATAERR);
  assert_non_null(strstr(l.e.file, "rules/large.clp"));
  assert_non_null(strstr(l.e.text, "larger than"));
  assert_true(seconds_now() - start < SECONDS);
  loaded_free(&l);
  sample_end(&s);
  buf_free(&b);
}

/* Nine files of nearly 4 MiB: refused before they are read. */
static void test_too_much_in_all(void **state)
{
  struct buf b = {0};
  struct sample s;
  struct loaded l;
  double start;
  char name[40];

  (void)state;
  fill(&b, "", "; a comment that goes on and on\n", "", SEXPR_MAX_BYTES);
  sample_begin(&s);
  for (int i = 0; i < 9; i++) {
    snprintf(name, sizeof name, "facts/large-%d.clp", i);
    sample_write(s.own, name, b.text, b.len);
  }
  start = seconds_now();
  sample_load(&s, &l);
  assert_int_equal(l.status, EX_CONFIG);
  assert_non_null(strstr(l.e.text, "32 MiB"));
  assert_true(seconds_now() - start < 2);
  loaded_free(&l);
  sample_end(&s);
  buf_free(&b);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_five_megabytes),
      cmocka_unit_test(test_too_much_in_all),
      cmocka_unit_test(test_nearly_too_large),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
