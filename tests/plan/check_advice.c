/* check_advice.c - see check_advice.h. */
#include "check_advice.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>

#include <cmocka.h>

#include "check_plan.h"

static bool same_step(struct advice_step x, struct advice_step y) { return x.kind == y.kind && x.at == y.at; }

/* The cost of a check is its own minutes and what its results lead to. */
static void check_results(const struct knowledge *k, const struct advice_option *o)
{
  double cost = o->minutes, chance = 0;

  if (o->result_count == 0) return;
  for (size_t i = 0; i < o->result_count; i++) {
    assert_true(o->results[i].chance > 0);
    assert_true(o->results[i].belief > 0 && o->results[i].belief <= 1 + 1e-12);
    assert_true((size_t)o->results[i].result < k->checks[o->step.at].results.count);
    chance += o->results[i].chance;
    cost += o->results[i].chance * o->results[i].cost;
  }
  near(chance, 1, "chances of the results");
  close_to(cost, o->cost, 1e-6, "cost of a check from its results");
}

static void check_option(const struct knowledge *k, const struct advice *a, const struct advice_option *o)
{
  assert_true(isfinite(o->cost) && o->cost >= 0);
  assert_true(o->cost <= a->give_up_cost + o->minutes + 1e-6); /* giving up is always open after it */
  close_to(o->break_even, o->minutes + o->without - o->cost, 1e-9, "break-even");
  assert_true(o->chance >= 0 && o->chance <= 1);
  assert_true(o->step.kind == ADVICE_CHECK || o->result_count == 0);
  assert_true((o->step.at >= 0) == (o->step.kind == ADVICE_CHECK || o->step.kind == ADVICE_REPAIR));
  if (o->step.kind == ADVICE_CHECK) check_results(k, o);
}

static void check_plan(const struct knowledge *k, const struct advice *a)
{
  assert_true(a->plan_count > 0 && a->plan_count <= ADVICE_STEPS);
  assert_int_equal(a->plan[0].step.kind, a->options[0].step.kind);
  assert_int_equal(a->plan[0].step.at, a->options[0].step.at);
  near(a->plan[0].chance, 1, "chance of the first step");
  for (size_t i = 0; i < a->plan_count; i++) {
    const struct advice_planned *p = &a->plan[i];

    if (i > 0) assert_true(p->chance <= a->plan[i - 1].chance + 1e-12);
    assert_true((p->result >= 0) == (p->step.kind == ADVICE_CHECK));
    if (p->result >= 0) assert_true((size_t)p->result < k->checks[p->step.at].results.count);
    for (size_t j = 0; j < i; j++) /* nothing is done twice */
      assert_false(p->step.at >= 0 && same_step(a->plan[j].step, p->step));
  }
}

void check_advice(const struct knowledge *k, const struct advice *a)
{
  bool wanted_first = a->options[0].ask_first >= 0, asks = a->options[0].step.kind == ADVICE_CHECK;
  double tie = asks ? knowledge_setting(k, "near-tie", 0) : 0; /* of checks, nearly the best may go first */

  assert_true(a->count > 0);
  assert_true(wanted_first || a->cost <= a->no_checks * (1 + 1e-6));
  assert_true(wanted_first || a->cost <= a->give_up_cost * (1 + 1e-9));
  for (size_t i = 0; i < a->count; i++) {
    check_option(k, a, &a->options[i]);
    if (i > 1) assert_true(a->options[i].cost >= a->options[i - 1].cost - 1e-9);
    if (i > 0 && !wanted_first) assert_true(a->options[0].cost <= a->options[i].cost * (1 + tie) + 1e-9);
    for (size_t j = 0; j < i; j++)
      assert_false(same_step(a->options[i].step, a->options[j].step));
  }
  if (!wanted_first) assert_true(a->options[0].without >= a->options[0].cost - 1e-9);
  assert_true(a->stop_checking == (a->options[0].step.kind != ADVICE_CHECK));
  assert_true(a->give_up == (a->options[0].step.kind == ADVICE_GIVE_UP));
  for (size_t i = 0; i < a->beside_count; i++) assert_true(a->beside[i].alone >= a->beside[i].minutes);
  check_plan(k, a);
}
