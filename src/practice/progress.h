/* progress.h - how an apprentice comes on, from the runs that were kept.
 *
 * Runs are files run-1.json, run-2.json ... in a folder of the apprentice's own; deleting the
 * folder forgets everything. */
#ifndef PRACTICE_PROGRESS_H
#define PRACTICE_PROGRESS_H

#include "base/buf.h"
#include "practice/record.h"

enum { PROGRESS_SYSTEMS = 10, PROGRESS_LATEST = 10 };

struct system_progress {
  const char *name;
  int runs, found, since, in_row;
  double given_away, expected;
};

struct progress {
  char apprentice[RECORD_NAME];
  int runs, over, found, unsafe, steps;
  double minutes, given_away, expected, brier, sure;
  int brier_count, sure_right;
  double latest[PROGRESS_LATEST]; /* minutes given away in the latest finished runs, oldest first */
  int latest_count;
  struct system_progress systems[PROGRESS_SYSTEMS];
  const char *next_system; /* to practise next; NULL: mixed */
  enum level next_level;
  char why[200]; /* why that is next */
};

/* Is this a name a folder can have: letters, digits and hyphens, letter first, at most 30? */
bool progress_name_good(const char *name);

/* The folder of an apprentice below the state folder; and the file of a run. The caller frees. */
char *progress_folder(const char *state, const char *apprentice);
char *progress_file(const char *state, const char *apprentice, int run);

/* How many runs are kept; 0 when there are none. */
int progress_count(const char *state, const char *apprentice);

/* Adds one finished run (call in their order), then works out what is next. */
void progress_begin(struct progress *p, const char *apprentice);
void progress_add(struct progress *p, const struct record *x);
void progress_end(struct progress *p);

/* Reads all kept runs. Records that cannot be read are left out; *bad counts them. */
void progress_read(const char *state, const char *apprentice, const struct knowledge *k, struct progress *out,
                   int *bad);

/* Removes all runs of the apprentice and the folder. EX_IOERR. */
int progress_forget(const char *state, const char *apprentice, struct err *e);

void progress_text(struct buf *out, const struct progress *p, int width);
struct json *progress_json(const struct progress *p);

#endif
