/* torque.c - see torque.h. */
#include "arith/torque.h"

#include <math.h>
#include <stddef.h>

#define FOOT_POUND 1.3558179483314004 /* N.m */

/* All in ft-lb as printed; 0 where a chart has nothing. Where it does not part the metals both
 * have the same. */
static const struct row {
  double thread; /* mm */
  bool taper, aluminium;
  double low, high, chart_low, chart_high;
} rows[] = {{10, false, true, 7, 11, 7.2, 8.7},    {10, false, false, 7, 11, 7.2, 10.8},
            {12, false, true, 11, 19, 10.8, 14.5}, {12, false, false, 11, 19, 10.8, 18},
            {14, false, true, 15, 22, 18.0, 21.6}, {14, false, false, 26, 29, 18.0, 25.3},
            {14, true, true, 7, 15, 7.2, 14.5},    {14, true, false, 7, 15, 10.8, 18},
            {18, false, true, 28, 34, 25.3, 32.5}, {18, false, false, 32, 38, 25.3, 32.5},
            {18, true, true, 15, 20, 0, 0},        {18, true, false, 15, 20, 0, 0},
            {22.225, false, true, 31, 39, 0, 0},   {22.225, false, false, 35, 43, 0, 0}};

int plug_torque(double thread, bool taper, bool aluminium, struct plug_torque *out, struct err *e)
{
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const struct row *r = &rows[i];

    if (!(fabs(thread * 1e3 - r->thread) <= 0.3) || r->taper != taper || r->aluminium != aluminium) continue;
    out->low = r->low * FOOT_POUND;
    out->high = r->high * FOOT_POUND;
    out->chart_low = r->chart_low > 0 ? r->chart_low * FOOT_POUND : (double)NAN;
    out->chart_high = r->chart_high > 0 ? r->chart_high * FOOT_POUND : (double)NAN;
    return 0;
  }
  return err_set(
      e, EX_DATAERR, NULL, 0,
      "thread: no torque is known for such a plug. Known are 10, 12, 14, 18 mm and 7/8 in with a gasket, "
      "14 and 18 mm with a taper seat.");
}
