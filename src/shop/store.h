/* store.h - jobs on disk, in SQLite; the only part that includes it.
 *
 * A job is a list of entries that only grows: what was said, seen, taken off, put back,
 * repaired and how it ended. The state of a job is what its entries add up to (job.h), so
 * two programs on one store cannot lose each other's work, and two stores merge by adding
 * the entries that are missing. Every entry is one transaction, synced before it is
 * reported as kept. */
#ifndef SHOP_STORE_H
#define SHOP_STORE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "base/err.h"

struct store;

enum { STORE_ID = 24, STORE_UID = 40 };

/* A job as a row of a list. Texts belong to the list. */
struct store_job {
  char id[STORE_ID];
  int64_t opened, closed; /* closed 0: still open */
  char *machine, *owner, *words, *ending;
};

struct store_jobs { struct store_job *items; size_t count, room; };

/* One entry. body is JSON; kinds are listed in job.h. */
struct store_entry {
  char uid[STORE_UID]; /* the same entry in every store */
  int64_t at;
  char *who, *kind, *body;
};

struct store_entries { struct store_entry *items; size_t count, room; };

/* Opens the store in the folder (made, mode 0700, when it is not there), brings it up to the
 * present version, and checks that it is whole. EX_NOPERM when it can only be read and
 * write is asked for; EX_DATAERR when it is damaged; EX_TEMPFAIL when another program holds
 * it too long. The caller closes it. */
int store_open(const char *folder, bool write, struct store **out, struct err *e);
void store_close(struct store *s);

/* Opens a new job; its id goes to id. */
int store_new_job(struct store *s, const char *owner, char id[STORE_ID], struct err *e);

/* Adds one entry. It is on disk when this returns 0, and absent otherwise. */
int store_add(struct store *s, const char *job, const char *who, const char *kind, const char *body,
              struct err *e);

/* All entries of a job in order. Free with store_entries_free. EX_DATAERR when there is no
 * such job. */
int store_entries(struct store *s, const char *job, struct store_entries *out, struct err *e);
void store_entries_free(struct store_entries *entries);

/* What a list row shows: set by whoever knows what the entries mean. ending NULL: open. */
int store_describe(struct store *s, const char *job, const char *machine, const char *words,
                   const char *ending, const char *text, struct err *e);

/* Jobs, newest first: open ones, closed ones or all; or those whose text matches the words
 * (every one of them, as starts of words). Free with store_jobs_free. */
enum store_which { STORE_OPEN, STORE_CLOSED, STORE_ALL };
int store_list(struct store *s, enum store_which which, size_t most, struct store_jobs *out, struct err *e);
int store_find(struct store *s, const char *words, size_t most, struct store_jobs *out, struct err *e);
void store_jobs_free(struct store_jobs *jobs);

/* The full id of the job whose id begins so, or of the newest open job when `start` is
 * empty. EX_DATAERR when there is none or more than one. */
int store_resolve(struct store *s, const char *start, char id[STORE_ID], struct err *e);

/* Takes in one entry of another store (id of the job, and the entry as it is there). Nothing
 * happens when it is here already; *added tells. Many calls may stand between
 * store_batch_begin and _end, which make them one transaction. */
int store_take(struct store *s, const char *job, int64_t opened, const char *owner,
               const struct store_entry *entry, bool *added, struct err *e);
int store_batch_begin(struct store *s, struct err *e);
int store_batch_end(struct store *s, bool keep, struct err *e);

/* Copies the whole store into one new file, consistent whatever else is going on; and the
 * other way round, adding what is missing here (*added entries). */
int store_backup(struct store *s, const char *path, struct err *e);
int store_merge_file(struct store *s, const char *path, size_t *added, struct err *e);

#endif
