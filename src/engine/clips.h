/* clips.h - the library's header, included through this one file, and what the files of
 * this folder share. No other folder includes either. */
#ifndef ENGINE_CLIPS_H
#define ENGINE_CLIPS_H

#include <clips/clips.h>

#include "engine/engine.h"
#include "engine/guard.h"

/* A fact that was asserted, under the text that identifies it. */
struct told { char *key; void *fact; };

struct engine {
  const struct knowledge *k;
  void *env;
  struct guard guard;
  struct engine_limits limits;
  struct told *told; /* sorted by key */
  size_t told_count;
  struct err load_error; /* first error the library reported while loading */
  int last_rule;         /* index of the rule that fired last, -1 at first */
};

/* One slot of a fact to be asserted: word, or number when word is NULL. */
struct want_slot { const char *slot, *word; double number; bool whole; };

struct want { const char *template; struct want_slot slots[4]; size_t count; };

/* Asserts a fact. NULL when the library refused it (or has it already). */
void *fact_assert(struct engine *en, const struct want *w);

/* Collects the conclusions among the engine's facts, sorted. */
void harvest(struct engine *en, struct conclusions *out);

/* Index of the rule that is firing, -1 when none of ours is. */
int rule_firing(struct engine *en);

#endif
