/* test_debrief.c - what a debrief makes of a path: every way of going astray gets its own words,
 * what was given away adds up, and machines drawn by a shop's own rates come as those say. */
#include <math.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <setjmp.h>
#include <cmocka.h>

#include "practice/debrief.h"
#include "practice/walk.h"
#include "with.h"

enum { SEEDS = 60, STEPS = 12 };

static struct sitting sitting(uint64_t seed)
{
  struct sitting s = {.level = LEVEL_FREE, .kind = HIDDEN_ONE, .seed = seed, .apprentice = "anna"};

  return s;
}

static void act(struct run *r, struct entry entry)
{
  struct err e = {0};

  run_make_safe(r, &entry);
  if (run_do(r, &entry, &e)) fail_msg("%s", e.text);
}

static bool possible(const struct run *r, const struct entry *entry)
{
  char why[600];

  return run_possible(r, entry, why, sizeof why);
}

/* Walks the best path until the next step would be a repair, or to the end. */
static void walk_to_repair(struct run *r)
{
  while (r->end == RUN_OPEN && r->step_count < STEPS) {
    struct entry entry = walk_best(r);

    if (entry.act != ACT_CHECK) return;
    act(r, entry);
  }
}

/* A repair that some check has just spoken clearly against, and that is not likely. */
static int spoken_against(const struct run *r)
{
  for (size_t i = 0; i < r->step_count; i++)
    for (size_t m = 0; m < r->steps[i].moved_count; m++) {
      const struct moved *x = &r->steps[i].moved[m];

      if (x->fault >= 0 && x->db <= -5 && x->after < 0.2) return r->k->faults[x->fault].repair;
    }
  return -1;
}

/* A possible check that was not made, with so many minutes of covers at least or none at all. */
static int check_with_covers(const struct run *r, double least)
{
  for (size_t c = 0; c < r->k->check_count; c++) {
    struct entry entry = {.act = ACT_CHECK, .at = (int)c, .sure = -1};
    double parts, covers = run_minutes(r, &entry, &parts) - r->k->checks[c].minutes;

    if (case_result_of(&r->c, (int)c) || *r->k->checks[c].destroys || !possible(r, &entry)) continue;
    if (conclusion_find(&r->a.drawn, UNSAFE, (int)c, 0) >= 0) continue;
    if (conclusion_find(&r->a.drawn, POINTLESS, (int)c, 0) >= 0) continue;
    if (least > 0 ? covers >= least : covers < 0.1 && r->k->checks[c].minutes >= 6) return (int)c;
  }
  return -1;
}

static int unlikely_repair(const struct run *r)
{
  for (size_t i = 0; i < r->k->repair_count; i++)
    if (run_repairable(r, (int)i) && run_chance(r, (int)i) < 0.02 && r->k->repairs[i].parts_cost > 0)
      return (int)i;
  return -1;
}

/* Goes astray in one way. False when this machine gives no occasion. */
static bool go_astray(struct run *r, enum astray kind)
{
  int at = -1;

  if (kind == ASTRAY_LATE || kind == ASTRAY_IGNORED) walk_to_repair(r);
  if (r->end != RUN_OPEN) return false;
  switch (kind) {
  case ASTRAY_UNSAFE: return run_do(r, &(struct entry){.act = ACT_FORBIDDEN, .at = 2, .sure = -1}, NULL) == 0;
  case ASTRAY_PART: at = unlikely_repair(r); break;
  case ASTRAY_IGNORED: at = spoken_against(r); break;
  case ASTRAY_SOON: at = 0; break;
  case ASTRAY_COVER: at = check_with_covers(r, 15); break;
  case ASTRAY_REPEAT: at = check_with_covers(r, 0); break;
  case ASTRAY_LATE: at = walk_best(r).act == ACT_REPAIR ? check_with_covers(r, 0) : -1; break;
  case ASTRAY_DEARER: at = walk_best(r).act == ACT_CHECK ? check_with_covers(r, 0) : -1; break;
  default: at = 0; break;
  }
  if (at < 0) return false;
  if (kind == ASTRAY_REPEAT) act(r, (struct entry){.act = ACT_CHECK, .at = at, .sure = -1});
  if (kind == ASTRAY_SOON) act(r, (struct entry){.act = ACT_GIVE_UP, .at = -1, .sure = -1});
  else if (kind == ASTRAY_PART || kind == ASTRAY_IGNORED)
    act(r, (struct entry){.act = ACT_REPAIR, .at = at, .sure = -1});
  else if (kind == ASTRAY_SURE) act(r, (struct entry){.act = ACT_DECLARE, .at = -2, .sure = 1});
  else act(r, (struct entry){.act = ACT_CHECK, .at = at, .sure = -1});
  return true;
}

