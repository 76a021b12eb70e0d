/* recipes_fuel.c - calculations on fuel, jets, nozzles and pumps. */
#include <math.h>

#include "arith/fuel.h"
#include "arith/orifice.h"
#include "arith/recipes.h"

#define AMOUNT "mL|US fl oz|UK fl oz"
#define TANK "L|US gal|UK gal"
#define JET "mL/min|US gal/h|UK gal/h"
#define PUMP "L/min|US gal/min|UK gal/min"
#define GIVEN(name, quantity, bare) {name, quantity, bare, NULL, NULL, 0, false}
#define ETHANOL(name, usual) {name, Q_RATIO, "%", usual, NULL, 'E', false}
#define COEFFICIENT {"coefficient", Q_RATIO, "1", "0.62", NULL, 0, false}

#define ORIFICE_SOURCE                                                                                       \
  "Q = C (pi/4) d^2 sqrt(2 P / density), Bernoulli; C 0.62 sharp-edged, 0.80 short tube, 0.95 rounded, "     \
  "textbook."

/* ---- fuel -------------------------------------------------------------------------------- */

static int run_premix(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double oil;
  int status = premix_oil(in[0].si, in[1].si, &oil, e);

  if (status) return status;
  work_add(a, "oil", oil, AMOUNT, WORK_COMPUTED);
  work_add(a, "mix in all", oil + in[1].si, TANK, WORK_COMPUTED);
  work_add(a, "oil in the mix", oil / (oil + in[1].si), "%", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_premix = {
    .inputs = {GIVEN("ratio", Q_RATIO, NULL),
               GIVEN("petrol", Q_VOLUME, NULL)},
    .run = run_premix,
    .leaves_out =
        "Oil already in the petrol; whether the ratio is right (the maker's for the engine, not the one "
        "on the bottle).",
    .source =
        "Oil = petrol / ratio, by volume; agrees with printed tables of fl oz per US gal (128 / ratio)."};

static int run_fuel_age(const struct work_value *in, struct work_answer *a, struct err *e)
{
  enum fuel_age age;
  int status = fuel_age_of(in[0].si, &age, e);

  if (status) return status;
  work_add(a, "age", in[0].si, "day|week", WORK_COMPUTED);
  switch (age) {
  case FUEL_FRESH:
    work_add(a, "drain, if unused, in", FUEL_DRAIN_AFTER - in[0].si, "day", WORK_PUBLISHED);
    work_say(a, "so", WORK_COMMON, "age alone is no reason for trouble; smell it all the same");
    break;
  case FUEL_DRAIN:
    work_say(a, "so", WORK_PUBLISHED, "past 30 days: tank and carburettor should have been drained");
    break;
  case FUEL_STALE:
    work_say(a, "so", WORK_COMMON,
             "past the 1 to 2 months advised for an engine's tank: try fresh before anything else");
    break;
  case FUEL_BEYOND:
    work_say(a, "so", WORK_COMMON,
             "past three months: take it as stale; E10 may have separated, look for a layer");
  }
  return 0;
}

const struct work_recipe work_fuel_age = {
    .inputs = {GIVEN("age", Q_TIME, NULL)},
    .run = run_fuel_age,
    .leaves_out =
        "Heat, a vented or nearly empty tank, stabiliser, ethanol-free petrol, its age when bought. The "
        "nose comes before the calendar.",
    .source =
        "30 days TM 5-4240-501-14&P p. 285; 1 to 2 months EPA advice and 3 months a study of mower "
        "tanks, as quoted by others."};

static int run_water_in_fuel(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double water;
  int status = fuel_water_held(in[0].si, in[1].si, &water, e);

  if (status) return status;
  work_add(a, "holds at most", water, "mL|tsp|US fl oz", WORK_PUBLISHED);
  work_add(a, "of the fuel", water / in[1].si, "%", WORK_COMPUTED);
  work_say(a, "colder", WORK_MEMORY,
           "less: for E10 about 0.5 %% at 60 degF and 0.3 %% at 10 degF (not well sourced)");
  return 0;
}

const struct work_recipe work_water_in_fuel = {
    .inputs = {ETHANOL("ethanol", NULL),
               GIVEN("fuel", Q_VOLUME, NULL)},
    .run = run_water_in_fuel,
    .leaves_out =
        "Temperature, oil in the mix, additives (2 of 8 tried helped a little). What has separated does "
        "not mix again.",
    .source =
        "F. J. Hay, UNL CropWatch: E0 none, E10 3.06, E15 6.47 tsp per US gal; straight lines between "
        "are ours."};

static int run_ethanol(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double lambda;
  int status = fuel_blend_lambda(in[1].si, in[0].si, &lambda, e);

  if (status) return status;
  work_add(a, "air needed, by mass", fuel_air_needed(in[0].si), ":1", WORK_COMPUTED);
  work_add(a, "lambda where it was 1", lambda, "1", WORK_COMPUTED);
  if (lambda >= 1) work_add(a, "leaner by", lambda - 1, "%", WORK_COMPUTED);
  else work_add(a, "richer by", 1 - lambda, "%", WORK_COMPUTED);
  work_add(a, "jet diameter to make up", sqrt(lambda), "%", WORK_COMPUTED);
  if (in[0].si > FUEL_ROAD_LIMIT + 1e-9)
    work_say(a, "over 10 %", WORK_PUBLISHED, "barred from nonroad engines in the USA, 40 CFR 80.1504(a)(1)");
  return 0;
}

const struct work_recipe work_ethanol = {
    .inputs = {ETHANOL("ethanol", NULL),
               ETHANOL("was", "0 %")},
    .run = run_ethanol,
    .leaves_out =
        "Thickness of the fuel in a small jet, float level, cold starting, swelling of rubber. Mixture "
        "screws may be sealed by law.",
    .source =
        "Mass balance: petrol 14.7, ethanol 9.0 kg air per kg; densities 745 and 789 kg/m3 from memory; "
        "fuel mass through a jet goes with the root of density."};

/* ---- jets and nozzles ---------------------------------------------------------------------- */

static int run_jet(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double clear, open, left = 1 - in[2].si;
  int status = orifice_flow(in[0].si, in[1].si, FUEL_PETROL_DENSITY, in[3].si, &clear, e);

  if (status == 0) status = orifice_open(in[0].si, in[2].si, &open, e);
  if (status) return status;
  work_add(a, "clear", clear, JET, WORK_COMPUTED);
  if (left == 1) return 0;
  work_add(a, "blocked", clear * left, JET, WORK_COMPUTED);
  work_add(a, "like a jet of", open, "mm|in", WORK_COMPUTED);
  work_add(a, "fuel left", left, "%", WORK_COMPUTED);
  work_add(a, "lambda where it was 1", 1 / left, "1", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_jet = {
    .inputs = {GIVEN("diameter", Q_LENGTH, "mm"),
               GIVEN("pressure", Q_PRESSURE, NULL),
               {"blocked", Q_RATIO, "%", "0 %", NULL, 0, false},
               COEFFICIENT},
    .run = run_jet,
    .leaves_out =
        "Air bleed, other circuits that feed at the same time, thickness of the fuel (small jets at idle "
        "flow less), the shape of the dirt.",
    .source =
        ORIFICE_SOURCE
        " Petrol 745 kg/m3, from memory."};

static int run_jet_change(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double ratio;
  int status = orifice_ratio(in[0].si, in[1].si, &ratio, e);

  if (status) return status;
  work_add(a, "area and flow", ratio, "%", WORK_COMPUTED);
  work_add(a, "lambda where it was 1", 1 / ratio, "1", WORK_COMPUTED);
  work_say(a, "so", WORK_COMPUTED, "%s", ratio < 1 ? "leaner" : ratio > 1 ? "richer" : "no change");
  return 0;
}

const struct work_recipe work_jet_change = {
    .inputs = {GIVEN("from", Q_LENGTH, "mm"),
               GIVEN("to", Q_LENGTH, "mm")},
    .run = run_jet_change,
    .leaves_out =
        "Jet numbers that are flows, not diameters; air bleed, needle, other circuits. Changing a jet "
        "may be barred by law on engines with an emission label.",
    .source =
        "Flow goes with area, (to / from)^2, at the same pressure and coefficient; textbook."};

static void add_caution(struct work_answer *a)
{
  work_say(a, "caution", WORK_COMMON,
           "such a jet goes through skin: no hand near it; engine off, pressure let out first");
}

static void add_power(struct work_answer *a, double flow, double pressure)
{
  work_add(a, "power in the water", flow * pressure, "kW|hp", WORK_COMPUTED);
}

static int run_nozzle_flow(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double flow;
  int status = orifice_flow(in[0].si, in[1].si, ORIFICE_WATER, in[2].si, &flow, e);

  if (status) return status;
  add_caution(a);
  work_add(a, "flow", flow, PUMP, WORK_COMPUTED);
  add_power(a, flow, in[1].si);
  return 0;
}

const struct work_recipe work_nozzle_flow = {
    .inputs = {GIVEN("diameter", Q_LENGTH, "mm"),
               GIVEN("pressure", Q_PRESSURE, NULL),
               COEFFICIENT},
    .run = run_nozzle_flow,
    .leaves_out =
        "Losses in hose and gun, wear, air in the water; washer nozzles are rounded, give "
        "coefficient=0.8 or more.",
    .source =
        ORIFICE_SOURCE};

static int run_nozzle_size(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double diameter;
  int status = orifice_diameter(in[0].si, in[1].si, ORIFICE_WATER, in[2].si, &diameter, e);

  if (status) return status;
  add_caution(a);
  work_add(a, "diameter", diameter, "mm|in", WORK_COMPUTED);
  work_say(a, "nozzle number", WORK_COMMON, "%.1f (US gal/min at 4000 psi)",
           nozzle_number(in[0].si, in[1].si));
  add_power(a, in[0].si, in[1].si);
  return 0;
}

const struct work_recipe work_nozzle_size = {
    .inputs = {GIVEN("flow", Q_FLOW, NULL),
               GIVEN("pressure", Q_PRESSURE, NULL),
               COEFFICIENT},
    .run = run_nozzle_size,
    .leaves_out =
        "Losses in hose and gun, wear; washer nozzles are rounded, give coefficient=0.8 or more, or go "
        "by the number.",
    .source =
        ORIFICE_SOURCE};

static int run_nozzle_pressure(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double pressure;
  int status = orifice_pressure(in[0].si, in[1].si, ORIFICE_WATER, in[2].si, &pressure, e);

  if (status) return status;
  add_caution(a);
  work_add(a, "pressure", pressure, "bar|psi|MPa", WORK_COMPUTED);
  add_power(a, in[0].si, pressure);
  return 0;
}

const struct work_recipe work_nozzle_pressure = {
    .inputs = {GIVEN("flow", Q_FLOW, NULL),
               GIVEN("diameter", Q_LENGTH, "mm"),
               COEFFICIENT},
    .run = run_nozzle_pressure,
    .leaves_out =
        "The unloader and relief valve, which open first; losses in the hose; washer nozzles are rounded "
        "(coefficient=0.8 or more).",
    .source =
        ORIFICE_SOURCE};

static int run_pump_flow(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double flow;
  int status = pump_flow(in[0].si, in[1].si, &flow, e);

  if (status) return status;
  work_add(a, "flow", flow, PUMP, WORK_COMPUTED);
  if (isnan(in[2].si)) return 0;
  if (!(in[2].si > 0)) return err_set(e, EX_DATAERR, NULL, 0, "plate: more than nothing is expected.");
  work_add(a, "of the plate", flow / in[2].si, "%", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_pump_flow = {
    .inputs = {GIVEN("volume", Q_VOLUME, NULL),
               GIVEN("time", Q_TIME, NULL),
               {"plate", Q_FLOW, NULL, "", NULL, 0, false}},
    .run = run_pump_flow,
    .leaves_out =
        "Pump speed, suction lift and head: plates often give the flow for an open outlet and no lift.",
    .source =
        "Volume / time."};
