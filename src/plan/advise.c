/* advise.c - see advise.h. */
#include "plan/advise.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "plan/situation.h"

/* Bounds of the work, in base policies worked out (a few microseconds each). */
enum { EXACT_LIMIT = 8000, ROLLOUT_LIMIT = 6000, WITHOUT_LIMIT = 2000, FINEST = 30 };
static const double finer = 0.7; /* each round follows branches this much less likely */
/* Suspects up to which the exact costs are tried for; first moves that are followed, and whatever
 * their place the best repairs, since one question ahead makes every check look better than a
 * repair, and the checks that tell most per minute; checks looked at on the way; options told in
 * full; checks whose absence is worked out, and by how many other moves. */
enum {
  FEW = 16, KEPT = 10, KEPT_REPAIRS = 2, KEPT_TELLING = 4, INNER_QUESTIONS = 10, EXPLAINED = 8, ABSENT = 2,
  INSTEAD = 5
};

/* A first move with its cost by the method that was used. */
struct weighed { struct plan_move move; double cost; bool kept; };

struct adviser {
  struct situation s;
  struct plan_state start;
  struct planner planner, exact;
  struct weighed moves[PLAN_MAX_MOVES];
  size_t count;
  int depth; /* as plan_follow takes it */
  enum advice_method method;
};

/* ---- weighing the first moves ---------------------------------------------------------- */

static int by_cost(const void *x, const void *y)
{
  const struct weighed *a = x, *b = y;

  if (a->cost != b->cost) return a->cost < b->cost ? -1 : 1;
  if (a->move.kind != b->move.kind) return (int)a->move.kind - (int)b->move.kind;
  return a->move.at - b->move.at;
}

static void sort_moves(struct adviser *a) { qsort(a->moves, a->count, sizeof a->moves[0], by_cost); }

static bool same_step(const struct plan_move *x, const struct plan_move *y)
{
  return x->kind == y->kind && x->at == y->at;
}

/* A repair by itself and a visit that begins with it are one option: the cheaper stays. */
static void drop_twins(struct adviser *a)
{
  size_t n = 0;

  for (size_t i = 0; i < a->count; i++) {
    size_t j = 0;

    while (j < n && !same_step(&a->moves[j].move, &a->moves[i].move)) j++;
    if (j == n) a->moves[n++] = a->moves[i];
  }
  a->count = n;
}

/* What a check tells about what is behind the trouble, long ones less so: bits over the minutes to the power of
 * three quarters (own rule; bits alone would have a carburettor off where a quick look comes to the same, bits
 * per minute would ask any quick question first). */
static double telling(const struct adviser *a, const struct plan_move *m)
{
  double minutes = plan_question_cost(&a->s.problem, &a->start, &a->s.problem.questions[m->at]);

  return plan_information(&a->s.problem, &a->start, m->at) / pow(minutes > 1 ? minutes : 1, 0.75);
}

/* Of the checks that are not kept, the most telling one is. */
static void keep_most_telling(struct adviser *a)
{
  double best = 0;
  size_t at = a->count;

  for (size_t i = 0; i < a->count; i++) {
    double tells;

    if (a->moves[i].kept || a->moves[i].move.kind != PLAN_ASK) continue;
    tells = telling(a, &a->moves[i].move);
    if (tells <= best) continue;
    best = tells;
    at = i;
  }
  if (at < a->count) a->moves[at].kept = true;
}

/* One question ahead for every move there is; the best are kept to be followed further. */
static void look_at_all(struct adviser *a)
{
  struct plan_move moves[PLAN_MAX_MOVES], base;
  size_t questions = 0, repairs = 0;

  plan_base(&a->s.problem, &a->start, &base);
  a->count = plan_moves(&a->s.problem, &a->start, UINT32_MAX, &base, moves);
  for (size_t i = 0; i < a->count; i++)
    a->moves[i] = (struct weighed){moves[i], plan_step_move(&a->planner, &a->start, &moves[i], 0), true};
  sort_moves(a);
  drop_twins(a);
  a->planner.questions = 0;
  for (size_t i = 0; i < a->count; i++) {
    const struct plan_move *m = &a->moves[i].move;

    a->moves[i].kept = i < KEPT || (m->kind == PLAN_ASK && a->s.ask_first[m->at] >= 0) ||
                       (m->kind == PLAN_REPAIR && repairs < KEPT_REPAIRS);
    repairs += m->kind == PLAN_REPAIR;
    if (m->kind == PLAN_ASK && questions++ < INNER_QUESTIONS) a->planner.questions |= UINT32_C(1) << m->at;
  }
  for (int i = 0; i < KEPT_TELLING; i++) keep_most_telling(a);
}

