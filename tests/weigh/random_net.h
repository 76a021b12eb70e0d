/* random_net.h - networks by dice, the same ones for the same seed on every machine. */
#ifndef TESTS_RANDOM_NET_H
#define TESTS_RANDOM_NET_H

#include <stdint.h>

#include "weigh/net.h"

enum { RANDOM_MAX_FAULTS = 8, RANDOM_MAX_FINDINGS = 7 };

struct random_net {
  struct net net; /* points into the rest: do not copy */
  double prior[RANDOM_MAX_FAULTS], bias[RANDOM_MAX_FAULTS];
  struct net_finding findings[RANDOM_MAX_FINDINGS];
  struct net_link links[RANDOM_MAX_FINDINGS][RANDOM_MAX_FAULTS];
};

/* What the dice may give. */
struct random_style {
  int faults, findings; /* at most */
  double least;         /* smallest chance that is not 0, say 1e-3 */
  bool edges;           /* chances of exactly 0 and 1, priors of 0, evidence that says nothing */
};

uint64_t random_next(uint64_t *state);
double random_share(uint64_t *state);         /* 0 .. below 1 */
int random_below(uint64_t *state, int limit); /* 0 .. limit - 1 */

void random_make(struct random_net *out, uint64_t *state, const struct random_style *style);

#endif
