/* small_bench.h - the small knowledge of tests/plan/small and a case on it, with no rules. */
#ifndef SMALL_BENCH_H
#define SMALL_BENCH_H

#include "plan/advise.h"

/* A case, what the rules are taken to have said, and the beliefs that follow. */
struct small {
  const struct knowledge *k;
  struct bench_case c;
  struct conclusions drawn;
  struct casenet net;
  double *belief;
};

/* source is the top of the project's sources. Fails the running test when it cannot be read.
 * Free with knowledge_free. */
void small_load(const char *source, struct knowledge *k);

/* A machine of this class that will not start (complaint NULL: nothing said). */
void small_begin(struct small *s, const struct knowledge *k, const char *machine_class,
                 const char *complaint);
void small_result(struct small *s, const char *check, const char *result);
void small_draw(struct small *s, enum conclusion_kind kind, int a, int b);
void small_weigh(struct small *s); /* after the results and conclusions */
void small_end(struct small *s);

int small_id(const struct knowledge *k, enum entry_kind kind, const char *id);

#endif
