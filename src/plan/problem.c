/* problem.c - see problem.h. */
#include "plan/problem.h"

#include <stdlib.h>
#include <string.h>

void plan_begin(struct plan_problem *p, size_t hypotheses)
{
  memset(p, 0, sizeof *p);
  p->hypotheses = hypotheses < PLAN_MAX_HYPOTHESES ? hypotheses : PLAN_MAX_HYPOTHESES;
}

void plan_free(struct plan_problem *p)
{
  for (size_t i = 0; i < p->repair_count; i++) free(p->repairs[i].effects);
  for (size_t i = 0; i < p->question_count; i++) free(p->questions[i].chance);
  free(p->touches);
  memset(p, 0, sizeof *p);
}

int plan_add_cover(struct plan_problem *p, int under, double cost, bool shut_to_run)
{
  if (p->cover_count == PLAN_MAX_COVERS) return -1;
  p->covers[p->cover_count] = (struct plan_cover){under, cost, shut_to_run};
  return (int)p->cover_count++;
}

int plan_add_repair(struct plan_problem *p, double cost, uint64_t covers)
{
  if (p->repair_count == PLAN_MAX_REPAIRS) return -1;
  p->repairs[p->repair_count] = (struct plan_repair){.cost = cost, .covers = covers};
  return (int)p->repair_count++;
}

int plan_add_question(struct plan_problem *p, double cost, uint64_t covers, int outcomes)
{
  struct plan_question *q = &p->questions[p->question_count];

  if (p->question_count == PLAN_MAX_QUESTIONS || outcomes > PLAN_MAX_OUTCOMES) return -1;
  *q = (struct plan_question){.cost = cost, .covers = covers, .outcomes = outcomes};
  q->chance = mem_array((size_t)outcomes * p->hypotheses, sizeof *q->chance);
  return (int)p->question_count++;
}

void plan_effect(struct plan_problem *p, int repair, struct plan_effect e)
{
  struct plan_repair *r = &p->repairs[repair];
  void *items = r->effects;

  mem_grow(&items, &r->effect_room, r->effect_count + 1, sizeof *r->effects);
  r->effects = items;
  r->effects[r->effect_count++] = e;
}

void plan_clears(struct plan_problem *p, int repair, int hypothesis, double chance)
{
  plan_effect(p, repair, (struct plan_effect){hypothesis, -1, chance, 0, chance});
}

uint64_t plan_with_paths(const struct plan_problem *p, uint64_t covers)
{
  uint64_t all = 0;

  for (size_t k = 0; k < p->cover_count; k++)
    if (covers >> k & 1) all |= p->path[k];
  return all;
}

static void ready_covers(struct plan_problem *p)
{
  p->shut = 0;
  for (size_t k = 0; k < p->cover_count; k++) {
    int under = p->covers[k].under;

    p->path[k] = UINT64_C(1) << k | (under >= 0 ? p->path[under] : 0);
    if (p->covers[k].shut_to_run || (under >= 0 && (p->shut >> under & 1))) p->shut |= UINT64_C(1) << k;
  }
  p->open = plan_with_paths(p, p->open);
  for (size_t q = 0; q < p->question_count; q++)
    p->questions[q].covers = plan_with_paths(p, p->questions[q].covers);
  for (size_t a = 0; a < p->repair_count; a++)
    p->repairs[a].covers = plan_with_paths(p, p->repairs[a].covers);
}

void plan_ready(struct plan_problem *p)
{
  size_t count = 0;

  ready_covers(p);
  p->overlap = p->moving = false;
  free(p->touches);
  for (size_t a = 0; a < p->repair_count; a++) count += p->repairs[a].effect_count;
  p->touches = mem_array(count, sizeof *p->touches);
  count = 0;
  for (size_t h = 0; h < p->hypotheses; h++) {
    p->touched[h] = count;
    for (size_t a = 0; a < p->repair_count; a++)
      for (size_t i = 0; i < p->repairs[a].effect_count; i++) {
        const struct plan_effect *e = &p->repairs[a].effects[i];

        if (e->hypothesis != (int)h || e->clears + e->moves <= 0) continue;
        p->moving = p->moving || e->moves > 0;
        p->touches[count++] = (struct plan_touch){(int)a, e->clears, e->clears + e->moves};
      }
    p->overlap = p->overlap || count - p->touched[h] > 1;
  }
  p->touched[p->hypotheses] = count;
}

void plan_start(const struct plan_problem *p, struct plan_state *s)
{
  memset(s, 0, sizeof *s);
  memcpy(s->w, p->weight, sizeof s->w);
  s->open = p->open;
}

