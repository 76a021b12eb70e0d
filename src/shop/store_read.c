/* store_read.c - reading what the store holds; see store.h. */
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/mem.h"
#include "base/text.h"
#include "shop/store_inside.h"

/* Of the entries that share no second the number decides; two benches that added at once
 * are put in the order of their uids, which is the same everywhere. */
#define ENTRY_COLUMNS "uid, number, at, who, kind, body"
#define JOB_COLUMNS                                                                                          \
  "jobs.id, jobs.opened, jobs.touched, jobs.closed, jobs.machine, jobs.owner, jobs.words, jobs.ending"

static void copy_id(char out[STORE_ID], sqlite3_stmt *q, int column)
{
  const unsigned char *text = sqlite3_column_text(q, column);

  snprintf(out, STORE_ID, "%s", text ? (const char *)text : "");
}

/* Appends the entry whose columns begin at `from`. */
static void push_entry(sqlite3_stmt *q, int from, struct store_entries *out)
{
  void *items = out->items;
  struct store_entry *x;

  mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
  out->items = items;
  x = &out->items[out->count++];
  copy_id(x->uid, q, from);
  x->number = sqlite3_column_int64(q, from + 1);
  x->at = sqlite3_column_int64(q, from + 2);
  x->who = store_column(q, from + 3);
  x->kind = store_column(q, from + 4);
  x->body = store_column(q, from + 5);
}

static int read_entries(struct store *s, sqlite3_stmt *q, struct store_entries *out, struct err *e)
{
  int code = SQLITE_ERROR, status = 0;

  *out = (struct store_entries){0};
  while (q && (code = sqlite3_step(q)) == SQLITE_ROW) push_entry(q, 0, out);
  if (code != SQLITE_DONE) status = store_fail(s, "cannot be read", e);
  store_done(q);
  if (status) store_entries_free(out);
  return status;
}

#define ENTRIES_OF_JOB "SELECT " ENTRY_COLUMNS " FROM entries WHERE job = (SELECT n FROM jobs WHERE id = ?)"
#define IN_ORDER " ORDER BY number, uid"

int store_entries(struct store *s, const char *job, struct store_entries *out, struct err *e)
{
  return read_entries(s, store_use(s, ENTRIES_OF_JOB IN_ORDER, "t", job), out, e);
}

int store_entries_telling(struct store *s, const char *job, struct store_entries *out, struct err *e)
{
  return read_entries(s,
                      store_use(s,
                                ENTRIES_OF_JOB " AND kind NOT IN ('owner', 'words', 'note', 'part', 'minutes',"
                                               " 'off', 'on', 'service')" IN_ORDER,
                                "t", job),
                      out, e);
}

int store_read_begin(struct store *s, struct err *e) { return store_run(s, "BEGIN", "cannot be read", e); }

void store_read_end(struct store *s)
{
  if (!sqlite3_get_autocommit(s->db)) sqlite3_exec(s->db, "COMMIT", NULL, NULL, NULL);
}

static void empty(struct store_entries *entries)
{
  for (size_t i = 0; i < entries->count; i++) {
    free(entries->items[i].who);
    free(entries->items[i].kind);
    free(entries->items[i].body);
  }
  entries->count = 0;
}

void store_entries_free(struct store_entries *entries)
{
  empty(entries);
  free(entries->items);
  *entries = (struct store_entries){0};
}

int store_last_number(struct store *s, const char *job, int64_t *out, struct err *e)
{
  sqlite3_stmt *q = store_use(s, "SELECT coalesce(max(number), 0) FROM entries"
                                 " WHERE job = (SELECT n FROM jobs WHERE id = ?)", "t", job);
  int status = q && sqlite3_step(q) == SQLITE_ROW ? 0 : store_fail(s, "cannot be read", e);

  if (status == 0) *out = sqlite3_column_int64(q, 0);
  store_done(q);
  return status;
}

/* ---- jobs --------------------------------------------------------------------------------- */

static int read_jobs(struct store *s, sqlite3_stmt *q, struct store_jobs *out, struct err *e)
{
  int code = SQLITE_ERROR, status = 0;

  *out = (struct store_jobs){0};
  while (q && (code = sqlite3_step(q)) == SQLITE_ROW) {
    void *items = out->items;
    struct store_job *j;

    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    j = &out->items[out->count++];
    copy_id(j->id, q, 0);
    j->opened = sqlite3_column_int64(q, 1);
    j->touched = sqlite3_column_int64(q, 2);
    j->closed = sqlite3_column_int64(q, 3);
    j->machine = store_column(q, 4);
    j->owner = store_column(q, 5);
    j->words = store_column(q, 6);
    j->ending = store_column(q, 7);
  }
  if (code != SQLITE_DONE) status = store_fail(s, "cannot be read", e);
  store_done(q);
  if (status) store_jobs_free(out);
  return status;
}

int store_list(struct store *s, enum store_which which, size_t most, struct store_jobs *out, struct err *e)
{
  /* Open jobs are this bench's: of two in one second the later comer is the later. The other orders are
   * the same in every store, as they are learnt from and merged. */
  static const char *const sql[] = {
      "SELECT " JOB_COLUMNS " FROM jobs WHERE closed = 0 ORDER BY touched DESC, n DESC LIMIT ?",
      "SELECT " JOB_COLUMNS " FROM jobs WHERE closed > 0 ORDER BY touched DESC, id DESC LIMIT ?",
      "SELECT " JOB_COLUMNS " FROM jobs ORDER BY opened DESC, id DESC LIMIT ?"};

  return read_jobs(s, store_use(s, sql[which], "i", (int64_t)most), out, e);
}

