/* test_engine.c - conclusions come and go with their reasons; what a rule may not do fails
 * even when the scan was passed by. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

#include "bench_engine.h"
#include "engine/guard.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static const char *const nothing[] = {NULL};
static const char *const wet[] = {"plug-look wet", NULL};
static const char *const dry[] = {"plug-look dry", NULL};
static const char *const weak[] = {"squeeze weak", NULL};
static const char *const wet_weak[] = {"plug-look wet", "squeeze weak", NULL};

/* ---- conclusions ------------------------------------------------------------------------ */

static void test_conclusions_go_with_their_reasons(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL, NULL, NULL);
  assert_int_equal(bench_find(&b, nothing), 0);
  assert_false(bench_drew(&b, IMPLIES, "squeeze"));
  assert_int_equal(bench_find(&b, wet), 0);
  assert_true(bench_drew(&b, IMPLIES, "squeeze"));
  assert_true(bench_drew(&b, POINTLESS, "squeeze")); /* drawn from what was drawn */
  assert_false(bench_drew(&b, SPEAKS, "rings-worn"));
  assert_int_equal(bench_find(&b, wet_weak), 0);
  assert_true(bench_drew(&b, SPEAKS, "rings-worn"));
  assert_int_equal(bench_find(&b, weak), 0); /* the plug's result is taken back */
  assert_true(bench_drew(&b, SPEAKS, "rings-worn"));
  assert_false(bench_drew(&b, IMPLIES, "squeeze"));
  assert_false(bench_drew(&b, POINTLESS, "squeeze"));
  assert_int_equal(bench_find(&b, dry), 0);
  assert_int_equal(b.drawn.count, 0);
  assert_int_equal(bench_find(&b, wet), 0);
  assert_true(bench_drew(&b, POINTLESS, "squeeze"));
  bench_end(&b);
}

/* The same case, reached by any way, gives the same conclusions as a fresh engine. */
static void test_history_leaves_no_trace(void **state)
{
  static const char *const *const ways[] = {wet,      wet_weak, dry,     weak, nothing,
                                            wet_weak, wet,      nothing, weak, wet_weak};
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL, NULL, NULL);
  for (size_t i = 0; i < COUNT(ways); i++) {
    struct bench_engine fresh;

    bench_begin(&fresh, false, NULL, NULL, NULL);
    assert_int_equal(bench_find(&fresh, ways[i]), 0);
    assert_int_equal(bench_find(&b, ways[i]), 0);
    assert_int_equal(b.drawn.count, fresh.drawn.count);
    if (b.drawn.count)
      assert_memory_equal(b.drawn.items, fresh.drawn.items, b.drawn.count * sizeof *b.drawn.items);
    bench_end(&fresh);
  }
  bench_end(&b);
}

