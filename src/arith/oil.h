/* oil.h - filling up after a drain, and what the grade on the bottle promises. */
#ifndef ARITH_OIL_H
#define ARITH_OIL_H

#include <stdbool.h>

#include "base/err.h"

/* Volumes in m3. */
struct oil_plan {
  double behind; /* stays in the engine after draining */
  double needed; /* what it will probably take */
  double start;  /* pour this, wait, look at the mark */
  double step;   /* then add so much at a time */
  int likely;    /* steps that it will probably take */
  int most;      /* steps until the book amount is in: look for a mistake before more */
};

/* Plan for the book amount (20 mL to 20 L) of which the share `behind` (0 to 0.3) stays back.
 *   needed = book (1 - behind)
 *   start  = book (1 - behind - the larger of behind and 0.05), down to a whole 10 mL (5 under 200 mL)
 *   step   = book / 20, to the nearest 10 mL (5 under 200 mL), at least 5 mL
 * so that twice as much staying back still does not overfill.
 * Source: that about a tenth stays back is common practice; start and steps are the author's choice.
 * Left out: a filter, a cooler, a gearcase on the same oil, tilting of the engine; the mark comes
 * before every amount. Returns 0, or EX_DATAERR with *e. */
int oil_refill(double book, double behind, struct oil_plan *out, struct err *e);

/* Limits of a grade. NAN where the grade has none. Temperatures K, viscosities mPa.s, mm2/s. */
struct oil_grade {
  double crank_at, crank_most;   /* cold cranking: at most so thick at that temperature */
  double pump_at, pump_most;     /* pumping: likewise */
  double warm_least, warm_under; /* mm2/s at 100 degC */
  double shear_least;            /* mPa.s at 150 degC, high shear */
  bool recalled;                 /* some of it is from memory, not read */
};

/* Reads "10W-30", "10W30", "SAE 30", "5w" (any case) into *out.
 * Source: SAE J300 (January 2015 copy, December 1999 copy, summary of 2024): read for 5W, 10W, 20,
 * 30 and 40; the W pumping limits of 5W and some shear limits, and all other grades, are from memory.
 * Left out: everything but thickness (service class, two-stroke oils, gear oils 75W-90, which have a
 * standard of their own). Returns 0, or EX_DATAERR with *e when there is no such grade. */
int oil_grade(const char *text, struct oil_grade *out, struct err *e);

#endif
