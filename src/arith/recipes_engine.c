/* recipes_engine.c - calculations on oil, air, compression and plugs. */
#include <math.h>
#include <string.h>

#include "arith/air.h"
#include "arith/compression.h"
#include "arith/electric.h"
#include "arith/oil.h"
#include "arith/recipes.h"
#include "arith/torque.h"

#define GAUGE "kPa|psi|bar"
#define AMOUNT "mL|US fl oz|UK fl oz"
#define TIGHT "N.m|ft-lb|in-lb"
#define ALTITUDE(usual) {"altitude", Q_LENGTH, NULL, usual, NULL, 0, true}
#define TEMPERATURE(usual) {"temperature", Q_TEMPERATURE, NULL, usual, NULL, 0, false}

/* ---- oil -------------------------------------------------------------------------------- */

static int run_oil_refill(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct oil_plan p;
  int status = oil_refill(in[0].si, in[1].si, &p, e);

  if (status) return status;
  work_add(a, "stays behind", p.behind, AMOUNT, WORK_COMMON);
  work_add(a, "will take about", p.needed, AMOUNT, WORK_COMPUTED);
  work_add(a, "pour to begin with", p.start, AMOUNT, WORK_COMMON);
  work_say(a, "then", WORK_COMMON, "level, wait a minute or two for it to run down, look at the mark");
  work_add(a, "add at a time", p.step, AMOUNT, WORK_COMMON);
  work_say(a, "steps", WORK_COMPUTED,
           "probably %d; stop at the mark. Not there after %d (book amount in): look why", p.likely, p.most);
  return 0;
}

const struct work_recipe work_oil_refill = {
    .inputs = {{"book", Q_VOLUME, NULL, NULL, NULL, 0, false},
               {"behind", Q_RATIO, "%", "10 %", NULL, 0, false}},
    .run = run_oil_refill,
    .leaves_out =
        "Oil in a filter, cooler or gearcase on the same oil; how long and how tilted it drained. The "
        "mark on the stick comes before every amount here: overfilled is as wrong as low.",
    .source =
        "Book amount less what stays back, a tenth by common practice; start and steps so that twice as "
        "much back would still not overfill."};

static int run_oil_grade(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct oil_grade g;
  enum work_basis basis;
  int status = oil_grade(in[0].text, &g, e);

  if (status) return status;
  basis = g.recalled ? WORK_MEMORY : WORK_PUBLISHED;
  if (!isnan(g.crank_at)) {
    work_add(a, "cranks down to", g.crank_at, "degC|degF", basis);
    work_add(a, "no thicker there than", g.crank_most, "mPa.s", basis);
    work_add(a, "pumps down to", g.pump_at, "degC|degF", basis);
  }
  work_add(a, "at 100 degC at least", g.warm_least, "mm2/s", basis);
  if (!isnan(g.warm_under)) {
    work_add(a, "at 100 degC less than", g.warm_under, "mm2/s", basis);
    work_add(a, "under shear at 150 degC", g.shear_least, "mPa.s", basis);
  }
  if (isnan(g.crank_at))
    work_say(a, "in the cold", WORK_PUBLISHED, "nothing is promised: a single grade has no W limit");
  return 0;
}

const struct work_recipe work_oil_grade = {
    .inputs = {{"grade", Q_NONE, NULL, NULL, NULL, 0, false}},
    .run = run_oil_grade,
    .leaves_out =
        "Everything but thickness: service class, two-stroke oil, gear oil (75W-90 is of another "
        "standard). What the maker names for the season comes first.",
    .source =
        "SAE J300 (copies of 2015 and 1999, summary of 2024); lines marked memory hold a figure that was "
        "not read."};

/* ---- air and compression ------------------------------------------------------------------ */