/* Follows the kept moves further and further: what is less likely than `small` is finished with
 * the base policy, and that limit is lowered until the work is spent. The last round that was
 * finished counts. */
static void roll_out(struct adviser *a)
{
  double cost[PLAN_MAX_MOVES], small = plan_weight(&a->s.problem, &a->start);

  a->planner.limit = a->planner.steps + ROLLOUT_LIMIT;
  for (int round = 1; round <= FINEST; round++) {
    a->planner.small = small * finer;
    for (size_t i = 0; i < a->count && !a->planner.spent; i++)
      cost[i] = a->moves[i].kept
                  ? plan_step_move(&a->planner, &a->start, &a->moves[i].move, PLAN_TO_THE_END + round) : 0;
    if (a->planner.spent) break;
    for (size_t i = 0; i < a->count; i++)
      if (a->moves[i].kept) a->moves[i].cost = cost[i];
    small = a->planner.small;
    a->depth = PLAN_TO_THE_END + round;
    a->method = ADVICE_ROLLOUT;
  }
  a->planner.small = small;
  a->planner.spent = false;
}

/* The least cost from a state on, where it can be had within the limit. */
static bool exactly(struct adviser *a, const struct plan_state *s, double *value, struct plan_move *next)
{
  bool good;

  a->exact.limit = a->exact.steps + EXACT_LIMIT;
  good = plan_exact(&a->exact, s, value, next);
  a->exact.spent = false;
  return good;
}

/* The exact costs of all moves, where they can be had. */
static void be_exact(struct adviser *a)
{
  double cost[PLAN_MAX_MOVES] = {0};
  bool good = true;

  a->exact.limit = EXACT_LIMIT;
  for (size_t i = 0; i < a->count && good; i++)
    good = plan_exact_move(&a->exact, &a->start, &a->moves[i].move, &cost[i]);
  a->exact.spent = false;
  a->planner.steps += a->exact.steps;
  if (!good) return;
  for (size_t i = 0; i < a->count; i++) a->moves[i].cost = cost[i];
  a->method = ADVICE_EXACT;
}

/* Is the machine more likely than not right after this repair? */
static bool likely_repair(const struct adviser *a, const struct plan_move *m)
{
  struct plan_state to;

  plan_make(&a->s.problem, &a->start, m, &to);
  return plan_weight(&a->s.problem, &to) < 0.5 * plan_weight(&a->s.problem, &a->start);
}

/* The figures are estimates: checks that come to nearly the same are a tie, and of those the most
 * telling one goes first. It must still come cheaper than asking nothing, than giving up, and than a repair that is
 * likely to be the right one; before a repair on a guess comes a check that costs nearly the same. */
static void prefer_telling(struct adviser *a)
{
  double most = a->moves[0].cost * (1 + knowledge_setting(a->s.k, "near-tie", 0)), best = 0;
  double no_checks = plan_base(&a->s.problem, &a->start, NULL);
  size_t first = 0;
  struct weighed m;

  if (most > no_checks) most = no_checks;
  for (size_t i = 0; i < a->count && a->moves[i].cost <= most; i++) {
    const struct plan_move *move = &a->moves[i].move;
    double tells;

    if (move->kind == PLAN_GIVE_UP || (move->kind == PLAN_REPAIR && likely_repair(a, move))) break;
    tells = move->kind == PLAN_ASK && a->moves[i].kept ? telling(a, move) : 0;
    if (tells <= best) continue;
    best = tells;
    first = i;
  }
  m = a->moves[first];
  memmove(&a->moves[1], &a->moves[0], first * sizeof m);
  a->moves[0] = m;
}

