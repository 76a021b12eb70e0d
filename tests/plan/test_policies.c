/* test_policies.c - the policies against brute force on seeded random problems. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "brute_plan.h"
#include "check_plan.h"
#include "random_plan.h"

enum { TREES = 10000, SMALL = 250, MIXED = 120 };

/* The base policy is optimal for perfect independent repairs under a tree of covers. Computed
 * independently: dynamic programming over sets of repairs. */
static void trees_are_optimal(void **state)
{
  size_t folded_worse = 0;

  (void)state;
  for (uint64_t seed = 1; seed <= TREES; seed++) {
    struct plan_problem p;
    struct plan_state s;
    double least;

    random_tree(&p, seed);
    plan_start(&p, &s);
    least = brute_covers(&p);
    close_to(plan_base(&p, &s, NULL), least, 1e-12, "base policy");
    close_to(follow_base(&p, &s, NULL, false), least, 1e-12, "following the base policy");
    if (plan_folded(&p, &s, NULL) > least * (1 + 1e-9)) folded_worse++;
    plan_free(&p);
  }
  assert_true(folded_worse > TREES / 10); /* or the trees would try nothing */
}

/* A small problem with everything: covers that go back on to run, repairs that are imperfect,
 * overlap, or leave another fault behind, parts paid only when found bad, questions that run
 * the engine, of two or three outcomes. */
static void random_small(struct plan_problem *p, uint64_t seed)
{
  struct chance_source c = {seed};
  double sum = 0;

  plan_begin(p, 4);
  p->give_up = chance_between(&c, 30, 300);
  for (int h = 0; h < 4; h++) sum += p->weight[h] = chance_between(&c, 0.02, 1);
  for (int h = 0; h < 4; h++) p->weight[h] /= sum;
  for (int k = 0; k < 3; k++)
    plan_add_cover(p, chance_below(&c, k + 1) - 1, chance_between(&c, 2, 40), chance_below(&c, 2) == 0);
  for (int a = 0; a < 4; a++) {
    plan_add_repair(p, chance_between(&c, 2, 60), (uint64_t)chance_below(&c, 8));
    if (chance_below(&c, 3) == 0) p->repairs[a].on_success = chance_between(&c, 1, 20);
    plan_clears(p, a, a, chance_below(&c, 2) ? 1 : chance_between(&c, 0.4, 1));
    if (chance_below(&c, 3) == 0)
      plan_effect(p, a,
                  (struct plan_effect){(a + 1) % 4, (a + 2) % 4, 0.3, chance_between(&c, 0.1, 0.6), 0.5});
  }
  for (int q = 0; q < 2; q++) {
    int outcomes = 2 + chance_below(&c, 2);

    plan_add_question(p, chance_between(&c, 0.5, 15), (uint64_t)chance_below(&c, 8), outcomes);
    p->questions[q].runs = chance_below(&c, 2) == 0;
    for (int h = 0; h < 4; h++) {
      double left = 1;

      for (int o = 0; o < outcomes - 1; o++) {
        double part = left * (chance_below(&c, 5) == 0 ? 0 : chance_between(&c, 0, 1));

        p->questions[q].chance[o * 4 + h] = part;
        left -= part;
      }
      p->questions[q].chance[(outcomes - 1) * 4 + h] = left;
    }
  }
  if (chance_below(&c, 3) == 0) p->open = 1;
  plan_ready(p);
}

/* Computed independently: trying everything. */
static void exact_is_least(void **state)
{
  (void)state;
  for (uint64_t seed = 1; seed <= SMALL; seed++) {
    struct plan_problem p;

    random_small(&p, seed);
    close_to(exact(&p), brute_least(&p), 1e-11, "least cost");
    plan_free(&p);
  }
}

/* What a policy says it costs is what it costs, none is below the least cost, rollout is never
 * above the look-ahead, and the floor never above the least cost. */
static void check_order(const struct plan_problem *p)
{
  struct plan_state s;
  struct planner x;
  double least = exact(p), base, look, step, first;

  plan_start(p, &s);
  planner_open(&x, p, PLAN_NO_LIMIT);
  base = plan_base(p, &s, NULL);
  look = plan_follow(&x, &s, PLAN_TO_THE_END);
  first = plan_step(&x, &s, PLAN_TO_THE_END, NULL);
  step = plan_step_follow(&x, &s);
  assert_true(plan_floor(p, &s) <= least * (1 + 1e-12));
  assert_true(least <= step * (1 + 1e-12));
  assert_true(step <= first * (1 + 1e-12));
  assert_true(first <= look * (1 + 1e-12));
  assert_true(plan_look(&x, &s, NULL) <= base);
  assert_true(plan_follow(&x, &s, 0) == base);
  assert_true(plan_most_information(p, &s, 0.9) >= least * (1 - 1e-12));
  planner_close(&x);
}

