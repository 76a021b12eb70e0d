/* one_cause.h - small helpers of the tests that put published networks through net_solve. */
#ifndef TESTS_ONE_CAUSE_H
#define TESTS_ONE_CAUSE_H

#include "weigh/net.h"

/* Fails the running test when got is further from want than by. */
void near_by(double got, double want, double by, const char *what);

double decibans(double p);

/* A yes-or-no finding of fault 0 from its two chances of "yes": there is one leak and one
 * link that give just these, as long as the fault makes it more likely. */
void one_cause(struct net_finding *f, struct net_link *l, double with, double without, bool yes);

/* Belief in one cause with this prior after findings that follow from it alone; chance (may
 * be NULL) is that of the findings. */
double believe(double prior, const struct net_finding *findings, size_t count, double *chance);

/* The same after one thing seen that has these chances with the cause and without it,
 * whichever of the two is larger. */
double believe_one(double prior, double with, double without, double *chance);

#endif
