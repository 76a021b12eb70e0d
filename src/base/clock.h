/* clock.h - the one place where time comes from. */
#ifndef BASE_CLOCK_H
#define BASE_CLOCK_H

#include <stdint.h>

/* Seconds since 1970 UTC. PULLCORD_NOW in the environment (a whole number) takes its
 * place, so that tests and records can fix the time. */
int64_t clock_now(void);

/* "2026-11-25 10:04 UTC" into out (at least 24 bytes). */
void clock_text(int64_t at, char *out, unsigned long size);

#endif
