/* test_job.c - what entries mean: whatever is written comes back as it was, here and in
 * another store. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/buf.h"
#include "base/file.h"
#include "base/mem.h"
#include "base/random.h"
#include "sample.h"
#include "shop/jobfile.h"
#include "shop/jobline.h"

static size_t below(struct random *r, size_t n) { return (size_t)(random_unit(r) * (double)n); }

static void random_machine(struct random *r, const struct knowledge *k, struct bench_case *c)
{
  int has[4], lacks[4];
  size_t has_count = below(r, 4), lacks_count = below(r, 4);
  struct err e;

  for (size_t i = 0; i < has_count; i++) has[i] = (int)below(r, k->feature_count);
  for (size_t i = 0; i < lacks_count; i++) lacks[i] = (int)below(r, k->feature_count);
  case_set_machine(c, k, (int)below(r, k->class_count), has, has_count, lacks, lacks_count,
                   &e); /* refused pairs: no change */
}

static void random_result(struct random *r, const struct knowledge *k, struct bench_case *c)
{
  int check = (int)below(r, k->check_count);
  const struct check *x = &k->checks[check];
  struct case_result result = {check, (int)below(r, x->results.count), 0, 1};

  if (x->kind == KIND_MEASURE && below(r, 2)) {
    result.result = -1;
    result.value = random_unit(r) * 100; /* any digits */
  } else if (below(r, 5) == 0) {
    result.result = 0;
    result.sure = 0;
  }
  if (result.sure > 0 && below(r, 3) == 0) result.sure = 0.8;
  case_set_result(c, result);
  case_take_off(c, k, &x->off);
}

/* One thing that a conversation may do to a case. */
static void change(struct random *r, const struct knowledge *k, struct bench_case *c)
{
  switch (below(r, 9)) {
  case 0: random_machine(r, k, c); break;
  case 1: case_add_complaint(c, (int)below(r, k->complaint_count)); break;
  case 2: if (c->result_count) case_drop_result(c, c->results[below(r, c->result_count)].check); break;
  case 3: c->off[below(r, k->cover_count)] = below(r, 2); break;
  case 4: c->mended[below(r, k->fault_count)] = below(r, 2); break;
  case 5: if (c->complaint_count && below(r, 3) == 0) c->complaint_count--; break;
  default: random_result(r, k, c); break;
  }
}

static void assert_same_case(const struct knowledge *k, const struct bench_case *a,
                             const struct bench_case *b)
{
  assert_int_equal(a->machine_class, b->machine_class);
  assert_memory_equal(a->features, b->features, k->feature_count);
  assert_memory_equal(a->off, b->off, k->cover_count * sizeof *a->off);
  assert_memory_equal(a->mended, b->mended, k->fault_count * sizeof *a->mended);
  assert_int_equal(a->complaint_count, b->complaint_count);
  for (size_t i = 0; i < a->complaint_count; i++) assert_int_equal(a->complaints[i], b->complaints[i]);
  assert_int_equal(a->result_count, b->result_count);
  for (size_t i = 0; i < a->result_count; i++) {
    const struct case_result *x = &a->results[i], *y = case_result_of(b, x->check);

    assert_non_null(y);
    assert_int_equal(x->result, y->result);
    assert_true(x->value == y->value && x->sure == y->sure); /* to the last bit */
  }
}

