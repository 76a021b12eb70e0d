/* situation.c - see situation.h. */
#include "plan/situation.h"

#include <stdlib.h>
#include <string.h>

enum { MOST_CHECKS = 30, TRIAL = PLAN_MAX_QUESTIONS - 1, LEADING = 3 };

/* ---- covers ---------------------------------------------------------------------------- */

/* Adds a cover after the one it lies under. Covers the machine lacks cost nothing. */
static int add_cover(struct situation *s, int cover, bool *seen)
{
  const struct cover *c = &s->k->covers[cover];
  double minutes = c->minutes_off + c->minutes_on;
  size_t open;
  int under = -1;

  if (seen[cover]) return s->place[cover];
  seen[cover] = true;
  if (c->under >= 0) {
    under = add_cover(s, c->under, seen);
    s->over[cover] = s->over[c->under];
  }
  s->place[cover] = under; /* what lies above it still counts */
  if (case_needs(s->c, &c->needs, &open) == TRI_LACKS) return under;
  s->place[cover] = plan_add_cover(&s->problem, under, minutes, !c->run_without);
  if (s->place[cover] < 0) {
    s->place[cover] = under;
    s->over[cover] += minutes;
  } else {
    s->cover[s->place[cover]] = cover;
  }
  return s->place[cover];
}

static void add_covers(struct situation *s, const bool *off)
{
  bool *seen = mem_array(s->k->cover_count, sizeof *seen);

  s->place = mem_array(s->k->cover_count, sizeof *s->place);
  s->over = mem_array(s->k->cover_count, sizeof *s->over);
  for (size_t i = 0; i < s->k->cover_count; i++) add_cover(s, (int)i, seen);
  for (size_t i = 0; off && i < s->k->cover_count; i++)
    if (off[i] && s->place[i] >= 0) s->problem.open |= UINT64_C(1) << s->place[i];
  free(seen);
}

/* What must be off, and the minutes of covers that found no room. */
static uint64_t covers_of(const struct situation *s, const struct refs *off, double *over)
{
  uint64_t mask = 0;

  *over = 0;
  for (size_t i = 0; i < off->count; i++) {
    if (s->place[off->at[i]] >= 0) mask |= UINT64_C(1) << s->place[off->at[i]];
    *over += s->over[off->at[i]];
  }
  return mask;
}

/* ---- repairs --------------------------------------------------------------------------- */

static int repair_of(const struct situation *s, int place)
{
  int fault = s->fault_of[place];

  return fault < 0 ? SITUATION_LOOK_FURTHER : s->k->faults[fault].repair;
}

/* The problem's repair for a knowledge repair, added when it is new; -1 when there is no room. */
static int add_repair(struct situation *s, int repair)
{
  double cost, over = 0;
  uint64_t covers = 0;
  int at;

  for (size_t a = 0; a < s->problem.repair_count; a++)
    if (s->repair[a] == repair) return (int)a;
  if (repair == SITUATION_PROVE) cost = knowledge_setting(s->k, "prove-sound", 10);
  else if (repair == SITUATION_LOOK_FURTHER) cost = knowledge_setting(s->k, "look-further", 120);
  else {
    const struct repair *r = &s->k->repairs[repair];

    covers = covers_of(s, &r->off, &over);
    cost = r->minutes + r->parts_cost / knowledge_setting(s->k, "shop-rate", 0.7);
  }
  at = plan_add_repair(&s->problem, cost + over, covers);
  if (at >= 0) s->repair[at] = repair;
  return at;
}

/* A pair is cleared by one repair when both are put right by it, or when the other fault was
 * not behind the complaint; otherwise that other one is left. */
static void add_pair_effects(struct situation *s, int h)
{
  const struct suspect_set *set = &s->suspects.set[h];
  int first = repair_of(s, set->place[0]), second = repair_of(s, set->place[1]);
  double both = set->needed[0] + set->needed[1] - 1;

  if (first == second) {
    int a = add_repair(s, first);

    if (a >= 0) plan_clears(&s->problem, a, h, 1);
    return;
  }
  for (int m = 0; m < 2; m++) {
    int a = add_repair(s, m == 0 ? first : second);
    double other = set->needed[1 - m];
    struct plan_effect e = {h, suspects_single(&s->suspects, set->place[1 - m]), 1 - other, other,
                            1 - other + both / 2};

    if (a >= 0) plan_effect(&s->problem, a, e);
  }
}

