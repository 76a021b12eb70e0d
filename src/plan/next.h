/* next.h - which check is worth its minutes now.
 *
 * Every check is weighed by what it saves on the way to a repaired machine: the expected
 * cost of repairing in the best plain order (chance over cost), as things are, less the
 * same after each result it may give; one cause is held to be behind the trouble at a time.
 * Source: Heckerman, Breese and Rommelse 1995 (from
 * memory), one question ahead; see docs/how-it-weighs.md for what that leaves out. */
#ifndef PLAN_NEXT_H
#define PLAN_NEXT_H

#include "model/case.h"
#include "model/conclusions.h"
#include "weigh/casenet.h"

/* What a result of the check would lead to. */
struct next_outcome {
  int result;
  double chance; /* of this result, as things are */
  int fault;     /* leading fault then (-1 not listed, -2 nothing broken) and its chance */
  double belief;
};

struct next_step {
  int check;
  double minutes; /* of the check, with the covers that must come off and go on again */
  double saving;  /* expected minutes saved later, before its own minutes are taken off */
  double to_end;  /* minutes that the whole job is expected to take when this is done next */
  double per_minute; /* saving over its minutes and those of turning to it (turn-minutes) */
  int ask_first;  /* rule that wants it made before a repair, or -1 */
  struct next_outcome outcomes[NET_MAX_GRADES];
  int outcome_count;
};

struct next_plan {
  double cost_now; /* expected minutes to a repaired machine without another check */
  struct next_step *steps; /* best first; only checks that save more than they cost */
  size_t count, room;
  int repair_first; /* fault whose repair comes first in the plain order, or -1 */
};

enum { NEXT_NOT_LISTED = -1, NEXT_NOTHING_BROKEN = -2 };

/* Minutes for a check or repair: its own and the covers' (each once, off and on); covers
 * that the machine lacks, or that are off already, cost nothing. */
double plan_minutes(const struct knowledge *k, const struct bench_case *c, double own,
                    const struct refs *off);

/* Fills *out (free with next_free). blame[] is the chance of each of the casenet's faults
 * to be behind the trouble, sound that nothing broken is: a fault that merely lies beside
 * it is not worth a check. belief[] is the chance that each is there. Checks that were made,
 * ruled out, unsafe or pointless are left out. */
void next_plan(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
               const double *belief, const double *blame, double sound, struct next_plan *out);

void next_free(struct next_plan *p);

#endif
