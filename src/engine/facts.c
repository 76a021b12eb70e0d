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

/* Where in a fact of one template its slots lie; -1 for one that is not asked for. */
struct places { int a, b, number, word, rule; };

static int place_of_slot(const struct deftemplate *template, const char *name)
{
  int at = 0;

  for (const struct templateSlot *slot = template->slotList; slot && name; slot = slot->next, at++)
    if (strcmp(ValueToString(slot->slotName), name) == 0) return at;
  return -1;
}

static const char *slot_word(const struct fact *fact, int at)
{
  const struct field *value = at < 0 ? NULL : &fact->theProposition.theFields[at];

  return value && value->type == SYMBOL ? ValueToString(value->value) : "";
}

static double slot_number(const struct fact *fact, int at)
{
  const struct field *value = at < 0 ? NULL : &fact->theProposition.theFields[at];

  if (!value) return 0;
  if (value->type == FLOAT) return ValueToDouble(value->value);
  return value->type == INTEGER ? (double)ValueToLong(value->value) : 0;
}

static int find_bands(const struct knowledge *k, const char *id)
{
  for (size_t i = 0; i < k->bands_count; i++)
    if (strcmp(k->bands[i].id, id) == 0) return (int)i;
  return -1;
}

/* rules-out says by a word of its own what kind of thing it is about: a is the place of that, b of
 * the id. */
static bool read_rules_out(struct engine *en, const struct fact *fact, const struct places *at,
                           struct conclusion *c)
{
  const char *kind = slot_word(fact, at->a), *id = slot_word(fact, at->b);

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

static bool read_shape(struct engine *en, const struct fact *fact, const struct shape *s,
                       const struct places *at, struct conclusion *c)
{
  c->kind = s->kind;
  if (s->a) c->a = knowledge_find(en->k, s->a_kind, slot_word(fact, at->a));
  if (s->b) c->b = knowledge_find(en->k, s->b_kind, slot_word(fact, at->b));
  c->number = slot_number(fact, at->number);
  if ((s->a && c->a < 0) || (s->b && c->b < 0) || !isfinite(c->number)) return false;
  if (s->kind == IMPLIES) {
    c->b = check_result(&en->k->checks[c->a], slot_word(fact, at->word));
    return c->b >= 0;
  }
  if (s->kind == JUDGE_BY) { /* what is neither is nothing to judge by */
    const char *bands = slot_word(fact, at->word);

    c->b = find_bands(en->k, bands);
    return c->b >= 0 || strcmp(bands, "spec-card") == 0;
  }
  if (s->word) {
    const char *word = slot_word(fact, at->word);
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

static struct places places_of(const struct deftemplate *template, const struct shape *s)
{
  return (struct places){.a = place_of_slot(template, s ? s->a : "kind"),
                         .b = place_of_slot(template, s ? s->b : "id"),
                         .number = place_of_slot(template, s ? s->number : NULL),
                         .word = place_of_slot(template, s ? s->word : NULL),
                         .rule = place_of_slot(template, "rule")};
}

/* The conclusions of one template; shape NULL is rules-out. Most facts are of other templates: going by
 * template leaves them alone. */
static void harvest_template(struct engine *en, void *template, const struct shape *shape,
                             struct conclusions *out)
{
  struct places at = places_of(template, shape);

  for (struct fact *fact = NULL; (fact = EnvGetNextFactInTemplate(en->env, template, fact));) {
    struct conclusion c = {.a = -1, .b = -1};
    void *items = out->items;

    c.rule = knowledge_find(en->k, ENTRY_RULE, slot_word(fact, at.rule));
    if (!(shape ? read_shape(en, fact, shape, &at, &c) : read_rules_out(en, fact, &at, &c))) continue;
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    out->items[out->count++] = c;
  }
}

enum { SHAPES = sizeof shapes / sizeof shapes[0] };

/* Are the facts the same as when they were collected last? Every fact gets a higher number than
 * all before it, so how many there are and the highest number tell. */
static bool is_unchanged(struct engine *en, void *const *templates)
{
  size_t count = 0;
  long long latest = 0;
  bool same;

  for (size_t i = 0; i <= SHAPES; i++)
    for (struct fact *fact = NULL;
         templates[i] && (fact = EnvGetNextFactInTemplate(en->env, templates[i], fact)); count++)
      if (fact->factIndex > latest) latest = fact->factIndex;
  same = count == en->drawn_facts && latest == en->drawn_latest;
  en->drawn_facts = count;
  en->drawn_latest = latest;
  return same;
}

void harvest(struct engine *en, struct conclusions *out)
{
  void *templates[SHAPES + 1], *items = out->items; /* rules-out comes last */
  struct conclusions *drawn = &en->drawn;

  for (size_t i = 0; i <= SHAPES; i++)
    templates[i] = EnvFindDeftemplate(en->env, i < SHAPES ? shapes[i].template : "rules-out");
  if (!is_unchanged(en, templates)) {
    drawn->count = 0;
    for (size_t i = 0; i <= SHAPES; i++)
      if (templates[i]) harvest_template(en, templates[i], i < SHAPES ? &shapes[i] : NULL, drawn);
    if (drawn->count > 1) qsort(drawn->items, drawn->count, sizeof *drawn->items, order);
  }
  mem_grow(&items, &out->room, drawn->count, sizeof *out->items);
  out->items = items;
  out->count = drawn->count;
  if (out->count > 0) memcpy(out->items, drawn->items, out->count * sizeof *out->items);
}
