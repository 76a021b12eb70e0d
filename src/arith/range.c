/* range.c - see range.h. */
#include "arith/range.h"

#include <string.h>

#include "units/parse.h"

int arith_within(const char *what, double value, double low, double high, const char *unit, struct err *e)
{
  const struct unit *u = unit_find(unit, strlen(unit));
  double slack = 1e-12 * (high - low); /* the ends themselves are in */
  char is[64], from[64], to[64];

  if (value >= low - slack && value <= high + slack) return 0;
  amount_format(value, u, is, sizeof is);
  amount_format(low, u, from, sizeof from);
  amount_format(high, u, to, sizeof to);
  return err_set(e, EX_DATAERR, NULL, 0, "%s: %s is outside what this holds for, %s to %s.", what, is, from,
                 to);
}