static void test_case_facts(void **state)
{
  static const char rules[] =
      "(defrule m \"[memory] x\" (logical (machine (class saw))) => (assert (advise (about machine-told))))\n"
      "(defrule c \"[memory] x\" (logical (complained (complaint no-start) (runs no))) => (assert (advise "
      "(about complaint-told))))\n"
      "(defrule r \"[memory] x\" (logical (reading (check squeeze) (value ?v&:(> ?v 60)))) => (assert "
      "(advise (about reading-told))))\n"
      "(defrule k \"[memory] x\" (logical (card (check squeeze) (low ?l) (high ?h&:(> ?h ?l)))) => (assert "
      "(advise (about card-told))))\n"
      "(defrule l \"[memory] x\" (logical (lacks (feature four-stroke))) => (assert (advise (about "
      "lack-told))))\n";
  struct bench_engine b;
  struct case_result reading = {0, -1, 62, 1};
  struct case_card card = {.check = 0, .low = 80, .high = 90};

  (void)state;
  bench_begin(&b, false, rules, NULL, NULL);
  reading.check = card.check = knowledge_find(&b.l.k, ENTRY_CHECK, "squeeze");
  assert_int_equal(bench_find(&b, nothing), 0);
  assert_true(bench_drew(&b, ADVISE, "machine-told"));
  assert_false(bench_drew(&b, ADVISE, "complaint-told"));
  assert_false(bench_drew(&b, ADVISE, "reading-told"));
  case_add_complaint(&b.c, knowledge_find(&b.l.k, ENTRY_COMPLAINT, "no-start"));
  case_set_result(&b.c, reading);
  case_set_card(&b.c, card);
  assert_int_equal(bench_find(&b, nothing), 0);
  assert_true(bench_drew(&b, ADVISE, "complaint-told"));
  assert_true(bench_drew(&b, ADVISE, "reading-told"));
  assert_true(bench_drew(&b, ADVISE, "card-told"));
  assert_true(bench_drew(&b, JUDGE_BY, "squeeze"));
  assert_true(case_drop_result(&b.c, reading.check));
  assert_int_equal(bench_find(&b, nothing), 0);
  assert_false(bench_drew(&b, ADVISE, "reading-told"));
  assert_false(bench_drew(&b, JUDGE_BY, "squeeze"));
  assert_true(bench_drew(&b, ADVISE, "lack-told")); /* a two-stroke is no four-stroke */
  bench_end(&b);
}

/* ---- the second wall -------------------------------------------------------------------- */

/* Everything by which a rule could reach a file, a clock, the engine itself or run for ever. */
static const char taken_out[] =
    "system open close read readline read-number get-char put-char printout format remove rename "
    "load load* bload batch batch* save bsave load-facts save-facts load-instances save-instances "
    "restore-instances bload-instances bsave-instances fetch toss print-region get-region "
    "constructs-to-c dribble-on dribble-off exit set-locale timer time local-time eval build funcall "
    "apply assert-string str-assert check-syntax string-to-field explode$ gensym gensym* setgen "
    "random seed clear reset run halt retract modify duplicate undefrule undeffacts undeftemplate "
    "refresh matches agenda watch unwatch facts rules ppdefrule ppfact list-defrules while "
    "loop-for-count do-for-all-facts do-for-fact delayed-do-for-all-facts find-all-facts any-factp "
    "progn$ foreach if switch return break div mod ** sqrt exp str-cat sym-cat sub-string upcase "
    "send make-instance mem-used mem-requests release-mem conserve-mem set-strategy "
    "set-salience-evaluation focus set-fact-duplication set-dynamic-constraint-checking "
    "set-static-constraint-checking set-profile-percent-threshold operating-system options sort "
    "dependents dependencies fact-slot-value get-fact-list call-next-method assert* ";

static void test_functions_are_taken_out(void **state)
{
  char names[sizeof taken_out];
  struct bench_engine b;
  int tried = 0;

  (void)state;
  bench_begin(&b, false, NULL, NULL, NULL);
  strcpy(names, taken_out);
  for (const char *name = strtok(names, " "); name; name = strtok(NULL, " "), tried++) {
    char text[300];

    snprintf(text, sizeof text, "\n(defrule evil\n  (has (feature plug))\n  =>\n  (%s \"canary\" f \"w\"))\n",
             name);
    bench_reopen(&b, text, NULL);
    if (b.status != EX_CONFIG) fail_msg("%s is there", name);
    assert_string_equal(b.e.file, "evil.clp");
    if (!strstr(b.e.text, name)) fail_msg("%s: %s", name, b.e.text);
    assert_true(b.e.line >= 2 && b.e.line <= 6);
  }
  assert_int_equal(tried, 116);
  bench_end(&b);
  assert_true(bench_works());
}

