/* learn.h - counts of how jobs turned out, and the chances that follow from them.
 *
 * Only whole numbers are counted, and only from jobs whose repair passed its proof run; what
 * the ranking thought is never counted. The same jobs give the same counts in whatever order
 * they come (docs/learning.md). */
#ifndef SHOP_LEARN_H
#define SHOP_LEARN_H

#include <stdint.h>

#include "model/learned.h"
#include "weigh/counts.h"

enum { OUTCOME_ID = 20, OUTCOME_MOST_FAULTS = 8, OUTCOME_MOST_CAUSES = 3 };

/* A result as counted: plain, sure, and there before the fault was known. */
struct outcome_result { int check, result; };

/* What the last advice before the repair gave a fault (-1: not listed). */
struct outcome_cause { int fault; double chance; };

/* How one job ended. */
struct outcome {
  char id[OUTCOME_ID];
  int64_t closed;
  int machine_class, complaint; /* -1: not told; the first complaint */
  int ending;                   /* place in the list of job_ending; -1: another word, or none */
  bool confirmed;               /* its repair passed the proof run */
  int faults[OUTCOME_MOST_FAULTS];
  size_t fault_count;           /* confirmed faults, each once */
  struct outcome_result *results; /* one per check */
  size_t result_count, result_room;
  struct outcome_cause said[OUTCOME_MOST_CAUSES]; /* first place first */
  size_t said_count;
};

struct outcomes { struct outcome *items; size_t count, room; };

/* Adds an empty one, valid until the next; all are freed together. */
struct outcome *outcomes_add(struct outcomes *o);
void outcome_add_result(struct outcome *o, int check, int result);
void outcomes_free(struct outcomes *o);

/* How much the shipped estimates are worth, in cases, and how many confirmed faults of one
 * machine class (and results of one sign) are counted at most: the latest. */
struct learn_how { double rates_worth, signs_worth; int most; };

/* 300, 10 and 200. The base rates of a class are about 250 shares: worth 10 cases in all, one
 * job would throw them over, and in simulated shops did (docs/learning.md). */
struct learn_how learn_usual(void);

/* Of the rankings that were given: per tenth of the chance given to the first place, how
 * often it was right. Chances are summed in millionths, as whole numbers. */
enum { LEARN_BINS = 10, LEARN_CURVE_FROM = 30 };
struct learn_past {
  long count, hits;  /* jobs with advice before the repair; first place confirmed */
  long named;        /* a confirmed fault was among the causes named */
  long usual_hits;   /* the fault that is the most frequent of its class was confirmed */
  int64_t chance;    /* sum of the chances given to the first place */
  int64_t quadratic; /* sum of brier_one of the first place */
  long bin_count[LEARN_BINS], bin_hits[LEARN_BINS];
  int64_t bin_chance[LEARN_BINS];
};

struct learn_counts {
  const struct knowledge *k;
  struct learn_how how;
  long jobs, unconfirmed, counted; /* told of; without a passed proof run; counted somewhere */
  long *class_jobs, *class_faults; /* [class]: jobs counted, confirmed faults in them */
  long *hits;  /* [class * fault_count + fault] */
  long *made;  /* [first sign of a fault at a check]: check made, fault confirmed */
  long *shown; /* [the same * CHECK_MOST_RESULTS + result] */
  struct learn_past past;
};

/* Counts the outcomes. k must outlive *out; free with learn_free. */
void learn_count(const struct knowledge *k, const struct outcomes *o, struct learn_how how,
                 struct learn_counts *out);
void learn_free(struct learn_counts *c);

/* Expected share of each fault among those behind the complaints of a class, from the
 * shipped estimates, into share[fault_count]; 0 for what such machines cannot have. They add
 * to 1. */
void learn_shares(const struct knowledge *k, int machine_class, double *share);

/* The same after the counts: Dirichlet mean. */
double learn_share_now(const struct learn_counts *c, int machine_class, int fault, double share);

/* The first sign of that fault at the check of sign s, under which its counts stand. */
size_t learn_pair(const struct knowledge *k, size_t sign);

/* The chance, as shipped, that the check of a sign shows the sign's result on a machine that
 * has this fault and no other listed one: the sign, and what shows anyway. */
double learn_shows(const struct knowledge *k, size_t sign);

/* The chances that follow, into *out (begun here; free with learned_free). What was not
 * counted stays as shipped. */
void learn_chances(const struct learn_counts *c, struct learned *out);

#endif
