/* test_units.c - units, conversions, and what people type. */
#include <locale.h>
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "units/number.h"
#include "units/parse.h"
#include "units/quantity.h"
#include "units/spell.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static const struct unit *unit(const char *name)
{
  const struct unit *u = unit_find(name, strlen(name));

  if (!u) fail_msg("no unit %s", name);
  return u;
}

/* Exact values in decimal digits, worked out from the definitions (inch, pound, standard
 * gravity, US and UK gallon, conventional mercury and water) apart from the table's own
 * arithmetic; test_printed_factors has what NIST prints. */
static const struct {
  const char *name;
  double factor;
} exact[] = {
    {"psi", 6894.757293168361},
    {"kPa", 1000},
    {"Pa", 1},
    {"MPa", 1e6},
    {"bar", 1e5},
    {"mbar", 100},
    {"kgf/cm2", 98066.5},
    {"inHg", 3386.388640341},
    {"inH2O", 249.08891},
    {"mmHg", 133.322387415},
    {"atm", 101325},
    {"in", 0.0254},
    {"thou", 2.54e-5},
    {"mm", 0.001},
    {"cm", 0.01},
    {"m", 1},
    {"um", 1e-6},
    {"ft", 0.3048},
    {"ohm", 1},
    {"kohm", 1000},
    {"Mohm", 1e6},
    {"mohm", 0.001},
    {"V", 1},
    {"mV", 0.001},
    {"kV", 1000},
    {"A", 1},
    {"mA", 0.001},
    {"degC", 1},
    {"degF", 0.55555555555555556},
    {"K", 1},
    {"rpm", 0.10471975511965978},
    {"Hz", 1},
    {"mL", 1e-6},
    {"L", 1e-3},
    {"in3", 1.6387064e-5},
    {"US fl oz", 29.5735295625e-6},
    {"UK fl oz", 28.4130625e-6},
    {"US gal", 3.785411784e-3},
    {"UK gal", 4.54609e-3},
    {"US qt", 0.946352946e-3},
    {"UK qt", 1.1365225e-3},
    {"US pt", 0.473176473e-3},
    {"UK pt", 0.56826125e-3},
    {"tsp", 4.92892159375e-6},
    {"tbsp", 14.78676478125e-6},
    {"in-lb", 0.1129848290276167},
    {"ft-lb", 1.3558179483314004},
    {"N.m", 1},
    {"kgf.m", 9.80665},
    {"kgf.cm", 0.0980665},
    {"s", 1},
    {"ms", 0.001},
    {"min", 60},
    {"h", 3600},
    {"day", 86400},
    {"week", 604800},
    {"%", 0.01},
    {":1", 1},
    {"1", 1},
    {"g", 0.001},
    {"kg", 1},
    {"oz", 0.028349523125},
    {"lb", 0.45359237},
    {"mL/min", 1.6666666666666667e-8},
    {"L/min", 1.6666666666666667e-5},
    {"L/h", 2.7777777777777778e-7},
    {"US gal/min", 6.30901964e-5},
    {"UK gal/min", 7.5768166666666667e-5},
    {"US gal/h", 1.0515032733333333e-6},
    {"UK gal/h", 1.2628027777777778e-6},
    {"deg", 0.017453292519943296},
    {"turn", 6.2831853071795865},
    {"rad", 1},
};

static void test_exact_factors(void **state)
{
  size_t count, seen = 0;
  const struct unit *table = unit_table(&count);

  (void)state;
  assert_int_equal(count, COUNT(exact));
  for (size_t i = 0; i < COUNT(exact); i++) {
    const struct unit *u = unit(exact[i].name);

    if (fabs(u->factor - exact[i].factor) > 4e-16 * exact[i].factor)
      fail_msg("%s is %.17g, not %.17g", u->name, u->factor, exact[i].factor);
    for (size_t j = 0; j < count; j++) seen += &table[j] == u;
  }
  assert_int_equal(seen, count);
}

/* What NIST SP 811 (2008), B.8, prints: seven digits, rounded. */
static void test_printed_factors(void **state)
{
  static const struct {
    const char *name;
    double mantissa;
    int exponent;
  } printed[] = {
      {"psi", 6.894757, 3},        {"inHg", 3.386389, 3},      {"inH2O", 2.490889, 2},
      {"mmHg", 1.333224, 2},       {"atm", 1.01325, 5},        {"bar", 1.0, 5},
      {"mbar", 1.0, 2},            {"kgf/cm2", 9.80665, 4},    {"in", 2.54, -2},
      {"thou", 2.54, -5},          {"um", 1.0, -6},            {"ft", 3.048, -1},
      {"US fl oz", 2.957353, -5},  {"UK fl oz", 2.841306, -5}, {"US gal", 3.785412, -3},
      {"UK gal", 4.54609, -3},     {"US qt", 9.463529, -4},    {"US pt", 4.731765, -4},
      {"tsp", 4.928922, -6},       {"tbsp", 1.478676, -5},     {"L", 1.0, -3},
      {"in-lb", 1.129848, -1},     {"ft-lb", 1.355818, 0},     {"kgf.m", 9.80665, 0},
      {"min", 6.0, 1},             {"h", 3.6, 3},              {"day", 8.64, 4},
      {"lb", 4.535924, -1},        {"oz", 2.834952, -2},       {"turn", 6.283185, 0},
      {"US gal/min", 6.309020, -5},
  };

  (void)state;
  for (size_t i = 0; i < COUNT(printed); i++) {
    double factor = unit(printed[i].name)->factor / pow(10, printed[i].exponent);

    if (fabs(factor - printed[i].mantissa) > 0.5000001e-6)
      fail_msg("%s: %.9f, printed %.6f", printed[i].name, factor, printed[i].mantissa);
  }
}