static const char *const refused_texts[] = {
    /* runs the stack over */
    "(deffunction f (?x) (f ?x))\n(defrule evil (has (feature ?x&:(f 1))) => (f 1))",
    "(defglobal ?*f* = (open \"canary\" f \"w\"))",
    "(defglobal ?*f* = 1)",
    "(deffacts f (has (feature plug)))",
    "(defmodule M)",
    "(defclass C (is-a USER))",
    "(definstances i (c of C))",
    "(defgeneric g)",
    "(defmethod g ((?x NUMBER)) (g ?x))",
    "(defmessage-handler USER h () (exit))",
    "(deftemplate t (slot a (default (open \"canary\" f \"w\"))))",
    "(deftemplate t (slot a (default-dynamic (system \"touch canary\"))))",
    "(defrule evil (has (feature plug)) (test (remove \"canary\")) => )",
    "(defrule evil (declare (salience (open \"canary\" f \"w\"))) (has (feature plug)) =>)",
    "(defrule evil (nothing-such) => )\n)",
    "(defrule evil (has (feature plug)) =>",
    "(system \"touch canary\")",
    "garbage",
    "\"",
};

static void test_texts_are_refused(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL, NULL, NULL);
  for (size_t i = 0; i < COUNT(refused_texts); i++) {
    bench_reopen(&b, refused_texts[i], NULL);
    if (b.status != EX_CONFIG) fail_msg("taken (%d): %s", b.status, refused_texts[i]);
    assert_string_equal(b.e.file, "evil.clp");
  }
  bench_end(&b);
  assert_int_not_equal(access("canary", F_OK), 0);
  assert_true(bench_works());
}

/* Should a function be found that reaches them, these are what the library calls. */
FILE *guard_fopen(const char *path, const char *mode);
int guard_remove(const char *path);
int guard_rename(const char *from, const char *to);
char *guard_setlocale(int category, const char *locale);
void guard_exit(int status);
void *guard_malloc(size_t size);
void guard_free(void *p);

static void test_guard_denies(void **state)
{
  char path[] = "/tmp/pullcord-canary-XXXXXX", other[64];
  int fd = mkstemp(path);

  (void)state;
  assert_true(fd >= 0);
  close(fd);
  snprintf(other, sizeof other, "%s-b", path);
  assert_null(guard_fopen(path, "r"));
  assert_null(guard_fopen(other, "w"));
  assert_int_not_equal(access(other, F_OK), 0);
  assert_int_not_equal(guard_remove(path), 0);
  assert_int_not_equal(guard_rename(path, other), 0);
  assert_int_equal(access(path, F_OK), 0);
  assert_string_equal(guard_setlocale(0, "de_DE.UTF-8"), "C");
  unlink(path);
}

static void test_guard_trips(void **state)
{
  static struct guard g; /* static: its value is wanted after the jump */
  static int step;

  (void)state;
  g = (struct guard){.most = 1000};
  step = 0;
  if (setjmp(g.out) == 0) {
    guard_enter(&g);
    assert_non_null(guard_malloc(600));
    guard_free(guard_malloc(400));
    step = 1;
    guard_malloc(401);
    step = 2;
  }
  guard_enter(NULL);
  assert_int_equal(step, 1);
  assert_string_equal(g.tripped, "used more memory than allowed");
  guard_release(&g);
  assert_int_equal(g.used, 0);

  g = (struct guard){.most = 1000};
  if (setjmp(g.out) == 0) {
    guard_enter(&g);
    guard_malloc((size_t)-1);
    step = 3;
  }
  guard_enter(NULL);
  assert_int_equal(step, 1);
  assert_non_null(g.tripped);

  g = (struct guard){.most = 1000};
  if (setjmp(g.out) == 0) {
    guard_enter(&g);
    guard_exit(1);
    step = 4;
  }
  guard_enter(NULL);
  assert_int_equal(step, 1);
  assert_string_equal(g.tripped, "tried to end the program");

}

/* Looks a thousand times; what tripped, NULL: nothing. */
static const char *look_often(struct guard *g)
{
  if (setjmp(g->out) == 0) {
    guard_enter(g);
    for (int i = 0; i < 1000; i++) guard_look();
  }
  guard_enter(NULL);
  return g->tripped;
}

