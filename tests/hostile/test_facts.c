/* test_facts.c - for each kind of finding in facts and templates a sample that is right and
 * one that is wrong, which must be reported by kind, file and line and by nothing else. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

#include "sample.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

/* Facts for a try; line 1 is the line of deffacts. */
#define FACTS(text) "(deffacts try\n" text ")\n"

/* One check, fault, cover with everything right but what is given. */
#define CHECK(rest)                                                                                          \
  "(check (id c) (name \"c\") (system air) (ask \"c?\") (minutes 3) (basis estimate) (kind look)\n" rest ")"
#define GAUGE(rest)                                                                                          \
  "(check (id c) (name \"c\") (system air) (ask \"c?\") (minutes 3) (basis estimate) (kind measure)\n"       \
  "(results ok low) (labels \"ok\" \"low\") (means \"m\" \"n\") (anyway 0.1) " rest ")"
#define FAULT(rest)                                                                                          \
  "(fault (id f) (name \"f\") (system air) (sort wear) (is \"i\") (comes-about \"c\") (shows \"s\") (proof " \
  "\"p\")\n" rest ")"
#define COVER(id, under)                                                                                     \
  "(cover (id " id ") (name \"n\") (under " under                                                            \
  ") (minutes-off 1) (minutes-on 1) (run-without no) (basis estimate))\n"
#define BANDS(rest) "(bands (id b) (check squeeze) (basis estimate)\n" rest ")"
#define SIGN(rest) "(sign (fault rings-worn) (check plug-look) (basis estimate)\n" rest ")"
#define SETTING(id) "(setting (id " id ") (value 1) (why \"w\") (basis estimate))\n"

