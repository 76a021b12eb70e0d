/* compression.c - see compression.h. */
#include "arith/compression.h"

#include <math.h>
#include <stddef.h>

#include "arith/air.h"
#include "arith/range.h"

#define ADIABATIC 1.4 /* of air near room temperature, textbook */

int compression_limits(double ratio, double altitude, double temperature, double exponent,
                       struct compression *out, struct err *e)
{
  struct air air;
  int status = arith_within("ratio", ratio, 3, 15, ":1", e);

  if (status == 0) status = arith_within("exponent", exponent, 1, ADIABATIC, "1", e);
  if (status == 0) status = air_at(altitude, temperature, &air, e);
  if (status) return status;
  out->air = air.pressure;
  out->temperature = air.temperature;
  out->isothermal = air.pressure * (ratio - 1);
  out->polytropic = air.pressure * (pow(ratio, exponent) - 1);
  out->adiabatic = air.pressure * (pow(ratio, ADIABATIC) - 1);
  out->end = air.temperature * pow(ratio, exponent - 1);
  return 0;
}

int compression_at_sea_level(double reading, double altitude, double temperature, double *out, struct err *e)
{
  struct air air;
  int status = arith_within("reading", reading, 0, 2.5e6, "kPa", e);

  if (status == 0) status = air_at(altitude, temperature, &air, e);
  if (status == 0) *out = reading * AIR_PRESSURE / air.pressure;
  return status;
}

int leak_down(double supply, double cylinder, double *share, struct err *e)
{
  int status = arith_within("supply", supply, 70e3, 1.4e6, "kPa", e);

  if (status) return status;
  if (cylinder > supply)
    return err_set(e, EX_DATAERR, NULL, 0,
                   "cylinder: the second gauge cannot read more than the first; give the supply first.");
  status = arith_within("cylinder", cylinder, 0, supply, "kPa", e);
  if (status == 0) *share = 1 - cylinder / supply;
  return status;
}

const char *leak_down_word(double share)
{
  double percent = 100 * share - 1e-9; /* 72 out of 80 is 10 %, not a hair above */

  return percent <= 10 ? "good" : percent <= 20 ? "usable" : percent <= 30 ? "doubtful" : "a problem";
}
