/* store.c - opening the store and adding to it; see store.h. */
#include "shop/store.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/random.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/clock.h"
#include "base/file.h"
#include "base/mem.h"
#include "shop/store_inside.h"

/* A store up to this size is looked through at every opening: it takes some milliseconds. */
enum { WAIT_MS = 5000, SMALL = 4 * 1024 * 1024, DAY = 24 * 60 * 60 };

/* One step per version; user_version says how many were taken. Never change one that was
 * given out: add another. entries.job is jobs.n: every way in looks the job up, so that no
 * foreign key has to be checked again for each entry. */
static const char *const migrations[STORE_VERSION] = {
    "CREATE TABLE jobs (n INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, opened INTEGER NOT NULL,"
    "  touched INTEGER NOT NULL DEFAULT 0, closed INTEGER NOT NULL DEFAULT 0, owner TEXT NOT NULL DEFAULT '',"
    "  machine TEXT NOT NULL DEFAULT '', words TEXT NOT NULL DEFAULT '', ending TEXT NOT NULL DEFAULT '',"
    "  text TEXT NOT NULL DEFAULT '') STRICT;"
    "CREATE TABLE entries (job INTEGER NOT NULL, number INTEGER NOT NULL, uid TEXT NOT NULL,"
    "  at INTEGER NOT NULL, who TEXT NOT NULL, kind TEXT NOT NULL, body TEXT NOT NULL,"
    "  PRIMARY KEY (job, number, uid)) STRICT, WITHOUT ROWID;"
    "CREATE INDEX jobs_open ON jobs(touched, id) WHERE closed = 0;"
    "CREATE INDEX jobs_closed ON jobs(touched, id) WHERE closed > 0;"
    "CREATE INDEX jobs_opened ON jobs(opened, id);"
    "CREATE INDEX jobs_short ON jobs(substr(id, -5));",
    "CREATE VIRTUAL TABLE words USING fts5(text, content='jobs', content_rowid='n', columnsize=0);"
    "INSERT INTO words(words) VALUES('rebuild');"
    "CREATE TABLE looked_through (at INTEGER NOT NULL) STRICT;"};

/* ---- errors and statements --------------------------------------------------------------- */

int store_fail(struct store *s, const char *doing, struct err *e)
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
  case SQLITE_CONSTRAINT: status = EX_DATAERR; break;
  case SQLITE_CORRUPT:
  case SQLITE_NOTADB:
    status = EX_DATAERR;
    advice =
        "The store is damaged: \"pullcord job restore\" puts a backup in its place; the damaged one is kept.";
    break;
  default: break;
  }
  return err_set(e, status, s->path, 0, "%s: %s. %s", doing, s->db ? sqlite3_errmsg(s->db) : "no memory",
                 advice);
}

int store_run(struct store *s, const char *sql, const char *doing, struct err *e)
{
  return sqlite3_exec(s->db, sql, NULL, NULL, NULL) == SQLITE_OK ? 0 : store_fail(s, doing, e);
}

static sqlite3_stmt *prepared(struct store *s, const char *sql)
{
  sqlite3_stmt *q = NULL;

  for (size_t i = 0; i < s->kept_count; i++)
    if (s->kept[i].sql == sql) return s->kept[i].q;
  if (s->kept_count == STORE_MOST_KEPT) abort(); /* more statements than there are in the code */
  if (sqlite3_prepare_v3(s->db, sql, -1, SQLITE_PREPARE_PERSISTENT, &q, NULL) != SQLITE_OK) return NULL;
  s->kept[s->kept_count].sql = sql;
  s->kept[s->kept_count++].q = q;
  return q;
}

sqlite3_stmt *store_use(struct store *s, const char *sql, const char *types, ...)
{
  sqlite3_stmt *q = prepared(s, sql);
  va_list args;

  if (!q) return NULL;
  va_start(args, types);
  for (int i = 0; types[i]; i++)
    if (types[i] == 't') sqlite3_bind_text(q, i + 1, va_arg(args, const char *), -1, SQLITE_STATIC);
    else sqlite3_bind_int64(q, i + 1, va_arg(args, int64_t));
  va_end(args);
  return q;
}

void store_done(sqlite3_stmt *q)
{
  if (!q) return;
  sqlite3_reset(q); /* what is bound stays until it is bound anew: every use binds all */
}

