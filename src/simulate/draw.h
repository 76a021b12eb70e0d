/* draw.h - a machine with this complaint, drawn as the model has it. */
#ifndef SIMULATE_DRAW_H
#define SIMULATE_DRAW_H

#include "simulate/book.h"

enum { SIM_MOST_BEHIND = 16 };

/* model: what is believed of such a machine; drawn: what it was drawn from, the same unless somebody
 * sets the other (to see how ways of working do when the estimates are wrong). behind: the faults that bring the complaint about and are still there; all must be put right.
 * None at all: nothing is broken or wrongly used. there: every fault that it has, those beside
 * the complaint too. */
struct sim_machine {
  const struct sim_model *model, *drawn;
  uint64_t seed;
  bool *there;
  int behind[SIM_MOST_BEHIND];
  size_t behind_count;
};

/* Room for one machine at a time; free with sim_machine_free. */
void sim_machine_room(struct sim_machine *x, const struct sim_book *b);
void sim_machine_free(struct sim_machine *x);

/* The model of a class by the chances of its complaints; share is drawn, 0 <= share < 1. NULL
 * when the class has no model. */
const struct sim_model *sim_pick_model(const struct simulator *s, int machine_class, double share);

/* Draws the faults: exactly as probable as the model has them on machines with the complaint.
 * The same model and seed give the same machine. */
void sim_draw(struct sim_machine *x, const struct sim_model *m, uint64_t seed);

/* What a check shows: the same however often and in whatever order it is asked, as long as
 * the faults are the same. */
int sim_result(const struct sim_machine *x, int check);

/* Puts right all that this repair puts right (-1: what is not listed). True when nothing that is
 * behind the complaint is left, and something was. */
bool sim_repair(struct sim_machine *x, int repair);

#endif
