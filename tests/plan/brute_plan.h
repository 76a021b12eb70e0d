/* brute_plan.h - least costs by trying everything, written apart from src/plan: chances that
 * add to 1, no memory of states, no bounds. Only for very small problems. */
#ifndef BRUTE_PLAN_H
#define BRUTE_PLAN_H

#include "plan/problem.h"

/* The least expected cost from the start, for weights that add to 1. */
double brute_least(const struct plan_problem *p);

/* The least cost of perfect independent repairs under covers, no questions, covers that may
 * stay off: by dynamic programming over sets of repairs made. */
double brute_covers(const struct plan_problem *p);

#endif
