/* test_published.c - networks and sums of evidence with published numbers.
 *
 * Only what a network of two layers can express exactly is put through net_solve; each
 * comment says what was mapped and how. Where a network has a layer between, the test
 * works the chances of that layer out itself, or solves once for each state of a few
 * nodes and adds the cases up by their chances (log_chance). Nothing else is added. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "one_cause.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

/* ---- W13: the coin ------------------------------------------------------------------------
 * A wartime report on a cipher machine (general report on Tunny, section on weight of
 * evidence): twenty heads, double-headed or fair, odds 1 to 10^4 before; 3 db for a head,
 * 60 - 40 = 20 db, or 100 to 1. Exact, computed independently: 20.205999 db, odds 104.8576.
 * Here: the coin is the fault, every throw a finding that shows heads always or half the time. */
static void test_coin(void **state)
{
  static const double prior = 1 / 10001.0;
  struct net_finding heads[20];
  struct net_link links[20];
  double belief = 0, step;

  (void)state;
  for (size_t i = 0; i < 20; i++) one_cause(&heads[i], &links[i], 1, 0.5, true);
  near_by(decibans(believe(prior, heads, 0, NULL)), -40, 1e-9, "before");
  for (size_t i = 1; i <= 20; i++) {
    double before = believe(prior, heads, i - 1, NULL);

    belief = believe(prior, heads, i, NULL);
    step = decibans(belief) - decibans(before);
    near_by(step, 10 * log10(2), 1e-9, "one head");
    near_by(step, 3, 0.05, "one head, as printed");
  }
  near_by(decibans(belief), 20.205999, 0.6e-6, "after 20");
  near_by(decibans(belief), 20, 0.3, "after 20, as printed");
  near_by(belief / (1 - belief), 104.8576, 1e-6, "odds");
  near_by(belief, .990553, 0.6e-6, "chance");
}

/* The same coin as evidence from elsewhere: twenty times 3 db exactly, as printed. */
static void test_coin_as_bias(void **state)
{
  static const double prior = 1 / 10001.0;
  double bias = 1, belief;
  struct net net = {.fault_count = 1, .prior = &prior, .bias = &bias};

  (void)state;
  for (int i = 0; i < 20; i++) bias *= pow(10, 3 / 10.0);
  assert_true(net_solve(&net, &belief, NULL, NULL));
  near_by(decibans(belief), 20, 1e-9, "60 - 40");
  near_by(belief / (1 - belief), 100, 1e-6, "100 to 1");
}

/* ---- W14: the bag of poker chips -----------------------------------------------------------
 * Edwards 1968, read in several places: bags of 70/30 and 30/70, even odds, 8 red and 4
 * blue drawn: printed ".97"; people say about .7. Exact, computed independently: .967365,
 * 14.719071 db. Here: the mostly red bag is the fault; red is unsound, blue is sound. */
static void test_bag(void **state)
{
  struct net_finding chips[12];
  struct net_link links[12];
  double belief;

  (void)state;
  for (size_t i = 0; i < 12; i++) one_cause(&chips[i], &links[i], 0.7, 0.3, i < 8);
  belief = believe(0.5, chips, 12, NULL);
  near_by(belief, .967365, 0.6e-6, "bag");
  near_by(belief, .97, 0.005, "bag, as printed");
  near_by(decibans(belief), 14.719071, 0.6e-6, "bag in decibans");
  near_by(decibans(believe(0.5, chips, 4, NULL)), decibans(belief), 1e-9, "reds and blues cancel");
}

/* Decibans of single results, computed independently. */
static void test_decibans(void **state)
{
  static const struct {
    double with, without;
    bool yes;
    double db;
  } rows[] = {
      {.9, .1, true, 9.5424}, {.95, .05, true, 12.7875}, {.8, .3, true, 4.2597}, {.8, .3, false, -5.4407}};

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    struct net_finding f;
    struct net_link l;

    one_cause(&f, &l, rows[i].with, rows[i].without, rows[i].yes);
    near_by(decibans(believe(0.5, &f, 1, NULL)), rows[i].db, 0.6e-4, "one result");
  }
}

/* From even odds up by so many decibans of evidence from elsewhere, computed independently. */
static void test_up_from_even(void **state)
{
  static const struct { double db, chance; } rows[] = {
      {1, .5573}, {3, .6661}, {5, .7597}, {10, .9091}, {20, .9901}};

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    double prior = 0.5, bias = pow(10, rows[i].db / 10), belief;
    struct net net = {.fault_count = 1, .prior = &prior, .bias = &bias};

    assert_true(net_solve(&net, &belief, NULL, NULL));
    near_by(belief, rows[i].chance, 0.6e-4, "up from even");
  }
}