int store_row(struct store *s, const char *id, struct store_jobs *out, struct err *e)
{
  int status = read_jobs(s, store_use(s, "SELECT " JOB_COLUMNS " FROM jobs WHERE id = ?", "t", id), out, e);

  if (status || out->count == 1) return status;
  store_jobs_free(out);
  return err_set(e, EX_DATAERR, s->path, 0, "holds no job %s.", id);
}

/* Words from a person as a full-text question: each quoted, each the start of a word. */
static void quote_words(const char *words, struct buf *out)
{
  while (*words) {
    size_t n = 0, kept = 0;

    while (words[n] && !isspace((unsigned char)words[n])) n++;
    for (size_t i = 0; i < n; i++)
      kept += isalnum((unsigned char)words[i]) || (unsigned char)words[i] >= 0x80;
    if (kept > 0) {
      buf_addf(out, "%s\"", out->len ? " " : "");
      for (size_t i = 0; i < n; i++)
        if (words[i] != '"') buf_addn(out, &words[i], 1);
      buf_add(out, "\"*");
    }
    words += n;
    while (isspace((unsigned char)*words)) words++;
  }
}

int store_find(struct store *s, const char *words, size_t most, struct store_jobs *out, struct err *e)
{
  struct buf question = {0};
  int status;

  quote_words(words, &question);
  if (question.len == 0) return err_set(e, EX_USAGE, NULL, 0, "give a word to look for.");
  status = read_jobs(s,
                     store_use(s,
                               "SELECT " JOB_COLUMNS " FROM words AS w CROSS JOIN jobs ON jobs.n = w.rowid"
                               " WHERE w.words MATCH ? ORDER BY w.rowid DESC LIMIT ?",
                               "ti", question.text, (int64_t)most),
                     out, e);
  buf_free(&question);
  return status;
}

void store_jobs_free(struct store_jobs *jobs)
{
  for (size_t i = 0; i < jobs->count; i++) {
    free(jobs->items[i].machine);
    free(jobs->items[i].owner);
    free(jobs->items[i].words);
    free(jobs->items[i].ending);
  }
  free(jobs->items);
  *jobs = (struct store_jobs){0};
}

/* Takes the only job of a list, or the only open one. */
static bool only_one(const struct store_jobs *jobs, char id[STORE_ID])
{
  size_t open = 0, at = 0;

  for (size_t i = 0; i < jobs->count; i++)
    if (jobs->items[i].closed == 0) {
      open++;
      at = i;
    }
  if (open != 1 && jobs->count != 1) return false;
  memcpy(id, jobs->items[at].id, STORE_ID);
  return true;
}

int store_resolve(struct store *s, const char *name, char id[STORE_ID], struct err *e)
{
  char low[STORE_ID + 1];
  struct store_jobs jobs;
  int status;

  if (strcmp(name, "last") == 0) {
    status = store_list(s, STORE_OPEN, 1, &jobs, e);
    if (status == 0 && jobs.count == 0)
      status = err_set(e, EX_DATAERR, NULL, 0, "no job is open. \"pullcord\" begins one.");
    if (status == 0) memcpy(id, jobs.items[0].id, STORE_ID);
    store_jobs_free(&jobs);
    return status;
  }
  snprintf(low, sizeof low, "%s", name);
  text_lower(low);
  status = read_jobs(
      s, store_use(s, "SELECT " JOB_COLUMNS " FROM jobs WHERE substr(id, -5) = ? LIMIT 50", "t", low), &jobs,
      e);
  if (status == 0 && jobs.count == 0) {
    store_jobs_free(&jobs);
    status = read_jobs(
        s,
        store_use(s, "SELECT " JOB_COLUMNS " FROM jobs WHERE id >= ?1 AND id < ?1 || '~' LIMIT 50", "t", low),
        &jobs, e);
  }
  if (status) return status;
  if (!only_one(&jobs, id))
    status = err_set(e, EX_DATAERR, NULL, 0,
                     "%s job is called \"%.20s\". \"pullcord job list --all\" shows them%s.",
                     jobs.count ? "more than one" : "no", name, jobs.count ? "; give more of its id" : "");
  store_jobs_free(&jobs);
  return status;
}

int store_walk(struct store *s, store_each *each, void *context, struct err *e)
{
  sqlite3_stmt *q = store_use(s, "SELECT jobs.id, jobs.opened, " ENTRY_COLUMNS " FROM jobs LEFT JOIN entries"
                                 " ON entries.job = jobs.n ORDER BY jobs.id, number, uid", "");
  struct store_entries entries = {0};
  char id[STORE_ID] = "";
  int64_t opened = 0;
  int code = SQLITE_ERROR, status = 0;

  while (q && status == 0 && (code = sqlite3_step(q)) == SQLITE_ROW) {
    if (strcmp(id, (const char *)sqlite3_column_text(q, 0)) != 0) {
      if (*id) status = each(context, id, opened, &entries, e);
      empty(&entries);
      copy_id(id, q, 0);
      opened = sqlite3_column_int64(q, 1);
    }
    if (sqlite3_column_type(q, 2) != SQLITE_NULL) push_entry(q, 2, &entries);
  }
  if (status == 0 && code != SQLITE_DONE) status = store_fail(s, "cannot be read", e);
  store_done(q);
  if (status == 0 && *id) status = each(context, id, opened, &entries, e);
  store_entries_free(&entries);
  return status;
}
