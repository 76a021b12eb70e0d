/* test_casenet.c - from a case to evidence: readings, certainty, what rules weaken and
 * imply, and results taken back. Runs the whole way through rules and weighing with the
 * small knowledge of tests/weigh/small.
 * Usage: test_casenet TOP-OF-SOURCES */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "fixture.h"
#include "knowledge/load.h"

static const char *source;
static struct knowledge k;
static struct assessor *assessor;

static void near(double got, double want, double by, const char *what)
{
  if (!(fabs(got - want) <= by)) fail_msg("%s: %.15g, not %.15g", what, got, want);
}

static int check_id(const char *id) { return fixture_id(&k, ENTRY_CHECK, id); }
static int fault_id(const char *id) { return fixture_id(&k, ENTRY_FAULT, id); }

static void assess(const struct bench_case *c, struct assessment *a)
{
  struct err e = {0};

  if (assess_case(assessor, c, a, &e)) fail_msg("%s", e.text);
}

/* A four-stroke mower that will not start; results are added by the test. */
static void begin(struct bench_case *c, const char *feature)
{
  fixture_case(&k, c, "mower", feature);
  case_add_complaint(c, fixture_id(&k, ENTRY_COMPLAINT, "no-start"));
}

static double belief_of(const struct bench_case *c, const char *fault)
{
  struct assessment a;
  double p;

  assess(c, &a);
  p = a.belief[fixture_place(&a, fault)];
  assessment_free(&a);
  return p;
}

/* Belief in a fault when just this one result was given. */
static double belief_after(const char *check, const char *result, double sure, const char *fault)
{
  struct bench_case c;
  double p;

  begin(&c, "-decompression");
  if (check) fixture_result(&k, &c, check, result, 0, sure);
  p = belief_of(&c, fault);
  case_free(&c);
  return p;
}

/* ---- the faults of a case ----------------------------------------------------------- */

static void test_faults_of_a_case(void **state)
{
  struct bench_case c;
  struct assessment a;

  (void)state;
  fixture_case(&k, &c, "mower", NULL);
  assess(&c, &a);
  assert_int_equal(a.net.count, 5); /* four, and not listed */
  assert_int_equal(a.net.fault_of[4], -1);
  near(a.net.prior[fixture_place(&a, "coil-gone")], 0.05, 0, "base rate");
  near(a.net.prior[fixture_place(&a, "valve-stuck-open")], 0.04 * 0.5, 1e-15, "a part some have");
  near(a.net.prior[4], 0.02, 0, "not listed");
  assessment_free(&a);
  case_free(&c);
  fixture_case(&k, &c, "mower", "decompression");
  assess(&c, &a);
  near(a.net.prior[fixture_place(&a, "valve-stuck-open")], 0.04, 0, "a part it has");
  assessment_free(&a);
  case_free(&c);
  fixture_case(&k, &c, "saw", NULL);
  assess(&c, &a);
  assert_int_equal(a.net.count, 3); /* without the two that need what a saw lacks */
  assert_int_equal(a.net.place_of[fault_id("valve-leaks")], -1);
  near(a.net.prior[fixture_place(&a, "coil-gone")], 0.1, 0, "base rate of the class");
  assessment_free(&a);
  case_free(&c);
}

/* The first complaint, worked out by hand: two faults lead to it and its neighbour. */
static void test_complaint(void **state)
{
  struct bench_case c;
  struct assessment a;
  const struct net_finding *f;

  (void)state;
  begin(&c, "-decompression");
  assess(&c, &a);
  assert_int_equal(a.net.evidence_count, 1);
  f = &a.net.findings[0];
  near(f->leak[1], 0.02, 0, "anyway");
  assert_true(f->focus);
  for (size_t i = 0; i < f->link_count; i++) {
    int fault = a.net.fault_of[f->links[i].fault];
    double want = 0.05; /* not listed */

    if (fault == fault_id("valve-leaks")) want = 0.3 + 0.1 * 0.6; /* and said loosely */
    if (fault == fault_id("coil-gone")) want = 0.9;
    if (fault == fault_id("bowl-floods")) want = 0.5;
    near(f->links[i].chance[1], want, 1e-15, fault < 0 ? "not listed" : k.faults[fault].id);
  }
  assert_int_equal(f->link_count, 4);
  assessment_free(&a);
  case_free(&c);
}

/* ---- readings ----------------------------------------------------------------------- */

