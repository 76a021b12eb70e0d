/* deeper.h - more about an assessment, worked out when asked for. With more than about ten
 * unsound results these would take long, and give nothing instead. */
#ifndef ASSESS_DEEPER_H
#define ASSESS_DEEPER_H

#include "assess/assess.h"
#include "weigh/sensitivity.h"

enum { DEEPER_MOST_TOGETHER = 4 };

/* Of the causes in play (see deeper_in_play) just these are there; the rest of the faults
 * may be or not. chance is exact. */
struct together { int fault[DEEPER_MOST_TOGETHER]; size_t count; double chance; };

/* Places in the net of the causes in play: highest blame first, from the setting
 * show-belief up, at most `most`. */
size_t deeper_in_play(const struct assessment *a, const struct knowledge *k, int *places, size_t most);

/* The most probable combinations of the causes in play, best first, into out (room for
 * most); knowledge faults, -1 for not listed. */
size_t deeper_together(struct assessment *a, const struct knowledge *k, struct together *out, size_t most);

/* An unsound finding that one fault accounts for: the fault and the chance that it brought
 * the finding about. */
struct accounted { int evidence; int fault; double chance; };

/* For each unsound piece of evidence the fault that most likely brought it about; into out
 * (room for evidence_count). */
size_t deeper_accounted(struct assessment *a, struct accounted *out);

/* A fault was put right but the complaint stayed: marks it as mended, and takes back the
 * results that it most likely brought about, since they held before the repair only.
 * Returns how many were taken back. The assessment is out of date afterwards. */
size_t deeper_mend(struct assessment *a, struct bench_case *c, int fault);

/* The estimate that the first place hangs on, against the second. evidence is the piece of
 * evidence that out->what.finding stands for, -1 for a prior. False when there is none. */
bool deeper_hangs_on(struct assessment *a, struct sensitivity *out, int *evidence);

#endif
