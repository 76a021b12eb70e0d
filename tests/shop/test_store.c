/* test_store.c - the store by itself: order, lists, search, versions, damage, copies. */
#include <fcntl.h>
#include <setjmp.h>
#include <sqlite3.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/file.h"
#include "sample.h"

enum { PAGE = 16384 }; /* of a new store */

static void entries_come_in_the_order_they_were_added(void **state)
{
  char *folder = sample_folder(), id[STORE_ID];
  struct store *s = sample_store(folder);
  struct store_entries x;
  struct err e;

  (void)state;
  sample_now(2000);
  sample_job(s, "first", id);
  sample_now(1000); /* the clock was set back: the order stays */
  assert_int_equal(store_add(s, id, "a", "note", "{\"text\":\"second\"}", &e), 0);
  assert_int_equal(store_add(s, id, "b", "note", "{\"text\":\"third\"}", &e), 0);
  assert_int_equal(store_entries(s, id, &x, &e), 0);
  assert_int_equal(x.count, 3);
  assert_string_equal(x.items[0].body, "{\"text\":\"first\"}");
  assert_string_equal(x.items[2].body, "{\"text\":\"third\"}");
  assert_string_equal(x.items[2].who, "b");
  assert_int_equal(x.items[1].at, 1000);
  assert_int_equal(x.items[2].number, 3);
  store_entries_free(&x);
  assert_int_not_equal(store_add(s, "0000000000000000000", "a", "note", "{}", &e), 0); /* no such job */
  store_close(s);
  sample_remove(folder);
}

static void lists_and_searches(void **state)
{
  static const char *const words[] = {"starts then dies", "won't start, \"dead\"", "smokes like a chimney"};
  char *folder = sample_folder(), id[3][STORE_ID], got[STORE_ID];
  struct store *s = sample_store(folder);
  struct job_news n = {0};
  struct store_jobs jobs;
  struct err e;

  (void)state;
  for (int i = 0; i < 3; i++) {
    sample_now(5000 + i);
    sample_job(s, words[i], id[i]);
  }
  sample_now(6000);
  job_say_text(&n, "note", "new Ölfilter, 2.5 mm");
  assert_int_equal(job_write(s, sample_knowledge(), id[0], "a", &n, &e), 0); /* worked on last */
  job_news_free(&n);
  job_say_closed(&n, sample_knowledge(), "given-up", NULL, 0);
  assert_int_equal(job_write(s, sample_knowledge(), id[1], "a", &n, &e), 0);
  job_news_free(&n);

  assert_int_equal(store_list(s, STORE_OPEN, 10, &jobs, &e), 0);
  assert_int_equal(jobs.count, 2);
  assert_string_equal(jobs.items[0].id, id[0]);
  store_jobs_free(&jobs);
  assert_int_equal(store_list(s, STORE_CLOSED, 10, &jobs, &e), 0);
  assert_int_equal(jobs.count, 1);
  assert_string_equal(jobs.items[0].ending, "given-up");
  assert_int_equal(jobs.items[0].closed, 6000);
  store_jobs_free(&jobs);
  assert_int_equal(store_list(s, STORE_ALL, 10, &jobs, &e), 0);
  assert_int_equal(jobs.count, 3);
  assert_string_equal(jobs.items[0].id, id[2]);
  store_jobs_free(&jobs);

  static const struct { const char *words; int found; } asked[] = {
      {"smok chim", 2}, {"START dies", 0}, {"\"dead\"", 1}, {"olfilt", 0}, {"2.5", 0}, {"won't", 1},
      {"NOT AND ( *", -1}, {"text:dies", -1}, {"dies smokes", -1}, {"zebra", -1}};
  for (size_t i = 0; i < sizeof asked / sizeof asked[0]; i++) {
    assert_int_equal(store_find(s, asked[i].words, 10, &jobs, &e), 0);
    assert_int_equal(jobs.count, asked[i].found >= 0);
    if (asked[i].found >= 0) assert_string_equal(jobs.items[0].id, id[asked[i].found]);
    store_jobs_free(&jobs);
  }
  assert_int_equal(store_find(s, " \"\" * ", 10, &jobs, &e), EX_USAGE);

  for (int i = 0; i < 3; i++) {
    assert_int_equal(store_resolve(s, id[i] + STORE_ID - 1 - STORE_SHORT, got, &e), 0);
    assert_string_equal(got, id[i]);
    assert_int_equal(store_resolve(s, id[i], got, &e), 0);
    assert_string_equal(got, id[i]);
  }
  assert_int_equal(store_resolve(s, "last", got, &e), 0);
  assert_string_equal(got, id[0]);
  assert_int_equal(store_resolve(s, "nobody", got, &e), EX_DATAERR);
  store_close(s);
  sample_remove(folder);
}

