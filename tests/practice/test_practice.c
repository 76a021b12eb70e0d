/* test_practice.c - made-up machines, steps, records and progress. */
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <setjmp.h>
#include <unistd.h>
#include <cmocka.h>

#include "base/text.h"
#include "practice/casework.h"
#include "practice/debrief.h"
#include "practice/progress.h"
#include "practice/unsafe.h"
#include "practice/walk.h"
#include "with.h"

static struct sitting sitting(uint64_t seed)
{
  struct sitting s = {.level = LEVEL_FREE, .kind = HIDDEN_ONE, .seed = seed};

  snprintf(s.apprentice, sizeof s.apprentice, "anna");
  return s;
}

static void kinds_are_kept(void **state)
{
  struct with *w = *state;

  for (uint64_t seed = 1; seed <= 200; seed++) {
    struct hidden h;

    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_ONE, "ignition", NULL}, seed, &h));
    assert_int_equal(h.fault_count, 1);
    assert_string_equal(w->k.faults[h.net.fault_of[h.culprit]].system, "ignition");
    for (size_t i = 0; i < w->k.feature_count; i++) assert_int_not_equal(h.machine.features[i], TRI_UNKNOWN);
    hidden_free(&h);
    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_TWO, NULL, NULL}, seed, &h));
    assert_int_equal(h.fault_count, 2);
    assert_int_not_equal(h.faults[0], h.faults[1]);
    hidden_free(&h);
    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_LAST_REPAIR, NULL, NULL}, seed, &h));
    assert_string_equal(w->k.faults[h.net.fault_of[h.culprit]].sort, "assembly");
    hidden_free(&h);
    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_NOTHING, NULL, NULL}, seed, &h));
    assert_string_equal(w->k.faults[h.net.fault_of[h.culprit]].sort, "use");
    hidden_free(&h);
    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_MISLEADS, NULL, NULL}, seed, &h));
    assert_true(h.misled >= 0);
    assert_int_equal(hidden_result(&h, h.misled), 0);
    hidden_free(&h);
  }
}

/* The same seed, the same bytes: machine, path and debrief. */
static void same_seed_same_bytes(void **state)
{
  struct with *w = *state;
  char *first = NULL;

  for (int i = 0; i < 2; i++) {
    struct sitting s = sitting(77);
    struct debrief d;
    struct buf b = {0};
    struct run r;
    struct err e;

    assert_int_equal(sitting_begin(&s, &w->k, w->assessor, false, &r, &e), 0);
    assert_int_equal(walk_to_the_end(&r, &e), 0);
    assert_int_equal(debrief_make(&d, &r, &s, w->assessor, &e), 0);
    debrief_text(&b, &d, 78);
    debrief_html(&b, &d);
    assert_null(strstr(buf_text(&b), "nan"));
    if (first) assert_string_equal(buf_text(&b), first);
    free(first);
    first = b.text;
    debrief_free(&d);
    run_free(&r);
  }
  free(first);
}

static void record_is_done_again(void **state)
{
  struct with *w = *state;
  struct record x = {.sitting = sitting(9), .knowledge = w->k.fingerprint}, back;
  char path[] = "/tmp/practice-test-XXXXXX";
  struct run r, again;
  struct err e;
  int fd = mkstemp(path);

  assert_true(fd >= 0);
  close(fd);
  assert_int_equal(sitting_begin(&x.sitting, &w->k, w->assessor, false, &r, &e), 0);
  for (int i = 0; i < 4 && r.end == RUN_OPEN; i++) {
    struct entry entry = walk_best(&r);

    if (unsafe_wants_lead_off(&r, &entry)) record_add(&x, &(struct entry){.act = ACT_LEAD, .sure = -1});
    if (unsafe_makes_spark(&r, &entry)) record_add(&x, &(struct entry){.act = ACT_WIPE, .sure = -1});
    run_make_safe(&r, &entry);
    entry.expect = "what \"I\" expect";
    record_add(&x, &entry);
    assert_int_equal(run_do(&r, &entry, &e), 0);
  }
  summary_of(&r, &x.summary);
  assert_int_equal(record_keep(path, &w->k, &x, &e), 0);
  assert_int_equal(record_read(path, &w->k, &back, &e), 0);
  assert_int_equal(back.count, x.count);
  assert_string_equal(back.entries[x.count - 1].expect, "what \"I\" expect");
  assert_int_equal(record_replay(&back, &w->k, w->assessor, SIZE_MAX, &again, &e), 0);
  assert_int_equal(again.step_count, r.step_count);
  assert_true(again.minutes == r.minutes && again.regret == r.regret && again.end == r.end);
  for (size_t i = 0; i < r.step_count; i++)
    assert_memory_equal(&again.steps[i].result, &r.steps[i].result, sizeof r.steps[i].result);
  unlink(path);
  run_free(&r);
  run_free(&again);
  record_free(&x);
  record_free(&back);
}

