/* test_apprentices.c - simulated apprentices on the same machines: best path, one question
 * ahead, cheapest check first, parts-swapper, random. What they give away must come out in that
 * order, each pair of neighbours clearly apart; and the best path gives nothing away.
 *
 * 400 machines, each worked by all five: 2,000 runs. To stay within minutes the judge follows
 * fewer moves less far than in a practice run (judge_quickly), and the count stops after 16 steps
 * or when what the machine is worth has been spent. */
#include <math.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <setjmp.h>
#include <cmocka.h>

#include "base/random.h"
#include "practice/judge.h"
#include "practice/unsafe.h"
#include "practice/walk.h"
#include "with.h"

enum { MACHINES = 400, STEPS = 16, KINDS = 5, MOST_CHECKS_FIRST = 10 };
static const char *const names[KINDS] = {"best path", "one question ahead", "cheapest first", "parts-swapper",
                                         "random"};

static bool done(const struct run *r, enum act act, int at)
{
  for (size_t i = 0; i < r->step_count; i++)
    if (r->steps[i].entry.act == act && r->steps[i].entry.at == at) return true;
  return false;
}

/* The untried repair of the fault most believed, while any is worth a place in a list. */
static struct entry likeliest_part(const struct run *r)
{
  double least = knowledge_setting(r->k, "show-belief", 0.02);

  for (size_t i = 0; i < r->a.ranking_count; i++) {
    int fault = r->a.ranking[i].fault;

    if (fault >= 0 && r->a.ranking[i].blame >= least && !done(r, ACT_REPAIR, r->k->faults[fault].repair))
      return (struct entry){.act = ACT_REPAIR, .at = r->k->faults[fault].repair, .sure = -1};
  }
  return (struct entry){.act = ACT_GIVE_UP, .at = -1, .sure = -1};
}

/* What the judge thought best before it followed any move further: one question ahead and no more. */
static struct entry one_ahead(const struct run *r)
{
  struct entry entry = {.act = ACT_GIVE_UP, .at = -1, .sure = -1};

  switch (r->ahead.kind) {
  case ADVICE_CHECK: entry = (struct entry){.act = ACT_CHECK, .at = r->ahead.at, .sure = -1}; break;
  case ADVICE_REPAIR: entry = (struct entry){.act = ACT_REPAIR, .at = r->ahead.at, .sure = -1}; break;
  case ADVICE_PROVE:
    if (!done(r, ACT_PROVE, -1)) entry.act = ACT_PROVE;
    break;
  default: break;
  }
  if (entry.act == ACT_REPAIR && done(r, ACT_REPAIR, entry.at)) entry = likeliest_part(r);
  return entry;
}

static bool may(const struct run *r, const struct entry *entry)
{
  char why[600];

  return run_possible(r, entry, why, sizeof why) && !done(r, entry->act, entry->at) &&
         conclusion_find(&r->a.drawn, UNSAFE, entry->at, 0) < 0;
}

static struct entry cheapest(const struct run *r)
{
  struct entry best = {.act = ACT_GIVE_UP, .at = -1, .sure = -1};
  double least = 0, chance, parts;
  size_t checks = 0;

  for (size_t i = 0; i < r->step_count; i++) checks += r->steps[i].entry.act == ACT_CHECK;
  if (run_leading(r, &chance) >= 0 && (chance >= 0.8 || checks >= MOST_CHECKS_FIRST))
    return likeliest_part(r);
  for (size_t c = 0; c < r->k->check_count; c++) {
    struct entry entry = {.act = ACT_CHECK, .at = (int)c, .sure = -1};
    double minutes = run_minutes(r, &entry, &parts);

    if ((best.act == ACT_CHECK && minutes >= least) || !may(r, &entry)) continue;
    best = entry;
    least = minutes;
  }
  return best;
}

/* Any check or any repair, as the fancy takes. */
static struct entry any(const struct run *r, struct random *x)
{
  for (int tries = 0; tries < 1000; tries++) {
    size_t n = r->k->check_count + r->k->repair_count, i = (size_t)(random_unit(x) * (double)n);
    struct entry entry = {.act = ACT_CHECK, .at = (int)i, .sure = -1};
    double chance;

    if (i < r->k->check_count) {
      if (may(r, &entry)) return entry;
      continue;
    }
    entry = (struct entry){.act = ACT_REPAIR, .at = (int)(i - r->k->check_count), .sure = -1};
    chance = run_chance(r, entry.at);
    if (chance > 1e-4 && !done(r, ACT_REPAIR, entry.at)) return entry; /* a part that it has at all */
  }
  return (struct entry){.act = ACT_GIVE_UP, .at = -1, .sure = -1};
}

static struct entry choose(const struct run *r, int kind, struct random *x)
{
  switch (kind) {
  case 0: return walk_best(r);
  case 1: return one_ahead(r);
  case 2: return cheapest(r);
  case 3: return likeliest_part(r);
  default: return any(r, x);
  }
}

static bool all_spent(const struct run *r)
{
  double cost = r->minutes + r->parts / knowledge_setting(r->k, "shop-rate", 0.7);

  return cost > r->k->classes[r->c.machine_class].worth;
}

/* Minutes given away by one apprentice on one machine. */
static double work(struct with *w, int kind, uint64_t seed, long *steps)
{
  struct random x = {seed * 7919 + 1};
  struct run r;
  struct err e;
  double given;

  with_run(w, HIDDEN_ANY, NULL, seed, true, &r);
  while (r.end == RUN_OPEN && r.step_count < STEPS && !all_spent(&r)) {
    struct entry entry = choose(&r, kind, &x);

    run_make_safe(&r, &entry);
    if (run_do(&r, &entry, &e)) fail_msg("seed %llu: %s", (unsigned long long)seed, e.text);
  }
  given = r.regret;
  *steps += (long)r.step_count;
  run_free(&r);
  return given;
}

static double mean(const double *v, size_t n, double *half)
{
  double sum = 0, squares = 0;

  for (size_t i = 0; i < n; i++) sum += v[i];
  sum /= (double)n;
  for (size_t i = 0; i < n; i++) squares += (v[i] - sum) * (v[i] - sum);
  *half = 1.96 * sqrt(squares / (double)(n - 1) / (double)n);
  return sum;
}

static void order_of_apprentices(void **state)
{
  static double given[KINDS][MACHINES], apart[MACHINES];
  struct with *w = *state;
  double half;

  for (int k = 0; k < KINDS; k++) {
    double m;
    long steps = 0;

    for (int i = 0; i < MACHINES; i++) given[k][i] = work(w, k, (uint64_t)i + 1, &steps);
    m = mean(given[k], MACHINES, &half);
    printf("%-20s gave away %7.2f min a run (95 %%: %.2f .. %.2f) in %.1f steps\n", names[k], m, m - half,
           m + half, (double)steps / MACHINES);
    for (int i = 0; k > 0 && i < MACHINES; i++) apart[i] = given[k][i] - given[k - 1][i];
    if (k == 0) assert_true(fabs(m) < 1e-6);
    if (k == 0) continue;
    m = mean(apart, MACHINES, &half);
    if (m - half <= 0) fail_msg("%s is not clearly behind %s: %.2f +- %.2f", names[k], names[k - 1], m, half);
  }
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(order_of_apprentices)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
