/* belief.h - what is thought of a simulated machine, kept up result by result.
 *
 * The approximation, against assess_case: (1) one fault at a time is behind the complaint; what
 * else is there beside it goes into each check's leak, every fault by a chance of its own that
 * is kept up too; given those, results are independent. So a result touches only the faults
 * that bear on its check. (2) Rules are those that speak before anything was looked at: nothing
 * is implied, weakened, ruled out or handed over by results. The weights before the first result
 * are exact. How near it comes is measured (docs/how-good.md, "Minutes to the true fault").
 *
 * Source: noisy-MAX after Diez 1993 (from memory); keeping a product form after every result is
 * assumed-density filtering (Boyen and Koller 1998, from memory); the two together are the
 * project's own arrangement. */
#ifndef SIMULATE_BELIEF_H
#define SIMULATE_BELIEF_H

#include "simulate/book.h"

/* More checks than this are not made on one machine. */
enum { SIM_MOST_MADE = 128 };

struct sim_seen { int check, result; };

/* weight[f] over sum: the chance that the fault is behind the complaint; none over sum: that
 * nothing is. beside[f]: that it is there without being behind it. sound: the chance that all
 * that was found came about with nothing broken. */
struct sim_belief {
  const struct sim_model *model;
  double *weight, *beside, none, sum, sound;
  uint64_t off;         /* covers that are off */
  bool *made;           /* per check */
  bool *mended;         /* per fault: put right on this job */
  bool proved;          /* it was run, and the complaint stayed */
  struct sim_seen *seen; /* in the order they came */
  size_t seen_count;
};

void sim_belief_room(struct sim_belief *x, const struct sim_book *b);
void sim_belief_free(struct sim_belief *x);

/* Nothing looked at yet, all covers on. */
void sim_start(struct sim_belief *x, const struct sim_model *m);

/* One more result; the check's covers are off from then on. */
void sim_see(struct sim_belief *x, int check, int result);

/* These faults' repair was made and the complaint stayed (-1: it was looked further in vain).
 * Results that they most likely brought about are taken back, as in deeper_mend. */
void sim_mend(struct sim_belief *x, int repair);

/* It was run as the owner does and the complaint stayed: something is behind it. */
void sim_proved_wrong(struct sim_belief *x);

/* The fault most likely behind the complaint; -1 when there is none left. */
int sim_leading(const struct sim_belief *x);

double sim_behind(const struct sim_belief *x, int fault); /* chance that it is behind it */
double sim_there(const struct sim_belief *x, int fault);  /* chance that it is there at all */

/* Is the search over: is the leading fault as good as found, or nothing broken? As the
 * disposition of assess_case, by the same settings. */
bool sim_found(const struct sim_belief *x);
bool sim_is_sound(const struct sim_belief *x);

#endif
