/* base_policy.c - chance over cost under covers; see policy.h. */
#include "plan/policy.h"

#include <string.h>

/* Repairs that are best made one after another, with the covers they take. */
struct block { double chance, cost; int head, tail, next; };

/* Blocks in lists, the best first: one list per closed cover and one for the open bench. */
struct forest {
  struct block block[PLAN_MAX_REPAIRS];
  int after[PLAN_MAX_REPAIRS]; /* the repair that follows within its block */
  int list[PLAN_MAX_COVERS + 1];
};

enum { BENCH = PLAN_MAX_COVERS, NONE = -1 };

/* The sequence as it would be worked through, and what each step costs and clears. */
struct walk {
  size_t count;
  int repair[PLAN_MAX_REPAIRS];
  bool begins[PLAN_MAX_REPAIRS]; /* a new visit: everything before was tried */
  double cost[PLAN_MAX_REPAIRS], cleared[PLAN_MAX_REPAIRS], value[PLAN_MAX_REPAIRS + 1];
};

/* Weight that counts for a repair, as things are. */
static double credit(const struct plan_repair *r, const double *w)
{
  double sum = 0;

  for (size_t i = 0; i < r->effect_count; i++) sum += w[r->effects[i].hypothesis] * r->effects[i].credit;
  return sum;
}

static bool goes_first(const struct block *a, const struct block *b)
{
  return a->chance * b->cost > b->chance * a->cost;
}

static int merge(struct forest *f, int a, int b)
{
  int first = NONE, *end = &first;

  while (a != NONE && b != NONE) {
    bool take_b = goes_first(&f->block[b], &f->block[a]);
    int x = take_b ? b : a;

    *end = x;
    end = &f->block[x].next;
    if (take_b) b = *end;
    else a = *end;
  }
  *end = a != NONE ? a : b;
  return first;
}

static void insert(struct forest *f, int *list, int a)
{
  int *end = list;

  while (*end != NONE && !goes_first(&f->block[a], &f->block[*end])) end = &f->block[*end].next;
  f->block[a].next = *end;
  *end = a;
}

/* Sets a repair's block in the list of its innermost closed cover; covers that do not lie on
 * the way to that one count as part of its own cost. */
static void place(const struct plan_problem *p, uint64_t open, struct forest *f, int a, double chance,
                  bool folded)
{
  const struct plan_repair *r = &p->repairs[a];
  uint64_t closed = r->covers & ~open;
  int home = closed && !folded ? 63 - __builtin_clzll(closed) : BENCH;
  double extra = home == BENCH ? plan_opening(p, closed, 0) : plan_opening(p, closed & ~p->path[home], 0);

  f->block[a] = (struct block){chance, r->cost + extra, a, a, NONE};
  f->after[a] = NONE;
  insert(f, &f->list[home], a);
}

/* A cover goes before everything under it: it joins the first block, which takes in the next
 * ones as long as they better it. */
static void put_under(struct forest *f, int cover, double cost)
{
  struct block *first = &f->block[f->list[cover]];

  first->cost += cost;
  while (first->next != NONE && goes_first(&f->block[first->next], first)) {
    const struct block *b = &f->block[first->next];

    f->after[first->tail] = b->head;
    first->chance += b->chance;
    first->cost += b->cost;
    first->tail = b->tail;
    first->next = b->next;
  }
}

/* Puts everything still worth doing in order; returns the first block, NONE when nothing. */
static int build(const struct plan_problem *p, const double *w, uint64_t done, uint64_t open, bool folded,
                 struct forest *f)
{
  double least = 0;

  for (size_t h = 0; h < p->hypotheses && p->trifle > 0; h++) least += w[h] * p->trifle;
  for (size_t k = 0; k < p->cover_count; k++) f->list[k] = NONE;
  f->list[BENCH] = NONE;
  for (size_t a = 0; a < p->repair_count; a++) {
    double chance;

    if (done >> a & 1) continue;
    chance = credit(&p->repairs[a], w);
    if (chance > least) place(p, open, f, (int)a, chance, folded);
  }
  for (size_t k = p->cover_count; k-- > 0;) {
    int under = p->covers[k].under;
    int home = under >= 0 && !(open >> under & 1) ? under : BENCH;

    if (f->list[k] == NONE) continue;
    put_under(f, (int)k, p->covers[k].cost);
    f->list[home] = merge(f, f->list[home], f->list[k]);
  }
  return f->list[BENCH];
}

static int next_in_order(const struct forest *f, int *block, int repair)
{
  if (f->after[repair] != NONE) return f->after[repair];
  *block = f->block[*block].next;
  return *block != NONE ? f->block[*block].head : NONE;
}

/* The job as it is walked through. */
struct job { double w[PLAN_MAX_HYPOTHESES], left, untried; uint64_t done, open; int visit; };

/* With repairs made but not tried (visit of them): is it better to try now and, failing, to take the covers
 * off again for the next repair, than to make it untried? */
static bool try_first(const struct plan_problem *p, const struct job *j, int next)
{
  const struct plan_repair *r = &p->repairs[next];
  double again = plan_opening(p, r->covers & p->shut & j->open, 0);

  if (j->visit == PLAN_MAX_VISIT || !(p->shut & j->open)) return true;
  return j->untried * (r->cost + plan_opening(p, r->covers, j->open)) >= j->left * again;
}

