/* answer.c - how an answer is put together: lines, and units that only answers have. */
#include <assert.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "arith/recipes.h"

#define NO_OTHER ((const char *const[]){NULL})

/* Speeds along a line, densities, powers, viscosities: nobody types them here. Base m/s, kg/m3, W,
 * and the unit itself. Foot, pound and mile are exact; hp is 550 ft lbf/s. */
static const struct unit extra[] = {
    {"m/s", Q_NONE, 1, 0, "SI", NO_OTHER},
    {"km/h", Q_NONE, 1 / 3.6, 0, "exact", NO_OTHER},
    {"ft/min", Q_NONE, 0.3048 / 60, 0, "exact", NO_OTHER},
    {"mph", Q_NONE, 0.44704, 0, "exact", NO_OTHER},
    {"kg/m3", Q_NONE, 1, 0, "SI", NO_OTHER},
    {"lb/ft3", Q_NONE, 0.45359237 / (0.3048 * 0.3048 * 0.3048), 0, "exact", NO_OTHER},
    {"W", Q_NONE, 1, 0, "SI", NO_OTHER},
    {"kW", Q_NONE, 1000, 0, "SI", NO_OTHER},
    {"hp", Q_NONE, 550 * 0.3048 * 4.4482216152605, 0, "exact: 550 ft lbf/s", NO_OTHER},
    {"mPa.s", Q_NONE, 1, 0, "as printed", NO_OTHER},
    {"mm2/s", Q_NONE, 1, 0, "as printed", NO_OTHER}};

const struct unit *work_unit(const char *name)
{
  for (size_t i = 0; i < sizeof extra / sizeof extra[0]; i++)
    if (strcmp(extra[i].name, name) == 0) return &extra[i];
  return unit_find(name, strlen(name));
}

const char *work_basis_name(enum work_basis basis)
{
  static const char *const names[] = {"computed", "published", "common-practice", "memory"};

  return names[basis];
}

static struct work_line *new_line(struct work_answer *a, const char *name, enum work_basis basis)
{
  struct work_line *line = &a->lines[a->count++];

  assert(a->count <= WORK_LINES);
  *line = (struct work_line){.name = name, .basis = basis};
  return line;
}

void work_add(struct work_answer *a, const char *name, double si, const char *units, enum work_basis basis)
{
  struct work_line *line = new_line(a, name, basis);

  line->si = si;
  for (int i = 0; i < WORK_UNITS && *units; i++) {
    char one[24];
    size_t len = strcspn(units, "|");

    snprintf(one, sizeof one, "%.*s", (int)len, units);
    line->shown[i] = work_unit(one);
    assert(line->shown[i]);
    units += len + (units[len] == '|');
  }
}

void work_say(struct work_answer *a, const char *name, enum work_basis basis, const char *format, ...)
{
  struct work_line *line = new_line(a, name, basis);
  va_list args;

  va_start(args, format);
  vsnprintf(line->said, sizeof line->said, format, args);
  va_end(args);
}