static const struct sample_row rows[] = {
    /* --- the form of a file --- */
    {"syntax", 1, "only (deffacts", "; nothing\n", "(defrule x => (assert (a)))\n"},
    {"syntax", 2, "only (deffacts", "\n", "\n(system \"x\")\n"},
    {"syntax", 1, "only (deffacts", "\n", "loose\n"},
    {"syntax", 1, "only (deffacts", "(deffacts x)", "(deffacts)"},
    {"syntax", 1, "only (deffacts", "(deffacts x)", "(deffacts \"x\")"},
    {"syntax", 2, "is not a fact", FACTS("\"what it holds\""), FACTS("loose")},
    {"syntax", 3, "is not a fact", "\n(deffacts try\n\"one\")", "\n(deffacts try \"one\"\n\"two\")"},
    {"syntax", 3, "belongs to no slot", FACTS("(setting\n(id s) (value 1) (why \"w\") (basis estimate))"),
     FACTS("(setting (id s) (value 1)\nloose (why \"w\") (basis estimate))")},
    {"syntax", 2, "never closed", FACTS(""), "\n(deffacts try\n"},
    /* --- template --- */
    {"template", 2, "not a kind of fact", FACTS(SETTING("s")), FACTS("(seting (id s))")},
    {"template", 2, "not a kind of fact", FACTS(""), FACTS("()")},
    {"template", 2, "not a kind of fact", FACTS(""), FACTS("(open \"canary\" w)")},
    {"template", 3, "belongs to a case", FACTS(""),
     FACTS("\n(finding (check plug-look) (result wet) (sure 1))")},
    {"template", 2, "belongs to a case", FACTS(""), FACTS("(rules-out (kind fault) (id rings-worn))")},
    /* --- slot-name --- */
    {"slot-name", 3, "did you mean \"value\"", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1)\n(valeu 2) (why \"w\") (basis estimate))")},
    {"slot-name", 3, "given twice", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1)\n(value 2) (why \"w\") (basis estimate))")},
    /* --- slot-value --- */
    {"slot-value", 2, "exactly one value", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1 2) (why \"w\") (basis estimate))")},
    {"slot-value", 2, "exactly one value",
     FACTS("(source (id s) (title \"t\") (kind standard) (status read) (note \"n\"))"),
     FACTS("(source (id s) (title \"t\") (kind standard) (status read) (note))")},
    {"slot-value", 3, "takes a number", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value\nmuch) (why \"w\") (basis estimate))")},
    {"slot-value", 2, "takes a text in double quotes", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1) (why w) (basis estimate))")},
    {"slot-value", 2, "takes a word without quotes", FACTS(SETTING("s")),
     FACTS("(setting (id \"s\") (value 1) (why \"w\") (basis estimate))")},
    {"slot-value", 2, "not a list", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value (open \"x\" w)) (why \"w\") (basis estimate))")},
    {"slot-value", 2, "guess", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1) (why \"w\") (basis guess))")},
    {"slot-value", 2, "must lie between 0 and 600",
     FACTS("(cover (id v) (name \"n\") (minutes-off 600) (minutes-on 1) (run-without no) (basis estimate))"),
     FACTS("(cover (id v) (name \"n\") (minutes-off 601) (minutes-on 1) (run-without no) (basis estimate))")},
    {"slot-value", 2, "takes a whole number",
     FACTS("(machine-class (id m) (name \"n\") (worth 20) (basis estimate))"),
     FACTS("(machine-class (id m) (name \"n\") (worth 20.5) (basis estimate))")},
    /* --- missing-slot --- */
    {"missing-slot", 2, "lacks its why", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1) (basis estimate))")},
    {"missing-slot", 2, "lacks its basis", FACTS(SETTING("s")),
     FACTS("(setting (id s) (value 1) (why \"w\"))")},
    /* --- ids --- */
    {"bad-id", 2, "not an id", FACTS(SETTING("s-2")), FACTS(SETTING("S_2"))},
    {"duplicate-id", 2, "already at facts/small.clp", FACTS(SETTING("s")), FACTS(SETTING("show-belief"))},
    {"duplicate-id", 3, "already at facts/try.clp:2", FACTS(SETTING("s") SETTING("t")),
     FACTS(SETTING("s") SETTING("s"))},
    {"duplicate-id", 2, "already at facts/small.clp",
     FACTS(BANDS("(results weak good) (limits 80) (unit \"psi\")")),
     FACTS("(bands (id squeeze-any) (check squeeze) (basis estimate) (results weak good) (limits 80) (unit "
           "\"psi\"))")},
    {"retired-id", 2, "was retired", FACTS(SETTING("s")), FACTS(SETTING("old-fault"))},
    {"unknown-id", 2, "did you mean \"plug\"",
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1) (needs plug)")),
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1) (needs plgu)"))},
    {"unknown-id", 2, "no cover", FACTS(COVER("v", "shroud")), FACTS(COVER("v", "elsewhere"))},
    {"unknown-id", 2, "no caution",
     FACTS("(repair (id r) (name \"n\") (minutes 1) (cautions hot-parts) (basis estimate))"),
     FACTS("(repair (id r) (name \"n\") (minutes 1) (cautions cold-hands) (basis estimate))")},
    {"unknown-id", 2, "no repair \"fresh-paint\"",
     FACTS(FAULT("(base-rate 0.1) (repair new-plug) (basis estimate)")),
     FACTS(FAULT("(base-rate 0.1) (repair fresh-paint) (basis estimate)"))},
    {"unknown-id", 2, "no fault \"ring-gone\"",
     FACTS(FAULT("(base-rate 0.1) (repair new-plug) (looks-like rings-worn squeeze) (basis estimate)")),
     FACTS(FAULT("(base-rate 0.1) (repair new-plug) (looks-like ring-gone squeeze) (basis estimate)"))},
    {"unknown-id", 2, "no source",
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis published) (source book) (place \"p\"))"),
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis published) (source bookk) (place \"p\"))")},
    {"unknown-id", 2, "no machine class",
     FACTS("(base-rate (fault plug-fouled) (class saw) (chance 0.2) (basis estimate))"),
     FACTS("(base-rate (fault plug-fouled) (class mower) (chance 0.2) (basis estimate))")},
    {"unknown-id", 2, "no complaint",
     FACTS("(complaint (id k) (name \"n\") (ask \"a\") (near no-start) (basis estimate))"),
     FACTS("(complaint (id k) (name \"n\") (ask \"a\") (near nothing-goes) (basis estimate))")},
    {"unknown-id", 2, "has no result \"green\"", FACTS(SIGN("(result sooted) (chance 0.5)")),
     FACTS(SIGN("(result green) (chance 0.5)"))},
    {"unknown-id", 2, "has no result \"poor\"",
     FACTS(BANDS("(results weak good) (limits 80) (unit \"psi\")")),
     FACTS(BANDS("(results poor good) (limits 80) (unit \"psi\")"))},
    /* --- basis --- */
    {"missing-basis", 2, "no source is named",
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis memory))"),
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis published))")},
    {"missing-basis", 2, "only remembered",
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis memory) (source recalled))"),
     FACTS("(caution (id x) (text \"t\") (defer-to \"d\") (basis published) (source recalled))")},
    /* --- chances --- */
    {"chance", 3, "certainty", FACTS(SIGN("(result sooted) (chance 0.99)")),
     FACTS(SIGN("(result sooted) (chance 1)"))},
    {"chance", 3, "certainty", FACTS(SIGN("(result sooted) (chance 0.01)")),
     FACTS(SIGN("(result sooted) (chance 0)"))},
    {"chance", 3, "certainty", FACTS(SIGN("(result sooted) (chance .5)")),
     FACTS(SIGN("(result sooted) (chance -0.5)"))},
    {"chance", 3, "not a chance", FACTS(SIGN("(result sooted) (chance seldom)")),
     FACTS(SIGN("(result sooted) (chance maybe)"))},
    {"chance", 3, "at most 1", FACTS(SIGN("(result sooted) (chance 0.5)") SIGN("(result wet) (chance 0.5)")),
     FACTS(SIGN("(result sooted) (chance 0.6)") SIGN("(result wet) (chance 0.6)"))},
    {"chance", 2, "leave room",
     FACTS(CHECK("(results a b d) (labels \"a\" \"b\" \"d\") (means \"a\" \"b\" \"d\") (anyway 0.4 0.5)")),
     FACTS(CHECK("(results a b d) (labels \"a\" \"b\" \"d\") (means \"a\" \"b\" \"d\") (anyway 0.6 0.5)"))},
    /* --- lengths --- */
    {"lengths", 2, "labels",
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1)")),
     FACTS(CHECK("(results a b) (labels \"a\") (means \"a\" \"b\") (anyway 0.1)"))},
    {"lengths", 2, "2 anyway",
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1)")),
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1 0.1)"))},
    {"lengths", 2, "1 results",
     FACTS(CHECK("(results a b) (labels \"a\" \"b\") (means \"a\" \"b\") (anyway 0.1)")),
     FACTS(CHECK("(results a) (labels \"a\") (means \"a\")"))},
    {"lengths", 2, "want 1 limits", FACTS(BANDS("(results weak good) (limits 80) (unit \"psi\")")),
     FACTS(BANDS("(results weak good) (limits 80 90) (unit \"psi\")"))},
    {"lengths", 2, "pairs",
     FACTS(FAULT("(base-rate 0.1) (repair new-plug) (looks-like rings-worn squeeze) (basis estimate)")),
     FACTS(FAULT("(base-rate 0.1) (repair new-plug) (looks-like rings-worn) (basis estimate)"))},
    /* --- bands and units --- */
    {"bands", 2, "do not rise", FACTS(BANDS("(results weak good weak) (limits 80 90) (unit \"psi\")")),
     FACTS(BANDS("(results weak good weak) (limits 90 80) (unit \"psi\")"))},
    {"bands", 2, "do not rise", FACTS(BANDS("(results weak good weak) (limits 80 80.1) (unit \"psi\")")),
     FACTS(BANDS("(results weak good weak) (limits 80 80) (unit \"psi\")"))},
    {"unit", 2, "not a unit", FACTS(GAUGE("(quantity length) (unit \"mm\")")),
     FACTS(GAUGE("(quantity length) (unit \"furlongs\")"))},
    {"unit", 2, "does not measure", FACTS(GAUGE("(quantity length) (unit \"mm\")")),
     FACTS(GAUGE("(quantity length) (unit \"psi\")"))},
    {"unit", 2, "Use the unit of the check", FACTS(BANDS("(results weak good) (limits 80) (unit \"psi\")")),
     FACTS(BANDS("(results weak good) (limits 80) (unit \"bar\")"))},
    /* --- signs and covers --- */
    {"sign-of-sound", 2, "sound machine", FACTS(SIGN("(result sooted) (chance 0.5)")),
     FACTS(SIGN("(result dry) (chance 0.5)"))},
    {"duplicate-sign", 4, "already at", FACTS(SIGN("(result sooted) (chance 0.3)") "\n"),
     FACTS(SIGN("(result sooted) (chance 0.3)") "\n" SIGN("(result sooted) (chance 0.3)"))},
    {"cover-loop", 2, "under itself", FACTS(COVER("v", "shroud")), FACTS(COVER("v", "v"))},
};

