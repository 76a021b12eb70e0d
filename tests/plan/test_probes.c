/* test_probes.c - where to look next when several parts may have failed: worked examples W9
 * and W10 of the method notes, and what tests tell in W11.
 *
 * Such a device is no network of signs: which parts failed decides what its outputs must be,
 * and a contradiction is impossible, not unlikely. So the test works out what each set of
 * failed parts says of the outputs (consistency), and hands the sets to the planner as
 * hypotheses; their chances after an answer, and what an answer is worth in bits, are the
 * planner's. Conflicts and minimal diagnoses are the test's own: the program has no such
 * thing, since a machine's signs are never certain. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "check_plan.h"

static void near_by(double got, double want, double within, const char *what)
{
  if (!(fabs(got - want) <= within)) fail_msg("%s: %.12g, not %.12g", what, got, want);
}

/* Chance of one hypothesis in a state. */
static double chance_of(const struct plan_problem *p, const struct plan_state *s, int h)
{
  return s->w[h] / plan_weight(p, s);
}

/* Chance that a part has failed, hypothesis h being the set of parts whose bits it has. */
static double chance_failed(const struct plan_problem *p, const struct plan_state *s, int part)
{
  double sum = 0;

  for (size_t h = 0; h < p->hypotheses; h++)
    if (h >> part & 1) sum += s->w[h];
  return sum / plan_weight(p, s);
}

static double information(const struct plan_problem *p, const struct plan_state *s, int q)
{
  return plan_information(p, s, q) / plan_weight(p, s);
}

/* ---- W9: three multipliers and two adders --------------------------------------------------
 * X = A*C, Y = B*D, Z = C*E; F = X+Y, G = Y+Z; 3, 2, 2, 3, 3 in: X, Y, Z 6, F and G 12. Found:
 * F 10, G 12. Each part fails with .01 and then gives any of 16 values alike. Structure and
 * F = 10: de Kleer and Williams 1987, from memory; all numbers computed independently. */
enum { M1, M2, M3, A1, A2, PARTS, VALUES = 16, UNKNOWN = -1 };

static const double fails = .01;

/* What is known of X, Y and Z when these parts have failed; f or g is what was seen of F or G,
 * or UNKNOWN. */
struct wires { int x, y, z, f, g; };

static bool holds(unsigned failed, int part) { return !(failed >> part & 1u); }

static void follow(unsigned failed, struct wires *w)
{
  w->x = holds(failed, M1) ? 6 : UNKNOWN;
  w->y = holds(failed, M2) ? 6 : UNKNOWN;
  w->z = holds(failed, M3) ? 6 : UNKNOWN;
  for (int round = 0; round < 3; round++) {
    if (holds(failed, A1) && w->f != UNKNOWN) {
      if (w->x != UNKNOWN && w->y == UNKNOWN) w->y = w->f - w->x;
      else if (w->y != UNKNOWN && w->x == UNKNOWN) w->x = w->f - w->y;
    }
    if (holds(failed, A2) && w->g != UNKNOWN) {
      if (w->y != UNKNOWN && w->z == UNKNOWN) w->z = w->g - w->y;
      else if (w->z != UNKNOWN && w->y == UNKNOWN) w->y = w->g - w->z;
    }
  }
}

/* 1 when the output was predicted and seen, 0 when it was predicted otherwise. */
static double fits(bool adder_holds, int one, int other, int seen)
{
  if (!adder_holds || one == UNKNOWN || other == UNKNOWN) return 1. / VALUES;
  return one + other == seen;
}

/* Chance of F 10 and then G 12 when these parts have failed. */
static double chance_seen(unsigned failed)
{
  struct wires w = {.f = UNKNOWN, .g = UNKNOWN};
  double chance;

  follow(failed, &w);
  chance = fits(holds(failed, A1), w.x, w.y, 10);
  w.f = 10;
  follow(failed, &w);
  return chance * fits(holds(failed, A2), w.y, w.z, 12);
}

/* A look at a wire: the values that some set predicts, and the other thirteen together, which
 * none does and which so all tell the same. */
static void add_probe(struct plan_problem *p, char wire)
{
  static const int value[] = {4, 6, 8};
  int q = plan_add_question(p, 1, 0, 4);

  for (unsigned failed = 0; failed < 1u << PARTS; failed++) {
    struct wires w = {.f = 10, .g = 12};
    int at;

    follow(failed, &w);
    at = wire == 'X' ? w.x : wire == 'Y' ? w.y : w.z;
    for (int o = 0; o < 4; o++) {
      double chance = at == UNKNOWN ? (o < 3 ? 1. : VALUES - 3.) / VALUES : o < 3 && at == value[o];

      p->questions[q].chance[(size_t)o * p->hypotheses + failed] = chance;
    }
  }
}

