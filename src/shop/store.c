/* store.c - see store.h. */
#include "shop/store.h"

#include <ctype.h>
#include <sqlite3.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/random.h>
#include <sys/stat.h>

#include "base/buf.h"
#include "base/clock.h"
#include "base/file.h"
#include "base/mem.h"

struct store { sqlite3 *db; char *path; };

enum { WAIT_MS = 5000 };

/* One step per version; user_version says how many were taken. */
static const char *const migrations[] = {
    "CREATE TABLE jobs (id TEXT PRIMARY KEY, opened INTEGER NOT NULL, closed INTEGER NOT NULL DEFAULT 0,"
    "  owner TEXT NOT NULL DEFAULT '', machine TEXT NOT NULL DEFAULT '', words TEXT NOT NULL DEFAULT '',"
    "  ending TEXT NOT NULL DEFAULT '') STRICT, WITHOUT ROWID;"
    "CREATE TABLE entries (n INTEGER PRIMARY KEY, job TEXT NOT NULL REFERENCES jobs(id), uid TEXT NOT NULL UNIQUE,"
    "  at INTEGER NOT NULL, who TEXT NOT NULL, kind TEXT NOT NULL, body TEXT NOT NULL) STRICT;"
    "CREATE INDEX entries_of_job ON entries(job, at, n);"
    "CREATE INDEX jobs_by_time ON jobs(closed, opened);"
    "CREATE VIRTUAL TABLE words USING fts5(job UNINDEXED, text);"};

enum { VERSION = sizeof migrations / sizeof migrations[0] };

/* ---- errors and statements --------------------------------------------------------------- */

static int fail(struct store *s, const char *doing, struct err *e)
{
  int code = s->db ? sqlite3_extended_errcode(s->db) : SQLITE_NOMEM, status = EX_IOERR;
  const char *advice = "Nothing that was kept before is lost.";

  switch (code & 0xFF) {
  case SQLITE_BUSY:
  case SQLITE_LOCKED: status = EX_TEMPFAIL; advice = "Another program holds the store; try again."; break;
  case SQLITE_READONLY:
  case SQLITE_PERM:
  case SQLITE_AUTH: status = EX_NOPERM; advice = "The store can only be read from here."; break;
  case SQLITE_FULL: advice = "The disk is full. Nothing that was kept before is lost."; break;
  case SQLITE_CANTOPEN: status = EX_CANTCREAT; break;
  case SQLITE_CORRUPT:
  case SQLITE_NOTADB: status = EX_DATAERR; advice = "The store is damaged: restore a backup."; break;
  default: break;
  }
  return err_set(e, status, s->path, 0, "%s: %s. %s", doing, s->db ? sqlite3_errmsg(s->db) : "no memory", advice);
}

static int run(struct store *s, const char *sql, const char *doing, struct err *e)
{
  return sqlite3_exec(s->db, sql, NULL, NULL, NULL) == SQLITE_OK ? 0 : fail(s, doing, e);
}

/* A statement with texts (t) and whole numbers (i) bound in order. */
static sqlite3_stmt *prepare(struct store *s, const char *sql, const char *types, ...)
{
  sqlite3_stmt *q = NULL;
  va_list args;

  if (sqlite3_prepare_v2(s->db, sql, -1, &q, NULL) != SQLITE_OK) return NULL;
  va_start(args, types);
  for (int i = 0; types[i]; i++)
    if (types[i] == 't') sqlite3_bind_text(q, i + 1, va_arg(args, const char *), -1, SQLITE_TRANSIENT);
    else sqlite3_bind_int64(q, i + 1, va_arg(args, int64_t));
  va_end(args);
  return q;
}

/* Runs a statement that gives no rows, and ends it. */
static int finish(struct store *s, sqlite3_stmt *q, const char *doing, struct err *e)
{
  int code = q ? sqlite3_step(q) : SQLITE_ERROR;
  int status = code == SQLITE_DONE || code == SQLITE_ROW ? 0 : fail(s, doing, e);

  sqlite3_finalize(q);
  return status;
}

static char *column(sqlite3_stmt *q, int i)
{
  const unsigned char *text = sqlite3_column_text(q, i);
  size_t n = (size_t)sqlite3_column_bytes(q, i);
  char *copy = mem_new(n + 1);

  if (text) memcpy(copy, text, n);
  return copy;
}

/* ---- opening ------------------------------------------------------------------------------ */

static int64_t pragma_number(struct store *s, const char *sql)
{
  sqlite3_stmt *q = prepare(s, sql, "");
  int64_t n = q && sqlite3_step(q) == SQLITE_ROW ? sqlite3_column_int64(q, 0) : -1;

  sqlite3_finalize(q);
  return n;
}

