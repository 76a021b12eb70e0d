/* test_net.c - beliefs in sets of faults: worked networks, and many by dice against going
 * through every set. The worked networks W7 and W8 were computed independently of this
 * project's code, W8 in exact fractions. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/mem.h"
#include "brute.h"
#include "random_net.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static void near(double got, double want, double by, const char *what)
{
  if (!(fabs(got - want) <= by)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

/* ---- W7: three faults, four findings ------------------------------------------------- */

static const double toy_prior[] = {0.10, 0.05, 0.02};
static const struct net_link toy_links[4][2] = {{{0, {0.2, 0.8}}, {2, {0.4, 0.6}}},
                                                {{0, {0.3, 0.7}}, {1, {0.1, 0.9}}},
                                                {{1, {0.5, 0.5}}, {2, {0.5, 0.5}}},
                                                {{0, {0.7, 0.3}}, {2, {0.1, 0.9}}}};
static const double toy_leak[] = {0.01, 0.02, 0.05, 0.01};

/* seen: '+' unsound, '-' sound, '.' not looked at, for each of the four. */
static struct net toy(const char *seen, struct net_finding *findings)
{
  struct net net = {.fault_count = 3, .prior = toy_prior, .findings = findings};

  for (size_t i = 0; i < 4; i++) {
    struct net_finding *f = &findings[net.finding_count];

    if (seen[i] == '.') continue;
    *f = (struct net_finding){.grades = 2, .focus = true, .links = toy_links[i], .link_count = 2};
    f->leak[1] = toy_leak[i];
    f->leak[0] = 1 - toy_leak[i];
    f->seen[seen[i] == '+'] = 1;
    net.finding_count++;
  }
  return net;
}

static size_t members(unsigned set, int *out)
{
  size_t count = 0;

  for (int f = 0; set >> f; f++)
    if (set >> f & 1u) out[count++] = f;
  return count;
}

static double most_probable(const struct net *net, double log_chance, unsigned *best)
{
  double most = -1;

  for (unsigned set = 0; set < 1u << net->fault_count; set++) {
    int list[BRUTE_MAX_FAULTS];
    double chance = exp(net_log_joint(net, list, members(set, list)) - log_chance);

    if (chance > most) {
      most = chance;
      *best = set;
    }
  }
  return most;
}

static void test_worked_toy(void **state)
{
  static const struct {
    const char *seen;
    double chance, belief[3];
    unsigned best;
    double most;
  } rows[] = {
      {".+..", .1296130000, {.55490576, .35060526, .02000000}, 1, .507114},
      {"++..", .0591153922, {.97864757, .08105750, .03419463}, 1, .891719},
      {"++-.", .0530610432, {.98939486, .04030076, .01550102}, 1, .943793},
      {"++-+", .0166929610, {.98820992, .04090248, .04547594}, 1, .920995},
      {"++++", .0025276195, {.82721098, .40240925, .43579277}, 1, .320129},
      {"----", .7704649025, {.00464499, .00262467, .00040800}, 0, .992337},
  };

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    struct net_finding findings[4];
    struct net net = toy(rows[i].seen, findings);
    double belief[3], log_chance, most;
    unsigned best = 99;

    assert_true(net_solve(&net, belief, NULL, &log_chance));
    near(exp(log_chance), rows[i].chance, 0.6e-10, rows[i].seen);
    for (int f = 0; f < 3; f++) near(belief[f], rows[i].belief[f], 0.6e-8, rows[i].seen);
    most = most_probable(&net, log_chance, &best);
    assert_int_equal(best, rows[i].best);
    near(most, rows[i].most, 0.6e-6, rows[i].seen);
  }
}

/* A second finding that one fault accounts for well takes the suspicion off its rival. */
static void test_explaining_away(void **state)
{
  struct net_finding findings[4];
  double before[3], after[3];
  struct net one = toy(".+..", findings), two;

  (void)state;
  assert_true(net_solve(&one, before, NULL, NULL));
  two = toy("++..", findings);
  assert_true(net_solve(&two, after, NULL, NULL));
  assert_true(before[1] > toy_prior[1]); /* f1 speaks for both of its causes */
  assert_true(after[0] > before[0] && after[1] < before[1] / 4);
  near(before[1], .3506, 0.6e-4, "before");
  near(after[1], .0811, 0.6e-4, "after");
}

/* ---- W8: where inclusion and exclusion in doubles returns 0.83 ------------------------ */