static void weigh_moves(struct adviser *a)
{
  a->method = ADVICE_LOOK_AHEAD;
  planner_open(&a->planner, &a->s.problem, PLAN_NO_LIMIT);
  planner_open(&a->exact, &a->s.problem, EXACT_LIMIT);
  look_at_all(a);
  if (a->s.suspects.count <= FEW) be_exact(a);
  if (a->method != ADVICE_EXACT) roll_out(a);
  sort_moves(a);
  prefer_telling(a);
}

/* ---- telling it ------------------------------------------------------------------------ */

static struct advice_step step_of(const struct situation *s, const struct plan_move *m)
{
  int repair;

  if (m->kind == PLAN_GIVE_UP) return (struct advice_step){ADVICE_GIVE_UP, -1};
  if (m->kind == PLAN_ASK) return (struct advice_step){ADVICE_CHECK, s->check[m->at]};
  repair = s->repair[m->at];
  if (repair == SITUATION_PROVE) return (struct advice_step){ADVICE_PROVE, -1};
  if (repair == SITUATION_LOOK_FURTHER) return (struct advice_step){ADVICE_LOOK_FURTHER, -1};
  return (struct advice_step){ADVICE_REPAIR, repair};
}

/* Minutes of a move's own, as things are. */
static double minutes_of(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m)
{
  const struct plan_repair *r;

  if (m->kind == PLAN_GIVE_UP) return p->give_up;
  if (m->kind == PLAN_ASK) return plan_question_cost(p, s, &p->questions[m->at]);
  r = &p->repairs[m->at];
  return r->cost + plan_opening(p, r->covers, s->open);
}

/* Expected cost of the job from this state on, by the method that was used, and the next move. */
static double value_after(struct adviser *a, const struct plan_state *s, struct plan_move *next)
{
  double value;

  if (a->method == ADVICE_EXACT && exactly(a, s, &value, next)) return value;
  if (a->depth == 0) return plan_base(&a->s.problem, s, next);
  plan_look(&a->planner, s, next);
  return plan_follow(&a->planner, s, a->depth);
}

static double best_other(const struct adviser *a, size_t except)
{
  double best = a->s.problem.give_up * plan_weight(&a->s.problem, &a->start);

  for (size_t i = 0; i < a->count; i++)
    if (i != except && a->moves[i].cost < best) best = a->moves[i].cost;
  return best;
}

/* What the job costs when this check is never made: the best of the other moves without it. */
static double cost_without(struct adviser *a, size_t check)
{
  struct plan_state s = a->start;
  double least = a->s.problem.give_up * plan_weight(&a->s.problem, &s), value;

  plan_set_aside(&s, a->moves[check].move.at);
  if (a->method == ADVICE_EXACT && exactly(a, &s, &value, NULL)) return value;
  a->planner.limit = a->planner.steps + WITHOUT_LIMIT;
  for (size_t i = 0, tried = 0; i < a->count && tried < INSTEAD; i++) {
    if (i == check || a->moves[i].move.kind == PLAN_GIVE_UP) continue;
    tried++;
    value = plan_step_move(&a->planner, &s, &a->moves[i].move, a->depth);
    if (!a->planner.spent && value < least) least = value;
  }
  a->planner.spent = false;
  a->planner.limit = PLAN_NO_LIMIT;
  return least > a->moves[0].cost ? least : a->moves[0].cost;
}

static void tell_results(struct adviser *a, int question, struct advice_option *o)
{
  const struct plan_question *q = &a->s.problem.questions[question];
  double weight = plan_weight(&a->s.problem, &a->start);
  struct plan_state to;

  for (int g = 0; g < q->outcomes; g++) {
    struct advice_result *r = &o->results[o->result_count];
    struct plan_move next;
    double chance = plan_outcome(&a->s.problem, &a->start, question, g, &to);

    if (chance <= 0) continue;
    r->result = g;
    r->chance = chance / weight;
    r->fault = situation_leading(&a->s, &to, &r->belief);
    r->cost = value_after(a, &to, &next) / chance;
    r->next = step_of(&a->s, &next);
    o->result_count++;
  }
}

