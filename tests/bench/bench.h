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

/* One program run to its end: milliseconds by the clock and of the processor, and MiB at most. */
struct bench_spawned { bool good; double ms, worked, mib; };

/* Starts the helper that bench_spawn uses. To be called first of all, while the process is small. */
bool bench_spawner(void);

/* Runs args (the program first, NULL last) on that folder of knowledge, its answer thrown away. */
struct bench_spawned bench_spawn(const char *knowledge, const char *const *args);

/* ---- the parts ------------------------------------------------------------------------ */

/* Random networks of this many faults, checks and links, with so many positives each. */
void bench_networks(bool quick);

struct bench_real {
  const struct knowledge *k;
  const char *source, *program, *floor, *self; /* programs */
};

void bench_load(void);                                         /* knowledge and engine */
void bench_conversation(const struct bench_real *r);           /* one more answer */
void bench_starts(const struct bench_real *r);                 /* cold starts, by size of the knowledge */
int bench_rank(const char *path);                              /* one case, to its ranking and no further */
void bench_weka(const struct bench_real *r, const char *java); /* java: folder of Margins.java */

/* Paths of case files under tests/cases, every `every`-th by name. Free with
 * bench_free_cases. */
char **bench_cases(const char *source, size_t every, size_t *count);
void bench_free_cases(char **paths, size_t count);

/* False when the file is not a case that can be read. Free *c with case_free. */
bool bench_read_case(const struct knowledge *k, const char *path, struct bench_case *c);

#endif