static void test_table_is_sound(void **state)
{
  size_t count;
  const struct unit *u = unit_table(&count);

  (void)state;
  for (size_t i = 0; i < count; i++) {
    assert_true(u[i].quantity > Q_NONE && u[i].quantity < Q_COUNT);
    assert_true(u[i].factor > 0 && u[i].basis[0] && u[i].also);
    assert_ptr_equal(unit(u[i].name), &u[i]);
    for (const char *const *other = u[i].also; *other; other++) {
      char plain[SPELL_ROOM], key[SPELL_ROOM];
      size_t bad;

      assert_true(spell_plain(*other, strlen(*other), plain, &bad));
      spell_key(plain, key);
      if (unit_spelt(key, u[i].quantity) != &u[i]) fail_msg("%s is not %s", *other, u[i].name);
    }
  }
}

/* No name may be shared inside one quantity, and those of two units belong to no unit. */
static void test_no_name_is_shared(void **state)
{
  size_t count;
  const struct unit *u = unit_table(&count), *one, *two;

  (void)state;
  for (size_t i = 0; i < count; i++)
    for (size_t j = 0; j < count; j++) {
      char key[SPELL_ROOM];

      spell_key(u[j].name, key);
      for (const char *const *other = u[i].also; *other; other++)
        if (i != j && u[i].quantity == u[j].quantity && spell_same(key, *other, false))
          fail_msg("%s is %s and %s", *other, u[i].name, u[j].name);
      if (unit_twofold(key, u[j].quantity, &one, &two)) fail_msg("%s is two things", u[j].name);
    }
}

static void test_find(void **state)
{
  static const char *const same[][2] = {
      {"PSI", "psi"},       {"Psi", "psi"},       {"p.s.i.", "psi"},      {"KPA", "kPa"},
      {"kpa", "kPa"},       {"MM", "mm"},         {"Mm", "mm"},           {"CM", "cm"},
      {"RPM", "rpm"},       {"r.p.m.", "rpm"},    {"mv", "mV"},           {"ma", "mA"},
      {"KV", "kV"},         {"v", "V"},           {"MPA", "MPa"},         {"Mpa", "MPa"},
      {"MOhm", "Mohm"},     {"mOhm", "mohm"},     {"OHM", "ohm"},         {"K", "K"},
      {"k", "kohm"},        {"M", "Mohm"},        {"m", "m"},             {"Milliamps", "mA"},
      {"MBAR", "mbar"},     {"ml", "mL"},         {"ML", "mL"},           {"l", "L"},
      {"nm", "N.m"},        {"lbs", "lb"},        {"oz", "oz"},           {" mm ", "mm"},
      {"u.s. fl. oz.", "US fl oz"}, {"HZ", "Hz"}, {"deg c", "degC"},      {"IN-LB", "in-lb"},
      {"litres per hour", "L/h"},   {"\"", "in"}, {"cu. in.", "in3"},     {"1", "1"},
  };
  static const char *const none[] = {
      "",   " ",   "MV",  "Ma", "mPa", "mpa",     "gal", "gallons", "fl oz", "pt",
      "qt", "gpm", "psx", "m m m", "2", "psi psi", "mm\"", "ohm ohm", "-", "\xFF",
  };

  (void)state;
  for (size_t i = 0; i < COUNT(same); i++) {
    const struct unit *u = unit_find(same[i][0], strlen(same[i][0]));

    if (!u || strcmp(u->name, same[i][1]) != 0)
      fail_msg("%s gives %s", same[i][0], u ? u->name : "nothing");
  }
  for (size_t i = 0; i < COUNT(none); i++)
    if (unit_find(none[i], strlen(none[i]))) fail_msg("%s is found", none[i]);
  assert_null(unit_find(NULL, 0));
  assert_null(unit_find("psi", 2)); /* "ps" */
  assert_null(unit_find("mm\0", 3));
  assert_ptr_equal(unit_find("mmHg", 2), unit("mm"));
}

static void test_quantity_names(void **state)
{
  static const char *const names[] = {
      "none",   "pressure", "length", "resistance", "voltage", "current", "temperature", "speed",
      "frequency", "volume", "torque", "time", "ratio", "mass", "flow", "angle",
  };

  (void)state;
  assert_int_equal(COUNT(names), Q_COUNT);
  for (int q = 0; q < Q_COUNT; q++) {
    assert_string_equal(quantity_name((enum quantity)q), names[q]);
    assert_int_equal(quantity_by_name(names[q]), q);
  }
  assert_string_equal(quantity_name(Q_COUNT), "none");
  assert_int_equal(quantity_by_name("Pressure"), Q_COUNT);
  assert_int_equal(quantity_by_name(""), Q_COUNT);
  assert_int_equal(quantity_by_name(NULL), Q_COUNT);
}

static void test_convert(void **state)
{
  static const struct {
    double value;
    const char *from, *to;
    double want;
  } rows[] = {
      {62, "psi", "kPa", 427.4749521764384},    {1, "atm", "psi", 14.695948775513},
      {1, "atm", "inHg", 29.921255579747},      {1, "kgf/cm2", "psi", 14.223343307119563},
      {0.030, "in", "mm", 0.762},               {180, "in-lb", "N.m", 20.337269224971},
      {18, "ft-lb", "N.m", 24.404723069965},    {212, "degF", "degC", 100},
      {-40, "degF", "degC", -40},               {20, "degC", "degF", 68},
      {0, "K", "degC", -273.15},                {4, "US fl oz", "mL", 118.29411825},
      {1, "US gal", "tsp", 768},                {3600, "rpm", "rpm", 3600},
      {1, "turn", "deg", 360},                  {5, "cm", "thou", 1968.5039370079},
      {15, "%", "1", 0.15},                     {16, "oz", "lb", 1},
      {60, "mL/min", "L/h", 3.6},               {1, "UK gal", "US gal", 1.2009499255398},
  };

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    double got = unit_convert(rows[i].value, unit(rows[i].from), unit(rows[i].to));

    if (fabs(got - rows[i].want) > 1e-12 * fmax(fabs(rows[i].want), 100))
      fail_msg("%g %s is %.14g %s", rows[i].value, rows[i].from, got, rows[i].to);
  }
  assert_true(isnan(unit_convert(1, unit("psi"), unit("mm"))));
  assert_true(isnan(unit_convert(1, NULL, unit("mm"))));
  assert_true(isnan(unit_convert(1, unit("mm"), NULL)));
}

