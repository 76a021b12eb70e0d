/* parse.c - see parse.h. */
#include "units/parse.h"

#include <math.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

#include "units/number.h"
#include "units/spell.h"

/* What to say of each quantity, and the widest range that a reading at a small-engine bench
 * can have, given in `unit`. Ends are the author's estimate, wide on purpose: they are to
 * catch a wrong unit or a lost decimal point, not a bad engine. */
static const struct expectation {
  const char *noun, *example, *unit;
  double low, high;
} expectations[Q_COUNT] = {
    [Q_NONE] = {"a reading", "62 psi, 0.030 in or 12.6 V", NULL, 0, 0},
    [Q_PRESSURE] = {"a pressure", "62 psi or 430 kPa", "bar", -1.02, 1000},
    [Q_LENGTH] = {"a length", "0.030 in or 0.76 mm", "m", 0, 100},
    [Q_RESISTANCE] = {"a resistance", "2.5 ohm or 12 kohm", "Mohm", 0, 100000},
    [Q_VOLTAGE] = {"a voltage", "12.6 V or 350 mV", "kV", -100, 100},
    [Q_CURRENT] = {"a current", "3.5 A or 40 mA", "A", -2000, 2000},
    [Q_TEMPERATURE] = {"a temperature", "20 degC or 68 degF", "degC", -60, 1200},
    [Q_SPEED] = {"a speed", "3600 rpm or 1750 r/min", "rpm", 0, 50000},
    [Q_FREQUENCY] = {"a frequency", "60 Hz or 61.5 Hz", "Hz", 0, 1000000},
    [Q_VOLUME] = {"a volume", "600 mL or 20 US fl oz", "L", 0, 1000},
    [Q_TORQUE] = {"a torque", "20 N.m or 15 ft-lb", "N.m", 0, 5000},
    [Q_TIME] = {"a time", "90 s or 5 min", "day", 0, 18250},
    [Q_RATIO] = {"a ratio", "8:1 or 15 %", "1", 0, 1000},
    [Q_MASS] = {"a mass", "250 g or 9 oz", "kg", 0, 5000},
    [Q_FLOW] = {"a flow", "120 mL/min or 2 US gal/h", "L/min", 0, 10000},
    [Q_ANGLE] = {"an angle", "23 deg or 1 1/2 turns", "turn", -100, 100},
};

const char *amount_example(enum quantity quantity)
{
  return expectations[(unsigned int)quantity < Q_COUNT ? quantity : Q_NONE].example;
}

