/* ahead.h - which check comes next, by Pullcord's look-ahead and by plainer habits.
 *
 * The look-ahead is that of plan/next.h: minutes saved on the way to a repaired machine over
 * minutes spent, one question ahead, one fault behind it at a time; but faults that one repair
 * puts right are one, and what may lie beside counts in what a check shows. The cost of
 * repairing in the order of chance over cost is summed by pairs: of two repairs the later one
 * pays for the earlier, and the order takes the cheaper way round, so that
 *   cost = sum of w c over all + sum of min(w c', w' c) over all pairs,
 * and a result changes only the pairs that it bears on (own arrangement of what plan/next.h
 * does by sorting). It is not the full plan of plan/advise.h, which follows every first step to the
 * end and takes some ten milliseconds. */
#ifndef SIMULATE_AHEAD_H
#define SIMULATE_AHEAD_H

#include "simulate/belief.h"

/* Pullcord's; the check with the fewest minutes; most information per minute; fuel, then spark,
 * then compression, then the rest, each from the fewest minutes up. None but the first is ever
 * followed elsewhere: they are there to be compared with. */
enum sim_policy { SIM_LOOK_AHEAD, SIM_CHEAPEST, SIM_INFORMATION, SIM_FIXED_ORDER };
enum { SIM_POLICIES = 4 };

enum { SIM_MOST_ACTIVE = 40 };

/* check -1: none. pays: some check saves more than it costs, by the look-ahead; else it is time
 * to repair, whatever the policy. minutes: of the check, covers included. */
struct sim_pick { int check; bool pays; double minutes, saving; };

/* Scratch of the look-ahead, one for all. */
struct sim_ahead;
struct sim_ahead *sim_ahead_new(const struct sim_book *b);
void sim_ahead_free(struct sim_ahead *a);

/* The check that the policy wants next. Every policy picks from the same checks: those that are
 * allowed, were not made, and bear on a fault with a thousandth of the weight or more (at most
 * SIM_MOST_ACTIVE faults). Equal ones: the first of the knowledge. */
struct sim_pick sim_choose(struct sim_ahead *a, const struct sim_belief *x, enum sim_policy policy);

/* What to put right first: the fault of the best chance over cost; -1 when a proof run comes
 * before all (it may be that nothing is behind it), -2 when there is nothing left. */
enum { SIM_PROVE = -1, SIM_NOTHING_LEFT = -2 };
int sim_repair_first(const struct sim_belief *x);

/* Minutes of putting this fault right as things are, covers included, parts left out. */
double sim_repair_minutes(const struct sim_belief *x, int fault);

const char *sim_policy_name(enum sim_policy policy);

#endif
