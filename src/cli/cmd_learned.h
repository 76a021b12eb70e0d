/* cmd_learned.h - what the files of the command "learned" share. */
#ifndef CLI_CMD_LEARNED_H
#define CLI_CMD_LEARNED_H

#include "json/json.h"
#include "shop/history.h"

/* The history as it is shown; machine_class -1: all. */
struct learned_view {
  const struct knowledge *k;
  struct learn_counts counts;
  struct learned now;
  struct learn_switch on;
  int machine_class;
};

/* One share of a class, and one sign, shipped and now, with the limits between which it lies
 * nine times in ten. A sign counts what the check showed, so what shows anyway is in it. */
struct learned_share { int fault; long times; double shipped, now; struct limits limits; };
struct learned_shown { size_t sign; long made, shown; double shipped, now; struct limits limits; };

/* The faults confirmed on a class, most often first; the caller frees. */
struct learned_share *learned_shares(const struct learned_view *v, int machine_class, size_t *count);

/* The signs whose check was made, most often first; the caller frees. */
struct learned_shown *learned_signs(const struct learned_view *v, size_t *count);

/* How often the first place was right: limits of that share (Jeffreys's Beta(1/2, 1/2)). */
struct limits learned_right(const struct learn_past *p);

/* The bins of past rankings, each with the mean chance that was given. */
struct murphy learned_murphy(const struct learn_past *p, struct forecast_bin bins[LEARN_BINS]);

/* All of it as JSON ("learned-1"). The caller frees. */
struct json *learned_json(const struct learned_view *v);

#endif
