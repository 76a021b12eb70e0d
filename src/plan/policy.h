/* policy.h - ways of choosing the next move, from plain to exact.
 *
 * All costs are unnormalised (see problem.h). Sources: chance over cost and the one-question
 * look-ahead: Heckerman, Breese and Rommelse 1995; the order under covers: Horn 1972 and
 * Sidney 1975 for jobs on an out-tree, each from memory; following a plain policy to the end
 * to judge each first move: Bertsekas, Tsitsiklis and Wu 1997 (rollout), from memory. */
#ifndef PLAN_POLICY_H
#define PLAN_POLICY_H

#include <limits.h>

#include "plan/memo.h"
#include "plan/problem.h"

/* A state's value under some policy. */
typedef double plan_value(void *with, const struct plan_state *s);

/* Cost of a move from s, then `next` of each state it leads to. Stops early, returning
 * something not below cut, once the sum reaches cut. */
double plan_move_value(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m,
                       plan_value *next, void *with, double cut);

/* The moves that make sense in s: repairs that may help, one by one; the visit of `base` when
 * it holds several; questions (those in the mask) that may turn out more than one way; giving
 * up. Returns how many, at most PLAN_MAX_MOVES. */
enum { PLAN_MAX_MOVES = PLAN_MAX_REPAIRS + PLAN_MAX_QUESTIONS + 2 };
size_t plan_moves(const struct plan_problem *p, const struct plan_state *s, uint32_t questions,
                  const struct plan_move *base, struct plan_move *out);

/* Chance over cost, updated after every repair, no questions, giving up where that is cheapest.
 * folded: the covers of a repair count as part of its own cost. base: repairs behind the same
 * covers share them, worked out from the innermost cover outwards; optimal for independent
 * repairs under a tree of covers. *first (may be NULL) is the first move. */
double plan_folded(const struct plan_problem *p, const struct plan_state *s, struct plan_move *first);
double plan_base(const struct plan_problem *p, const struct plan_state *s, struct plan_move *first);

/* A planner remembers what it worked out for one problem. */
struct planner {
  const struct plan_problem *p;
  struct memo memo;
  uint32_t questions; /* that are looked at; all of them at the start */
  double small;       /* states of less weight are finished with the base policy */
  long steps, limit;  /* base policies worked out so far, and how many may be */
  bool spent;         /* the limit was reached: figures since then mean nothing */
};

enum { PLAN_TO_THE_END = 1000 };
#define PLAN_NO_LIMIT LONG_MAX

void planner_open(struct planner *x, const struct plan_problem *p, long limit);
void planner_close(struct planner *x);

/* One question ahead: the best of the base policy and of each question followed by it. */
double plan_look(struct planner *x, const struct plan_state *s, struct plan_move *move);

/* Exact cost of following plan_look for `depth` moves and then the base policy. */
double plan_follow(struct planner *x, const struct plan_state *s, int depth);

/* Rollout: the move whose cost with plan_follow after it is lowest. Never dearer than
 * plan_follow to the same depth + 1; with PLAN_TO_THE_END, never dearer than plan_look's
 * policy. */
double plan_step(struct planner *x, const struct plan_state *s, int depth, struct plan_move *move);

/* Cost of this move and then of plan_follow to that depth. */
double plan_step_move(struct planner *x, const struct plan_state *s, const struct plan_move *m, int depth);

/* Exact cost of following plan_step (to the end) move by move. */
double plan_step_follow(struct planner *x, const struct plan_state *s);

/* The least possible cost, by dynamic programming over everything that may happen. False when
 * it takes more than the planner's limit of steps (here: moves weighed). */
bool plan_exact(struct planner *x, const struct plan_state *s, double *value, struct plan_move *move);

/* The least possible cost of starting with this move; as plan_exact. */
bool plan_exact_move(struct planner *x, const struct plan_state *s, const struct plan_move *m, double *value);

/* A floor under every policy: the cost if the truth were told at the start. */
double plan_floor(const struct plan_problem *p, const struct plan_state *s);

/* How far from certain it is which hypothesis holds, and how much of that an answer to the
 * question is expected to take away: in bits, times the weight of the state. Source: entropy
 * and mutual information (Shannon 1948, from memory). */
double plan_disorder(const struct plan_problem *p, const struct plan_state *s);
double plan_information(const struct plan_problem *p, const struct plan_state *s, int question);

/* For comparison only, never to be followed: the question with most information for its cost
 * until one hypothesis has more than `sure` of the weight, then plan_folded. */
double plan_most_information(const struct plan_problem *p, const struct plan_state *s, double sure);

#endif