static void tell_repair(struct adviser *a, const struct plan_move *m, struct advice_option *o)
{
  const struct plan_problem *p = &a->s.problem;
  int held = situation_held_by(&a->s, &a->start, m->at);
  struct plan_state to;

  plan_make(p, &a->start, m, &to);
  o->chance = 1 - plan_weight(p, &to) / plan_weight(p, &a->start);
  if (held >= 0) o->held_by = a->s.check[held];
  for (int i = 1; i < m->count; i++)
    if (a->s.repair[m->visit[i]] >= 0) o->also[o->also_count++] = a->s.repair[m->visit[i]];
}

static void tell_option(struct adviser *a, size_t i, struct advice_option *o)
{
  const struct plan_problem *p = &a->s.problem;
  const struct weighed *m = &a->moves[i];
  double weight = plan_weight(p, &a->start);

  *o = (struct advice_option){.step = step_of(&a->s, &m->move), .ask_first = -1, .held_by = -1};
  o->minutes = minutes_of(p, &a->start, &m->move);
  o->cost = m->cost / weight;
  if (m->move.kind == PLAN_ASK) {
    o->ask_first = a->s.ask_first[m->move.at];
    o->without = (i < ABSENT ? cost_without(a, i) : best_other(a, i)) / weight;
    if (m->kept && (i < EXPLAINED || o->ask_first >= 0)) tell_results(a, m->move.at, o);
  } else {
    o->without = best_other(a, i) / weight;
  }
  if (m->move.kind == PLAN_REPAIR) tell_repair(a, &m->move, o);
  o->break_even = o->minutes + o->without - o->cost;
}

/* A repair that rules hold back until a check is made goes after that check. */
static void put_held_back(struct advice *out)
{
  for (size_t at = 1; at < out->count && out->options[0].held_by >= 0; at++) {
    struct advice_option o = out->options[at];

    if (o.step.kind != ADVICE_CHECK || o.step.at != out->options[0].held_by) continue;
    memmove(&out->options[1], &out->options[0], at * sizeof o);
    out->options[0] = o;
  }
}

static struct plan_move move_of(const struct adviser *a, const struct advice_option *o)
{
  for (size_t i = 0; i < a->count; i++) {
    struct advice_step s = step_of(&a->s, &a->moves[i].move);

    if (s.kind == o->step.kind && s.at == o->step.at) return a->moves[i].move;
  }
  return a->moves[0].move;
}

static struct advice_planned *add_planned(struct advice *out, struct advice_step step, double chance,
                                          double minutes)
{
  struct advice_planned *p = &out->plan[out->plan_count++];

  *p = (struct advice_planned){.step = step, .result = -1, .chance = chance, .minutes = minutes};
  return p;
}

/* The repairs of a visit as steps of the plan; *to is the state when the machine is not right. */
static void plan_visit(struct adviser *a, struct advice *out, const struct plan_state *now,
                       const struct plan_move *m, double chance, struct plan_state *to)
{
  const struct plan_problem *p = &a->s.problem;
  struct plan_state there = *now;

  for (int i = 0; i < m->count && out->plan_count < ADVICE_STEPS; i++) {
    struct plan_move one = plan_repairing(m->visit[i]);

    add_planned(out, step_of(&a->s, &one), chance, minutes_of(p, &there, &one))->tried = i == m->count - 1;
    there.open |= p->repairs[one.at].covers;
  }
  plan_make(p, now, m, to);
}

/* The state after the likeliest result of a check; returns that result. */
static int likeliest(const struct plan_problem *p, const struct plan_state *now, int question,
                     struct plan_state *to)
{
  struct plan_state after;
  double best = -1;
  int result = 0;

  for (int o = 0; o < p->questions[question].outcomes; o++) {
    double w = plan_outcome(p, now, question, o, &after);

    if (w <= best) continue;
    best = w;
    result = o;
    *to = after;
  }
  return result;
}

/* The next steps, each the look-ahead's after the likeliest result of the one before. */
static void tell_plan(struct adviser *a, struct advice *out)
{
  const struct plan_problem *p = &a->s.problem;
  struct plan_state now = a->start, to;
  struct plan_move move = move_of(a, &out->options[0]);
  double all = plan_weight(p, &now), chance = 1;

  while (out->plan_count < ADVICE_STEPS && chance > 0.02) {
    if (move.kind == PLAN_GIVE_UP) {
      add_planned(out, step_of(&a->s, &move), chance, minutes_of(p, &now, &move));
      return;
    }
    if (move.kind == PLAN_REPAIR) plan_visit(a, out, &now, &move, chance, &to);
    else
      add_planned(out, step_of(&a->s, &move), chance, minutes_of(p, &now, &move))->result =
        likeliest(p, &now, move.at, &to);
    now = to;
    chance = plan_weight(p, &now) / all;
    value_after(a, &now, &move);
  }
}

