/* judge_quick.c - see judge.h: judge_quickly. */
#include <stdlib.h>

#include "plan/situation.h"
#include "practice/judge.h"

/* Moves that are followed to the end; base policies worked out for that. */
enum { FOLLOWED = 6, INNER = 6, LIMIT = 400, ROUNDS = 12 };
static const double finer = 0.7;

struct quick {
  struct plan_move move;
  double cost;
};

static int by_cost(const void *x, const void *y)
{
  const struct quick *a = x, *b = y;

  if (a->cost != b->cost) return a->cost < b->cost ? -1 : 1;
  if (a->move.kind != b->move.kind) return (int)a->move.kind - (int)b->move.kind;
  return a->move.at - b->move.at;
}

static size_t look_at_all(struct planner *x, const struct plan_state *start, struct quick *out)
{
  struct plan_move moves[PLAN_MAX_MOVES], base;
  size_t count, questions = 0;

  plan_base(x->p, start, &base);
  count = plan_moves(x->p, start, UINT32_MAX, &base, moves);
  for (size_t i = 0; i < count; i++)
    out[i] = (struct quick){moves[i], plan_step_move(x, start, &moves[i], 0)};
  qsort(out, count, sizeof *out, by_cost);
  x->questions = 0;
  for (size_t i = 0; i < count && questions < INNER; i++)
    if (out[i].move.kind == PLAN_ASK) {
      x->questions |= UINT32_C(1) << out[i].move.at;
      questions++;
    }
  return count;
}

/* Finer and finer until the work is spent; the last whole round counts. */
static void follow(struct planner *x, const struct plan_state *start, struct quick *moves, size_t count)
{
  double cost[FOLLOWED], small = plan_weight(x->p, start);
  size_t n = count < FOLLOWED ? count : FOLLOWED;

  x->limit = x->steps + LIMIT;
  for (int round = 1; round <= ROUNDS; round++) {
    x->small = small * finer;
    for (size_t i = 0; i < n && !x->spent; i++)
      cost[i] = plan_step_move(x, start, &moves[i].move, PLAN_TO_THE_END + round);
    if (x->spent) break;
    for (size_t i = 0; i < n; i++) moves[i].cost = cost[i];
    small = x->small;
  }
  qsort(moves, count, sizeof *moves, by_cost);
}

static struct advice_step step_of(const struct situation *s, const struct plan_move *m)
{
  if (m->kind == PLAN_GIVE_UP) return (struct advice_step){ADVICE_GIVE_UP, -1};
  if (m->kind == PLAN_ASK) return (struct advice_step){ADVICE_CHECK, s->check[m->at]};
  if (s->repair[m->at] == SITUATION_PROVE) return (struct advice_step){ADVICE_PROVE, -1};
  if (s->repair[m->at] == SITUATION_LOOK_FURTHER) return (struct advice_step){ADVICE_LOOK_FURTHER, -1};
  return (struct advice_step){ADVICE_REPAIR, s->repair[m->at]};
}

void judge_quickly(struct run *r, const bool *off, struct advice *out)
{
  struct situation *s = mem_new(sizeof *s);
  struct quick moves[PLAN_MAX_MOVES];
  struct plan_state start;
  struct planner x;
  double weight;
  size_t count;

  situation_build(s, &r->a.net, &r->c, &r->a.drawn, r->a.belief, off);
  plan_start(&s->problem, &start);
  weight = plan_weight(&s->problem, &start);
  planner_open(&x, &s->problem, 1L << 40);
  count = look_at_all(&x, &start, moves);
  r->ahead = step_of(s, &moves[0].move);
  follow(&x, &start, moves, count);
  *out = (struct advice){.options = mem_array(count, sizeof *out->options), .method = ADVICE_ROLLOUT};
  for (size_t i = 0; i < count; i++) {
    struct advice_step step = step_of(s, &moves[i].move);
    bool there = false;

    for (size_t j = 0; j < out->count; j++)
      there = there || (out->options[j].step.kind == step.kind && out->options[j].step.at == step.at);
    if (!there)
      out->options[out->count++] = (struct advice_option){.step = step, .cost = moves[i].cost / weight};
  }
  out->give_up_cost = s->problem.give_up;
  out->cost = out->options[0].cost;
  planner_close(&x);
  situation_free(s);
  free(s);
}