/* Ways in which people write a reading; an empty fallback means that none is given. */
static const struct {
  const char *text;
  enum quantity expected;
  const char *fallback;
  double value;
  const char *unit;
} typed[] = {
    {"62 psi", Q_PRESSURE, "", 62, "psi"},
    {"62psi", Q_PRESSURE, "", 62, "psi"},
    {"62 PSI", Q_PRESSURE, "", 62, "psi"},
    {"  62\tpsi \r\n", Q_PRESSURE, "", 62, "psi"},
    {"62 p.s.i.", Q_PRESSURE, "", 62, "psi"},
    {"62", Q_PRESSURE, "psi", 62, "psi"},
    {"62.", Q_PRESSURE, "psi", 62, "psi"},
    {"430 kpa", Q_PRESSURE, "psi", 430, "kPa"},
    {"120 lbs", Q_PRESSURE, "", 120, "psi"},
    {"120 lb", Q_PRESSURE, "", 120, "psi"},
    {"120 lbs per sq in", Q_PRESSURE, "", 120, "psi"},
    {"120 pounds per square inch", Q_PRESSURE, "", 120, "psi"},
    {"120 lb/in\u00B2", Q_PRESSURE, "", 120, "psi"},
    {"120 psig", Q_PRESSURE, "", 120, "psi"},
    {"8.5 kgf/cm^2", Q_PRESSURE, "", 8.5, "kgf/cm2"},
    {"8,5 kg/cm\u00B2", Q_PRESSURE, "", 8.5, "kgf/cm2"},
    {"0,4 bar", Q_PRESSURE, "", 0.4, "bar"},
    {"-4 in. H2O", Q_PRESSURE, "", -4, "inH2O"},
    {"\u22124 inH\u2082O", Q_PRESSURE, "", -4, "inH2O"},
    {"4\" WC", Q_PRESSURE, "", 4, "inH2O"},
    {"-29.9 inches of mercury", Q_PRESSURE, "", -29.9, "inHg"},
    {"0.9 MPa", Q_PRESSURE, "", 0.9, "MPa"},
    {".030 in", Q_LENGTH, "", 0.030, "in"},
    {"0.030\"", Q_LENGTH, "", 0.030, "in"},
    {"0.030\u2033", Q_LENGTH, "", 0.030, "in"},
    {"0.030\u201D", Q_LENGTH, "", 0.030, "in"},
    {"0.030 in.", Q_LENGTH, "", 0.030, "in"},
    {"0,030 inch", Q_LENGTH, "", 0.030, "in"},
    {"30 thou", Q_LENGTH, "", 30, "thou"},
    {"30 thousandths", Q_LENGTH, "", 30, "thou"},
    {"1/32 in", Q_LENGTH, "", 0.03125, "in"},
    {"1/32\"", Q_LENGTH, "", 0.03125, "in"},
    {"1 1/2 in", Q_LENGTH, "", 1.5, "in"},
    {"2-7/8 in", Q_LENGTH, "", 2.875, "in"},
    {"2\u00BE in", Q_LENGTH, "", 2.75, "in"},
    {"1\u20442 inch", Q_LENGTH, "", 0.5, "in"},
    {"5/1000 in", Q_LENGTH, "", 0.005, "in"},
    {"0.76mm", Q_LENGTH, "", 0.76, "mm"},
    {"0,76 MM", Q_LENGTH, "", 0.76, "mm"},
    {"+0.76 mm", Q_LENGTH, "", 0.76, "mm"},
    {"762 \u00B5m", Q_LENGTH, "", 762, "um"},
    {"762 \u03BCm", Q_LENGTH, "", 762, "um"},
    {"6'", Q_LENGTH, "", 6, "ft"},
    {"2.5 ohms", Q_RESISTANCE, "", 2.5, "ohm"},
    {"2.5 \u03A9", Q_RESISTANCE, "", 2.5, "ohm"},
    {"2.5\u2126", Q_RESISTANCE, "", 2.5, "ohm"},
    {"2.5R", Q_RESISTANCE, "", 2.5, "ohm"},
    {"12 k\u03A9", Q_RESISTANCE, "", 12, "kohm"},
    {"12k", Q_RESISTANCE, "", 12, "kohm"},
    {"12 K", Q_RESISTANCE, "", 12, "kohm"},
    {"2 M\u03A9", Q_RESISTANCE, "", 2, "Mohm"},
    {"2 M", Q_RESISTANCE, "", 2, "Mohm"},
    {"2 meg", Q_RESISTANCE, "", 2, "Mohm"},
    {"300 mohm", Q_RESISTANCE, "", 300, "mohm"},
    {"12.65V", Q_VOLTAGE, "", 12.65, "V"},
    {"12.65 volts", Q_VOLTAGE, "", 12.65, "V"},
    {"12,6 VDC", Q_VOLTAGE, "", 12.6, "V"},
    {"350 mV", Q_VOLTAGE, "", 350, "mV"},
    {"350 mv", Q_VOLTAGE, "", 350, "mV"},
    {"26 kV", Q_VOLTAGE, "", 26, "kV"},
    {"-0.2 V", Q_VOLTAGE, "", -0.2, "V"},
    {"3.5 amps", Q_CURRENT, "", 3.5, "A"},
    {"40mA", Q_CURRENT, "", 40, "mA"},
    {"20 \u00B0C", Q_TEMPERATURE, "", 20, "degC"},
    {"20C", Q_TEMPERATURE, "", 20, "degC"},
    {"68 \u00B0F", Q_TEMPERATURE, "", 68, "degF"},
    {"68 deg. F", Q_TEMPERATURE, "", 68, "degF"},
    {"20 degrees Celsius", Q_TEMPERATURE, "", 20, "degC"},
    {"293 k", Q_TEMPERATURE, "", 293, "K"},
    {"-40", Q_TEMPERATURE, "degC", -40, "degC"},
    {"3600 rpm", Q_SPEED, "", 3600, "rpm"},
    {"3600 R/MIN", Q_SPEED, "", 3600, "rpm"},
    {"3600 revs per minute", Q_SPEED, "", 3600, "rpm"},
    {"61.5Hz", Q_FREQUENCY, "", 61.5, "Hz"},
    {"600 ml", Q_VOLUME, "", 600, "mL"},
    {"600 cc", Q_VOLUME, "", 600, "mL"},
    {"600 cm\u00B3", Q_VOLUME, "", 600, "mL"},
    {"0,6 l", Q_VOLUME, "", 0.6, "L"},
    {"20 US fl oz", Q_VOLUME, "", 20, "US fl oz"},
    {"20 fl oz (US)", Q_VOLUME, "", 20, "US fl oz"},
    {"20 U.S. fl. oz.", Q_VOLUME, "", 20, "US fl oz"},
    {"20 us oz", Q_VOLUME, "", 20, "US fl oz"},
    {"20 UK fl oz", Q_VOLUME, "", 20, "UK fl oz"},
    {"20 imp fl oz", Q_VOLUME, "", 20, "UK fl oz"},
    {"20 imperial fl oz", Q_VOLUME, "", 20, "UK fl oz"},
    {"1 imperial gallon", Q_VOLUME, "", 1, "UK gal"},
    {"1/2 US pint", Q_VOLUME, "", 0.5, "US pt"},
    {"2 tsp", Q_VOLUME, "", 2, "tsp"},
    {"20", Q_VOLUME, "US fl oz", 20, "US fl oz"},
    {"17.8 cu. in.", Q_VOLUME, "", 17.8, "in3"},
    {"20 N\u00B7m", Q_TORQUE, "", 20, "N.m"},
    {"20 Nm", Q_TORQUE, "", 20, "N.m"},
    {"20 newton-metres", Q_TORQUE, "", 20, "N.m"},
    {"180 in-lb", Q_TORQUE, "", 180, "in-lb"},
    {"180 in-lbf", Q_TORQUE, "", 180, "in-lb"},
    {"180 lbf.in", Q_TORQUE, "", 180, "in-lb"},
    {"180 inch pounds", Q_TORQUE, "", 180, "in-lb"},
    {"15 ft.lbs", Q_TORQUE, "", 15, "ft-lb"},
    {"15 lb-ft", Q_TORQUE, "", 15, "ft-lb"},
    {"2 kgf.m", Q_TORQUE, "", 2, "kgf.m"},
    {"200 kg-cm", Q_TORQUE, "", 200, "kgf.cm"},
    {"90 s", Q_TIME, "", 90, "s"},
    {"5 mins", Q_TIME, "", 5, "min"},
    {"1 1/2 hours", Q_TIME, "", 1.5, "h"},
    {"30 days", Q_TIME, "", 30, "day"},
    {"8:1", Q_RATIO, "", 8, ":1"},
    {"8.5 : 1", Q_RATIO, "", 8.5, ":1"},
    {"50 to 1", Q_RATIO, "%", 50, ":1"},
    {"1:50", Q_RATIO, "", 0.02, ":1"},
    {"15 %", Q_RATIO, "", 15, "%"},
    {"15%", Q_RATIO, "", 15, "%"},
    {"15 per cent", Q_RATIO, "", 15, "%"},
    {"15", Q_RATIO, "%", 15, "%"},
    {"0.15", Q_RATIO, "1", 0.15, "1"},
    {"9 oz", Q_MASS, "", 9, "oz"},
    {"2 lbs", Q_MASS, "", 2, "lb"},
    {"250g", Q_MASS, "", 250, "g"},
    {"120 ml per min", Q_FLOW, "", 120, "mL/min"},
    {"120 cc/min", Q_FLOW, "", 120, "mL/min"},
    {"2 US gph", Q_FLOW, "", 2, "US gal/h"},
    {"1 UK gal/min", Q_FLOW, "", 1, "UK gal/min"},
    {"23\u00B0", Q_ANGLE, "", 23, "deg"},
    {"1 1/2 turns out", Q_ANGLE, "", 1.5, "turn"},
    {"1\u00BD turns", Q_ANGLE, "", 1.5, "turn"},
    {"-10 deg", Q_ANGLE, "", -10, "deg"},
    {"62 psi", Q_NONE, "", 62, "psi"},
    {"2 lbs", Q_NONE, "", 2, "lb"},
    {"0", Q_VOLTAGE, "V", 0, "V"},
    {"-0", Q_VOLTAGE, "V", 0, "V"},
    {"000012.50 V", Q_VOLTAGE, "", 12.5, "V"},
};

