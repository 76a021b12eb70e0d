/* test_learn.c - what is counted and what is not, and what follows for the weighing. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "fixture.h"
#include "knowledge/load.h"
#include "made_shop.h"
#include "shop/similar.h"

static struct knowledge k;
static const char *source;

static int set_up(void **state)
{
  (void)state;
  fixture_shipped(source, &k);
  return 0;
}

static int tear_down(void **state)
{
  (void)state;
  knowledge_free(&k);
  return 0;
}

static struct outcome *confirmed(struct outcomes *o, const char *machine_class, const char *fault)
{
  struct outcome *x = outcomes_add(o);

  snprintf(x->id, sizeof x->id, "job-%04zu", o->count);
  x->closed = (int64_t)o->count;
  x->confirmed = true;
  x->machine_class = fixture_id(&k, ENTRY_CLASS, machine_class);
  x->faults[x->fault_count++] = fixture_id(&k, ENTRY_FAULT, fault);
  return x;
}

/* A sign at a check whose fault is the only one of `faults` that shows there. */
static size_t some_sign(int fault)
{
  for (size_t s = 0; s < k.sign_count; s++)
    if (k.signs[s].fault == fault && k.signs[s].check >= 0) return s;
  fail_msg("the fault has no sign");
  return 0;
}

static void same_learned(const struct learned *a, const struct learned *b)
{
  assert_memory_equal(a->base, b->base, a->classes * a->faults * sizeof *a->base);
  assert_memory_equal(a->sign, b->sign, a->signs * sizeof *a->sign);
}

/* A fault that tillers can have, and is not the only thing they have. */
static const char *usual_fault(void)
{
  double *share = mem_array(k.fault_count, sizeof *share);
  size_t best = 0;

  learn_shares(&k, fixture_id(&k, ENTRY_CLASS, "tiller"), share);
  for (size_t f = 1; f < k.fault_count; f++)
    if (share[f] > share[best] && share[f] < .2) best = f;
  free(share);
  return k.faults[best].id;
}

static void learn(const struct outcomes *o, struct learn_counts *c, struct learned *l)
{
  learn_count(&k, o, learn_usual(), c);
  learn_chances(c, l);
}

/* Shares of every class add to 1, before and after counting. */
static void shares_add_up(void **state)
{
  double *share = mem_array(k.fault_count, sizeof *share);
  struct outcomes o = {0};
  struct learn_counts c;

  (void)state;
  for (int i = 0; i < 7; i++) confirmed(&o, "tiller", usual_fault());
  learn_count(&k, &o, learn_usual(), &c);
  for (size_t i = 0; i < k.class_count; i++) {
    double sum = 0, now = 0;

    learn_shares(&k, (int)i, share);
    for (size_t f = 0; f < k.fault_count; f++) {
      sum += share[f];
      now += learn_share_now(&c, (int)i, (int)f, share[f]);
    }
    assert_true(fabs(sum - 1) < 1e-9 && fabs(now - 1) < 1e-9);
  }
  learn_free(&c);
  outcomes_free(&o);
  free(share);
}

/* Three tillers with one fault: its base rate rises as the Dirichlet mean says, the others'
 * fall alike, and other classes stay as shipped. */
