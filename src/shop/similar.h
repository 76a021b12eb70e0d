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

/* How the past jobs of the same class with the same complaint ended: how many there are, how
 * many by each ending (places of job_ending), and what was proved to be behind them: the most
 * frequent first; of equals the first in the knowledge. */
enum { SIMILAR_ENDINGS = 4, SIMILAR_CAUSES = 3 };
struct similar_cause { int fault; size_t times; };
struct similar_sum {
  size_t jobs, endings[SIMILAR_ENDINGS], proved;
  struct similar_cause causes[SIMILAR_CAUSES];
  size_t cause_count;
};
void similar_sum(const struct knowledge *k, const struct outcome *now, const struct outcomes *past,
                 struct similar_sum *out);

#endif
