/* air.h - the standard atmosphere near the ground. */
#ifndef ARITH_AIR_H
#define ARITH_AIR_H

#include "base/err.h"

#define AIR_PRESSURE 101325.0    /* Pa at sea level */
#define AIR_TEMPERATURE 288.15   /* K at sea level */
#define AIR_LAPSE 0.0065         /* K/m */
#define AIR_GRAVITY 9.80665      /* m/s2 */
#define AIR_GAS_CONSTANT 287.05287 /* J/(kg K), dry air */

/* Temperature K, pressure Pa absolute, density kg/m3. */
struct air {
  double temperature, pressure, density;
};

/* The air at `altitude` m (-500 to 6000, geopotential) and `temperature` K there (228.15 to 328.15;
 * NAN: the standard one), into *out.
 *   T = T0 - L h    P = P0 (T / (T + L h))^(g / (R L))    density = P / (R T)
 * Source: constants and form of ISO 2533 and the US Standard Atmosphere 1976 (troposphere). With a
 * temperature that is not the standard one the same lapse is laid under it down to sea level, and
 * sea level has its standard pressure (the usual reduction of a barometer).
 * Left out: weather (a high or a low is 3 % either way), moisture, geometric against geopotential
 * height (0.1 % of pressure at 5000 m).
 * Returns 0, or EX_DATAERR with *e when a value is out of range. */
int air_at(double altitude, double temperature, struct air *out, struct err *e);

#endif
