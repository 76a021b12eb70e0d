/* fuel.c - see fuel.h. */
#include "arith/fuel.h"

#include <math.h>

#include "arith/range.h"

int premix_oil(double ratio, double petrol, double *oil, struct err *e)
{
  int status = arith_within("ratio", ratio, 8, 200, ":1", e);

  if (status == 0) status = arith_within("petrol", petrol, 10e-6, 0.2, "L", e);
  if (status == 0) *oil = petrol / ratio;
  return status;
}

int fuel_age_of(double age, enum fuel_age *out, struct err *e)
{
  int status = arith_within("age", age, 0, 3650 * 86400.0, "day", e);

  if (status) return status;
  *out = age <= FUEL_DRAIN_AFTER    ? FUEL_FRESH
         : age <= FUEL_STALE_AFTER  ? FUEL_DRAIN
         : age <= FUEL_BEYOND_AFTER ? FUEL_STALE
                                    : FUEL_BEYOND;
  return 0;
}

#define E10_HELD (3.06 / 768) /* 768 US tsp are one US gal */
#define E15_HELD (6.47 / 768)

int fuel_water_held(double ethanol, double fuel, double *water, struct err *e)
{
  int status = arith_within("ethanol", ethanol, 0, 0.15, "%", e);

  if (status == 0) status = arith_within("fuel", fuel, 10e-6, 1, "L", e);
  if (status) return status;
  *water = fuel * (ethanol <= 0.10 ? E10_HELD * ethanol / 0.10
                                   : E10_HELD + (E15_HELD - E10_HELD) * (ethanol - 0.10) / 0.05);
  return 0;
}

double fuel_density(double ethanol)
{
  if (!(ethanol >= 0 && ethanol <= 1)) return (double)NAN;
  return ethanol * FUEL_ETHANOL_DENSITY + (1 - ethanol) * FUEL_PETROL_DENSITY;
}

double fuel_air_needed(double ethanol)
{
  double mass = ethanol * FUEL_ETHANOL_DENSITY / fuel_density(ethanol);

  return mass * FUEL_ETHANOL_AIR + (1 - mass) * FUEL_PETROL_AIR;
}

int fuel_blend_lambda(double was, double is, double *lambda, struct err *e)
{
  int status = arith_within("ethanol", is, 0, 0.85, "%", e);

  if (status == 0) status = arith_within("was", was, 0, 0.85, "%", e);
  if (status == 0)
    *lambda = fuel_air_needed(was) / fuel_air_needed(is) * sqrt(fuel_density(was) / fuel_density(is));
  return status;
}
