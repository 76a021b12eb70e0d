/* history.h - how the jobs in the store turned out, and whether that counts. */
#ifndef SHOP_HISTORY_H
#define SHOP_HISTORY_H

#include "shop/job.h"
#include "shop/learn.h"

/* Only the latest closed jobs are looked at: some years of one bench. */
enum { HISTORY_MOST = 1000 };

/* Is the history weighed with, and from when on (a job counts when it was closed later)?
 * Kept in the folder of the store as learned.json; on, from the beginning, where there is
 * none. EX_DATAERR when the file is none of ours. */
struct learn_switch { bool on; int64_t since; };
int learn_switch_read(const char *folder, struct learn_switch *out, struct err *e);
int learn_switch_write(const char *folder, const struct learn_switch *s, struct err *e);

/* What the entries of one job come to, into *out (begun by outcomes_add). False when the job
 * is open. Confirmed is a job that ended "repaired" with a repair that passed its proof run;
 * its results are those recorded before that repair and not taken back. */
bool history_outcome(const struct knowledge *k, const struct store_entries *entries, struct outcome *out);

/* How many entries come before the fault was taken for known: before the first repair or proof
 * run of one of these (confirmed) faults; all, when there is none. */
size_t history_known_from(const struct knowledge *k, const struct store_entries *entries, const int *faults,
                          size_t count);

/* Class, first complaint and plain results of a case: results that are sure, and readings of
 * which nine tenths or more fall on one result by the card or the class figures. */
void history_case(const struct knowledge *k, const struct bench_case *c, struct outcome *out);

/* The jobs closed after `since`, latest first. Free with outcomes_free. */
int history_read(struct store *s, const struct knowledge *k, int64_t since, struct outcomes *out,
                 struct err *e);

/* The history with what it makes of the chances. jobs is how many jobs that rests on: 0 when
 * it is switched off or nothing counts yet, and then all chances are as shipped. */
struct history { struct outcomes past; struct learned chances; long jobs; };

/* Begins *out (free with history_free, also after a failure) and fills it from the store whose
 * folder this is. */
int history_learn(struct store *s, const char *folder, const struct knowledge *k, struct history *out,
                  struct err *e);
void history_free(struct history *h);

#endif
