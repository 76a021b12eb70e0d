/* part.h - the network of a real case cut down to a few faults.
 *
 * A junction tree holds a whole finding with all its causes at once, so a hundred causes
 * are out of its reach. Here the most believed faults of the case stay, the rest are taken
 * as not there (base rate 0), and what was found stays as it is: a smaller network, and
 * exact in both programs. */
#ifndef TESTS_PART_H
#define TESTS_PART_H

#include "assess/assess.h"
#include "bif.h"

struct part {
  struct net net;
  const char *names[BIF_MAX_FAULTS];
  double prior[BIF_MAX_FAULTS], bias[BIF_MAX_FAULTS];
  struct arena arena;
};

/* most: 1 .. BIF_MAX_FAULTS. Findings that none of the faults kept can bring about, or that
 * say nothing, are left out. a must outlive *p. Free with part_free. */
void part_make(struct part *p, struct assessment *a, size_t most);
void part_free(struct part *p);

/* Reads a case file of tests/cases ({"case": ...}) and assesses it; 0 or a message on
 * standard error and the status. Free *a with assessment_free. */
int part_assess(const struct knowledge *k, const char *path, struct assessment *a);

#endif
