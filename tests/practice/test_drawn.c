/* test_drawn.c - what made-up machines show, against the model's chances worked out here from
 * the signs alone (noisy-MAX by its definition): 20,000 machines, a share of the checks of each.
 * Per check a chi-square over its results (quadratic form with the covariance of what was
 * expected, since every machine has chances of its own); the share of checks that alarm at a
 * level must be about that level. */
#include <math.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <setjmp.h>
#include <cmocka.h>

#include "base/random.h"
#include "with.h"

enum { MACHINES = 20000, EACH = 16, GRADES = NET_MAX_GRADES };

struct tally {
  double seen[GRADES], expected[GRADES], cov[GRADES][GRADES];
  long draws;
};

/* Chance of each result of a check given the faults: the highest grade that any of them, or
 * chance, brings about. */
static void chances(const struct knowledge *k, const struct hidden *h, int check, double *out)
{
  size_t grades = k->checks[check].results.count;
  double up_to[GRADES], before = 0, sum = 0;

  for (size_t g = 1; g < grades; g++) sum += k->checks[check].anyway.items[g - 1];
  up_to[0] = 1 - sum;
  for (size_t g = 1; g < grades; g++) up_to[g] = up_to[g - 1] + k->checks[check].anyway.items[g - 1];
  for (size_t f = 0; f < h->fault_count; f++)
    for (size_t g = 0; g + 1 < grades; g++) {
      double above = 0;

      for (size_t s = 0; s < k->sign_count; s++)
        if (k->signs[s].check == check && k->signs[s].fault == h->net.fault_of[h->faults[f]] &&
            k->signs[s].result > (int)g)
          above += k->signs[s].chance;
      up_to[g] *= above < 1 ? 1 - above : 0;
    }
  for (size_t g = 0; g < grades; g++) {
    out[g] = up_to[g] - before;
    before = up_to[g];
  }
}

static void draw_all(struct with *w, struct tally *t)
{
  for (uint64_t seed = 1; seed <= MACHINES; seed++) {
    struct hidden_wish wish = {-1, seed % 4 ? HIDDEN_ONE : HIDDEN_TWO, NULL, NULL};
    struct random x = {seed};
    struct hidden h;

    assert_true(hidden_make(&w->k, &wish, seed * 1000003, &h));
    for (int i = 0; i < EACH; i++) {
      int check = (int)(random_unit(&x) * (double)w->k.check_count), got;
      struct tally *y = &t[check];
      double p[GRADES] = {0};

      chances(&w->k, &h, check, p);
      got = hidden_result(&h, check);
      assert_int_equal(hidden_result(&h, check), got); /* the same when asked again */
      y->seen[got]++;
      y->draws++;
      for (int a = 0; a < GRADES; a++) {
        y->expected[a] += p[a];
        for (int b = 0; b < GRADES; b++) y->cov[a][b] += (a == b ? p[a] : 0) - p[a] * p[b];
      }
    }
    hidden_free(&h);
  }
}

/* Adds grade b to grade a and leaves b empty. */
static void merge(struct tally *t, int a, int b)
{
  t->seen[a] += t->seen[b];
  t->expected[a] += t->expected[b];
  t->seen[b] = t->expected[b] = 0;
  for (int i = 0; i < GRADES; i++) {
    t->cov[a][i] += t->cov[b][i];
    t->cov[b][i] = 0;
  }
  for (int i = 0; i < GRADES; i++) {
    t->cov[i][a] += t->cov[i][b];
    t->cov[i][b] = 0;
  }
}

/* Solves cov * x = d over the n grades in at[] by elimination; the quadratic form d'x. */
static double form(const struct tally *t, const int *at, int n)
{
  double m[GRADES][GRADES + 1], sum = 0;

  for (int i = 0; i < n; i++) {
    for (int j = 0; j < n; j++) m[i][j] = t->cov[at[i]][at[j]];
    m[i][n] = t->seen[at[i]] - t->expected[at[i]];
  }
  for (int c = 0; c < n; c++)
    for (int i = 0; i < n; i++) {
      double f = i == c ? 0 : m[i][c] / m[c][c];

      for (int j = c; j <= n && i != c; j++) m[i][j] -= f * m[c][j];
    }
  for (int i = 0; i < n; i++) sum += m[i][n] / m[i][i] * (t->seen[at[i]] - t->expected[at[i]]);
  return sum;
}