static void only_the_owner_may_read(void **state)
{
  static const char *const files[] = {"jobs.db", "jobs.db-wal", "jobs.db-shm", "copy"};
  char *parent = sample_folder(), *folder = file_join(parent, "state"), *copy = file_join(folder, "copy"),
       id[STORE_ID];
  struct store *s;
  struct stat st;
  struct err e;
  mode_t mask = umask(0);

  (void)state;
  s = sample_store(folder);
  sample_job(s, "x", id);
  assert_int_equal(store_backup(s, copy, &e), 0);
  umask(mask);
  assert_int_equal(stat(folder, &st), 0);
  assert_int_equal(st.st_mode & 0777, 0700);
  for (int i = 0; i < 4; i++) {
    char *path = file_join(folder, files[i]);

    assert_int_equal(stat(path, &st), 0);
    assert_int_equal(st.st_mode & 0777, 0600);
    free(path);
  }
  store_close(s);
  free(copy);
  sample_remove(folder);
  sample_remove(parent);
}

/* Runs SQL on the file of a store, past the store. */
static void meddle(const char *folder, const char *sql)
{
  char *path = file_join(folder, "jobs.db");
  sqlite3 *db;

  assert_int_equal(sqlite3_open(path, &db), SQLITE_OK);
  assert_int_equal(sqlite3_exec(db, sql, NULL, NULL, NULL), SQLITE_OK);
  sqlite3_close(db);
  free(path);
}

static void newer_and_foreign_stores_are_left_alone(void **state)
{
  char *folder = sample_folder(), id[STORE_ID], *other = sample_folder(),
       *path = file_join(folder, "jobs.db"), kept[500];
  struct store *s = sample_store(folder);
  size_t added;
  struct err e;

  (void)state;
  sample_job(s, "x", id);
  store_close(s);
  meddle(folder, "PRAGMA user_version = 99");
  assert_int_equal(store_open(folder, true, &s, &e), EX_CONFIG);
  assert_non_null(strstr(e.text, "newer"));
  assert_int_equal(store_open(folder, false, &s, &e), EX_CONFIG);
  s = sample_store(other);
  assert_int_equal(job_merge(s, sample_knowledge(), path, &added, &e), EX_CONFIG);
  store_close(s);
  assert_int_equal(store_restore(other, path, kept, sizeof kept, &e), EX_CONFIG);
  assert_int_equal(store_restore(folder, path, kept, sizeof kept, &e), EX_CONFIG);
  meddle(folder, "PRAGMA user_version = 2; PRAGMA application_id = 1");
  assert_int_equal(store_open(folder, true, &s, &e), EX_CONFIG);
  free(path);
  sample_remove(folder);
  folder = sample_folder();
  meddle(folder, "CREATE TABLE thing (x)");
  assert_int_equal(store_open(folder, true, &s, &e), EX_CONFIG);
  meddle(folder, "SELECT count(*) FROM thing");
  sample_remove(folder);
  sample_remove(other);
}

/* Version 1 had no search. */
static void an_older_store_is_brought_up_to_date(void **state)
{
  char *folder = sample_folder(), id[STORE_ID], *before, *after;
  struct store *s = sample_store(folder);
  struct store_jobs jobs;
  struct err e;

  (void)state;
  sample_job(s, "rattles on the slope", id);
  before = sample_export(s);
  store_close(s);
  meddle(folder, "DROP TABLE words; DROP TABLE looked_through; PRAGMA user_version = 1");
  s = sample_store(folder);
  after = sample_export(s);
  assert_string_equal(before, after);
  assert_int_equal(store_find(s, "slope", 5, &jobs, &e), 0);
  assert_int_equal(jobs.count, 1);
  store_jobs_free(&jobs);
  store_close(s);
  free(before);
  free(after);
  sample_remove(folder);
}

