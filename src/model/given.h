/* given.h - figures that are told of the machine or of the day, and that no check asks for. */
#ifndef MODEL_GIVEN_H
#define MODEL_GIVEN_H

#include <stdbool.h>

#include "base/err.h"
#include "units/quantity.h"

/* The order is that of the list; rules know them by their ids. */
enum given_what {
  GIVEN_ALTITUDE,
  GIVEN_TEMPERATURE,
  GIVEN_PETROL_AGE,
  GIVEN_POLES,
  GIVEN_COMPRESSION_RATIO,
  GIVEN_BLADE_LENGTH,
  GIVEN_COUNT
};

/* One kind of them: id "altitude", what it is in words, its quantity and the name of the unit in
 * which values are kept, the lowest and highest that can be (in that unit; as the sums of arith
 * take them), the step to which they are kept, whether they must be even, and an example. */
struct given_kind {
  const char *id, *what;
  enum quantity quantity;
  const char *unit;
  double low, high, step;
  bool even;
  const char *example;
};

/* A value in the unit of its kind; told false: nothing is known. */
struct given { bool told; double value; };

const struct given_kind *given_kind(enum given_what what);

/* The kind with that id, or -1. *near (may be NULL) gets the nearest id, or NULL. */
int given_find(const char *id, const char **near);

/* Reads "1500 m" into *out. A bare number is in the unit of the kind, but for a height, whose
 * unit must be typed. EX_DATAERR when it is not understood or cannot be. */
int given_parse(enum given_what what, const char *text, struct given *out, struct err *e);

/* "1500 m" into out, always ended. */
void given_format(enum given_what what, double value, char *out, size_t size);

/* In the base of the quantity (K, m, s, 1). */
double given_si(enum given_what what, double value);

#endif