static void bad_records_are_refused(void **state)
{
  static const char *const bad[] = {
      "",
      "{",
      "[]",
      "{\"pullcord\": \"bench-1\"}",
      "{\"pullcord\": \"practice-1\"}",
      "{\"pullcord\": \"practice-1\", \"level\": \"free\", \"kind\": \"one\", \"seed\": \"x\"}",
      "{\"pullcord\": \"practice-1\", \"level\": \"free\", \"kind\": \"one\", \"seed\": \"1\", \"entries\": "
      "[{\"act\": \"fly\"}]}",
      "{\"pullcord\": \"practice-1\", \"level\": \"free\", \"kind\": \"one\", \"seed\": \"1\", \"entries\": "
      "[{\"act\": \"check\", \"id\": \"no-such\"}]}"};
  struct with *w = *state;

  for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
    char path[] = "/tmp/practice-test-XXXXXX";
    int fd = mkstemp(path);
    struct record x;
    struct err e = {0};

    assert_true(fd >= 0);
    assert_int_equal(write(fd, bad[i], strlen(bad[i])), (ssize_t)strlen(bad[i]));
    close(fd);
    assert_int_not_equal(record_read(path, &w->k, &x, &e), 0);
    assert_true(*e.text);
    unlink(path);
  }
}

/* A machine by hand: what it lays down is shown, the hidden fault is cured by its repair. */
static void by_hand(void **state)
{
  static const char good[] =
      "{\"pullcord\": \"practice-case-1\", \"machine\": \"tiller\", \"complaint\": \"runs-on-choke-only\", "
      "\"words\": \"Without the choke it dies.\", \"faults\": [\"main-jet-blocked\"], "
      "\"results\": {\"spark-test\": \"jumps\", \"compression\": 62}}";
  static const char *const bad[] = {
      "{\"pullcord\": \"practice-case-1\", \"machine\": \"tilleer\"}",
      ("{\"pullcord\": \"practice-case-1\", \"machine\": \"tiller\", \"complaint\": \"runs-on-choke-only\", "
       "\"faults\": [\"x\"]}"),
      ("{\"pullcord\": \"practice-case-1\", \"machine\": \"tiller\", \"complaint\": \"runs-on-choke-only\", "
       "\"faults\": [], \"results\": {\"spark-test\": \"green\"}}")};
  struct with *w = *state;
  struct case_result r;
  struct hidden h;
  struct err e = {0};

  if (casework_read(&w->k, "case", good, &h, &e)) fail_msg("%s", e.text);
  assert_string_equal(hidden_words(&h), "Without the choke it dies.");
  hidden_look(&h, knowledge_find(&w->k, ENTRY_CHECK, "compression"), &r);
  assert_true(r.result == -1 && r.value == 62);
  hidden_look(&h, knowledge_find(&w->k, ENTRY_CHECK, "spark-test"), &r);
  assert_int_equal(r.result, 0);
  assert_false(
      hidden_repair(&h, (w->k.faults[h.net.fault_of[h.culprit]].repair + 1) % (int)w->k.repair_count));
  assert_true(hidden_repair(&h, w->k.faults[h.net.fault_of[h.culprit]].repair));
  hidden_free(&h);
  for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++)
    assert_int_not_equal(casework_read(&w->k, "case", bad[i], &h, &e), 0);
}

/* Acts that hurt stop the run whatever they would have shown; the same made safe do not. */
static void unsafe_acts_stop(void **state)
{
  struct with *w = *state;
  int blade = knowledge_find(&w->k, ENTRY_CHECK, "blade-look"),
      mower = knowledge_find(&w->k, ENTRY_CLASS, "walk-behind-mower");
  struct entry look = {.act = ACT_CHECK, .at = blade, .sure = -1};
  char why[600];

  assert_true(blade >= 0 && mower >= 0);
  for (int safe = 0; safe < 2; safe++) {
    struct hidden h;
    struct run r;
    struct err e;

    assert_true(hidden_make(&w->k, &(struct hidden_wish){mower, HIDDEN_ONE, NULL, NULL}, 4, &h));
    assert_int_equal(run_begin(&r, &w->k, w->assessor, &h, true, &e), 0);
    if (safe) assert_int_equal(run_do(&r, &(struct entry){.act = ACT_LEAD, .at = 0, .sure = -1}, &e), 0);
    assert_int_equal(run_do(&r, &look, &e), 0);
    assert_int_equal(r.end == RUN_UNSAFE, !safe);
    assert_int_equal(*r.unsafe != '\0', !safe);
    if (!safe) assert_true(run_score(&r) == 0);
    run_free(&r);
  }
  assert_true(unsafe_act("a shot of starting fluid") >= 0);
  assert_int_equal(unsafe_act("spark test"), -1);
  for (int two = 0; two < 2; two++) {
    struct hidden h;
    struct run r;
    struct err e;

    assert_true(
        hidden_make(&w->k,
                    &(struct hidden_wish){knowledge_find(&w->k, ENTRY_CLASS, two ? "chainsaw" : "tiller"),
                                          HIDDEN_ONE, NULL, NULL},
                    4, &h));
    assert_int_equal(run_begin(&r, &w->k, w->assessor, &h, true, &e), 0);
    assert_int_equal(unsafe_act_here(&r, unsafe_act("ether"), why, sizeof why), two);
    run_free(&r);
  }
}