int store_finish(struct store *s, sqlite3_stmt *q, const char *doing, struct err *e)
{
  int code = q ? sqlite3_step(q) : SQLITE_ERROR;
  int status = code == SQLITE_DONE || code == SQLITE_ROW ? 0 : store_fail(s, doing, e);

  store_done(q);
  return status;
}

char *store_column(sqlite3_stmt *q, int i)
{
  const unsigned char *text = sqlite3_column_text(q, i);
  size_t n = (size_t)sqlite3_column_bytes(q, i);
  char *copy = mem_new(n + 1);

  if (text) memcpy(copy, text, n);
  return copy;
}

int64_t store_number(struct store *s, const char *sql)
{
  sqlite3_stmt *q = NULL;
  int64_t n = -1;

  if (sqlite3_prepare_v2(s->db, sql, -1, &q, NULL) == SQLITE_OK && sqlite3_step(q) == SQLITE_ROW)
    n = sqlite3_column_int64(q, 0);
  sqlite3_finalize(q);
  return n;
}

/* ---- opening ------------------------------------------------------------------------------ */

int store_folder(char **out, struct err *e)
{
  const char *state = getenv("XDG_STATE_HOME"), *home = getenv("HOME");
  char *base;

  if (state && state[0] == '/') base = file_join(state, "");
  else if (home && home[0] == '/') base = file_join(home, ".local/state");
  else
    return err_set(e, EX_CONFIG, NULL, 0,
                   "neither XDG_STATE_HOME nor HOME is set, so no job can be kept. Set one of them.");
  *out = file_join(base, "pullcord");
  free(base);
  return 0;
}

static int migrate(struct store *s, struct err *e)
{
  static const char doing[] = "cannot be brought up to date";
  char sql[100];
  int status = store_run(s, "BEGIN IMMEDIATE", doing, e);

  if (status) return status;
  for (int64_t v = store_number(s, "PRAGMA user_version"); v < STORE_VERSION && status == 0; v++)
    status = store_run(s, migrations[v], doing, e);
  snprintf(sql, sizeof sql, "PRAGMA user_version = %d; PRAGMA application_id = %d; COMMIT",
           (int)STORE_VERSION, (int)STORE_MARK);
  if (status == 0) status = store_run(s, sql, doing, e);
  if (status) sqlite3_exec(s->db, "ROLLBACK", NULL, NULL, NULL);
  return status;
}

static int look_through(struct store *s, struct err *e)
{
  sqlite3_stmt *q = NULL;
  bool good = sqlite3_prepare_v2(s->db, "PRAGMA quick_check(1)", -1, &q, NULL) == SQLITE_OK &&
              sqlite3_step(q) == SQLITE_ROW && strcmp((const char *)sqlite3_column_text(q, 0), "ok") == 0;
  int code = sqlite3_errcode(s->db) & 0xFF;

  sqlite3_finalize(q);
  if (good) return 0;
  if (code == SQLITE_BUSY || code == SQLITE_NOMEM || code == SQLITE_CANTOPEN)
    return store_fail(s, "cannot be looked through", e);
  return err_set(e, EX_DATAERR, s->path, 0,
                 "is damaged. \"pullcord job restore\" puts a backup in its place; the damaged one is kept.");
}

/* A large store is looked through once a day; when that was is kept in it. */
static int check_whole(struct store *s, bool write, bool now, struct err *e)
{
  int64_t size = store_number(s, "PRAGMA page_count") * store_number(s, "PRAGMA page_size");
  int64_t last, at = clock_now();
  int status;

  if (!now && size > SMALL) {
    last = store_number(s, "SELECT max(at) FROM looked_through");
    if (last >= 0 && at >= last && at - last < DAY) return 0;
  }
  status = look_through(s, e);
  if (status == 0 && write && size > SMALL) {
    char sql[100];

    snprintf(sql, sizeof sql,
             "BEGIN IMMEDIATE; DELETE FROM looked_through; INSERT INTO looked_through VALUES (%lld); COMMIT",
             (long long)at);
    if (sqlite3_exec(s->db, sql, NULL, NULL, NULL) != SQLITE_OK) /* then it is done again next time */
      sqlite3_exec(s->db, "ROLLBACK", NULL, NULL, NULL);
  }
  return status;
}

