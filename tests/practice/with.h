/* with.h - the shipped knowledge and an assessor, for every test of this folder. */
#ifndef TESTS_PRACTICE_WITH_H
#define TESTS_PRACTICE_WITH_H

#include "practice/run.h"

struct with {
  struct knowledge k;
  struct assessor *assessor;
};

int with_begin(void **state);
int with_end(void **state);

/* Begins a run on a machine of this kind; fails the test when it cannot. */
void with_run(struct with *w, enum hidden_kind kind, const char *system, uint64_t seed, bool cheap,
              struct run *r);

#endif