/* Random walks of a case, written step by step and read back after every one. */
static void what_changes_comes_back_exactly(void **state)
{
  const struct knowledge *k = sample_knowledge();
  char *folder = sample_folder(), id[STORE_ID];
  struct store *s = sample_store(folder);
  struct random r = {20261125};
  struct err e;

  (void)state;
  for (int walk = 0; walk < 6; walk++) {
    struct bench_case before, now;

    sample_job(s, "walk", id);
    case_begin(&before, k);
    case_begin(&now, k);
    for (int step = 0; step < 30; step++) {
      struct job_news n = {0};
      struct job j;

      for (size_t i = below(&r, 3) + 1; i > 0; i--) change(&r, k, &now);
      job_say_change(&n, k, &before, &now);
      assert_int_equal(job_write(s, k, id, "a", &n, &e), 0);
      job_news_free(&n);
      case_free(&before);
      job_copy_case(k, &now, &before);
      assert_int_equal(job_read(s, k, id, &j, &e), 0);
      assert_int_equal(j.unread, 0);
      assert_same_case(k, &now, &j.bench_case);
      job_free(&j);
      job_say_change(&n, k, &before, &now); /* nothing changed: nothing to say */
      assert_int_equal(n.count, 0);
    }
    case_free(&before);
    case_free(&now);
  }
  store_close(s);
  sample_remove(folder);
}

static int fault(const char *id) { return knowledge_find(sample_knowledge(), ENTRY_FAULT, id); }

static void write_news(struct store *s, const char *id, struct job_news *n)
{
  struct err e;

  assert_int_equal(job_write(s, sample_knowledge(), id, "a", n, &e), 0);
  job_news_free(n);
}

static void a_job_goes_from_intake_to_home_and_back(void **state)
{
  const struct knowledge *k = sample_knowledge();
  char *folder = sample_folder(), id[STORE_ID];
  struct store *s = sample_store(folder);
  int jet = fault("main-jet-blocked"), stale = fault("fuel-stale"), list[4];
  struct store_jobs jobs;
  struct job_news n = {0};
  struct job j;
  struct err e;

  (void)state;
  sample_job(s, "starts then dies\033[2J", id); /* what owners say must not take hold of a screen */
  job_say_text(&n, "owner", "the blue one");
  job_say_fault(&n, "repair", k, stale);
  job_say_proof(&n, k, stale, false);
  job_say_fault(&n, "repair", k, jet);
  job_say_proof(&n, k, jet, true);
  job_say_minutes(&n, 20);
  job_say_minutes(&n, 12.5);
  job_say_text(&n, "part", "bowl gasket");
  write_news(s, id, &n);
  assert_int_equal(job_read(s, k, id, &j, &e), 0);
  assert_string_equal(j.words, "starts then dies [2J");
  assert_string_equal(j.owner, "the blue one");
  assert_int_equal(j.repair_count, 2);
  assert_int_equal(j.proof, PROOF_PASSED);
  assert_true(j.bench_case.mended[stale] && !j.bench_case.mended[jet]);
  assert_true(j.minutes == 32.5);
  assert_int_equal(job_confirmed(&j, list), 1);
  assert_int_equal(list[0], jet);
  job_say_closed(&n, k, job_ending(0), list, 1);
  job_free(&j);
  sample_now(9000);
  write_news(s, id, &n);
  assert_int_equal(job_read(s, k, id, &j, &e), 0);
  assert_int_equal(j.closed, 9000);
  assert_string_equal(j.ending, "repaired");
  job_free(&j);

  job_say_proof(&n, k, jet, false); /* it came back: the job is open again, with that as evidence */
  write_news(s, id, &n);
  assert_int_equal(job_read(s, k, id, &j, &e), 0);
  assert_int_equal(j.closed, 0);
  assert_string_equal(j.ending, "");
  assert_true(j.bench_case.mended[jet]);
  assert_int_equal(job_confirmed(&j, list), 0);
  job_free(&j);
  assert_int_equal(store_list(s, STORE_OPEN, 5, &jobs, &e), 0);
  assert_int_equal(jobs.count, 1);
  store_jobs_free(&jobs);
  store_close(s);
  sample_remove(folder);
}

