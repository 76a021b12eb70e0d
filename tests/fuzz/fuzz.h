/* fuzz.h - what every fuzzer has: one input, tried; and the small knowledge to try it on. */
#ifndef FUZZ_FUZZ_H
#define FUZZ_FUZZ_H

#include <stddef.h>
#include <stdint.h>

#include "knowledge/load.h"

/* Tries one input. Returns 0; ends the program when something is not as it must be. */
int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* The small knowledge of tests/hostile with the shipped templates and, when path is not NULL,
 * one more file that is to be known as `name`. */
void small_load(const char *name, const char *path, struct knowledge *k, struct problems *p);

/* The small knowledge alone, loaded once and kept. */
const struct knowledge *small_knowledge(void);

/* Ends the program (so that the fuzzer keeps the input) unless `good`. */
void must_hold(int good, const char *what);

#endif
