/* suspects.h - the sets of faults that may be behind what was found, with their weights.
 *
 * A set here means: exactly these faults brought about something unsound that was found (or,
 * when nothing unsound was found, exactly these are there); others may be there beside the
 * trouble. So a common fault does not lend its weight to whatever it is paired with. The
 * weights of sets of up to two faults are exact up to a common factor (the model of net.h, by
 * inclusion and exclusion over being there and idle). */
#ifndef PLAN_SUSPECTS_H
#define PLAN_SUSPECTS_H

#include "weigh/casenet.h"

enum { SUSPECTS_MAX = 60, SUSPECTS_MAX_FAULTS = 40 };

/* place: faults of the casenet (count 0: nothing broken). needed[i]: the chance that fault i
 * of a pair is behind something in focus, so that the machine stays wrong until it is
 * repaired; 1 for a single fault. */
struct suspect_set { int place[2]; size_t count; double weight, needed[2]; };

struct suspects {
  struct suspect_set set[SUSPECTS_MAX]; /* nothing broken, then the singles, then the pairs */
  size_t count, singles;                /* singles are set[1] .. set[singles] */
};

/* belief[]: that of the casenet's faults. Weights are made to add to 1. Both members of every
 * pair are also there as singles. */
void suspects_list(struct casenet *n, const double *belief, struct suspects *out);

/* Index of the single fault at that place of the casenet, -1 when it is not there. */
int suspects_single(const struct suspects *s, int place);

#endif
