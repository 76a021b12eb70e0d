/* air.c - see air.h. */
#include "arith/air.h"

#include <math.h>

#include "arith/range.h"

int air_at(double altitude, double temperature, struct air *out, struct err *e)
{
  double t = isnan(temperature) ? AIR_TEMPERATURE - AIR_LAPSE * altitude : temperature;
  int status = arith_within("altitude", altitude, -500, 6000, "m", e);

  if (status == 0) status = arith_within("temperature", t, 228.15, 328.15, "degC", e);
  if (status) return status;
  out->temperature = t;
  out->pressure = AIR_PRESSURE *
                  pow(t / (t + AIR_LAPSE * altitude), AIR_GRAVITY / (AIR_GAS_CONSTANT * AIR_LAPSE));
  out->density = out->pressure / (AIR_GAS_CONSTANT * t);
  return 0;
}