/* Each clock stops by itself; to wait for the processor is no work. */
static void test_guard_time(void **state)
{
  const struct timespec wait_for = {0, 150 * 1000 * 1000};
  struct guard worked = {.most = 1000, .until = 1e12}, waited = {.most = 1000, .worked_until = 1e12},
               honest = {.most = 1000};

  (void)state;
  assert_string_equal(look_often(&worked), "took longer than allowed");
  assert_string_equal(look_often(&waited), "took longer than allowed");
  guard_start(&honest, .1);
  nanosleep(&wait_for, NULL);
  assert_null(look_often(&honest));
}

/* ---- rules that the engine itself refuses, though they pass the scan --------------------- */

static void test_engine_refuses_with_line(void **state)
{
  static const char *const texts[] = {
      "\n(defrule t \"[memory] x\"\n (logical (finding (check ?c&:(> ?c 3))))\n => (assert (advise (about "
      "x))))",
      "\n(defrule t \"[memory] x\"\n (logical (has (feature plug)))\n => (assert (unsafe (check 5))))",
      "\n(defrule t \"[memory] x\"\n (logical (has (feature plug)))\n => (assert (speaks (fault ?unbound) "
      "(decibans 1))))",
      "\n(defrule t \"[memory] x\"\n (logical (has (feature plug)))\n => (assert (speaks (fault rings-worn) "
      "(decibans 21))))",
      "\n(defrule t \"[memory] x\"\n (logical (has (feature plug plug)))\n => (assert (advise (about x))))",
      "\n(defrule t \"[memory] x\"\n (logical (has (feature plug)) (test (> 1)))\n => (assert (advise (about "
      "x))))"};

  (void)state;
  for (size_t i = 0; i < COUNT(texts); i++) {
    struct bench_engine b;

    bench_begin(&b, false, texts[i], NULL, NULL);
    if (b.status != EX_CONFIG) fail_msg("%d: %s", b.status, texts[i]);
    assert_non_null(strstr(b.e.file, "own/rules/try.clp"));
    if (b.e.line < 2 || b.e.line > 5) fail_msg("line %d: %s", b.e.line, b.e.text);
    bench_end(&b);
  }
  assert_true(bench_works());
}

/* ---- rules that cannot be worked out ------------------------------------------------------ */

static const struct {
  const char *actions, *says;
} wrong[] = {
    {"(assert (speaks (fault rings-worn) (decibans (* 5 5))))", "allowed range -20 to 20"},
    {"(assert (speaks (fault rings-worn) (decibans (- 0 ?s 20))))", "allowed range -20 to 20"},
    {"(assert (implies (check squeeze) (result good) (strength (+ ?s 0.5))))", "allowed range 0 to 1"},
    {"(assert (speaks (fault rings-worn) (decibans (/ 5 (- ?s 1)))))", "divide by zero"},
    {"(bind ?x (/ 5 (- ?s 1))) (assert (advise (about x)))", "divide by zero"},
};

static void test_wrong_numbers_are_not_passed_over(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(wrong); i++) {
    char text[400];
    struct bench_engine b;
    struct err again;

    snprintf(text, sizeof text,
             "\n(defrule wrong \"[memory] x\"\n (logical (finding (check plug-look) (result wet) (sure "
             "?s)))\n => %s)\n",
             wrong[i].actions);
    bench_begin(&b, false, text, NULL, NULL);
    assert_int_equal(b.status, 0);
    assert_int_equal(bench_find(&b, dry), 0); /* it does not fire yet */
    if (bench_find(&b, wet) != EX_CONFIG) fail_msg("passed over: %s", text);
    if (!strstr(b.e.text, wrong[i].says)) fail_msg("%s", b.e.text);
    assert_non_null(strstr(b.e.text, "rule \"wrong\""));
    assert_non_null(strstr(b.e.file, "rules/try.clp"));
    assert_int_equal(b.e.line, 2);
    again = b.e; /* stopped half-way, it stays stopped: half of the conclusions would be wrong */
    assert_int_equal(bench_find(&b, dry), EX_CONFIG);
    assert_string_equal(b.e.text, again.text);
    assert_int_equal(engine_run(b.en, &b.drawn, &b.e), EX_CONFIG);
    bench_end(&b);
  }
  assert_true(bench_works());
}

