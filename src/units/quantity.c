/* quantity.c - see quantity.h. */
#include "units/quantity.h"

#include <math.h>
#include <string.h>

#include "base/text.h"
#include "units/spell.h"

/* Where the factors are from. "prints" means that the seven-digit value of NIST Special
 * Publication 811 (2008), Guide for the Use of the International System of Units, Appendix
 * B.8, was read (as quoted in public code, not in the publication itself) and agrees with
 * the value used here. "in bold" is how NIST marks an exact factor; where it is not said,
 * that the factor is exact follows from the definition named or is recalled from memory. */
#define SP811 "NIST SP 811 (2008) B.8"
#define SI "exact: SI, recalled"

#define INCH 0.0254                          /* m, exact, recalled; printed 2.54 E-02 */
#define POUND 0.45359237                     /* kg, exact, recalled; printed 4.535 924 E-01 */
#define GRAVITY 9.80665                      /* m/s2, exact, recalled; kgf printed 9.806 65 */
#define POUND_FORCE 4.4482216152605          /* N, exact: POUND * GRAVITY; printed 4.448 222 */
#define US_GALLON (231 * INCH * INCH * INCH) /* m3, exact, recalled; printed 3.785 412 E-03 */
#define UK_GALLON 0.00454609                 /* m3, exact, recalled; printed 4.546 09 E-03 */
#define PI 3.14159265358979323846

#define ALSO(...) ((const char *const[]){__VA_ARGS__, NULL})
#define NO_OTHER ((const char *const[]){NULL})

