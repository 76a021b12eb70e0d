/* given.c - see given.h. */
#include "model/given.h"

#include <math.h>
#include <string.h>

#include "base/text.h"
#include "units/parse.h"

static const struct given_kind kinds[GIVEN_COUNT] = {
    [GIVEN_ALTITUDE] = {"altitude", "height above the sea", Q_LENGTH, "m", -500, 6000, 1, false, "1500 m"},
    [GIVEN_TEMPERATURE] = {"temperature", "temperature of the air", Q_TEMPERATURE, "degC", -45, 55, 0.1,
                           false, "20 degC"},
    [GIVEN_PETROL_AGE] = {"petrol-age", "age of the petrol in the tank", Q_TIME, "day", 0, 3650, 1, false,
                          "6 weeks"},
    [GIVEN_POLES] = {"poles", "poles of the generator", Q_RATIO, "1", 2, 24, 0.01, true, "2"},
    [GIVEN_COMPRESSION_RATIO] = {"compression-ratio", "compression ratio", Q_RATIO, ":1", 3, 15, 0.01, false,
                                 "8.5:1"},
    [GIVEN_BLADE_LENGTH] = {"blade-length", "length of the blade from tip to tip", Q_LENGTH, "mm", 20, 3000,
                            0.1, false, "21 in"}};

const struct given_kind *given_kind(enum given_what what) { return &kinds[what]; }

static const struct unit *unit_of(enum given_what what)
{
  return unit_find(kinds[what].unit, strlen(kinds[what].unit));
}

int given_find(const char *id, const char **near)
{
  const char *ids[GIVEN_COUNT];

  for (int i = 0; i < GIVEN_COUNT; i++) {
    ids[i] = kinds[i].id;
    if (strcmp(ids[i], id) == 0) return i;
  }
  if (near) *near = text_nearest(id, ids, GIVEN_COUNT);
  return -1;
}

int given_parse(enum given_what what, const char *text, struct given *out, struct err *e)
{
  const struct given_kind *k = &kinds[what];
  const struct unit *unit = unit_of(what);
  char low[40], high[40];
  struct amount a;
  struct err why;
  double value;
  int status;

  if (what == GIVEN_ALTITUDE) status = height_parse(text, strlen(text), &a, &why);
  else status = amount_parse(text, strlen(text), k->quantity, unit, &a, &why);
  if (status) return err_set(e, status, NULL, 0, "%s: %s", k->id, why.text);
  value = round(unit_convert(a.value, a.unit, unit) / k->step) * k->step;
  if (value >= k->low && value <= k->high && (!k->even || fmod(value, 2) == 0)) {
    *out = (struct given){true, value};
    return 0;
  }
  given_format(what, k->low, low, sizeof low);
  given_format(what, k->high, high, sizeof high);
  return err_set(e, EX_DATAERR, NULL, 0, "%s: %.40s cannot be right: it lies between %s and %s%s.", k->id,
                 text, low, high, k->even ? " and is even" : "");
}

void given_format(enum given_what what, double value, char *out, size_t size)
{
  amount_format(given_si(what, value), unit_of(what), out, size);
}

double given_si(enum given_what what, double value)
{
  const struct unit *u = unit_of(what);

  return value * u->factor + u->offset;
}
