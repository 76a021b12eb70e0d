/* recipes_machine.c - calculations on generators, blades, belts and batteries. */
#include <math.h>

#include "arith/electric.h"
#include "arith/recipes.h"
#include "arith/turning.h"

#define GIVEN(name, quantity, bare) {name, quantity, bare, NULL, NULL, 0, false}
#define POLES {"poles", Q_RATIO, "1", "2", NULL, 0, false}

static int run_frequency(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double hertz;
  int status = generator_frequency(in[0].si, in[1].si, &hertz, e);

  if (status) return status;
  work_add(a, "frequency", hertz, "Hz", WORK_COMPUTED);
  work_add(a, "against 50 Hz", hertz / 50, "%", WORK_COMPUTED);
  work_add(a, "against 60 Hz", hertz / 60, "%", WORK_COMPUTED);
  return 0;
}

#define GENERATOR_SOURCE "f = poles x rpm / 120, Navy training course 14177, p. 3-14."

const struct work_recipe work_frequency = {
    .inputs = {GIVEN("speed", Q_SPEED, "rpm"),
               POLES},
    .run = run_frequency,
    .leaves_out =
        "Droop under load (set a little high without load), slip, and inverter sets, whose output does "
        "not follow the engine.",
    .source =
        GENERATOR_SOURCE};