static void add_repairs(struct situation *s)
{
  int prove = add_repair(s, SITUATION_PROVE);

  plan_clears(&s->problem, prove, 0, 1);
  for (size_t h = 1; h < s->suspects.count; h++) {
    int a;

    if (s->suspects.set[h].count == 2) {
      add_pair_effects(s, (int)h);
      continue;
    }
    a = add_repair(s, repair_of(s, s->suspects.set[h].place[0]));
    if (a >= 0) plan_clears(&s->problem, a, (int)h, 1);
  }
}

/* ---- checks ---------------------------------------------------------------------------- */

struct trial { struct plan_question question; int check, ask_first; double saving; };

static bool wanted(const struct situation *s, int check)
{
  size_t open;

  if (case_result_of(s->c, check) || s->k->checks[check].out_of_reach) return false;
  if (conclusion_find(s->drawn, RULES_OUT_CHECK, check, 0) >= 0) return false;
  if (case_needs(s->c, &s->k->checks[check].needs, &open) == TRI_LACKS) return false;
  if (conclusion_find(s->drawn, UNSAFE, check, 0) >= 0) return false;
  return conclusion_find(s->drawn, POINTLESS, check, 0) < 0;
}

static bool runs(const struct check *c)
{
  return strcmp(c->engine, "running") == 0 || strcmp(c->engine, "hot") == 0;
}

/* The check as the problem's last question, for trying it out. */
static void set_trial(struct situation *s, struct casenet *n, int check)
{
  const struct check *c = &s->k->checks[check];
  struct plan_question *q = &s->problem.questions[TRIAL];
  struct net_finding f;
  double over, grade[NET_MAX_GRADES];

  casenet_finding(n, check, &f);
  *q = (struct plan_question){.runs = runs(c), .outcomes = f.grades};
  q->covers = plan_with_paths(&s->problem, covers_of(s, &c->off, &over));
  q->cost = c->minutes + over + knowledge_setting(s->k, "turn-minutes", 0) + (*c->destroys ? knowledge_setting(s->k, "destructive-check", 15) : 0);
  q->chance = mem_array((size_t)f.grades * s->suspects.count, sizeof *q->chance);
  for (size_t h = 0; h < s->suspects.count; h++) {
    net_grade_chances(&f, s->suspects.set[h].place, s->suspects.set[h].count, grade);
    for (int g = 0; g < f.grades; g++) q->chance[(size_t)g * s->suspects.count + h] = grade[g];
  }
}

static double base_value(void *with, const struct plan_state *state)
{
  const struct situation *s = with;

  return plan_base(&s->problem, state, NULL);
}

/* Share of the suspicion from which a fault is about to be repaired, so that a check which
 * rules want first comes before all others. */
static const double good_as_taken = 0.3;

/* The rule that wants this check made before one of the leading faults is repaired, or -1. */
static int asked_first(const struct situation *s, const int *leading, int check)
{
  for (int i = conclusion_find(s->drawn, ASK_FIRST, check, 0); i >= 0;
       i = conclusion_find(s->drawn, ASK_FIRST, check, (size_t)i + 1))
    for (int l = 0; l < LEADING; l++)
      if (leading[l] >= 0 && leading[l] == s->drawn->items[i].b) return s->drawn->items[i].rule;
  return -1;
}

/* Knowledge faults that lead, by all sets they are in; -1 for none or not listed. */
static void find_leading(const struct situation *s, int *leading)
{
  double chance[SUSPECTS_MAX] = {0};

  for (size_t h = 1; h < s->suspects.count; h++)
    for (size_t m = 0; m < s->suspects.set[h].count; m++)
      chance[suspects_single(&s->suspects, s->suspects.set[h].place[m])] += s->suspects.set[h].weight;
  for (int l = 0; l < LEADING; l++) {
    size_t best = 0;

    for (size_t i = 1; i <= s->suspects.singles; i++)
      if (chance[i] > chance[best]) best = i;
    leading[l] = best > 0 && s->suspects.set[best].weight >= good_as_taken
                     ? s->fault_of[s->suspects.set[best].place[0]] : -1;
    chance[best] = 0;
  }
}

static int by_saving(const void *x, const void *y)
{
  const struct trial *a = x, *b = y;

  if ((a->ask_first >= 0) != (b->ask_first >= 0)) return a->ask_first >= 0 ? -1 : 1;
  if (a->saving != b->saving) return a->saving > b->saving ? -1 : 1;
  return a->check - b->check;
}