static void test_typed(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(typed); i++) {
    const struct unit *fallback = typed[i].fallback[0] ? unit(typed[i].fallback) : NULL;
    struct amount a = {0};
    struct err e = {0};
    int status =
        amount_parse(typed[i].text, strlen(typed[i].text), typed[i].expected, fallback, &a, &e);
    const struct unit *want = unit(typed[i].unit);

    if (status) fail_msg("%s: %s", typed[i].text, e.text);
    if (a.value != typed[i].value || a.unit != want)
      fail_msg("%s: %.17g %s", typed[i].text, a.value, a.unit->name);
    assert_true(a.si == typed[i].value * want->factor + want->offset);
    assert_false(signbit(a.value) && a.value == 0);
  }
}

static const struct {
  const char *text;
  enum quantity expected;
  const char *fallback, *says;
} refused[] = {
    {"62 psi", Q_LENGTH, "mm",
     "62 psi is a pressure; a length is expected, such as 0.030 in or 0.76 mm."},
    {"20 deg", Q_PRESSURE, "", "20 deg is an angle; a pressure is expected"},
    {"4 in", Q_PRESSURE, "", "4 in is a length; a pressure"},
    {"8:1", Q_PRESSURE, "", "8:1 is a ratio; a pressure is expected"},
    {"6 gal", Q_PRESSURE, "", "6 gal is a volume; a pressure is expected"},
    {"5 m", Q_TIME, "", "5 m is a length; a time is expected, such as 90 s or 5 min."},
    {"60 Hz", Q_SPEED, "rpm", "60 Hz is a frequency; a speed is expected, such as 3600 rpm"},
    {"", Q_LENGTH, "mm", "Nothing was typed. A length is expected"},
    {" \t ", Q_LENGTH, "mm", "Nothing was typed."},
    {"psi", Q_PRESSURE, "", "\"psi\" does not begin with a number. A pressure is expected"},
    {"about 60", Q_PRESSURE, "psi", "does not begin with a number"},
    {"nan", Q_PRESSURE, "psi", "does not begin with a number"},
    {"inf", Q_PRESSURE, "psi", "does not begin with a number"},
    {"-infinity psi", Q_PRESSURE, "psi", "does not begin with a number"},
    {"--5 psi", Q_PRESSURE, "", "does not begin with a number"},
    {".", Q_PRESSURE, "psi", "does not begin with a number"},
    {"0x1F psi", Q_PRESSURE, "", "the unit x1F psi is not known"},
    {"62", Q_PRESSURE, "",
     "\"62\" has no unit. A pressure is expected, such as 62 psi or 430 kPa."},
    {"62 psx", Q_PRESSURE, "", "the unit psx is not known. Did you mean psi?"},
    {"62 kilopascls", Q_PRESSURE, "", "Did you mean kilopascals?"},
    {"3 millimters", Q_LENGTH, "", "Did you mean millimeters?"},
    {"62 furlongs", Q_LENGTH, "", "\"62 furlongs\": the unit furlongs is not known. A length is"},
    {"62 @", Q_LENGTH, "mm", "the unit @ is not known. A length"},
    {"62 -", Q_LENGTH, "mm", "the unit - is not known. A length"},
    {"62 PSX", Q_PRESSURE, "", "the unit PSX is not known. Did you mean psi?"},
    {"5 mohn", Q_RESISTANCE, "", "the unit mohn is not known. Did you mean mohm?"},
    {"5 Mohn", Q_RESISTANCE, "", "the unit Mohn is not known. Did you mean Mohm?"},
    {"5 MV", Q_VOLTAGE, "", "MV is not a unit here; m is milli and M is mega. Did you mean mV?"},
    {"5 MA", Q_CURRENT, "", "Did you mean mA?"},
    {"0.9 mpa", Q_PRESSURE, "", "Did you mean MPa?"},
    {"5 m", Q_RESISTANCE, "", "5 m is a length; a resistance"},
    {"20 fl oz", Q_VOLUME, "", "fl oz may be US fl oz or UK fl oz. Say which. A volume is"},
    {"20 oz", Q_VOLUME, "", "oz may be US fl oz or UK fl oz."},
    {"20 fl. oz.", Q_VOLUME, "US fl oz", "may be US fl oz or UK fl oz."},
    {"1 gal", Q_VOLUME, "", "gal may be US gal or UK gal."},
    {"1 Gallon", Q_VOLUME, "", "Gallon may be US gal or UK gal."},
    {"1 qt", Q_VOLUME, "", "qt may be US qt or UK qt."},
    {"1 pint", Q_VOLUME, "", "pint may be US pt or UK pt."},
    {"1 gpm", Q_FLOW, "", "gpm may be US gal/min or UK gal/min."},
    {"1 gal per hour", Q_FLOW, "", "may be US gal/h or UK gal/h."},
    {"20 lbs", Q_TORQUE, "", "lbs may be in-lb or ft-lb."},
    {"2 kg", Q_TORQUE, "", "kg may be kgf.m or kgf.cm."},
    {"20\u00B0", Q_TEMPERATURE, "", "deg may be degC or degF."},
    {"3,600 rpm", Q_SPEED, "", "\"3,600 rpm\": thousands or decimals? Write thousands without"},
    {"3 600 rpm", Q_SPEED, "", "thousands or decimals?"},
    {"3'600 rpm", Q_SPEED, "", "thousands or decimals?"},
    {"3\u202F600 rpm", Q_SPEED, "", "thousands or decimals?"},
    {"1.234.567 mm", Q_LENGTH, "", "thousands or decimals?"},
    {"1,234.5 mm", Q_LENGTH, "", "thousands or decimals?"},
    {"1.234,5 mm", Q_LENGTH, "", "thousands or decimals?"},
    {"28-30 psi", Q_PRESSURE, "", "\"28-30 psi\" holds more than one number: give one reading"},
    {"28 - 30 psi", Q_PRESSURE, "", "holds more than one number"},
    {"28 to 30 psi", Q_PRESSURE, "", "holds more than one number"},
    {"28 30 psi", Q_PRESSURE, "", "holds more than one number"},
    {"2 h 30 min", Q_TIME, "", "holds more than one number"},
    {"1' 6\"", Q_LENGTH, "", "holds more than one number"},
    {"62 .1", Q_RATIO, "", "holds more than one number"},
    {"1 1/2 1/2 in", Q_LENGTH, "", "holds more than one number"},
    {"90/95 psi", Q_PRESSURE, "", "a fraction is written like 1/32 or 1 1/2."},
    {"1/0 in", Q_LENGTH, "", "a fraction is written like"},
    {"3/2 in", Q_LENGTH, "", "a fraction is written like"},
    {"1/2/3 in", Q_LENGTH, "", "a fraction is written like"},
    {"1/99999999999 in", Q_LENGTH, "", "a fraction is written like"},
    {"1.5/2 in", Q_LENGTH, "", "a fraction is written like"},
    {"5 1/7 in", Q_LENGTH, "", "a fraction is written like"},
    {"1e3 psi", Q_PRESSURE, "", "write the number out, without a power of ten"},
    {"1.5E-2 psi", Q_PRESSURE, "", "write the number out, without a power of ten"},
    {"1234567890123456 Pa", Q_PRESSURE, "", "more digits than any instrument shows"},
    {"0.00000000000000000000001 m", Q_LENGTH, "", "more digits than any instrument shows"},
    {"8:0", Q_RATIO, "", "is not understood as a ratio"},
    {"8:-1", Q_RATIO, "", "is not understood as a ratio"},
    {"8:1 psi", Q_RATIO, "", "is not understood as a ratio"},
    {"8:", Q_RATIO, "", "does not begin with a number"},
    {"20000 psi", Q_PRESSURE, "",
     "20000 psi cannot be right: a pressure here lies between -1.02 bar and 1000 bar. Look at the"},
    {"-2 bar", Q_PRESSURE, "", "cannot be right: a pressure here lies between"},
    {"762", Q_LENGTH, "m", "762 cannot be right: a length here lies between 0 m and 100 m."},
    {"-1 mm", Q_LENGTH, "", "a length here lies between 0 m and 100 m."},
    {"-61 degC", Q_TEMPERATURE, "", "lies between -60 degC and 1200 degC."},
    {"5000 degF", Q_TEMPERATURE, "", "lies between -60 degC and 1200 degC."},
    {"60000 rpm", Q_SPEED, "", "lies between 0 rpm and 50000 rpm."},
    {"-1 ohm", Q_RESISTANCE, "", "a resistance here lies between 0 Mohm and 100000 Mohm."},
    {"101 kV", Q_VOLTAGE, "", "lies between -100 kV and 100 kV."},
    {"2001 A", Q_CURRENT, "", "lies between -2000 A and 2000 A."},
    {"2000 L", Q_VOLUME, "", "lies between 0 L and 1000 L."},
    {"6 MN", Q_TORQUE, "", "the unit MN is not known."},
    {"99999 ft-lb", Q_TORQUE, "", "lies between 0 N.m and 5000 N.m."},
    {"9999999 h", Q_TIME, "", "lies between 0 day and 18250 day."},
    {"2000:1", Q_RATIO, "", "lies between 0 and 1000."},
    {"99999 kg", Q_MASS, "", "lies between 0 kg and 5000 kg."},
    {"99999 L/min", Q_FLOW, "", "lies between 0 L/min and 10000 L/min."},
    {"101 turns", Q_ANGLE, "", "an angle here lies between -100 turn and 100 turn."},
    {"9999999 Hz", Q_FREQUENCY, "", "lies between 0 Hz and 1000000 Hz."},
    {"62 \xF0\x9F\x98\x80", Q_PRESSURE, "",
     "The character at byte 4 does not belong in a reading."},
    {"62 \xC2", Q_PRESSURE, "", "The character at byte 4 does not belong"},
    {"\x1B[2J62 psi", Q_PRESSURE, "", "The character at byte 1 does not belong"},
    {"62 ps\x7F", Q_PRESSURE, "", "The character at byte 6 does not belong"},
    {"62 zorkmids", Q_NONE, "", "the unit zorkmids is not known. A reading is expected, such as"},
    {"62", Q_NONE, "", "\"62\" has no unit. A reading is expected"},
};