static void polybox(void **state)
{
  static const unsigned minimal[] = {1u << A1, 1u << M1, 1u << A2 | 1u << M2, 1u << M2 | 1u << M3};
  struct plan_problem p;
  struct plan_state s, to;
  unsigned found = 0;

  (void)state;
  plan_begin(&p, 1u << PARTS);
  for (unsigned failed = 0; failed < 1u << PARTS; failed++) {
    int n = __builtin_popcount(failed);

    p.weight[failed] = pow(fails, n) * pow(1 - fails, PARTS - n) * chance_seen(failed);
  }
  for (const char *wire = "XYZ"; *wire; wire++) add_probe(&p, *wire);
  plan_ready(&p);
  plan_start(&p, &s);
  /* minimal diagnoses: possible, and no part of them is by itself */
  for (unsigned failed = 0; failed < 1u << PARTS; failed++) {
    bool least = p.weight[failed] > 0;

    for (unsigned part = (failed - 1) & failed; failed && least; part = (part - 1) & failed) {
      if (p.weight[part] > 0) least = false;
      if (part == 0) break;
    }
    if (!least) continue;
    found++;
    assert_true(failed == minimal[0] || failed == minimal[1] || failed == minimal[2] || failed == minimal[3]);
  }
  assert_int_equal(found, 4);
  near_by(chance_of(&p, &s, 1 << A1), .496225, 6e-7, "{A1}");
  near_by(chance_of(&p, &s, 1 << M1), .496225, 6e-7, "{M1}");
  near_by(chance_of(&p, &s, 1 << M1 | 1 << A1), .005012, 6e-7, "{M1, A1}");
  for (unsigned pair = 0; pair < 1u << PARTS; pair++)
    if (__builtin_popcount(pair) == 2 && p.weight[pair] > 0 && pair != (1u << M1 | 1u << A1))
      near_by(chance_of(&p, &s, (int)pair), .000313, 6e-7, "any other pair");
  near_by(chance_failed(&p, &s, M1), .502196, 6e-7, "M1");
  near_by(chance_failed(&p, &s, A1), .502196, 6e-7, "A1");
  near_by(chance_failed(&p, &s, M2), .001272, 6e-7, "M2");
  near_by(chance_failed(&p, &s, M3), .000959, 6e-7, "M3");
  near_by(chance_failed(&p, &s, A2), .000959, 6e-7, "A2");
  near_by(plan_disorder(&p, &s) / plan_weight(&p, &s), 1.071352, 6e-7, "entropy in bits");
  /* the published score is minus the information, in nats */
  near_by(-information(&p, &s, 0) * log(2), -.716031, 6e-7, "X");
  near_by(-information(&p, &s, 1) * log(2), -.005409, 6e-7, "Y");
  near_by(-information(&p, &s, 2) * log(2), -.003011, 6e-7, "Z");
  plan_outcome(&p, &s, 0, 1, &to);
  near_by(chance_of(&p, &to, 1 << A1), .996199, 6e-7, "{A1}, X being 6");
  plan_outcome(&p, &s, 0, 0, &to);
  near_by(chance_of(&p, &to, 1 << M1), .997473, 6e-7, "{M1}, X being 4");
  plan_free(&p);
}

/* ---- W10: four inverters in a row --------------------------------------------------------
 * The end is wrong; each fails with .01 and then gives either value alike. Computed
 * independently. */
enum { CHAIN = 4 };

/* Chance that the signal after `place` inverters is wrong, the end being wrong. */
static double wrong_at(unsigned failed, int place)
{
  if (failed >> place == 0) return 1; /* nothing after it changes it */
  return failed & ((1u << place) - 1) ? .5 : 0;
}

static void inverters(void **state)
{
  static const double gain[] = {.803761, .989950, .803761};
  struct plan_problem p;
  struct plan_state s;

  (void)state;
  plan_begin(&p, 1u << CHAIN);
  for (unsigned failed = 1; failed < 1u << CHAIN; failed++) {
    int n = __builtin_popcount(failed);

    p.weight[failed] = pow(fails, n) * pow(1 - fails, CHAIN - n) * .5;
  }
  for (int place = 1; place < CHAIN; place++) {
    double wrong[1u << CHAIN];

    for (unsigned failed = 0; failed < 1u << CHAIN; failed++) wrong[failed] = wrong_at(failed, place);
    yes_no(&p, 1, wrong);
  }
  plan_ready(&p);
  plan_start(&p, &s);
  near_by(plan_weight(&p, &s), .019701995, 6e-10, "the end is wrong");
  for (int i = 0; i < CHAIN; i++) near_by(chance_failed(&p, &s, i), .253781, 6e-7, "each");
  near_by(plan_disorder(&p, &s) / plan_weight(&p, &s), 2.122114, 6e-7, "entropy in bits");
  for (int q = 0; q < CHAIN - 1; q++) near_by(information(&p, &s, q), gain[q], 6e-7, "a look between");
  plan_free(&p);
}

/* ---- W11: what the first tests tell --------------------------------------------------------
 * Inputs from memory: Pattipati and Alexandridis 1990; computed independently. What comes of
 * following it is in test_worked.c. */
static void isolation_information(void **state)
{
  static const double weight[] = {0.70, 0.01, 0.02, 0.10, 0.05, 0.12};
  static const char *const row[] = {"00000", "01001", "00110", "10011", "11000", "11110"};
  static const double cost[6] = {1, 1, 1, 1, 1, 1};
  struct plan_problem p;
  struct plan_state s;

  (void)state;
  perfect(&p, 6, weight, cost);
  for (int t = 0; t < 5; t++) {
    double yes[6];

    for (int i = 0; i < 6; i++) yes[i] = row[i][t] == '1';
    yes_no(&p, 1, yes);
  }
  plan_ready(&p);
  plan_start(&p, &s);
  near_by(plan_disorder(&p, &s), 1.454873, 6e-7, "entropy in bits");
  near_by(plan_information(&p, &s, 0), .841465, 6e-7, "the first test");
  for (int t = 1; t < 5; t++) assert_true(plan_information(&p, &s, t) < plan_information(&p, &s, 0));
  plan_free(&p);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(polybox), cmocka_unit_test(inverters),
                                     cmocka_unit_test(isolation_information)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
