/* sizes.h - knowledge of another size than the shipped one, made from it.
 *
 * Smaller: the faults, checks and rules that stay are whole, with their signs, leads, base rates,
 * bands and repairs; a rule that names what is left out is left out too. Larger: faults and checks
 * come a second time under another id, with their signs. All else stays as it is, so a smaller
 * knowledge is still larger than one that was written at that size. */
#ifndef BENCH_SIZES_H
#define BENCH_SIZES_H

#include <stddef.h>

#include "model/knowledge.h"

/* Writes facts/ and rules/ with so many faults, checks and rules (at most: twice the shipped faults
 * and checks, all rules) under `folder`, which must be there. k is the shipped knowledge, loaded
 * from `source`. Returns non-zero, having said why, when a file cannot be read or written. */
int sizes_write(const struct knowledge *k, const char *source, const char *folder, size_t faults,
                size_t checks, size_t rules);

/* Removes everything that sizes_write wrote, and the folder. */
void sizes_remove(const char *source, const char *folder);

#endif
