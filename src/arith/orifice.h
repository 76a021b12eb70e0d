/* orifice.h - liquid through a hole: jets, nozzles, pumps. */
#ifndef ARITH_ORIFICE_H
#define ARITH_ORIFICE_H

#include "base/err.h"

#define ORIFICE_SHARP 0.62   /* discharge coefficient, sharp-edged hole; textbook */
#define ORIFICE_WATER 1000.0 /* kg/m3 */

/* Flow m3/s through a round hole of `diameter` m (50 um to 50 mm) with `pressure` Pa across it (1 Pa
 * to 100 MPa), liquid of `density` kg/m3 (500 to 1500), discharge coefficient (0.3 to 1).
 *   Q = C (pi/4) d^2 sqrt(2 P / density)
 * Source: Bernoulli and continuity, textbook; 0.62 sharp-edged, 0.80 short tube, 0.95 and more well
 * rounded are textbook values.
 * Left out: speed ahead of the hole, thickness of the liquid (in a carburettor jet at idle the
 * coefficient falls), air in it, cavitation. Returns 0, or EX_DATAERR with *e. */
int orifice_flow(double diameter, double pressure, double density, double coefficient, double *flow,
                 struct err *e);

/* The diameter m that passes `flow` m3/s (0.1 mL/min to 2000 L/min); otherwise as orifice_flow. */
int orifice_diameter(double flow, double pressure, double density, double coefficient, double *diameter,
                     struct err *e);

/* The pressure Pa across a hole that passes `flow`; otherwise as orifice_flow. EX_DATAERR also when
 * it would be over 100 MPa. */
int orifice_pressure(double flow, double diameter, double density, double coefficient, double *pressure,
                     struct err *e);

/* What two round holes pass against each other, at the same pressure: (to / from)^2. Both 50 um to
 * 50 mm. Source: area ratio. Left out: that the coefficient changes a little with the hole.
 * Returns 0, or EX_DATAERR with *e. */
int orifice_ratio(double from, double to, double *ratio, struct err *e);

/* The diameter m of a clear hole that passes what is left of one of `diameter` m (50 um to 50 mm) of
 * whose area the share `blocked` (0 to 0.95) is closed.  d sqrt(1 - blocked)
 * Source: area ratio. Left out: the shape of the dirt. Returns 0, or EX_DATAERR with *e. */
int orifice_open(double diameter, double blocked, double *open, struct err *e);

/* Flow m3/s of `volume` m3 (10 mL to 1000 L) in `time` s (1 s to 1 h): the bucket and the watch.
 * Returns 0, or EX_DATAERR with *e. */
int pump_flow(double volume, double time, double *flow, struct err *e);

/* The number stamped on washer nozzles: US gal/min that it passes at 4000 psi, from flow m3/s at
 * pressure Pa (> 0).  number = US gal/min sqrt(4000 psi / P).  Common practice of that trade. */
double nozzle_number(double flow, double pressure);

#endif