/* What somebody might type, and the act that it is. */
static void unsafe_acts_are_understood(void **state)
{
  static const struct {
    const char *line, *act;
  } typed[] = {{"smoke a cigarette", "smoking"},
               {"have a smoke by the tank", "smoking"},
               {"light up a pipe", "smoking"},
               {"run it indoors", "indoors"},
               {"start it in the garage with the door shut", "indoors"},
               {"put my hand near the chain", "hands-in"},
               {"turn the blade by hand", "hands-in"},
               {"clear the auger by hand", "hands-in"},
               {"spray ether in the carb", "starting-fluid"},
               {"pour some petrol down the carb", "petrol-in-throat"},
               {"wash the filter in petrol", "petrol-as-cleaner"},
               {"siphon it by mouth", "mouth"},
               {"run it without the guard", "guard-off"},
               {"refuel it while running", "fill-running"},
               {"plug it into the house", "back-feed"},
               {"tie down the bar", "bypass-switch"},
               {"drop start the saw", "drop-start"},
               {"feel the spray with my hand", "jet-on-skin"},
               {"look with a lighter", "flame"},
               {"hold the lead and pull", "hold-lead"},
               {"disconnect the governor", "unhook-governor"}};
  static const char *const harmless[] = {
      "smoke after ten minutes", "ask whether he smokes by the tank", "run it",
      "was it run indoors",      "does the battery hold a charge",    "spark test"};
  struct with *w = *state;
  char name[400];

  for (size_t i = 0; i < sizeof typed / sizeof typed[0]; i++) {
    int act = unsafe_act(typed[i].line);

    if (act < 0) fail_msg("\"%s\" is taken for nothing", typed[i].line);
    assert_string_equal(unsafe_act_name(act), typed[i].act);
  }
  for (size_t i = 0; i < sizeof harmless / sizeof harmless[0]; i++)
    if (unsafe_act(harmless[i]) >= 0) fail_msg("\"%s\" is taken for an act", harmless[i]);
  for (size_t i = 0; i < w->k.check_count + w->k.repair_count; i++) { /* none stands in the way of a name */
    snprintf(name, sizeof name, "%s",
             i < w->k.check_count ? w->k.checks[i].name : w->k.repairs[i - w->k.check_count].name);
    text_lower(name);
    if (unsafe_act(name) >= 0) fail_msg("\"%s\" is taken for an act", name);
  }
}

/* Petrol that a check let out must be wiped up before what is repaired is tried. */
static void spilt_petrol_is_wiped_up_first(void **state)
{
  struct with *w = *state;
  struct entry look = {
      .act = ACT_CHECK, .at = knowledge_find(&w->k, ENTRY_CHECK, "fuel-look-and-smell"), .sure = -1};

  for (int wiped = 0; wiped < 2; wiped++) {
    struct run r;
    struct err e;
    struct entry fix = {.act = ACT_REPAIR, .sure = -1};

    with_run(w, HIDDEN_TWO, "fuel", 6, true, &r);
    fix.at = w->k.faults[r.culprit].repair;
    assert_int_equal(run_do(&r, &look, &e), 0);
    assert_true(r.spilt);
    if (wiped) assert_int_equal(run_do(&r, &(struct entry){.act = ACT_WIPE, .sure = -1}, &e), 0);
    if (wiped) run_make_safe(&r, &fix);
    assert_int_equal(run_do(&r, &fix, &e), 0);
    assert_int_equal(r.end == RUN_UNSAFE, !wiped);
    run_free(&r);
  }
}

