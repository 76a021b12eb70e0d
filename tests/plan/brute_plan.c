/* brute_plan.c - see brute_plan.h. */
#include "brute_plan.h"

#include <stdlib.h>
#include <string.h>

/* chance[h] of each hypothesis; mended: repaired but not tried yet. Together 1. */
struct bench { double chance[8], mended; bool made[8], asked[4], off[8]; };

static double go_on(const struct plan_problem *p, const struct bench *b);

static bool is_shut(const struct plan_problem *p, int cover)
{
  for (; cover >= 0; cover = p->covers[cover].under)
    if (p->covers[cover].shut_to_run) return true;
  return false;
}

/* Takes a cover off after those above it; returns the cost. */
static double take_off(const struct plan_problem *p, struct bench *b, int cover)
{
  double cost = 0;

  if (b->off[cover]) return 0;
  if (p->covers[cover].under >= 0) cost = take_off(p, b, p->covers[cover].under);
  b->off[cover] = true;
  return cost + p->covers[cover].cost;
}

static double take_all_off(const struct plan_problem *p, struct bench *b, uint64_t covers)
{
  double cost = 0;

  for (size_t k = 0; k < p->cover_count; k++)
    if (covers >> k & 1) cost += take_off(p, b, (int)k);
  return cost;
}

static void put_on(const struct plan_problem *p, struct bench *b, uint64_t except)
{
  for (size_t k = 0; k < p->cover_count; k++)
    if (is_shut(p, (int)k) && !(except >> k & 1)) b->off[k] = false;
}

static double try_it(const struct plan_problem *p, const struct bench *b)
{
  struct bench next = *b;
  double wrong = 1 - b->mended;

  if (wrong < 1e-12) return 0;
  for (size_t h = 0; h < p->hypotheses; h++) next.chance[h] /= wrong;
  next.mended = 0;
  put_on(p, &next, 0);
  return wrong * go_on(p, &next);
}

static double make_it(const struct plan_problem *p, const struct bench *b, size_t a)
{
  const struct plan_repair *r = &p->repairs[a];
  struct bench next = *b;
  double cost = r->cost + take_all_off(p, &next, r->covers), tried, untried = 1e300;

  next.made[a] = true;
  for (size_t i = 0; i < r->effect_count; i++) {
    const struct plan_effect *e = &r->effects[i];
    double all = b->chance[e->hypothesis];

    next.chance[e->hypothesis] -= all * (e->clears + e->moves);
    next.mended += all * e->clears;
    cost += all * e->clears * r->on_success;
    if (e->moves > 0) next.chance[e->to] += all * e->moves;
  }
  tried = try_it(p, &next);
  for (size_t other = 0; other < p->repair_count; other++)
    if (!next.made[other]) {
      double on = make_it(p, &next, other);

      if (on < untried) untried = on;
    }
  return cost + (tried < untried ? tried : untried);
}

static double ask_it(const struct plan_problem *p, const struct bench *b, size_t q)
{
  const struct plan_question *question = &p->questions[q];
  struct bench there = *b;
  double cost;

  if (question->runs) put_on(p, &there, question->covers);
  cost = question->cost + take_all_off(p, &there, question->covers);
  there.asked[q] = true;
  for (int o = 0; o < question->outcomes; o++) {
    struct bench next = there;
    double sum = 0;

    for (size_t h = 0; h < p->hypotheses; h++)
      sum += next.chance[h] *= question->chance[(size_t)o * p->hypotheses + h];
    if (sum <= 0) continue;
    for (size_t h = 0; h < p->hypotheses; h++) next.chance[h] /= sum;
    cost += sum * go_on(p, &next);
  }
  return cost;
}

static double go_on(const struct plan_problem *p, const struct bench *b)
{
  double least = p->give_up;

  for (size_t a = 0; a < p->repair_count; a++)
    if (!b->made[a]) {
      double cost = make_it(p, b, a);

      if (cost < least) least = cost;
    }
  for (size_t q = 0; q < p->question_count; q++)
    if (!b->asked[q]) {
      double cost = ask_it(p, b, q);

      if (cost < least) least = cost;
    }
  return least;
}

double brute_least(const struct plan_problem *p)
{
  struct bench b = {.mended = 0};

  for (size_t h = 0; h < p->hypotheses; h++) b.chance[h] = p->weight[h];
  for (size_t k = 0; k < p->cover_count; k++) b.off[k] = p->open >> k & 1;
  return go_on(p, &b);
}

double brute_covers(const struct plan_problem *p)
{
  size_t n = p->repair_count, sets = (size_t)1 << n;
  double *least = mem_array(sets, sizeof *least), result;

  for (size_t made = sets; made-- > 0;) {
    struct bench b = {.mended = 0};
    double left = 0;

    for (size_t a = 0; a < n; a++)
      if (made >> a & 1) take_all_off(p, &b, p->repairs[a].covers);
      else left += p->weight[a];
    least[made] = p->give_up * left;
    for (size_t a = 0; a < n; a++) {
      struct bench there = b;
      double cost;

      if (made >> a & 1) continue;
      cost = left * (p->repairs[a].cost + take_all_off(p, &there, p->repairs[a].covers));
      cost += least[made | (size_t)1 << a];
      if (cost < least[made]) least[made] = cost;
    }
  }
  result = least[0];
  free(least);
  return result;
}
