/* test_history.c - from stored jobs to outcomes: only what was known before the repair, only
 * with a passed proof run, and the switch. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "fixture.h"
#include "knowledge/load.h"
#include "shop/history.h"

static struct knowledge k;
static const char *source;
static char folder[] = "/tmp/pullcord-history-XXXXXX";
static struct store *store;
static int fault, early, late;
static size_t sign;

/* A fault with two checks of plain results that can be told. */
static void choose(void)
{
  for (fault = 0; fault < (int)k.fault_count; fault++) {
    early = late = -1;
    for (size_t s = 0; s < k.sign_count && late < 0; s++) {
      if (k.signs[s].fault != fault || k.signs[s].check < 0 ||
          k.checks[k.signs[s].check].kind == KIND_MEASURE)
        continue;
      if (early < 0) {
        early = k.signs[s].check;
        sign = s;
      } else if (k.signs[s].check != early) {
        late = k.signs[s].check;
      }
    }
    if (late >= 0) return;
  }
  fail_msg("no fault fits");
}

static int set_up(void **state)
{
  struct err e = {0};

  (void)state;
  fixture_shipped(source, &k);
  choose();
  if (!mkdtemp(folder)) return -1;
  setenv("PULLCORD_NOW", "1000000", 1);
  return store_open(folder, true, &store, &e);
}

static int tear_down(void **state)
{
  static const char *const names[] = {"jobs.db", "jobs.db-wal", "jobs.db-shm", "learned.json"};

  (void)state;
  store_close(store);
  for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
    char *path = file_join(folder, names[i]);

    remove(path);
    free(path);
  }
  knowledge_free(&k);
  return remove(folder);
}

static void say_machine(struct job_news *n, struct bench_case *now)
{
  struct bench_case before;

  case_begin(&before, &k);
  fixture_case(&k, now, "tiller", NULL);
  case_add_complaint(now, 0);
  job_say_change(n, &k, &before, now);
  case_free(&before);
}

/* The change that one result makes; result -1 takes it back. */
static void say_result(struct job_news *n, struct bench_case *c, int check, int result, double sure)
{
  struct bench_case before;

  job_copy_case(&k, c, &before);
  if (result < 0) case_drop_result(c, check);
  else case_set_result(c, (struct case_result){check, result, 0, sure});
  job_say_change(n, &k, &before, c);
  case_free(&before);
}

static void write_news(char *id, struct job_news *n)
{
  struct err e = {0};
  int status = *id ? job_write(store, &k, id, "test", n, &e) : job_open(store, &k, "test", n, id, &e);

  if (status) fail_msg("%s", e.text);
  job_news_free(n);
}

static void read_outcome(const char *id, struct outcome *out, bool expect_closed)
{
  struct store_entries entries;
  struct err e = {0};

  *out = (struct outcome){.machine_class = -1, .complaint = -1};
  assert_int_equal(store_entries(store, id, &entries, &e), 0);
  assert_int_equal(history_outcome(&k, &entries, out), expect_closed);
  store_entries_free(&entries);
}

static int result_of(const struct outcome *o, int check)
{
  for (size_t i = 0; i < o->result_count; i++)
    if (o->results[i].check == check) return o->results[i].result;
  return -1;
}

/* One job: advice, a result, the repair, a result after it, proof passed, closed. */
static void a_job(char *id, bool passed)
{
  struct job_news n = {0};
  struct job_advice advice = {
      .disposition = "repair", .causes = {{fault, .6}, {-1, .1}}, .count = 2, .next = -1};
  struct bench_case c;

  *id = '\0';
  say_machine(&n, &c);
  say_result(&n, &c, early, k.signs[sign].result, 1);
  job_say_advice(&n, &k, &advice);
  job_say_fault(&n, "repair", &k, fault);
  say_result(&n, &c, late, 0, 1);
  job_say_proof(&n, &k, fault, passed);
  job_say_closed(&n, &k, passed ? "repaired" : "given-up", &fault, passed);
  write_news(id, &n);
  case_free(&c);
}

