/* reading.h - a number that an instrument would show where the model says which band. */
#ifndef PRACTICE_READING_H
#define PRACTICE_READING_H

#include <stdint.h>

#include "model/case.h"

/* The bands that a reading of this check is judged by on this machine: of those that fit, the most
 * particular. NULL when none does. */
const struct bands *reading_bands(const struct knowledge *k, const struct bench_case *machine, int check);

/* Draws a reading for r->result of r->check on this machine into r->value, in the unit of the
 * check: somewhere inside the band that stands for the result, by the most particular bands
 * that fit, and then off by the instrument's error (normal, one tolerance; Box and Muller
 * 1958). The same for the same seed and result. False, *r untouched, when the check is not
 * measured or no bands fit. */
bool reading_draw(const struct knowledge *k, const struct bench_case *machine, uint64_t seed,
                  struct case_result *r);

#endif