static int run_air(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct air air, sea;
  int status = air_at(in[0].si, in[1].si, &air, e);

  if (status == 0) status = air_at(0, (double)NAN, &sea, e);
  if (status) return status;
  work_add(a, "temperature taken", air.temperature, "degC|degF", WORK_COMPUTED);
  work_add(a, "pressure", air.pressure, "kPa|psi|inHg", WORK_COMPUTED);
  work_add(a, "density", air.density, "kg/m3|lb/ft3", WORK_COMPUTED);
  work_add(a, "density against sea level", air.density / sea.density, "%", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_air = {
    .inputs = {ALTITUDE(NULL),
               TEMPERATURE("")},
    .run = run_air,
    .leaves_out =
        "Weather (a high or a low is 3 % either way) and moisture.",
    .source =
        "Constants and form of ISO 2533 / US Standard Atmosphere 1976; another temperature goes down to "
        "a sea level of standard pressure at the standard lapse."};

static int run_compression(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct compression c;
  int status = compression_limits(in[0].si, in[1].si, in[2].si, in[3].si, &c, e);

  if (status) return status;
  work_add(a, "air outside", c.air, "kPa|psi|inHg", WORK_COMPUTED);
  work_add(a, "its temperature", c.temperature, "degC|degF", WORK_COMPUTED);
  work_add(a, "all heat lost (n = 1)", c.isothermal, GAUGE, WORK_COMPUTED);
  work_add(a, "with the exponent", c.polytropic, GAUGE, WORK_COMPUTED);
  work_add(a, "no heat lost (n = 1.4)", c.adiabatic, GAUGE, WORK_COMPUTED);
  work_add(a, "charge then, at most", c.end, "degC|degF", WORK_COMPUTED);
  work_say(a, "how to read it", WORK_COMMON,
           "upper limits, none a pass mark; judge by the maker's figure or leak-down");
  return 0;
}

const struct work_recipe work_compression = {
    .inputs = {{"ratio", Q_RATIO, ":1", NULL, NULL, 0, false},
               ALTITUDE("0 m"),
               TEMPERATURE(""),
               {"exponent", Q_RATIO, "1", "1.3", NULL, 0, false}},
    .run = run_compression,
    .leaves_out =
        "All that lowers the gauge: late closing of inlet or exhaust port, leakage at cranking speed, "
        "compression release, closed throttle, the gauge's own volume.",
    .source =
        "P = P_air (ratio^n - 1), textbook gas relation; air of the standard atmosphere (ISO 2533)."};

static int run_sea_level(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct air air;
  double sea;
  int status = compression_at_sea_level(in[0].si, in[1].si, in[2].si, &sea, e);

  if (status == 0) status = air_at(in[1].si, in[2].si, &air, e);
  if (status) return status;
  work_add(a, "air here", air.pressure, "kPa|psi|inHg", WORK_COMPUTED);
  work_add(a, "reading at sea level", sea, GAUGE, WORK_COMPUTED);
  work_add(a, "here against there", air.pressure / AIR_PRESSURE, "%", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_sea_level = {
    .inputs = {{"reading", Q_PRESSURE, NULL, NULL, NULL, 0, false},
               ALTITUDE(NULL),
               TEMPERATURE("")},
    .run = run_sea_level,
    .leaves_out =
        "Weather, and what lowers any cranking reading (valve timing, leakage, release). Figures in "
        "books are for near sea level.",
    .source =
        "P_sea = P x 101.325 kPa / P_air, from the gas relation; air of the standard atmosphere (ISO "
        "2533)."};

static int run_leak_down(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double share;
  int status = leak_down(in[0].si, in[1].si, &share, e);

  if (status) return status;
  work_say(a, "caution", WORK_COMMON,
           "the air turns the engine: block it, blade or chain off, eye shields on");
  work_add(a, "lost", share, "%", WORK_COMPUTED);
  work_say(a, "of 80 on the first gauge", WORK_COMPUTED, "%.0f/80", 80 * (1 - share));
  work_say(a, "usually called", WORK_COMMON, "%s (good to 10 %%, usable to 20, a problem over 30)",
           leak_down_word(share));
  work_say(
      a, "orifice", WORK_PUBLISHED,
      "0.040 in for bores under 5.00 in, 0.250 in long, 60 degree approach; another gives other per cents");
  return 0;
}

const struct work_recipe work_leak_down = {
    .inputs = {{"supply", Q_PRESSURE, NULL, NULL, NULL, 0, false},
               {"cylinder", Q_PRESSURE, NULL, NULL, NULL, 0, false}},
    .run = run_leak_down,
    .leaves_out =
        "Where it leaks (listen at exhaust, inlet, breather), errors of the gauges, dry and cold rings. "
        "Only readings with the same orifice and supply compare.",
    .source =
        "Share = 1 - second / first; orifice AC 43.13-1B para 8-14 (reproduction, in part); the words "
        "are no standard."};

/* ---- plugs ------------------------------------------------------------------------------- */

static int run_plug_gap(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct air air;
  double volts, open;
  int status = air_at(in[3].si, (double)NAN, &air, e);

  if (status == 0) status = spark_breakdown(in[0].si, in[1].si + air.pressure, in[2].si, &volts, e);
  if (status) return status;
  open = spark_open_gap(in[0].si, in[1].si + air.pressure, in[2].si);
  work_add(a, "needs about", round(volts / 100) * 100, "kV", WORK_COMPUTED);
  work_add(a, "as much as an open gap of", open, "mm|in", WORK_COMPUTED);
  work_say(a, "to compare", WORK_PUBLISHED,
           "a tester gap of 4.2 mm (0.166 in) in open air, about 17 kV by this law");
  return 0;
}

const struct work_recipe work_plug_gap = {
    .inputs = {{"gap", Q_LENGTH, NULL, NULL, NULL, 0, false},
               {"pressure", Q_PRESSURE, NULL, "0 kPa", NULL, 0, false},
               TEMPERATURE("20 degC"),
               ALTITUDE("0 m")},
    .run = run_plug_gap,
    .leaves_out =
        "Sharp edges and burning gas (less), wear, fouling, coil rise time (more). Give the gas "
        "temperature: cold-gas figures are far too high for a hot charge. From 0.7 mm up a tenth to "
        "a fifth higher than open gaps take.",
    .source =
        "Paschen's law at gas density, A 112.50, B 2737.50 (kPa cm) as printed by a calculator page, "
        "gamma 0.01 by another."};

static int run_plug_torque(const struct work_value *in, struct work_answer *a, struct err *e)
{
  struct plug_torque t;
  double low, high;
  int status =
      plug_torque(in[0].si, strcmp(in[1].text, "taper") == 0, strncmp(in[2].text, "al", 2) == 0, &t, e);

  if (status) return status;
  work_add(a, "least", t.low, TIGHT, WORK_PUBLISHED);
  work_add(a, "most", t.high, TIGHT, WORK_PUBLISHED);
  if (!isnan(t.chart_low)) {
    work_add(a, "a maker's chart, least", t.chart_low, TIGHT, WORK_COMMON);
    work_add(a, "a maker's chart, most", t.chart_high, TIGHT, WORK_COMMON);
    low = fmax(t.low, t.chart_low);
    high = fmin(t.high, t.chart_high);
    if (low > high) work_say(a, "the two", WORK_COMPUTED, "do not meet: get the engine maker's figure");
    else work_add(a, "both, least", low, TIGHT, WORK_COMPUTED);
    if (low <= high) work_add(a, "both, most", high, TIGHT, WORK_COMPUTED);
  }
  work_add(a, "greased thread, at most", 0.7 * t.high, TIGHT, WORK_COMMON);
  return 0;
}

const struct work_recipe work_plug_torque = {
    .inputs = {{"thread", Q_LENGTH, "mm", NULL, NULL, 'M', false},
               {"seat", Q_NONE, NULL, "gasket", "gasket taper", 0, false},
               {"head", Q_NONE, NULL, "aluminium", "aluminium aluminum iron", 0, false}},
    .run = run_plug_torque,
    .leaves_out =
        "A used gasket, inserts, a damaged thread. Start by hand; cold head. The engine maker's figure "
        "comes first.",
    .source =
        "R. L. Parish, LSU AgCenter, 12 May 2006, dry threads; greased: 20 to 30 % less, common practice."};

static int run_torque(const struct work_value *in, struct work_answer *a, struct err *e)
{
  double t = in[0].si;

  if (!(t > 0)) return err_set(e, EX_DATAERR, NULL, 0, "torque: more than nothing is expected.");
  work_add(a, "torque", t, TIGHT, WORK_COMPUTED);
  work_add(a, "old wrenches", t, "kgf.m|kgf.cm", WORK_COMPUTED);
  return 0;
}

const struct work_recipe work_torque = {
    .inputs = {{"torque", Q_TORQUE, NULL, NULL, NULL, 0, false}},
    .run = run_torque,
    .leaves_out =
        "The wrench's own error (4 % is usual) and what a crowfoot or extension adds. Limits for plugs: "
        "plug-torque.",
    .source =
        "Exact factors; NIST SP 811 (2008) B.8 prints 1.355 818 N.m per ft-lb, 0.112 984 8 per in-lb."};