static void test_rows(void **state)
{
  struct sample s;

  (void)state;
  sample_begin(&s);
  for (size_t i = 0; i < COUNT(rows); i++) assert_true(sample_try(&s, "facts/try.clp", &rows[i]));
  sample_end(&s);
}

/* Two covers under each other: reported, and nobody walks round for ever. */
static void test_cover_loop_of_two(void **state)
{
  static const char text[] = FACTS(COVER("v", "w") COVER("w", "v"));
  struct sample s;
  struct loaded l;

  (void)state;
  sample_begin(&s);
  sample_write(s.shipped, "facts/try.clp", text, sizeof text - 1);
  sample_load(&s, &l);
  assert_true(loaded_says(&l, "cover-loop", "facts/try.clp", 2, "under itself") ||
              loaded_says(&l, "cover-loop", "facts/try.clp", 3, "under itself"));
  for (size_t i = 0; i < l.k.cover_count; i++) {
    size_t steps = 0;

    for (int c = (int)i; c >= 0; c = l.k.covers[c].under) assert_true(++steps <= l.k.cover_count);
  }
  loaded_free(&l);
  sample_end(&s);
}

/* ---- templates -------------------------------------------------------------------------- */

static const struct sample_row template_rows[] = {
    {"syntax", 2, "only (deftemplate", "\n(deftemplate x (slot a))", "\n(deffacts x)"},
    {"syntax", 1, "only (deftemplate", "\n", "(deffunction f () 1)"},
    {"syntax", 1, "only (deftemplate", "(deftemplate x)", "(deftemplate)"},
    {"duplicate-id", 2, "defined twice", "\n(deftemplate findings (slot a))",
     "\n(deftemplate finding (slot a))"},
    {"bad-id", 1, "not an id", "(deftemplate other (slot a))", "(deftemplate MAIN::finding (slot a))"},
    {"function", 2, "may not call \"open\"", "(deftemplate x\n(slot a (default 1)))",
     "(deftemplate x\n(slot a (default (open \"canary\" x \"w\"))))"},
    {"function", 1, "may not call \"system\"",
     "(deftemplate x (slot a (type SYMBOL) (default-dynamic (this-rule))))",
     "(deftemplate x (slot a (type SYMBOL) (default-dynamic (system \"touch canary\"))))"},
    {"function", 1, "may not call", "(deftemplate x (slot a (default-dynamic (this-rule))))",
     "(deftemplate x (slot a (default-dynamic (this-rule (exit)))))"},
};