static const struct unit table[] = {
    /* Mass comes first: "lbs" and "oz" by themselves are masses. */
    {"g", Q_MASS, 0.001, 0, SI, ALSO("gram", "grams", "gramme", "grammes", "gm", "gms")},
    {"kg", Q_MASS, 1, 0, SI, ALSO("kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogrammes")},
    {"oz", Q_MASS, POUND / 16, 0, "exact: lb / 16; " SP811 " prints 2.834 952 E-02",
     ALSO("ozs", "ounce", "ounces", "oz avdp", "oz wt")},
    {"lb", Q_MASS, POUND, 0, "exact: 0.453 592 37 kg, recalled; " SP811 " prints 4.535 924 E-01",
     ALSO("lbs", "pound", "pounds", "lbm", "#")},

    {"psi", Q_PRESSURE, POUND_FORCE / (INCH * INCH), 0,
     "exact: lbf / in2; " SP811 " prints 6.894 757 E+03",
     ALSO("psig", "lb/in2", "lbs/in2", "lbf/in2", "lb/sq in", "lbs/sq in", "lbf/sq in", "lb",
          "lbs", "pound", "pounds", "#", "pounds/square inch", "pounds/sq in", "lb/square inch",
          "lbs/square inch", "psi gauge")},
    {"kPa", Q_PRESSURE, 1e3, 0, SI, ALSO("kilopascal", "kilopascals")},
    {"Pa", Q_PRESSURE, 1, 0, SI, ALSO("pascal", "pascals", "N/m2")},
    {"MPa", Q_PRESSURE, 1e6, 0, SI, ALSO("megapascal", "megapascals", "N/mm2")},
    {"bar", Q_PRESSURE, 1e5, 0, "exact: " SP811 " prints 1.0 E+05 in bold", ALSO("bars", "barg")},
    {"mbar", Q_PRESSURE, 1e2, 0, "exact: " SP811 " prints 1.0 E+02 in bold",
     ALSO("mb", "millibar", "millibars", "hPa")},
    {"kgf/cm2", Q_PRESSURE, GRAVITY * 1e4, 0,
     "exact: " SP811 " prints 9.806 65 E+04 (technical atmosphere)",
     ALSO("kg/cm2", "kgf/sq cm", "kg/sq cm", "kp/cm2")},
    {"inHg", Q_PRESSURE, 13595.1 * GRAVITY * INCH, 0,
     "conventional mercury, 13 595.1 kg/m3; " SP811 " prints 3.386 389 E+03",
     ALSO("inch Hg", "inches Hg", "\"Hg", "in mercury", "inches of mercury", "inches mercury",
          "inch of mercury")},
    {"inH2O", Q_PRESSURE, 1000 * GRAVITY * INCH, 0,
     "conventional water, 1000 kg/m3; " SP811 " prints 2.490 889 E+02",
     ALSO("inch H2O", "inches H2O", "\"H2O", "in water", "inches of water", "inches water",
          "inch of water", "inWC", "inWG", "\"WC", "\"WG", "iwg", "inches WC", "inches WG")},
    {"mmHg", Q_PRESSURE, 13.5951 * GRAVITY, 0,
     "conventional mercury, 13 595.1 kg/m3; " SP811 " prints 1.333 224 E+02",
     ALSO("mm of mercury", "mm mercury")},
    {"atm", Q_PRESSURE, 101325, 0, "exact: " SP811 " prints 1.013 25 E+05 in bold",
     ALSO("atmosphere", "atmospheres")},

    {"in", Q_LENGTH, INCH, 0, "exact: " SP811 " prints 2.54 E-02",
     ALSO("inch", "inches", "ins", "\"", "''")},
    {"thou", Q_LENGTH, INCH / 1000, 0, "exact: in / 1000; " SP811 " prints 2.54 E-05",
     ALSO("thous", "thousandth", "thousandths", "thousandths of an inch", "mil", "mils")},
    {"mm", Q_LENGTH, 1e-3, 0, SI,
     ALSO("mms", "millimetre", "millimetres", "millimeter", "millimeters")},
    {"cm", Q_LENGTH, 1e-2, 0, SI,
     ALSO("cms", "centimetre", "centimetres", "centimeter", "centimeters")},
    {"m", Q_LENGTH, 1, 0, SI, ALSO("metre", "metres", "meter", "meters")},
    {"um", Q_LENGTH, 1e-6, 0, "exact: SI; " SP811 " prints 1.0 E-06 (micron)",
     ALSO("micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers")},
    {"ft", Q_LENGTH, 12 * INCH, 0, "exact: " SP811 " prints 3.048 E-01 in bold",
     ALSO("foot", "feet", "'")},

    {"ohm", Q_RESISTANCE, 1, 0, SI, ALSO("ohms", "R")},
    {"kohm", Q_RESISTANCE, 1e3, 0, SI,
     ALSO("kohms", "k", "kilohm", "kilohms", "kiloohm", "kiloohms", "kR")},
    {"Mohm", Q_RESISTANCE, 1e6, 0, SI,
     ALSO("Mohms", "M", "meg", "megs", "megohm", "megohms", "megaohm", "megaohms")},
    {"mohm", Q_RESISTANCE, 1e-3, 0, SI, ALSO("mohms", "milliohm", "milliohms")},

    {"V", Q_VOLTAGE, 1, 0, SI, ALSO("volt", "volts", "VDC", "VAC", "V DC", "V AC")},
    {"mV", Q_VOLTAGE, 1e-3, 0, SI, ALSO("millivolt", "millivolts")},
    {"kV", Q_VOLTAGE, 1e3, 0, SI, ALSO("kilovolt", "kilovolts")},

    {"A", Q_CURRENT, 1, 0, SI, ALSO("amp", "amps", "ampere", "amperes")},
    {"mA", Q_CURRENT, 1e-3, 0, SI, ALSO("milliamp", "milliamps", "milliampere", "milliamperes")},

    {"degC", Q_TEMPERATURE, 1, 273.15, "exact: " SP811 " prints T/K = t/degC + 273.15",
     ALSO("C", "deg C", "degrees C", "degree C", "celsius", "degrees celsius", "deg celsius",
          "centigrade", "degrees centigrade")},
    {"degF", Q_TEMPERATURE, 5.0 / 9.0, 459.67 * 5.0 / 9.0,
     "exact: " SP811 " prints t/degC = (t/degF - 32)/1.8",
     ALSO("F", "deg F", "degrees F", "degree F", "fahrenheit", "degrees fahrenheit",
          "deg fahrenheit")},
    {"K", Q_TEMPERATURE, 1, 0, SI, ALSO("kelvin", "kelvins")},

    {"rpm", Q_SPEED, PI / 30, 0, "exact: 2 pi rad / 60 s; r, min in " SP811,
     ALSO("r/min", "rev/min", "revs/min", "rev/minute", "revs/minute", "revolutions/minute",
          "revs", "RPMs")},

    {"Hz", Q_FREQUENCY, 1, 0, SI, ALSO("hertz", "cps", "c/s", "cycles", "cycles/second")},

    {"mL", Q_VOLUME, 1e-6, 0, "exact: L / 1000; L in " SP811,
     ALSO("mls", "cc", "ccs", "cm3", "cu cm", "millilitre", "millilitres", "milliliter",
          "milliliters", "cubic centimetre", "cubic centimetres", "cubic centimeter",
          "cubic centimeters")},
    {"L", Q_VOLUME, 1e-3, 0, "exact: " SP811 " prints 1.0 E-03",
     ALSO("ltr", "ltrs", "litre", "litres", "liter", "liters", "dm3")},
    {"in3", Q_VOLUME, INCH * INCH * INCH, 0, "exact: (25.4 mm)3",
     ALSO("cu in", "cubic inch", "cubic inches", "cu ins", "ci", "cid", "cui")},
    {"US fl oz", Q_VOLUME, US_GALLON / 128, 0,
     "exact: US gal / 128; " SP811 " prints 2.957 353 E-05",
     ALSO("US oz", "US ozs", "US fl ozs", "fl oz US", "oz US", "US fluid ounce",
          "US fluid ounces", "US ounce", "US ounces")},
    {"UK fl oz", Q_VOLUME, UK_GALLON / 160, 0,
     "exact: UK gal / 160; " SP811 " prints 2.841 306 E-05",
     ALSO("UK oz", "fl oz UK", "oz UK", "UK fluid ounce", "UK fluid ounces", "UK ounces",
          "imp fl oz", "imp oz", "fl oz imp", "imperial fl oz", "imperial oz",
          "fl oz imperial", "imperial fluid ounce", "imperial fluid ounces", "imperial ounces",
          "imp fluid ounces")},
    {"US gal", Q_VOLUME, US_GALLON, 0, "exact: 231 in3, recalled; " SP811 " prints 3.785 412 E-03",
     ALSO("gal US", "US gals", "US gallon", "US gallons", "USG")},
    {"UK gal", Q_VOLUME, UK_GALLON, 0, "exact: " SP811 " prints 4.546 09 E-03",
     ALSO("gal UK", "UK gals", "UK gallon", "UK gallons", "imp gal", "imp gals", "imp gallons",
          "imperial gal", "imperial gallon", "imperial gallons")},
    {"US qt", Q_VOLUME, US_GALLON / 4, 0, "exact: US gal / 4; " SP811 " prints 9.463 529 E-04",
     ALSO("qt US", "US qts", "US quart", "US quarts")},
    {"UK qt", Q_VOLUME, UK_GALLON / 4, 0, "exact: UK gal / 4",
     ALSO("qt UK", "UK qts", "UK quart", "UK quarts", "imp qt", "imperial qt", "imperial quart",
          "imperial quarts")},
    {"US pt", Q_VOLUME, US_GALLON / 8, 0, "exact: US gal / 8; " SP811 " prints 4.731 765 E-04",
     ALSO("pt US", "US pts", "US pint", "US pints")},
    {"UK pt", Q_VOLUME, UK_GALLON / 8, 0, "exact: UK gal / 8",
     ALSO("pt UK", "UK pts", "UK pint", "UK pints", "imp pt", "imp pint", "imperial pt",
          "imperial pint", "imperial pints")},
    {"tsp", Q_VOLUME, US_GALLON / 768, 0,
     "exact, US: US gal / 768; " SP811 " prints 4.928 922 E-06",
     ALSO("tsps", "teaspoon", "teaspoons", "US tsp")},
    {"tbsp", Q_VOLUME, US_GALLON / 256, 0,
     "exact, US: US gal / 256; " SP811 " prints 1.478 676 E-05",
     ALSO("tbsps", "tablespoon", "tablespoons", "US tbsp")},

    {"in-lb", Q_TORQUE, POUND_FORCE * INCH, 0, "exact: lbf x in; " SP811 " prints 1.129 848 E-01",
     ALSO("in-lbs", "in-lbf", "lb-in", "lbs-in", "lbf-in", "inch pound", "inch pounds", "inch lb",
          "inch lbs", "pound inch", "pound inches", "pounds inch", "lb/in", "in/lb", "in/lbs")},
    {"ft-lb", Q_TORQUE, POUND_FORCE * 12 * INCH, 0,
     "exact: lbf x ft; " SP811 " prints 1.355 818 E+00",
     ALSO("ft-lbs", "ft-lbf", "lb-ft", "lbs-ft", "lbf-ft", "foot pound", "foot pounds", "foot lb",
          "foot lbs", "pound foot", "pound feet", "pounds foot", "lb/ft", "lbs/ft", "ft/lb",
          "ft/lbs")},
    {"N.m", Q_TORQUE, 1, 0, SI,
     ALSO("newton metre", "newton metres", "newton meter", "newton meters")},
    {"kgf.m", Q_TORQUE, GRAVITY, 0, "exact: " SP811 " prints 9.806 65 E+00",
     ALSO("kg-m", "m-kg", "m-kgf", "kp-m")},
    {"kgf.cm", Q_TORQUE, GRAVITY / 100, 0, "exact: kgf.m / 100",
     ALSO("kg-cm", "cm-kg", "cm-kgf", "kp-cm")},

    {"s", Q_TIME, 1, 0, SI, ALSO("sec", "secs", "second", "seconds")},
    {"ms", Q_TIME, 1e-3, 0, SI, ALSO("msec", "millisecond", "milliseconds")},
    {"min", Q_TIME, 60, 0, "exact: " SP811 " prints 6.0 E+01",
     ALSO("mins", "minute", "minutes")},
    {"h", Q_TIME, 3600, 0, "exact: " SP811 " prints 3.6 E+03",
     ALSO("hr", "hrs", "hour", "hours")},
    {"day", Q_TIME, 86400, 0, "exact: " SP811 " prints 8.64 E+04", ALSO("d", "days")},
    {"week", Q_TIME, 604800, 0, "exact: 7 days", ALSO("wk", "wks", "weeks")},
    {"month", Q_TIME, 2628000, 0, "exact: a twelfth of 365 days", ALSO("months")},
    {"year", Q_TIME, 31536000, 0, "exact: 365 days; " SP811 " prints 3.1536 E+07",
     ALSO("yr", "yrs", "years")},

    {"%", Q_RATIO, 0.01, 0, "exact: 1/100", ALSO("percent", "per cent", "pct", "pc")},
    {":1", Q_RATIO, 1, 0, "exact", ALSO("to 1")},
    {"1", Q_RATIO, 1, 0, "exact", NO_OTHER},

    {"mL/min", Q_FLOW, 1e-6 / 60, 0, "exact: mL / min",
     ALSO("mls/min", "mL/minute", "cc/min", "cc/minute", "cm3/min", "millilitres/minute",
          "milliliters/minute", "ccm")},
    {"L/min", Q_FLOW, 1e-3 / 60, 0, "exact: L / min",
     ALSO("L/minute", "lpm", "ltr/min", "litres/min", "liters/min", "litres/minute",
          "liters/minute")},
    {"L/h", Q_FLOW, 1e-3 / 3600, 0, "exact: L / h",
     ALSO("L/hr", "L/hour", "lph", "litres/h", "litres/hour", "liters/hour", "litres/hr",
          "liters/hr")},
    {"US gal/min", Q_FLOW, US_GALLON / 60, 0,
     "exact: US gal / min; " SP811 " prints 6.309 020 E-05",
     ALSO("US gpm", "US gallons/min", "US gallons/minute", "gal US/min", "US gal/minute")},
    {"UK gal/min", Q_FLOW, UK_GALLON / 60, 0, "exact: UK gal / min",
     ALSO("UK gpm", "UK gallons/min", "UK gallons/minute", "imp gal/min", "imp gpm",
          "imperial gal/min", "imperial gallons/minute", "UK gal/minute")},
    {"US gal/h", Q_FLOW, US_GALLON / 3600, 0, "exact: US gal / h",
     ALSO("US gal/hr", "US gal/hour", "US gph", "US gallons/hour", "US gallons/hr")},
    {"UK gal/h", Q_FLOW, UK_GALLON / 3600, 0, "exact: UK gal / h",
     ALSO("UK gal/hr", "UK gal/hour", "UK gph", "UK gallons/hour", "UK gallons/hr", "imp gal/h",
          "imp gph", "imperial gallons/hour", "imperial gal/h")},

    {"deg", Q_ANGLE, PI / 180, 0, "exact: turn / 360", ALSO("degs", "degree", "degrees")},
    {"turn", Q_ANGLE, 2 * PI, 0, "exact: 2 pi rad; " SP811 " prints 6.283 185 E+00 (revolution)",
     ALSO("turns", "turn out", "turns out", "rev", "revs", "revolution", "revolutions")},
    {"rad", Q_ANGLE, 1, 0, SI, ALSO("radian", "radians")},
};

