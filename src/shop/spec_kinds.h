/* spec_kinds.h - the kinds of figures that a spec card can hold: the one table of them. */
#ifndef SHOP_SPEC_KINDS_H
#define SHOP_SPEC_KINDS_H

#include <stdbool.h>
#include <stddef.h>

#include "units/quantity.h"

/* One kind. quantity Q_NONE: words (an oil grade). unit: in which low and high are given, what such
 * a figure can be at the very least and most (the author's estimate, wide: to catch a wrong unit or
 * a lost point). metric and us: the units of either system, NULL where both use what is written.
 * check: the id of the check whose readings it judges, or NULL; give: how far a reading may lie from
 * a figure without a range, as a share of it (estimate). given: the id of what it is taken for
 * (model/given.h), or NULL. many: several of it, each saying what of. need: the id of the feature
 * without which a machine has no such figure, or NULL. */
struct spec_kind {
  const char *id, *label;
  enum quantity quantity;
  const char *unit;
  double low, high;
  const char *metric, *us, *check;
  double give;
  const char *given;
  bool many;
  const char *need;
};

/* All of them in the order in which cards show them; *count gets how many. */
const struct spec_kind *spec_kinds(size_t *count);

/* The kind with that id, or NULL; *near (may be NULL) gets the nearest id, or NULL. */
const struct spec_kind *spec_kind_find(const char *id, const char **near);

/* The kind whose figure judges that check, or NULL. */
const struct spec_kind *spec_kind_of_check(const char *check);

#endif