static void rates_move(void **state)
{
  int tiller = fixture_id(&k, ENTRY_CLASS, "tiller"), saw = fixture_id(&k, ENTRY_CLASS, "chainsaw");
  int fault = fixture_id(&k, ENTRY_FAULT, usual_fault());
  double *share = mem_array(k.fault_count, sizeof *share), was = shipped_base(&k, tiller, fault);
  struct outcomes o = {0};
  struct learn_counts c;
  struct learned l;

  (void)state;
  for (int i = 0; i < 3; i++) confirmed(&o, "tiller", usual_fault());
  learn(&o, &c, &l);
  learn_shares(&k, tiller, share);
  assert_int_equal(c.counted, 3);
  assert_true(fabs(learned_base(&l, &k, tiller, fault) -
                   was * (300 * share[fault] + 3) / (303 * share[fault])) < 1e-12);
  for (size_t f = 0; f < k.fault_count; f++) {
    double before = shipped_base(&k, tiller, (int)f), after = learned_base(&l, &k, tiller, (int)f);

    if ((int)f != fault && share[f] > 0) assert_true(fabs(after / before - 300.0 / 303) < 1e-12);
    if (share[f] <= 0) assert_true(after == before);
    assert_true(learned_base(&l, &k, saw, (int)f) == shipped_base(&k, saw, (int)f));
    assert_true(learned_base(NULL, &k, tiller, (int)f) == before);
  }
  learned_free(&l);
  learn_free(&c);
  outcomes_free(&o);
  free(share);
}

/* Jobs without a passed proof run, and what the ranking thought, change no chance. */
static void opinions_do_not_count(void **state)
{
  struct outcomes o = {0};
  struct learn_counts c;
  struct learned l, shipped;

  (void)state;
  for (int i = 0; i < 5; i++) {
    struct outcome *x = confirmed(&o, "tiller", usual_fault());
    const struct sign *s = &k.signs[some_sign(x->faults[0])];

    outcome_add_result(x, s->check, s->result);
    x->confirmed = false;
    x->said[0] = (struct outcome_cause){x->faults[0], .99};
    x->said_count = 1;
  }
  learn(&o, &c, &l);
  learned_begin(&shipped, &k);
  same_learned(&l, &shipped);
  assert_int_equal(c.unconfirmed, 5);
  assert_int_equal(c.past.count, 0);
  learned_free(&l);
  learn_free(&c);
  for (int i = 0; i < 5; i++) o.items[i].confirmed = true;
  learn(&o, &c, &l);
  for (int i = 0; i < 5; i++) o.items[i].said_count = 0;
  learned_free(&shipped);
  learn_free(&c);
  learn(&o, &c, &shipped);
  same_learned(&l, &shipped);
  learned_free(&shipped);
  learned_free(&l);
  learn_free(&c);
  outcomes_free(&o);
}

/* A sign that was shown less often than shipped falls, one that was shown more often rises,
 * and with the shipped frequency it stays nearly where it was. */
static void signs_move(void **state)
{
  int fault = fixture_id(&k, ENTRY_FAULT, usual_fault());
  size_t sign = some_sign(fault);

  (void)state;
  for (int shown = 0; shown <= 10; shown += 5) {
    struct outcomes o = {0};
    struct learn_counts c;
    struct learned l;
    double expected = (learn_shows(&k, sign) * 10 + shown) / 20, was = learn_shows(&k, sign);

    for (int i = 0; i < 10; i++)
      outcome_add_result(confirmed(&o, "tiller", usual_fault()), k.signs[sign].check,
                         i < shown ? k.signs[sign].result : 0);
    learn(&o, &c, &l);
    assert_int_equal(c.made[learn_pair(&k, sign)], 10);
    assert_true((l.sign[sign] < k.signs[sign].chance) == (expected < was));
    assert_true(l.sign[sign] > 0 && l.sign[sign] < 1);
    learned_free(&l);
    learn_free(&c);
    outcomes_free(&o);
  }
}

/* With two confirmed faults that both show at a check nobody knows whose doing it was. */
static void shared_signs_do_not_count(void **state)
{
  struct outcomes o = {0};
  struct learn_counts c;
  struct outcome *x = confirmed(&o, "tiller", usual_fault());
  size_t s = some_sign(x->faults[0]), first, last;
  int other = -1;

  (void)state;
  knowledge_signs_of_check(&k, k.signs[s].check, &first, &last);
  for (size_t i = first; i < last && other < 0; i++)
    if (k.signs[i].fault != x->faults[0]) other = k.signs[i].fault;
  assert_true(other >= 0);
  outcome_add_result(x, k.signs[s].check, k.signs[s].result);
  x->faults[x->fault_count++] = other;
  learn_count(&k, &o, learn_usual(), &c);
  assert_int_equal(c.made[learn_pair(&k, s)], 0);
  learn_free(&c);
  x->fault_count = 1;
  learn_count(&k, &o, learn_usual(), &c);
  assert_int_equal(c.made[learn_pair(&k, s)], 1);
  learn_free(&c);
  outcomes_free(&o);
}

