/* check_plan.h - small helpers of the planner's tests. */
#ifndef CHECK_PLAN_H
#define CHECK_PLAN_H

#include "plan/policy.h"

/* Fails the running test when got is further than 1e-9 from want. */
void near(double got, double want, const char *what);

/* The same, relative to the larger. */
void close_to(double got, double want, double relative, const char *what);

/* A problem of perfect repairs: hypothesis i is cleared by repair i alone. Giving up is not on
 * offer (1e6). plan_ready is left to the caller. */
void perfect(struct plan_problem *p, size_t count, const double *weight, const double *cost);

/* A yes/no question: yes[h] is the chance of its first outcome. */
int yes_no(struct plan_problem *p, double cost, const double *yes);

/* Exact cost from the start, and of starting with one move. */
double exact(const struct plan_problem *p);
double exact_with(const struct plan_problem *p, struct plan_move m);

/* Exact cost of following plan_base to the end; order (may be NULL) gets the repairs as
 * letters from 'a', and a full stop after every try when tries is true. */
double follow_base(const struct plan_problem *p, const struct plan_state *s, char *order, bool tries);

#endif
