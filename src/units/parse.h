/* parse.h - readings as people type them, and as they are shown again. */
#ifndef UNITS_PARSE_H
#define UNITS_PARSE_H

#include <stddef.h>

#include "base/err.h"
#include "units/quantity.h"

/* A reading: value in unit, as typed, and the same in the base of the quantity. */
struct amount {
  double value;
  const struct unit *unit;
  double si;
};

/* Reads len bytes of text from outside ("62 psi", "0,76mm", "1 1/2 in", "8:1", "-4 inH2O")
 * into *out. The bytes may be anything; none behind len is looked at.
 *   expected  what it must measure; Q_NONE takes any quantity, its unit typed;
 *   fallback  the unit when none is typed, of the expected quantity; NULL: one must be typed.
 * "a:b" is a ratio, a divided by b, in the unit ":1". Where a name fits units of several
 * quantities (lbs, oz, K, M) the expected one decides.
 * Returns 0, or sets *e (out is then as it was) and returns EX_DATAERR: no number, no unit
 * or one not known, two units of one name (gal), another quantity than expected, or a value
 * that no bench sees; EX_SOFTWARE when expected and fallback do not go together. */
int amount_parse(const char *text, size_t len, enum quantity expected, const struct unit *fallback,
                 struct amount *out, struct err *e);

/* Reads a height above the sea, with its unit, as amount_parse does; how high it may be is for the
 * caller to say, as no bench sees such lengths. */
int height_parse(const char *text, size_t len, struct amount *out, struct err *e);

/* Writes si (in the base of the unit's quantity) in that unit to out, at most size bytes with
 * the end mark: "62 psi", "8:1", "12". As few digits as give the value back when six do,
 * otherwise four (whole numbers always in full); never an exponent; a point for decimals in
 * any locale. "?" stands for a value that is not finite. unit NULL: the bare number. */
void amount_format(double si, const struct unit *unit, char *out, size_t size);

/* Two readings of this quantity as an example, "62 psi or 430 kPa". */
const char *amount_example(enum quantity quantity);

#endif
