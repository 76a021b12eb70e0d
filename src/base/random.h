/* random.h - numbers that look random and are the same everywhere for one seed. */
#ifndef BASE_RANDOM_H
#define BASE_RANDOM_H

#include <stddef.h>
#include <stdint.h>

/* A stream; set state to the seed. SplitMix64 (Steele, Lea and Flood 2014; public domain
 * form, from memory). */
struct random { uint64_t state; };

uint64_t random_bits(struct random *r);
double random_unit(struct random *r); /* 0 <= x < 1, 53 bits */

/* One number for a seed and a name, whatever was drawn before: 0 <= x < 1. */
double random_fixed(uint64_t seed, const char *name);

/* Index drawn with the given chances, which add to 1 or less (the rest falls to the last). */
size_t random_pick(double share, const double *chance, size_t count);

#endif