/* Upper tail of chi-square by Wilson and Hilferty 1931 (from memory), good to a few per cent. */
static double tail(double x, int df)
{
  double v = 2.0 / (9.0 * df), z = (cbrt(x / df) - (1 - v)) / sqrt(v);

  return 0.5 * erfc(z / sqrt(2));
}

/* p of one check; -1 when too little was drawn. */
static double judge(struct tally *t)
{
  int at[GRADES], n = 0;

  for (int g = GRADES - 1; g > 0; g--)
    if (t->expected[g] > 0 && t->expected[g] < 10) {
      int to = g - 1;

      while (to > 0 && t->expected[to] <= 0) to--;
      merge(t, to, g);
    }
  for (int g = 0; g < GRADES; g++)
    if (t->expected[g] > 0) at[n++] = g;
  if (n < 2) return -1;
  return tail(form(t, at, n - 1), n - 1); /* the last follows from the others */
}

static void results_match_the_model(void **state)
{
  struct with *w = *state;
  struct tally *t = mem_array(w->k.check_count, sizeof *t);
  int judged = 0, at_five = 0, at_one = 0, worst = -1;
  double least = 1;

  draw_all(w, t);
  for (size_t c = 0; c < w->k.check_count; c++) {
    double p = judge(&t[c]);

    if (p < 0) continue;
    judged++;
    at_five += p < 0.05;
    at_one += p < 0.01;
    if (p < least) {
      least = p;
      worst = (int)c;
    }
  }
  printf("%d checks, %d below 0.05 (%.1f expected), %d below 0.01 (%.1f expected); least %.5f: %s\n", judged,
         at_five, 0.05 * judged, at_one, 0.01 * judged, least, worst >= 0 ? w->k.checks[worst].id : "");
  assert_true(judged > 200);
  assert_true(at_five <= 0.05 * judged + 4 * sqrt(0.0475 * judged));
  assert_true(at_five >= 0.05 * judged - 4 * sqrt(0.0475 * judged));
  assert_true(at_one <= 0.01 * judged + 4 * sqrt(0.0099 * judged));
  assert_true(least > 0.01 / judged / 10);
  free(t);
}

/* A reading stands for its result: judged by the bands it falls on that result, but for the
 * few that the instrument moved over a limit. */
static void readings_stand_for_results(void **state)
{
  struct with *w = *state;
  long drawn = 0, kept = 0;

  for (uint64_t seed = 1; seed <= 600; seed++) {
    struct hidden_wish wish = {-1, HIDDEN_ONE, NULL, NULL};
    struct hidden h;
    size_t open;

    assert_true(hidden_make(&w->k, &wish, seed, &h));
    for (size_t c = 0; c < w->k.check_count; c++) {
      struct case_result r, again;
      double share[NET_MAX_GRADES];
      int best = -1;
      size_t most = 0;

      if (w->k.checks[c].kind != KIND_MEASURE ||
          case_needs(&h.machine, &w->k.checks[c].needs, &open) != TRI_HAS)
        continue;
      hidden_look(&h, (int)c, &r);
      hidden_look(&h, (int)c, &again);
      assert_memory_equal(&r, &again, sizeof r);
      if (r.result >= 0) continue;                  /* no bands for this engine */
      for (size_t b = 0; b < w->k.bands_count; b++) /* the most particular that fit */
        if (w->k.bands[b].check == (int)c && case_needs(&h.machine, &w->k.bands[b].needs, &open) == TRI_HAS &&
            (best < 0 || w->k.bands[b].needs.count > most)) {
          best = (int)b;
          most = w->k.bands[b].needs.count;
        }
      memset(share, 0, sizeof share);
      reading_shares(&w->k, (int)c, best, NULL, r.value, share);
      drawn++;
      kept += share[hidden_result(&h, (int)c)] >= 0.5;
    }
    hidden_free(&h);
  }
  printf("%ld readings, %.1f %% fall on the result they stand for\n", drawn,
         100.0 * (double)kept / (double)drawn);
  assert_true(drawn > 2000);
  assert_true((double)kept > 0.9 * (double)drawn);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(results_match_the_model),
                                     cmocka_unit_test(readings_stand_for_results)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