/* user_version of a new file is 0, and it has no mark. */
static int check_mark(struct store *s, int64_t *version, struct err *e)
{
  *version = store_number(s, "PRAGMA user_version");
  if (*version < 0) return store_fail(s, "cannot be read", e);
  if (*version > STORE_VERSION)
    return err_set(e, EX_CONFIG, s->path, 0,
                   "was written by a newer pullcord. Use that one; nothing was changed.");
  if (store_number(s, "PRAGMA application_id") != (*version ? STORE_MARK : 0) ||
      (*version == 0 && store_number(s, "SELECT count(*) FROM sqlite_schema") > 0))
    return err_set(e, EX_CONFIG, s->path, 0,
                   "is a database, but not a store of pullcord's. Nothing was changed.");
  return 0;
}

static int set_up(struct store *s, bool write, bool whole, struct err *e)
{
  int64_t version;
  int status;

  sqlite3_busy_timeout(s->db, WAIT_MS);
  sqlite3_extended_result_codes(s->db, 1);
  status = check_mark(s, &version, e);
  if (status) return status;
  if (write && sqlite3_db_readonly(s->db, "main") == 1)
    return err_set(e, EX_NOPERM, s->path, 0,
                   "can only be read from here, so nothing can be kept. Nothing is lost.");
  if (!write && version == 0) return err_set(e, EX_NOINPUT, s->path, 0, "holds no job yet.");
  /* large pages: a quarter less work for an import, and nothing lost for one entry (docs/how-fast.md) */
  if (write && version == 0) status = store_run(s, "PRAGMA page_size = 16384", "cannot be set up", e);
  else status = 0;
  if (status) return status;
  if (write && version < STORE_VERSION) { /* before the switch to WAL, so that a new file is whole at once */
    status = migrate(s, e);
    if (status) return status;
  }
  status = check_whole(s, write, whole, e);
  if (status == 0 && write) status = store_run(s, "PRAGMA journal_mode = WAL", "cannot be written", e);
  if (status == 0)
    status = store_run(s, "PRAGMA synchronous = FULL; PRAGMA cache_size = -16000", "cannot be set up", e);
  return status;
}

/* On a disk that can only be read, what goes with the file cannot be made; it may then be
 * read as something that nobody changes. */
static int open_fixed(struct store *s, struct err *e)
{
  char *name = sqlite3_mprintf("file:%s?immutable=1", s->path), *wal = sqlite3_mprintf("%s-wal", s->path);
  int status = 0;

  if (strpbrk(s->path, "?#%") || access(wal, F_OK) == 0)
    status = store_fail(s, "cannot be opened for reading", e);
  if (status == 0) {
    sqlite3_close(s->db);
    s->db = NULL;
    if (sqlite3_open_v2(name, &s->db, SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, NULL) != SQLITE_OK)
      status = store_fail(s, "cannot be opened", e);
  }
  sqlite3_free(name);
  sqlite3_free(wal);
  return status;
}

int store_open_file(const char *path, enum store_way way, bool whole, struct store **out, struct err *e)
{
  bool write = way == STORE_WRITE;
  int flags = (write ? SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE : SQLITE_OPEN_READONLY) |
              SQLITE_OPEN_NOMUTEX;
  int status = 0; /* no mutex: a store belongs to one thread */
  struct store *s;
  mode_t mask;

  if (!write && access(path, F_OK) != 0) return err_set(e, EX_NOINPUT, path, 0, "is not there.");
  sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0); /* nobody asks, and it costs; later calls change nothing */
  s = mem_new(sizeof *s);
  s->path = mem_new(strlen(path) + 1);
  strcpy(s->path, path);
  mask = umask(077);
  if (sqlite3_open_v2(path, &s->db, flags, NULL) != SQLITE_OK) status = store_fail(s, "cannot be opened", e);
  if (status == 0 && !write && store_number(s, "PRAGMA user_version") < 0 &&
      (sqlite3_errcode(s->db) & 0xFF) == SQLITE_CANTOPEN)
    status = open_fixed(s, e);
  if (status == 0) status = set_up(s, write, whole, e);
  umask(mask);
  if (status) store_close(s);
  else *out = s;
  return status;
}

int store_open(const char *folder, bool write, struct store **out, struct err *e)
{
  char *path = file_join(folder, "jobs.db");
  int status = write ? file_make_folder(folder, e) : 0;

  if (status == 0) status = store_open_file(path, write ? STORE_WRITE : STORE_READ, false, out, e);
  free(path);
  return status;
}

void store_close(struct store *s)
{
  if (!s) return;
  for (size_t i = 0; i < s->kept_count; i++) sqlite3_finalize(s->kept[i].q);
  sqlite3_close(s->db);
  free(s->path);
  free(s);
}

/* ---- adding ------------------------------------------------------------------------------- */

