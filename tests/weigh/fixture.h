/* fixture.h - knowledge and cases for tests: the small knowledge of tests/weigh/small with
 * the shipped templates and core rules, or all that is shipped. Every function fails the
 * running test when something is wrong. */
#ifndef TESTS_FIXTURE_H
#define TESTS_FIXTURE_H

#include "assess/assess.h"

/* source is the top of the project's sources. Free with knowledge_free. */
void fixture_small(const char *source, struct knowledge *k);
void fixture_shipped(const char *source, struct knowledge *k);

int fixture_id(const struct knowledge *k, enum entry_kind kind, const char *id);

/* A case of this class, with features had or lacking by id ("decompression", "-two-stroke"),
 * NULL for none. Free with case_free. */
void fixture_case(const struct knowledge *k, struct bench_case *c, const char *machine_class,
                  const char *feature);

/* Records a result ("none") or, when result is NULL, a reading. */
void fixture_result(const struct knowledge *k, struct bench_case *c, const char *check, const char *result,
                    double value, double sure);

/* Place of a fault in the network of an assessment; id NULL: not listed. */
size_t fixture_place(const struct assessment *a, const char *id);

/* The evidence of that kind about this subject (a check, complaint or fault), or NULL. */
const struct evidence *fixture_evidence(const struct assessment *a, enum evidence_kind kind, int subject);

/* The two hold the same beliefs, ranking and evidence, byte by byte. */
void fixture_same(const struct assessment *a, const struct assessment *b);

#endif
