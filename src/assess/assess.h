/* assess.h - one case through the rules, the weighing and the planning.
 *
 * This is what every way in uses: the bench conversation, the one-shot command and the
 * tests, so that the same case always gets the same answer. */
#ifndef ASSESS_ASSESS_H
#define ASSESS_ASSESS_H

#include "base/err.h"
#include "engine/engine.h"
#include "model/case.h"
#include "model/conclusions.h"
#include "plan/advise.h"
#include "plan/next.h"
#include "weigh/casenet.h"

enum disposition { DISPOSITION_KEEP_LOOKING, DISPOSITION_REPAIR, DISPOSITION_NOTHING_BROKEN,
                   DISPOSITION_HAND_OVER };

/* One fault in the ranking. belief: the chance that it is there. blame: the chance that
 * it is there and behind the complaint (without a complaint: behind anything unsound that
 * was found). found: the same for anything unsound, complaint or result; a fault that was
 * found beside the complaint is worth a place in the list. fault -1 is "not listed". low and high hold the exact belief; they
 * are the same unless the assessment is bounded. */
struct ranked { int fault; double belief, blame, found, low, high; };

struct assessment {
  struct conclusions drawn;
  struct casenet net;
  struct ranked *ranking; /* highest blame + found_share * found first */
  size_t ranking_count;
  double *belief;        /* per place in the net */
  double sound;          /* chance that all this came about with nothing broken */
  double two_or_more;    /* chance that two or more faults are there */
  bool bounded; /* too much to weigh exactly: belief and blame are the middle of limits, and
                   sound and two_or_more are not known (0) */
  double log_chance;
  struct next_plan plan;
  struct advice advice; /* empty until assess_advise */
  bool advised;
  enum disposition disposition;
  int hand_over; /* conclusion index in drawn, -1 when none */
};

struct assessor;

/* An assessor serves one case at a time and may be told a changed case again and again.
 * k must outlive it. Errors as engine_open. */
int assessor_open(const struct knowledge *k, struct assessor **out, struct err *e);
void assessor_close(struct assessor *a);

/* Assesses the case as it stands. *out is filled anew (free with assessment_free).
 * EX_TEMPFAIL from the engine's limits. */
int assess_case(struct assessor *a, const struct bench_case *c, struct assessment *out, struct err *e);

/* Plans the work in full: checks, trial repairs and giving up on one scale of cost. What it
 * advises replaces the quick plan of assess_case (plan.steps), so that the next check is the
 * best one, not the best at first sight. Takes some ten milliseconds; once per assessment. */
void assess_advise(struct assessment *a, const struct bench_case *c);

void assessment_free(struct assessment *a);

/* The odds of every fault, in decibans, as the evidence comes in: odds[i * places + p] is
 * that of place p (net.fault_of) after the first i pieces, i from 0 to evidence_count. The
 * difference of two rows is the weight of a piece of evidence, so the weights add up to
 * the final odds exactly. The caller frees. NULL when it cannot be worked out. */
double *assess_odds(struct assessment *a);

const char *disposition_name(enum disposition d);

#endif
