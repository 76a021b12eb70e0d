/* test_typed.c - what people type as a reading. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "unit_named.h"
#include "units/number.h"
#include "units/parse.h"
#include "units/spell.h"

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
      if (u[i].quantity == Q_TIME && si > 18250 * 86400.0) continue;
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
      cmocka_unit_test(test_typed),
      cmocka_unit_test(test_refused),
      cmocka_unit_test(test_bytes_and_length),
      cmocka_unit_test(test_misuse),
      cmocka_unit_test(test_examples),
      cmocka_unit_test(test_numbers_are_nearest),
      cmocka_unit_test(test_round_trips),
      cmocka_unit_test(test_nonsense_never_hurts),
  };

  return cmocka_run_group_tests_name("typed", tests, NULL, NULL);
}
