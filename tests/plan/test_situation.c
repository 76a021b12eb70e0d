/* test_situation.c - from a case to the planner's problem, on the small knowledge of
 * tests/plan/small. Figures are worked out by hand from that file unless said otherwise.
 * Usage: test_situation TOP-OF-SOURCES */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "check_plan.h"
#include "knowledge/load.h"
#include "plan/situation.h"
#include "small_bench.h"

static const char *source;
static struct knowledge k;

static int check_id(const char *id) { return small_id(&k, ENTRY_CHECK, id); }

/* ---- suspects, by going through everything that may have come about ----------------------- */

enum { MOST_PLACES = 8 };

/* weight[set]: that exactly these places were active in something unsound; behind[set]: that a
 * place of the set was active in what is in focus, and somebody was. */
struct tally { const struct net *net; double weight[1 << MOST_PLACES], focused[1 << MOST_PLACES];
               double behind[1 << MOST_PLACES][MOST_PLACES]; };

/* One way it may have come about: grade reached per finding, who is active and where. */
struct way { double chance; int grade[8]; unsigned active, in_focus; };

static void finish_way(struct tally *t, const struct way *w)
{
  double chance = w->chance;

  for (size_t f = 0; f < t->net->finding_count; f++) chance *= t->net->findings[f].seen[w->grade[f]];
  t->weight[w->active] += chance;
  if (w->in_focus) t->focused[w->active] += chance;
  for (int p = 0; p < MOST_PLACES; p++)
    if (w->in_focus >> p & 1) t->behind[w->active][p] += chance;
}

static void go_through(struct tally *t, struct way w, size_t place, size_t finding);

static void next_finding(struct tally *t, struct way w, size_t place, size_t finding)
{
  const struct net_finding *f = &t->net->findings[finding];
  double before = w.chance;

  for (size_t i = 0; i < f->link_count; i++) {
    if (f->links[i].fault != (int)place) continue;
    for (int g = 0; g < f->grades; g++) {
      struct way next = w;

      next.chance = before * f->links[i].chance[g];
      if (next.chance <= 0) continue;
      if (g > next.grade[finding]) next.grade[finding] = g;
      if (g > 0 && f->seen[0] < 1) next.active |= 1u << place;
      if (g > 0 && f->seen[0] < 1 && f->focus) next.in_focus |= 1u << place;
      go_through(t, next, place, finding + 1);
    }
    return;
  }
  go_through(t, w, place, finding + 1);
}

/* Place `place` is there (finding counts up through what it does); at the end the next place. */
static void go_through(struct tally *t, struct way w, size_t place, size_t finding)
{
  if (finding < t->net->finding_count) {
    next_finding(t, w, place, finding);
    return;
  }
  if (++place == t->net->fault_count) {
    finish_way(t, &w);
    return;
  }
  finding = t->net->finding_count; /* not there */
  {
    struct way absent = w, there = w;

    absent.chance *= 1 - t->net->prior[place];
    there.chance *= t->net->prior[place];
    go_through(t, absent, place, finding);
    go_through(t, there, place, 0);
  }
}

/* Every combination of grades that findings reach by themselves, then the places. */
static void leak(struct tally *t, struct way w, size_t finding)
{
  if (finding == t->net->finding_count) {
    go_through(t, w, (size_t)-1, finding);
    return;
  }
  for (int g = 0; g < t->net->findings[finding].grades; g++) {
    struct way next = w;

    next.chance *= t->net->findings[finding].leak[g];
    next.grade[finding] = g;
    if (next.chance > 0) leak(t, next, finding + 1);
  }
}

static void check_suspects(struct small *s)
{
  struct net net = casenet_view(&s->net, s->net.evidence_count);
  struct tally *t = mem_new(sizeof *t);
  struct suspects suspects;
  double scale = 0, sum = 0;

  assert_true(net.fault_count <= MOST_PLACES);
  t->net = &net;
  leak(t, (struct way){.chance = 1}, 0);
  suspects_list(&s->net, s->belief, &suspects);
  for (size_t i = 0; i < suspects.count; i++) {
    const struct suspect_set *set = &suspects.set[i];
    unsigned mask = 0;

    for (size_t m = 0; m < set->count; m++) mask |= 1u << set->place[m];
    if (i == 0) scale = set->weight / t->weight[0];
    close_to(set->weight, scale * t->weight[mask], 1e-9, "weight of a set");
    for (size_t m = 0; m < set->count && set->count == 2; m++)
      close_to(set->needed[m], t->behind[mask][set->place[m]] / t->focused[mask], 1e-9, "needed");
    sum += set->weight;
  }
  near(sum, 1, "all weights");
  assert_true(suspects.count > suspects.singles + 1); /* pairs were looked at */
  free(t);
}