/* ---- while you are in there ------------------------------------------------------------ */

static int by_gain(const void *x, const void *y)
{
  const struct advice_beside *a = x, *b = y;
  double ga = a->saving - a->minutes, gb = b->saving - b->minutes;

  if (ga != gb) return ga > gb ? -1 : 1;
  return a->check - b->check;
}

static double base_value(void *with, const struct plan_state *s)
{
  const struct plan_problem *p = with;

  return plan_base(p, s, NULL);
}

/* Checks behind covers that are off now or come off for the first step: what they cost then,
 * what they would cost at another time, and what knowing the result saves. */
static void tell_beside(struct adviser *a, struct advice *out)
{
  struct plan_problem *p = &a->s.problem;
  struct plan_move first = move_of(a, &out->options[0]);
  struct advice_beside all[PLAN_MAX_QUESTIONS];
  struct plan_state there = a->start;
  double now, weight = plan_weight(p, &there), nearly = knowledge_setting(a->s.k, "while-in-there", 4);
  size_t count = 0;

  if (first.kind == PLAN_ASK) there.open |= p->questions[first.at].covers;
  if (first.kind == PLAN_REPAIR) there.open |= p->repairs[first.at].covers;
  now = plan_base(p, &there, NULL);
  for (size_t q = 0; q < p->question_count; q++) {
    struct advice_beside b = {.check = a->s.check[q]};
    struct plan_move ask = plan_asking((int)q);

    if (p->questions[q].covers == 0 || p->questions[q].covers & ~there.open) continue;
    if (p->questions[q].runs || (first.kind == PLAN_ASK && first.at == (int)q)) continue;
    b.minutes = p->questions[q].cost;
    b.alone = b.minutes + plan_opening(p, p->questions[q].covers, 0);
    b.saving = (now - plan_move_value(p, &there, &ask, base_value, p, 1e300)) / weight + b.minutes;
    if (b.minutes <= nearly && b.saving > b.minutes / 4) all[count++] = b;
  }
  if (count > 1) qsort(all, count, sizeof all[0], by_gain);
  out->beside_count = count < ADVICE_BESIDE ? count : ADVICE_BESIDE;
  memcpy(out->beside, all, out->beside_count * sizeof all[0]);
}

/* ---- the whole ------------------------------------------------------------------------- */

static void tell_totals(struct adviser *a, struct advice *out)
{
  const struct plan_problem *p = &a->s.problem;
  double weight = plan_weight(p, &a->start);

  out->method = a->method;
  out->cost = out->options[0].cost;
  out->no_checks = plan_base(p, &a->start, NULL) / weight;
  out->give_up_cost = p->give_up;
  out->stop_checking = out->options[0].step.kind != ADVICE_CHECK;
  out->give_up = out->options[0].step.kind == ADVICE_GIVE_UP;
}

void plan_advise(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn,
                 const double *belief, const bool *off, struct advice *out)
{
  struct adviser *a = mem_new(sizeof *a);

  *out = (struct advice){0};
  situation_build(&a->s, n, c, drawn, belief, off);
  plan_start(&a->s.problem, &a->start);
  weigh_moves(a);
  out->options = mem_array(a->count, sizeof *out->options);
  for (size_t i = 0; i < a->count; i++) tell_option(a, i, &out->options[out->count++]);
  put_held_back(out);
  tell_totals(a, out);
  tell_plan(a, out);
  tell_beside(a, out);
  out->steps = a->planner.steps;
  planner_close(&a->planner);
  planner_close(&a->exact);
  situation_free(&a->s);
  free(a);
}

void advice_free(struct advice *a)
{
  free(a->options);
  *a = (struct advice){0};
}

const char *advice_method_name(enum advice_method m)
{
  static const char *const names[] = {"exact", "rollout", "look-ahead"};

  return names[m];
}