/* Entries of a stranger, or of a knowledge that has moved on: counted, kept, never a crash. */
static void what_cannot_be_read_is_counted(void **state)
{
  static const char *const odd[][2] = {{"result", "{\"check\":\"no-such-check\",\"result\":\"x\"}"},
                                       {"result", "{\"check\":\"spark-test\",\"result\":\"purple\"}"},
                                       {"result", "{\"check\":\"spark-test\",\"reading\":\"3 psi\"}"},
                                       {"result", "[]"},
                                       {"result", "{"},
                                       {"result", "{}"},
                                       {"machine", "{\"class\":\"zeppelin\"}"},
                                       {"complaint", "{\"complaint\":3}"},
                                       {"proof", "{\"fault\":\"fuel-stale\"}"},
                                       {"off", "{\"cover\":\"moon\"}"},
                                       {"repair", "{}"},
                                       {"took-back", "{}"},
                                       {"spec", "{\"check\":\"compression\"}"},
                                       {"dance", "{}"},
                                       {"advice", "3"}};
  const size_t count = sizeof odd / sizeof odd[0];
  const struct knowledge *k = sample_knowledge();
  char *folder = sample_folder(), id[STORE_ID];
  struct store *s = sample_store(folder);
  struct store_entries x;
  struct job j;
  struct err e;

  (void)state;
  sample_job(s, "odd", id);
  for (size_t i = 0; i < count; i++) assert_int_equal(store_add(s, id, "a", odd[i][0], odd[i][1], &e), 0);
  assert_int_equal(job_read(s, k, id, &j, &e), 0);
  assert_int_equal(j.unread, count);
  assert_int_equal(j.bench_case.result_count, 0);
  job_free(&j);
  assert_int_equal(job_describe(s, k, id, &e), 0);
  assert_int_equal(store_entries(s, id, &x, &e), 0);
  assert_int_equal(x.count, count + 1);
  store_entries_free(&x);
  store_close(s);
  sample_remove(folder);
}

/* Some jobs with everything in them. */
static void fill(struct store *s, struct random *r, int jobs)
{
  const struct knowledge *k = sample_knowledge();
  char id[STORE_ID];

  for (int i = 0; i < jobs; i++) {
    struct bench_case before, now;
    struct job_advice a = {
        "keep-looking", {{fault("fuel-stale"), 0.1234567}, {-1, i % 3 ? 0.25 : 1e-5}}, 2, 0};
    struct job_news n = {0};

    sample_now(100000 + i);
    sample_job(s, "say \"ah\"\\ \xc3\xa9\xe2\x82\xac\ttab", id);
    case_begin(&before, k);
    case_begin(&now, k);
    for (int m = 0; m < 12; m++) change(r, k, &now);
    job_say_change(&n, k, &before, &now);
    job_say_advice(&n, k, &a);
    job_say_text(&n, "note", i % 3 ? "line\nbreak and / slash" : "line\nbreak \001 and / slash");
    if (i % 2) job_say_closed(&n, k, job_ending((size_t)i % 4), NULL, 0);
    write_news(s, id, &n);
    case_free(&before);
    case_free(&now);
  }
}

static int import_text(struct store *s, const char *text, struct jobfile_counts *counts, struct err *e)
{
  FILE *f = fmemopen((void *)(uintptr_t)text, strlen(text), "r");
  int status = jobfile_import(s, sample_knowledge(), f, "jobs", counts, e);

  fclose(f);
  return status;
}

/* What lists show is worked out again by the one that takes in: the same as where it is from. */
static void assert_same_lists(struct store *a, struct store *b)
{
  struct store_jobs x, y;
  struct err e;

  assert_int_equal(store_list(a, STORE_ALL, 1000, &x, &e), 0);
  assert_int_equal(store_list(b, STORE_ALL, 1000, &y, &e), 0);
  assert_int_equal(x.count, y.count);
  for (size_t i = 0; i < x.count; i++) {
    assert_string_equal(x.items[i].id, y.items[i].id);
    assert_int_equal(x.items[i].touched, y.items[i].touched);
    assert_int_equal(x.items[i].closed, y.items[i].closed);
    assert_string_equal(x.items[i].machine, y.items[i].machine);
    assert_string_equal(x.items[i].ending, y.items[i].ending);
    assert_string_equal(x.items[i].words, y.items[i].words);
  }
  store_jobs_free(&x);
  store_jobs_free(&y);
}

