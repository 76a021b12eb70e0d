/* situation.h - a case as a planner's problem: what may be wrong, what can be done about it
 * and what has to come off for that. All costs are minutes of shop time; parts count at the
 * shop rate. */
#ifndef PLAN_SITUATION_H
#define PLAN_SITUATION_H

#include "model/case.h"
#include "model/conclusions.h"
#include "plan/policy.h"
#include "plan/suspects.h"

/* Work that is no entry of the knowledge. */
enum { SITUATION_PROVE = -1, SITUATION_LOOK_FURTHER = -2 };

struct situation {
  const struct knowledge *k;
  const struct bench_case *c;
  const struct conclusions *drawn;
  struct suspects suspects;
  const int *fault_of;           /* of the casenet */
  struct plan_problem problem;   /* hypothesis i is suspects.set[i] */
  int repair[PLAN_MAX_REPAIRS];  /* knowledge repair of each, or SITUATION_... */
  int check[PLAN_MAX_QUESTIONS]; /* knowledge check of each, most promising first */
  int ask_first[PLAN_MAX_QUESTIONS]; /* rule that wants it made before a leading repair, or -1 */
  int cover[PLAN_MAX_COVERS];    /* knowledge cover of each */
  int *place;                    /* of each knowledge cover, -1 when the machine lacks it */
  double *over;                  /* minutes of covers there was no room for */
};

/* Builds the problem. belief[] is that of the casenet's faults; off[] (per knowledge cover, may
 * be NULL) tells which covers are off already. Left out: checks that were made, are ruled out,
 * unsafe or pointless, that this machine cannot have or whose tool the shop cannot have; and all
 * but the 30 that save most by themselves. Settings (minutes, with what is taken when they are not
 * there): turn-minutes 0 (added to every check: putting down and picking up), prove-sound 10,
 * look-further 120, destructive-check 15, give-up 20; worth-unknown 300. The knowledge, the
 * case, the conclusions and the casenet must outlive it. Free with situation_free. */
void situation_build(struct situation *s, struct casenet *n, const struct bench_case *c,
                     const struct conclusions *drawn, const double *belief, const bool *off);
void situation_free(struct situation *s);

/* The leading fault of a state (-1 not listed, -2 nothing broken) and its chance there. */
int situation_leading(const struct situation *s, const struct plan_state *state, double *chance);

/* The check that rules want made before this repair (index into check[]), or -1. */
int situation_held_by(const struct situation *s, const struct plan_state *state, int repair);

#endif