enum { UNITS = sizeof table / sizeof table[0] };

static const char *const names[Q_COUNT] = {
    [Q_NONE] = "none",
    [Q_PRESSURE] = "pressure",
    [Q_LENGTH] = "length",
    [Q_RESISTANCE] = "resistance",
    [Q_VOLTAGE] = "voltage",
    [Q_CURRENT] = "current",
    [Q_TEMPERATURE] = "temperature",
    [Q_SPEED] = "speed",
    [Q_FREQUENCY] = "frequency",
    [Q_VOLUME] = "volume",
    [Q_TORQUE] = "torque",
    [Q_TIME] = "time",
    [Q_RATIO] = "ratio",
    [Q_MASS] = "mass",
    [Q_FLOW] = "flow",
    [Q_ANGLE] = "angle",
};

/* Names that two units of one quantity share. */
static const struct twofold {
  enum quantity quantity;
  const char *one, *two;
  const char *const *names;
} twofolds[] = {
    {Q_VOLUME, "US fl oz", "UK fl oz",
     ALSO("fl oz", "fl ozs", "oz", "ozs", "ounce", "ounces", "fluid oz", "fluid ounce",
          "fluid ounces")},
    {Q_VOLUME, "US gal", "UK gal", ALSO("gal", "gals", "gallon", "gallons")},
    {Q_VOLUME, "US qt", "UK qt", ALSO("qt", "qts", "quart", "quarts")},
    {Q_VOLUME, "US pt", "UK pt", ALSO("pt", "pts", "pint", "pints")},
    {Q_FLOW, "US gal/min", "UK gal/min",
     ALSO("gal/min", "gpm", "gals/min", "gal/minute", "gallons/min", "gallons/minute")},
    {Q_FLOW, "US gal/h", "UK gal/h",
     ALSO("gal/h", "gal/hr", "gph", "gal/hour", "gallons/h", "gallons/hr", "gallons/hour")},
    {Q_TORQUE, "in-lb", "ft-lb", ALSO("lb", "lbs", "lbf", "pound", "pounds", "#")},
    {Q_TORQUE, "kgf.m", "kgf.cm", ALSO("kg", "kgs", "kgf", "kp")},
    {Q_TEMPERATURE, "degC", "degF", ALSO("deg", "degs", "degree", "degrees")},
};