/* Computed independently: everything that may have come about is gone through. */
static void weights_of_suspects(void **state)
{
  struct small s;

  (void)state;
  small_begin(&s, &k, "mower", "no-start");
  small_weigh(&s);
  check_suspects(&s);
  small_end(&s);
  small_begin(&s, &k, "mower", "no-start");
  small_result(&s, "wet", "wet");
  small_result(&s, "spark", "jumps");
  small_weigh(&s);
  check_suspects(&s);
  small_end(&s);
  small_begin(&s, &k, "mower", "no-start");
  small_result(&s, "wet", "wet");
  small_result(&s, "element-look", "clogged");
  small_result(&s, "fuel-age", "fresh");
  small_weigh(&s);
  check_suspects(&s);
  small_end(&s);
}

/* Nothing unsound was found: sets are of faults that are there, by their base rates. */
static void suspects_without_findings(void **state)
{
  struct suspects suspects;
  struct small s;
  int blade;

  (void)state;
  small_begin(&s, &k, "mower", NULL);
  small_weigh(&s);
  suspects_list(&s.net, s.belief, &suspects);
  blade = suspects_single(&suspects, s.net.place_of[small_id(&k, ENTRY_FAULT, "blade-blunt")]);
  close_to(suspects.set[blade].weight / suspects.set[0].weight, 0.4 / 0.6, 1e-12, "blade against nothing");
  small_end(&s);
}

/* ---- the problem ------------------------------------------------------------------------- */

static void build(struct situation *s, struct small *b, const bool *off)
{
  situation_build(s, &b->net, &b->c, &b->drawn, b->belief, off);
}

static int repair_at(const struct situation *s, int repair)
{
  for (size_t a = 0; a < s->problem.repair_count; a++)
    if (s->repair[a] == repair) return (int)a;
  fail_msg("repair %d is not in the problem", repair);
  return -1;
}

static int question_at(const struct situation *s, const char *check)
{
  for (size_t q = 0; q < s->problem.question_count; q++)
    if (s->check[q] == check_id(check)) return (int)q;
  return -1;
}

static double repair_minutes(const struct situation *s, const char *id)
{
  const struct plan_repair *r = &s->problem.repairs[repair_at(s, small_id(&k, ENTRY_REPAIR, id))];

  return r->cost + plan_opening(&s->problem, r->covers, s->problem.open);
}

static double check_minutes(const struct situation *s, const char *id)
{
  struct plan_state state;

  plan_start(&s->problem, &state);
  return plan_question_cost(&s->problem, &state, &s->problem.questions[question_at(s, id)]);
}

static void costs(void **state)
{
  bool off[8] = {false};
  struct situation s;
  struct small b;

  (void)state;
  small_begin(&b, &k, "mower", "no-start");
  small_result(&b, "wet", "wet");
  small_weigh(&b);
  build(&s, &b, NULL);
  near(repair_minutes(&s, "coil"), 20 + 20 / 0.5, "coil and its price");
  near(repair_minutes(&s, "clean"), 30 + 5 / 0.5 + 10 + 14 + 3 + 4, "clean, both covers, no shroud");
  near(repair_minutes(&s, "element"), 2 + 4 / 0.5 + 2, "element");
  near(check_minutes(&s, "bowl"), 2 + 10 + 14 + 3 + 4, "bowl");
  near(check_minutes(&s, "jet"), 3 + 10 + 14 + 3 + 4 + 20, "jet, which it may destroy");
  near(check_minutes(&s, "spark"), 4, "spark");
  near(s.problem.give_up, 400 + 10, "giving up");
  near(s.problem.repairs[repair_at(&s, SITUATION_PROVE)].cost, 8, "proving it");
  near(s.problem.repairs[repair_at(&s, SITUATION_LOOK_FURTHER)].cost, 100, "looking further");
  assert_true(s.problem.questions[question_at(&s, "idle")].runs);
  assert_false(s.problem.questions[question_at(&s, "spark")].runs); /* cranking shuts nothing */
  assert_int_equal(question_at(&s, "shroud-look"), -1); /* the machine has none */
  assert_int_equal(question_at(&s, "wet"), -1);         /* made already */
  situation_free(&s);
  off[small_id(&k, ENTRY_COVER, "air-box")] = true;
  build(&s, &b, off);
  near(check_minutes(&s, "bowl"), 2 + 10 + 14, "bowl with the air box off");
  situation_free(&s);
  off[small_id(&k, ENTRY_COVER, "carburettor")] = true;
  build(&s, &b, off);
  near(check_minutes(&s, "bowl"), 2, "bowl with the carburettor off");
  situation_free(&s);
  small_end(&b);
}