static const struct evidence *reading(struct bench_case *c, struct assessment *a, const char *feature,
                                      double psi, const struct case_card *card)
{
  const struct evidence *e;

  begin(c, feature);
  fixture_result(&k, c, "press", NULL, psi, 1);
  if (card) case_set_card(c, *card);
  assess(c, a);
  e = fixture_evidence(a, EVIDENCE_RESULT, check_id("press"));
  assert_non_null(e);
  return e;
}

/* 55 psi: weak on an ordinary engine, good on one with decompression, good by a card that
 * says 40 to 70. */
static void test_card_before_bands(void **state)
{
  struct case_card card = {.check = check_id("press"), .low = 40, .high = 70};
  struct bench_case c;
  struct assessment a;
  const struct evidence *e = reading(&c, &a, "-decompression", 55, NULL);

  (void)state;
  assert_string_equal(k.checks[e->subject].results.items[e->result], "weak");
  assert_string_equal(k.rules[e->rule].id, "reading-by-most-particular-bands");
  assessment_free(&a);
  case_free(&c);
  e = reading(&c, &a, "decompression", 55, NULL);
  assert_string_equal(k.checks[e->subject].results.items[e->result], "good");
  near(e->share[0], .8413447461, 1e-10, "one deviation over the particular limit");
  assessment_free(&a);
  case_free(&c);
  e = reading(&c, &a, NULL, 55, NULL); /* may have it: the general bands */
  assert_string_equal(k.checks[e->subject].results.items[e->result], "weak");
  assessment_free(&a);
  case_free(&c);
  e = reading(&c, &a, "-decompression", 55, &card);
  assert_string_equal(k.checks[e->subject].results.items[e->result], "good");
  assert_string_equal(k.rules[e->rule].id, "reading-by-spec-card");
  near(e->share[0], .9986501020, 1e-10, "three deviations over the card");
  assessment_free(&a);
  case_free(&c);
}

/* A reading near a limit speaks for both sides; the nearer, the less it says. */
static void test_reading_near_limit(void **state)
{
  static const double psi[] = {47.5, 50, 55, 60, 65, 70, 80};
  double before = 2;

  (void)state;
  for (size_t i = 0; i < sizeof psi / sizeof psi[0]; i++) {
    struct bench_case c;
    struct assessment a;
    const struct evidence *e = reading(&c, &a, "-decompression", psi[i], NULL);
    const struct net_finding *f = &a.net.findings[e - a.net.evidence];
    double p = a.belief[fixture_place(&a, "valve-leaks")];

    assert_true(e->reading);
    if (p >= before) fail_msg("%g psi: belief does not fall", psi[i]);
    before = p;
    if (psi[i] == 60) {
      near(f->seen[0], .5, 1e-12, "good");
      near(f->seen[1], .5, 1e-6, "weak");
    }
    if (psi[i] == 80) { /* far from any limit: a plain result */
      assert_true(f->seen[0] == 1 && f->seen[1] == 0 && f->seen[2] == 0);
    }
    assessment_free(&a);
    case_free(&c);
  }
  near(before, belief_after("press", "good", 1, "valve-leaks"), 1e-9, "80 psi is plainly good");
}

/* A measured check that no bands and no card judge says nothing. */
static void test_reading_without_bands(void **state)
{
  struct bench_case c;
  struct assessment with, without;

  (void)state;
  begin(&c, NULL);
  assess(&c, &without);
  fixture_result(&k, &c, "drain", NULL, 0.5, 1);
  assess(&c, &with);
  assert_null(fixture_evidence(&with, EVIDENCE_RESULT, check_id("drain")));
  assert_memory_equal(with.belief, without.belief, with.net.count * sizeof *with.belief);
  assessment_free(&with);
  case_set_card(&c, (struct case_card){.check = check_id("drain"), .low = 0, .high = 0.03});
  assess(&c, &with);
  assert_non_null(fixture_evidence(&with, EVIDENCE_RESULT, check_id("drain")));
  near(fixture_evidence(&with, EVIDENCE_RESULT, check_id("drain"))->share[1], 1, 1e-9, "drains, by the card");
  assessment_free(&with);
  assessment_free(&without);
  case_free(&c);
}

/* ---- certainty ---------------------------------------------------------------------- */

static void test_less_sure_counts_less(void **state)
{
  static const double sure[] = {0, 0.1, 0.5, 0.8, 0.95, 1};
  double none = belief_after(NULL, NULL, 0, "coil-gone"), up = 0, down = 2;

  (void)state;
  for (size_t i = 0; i < sizeof sure / sizeof sure[0]; i++) {
    double bad = belief_after("flash", "none", sure[i], "coil-gone");
    double good = belief_after("flash", "jumps", sure[i], "coil-gone");

    if (i == 0) {
      assert_true(bad == none && good == none); /* don't know: the same bytes */
    } else {
      assert_true(bad > up && bad > none);
      assert_true(good < down && good < none);
    }
    up = bad;
    down = good;
  }
}

