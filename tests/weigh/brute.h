/* brute.h - beliefs by going through every set of faults, for small networks.
 *
 * Written from the definitions in weigh/net.h and from nothing in net.c: the grade of a
 * finding is the highest of independent draws, one from the leak and one from each fault
 * that is there, and every draw is gone through. In long double. */
#ifndef TESTS_BRUTE_H
#define TESTS_BRUTE_H

#include "weigh/net.h"

enum { BRUTE_MAX_FAULTS = 16 };

struct brute {
  long double chance; /* of the findings, with the biases as factors; 0: impossible */
  long double belief[BRUTE_MAX_FAULTS], blame[BRUTE_MAX_FAULTS];
  unsigned best;           /* the most probable set, one bit for each fault */
  long double best_chance; /* joint with the findings */
};

void brute_solve(const struct net *net, struct brute *out);

/* Joint chance of the findings and of exactly these faults. */
long double brute_joint(const struct net *net, unsigned set);

/* Chance of what was seen of one finding given exactly these faults. */
long double brute_seen(const struct net_finding *f, unsigned set);

/* Chance of each grade of a finding given exactly these faults. */
void brute_grades(const struct net_finding *f, unsigned set, long double *out);

#endif
