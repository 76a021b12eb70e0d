/* quantity.h - what can be measured at the bench, in which units, and how they convert. */
#ifndef UNITS_QUANTITY_H
#define UNITS_QUANTITY_H

#include <stdbool.h>
#include <stddef.h>

/* Base of each, in which struct unit's factor is given: pressure Pa (gauge and absolute
 * alike: the zero is the instrument's), length m, resistance ohm, voltage V, current A,
 * temperature K, speed rad/s (of turning; typed in rpm), frequency Hz, volume m3, torque
 * N.m, time s, ratio 1, mass kg, flow m3/s, angle rad. Q_COUNT is how many there are. */
enum quantity {
  Q_NONE,
  Q_PRESSURE,
  Q_LENGTH,
  Q_RESISTANCE,
  Q_VOLTAGE,
  Q_CURRENT,
  Q_TEMPERATURE,
  Q_SPEED,
  Q_FREQUENCY,
  Q_VOLUME,
  Q_TORQUE,
  Q_TIME,
  Q_RATIO,
  Q_MASS,
  Q_FLOW,
  Q_ANGLE,
  Q_COUNT
};

/* One unit: value in the base = typed * factor + offset. basis says whether the factor is
 * exact and where it is from; also ends with NULL and holds the other spellings. In names,
 * spaces, points, hyphens, stars, carets and round brackets do not count. */
struct unit {
  const char *name;
  enum quantity quantity;
  double factor;
  double offset;
  const char *basis;
  const char *const *also;
};

/* The whole table, in the order in which it is documented; *count gets its length. */
const struct unit *unit_table(size_t *count);

/* The unit spelt so in len bytes of any text (bad bytes and NULs are simply not found), or
 * NULL. The right case is tried first, then any case; only where the case of the first
 * letter parts milli from mega (mV, mA, mohm, Mohm, MPa) it must be right. Names of more
 * than one unit (gal, fl oz) are not found. A name of two quantities (lbs, oz) gives the
 * mass: use unit_spelt where the quantity is known. */
const struct unit *unit_find(const char *name, size_t len);

/* The unit of this quantity (Q_NONE: of any) whose name or other spelling is `key`, as made
 * by spell_key, or NULL. Case as for unit_find. */
const struct unit *unit_spelt(const char *key, enum quantity quantity);

/* As unit_spelt, for text whose only mistake may be the case of the first letter. */
const struct unit *unit_but_for_case(const char *key, enum quantity quantity);

/* Is `key` a name that two units of this quantity (Q_NONE: of any) share? If so *one and
 * *two get them. */
bool unit_twofold(const char *key, enum quantity quantity, const struct unit **one,
                  const struct unit **two);

/* The spelling of a unit of this quantity (Q_NONE: of any) nearest to `key`, or NULL when
 * none is near. A static text. */
const char *unit_nearest(const char *key, enum quantity quantity);

/* value, given in `from`, in `to`. NaN when either is NULL or they measure different
 * things. Exact when from and to are the same. */
double unit_convert(double value, const struct unit *from, const struct unit *to);

/* "pressure", "length", ...; "none" for Q_NONE and for anything that is no quantity. */
const char *quantity_name(enum quantity quantity);

/* The quantity of that name in just these letters; Q_COUNT when there is none or name is
 * NULL. */
enum quantity quantity_by_name(const char *name);

#endif