static void shuffle(struct outcomes *o, uint64_t seed)
{
  for (size_t i = o->count; i > 1; i--) {
    size_t j = (size_t)((seed = seed * 6364136223846793005u + 1442695040888963407u) >> 33) % i;
    struct outcome x = o->items[i - 1];

    o->items[i - 1] = o->items[j];
    o->items[j] = x;
  }
}

/* The same jobs in another order give the same bytes, also where the cap cuts. */
static void order_does_not_matter(void **state)
{
  struct made_shop shop;
  struct outcomes o = {0};
  struct learn_counts c;
  struct learned first, again;
  struct learn_how how = {300, 10, 20};

  (void)state;
  made_shop(&k, 7, 1, .7, &shop);
  made_history(&shop, &k, 0, 120, &o);
  for (size_t i = 0; i < o.count; i++) o.items[i].closed = (int64_t)(i / 5); /* several at one time */
  learn_count(&k, &o, how, &c);
  learn_chances(&c, &first);
  for (uint64_t seed = 1; seed <= 5; seed++) {
    learn_free(&c);
    shuffle(&o, seed);
    learn_count(&k, &o, how, &c);
    learn_chances(&c, &again);
    same_learned(&first, &again);
    learned_free(&again);
  }
  for (size_t i = 0; i < k.class_count; i++) assert_true(c.class_faults[i] <= how.most);
  learned_free(&first);
  learn_free(&c);
  outcomes_free(&o);
  made_shop_free(&shop);
}

/* The latest jobs stay when there are more than count. */
static void latest_stay(void **state)
{
  int tiller = fixture_id(&k, ENTRY_CLASS, "tiller");
  const char *fault = usual_fault();
  struct outcomes o = {0};
  struct learn_counts c;
  int other = -1;
  double *share = mem_array(k.fault_count, sizeof *share);

  (void)state;
  learn_shares(&k, tiller, share);
  for (size_t f = 0; f < k.fault_count && other < 0; f++)
    if (share[f] > 0 && strcmp(k.faults[f].id, fault) != 0) other = (int)f;
  for (int i = 0; i < 50; i++) confirmed(&o, "tiller", fault);
  for (int i = 0; i < 10; i++) confirmed(&o, "tiller", k.faults[other].id);
  learn_count(&k, &o, (struct learn_how){300, 10, 30}, &c);
  assert_int_equal(c.class_faults[tiller], 30);
  assert_int_equal(c.hits[(size_t)tiller * k.fault_count + (size_t)other], 10);
  learn_free(&c);
  outcomes_free(&o);
  free(share);
}

/* A case that points to chances which are all as shipped is weighed to the same bytes, and
 * with learned ones the fault that was often confirmed gains. */
static void weighing_uses_them(void **state)
{
  struct bench_case c;
  struct assessor *a;
  struct assessment plain, same, moved;
  struct learned as_shipped, l;
  struct outcomes o = {0};
  struct learn_counts counts;
  struct err e = {0};

  (void)state;
  for (int i = 0; i < 20; i++) confirmed(&o, "tiller", usual_fault());
  learn(&o, &counts, &l);
  learned_begin(&as_shipped, &k);
  fixture_case(&k, &c, "tiller", NULL);
  case_add_complaint(&c, 0);
  assert_int_equal(assessor_open(&k, &a, &e), 0);
  assert_int_equal(assess_case(a, &c, &plain, &e), 0);
  c.learned = &as_shipped;
  assert_int_equal(assess_case(a, &c, &same, &e), 0);
  fixture_same(&plain, &same);
  c.learned = &l;
  assert_int_equal(assess_case(a, &c, &moved, &e), 0);
  assert_true(moved.belief[fixture_place(&moved, usual_fault())] >
              plain.belief[fixture_place(&plain, usual_fault())]);
  assessment_free(&plain);
  assessment_free(&same);
  assessment_free(&moved);
  assessor_close(a);
  case_free(&c);
  learned_free(&as_shipped);
  learned_free(&l);
  learn_free(&counts);
  outcomes_free(&o);
}

