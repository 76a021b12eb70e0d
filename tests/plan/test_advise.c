/* test_advise.c - the advice itself, on the small knowledge of tests/plan/small.
 * Usage: test_advise TOP-OF-SOURCES */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "check_advice.h"
#include "check_plan.h"
#include "knowledge/load.h"
#include "plan/situation.h"
#include "small_bench.h"

static struct knowledge k;

static int check_id(const char *id) { return small_id(&k, ENTRY_CHECK, id); }
static int repair_id(const char *id) { return small_id(&k, ENTRY_REPAIR, id); }

static void advise(struct small *b, const bool *off, struct advice *out)
{
  plan_advise(&b->net, &b->c, &b->drawn, b->belief, off, out);
  check_advice(&k, out);
}

static const struct advice_option *option(const struct advice *a, enum advice_kind kind, int at)
{
  for (size_t i = 0; i < a->count; i++)
    if (a->options[i].step.kind == kind && a->options[i].step.at == at) return &a->options[i];
  fail_msg("no such option");
  return NULL;
}

static void begin(struct small *b, const char *machine_class)
{
  small_begin(b, &k, machine_class, "no-start");
}

/* Few suspects and few checks: the costs are the least possible ones. */
static void exact_when_small(void **state)
{
  static const char *const not_here[] = {"filter-clogged", "blade-blunt", "float-holed"};
  struct situation s;
  struct advice a;
  struct small b;

  (void)state;
  begin(&b, "mower");
  for (int i = 0; i < 3; i++) small_draw(&b, RULES_OUT_FAULT, small_id(&k, ENTRY_FAULT, not_here[i]), 0);
  small_draw(&b, POINTLESS, check_id("wet"), 0);
  small_draw(&b, POINTLESS, check_id("element-look"), 0);
  small_draw(&b, POINTLESS, check_id("jet"), 0);
  small_weigh(&b);
  advise(&b, NULL, &a);
  assert_int_equal(a.method, ADVICE_EXACT);
  assert_string_equal(advice_method_name(a.method), "exact");
  situation_build(&s, &b.net, &b.c, &b.drawn, b.belief, NULL);
  close_to(a.cost, exact(&s.problem), 1e-9, "expected minutes");
  for (size_t i = 0; i < s.problem.question_count; i++)
    close_to(option(&a, ADVICE_CHECK, s.check[i])->cost, exact_with(&s.problem, plan_asking((int)i)), 1e-9,
             "a check");
  situation_free(&s);
  advice_free(&a);
  small_end(&b);
}

/* No spark: the coil is as good as found. */
static void repair_when_it_is_found(void **state)
{
  struct advice a;
  struct small b;

  (void)state;
  begin(&b, "mower");
  small_result(&b, "spark", "none");
  small_result(&b, "float-test", "dry");
  small_weigh(&b);
  advise(&b, NULL, &a);
  assert_true(a.stop_checking);
  assert_false(a.give_up);
  assert_int_equal(a.options[0].step.kind, ADVICE_REPAIR);
  assert_int_equal(a.options[0].step.at, repair_id("coil"));
  near(a.options[0].minutes, 60, "its minutes");
  assert_true(a.options[0].chance > 0.8);
  assert_true(a.plan[0].tried);
  advice_free(&a);
  small_end(&b);
}

/* Nothing known yet: a check of four minutes parts a sixty-minute repair from a cheaper one. */
static void check_when_it_pays(void **state)
{
  const struct advice_option *spark;
  struct advice a;
  struct small b;

  (void)state;
  begin(&b, "mower");
  small_weigh(&b);
  advise(&b, NULL, &a);
  spark = option(&a, ADVICE_CHECK, check_id("spark"));
  assert_false(a.stop_checking);
  assert_true(spark->cost < a.no_checks);
  assert_int_equal(spark->result_count, 2);
  assert_int_equal(spark->results[1].fault, small_id(&k, ENTRY_FAULT, "coil-dead"));
  assert_int_equal(spark->results[1].next.kind, ADVICE_REPAIR);
  assert_int_equal(spark->results[1].next.at, repair_id("coil"));
  advice_free(&a);
  small_end(&b);
}

/* A machine worth a minute: nothing pays but telling the owner. */
static void give_up_on_what_is_worth_nothing(void **state)
{
  struct advice a;
  struct small b;

  (void)state;
  begin(&b, "toy");
  small_result(&b, "spark", "none");
  small_weigh(&b);
  advise(&b, NULL, &a);
  assert_true(a.give_up);
  near(a.give_up_cost, 11, "one minute's worth and ten of telling");
  near(a.cost, 11, "expected minutes");
  assert_int_equal(a.plan_count, 1);
  assert_int_equal(a.plan[0].step.kind, ADVICE_GIVE_UP);
  advice_free(&a);
  small_end(&b);
}