/* ---- W16: the burglary ---------------------------------------------------------------------
 * Textbook network; P(B|j,m) = .284171835364 is in public test suites, the other numbers
 * were computed independently. The alarm's four chances are not a noisy-OR of burglary and
 * earthquake, so:
 *   P(B|j,m) and the like: burglary is the only cause; the test takes earthquake and alarm
 *     out by working out the chance of the calls with and without a burglary.
 *   P(A|j,m): the alarm is the only cause, the calls are two findings: as it stands.
 *   P(B|a,e): burglary is the only cause, the leak is the earthquake's chance: as it stands. */
static const double burglary = .001, earthquake = .002, rings[2][2] = {{.001, .29}, {.94, .95}};

static double alarm_given_b(int b) { return earthquake * rings[b][1] + (1 - earthquake) * rings[b][0]; }
static double alarm_given_e(int e) { return burglary * rings[1][e] + (1 - burglary) * rings[0][e]; }

/* Belief in a cause that gives the alarm these chances, after calls of these chances with
 * and without the alarm. */
static double after_calls(double prior, double with, double without, double call, double no_call,
                          double *chance)
{
  struct net_finding f;
  struct net_link l;

  one_cause(&f, &l, with * call + (1 - with) * no_call, without * call + (1 - without) * no_call, true);
  return believe(prior, &f, 1, chance);
}

/* Both calls and the alarm, with neither a burglary nor an earthquake: the joint chance of the
 * empty set, the alarm being a finding that rings without cause and the calls what is seen of
 * it. The faults' links do not matter for that set and are left out. */
static double burglary_joint(double calls)
{
  const double prior[] = {burglary, earthquake};
  struct net_finding alarm = {.grades = 2, .leak = {1 - rings[0][0], rings[0][0]}, .seen = {0, calls}};
  struct net net = {.fault_count = 2, .prior = prior, .findings = &alarm, .finding_count = 1};

  return exp(net_log_joint(&net, NULL, 0));
}

static void test_burglary(void **state)
{
  const double j[2] = {.05, .9}, m[2] = {.01, .7};
  struct net_finding calls[2], alarm;
  struct net_link links[2], link;
  double chance, p_alarm = burglary * alarm_given_b(1) + (1 - burglary) * alarm_given_b(0);

  (void)state;
  near_by(after_calls(burglary, alarm_given_b(1), alarm_given_b(0), j[1] * m[1], j[0] * m[0], NULL),
       .284171835364, 0.6e-12, "P(B|j,m)");
  near_by(after_calls(earthquake, alarm_given_e(1), alarm_given_e(0), j[1] * m[1], j[0] * m[0], NULL),
          .176067, 0.6e-6, "P(E|j,m)");
  near_by(after_calls(burglary, alarm_given_b(1), alarm_given_b(0), j[1], j[0], &chance), .016284, 0.6e-6,
       "P(B|j)");
  near_by(chance, .052139, 0.6e-6, "P(j)");
  after_calls(burglary, alarm_given_b(1), alarm_given_b(0), m[1], m[0], &chance);
  near_by(chance, .011736, 0.6e-6, "P(m)");
  near_by(after_calls(burglary, alarm_given_b(1), alarm_given_b(0), 1, 0, NULL), .373551, 0.6e-6, "P(B|a)");
  one_cause(&alarm, &link, rings[1][1], rings[0][1], true);
  near_by(believe(burglary, &alarm, 1, NULL), .003268, 0.6e-6, "P(B|a,e)");
  near_by(burglary_joint(j[1] * m[1]), .000628111, 0.6e-9, "P(j,m,a,no b,no e)");
  one_cause(&calls[0], &links[0], j[1], j[0], true);
  one_cause(&calls[1], &links[1], m[1], m[0], true);
  near_by(believe(p_alarm, calls, 2, NULL), .760692, 0.6e-6, "P(A|j,m)");
}

/* ---- W15: the chest clinic -------------------------------------------------------------------
 * Textbook network of eight nodes; its marginals are in public test suites, the posteriors
 * were computed independently. Mapped: tuberculosis and cancer are the faults; "either" is a
 * finding that each brings about surely, without leak; what is seen of it (the X-ray, the
 * short breath) are its chances under "either" and not, as soft evidence. Smoking makes
 * cancer and bronchitis go together, and bronchitis and "either" act on the breath in a way
 * that is no noisy-OR: so the network is solved once for each state of these two, and the
 * four answers are added up by their chances. */
struct clinic { /* -1: not known */
  int asia, smoke, xray, breath;
};

struct clinic_belief {
  double chance, tub, lung, either, bronc, smoke;
};

static const double short_breath[2][2] = {{.1, .8}, {.7, .9}}; /* by either, bronchitis */
static const double shadow[2] = {.05, .98};

static double of_two(double p, int state) { return state ? p : 1 - p; }

