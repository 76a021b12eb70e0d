/* system.c - see system.h. */
#include "units/system.h"

#include <math.h>
#include <stdbool.h>
#include <string.h>

#include "units/parse.h"

static const char *const metric[] = {"g",  "kg", "kPa", "Pa",  "MPa",  "bar", "mbar",   "mm",    "cm",  "m",
                                     "um", "mL", "L",   "N.m", "degC", "K",   "mL/min", "L/min", "L/h", NULL};
static const char *const us[] = {"oz",   "lb",    "psi",      "inHg",   "inH2O",      "in",       "thou",
                                 "ft",   "in3",   "US fl oz", "US gal", "US qt",      "US pt",    "tsp",
                                 "tbsp", "in-lb", "ft-lb",    "degF",   "US gal/min", "US gal/h", NULL};

static bool is_of(const struct unit *u, enum unit_system system)
{
  const char *const *names = system == UNITS_METRIC ? metric : us;

  while (*names && strcmp(*names, u->name) != 0) names++;
  return *names != NULL;
}

const struct unit *unit_in_system(const struct unit *written, const struct unit *usual,
                                  enum unit_system system)
{
  return system == UNITS_AS_WRITTEN || is_of(written, system) ? written : usual;
}

void unit_round(double si, const struct unit *unit, char *out, size_t size)
{
  double value = (si - unit->offset) / unit->factor, step;

  if (value != 0 && isfinite(value)) {
    double size_of = pow(10, floor(log10(fabs(value))));

    step = size_of / (fabs(value) < 2 * size_of ? 1000 : 100);
    if (strcmp(unit->name, "in") == 0) step = fmax(step, 1e-4); /* feeler gauges know no less */
    value = round(value / step) * step;
  }
  amount_format(value * unit->factor + unit->offset, unit, out, size);
}
