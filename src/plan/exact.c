/* exact.c - the least possible cost: depth first over everything that may happen, each state
 * worked out once; what cannot come in below the best known cost is left (branch and bound,
 * with plan_floor as the bound). */
#include "plan/policy.h"

#include <stdlib.h>

/* ---- the floor ------------------------------------------------------------------------- */

/* The repairs that help one known hypothesis, the best chance over cost first. */
struct known { size_t count; double cost[PLAN_MAX_REPAIRS], chance[PLAN_MAX_REPAIRS], opening; };

static void add_known(struct known *k, double cost, double chance, double opening)
{
  size_t i = k->count++;

  if (i == 0 || opening < k->opening) k->opening = opening;
  for (; i > 0 && chance * k->cost[i - 1] > k->chance[i - 1] * cost; i--) {
    k->cost[i] = k->cost[i - 1];
    k->chance[i] = k->chance[i - 1];
  }
  k->cost[i] = cost;
  k->chance[i] = chance;
}

/* No more than the least cost of a hypothesis that is known to hold: its repairs in order
 * until one works, the cheapest cover counted once; or giving up. */
static double known_cost(const struct known *k, double give_up)
{
  double cost = give_up;

  for (size_t i = k->count; i-- > 0;) {
    double on = k->cost[i] + (1 - k->chance[i]) * cost;

    if (on < cost) cost = on;
  }
  return cost + k->opening < give_up ? cost + k->opening : give_up;
}

double plan_floor(const struct plan_problem *p, const struct plan_state *s)
{
  struct known known;
  double opening[PLAN_MAX_REPAIRS], sum = 0;

  for (size_t a = 0; a < p->repair_count; a++) opening[a] = plan_opening(p, p->repairs[a].covers, s->open);
  for (size_t h = 0; h < p->hypotheses; h++) {
    if (s->w[h] <= 0) continue;
    known.count = 0;
    known.opening = 0;
    for (size_t i = p->touched[h]; i < p->touched[h + 1]; i++) {
      const struct plan_touch *t = &p->touches[i];

      if (s->done >> t->repair & 1) continue;
      add_known(&known, p->repairs[t->repair].cost + t->clears * p->repairs[t->repair].on_success, t->chance,
                opening[t->repair]);
    }
    sum += s->w[h] * known_cost(&known, p->give_up);
  }
  return sum;
}

/* ---- the search ------------------------------------------------------------------------ */

struct candidate { struct plan_move move; double floor; };

/* The best move so far; nothing at or above `below` is of use. */
struct best { double value, below; struct plan_move move; };

static double floor_value(void *with, const struct plan_state *s)
{
  const struct planner *x = with;

  return plan_floor(x->p, s);
}

static int by_floor(const void *x, const void *y)
{
  const struct candidate *a = x, *b = y;

  if (a->floor != b->floor) return a->floor < b->floor ? -1 : 1;
  if (a->move.kind != b->move.kind) return (int)a->move.kind - (int)b->move.kind;
  return a->move.at - b->move.at;
}

static double exact_value(struct planner *x, const struct plan_state *s, double below,
                          struct plan_move *move);

static bool step(struct planner *x)
{
  if (++x->steps > x->limit) x->spent = true;
  return !x->spent;
}

/* Cost of a question followed by the best; anything not below `below` when it is not below. */
static double ask(struct planner *x, const struct plan_state *s, int q, double below)
{
  const struct plan_question *question = &x->p->questions[q];
  struct plan_state to[PLAN_MAX_OUTCOMES];
  double floors[PLAN_MAX_OUTCOMES] = {0}, floor = 0;
  double cost = plan_question_cost(x->p, s, question) * plan_weight(x->p, s);

  for (int o = 0; o < question->outcomes; o++) {
    floors[o] = plan_outcome(x->p, s, q, o, &to[o]) > 0 ? plan_floor(x->p, &to[o]) : 0;
    floor += floors[o];
  }
  for (int o = 0; o < question->outcomes && !x->spent; o++) {
    double room = below - cost - (floor - floors[o]), value;

    if (floors[o] <= 0) continue;
    value = exact_value(x, &to[o], room, NULL);
    if (value >= room) return below;
    cost += value;
    floor -= floors[o];
  }
  return cost;
}

static double make(struct planner *x, const struct plan_state *s, const struct plan_move *m, double below)
{
  struct plan_state to;
  double cost = plan_make(x->p, s, m, &to), value;

  if (cost >= below) return below;
  if (plan_weight(x->p, &to) <= 0) return cost;
  value = exact_value(x, &to, below - cost, NULL);
  return value < below - cost ? cost + value : below;
}