static void spoil(const char *path, off_t from, size_t len)
{
  int fd = open(path, O_WRONLY);
  char rubbish[64];

  assert_true(fd >= 0);
  memset(rubbish, 0x5a, sizeof rubbish);
  while (len > 0) {
    size_t n = len < sizeof rubbish ? len : sizeof rubbish;

    assert_int_equal(pwrite(fd, rubbish, n, from), n);
    from += (off_t)n;
    len -= n;
  }
  close(fd);
}

/* Every page but the free ones matters: wherever it is spoilt, it is said and nothing more
 * is changed. */
static void damage_is_said_and_nothing_is_changed(void **state)
{
  char *folder = sample_folder(), *path = file_join(folder, "jobs.db"), *good = file_join(folder, "good"),
       id[STORE_ID];
  struct store *s = sample_store(folder);
  char kept[500], *now, *before;
  size_t len, was;
  struct stat st;
  struct err e;
  int said = 0;

  (void)state;
  for (int i = 0; i < 40; i++) sample_job(s, "a job with some words in it that fill the page a little", id);
  assert_int_equal(store_backup(s, good, &e), 0);
  store_close(s);
  assert_int_equal(stat(path, &st), 0);
  for (off_t at = 0; at < st.st_size; at += PAGE) {
    assert_int_equal(file_read(good, 1u << 24, &before, &was, &e), 0);
    assert_int_equal(file_replace(path, before, was, &e), 0);
    free(before);
    spoil(path, at, 512);
    assert_int_equal(file_read(path, 1u << 24, &before, &was, &e), 0);
    s = NULL;
    if (store_open(folder, true, &s, &e) == 0) store_close(s);
    else {
      said++;
      assert_int_equal(e.status, EX_DATAERR);
      assert_int_equal(file_read(path, 1u << 24, &now, &len, &e), 0);
      assert_int_equal(len, was);
      assert_memory_equal(now, before, len);
      free(now);
    }
    free(before);
  }
  assert_true(said * PAGE >= st.st_size * 3 / 4);
  spoil(path, 0, 4096);
  assert_int_equal(store_restore(folder, good, kept, sizeof kept, &e), 0); /* and the way back */
  assert_int_equal(access(kept, F_OK), 0);
  s = sample_store(folder);
  now = sample_export(s);
  assert_non_null(strstr(now, id));
  free(now);
  store_close(s);
  free(path);
  free(good);
  sample_remove(folder);
}

static void backup_and_restore_bring_everything_back(void **state)
{
  char *folder = sample_folder(), *path = file_join(folder, "copy"), id[STORE_ID], kept[500], *then, *now;
  struct store *s = sample_store(folder);
  struct stat st;
  struct err e;

  (void)state;
  sample_job(s, "one", id);
  assert_int_equal(store_backup(s, path, &e), 0);
  then = sample_export(s);
  sample_job(s, "two", id);
  store_close(s);
  assert_int_equal(store_restore(folder, path, kept, sizeof kept, &e), 0);
  s = sample_store(folder);
  now = sample_export(s);
  assert_string_equal(now, then);
  free(now);
  store_close(s);
  assert_int_equal(store_restore(folder, kept, kept, sizeof kept, &e), 0); /* what was replaced is not lost */
  s = sample_store(folder);
  now = sample_export(s);
  assert_non_null(strstr(now, id));
  free(now);
  assert_int_equal(store_backup(s, "/nonexistent/x", &e), EX_CANTCREAT);
  store_close(s);
  assert_int_equal(stat(path, &st), 0);
  spoil(path, st.st_size / 2, 2048); /* a damaged backup changes nothing */
  assert_int_equal(store_restore(folder, path, kept, sizeof kept, &e), EX_DATAERR);
  assert_int_equal(store_restore(folder, "/nonexistent/x", kept, sizeof kept, &e), EX_NOINPUT);
  s = sample_store(folder);
  now = sample_export(s);
  assert_non_null(strstr(now, id));
  free(now);
  store_close(s);
  free(then);
  free(path);
  sample_remove(folder);
}