enum { TWOFOLDS = sizeof twofolds / sizeof twofolds[0] };

/* How a typed key is held against a spelling of the table. */
enum strictness { SAME_CASE, FIRST_LETTER_COUNTS, ANY_CASE };

/* Does the case of this spelling's first letter part milli from mega? */
static bool case_counts(const char *spelling)
{
  static const char *const which[] = {"mV", "mA", "mohm", "mohms", "Mohm", "Mohms", "M", "MPa"};

  for (size_t i = 0; i < sizeof which / sizeof which[0]; i++)
    if (strcmp(spelling, which[i]) == 0) return true;
  return false;
}

static bool matches(const char *key, const char *spelling, enum strictness how)
{
  if (how == SAME_CASE) return spell_same(key, spelling, false);
  if (how == FIRST_LETTER_COUNTS && case_counts(spelling) && key[0] != spelling[0]) return false;
  return spell_same(key, spelling, true);
}

static const struct unit *look(const char *key, enum quantity quantity, enum strictness how)
{
  for (size_t i = 0; i < UNITS; i++) {
    const struct unit *u = &table[i];

    if (quantity != Q_NONE && u->quantity != quantity) continue;
    if (matches(key, u->name, how)) return u;
    for (const char *const *other = u->also; *other; other++)
      if (matches(key, *other, how)) return u;
  }
  return NULL;
}

