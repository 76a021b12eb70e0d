/* bench_plan.c - how near the planner's policies come to the least possible cost, and how long
 * a decision takes on the real knowledge. Not a test: it prints figures, and goals beside them.
 * Usage: bench_plan [--instances N] [--trees N] [--cases N] [--rounds N] [--show] FOLDER-OR-FILE...
 * Folders are searched for case files; about N of them are taken, evenly. Seeds are the numbers
 * 1 to N, the same every time. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "brute_plan.h"
#include "decisions.h"
#include "knowledge/load.h"
#include "plan/policy.h"
#include "random_plan.h"

enum { POLICIES = 7 };

/* ---- excess over the least possible cost ------------------------------------------------ */

static const char *const policy_names[POLICIES] = {
  "chance over cost, covers folded in", "chance over cost under covers", "look-ahead, one question",
  "rollout over the look-ahead", "most information, then repair", "floor: truth told at once", "exact"};

/* Costs of one random job by every policy, and the time that two of them take. */
static void run_policies(const struct plan_problem *p, double *cost, double *step_ms, double *exact_ms)
{
  struct planner x;
  struct plan_state s;
  double t;

  plan_start(p, &s);
  cost[0] = plan_folded(p, &s, NULL);
  cost[1] = plan_base(p, &s, NULL);
  planner_open(&x, p, PLAN_NO_LIMIT);
  t = now_ms();
  cost[2] = plan_follow(&x, &s, PLAN_TO_THE_END);
  cost[3] = plan_step_follow(&x, &s);
  *step_ms += now_ms() - t;
  planner_close(&x);
  cost[4] = plan_most_information(p, &s, 0.9);
  cost[5] = plan_floor(p, &s);
  planner_open(&x, p, PLAN_NO_LIMIT);
  t = now_ms();
  plan_exact(&x, &s, &cost[6], NULL);
  *exact_ms += now_ms() - t;
  planner_close(&x);
}

static void print_excess(enum plan_setting setting, size_t instances)
{
  double *excess[POLICIES], step_ms = 0, exact_ms = 0;

  for (int i = 0; i < POLICIES; i++) excess[i] = mem_array(instances, sizeof **excess);
  for (size_t n = 0; n < instances; n++) {
    struct plan_problem p;
    double cost[POLICIES];

    random_plan(&p, setting, n + 1);
    run_policies(&p, cost, &step_ms, &exact_ms);
    for (int i = 0; i < POLICIES; i++) excess[i][n] = 100 * (cost[i] / cost[POLICIES - 1] - 1);
    plan_free(&p);
  }
  printf("\n%s: %zu instances, seeds 1-%zu; exact %.2f ms, rollout %.2f ms each\n", setting_names[setting],
         instances, instances, exact_ms / (double)instances, step_ms / (double)instances);
  printf("  %-36s %9s %9s %9s %9s\n", "excess over the least cost, %", "mean", "p95", "max", "min");
  for (int i = 0; i < POLICIES; i++) {
    double sum = 0;

    qsort(excess[i], instances, sizeof **excess, by_size);
    for (size_t n = 0; n < instances; n++) sum += excess[i][n];
    if (i < POLICIES - 1)
      printf("  %-36s %9.3f %9.2f %9.2f %9.2f\n", policy_names[i], sum / (double)instances,
             at_share(excess[i], instances, 0.95), excess[i][instances - 1], excess[i][0]);
    free(excess[i]);
  }
  printf("  %-36s %9g %9g %9g\n", "goal for the rollout, at most", 0.5, 2.0, 7.0);
}

/* Under a tree of covers, with perfect independent repairs and no questions, the plain policy
 * has to be the best there is: held to trying every set of repairs. */
static void print_trees(size_t trees)
{
  size_t optimal = 0, folded = 0;

  for (uint64_t seed = 1; seed <= trees; seed++) {
    struct plan_problem p;
    struct plan_state s;
    double least;

    random_tree(&p, seed);
    plan_start(&p, &s);
    least = brute_covers(&p);
    optimal += plan_base(&p, &s, NULL) <= least * (1 + 1e-12);
    folded += plan_folded(&p, &s, NULL) <= least * (1 + 1e-12);
    plan_free(&p);
  }
  printf("\ntree of covers, perfect repairs, no questions: seeds 1-%zu\n", trees);
  printf("  %-36s %zu of %zu   goal all\n", "least cost reached", optimal, trees);
  printf("  %-36s %zu of %zu\n", "by chance over cost, covers folded in", folded, trees);
}

int main(int argc, char **argv)
{
  size_t instances = 1000, trees = 10000, cases = 50;
  int rounds = 20, i = 1;
  bool showing = false;
  struct knowledge k;
  struct err e;

  for (; i < argc && strncmp(argv[i], "--", 2) == 0; i++)
    if (strcmp(argv[i], "--show") == 0) showing = true;
    else if (strcmp(argv[i], "--instances") == 0 && i + 1 < argc) instances = strtoul(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "--trees") == 0 && i + 1 < argc) trees = strtoul(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "--cases") == 0 && i + 1 < argc) cases = strtoul(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "--rounds") == 0 && i + 1 < argc) rounds = atoi(argv[++i]);
  for (int s = 0; s < SETTING_COUNT && instances > 0; s++) print_excess((enum plan_setting)s, instances);
  if (trees > 0) print_trees(trees);
  if (i == argc) return 0;
  if (load_knowledge(&k, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  time_decisions(&k, argv + i, argc - i, cases > 0 ? cases : 1, rounds > 0 ? rounds : 1, showing);
  knowledge_free(&k);
  return 0;
}