/* Fairly sure of "none", by hand: seen with 0.8 + 0.2 / 2 against 0.2 / 2. */
static void test_fairly_sure_by_hand(void **state)
{
  struct bench_case c;
  struct assessment a;
  const struct net_finding *f;

  (void)state;
  begin(&c, "-decompression");
  fixture_result(&k, &c, "flash", "none", 0, 0.8);
  fixture_result(&k, &c, "switch", "at-run", 0, 0.8);
  assess(&c, &a);
  f = &a.net.findings[fixture_evidence(&a, EVIDENCE_RESULT, check_id("flash")) - a.net.evidence];
  near(f->seen[0], 0.1, 1e-15, "jumps");
  near(f->seen[1], 0.9, 1e-15, "none");
  f = &a.net.findings[fixture_evidence(&a, EVIDENCE_RESULT, check_id("switch")) - a.net.evidence];
  near(f->soft_sound, 0.8, 0, "fairly sure that it is sound");
  assessment_free(&a);
  case_free(&c);
}

/* ---- taking results back ------------------------------------------------------------ */

static void fill(struct bench_case *c)
{
  begin(c, "-decompression");
  fixture_result(&k, c, "press", NULL, 58, 1);
  fixture_result(&k, c, "wet", "wet", 0, 1);
  fixture_result(&k, c, "gap", NULL, 0.88, 0.8);
}

/* Whatever was concluded from a result goes with it: the answer is the same, byte by byte,
 * as if it had never been given, from this engine and from a fresh one. */
static void test_taken_back(void **state)
{
  static const char *const extra[][2] = {
      {"choked", "many"}, {"switch", "at-stop"}, {"ran", "ran"}, {"flash", "none"}, {"flash", "jumps"}};

  (void)state;
  for (size_t i = 0; i < sizeof extra / sizeof extra[0]; i++) {
    struct bench_case c;
    struct assessment never, with, after;
    struct assessor *fresh;
    struct err e = {0};

    fill(&c);
    assert_int_equal(assessor_open(&k, &fresh, &e), 0);
    assert_int_equal(assess_case(fresh, &c, &never, &e), 0);
    assessor_close(fresh);
    fixture_result(&k, &c, extra[i][0], extra[i][1], 0, 1);
    assess(&c, &with);
    assert_true(with.log_chance != never.log_chance);
    assert_true(case_drop_result(&c, check_id(extra[i][0])));
    assess(&c, &after);
    fixture_same(&after, &never);
    assessment_free(&never);
    assessment_free(&with);
    assessment_free(&after);
    case_free(&c);
  }
}

/* A changed answer counts as the new one alone. */
static void test_changed(void **state)
{
  struct bench_case c;
  double direct;

  (void)state;
  fill(&c);
  fixture_result(&k, &c, "flash", "jumps", 0, 1);
  direct = belief_of(&c, "coil-gone");
  fixture_result(&k, &c, "flash", "none", 0, 1);
  assert_true(belief_of(&c, "coil-gone") > 0.5);
  fixture_result(&k, &c, "flash", "jumps", 0, 1);
  assert_true(belief_of(&c, "coil-gone") == direct);
  case_free(&c);
}

/* ---- weak and void ------------------------------------------------------------------ */

static void test_weakened(void **state)
{
  struct bench_case c;
  struct assessment a;
  const struct evidence *e;
  double plain, weakened;

  (void)state;
  begin(&c, NULL);
  fixture_result(&k, &c, "wet", "wet", 0, 1);
  plain = belief_of(&c, "bowl-floods");
  fixture_result(&k, &c, "choked", "many", 0, 1);
  assess(&c, &a);
  weakened = a.belief[fixture_place(&a, "bowl-floods")];
  e = fixture_evidence(&a, EVIDENCE_RESULT, check_id("wet"));
  near(e->sure, 0.3, 1e-15, "the stronger of two weakenings, not both");
  assert_string_equal(k.rules[e->weakened_by].id, "small-weak-wet");
  assert_true(weakened < plain);
  assessment_free(&a);
  fixture_result(&k, &c, "wet", "wet", 0, 0.5);
  assess(&c, &a);
  near(fixture_evidence(&a, EVIDENCE_RESULT, check_id("wet"))->sure, 0.15, 1e-15, "unsure and weakened");
  assessment_free(&a);
  case_free(&c);
}

