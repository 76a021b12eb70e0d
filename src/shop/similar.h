/* similar.h - past jobs that were like this one. */
#ifndef SHOP_SIMILAR_H
#define SHOP_SIMILAR_H

#include "shop/learn.h"

/* A past job (index into the outcomes), how many checks made in both gave the same result and
 * how many did not, and its likeness. */
struct similar { size_t job; int same, other; double likeness; };

/* Past jobs of the same class with the same complaint, most alike first; of equals the latest,
 * then by id. Fills out (room for `most`) and returns how many. Likeness, from 0 to 1, is the
 * share of equal results among the checks made in both, one equal and one unequal being
 * counted beforehand: (same + 1) / (same + other + 2). Half is "nothing compared". */
size_t similar_jobs(const struct outcome *now, const struct outcomes *past, struct similar *out, size_t most);

#endif