/* Tuberculosis, cancer and "either" for given smoking and bronchitis. Adds to *b. */
static void clinic_case(const struct clinic *c, int smoke, int bronc, struct clinic_belief *b)
{
  static const struct net_link links[] = {{0, {0, 1}}, {1, {0, 1}}};
  double p_asia = c->asia < 0 ? .01 : c->asia, outer = of_two(.5, smoke) * of_two(smoke ? .6 : .3, bronc);
  double prior[] = {.05 * p_asia + .01 * (1 - p_asia), smoke ? .1 : .01}, belief[2], log_chance, chance;
  struct net_finding either = {.grades = 2, .leak = {1, 0}, .links = links, .link_count = 2};
  struct net net = {.fault_count = 2, .prior = prior, .findings = &either, .finding_count = 1};

  if (c->asia >= 0) outer *= of_two(.01, c->asia);
  for (int e = 0; e < 2; e++) {
    either.seen[e] = 1;
    if (c->xray >= 0) either.seen[e] *= of_two(shadow[e], c->xray);
    if (c->breath >= 0) either.seen[e] *= of_two(short_breath[e][bronc], c->breath);
  }
  assert_true(net_solve(&net, belief, NULL, &log_chance));
  chance = outer * exp(log_chance);
  b->chance += chance;
  b->tub += chance * belief[0];
  b->lung += chance * belief[1];
  b->bronc += chance * bronc;
  b->smoke += chance * smoke;
  either.seen[0] = 0; /* and now that "either" holds */
  assert_true(net_solve(&net, NULL, NULL, &log_chance));
  b->either += outer * exp(log_chance);
}

static struct clinic_belief clinic(struct clinic c)
{
  struct clinic_belief b = {0};

  for (int smoke = 0; smoke < 2; smoke++)
    for (int bronc = 0; bronc < 2; bronc++)
      if (c.smoke < 0 || c.smoke == smoke) clinic_case(&c, smoke, bronc, &b);
  b.tub /= b.chance;
  b.lung /= b.chance;
  b.either /= b.chance;
  b.bronc /= b.chance;
  b.smoke /= b.chance;
  return b;
}

static void test_clinic_marginals(void **state)
{
  struct clinic_belief b = clinic((struct clinic){-1, -1, -1, -1});

  (void)state;
  near_by(b.chance, 1, 1e-14, "all");
  near_by(b.tub, .0104, 1e-12, "tub");
  near_by(b.lung, .055, 1e-12, "lung");
  near_by(b.bronc, .45, 1e-12, "bronc");
  near_by(b.either, .064828, 1e-12, "either");
  near_by(clinic((struct clinic){-1, -1, 1, -1}).chance, .1102900, 0.6e-7, "xray");
  b = clinic((struct clinic){-1, -1, -1, 1});
  near_by(b.chance, .4359706, 0.6e-7, "dysp");
  near_by(b.smoke, .6339969, 0.6e-7, "smoke|dysp");
  near_by(clinic((struct clinic){-1, 1, -1, 1}).chance / .5, .552808, 0.6e-6, "dysp|smoke");
}

static void test_clinic_posteriors(void **state)
{
  static const struct {
    const char *name;
    struct clinic seen;
    double tub, lung, bronc, either;
  } rows[] = {
      {"asia, dysp", {1, -1, -1, 1}, .0877510, .0995251, .8114021, .1822999},
      {"dysp", {-1, -1, -1, 1}, .0188453, .1027592, .8339673, -1},
      {"xray", {-1, -1, 1, -1}, .0924109, .4887114, .5063262, -1},
      {"xray, dysp", {-1, -1, 1, 1}, .1139333, .6212528, .6818685, -1},
      {"asia, smoke, dysp, xray", {1, 1, 1, 1}, .2895814, .5791628, .7009196, -1},
      {"asia, dysp, no xray", {1, -1, 0, 1}, .0022487, .0025504, .8627608, -1},
  };

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    struct clinic_belief b = clinic(rows[i].seen);

    near_by(b.tub, rows[i].tub, 0.6e-7, rows[i].name);
    near_by(b.lung, rows[i].lung, 0.6e-7, rows[i].name);
    near_by(b.bronc, rows[i].bronc, 0.6e-7, rows[i].name);
    if (rows[i].either >= 0) near_by(b.either, rows[i].either, 0.6e-7, rows[i].name);
  }
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_coin),
      cmocka_unit_test(test_coin_as_bias),
      cmocka_unit_test(test_bag),
      cmocka_unit_test(test_decibans),
      cmocka_unit_test(test_up_from_even),
      cmocka_unit_test(test_burglary),
      cmocka_unit_test(test_clinic_marginals),
      cmocka_unit_test(test_clinic_posteriors),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
