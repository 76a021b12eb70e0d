/* rollout.c - following the look-ahead, and the step that judges every move by doing so. */
#include "plan/policy.h"

struct following { struct planner *x; int depth; };

static double followed(void *with, const struct plan_state *s)
{
  const struct following *f = with;

  return plan_follow(f->x, s, f->depth);
}

static int deeper(int depth) { return depth >= PLAN_TO_THE_END ? depth : depth - 1; }

double plan_follow(struct planner *x, const struct plan_state *s, int depth)
{
  struct following next = {x, deeper(depth)};
  const struct memo_entry *known;
  struct memo_entry e = {.kind = MEMO_FOLLOW, .depth = depth};

  if (depth <= 0 || plan_weight(x->p, s) <= x->small) {
    if (++x->steps > x->limit) x->spent = true;
    return x->spent ? 0 : plan_base(x->p, s, NULL);
  }
  e.key = plan_key_of(x->p, s);
  known = memo_find(&x->memo, &e.key, MEMO_FOLLOW, depth);
  if (known) return known->value;
  plan_look(x, s, &e.move);
  e.value = x->spent ? 0 : plan_move_value(x->p, s, &e.move, followed, &next, 1e300);
  if (!x->spent) memo_put(&x->memo, &e);
  return e.value;
}

double plan_step_move(struct planner *x, const struct plan_state *s, const struct plan_move *m, int depth)
{
  struct following next = {x, depth};

  return plan_move_value(x->p, s, m, followed, &next, 1e300);
}

double plan_step(struct planner *x, const struct plan_state *s, int depth, struct plan_move *move)
{
  struct following next = {x, depth};
  struct plan_move moves[PLAN_MAX_MOVES], base;
  struct plan_move best = plan_giving_up();
  double least = x->p->give_up * plan_weight(x->p, s);
  size_t count;

  plan_base(x->p, s, &base);
  count = plan_moves(x->p, s, x->questions, &base, moves);
  for (size_t i = 0; i < count; i++) {
    double value = plan_move_value(x->p, s, &moves[i], followed, &next, least);

    if (value >= least) continue;
    least = value;
    best = moves[i];
  }
  if (move) *move = best;
  return least;
}

static double stepped(void *with, const struct plan_state *s) { return plan_step_follow(with, s); }

double plan_step_follow(struct planner *x, const struct plan_state *s)
{
  struct memo_entry e = {.key = plan_key_of(x->p, s), .kind = MEMO_STEP};
  const struct memo_entry *known = memo_find(&x->memo, &e.key, MEMO_STEP, 0);

  if (known) return known->value;
  plan_step(x, s, PLAN_TO_THE_END, &e.move);
  e.value = plan_move_value(x->p, s, &e.move, stepped, x, 1e300);
  memo_put(&x->memo, &e);
  return e.value;
}