/* In a condition it goes wrong while the results are taken in. */
static void test_wrong_condition(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false,
              "(defrule wrong \"[memory] x\" (logical (finding (check plug-look) (sure ?s&:(> (/ 1 (- ?s 1)) "
              "3)))) => "
              "(assert (advise (about x))))",
              NULL, NULL);
  assert_int_equal(b.status, 0);
  assert_int_equal(bench_find(&b, wet), EX_CONFIG);
  assert_non_null(strstr(b.e.text, "rule \"wrong\""));
  assert_int_equal(b.e.line, 1);
  bench_end(&b);
}

/* What is no number at all is not passed on. */
static void test_no_number(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL,
              "(defrule evil (finding (check plug-look)) => (assert (speaks (fault rings-worn) "
              "(decibans (- (* 1e308 10) (* 1e308 10))))))",
              NULL);
  assert_int_equal(b.status, 0);
  bench_find(&b, wet);
  assert_false(bench_drew(&b, SPEAKS, "rings-worn"));
  bench_end(&b);
}

/* Ids that are not there, which only a text past the scan can bring: left out. */
static void test_unknown_ids_are_left_out(void **state)
{
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL,
              "(defrule evil (finding (check plug-look)) => (assert (unsafe (check none-such))) (assert "
              "(speaks (fault none) "
              "(decibans 3))) (assert (judge-by (check squeeze) (bands none))) (assert (implies (check "
              "squeeze) (result none) "
              "(strength 1))) (assert (rules-out (kind bands) (id none))) (assert (clash (check-a squeeze) "
              "(check-b none))))",
              NULL);
  assert_int_equal(b.status, 0);
  assert_int_equal(bench_find(&b, dry), 0);
  assert_int_equal(b.drawn.count, 0);
  bench_end(&b);
}

/* As deep as the reader lets it be, a rule loads or is refused, and no more than that. */
static void test_deepest_conditions(void **state)
{
  static const char *const words[] = {"not", "and", "or", "exists", "forall", "logical"};
  struct bench_engine b;

  (void)state;
  bench_begin(&b, false, NULL, NULL, NULL);
  for (size_t i = 0; i < COUNT(words); i++)
    for (int depth = 1; depth <= 14; depth++) {
      char text[1000] = "(defrule deep (logical ";

      for (int d = 0; d < depth; d++) {
        strcat(strcat(strcat(text, "("), words[i]), " ");
        if (strcmp(words[i], "forall") == 0) strcat(text, "(has (feature plug)) ");
      }
      strcat(text, "(has (feature plug))");
      for (int d = 0; d < depth; d++) strcat(text, ")");
      strcat(text, ") => (assert (advise (about deep))))");
      bench_reopen(&b, text, NULL);
      if (b.status == 0) assert_int_equal(bench_find(&b, wet), 0);
      else assert_int_equal(b.status, EX_CONFIG);
    }
  bench_end(&b);
  assert_true(bench_works());
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_conclusions_go_with_their_reasons),
      cmocka_unit_test(test_history_leaves_no_trace),
      cmocka_unit_test(test_case_facts),
      cmocka_unit_test(test_functions_are_taken_out),
      cmocka_unit_test(test_texts_are_refused),
      cmocka_unit_test(test_guard_denies),
      cmocka_unit_test(test_guard_trips),
      cmocka_unit_test(test_guard_time),
      cmocka_unit_test(test_engine_refuses_with_line),
      cmocka_unit_test(test_wrong_numbers_are_not_passed_over),
      cmocka_unit_test(test_wrong_condition),
      cmocka_unit_test(test_no_number),
      cmocka_unit_test(test_unknown_ids_are_left_out),
      cmocka_unit_test(test_deepest_conditions),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
