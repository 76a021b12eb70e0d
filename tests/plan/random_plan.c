/* random_plan.c - see random_plan.h. */
#include "random_plan.h"

#include <math.h>

const char *const setting_names[SETTING_COUNT] = {
  "covers, no questions", "questions, no covers", "questions and covers",
  "and imperfect, overlapping repairs", "questions, covers back on to run"};

/* splitmix64, by Steele, Lea and Flood 2014 (from memory). */
static uint64_t next(struct chance_source *c)
{
  uint64_t z = c->state += 0x9e3779b97f4a7c15u;

  z = (z ^ z >> 30) * 0xbf58476d1ce4e5b9u;
  z = (z ^ z >> 27) * 0x94d049bb133111ebu;
  return z ^ z >> 31;
}

double chance_between(struct chance_source *c, double low, double high)
{
  return low + (high - low) * (double)(next(c) >> 11) / 9007199254740992.0;
}

int chance_below(struct chance_source *c, int n) { return (int)(next(c) % (uint64_t)n); }

static double log_between(struct chance_source *c, double low, double high)
{
  return exp(chance_between(c, log(low), log(high)));
}

static uint64_t some_cover(struct chance_source *c, const struct plan_problem *p)
{
  int k = chance_below(c, (int)p->cover_count + 1);

  return k == 0 ? 0 : UINT64_C(1) << (k - 1);
}

static void add_weights(struct chance_source *c, struct plan_problem *p)
{
  double sum = 0;

  for (size_t h = 0; h < p->hypotheses; h++) {
    double u = chance_between(c, 0.05, 1);

    sum += p->weight[h] = u * u * u;
  }
  for (size_t h = 0; h < p->hypotheses; h++) p->weight[h] /= sum;
}

static void add_covers(struct chance_source *c, struct plan_problem *p, int count, bool shut)
{
  for (int k = 0; k < count; k++)
    plan_add_cover(p, chance_below(c, 2) ? chance_below(c, k + 1) - 1 : -1, chance_between(c, 5, 60), shut);
}

static void add_repairs(struct chance_source *c, struct plan_problem *p, bool overlap)
{
  for (int h = 0; h < (int)p->hypotheses; h++) {
    int a = plan_add_repair(p, log_between(c, 5, 200), some_cover(c, p));

    plan_clears(p, a, h, overlap ? chance_between(c, 0.7, 1) : 1);
  }
  for (int i = 0; overlap && i < 2; i++) {
    int a = plan_add_repair(p, log_between(c, 5, 200), some_cover(c, p)), first = chance_below(c, 8);

    for (int j = 0; j < 3; j++) plan_clears(p, a, (first + 1 + j * 2) % 8, chance_between(c, 0.5, 0.95));
  }
}

static void add_questions(struct chance_source *c, struct plan_problem *p)
{
  for (int i = 0; i < 4; i++) {
    int q = plan_add_question(p, log_between(c, 2, 40), some_cover(c, p), 2);
    double *chance = p->questions[q].chance;

    for (size_t h = 0; h < p->hypotheses; h++) {
      double yes = chance_below(c, 2) ? chance_between(c, 0.7, 0.98) : chance_between(c, 0.02, 0.3);

      chance[h] = yes;
      chance[p->hypotheses + h] = 1 - yes;
    }
  }
}

void random_plan(struct plan_problem *p, enum plan_setting setting, uint64_t seed)
{
  struct chance_source c = {seed * 0x2545f4914f6cdd1du + (uint64_t)setting};

  plan_begin(p, 8);
  add_weights(&c, p);
  p->give_up = chance_between(&c, 300, 800);
  if (setting != SETTING_QUESTIONS) add_covers(&c, p, 3, setting == SETTING_SHUT);
  add_repairs(&c, p, setting == SETTING_OVERLAP);
  if (setting != SETTING_COVERS) add_questions(&c, p);
  plan_ready(p);
}

void random_tree(struct plan_problem *p, uint64_t seed)
{
  struct chance_source c = {seed};

  plan_begin(p, (size_t)(6 + chance_below(&c, 5)));
  add_weights(&c, p);
  p->give_up = chance_between(&c, 40, 800);
  add_covers(&c, p, 1 + chance_below(&c, 6), false);
  add_repairs(&c, p, false);
  plan_ready(p);
}
