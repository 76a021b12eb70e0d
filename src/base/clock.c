/* clock.c - see clock.h. */
#include "base/clock.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

int64_t clock_now(void)
{
  const char *fixed = getenv("PULLCORD_NOW");

  if (fixed && *fixed) {
    char *end;
    long long at = strtoll(fixed, &end, 10);

    if (*end == '\0' && at >= 0) return at;
  }
  return (int64_t)time(NULL);
}

void clock_text(int64_t at, char *out, unsigned long size)
{
  time_t t = (time_t)at;
  struct tm parts;

  if (!gmtime_r(&t, &parts) || strftime(out, size, "%Y-%m-%d %H:%M UTC", &parts) == 0) snprintf(out, size, "?");
}
