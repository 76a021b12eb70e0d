/* test_home.c - from the repair to the machine going home: the service check, the ending, a
 * proof run that failed as evidence, and how past jobs like it ended. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "assess/deeper.h"
#include "sample.h"
#include "shop/similar.h"

/* A store of its own with one open job of a tiller that runs only on choke. */
struct bench { char *folder; struct store *s; char id[STORE_ID]; const struct knowledge *k; };

static void begin(struct bench *b)
{
  struct bench_case none, c;
  struct job_news n = {0};
  struct err e;

  *b = (struct bench){.folder = sample_folder(), .k = sample_knowledge()};
  b->s = sample_store(b->folder);
  case_begin(&none, b->k);
  case_begin(&c, b->k);
  assert_int_equal(case_set_machine(&c, b->k, knowledge_find(b->k, ENTRY_CLASS, "tiller"), NULL, 0, NULL, 0, &e), 0);
  case_add_complaint(&c, knowledge_find(b->k, ENTRY_COMPLAINT, "runs-on-choke-only"));
  job_say_change(&n, b->k, &none, &c);
  assert_int_equal(job_open(b->s, b->k, "tester", &n, b->id, &e), 0);
  job_news_free(&n);
  case_free(&none);
  case_free(&c);
}

static void end(struct bench *b)
{
  store_close(b->s);
  sample_remove(b->folder);
}

static void keep(const struct bench *b, struct job_news *n)
{
  struct err e;

  assert_int_equal(job_write(b->s, b->k, b->id, "tester", n, &e), 0);
  job_news_free(n);
}

static void say(const struct bench *b, const char *words)
{
  struct job_news n = {0};
  struct err e;

  assert_int_equal(job_service_read(&n, words, &e), 0);
  keep(b, &n);
}

static size_t open_items(const struct bench *b)
{
  struct job j;
  struct err e;
  size_t count = 0;

  assert_int_equal(job_read(b->s, b->k, b->id, &j, &e), 0);
  for (size_t i = 0; i < SERVICE_ITEMS; i++) count += job_service_open(&j, i);
  job_free(&j);
  return count;
}

static void what_is_said_of_the_service_check_is_read(void **state)
{
  static const char *const bad[] = {"",          "done",      "oil",         "oil fine",  "fuel found", "speed left",
                                    "oilx done", "all found", "found water", "oil  ,   ", "switch done"};
  struct job_news n = {0};
  struct bench b;
  struct job j;
  struct err e;

  (void)state;
  for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
    assert_int_equal(job_service_read(&n, bad[i], &e), EX_USAGE);
    assert_int_equal(n.count, 0);
  }
  begin(&b);
  assert_int_equal(open_items(&b), SERVICE_ITEMS);
  say(&b, "Oil, plug and filter done");
  say(&b, "stop switch done, and twice over");
  say(&b, "fuel found: water in the bowl");
  say(&b, "speed left no tachometer");
  assert_int_equal(open_items(&b), 2); /* fuel, leaks */
  assert_int_equal(job_read(b.s, b.k, b.id, &j, &e), 0);
  assert_int_equal(j.service[service_find("fuel")].state, SERVICE_FOUND);
  assert_string_equal(j.service[service_find("fuel")].text, "water in the bowl");
  assert_string_equal(j.service[service_find("stop-switch")].text, "and twice over");
  assert_int_equal(j.service[service_find("speed")].state, SERVICE_LEFT);
  job_free(&j);
  say(&b, "fuel done drained");
  say(&b, "all done");
  assert_int_equal(open_items(&b), 0);
  end(&b);
}

static void a_repair_and_a_failed_run_open_the_service_check_again(void **state)
{
  int fault = knowledge_find(sample_knowledge(), ENTRY_FAULT, "main-jet-blocked");
  struct job_news n = {0};
  struct bench b;

  (void)state;
  begin(&b);
  job_say_fault(&n, "repair", b.k, fault);
  keep(&b, &n);
  say(&b, "all done");
  job_say_proof(&n, b.k, fault, true);
  keep(&b, &n);
  assert_int_equal(open_items(&b), 0); /* a run that passed changes nothing */
  job_say_fault(&n, "repair", b.k, fault);
  keep(&b, &n);
  assert_int_equal(open_items(&b), SERVICE_ITEMS);
  say(&b, "all done");
  job_say_proof(&n, b.k, fault, false);
  keep(&b, &n);
  assert_int_equal(open_items(&b), SERVICE_ITEMS);
  end(&b);
}

