/* look.c - moves, what they lead to, and one question ahead; see policy.h. */
#include "plan/policy.h"

static double ask_value(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m,
                        plan_value *next, void *with, double cut)
{
  const struct plan_question *q = &p->questions[m->at];
  double cost = plan_question_cost(p, s, q) * plan_weight(p, s);
  struct plan_state to;

  for (int o = 0; o < q->outcomes && cost < cut; o++)
    if (plan_outcome(p, s, m->at, o, &to) > 0) cost += next(with, &to);
  return cost;
}

double plan_move_value(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m,
                       plan_value *next, void *with, double cut)
{
  struct plan_state to;
  double cost;

  if (m->kind == PLAN_GIVE_UP) return p->give_up * plan_weight(p, s);
  if (m->kind == PLAN_ASK) return ask_value(p, s, m, next, with, cut);
  cost = plan_make(p, s, m, &to);
  return cost < cut && plan_weight(p, &to) > 0 ? cost + next(with, &to) : cost;
}

/* May the question turn out more than one way? */
static bool tells(const struct plan_problem *p, const struct plan_state *s, const struct plan_question *q)
{
  int ways = 0;

  for (int o = 0; o < q->outcomes && ways < 2; o++)
    for (size_t h = 0; h < p->hypotheses; h++)
      if (s->w[h] > 0 && q->chance[(size_t)o * p->hypotheses + h] > 0) {
        ways++;
        break;
      }
  return ways > 1;
}

static bool helps(const struct plan_repair *r, const struct plan_state *s)
{
  for (size_t i = 0; i < r->effect_count; i++)
    if (s->w[r->effects[i].hypothesis] * r->effects[i].credit > 0) return true;
  return false;
}

size_t plan_moves(const struct plan_problem *p, const struct plan_state *s, uint32_t questions,
                  const struct plan_move *base, struct plan_move *out)
{
  size_t n = 0;

  for (size_t a = 0; a < p->repair_count; a++)
    if (!(s->done >> a & 1) && helps(&p->repairs[a], s))
      out[n++] = plan_repairing((int)a);
  if (base->count > 1) out[n++] = *base;
  for (size_t q = 0; q < p->question_count; q++)
    if (!(s->asked >> q & 1) && (questions >> q & 1) && tells(p, s, &p->questions[q]))
      out[n++] = plan_asking((int)q);
  out[n++] = plan_giving_up();
  return n;
}

void planner_open(struct planner *x, const struct plan_problem *p, long limit)
{
  *x = (struct planner){.p = p, .questions = UINT32_MAX, .limit = limit};
}

void planner_close(struct planner *x) { memo_free(&x->memo); }

static double base_value(void *with, const struct plan_state *s)
{
  struct planner *x = with;

  if (++x->steps > x->limit) x->spent = true;
  return x->spent ? 0 : plan_base(x->p, s, NULL);
}

double plan_look(struct planner *x, const struct plan_state *s, struct plan_move *move)
{
  struct plan_key key = plan_key_of(x->p, s);
  const struct memo_entry *known = memo_find(&x->memo, &key, MEMO_LOOK, 0);
  struct memo_entry e = {.key = key, .kind = MEMO_LOOK};

  if (known) {
    if (move) *move = known->move;
    return known->value;
  }
  x->steps++;
  e.value = plan_base(x->p, s, &e.move);
  for (size_t q = 0; q < x->p->question_count && !x->spent; q++) {
    struct plan_move ask = plan_asking((int)q);
    double value;

    if (s->asked >> q & 1 || !(x->questions >> q & 1) || !tells(x->p, s, &x->p->questions[q])) continue;
    value = plan_move_value(x->p, s, &ask, base_value, x, e.value);
    if (value >= e.value) continue;
    e.value = value;
    e.move = ask;
  }
  if (!x->spent) memo_put(&x->memo, &e);
  if (move) *move = e.move;
  return e.value;
}
