/* problem.h - what is wrong with the knowledge, collected rather than stopped at. */
#ifndef KNOWLEDGE_PROBLEM_H
#define KNOWLEDGE_PROBLEM_H

#include <stdbool.h>
#include <stddef.h>

#include "base/mem.h"

/* kind is a short permanent word for programs ("unknown-id"); text says what and what
 * to do. serious: the knowledge cannot be used; otherwise it is worth a look. */
struct problem {
  const char *kind, *file, *text;
  int line;
  bool serious;
};

struct problems {
  struct problem *items;
  size_t count, room, serious;
  struct arena arena; /* owns the texts */
};

/* After 200 the rest is only counted, so that a broken file cannot flood the screen. */
enum { PROBLEMS_KEPT = 200 };

void problem_add(struct problems *p, bool serious, const char *kind, const char *file, int line,
                 const char *format, ...) __attribute__((format(printf, 6, 7)));
void problems_sort(struct problems *p); /* by file, line, kind */
void problems_free(struct problems *p);

#endif
