/* spec_kinds.c - see spec_kinds.h. */
#include "shop/spec_kinds.h"

#include <string.h>

#include "base/text.h"

enum { MOST_KINDS = 64 };

#define WORDS Q_NONE, NULL, 0, 0, NULL, NULL, NULL, 0, NULL, false
#define SHOWN(quantity, unit, low, high, metric, us)                                                         \
  quantity, unit, low, high, metric, us, NULL, 0, NULL, false
#define JUDGES(quantity, unit, low, high, metric, us, check, give)                                           \
  quantity, unit, low, high, metric, us, check, give, NULL, false
#define GIVES(quantity, unit, low, high, metric, us, given)                                                  \
  quantity, unit, low, high, metric, us, NULL, 0, given, false
#define GAP(check, low, high, give) JUDGES(Q_LENGTH, "mm", low, high, "mm", "in", check, give)

static const struct spec_kind kinds[] = {
    {"oil-capacity", "oil, amount", SHOWN(Q_VOLUME, "L", 0.02, 20, "L", "US fl oz"), "four-stroke"},
    {"oil-grade", "oil, grade", WORDS, "four-stroke"},
    {"fuel", "fuel", WORDS, NULL},
    {"mix-ratio", "petrol to oil", SHOWN(Q_RATIO, ":1", 8, 200, NULL, NULL), "premix"},
    {"plug", "plug, kind", WORDS, NULL},
    {"plug-gap", "plug gap", GAP("plug-gap", 0.2, 2, 0.1), NULL},
    {"valve-clearance-inlet", "valve clearance, inlet", GAP("valve-clearance-inlet", 0.02, 1, 0.2),
     "four-stroke"},
    {"valve-clearance-exhaust", "valve clearance, exhaust", GAP("valve-clearance-exhaust", 0.02, 1, 0.2),
     "four-stroke"},
    {"coil-air-gap", "coil air gap", GAP("coil-air-gap", 0.05, 2, 0.2), NULL},
    {"coil-primary", "coil, primary",
     JUDGES(Q_RESISTANCE, "ohm", 0.05, 1000, NULL, NULL, "coil-primary", 0.15), NULL},
    {"coil-secondary", "coil, secondary",
     JUDGES(Q_RESISTANCE, "kohm", 0.5, 100, NULL, NULL, "coil-secondary", 0.15), NULL},
    {"kill-circuit-resistance", "stop circuit, switch at run",
     JUDGES(Q_RESISTANCE, "kohm", 1, 1e8, NULL, NULL, "kill-circuit-resistance", 0.15), NULL},
    {"points-gap", "points gap", GAP("points-gap", 0.1, 1, 0.15), "breaker-points"},
    {"idle-speed", "idle speed", JUDGES(Q_SPEED, "rpm", 500, 5000, NULL, NULL, "idle-speed", 0.08), NULL},
    {"governed-speed", "top speed without load",
     JUDGES(Q_SPEED, "rpm", 1500, 16000, NULL, NULL, "top-speed", 0.04), NULL},
    {"compression", "compression", JUDGES(Q_PRESSURE, "psi", 15, 300, "kPa", "psi", "compression", 0.15),
     NULL},
    {"compression-ratio", "compression ratio", GIVES(Q_RATIO, ":1", 3, 15, NULL, NULL, "compression-ratio"),
     NULL},
    {"oil-pressure", "oil pressure", JUDGES(Q_PRESSURE, "psi", 1, 120, "kPa", "psi", "oil-pressure", 0.15),
     "pressure-oil"},
    {"float-height", "float height", GAP("float-level", 2, 50, 0.06), "float-bowl"},
    {"mixture-screw-turns", "mixture screws from shut",
     JUDGES(Q_ANGLE, "turn", 0.1, 10, NULL, NULL, "mixture-screw-turns", 0.25), NULL},
    {"pop-off-pressure", "inlet needle opens at",
     JUDGES(Q_PRESSURE, "psi", 1, 60, "kPa", "psi", "inlet-needle-pop-off", 0.2), "diaphragm"},
    {"output-voltage", "generator voltage",
     JUDGES(Q_VOLTAGE, "V", 5, 1000, NULL, NULL, "output-voltage", 0.1), "generator-end"},
    {"output-frequency", "generator frequency",
     JUDGES(Q_FREQUENCY, "Hz", 10, 500, NULL, NULL, "output-frequency", 0.05), "generator-end"},
    {"poles", "generator poles", GIVES(Q_RATIO, "1", 2, 24, NULL, NULL, "poles"), "generator-end"},
    {"pump-pressure", "pump pressure",
     JUDGES(Q_PRESSURE, "psi", 50, 8000, "bar", "psi", "pump-pressure", 0.15), "pressure-pump-end"},
    {"blade-length", "blade, tip to tip", GIVES(Q_LENGTH, "mm", 20, 3000, "mm", "in", "blade-length"),
     "blade-on-crankshaft"},
    {"torque", "torque", Q_TORQUE, "N.m", 0.1, 500, "N.m", "ft-lb", NULL, 0, NULL, true, NULL}};

const struct spec_kind *spec_kinds(size_t *count)
{
  *count = sizeof kinds / sizeof kinds[0];
  return kinds;
}

const struct spec_kind *spec_kind_find(const char *id, const char **near)
{
  const char *ids[MOST_KINDS];
  size_t n = sizeof kinds / sizeof kinds[0];

  _Static_assert(sizeof kinds / sizeof kinds[0] <= MOST_KINDS, "more kinds than are looked through");
  for (size_t i = 0; i < n; i++) {
    ids[i] = kinds[i].id;
    if (strcmp(ids[i], id) == 0) return &kinds[i];
  }
  if (near) *near = text_nearest(id, ids, n);
  return NULL;
}

const struct spec_kind *spec_kind_of_check(const char *check)
{
  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
    if (kinds[i].check && strcmp(kinds[i].check, check) == 0) return &kinds[i];
  return NULL;
}
