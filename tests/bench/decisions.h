/* decisions.h - how long the next step takes on the real knowledge; and what bench_plan shares. */
#ifndef BENCH_DECISIONS_H
#define BENCH_DECISIONS_H

#include <stdbool.h>
#include <stddef.h>

#include "model/knowledge.h"

/* Processor time in milliseconds: other work on the machine does not count. */
double now_ms(void);

int by_size(const void *a, const void *b); /* doubles, rising */

/* The value that this share of the sorted ones lies below. */
double at_share(const double *sorted, size_t count, double share);

/* Prints how long the full plan takes, on about `most` of the case files that are named or lie
 * in the folders named, evenly taken, so many rounds of each. showing: the advice as well. */
void time_decisions(const struct knowledge *k, char **arg, int count, size_t most, int rounds, bool showing);

#endif
