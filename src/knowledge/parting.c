/* parting.c - see parting.h. */
#include "knowledge/parting.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* What one fault shows at one check: chance of each result, the fault alone. */
struct row {
  int check;
  double *chance;
};

struct rows {
  struct row *items;
  size_t count, room;
};

struct parting {
  const struct knowledge *k;
  struct arena arena;
  struct rows *by_fault; /* each sorted by check */
  bool *can;             /* class * feature_count + feature: has it or may have it */
};

/* Signs come sorted by check and fault, so those of one row stand together. */
static void lay_out(struct parting *t)
{
  const struct knowledge *k = t->k;

  for (size_t i = 0; i < k->sign_count; i++) {
    const struct sign *s = &k->signs[i];
    struct rows *r = &t->by_fault[s->fault];
    void *items = r->items;

    if (s->check < 0) continue;
    if (r->count == 0 || r->items[r->count - 1].check != s->check) {
      mem_grow(&items, &r->room, r->count + 1, sizeof *r->items);
      r->items = items;
      r->items[r->count].check = s->check;
      r->items[r->count].chance = arena_array(&t->arena, k->checks[s->check].results.count, sizeof(double));
      r->items[r->count++].chance[0] = 1;
    }
    r->items[r->count - 1].chance[s->result] += s->chance;
    r->items[r->count - 1].chance[0] -= s->chance;
  }
}

struct parting *parting_open(const struct knowledge *k)
{
  struct parting *t = mem_new(sizeof *t);

  t->k = k;
  t->by_fault = mem_array(k->fault_count, sizeof *t->by_fault);
  t->can = mem_array(k->class_count * k->feature_count, sizeof *t->can);
  for (size_t c = 0; c < k->class_count; c++) {
    const struct machine_class *m = &k->classes[c];

    for (size_t i = 0; i < m->has.count; i++) t->can[c * k->feature_count + (size_t)m->has.at[i]] = true;
    for (size_t i = 0; i < m->may.count; i++) t->can[c * k->feature_count + (size_t)m->may.at[i]] = true;
  }
  lay_out(t);
  return t;
}

void parting_close(struct parting *t)
{
  for (size_t i = 0; i < t->k->fault_count; i++) free(t->by_fault[i].items);
  free(t->by_fault);
  free(t->can);
  arena_free(&t->arena);
  free(t);
}

/* Two features that no machine has both: a choice of one, or one bars the other. */
static bool at_odds(const struct knowledge *k, int a, int b)
{
  const struct feature *x = &k->features[a], *y = &k->features[b];

  if (a == b) return false;
  if (x->one_of && y->one_of && strcmp(x->group, y->group) == 0) return true;
  for (size_t i = 0; i < x->bars.count; i++)
    if (x->bars.at[i] == b) return true;
  for (size_t i = 0; i < y->bars.count; i++)
    if (y->bars.at[i] == a) return true;
  return false;
}

bool parting_fits(const struct parting *t, int machine_class, const struct refs *const *needs, size_t count)
{
  const bool *can = t->can + (size_t)machine_class * t->k->feature_count;

  for (size_t i = 0; i < count; i++)
    for (size_t x = 0; x < needs[i]->count; x++) {
      if (!can[needs[i]->at[x]]) return false;
      for (size_t j = 0; j <= i; j++)
        for (size_t y = 0; y < needs[j]->count; y++)
          if (at_odds(t->k, needs[i]->at[x], needs[j]->at[y])) return false;
    }
  return true;
}

bool parting_common(const struct parting *t, const struct refs *const *needs, size_t count)
{
  for (size_t c = 0; c < t->k->class_count; c++)
    if (parting_fits(t, (int)c, needs, count)) return true;
  return false;
}