/* Nothing is seen, heard or measured of an engine running that does not start, nor advised. */
static void no_readings_of_what_does_not_run(void **state)
{
  struct with *w = *state;
  int speed = knowledge_find(&w->k, ENTRY_CHECK, "top-speed"), dead = 0, alive = 0;
  char why[600];

  assert_true(speed >= 0);
  for (uint64_t seed = 1; seed <= 80; seed++) {
    struct entry measure = {.act = ACT_CHECK, .at = speed, .sure = -1};
    bool starts;
    struct run r;

    with_run(w, HIDDEN_ONE, NULL, seed, true, &r);
    starts = strcmp(w->k.complaints[r.hidden.complaint].runs, "no") != 0;
    if (!starts) assert_false(run_possible(&r, &measure, why, sizeof why));
    if (!starts) assert_non_null(strstr(why, "does not"));
    if (starts) alive += run_possible(&r, &measure, why, sizeof why);
    for (size_t i = 0; !starts && i < r.advice.count; i++)
      if (r.advice.options[i].step.kind == ADVICE_CHECK) {
        measure.at = r.advice.options[i].step.at;
        assert_true(run_possible(&r, &measure, why, sizeof why));
      }
    dead += !starts;
    run_free(&r);
  }
  if (dead <= 3 || alive <= 3) fail_msg("of 80 machines %d do not start, of the others %d can be measured", dead, alive);
}

/* Stated certainty is scored on whether it was right. */
static void certainty_is_scored(void **state)
{
  struct with *w = *state;

  for (int right = 0; right < 2; right++) {
    struct hidden h;
    struct run r;
    struct err e;
    int fault;

    assert_true(hidden_make(&w->k, &(struct hidden_wish){-1, HIDDEN_ONE, "fuel", NULL}, 12, &h));
    assert_int_equal(run_begin(&r, &w->k, w->assessor, &h, true, &e), 0);
    fault = r.culprit;
    for (size_t i = 0; !right && i < w->k.fault_count; i++)
      if (r.hidden.net.place_of[i] >= 0 && w->k.faults[i].repair != w->k.faults[r.culprit].repair)
        fault = (int)i;
    r.lead_off = true;
    assert_int_equal(run_do(&r, &(struct entry){.act = ACT_DECLARE, .at = fault, .sure = 0.8}, &e), 0);
    assert_int_equal(r.end, right ? RUN_DECLARED : RUN_OPEN); /* it runs no better: go on */
    assert_int_equal(r.right, right);
    assert_true(right ? r.brier > 0.0399 && r.brier < 0.0401 : r.brier > 0.6399 && r.brier < 0.6401);
    run_free(&r);
  }
}

/* Blocks first, then mixed; what went wrong comes back after others. */
static void what_to_practise_next(void **state)
{
  static const char *const block[] = {"fuel", "ignition", "air", "compression"};
  struct progress p;

  (void)state;
  progress_begin(&p, "anna");
  progress_end(&p);
  assert_string_equal(p.next_system, "fuel");
  assert_int_equal(p.next_level, LEVEL_GUIDED);
  for (int i = 0; i < 12; i++) {
    struct record x = {.sitting = sitting(1),
                       .summary = {.over = true,
                                   .right = i != 5,
                                   .score = 95,
                                   .regret = 5,
                                   .expected = 100,
                                   .brier = -1,
                                   .sure = -1}};

    assert_string_equal(p.next_system, i == 8 || i == 9 || i == 10 || i == 11 ? p.next_system : block[i / 3]);
    snprintf(x.summary.system, sizeof x.summary.system, "%s", block[i / 3]);
    progress_add(&p, &x);
    progress_end(&p);
  }
  assert_string_equal(p.next_system, "ignition"); /* its third run went wrong */
  assert_int_equal(p.next_level, LEVEL_FREE);
  {
    struct record x = {.sitting = sitting(1),
                       .summary = {.over = true, .right = true, .score = 95, .brier = -1, .sure = -1}};

    snprintf(x.summary.system, sizeof x.summary.system, "ignition");
    progress_add(&p, &x);
    progress_end(&p);
    assert_null(p.next_system); /* mixed */
  }
  assert_false(progress_name_good("../x"));
  assert_true(progress_name_good("anna-2"));
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(kinds_are_kept),
                                     cmocka_unit_test(same_seed_same_bytes),
                                     cmocka_unit_test(record_is_done_again),
                                     cmocka_unit_test(bad_records_are_refused),
                                     cmocka_unit_test(by_hand),
                                     cmocka_unit_test(unsafe_acts_stop),
                                     cmocka_unit_test(unsafe_acts_are_understood),
                                     cmocka_unit_test(spilt_petrol_is_wiped_up_first),
                                     cmocka_unit_test(no_readings_of_what_does_not_run),
                                     cmocka_unit_test(certainty_is_scored),
                                     cmocka_unit_test(what_to_practise_next)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