static size_t try_checks(struct situation *s, struct casenet *n, struct trial *trials)
{
  struct plan_state start;
  int leading[LEADING];
  double now;
  size_t count = 0;

  plan_start(&s->problem, &start);
  now = plan_base(&s->problem, &start, NULL);
  find_leading(s, leading);
  for (size_t i = 0; i < s->k->check_count; i++) {
    struct plan_move ask = plan_asking(TRIAL);
    struct trial *t = &trials[count];

    if (!wanted(s, (int)i)) continue;
    set_trial(s, n, (int)i);
    t->saving = now - plan_move_value(&s->problem, &start, &ask, base_value, s, 1e300);
    t->question = s->problem.questions[TRIAL];
    t->check = (int)i;
    t->ask_first = asked_first(s, leading, (int)i);
    count++;
  }
  s->problem.questions[TRIAL] = (struct plan_question){0};
  return count;
}

static void add_checks(struct situation *s, struct casenet *n)
{
  struct trial *trials = mem_array(s->k->check_count, sizeof *trials);
  size_t count = try_checks(s, n, trials);

  if (count > 1) qsort(trials, count, sizeof *trials, by_saving);
  for (size_t i = 0; i < count; i++) {
    if (i >= MOST_CHECKS) {
      free(trials[i].question.chance);
      continue;
    }
    s->problem.questions[i] = trials[i].question;
    s->check[i] = trials[i].check;
    s->ask_first[i] = trials[i].ask_first;
    s->problem.question_count++;
  }
  free(trials);
}

/* ---- the whole ------------------------------------------------------------------------- */

/* Giving up costs the owner the machine, and us an account of why. */
static double give_up_cost(const struct situation *s)
{
  double worth = s->c->machine_class >= 0 ? s->k->classes[s->c->machine_class].worth
                                          : knowledge_setting(s->k, "worth-unknown", 300);

  return worth + knowledge_setting(s->k, "give-up", 20);
}

void situation_build(struct situation *s, struct casenet *n, const struct bench_case *c,
                     const struct conclusions *drawn, const double *belief, const bool *off)
{
  memset(s, 0, sizeof *s);
  s->k = n->k;
  s->c = c;
  s->drawn = drawn;
  s->fault_of = n->fault_of;
  suspects_list(n, belief, &s->suspects);
  plan_begin(&s->problem, s->suspects.count);
  for (size_t h = 0; h < s->suspects.count; h++) s->problem.weight[h] = s->suspects.set[h].weight;
  s->problem.give_up = give_up_cost(s);
  s->problem.order_once = true; /* only pairs couple the repairs */
  s->problem.trifle = 5e-4;
  s->problem.commute = true; /* a pair is gone when both are repaired, in whatever order */
  add_covers(s, off);
  add_repairs(s);
  plan_ready(&s->problem);
  add_checks(s, n);
}

void situation_free(struct situation *s)
{
  plan_free(&s->problem);
  free(s->place);
  free(s->over);
}

int situation_leading(const struct situation *s, const struct plan_state *state, double *chance)
{
  double weight[SUSPECTS_MAX] = {0}, best = state->w[0];
  int leading = -2;

  for (size_t h = 1; h < s->suspects.count; h++)
    for (size_t m = 0; m < s->suspects.set[h].count; m++)
      weight[suspects_single(&s->suspects, s->suspects.set[h].place[m])] += state->w[h];
  for (size_t i = 1; i <= s->suspects.singles; i++)
    if (weight[i] > best) {
      best = weight[i];
      leading = s->fault_of[s->suspects.set[i].place[0]];
    }
  *chance = best / plan_weight(&s->problem, state);
  return leading;
}

/* Only the fault that the repair is mostly for counts. */
int situation_held_by(const struct situation *s, const struct plan_state *state, int repair)
{
  double most = 0;
  int fault = -1;

  for (size_t i = 0; i < s->problem.repairs[repair].effect_count; i++) {
    const struct plan_effect *e = &s->problem.repairs[repair].effects[i];

    if (s->suspects.set[e->hypothesis].count != 1 || state->w[e->hypothesis] <= most) continue;
    most = state->w[e->hypothesis];
    fault = s->fault_of[s->suspects.set[e->hypothesis].place[0]];
  }
  if (fault < 0) return -1;
  for (size_t q = 0; q < s->problem.question_count; q++)
    for (int i = conclusion_find(s->drawn, ASK_FIRST, s->check[q], 0); i >= 0;
         i = conclusion_find(s->drawn, ASK_FIRST, s->check[q], (size_t)i + 1))
      if (s->drawn->items[i].b == fault && !(state->asked >> q & 1)) return (int)q;
  return -1;
}
