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
  struct bench_case machine;      /* class, features and complaint, no results yet */
  struct casenet net;             /* what applies to this machine */
  int faults[HIDDEN_MOST_FAULTS]; /* places in the net of what is wrong */
  size_t fault_count;
  int culprit;               /* place of the fault that brought the complaint about; -1: none */
  int complaint;             /* index; -1: nobody could be made to complain */
  int misled;                /* a check that shows a sound result against the odds; -1: none */
  char *words;               /* the owner's, by hand; NULL: those of the knowledge */
  struct case_result *fixed; /* results that a hand-written case lays down */
  size_t fixed_count;
  struct learned *shop; /* chances of the shop's own history that it was drawn by; NULL: as shipped */
  bool *renewed; /* per check: a repair set right what it looks at, so nothing shows by chance; NULL: none */
};

/* What kind of machine is wanted. ONE fault; TWO, each enough for the complaint; ONE with a
 * telling check that MISLEADS; a fault that the LAST REPAIR left (sort assembly); NOTHING broken
 * (wrong use, or the owner expects too much); ANY of these, mostly one fault. */
enum hidden_kind { HIDDEN_ONE, HIDDEN_TWO, HIDDEN_MISLEADS, HIDDEN_LAST_REPAIR, HIDDEN_NOTHING, HIDDEN_ANY };

/* system NULL: any. machine_class -1: any. rates, NULL or one for each fault, are base rates of
 * that class (which must then be told) from the shop's own history; below 0: as shipped. */
struct hidden_wish {
  int machine_class;
  enum hidden_kind kind;
  const char *system;
  const double *rates;
};

/* Draws a machine of a class (-1: any): faults by their base rates, and a complaint that one
 * of them leads to; drawn again until somebody complains. What only some machines of the class
 * have stays open. Free with hidden_free. */
void hidden_draw(const struct knowledge *k, int machine_class, uint64_t seed, struct hidden *out);

/* Draws a machine of the kind that is wanted, all its features settled: a fault by its odds
 * among those that fit, kept when an owner would complain of it. False (nothing to free) when
 * there is no such machine. Free with hidden_free. */
bool hidden_make(const struct knowledge *k, const struct hidden_wish *wish, uint64_t seed,
                 struct hidden *out);

/* A machine laid down by hand: class, features and complaint are in *machine (taken over), the
 * knowledge faults in faults[]. EX_DATAERR, nothing taken over, when a fault cannot be on that
 * machine or there are too many. */
int hidden_lay_down(const struct knowledge *k, struct bench_case *machine, const int *faults, size_t count,
                    uint64_t seed, struct hidden *out, struct err *e);

/* The result of a check on it: always the same for the same machine and faults. */
int hidden_result(struct hidden *h, int check);

/* The same as it is seen: of a measured check the reading, drawn from the band that stands for
 * the result and blurred by the instrument (out->result is -1 then). */
void hidden_look(struct hidden *h, int check, struct case_result *out);

/* Puts right what this repair puts right. True when nothing of what was wrong is left; false
 * too when nothing was wrong to begin with. */
bool hidden_repair(struct hidden *h, int repair);

/* Is that knowledge fault there now? */
bool hidden_has(const struct hidden *h, int fault);

/* What the owner says, in everyday words; belongs to the knowledge. */
const char *hidden_words(const struct hidden *h);

const char *hidden_kind_name(enum hidden_kind kind);
bool hidden_kind_named(const char *name, enum hidden_kind *out);

void hidden_free(struct hidden *h);

#endif
