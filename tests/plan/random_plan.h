/* random_plan.h - seeded random problems for the tests and the benchmark of the planner. */
#ifndef RANDOM_PLAN_H
#define RANDOM_PLAN_H

#include <stdint.h>

#include "plan/problem.h"

struct chance_source { uint64_t state; };

double chance_between(struct chance_source *c, double low, double high);
int chance_below(struct chance_source *c, int n); /* 0 .. n - 1 */

/* The four settings of the experiment and a fifth, in which covers go back on before every
 * try: 8 faults with skewed priors, 8 repairs (10 when they overlap) with costs log-uniform
 * 5-200, 4 noisy yes/no questions of cost 2-40, 3 covers of 5-60, giving up for 300-800. The
 * same seed always gives the same problem. */
enum plan_setting { SETTING_COVERS, SETTING_QUESTIONS, SETTING_BOTH, SETTING_OVERLAP, SETTING_SHUT,
                    SETTING_COUNT };
extern const char *const setting_names[SETTING_COUNT];
void random_plan(struct plan_problem *p, enum plan_setting setting, uint64_t seed);

/* Independent perfect repairs under a random tree of up to six covers, no questions. */
void random_tree(struct plan_problem *p, uint64_t seed);

#endif
