/* unit_named.h - what the tests of units share. */
#ifndef UNIT_NAMED_H
#define UNIT_NAMED_H

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "units/quantity.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static inline const struct unit *unit(const char *name)
{
  const struct unit *u = unit_find(name, strlen(name));

  if (!u) fail_msg("no unit %s", name);
  return u;
}

#endif
