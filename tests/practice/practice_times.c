/* practice_times.c - how long things take: a new machine, the judgement of a step, a class set
 * of 30 apprentices with 10 runs each scored from its records, and a run judged anew from its
 * record. Usage: practice_times [MACHINES]; cmake --build BUILD --target bench-practice. */
#define _XOPEN_SOURCE 700
#include <ftw.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "base/file.h"
#include "practice/progress.h"
#include "practice/unsafe.h"
#include "practice/walk.h"
#include "with.h"

enum { MOST = 10000, STEPS = 15, APPRENTICES = 30, RUNS = 10 };

/* Milliseconds of the clock on the wall, or of the processor's time for us alone. */
static double ms(clockid_t clock)
{
  struct timespec t;

  clock_gettime(clock, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static double now(void) { return ms(CLOCK_MONOTONIC); }
static double spent(void) { return ms(CLOCK_PROCESS_CPUTIME_ID); }

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

/* Keeps the runs, one after the other and round again, under 30 names, ten each, and reads all
 * back as "practice score" does. */
static void time_set(struct with *w, const struct record *runs, size_t count)
{
  char state[] = "/tmp/practice-times-XXXXXX", name[32];
  double start;
  struct err e;
  int bad, over = 0;

  if (!mkdtemp(state)) return;
  for (size_t i = 0; i < APPRENTICES * RUNS; i++) {
    char *folder, *path;

    snprintf(name, sizeof name, "a-%d", (int)(i / RUNS) + 1);
    folder = progress_folder(state, name);
    file_make_folder(folder, &e);
    free(folder);
    path = progress_file(state, name, (int)(i % RUNS) + 1);
    record_keep(path, &w->k, &runs[i % count], &e);
    free(path);
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

/* Judges every run once more from its entries. False when one comes to something else. */
static bool time_replay(struct with *w, const struct record *runs, size_t count)
{
  double *took = mem_array(count, sizeof *took);
  bool same = true;

  for (size_t i = 0; i < count; i++) {
    struct summary s;
    struct run r;
    struct err e;
    double start = now();

    if (record_replay(&runs[i], &w->k, w->assessor, SIZE_MAX, &r, &e)) return false;
    took[i] = now() - start;
    summary_of(&r, &s);
    same = same && s.regret == runs[i].summary.regret && s.steps == runs[i].summary.steps;
    run_free(&r);
  }
  tell("a whole run judged anew from its record", took, count);
  free(took);
  return same;
}

struct times {
  double *made, *begun, *step, *begun_spent, *step_spent;
  size_t machines, steps;
};

/* One machine, walked by the best path and kept as a record. */
static bool walk(struct with *w, uint64_t seed, struct times *t, struct record *x)
{
  struct hidden_wish wish = {-1, HIDDEN_ANY, NULL, NULL};
  struct hidden h;
  struct run r;
  struct err e;
  double start = now(), from = spent();

  if (!hidden_make(&w->k, &wish, seed, &h)) return false;
  t->made[t->machines] = now() - start;
  if (run_begin(&r, &w->k, w->assessor, &h, false, &e)) return false;
  t->begun_spent[t->machines] = spent() - from;
  t->begun[t->machines++] = now() - start;
  *x = (struct record){.sitting = {.kind = HIDDEN_ANY, .level = LEVEL_EXAM, .seed = seed}};
  while (r.end == RUN_OPEN && r.step_count < STEPS) {
    struct entry entry = walk_best(&r);

    if (unsafe_wants_lead_off(&r, &entry)) record_add(x, &(struct entry){.act = ACT_LEAD, .sure = -1});
    if (unsafe_makes_spark(&r, &entry)) record_add(x, &(struct entry){.act = ACT_WIPE, .sure = -1});
    run_make_safe(&r, &entry);
    start = now();
    from = spent();
    if (run_do(&r, &entry, &e)) return false;
    t->step_spent[t->steps] = spent() - from;
    t->step[t->steps++] = now() - start;
    record_add(x, &entry);
  }
  summary_of(&r, &x->summary);
  x->summary.over = true;
  run_free(&r);
  return true;
}

int main(int argc, char **argv)
{
  int machines = argc > 1 ? atoi(argv[1]) : 40;
  size_t most = machines > 0 && machines <= MOST ? (size_t)machines : 40;
  struct times t = {mem_array(most, sizeof(double)),
                    mem_array(most, sizeof(double)),
                    mem_array(most * STEPS, sizeof(double)),
                    mem_array(most, sizeof(double)),
                    mem_array(most * STEPS, sizeof(double)),
                    0,
                    0};
  struct record *runs = mem_array(most, sizeof *runs);
  struct with *w;
  void *state;
  bool same;

  if (with_begin(&state)) return 1;
  w = state;
  for (size_t i = 0; i < most; i++)
    if (!walk(w, i + 1, &t, &runs[i])) return 1;
  tell("a machine made up", t.made, t.machines);
  tell("the same, weighed and planned for", t.begun, t.machines);
  tell("  processor time", t.begun_spent, t.machines);
  tell("a step judged, done, weighed, planned on", t.step, t.steps);
  tell("  processor time", t.step_spent, t.steps);
  time_set(w, runs, most);
  same = time_replay(w, runs, most);
  if (!same) printf("NOT as it was kept\n");
  for (size_t i = 0; i < most; i++) record_free(&runs[i]);
  free(runs);
  free(t.made);
  free(t.begun);
  free(t.begun_spent);
  free(t.step_spent);
  free(t.step);
  return with_end(&state) || !same;
}
