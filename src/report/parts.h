/* parts.h - what the text and the JSON of an answer have in common. */
#ifndef REPORT_PARTS_H
#define REPORT_PARTS_H

#include "assess/assess.h"
#include "assess/deeper.h"
#include "base/buf.h"

/* Name and id of a ranked fault; -1 is "something not listed", -2 "nothing broken". */
const char *part_fault_name(const struct knowledge *k, int fault);
const char *part_fault_id(const struct knowledge *k, int fault);

/* What a piece of evidence says, in short: "spark test: jumps". */
void part_evidence(struct buf *out, const struct knowledge *k, const struct evidence *e);

/* The sign by which evidence bears on a fault, or NULL when the fault does not touch it. */
const struct sign *part_sign(const struct knowledge *k, const struct evidence *e, int fault);

/* Is this an unsound result that the fault does not bring about? */
bool part_unexplained(const struct knowledge *k, const struct evidence *e, int fault);

/* An estimate in words: "the base rate of X", "how often X shows Y". */
void part_estimate(struct buf *out, const struct knowledge *k, const struct assessment *a,
                   const struct sensitivity *s, int evidence);

/* How many of the ranking are worth showing: those from the setting show-belief, at least
 * three, at most `most`. */
size_t part_shown(const struct knowledge *k, const struct assessment *a, size_t most);

/* Cautions to show now: those that rules warn of, then those of the check or repair that
 * is advised, each once. Fills ids (room for caution_count) and returns how many. */
size_t part_cautions(const struct knowledge *k, const struct bench_case *c, const struct assessment *a, int *ids);

/* Adds the cautions of a list and of the covers that come off (each once), but for those
 * that do not concern this machine. */
void part_add_cautions(const struct knowledge *k, const struct bench_case *c, const struct refs *own,
                       const struct refs *off, int *ids, size_t *count);

/* The first sentences of a caution, at least 40 characters: what to do, without all that can come of it.
 * Only for where it stands in full elsewhere too. */
void part_caution_short(struct buf *out, const char *text);

/* Covers to take off, outermost first, into order (room for cover_count); those that the
 * machine lacks are left out. */
size_t part_covers(const struct knowledge *k, const struct bench_case *c, const struct refs *wanted,
                   int *order);

/* Covers that are off, in the order in which they go back, into order (room for
 * cover_count): what lies under another goes first, and otherwise the knowledge has them in
 * the order in which they come off, and they go back in the reverse of it. */
size_t part_to_refit(const struct knowledge *k, const struct bench_case *c, int *order);

#endif
