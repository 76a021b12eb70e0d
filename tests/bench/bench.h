/* bench.h - how long things take: rows of a table, collected and printed together.
 *
 * Not a test: nothing here fails for being slow. A goal is printed beside what it is for. */
#ifndef BENCH_BENCH_H
#define BENCH_BENCH_H

#include <stdbool.h>
#include <stddef.h>

#include "assess/assess.h"

/* Milliseconds on a clock that only goes forward, and of this process at work: the second
 * leaves out the time that other programs take from it. */
double bench_now(void);
double bench_worked(void);

/* One row: the median and the 99th percentile (the largest, when there are fewer than 100)
 * of count samples, which are sorted in place. goal 0: none. The texts are copied. */
void bench_add(const char *group, const char *name, const char *unit, double *samples, size_t count,
               double goal, const char *note);
double bench_median(double *samples, size_t count); /* sorts */

void bench_print(bool json);

/* ---- the parts ------------------------------------------------------------------------ */

/* Random networks of this many faults, checks and links, with so many positives each. */
void bench_networks(bool quick);

struct bench_real {
  const struct knowledge *k;
  const char *source, *program;
};

void bench_load(void);                                         /* knowledge and engine */
void bench_conversation(const struct bench_real *r);           /* one more answer */
void bench_program(const struct bench_real *r);                /* the program as a whole */
void bench_weka(const struct bench_real *r, const char *java); /* java: folder of Margins.java */

/* Paths of case files under tests/cases, every `every`-th by name. Free with
 * bench_free_cases. */
char **bench_cases(const char *source, size_t every, size_t *count);
void bench_free_cases(char **paths, size_t count);

/* False when the file is not a case that can be read. Free *c with case_free. */
bool bench_read_case(const struct knowledge *k, const char *path, struct bench_case *c);

#endif