static void export_and_import_give_the_same_bytes(void **state)
{
  char *one = sample_folder(), *two = sample_folder(), *text, *again;
  struct store *a = sample_store(one), *b = sample_store(two);
  struct random r = {7};
  struct jobfile_counts counts;
  struct store_jobs found;
  struct err e;

  (void)state;
  fill(a, &r, 20);
  text = sample_export(a);
  assert_int_equal(import_text(b, text, &counts, &e), 0);
  assert_int_equal(counts.jobs, 20);
  again = sample_export(b);
  assert_string_equal(text, again);
  assert_same_lists(a, b);
  assert_int_equal(store_find(b, "slash", 100, &found, &e), 0);
  assert_int_equal(found.count, 20);
  store_jobs_free(&found);
  free(again);
  assert_int_equal(import_text(b, text, &counts, &e), 0); /* nothing comes in twice */
  assert_int_equal(counts.jobs + counts.entries, 0);
  again = sample_export(b);
  assert_string_equal(text, again);
  free(again);
  free(text);
  store_close(a);
  store_close(b);
  sample_remove(one);
  sample_remove(two);
}

/* Is this what the reader of all JSON takes, and would print as it stands? */
static bool stands_as_it_is(const char *line)
{
  struct json *j = NULL;
  char *again = NULL;
  struct err e;
  bool same;

  if (json_read("line", line, strlen(line), &j, &e)) return false;
  again = json_print_line(j);
  same = strcmp(again, line) == 0;
  free(again);
  json_free(j);
  return same;
}

/* The quick reader takes what was exported; and a line that it takes, spoilt as it may be, is
 * one that the other reader takes and that says the same. */
static void the_quick_reader_agrees_with_the_other(void **state)
{
  static const char signs[] = "{}[]\",:0129.eE-+ \\ntu/a\x7f\xc3\x01";
  char *folder = sample_folder(), *text, *line, *next;
  struct store *s = sample_store(folder);
  struct jobline job = {0};
  struct random r = {5};
  size_t taken = 0, left = 0;
  struct err e;

  (void)state;
  fill(s, &r, 6);
  text = sample_export(s);
  for (line = text; *line; line = next) {
    size_t len = strcspn(line, "\n");
    char *copy = mem_new(len + 1), *was = mem_new(len + 1);

    next = line + len + 1;
    memcpy(copy, line, len);
    if (!strstr(copy, "\\u0001"))
      assert_true(jobline_read(copy, len, &job)); /* that sign, and 1e-5, are the other's */
    for (int i = 0; i < 4000; i++) {
      struct buf again = {0};

      memcpy(copy, line, len);
      copy[below(&r, len)] = signs[below(&r, sizeof signs - 1)];
      memcpy(was, copy, len);
      if (!jobline_read(copy, len, &job)) {
        assert_memory_equal(copy, was, len); /* left as it was */
        left++;
        continue;
      }
      taken++;
      assert_int_equal(jobfile_line(&again, job.id, job.opened, &job.entries, &e), 0);
      again.text[again.len - 1] = '\0'; /* its newline */
      assert_string_equal(again.text, was);
      assert_true(stands_as_it_is(was));
      buf_free(&again);
    }
    free(copy);
    free(was);
  }
  assert_true(taken > 1000 && left > 1000);
  jobline_free(&job);
  free(text);
  store_close(s);
  sample_remove(folder);
}

