/* bounds.h - belief between two limits, where there is too much to weigh exactly.
 *
 * Source: best-first hypotheses with bounds (Henrion 1991, read in summary) joined with the
 * exact programme on some of the findings (own combination; docs/how-it-weighs.md). The
 * limits always hold the exact value. */
#ifndef WEIGH_BOUNDS_H
#define WEIGH_BOUNDS_H

#include "weigh/net.h"

/* Limits of the chance of each fault, into low[] and high[] (fault_count each). Works for
 * any net; meant for those that net_solve refuses. False when the findings are
 * impossible. */
bool net_bounds(const struct net *net, double *low, double *high);

#endif