double plan_weight(const struct plan_problem *p, const struct plan_state *s)
{
  double sum = 0;

  for (size_t h = 0; h < p->hypotheses; h++) sum += s->w[h];
  return sum;
}

double plan_opening(const struct plan_problem *p, uint64_t needed, uint64_t open)
{
  double sum = 0;

  for (uint64_t left = needed & ~open; left; left &= left - 1) sum += p->covers[__builtin_ctzll(left)].cost;
  return sum;
}

/* Copies what is in use; the rest of the weights is never looked at. */
static void copy(const struct plan_problem *p, const struct plan_state *s, struct plan_state *to)
{
  memcpy(to->w, s->w, p->hypotheses * sizeof to->w[0]);
  to->done = s->done;
  to->open = s->open;
  to->results[0] = s->results[0];
  to->results[1] = s->results[1];
  to->asked = s->asked;
}

struct plan_move plan_giving_up(void) { return (struct plan_move){.kind = PLAN_GIVE_UP}; }

struct plan_move plan_asking(int question) { return (struct plan_move){.kind = PLAN_ASK, .at = question}; }

struct plan_move plan_repairing(int repair)
{
  return (struct plan_move){.kind = PLAN_REPAIR, .at = repair, .count = 1, .visit = {(signed char)repair}};
}

double plan_make(const struct plan_problem *p, const struct plan_state *s, const struct plan_move *m,
                 struct plan_state *to)
{
  double weight = plan_weight(p, s), cost = 0;

  copy(p, s, to);
  for (int n = 0; n < m->count; n++) {
    const struct plan_repair *r = &p->repairs[m->visit[n]];
    double moved[PLAN_MAX_HYPOTHESES], cleared = 0;

    cost += weight * (r->cost + plan_opening(p, r->covers, to->open));
    for (size_t i = 0; i < r->effect_count; i++) {
      const struct plan_effect *e = &r->effects[i];
      double w = to->w[e->hypothesis];

      cleared += w * e->clears;
      moved[i] = w * e->moves;
      to->w[e->hypothesis] = w * (1 - e->clears - e->moves);
    }
    for (size_t i = 0; i < r->effect_count; i++)
      if (moved[i] > 0) to->w[r->effects[i].to] += moved[i];
    cost += cleared * r->on_success;
    to->open |= r->covers;
    to->done |= UINT64_C(1) << m->visit[n];
  }
  to->open &= ~p->shut;
  return cost;
}

double plan_question_cost(const struct plan_problem *p, const struct plan_state *s,
                          const struct plan_question *q)
{
  return q->cost + plan_opening(p, q->covers, s->open);
}

static void note(struct plan_state *s, int q, unsigned value)
{
  s->results[q / 16] |= (uint64_t)value << q % 16 * 4;
  s->asked |= UINT32_C(1) << q;
}

double plan_outcome(const struct plan_problem *p, const struct plan_state *s, int q, int outcome,
                    struct plan_state *to)
{
  const struct plan_question *question = &p->questions[q];
  const double *chance = question->chance + (size_t)outcome * p->hypotheses;
  double sum = 0;

  copy(p, s, to);
  for (size_t h = 0; h < p->hypotheses; h++) sum += to->w[h] *= chance[h];
  if (question->runs) to->open &= ~(p->shut & ~question->covers);
  to->open |= question->covers;
  note(to, q, (unsigned)outcome + 1);
  return sum;
}

void plan_set_aside(struct plan_state *s, int q) { note(s, q, 15); }

/* Repairs that leave another hypothesis behind do not commute with questions, so the weights
 * themselves go into the key then, rounded so that another order of the same factors gives
 * the same figure. */
static uint64_t order_of(const struct plan_problem *p, const struct plan_state *s)
{
  uint64_t hash = 14695981039346656037u;

  for (size_t h = 0; h < p->hypotheses; h++) {
    uint64_t bits;

    memcpy(&bits, &s->w[h], sizeof bits);
    hash = (hash ^ ((bits + (1u << 15)) >> 16)) * 1099511628211u;
    hash ^= hash >> 29;
  }
  return hash;
}

struct plan_key plan_key_of(const struct plan_problem *p, const struct plan_state *s)
{
  return (struct plan_key){s->done, s->open, {s->results[0], s->results[1]}, p->moving ? order_of(p, s) : 0};
}

double plan_sequence(const struct plan_problem *p, const struct plan_state *s, const int *repairs,
                     size_t count)
{
  struct plan_state now = *s, next;
  double cost = 0;

  for (size_t i = 0; i < count; i++) {
    struct plan_move m = plan_repairing(repairs[i]);

    cost += plan_make(p, &now, &m, &next);
    now = next;
  }
  return cost + p->give_up * plan_weight(p, &now);
}