/* A bad line, wherever it stands: it is named, and nothing of the file is taken in. */
static void a_bad_file_changes_nothing(void **state)
{
  static const char good[] =
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5,\"entries\":[]}\n";
  static const char *const bad[] = {
      "{",
      "[]",
      "3",
      "{}",
      "{\"pullcord\":\"job-2\"}",
      "{\"pullcord\":\"job-1\",\"id\":\"x\",\"opened\":5,\"entries\":[]}",
      "{\"pullcord\":\"job-1\",\"id\":\"000000000000000000i\",\"opened\":5,\"entries\":[]}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":-5,\"entries\":[]}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5.5,\"entries\":[]}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5,\"entries\":[],\"more\":1}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5,\"entries\":[{}]}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5,\"entries\":[{\"uid\":"
      "\"0000000000000000001\","
      "\"number\":1,\"at\":5,\"who\":\"a\",\"kind\":\"note\",\"body\":[]}]}",
      "{\"pullcord\":\"job-1\",\"id\":\"0000000000000000000\",\"opened\":5,\"entries\":[{\"uid\":\"../../etc/"
      "passwd0000\","
      "\"number\":1,\"at\":5,\"who\":\"a\",\"kind\":\"note\",\"body\":{}}]}"};
  char *folder = sample_folder(), *text;
  struct store *s = sample_store(folder);
  struct jobfile_counts counts;
  struct err e;

  (void)state;
  for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
    char file[1000];

    snprintf(file, sizeof file, "%s%s\n", good, bad[i]);
    assert_int_equal(import_text(s, file, &counts, &e), EX_DATAERR);
    text = sample_export(s);
    assert_string_equal(text, "");
    free(text);
  }
  assert_int_equal(import_text(s, good, &counts, &e), 0);
  store_close(s);
  sample_remove(folder);
}

/* Two benches that worked on, one of the jobs at both: merged either way they hold the same. */
static void two_stores_merge_to_the_same(void **state)
{
  char *one = sample_folder(), *two = sample_folder(), *copy = file_join(one, "copy"),
       *other = file_join(two, "copy");
  struct store *a = sample_store(one), *b = sample_store(two);
  struct random r = {11};
  struct job_news n = {0};
  char id[STORE_ID], *x, *y;
  size_t added;
  struct err e;

  (void)state;
  fill(a, &r, 6);
  sample_job(a, "at both benches", id);
  assert_int_equal(store_backup(a, copy, &e), 0);
  assert_int_equal(job_merge(b, sample_knowledge(), copy, &added, &e), 0);
  assert_true(added > 0);
  fill(b, &r, 5);
  for (int i = 0; i < 3; i++) {
    sample_now(200000);
    job_say_text(&n, "note", "from a");
    write_news(a, id, &n);
    job_say_text(&n, "note", "from b");
    if (i == 2) job_say_closed(&n, sample_knowledge(), "handed-over", NULL, 0);
    write_news(b, id, &n);
  }
  assert_int_equal(store_backup(a, copy, &e), 0);
  assert_int_equal(store_backup(b, other, &e), 0);
  assert_int_equal(job_merge(a, sample_knowledge(), other, &added, &e), 0);
  assert_int_equal(job_merge(b, sample_knowledge(), copy, &added, &e), 0);
  assert_int_equal(added, 3);
  x = sample_export(a);
  y = sample_export(b);
  assert_string_equal(x, y);
  assert_same_lists(a, b);
  free(copy);
  copy = file_join(two, "jobs.db"); /* straight from the other bench's store, while it is in use */
  assert_int_equal(job_merge(a, sample_knowledge(), copy, &added, &e), 0);
  assert_int_equal(added, 0);
  assert_int_equal(job_merge(b, sample_knowledge(), copy, &added, &e), 0); /* itself */
  assert_int_equal(added, 0);
  free(x);
  free(y);
  free(copy);
  free(other);
  store_close(a);
  store_close(b);
  sample_remove(one);
  sample_remove(two);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(what_changes_comes_back_exactly),
      cmocka_unit_test(a_job_goes_from_intake_to_home_and_back),
      cmocka_unit_test(what_cannot_be_read_is_counted),
      cmocka_unit_test(export_and_import_give_the_same_bytes),
      cmocka_unit_test(the_quick_reader_agrees_with_the_other),
      cmocka_unit_test(a_bad_file_changes_nothing),
      cmocka_unit_test(two_stores_merge_to_the_same)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
