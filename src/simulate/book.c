/* book.c - what holds for every machine; see book.h. */
#include "simulate/book.h"

#include <stdlib.h>
#include <string.h>

/* The covers of a list with those over them, as bits. */
static uint64_t covers_of(const struct knowledge *k, const struct refs *off)
{
  uint64_t set = 0;

  for (size_t i = 0; i < off->count; i++)
    for (int c = off->at[i]; c >= 0 && !(set >> c & 1); c = k->covers[c].under) set |= UINT64_C(1) << c;
  return set;
}

/* FNV-1a, 64 bits. */
static uint64_t name_of(const char *id)
{
  uint64_t h = UINT64_C(14695981039346656037);

  for (; *id; id++) h = (h ^ (unsigned char)*id) * UINT64_C(1099511628211);
  return h;
}

static void add_up(const double *chance, int grades, double *upto)
{
  double sum = 0;

  for (int g = 0; g < grades; g++) upto[g] = sum += chance[g];
  upto[grades - 1] = 1;
}

static void add_check(struct sim_book *b, struct casenet *n, size_t i, struct sim_link **links, size_t *room)
{
  const struct check *check = &b->k->checks[i];
  struct sim_check *c = &b->checks[i];
  struct net_finding f;

  casenet_finding(n, (int)i, &f);
  *c = (struct sim_check){.grades = f.grades, .first = i ? c[-1].last : 0, .minutes = check->minutes,
                          .covers = covers_of(b->k, &check->off), .name = name_of(check->id)};
  c->last = c->first + f.link_count;
  add_up(f.leak, f.grades, c->leak_upto);
  mem_grow((void **)links, room, c->last, sizeof **links);
  for (size_t l = 0; l < f.link_count; l++) {
    int fault = n->fault_of[f.links[l].fault];

    (*links)[c->first + l].fault = fault >= 0 ? fault : (int)b->fault_count - 1;
    add_up(f.links[l].chance, f.grades, (*links)[c->first + l].upto);
  }
}

/* A machine of which nothing is known can have every fault, so its casenet has every link. */
static void add_checks(struct sim_book *b)
{
  struct conclusions nothing = {0};
  struct bench_case any;
  struct casenet n;
  struct sim_link *links = NULL;
  size_t room = 0;

  case_begin(&any, b->k);
  casenet_build(&n, b->k, &any, &nothing);
  b->checks = arena_array(&b->arena, b->check_count, sizeof *b->checks);
  for (size_t i = 0; i < b->check_count; i++) add_check(b, &n, i, &links, &room);
  b->links = links;
  casenet_free(&n);
  case_free(&any);
}

/* The same links by fault. */
static void turn_round(struct sim_book *b)
{
  size_t links = b->check_count ? b->checks[b->check_count - 1].last : 0;
  size_t *next = mem_array(b->fault_count, sizeof *next);

  b->touches = arena_array(&b->arena, links, sizeof *b->touches);
  b->touch_first = arena_array(&b->arena, b->fault_count + 1, sizeof *b->touch_first);
  for (size_t l = 0; l < links; l++) b->touch_first[b->links[l].fault + 1]++;
  for (size_t f = 0; f < b->fault_count; f++) {
    next[f] = b->touch_first[f];
    b->touch_first[f + 1] += b->touch_first[f];
  }
  for (size_t c = 0; c < b->check_count; c++)
    for (size_t l = b->checks[c].first; l < b->checks[c].last; l++)
      b->touches[next[b->links[l].fault]++] = (struct sim_touch){(int)c, l, 1 - b->links[l].upto[0]};
  free(next);
}

static void add_repairs(struct sim_book *b)
{
  const struct knowledge *k = b->k;
  size_t n = b->fault_count, last = n - 1;
  double rate = knowledge_setting(k, "shop-rate", 0.7);

  b->repair = arena_array(&b->arena, n, sizeof *b->repair);
  b->repair_minutes = arena_array(&b->arena, n, sizeof *b->repair_minutes);
  b->parts = arena_array(&b->arena, n, sizeof *b->parts);
  b->repair_covers = arena_array(&b->arena, n, sizeof *b->repair_covers);
  b->use = arena_array(&b->arena, n, sizeof *b->use);
  for (size_t f = 0; f < last; f++) {
    const struct repair *r = &k->repairs[k->faults[f].repair];

    b->repair[f] = k->faults[f].repair;
    b->repair_minutes[f] = r->minutes;
    b->parts[f] = r->parts_cost / rate;
    b->repair_covers[f] = covers_of(k, &r->off);
    b->use[f] = strcmp(k->faults[f].sort, "use") == 0;
  }
  b->repair[last] = -1;
  b->repair_minutes[last] = knowledge_setting(k, "look-further", 120);
}

int sim_book_fill(struct sim_book *b, const struct knowledge *k, struct err *e)
{
  *b = (struct sim_book){.k = k, .fault_count = k->fault_count + 1, .check_count = k->check_count};
  if (k->cover_count > SIM_MOST_COVERS)
    return err_set(e, EX_DATAERR, NULL, 0, "jobs cannot be simulated with more than %d covers.",
                   SIM_MOST_COVERS);
  b->turn = knowledge_setting(k, "turn-minutes", 0);
  b->prove = knowledge_setting(k, "prove-sound", 10);
  b->repair_at = knowledge_setting(k, "repair-at", 0.8);
  b->blame_at = knowledge_setting(k, "blame-at", 0.35);
  b->sound_at = knowledge_setting(k, "sound-at", 0.6);
  add_checks(b);
  turn_round(b);
  add_repairs(b);
  return 0;
}

void sim_book_free(struct sim_book *b)
{
  arena_free(&b->arena);
  free(b->links);
  *b = (struct sim_book){0};
}