static void test_refused(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(refused); i++) {
    const struct unit *fallback = refused[i].fallback[0] ? unit(refused[i].fallback) : NULL;
    struct amount a = {4, NULL, 5};
    struct err e = {0};
    int status = amount_parse(refused[i].text, strlen(refused[i].text), refused[i].expected,
                              fallback, &a, &e);

    if (status != EX_DATAERR) fail_msg("%s: status %d", refused[i].text, status);
    assert_int_equal(e.status, EX_DATAERR);
    if (!strstr(e.text, refused[i].says)) fail_msg("%s: %s", refused[i].text, e.text);
    assert_true(a.value == 4 && a.unit == NULL && a.si == 5);
  }
}

static void test_bytes_and_length(void **state)
{
  static const char nul[] = "62\0psi";
  char longest[SPELL_LONGEST + 2];
  struct amount a;
  struct err e;

  (void)state;
  assert_int_equal(amount_parse(nul, 6, Q_PRESSURE, unit("psi"), &a, &e), EX_DATAERR);
  assert_non_null(strstr(e.text, "byte 3"));
  assert_int_equal(amount_parse(nul, 2, Q_PRESSURE, unit("psi"), &a, &e), 0);
  assert_int_equal(amount_parse("62 psi", 1, Q_PRESSURE, unit("kPa"), &a, &e), 0);
  assert_true(a.value == 6 && a.unit == unit("kPa"));

  memset(longest, ' ', sizeof longest);
  longest[0] = '6';
  assert_int_equal(amount_parse(longest, SPELL_LONGEST, Q_PRESSURE, unit("psi"), &a, &e), 0);
  assert_int_equal(amount_parse(longest, SPELL_LONGEST + 1, Q_PRESSURE, unit("psi"), &a, &e),
                   EX_DATAERR);
  assert_non_null(strstr(e.text, "too long"));

  for (size_t i = 0; i < SPELL_LONGEST; i += 2) memcpy(longest + i, "\xC2\xBD", 2);
  assert_int_equal(amount_parse(longest, SPELL_LONGEST, Q_LENGTH, unit("in"), &a, &e), EX_DATAERR);
}

