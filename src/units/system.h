/* system.h - figures in metric or in US customary units. */
#ifndef UNITS_SYSTEM_H
#define UNITS_SYSTEM_H

#include <stddef.h>

#include "units/quantity.h"

enum unit_system { UNITS_AS_WRITTEN, UNITS_METRIC, UNITS_US };

/* The unit to show a figure in that was written in `written`: that one where it is of the system
 * already (thou need no turning into inches), else `usual`, which is one of the system. */
const struct unit *unit_in_system(const struct unit *written, const struct unit *usual, enum unit_system system);

/* Writes si (in the base of the unit's quantity) in that unit to out with three digits that count
 * (four where it begins with 1; inches to 0.0001), as bench figures have: "0.762 mm", "20.3 N.m". Always ended. */
void unit_round(double si, const struct unit *unit, char *out, size_t size);

#endif