static void test_void(void **state)
{
  struct bench_case c;
  struct assessment with, without;

  (void)state;
  begin(&c, NULL);
  fixture_result(&k, &c, "switch", "at-stop", 0, 1);
  assess(&c, &without);
  fixture_result(&k, &c, "flash", "none", 0, 1);
  assess(&c, &with);
  assert_null(fixture_evidence(&with, EVIDENCE_RESULT, check_id("flash")));
  assert_memory_equal(with.belief, without.belief, with.net.count * sizeof *with.belief);
  assessment_free(&with);
  fixture_result(&k, &c, "switch", "at-run", 0, 1); /* put right: now it counts */
  assess(&c, &with);
  near(fixture_evidence(&with, EVIDENCE_RESULT, check_id("flash"))->sure, 1, 0, "in force");
  assert_true(with.belief[fixture_place(&with, "coil-gone")] > 0.9);
  assessment_free(&with);
  assessment_free(&without);
  case_free(&c);
}

/* ---- implied results ---------------------------------------------------------------- */

static void test_implied_gives_way(void **state)
{
  struct bench_case c;
  struct assessment a;
  const struct evidence *e;
  double without = belief_after(NULL, NULL, 0, "coil-gone");

  (void)state;
  begin(&c, "-decompression");
  fixture_result(&k, &c, "ran", "ran", 0, 1);
  assess(&c, &a);
  e = fixture_evidence(&a, EVIDENCE_IMPLIED, check_id("flash"));
  assert_non_null(e);
  near(e->sure, 0.75, 0, "the strongest of three");
  assert_int_equal(a.net.evidence_count, 3); /* the complaint, the answer, one implied result */
  assert_true(a.belief[fixture_place(&a, "coil-gone")] < without);
  assessment_free(&a);
  fixture_result(&k, &c, "flash", "none", 0, 0); /* don't know: the implied result stands */
  assess(&c, &a);
  assert_non_null(fixture_evidence(&a, EVIDENCE_IMPLIED, check_id("flash")));
  assessment_free(&a);
  fixture_result(&k, &c, "flash", "none", 0, 0.5); /* made, if unsurely: it gives way */
  assess(&c, &a);
  assert_null(fixture_evidence(&a, EVIDENCE_IMPLIED, check_id("flash")));
  assert_non_null(fixture_evidence(&a, EVIDENCE_RESULT, check_id("flash")));
  assessment_free(&a);
  case_free(&c);
}

/* Conclusions made here: the strongest counts, once, wherever it stands; one of no strength
 * counts nothing. */
static void test_implied_once(void **state)
{
  static const double strength[][4] = {
      {.4, .8, .5, .8}, {.8, .4, .8, .1}, {.8, .8, .8, .8}, {.1, .2, .4, .8}, {0, 0, 0, 0}};
  struct bench_case c;

  (void)state;
  begin(&c, NULL);
  for (size_t i = 0; i < 5; i++) {
    struct conclusion items[4];
    struct conclusions drawn = {items, 4, 4};
    struct casenet n;
    struct net net;
    double belief[8], most = 0;

    for (int j = 0; j < 4; j++) {
      items[j] = (struct conclusion){.kind = IMPLIES, .a = check_id("flash"), .b = j / 2, .rule = j};
      items[j].number = strength[i][j];
      most = fmax(most, strength[i][j]);
    }
    casenet_build(&n, &k, &c, &drawn);
    assert_int_equal(n.evidence_count, most > 0 ? 2 : 1);
    if (most > 0) near(n.evidence[1].sure, most, 0, "the strongest");
    net = casenet_view(&n, n.evidence_count);
    assert_true(net_solve(&net, belief, NULL, NULL));
    casenet_free(&n);
  }
  case_free(&c);
}

static int open_all(void **state)
{
  struct err e = {0};

  (void)state;
  fixture_small(source, &k);
  return assessor_open(&k, &assessor, &e);
}

static int close_all(void **state)
{
  (void)state;
  assessor_close(assessor);
  knowledge_free(&k);
  return 0;
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_faults_of_a_case),
      cmocka_unit_test(test_complaint),
      cmocka_unit_test(test_card_before_bands),
      cmocka_unit_test(test_reading_near_limit),
      cmocka_unit_test(test_reading_without_bands),
      cmocka_unit_test(test_less_sure_counts_less),
      cmocka_unit_test(test_fairly_sure_by_hand),
      cmocka_unit_test(test_taken_back),
      cmocka_unit_test(test_changed),
      cmocka_unit_test(test_weakened),
      cmocka_unit_test(test_void),
      cmocka_unit_test(test_implied_gives_way),
      cmocka_unit_test(test_implied_once),
  };

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, open_all, close_all);
}
