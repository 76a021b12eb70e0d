/* casenet.h - the network of one case: which faults are in it, and what was found. */
#ifndef WEIGH_CASENET_H
#define WEIGH_CASENET_H

#include "model/case.h"
#include "model/conclusions.h"
#include "model/knowledge.h"
#include "weigh/net.h"

enum evidence_kind { EVIDENCE_COMPLAINT, EVIDENCE_RESULT, EVIDENCE_IMPLIED, EVIDENCE_SPEAKS };

/* One piece of evidence, in the order in which it is weighed. */
struct evidence {
  enum evidence_kind kind;
  int subject;  /* complaint, check, or (SPEAKS) fault */
  int result;   /* the most likely result of the check; 1 for a complaint */
  double sure;  /* how much of it counts, 0..1, after weakening */
  double share[NET_MAX_GRADES]; /* of a reading: how it falls on the results */
  bool reading;
  double decibans; /* SPEAKS */
  int rule;        /* IMPLIED, SPEAKS: rule card; -1 otherwise */
  int weakened_by; /* rule card that weakened it, -1 when none */
};

/* Faults of a casenet are numbered 0..count-1; the last one is "not listed". */
struct casenet {
  const struct knowledge *k;
  const struct learned *learned; /* of the case; NULL: chances as shipped */
  struct arena arena;
  size_t count;
  int *fault_of;  /* knowledge fault of each, -1 for not listed */
  int *place_of;  /* place of each knowledge fault, -1 when ruled out */
  double *prior;
  struct evidence *evidence;
  size_t evidence_count;
  struct net_finding *findings; /* one per evidence, in step; SPEAKS has none (grades 0) */
  double *bias;                 /* scratch of casenet_view */
  struct net_finding *view;     /* scratch of casenet_view */
};

/* How a reading of a check falls on its results: share[] of check->results.count, adding
 * to 1. value is in the unit of the check. bands is an index, or -1 for the spec card
 * (card not NULL). A reading near a limit falls on both sides, by the normal curve of the
 * instrument's tolerance. Source: the normal distribution function (erfc). */
void reading_shares(const struct knowledge *k, int check, int bands, const struct case_card *card,
                    double value, double *share);

/* How a reading was judged: the conclusion that says by what, the bands (-1: the spec card, whose
 * figure is then in card), the conclusion that gave it another value to be judged at (-1: none), that
 * value in the unit of the check, how it falls on the results, and the most likely of them. */
struct judged {
  int by, bands, counts_as;
  const struct case_card *card;
  double value, share[NET_MAX_GRADES];
  int result;
};

/* Judges a reading (r->result is -1) by what the rules concluded. False when nothing says what it
 * means. out->card belongs to the case. */
bool reading_judge(const struct knowledge *k, const struct bench_case *c, const struct conclusions *drawn,
                   const struct case_result *r, struct judged *out);

/* Builds the network from the case and what the rules concluded. Results whose certainty
 * is 0 are left out. Free with casenet_free. */
void casenet_build(struct casenet *n, const struct knowledge *k, const struct bench_case *c,
                   const struct conclusions *drawn);

/* The network with only the first `count` pieces of evidence; valid until the next call
 * or casenet_free. */
struct net casenet_view(struct casenet *n, size_t count);

/* The finding that a result of a check would be (for looking ahead): links and leak
 * filled in from the arena, seen left empty. */
void casenet_finding(struct casenet *n, int check, struct net_finding *out);

void casenet_free(struct casenet *n);

#endif