static int run_governed_speed(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double speed;
  int status = generator_speed(in[0].si, in[1].si, &speed, e);

  if (status) return status;
  work_add(a, "speed", speed, "rpm", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_governed_speed = {
    .inputs = {GIVEN("frequency", Q_FREQUENCY, "Hz"),
               POLES},
    .run = run_governed_speed,
    .leaves_out =
        "Droop under load: the maker says how much over without load. Inverter sets do not follow the "
        "engine.",
    .source =
        GENERATOR_SOURCE};

static int run_blade_tip(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double tip;
  int status = blade_tip_speed(in[0].si, in[1].si, &tip, e);

  if (status) return status;
  work_add(a, "tip speed", tip, "m/s|ft/min|mph", WORK_COMPUTED);
  work_add(a, "usual limit for mowers", BLADE_TIP_LIMIT, "m/s|ft/min", WORK_MEMORY);
  work_add(a, "tip against the limit", tip / BLADE_TIP_LIMIT, "%", WORK_COMPUTED);
  work_add(a, "blade at the limit turns", 2 * BLADE_TIP_LIMIT / in[0].si, "rpm", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_blade_tip = {
    .inputs = {GIVEN("length", Q_LENGTH, NULL),
               GIVEN("speed", Q_SPEED, "rpm")},
    .run = run_blade_tip,
    .leaves_out =
        "A belt between engine and blade (give the blade's own speed), other cutters. Never set the "
        "governor over the maker's figure to reach it.",
    .source =
        "v = pi x length x turns; 19 000 ft/min is ANSI B71.1 from memory, the standard was not read."};

static int run_belt(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double driven, along;
  int status = belt_drive(in[0].si, in[1].si, in[2].si, in[3].si, &driven, &along, e);

  if (status) return status;
  work_add(a, "driven pulley", driven, "rpm", WORK_COMPUTED);
  work_add(a, "speed against the driver", driven / in[0].si, "%", WORK_COMPUTED);
  work_add(a, "belt runs at", along, "m/s|ft/min", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_belt = {
    .inputs = {GIVEN("speed", Q_SPEED, "rpm"),
               GIVEN("driver", Q_LENGTH, NULL),
               GIVEN("driven", Q_LENGTH, NULL),
               {"slip", Q_RATIO, "%", "0 %", NULL, 0, false}},
    .run = run_belt,
    .leaves_out =
        "Pitch against outside diameter: a V-belt runs below the rim, more so when worn. Slip of 1 to 3 "
        "% is usual.",
    .source =
        "Driven = speed x driver / driven x (1 - slip), textbook."};

static int run_belt_length(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double length, wrap;
  int status = belt_length(in[0].si, in[1].si, in[2].si, &length, &wrap, e);

  if (status) return status;
  work_add(a, "belt", length, "mm|in", WORK_COMPUTED);
  work_add(a, "wrap on the smaller", wrap, "deg", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_belt_length = {
    .inputs = {GIVEN("one", Q_LENGTH, NULL),
               GIVEN("two", Q_LENGTH, NULL),
               GIVEN("centre", Q_LENGTH, NULL)},
    .run = run_belt_length,
    .leaves_out =
        "Idlers and crossed belts; inside, pitch and outside length of a belt are three figures, this is "
        "the pitch one.",
    .source =
        "Geometry of an open belt round two circles, exact."};

/* ---- battery and starter -------------------------------------------------------------------- */

#define NOMINAL(v) ((v) >= 11 && (v) <= 13.5) /* a 12 V battery, going by its voltage */

static void add_caution(struct work_answer *a)
{
  work_say(a, "caution", WORK_COMMON,
           "it turns: plug lead off and earthed, drive out; batteries gas, no spark near");
}

static int run_voltage_drop(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct voltage_drop d;
  int status = voltage_drop(in[0].si, in[1].si, in[2].si, &d, e);

  if (status) return status;
  add_caution(a);
  work_add(a, "lost", d.volts, "V|mV", WORK_COMPUTED);
  work_add(a, "of what was there", d.share, "%", WORK_COMPUTED);
  if (!isnan(d.resistance)) {
    work_add(a, "resistance", d.resistance, "mohm", WORK_COMPUTED);
    work_add(a, "turned into heat", d.heat, "W", WORK_COMPUTED);
  }
  if (in[0].si <= 16)
    work_say(a, "on 12 V", WORK_COMMON, "%s (one side of a starter circuit to 0.5 V, one joint to 0.2 V)",
             d.volts <= 0.2 + 1e-9   ? "good"
             : d.volts <= 0.5 + 1e-9 ? "good for a whole side, too much for one joint"
                                     : "too much: halve the stretch and measure again");
  return 0;
}

const struct work_recipe work_voltage_drop = {
    .inputs = {GIVEN("before", Q_VOLTAGE, "V"),
               GIVEN("behind", Q_VOLTAGE, "V"),
               {"current", Q_CURRENT, "A", "", NULL, 0, false}},
    .run = run_voltage_drop,
    .leaves_out =
        "Anything at rest: both voltages must be taken while the current flows (plug lead off and "
        "earthed). A stalled starter draws far more.",
    .source =
        "Drop = before - behind, R = drop / current, Ohm's law; the limits are common practice."};

static int run_battery(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct voltage_drop d;
  double charge;
  int status;

  if (in[1].si > in[0].si)
    return err_set(e, EX_DATAERR, NULL, 0,
                   "loaded: a load cannot raise the voltage; give the one at rest first.");
  status = voltage_drop(in[0].si, in[1].si, in[2].si, &d, e);
  if (status) return status;
  add_caution(a);
  charge = round(battery_charge(in[0].si) * 20) / 20; /* no finer than the figures behind it */
  if (!isnan(charge)) work_add(a, "charge, rested, about", charge, "%", WORK_MEMORY);
  work_add(a, "sags by", d.volts, "V", WORK_COMPUTED);
  work_add(a, "that is", d.share, "%", WORK_COMPUTED);
  if (!isnan(d.resistance)) work_add(a, "inner resistance", d.resistance, "mohm", WORK_COMPUTED);
  if (NOMINAL(in[0].si))
    work_say(a, "cranking", WORK_COMMON, "%s",
             in[1].si >= 9.6    ? "above 9.6 V: the battery holds"
             : in[0].si >= 12.4 ? "under 9.6 V though charged: weak battery, or a starter that draws too much"
                                : "under 9.6 V: charge it first, then judge");
  return 0;
}

const struct work_recipe work_battery = {
    .inputs = {GIVEN("rest", Q_VOLTAGE, "V"),
               GIVEN("loaded", Q_VOLTAGE, "V"),
               {"current", Q_CURRENT, "A", "", NULL, 0, false}},
    .run = run_battery,
    .leaves_out =
        "Temperature (cold lowers all of it), charge on the surface just after charging, sealed types "
        "(0.1 to 0.2 V higher). Measure on the posts, not the clamps.",
    .source =
        "Ohm's law; 12.65, 12.45, 12.24, 12.06, 11.9 V for full to empty from memory; 9.6 V is common "
        "practice."};
