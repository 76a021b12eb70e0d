/* test_units.c - units, their conversions, and how they are written out. */
#include <locale.h>
#include <math.h>
#include <stdlib.h>

#include "unit_named.h"
#include "units/parse.h"
#include "units/spell.h"

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
    {"month", 31536000 / 12.0},
    {"year", 31536000},
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
      {"year", 3.1536, 7},
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
      cmocka_unit_test(test_format),
      cmocka_unit_test(test_locale_changes_nothing),
  };

  return cmocka_run_group_tests_name("units", tests, NULL, NULL);
}
