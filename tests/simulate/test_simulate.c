/* test_simulate.c - simulated jobs: what is drawn against the exact weighing and the definition
 * of noisy-MAX, the same again for the same seed, the look-ahead against plainer habits, and the
 * quick path against the full one. Bounds of the last two are the figures of
 * docs/how-good.md less slack. Usage: test_simulate, knowledge by PULLCORD_KNOWLEDGE. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <cmocka.h>

#include "agree.h"
#include "knowledge/load.h"

enum { MACHINES = 6000, LOOKED_AT = 400, RUNS = 60, PER_CLASS = 10, AGREED = 50 };

static struct knowledge k;
static struct simulator s;
static struct assessor *assessor;

static int open_all(void **state)
{
  struct err e;

  (void)state;
  if (load_knowledge(&k, &e) || sim_open(&s, &k, &e) || assessor_open(&k, &assessor, &e)) {
    print_error("%s\n", e.text);
    return 1;
  }
  return 0;
}

static int close_all(void **state)
{
  (void)state;
  assessor_close(assessor);
  sim_close(&s);
  knowledge_free(&k);
  return 0;
}

/* Sum of squared deviations over `count` terms is about count +- sqrt(2 count); five times that
 * is beyond chance. The seeds are fixed, so it does not flicker. */
static void assert_chi_square(double sum, size_t count)
{
  assert_true(count >= 10);
  assert_true(fabs(sum - (double)count) < 5 * sqrt(2 * (double)count));
}

static void assess_model(const struct sim_model *m, struct bench_case *c, struct assessment *a)
{
  struct err e;

  case_begin(c, &k);
  assert_int_equal(case_set_machine(c, &k, m->machine_class, NULL, 0, NULL, 0, &e), 0);
  case_add_complaint(c, m->complaint);
  assert_int_equal(assess_case(assessor, c, a, &e), 0);
}

/* How often each fault is there and behind it, against the exact belief and blame. */
static void check_faults(const struct sim_model *m, const struct assessment *a)
{
  size_t faults = s.book.fault_count, terms[2] = {0}, *there = mem_array(faults, sizeof *there);
  size_t *behind = mem_array(faults, sizeof *behind);
  double sum[2] = {0};
  struct sim_machine x;

  sim_machine_room(&x, &s.book);
  for (uint64_t i = 0; i < MACHINES; i++) {
    sim_draw(&x, m, 1000 + i);
    for (size_t f = 0; f < faults; f++) there[f] += x.there[f];
    for (size_t b = 0; b < x.behind_count; b++) behind[x.behind[b]]++;
  }
  for (size_t i = 0; i < a->ranking_count; i++) {
    const struct ranked *r = &a->ranking[i];
    size_t f = r->fault >= 0 ? (size_t)r->fault : faults - 1;
    double chance[] = {r->belief, r->blame}, seen[] = {(double)there[f], (double)behind[f]};

    for (int q = 0; q < 2; q++) {
      if (chance[q] * MACHINES < 10) continue;
      sum[q] += pow(seen[q] - chance[q] * MACHINES, 2) / (chance[q] * (1 - chance[q]) * MACHINES);
      terms[q]++;
    }
  }
  assert_chi_square(sum[0], terms[0]);
  assert_chi_square(sum[1], terms[1]);
  sim_machine_free(&x);
  free(there);
  free(behind);
}

/* How often each check shows something unsound, against its chance given the machine's faults. */
static void check_results(const struct sim_model *m, struct assessment *a)
{
  double *expected = mem_array(k.check_count, sizeof *expected), *spread = mem_array(k.check_count, sizeof *spread);
  double *shown = mem_array(k.check_count, sizeof *shown), sum = 0;
  struct net_finding *f = mem_array(k.check_count, sizeof *f);
  struct sim_machine x;
  size_t terms = 0;

  for (size_t c = 0; c < k.check_count; c++) casenet_finding(&a->net, (int)c, &f[c]);
  sim_machine_room(&x, &s.book);
  for (uint64_t i = 0; i < LOOKED_AT; i++) {
    int set[64];
    size_t count = 0;

    sim_draw(&x, m, 5000 + i);
    for (size_t p = 0; p < a->net.count; p++)
      if (x.there[a->net.fault_of[p] >= 0 ? (size_t)a->net.fault_of[p] : s.book.fault_count - 1] && count < 64)
        set[count++] = (int)p;
    for (size_t c = 0; c < k.check_count; c++) {
      double chance[NET_MAX_GRADES];

      net_grade_chances(&f[c], set, count, chance);
      expected[c] += 1 - chance[0];
      spread[c] += chance[0] * (1 - chance[0]);
      shown[c] += sim_result(&x, (int)c) > 0;
    }
  }
  for (size_t c = 0; c < k.check_count; c++) {
    if (spread[c] < 5) continue;
    sum += pow(shown[c] - expected[c], 2) / spread[c];
    terms++;
  }
  assert_chi_square(sum, terms);
  sim_machine_free(&x);
  free(expected);
  free(spread);
  free(shown);
  free(f);
}

