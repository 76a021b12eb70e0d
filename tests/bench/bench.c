/* bench.c - prints how long the parts of Pullcord take on this machine.
 * Usage: bench [--json] --source TOP-OF-SOURCES --program PULLCORD --floor BENCH_FLOOR
 *        bench --weighing [--json] [--quick] --source TOP-OF-SOURCES
 *        bench --rank CASE
 * The second way: only beliefs in random networks, and the comparison with Weka. The third is what the
 * first way starts and times: the knowledge read, one case ranked, and no more. */
#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/utsname.h>
#include <time.h>

#include "base/file.h"
#include "base/mem.h"
#include "bench.h"
#include "knowledge/load.h"

struct row {
  char group[64], name[72], unit[8], note[120];
  size_t runs;
  double median, p99, goal;
};

static struct row rows[80];
static size_t row_count;

double bench_now(void)
{
  struct timespec t;

  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

double bench_worked(void)
{
  struct timespec t;

  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static int rising(const void *a, const void *b)
{
  double x = *(const double *)a, y = *(const double *)b;

  return (x > y) - (x < y);
}

double bench_median(double *samples, size_t count)
{
  qsort(samples, count, sizeof *samples, rising);
  return count % 2 ? samples[count / 2] : (samples[count / 2 - 1] + samples[count / 2]) / 2;
}

void bench_add(const char *group, const char *name, const char *unit, double *samples, size_t count,
               double goal, const char *note)
{
  struct row *r = &rows[row_count];

  if (count == 0 || row_count == sizeof rows / sizeof rows[0]) return;
  row_count++;
  r->runs = count;
  r->median = bench_median(samples, count);
  r->p99 = samples[(count * 99 + 99) / 100 - 1];
  r->goal = goal;
  snprintf(r->group, sizeof r->group, "%s", group);
  snprintf(r->name, sizeof r->name, "%s", name);
  snprintf(r->unit, sizeof r->unit, "%s", unit);
  snprintf(r->note, sizeof r->note, "%s", note ? note : "");
}

/* Other work on the machine makes times longer: its load says how far to trust them. */
static double load_now(void)
{
  FILE *f = fopen("/proc/loadavg", "r");
  double load = -1;

  if (f && fscanf(f, "%lf", &load) != 1) load = -1;
  if (f) fclose(f);
  return load;
}

static void print_table(const struct utsname *u)
{
  const char *group = "";

  printf("Pullcord on %s %s, load %.1f, compiler %s%s\n", u->sysname, u->machine, load_now(), __VERSION__,
#ifdef NDEBUG
         ""
#else
         " - NOT a release build"
#endif
  );
  for (size_t i = 0; i < row_count; i++) {
    const struct row *r = &rows[i];

    if (strcmp(group, r->group) != 0)
      printf("\n%-46s %5s %10s %10s %9s\n", r->group, "runs", "median", "p99", "goal");
    group = r->group;
    printf("  %-44s %5zu %10.3f ", r->name, r->runs, r->median);
    if (r->runs > 1) printf("%10.3f ", r->p99);
    else printf("%10s ", "-");
    if (r->goal > 0) printf("%9g ", r->goal);
    else printf("%9s ", "-");
    printf(" %-3s %s\n", r->unit, r->note);
  }
}

/* Names and notes are ours: plain ASCII without quotes. */
static void print_json(const struct utsname *u)
{
  printf("{\"bench\": \"pullcord-1\", \"system\": \"%s %s\", \"load\": %.2f, ", u->sysname, u->machine,
         load_now());
  printf("\"compiler\": \"%s\", \"rows\": [", __VERSION__);
  for (size_t i = 0; i < row_count; i++) {
    const struct row *r = &rows[i];

    printf("%s\n  {\"group\": \"%s\", \"name\": \"%s\", \"unit\": \"%s\", \"runs\": %zu, \"median\": %.6g, "
           "\"p99\": %.6g",
           i ? "," : "", r->group, r->name, r->unit, r->runs, r->median, r->p99);
    if (r->goal > 0) printf(", \"goal\": %g", r->goal);
    if (r->note[0]) printf(", \"note\": \"%s\"", r->note);
    putchar('}');
  }
  printf("\n]}\n");
}

void bench_print(bool json)
{
  struct utsname u;

  if (uname(&u) != 0) memset(&u, 0, sizeof u);
  if (json) print_json(&u);
  else print_table(&u);
}

static int usage(void)
{
  fprintf(stderr, "usage: bench [--json] --source TOP-OF-SOURCES --program PULLCORD --floor BENCH_FLOOR\n"
                  "       bench --weighing [--json] [--quick] --source TOP-OF-SOURCES\n"
                  "       bench --rank CASE\n");
  return 2;
}

int main(int argc, char **argv)
{
  bool json = false, quick = false, weighing = false;
  struct bench_real r = {.self = argv[0]};
  struct knowledge k;
  struct err e;
  char *java;

  for (int i = 1; i < argc; i++) {
    if (strcmp(argv[i], "--json") == 0) json = true;
    else if (strcmp(argv[i], "--quick") == 0) quick = true;
    else if (strcmp(argv[i], "--weighing") == 0) weighing = true;
    else if (strcmp(argv[i], "--source") == 0 && i + 1 < argc) r.source = argv[++i];
    else if (strcmp(argv[i], "--program") == 0 && i + 1 < argc) r.program = argv[++i];
    else if (strcmp(argv[i], "--floor") == 0 && i + 1 < argc) r.floor = argv[++i];
    else if (strcmp(argv[i], "--rank") == 0 && i + 1 < argc) return bench_rank(argv[i + 1]);
    else return usage();
  }
  if (!r.source || ((!r.program || !r.floor) && !weighing)) return usage();
  setenv("PULLCORD_KNOWLEDGE", r.source, 1);
  setenv("XDG_DATA_HOME", "/nonexistent", 1); /* the shipped knowledge alone */
  if (!weighing && !bench_spawner()) return 1;
  if (load_knowledge(&k, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  r.k = &k;
  java = file_join(r.source, "tests/outside/weka");
  if (weighing) {
    bench_networks(quick);
    bench_weka(&r, java);
  } else {
    bench_starts(&r);
    bench_load();
    bench_conversation(&r);
  }
  bench_print(json);
  free(java);
  knowledge_free(&k);
  return 0;
}
