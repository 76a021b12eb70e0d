/* weka.c - the same small network solved here and by Weka's junction tree, in the same run. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "base/mem.h"
#include "bench.h"
#include "part.h"

enum { NETS = 6, RUNS = 51, KEPT = 12, OURS = 201 };

static const char *weka_jar(void)
{
  const char *jar = getenv("WEKA_JAR");

  return jar ? jar : "/usr/share/java/weka.jar";
}

static bool compile(const char *java, const char *folder)
{
  char command[2000];

  snprintf(command, sizeof command,
           "command -v java javac >/dev/null && [ -r '%s' ] && javac -cp '%s' -d '%s' '%s/Margins.java'",
           weka_jar(), weka_jar(), folder, java);
  return system(command) == 0;
}

/* Median milliseconds of net_solve on it. */
static double our_time(const struct net *net)
{
  double ms[OURS], belief[BIF_MAX_FAULTS];

  for (int i = 0; i < OURS; i++) {
    double start = bench_now();

    if (!net_solve(net, belief, NULL, NULL)) return -1;
    ms[i] = bench_now() - start;
  }
  return bench_median(ms, OURS);
}

/* Writes the networks of some cases and the requests for Weka; ours[] gets our times. */
static size_t write_networks(const struct bench_real *r, const char *folder, double *ours)
{
  size_t count, n = 0;
  char **paths = bench_cases(r->source, 149, &count), *name = file_join(folder, "requests");
  FILE *requests = fopen(name, "w");

  for (size_t i = 0; requests && i < count && n < NETS; i++) {
    struct assessment a;
    struct part p;
    char file[300], evidence[2000];
    FILE *f;

    if (part_assess(r->k, paths[i], &a)) continue;
    part_make(&p, &a, KEPT, KEPT);
    snprintf(file, sizeof file, "%s/net-%zu.xml", folder, n);
    f = fopen(file, "w");
    ours[n] = our_time(&p.net);
    if (f && ours[n] >= 0 && bif_write(f, &p.net, p.names, evidence, sizeof evidence))
      n += fprintf(requests, "%s %s %s 1 0 0\n", file, evidence, p.names[0]) > 0;
    if (f) fclose(f);
    part_free(&p);
    assessment_free(&a);
  }
  if (requests) fclose(requests);
  free(name);
  bench_free_cases(paths, count);
  return n;
}

static size_t their_times(const char *folder, double *theirs)
{
  char command[2000], line[400];
  size_t n = 0;
  FILE *f;

  snprintf(command, sizeof command, "java -cp '%s:%s' Margins --time %d '%s/requests' 2>/dev/null",
           weka_jar(), folder, RUNS, folder);
  f = popen(command, "r");
  while (f && n < NETS && fgets(line, sizeof line, f)) {
    const char *space = strchr(line, ' ');

    if (space) theirs[n++] = strtod(space, NULL);
  }
  if (f) pclose(f);
  return n;
}

static void remove_folder(const char *folder)
{
  char command[400];

  snprintf(command, sizeof command, "rm -r '%s'", folder);
  if (system(command) != 0) fprintf(stderr, "could not remove %s\n", folder);
}

void bench_weka(const struct bench_real *r, const char *java)
{
  char folder[] = "/tmp/pullcord-bench-XXXXXX";
  static const char group[] = "against Weka 3.6, same networks";
  double ours[NETS], theirs[NETS], ratio[NETS];
  size_t n;

  if (!mkdtemp(folder)) return;
  if (!compile(java, folder)) {
    fprintf(stderr, "bench: no Java compiler or no Weka: not compared with it\n");
  } else {
    n = write_networks(r, folder, ours);
    if (their_times(folder, theirs) == n && n > 0) {
      for (size_t i = 0; i < n; i++) ratio[i] = theirs[i] / ours[i];
      bench_add(group, "ours, 12 faults of a real case", "ms", ours, n, 0, "each the median of 201");
      bench_add(group, "Weka, junction tree in its own process", "ms", theirs, n, 0,
                "each the median of 51, file read before");
      bench_add(group, "Weka's time over ours", "x", ratio, n, 100,
                "goal: at least; 100 x 150 is beyond Weka: tables of all causes of a check");
    }
  }
  remove_folder(folder);
}