static void hostile(struct net_finding *findings, size_t count, double leak, const struct net_link *link)
{
  for (size_t i = 0; i < count; i++)
    findings[i] = (struct net_finding){
        .grades = 2, .focus = true, .leak = {1 - leak, leak}, .seen = {0, 1}, .links = link, .link_count = 1};
}

static void test_worked_hostile(void **state)
{
  static const double prior[] = {0.001};
  static const struct net_link link = {0, {0.99, 0.01}};
  struct net_finding findings[6];
  struct net net = {.fault_count = 1, .prior = prior, .findings = findings, .finding_count = 6};
  /* P(e | fault) = (1 - .999 * .99)^6 and P(e | none) = .001^6 */
  double with = 0.001 * pow(0.01099, 6), without = 0.999e-18, belief, log_chance;

  (void)state;
  hostile(findings, 6, 0.001, &link);
  assert_true(net_solve(&net, &belief, NULL, &log_chance));
  near(belief, 0.9994333262, 0.6e-10, "W8");
  near(exp(log_chance) / 1.76292e-15, 1, 1e-5, "W8 P(e)");
  near(belief, with / (with + without), 1e-9, "W8 in closed form");
  near(log_chance, log(with + without), 1e-9, "W8 P(e) in closed form");
}

/* ---- by dice against every set -------------------------------------------------------- */

struct tally {
  size_t possible, impossible, graded, soft, soft_sound, biased, blamed;
};

static void count_kinds(const struct net *net, struct tally *t)
{
  t->biased += net->bias != NULL;
  for (size_t i = 0; i < net->finding_count; i++) {
    const struct net_finding *f = &net->findings[i];
    int several = 0;

    for (int g = 0; g < f->grades; g++) several += f->seen[g] > 0;
    t->graded += f->grades > 2;
    t->soft += f->soft_sound <= 0 && several > 1;
    t->soft_sound += f->soft_sound > 0;
  }
}

/* Any one set: its joint chance, and the chances of the grades of a finding. */
static void compare_set(const struct net *net, unsigned set, uint64_t seed)
{
  int list[BRUTE_MAX_FAULTS];
  size_t count = members(set, list);
  long double want = brute_joint(net, set), grade[NET_MAX_GRADES];
  double got = net_log_joint(net, list, count), ours[NET_MAX_GRADES];

  if (want > 0 ? fabsl((long double)got - logl(want)) > 1e-9L : !(got < -700))
    fail_msg("seed %llu, set %x: joint %.15g, not %.15Lg", (unsigned long long)seed, set, got, logl(want));
  for (size_t i = 0; i < net->finding_count; i++) {
    const struct net_finding *f = &net->findings[i];

    brute_grades(f, set, grade);
    net_grade_chances(f, list, count, ours);
    for (int g = 0; g < f->grades; g++)
      if (fabsl((long double)ours[g] - grade[g]) > 1e-9L * grade[g] + 1e-18L)
        fail_msg("seed %llu, finding %zu grade %d: %.15g", (unsigned long long)seed, i, g, ours[g]);
  }
}

/* The joint chances of no fault and of each alone, all in one walk. */
static void compare_singles(const struct net *net, uint64_t seed)
{
  double alone[RANDOM_MAX_FAULTS + 1];

  net_log_singles(net, &alone[net->fault_count], alone);
  for (size_t f = 0; f <= net->fault_count; f++) {
    long double want = brute_joint(net, f < net->fault_count ? 1u << f : 0);

    if (want > 0 ? !(fabsl((long double)alone[f] - logl(want)) <= 1e-9L) : !(alone[f] < -700))
      fail_msg("seed %llu, fault %zu alone: %.15g, not %.15Lg", (unsigned long long)seed, f, alone[f],
               logl(want));
  }
}

