/* electric.c - see electric.h. */
#include "arith/electric.h"

#include <math.h>
#include <stddef.h>

#include "arith/air.h"
#include "arith/range.h"

#define PASCHEN_A 112.50  /* per kPa cm */
#define PASCHEN_B 2737.50 /* V per kPa cm */
#define PASCHEN_G 0.01

int spark_breakdown(double gap, double pressure, double temperature, double *volts, struct err *e)
{
  double pd = pressure / 1e3 * (SPARK_ROOM / temperature) * (gap * 100);
  int status = arith_within("gap", gap, 50e-6, 25e-3, "mm", e);

  if (status == 0) status = arith_within("pressure with the air's own", pressure, 20e3, 5e6, "kPa", e);
  if (status == 0) status = arith_within("temperature", temperature, 230, 1500, "degC", e);
  if (status) return status;
  if (!(pd >= 0.5 && pd <= 400))
    return err_set(e, EX_DATAERR, NULL, 0,
                   "gap: pressure times gap is %.3g kPa cm; the law is used here from 0.5 to 400 only.", pd);
  *volts = PASCHEN_B * pd / (log(PASCHEN_A * pd) - log(log(1 + 1 / PASCHEN_G)));
  return 0;
}

double spark_open_gap(double gap, double pressure, double temperature)
{
  return gap * (pressure / AIR_PRESSURE) * (SPARK_ROOM / temperature);
}

int voltage_drop(double before, double behind, double current, struct voltage_drop *out, struct err *e)
{
  int status = arith_within("before", before, 1, 100, "V", e);

  if (status) return status;
  if (behind > before)
    return err_set(
        e, EX_DATAERR, NULL, 0,
        "behind: there cannot be more behind the stretch than before it; give the battery's end first.");
  status = arith_within("behind", behind, 0, before, "V", e);
  if (status == 0 && !isnan(current)) status = arith_within("current", current, 0.1, 2000, "A", e);
  if (status) return status;
  out->volts = before - behind;
  out->share = out->volts / before;
  out->resistance = out->volts / current;
  out->heat = out->volts * current;
  return 0;
}

double battery_charge(double volts)
{
  static const double at[] = {11.9, 12.06, 12.24, 12.45, 12.65};
  size_t last = sizeof at / sizeof at[0] - 1;

  if (!(volts >= 10.5 && volts <= 13.5)) return (double)NAN;
  if (volts <= at[0]) return 0;
  for (size_t i = 0; i < last; i++)
    if (volts < at[i + 1]) return ((double)i + (volts - at[i]) / (at[i + 1] - at[i])) / (double)last;
  return 1;
}
