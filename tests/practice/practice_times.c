/* practice_times.c - how long things take: a new machine, the judgement of a step, a class set
 * of 30 apprentices with 10 runs each scored from its records. Usage: practice_times [MACHINES] */
#define _XOPEN_SOURCE 700
#include <ftw.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "base/file.h"
#include "practice/progress.h"
#include "practice/walk.h"
#include "with.h"

enum { MOST = 100000, APPRENTICES = 30, RUNS = 10 };

static double now(void)
{
  struct timespec t;

  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static int by_size(const void *x, const void *y)
{
  double a = *(const double *)x, b = *(const double *)y;

  return (a > b) - (a < b);
}

static void tell(const char *what, double *v, size_t n)
{
  if (n == 0) return;
  qsort(v, n, sizeof *v, by_size);
  printf("%-44s n %5zu  median %7.2f ms  p99 %7.2f ms  most %7.2f ms\n", what, n, v[n / 2], v[n * 99 / 100],
         v[n - 1]);
}

static int remove_one(const char *path, const struct stat *s, int type, struct FTW *f)
{
  (void)s;
  (void)type;
  (void)f;
  return remove(path);
}

/* Keeps one finished run under 30 names, ten times each, and reads them all back. */
static void time_set(struct with *w, const struct record *x)
{
  char state[] = "/tmp/practice-times-XXXXXX", name[32];
  double start;
  struct err e;
  int bad, over = 0;

  if (!mkdtemp(state)) return;
  for (int a = 0; a < APPRENTICES; a++) {
    char *folder;

    snprintf(name, sizeof name, "a-%d", a + 1);
    folder = progress_folder(state, name);
    file_make_folder(folder, &e);
    free(folder);
    for (int n = 1; n <= RUNS; n++) {
      char *path = progress_file(state, name, n);

      record_keep(path, &w->k, x, &e);
      free(path);
    }
  }
  start = now();
  for (int a = 0; a < APPRENTICES; a++) {
    struct progress p;

    snprintf(name, sizeof name, "a-%d", a + 1);
    progress_read(state, name, &w->k, &p, &bad);
    over += p.over;
  }
  printf("a class set of %d x %d (%d runs read back) scored in %.1f ms\n", APPRENTICES, RUNS, over,
         now() - start);
  nftw(state, remove_one, 8, FTW_DEPTH | FTW_PHYS);
}

int main(int argc, char **argv)
{
  int machines = argc > 1 ? atoi(argv[1]) : 40;
  double *made = mem_array(MOST, sizeof *made), *begun = mem_array(MOST, sizeof *begun),
         *step = mem_array(MOST, sizeof *step);
  size_t made_count = 0, steps = 0;
  struct record last = {.sitting = {.kind = HIDDEN_ANY, .level = LEVEL_FREE}};
  void *state;
  struct with *w;

  if (with_begin(&state)) return 1;
  w = state;
  for (int i = 1; i <= machines; i++) {
    struct hidden_wish wish = {-1, HIDDEN_ANY, NULL, NULL};
    struct hidden h;
    struct run r;
    struct err e;
    double start = now();

    if (!hidden_make(&w->k, &wish, (uint64_t)i, &h)) return 1;
    made[made_count] = now() - start;
    if (run_begin(&r, &w->k, w->assessor, &h, false, &e)) return 1;
    begun[made_count++] = now() - start;
    while (r.end == RUN_OPEN && r.step_count < 15 && steps < MOST) {
      struct entry entry = walk_best(&r);

      run_make_safe(&r, &entry);
      start = now();
      if (run_do(&r, &entry, &e)) return 1;
      step[steps++] = now() - start;
      record_add(&last, &entry);
    }
    summary_of(&r, &last.summary);
    run_free(&r);
  }
  last.summary.over = true;
  tell("a machine made up", made, made_count);
  tell("the same, weighed and planned for", begun, made_count);
  tell("a step judged, done, weighed, planned on", step, steps);
  last.count = last.count < 10 ? last.count : 10;
  time_set(w, &last);
  record_free(&last);
  free(made);
  free(begun);
  free(step);
  return with_end(&state);
}
