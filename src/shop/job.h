/* job.h - what the entries of a job mean, and the entries that say what happened.
 *
 * Kinds of entries, with the members of their bodies (ids are those of the knowledge):
 *   owner, words, note, part   text
 *   machine     class, has[], lacks[]: what it is; has and lacks only where it differs from its class
 *   complaint   complaint
 *   result      check, and result or reading; sure (0 to 1) where it is not sure
 *   spec        check, low, high: a maker's figure; from: where it is from; by_card: it came with
 *               the spec card
 *   spec-card   card: the spec card that the machine goes by ("": none)
 *   given       what, amount: a figure that no check asks for (model/given.h)
 *   took-back   check, complaint, repair (of a fault), spec (of a check) or given: that entry does
 *               not count any more
 *   off, on     cover
 *   advice      do, causes[] (fault, chance), next, knowledge: what was said at that moment
 *   repair      fault: it was put right
 *   proof       fault, passed: the run that shows whether that cured it
 *   minutes     minutes: time spent
 *   service     item (model/service.h), state (done, found, left), text: the service check
 *   closed      ending (repaired, nothing-broken, handed-over, given-up), confirmed[] (faults
 *               whose repair passed its proof run), open[] (service items still open, if any)
 *   reopened    why
 * A proof run that failed opens a closed job again, and its fault leaves the case. A repair
 * and a failed proof run open the whole service check again: the machine is taken apart. */
#ifndef SHOP_JOB_H
#define SHOP_JOB_H

#include "json/json.h"
#include "model/case.h"
#include "model/service.h"
#include "shop/store.h"

enum { JOB_MOST_CAUSES = 3 };

enum job_proof { PROOF_FAILED = -1, PROOF_NONE = 0, PROOF_PASSED = 1 };

struct job_repair { int fault; int64_t at; enum job_proof proof; };
struct job_text { int64_t at; char *text; };

/* An item of the service check: done (looked at, and right), found (something that has yet to
 * be put right), left (on purpose). An item is open while nothing was said of it, or found. */
enum job_service_state { SERVICE_OPEN, SERVICE_DONE, SERVICE_FOUND, SERVICE_LEFT };
struct job_service { enum job_service_state state; int64_t at; char *text; };

/* What was advised: disposition ("" when nothing was), the leading faults (-1: not listed)
 * with their chances, the check to make next (-1: none). */
struct job_cause { int fault; double chance; };
struct job_advice { char disposition[24]; struct job_cause causes[JOB_MOST_CAUSES]; size_t count; int next; };
struct job_texts { struct job_text *items; size_t count, room; };

/* The state that the entries of a job add up to. Texts are free of control signs; owner,
 * words, ending are "" when not told (ending: while the job is open). */
struct job {
  char id[STORE_ID];
  int64_t touched, closed; /* time of the last entry; of closing, 0 while open */
  int64_t last_number;     /* of the last entry, as in store_last_number */
  char *owner, *words, *ending;
  struct bench_case bench_case;
  struct job_repair *repairs; /* in the order they were made, but for those taken back */
  size_t repair_count, repair_room;
  struct job_service service[SERVICE_ITEMS]; /* by the places of model/service.h */
  struct job_texts parts, notes;
  double minutes;
  enum job_proof proof; /* of the last repair; PROOF_NONE when something was found after it */
  struct job_advice advice; /* the last that was given */
  size_t unread;        /* entries that say nothing to this program and this knowledge */
};

/* Adds entries up. Never fails: what it cannot read is counted in unread, and stays in the
 * store. Free with job_free. */
void job_replay(const struct knowledge *k, const struct store_entries *entries, struct job *out);
int job_read(struct store *s, const struct knowledge *k, const char *id, struct job *out, struct err *e);
void job_free(struct job *j);

/* Faults whose repair passed its proof run, into out (room for repair_count), each once. */
size_t job_confirmed(const struct job *j, int *out);

/* Is this item of the service check still open? */
bool job_service_open(const struct job *j, size_t item);

/* "repaired", "nothing-broken", "handed-over", "given-up", then NULL. */
const char *job_ending(size_t i);

/* ---- writing (job_write.c) ----------------------------------------------------------------- */

/* Entries that are not in the store yet. */
struct job_news { struct job_item { const char *kind; char *body; } *items; size_t count, room; };

/* Adds one; the body is taken and freed. kind must outlive the news. */
void job_say(struct job_news *n, const char *kind, struct json *body);
void job_say_text(struct job_news *n, const char *kind, const char *text); /* owner, words, note, part */
void job_say_fault(struct job_news *n, const char *kind, const struct knowledge *k, int fault); /* repair */
void job_say_proof(struct job_news *n, const struct knowledge *k, int fault, bool passed);
void job_say_minutes(struct job_news *n, double minutes);
void job_say_service(struct job_news *n, const char *item, enum job_service_state state, const char *text);

void job_say_closed(struct job_news *n, const struct knowledge *k, const char *ending, const int *confirmed,
                    size_t count);

/* Ends job j as it stands: when repaired, with its confirmed faults and the service items
 * that are open. */
void job_say_ended(struct job_news *n, const struct knowledge *k, const char *ending, const struct job *j);
void job_say_reopened(struct job_news *n, const char *why);

/* Reads what a person says of the service check, "oil plug done" or "fuel found water in the
 * bowl" (all: every item), and says it item by item. EX_USAGE when an item or a state is not
 * known, or when it is not told what was found or why it was left. */
int job_service_read(struct job_news *n, const char *words, struct err *e);
const char *job_service_word(enum job_service_state state); /* "open", "done", ... */

void job_say_advice(struct job_news *n, const struct knowledge *k, const struct job_advice *a);

/* Do both advise the same? The chances may differ. */
bool job_same_advice(const struct job_advice *a, const struct job_advice *b);

/* The entries by which one state of a case differs from the next; a fault that is newly
 * mended is a proof run that failed. Replaying them after those of `before` gives `now`. */
void job_say_change(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                    const struct bench_case *now);
void job_news_free(struct job_news *n);

/* The features that must be told so that the machine comes out as it is: those that differ
 * from its class, and whatever these would change that is as the class has it. told has room
 * for all features and gets enum tri. */
void job_told(const struct knowledge *k, const struct bench_case *now, signed char *told);

/* A copy of a case, with lists of its own. */
void job_copy_case(const struct knowledge *k, const struct bench_case *from, struct bench_case *to);

/* Writes all news in one transaction, with what lists show of the job: they are on disk when
 * this returns 0, and all of them absent otherwise. The news stay the caller's. */
int job_write(struct store *s, const struct knowledge *k, const char *id, const char *who,
              const struct job_news *n, struct err *e);

/* Opens a job with these news, in one transaction; its id goes to id. */
int job_open(struct store *s, const struct knowledge *k, const char *who, const struct job_news *n,
             char id[STORE_ID], struct err *e);

/* Works out again what lists show of a job. */
int job_describe(struct store *s, const struct knowledge *k, const char *id, struct err *e);

/* Takes in a job of another store, within a batch: only what is not here already. *new_job
 * tells whether the job was new; *added grows by the entries that were. */
int job_take(struct store *s, const struct knowledge *k, const char *id, int64_t opened,
             const struct store_entries *entries, bool *new_job, size_t *added, struct err *e);

/* Adds what another store has (store_merge). */
int job_merge(struct store *s, const struct knowledge *k, const char *path, size_t *added, struct err *e);

#endif