static void never_worse_than_the_look_ahead(void **state)
{
  (void)state;
  for (uint64_t seed = 1; seed <= MIXED; seed++) {
    struct plan_problem p;

    random_plan(&p, (enum plan_setting)(seed % SETTING_COUNT), 1000000 + seed);
    check_order(&p);
    plan_free(&p);
    random_small(&p, 1000000 + seed);
    check_order(&p);
    plan_free(&p);
  }
}

/* The base policy costs what it says when it is followed move by move. */
static void base_keeps_its_word(void **state)
{
  (void)state;
  for (uint64_t seed = 1; seed <= SMALL; seed++) {
    struct plan_problem p;
    struct plan_state s;

    random_plan(&p, SETTING_OVERLAP, 2000000 + seed);
    plan_start(&p, &s);
    close_to(follow_base(&p, &s, NULL, false), plan_base(&p, &s, NULL), 1e-12, "base policy followed");
    plan_free(&p);
  }
}

/* The quicker ways of the base policy claim nothing that cannot be had. */
static void quick_orders_are_possible(void **state)
{
  (void)state;
  for (uint64_t seed = 1; seed <= SMALL; seed++) {
    struct plan_problem p;
    struct plan_state s;
    double least;

    random_small(&p, 3000000 + seed);
    plan_start(&p, &s);
    least = exact(&p);
    assert_true(plan_base(&p, &s, NULL) >= least * (1 - 1e-12));
    assert_true(plan_folded(&p, &s, NULL) >= least * (1 - 1e-12));
    p.order_once = true;
    assert_true(plan_base(&p, &s, NULL) >= least * (1 - 1e-12));
    p.trifle = 0.1;
    assert_true(plan_base(&p, &s, NULL) >= least * (1 - 1e-12));
    plan_free(&p);
  }
}

/* A state reached by two ways is one state, also when repairs leave other faults behind. */
static void keys_do_not_depend_on_the_way(void **state)
{
  struct plan_problem p;
  struct plan_move first = plan_repairing(0), second = plan_repairing(1);
  struct plan_state s, a, b, ab, ba;
  struct plan_key x, y;

  (void)state;
  random_small(&p, 3);
  p.repairs[0].effect_count = p.repairs[1].effect_count = 1;
  p.moving = true;
  plan_start(&p, &s);
  plan_make(&p, &s, &first, &a);
  plan_make(&p, &a, &second, &ab);
  plan_outcome(&p, &ab, 0, 1, &a);
  plan_outcome(&p, &s, 0, 1, &b);
  plan_make(&p, &b, &second, &ba);
  plan_make(&p, &ba, &first, &b);
  b.open = a.open;
  x = plan_key_of(&p, &a);
  y = plan_key_of(&p, &b);
  assert_memory_equal(&x, &y, sizeof x);
  plan_outcome(&p, &ab, 0, 0, &b);
  y = plan_key_of(&p, &b);
  assert_memory_not_equal(&x, &y, sizeof x);
  plan_free(&p);
}

/* The limit of steps is kept: the search says that it did not finish. */
static void limits_are_kept(void **state)
{
  struct plan_problem p;
  struct plan_state s;
  struct planner x;
  double value;

  (void)state;
  random_plan(&p, SETTING_BOTH, 5);
  plan_start(&p, &s);
  planner_open(&x, &p, 50);
  assert_false(plan_exact(&x, &s, &value, NULL));
  assert_true(x.steps <= 51);
  planner_close(&x);
  planner_open(&x, &p, 50);
  plan_follow(&x, &s, PLAN_TO_THE_END);
  assert_true(x.spent);
  assert_true(x.steps < 200);
  planner_close(&x);
  plan_free(&p);
}

/* Setting a question aside is the same as never having had it. */
static void set_aside_is_as_if_not_there(void **state)
{
  struct plan_problem p;
  struct plan_state s;
  struct planner x;
  double without, other;

  (void)state;
  random_plan(&p, SETTING_BOTH, 11);
  plan_start(&p, &s);
  plan_set_aside(&s, (int)p.question_count - 1);
  planner_open(&x, &p, PLAN_NO_LIMIT);
  assert_true(plan_exact(&x, &s, &without, NULL));
  planner_close(&x);
  p.question_count--;
  other = exact(&p);
  p.question_count++;
  close_to(without, other, 1e-12, "without the last question");
  assert_true(without >= exact(&p) * (1 - 1e-12));
  plan_free(&p);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test(trees_are_optimal), cmocka_unit_test(exact_is_least),
    cmocka_unit_test(never_worse_than_the_look_ahead), cmocka_unit_test(base_keeps_its_word),
    cmocka_unit_test(quick_orders_are_possible),
    cmocka_unit_test(keys_do_not_depend_on_the_way), cmocka_unit_test(limits_are_kept),
    cmocka_unit_test(set_aside_is_as_if_not_there)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