/* Makes one repair in the walk. */
static void take(const struct plan_problem *p, struct job *j, int a, bool begins, struct walk *walk)
{
  const struct plan_repair *r = &p->repairs[a];
  double moved[PLAN_MAX_HYPOTHESES], cleared = 0;
  size_t n = walk->count++;

  for (size_t i = 0; i < r->effect_count; i++) {
    const struct plan_effect *e = &r->effects[i];
    double w = j->w[e->hypothesis];

    cleared += w * e->clears;
    moved[i] = w * e->moves;
    j->w[e->hypothesis] = w * (1 - e->clears - e->moves);
  }
  for (size_t i = 0; i < r->effect_count; i++)
    if (moved[i] > 0) j->w[r->effects[i].to] += moved[i];
  walk->repair[n] = a;
  walk->begins[n] = begins;
  walk->cost[n] = r->cost + plan_opening(p, r->covers, j->open);
  walk->cleared[n] = cleared;
  j->left -= cleared;
  j->untried += cleared;
  j->visit++;
  j->open |= r->covers;
  j->done |= UINT64_C(1) << a;
}

static void tried(const struct plan_problem *p, struct job *j)
{
  j->untried = 0;
  j->visit = 0;
  j->open &= ~p->shut;
}

/* The order is put together anew after every repair. */
static void walk_updating(const struct plan_problem *p, struct job *j, bool folded, struct walk *walk)
{
  struct forest f;
  bool begins = true;

  for (;;) {
    int block = build(p, j->w, j->done, j->open, folded, &f), a;

    if (block == NONE) return;
    a = f.block[block].head;
    if (!begins && try_first(p, j, a)) {
      bool shuts = (p->shut & j->open) != 0;

      tried(p, j);
      begins = true;
      if (shuts) continue; /* with the covers on again another repair may come first */
    }
    take(p, j, a, begins, walk);
    begins = false;
  }
}

/* The order is put together once; repairs that have lost their use meanwhile are passed over. */
static void walk_once(const struct plan_problem *p, struct job *j, struct walk *walk)
{
  struct forest f;
  int block = build(p, j->w, j->done, j->open, false, &f);
  bool begins = true;

  for (int a = block == NONE ? NONE : f.block[block].head; a != NONE; a = next_in_order(&f, &block, a)) {
    if (credit(&p->repairs[a], j->w) <= 0) continue;
    if (!begins && try_first(p, j, a)) {
      tried(p, j);
      begins = true;
    }
    take(p, j, a, begins, walk);
    begins = false;
  }
}

/* From the end to the start: sums of what is cleared later (nothing cancels), and the best
 * place to give up. Returns how many steps are made before giving up. */
static size_t value_back(const struct plan_problem *p, const struct job *j, struct walk *walk)
{
  double left[PLAN_MAX_REPAIRS + 1], visit[PLAN_MAX_REPAIRS + 1] = {0}, sum = 0;
  size_t stop = walk->count;

  for (size_t h = 0; h < p->hypotheses; h++) sum += j->w[h];
  left[walk->count] = sum;
  for (size_t i = walk->count; i-- > 0;) left[i] = left[i + 1] + walk->cleared[i];
  for (size_t i = 0; i < walk->count; i++) /* a visit is paid for by what it began with */
    visit[i] = i == 0 || walk->begins[i] ? left[i] : visit[i - 1];
  walk->value[walk->count] = p->give_up * left[walk->count];
  for (size_t i = walk->count; i-- > 0;) {
    double now = p->give_up * left[i];
    double on = walk->cost[i] * visit[i] + walk->cleared[i] * p->repairs[walk->repair[i]].on_success +
                walk->value[i + 1];

    if (now <= on) stop = i;
    walk->value[i] = now <= on ? now : on;
  }
  return stop;
}

static double order(const struct plan_problem *p, const struct plan_state *s, bool folded,
                    struct plan_move *first)
{
  struct walk walk;
  struct job j;
  size_t stop;

  walk.count = 0;
  memcpy(j.w, s->w, p->hypotheses * sizeof j.w[0]);
  j.left = plan_weight(p, s);
  j.untried = 0;
  j.visit = 0;
  j.done = s->done;
  j.open = s->open;
  if (!folded && (p->order_once || !(p->overlap || p->moving))) walk_once(p, &j, &walk);
  else walk_updating(p, &j, folded, &walk);
  stop = value_back(p, &j, &walk);
  if (first) {
    *first = stop > 0 ? plan_repairing(walk.repair[0]) : plan_giving_up();
    for (size_t i = 1; i < stop && !walk.begins[i]; i++)
      first->visit[first->count++] = (signed char)walk.repair[i];
  }
  return walk.value[0];
}

double plan_folded(const struct plan_problem *p, const struct plan_state *s, struct plan_move *first)
{
  return order(p, s, true, first);
}

double plan_base(const struct plan_problem *p, const struct plan_state *s, struct plan_move *first)
{
  return order(p, s, false, first);
}