/* What came after the repair is no evidence of what the fault shows. */
static void only_before_the_repair(void **state)
{
  char id[STORE_ID];
  struct outcome o;

  (void)state;
  a_job(id, true);
  read_outcome(id, &o, true);
  assert_true(o.confirmed);
  assert_int_equal(o.fault_count, 1);
  assert_int_equal(o.faults[0], fault);
  assert_int_equal(o.machine_class, fixture_id(&k, ENTRY_CLASS, "tiller"));
  assert_int_equal(o.complaint, 0);
  assert_int_equal(result_of(&o, early), k.signs[sign].result);
  assert_int_equal(result_of(&o, late), -1);
  assert_int_equal(o.said_count, 2);
  assert_int_equal(o.said[0].fault, fault);
  free(o.results);
}

static void proof_must_pass(void **state)
{
  char id[STORE_ID];
  struct job_news n = {0};
  struct outcome o;

  (void)state;
  a_job(id, false);
  read_outcome(id, &o, true);
  assert_false(o.confirmed);
  free(o.results);
  a_job(id, true);
  job_say_reopened(&n, "came back");
  write_news(id, &n);
  read_outcome(id, &o, false);
  assert_false(o.confirmed);
  free(o.results);
}

/* Unsure results, and results taken back after the repair, do not count. */
static void doubtful_results(void **state)
{
  char id[STORE_ID] = "";
  struct job_news n = {0};
  struct bench_case c;
  struct outcome o;

  (void)state;
  say_machine(&n, &c);
  say_result(&n, &c, early, 1, .5);
  say_result(&n, &c, late, 1, 1);
  job_say_fault(&n, "repair", &k, fault);
  job_say_proof(&n, &k, fault, true);
  say_result(&n, &c, late, -1, 1);
  job_say_closed(&n, &k, "repaired", &fault, 1);
  write_news(id, &n);
  read_outcome(id, &o, true);
  assert_int_equal(o.result_count, 0);
  free(o.results);
  case_free(&c);
}

/* Off: as shipped. Reset: jobs up to now are left out. Both come back from disk. */
static void switches(void **state)
{
  struct learn_switch s;
  struct history h;
  struct outcomes o;
  struct err e = {0};
  char id[STORE_ID];

  (void)state;
  assert_int_equal(learn_switch_read(folder, &s, &e), 0);
  assert_true(s.on && s.since == 0);
  assert_int_equal(history_learn(store, folder, &k, &h, &e), 0);
  assert_true(h.jobs > 0 && h.past.count > 0 && h.chances.sign[sign] >= 0);
  history_free(&h);
  s.on = false;
  assert_int_equal(learn_switch_write(folder, &s, &e), 0);
  assert_int_equal(history_learn(store, folder, &k, &h, &e), 0);
  assert_true(h.jobs == 0 && h.past.count > 0 && h.chances.sign[sign] < 0);
  history_free(&h);
  s = (struct learn_switch){true, 1700000000};
  assert_int_equal(learn_switch_write(folder, &s, &e), 0);
  s = (struct learn_switch){0};
  assert_int_equal(learn_switch_read(folder, &s, &e), 0);
  assert_true(s.on && s.since == 1700000000);
  assert_int_equal(history_read(store, &k, s.since, &o, &e), 0);
  assert_int_equal(o.count, 0);
  outcomes_free(&o);
  setenv("PULLCORD_NOW", "1700000100", 1);
  a_job(id, true);
  assert_int_equal(history_read(store, &k, s.since, &o, &e), 0);
  assert_int_equal(o.count, 1);
  assert_string_equal(o.items[0].id, id);
  outcomes_free(&o);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(only_before_the_repair),
                                     cmocka_unit_test(proof_must_pass), cmocka_unit_test(doubtful_results),
                                     cmocka_unit_test(switches)};

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, set_up, tear_down);
}