static int migrate(struct store *s, struct err *e)
{
  int64_t have;
  int status = run(s, "BEGIN IMMEDIATE", "cannot be brought up to date", e);

  if (status) return status;
  have = pragma_number(s, "PRAGMA user_version");
  for (int64_t v = have; v < VERSION && status == 0; v++) status = run(s, migrations[v], "cannot be brought up to date", e);
  if (status == 0 && have < VERSION) {
    char sql[60];

    snprintf(sql, sizeof sql, "PRAGMA user_version = %d", (int)VERSION);
    status = run(s, sql, "cannot be brought up to date", e);
  }
  if (status == 0) return run(s, "COMMIT", "cannot be brought up to date", e);
  sqlite3_exec(s->db, "ROLLBACK", NULL, NULL, NULL);
  return status;
}

static int check_whole(struct store *s, struct err *e)
{
  sqlite3_stmt *q = prepare(s, "PRAGMA quick_check(1)", "");
  bool good = q && sqlite3_step(q) == SQLITE_ROW && strcmp((const char *)sqlite3_column_text(q, 0), "ok") == 0;

  sqlite3_finalize(q);
  if (good) return 0;
  return err_set(e, EX_DATAERR, s->path, 0, "is damaged. Restore a backup; the damaged file is left as it is.");
}

static int set_up(struct store *s, bool write, struct err *e)
{
  int64_t version;
  int status;

  sqlite3_busy_timeout(s->db, WAIT_MS);
  sqlite3_extended_result_codes(s->db, 1);
  version = pragma_number(s, "PRAGMA user_version");
  if (version < 0) return fail(s, "cannot be read", e);
  if (version > VERSION)
    return err_set(e, EX_DATAERR, s->path, 0, "was written by a newer pullcord. Use that one.");
  status = check_whole(s, e);
  if (status == 0 && write) status = run(s, "PRAGMA journal_mode = WAL", "cannot be written", e);
  if (status == 0) status = run(s, "PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON", "cannot be set up", e);
  if (status == 0 && write && version < VERSION) status = migrate(s, e);
  return status;
}

int store_open(const char *folder, bool write, struct store **out, struct err *e)
{
  struct store *s = mem_new(sizeof *s);
  int flags = write ? SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE : SQLITE_OPEN_READONLY, status = 0;
  mode_t mask;

  s->path = file_join(folder, "jobs.db");
  if (write) status = file_make_folder(folder, e);
  if (status == 0) {
    mask = umask(077);
    if (sqlite3_open_v2(s->path, &s->db, flags, NULL) != SQLITE_OK) status = fail(s, "cannot be opened", e);
    else status = set_up(s, write, e);
    umask(mask);
  }
  if (status) store_close(s);
  else *out = s;
  return status;
}

void store_close(struct store *s)
{
  if (!s) return;
  sqlite3_close(s->db);
  free(s->path);
  free(s);
}

/* ---- adding ------------------------------------------------------------------------------- */

/* Letters and digits that sort by time and cannot be had twice: seconds, then 50 random bits,
 * in base 32. */
static void make_id(int64_t at, char *out, size_t size)
{
  static const char digits[] = "0123456789abcdefghjkmnpqrstvwxyz";
  unsigned char noise[10] = {0};
  char text[18];

  if (getrandom(noise, sizeof noise, 0) != (ssize_t)sizeof noise) abort(); /* no randomness: cannot be safe */
  for (int i = 0; i < 7; i++) text[i] = digits[(at >> (5 * (6 - i))) & 31];
  for (int i = 0; i < 10; i++) text[7 + i] = digits[noise[i] & 31];
  text[17] = '\0';
  snprintf(out, size, "%s", text);
}

static int insert_job(struct store *s, const char *id, int64_t opened, const char *owner, struct err *e)
{
  return finish(s, prepare(s, "INSERT OR IGNORE INTO jobs (id, opened, owner) VALUES (?, ?, ?)", "tit", id, opened, owner),
                "the job cannot be kept", e);
}

int store_new_job(struct store *s, const char *owner, char id[STORE_ID], struct err *e)
{
  int64_t now = clock_now();

  make_id(now, id, STORE_ID);
  return insert_job(s, id, now, owner, e);
}

