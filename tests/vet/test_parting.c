/* test_parting.c - distances of faults at checks, machines that can have both, and
 * ambiguity groups. The expected distances are computed independently, by hand, from the
 * definition: half the sum of the differences of the chances of all results. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "knowledge/load.h"
#include "knowledge/parting.h"

#define assert_near(a, b, within) assert_true(fabs((a) - (b)) <= (within))

static const char *base;

struct fixture {
  struct knowledge k;
  struct parting *t;
};

static int set_up(void **state)
{
  struct fixture *f = mem_new(sizeof *f);
  struct knowledge_files files;
  struct problems p = {0};
  struct err e;

  assert_int_equal(find_files(base, NULL, &files, &e), 0);
  assert_int_equal(load_files(&files, &f->k, &p, &e), 0);
  assert_int_equal(p.count, 0);
  f->t = parting_open(&f->k);
  problems_free(&p);
  find_free(&files);
  *state = f;
  return 0;
}

static int tear_down(void **state)
{
  struct fixture *f = *state;

  parting_close(f->t);
  knowledge_free(&f->k);
  free(f);
  return 0;
}

static int fault(const struct fixture *f, const char *id) { return knowledge_find(&f->k, ENTRY_FAULT, id); }
static int check(const struct fixture *f, const char *id) { return knowledge_find(&f->k, ENTRY_CHECK, id); }

static double apart(const struct fixture *f, const char *at, const char *a, const char *b)
{
  return parting_distance(f->t, check(f, at), fault(f, a), fault(f, b));
}

static void distances_are_those_of_the_definition(void **state)
{
  const struct fixture *f = *state;

  /* shut anyway 0.05; with the tap shut 1 - 0.03 * 0.95 = 0.9715 */
  assert_near(apart(f, "tap-position", "tap-shut", "jet-blocked"), 0.9215, 1e-9);
  /* blocked anyway 0.02; with the jet blocked 1 - 0.13 * 0.98 = 0.8726 */
  assert_near(apart(f, "jet-look", "rings-worn", "jet-blocked"), 0.8526, 1e-9);
  /* neither has a sign there */
  assert_near(apart(f, "compression", "tap-shut", "jet-blocked"), 0, 1e-12);
}

static void a_distance_is_one(void **state)
{
  const struct fixture *f = *state;

  for (size_t c = 0; c < f->k.check_count; c++)
    for (size_t a = 0; a < f->k.fault_count; a++) {
      assert_near(parting_distance(f->t, (int)c, (int)a, (int)a), 0, 1e-12);
      for (size_t b = 0; b < a; b++) {
        double d = parting_distance(f->t, (int)c, (int)a, (int)b);

        assert_true(d >= 0 && d <= 1);
        assert_near(d, parting_distance(f->t, (int)c, (int)b, (int)a), 1e-12);
      }
    }
}

/* Three results: anyway 0.85, 0.10, 0.05. A fault that shows them at 0.2, 0.3, 0.5 gives
 * the highest of the two: 0.85 * 0.2 = 0.17, 0.95 * 0.5 - 0.17 = 0.305, rest 0.525. Against
 * a fault without a sign: (0.68 + 0.205 + 0.475) / 2 = 0.68. */
static void three_results_take_the_highest(void **state)
{
  const char *ids[] = {"sound", "bad", "worse"};
  double anyway[] = {0.10, 0.05};
  struct check c = {.id = "c", .results = {ids, 3}, .anyway = {anyway, 2}};
  struct fault faults[2] = {{.id = "a"}, {.id = "b"}};
  struct sign signs[2] = {{.fault = 0, .check = 0, .result = 1, .chance = 0.3, .complaint = -1},
                          {.fault = 0, .check = 0, .result = 2, .chance = 0.5, .complaint = -1}};
  struct knowledge k = {
      .checks = &c, .check_count = 1, .faults = faults, .fault_count = 2, .signs = signs, .sign_count = 2};
  struct parting *t = parting_open(&k);

  (void)state;
  assert_near(parting_distance(t, 0, 0, 1), 0.68, 1e-9);
  parting_close(t);
}

static void machines_that_can_have_both(void **state)
{
  const struct fixture *f = *state;
  const struct bands *four = &f->k.bands[1], *two = &f->k.bands[2];
  const struct refs *both[2] = {&four->needs, &two->needs};
  const struct refs *tap[2] = {&four->needs, &f->k.faults[fault(f, "tap-shut")].needs};
  const struct refs *saw_tap[2] = {&two->needs, &f->k.faults[fault(f, "tap-shut")].needs};

  assert_true(parting_common(f->t, both, 1));
  assert_false(parting_common(f->t, both, 2)); /* two strokes at once */
  assert_true(parting_common(f->t, tap, 2));
  assert_false(parting_common(f->t, saw_tap, 2)); /* no saw here has a tap */
  assert_true(parting_fits(f->t, knowledge_find(&f->k, ENTRY_CLASS, "mower"), tap, 2));
  assert_false(parting_fits(f->t, knowledge_find(&f->k, ENTRY_CLASS, "saw"), tap, 2));
}

static void pairs_come_least_parted_first(void **state)
{
  const struct fixture *f = *state;
  struct parted *pairs;
  size_t count;

  parting_pairs(f->t, &pairs, &count);
  assert_int_equal(count, 3); /* three faults, all on a mower */
  for (size_t i = 1; i < count; i++) assert_true(pairs[i - 1].distance <= pairs[i].distance);
  for (size_t i = 0; i < count; i++) {
    assert_true(pairs[i].check >= 0);
    assert_near(pairs[i].distance, parting_distance(f->t, pairs[i].check, pairs[i].a, pairs[i].b), 1e-12);
    for (size_t c = 0; c < f->k.check_count; c++) /* no check does better: all can be made on a mower */
      assert_true(parting_distance(f->t, (int)c, pairs[i].a, pairs[i].b) <= pairs[i].distance);
  }
  free(pairs);
}

/* 0-1 and 1-3 are too close, so 0, 1 and 3 are one group; 2 and 4 stand alone. */
static void groups_hang_together(void **state)
{
  const struct parted pairs[] = {{1, 3, 0, 0.1}, {0, 1, 0, 0.2}, {2, 4, 0, PARTING_LEAST}, {0, 3, 0, 0.9}};
  int group[5];

  (void)state;
  parting_groups(pairs, 4, 5, group);
  assert_int_equal(group[0], 0);
  assert_int_equal(group[1], 0);
  assert_int_equal(group[2], -1);
  assert_int_equal(group[3], 0);
  assert_int_equal(group[4], -1);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test_setup_teardown(distances_are_those_of_the_definition, set_up, tear_down),
      cmocka_unit_test_setup_teardown(a_distance_is_one, set_up, tear_down),
      cmocka_unit_test(three_results_take_the_highest),
      cmocka_unit_test_setup_teardown(machines_that_can_have_both, set_up, tear_down),
      cmocka_unit_test_setup_teardown(pairs_come_least_parted_first, set_up, tear_down),
      cmocka_unit_test(groups_hang_together)};

  if (argc != 2) return 2;
  base = argv[1];
  return cmocka_run_group_tests(tests, NULL, NULL);
}
