/* clips.h - the library's header, included through this one file, and what the files of
 * this folder share. No other folder includes either. */
#ifndef ENGINE_CLIPS_H
#define ENGINE_CLIPS_H

#include <clips/clips.h>
#include <stdio.h>

#include "engine/engine.h"
#include "engine/guard.h"

/* A fact that was asserted, under the text that identifies it. */
struct told { char *key; void *fact; };

struct engine {
  const struct knowledge *k;
  void *env;
  struct guard guard;
  struct engine_limits limits;
  FILE *reading;     /* the text that is being loaded, NULL otherwise */
  bool notes;        /* the library notes down what it reads, for its reports */
  struct told *told; /* sorted by key */
  size_t told_count;
  struct conclusions drawn; /* as collected last, from facts that are told by the next two */
  size_t drawn_facts;
  long long drawn_latest;
  struct err load_error; /* first error the library reported while loading */
  int last_rule;         /* index of the rule that fired last, -1 at first */
  char grumble[600];     /* what the library reported since then, on one line */
  size_t grumbled;
  struct err ended;      /* status not 0: the engine stopped half-way and stays stopped */
  intBool (*compare[2])(void *, void *, DATA_OBJECT *); /* the library's own, see watch.c */
};

/* One slot of a fact to be asserted: word, or number when word is NULL. */
struct want_slot { const char *slot, *word; double number; bool whole; };

struct want { const char *template; struct want_slot slots[4]; size_t count; };

/* Asserts a fact. NULL when the library refused it (or has it already). */
void *fact_assert(struct engine *en, const struct want *w);

/* Puts guard_look into the library's comparing of variables. */
void watch_joins(struct engine *en);

/* Gives the engine the sums of bench arithmetic that rules may call (rules.h). */
void sums_define(void *env);

/* Puts comparing of numbers in place of the library's that knows what is no number (compare.c). */
void compare_define(void *env);

/* Collects the conclusions among the engine's facts, sorted. */
void harvest(struct engine *en, struct conclusions *out);

/* Index of the rule that is firing, -1 when none of ours is. */
int rule_firing(struct engine *en);

#endif
