/* simulate.c - simulated jobs: a machine is drawn from the model, the advised checks are
 * followed, and what came out is counted. Usage: simulate JOBS SEED. Prints, per system and
 * in all: how often the culprit was first and among the first three, minutes spent, and how
 * far the stated chances can be trusted. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "assess/assess.h"
#include "knowledge/load.h"
#include "practice/hidden.h"

enum { MOST_STEPS = 15, SYSTEMS = 10, BINS = 10 };

static const char *const systems[SYSTEMS] = {"fuel", "air", "ignition", "compression", "exhaust",
                                             "lubrication", "governor", "starting", "driven", "use"};

struct tally {
  size_t jobs, first, three, steps, bin_count[BINS], bin_hits[BINS];
  double minutes, brier, bin_sum[BINS];
};

static int system_of(const char *name)
{
  for (int i = 0; i < SYSTEMS; i++)
    if (strcmp(systems[i], name) == 0) return i;
  return 0;
}

static void count(struct tally *t, size_t rank, double stated, size_t steps, double minutes)
{
  int bin = (int)(stated * BINS);

  if (bin == BINS) bin--;
  t->jobs++;
  t->first += rank == 0;
  t->three += rank < 3;
  t->steps += steps;
  t->minutes += minutes;
  t->brier += pow(stated - (rank == 0), 2);
  t->bin_count[bin]++;
  t->bin_hits[bin] += rank == 0;
  t->bin_sum[bin] += stated;
}

/* One job; the culprit's rank at the end, counted for its system and in all. */
static int run_job(const struct knowledge *k, struct assessor *assessor, uint64_t seed, struct tally *tallies)
{
  struct assessment a;
  struct hidden h;
  struct err e;
  size_t steps = 0, rank = 0;
  double minutes = 0;
  int culprit, system;

  hidden_draw(k, -1, seed, &h);
  if (h.culprit < 0) {
    hidden_free(&h);
    return 1;
  }
  if (assess_case(assessor, &h.machine, &a, &e)) {
    fprintf(stderr, "seed %llu: %s\n", (unsigned long long)seed, e.text);
    exit(1);
  }
  while (a.disposition == DISPOSITION_KEEP_LOOKING && a.plan.count > 0 && steps < MOST_STEPS) {
    const struct next_step *s = &a.plan.steps[0];

    minutes += s->minutes;
    steps++;
    case_set_result(&h.machine, (struct case_result){s->check, hidden_result(&h, s->check), 0, 1});
    assessment_free(&a);
    if (assess_case(assessor, &h.machine, &a, &e)) exit(1);
  }
  culprit = h.net.fault_of[h.culprit];
  while (rank < a.ranking_count && a.ranking[rank].fault != culprit) rank++;
  system = system_of(k->faults[culprit].system);
  count(&tallies[system], rank, a.ranking[0].blame, steps, minutes);
  count(&tallies[SYSTEMS], rank, a.ranking[0].blame, steps, minutes);
  assessment_free(&a);
  hidden_free(&h);
  return 0;
}

static void print_row(const char *name, const struct tally *t)
{
  double n = t->jobs ? (double)t->jobs : 1;

  printf("%-12s %6zu  %5.1f %%  %5.1f %%  %6.1f  %8.1f   %.3f\n", name, t->jobs, 100 * (double)t->first / n,
         100 * (double)t->three / n, (double)t->steps / n, t->minutes / n, t->brier / n);
}

/* How far the stated chances of one system can be trusted, `width` bins taken together. */
static void print_reliability(const char *name, const struct tally *t, int width)
{
  for (int b = 0; b < BINS; b += width) {
    size_t count = 0, hits = 0;
    double sum = 0;

    for (int i = b; i < b + width; i++) {
      count += t->bin_count[i];
      hits += t->bin_hits[i];
      sum += t->bin_sum[i];
    }
    if (count)
      printf("%-12s %3d-%3d %%  %5zu jobs  stated %5.1f %%  right %5.1f %%\n", name, b * 10, (b + width) * 10,
             count, 100 * sum / (double)count, 100 * (double)hits / (double)count);
  }
}

int main(int argc, char **argv)
{
  size_t jobs = argc > 1 ? strtoul(argv[1], NULL, 10) : 200;
  uint64_t seed = argc > 2 ? strtoull(argv[2], NULL, 10) : 1;
  struct tally tallies[SYSTEMS + 1];
  struct assessor *assessor;
  struct knowledge k;
  struct err e;

  memset(tallies, 0, sizeof tallies);
  if (load_knowledge(&k, &e) || assessor_open(&k, &assessor, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  for (size_t i = 0; i < jobs; i++) run_job(&k, assessor, seed + i, tallies);
  printf("%zu simulated jobs, seeds %llu to %llu\n", jobs, (unsigned long long)seed,
         (unsigned long long)(seed + jobs - 1));
  printf("%-12s %6s  %7s  %7s  %6s  %8s   %s\n", "system", "jobs", "first", "three", "checks", "minutes", "Brier");
  for (int i = 0; i <= SYSTEMS; i++) print_row(i < SYSTEMS ? systems[i] : "all", &tallies[i]);
  puts("\nstated chance of the first cause against how often it was right");
  print_reliability("all", &tallies[SYSTEMS], 1);
  for (int i = 0; i < SYSTEMS; i++) print_reliability(systems[i], &tallies[i], 2);
  assessor_close(assessor);
  knowledge_free(&k);
  return 0;
}
