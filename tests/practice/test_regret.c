/* test_regret.c - what a step gives away: worked examples W3 and W11 of the method notes, and
 * judgements on made-up machines. W3 and W11's first-test values were computed independently;
 * W11's inputs are from memory: Pattipati and Alexandridis 1990. */
#include <math.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <setjmp.h>
#include <cmocka.h>

#include "practice/judge.h"
#include "practice/walk.h"
#include "with.h"

static void near(double is, double should, const char *what)
{
  if (fabs(is - should) > 1e-9) fail_msg("%s: %.12g, expected %.12g", what, is, should);
}

static void question(struct plan_problem *p, double cost, const double *yes)
{
  int q = plan_add_question(p, cost, 0, 2);

  for (size_t h = 0; h < p->hypotheses; h++) {
    p->questions[q].chance[h] = yes[h];
    p->questions[q].chance[p->hypotheses + h] = 1 - yes[h];
  }
}

/* Regrets: ask 0, third repair 1.9, first 16.0, second 20.6. */
static void one_question(void **state)
{
  static const double weight[] = {0.5, 0.3, 0.2}, price[] = {50, 40, 10}, yes[] = {0.9, 0.1, 0.2};
  const double regret[] = {0, 16.0, 20.6, 1.9};
  struct plan_move moves[4];
  struct plan_problem p;
  struct plan_state s;
  double cost[4];

  (void)state;
  plan_begin(&p, 3);
  for (int h = 0; h < 3; h++) {
    p.weight[h] = weight[h];
    plan_clears(&p, plan_add_repair(&p, price[h], 0), h, 1);
    moves[h + 1] = plan_repairing(h);
  }
  p.give_up = 1e6;
  question(&p, 3, yes);
  moves[0] = plan_asking(0);
  plan_ready(&p);
  plan_start(&p, &s);
  assert_true(judge_moves(&p, &s, moves, 4, 1000000, cost));
  near(cost[0], 51, "asking");
  for (int i = 0; i < 4; i++) near(cost[i] - cost[0], regret[i], "regret");
  plan_free(&p);
}

/* To isolate: a right repair is free, a wrong one dear. Regrets of the five first tests. */
static void isolation(void **state)
{
  static const double weight[] = {0.70, 0.01, 0.02, 0.10, 0.05, 0.12};
  static const char *const row[] = {"00000", "01001", "00110", "10011", "11000", "11110"};
  static const double regret[] = {0.68, 0, 0.64, 0, 0.71};
  const double wrong = 1e4;
  struct plan_move moves[5];
  struct plan_problem p;
  struct plan_state s;
  double cost[5];

  (void)state;
  plan_begin(&p, 6);
  for (int h = 0; h < 6; h++) {
    int a = plan_add_repair(&p, wrong, 0);

    p.weight[h] = weight[h];
    plan_clears(&p, a, h, 1);
  }
  p.give_up = 1e9;
  for (int t = 0; t < 5; t++) {
    double yes[6];

    for (int h = 0; h < 6; h++) yes[h] = row[h][t] == '1';
    question(&p, 1, yes);
    moves[t] = plan_asking(t);
  }
  plan_ready(&p);
  plan_start(&p, &s);
  assert_true(judge_moves(&p, &s, moves, 5, 10000000, cost));
  near(cost[1] - wrong, 2.18, "least");
  for (int t = 0; t < 5; t++) near(cost[t] - cost[1], regret[t], "regret");
  plan_free(&p);
}

/* The best step gives nothing away; a check made again gives away its minutes; what is judged
 * does not depend on what the machine hides. */
static void on_a_machine(void **state)
{
  struct with *w = *state;
  struct run r;
  struct err e;

  for (uint64_t seed = 1; seed <= 5; seed++) {
    struct entry best;
    struct step_worth j;
    double parts;

    with_run(w, HIDDEN_ONE, NULL, seed, false, &r);
    best = walk_best(&r);
    judge_entry(&r, &best, &j);
    near(j.regret, 0, "best step");
    assert_true(j.right);
    for (size_t i = 0; i < r.advice.count; i++) {
      struct advice_step s = r.advice.options[i].step;

      if (s.kind != ADVICE_CHECK) continue;
      judge_entry(&r, &(struct entry){.act = ACT_CHECK, .at = s.at, .sure = -1}, &j);
      assert_true(j.regret >= 0);
      assert_int_equal(j.right, j.regret <= 0.02 * j.best);
    }
    if (best.act == ACT_CHECK) {
      run_make_safe(&r, &best);
      assert_int_equal(run_do(&r, &best, &e), 0);
      judge_entry(&r, &best, &j);
      if (r.end == RUN_OPEN && case_result_of(&r.c, best.at))
        near(j.regret, run_minutes(&r, &best, &parts), "the same check again");
    }
    run_free(&r);
  }
}

/* Two machines that look alike so far are judged alike, whatever is wrong with them. */
static void luck_does_not_count(void **state)
{
  struct with *w = *state;
  struct run a, b;
  struct hidden h, g;
  struct hidden_wish wish = {knowledge_find(&w->k, ENTRY_CLASS, "tiller"), HIDDEN_ONE, "fuel", NULL};
  struct err e;
  size_t other = 0;

  assert_true(hidden_make(&w->k, &wish, 3, &h));
  assert_true(hidden_make(&w->k, &wish, 3, &g));
  while ((int)other == g.culprit) other++;
  g.faults[0] = g.culprit = (int)other; /* something else is wrong behind the same complaint */
  assert_int_equal(run_begin(&a, &w->k, w->assessor, &h, false, &e), 0);
  assert_int_equal(run_begin(&b, &w->k, w->assessor, &g, false, &e), 0);
  for (size_t i = 0; i < a.advice.count; i++)
    near(b.advice.options[i].cost, a.advice.options[i].cost, "cost");
  run_free(&a);
  run_free(&b);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(one_question), cmocka_unit_test(isolation),
                                     cmocka_unit_test(on_a_machine), cmocka_unit_test(luck_does_not_count)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