static void compare(const struct net *net, uint64_t seed, struct tally *t)
{
  double belief[RANDOM_MAX_FAULTS], blame[RANDOM_MAX_FAULTS], log_chance;
  struct brute want;
  bool solved = net_solve(net, belief, blame, &log_chance);

  brute_solve(net, &want);
  count_kinds(net, t);
  compare_singles(net, seed);
  if (want.chance <= 0) {
    t->impossible++;
    if (solved) fail_msg("seed %llu: solved the impossible", (unsigned long long)seed);
    return;
  }
  t->possible++;
  if (!solved) fail_msg("seed %llu: not solved, chance %Lg", (unsigned long long)seed, want.chance);
  if (!(fabsl((long double)log_chance - logl(want.chance)) <= 1e-9L))
    fail_msg("seed %llu: chance %.15g, not %.15Lg", (unsigned long long)seed, log_chance, logl(want.chance));
  for (size_t f = 0; f < net->fault_count; f++) {
    if (!(fabsl((long double)belief[f] - want.belief[f]) <= 1e-9L))
      fail_msg("seed %llu: belief %zu %.15g, not %.15Lg", (unsigned long long)seed, f, belief[f],
               want.belief[f]);
    if (!(fabsl((long double)blame[f] - want.blame[f]) <= 1e-9L))
      fail_msg("seed %llu: blame %zu %.15g, not %.15Lg", (unsigned long long)seed, f, blame[f],
               want.blame[f]);
    t->blamed += blame[f] > 1e-6;
  }
  compare_set(net, want.best, seed);
  compare_set(net, (unsigned)(seed % (1u << net->fault_count)), seed);
}

static void roll(uint64_t first, uint64_t count, const struct random_style *style, struct tally *t)
{
  *t = (struct tally){0};
  for (uint64_t seed = first; seed < first + count; seed++) {
    struct random_net r;
    uint64_t state = seed;

    random_make(&r, &state, style);
    compare(&r.net, seed, t);
  }
}

static void test_dice(void **state)
{
  static const struct random_style style = {.faults = 7, .findings = 6, .least = 1e-3};
  struct tally t;

  (void)state;
  roll(1, 10000, &style, &t);
  assert_int_equal(t.possible, 10000);
  assert_true(t.biased > 4000 && t.graded > 10000 && t.soft > 5000 && t.soft_sound > 3000 && t.blamed > 5000);
}

/* Chances of exactly 0 and 1, faults that cannot be, results that say nothing. */
static void test_dice_edges(void **state)
{
  static const struct random_style style = {.faults = 6, .findings = 5, .least = 1e-3, .edges = true};
  struct tally t;

  (void)state;
  roll(100001, 4000, &style, &t);
  assert_true(t.impossible > 150 && t.possible > 3000);
}

/* Chances down to 1e-12: here subtracting nearly equal chances would show. */
static void test_dice_tiny(void **state)
{
  static const struct random_style style = {.faults = 6, .findings = 6, .least = 1e-12};
  struct tally t;

  (void)state;
  roll(200001, 4000, &style, &t);
  assert_int_equal(t.possible, 4000);
}

/* ---- same in, same out ----------------------------------------------------------------- */

static void test_same_bytes(void **state)
{
  static const struct random_style style = {.faults = 8, .findings = 7, .least = 1e-6};

  (void)state;
  for (uint64_t seed = 300001; seed < 300201; seed++) {
    struct random_net r;
    uint64_t dice = seed;
    double a[2][2 * RANDOM_MAX_FAULTS + 1];

    random_make(&r, &dice, &style);
    memset(a, 0, sizeof a);
    for (int i = 0; i < 2; i++)
      assert_true(net_solve(&r.net, a[i], a[i] + RANDOM_MAX_FAULTS, &a[i][2 * RANDOM_MAX_FAULTS]));
    assert_memory_equal(a[0], a[1], sizeof a[0]);
  }
}

/* The order in which findings came must not matter beyond the last digits. */
static void test_order_of_findings(void **state)
{
  static const struct random_style style = {.faults = 8, .findings = 7, .least = 1e-3};

  (void)state;
  for (uint64_t seed = 400001; seed < 400501; seed++) {
    struct random_net r;
    struct net_finding turned[RANDOM_MAX_FINDINGS];
    uint64_t dice = seed;
    double a[RANDOM_MAX_FAULTS], b[RANDOM_MAX_FAULTS];
    struct net net;

    random_make(&r, &dice, &style);
    net = r.net;
    net.findings = turned;
    for (size_t i = 0; i < net.finding_count; i++) turned[i] = r.findings[net.finding_count - 1 - i];
    assert_true(net_solve(&r.net, a, NULL, NULL) && net_solve(&net, b, NULL, NULL));
    for (size_t f = 0; f < net.fault_count; f++) near(a[f], b[f], 1e-12, "turned round");
  }
}

/* ---- limits ------------------------------------------------------------------------------ */