const struct unit *unit_table(size_t *count)
{
  *count = UNITS;
  return table;
}

const struct unit *unit_spelt(const char *key, enum quantity quantity)
{
  const struct unit *u = look(key, quantity, SAME_CASE);

  return u ? u : look(key, quantity, FIRST_LETTER_COUNTS);
}

const struct unit *unit_but_for_case(const char *key, enum quantity quantity)
{
  return look(key, quantity, ANY_CASE);
}

const struct unit *unit_find(const char *name, size_t len)
{
  char plain[SPELL_ROOM], key[SPELL_ROOM];
  size_t bad;

  if (!name || !spell_plain(name, len, plain, &bad)) return NULL;
  spell_key(plain, key);
  return unit_spelt(key, Q_NONE);
}

bool unit_twofold(const char *key, enum quantity quantity, const struct unit **one,
                  const struct unit **two)
{
  for (size_t i = 0; i < TWOFOLDS; i++) {
    const struct twofold *t = &twofolds[i];

    if (quantity != Q_NONE && t->quantity != quantity) continue;
    for (const char *const *name = t->names; *name; name++) {
      if (!matches(key, *name, ANY_CASE)) continue;
      *one = unit_find(t->one, strlen(t->one));
      *two = unit_find(t->two, strlen(t->two));
      return true;
    }
  }
  return false;
}