static int insert_entry(struct store *s, const char *job, const char *uid, int64_t at, const char *who,
                        const char *kind, const char *body, struct err *e)
{
  return finish(s, prepare(s, "INSERT OR IGNORE INTO entries (job, uid, at, who, kind, body) VALUES (?, ?, ?, ?, ?, ?)",
                           "ttittt", job, uid, at, who, kind, body),
                "the entry cannot be kept", e);
}

int store_add(struct store *s, const char *job, const char *who, const char *kind, const char *body,
              struct err *e)
{
  char uid[STORE_UID];
  int64_t now = clock_now();

  make_id(now, uid, sizeof uid);
  return insert_entry(s, job, uid, now, who, kind, body, e);
}

int store_describe(struct store *s, const char *job, const char *machine, const char *words,
                   const char *ending, const char *text, struct err *e)
{
  int status = run(s, "SAVEPOINT describe", "the job cannot be described", e);

  if (status) return status;
  status = finish(s, prepare(s, "UPDATE jobs SET machine = ?, words = ?, ending = ?,"
                                " closed = CASE WHEN ? = '' THEN 0 WHEN closed = 0 THEN ? ELSE closed END WHERE id = ?",
                             "ttttit", machine, words, ending ? ending : "", ending ? ending : "", clock_now(), job),
                  "the job cannot be described", e);
  if (status == 0) status = finish(s, prepare(s, "DELETE FROM words WHERE job = ?", "t", job), "the job cannot be described", e);
  if (status == 0)
    status = finish(s, prepare(s, "INSERT INTO words (job, text) VALUES (?, ?)", "tt", job, text),
                    "the job cannot be described", e);
  if (status == 0) return run(s, "RELEASE describe", "the job cannot be described", e);
  sqlite3_exec(s->db, "ROLLBACK TO describe; RELEASE describe", NULL, NULL, NULL);
  return status;
}

/* ---- reading ------------------------------------------------------------------------------ */

int store_entries(struct store *s, const char *job, struct store_entries *out, struct err *e)
{
  sqlite3_stmt *q = prepare(s, "SELECT uid, at, who, kind, body FROM entries WHERE job = ? ORDER BY at, n", "t", job);
  int code;

  *out = (struct store_entries){0};
  if (!q) return fail(s, "cannot be read", e);
  while ((code = sqlite3_step(q)) == SQLITE_ROW) {
    void *items = out->items;
    struct store_entry *x;

    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    x = &out->items[out->count++];
    snprintf(x->uid, sizeof x->uid, "%s", (const char *)sqlite3_column_text(q, 0));
    x->at = sqlite3_column_int64(q, 1);
    x->who = column(q, 2);
    x->kind = column(q, 3);
    x->body = column(q, 4);
  }
  sqlite3_finalize(q);
  if (code == SQLITE_DONE) return 0;
  store_entries_free(out);
  return fail(s, "cannot be read", e);
}

void store_entries_free(struct store_entries *entries)
{
  for (size_t i = 0; i < entries->count; i++) {
    free(entries->items[i].who);
    free(entries->items[i].kind);
    free(entries->items[i].body);
  }
  free(entries->items);
  *entries = (struct store_entries){0};
}

static int read_jobs(struct store *s, sqlite3_stmt *q, struct store_jobs *out, struct err *e)
{
  int code;

  *out = (struct store_jobs){0};
  if (!q) return fail(s, "cannot be read", e);
  while ((code = sqlite3_step(q)) == SQLITE_ROW) {
    void *items = out->items;
    struct store_job *j;

    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    j = &out->items[out->count++];
    snprintf(j->id, sizeof j->id, "%s", (const char *)sqlite3_column_text(q, 0));
    j->opened = sqlite3_column_int64(q, 1);
    j->closed = sqlite3_column_int64(q, 2);
    j->machine = column(q, 3);
    j->owner = column(q, 4);
    j->words = column(q, 5);
    j->ending = column(q, 6);
  }
  sqlite3_finalize(q);
  if (code == SQLITE_DONE) return 0;
  store_jobs_free(out);
  return fail(s, "cannot be read", e);
}

#define JOB_COLUMNS "jobs.id, jobs.opened, jobs.closed, jobs.machine, jobs.owner, jobs.words, jobs.ending"

int store_list(struct store *s, enum store_which which, size_t most, struct store_jobs *out, struct err *e)
{
  static const char *const sql[] = {
      "SELECT " JOB_COLUMNS " FROM jobs WHERE closed = 0 ORDER BY opened DESC, id DESC LIMIT ?",
      "SELECT " JOB_COLUMNS " FROM jobs WHERE closed > 0 ORDER BY opened DESC, id DESC LIMIT ?",
      "SELECT " JOB_COLUMNS " FROM jobs ORDER BY opened DESC, id DESC LIMIT ?"};

  return read_jobs(s, prepare(s, sql[which], "i", (int64_t)most), out, e);
}

