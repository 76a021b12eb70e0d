/* test_rules.c - for each reason to refuse a rule a sample that is right and one that is
 * wrong; none of them is run, and no file is touched. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <cmocka.h>

#include "sample.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

/* A rule with everything right but what is given: conditions from line 2, actions from 3. */
#define RULE(conditions, actions) "(defrule try \"[memory] why\"\n(logical " conditions ")\n=> " actions ")\n"
#define HAS "(has (feature plug))"
#define THEN "(assert (advise (about plug)))"
#define ANY(name) "(finding (check squeeze) (result $?" #name "))"
#define FINE RULE(HAS, THEN)

static const struct sample_row rows[] = {
    /* --- the form --- */
    {"syntax", 4, "only (defrule", FINE, FINE "(deffunction f (?x) ?x)"},
    {"syntax", 4, "\"defglobal\"", FINE, FINE "(defglobal ?*x* = (open \"canary\" f \"w\"))"},
    {"syntax", 4, "\"deffacts\"", FINE, FINE "(deffacts x (has (feature plug)))"},
    {"syntax", 4, "\"deftemplate\"", FINE,
     FINE "(deftemplate x (slot a (default (system \"touch canary\"))))"},
    {"syntax", 4, "\"defmodule\"", FINE, FINE "(defmodule M)"},
    {"syntax", 4, "\"system\"", FINE, FINE "(system \"touch canary\")"},
    {"syntax", 4, "\"load\"", FINE, FINE "(load \"/etc/passwd\")"},
    {"syntax", 4, "\"loose\"", FINE, FINE "loose"},
    {"syntax", 4, "only (defrule", FINE, FINE "(defrule)"},
    {"syntax", 1, "has no =>", FINE, "(defrule try \"[memory] why\" (logical " HAS "))"},
    {"syntax", 2, "does not belong", FINE, RULE("word " HAS, THEN)},
    {"not-logical", 2, "inside (logical", FINE, "(defrule try \"[memory] why\"\n" HAS "\n=> " THEN ")"},
    {"not-logical", 3, "inside (logical", FINE,
     "(defrule try \"[memory] why\"\n(logical " HAS ")\n(lacks (feature plug)) => " THEN ")"},
    {"not-logical", 1, "inside (logical", FINE, "(defrule try \"[memory] why\"\n=> " THEN ")"},
    /* --- the name and the comment --- */
    {"duplicate-id", 5, "already at rules/try.clp:2", "\n" FINE "\n", "\n" FINE FINE},
    {"duplicate-id", 1, "already at rules/small.clp", FINE,
     "(defrule chain-of-two \"[memory] why\"\n(logical " HAS ")\n=> " THEN ")\n"},
    {"bad-id", 1, "not an id", FINE,
     "(defrule MAIN::chain-of-two \"[memory] why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "needs a comment", FINE, "(defrule try\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "needs a comment", FINE, "(defrule try \"why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "needs a comment", FINE,
     "(defrule try \"[memory]\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "needs a comment", FINE,
     "(defrule try \"[hearsay] why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "needs a comment", FINE,
     "(defrule try \"[memory why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "no source is named",
     "(defrule try \"[published book p. 3] why\"\n(logical " HAS ")\n=> " THEN ")",
     "(defrule try \"[published] why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"missing-basis", 1, "only remembered", FINE,
     "(defrule try \"[published recalled p. 3] why\"\n(logical " HAS ")\n=> " THEN ")"},
    {"unknown-id", 1, "no source \"bok\"", FINE,
     "(defrule try \"[published bok p. 3] why\"\n(logical " HAS ")\n=> " THEN ")"},
    /* --- what it may call --- */
    {"function", 3, "may not do \"system\"", FINE, RULE(HAS, "(system \"touch canary\")")},
    {"function", 3, "may not do \"open\"", FINE, RULE(HAS, "(open \"canary\" f \"w\")")},
    {"function", 3, "may not do \"load\"", FINE, RULE(HAS, "(load \"canary.clp\")")},
    {"function", 3, "may not do \"eval\"", FINE, RULE(HAS, "(eval \"(system \\\"touch canary\\\")\")")},
    {"function", 3, "may not do \"exit\"", FINE, RULE(HAS, "(exit)")},
    {"function", 3, "may not do \"remove\"", FINE, RULE(HAS, "(remove \"canary\")")},
    {"function", 3, "may not do \"while\"", FINE, RULE(HAS, "(while TRUE do (bind ?x 1))")},
    {"function", 3, "may not do \"retract\"", FINE, RULE("?f <- " HAS, "(retract ?f)")},
    {"function", 3, "may not do \"modify\"", FINE, RULE("?f <- " HAS, "(modify ?f (feature plug))")},
    {"function", 3, "may not do \"printout\"", FINE, RULE(HAS, "(printout t \"hello\" crlf)")},
    {"function", 3, "may not do \"halt\"", FINE, RULE(HAS, "(halt)")},
    {"function", 3, "may not do \"word\"", FINE, RULE(HAS, "word")},
    {"function", 3, "may not do \"?\"", FINE, RULE(HAS, "()")},
    {"function", 3, "may not call \"system\"", RULE(HAS, "(bind ?x (+ 1 2)) " THEN),
     RULE(HAS, "(bind ?x (system \"touch canary\")) " THEN)},
    {"function", 3, "may not call \"open\"",
     RULE(HAS, "(assert (speaks (fault rings-worn) (decibans (* 2 2))))"),
     RULE(HAS, "(assert (speaks (fault rings-worn) (decibans (open \"canary\" f \"w\"))))")},
    {"function", 3, "may not call \"read\"", FINE,
     RULE(HAS, "(assert (speaks (fault rings-worn) (decibans (+ 1 (read t)))))")},
    {"function", 2, "may not call \"system\"", RULE(HAS " (test (> 2 1))", THEN),
     RULE(HAS " (test (system \"touch canary\"))", THEN)},
    {"function", 2, "may not call \"fetch\"", RULE("(reading (check squeeze) (value ?v&:(> ?v 3)))", THEN),
     RULE("(reading (check squeeze) (value ?v&:(fetch \"x\")))", THEN)},
    {"function", 2, "may not call \"random\"", RULE("(reading (check squeeze) (value ?v&=(+ 1 2)))", THEN),
     RULE("(reading (check squeeze) (value =(random)))", THEN)},
    {"function", 2, "may not call \"div\"", RULE(HAS " (test (> (/ 4 2) 1))", THEN),
     RULE(HAS " (test (> (div 4 0) 1))", THEN)},
    {"function", 2, "may not call \"?\"", FINE, RULE(HAS " (test ((system) 1))", THEN)},
    {"salience", 1, "rank", FINE,
     "(defrule try \"[memory] why\" (declare (salience 100))\n(logical " HAS ")\n=> " THEN ")"},
    {"salience", 2, "rank", FINE,
     "(defrule try \"[memory] why\"\n(declare (auto-focus TRUE)) (logical " HAS ")\n=> " THEN ")"},
    /* --- what it may match and conclude --- */
    {"template", 2, "cannot match \"nothing-such\"", FINE, RULE("(nothing-such)", THEN)},
    {"template", 2, "cannot match \"fault\"", FINE, RULE("(fault (id rings-worn))", THEN)},
    {"template", 2, "cannot match \"object\"", FINE, RULE("(object (is-a USER))", THEN)},
    {"template", 3, "cannot conclude \"finding\"", FINE,
     RULE(HAS, "(assert (finding (check squeeze) (result weak)))")},
    {"template", 3, "cannot conclude \"nonsense\"", FINE, RULE(HAS, "(assert (nonsense))")},
    {"template", 3, "cannot conclude", FINE, RULE(HAS, "(assert word)")},
    {"slot-name", 2, "no slot \"part\"", FINE, RULE("(has (part plug))", THEN)},
    {"slot-name", 2, "no slot \"plug\"", FINE, RULE("(has plug)", THEN)},
    {"slot-name", 3, "no slot \"abot\"", FINE, RULE(HAS, "(assert (advise (abot plug)))")},
    {"slot-name", 3, "fills itself", FINE, RULE(HAS, "(assert (advise (about plug) (rule another)))")},
    /* --- ids --- */
    {"unknown-id", 2, "\"plgu\"", FINE, RULE("(has (feature plgu))", THEN)},
    {"unknown-id", 2, "\"sqeeze\"", RULE("(finding (check squeeze|plug-look))", THEN),
     RULE("(finding (check squeeze|sqeeze))", THEN)},
    {"unknown-id", 2, "\"rings\"", RULE("(belief (fault ?f&~rings-worn))", THEN),
     RULE("(belief (fault ?f&~rings))", THEN)},
    {"unknown-id", 2, "result of check plug-look", RULE("(finding (check plug-look) (result wet|dry))", THEN),
     RULE("(finding (check plug-look) (result wet|damp))", THEN)},
    {"unknown-id", 3, "\"burns\"", RULE(HAS, "(assert (warn (caution hot-parts)))"),
     RULE(HAS, "(assert (warn (caution burns)))")},
    {"unknown-id", 3, "\"squeezy\"", RULE(HAS, "(assert (clash (check-a squeeze) (check-b plug-look)))"),
     RULE(HAS, "(assert (clash (check-a squeeze) (check-b squeezy)))")},
    {"unknown-id", 2, "\"wont-go\"", RULE("(complained (complaint no-start))", THEN),
     RULE("(complained (complaint wont-go))", THEN)},
    {"unknown-id", 2, "\"tractor\"", RULE("(machine (class saw))", THEN),
     RULE("(machine (class tractor))", THEN)},
    {"unknown-id", 3, "\"plug-gone\"", RULE(HAS, "(assert (rules-out (kind fault) (id plug-fouled)))"),
     RULE(HAS, "(assert (rules-out (kind fault) (id plug-gone)))")},
    {"unknown-id", 3, "\"squeeze-none\"",
     RULE("(reading (check squeeze))", "(assert (judge-by (check squeeze) (bands spec-card)))"),
     RULE("(reading (check squeeze))", "(assert (judge-by (check squeeze) (bands squeeze-none)))")},
    /* --- limits --- */
    {"too-large", 1, "12 patterns", RULE(HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS, THEN),
     RULE(HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS HAS, THEN)},
    {"too-large", 1, "(or ...)", RULE("(or " HAS HAS ") (or " HAS HAS ")", THEN),
     RULE("(or " HAS HAS ") (or " HAS HAS ") (or " HAS HAS ")", THEN)},
    {"too-large", 1, "wildcards", RULE(ANY(a) ANY(b) ANY(c), THEN), RULE(ANY(a) ANY(b) ANY(c) ANY(d), THEN)},
    {"unconnected", 1, "share no variable",
     RULE("(has (feature ?a)) (finding (check ?b)) (belief (fault rings-worn))", THEN),
     RULE("(has (feature ?a)) (finding (check ?b)) (belief (fault ?c))", THEN)},
    {"unconnected", 1, "share no variable",
     RULE("(fault-needs (fault ?f) (feature ?x)) (has (feature ?x)) (belief (fault ?f))", THEN),
     RULE("(fault-needs (fault ?f)) (has (feature ?x)) (check-needs (check ?c))", THEN)},
};

static char here[4096];

/* Runs in an empty folder, so that a file that should not be made is seen. */
static int begin(void **state)
{
  static char empty[] = "/tmp/pullcord-canary-XXXXXX";

  (void)state;
  return getcwd(here, sizeof here) && mkdtemp(empty) && chdir(empty) == 0 ? 0 : -1;
}

static int end(void **state)
{
  char empty[4096];

  (void)state;
  if (!getcwd(empty, sizeof empty) || chdir(here) != 0) return -1;
  return rmdir(empty); /* fails when anything is in it */
}

static void test_rows(void **state)
{
  struct sample s;
  bool all = true;

  (void)state;
  sample_begin(&s);
  for (size_t i = 0; i < COUNT(rows); i++) all = sample_try(&s, "rules/try.clp", &rows[i]) && all;
  sample_end(&s);
  assert_true(all);
}

/* The rules that are shipped give cards with their basis, source, place and reason. */
static void test_cards(void **state)
{
  static const char text[] =
      "(defrule one \"[published book  p. 3, row 2] because\n   of this\" (logical " HAS ") => " THEN ")\n"
      "(defrule two \"[common-practice] so\" (logical " HAS ") => " THEN ")\n";
  struct sample s;
  struct loaded l;
  const struct rule_card *card;

  (void)state;
  sample_begin(&s);
  sample_write(s.shipped, "rules/try.clp", text, sizeof text - 1);
  sample_load(&s, &l);
  assert_int_equal(l.p.count, 0);
  assert_int_equal(l.k.rule_count, 7);
  card = &l.k.rules[knowledge_find(&l.k, ENTRY_RULE, "one")];
  assert_int_equal(card->origin.basis, BASIS_PUBLISHED);
  assert_string_equal(card->origin.source_id, "book");
  assert_string_equal(card->origin.place, "p. 3, row 2");
  assert_string_equal(card->reason, "because of this");
  assert_string_equal(card->origin.file, "rules/try.clp");
  card = &l.k.rules[knowledge_find(&l.k, ENTRY_RULE, "two")];
  assert_int_equal(card->origin.line, 3);
  assert_int_equal(card->origin.basis, BASIS_COMMON_PRACTICE);
  assert_null(card->origin.source_id);
  loaded_free(&l);
  sample_end(&s);
}

/* What is refused as a whole: the line, and no other finding. */
static void refuses_file(const char *text, size_t len, int line, const char *says)
{
  struct sample s;
  struct loaded l;

  sample_begin(&s);
  sample_write(s.shipped, "rules/try.clp", text, len);
  sample_load(&s, &l);
  if (!loaded_says(&l, "syntax", "rules/try.clp", line, says) || l.p.count != 1) {
    loaded_print(&l);
    fail_msg("wanted line %d saying \"%s\"", line, says);
  }
  assert_int_equal(l.k.rule_count, 5); /* the others are there still */
  loaded_free(&l);
  sample_end(&s);
}

static void test_bad_files(void **state)
{
  char *deep = mem_new(100001);

  (void)state;
  memset(deep, '(', 50000);
  memset(deep + 50000, ')', 50000);
  refuses_file(deep, 100000, 1, "16 deep");
  free(deep);
  refuses_file("(defrule a\n\0)", 13, 2, "zero byte");
  refuses_file("(defrule a\n\n\xfe)", 14, 3, "UTF-8");
  refuses_file(FINE "(defrule b", strlen(FINE) + 10, 4, "never closed");
  /* a lone carriage return, after which the engine reads on */
  refuses_file("; \r(system \"touch canary\")", 26, 1, "only (defrule");
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_rows),
      cmocka_unit_test(test_cards),
      cmocka_unit_test(test_bad_files),
  };

  return cmocka_run_group_tests(tests, begin, end);
}