/* Edits between key and a spelling, in small letters if fold; limit + 1 when more than limit
 * or when as little as nothing would be left of either. */
static int distance(const char *key, const char *spelling, bool fold, int limit)
{
  char other[SPELL_ROOM];
  int d;

  spell_key(spelling, other);
  if (fold) text_lower(other);
  d = text_distance(key, other, limit);
  return d < (int)strlen(other) && d < (int)strlen(key) ? d : limit + 1;
}

static const char *nearest(const char *key, enum quantity quantity, bool fold)
{
  const char *best = NULL;
  int limit = strlen(key) < 6 ? 1 : (int)(strlen(key) / 3);

  for (size_t i = 0; i < UNITS && limit >= 0; i++) {
    const char *const *other = table[i].also;
    const char *spelling = table[i].name;

    if (quantity != Q_NONE && table[i].quantity != quantity) continue;
    for (; spelling && limit >= 0; spelling = *other++) {
      int d = distance(key, spelling, fold, limit);

      if (d > limit) continue;
      best = spelling;
      limit = d - 1;
    }
  }
  return best;
}

const char *unit_nearest(const char *key, enum quantity quantity)
{
  const char *best = nearest(key, quantity, false); /* mohn is nearer to mohm than to Mohm */
  char small[SPELL_ROOM];

  if (best) return best;
  spell_key(key, small);
  text_lower(small);
  return nearest(small, quantity, true);
}

double unit_convert(double value, const struct unit *from, const struct unit *to)
{
  if (!from || !to || from->quantity != to->quantity) return (double)NAN;
  if (from == to) return value;
  return (value * from->factor + (from->offset - to->offset)) / to->factor;
}

const char *quantity_name(enum quantity quantity)
{
  return (unsigned int)quantity < Q_COUNT ? names[quantity] : names[Q_NONE];
}

enum quantity quantity_by_name(const char *name)
{
  int q = Q_NONE;

  while (name && q < Q_COUNT && strcmp(names[q], name) != 0) q++;
  return name ? (enum quantity)q : Q_COUNT;
}
