/* test_excess.c - rollout against the least possible cost in the four settings of the method
 * notes and one with covers that go back on before every try, so many instances of each.
 * Goals: mean excess at most 0.5 %, 95 of 100 at most 2 %, none above 7 %. The least cost is
 * computed independently of any publication (test_policies holds it against brute force).
 * Usage: test_excess INSTANCES */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

#include "check_plan.h"
#include "random_plan.h"

static size_t instances;

static int by_size(const void *a, const void *b)
{
  const double *x = a, *y = b;

  return (*x > *y) - (*x < *y);
}

static double rollout_excess(const struct plan_problem *p)
{
  struct plan_state s;
  struct planner x;
  double least = exact(p), look, step;

  plan_start(p, &s);
  planner_open(&x, p, PLAN_NO_LIMIT);
  look = plan_follow(&x, &s, PLAN_TO_THE_END);
  step = plan_step_follow(&x, &s);
  planner_close(&x);
  if (step > look * (1 + 1e-12)) fail_msg("rollout %.15g is dearer than the look-ahead %.15g", step, look);
  return 100 * (step / least - 1);
}

static void check_setting(enum plan_setting setting)
{
  double *excess = mem_array(instances, sizeof *excess), sum = 0, p95, max;

  for (size_t i = 0; i < instances; i++) {
    struct plan_problem p;

    random_plan(&p, setting, i + 1);
    excess[i] = rollout_excess(&p);
    sum += excess[i];
    plan_free(&p);
  }
  qsort(excess, instances, sizeof *excess, by_size);
  p95 = excess[instances * 95 / 100];
  max = excess[instances - 1];
  printf("%s: %zu instances, excess mean %.3f %%, p95 %.2f %%, max %.2f %%\n", setting_names[setting],
         instances, sum / (double)instances, p95, max);
  if (excess[0] < -1e-9) fail_msg("below the least cost by %g %%", -excess[0]);
  free(excess);
  assert_true(sum / (double)instances <= (setting == SETTING_COVERS ? 1e-9 : 0.5));
  assert_true(p95 <= 2);
  assert_true(max <= 7);
}

static void covers_only(void **state) { (void)state; check_setting(SETTING_COVERS); }
static void questions_only(void **state) { (void)state; check_setting(SETTING_QUESTIONS); }
static void questions_and_covers(void **state) { (void)state; check_setting(SETTING_BOTH); }
static void overlapping(void **state) { (void)state; check_setting(SETTING_OVERLAP); }

static void shut_to_run(void **state) { (void)state; check_setting(SETTING_SHUT); }

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(covers_only), cmocka_unit_test(questions_only),
                                     cmocka_unit_test(questions_and_covers), cmocka_unit_test(overlapping),
                                     cmocka_unit_test(shut_to_run)};

  if (argc < 2 || (instances = strtoul(argv[1], NULL, 10)) == 0) {
    fprintf(stderr, "usage: test_excess INSTANCES\n");
    return 2;
  }
  return cmocka_run_group_tests(tests, NULL, NULL);
}
