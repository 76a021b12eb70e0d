/* facts.c - facts into the engine and conclusions out of it. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "engine/clips.h"

void *fact_assert(struct engine *en, const struct want *w)
{
  void *template = EnvFindDeftemplate(en->env, w->template);
  struct fact *fact = template ? EnvCreateFact(en->env, template) : NULL;

  if (!fact) return NULL;
  for (size_t i = 0; i < w->count; i++) {
    const struct want_slot *s = &w->slots[i];
    DATA_OBJECT value;

    if (s->word) {
      SetType(value, SYMBOL);
      SetValue(value, EnvAddSymbol(en->env, s->word));
    } else if (s->whole) {
      SetType(value, INTEGER);
      SetValue(value, EnvAddLong(en->env, (long long)s->number));
    } else {
      SetType(value, FLOAT);
      SetValue(value, EnvAddDouble(en->env, s->number));
    }
    EnvPutFactSlot(en->env, fact, s->slot, &value);
  }
  EnvAssignFactSlotDefaults(en->env, fact);
  return EnvAssert(en->env, fact);
}

/* How a template of conclusions is read. */
struct shape {
  const char *template;
  enum conclusion_kind kind;
  const char *a;
  enum entry_kind a_kind;
  const char *b;
  enum entry_kind b_kind;
  const char *number, *word;
};

static const struct shape shapes[] = {
    {"implies", IMPLIES, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, "strength", "result"},
    {"weakens", WEAKENS, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, "by", NULL},
    {"clash", CLASH, "check-a", ENTRY_CHECK, "check-b", ENTRY_CHECK, NULL, NULL},
    {"speaks", SPEAKS, "fault", ENTRY_FAULT, NULL, ENTRY_FAULT, "decibans", NULL},
    {"unsafe", UNSAFE, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, NULL, NULL},
    {"pointless", POINTLESS, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, NULL, NULL},
    {"ask-first", ASK_FIRST, "check", ENTRY_CHECK, "fault", ENTRY_FAULT, NULL, NULL},
    {"warn", WARN, "caution", ENTRY_CAUTION, NULL, ENTRY_CAUTION, NULL, NULL},
    {"counts-as", COUNTS_AS, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, "value", NULL},
    {"judge-by", JUDGE_BY, "check", ENTRY_CHECK, NULL, ENTRY_CHECK, NULL, "bands"},
    {"hand-over", HAND_OVER, NULL, ENTRY_CHECK, NULL, ENTRY_CHECK, NULL, "to"},
    {"advise", ADVISE, NULL, ENTRY_CHECK, NULL, ENTRY_CHECK, NULL, "about"}};

static const char *slot_word(struct engine *en, void *fact, const char *slot)
{
  DATA_OBJECT value;

  if (!slot || !EnvGetFactSlot(en->env, fact, slot, &value)) return "";
  return GetType(value) == SYMBOL ? DOToString(value) : "";
}

static double slot_number(struct engine *en, void *fact, const char *slot)
{
  DATA_OBJECT value;

  if (!slot || !EnvGetFactSlot(en->env, fact, slot, &value)) return 0;
  if (GetType(value) == FLOAT) return DOToDouble(value);
  return GetType(value) == INTEGER ? (double)DOToLong(value) : 0;
}

static int find_bands(const struct knowledge *k, const char *id)
{
  for (size_t i = 0; i < k->bands_count; i++)
    if (strcmp(k->bands[i].id, id) == 0) return (int)i;
  return -1;
}

/* rules-out says by a word of its own what kind of thing it is about. */
static bool read_rules_out(struct engine *en, void *fact, struct conclusion *c)
{
  const char *kind = slot_word(en, fact, "kind"), *id = slot_word(en, fact, "id");

  if (strcmp(kind, "fault") == 0) {
    c->kind = RULES_OUT_FAULT;
    c->a = knowledge_find(en->k, ENTRY_FAULT, id);
  } else if (strcmp(kind, "check") == 0) {
    c->kind = RULES_OUT_CHECK;
    c->a = knowledge_find(en->k, ENTRY_CHECK, id);
  } else if (strcmp(kind, "complaint") == 0) {
    c->kind = RULES_OUT_COMPLAINT;
    c->a = knowledge_find(en->k, ENTRY_COMPLAINT, id);
  } else {
    c->kind = RULES_OUT_BANDS;
    c->a = find_bands(en->k, id);
  }
  return c->a >= 0;
}

static bool read_shape(struct engine *en, void *fact, const struct shape *s, struct conclusion *c)
{
  c->kind = s->kind;
  if (s->a) c->a = knowledge_find(en->k, s->a_kind, slot_word(en, fact, s->a));
  if (s->b) c->b = knowledge_find(en->k, s->b_kind, slot_word(en, fact, s->b));
  c->number = slot_number(en, fact, s->number);
  if ((s->a && c->a < 0) || (s->b && c->b < 0) || !isfinite(c->number)) return false;
  if (s->kind == IMPLIES) {
    c->b = check_result(&en->k->checks[c->a], slot_word(en, fact, s->word));
    return c->b >= 0;
  }
  if (s->kind == JUDGE_BY) { /* what is neither is nothing to judge by */
    const char *bands = slot_word(en, fact, s->word);

    c->b = find_bands(en->k, bands);
    return c->b >= 0 || strcmp(bands, "spec-card") == 0;
  }
  if (s->word) {
    const char *word = slot_word(en, fact, s->word);
    size_t n = strlen(word);

    if (n >= sizeof c->word) n = sizeof c->word - 1;
    memcpy(c->word, word, n);
  }
  return true;
}

static int order(const void *x, const void *y)
{
  const struct conclusion *p = x, *q = y;
  int d = (int)p->kind - (int)q->kind;

  if (d == 0) d = p->a - q->a;
  if (d == 0) d = p->b - q->b;
  if (d == 0) d = p->rule - q->rule;
  if (d == 0) d = (p->number > q->number) - (p->number < q->number);
  return d ? d : strcmp(p->word, q->word);
}

/* The conclusions of one template; shape NULL is rules-out. Most facts are of other templates: going by
 * template leaves them alone. */
static void harvest_template(struct engine *en, const char *name, const struct shape *shape,
                             struct conclusions *out)
{
  void *template = EnvFindDeftemplate(en->env, name), *fact = NULL;

  while (template && (fact = EnvGetNextFactInTemplate(en->env, template, fact))) {
    struct conclusion c = {.a = -1, .b = -1};
    void *items = out->items;

    c.rule = knowledge_find(en->k, ENTRY_RULE, slot_word(en, fact, "rule"));
    if (!(shape ? read_shape(en, fact, shape, &c) : read_rules_out(en, fact, &c))) continue;
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    out->items[out->count++] = c;
  }
}

void harvest(struct engine *en, struct conclusions *out)
{
  out->count = 0;
  harvest_template(en, "rules-out", NULL, out);
  for (size_t i = 0; i < sizeof shapes / sizeof shapes[0]; i++)
    harvest_template(en, shapes[i].template, &shapes[i], out);
  if (out->count > 1) qsort(out->items, out->count, sizeof *out->items, order);
}
