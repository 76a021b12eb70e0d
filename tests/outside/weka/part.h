/* part.h - the network of a real case cut down to a few faults.
 *
 * The programs we compare with hold a whole finding with all its causes at once, so a hundred
 * causes are out of their reach. Here the most believed faults of the case stay, the rest are taken
 * as not there (base rate 0), and what was found stays as it is: a smaller network, and
 * exact in both programs. */
#ifndef TESTS_PART_H
#define TESTS_PART_H

#include "assess/assess.h"
#include "bif.h"

enum { PART_MAX_FAULTS = 40 };

struct part {
  struct net net;
  const char *names[PART_MAX_FAULTS];
  double prior[PART_MAX_FAULTS], bias[PART_MAX_FAULTS];
  struct arena arena;
};

/* Keeps up to `most` faults (1 .. PART_MAX_FAULTS), most believed first; one that would give a
 * finding that couples its causes (not soundly or softly sound) more than `widest` of them is
 * passed over. Findings that none of the faults kept can bring about, or that
 * say nothing, are left out. a must outlive *p. Free with part_free. */
void part_make(struct part *p, struct assessment *a, size_t most, size_t widest);
void part_free(struct part *p);

/* Reads a case file of tests/cases ({"case": ...}) and assesses it; 0 or a message on
 * standard error and the status. Free *a with assessment_free. */
int part_assess(const struct knowledge *k, const char *path, struct assessment *a);

#endif