static void test_misuse(void **state)
{
  struct amount a;
  struct err e;

  (void)state;
  assert_int_equal(amount_parse("1", 1, Q_LENGTH, unit("psi"), &a, &e), EX_SOFTWARE);
  assert_int_equal(amount_parse("1", 1, Q_COUNT, NULL, &a, &e), EX_SOFTWARE);
  assert_int_equal(amount_parse("1", 1, Q_NONE, unit("psi"), &a, &e), 0);
}

/* Every example named in a message must itself be understood. */
static void test_examples(void **state)
{
  (void)state;
  for (int q = Q_PRESSURE; q < Q_COUNT; q++) {
    const char *text = amount_example((enum quantity)q);
    const char *or = strstr(text, " or ");
    struct amount a;
    struct err e;

    assert_non_null(or);
    assert_int_equal(amount_parse(text, (size_t)(or - text), (enum quantity)q, NULL, &a, &e), 0);
    assert_int_equal(amount_parse(or + 4, strlen(or + 4), (enum quantity)q, NULL, &a, &e), 0);
  }
  assert_ptr_equal(amount_example(Q_COUNT), amount_example(Q_NONE));
}

static void test_format(void **state)
{
  static const struct {
    double value;
    const char *from, *to, *want;
  } rows[] = {
      {62, "psi", "psi", "62 psi"},          {0.76, "mm", "mm", "0.76 mm"},
      {0.030, "in", "in", "0.03 in"},        {0.030, "in", "mm", "0.762 mm"},
      {62, "psi", "kPa", "427.5 kPa"},       {101.325, "kPa", "kPa", "101.325 kPa"},
      {3600, "rpm", "rpm", "3600 rpm"},      {12345, "rpm", "rpm", "12345 rpm"},
      {1234567, "Pa", "Pa", "1234567 Pa"},   {8, ":1", ":1", "8:1"},
      {8.5, ":1", "1", "8.5"},               {15, "%", "%", "15 %"},
      {0.15, "1", "%", "15 %"},              {0, "degC", "degC", "0 degC"},
      {0, "degC", "degF", "32 degF"},        {32, "degF", "degC", "0 degC"},
      {-40, "degF", "degC", "-40 degC"},     {21.5, "degC", "degC", "21.5 degC"},
      {-0.25, "V", "mV", "-250 mV"},         {12.65, "V", "V", "12.65 V"},
      {1, "um", "ft", "0.000003281 ft"},     {0, "V", "V", "0 V"},
      {1, "US fl oz", "mL", "29.57 mL"},     {999.9996, "mm", "mm", "1000 mm"},
      {999.996, "mm", "mm", "999.996 mm"},   {1, "turn", "deg", "360 deg"},
      {1e-30, "V", "V", "0 V"},              {-1e-30, "V", "V", "0 V"},
      {1e20, "Pa", "Pa", "100000000000000000000 Pa"},
  };
  char out[128];

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    const struct unit *from = unit(rows[i].from);

    amount_format(rows[i].value * from->factor + from->offset, unit(rows[i].to), out, sizeof out);
    if (strcmp(out, rows[i].want) != 0) fail_msg("%s, not %s", out, rows[i].want);
  }
  amount_format(2.5, NULL, out, sizeof out);
  assert_string_equal(out, "2.5");
  amount_format((double)NAN, unit("psi"), out, sizeof out);
  assert_string_equal(out, "? psi");
  amount_format((double)INFINITY, unit("V"), out, sizeof out);
  assert_string_equal(out, "? V");
  amount_format(1e308, unit("mV"), out, sizeof out);
  amount_format(-1e308, unit("V"), out, sizeof out);
  amount_format(62000, unit("kPa"), out, 4);
  assert_string_equal(out, "62 ");
  out[0] = 'x';
  amount_format(62000, unit("kPa"), out, 0);
  assert_int_equal(out[0], 'x');
}