/* Without the letters that look like digits. */
static const char digits[] = "0123456789abcdefghjkmnpqrstvwxyz";

/* Sorts by time and cannot be had twice: seconds, then 60 random bits, in base 32. */
static void make_id(int64_t at, char out[STORE_ID])
{
  unsigned char noise[12];

  if (getrandom(noise, sizeof noise, 0) != (ssize_t)sizeof noise) abort(); /* no randomness: cannot be safe */
  for (int i = 0; i < 7; i++) out[i] = digits[(at >> (5 * (6 - i))) & 31];
  for (int i = 0; i < 12; i++) out[7 + i] = digits[noise[i] & 31];
  out[19] = '\0';
}

/* An id that came from outside: is it of the form that make_id gives? */
static int check_id(struct store *s, const char *id, struct err *e)
{
  if (strlen(id) == STORE_ID - 1 && strspn(id, digits) == STORE_ID - 1) return 0;
  return err_set(e, EX_DATAERR, s->path, 0, "was to take in \"%.30s\", which is no id of a job or an entry.",
                 id);
}

int store_take_job(struct store *s, const char *job, int64_t opened, const struct store_about *about,
                   bool *new, struct err *e)
{
  static const struct store_about nothing = {"", "", "", "", "", 0, 0};
  const struct store_about *a = about ? about : &nothing;
  int status = check_id(s, job, e);

  *new = false;
  if (status) return status;
  status = store_finish(
      s,
      store_use(s,
                "INSERT OR IGNORE INTO jobs (id, opened, touched, closed, owner, machine, words, ending,"
                " text) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                "tiiittttt", job, opened, about ? a->touched : opened, a->closed, a->owner, a->machine,
                a->words, a->ending, a->text),
      "the job cannot be kept", e);
  *new = status == 0 && sqlite3_changes(s->db) > 0;
  if (*new && *a->text)
    status = store_finish(s, store_use(s, "INSERT INTO words (rowid, text) VALUES (?, ?)", "it",
                                       (int64_t)sqlite3_last_insert_rowid(s->db), a->text),
                          "the job cannot be kept", e);
  return status;
}

/* Is a job called so already? */
static bool is_taken(struct store *s, const char *id)
{
  sqlite3_stmt *q =
      store_use(s, "SELECT 1 FROM jobs WHERE substr(id, -5) = ?", "t", id + STORE_ID - 1 - STORE_SHORT);
  bool taken = q && sqlite3_step(q) == SQLITE_ROW;

  store_done(q);
  return taken;
}

int store_new_job(struct store *s, char id[STORE_ID], struct err *e)
{
  int64_t now = clock_now();
  bool new;

  do make_id(now, id);
  while (is_taken(s, id));
  return store_take_job(s, id, now, NULL, &new, e);
}

/* The row of a job, which its entries go by in this store; 0 when there is none. Within a
 * batch it stays the same. */
static int64_t row_of(struct store *s, const char *job)
{
  sqlite3_stmt *q;
  int64_t n;

  if (s->last_row && strcmp(s->last_job, job) == 0) return s->last_row;
  q = store_use(s, "SELECT n FROM jobs WHERE id = ?", "t", job);
  n = q && sqlite3_step(q) == SQLITE_ROW ? sqlite3_column_int64(q, 0) : 0;
  store_done(q);
  snprintf(s->last_job, sizeof s->last_job, "%s", job);
  s->last_row = strlen(job) < sizeof s->last_job ? n : 0;
  return n;
}

static int no_such_job(struct store *s, const char *job, struct err *e)
{
  return err_set(e, EX_DATAERR, s->path, 0, "holds no job %.30s.", job);
}

#define INSERT_ENTRIES "INSERT OR IGNORE INTO entries (job, number, uid, at, who, kind, body) VALUES "
#define ROW "(?1, ?, ?, ?, ?, ?, ?)"

/* Several rows at once take half the time of one by one. */
enum { ROWS = 8, PER_ROW = 6 };

static int take_rows(struct store *s, int64_t row, const struct store_entry *x, int rows, size_t *added,
                     struct err *e)
{
  sqlite3_stmt *q = store_use(s,
                              rows == ROWS ? INSERT_ENTRIES ROW "," ROW "," ROW "," ROW "," ROW "," ROW
                                                                "," ROW "," ROW
                                           : INSERT_ENTRIES ROW,
                              "i", row);
  int status;