/* Past rankings: counted for confirmed jobs that had advice, by whole numbers. */
static void past_rankings(void **state)
{
  struct outcomes o = {0};
  struct learn_counts c;

  (void)state;
  for (int i = 0; i < 4; i++) {
    struct outcome *x = confirmed(&o, "tiller", usual_fault());

    x->said[0] = (struct outcome_cause){i < 3 ? x->faults[0] : -1, i < 2 ? .75 : .25};
    x->said_count = i < 3 ? 1 : 2;
    x->said[1] = (struct outcome_cause){x->faults[0], .1};
  }
  confirmed(&o, "tiller", usual_fault()); /* nothing was advised */
  learn_count(&k, &o, learn_usual(), &c);
  assert_int_equal(c.past.count, 4);
  assert_int_equal(c.past.hits, 3);
  assert_int_equal(c.past.named, 4);
  assert_int_equal(c.past.chance, 2000000);
  assert_int_equal(c.past.quadratic, 62500 + 62500 + 562500 + 62500);
  assert_int_equal(c.past.bin_count[7], 2);
  assert_int_equal(c.past.bin_hits[2], 1);
  learn_free(&c);
  outcomes_free(&o);
}

/* Most alike first, by the stated measure; another class or complaint is never alike. */
static void similar(void **state)
{
  struct outcomes o = {0};
  struct outcome now = {.id = "now", .machine_class = fixture_id(&k, ENTRY_CLASS, "tiller"), .complaint = 2};
  struct similar out[3];

  (void)state;
  for (int i = 0; i < 6; i++)
    confirmed(&o, i == 4 ? "chainsaw" : "tiller", usual_fault())->complaint = i == 5 ? 3 : 2;
  outcome_add_result(&now, 1, 1);
  outcome_add_result(&now, 2, 0);
  outcome_add_result(&now, 3, 1);
  outcome_add_result(&o.items[0], 1, 1); /* 2 the same: (2 + 1) / (2 + 2) */
  outcome_add_result(&o.items[0], 3, 1);
  outcome_add_result(&o.items[1], 1, 0); /* 1 the same, 1 not */
  outcome_add_result(&o.items[1], 2, 0);
  outcome_add_result(&o.items[3], 9, 1); /* nothing compared: a half, and later than item 2 */
  assert_int_equal(similar_jobs(&now, &o, out, 3), 3);
  assert_int_equal(out[0].job, 0);
  assert_true(out[0].likeness == .75 && out[0].same == 2 && out[0].other == 0);
  assert_int_equal(out[1].job, 3);
  assert_int_equal(out[2].job, 2);
  assert_int_equal(similar_jobs(&now, &o, out, 0), 0);
  free(now.results);
  outcomes_free(&o);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(shares_add_up),
                                     cmocka_unit_test(rates_move),
                                     cmocka_unit_test(opinions_do_not_count),
                                     cmocka_unit_test(signs_move),
                                     cmocka_unit_test(shared_signs_do_not_count),
                                     cmocka_unit_test(order_does_not_matter),
                                     cmocka_unit_test(latest_stay),
                                     cmocka_unit_test(weighing_uses_them),
                                     cmocka_unit_test(past_rankings),
                                     cmocka_unit_test(similar)};

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, set_up, tear_down);
}
