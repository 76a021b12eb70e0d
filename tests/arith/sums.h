/* sums.h - what the tests of the sums share. */
#ifndef TESTS_ARITH_SUMS_H
#define TESTS_ARITH_SUMS_H

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

#include "base/err.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

#define PSI 6894.757293168361
#define INCH 0.0254
#define FOOT 0.3048
#define CELSIUS 273.15
#define US_GALLON 3.785411784e-3
#define RPM (3.14159265358979323846 / 30)
#define STANDARD ((double)NAN) /* the temperature of the standard atmosphere */
#define MISSING ((double)NAN)

/* Is `got` within `off` of `want`? Fails with both where not. */
#define NEAR(got, want, off)                                                                                 \
  do {                                                                                                       \
    double got_ = (got), want_ = (want);                                                                     \
    if (!(fabs(got_ - want_) <= (off)))                                                                      \
      fail_msg("line %d: %s is %.8g, not %.8g", __LINE__, #got, got_, want_);                                \
  } while (0)

/* The call must succeed. */
#define GOES(call)                                                                                           \
  do {                                                                                                       \
    e = (struct err){0};                                                                                     \
    if ((call) != 0) fail_msg("line %d: %s: %s", __LINE__, #call, e.text);                                   \
  } while (0)

/* The call must be refused as wrong data, with `part` in its message. */
#define REFUSED(call, part)                                                                                  \
  do {                                                                                                       \
    e = (struct err){0};                                                                                     \
    if ((call) != EX_DATAERR || e.status != EX_DATAERR || !strstr(e.text, part))                             \
      fail_msg("line %d: %s was not refused with \"%s\" but: %s", __LINE__, #call, part, e.text);            \
  } while (0)

#endif