/* A rule wants the plug looked at before a coil is bought: the repair waits for that. */
static void held_back(void **state)
{
  struct advice a;
  struct small b;

  (void)state;
  begin(&b, "mower");
  small_result(&b, "spark", "none");
  small_draw(&b, ASK_FIRST, check_id("fuel-age"), small_id(&k, ENTRY_FAULT, "coil-dead"));
  small_weigh(&b);
  advise(&b, NULL, &a);
  assert_int_equal(a.options[0].step.kind, ADVICE_CHECK);
  assert_int_equal(a.options[0].step.at, check_id("fuel-age"));
  assert_int_equal(a.options[0].ask_first, 7);
  assert_int_equal(a.options[1].step.at, repair_id("coil"));
  assert_int_equal(a.options[1].held_by, check_id("fuel-age"));
  assert_false(a.stop_checking);
  near(a.cost, a.options[0].cost, "cost by this advice");
  assert_int_equal(a.plan[0].step.at, check_id("fuel-age"));
  assert_int_equal(a.plan[1].step.at, repair_id("coil"));
  advice_free(&a);
  small_end(&b);
}

/* Made next, or beside what is made next. */
static bool is_beside(const struct advice *a, const char *check)
{
  if (a->options[0].step.kind == ADVICE_CHECK && a->options[0].step.at == check_id(check)) return true;
  for (size_t i = 0; i < a->beside_count; i++)
    if (a->beside[i].check == check_id(check)) return true;
  return false;
}

/* With the carburettor on the bench its checks cost next to nothing; on the machine they would
 * cost half an hour. */
static void while_you_are_in_there(void **state)
{
  bool off[8] = {false};
  struct advice on, a;
  struct small b;

  (void)state;
  begin(&b, "mower");
  small_result(&b, "wet", "wet");
  small_weigh(&b);
  advise(&b, NULL, &on);
  off[small_id(&k, ENTRY_COVER, "carburettor")] = true;
  advise(&b, off, &a);
  near(option(&on, ADVICE_CHECK, check_id("bowl"))->minutes, 33, "bowl, carburettor on");
  near(option(&a, ADVICE_CHECK, check_id("bowl"))->minutes, 2, "bowl, carburettor off");
  near(option(&a, ADVICE_CHECK, check_id("idle"))->minutes, 3, "running it costs no refit twice");
  assert_true(a.cost < on.cost);
  assert_true(is_beside(&a, "float-test"));
  assert_true(is_beside(&a, "bowl"));
  assert_false(is_beside(&a, "jet"));   /* it may be destroyed */
  assert_false(is_beside(&a, "spark")); /* nothing comes off for it */
  assert_true(a.beside_count > 0);
  near(a.beside[0].minutes, 2, "bowl or float while there");
  near(a.beside[0].alone, 33, "the same at another time");
  advice_free(&on);
  advice_free(&a);
  small_end(&b);
}

/* The same case gets the same advice, to the last bit. */
static void same_advice_twice(void **state)
{
  struct advice a, again;
  struct small b;

  (void)state;
  begin(&b, "mower");
  small_result(&b, "wet", "wet");
  small_weigh(&b);
  advise(&b, NULL, &a);
  advise(&b, NULL, &again);
  assert_int_equal(a.count, again.count);
  assert_int_equal(a.steps, again.steps);
  assert_int_equal(a.plan_count, again.plan_count);
  for (size_t i = 0; i < a.count; i++) {
    assert_int_equal(a.options[i].step.kind, again.options[i].step.kind);
    assert_int_equal(a.options[i].step.at, again.options[i].step.at);
    assert_true(a.options[i].cost == again.options[i].cost);
    assert_true(a.options[i].without == again.options[i].without);
  }
  advice_free(&a);
  advice_free(&again);
  small_end(&b);
}

/* No complaint and nothing found: there is nothing to repair for. */
static void nothing_said(void **state)
{
  struct advice a;
  struct small b;

  (void)state;
  small_begin(&b, &k, "mower", NULL);
  small_result(&b, "spark", "jumps");
  small_weigh(&b);
  advise(&b, NULL, &a);
  assert_true(a.count > 1);
  advice_free(&a);
  small_end(&b);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test(exact_when_small), cmocka_unit_test(repair_when_it_is_found),
    cmocka_unit_test(check_when_it_pays), cmocka_unit_test(give_up_on_what_is_worth_nothing),
    cmocka_unit_test(held_back), cmocka_unit_test(while_you_are_in_there),
    cmocka_unit_test(same_advice_twice), cmocka_unit_test(nothing_said)};
  int failed;

  if (argc < 2) return 2;
  small_load(argv[1], &k);
  failed = cmocka_run_group_tests(tests, NULL, NULL);
  knowledge_free(&k);
  return failed;
}
