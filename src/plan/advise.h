/* advise.h - what to do next on this machine, and what it is expected to cost.
 *
 * Checks, trial repairs and giving up compete on one scale: expected minutes of shop time until
 * the machine is right (parts at the shop rate), covers included. Source of the method:
 * policy.h. The work is bounded by counting, never by the clock, so that the same case always
 * gets the same advice. */
#ifndef PLAN_ADVISE_H
#define PLAN_ADVISE_H

#include "model/case.h"
#include "model/conclusions.h"
#include "weigh/casenet.h"

/* PROVE: run it as the owner does, nothing being changed. LOOK_FURTHER: strip and look for
 * something that is not listed. */
enum advice_kind { ADVICE_CHECK, ADVICE_REPAIR, ADVICE_PROVE, ADVICE_LOOK_FURTHER, ADVICE_GIVE_UP };

/* How the costs were worked out: the least possible; following the look-ahead from every move;
 * one question ahead. */
enum advice_method { ADVICE_EXACT, ADVICE_ROLLOUT, ADVICE_LOOK_AHEAD };

/* at: the check or repair; -1 for the other kinds. */
struct advice_step { enum advice_kind kind; int at; };

/* What a result of a check leads to. fault: the leading fault then (-1 not listed, -2 nothing
 * broken) and its chance; cost: expected minutes still to come. */
struct advice_result {
  int result, fault;
  double chance, belief, cost;
  struct advice_step next;
};

enum { ADVICE_ALSO = 5, ADVICE_STEPS = 6, ADVICE_BESIDE = 5 };

struct advice_option {
  struct advice_step step;
  double minutes;    /* of its own now: covers that must still come off (and go on again), parts */
  double cost;       /* expected minutes to the end when this is done next */
  double without;    /* when the best other is done next; the first two, when checks: when it is
                        never made */
  double break_even; /* minutes of its own up to which it would pay */
  double chance;     /* a repair: that the machine is right after it; a check: 0 */
  int also[ADVICE_ALSO]; /* a repair: other repairs made behind the same covers before it is tried */
  size_t also_count;
  int ask_first;     /* a check: rule that wants it made before a leading repair, or -1 */
  int held_by;       /* a repair: check that rules want made first, or -1 */
  struct advice_result results[NET_MAX_GRADES]; /* of a check */
  size_t result_count;
};

/* One step of the plan. result: the likeliest one of a check, which the plan goes on from (a
 * repair: -1, it goes on from the machine not being right yet). tried: a repair is tried before
 * the next step. chance: that the job comes to it. */
struct advice_planned { struct advice_step step; int result; bool tried; double chance, minutes; };

/* A check that is nearly free while covers are off. alone: its minutes at another time. */
struct advice_beside { int check; double minutes, alone, saving; };

struct advice {
  struct advice_option *options; /* best first; a check that is wanted first goes before */
  size_t count;
  double cost;         /* expected minutes to the end by this advice */
  double no_checks;    /* the same with no further check at all */
  bool stop_checking;  /* no check pays for itself now */
  bool give_up;        /* giving up is the cheapest: tell the owner */
  double give_up_cost;
  struct advice_planned plan[ADVICE_STEPS];
  size_t plan_count;
  struct advice_beside beside[ADVICE_BESIDE];
  size_t beside_count;
  enum advice_method method;
  long steps; /* plans worked out on the way */
};

/* Advice for a case. belief[] is that of the casenet's faults; off[] (one per cover of the
 * knowledge, or NULL) tells which covers are off now. What is left out of the checks: see
 * situation.h. Costs that were not followed far (unlikely first moves) may be a little high. The
 * refit of covers that are off already is the same whatever is done and is left out. Takes about
 * 10 ms, at most 50, at 250 faults and 260 checks (tests/bench/bench_plan.c). Fills *out; free
 * with advice_free. */
void plan_advise(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
                 const double *belief, const bool *off, struct advice *out);

void advice_free(struct advice *a);

/* "exact", "rollout", "look-ahead". */
const char *advice_method_name(enum advice_method m);

#endif
