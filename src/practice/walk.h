/* walk.h - a run walked by the best step each time. */
#ifndef PRACTICE_WALK_H
#define PRACTICE_WALK_H

#include "practice/run.h"

/* The entry that the advice puts first. Giving up where only what is not listed is left. */
struct entry walk_best(const struct run *r);

/* Walks the run to its end so. EX_TEMPFAIL from the engine's limits. */
int walk_to_the_end(struct run *r, struct err *e);

#endif