static bool remarked(const struct debrief *d, enum astray kind)
{
  for (size_t i = 0; i < d->remark_count; i++)
    if (d->remarks[i].kind == kind && d->remarks[i].step + 1 == d->run->step_count) return true;
  return false;
}

/* On some of a few machines there is occasion for each, and then it is called by its name. */
static void every_way_has_its_words(void **state)
{
  struct with *w = *state;

  for (int kind = 0; kind < ASTRAY_KINDS; kind++) {
    bool found = false;

    for (uint64_t seed = 1; seed <= SEEDS && !found; seed++) {
      struct sitting s = sitting(seed);
      struct debrief d;
      struct buf b = {0};
      struct run r;
      struct err e = {0};

      assert_int_equal(sitting_begin(&s, &w->k, w->assessor, false, &r, &e), 0);
      if (go_astray(&r, (enum astray)kind)) {
        assert_int_equal(debrief_make(&d, &r, &s, w->assessor, &e), 0);
        found = remarked(&d, (enum astray)kind);
        debrief_text(&b, &d, 78);
        if (found) assert_non_null(strstr(buf_text(&b), astray_name((enum astray)kind)));
        for (int i = 0; i < DEBRIEF_AWAY; i++) assert_true(strlen(d.away[i]) > 10);
        buf_free(&b);
        debrief_free(&d);
      }
      run_free(&r);
    }
    if (!found) fail_msg("nobody was told: %s", astray_name((enum astray)kind));
  }
}

/* What the steps gave away is what the run gave away; the best path gives nothing away, and what
 * its debrief says is that. No line is wider than asked. */
static void it_adds_up(void **state)
{
  struct with *w = *state;

  for (uint64_t seed = 1; seed <= 5; seed++) {
    struct sitting s = sitting(seed);
    struct debrief d;
    struct buf b = {0};
    struct run r;
    struct err e = {0};
    double sum = 0;

    assert_int_equal(sitting_begin(&s, &w->k, w->assessor, false, &r, &e), 0);
    assert_int_equal(walk_to_the_end(&r, &e), 0);
    assert_int_equal(debrief_make(&d, &r, &s, w->assessor, &e), 0);
    for (size_t i = 0; i < r.step_count; i++) sum += r.steps[i].regret;
    assert_true(fabs(sum - r.regret) < 1e-9 && r.regret < 1e-6);
    assert_int_equal(d.best.step_count, r.step_count);
    for (size_t i = 0; i < r.step_count; i++) assert_true(r.steps[i].right);
    debrief_text(&b, &d, 60);
    assert_non_null(strstr(buf_text(&b), "Every step was as good as any."));
    for (const char *at = buf_text(&b), *end; *at; at = end + 1) {
      end = strchr(at, '\n');
      assert_non_null(end);
      if (end - at > 60) fail_msg("too wide: %.*s", (int)(end - at), at);
    }
    buf_free(&b);
    debrief_free(&d);
    run_free(&r);
  }
}

/* One fault made common by the shop's rates is drawn more often in proportion (its complaints
 * weigh alike), and the judge weighs with the same rates. */
static void drawn_by_the_shops_rates(void **state)
{
  struct with *w = *state;
  int tiller = knowledge_find(&w->k, ENTRY_CLASS, "tiller"), often[2] = {0}, fault;
  struct sitting s = sitting(4);
  struct learned shop;
  struct run r;
  struct err e = {0};

  fault = knowledge_find(&w->k, ENTRY_FAULT, "main-jet-blocked");
  assert_true(tiller >= 0 && fault >= 0);
  snprintf(s.machine, sizeof s.machine, "tiller");
  learned_begin(&shop, &w->k);
  shop.base[(size_t)tiller * w->k.fault_count + (size_t)fault] = 0.45;
  sitting_take_rates(&s, &w->k, &shop, 12);
  for (int own = 0; own < 2; own++)
    for (uint64_t seed = 1; seed <= 400; seed++) {
      struct hidden_wish wish = {tiller, HIDDEN_ONE, NULL, own ? s.rates : NULL};
      struct hidden h;

      assert_true(hidden_make(&w->k, &wish, seed, &h));
      often[own] += h.net.fault_of[h.culprit] == fault;
      hidden_free(&h);
    }
  assert_true(often[1] > 2 * often[0] && often[1] > 60);
  assert_int_equal(sitting_begin(&s, &w->k, w->assessor, true, &r, &e), 0);
  assert_ptr_equal(r.c.learned, r.hidden.shop);
  assert_true(learned_base(r.c.learned, &w->k, tiller, fault) == 0.45);
  assert_true(learned_base(r.c.learned, &w->k, tiller, 0) == shipped_base(&w->k, tiller, 0) || fault == 0);
  run_free(&r);
  learned_free(&shop);
  free(s.rates);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(every_way_has_its_words), cmocka_unit_test(it_adds_up),
                                     cmocka_unit_test(drawn_by_the_shops_rates)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
