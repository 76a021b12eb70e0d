/* sample.h - a small knowledge in a folder of its own, to which a test adds a file. */
#ifndef HOSTILE_SAMPLE_H
#define HOSTILE_SAMPLE_H

#include <stdbool.h>
#include <stddef.h>

#include "knowledge/load.h"

/* A folder under /tmp with the shipped templates and tests/hostile/small in it, and an own
 * folder beside it, empty. */
struct sample {
  char folder[64], shipped[80], own[80];
};

void sample_begin(struct sample *s);
void sample_end(struct sample *s);

/* Writes a file below `root` (s->shipped or s->own), making the folders above it. */
void sample_write(const char *root, const char *name, const char *text, size_t len);

/* A knowledge and all that is wrong with it. */
struct loaded {
  struct knowledge k;
  struct problems p;
  struct err e;
  int status;
};

/* Loads shipped and own folder. The caller frees with loaded_free. */
void sample_load(const struct sample *s, struct loaded *l);
void loaded_free(struct loaded *l);

/* Is there a problem of this kind, in this file, at this line, whose text holds `says`? */
bool loaded_says(const struct loaded *l, const char *kind, const char *file, int line, const char *says);

/* A sample that is right and one that is wrong: the wrong one must be reported by this kind
 * and line and in these words, and by no other kind. */
struct sample_row {
  const char *kind;
  int line;
  const char *says, *good, *bad;
};

/* Tries both under a name; says on standard error what is not as it must be. */
bool sample_try(const struct sample *s, const char *name, const struct sample_row *r);

/* Prints all problems, for a test that fails. */
void loaded_print(const struct loaded *l);

double seconds_now(void);

#endif
