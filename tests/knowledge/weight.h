/* weight.h - sign samples: what each result and each complaint must at least say for a fault.
 *
 * A file of samples (tests/signs) has one statement per line, "#" starting a comment:
 *   FAULT CHECK RESULT DECIBANS        FAULT complaint COMPLAINT DECIBANS
 * The weight is that of the result for the fault alone, beside what shows anyway:
 * 10 log10 (chance of the result with the fault / chance without it). */
#ifndef TESTS_WEIGHT_H
#define TESTS_WEIGHT_H

#include "base/buf.h"
#include "model/knowledge.h"

/* check -1: result is a complaint. The least is in decibans. */
struct statement { int fault, check, result; double least; const char *file; int line; };

struct statements {
  struct statement *items; /* sorted by fault, check, result */
  size_t count, room;
  char **files;
  size_t file_count;
};

/* Decibans that a result of a check (or, check -1, a complaint) speaks for a fault. */
double weight_of(const struct knowledge *k, int fault, int check, int result);

/* Reads all files of a folder; what is wrong with them goes to b, a line each. */
void statements_read(const struct knowledge *k, const char *folder, struct statements *out, struct buf *b);
void statements_free(struct statements *s);

/* The statement about a sign, or NULL. */
const struct statement *statement_find(const struct statements *s, const struct sign *sign);

/* Does it still hold? */
bool statement_holds(const struct knowledge *k, const struct statement *s);

#endif