/* count unsound results of so many grades, all reached by both of two faults. */
static bool solves(size_t count, int grades, bool mixed, double *belief)
{
  static const double prior[] = {0.01, 0.02};
  struct net_finding findings[32];
  struct net_link links[2] = {{.fault = 0}, {.fault = 1}};
  struct net net = {.fault_count = 2, .prior = prior, .findings = findings, .finding_count = count + 5};

  for (int d = 0; d < 2; d++)
    for (int g = 0; g < grades; g++) links[d].chance[g] = g == d + 1 ? 0.9 : 0.1 / (grades - 1);
  for (size_t i = 0; i < net.finding_count; i++) {
    struct net_finding *f = &findings[i];

    *f = (struct net_finding){.grades = grades, .links = links, .link_count = 2};
    for (int g = 0; g < grades; g++) f->leak[g] = g == 0 ? 0.9 : 0.1 / (grades - 1);
    if (i >= count) f->seen[0] = 1; /* sound results take no room */
    else f->seen[1] = 1;
    if (mixed && i < count) f->seen[0] = 0.01;
  }
  return net_solve(&net, belief, NULL, NULL);
}

static void test_room(void **state)
{
  double belief[2] = {0};

  (void)state;
  assert_int_equal(NET_MAX_CELLS, 1 << 20);
  assert_true(solves(20, 2, false, belief)); /* 2^20 just fits */
  assert_true(belief[0] > 0.5);
  assert_false(solves(21, 2, false, belief));
  assert_true(solves(20, 3, false, belief)); /* a plain result takes two places, whatever its grades */
  assert_true(solves(10, 4, true, belief));
  assert_false(solves(11, 4, true, belief));
  assert_false(solves(14, 3, true, belief)); /* 3^14 is beyond 2^20 */
}

static bool solve_one(double prior, double leak, double chance, int seen, double *belief)
{
  struct net_link link = {0, {1 - chance, chance}};
  struct net_finding f = {.grades = 2, .leak = {1 - leak, leak}, .links = &link, .link_count = 1};
  struct net net = {.fault_count = 1, .prior = &prior, .findings = &f, .finding_count = 1};
  double log_chance, blame;
  bool good;

  f.seen[seen] = 1;
  good = net_solve(&net, belief, &blame, &log_chance);
  return good && isfinite(log_chance) && isfinite(*belief) && isfinite(blame);
}

static void test_impossible(void **state)
{
  double belief;

  (void)state;
  assert_false(solve_one(0.1, 0, 0, 1, &belief));   /* nothing can have brought it about */
  assert_false(solve_one(0, 0, 0.5, 1, &belief));   /* its only cause cannot be there */
  assert_false(solve_one(0.1, 1, 0.5, 0, &belief)); /* it is always unsound */
  assert_true(solve_one(0.1, 0, 0.5, 1, &belief));
  near(belief, 1, 0, "the only cause there is");
  assert_true(solve_one(0.1, 0.01, 1, 0, &belief));
  near(belief, 0, 0, "a fault that always shows, and did not");
  assert_true(solve_one(0, 0.2, 0.5, 1, &belief));
  near(belief, 0, 0, "a fault that cannot be there");
}

/* Thousands of sound results: their chance is far below what a double holds. */
static void test_many_sound(void **state)
{
  enum { MANY = 4000 };
  static const double prior[] = {0.3, 0.2, 1e-6};
  struct net_link miss[2] = {{0, {0.999, 0.001}}, {1, {0.4, 0.6}}},
                  hit[2] = {{0, {0.5, 0.5}}, {2, {0.3, 0.7}}};
  struct net_finding *findings = mem_array(MANY + 1, sizeof *findings);
  struct net net = {.fault_count = 3, .prior = prior, .findings = findings, .finding_count = MANY + 1};
  double belief[3], log_chance, none, first, both, third;

  (void)state;
  for (size_t i = 0; i < MANY; i++)
    findings[i] =
        (struct net_finding){.grades = 2, .leak = {0.5, 0.5}, .seen = {1}, .links = miss, .link_count = 2};
  findings[MANY] = (struct net_finding){
      .grades = 2, .leak = {0.9999, 0.0001}, .seen = {0, 1}, .links = hit, .link_count = 2};
  assert_true(net_solve(&net, belief, NULL, &log_chance));
  free(findings);
  /* in closed form: of the second fault nothing is left */
  none = 0.7 * (1 - 1e-6) * 0.0001;
  first = 0.3 * pow(0.999, MANY) * (1 - 1e-6) * (1 - 0.9999 * 0.5);
  third = 0.7 * 1e-6 * (1 - 0.9999 * 0.3);
  both = 0.3 * pow(0.999, MANY) * 1e-6 * (1 - 0.9999 * 0.5 * 0.3);
  near(belief[0], (first + both) / (none + first + third + both), 1e-12, "first");
  near(belief[1], 0, 0, "second");
  near(belief[2], (third + both) / (none + first + third + both), 1e-12, "third");
  near(log_chance, MANY * log(0.5) + log(0.8) + log(none + first + third + both), 1e-8, "chance");
}

