/* check_plan.c - see check_plan.h. */
#include "check_plan.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>

#include <cmocka.h>

void near(double got, double want, const char *what)
{
  if (!(fabs(got - want) <= 1e-9)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

void close_to(double got, double want, double relative, const char *what)
{
  if (!(fabs(got - want) <= relative * fmax(fabs(got), fabs(want))))
    fail_msg("%s: %.15g, not %.15g", what, got, want);
}

void perfect(struct plan_problem *p, size_t count, const double *weight, const double *cost)
{
  plan_begin(p, count);
  p->give_up = 1e6;
  for (size_t i = 0; i < count; i++) {
    p->weight[i] = weight[i];
    plan_clears(p, plan_add_repair(p, cost[i], 0), (int)i, 1);
  }
}

int yes_no(struct plan_problem *p, double cost, const double *yes)
{
  int q = plan_add_question(p, cost, 0, 2);

  for (size_t h = 0; h < p->hypotheses; h++) {
    p->questions[q].chance[h] = yes[h];
    p->questions[q].chance[p->hypotheses + h] = 1 - yes[h];
  }
  return q;
}

double exact(const struct plan_problem *p)
{
  struct plan_state s;
  struct planner x;
  double value;

  plan_start(p, &s);
  planner_open(&x, p, PLAN_NO_LIMIT);
  if (!plan_exact(&x, &s, &value, NULL)) fail_msg("the exact search gave up");
  planner_close(&x);
  return value;
}

double exact_with(const struct plan_problem *p, struct plan_move m)
{
  struct plan_state s;
  struct planner x;
  double value;

  plan_start(p, &s);
  planner_open(&x, p, PLAN_NO_LIMIT);
  if (!plan_exact_move(&x, &s, &m, &value)) fail_msg("the exact search gave up");
  planner_close(&x);
  return value;
}

double follow_base(const struct plan_problem *p, const struct plan_state *s, char *order, bool tries)
{
  struct plan_state now = *s, next;
  double cost = 0;

  while (plan_weight(p, &now) > 0) {
    struct plan_move m;

    plan_base(p, &now, &m);
    if (m.kind == PLAN_GIVE_UP) {
      cost += p->give_up * plan_weight(p, &now);
      break;
    }
    for (int i = 0; order && i < m.count; i++) *order++ = (char)('a' + m.visit[i]);
    if (order && tries) *order++ = '.';
    cost += plan_make(p, &now, &m, &next);
    now = next;
  }
  if (order) *order = 0;
  return cost;
}
