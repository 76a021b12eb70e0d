/* range.h - the one way in which a calculation refuses a value. */
#ifndef ARITH_RANGE_H
#define ARITH_RANGE_H

#include "base/err.h"

/* Is low <= value <= high, all in the base unit of their quantity? Returns 0, or sets *e and
 * returns EX_DATAERR; `what` names the value and `unit` (of the unit table) is the one in which
 * both are shown. Not a number lies outside. */
int arith_within(const char *what, double value, double low, double high, const char *unit, struct err *e);

#endif
