/* judge.h - what a step costs in expectation, beside the best one.
 *
 * Regret of a step: expected minutes to the end when it is taken next, less those of the best
 * step, as things stand. A step within 2 % of the best is right: the estimates are no better.
 * No check or repair gives away more than it costs, since one may go on as if it had not been
 * made; figures of unlikely steps, which are not followed as far, are held to that. */
#ifndef PRACTICE_JUDGE_H
#define PRACTICE_JUDGE_H

#include "plan/policy.h"
#include "practice/run.h"

struct step_worth {
  double best, chosen, regret, better_minutes;
  bool right;
  struct advice_step better;
};

/* The right share: within so much of the best. */
extern const double judge_near;

/* Costs of the moves of a problem from a state, each (unnormalised) with the best play after
 * it, exactly where the limit of steps allows; true when it did. */
bool judge_moves(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *moves,
                 size_t count, long limit, double *cost);

/* Judges an entry against r->advice, which must be that of r->c. A check that was made before,
 * or that is not worth planning with, costs its minutes and saves nothing; a cover, its minutes
 * and what is expected with it off. */
void judge_entry(const struct run *r, const struct entry *entry, struct step_worth *out);

/* Advice for the case of the run, without what was tried already or cannot be done. */
void judge_advise(struct run *r, const bool *off, struct advice *out);

/* The same with less looking ahead: all moves one question ahead, the best of them and the
 * plainest followed for a bounded while. Only steps, minutes and costs are filled in; r->ahead is the best
 * of all moves before any was followed. */
void judge_quickly(struct run *r, const bool *off, struct advice *out);

#endif
