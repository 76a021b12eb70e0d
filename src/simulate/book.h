/* book.h - the knowledge laid out in plain arrays, for jobs by the ten thousand.
 *
 * A simulated job asks no rule and solves no network. What holds for every machine is in a
 * sim_book; what holds for one class with one complaint is in a sim_model, made from one
 * assessment without results. What is left out for that is said in belief.h. */
#ifndef SIMULATE_BOOK_H
#define SIMULATE_BOOK_H

#include <stdint.h>

#include "assess/assess.h"

enum { SIM_MOST_COVERS = 64 };

/* One fault's effect on one check: upto[g] is the chance that it brings grade g or less. */
struct sim_link { int fault; double upto[NET_MAX_GRADES]; };

struct sim_check {
  int grades;
  double leak_upto[NET_MAX_GRADES]; /* the same with nothing listed wrong */
  size_t first, last;               /* links[first .. last - 1] */
  double minutes;                   /* its own, without covers */
  uint64_t covers;                  /* that must be off, those over them included */
  uint64_t name;                    /* of its id, for drawing */
};

/* A check that a fault bears on; shows: the chance that the fault shows in it at all. */
struct sim_touch { int check; size_t link; double shows; };

/* Faults are those of the knowledge by index; the last, number fault_count - 1, is "not
 * listed". Parts are counted in minutes at the shop rate. */
struct sim_book {
  const struct knowledge *k;
  struct arena arena;
  size_t fault_count, check_count;
  struct sim_check *checks;
  struct sim_link *links;
  struct sim_touch *touches; /* of fault f: touches[touch_first[f] .. touch_first[f + 1] - 1] */
  size_t *touch_first;
  int *repair;               /* of each fault; -1: look further */
  double *repair_minutes, *parts;
  uint64_t *repair_covers;
  bool *use;                 /* not broken but used wrongly */
  double turn, prove, repair_at, blame_at, sound_at; /* settings */
};

/* One class of machine with one complaint. weight[f]: the chance that the fault is behind the
 * complaint, none: that nothing is, sound: that nothing broken is. beside[f]: the chance that
 * it is there when it is not behind the complaint. Drawing: active[f] is the chance that the
 * fault is there and leads to the complaint, later[f] that this or a later one does or the
 * complaint comes about by itself, idle[f] that it is there when it does not lead to it. */
struct sim_model {
  const struct sim_book *book;
  int machine_class, complaint, number; /* number: place among all models */
  double chance;        /* of this complaint on such a machine, before anybody said anything */
  double none, sound;
  double *weight, *beside, *active, *later, *idle;
  bool *allowed;        /* per check: not ruled out, unsafe or pointless at the start */
  double *cover_minutes; /* off and on again; 0 where the machine lacks it */
};

/* Models of every class with every complaint it can have, but those that are handed over at
 * once. Of class c: models[first[c] .. first[c + 1] - 1]. */
struct simulator {
  struct arena arena;
  struct sim_book book;
  struct sim_model *models;
  size_t model_count, model_room;
  size_t *first;
};

/* Lays out what holds for every machine. Free with sim_book_free. EX_DATAERR as sim_open. */
int sim_book_fill(struct sim_book *b, const struct knowledge *k, struct err *e);
void sim_book_free(struct sim_book *b);

/* Lays out the knowledge, which must outlive it. Takes about a millisecond per model (some
 * 400). EX_DATAERR when there are more than SIM_MOST_COVERS covers; else errors as
 * assess_case. Free with sim_close, after an error too. */
int sim_open(struct simulator *s, const struct knowledge *k, struct err *e);
void sim_close(struct simulator *s);

/* Minutes for these covers, those that are off already left out. */
double sim_cover_minutes(const struct sim_model *m, uint64_t covers, uint64_t off);

#endif
