/* orifice.c - see orifice.h. */
#include "arith/orifice.h"

#include <math.h>
#include <stddef.h>

#include "arith/range.h"

#define PI 3.14159265358979323846
#define SMALLEST 50e-6
#define WIDEST 50e-3
#define HIGHEST 100e6
#define US_GALLON 3.785411784e-3
#define PSI 6894.757293168361

static int check_liquid(double density, double coefficient, struct err *e)
{
  int status = 0;

  if (!(density >= 500 && density <= 1500))
    status = err_set(e, EX_DATAERR, NULL, 0, "density: a liquid of 500 to 1500 kg/m3 is expected.");
  if (status == 0) status = arith_within("coefficient", coefficient, 0.3, 1, "1", e);
  return status;
}

/* Liquid speed m/s behind the hole, without contraction. */
static double speed(double pressure, double density) { return sqrt(2 * pressure / density); }

int orifice_flow(double diameter, double pressure, double density, double coefficient, double *flow,
                 struct err *e)
{
  int status = arith_within("diameter", diameter, SMALLEST, WIDEST, "mm", e);

  if (status == 0) status = arith_within("pressure", pressure, 1, HIGHEST, "kPa", e);
  if (status == 0) status = check_liquid(density, coefficient, e);
  if (status == 0) *flow = coefficient * PI / 4 * diameter * diameter * speed(pressure, density);
  return status;
}

static int check_flow(double flow, struct err *e)
{
  return arith_within("flow", flow, 0.1e-6 / 60, 2.0 / 60, "L/min", e);
}

int orifice_diameter(double flow, double pressure, double density, double coefficient, double *diameter,
                     struct err *e)
{
  double d;
  int status = check_flow(flow, e);

  if (status == 0) status = arith_within("pressure", pressure, 1, HIGHEST, "kPa", e);
  if (status == 0) status = check_liquid(density, coefficient, e);
  if (status) return status;
  d = sqrt(flow / (coefficient * PI / 4 * speed(pressure, density)));
  status = arith_within("the hole for that flow", d, SMALLEST, WIDEST, "mm", e);
  if (status == 0) *diameter = d;
  return status;
}

int orifice_pressure(double flow, double diameter, double density, double coefficient, double *pressure,
                     struct err *e)
{
  double v, p;
  int status = check_flow(flow, e);

  if (status == 0) status = arith_within("diameter", diameter, SMALLEST, WIDEST, "mm", e);
  if (status == 0) status = check_liquid(density, coefficient, e);
  if (status) return status;
  v = flow / (coefficient * PI / 4 * diameter * diameter);
  p = density * v * v / 2;
  if (p > HIGHEST)
    return err_set(
        e, EX_DATAERR, NULL, 0,
        "flow: no pump pushes that much through such a hole. Look at the units and the decimal point.");
  *pressure = p;
  return 0;
}

int orifice_ratio(double from, double to, double *ratio, struct err *e)
{
  int status = arith_within("from", from, SMALLEST, WIDEST, "mm", e);

  if (status == 0) status = arith_within("to", to, SMALLEST, WIDEST, "mm", e);
  if (status == 0) *ratio = to / from * (to / from);
  return status;
}

int orifice_open(double diameter, double blocked, double *open, struct err *e)
{
  int status = arith_within("diameter", diameter, SMALLEST, WIDEST, "mm", e);

  if (status == 0) status = arith_within("blocked", blocked, 0, 0.95, "%", e);
  if (status == 0) *open = diameter * sqrt(1 - blocked);
  return status;
}

int pump_flow(double volume, double time, double *flow, struct err *e)
{
  int status = arith_within("volume", volume, 10e-6, 1, "L", e);

  if (status == 0) status = arith_within("time", time, 1, 3600, "s", e);
  if (status == 0) *flow = volume / time;
  return status;
}

double nozzle_number(double flow, double pressure)
{
  return flow / (US_GALLON / 60) * sqrt(4000 * PSI / pressure);
}
