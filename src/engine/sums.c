/* sums.c - bench arithmetic for rules: the sums of arith as functions of the engine.
 *
 * Arguments are numbers in the units that the names say; the number of arguments and, where it is
 * written out, their kind are checked when a rule is read. Where a sum does not hold (a height of
 * 20 km) the answer is no number, which is neither above nor below anything: the condition fails and
 * the rule stays quiet. What is no number at all stops the rules with the name of the rule. */
#include <math.h>

#include "arith/air.h"
#include "arith/compression.h"
#include "arith/fuel.h"
#include "arith/turning.h"
#include "engine/clips.h"

static const double psi = 6894.757293168361, rpm = 0.10471975511965977, mm = 1e-3, ml = 1e-6, litre = 1e-3;

/* The arguments of the call into v. False, the library having said so, when one is no number. */
static bool numbers(void *env, const char *name, int count, double *v)
{
  for (int i = 0; i < count; i++) {
    DATA_OBJECT value;

    if (!EnvArgTypeCheck(env, name, i + 1, INTEGER_OR_FLOAT, &value)) return false;
    v[i] = GetType(value) == FLOAT ? DOToDouble(value) : (double)DOToLong(value);
  }
  return true;
}

static double sea_level_psi(void *env)
{
  double v[2], out;
  struct err e;

  if (!numbers(env, "sea-level-psi", 2, v)) return (double)NAN;
  return compression_at_sea_level(v[0] * psi, v[1], (double)NAN, &out, &e) ? (double)NAN : out / psi;
}

static double most_compression_psi(void *env)
{
  struct compression out;
  struct err e;
  double v[2];

  if (!numbers(env, "most-compression-psi", 2, v)) return (double)NAN;
  return compression_limits(v[0], v[1], (double)NAN, 1.3, &out, &e) ? (double)NAN : out.adiabatic / psi;
}

static double air_kg_m3(void *env)
{
  struct err e;
  struct air air;
  double v[2];

  if (!numbers(env, "air-kg-m3", 2, v)) return (double)NAN;
  return air_at(v[0], v[1] + 273.15, &air, &e) ? (double)NAN : air.density;
}

static double engine_rpm(void *env)
{
  double v[2], out;
  struct err e;

  if (!numbers(env, "engine-rpm", 2, v)) return (double)NAN;
  return generator_speed(v[0], v[1], &out, &e) ? (double)NAN : out / rpm;
}

static double blade_tip_m_s(void *env)
{
  double v[2], out;
  struct err e;

  if (!numbers(env, "blade-tip-m-s", 2, v)) return (double)NAN;
  return blade_tip_speed(v[0] * mm, v[1] * rpm, &out, &e) ? (double)NAN : out;
}

static double ethanol_lambda(void *env)
{
  double v[2], out;
  struct err e;

  if (!numbers(env, "ethanol-lambda", 2, v)) return (double)NAN;
  return fuel_blend_lambda(v[0] / 100, v[1] / 100, &out, &e) ? (double)NAN : out;
}

static double water_held_ml(void *env)
{
  double v[2], out;
  struct err e;

  if (!numbers(env, "water-held-ml", 2, v)) return (double)NAN;
  return fuel_water_held(v[0] / 100, v[1] * litre, &out, &e) ? (double)NAN : out / ml;
}

static double petrol_stage(void *env)
{
  enum fuel_age stage;
  struct err e;
  double v[1];

  if (!numbers(env, "petrol-stage", 1, v)) return (double)NAN;
  return fuel_age_of(v[0] * 86400, &stage, &e) ? (double)NAN : (double)stage;
}

void sums_define(void *env)
{
  EnvDefineFunction2(env, "sea-level-psi", 'd', PTIEF sea_level_psi, "sea_level_psi", "22n");
  EnvDefineFunction2(env, "most-compression-psi", 'd', PTIEF most_compression_psi, "most_compression_psi",
                     "22n");
  EnvDefineFunction2(env, "air-kg-m3", 'd', PTIEF air_kg_m3, "air_kg_m3", "22n");
  EnvDefineFunction2(env, "engine-rpm", 'd', PTIEF engine_rpm, "engine_rpm", "22n");
  EnvDefineFunction2(env, "blade-tip-m-s", 'd', PTIEF blade_tip_m_s, "blade_tip_m_s", "22n");
  EnvDefineFunction2(env, "ethanol-lambda", 'd', PTIEF ethanol_lambda, "ethanol_lambda", "22n");
  EnvDefineFunction2(env, "water-held-ml", 'd', PTIEF water_held_ml, "water_held_ml", "22n");
  EnvDefineFunction2(env, "petrol-stage", 'd', PTIEF petrol_stage, "petrol_stage", "11n");
}