static void the_ending_says_what_was_left_open(void **state)
{
  int fault = knowledge_find(sample_knowledge(), ENTRY_FAULT, "main-jet-blocked");
  struct job_news n = {0};
  struct bench b;
  struct job j;
  struct err e;

  (void)state;
  begin(&b);
  job_say_fault(&n, "repair", b.k, fault);
  job_say_proof(&n, b.k, fault, true);
  keep(&b, &n);
  say(&b, "oil plug filter leaks stop-switch done");
  say(&b, "speed left no tachometer");
  assert_int_equal(job_read(b.s, b.k, b.id, &j, &e), 0);
  job_say_ended(&n, b.k, "repaired", &j);
  assert_string_equal(n.items[0].body, "{\"ending\":\"repaired\",\"confirmed\":[\"main-jet-blocked\"],\"open\":[\"fuel\"]}");
  job_news_free(&n);
  job_say_ended(&n, b.k, "given-up", &j);
  assert_string_equal(n.items[0].body, "{\"ending\":\"given-up\",\"confirmed\":[]}");
  job_news_free(&n);
  job_free(&j);
  say(&b, "fuel done");
  assert_int_equal(job_read(b.s, b.k, b.id, &j, &e), 0);
  job_say_ended(&n, b.k, "repaired", &j);
  assert_string_equal(n.items[0].body, "{\"ending\":\"repaired\",\"confirmed\":[\"main-jet-blocked\"]}");
  job_news_free(&n);
  job_free(&j);
  end(&b);
}

/* The blame of a fault in the stored job as it is. */
static double blame(const struct bench *b, int fault)
{
  struct assessor *assessor;
  struct assessment a;
  struct err e;
  struct job j;
  double out = 0;

  assert_int_equal(job_read(b->s, b->k, b->id, &j, &e), 0);
  assert_int_equal(assessor_open(b->k, &assessor, &e), 0);
  assert_int_equal(assess_case(assessor, &j.bench_case, &a, &e), 0);
  for (size_t i = 0; i < a.ranking_count; i++)
    if (a.ranking[i].fault == fault) out = a.ranking[i].blame;
  assessment_free(&a);
  assessor_close(assessor);
  job_free(&j);
  return out;
}

static void a_failed_proof_run_opens_the_job_again_as_evidence(void **state)
{
  int fault = knowledge_find(sample_knowledge(), ENTRY_FAULT, "main-jet-blocked"),
      other = knowledge_find(sample_knowledge(), ENTRY_FAULT, "idle-passages-blocked");
  struct job_news n = {0};
  double before, others;
  struct bench b;
  struct job j;
  struct err e;

  (void)state;
  begin(&b);
  before = blame(&b, fault);
  others = blame(&b, other);
  assert_true(before > 0.1 && others > 0);
  job_say_fault(&n, "repair", b.k, fault);
  job_say_proof(&n, b.k, fault, true);
  job_say_closed(&n, b.k, "repaired", &fault, 1);
  keep(&b, &n);
  assert_int_equal(job_read(b.s, b.k, b.id, &j, &e), 0);
  assert_true(j.closed > 0);
  assert_int_equal(job_confirmed(&j, &(int){0}), 1);
  job_free(&j);
  job_say_proof(&n, b.k, fault, false); /* it came back */
  keep(&b, &n);
  assert_int_equal(job_read(b.s, b.k, b.id, &j, &e), 0);
  assert_int_equal(j.closed, 0);
  assert_string_equal(j.ending, "");
  assert_int_equal(job_confirmed(&j, &(int){0}), 0);
  job_free(&j);
  assert_true(blame(&b, fault) < before / 4); /* put right, and the complaint is still there */
  assert_true(blame(&b, other) > others);  /* so the others gain */
  end(&b);
}

/* ---- past jobs ----------------------------------------------------------------------------- */

static void past_jobs_are_counted_by_their_ending(void **state)
{
  const struct knowledge *k = sample_knowledge();
  int jet = knowledge_find(k, ENTRY_FAULT, "main-jet-blocked"), fuel = knowledge_find(k, ENTRY_FAULT, "fuel-stale");
  struct outcome now = {.id = "me", .machine_class = 2, .complaint = 3};
  struct outcomes past = {0};
  struct similar_sum sum;

  (void)state;
  similar_sum(k, &now, &past, &sum);
  assert_int_equal(sum.jobs, 0);
  for (int i = 0; i < 12; i++) {
    struct outcome *o = outcomes_add(&past);

    snprintf(o->id, sizeof o->id, i == 0 ? "me" : "job%d", i); /* itself does not count */
    o->machine_class = i == 1 ? 1 : 2;                         /* nor another class */
    o->complaint = i == 2 ? 4 : 3;                             /* nor another complaint */
    o->ending = i < 9 ? 0 : i - 8;                             /* 9, 10, 11: the other endings */
    o->confirmed = i < 8;                                      /* job8: repaired, never proved */
    o->fault_count = 1;
    o->faults[0] = i < 6 ? jet : fuel;
  }
  similar_sum(k, &now, &past, &sum);
  assert_int_equal(sum.jobs, 9);
  assert_int_equal(sum.proved, 5);
  assert_int_equal(sum.endings[0], 6);
  assert_int_equal(sum.endings[1] + sum.endings[2] + sum.endings[3], 3);
  assert_int_equal(sum.cause_count, 2);
  assert_int_equal(sum.causes[0].fault, jet);
  assert_int_equal(sum.causes[0].times, 3);
  assert_int_equal(sum.causes[1].times, 2); /* what was not proved is no cause */
  outcomes_free(&past);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(what_is_said_of_the_service_check_is_read),
      cmocka_unit_test(a_repair_and_a_failed_run_open_the_service_check_again),
      cmocka_unit_test(the_ending_says_what_was_left_open),
      cmocka_unit_test(a_failed_proof_run_opens_the_job_again_as_evidence),
      cmocka_unit_test(past_jobs_are_counted_by_their_ending)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