/* Backups of earlier versions have small pages. */
static void a_backup_with_other_pages_comes_back_too(void **state)
{
  char *folder = sample_folder(), *old = sample_folder(), *path = file_join(old, "jobs.db"), id[STORE_ID], kept[500];
  struct store *s = sample_store(old);
  char *then, *now;
  struct err e;

  (void)state;
  sample_job(s, "from long ago", id);
  then = sample_export(s);
  store_close(s);
  meddle(old, "PRAGMA journal_mode = DELETE; PRAGMA page_size = 4096; VACUUM");
  s = sample_store(folder);
  sample_job(s, "of today", id);
  store_close(s);
  assert_int_equal(store_restore(folder, path, kept, sizeof kept, &e), 0);
  s = sample_store(folder);
  now = sample_export(s);
  assert_string_equal(now, then);
  sample_job(s, "and it goes on", id);
  store_close(s);
  free(now);
  free(then);
  free(path);
  sample_remove(folder);
  sample_remove(old);
}

static void a_batch_is_all_or_nothing(void **state)
{
  char *folder = sample_folder(), id[STORE_ID], *before, *after;
  struct store *s = sample_store(folder);
  struct err e;

  (void)state;
  sample_job(s, "one", id);
  before = sample_export(s);
  assert_int_equal(store_batch_begin(s, &e), 0);
  assert_int_equal(store_add(s, id, "a", "note", "{}", &e), 0);
  assert_int_equal(store_batch_end(s, false, &e), 0);
  after = sample_export(s);
  assert_string_equal(before, after);
  store_close(s);
  free(before);
  free(after);
  sample_remove(folder);
}

enum { WRITERS = 3, EACH = 60 };

static void write_many(const char *folder, const char *id, int writer)
{
  struct store *s = sample_store(folder);
  struct err e;

  for (int i = 0; i < EACH; i++) {
    char body[60];

    snprintf(body, sizeof body, "{\"writer\":%d,\"i\":%d}", writer, i);
    if (store_add(s, id, "w", "test", body, &e)) _exit(1);
  }
  store_close(s);
  _exit(0);
}

static void programs_that_write_at_once_lose_nothing(void **state)
{
  char *folder = sample_folder(), id[STORE_ID];
  struct store *s = sample_store(folder);
  int next[WRITERS] = {0}, status;
  struct store_entries x;
  struct err e;

  (void)state;
  sample_job(s, "shared", id);
  store_close(s);
  for (int w = 0; w < WRITERS; w++)
    if (fork() == 0) write_many(folder, id, w);
  for (int w = 0; w < WRITERS; w++) {
    assert_true(wait(&status) > 0);
    assert_int_equal(status, 0);
  }
  s = sample_store(folder);
  assert_int_equal(store_entries(s, id, &x, &e), 0);
  assert_int_equal(x.count, 1 + WRITERS * EACH);
  for (size_t i = 1; i < x.count; i++) { /* each writer's own order is kept, no number is given twice */
    int writer, n;

    assert_int_equal(sscanf(x.items[i].body, "{\"writer\":%d,\"i\":%d}", &writer, &n), 2);
    assert_int_equal(n, next[writer]++);
    assert_int_equal(x.items[i].number, i + 1);
  }
  store_entries_free(&x);
  store_close(s);
  sample_remove(folder);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(entries_come_in_the_order_they_were_added),
      cmocka_unit_test(lists_and_searches),
      cmocka_unit_test(only_the_owner_may_read),
      cmocka_unit_test(newer_and_foreign_stores_are_left_alone),
      cmocka_unit_test(an_older_store_is_brought_up_to_date),
      cmocka_unit_test(damage_is_said_and_nothing_is_changed),
      cmocka_unit_test(backup_and_restore_bring_everything_back),
      cmocka_unit_test(a_backup_with_other_pages_comes_back_too),
      cmocka_unit_test(a_batch_is_all_or_nothing),
      cmocka_unit_test(programs_that_write_at_once_lose_nothing)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
