/* store_whole.c - backup, restore and merge of whole stores; see store.h. */
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/clock.h"
#include "base/file.h"
#include "base/mem.h"
#include "shop/store_inside.h"

enum { TRIES = 50, PAUSE_MS = 100 };

static char *beside(const char *path, const char *ending)
{
  char *out = mem_new(strlen(path) + strlen(ending) + 1);

  strcpy(out, path);
  strcat(out, ending);
  return out;
}

/* Copies all of one open database over another. Waits while others write. */
static int copy_database(sqlite3 *from, sqlite3 *to)
{
  sqlite3_backup *b = sqlite3_backup_init(to, "main", from, "main");
  int code = b ? SQLITE_OK : sqlite3_errcode(to);

  for (int i = 0; b && i < TRIES; i++) {
    code = sqlite3_backup_step(b, -1);
    if (code != SQLITE_BUSY && code != SQLITE_LOCKED) break;
    sqlite3_sleep(PAUSE_MS);
  }
  if (b) code = sqlite3_backup_finish(b) == SQLITE_OK && code == SQLITE_DONE ? SQLITE_OK : code;
  return code;
}

/* A copy brings its pages' size along, which a write-ahead log does not let it do: then the log
 * is put away until the store is opened again. */
static int same_pages(struct store *from, struct store *to, struct err *e)
{
  static const char size[] = "PRAGMA page_size";

  if (store_number(from, size) == store_number(to, size)) return 0;
  return store_run(to, "PRAGMA journal_mode = DELETE", "cannot be made ready for a copy", e);
}

/* A new file that stands by itself: no write-ahead log beside it. */
static int copy_to_file(struct store *s, const char *path, struct err *e)
{
  sqlite3 *to = NULL;
  int status = 0;
  mode_t mask = umask(077);
  int code = sqlite3_open_v2(path, &to, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, NULL);

  if (code == SQLITE_OK) code = copy_database(s->db, to);
  if (code == SQLITE_OK)
    code = sqlite3_exec(to, "PRAGMA synchronous = FULL; PRAGMA journal_mode = DELETE", NULL, NULL, NULL);
  umask(mask);
  if (code != SQLITE_OK)
    status = err_set(e, code == SQLITE_BUSY ? EX_TEMPFAIL : EX_CANTCREAT, path, 0, "cannot be written: %s.",
                     sqlite3_errstr(code));
  if (sqlite3_close(to) != SQLITE_OK && status == 0)
    status = err_set(e, EX_IOERR, path, 0, "cannot be closed.");
  return status;
}

int store_backup(struct store *s, const char *path, struct err *e)
{
  char *half = beside(path, ".part");
  struct store *copy = NULL;
  int status;

  unlink(half);
  status = copy_to_file(s, half, e);
  if (status == 0) status = store_open_file(half, STORE_READ, true, &copy, e);
  store_close(copy);
  if (status == 0 && rename(half, path) != 0)
    status = err_set(e, EX_CANTCREAT, path, 0, "cannot be written: %s.", strerror(errno));
  if (status) unlink(half);
  free(half);
  return status;
}

int store_set_aside(const char *folder, char *kept, size_t size, struct err *e)
{
  static const char *const endings[] = {"", "-wal", "-shm"};
  char *path = file_join(folder, "jobs.db"), *to = NULL;
  int status = 0;

  for (int i = 1; i < 100000; i++) {
    char name[40];

    snprintf(name, sizeof name, "jobs-aside-%d.db", i);
    free(to);
    to = file_join(folder, name);
    if (access(to, F_OK) != 0) break;
  }
  for (size_t i = 0; i < sizeof endings / sizeof endings[0] && status == 0; i++) {
    char *a = beside(path, endings[i]), *b = beside(to, endings[i]);

    if (access(a, F_OK) == 0 && rename(a, b) != 0)
      status = err_set(e, EX_CANTCREAT, b, 0, "cannot be made: %s.", strerror(errno));
    free(a);
    free(b);
  }
  snprintf(kept, size, "%s", to);
  free(path);
  free(to);
  return status;
}

/* The present store as a backup of its own beside it; its name goes to kept. */
static int keep_present(struct store *s, const char *folder, char *kept, size_t size, struct err *e)
{
  for (int i = 1; i < 100000; i++) {
    char name[60], *path;

    snprintf(name, sizeof name, "jobs-before-restore-%d.db", i);
    path = file_join(folder, name);
    snprintf(kept, size, "%s", path);
    free(path);
    if (access(kept, F_OK) != 0) break;
  }
  return store_backup(s, kept, e);
}

int store_restore(const char *folder, const char *path, char *kept, size_t size, struct err *e)
{
  struct store *from = NULL, *to = NULL;
  char *present = file_join(folder, "jobs.db");
  bool was_there = access(present, F_OK) == 0;
  int status = store_open_file(path, STORE_READ, true, &from, e), code;

  *kept = '\0';
  if (status == 0) {
    status = store_open(folder, true, &to, e);
    if (status == EX_DATAERR && was_there) {
      status = store_set_aside(folder, kept, size, e);
      if (status == 0) status = store_open(folder, true, &to, e);
    } else if (status == 0 && was_there) {
      status = keep_present(to, folder, kept, size, e);
    }
  }
  if (status == 0) status = same_pages(from, to, e);
  if (status == 0) {
    code = copy_database(from->db, to->db);
    if (code != SQLITE_OK)
      status = err_set(e, code == SQLITE_BUSY ? EX_TEMPFAIL : EX_IOERR, present, 0,
                       "cannot be written: %s. It is as it was.", sqlite3_errstr(code));
  }
  store_close(from);
  store_close(to);
  if (status == 0) { /* an older backup is brought up to date here and now */
    status = store_open(folder, true, &to, e);
    if (status == 0) store_close(to);
  }
  free(present);
  return status;
}

/* ---- merging ------------------------------------------------------------------------------ */

struct merging { struct store *to; store_changed *changed; void *context; size_t added; };

static int merge_job(void *context, const char *job, int64_t opened, const struct store_entries *entries,
                     struct err *e)
{
  struct merging *m = context;
  size_t added = 0;
  bool new;
  int status = store_take_job(m->to, job, opened, NULL, &new, e);

  if (status == 0) status = store_take(m->to, job, entries, &added, e);
  m->added += added;
  return status == 0 && (new || added) ? m->changed(m->context, job, e) : status;
}

static bool same_file(const char *a, const char *b)
{
  struct stat x, y;

  return stat(a, &x) == 0 && stat(b, &y) == 0 && x.st_dev == y.st_dev && x.st_ino == y.st_ino;
}

int store_merge(struct store *s, const char *path, store_changed *changed, void *context, size_t *added,
                struct err *e)
{
  struct merging m = {s, changed, context, 0};
  struct store *from = NULL;
  int status, end;

  *added = 0;
  if (same_file(s->path, path)) return 0; /* nothing of its own can be missing */
  status = store_open_file(path, STORE_READ, true, &from, e);
  if (status) return status;
  status = store_batch_begin(s, e);
  if (status == 0) {
    status = store_walk(from, merge_job, &m, e);
    end = store_batch_end(s, status == 0, status ? &(struct err){0} : e);
    if (status == 0) status = end;
  }
  store_close(from);
  if (status == 0) *added = m.added;
  return status;
}