/* Unsound results that are next to impossible: exact as long as a double holds their
 * chance, and refused, not guessed, below that. */
static void test_unlikely(void **state)
{
  static const double prior[] = {1e-9};
  static const struct net_link link = {0, {1 - 2e-14, 2e-14}};
  struct net_finding findings[20];
  struct net net = {.fault_count = 1, .prior = prior, .findings = findings, .finding_count = 20};
  double belief = -1, blame = -1, log_chance, with = 1e-9 * pow(3, 20), without = 1 - 1e-9;

  (void)state;
  hostile(findings, 20, 1e-14, &link); /* P(e) is about 1e-280 */
  assert_true(net_solve(&net, &belief, &blame, &log_chance));
  near(belief, with / (with + without), 1e-9, "belief");
  near(blame, with / (with + without) * (1 - pow(1. / 3, 20)), 1e-9, "blame");
  near(log_chance, 20 * log(1e-14) + log(with + without), 1e-9, "chance");
  hostile(findings, 20, 1e-20, &link);
  net.fault_count = 0;
  for (size_t i = 0; i < 20; i++) findings[i].link_count = 0;
  assert_false(net_solve(&net, NULL, NULL, NULL)); /* 1e-400 */
}

/* Nothing found: beliefs are what they were, turned by the bias alone. */
static void test_nothing_found(void **state)
{
  static const double prior[] = {0.01, 0.5, 0}, bias[] = {1, 3, 100};
  struct net net = {.fault_count = 3, .prior = prior, .bias = bias};
  double belief[3], blame[3], log_chance;

  (void)state;
  assert_true(net_solve(&net, belief, blame, &log_chance));
  near(belief[0], 0.01, 1e-15, "without bias");
  near(belief[1], 0.75, 1e-15, "odds even times 3");
  near(belief[2], 0, 0, "cannot be");
  near(log_chance, log(0.5 + 1.5), 1e-14, "chance"); /* bias is a factor of the chance */
  for (int f = 0; f < 3; f++) near(blame[f], 0, 0, "nothing to blame for");
}

/* A fault that is there beside the trouble is believed but not blamed. */
static void test_blame_beside(void **state)
{
  static const double prior[] = {0.05, 0.5};
  static const struct net_link cause[] = {{0, {0.1, 0.9}}}, other[] = {{1, {0.2, 0.8}}};
  struct net_finding findings[] = {
      {.grades = 2, .leak = {0.99, 0.01}, .seen = {0, 1}, .focus = true, .links = cause, .link_count = 1},
      {.grades = 2, .leak = {0.99, 0.01}, .seen = {0, 1}, .links = other, .link_count = 1}};
  struct net net = {.fault_count = 2, .prior = prior, .findings = findings, .finding_count = 2};
  double belief[2], blame[2], seen = 0.05 * (1 - 0.99 * 0.1) + 0.95 * 0.01;

  (void)state;
  assert_true(net_solve(&net, belief, blame, NULL));
  near(blame[0], 0.05 * 0.9 / seen, 1e-12, "brought it about");
  near(belief[0], 0.05 * (1 - 0.99 * 0.1) / seen, 1e-12, "is there");
  assert_true(belief[1] > 0.98);
  near(blame[1], 0, 0, "beside");
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_worked_toy),     cmocka_unit_test(test_explaining_away),
      cmocka_unit_test(test_worked_hostile), cmocka_unit_test(test_dice),
      cmocka_unit_test(test_dice_edges),     cmocka_unit_test(test_dice_tiny),
      cmocka_unit_test(test_same_bytes),     cmocka_unit_test(test_order_of_findings),
      cmocka_unit_test(test_room),           cmocka_unit_test(test_impossible),
      cmocka_unit_test(test_many_sound),     cmocka_unit_test(test_unlikely),
      cmocka_unit_test(test_nothing_found),  cmocka_unit_test(test_blame_beside),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
