/* hidden.h - a made-up dead machine: what is wrong with it, and what its checks show.
 *
 * Everything is drawn from the knowledge itself, so that simulated jobs and practice runs
 * meet faults, complaints and results as often as the model says. */
#ifndef PRACTICE_HIDDEN_H
#define PRACTICE_HIDDEN_H

#include <stdint.h>

#include "model/case.h"
#include "weigh/casenet.h"

enum { HIDDEN_MOST_FAULTS = 12 };

struct hidden {
  uint64_t seed;
  struct bench_case machine;  /* class and complaint, no results yet */
  struct casenet net;         /* what applies to this machine */
  int faults[HIDDEN_MOST_FAULTS]; /* places in the net of what is wrong */
  size_t fault_count;
  int culprit;   /* place of the fault that brought the complaint about */
  int complaint; /* index */
};

/* Draws a machine of a class (-1: any): faults by their base rates, and a complaint that one
 * of them leads to; drawn again until somebody complains. Free with hidden_free. */
void hidden_draw(const struct knowledge *k, int machine_class, uint64_t seed, struct hidden *out);

/* The result of a check on it: always the same for the same machine. */
int hidden_result(struct hidden *h, int check);

void hidden_free(struct hidden *h);

#endif