static int refuse(struct err *e, enum quantity expected, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/* What is wrong, then what was expected. Returns EX_DATAERR. */
static int refuse(struct err *e, enum quantity expected, const char *format, ...)
{
  const struct expectation *x = &expectations[expected];
  char what[512];
  va_list args;

  va_start(args, format);
  vsnprintf(what, sizeof what, format, args);
  va_end(args);
  return err_set(e, EX_DATAERR, NULL, 0, "%s A%s is expected, such as %s.", what, x->noun + 1,
                 x->example);
}

static int refuse_number(enum number_fault fault, const char *typed, enum quantity expected,
                         struct err *e)
{
  switch (fault) {
    case NUMBER_SEPARATOR:
      return refuse(e, expected,
                    "\"%s\": thousands or decimals? Write thousands without a separator (3600) "
                    "and decimals with a point (3.6).",
                    typed);
    case NUMBER_TWO:
      return refuse(e, expected, "\"%s\" holds more than one number: give one reading in one unit.",
                    typed);
    case NUMBER_FRACTION:
      return refuse(e, expected, "\"%s\": a fraction is written like 1/32 or 1 1/2.", typed);
    case NUMBER_DIGITS:
      return refuse(e, expected, "\"%s\" has more digits than any instrument shows.", typed);
    case NUMBER_EXPONENT:
      return refuse(e, expected, "\"%s\": write the number out, without a power of ten.", typed);
    case NUMBER_OK:
    case NUMBER_NONE: break;
  }
  return refuse(e, expected, "\"%s\" does not begin with a number.", typed);
}

static int refuse_quantity(const char *typed, enum quantity is, enum quantity expected,
                           struct err *e)
{
  return err_set(e, EX_DATAERR, NULL, 0, "%s is %s; %s is expected, such as %s.", typed,
                 expectations[is].noun, expectations[expected].noun,
                 expectations[expected].example);
}

/* Does a number stand at the beginning of what should be a unit, or behind a space in it? */
static bool holds_number(const char *unit)
{
  bool fresh = true;

  for (; *unit; unit++) {
    if (fresh && *unit >= '0' && *unit <= '9') return true;
    fresh = strchr(" .-*^()", *unit) && (fresh || *unit == ' ');
  }
  return false;
}

static int refuse_unit(const char *typed, const char *unit, const char *key, enum quantity expected,
                       struct err *e)
{
  const struct unit *other = unit_but_for_case(key, expected);
  const char *near = unit_nearest(key, expected);

  if (holds_number(unit)) return refuse_number(NUMBER_TWO, typed, expected, e);
  if (other)
    return refuse(e, expected,
                  "\"%s\": %s is not a unit here; m is milli and M is mega. Did you mean %s?",
                  typed, unit, other->name);
  if (near)
    return refuse(e, expected, "\"%s\": the unit %s is not known. Did you mean %s?", typed, unit,
                  near);
  return refuse(e, expected, "\"%s\": the unit %s is not known.", typed, unit);
}

/* The unit that stands in `text`, behind the number of `typed`. */
static int read_unit(const char *typed, const char *text, enum quantity expected,
                     const struct unit **unit, struct err *e)
{
  const struct unit *found, *one, *two;
  char key[SPELL_ROOM];

  spell_key(text, key);
  if (key[0] >= '0' && key[0] <= '9') return refuse_number(NUMBER_TWO, typed, expected, e);
  found = unit_spelt(key, expected);
  if (found) {
    *unit = found;
    return 0;
  }
  if (unit_twofold(key, expected, &one, &two))
    return refuse(e, expected, "\"%s\": %s may be %s or %s. Say which.", typed, text, one->name,
                  two->name);
  found = unit_spelt(key, Q_NONE);
  if (found) return refuse_quantity(typed, found->quantity, expected, e);
  if (unit_twofold(key, Q_NONE, &one, &two))
    return refuse_quantity(typed, one->quantity, expected, e);
  return refuse_unit(typed, text, key, expected, e);
}

/* Moves *rest behind the sign of a ratio (":", or "to" where a ratio is expected), if any. */
static bool ratio_sign(const char **rest, enum quantity expected)
{
  bool colon = **rest == ':';
  bool to = expected == Q_RATIO && strncmp(*rest, "to ", 3) == 0;

  *rest += colon ? 1 : to ? 3 : 0;
  return colon || to;
}

/* The second number of "a:b", at `text`. */
static int read_ratio(const char *typed, const char *text, enum quantity expected,
                      struct amount *a, struct err *e)
{
  enum number_fault fault;
  double below = 0;
  const char *rest = text;

  fault = number_read(text, &below, &rest);
  if (fault) return refuse_number(fault, typed, expected, e);
  if (below <= 0 || *rest)
    return refuse(e, expected, "\"%s\" is not understood as a ratio.", typed);
  if (expected != Q_RATIO && expected != Q_NONE)
    return refuse_quantity(typed, Q_RATIO, expected, e);
  a->value /= below;
  a->unit = unit_spelt(":1", Q_RATIO);
  return 0;
}

/* Is a->si a value that can be met with? *e says so if not. */
static int check_range(const char *typed, const struct amount *a, struct err *e)
{
  enum quantity q = a->unit->quantity;
  const struct expectation *x = &expectations[q];
  const struct unit *u = unit_find(x->unit, strlen(x->unit));
  double low = x->low * u->factor + u->offset, high = x->high * u->factor + u->offset;
  double slack = 1e-12 * (fabs(low) + fabs(high)); /* the ends themselves are in */
  char from[64], to[64];

  if (a->si >= low - slack && a->si <= high + slack) return 0;
  amount_format(low, u, from, sizeof from);
  amount_format(high, u, to, sizeof to);
  return err_set(e, EX_DATAERR, NULL, 0,
                 "%s cannot be right: %s here lies between %s and %s. Look at the unit and the "
                 "decimal point.",
                 typed, x->noun, from, to);
}

/* Reads number and unit of the plain text into *a. */
static int read_amount(const char *typed, enum quantity expected, const struct unit *fallback,
                       struct amount *a, struct err *e)
{
  const char *rest = typed;
  enum number_fault fault = number_read(typed, &a->value, &rest);

  if (fault) return refuse_number(fault, typed, expected, e);
  if (ratio_sign(&rest, expected)) return read_ratio(typed, rest, expected, a, e);
  if (*rest && strcmp(rest, ".") != 0) return read_unit(typed, rest, expected, &a->unit, e);
  if (!fallback) return refuse(e, expected, "\"%s\" has no unit.", typed);
  a->unit = fallback;
  return 0;
}

int amount_parse(const char *text, size_t len, enum quantity expected, const struct unit *fallback,
                 struct amount *out, struct err *e)
{
  struct amount a = {0};
  char typed[SPELL_ROOM];
  size_t bad;
  int status;

  if ((unsigned int)expected >= Q_COUNT ||
      (fallback && expected != Q_NONE && fallback->quantity != expected))
    return err_set(e, EX_SOFTWARE, NULL, 0,
                   "A reading was asked for whose unit does not fit its quantity.");
  if (!spell_plain(text, len, typed, &bad)) {
    if (bad >= SPELL_LONGEST) return refuse(e, expected, "That is too long for a reading.");
    return refuse(e, expected, "The character at byte %zu does not belong in a reading.", bad + 1);
  }
  if (!typed[0]) return refuse(e, expected, "Nothing was typed.");
  status = read_amount(typed, expected, fallback, &a, e);
  if (status) return status;
  a.si = a.value * a.unit->factor + a.unit->offset;
  status = check_range(typed, &a, e);
  if (status == 0) *out = a;
  return status;
}

int height_parse(const char *text, size_t len, struct amount *out, struct err *e)
{
  char plain[SPELL_ROOM], unit[SPELL_ROOM + 2];
  const char *rest;
  double value;
  size_t bad;

  if (!spell_plain(text, len, plain, &bad) || number_read(plain, &value, &rest))
    return amount_parse(text, len, Q_LENGTH, NULL, out, e); /* says what is wrong */
  if (!*rest)
    return err_set(e, EX_DATAERR, NULL, 0,
                   "\"%s\" has no unit. A height is expected, such as 1500 m or 5000 ft.", plain);
  snprintf(unit, sizeof unit, "1%s", rest);
  if (amount_parse(unit, strlen(unit), Q_LENGTH, NULL, out, e))
    return amount_parse(text, len, Q_LENGTH, NULL, out, e); /* says it of what was typed */
  out->value = value;
  out->si = value * out->unit->factor;
  return 0;
}

enum { GIVES_BACK = 6, OTHERWISE = 4, MOST_PLACES = 15 };

/* Decimals that show v (not 0, below 1e15) in n digits that count, none for whole numbers. */
static int places_for(double v, int n)
{
  int places = n - 1 - (int)floor(log10(v));

  return places < 0 ? 0 : places > MOST_PLACES ? MOST_PLACES : places;
}

/* Fewest decimals that give v > 0 back to within `near`. */
static int places_of(double v, double near)
{
  for (int n = 1; n <= GIVES_BACK; n++) {
    int places = places_for(v, n);
    double p = number_power(places);

    if (fabs(round(v * p) / p - v) <= near) return places;
  }
  return places_for(v, OTHERWISE);
}

/* Writes all / 10^places in full, without noughts at the end behind the point. */
static void format_digits(bool minus, unsigned long long all, int places, char *out, size_t size)
{
  char digits[40]; /* the longest has 20 digits, a point and a sign */
  char *p = digits + sizeof digits - 1;

  *p = '\0';
  for (; places > 0 && all % 10 == 0; places--) all /= 10;
  minus = minus && all > 0;
  for (; places > 0; places--, all /= 10) {
    *--p = (char)('0' + all % 10);
    if (places == 1) *--p = '.';
  }
  do *--p = (char)('0' + all % 10);
  while ((all /= 10) > 0);
  if (minus) *--p = '-';
  snprintf(out, size, "%s", p);
}

/* Writes v; what is not more than `zero` away from 0 is 0. */
static void format_number(double v, double zero, char *out, size_t size)
{
  double distance = fabs(v);
  int places;

  if (!isfinite(v)) {
    snprintf(out, size, "?");
  } else if (distance <= zero || distance >= 1e15) {
    snprintf(out, size, "%.0f", distance <= zero ? 0.0 : v);
  } else {
    places = places_of(distance, fmax(1e-9 * distance, zero));
    format_digits(v < 0, (unsigned long long)llround(distance * number_power(places)), places, out,
                  size);
  }
}

void amount_format(double si, const struct unit *unit, char *out, size_t size)
{
  char number[400]; /* the longest double, written out, has 309 digits */

  if (size == 0) return;
  if (!unit) {
    format_number(si, 0, number, sizeof number);
    snprintf(out, size, "%s", number);
    return;
  }
  format_number((si - unit->offset) / unit->factor, 1e-12 * fabs(unit->offset / unit->factor),
                number, sizeof number);
  if (strcmp(unit->name, "1") == 0) snprintf(out, size, "%s", number);
  else snprintf(out, size, "%s%s%s", number, unit->name[0] == ':' ? "" : " ", unit->name);
}
