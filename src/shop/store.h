/* store.h - jobs on disk, in SQLite; only this layer includes it.
 *
 * A job is a list of entries that only grows: what was said, seen, taken off, put back,
 * repaired and how it ended. The state of a job is what its entries add up to (job.h), so
 * two programs on one store cannot lose each other's work, and two stores merge by adding
 * the entries that are missing. What is added in one transaction is on disk when that ends,
 * or absent. The order of entries is that of their numbers: each gets one more than the
 * highest that its store knew for the job, so what was seen comes before what followed from
 * it, in every store, whatever the clocks said. */
#ifndef SHOP_STORE_H
#define SHOP_STORE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "base/err.h"

struct store;

enum { STORE_ID = 20, STORE_SHORT = 5 };

/* A job as a row of a list. Texts belong to the list. The last STORE_SHORT letters of the
 * id are what people call the job by. */
struct store_job {
  char id[STORE_ID];
  int64_t opened, touched, closed; /* closed 0: still open */
  char *machine, *owner, *words, *ending;
};

struct store_jobs { struct store_job *items; size_t count, room; };

/* One entry. body is JSON; kinds are listed in job.h. uid is the same in every store. */
struct store_entry {
  char uid[STORE_ID];
  int64_t number, at;
  char *who, *kind, *body;
};

struct store_entries { struct store_entry *items; size_t count, room; };

/* What a list shows of a job, and the text in which words are looked for: worked out from
 * the entries by job.h. closed 0: open. */
struct store_about {
  const char *owner, *machine, *words, *ending, *text;
  int64_t touched, closed;
};

/* The folder of the store, $XDG_STATE_HOME/pullcord or ~/.local/state/pullcord. The caller
 * frees. EX_CONFIG when neither is set. */
int store_folder(char **out, struct err *e);

/* Opens the store in the folder (made, mode 0700, when it is not there; its files get 0600),
 * brings it up to the present version, and checks that it is whole: at every opening as long
 * as it is small, once a day when it is large. EX_NOINPUT when there is none and it is only
 * to be read; EX_NOPERM when it can only be read and write is asked for; EX_DATAERR when it
 * is damaged; EX_CONFIG when it is of a newer version or another program's; EX_TEMPFAIL when
 * another program holds it too long. The caller closes it. */
int store_open(const char *folder, bool write, struct store **out, struct err *e);
void store_close(struct store *s);

/* Opens a new job now; its id goes to id. */
int store_new_job(struct store *s, char id[STORE_ID], struct err *e);

/* Adds one entry, with the time of now. Outside a batch it is a transaction of its own: on
 * disk when this returns 0, and absent otherwise. */
int store_add(struct store *s, const char *job, const char *who, const char *kind, const char *body,
              struct err *e);

/* What stands between these is one transaction; keep false takes it all back. A batch_end
 * that fails has taken it all back. */
int store_batch_begin(struct store *s, struct err *e);
int store_batch_end(struct store *s, bool keep, struct err *e);

/* Changes what lists show of a job and where words are looked for. */
int store_describe(struct store *s, const char *job, const struct store_about *about, struct err *e);

/* All entries of a job in order. Free with store_entries_free. */
int store_entries(struct store *s, const char *job, struct store_entries *out, struct err *e);
void store_entries_free(struct store_entries *entries);

/* The same without the kinds that change neither the case nor its ending: owner, words, note,
 * part, minutes, off, on, service. */
int store_entries_telling(struct store *s, const char *job, struct store_entries *out, struct err *e);

/* What is read between these is the store at one moment; each read takes less time. Nothing
 * may be written meanwhile. */
int store_read_begin(struct store *s, struct err *e);
void store_read_end(struct store *s);

/* The highest number among the entries of a job, which says whether others added some. */
int store_last_number(struct store *s, const char *job, int64_t *out, struct err *e);

/* Jobs: open ones or closed ones, last worked on first; all, last opened first; or those
 * whose text holds the words (every one of them, as starts of words). Free with
 * store_jobs_free. store_row gives the one with this id (EX_DATAERR when there is none). */
enum store_which { STORE_OPEN, STORE_CLOSED, STORE_ALL };
int store_list(struct store *s, enum store_which which, size_t most, struct store_jobs *out, struct err *e);
int store_find(struct store *s, const char *words, size_t most, struct store_jobs *out, struct err *e);
int store_row(struct store *s, const char *id, struct store_jobs *out, struct err *e);
void store_jobs_free(struct store_jobs *jobs);

/* The full id of the job that is called so: its last STORE_SHORT letters, or the id from its
 * beginning. Of several, the one that is open. "last" is the open job last worked on. EX_DATAERR
 * when there is none or more than one. */
int store_resolve(struct store *s, const char *name, char id[STORE_ID], struct err *e);

/* Goes through all jobs in the order of their ids, as they are at one moment. `each` may not
 * write to the store; anything but 0 from it ends the walk. */
typedef int store_each(void *context, const char *job, int64_t opened, const struct store_entries *entries,
                       struct err *e);
int store_walk(struct store *s, store_each *each, void *context, struct err *e);

/* Takes in a job (with what lists show of it, where that is known already) and entries, as
 * they are in another store. Nothing happens with those that are here already: *new tells,
 * *added grows by those that were not. Only within a batch. */
int store_take_job(struct store *s, const char *job, int64_t opened, const struct store_about *about,
                   bool *new, struct err *e);
int store_take(struct store *s, const char *job, const struct store_entries *entries, size_t *added,
               struct err *e);

/* ---- whole stores (store_whole.c) --------------------------------------------------------- */

/* Copies the whole store into one file that stands by itself, as it is at one moment
 * whatever else is going on. What was at that path before is replaced only by a complete
 * copy. A store that is not whole is refused. */
int store_backup(struct store *s, const char *path, struct err *e);

/* Makes the store in the folder what the backup at path holds. What is there before is kept
 * beside it, and where goes to kept (size bytes; "" when there was nothing). EX_DATAERR when
 * the backup is damaged, EX_CONFIG when it, or the present store, is newer or no store of
 * ours. */
int store_restore(const char *folder, const char *path, char *kept, size_t size, struct err *e);

/* Puts the store's files aside under another name, which goes to kept. For a store that is
 * damaged. */
int store_set_aside(const char *folder, char *kept, size_t size, struct err *e);

/* Adds what the store at path (a backup, or another bench's jobs.db) has and this one lacks.
 * `changed` is called for every job that got something, inside the same transaction; *added
 * counts entries. */
typedef int store_changed(void *context, const char *job, struct err *e);
int store_merge(struct store *s, const char *path, store_changed *changed, void *context, size_t *added,
                struct err *e);

#endif