static void test_locale_changes_nothing(void **state)
{
  static const char *const tries[] = {"de_DE.UTF-8", "fr_FR.UTF-8", "de_DE", "nb_NO.UTF-8"};
  struct amount a;
  struct err e;
  char out[64];

  (void)state;
  for (size_t i = 0; i < COUNT(tries) && !setlocale(LC_ALL, tries[i]); i++) continue;
  assert_int_equal(amount_parse("0.76 mm", 7, Q_LENGTH, NULL, &a, &e), 0);
  amount_format(a.si, a.unit, out, sizeof out);
  assert_string_equal(out, "0.76 mm");
  setlocale(LC_ALL, "C");
}

/* xorshift64*: the same numbers every time. */
static uint64_t draw(uint64_t *seed)
{
  *seed ^= *seed >> 12;
  *seed ^= *seed << 25;
  *seed ^= *seed >> 27;
  return *seed * 2685821657736338717u;
}

/* Numbers come out as strtod has them in the C locale. */
static void test_numbers_are_nearest(void **state)
{
  uint64_t seed = 7;

  (void)state;
  for (int i = 0; i < 20000; i++) {
    unsigned int places = (unsigned int)(draw(&seed) % 9);
    unsigned long long whole = draw(&seed) % 1000000, part = draw(&seed) % 100000000;
    char text[64];
    const char *rest;
    double got;

    snprintf(text, sizeof text, "%llu.%08llu", whole, part);
    text[strlen(text) - places] = '\0';
    assert_int_equal(number_read(text, &got, &rest), NUMBER_OK);
    if (got != strtod(text, NULL)) fail_msg("%s is not %.17g", text, got);
  }
}

