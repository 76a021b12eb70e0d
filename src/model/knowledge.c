/* knowledge.c - finding entries; see knowledge.h. */
#include "model/knowledge.h"

#include <stdlib.h>
#include <string.h>

/* Where the entries of each kind lie: first entry, count and size of one. Every entry
 * struct begins with its id, so one walk serves all. */
struct shelf { const char *first; size_t count, size; };

static struct shelf shelf_of(const struct knowledge *k, enum entry_kind kind)
{
#define SHELF(array, number) \
  (struct shelf){(const char *)(array), (number), sizeof *(array)}
  switch (kind) {
  case ENTRY_SOURCE: return SHELF(k->sources, k->source_count);
  case ENTRY_FEATURE: return SHELF(k->features, k->feature_count);
  case ENTRY_CLASS: return SHELF(k->classes, k->class_count);
  case ENTRY_CAUTION: return SHELF(k->cautions, k->caution_count);
  case ENTRY_COVER: return SHELF(k->covers, k->cover_count);
  case ENTRY_COMPLAINT: return SHELF(k->complaints, k->complaint_count);
  case ENTRY_CHECK: return SHELF(k->checks, k->check_count);
  case ENTRY_FAULT: return SHELF(k->faults, k->fault_count);
  case ENTRY_REPAIR: return SHELF(k->repairs, k->repair_count);
  case ENTRY_RULE: return SHELF(k->rules, k->rule_count);
  case ENTRY_SETTING: return SHELF(k->settings, k->setting_count);
  case ENTRY_SAME_WORDS: return SHELF(k->same_words, k->same_words_count);
  }
#undef SHELF
  return (struct shelf){NULL, 0, 0};
}

static const char *id_at(struct shelf s, size_t i)
{
  const char *id;

  memcpy(&id, s.first + i * s.size, sizeof id);
  return id;
}

/* Open addressing over all kinds together; at -1 marks an empty place. */
struct id_index {
  size_t mask;
  struct id_place { size_t hash; int at; enum entry_kind kind; } places[];
};

static size_t hash(enum entry_kind kind, const char *id)
{
  size_t h = 1469598103934665603u ^ (size_t)kind; /* FNV-1a */

  for (; *id; id++) h = (h ^ (unsigned char)*id) * 1099511628211u;
  return h ^ h >> 29;
}

/* The place where the entry is, or where it would go. */
static struct id_place *place_of(const struct knowledge *k, enum entry_kind kind, const char *id)
{
  struct shelf s = shelf_of(k, kind);
  size_t h = hash(kind, id);

  for (size_t i = h;; i++) {
    struct id_place *p = &k->index->places[i & k->index->mask];

    if (p->at < 0) {
      p->hash = h;
      return p;
    }
    if (p->hash == h && p->kind == kind && strcmp(id_at(s, (size_t)p->at), id) == 0) return p;
  }
}

void knowledge_index(struct knowledge *k)
{
  size_t total = 0, size = 64;

  for (int kind = ENTRY_SOURCE; kind <= ENTRY_SAME_WORDS; kind++)
    total += shelf_of(k, (enum entry_kind)kind).count;
  while (size < total * 2) size *= 2;
  k->index = arena_new(&k->arena, sizeof *k->index + size * sizeof k->index->places[0]);
  k->index->mask = size - 1;
  for (size_t i = 0; i < size; i++) k->index->places[i].at = -1;
  for (int kind = ENTRY_SOURCE; kind <= ENTRY_SAME_WORDS; kind++) {
    struct shelf s = shelf_of(k, (enum entry_kind)kind);

    for (size_t i = 0; i < s.count; i++) {
      struct id_place *p = place_of(k, (enum entry_kind)kind, id_at(s, i));

      if (p->at < 0) {
        p->at = (int)i;
        p->kind = (enum entry_kind)kind;
      }
    }
  }
}

int knowledge_find(const struct knowledge *k, enum entry_kind kind, const char *id)
{
  return place_of(k, kind, id)->at;
}

void knowledge_ids(const struct knowledge *k, enum entry_kind kind, const char ***out, size_t *count)
{
  struct shelf s = shelf_of(k, kind);

  *out = mem_array(s.count, sizeof **out);
  *count = s.count;
  for (size_t i = 0; i < s.count; i++) (*out)[i] = id_at(s, i);
}

int check_result(const struct check *c, const char *result)
{
  for (size_t i = 0; i < c->results.count; i++)
    if (strcmp(c->results.items[i], result) == 0) return (int)i;
  return -1;
}

double knowledge_setting(const struct knowledge *k, const char *id, double otherwise)
{
  int i = knowledge_find(k, ENTRY_SETTING, id);

  return i < 0 ? otherwise : k->settings[i].value;
}

/* First sign whose (check, complaint) is not below the given one. */
static size_t lower_sign(const struct knowledge *k, int check, int complaint)
{
  size_t lo = 0, hi = k->sign_count;

  while (lo < hi) {
    size_t mid = lo + (hi - lo) / 2;
    const struct sign *s = &k->signs[mid];

    if (s->check < check || (s->check == check && s->complaint < complaint)) lo = mid + 1;
    else hi = mid;
  }
  return lo;
}

void knowledge_signs_of_check(const struct knowledge *k, int check, size_t *first, size_t *last)
{
  *first = lower_sign(k, check, -1);
  *last = lower_sign(k, check + 1, -1);
}

void knowledge_signs_of_complaint(const struct knowledge *k, int complaint, size_t *first, size_t *last)
{
  *first = lower_sign(k, -1, complaint);
  *last = lower_sign(k, -1, complaint + 1);
}

const char *basis_name(enum basis b)
{
  static const char *const names[] = {"none", "published", "common practice", "memory", "estimate"};

  return names[b];
}

static const struct { const char *word; double value; } chances[] = {
    {"never", 0.01}, {"seldom", 0.08}, {"sometimes", 0.25}, {"even", 0.5},
    {"often", 0.7},  {"usually", 0.87}, {"always", 0.97}};

double chance_word(const char *word)
{
  for (size_t i = 0; i < sizeof chances / sizeof chances[0]; i++)
    if (strcmp(word, chances[i].word) == 0) return chances[i].value;
  return 0;
}

const char *chance_word_at(size_t i, double *value)
{
  if (i >= sizeof chances / sizeof chances[0]) return NULL;
  *value = chances[i].value;
  return chances[i].word;
}
