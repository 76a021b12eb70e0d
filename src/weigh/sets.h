/* sets.h - the most probable sets of faults.
 *
 * A search, not a proof: from nothing upwards, sets are grown by the faults that are most
 * believed, and the best of each size are kept. The weight of every set that is returned is
 * exact, by the definition; that no better one was missed is checked against an independent
 * solver in the tests. */
#ifndef WEIGH_SETS_H
#define WEIGH_SETS_H

#include "weigh/net.h"

enum { SETS_MOST_FAULTS = 6 };

struct fault_set {
  int fault[SETS_MOST_FAULTS]; /* rising */
  size_t count;
  double log_joint; /* natural logarithm of the joint chance with the findings */
};

/* Fills out[] (room for most) with the best sets, best first, and returns how many.
 * candidates are the faults to build from, count of them (30 is plenty), in any order;
 * beam is how many sets of each size are kept and grown (100 is plenty). */
size_t net_best_sets(const struct net *net, const int *candidates, size_t count, size_t beam,
                     struct fault_set *out, size_t most);

#endif