  for (int i = 0, at = 2; q && i < rows; i++, at += PER_ROW) {
    sqlite3_bind_int64(q, at, x[i].number);
    sqlite3_bind_text(q, at + 1, x[i].uid, -1, SQLITE_STATIC);
    sqlite3_bind_int64(q, at + 2, x[i].at);
    sqlite3_bind_text(q, at + 3, x[i].who, -1, SQLITE_STATIC);
    sqlite3_bind_text(q, at + 4, x[i].kind, -1, SQLITE_STATIC);
    sqlite3_bind_text(q, at + 5, x[i].body, -1, SQLITE_STATIC);
  }
  status = store_finish(s, q, "the entries cannot be kept", e);
  if (status == 0) *added += (size_t)sqlite3_changes(s->db);
  return status;
}

int store_take(struct store *s, const char *job, const struct store_entries *entries, size_t *added,
               struct err *e)
{
  int64_t row = row_of(s, job);
  int status = row ? 0 : no_such_job(s, job, e);

  for (size_t i = 0; i < entries->count && status == 0; i++) status = check_id(s, entries->items[i].uid, e);
  for (size_t i = 0; i < entries->count && status == 0;) {
    int rows = entries->count - i >= ROWS ? ROWS : 1;

    status = take_rows(s, row, &entries->items[i], rows, added, e);
    i += (size_t)rows;
  }
  return status;
}

int store_add(struct store *s, const char *job, const char *who, const char *kind, const char *body,
              struct err *e)
{
  char uid[STORE_ID];
  int64_t now = clock_now();
  int status;

  make_id(now, uid);
  status = store_finish(
      s,
      store_use(s,
                "INSERT INTO entries (job, number, uid, at, who, kind, body) SELECT n,"
                " coalesce((SELECT max(number) FROM entries WHERE job = n), 0) + 1, ?, ?, ?, ?, ?"
                " FROM jobs WHERE id = ?",
                "titttt", uid, now, who, kind, body, job),
      "the entry cannot be kept", e);
  return status || sqlite3_changes(s->db) == 1 ? status : no_such_job(s, job, e);
}

int store_batch_begin(struct store *s, struct err *e)
{
  s->last_row = 0; /* a restore, or a batch taken back, may have changed which row is whose */
  return store_run(s, "BEGIN IMMEDIATE", "cannot be written", e);
}

int store_batch_end(struct store *s, bool keep, struct err *e)
{
  int status = keep ? store_run(s, "COMMIT", "cannot be written", e) : 0;

  if ((status || !keep) && !sqlite3_get_autocommit(s->db)) sqlite3_exec(s->db, "ROLLBACK", NULL, NULL, NULL);
  return status;
}

/* Words are indexed beside the row they stand in: the old ones must be taken out by name. */
static int describe(struct store *s, const char *job, const struct store_about *a, struct err *e)
{
  static const char doing[] = "the job cannot be described";
  sqlite3_stmt *q = store_use(s, "SELECT text = ? FROM jobs WHERE id = ?", "tt", a->text, job);
  bool same = q && sqlite3_step(q) == SQLITE_ROW && sqlite3_column_int(q, 0) == 1;
  int status = 0;

  store_done(q);
  if (!same)
    status = store_finish(s,
                          store_use(s,
                                    "INSERT INTO words (words, rowid, text)"
                                    " SELECT 'delete', n, text FROM jobs WHERE id = ? AND text <> ''",
                                    "t", job),
                          doing, e);
  if (status == 0)
    status = store_finish(s,
                          store_use(s,
                                    "UPDATE jobs SET owner = ?, machine = ?, words = ?, ending = ?, text = ?,"
                                    " touched = ?, closed = ? WHERE id = ?",
                                    "tttttiit", a->owner, a->machine, a->words, a->ending, a->text,
                                    a->touched, a->closed, job),
                          doing, e);
  if (!same && status == 0 && *a->text)
    status = store_finish(
        s, store_use(s, "INSERT INTO words (rowid, text) SELECT n, text FROM jobs WHERE id = ?", "t", job),
        doing, e);
  return status;
}

int store_describe(struct store *s, const char *job, const struct store_about *about, struct err *e)
{
  bool alone = sqlite3_get_autocommit(s->db);
  int status = alone ? store_batch_begin(s, e) : 0;

  if (status) return status;
  status = describe(s, job, about, e);
  if (!alone) return status;
  if (status) {
    store_batch_end(s, false, &(struct err){0});
    return status;
  }
  return store_batch_end(s, true, e);
}
