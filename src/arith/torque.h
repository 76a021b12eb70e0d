/* torque.h - how tight a spark plug may be. */
#ifndef ARITH_TORQUE_H
#define ARITH_TORQUE_H

#include <stdbool.h>

#include "base/err.h"

/* Two charts, N.m. */
struct plug_torque {
  double low, high;             /* published: Parish 2006 */
  double chart_low, chart_high; /* a plug maker's chart, common practice; NAN: not on it */
};

/* The torque for a plug of `thread` m (10, 12, 14, 18 mm or 7/8 in, within 0.3 mm), with a taper seat
 * or a gasket, in aluminium or iron; dry threads.
 * Source: R. L. Parish, "Spark Plug Tightening Torque", LSU AgCenter, 12 May 2006; beside it a plug
 * maker's chart (common practice). They differ; the engine maker's figure comes before both.
 * Left out: oil or anti-seize on the thread (less torque: a fifth to a third), a used gasket, thread
 * inserts, a damaged thread. Returns 0, or EX_DATAERR with *e when there is no such plug. */
int plug_torque(double thread, bool taper, bool aluminium, struct plug_torque *out, struct err *e);

#endif
