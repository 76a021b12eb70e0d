/* turning.h - what turns how fast: generators, blades, belts. Speeds of turning in rad/s. */
#ifndef ARITH_TURNING_H
#define ARITH_TURNING_H

#include "base/err.h"

/* Frequency Hz of a generator with `poles` (an even number, 2 to 24) turned at `speed` rad/s (1 to
 * 20000 rpm).  f = poles rpm / 120
 * Source: Navy training course 14177, p. 3-14. Left out: slip (of an asynchronous set), inverter
 * sets, whose output has nothing to do with engine speed. Returns 0, or EX_DATAERR with *e. */
int generator_frequency(double speed, double poles, double *frequency, struct err *e);

/* The speed rad/s for `frequency` Hz (1 to 1000); otherwise as generator_frequency. */
int generator_speed(double frequency, double poles, double *speed, struct err *e);

#define BLADE_TIP_LIMIT (19000 * 0.3048 / 60) /* m/s: 19 000 ft/min */

/* Tip speed m/s of a blade `length` m from tip to tip (20 mm to 3 m) at `speed` rad/s (1 to 20000
 * rpm).  v = speed length / 2
 * Source: the definition. 19 000 ft/min is, from memory, the limit that ANSI B71.1 sets for mower
 * blades; the standard was not read. Left out: blades turned through a belt (give the blade's own
 * speed), strings and brush-cutter blades, which have other limits. 0, or EX_DATAERR with *e. */
int blade_tip_speed(double length, double speed, double *tip, struct err *e);

/* Speed rad/s of the driven pulley, from the driver's `speed` (1 to 20000 rpm), both pitch diameters
 * m (5 mm to 3 m) and slip (0 to 0.2).  driven = speed driver / other (1 - slip)
 * Belt speed m/s into *belt = speed driver / 2.
 * Source: textbook kinematics. Left out: pitch against outside diameter (a V-belt runs below the
 * rim), wear, tension. Returns 0, or EX_DATAERR with *e. */
int belt_drive(double speed, double driver, double other, double slip, double *driven, double *belt,
               struct err *e);

/* Length m of an open belt round two pulleys (pitch diameters m, 5 mm to 3 m) whose shafts are
 * `centre` m apart (more than half the sum of both, at most 10 m), and its wrap on the smaller, rad.
 *   L = 2 C cos a + pi (D + d) / 2 + a (D - d),  sin a = (D - d) / (2 C),  wrap = pi - 2 a
 * Source: geometry; textbooks print 2 C + pi (D + d) / 2 + (D - d)^2 / (4 C), which is the same but
 * for higher powers. Left out: sag, idlers, crossed belts. Returns 0, or EX_DATAERR with *e. */
int belt_length(double one, double two, double centre, double *length, double *wrap, struct err *e);

#endif