static void weigh(struct planner *x, const struct plan_state *s, const struct plan_move *m, struct best *best)
{
  double value;

  if (!step(x)) return;
  if (m->kind == PLAN_GIVE_UP) value = x->p->give_up * plan_weight(x->p, s);
  else if (m->kind == PLAN_ASK) value = ask(x, s, m->at, best->below);
  else value = make(x, s, m, best->below);
  if (value >= best->below) return;
  best->value = best->below = value;
  best->move = *m;
}

/* The visit with one more repair; false when that need not be looked at: order matters only
 * where one repair leaves work for another. A repair behind no cover that goes back on is
 * better made after the try, unless it leaves work behind a cover that is off already. */
static bool longer(const struct plan_problem *p, uint64_t open, const struct plan_move *visit, int a,
                   struct plan_move *out)
{
  bool rising = !p->moving || p->commute;

  if (!(p->repairs[a].covers & p->shut) && !(p->moving && (open & p->shut))) return false;
  if (rising && visit->count > 0 && a < visit->visit[visit->count - 1]) return false;
  for (int i = 0; i < visit->count; i++)
    if (visit->visit[i] == a) return false;
  *out = visit->count > 0 ? *visit : plan_repairing(a);
  if (visit->count > 0) out->visit[out->count++] = (signed char)a;
  return true;
}

/* Visits of two repairs and more behind covers that would have to come off again. Adding to a
 * visit never makes it cheaper, so one that costs too much already is not added to. */
static void weigh_visits(struct planner *x, const struct plan_state *s, const struct plan_move *visit,
                         struct best *best)
{
  const struct plan_problem *p = x->p;

  for (size_t a = 0; a < p->repair_count && visit->count < PLAN_MAX_VISIT && !x->spent; a++) {
    struct plan_move m;
    struct plan_state to;
    double cost;

    if (s->done >> a & 1 || !longer(p, s->open, visit, (int)a, &m)) continue;
    if (!step(x)) return;
    cost = plan_make(p, s, &m, &to);
    if (cost >= best->below) continue;
    if (m.count > 1 && cost + plan_floor(p, &to) < best->below) weigh(x, s, &m, best);
    weigh_visits(x, s, &m, best);
  }
}

static void search(struct planner *x, const struct plan_state *s, struct best *best)
{
  struct plan_move moves[PLAN_MAX_MOVES], none = plan_giving_up();
  struct candidate c[PLAN_MAX_MOVES];
  size_t count = plan_moves(x->p, s, x->questions, &none, moves);

  for (size_t i = 0; i < count; i++)
    c[i] = (struct candidate){moves[i], plan_move_value(x->p, s, &moves[i], floor_value, x, best->below)};
  qsort(c, count, sizeof *c, by_floor);
  for (size_t i = 0; i < count && c[i].floor < best->below && !x->spent; i++) weigh(x, s, &c[i].move, best);
  if (x->p->shut) weigh_visits(x, s, &none, best);
}

/* The least cost when that is below `below`; otherwise something not below it. */
static double exact_value(struct planner *x, const struct plan_state *s, double below, struct plan_move *move)
{
  struct memo_entry e = {.key = plan_key_of(x->p, s), .kind = MEMO_EXACT};
  const struct memo_entry *known = memo_find(&x->memo, &e.key, MEMO_EXACT, 0);
  struct best best;

  if (known && (!known->bound || known->value >= below)) {
    if (move) *move = known->move;
    return known->value;
  }
  best.value = plan_base(x->p, s, &best.move);
  best.below = best.value < below ? best.value : below;
  search(x, s, &best);
  if (x->spent) return below;
  e.bound = best.value >= below;
  e.value = e.bound ? below : best.value;
  e.move = best.move;
  memo_put(&x->memo, &e);
  if (move) *move = e.move;
  return e.value;
}

bool plan_exact(struct planner *x, const struct plan_state *s, double *value, struct plan_move *move)
{
  struct plan_move best = plan_giving_up();

  *value = exact_value(x, s, 1e300, &best);
  if (move) *move = best;
  return !x->spent;
}

bool plan_exact_move(struct planner *x, const struct plan_state *s, const struct plan_move *m, double *value)
{
  if (m->kind == PLAN_GIVE_UP) *value = x->p->give_up * plan_weight(x->p, s);
  else *value = m->kind == PLAN_ASK ? ask(x, s, m->at, 1e300) : make(x, s, m, 1e300);
  return !x->spent;
}
