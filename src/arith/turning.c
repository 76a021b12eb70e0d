/* turning.c - see turning.h. */
#include "arith/turning.h"

#include <math.h>
#include <stddef.h>

#include "arith/range.h"

#define PI 3.14159265358979323846
#define RPM (PI / 30)

static int check_poles(double poles, struct err *e)
{
  int status = arith_within("poles", poles, 2, 24, "1", e);

  if (status == 0 && fmod(poles, 2) != 0)
    status = err_set(e, EX_DATAERR, NULL, 0, "poles: poles come in pairs; 2 and 4 are the usual numbers.");
  return status;
}

static int check_speed(double speed, struct err *e)
{
  return arith_within("speed", speed, RPM, 20000 * RPM, "rpm", e);
}

int generator_frequency(double speed, double poles, double *frequency, struct err *e)
{
  int status = check_speed(speed, e);

  if (status == 0) status = check_poles(poles, e);
  if (status == 0) *frequency = poles * (speed / RPM) / 120;
  return status;
}

int generator_speed(double frequency, double poles, double *speed, struct err *e)
{
  int status = arith_within("frequency", frequency, 1, 1000, "Hz", e);

  if (status == 0) status = check_poles(poles, e);
  if (status == 0) *speed = 120 * frequency / poles * RPM;
  return status;
}

int blade_tip_speed(double length, double speed, double *tip, struct err *e)
{
  int status = arith_within("length", length, 0.02, 3, "mm", e);

  if (status == 0) status = check_speed(speed, e);
  if (status == 0) *tip = speed * length / 2;
  return status;
}

static int check_pulley(const char *which, double diameter, struct err *e)
{
  return arith_within(which, diameter, 0.005, 3, "mm", e);
}

int belt_drive(double speed, double driver, double other, double slip, double *driven, double *belt,
               struct err *e)
{
  int status = check_speed(speed, e);

  if (status == 0) status = check_pulley("driver", driver, e);
  if (status == 0) status = check_pulley("driven", other, e);
  if (status == 0) status = arith_within("slip", slip, 0, 0.2, "%", e);
  if (status) return status;
  *driven = speed * driver / other * (1 - slip);
  *belt = speed * driver / 2;
  return 0;
}

int belt_length(double one, double two, double centre, double *length, double *wrap, struct err *e)
{
  double large = fmax(one, two), small = fmin(one, two), a;
  int status = check_pulley("one", one, e);

  if (status == 0) status = check_pulley("two", two, e);
  if (status == 0 && centre <= (large + small) / 2)
    status = err_set(e, EX_DATAERR, NULL, 0, "centre: the pulleys would touch; measure from shaft to shaft.");
  if (status == 0) status = arith_within("centre", centre, 0, 10, "mm", e);
  if (status) return status;
  a = asin((large - small) / (2 * centre));
  *length = 2 * centre * cos(a) + PI * (large + small) / 2 + a * (large - small);
  *wrap = PI - 2 * a;
  return 0;
}