/* Words from a person as a full-text question: each quoted, each the start of a word. */
static void quote_words(const char *words, struct buf *out)
{
  while (*words) {
    size_t n = 0;

    while (words[n] && !isspace((unsigned char)words[n])) n++;
    if (n > 0) {
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
  status = read_jobs(s, prepare(s, "SELECT " JOB_COLUMNS " FROM words JOIN jobs ON jobs.id = words.job"
                                   " WHERE words.text MATCH ? ORDER BY jobs.opened DESC, jobs.id DESC LIMIT ?",
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

int store_resolve(struct store *s, const char *start, char id[STORE_ID], struct err *e)
{
  struct store_jobs jobs;
  sqlite3_stmt *q = *start ? prepare(s, "SELECT " JOB_COLUMNS " FROM jobs WHERE substr(id, 1, length(?1)) = ?1 LIMIT 2", "t", start)
                           : prepare(s, "SELECT " JOB_COLUMNS " FROM jobs WHERE closed = 0 ORDER BY opened DESC, id DESC LIMIT 1", "");
  int status = read_jobs(s, q, &jobs, e);

  if (status) return status;
  if (jobs.count == 1) memcpy(id, jobs.items[0].id, STORE_ID);
  else if (jobs.count == 0 && !*start) status = err_set(e, EX_DATAERR, NULL, 0, "no job is open.");
  else
    status = err_set(e, EX_DATAERR, NULL, 0, "%s job has an id that begins with \"%.20s\". \"pullcord job list\" shows them.",
                     jobs.count ? "more than one" : "no", start);
  store_jobs_free(&jobs);
  return status;
}

/* ---- whole stores ------------------------------------------------------------------------- */

int store_batch_begin(struct store *s, struct err *e) { return run(s, "BEGIN IMMEDIATE", "cannot be written", e); }

int store_batch_end(struct store *s, bool keep, struct err *e)
{
  return run(s, keep ? "COMMIT" : "ROLLBACK", "cannot be written", e);
}

int store_take(struct store *s, const char *job, int64_t opened, const char *owner,
               const struct store_entry *entry, bool *added, struct err *e)
{
  int status = insert_job(s, job, opened, owner, e);

  if (status == 0)
    status = insert_entry(s, job, entry->uid, entry->at, entry->who, entry->kind, entry->body, e);
  *added = status == 0 && sqlite3_changes(s->db) > 0;
  return status;
}

int store_backup(struct store *s, const char *path, struct err *e)
{
  sqlite3 *to = NULL;
  sqlite3_backup *b;
  int code;
  mode_t mask = umask(077);

  code = sqlite3_open_v2(path, &to, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, NULL);
  umask(mask);
  b = code == SQLITE_OK ? sqlite3_backup_init(to, "main", s->db, "main") : NULL;
  if (b) {
    code = sqlite3_backup_step(b, -1);
    sqlite3_backup_finish(b);
  }
  if (code != SQLITE_DONE) err_set(e, EX_CANTCREAT, path, 0, "the backup cannot be written: %s.", to ? sqlite3_errmsg(to) : "no memory");
  sqlite3_close(to);
  return code == SQLITE_DONE ? 0 : EX_CANTCREAT;
}

int store_merge_file(struct store *s, const char *path, size_t *added, struct err *e)
{
  int status = finish(s, prepare(s, "ATTACH DATABASE ? AS other", "t", path), "the other store cannot be opened", e);
  int64_t before;

  if (status) return status;
  before = pragma_number(s, "SELECT count(*) FROM main.entries");
  status = run(s,
               "BEGIN IMMEDIATE;"
               "INSERT OR IGNORE INTO main.jobs SELECT * FROM other.jobs;"
               "INSERT OR IGNORE INTO main.entries (job, uid, at, who, kind, body)"
               "  SELECT job, uid, at, who, kind, body FROM other.entries ORDER BY n;"
               "INSERT INTO main.words SELECT job, text FROM other.words"
               "  WHERE job NOT IN (SELECT job FROM main.words);"
               "COMMIT",
               "the other store cannot be merged", e);
  if (status) sqlite3_exec(s->db, "ROLLBACK", NULL, NULL, NULL);
  *added = (size_t)(pragma_number(s, "SELECT count(*) FROM main.entries") - before);
  sqlite3_exec(s->db, "DETACH DATABASE other", NULL, NULL, NULL);
  return status;
}