/* Chance that the result is at most `upto`, with what shows anyway beside the fault. */
static double at_most(const struct check *c, const struct row *row, size_t upto)
{
  double anyway = 1, fault = row ? 0 : 1;

  for (size_t g = upto + 1; g < c->results.count; g++) anyway -= c->anyway.items[g - 1];
  for (size_t g = 0; row && g <= upto; g++) fault += row->chance[g];
  return anyway * fault; /* the result is the higher of the two */
}

static double distance(const struct check *c, const struct row *a, const struct row *b)
{
  double sum = 0, before_a = 0, before_b = 0;

  for (size_t g = 0; g < c->results.count; g++) {
    double upto_a = at_most(c, a, g), upto_b = at_most(c, b, g);

    sum += fabs((upto_a - before_a) - (upto_b - before_b));
    before_a = upto_a;
    before_b = upto_b;
  }
  return sum / 2;
}

static const struct row *row_of(const struct parting *t, int fault, int check)
{
  const struct rows *r = &t->by_fault[fault];

  for (size_t i = 0; i < r->count; i++)
    if (r->items[i].check == check) return &r->items[i];
  return NULL;
}

double parting_distance(const struct parting *t, int check, int a, int b)
{
  return distance(&t->k->checks[check], row_of(t, a, check), row_of(t, b, check));
}

/* The best parting check among those that either fault shows at; others part nothing. */
static void part(const struct parting *t, struct parted *p)
{
  const struct rows *x = &t->by_fault[p->a], *y = &t->by_fault[p->b];
  const struct knowledge *k = t->k;

  for (size_t i = 0, j = 0; i < x->count || j < y->count;) {
    const struct row *a = i < x->count ? &x->items[i] : NULL, *b = j < y->count ? &y->items[j] : NULL;
    int check = !b || (a && a->check <= b->check) ? a->check : b->check;
    const struct refs *needs[3] = {&k->faults[p->a].needs, &k->faults[p->b].needs, &k->checks[check].needs};
    double d;

    if (a && a->check != check) a = NULL;
    if (b && b->check != check) b = NULL;
    d = distance(&k->checks[check], a, b);
    if (d > p->distance && parting_common(t, needs, 3)) {
      p->distance = d;
      p->check = check;
    }
    i += a != NULL;
    j += b != NULL;
  }
}

static int least_first(const void *x, const void *y)
{
  const struct parted *a = x, *b = y;

  if (a->distance != b->distance) return a->distance < b->distance ? -1 : 1;
  return a->a != b->a ? a->a - b->a : a->b - b->b;
}

void parting_pairs(const struct parting *t, struct parted **out, size_t *count)
{
  const struct knowledge *k = t->k;
  struct parted *pairs = NULL;
  size_t room = 0, n = 0;

  for (size_t b = 0; b < k->fault_count; b++)
    for (size_t a = 0; a < b; a++) {
      const struct refs *needs[2] = {&k->faults[a].needs, &k->faults[b].needs};
      void *items = pairs;

      if (!parting_common(t, needs, 2)) continue;
      mem_grow(&items, &room, n + 1, sizeof *pairs);
      pairs = items;
      pairs[n] = (struct parted){(int)a, (int)b, -1, 0};
      part(t, &pairs[n++]);
    }
  if (n > 1) qsort(pairs, n, sizeof *pairs, least_first);
  *out = pairs;
  *count = n;
}

void parting_groups(const struct parted *pairs, size_t count, size_t fault_count, int *group)
{
  for (size_t f = 0; f < fault_count; f++) group[f] = -1;
  for (size_t i = 0; i < count && pairs[i].distance < PARTING_LEAST; i++) {
    int a = pairs[i].a, b = pairs[i].b, low, other;

    if (group[a] < 0) group[a] = a;
    if (group[b] < 0) group[b] = b;
    low = group[a] < group[b] ? group[a] : group[b];
    other = group[a] < group[b] ? group[b] : group[a];
    for (size_t f = 0; f < fault_count; f++)
      if (group[f] == other) group[f] = low;
  }
}
