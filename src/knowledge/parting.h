/* parting.h - which checks tell two faults apart, on a machine that can have both.
 *
 * The distance of two faults at a check is the total variation distance of the results
 * that a machine with the one fault and a machine with the other would show, each beside
 * what shows anyway (Levin, Peres and Wilmer, Markov Chains and Mixing Times, 4.1, from
 * memory): 0 when the results say nothing, 1 when one result settles it. */
#ifndef KNOWLEDGE_PARTING_H
#define KNOWLEDGE_PARTING_H

#include <stdbool.h>
#include <stddef.h>

#include "model/knowledge.h"

/* From this distance on a check parts two faults: of ten machines with each, the result
 * comes out differently on at least three. */
#define PARTING_LEAST 0.3

struct parting;

/* Lays out the signs by fault. k must outlive it, its references resolved. */
struct parting *parting_open(const struct knowledge *k);
void parting_close(struct parting *t);

/* Can a machine of this class have all features of these lists at once? */
bool parting_fits(const struct parting *t, int machine_class, const struct refs *const *needs, size_t count);

/* Can a machine of any class? */
bool parting_common(const struct parting *t, const struct refs *const *needs, size_t count);

/* Distance of faults a and b at a check, 0 to 1. */
double parting_distance(const struct parting *t, int check, int a, int b);

/* Two faults that one machine can have, and the check that parts them best on such a
 * machine (-1 and 0 when none does). */
struct parted { int a, b, check; double distance; };

/* All such pairs, the least parted first. The caller frees *out. */
void parting_pairs(const struct parting *t, struct parted **out, size_t *count);

/* Ambiguity groups: group[f] becomes the lowest fault of the group that fault f belongs
 * to, or -1 where every other fault is parted from it. group has fault_count members. */
void parting_groups(const struct parted *pairs, size_t count, size_t fault_count, int *group);

#endif
