/* disturb.h - knowledge whose figures are wrong, to see what advice by the right ones is worth then. */
#ifndef TESTS_DISTURB_H
#define TESTS_DISTURB_H

#include <stdint.h>

#include "model/knowledge.h"

/* Multiplies the odds of every base rate, and of every sign and complaint of a fault, by a factor of
 * its own between 1 / by and by (even on a scale of ratios), the same for the same seed. by is 1 or
 * more. What a fault makes of one check adds to 0.98 at most, as before. */
void disturb(struct knowledge *k, double by, uint64_t seed);

#endif
