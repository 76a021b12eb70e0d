/* starts.c - cold starts: the shipped knowledge, a first cut of it, and ten times a first cut. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "base/heap.h"
#include "base/mem.h"
#include "bench.h"
#include "knowledge/load.h"
#include "shop/casefile.h"
#include "sizes.h"

enum { RUNS = 41, CASES = 7 };

/* One size: a folder of knowledge, and cases that it can read. */
struct size {
  const char *folder;
  double goal; /* ms to the first ranking */
  char group[64], *cases[CASES];
  size_t case_count;
};

int bench_rank(const char *path)
{
  struct knowledge k;
  struct bench_case c;
  struct assessor *a;
  struct assessment out;
  struct json *j;
  struct err e;
  char *text;
  size_t len;

  heap_begin(); /* as the program does */
  if (file_read(path, JSON_MAX_BYTES, &text, &len, &e) || json_read(path, text, len, &j, &e) ||
      load_knowledge(&k, &e) || casefile_read(&k, path, j, &c, &e) || assessor_open(&k, &a, &e) ||
      assess_case(a, &c, &out, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  printf("%d %.17g\n", out.ranking[0].fault, out.ranking[0].belief);
  return fflush(stdout) != 0; /* nothing is tidied up: the program would not either */
}

/* The case alone, without what is expected of it, as the program takes it. */
static char *write_case(const struct knowledge *k, const struct bench_case *c, const char *folder,
                        size_t number)
{
  struct json *j = casefile_write(k, c);
  char *text = json_print(j), name[32], *path;
  FILE *f;
  bool good;

  snprintf(name, sizeof name, "case-%zu.json", number);
  path = file_join(folder, name);
  f = fopen(path, "w");
  good = f && fputs(text, f) >= 0;
  if (f && fclose(f) != 0) good = false;
  free(text);
  json_free(j);
  if (good) return path;
  free(path);
  return NULL;
}

/* Cases with two results or more, from all over tests/cases, as far as this knowledge knows what
 * they are about. */
static void pick_cases(struct size *z, const struct bench_real *r, const struct knowledge *k,
                       const char *folder)
{
  size_t count, every = k == r->k ? 149 : 1;
  char **paths = bench_cases(r->source, every, &count);

  for (size_t i = 0; i < count && z->case_count < CASES; i++) {
    struct bench_case c;

    if (!bench_read_case(k, paths[i], &c)) continue;
    if (c.result_count >= 2) z->cases[z->case_count] = write_case(k, &c, folder, z->case_count);
    z->case_count += z->cases[z->case_count] != NULL;
    case_free(&c);
  }
  bench_free_cases(paths, count);
}

static void print_over(const char *group, const char *name, double ours, double floor)
{
  double ratio = floor > 0 ? ours / floor : 0;

  if (ratio > 0) bench_add(group, name, "x", &ratio, 1, 0, "ratio of the medians of this run");
}

/* The floors and ours take turns, so that other work on the machine meets all alike. */
static void time_starts(const struct size *z, const struct bench_real *r)
{
  double read[RUNS], rank[RUNS], worked[RUNS], whole[RUNS], mib[RUNS];
  double bare[RUNS], bare_worked[RUNS], bare_mib[RUNS], none[RUNS], none_worked[RUNS];
  size_t n = 0;

  for (size_t i = 0; i < RUNS && z->case_count > 0; i++) {
    const char *file = z->cases[i % z->case_count];
    const char *const none_args[] = {r->floor, "none", z->folder, NULL};
    const char *const read_args[] = {r->floor, "read", z->folder, NULL};
    const char *const bare_args[] = {r->floor, "rules", z->folder, NULL};
    const char *const rank_args[] = {r->self, "--rank", file, NULL};
    const char *const whole_args[] = {r->program, "assess", file, NULL};
    struct bench_spawned a = bench_spawn(z->folder, read_args), b = bench_spawn(z->folder, bare_args);
    struct bench_spawned nothing = bench_spawn(z->folder, none_args);
    struct bench_spawned c = bench_spawn(z->folder, rank_args), d = bench_spawn(z->folder, whole_args);

    if (!a.good || !b.good || !c.good || !d.good) {
      fprintf(stderr, "%s: a start failed (%d %d %d %d) on %s\n", z->group, a.good, b.good, c.good, d.good,
              file);
      continue;
    }
    none[n] = nothing.ms;
    none_worked[n] = nothing.worked;
    read[n] = a.ms;
    bare[n] = b.ms;
    bare_worked[n] = b.worked;
    bare_mib[n] = b.mib;
    rank[n] = c.ms;
    worked[n] = c.worked;
    whole[n] = d.ms;
    mib[n++] = d.mib;
  }
  bench_add(z->group, "cold start to a first ranking", "ms", rank, n, z->goal, NULL);
  bench_add(z->group, "the same, of the processor", "ms", worked, n, 0, NULL);
  bench_add(z->group, "pullcord assess, planned and printed", "ms", whole, n, 0, NULL);
  bench_add(z->group, "floor: a process that does nothing", "ms", none, n, 0, NULL);
  bench_add(z->group, "the same, of the processor", "ms", none_worked, n, 0, NULL);
  bench_add(z->group, "floor: process, all files read", "ms", read, n, 0, NULL);
  bench_add(z->group, "floor: the same, rules into the bare library", "ms", bare, n, 0, NULL);
  bench_add(z->group, "that floor, of the processor", "ms", bare_worked, n, 0, NULL);
  if (n > 0) print_over(z->group, "first ranking over that floor", worked[n / 2], bare_worked[n / 2]);
  bench_add(z->group, "memory of pullcord assess", "MiB", mib, n, 16, "p99 is the largest");
  bench_add(z->group, "memory of that floor", "MiB", bare_mib, n, 0, NULL);
}

static void free_cases(struct size *z)
{
  for (size_t i = 0; i < z->case_count; i++) {
    unlink(z->cases[i]);
    free(z->cases[i]);
  }
}

static void time_size(const struct bench_real *r, const char *name, const struct knowledge *k,
                      const char *folder, const char *cases, double goal)
{
  struct size z = {.folder = folder, .goal = goal};

  snprintf(z.group, sizeof z.group, "%s: %zu faults, %zu checks, %zu rules", name, k->fault_count,
           k->check_count, k->rule_count);
  pick_cases(&z, r, k, cases);
  if (z.case_count == 0) fprintf(stderr, "%s: no case fits\n", z.group);
  time_starts(&z, r);
  free_cases(&z);
}

static void time_made(const struct bench_real *r, const char *name, size_t faults, size_t checks,
                      size_t rules, double goal)
{
  char folder[] = "/tmp/pullcord-bench-XXXXXX";
  struct knowledge k;
  struct err e;

  if (!mkdtemp(folder)) return;
  if (sizes_write(r->k, r->source, folder, faults, checks, rules) == 0) {
    setenv("PULLCORD_KNOWLEDGE", folder, 1);
    if (load_knowledge(&k, &e) == 0) {
      time_size(r, name, &k, folder, folder, goal);
      knowledge_free(&k);
    } else {
      fprintf(stderr, "%s: %s:%d: %s\n", name, e.file, e.line, e.text);
    }
    setenv("PULLCORD_KNOWLEDGE", r->source, 1);
  }
  sizes_remove(r->source, folder);
}

void bench_starts(const struct bench_real *r)
{
  char cases[] = "/tmp/pullcord-bench-XXXXXX";

  time_made(r, "first cut", 40, 50, 30, 15);
  time_made(r, "ten first cuts", 400, 500, 300, 60);
  if (!mkdtemp(cases)) return;
  time_size(r, "shipped", r->k, r->source, cases, 60);
  rmdir(cases);
}