static void a_shroud_that_is_there(void **state)
{
  struct situation s;
  struct small b;

  (void)state;
  small_begin(&b, &k, "hidden", "no-start");
  small_weigh(&b);
  build(&s, &b, NULL);
  near(check_minutes(&s, "bowl"), 2 + 10 + 14 + 3 + 4 + 5 + 6, "bowl under carburettor, air box and shroud");
  assert_true(question_at(&s, "shroud-look") >= 0);
  situation_free(&s);
  small_end(&b);
}

/* One repair puts both carburettor faults right, alone and together. */
static void one_repair_for_two_faults(void **state)
{
  struct situation s;
  struct plan_state now, to;
  struct plan_move clean;
  struct small b;
  int jet, holed;

  (void)state;
  small_begin(&b, &k, "mower", "no-start");
  small_result(&b, "float-test", "wet");
  small_result(&b, "bowl", "dirt");
  small_weigh(&b);
  build(&s, &b, NULL);
  jet = b.net.place_of[small_id(&k, ENTRY_FAULT, "jet-blocked")];
  holed = b.net.place_of[small_id(&k, ENTRY_FAULT, "float-holed")];
  clean = plan_repairing(repair_at(&s, small_id(&k, ENTRY_REPAIR, "clean")));
  plan_start(&s.problem, &now);
  plan_make(&s.problem, &now, &clean, &to);
  for (size_t h = 1; h < s.suspects.count; h++) {
    const struct suspect_set *set = &s.suspects.set[h];
    bool first = set->place[0] == jet || set->place[0] == holed;
    bool second = set->count < 2 || set->place[1] == jet || set->place[1] == holed;

    if (first && second) near(to.w[h], 0, "cleared");
    else if (set->count == 1) assert_true(to.w[h] >= now.w[h]); /* what is left of pairs comes to it */
  }
  situation_free(&s);
  small_end(&b);
}

/* What rules have ruled out, called unsafe or pointless is not asked. */
static void left_out(void **state)
{
  struct situation s;
  struct small b;

  (void)state;
  small_begin(&b, &k, "mower", "no-start");
  small_draw(&b, RULES_OUT_CHECK, check_id("spark"), 0);
  small_draw(&b, UNSAFE, check_id("idle"), 0);
  small_draw(&b, POINTLESS, check_id("bowl"), 0);
  small_draw(&b, ASK_FIRST, check_id("float-test"), small_id(&k, ENTRY_FAULT, "jet-blocked"));
  small_weigh(&b);
  build(&s, &b, NULL);
  assert_int_equal(question_at(&s, "spark"), -1);
  assert_int_equal(question_at(&s, "idle"), -1);
  assert_int_equal(question_at(&s, "bowl"), -1);
  assert_true(question_at(&s, "jet") >= 0);
  assert_int_equal(s.check[0], check_id("float-test")); /* wanted first: it comes first */
  assert_int_equal(s.ask_first[0], 7);
  situation_free(&s);
  small_end(&b);
}

/* The chances of a check's results are those of the network. */
static void chances_of_results(void **state)
{
  struct situation s;
  struct small b;
  const struct plan_question *q;

  (void)state;
  small_begin(&b, &k, "mower", "no-start");
  small_weigh(&b);
  build(&s, &b, NULL);
  q = &s.problem.questions[question_at(&s, "spark")];
  near(q->chance[0], 0.98, "spark jumps, nothing broken");
  for (size_t h = 1; h < s.suspects.count; h++) {
    int fault = s.fault_of[s.suspects.set[h].place[0]];

    if (s.suspects.set[h].count == 1 && fault == small_id(&k, ENTRY_FAULT, "coil-dead")) {
      near(q->chance[h], 0.98 * 0.05, "spark jumps, coil dead");
      near(q->chance[s.suspects.count + h], 1 - 0.98 * 0.05, "no spark, coil dead");
    }
  }
  situation_free(&s);
  small_end(&b);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test(weights_of_suspects), cmocka_unit_test(suspects_without_findings),
    cmocka_unit_test(costs), cmocka_unit_test(a_shroud_that_is_there),
    cmocka_unit_test(one_repair_for_two_faults), cmocka_unit_test(left_out),
    cmocka_unit_test(chances_of_results)};
  int failed;

  if (argc < 2) return 2;
  source = argv[1];
  small_load(source, &k);
  failed = cmocka_run_group_tests(tests, NULL, NULL);
  knowledge_free(&k);
  return failed;
}