/* Every unit: value -> shown -> read again, and there and back through each other unit. */
static void test_round_trips(void **state)
{
  static const double values[] = {0.5, 1, 2.25, 7.125, 12.65, 62, 100};
  size_t count;
  const struct unit *u = unit_table(&count);

  (void)state;
  for (size_t i = 0; i < count; i++)
    for (size_t k = 0; k < COUNT(values); k++) {
      double si = values[k] * u[i].factor + u[i].offset;
      struct amount a;
      struct err e;
      char shown[64];

      for (size_t j = 0; j < count; j++) {
        double there = unit_convert(values[k], &u[i], &u[j]);
        double back = unit_convert(there, &u[j], &u[i]);

        if (u[i].quantity != u[j].quantity) assert_true(isnan(there));
        else if (fabs(back - values[k]) > 1e-12 * (values[k] + fabs(u[i].offset)))
          fail_msg("%g %s by %s: %.17g", values[k], u[i].name, u[j].name, back);
      }
      if (u[i].quantity == Q_PRESSURE && si > 1e8) continue; /* out of range on purpose */
      if (u[i].quantity == Q_TEMPERATURE && si < 220) continue;
      amount_format(si, &u[i], shown, sizeof shown);
      if (amount_parse(shown, strlen(shown), u[i].quantity, &u[i], &a, &e))
        fail_msg("%s: %s", shown, e.text);
      if (a.unit != &u[i] || a.value != values[k])
        fail_msg("%g %s: %s", values[k], u[i].name, shown);
    }
}

/* Whatever fits into `room` bytes: raw bytes, or pieces that look like readings. */
static size_t nonsense(uint64_t *seed, char *out, size_t room)
{
  static const char *const pieces[] = {
      "0",  "1",     "9",   "62", "3,600", ".",       ",",       "/",       ":",  "-",  "+",
      " ",  "  ",    "e",   "E5", "to ",   "1/2",     " per ",   "psi",     "mm", "in", "\"",
      "'",  "US ",   "fl oz", "gal", "k",  "M",       "m",       "\u03A9",  "\u00B0", "C",
      "%",  "H2O",   "^",   "(",  ")",     "#",       "nan",     "0x",      "\u00B5", "\u00BD",
      "\xC3", "\xE2\x84", "",
  };
  size_t len = draw(seed) % (room + 1), n = 0;

  if (draw(seed) % 3 == 0) {
    for (; n < len; n++) out[n] = (char)(draw(seed) & 0xFF);
    return n;
  }
  if (len > 0 && draw(seed) % 2) out[n++] = (char)('0' + draw(seed) % 10);
  while (n < len) {
    const char *piece = pieces[draw(seed) % COUNT(pieces)];
    size_t l = piece[0] ? strlen(piece) : 1;

    if (n + l > len) break;
    memcpy(out + n, piece, l);
    n += l;
  }
  return n;
}

static void test_nonsense_never_hurts(void **state)
{
  uint64_t seed = 20240229;
  size_t count, understood = 0;
  const struct unit *u = unit_table(&count);

  (void)state;
  for (int i = 0; i < 200000; i++) {
    const struct unit *fallback = draw(&seed) % 2 ? &u[draw(&seed) % count] : NULL;
    enum quantity q = fallback ? fallback->quantity : (enum quantity)(draw(&seed) % Q_COUNT);
    char bytes[SPELL_LONGEST + 8], shown[64];
    size_t len = nonsense(&seed, bytes, draw(&seed) % 4 ? 12 : sizeof bytes);
    char *text = malloc(len ? len : 1); /* of just this size, so that reading on is noticed */
    struct amount a;
    struct err e = {0};

    assert_non_null(text);
    memcpy(text, bytes, len);
    unit_find(text, len);
    if (amount_parse(text, len, q, fallback, &a, &e) == 0) {
      understood++;
      assert_true(isfinite(a.si) && a.unit && (q == Q_NONE || a.unit->quantity == q));
      amount_format(a.si, a.unit, shown, sizeof shown);
    } else {
      assert_true(e.status == EX_DATAERR && strlen(e.text) > 20);
      for (const char *p = e.text; *p; p++) assert_true(*p >= ' ' && *p <= '~');
    }
    free(text);
  }
  assert_true(understood > 2000);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_exact_factors),
      cmocka_unit_test(test_printed_factors),
      cmocka_unit_test(test_table_is_sound),
      cmocka_unit_test(test_no_name_is_shared),
      cmocka_unit_test(test_find),
      cmocka_unit_test(test_quantity_names),
      cmocka_unit_test(test_convert),
      cmocka_unit_test(test_typed),
      cmocka_unit_test(test_refused),
      cmocka_unit_test(test_bytes_and_length),
      cmocka_unit_test(test_misuse),
      cmocka_unit_test(test_examples),
      cmocka_unit_test(test_format),
      cmocka_unit_test(test_locale_changes_nothing),
      cmocka_unit_test(test_numbers_are_nearest),
      cmocka_unit_test(test_round_trips),
      cmocka_unit_test(test_nonsense_never_hurts),
  };

  return cmocka_run_group_tests_name("units", tests, NULL, NULL);
}