static void test_template_rows(void **state)
{
  struct sample s;

  (void)state;
  sample_begin(&s);
  for (size_t i = 0; i < COUNT(template_rows); i++)
    assert_true(sample_try(&s, "rules/templates/try.clp", &template_rows[i]));
  sample_end(&s);
}

/* ---- many problems ---------------------------------------------------------------------- */

/* A file in which everything is wrong: counted in full, kept only in part, in order. */
static void test_many_problems(void **state)
{
  char text[20000] = "(deffacts try\n";
  size_t n = strlen(text);
  struct sample s;
  struct loaded l;

  (void)state;
  for (int i = 0; i < 1000; i++) n += (size_t)snprintf(text + n, sizeof text - n, "(wrong-%d)\n", i);
  snprintf(text + n, sizeof text - n, ")\n");
  sample_begin(&s);
  sample_write(s.shipped, "facts/try.clp", text, strlen(text));
  sample_load(&s, &l);
  assert_int_equal(l.status, 0);
  assert_int_equal(l.p.count, 1000);
  assert_int_equal(l.p.serious, 1000);
  for (size_t i = 1; i < PROBLEMS_KEPT; i++) assert_true(l.p.items[i - 1].line <= l.p.items[i].line);
  loaded_free(&l);
  sample_end(&s);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_rows),
      cmocka_unit_test(test_cover_loop_of_two),
      cmocka_unit_test(test_template_rows),
      cmocka_unit_test(test_many_problems),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