/* Unsound results that rules imply from the complaint are not drawn by (model.c says so). */
static bool implies_unsound(const struct assessment *a)
{
  for (size_t i = 0; i < a->net.evidence_count; i++)
    if (a->net.evidence[i].kind == EVIDENCE_IMPLIED && a->net.evidence[i].result > 0) return true;
  return false;
}

static void test_draws_match_the_model(void **state)
{
  size_t checked = 0;

  (void)state;
  for (size_t i = 3; i < s.model_count; i += s.model_count / 4) {
    struct bench_case c;
    struct assessment a;

    assess_model(&s.models[i], &c, &a);
    if (!implies_unsound(&a)) {
      check_faults(&s.models[i], &a);
      checked++;
    }
    check_results(&s.models[i], &a);
    assessment_free(&a);
    case_free(&c);
  }
  assert_true(checked >= 2);
}

static void assert_same_search(const struct sim_search *a, const struct sim_search *b)
{
  assert_int_equal(a->end, b->end);
  assert_int_equal(a->leading, b->leading);
  assert_true(a->minutes == b->minutes);
  assert_int_equal(a->steps, b->steps);
  for (size_t i = 0; i < a->steps; i++) {
    assert_int_equal(a->seen[i].check, b->seen[i].check);
    assert_int_equal(a->seen[i].result, b->seen[i].result);
  }
}

/* Remembered or worked out anew, after other jobs or first. */
static void test_same_seed_same_job(void **state)
{
  struct sim_memory *memory = sim_memory_new(&s, 500); /* too small for all of them */
  struct sim_search *first = mem_array(RUNS, sizeof *first), again;
  struct sim_machine x;
  struct sim_bench anew, remembering;

  (void)state;
  sim_machine_room(&x, &s.book);
  sim_bench_open(&anew, &s.book, NULL);
  sim_bench_open(&remembering, &s.book, memory);
  for (uint64_t i = 0; i < RUNS; i++) {
    draw_by_seed(&s, i, &x);
    sim_search(&anew, &x, SIM_LOOK_AHEAD, AGREE_MOST_CHECKS, &first[i]);
  }
  for (int round = 0; round < 2; round++)
    for (uint64_t i = RUNS; i-- > 0;) {
      draw_by_seed(&s, i, &x);
      sim_search(&remembering, &x, SIM_LOOK_AHEAD, AGREE_MOST_CHECKS, &again);
      assert_same_search(&first[i], &again);
    }
  assert_true(remembering.remembered > RUNS);
  assert_true(sim_memory_count(memory) <= 500);
  sim_bench_close(&anew);
  sim_bench_close(&remembering);
  sim_machine_free(&x);
  sim_memory_free(memory);
  free(first);
}

/* On the same jobs Pullcord's mean is below the other's, or above by no more than chance. */
static void test_look_ahead_is_not_worse(void **state)
{
  size_t jobs = PER_CLASS * k.class_count;
  double sum[SIM_POLICIES] = {0}, squares[SIM_POLICIES] = {0};
  struct sim_machine x;
  struct sim_bench bench;

  (void)state;
  sim_machine_room(&x, &s.book);
  sim_bench_open(&bench, &s.book, NULL);
  for (uint64_t i = 1; i <= jobs; i++) {
    double own = 0;

    for (int p = 0; p < SIM_POLICIES; p++) {
      struct sim_outcome out;

      draw_by_seed(&s, i, &x);
      assert_true(sim_job(&bench, &x, (enum sim_policy)p, &out));
      assert_true(out.cost >= out.to_fault && out.to_fault > 0);
      if (p == SIM_LOOK_AHEAD) own = out.to_fault;
      sum[p] += own - out.to_fault;
      squares[p] += pow(own - out.to_fault, 2);
    }
  }
  for (int p = 1; p < SIM_POLICIES; p++) {
    double n = (double)jobs, mean = sum[p] / n, error = sqrt((squares[p] / n - mean * mean) / (n - 1));

    assert_true(mean < 2 * error);
    if (p != SIM_INFORMATION) assert_true(mean < -2 * error); /* these two it beats clearly */
  }
  sim_bench_close(&bench);
  sim_machine_free(&x);
}

static void test_agrees_with_the_full_path(void **state)
{
  struct agreement a;

  (void)state;
  agree_on(&s, assessor, AGREED, 1, &a);
  assert_true((double)a.same_check > 0.30 * (double)a.both_check);
  assert_true((double)a.among_three > 0.55 * (double)a.both_check);
  printf("same check %d of %d, same first %d, right %d full, %d quick, of %d\n", (int)a.same_check, (int)a.both_check, (int)a.same_first, (int)a.full_right, (int)a.quick_right, AGREED);
  assert_true((double)a.same_first > 0.40 * AGREED);
  assert_true((double)a.quick_right > (double)a.full_right - 0.1 * AGREED);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test(test_draws_match_the_model),
    cmocka_unit_test(test_same_seed_same_job),
    cmocka_unit_test(test_look_ahead_is_not_worse),
    cmocka_unit_test(test_agrees_with_the_full_path),
  };

  return cmocka_run_group_tests(tests, open_all, close_all);
}
