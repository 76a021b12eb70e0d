/* memo.c - see memo.h. Open addressing; nothing is ever taken out singly. */
#include "plan/memo.h"

#include <stdlib.h>
#include <string.h>

static uint64_t stir(uint64_t h, uint64_t x)
{
  h = (h ^ x) * 0x9e3779b97f4a7c15u;
  return h ^ h >> 32;
}

static size_t slot_of(const struct memo *m, const struct plan_key *k, int kind, int depth)
{
  uint64_t h = stir((uint64_t)kind << 32 ^ (uint64_t)(unsigned)depth, k->done);

  h = stir(stir(stir(stir(h, k->open), k->results[0]), k->results[1]), k->order);
  return (size_t)h & (m->room - 1);
}

static bool same(const struct memo_entry *e, const struct plan_key *k, int kind, int depth)
{
  return e->kind == kind && e->depth == depth && e->key.done == k->done && e->key.open == k->open &&
         e->key.results[0] == k->results[0] && e->key.results[1] == k->results[1] && e->key.order == k->order;
}

static struct memo_entry *probe(const struct memo *m, const struct plan_key *key, int kind, int depth)
{
  size_t i = slot_of(m, key, kind, depth);

  while (m->entries[i].kind != 0 && !same(&m->entries[i], key, kind, depth)) i = (i + 1) & (m->room - 1);
  return &m->entries[i];
}

const struct memo_entry *memo_find(const struct memo *m, const struct plan_key *key, enum memo_kind kind,
                                   int depth)
{
  const struct memo_entry *e;

  if (m->count == 0) return NULL;
  e = probe(m, key, (int)kind, depth);
  return e->kind ? e : NULL;
}

static void grow(struct memo *m)
{
  struct memo bigger = {.room = m->room ? m->room * 2 : 256};

  bigger.entries = mem_array(bigger.room, sizeof *bigger.entries);
  for (size_t i = 0; i < m->room; i++) {
    const struct memo_entry *e = &m->entries[i];

    if (e->kind) *probe(&bigger, &e->key, e->kind, e->depth) = *e;
  }
  bigger.count = m->count;
  free(m->entries);
  *m = bigger;
}

void memo_put(struct memo *m, const struct memo_entry *e)
{
  struct memo_entry *at;

  if (2 * (m->count + 1) > m->room) grow(m);
  at = probe(m, &e->key, e->kind, e->depth);
  if (at->kind == 0) m->count++;
  *at = *e;
}

void memo_free(struct memo *m)
{
  free(m->entries);
  *m = (struct memo){0};
}
