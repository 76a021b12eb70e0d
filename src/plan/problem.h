/* problem.h - the planner's problem in plain numbers: what may be wrong, what can be done.
 *
 * Hypotheses carry weights that need not add to 1. Every expected cost here is unnormalised:
 * it is the cost times the weight of the state it starts from, so that nothing is divided
 * while planning. Source: the Bellman equation with weights carried along (methods: own; the
 * model after Heckerman, Breese and Rommelse 1995, from memory).
 *
 * A repair is tried at once unless it is part of a visit: a visit is a group of repairs made
 * one after another behind the same covers and tried once, at its end. */
#ifndef PLAN_PROBLEM_H
#define PLAN_PROBLEM_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "base/mem.h"

enum {
  PLAN_MAX_HYPOTHESES = 64, PLAN_MAX_REPAIRS = 64, PLAN_MAX_QUESTIONS = 32,
  PLAN_MAX_COVERS = 64, PLAN_MAX_OUTCOMES = 8, PLAN_MAX_VISIT = 6
};

/* What a repair does when `hypothesis` holds: with chance clears the machine is right, with
 * chance moves it is left with hypothesis `to`; clears + moves at most 1. credit is the share
 * of the hypothesis that the repair counts for when repairs are put in order; it must be
 * above 0 for a repair to be thought of at all. */
struct plan_effect { int hypothesis, to; double clears, moves, credit; };

/* The same seen from the hypothesis: chance that the repair clears or moves it. */
struct plan_touch { int repair; double clears, chance; };

/* cost: to take it off and to put it back on, paid when it comes off. shut_to_run: it must be
 * on when the engine is run (a try runs it), and so comes off anew afterwards. */
struct plan_cover { int under; double cost; bool shut_to_run; };

/* on_success: paid besides when it clears (an inspection that finds the part bad). */
struct plan_repair {
  double cost, on_success;
  uint64_t covers; /* that must be off, those above them included */
  struct plan_effect *effects;
  size_t effect_count, effect_room;
};

/* chance[outcome * hypotheses + h]; over the outcomes they add to 1 for each h. */
struct plan_question {
  double cost;
  bool runs; /* the engine must run: covers that it does not need itself go back on first */
  uint64_t covers;
  int outcomes;
  double *chance;
};

struct plan_problem {
  size_t hypotheses, repair_count, question_count, cover_count;
  double weight[PLAN_MAX_HYPOTHESES];
  struct plan_repair repairs[PLAN_MAX_REPAIRS];
  struct plan_question questions[PLAN_MAX_QUESTIONS];
  struct plan_cover covers[PLAN_MAX_COVERS];
  double give_up;  /* cost of giving up; a large figure when that is not on offer */
  uint64_t open;   /* covers that are off at the start */
  bool order_once; /* put repairs in order once per state instead of after every repair:
                      quicker; the cost of the order is exact all the same */
  double trifle;   /* repairs that count for less than this share of the weight are left out of
                      the order: quicker, a little dear; 0: none */
  bool commute;    /* repairs that move hypotheses come to the same in any order */
  /* filled by plan_ready */
  uint64_t path[PLAN_MAX_COVERS]; /* each cover with those above it */
  uint64_t shut;                  /* covers that go back on to run */
  bool overlap, moving;           /* some hypothesis is touched by two repairs; some moves */
  struct plan_touch *touches;     /* of hypothesis h: touches[touched[h]] .. [touched[h + 1] - 1] */
  size_t touched[PLAN_MAX_HYPOTHESES + 1];
};

/* Where the job stands. results: outcome + 1 of each question made, 4 bits each; 15 when the
 * question is set aside. */
struct plan_state {
  double w[PLAN_MAX_HYPOTHESES];
  uint64_t done, open, results[2];
  uint32_t asked;
};

/* Two states with one key are the same state. */
struct plan_key { uint64_t done, open, results[2], order; };

enum plan_kind { PLAN_GIVE_UP, PLAN_REPAIR, PLAN_ASK };

/* at: the repair that comes first, or the question. visit: the repairs made before the try, in
 * their order, visit[0] being at. */
struct plan_move { enum plan_kind kind; int at, count; signed char visit[PLAN_MAX_VISIT]; };

/* An empty problem of so many hypotheses, all of weight 0. Free with plan_free. */
void plan_begin(struct plan_problem *p, size_t hypotheses);
void plan_free(struct plan_problem *p);

/* Each returns the index of what was added, or -1 when there is no room. A cover's `under`
 * is an earlier cover or -1. covers: what must be off (those above are added by plan_ready).
 * The chances of a question are the caller's to fill, its questions[i].chance zeroed. */
int plan_add_cover(struct plan_problem *p, int under, double cost, bool shut_to_run);
int plan_add_repair(struct plan_problem *p, double cost, uint64_t covers);
int plan_add_question(struct plan_problem *p, double cost, uint64_t covers, int outcomes);

/* A repair that clears a hypothesis with this chance and otherwise changes nothing. */
void plan_clears(struct plan_problem *p, int repair, int hypothesis, double chance);
void plan_effect(struct plan_problem *p, int repair, struct plan_effect e);

/* Completes the problem; again whenever covers, repairs or effects were added. */
void plan_ready(struct plan_problem *p);

/* The covers with all those above them. */
uint64_t plan_with_paths(const struct plan_problem *p, uint64_t covers);

void plan_start(const struct plan_problem *p, struct plan_state *s);

/* The weight of everything still possible. */
double plan_weight(const struct plan_problem *p, const struct plan_state *s);

/* Cost of the covers in `needed` that are still on. */
double plan_opening(const struct plan_problem *p, uint64_t needed, uint64_t open);

struct plan_move plan_giving_up(void);
struct plan_move plan_asking(int question);
struct plan_move plan_repairing(int repair); /* and trying at once */

/* Makes the repairs of a move and tries the machine: *to is the state when it is still not
 * right. Returns the unnormalised cost. */
double plan_make(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m,
                 struct plan_state *to);

/* Cost of a question here, covers included (for one unit of weight). */
double plan_question_cost(const struct plan_problem *p, const struct plan_state *s,
                          const struct plan_question *q);

/* *to is the state after this outcome of question q. Returns its weight. */
double plan_outcome(const struct plan_problem *p, const struct plan_state *s, int q, int outcome,
                    struct plan_state *to);

/* Never ask this question: what the job costs without it. */
void plan_set_aside(struct plan_state *s, int q);

struct plan_key plan_key_of(const struct plan_problem *p, const struct plan_state *s);

/* Unnormalised cost of making these repairs in this order, each tried at once, giving up at
 * the end if need be. */
double plan_sequence(const struct plan_problem *p, const struct plan_state *s, const int *repairs,
                     size_t count);

#endif
