/* schema.c - see schema.h. */
#include "knowledge/schema.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/text.h"

static unsigned int type_bit(const char *name)
{
  if (strcmp(name, "SYMBOL") == 0) return TYPE_SYMBOL;
  if (strcmp(name, "STRING") == 0) return TYPE_STRING;
  if (strcmp(name, "NUMBER") == 0) return TYPE_NUMBER;
  if (strcmp(name, "FLOAT") == 0) return TYPE_NUMBER;
  if (strcmp(name, "INTEGER") == 0) return TYPE_INTEGER;
  return 0;
}

enum { MAX_TEMPLATES = 200 };

/* Words that differ mostly do so in their first letter. */
static bool same(const char *a, const char *b) { return *a == *b && strcmp(a, b) == 0; }

static void read_facet(struct slot *s, const struct node *facet)
{
  const char *head = node_head(facet);
  const struct node *value = facet->first ? facet->first->next : NULL;

  if (strcmp(head, "type") == 0) {
    s->types = 0;
    for (; value; value = value->next) s->types |= type_bit(value->text);
  } else if (strcmp(head, "default") == 0) {
    if (node_is_word(value, "?NONE")) s->required = true;
    else s->otherwise = value;
  } else if (strcmp(head, "allowed-symbols") == 0) {
    s->allowed = value;
  } else if (strcmp(head, "range") == 0 && value && value->next) {
    s->low = value->number;
    s->high = value->next->number;
  }
}

static void read_slot(struct slot *s, const struct node *form)
{
  s->multi = strcmp(node_head(form), "multislot") == 0;
  s->name = form->first->next ? form->first->next->text : "";
  s->types = TYPE_SYMBOL | TYPE_STRING | TYPE_NUMBER;
  s->low = -HUGE_VAL;
  s->high = HUGE_VAL;
  if (!form->first->next) return;
  for (const struct node *f = form->first->next->next; f; f = f->next)
    if (f->kind == NODE_LIST) read_facet(s, f);
}

static void read_template(struct schema *s, struct arena *arena, const struct node *form)
{
  struct template *t;
  void *items = s->items;
  const struct node *name = form->first->next;

  mem_grow(&items, &s->room, s->count + 1, sizeof *s->items);
  s->items = items;
  t = &s->items[s->count++];
  t->name = name->text;
  t->slot_count = 0;
  t->slots = arena_array(arena, node_count(form), sizeof *t->slots);
  for (const struct node *n = name->next; n; n = n->next)
    if (n->kind == NODE_LIST && strstr(node_head(n), "slot")) read_slot(&t->slots[t->slot_count++], n);
}

/* The engine works out what stands in brackets in a default: only (this-rule) may. Depth is
 * bounded by the reader, so this recursion is too. */
static bool check_template(const struct node *form, const char *file, int depth, struct problems *p)
{
  bool good = node_count(form) <= SCHEMA_MAX_PARTS;

  if (!good)
    problem_add(p, true, "too-large", file, form->line, "more than 64 parts in one bracket of a template.");
  for (const struct node *n = form->first; n && good; n = n->next) {
    if (n->kind != NODE_LIST) continue;
    if (depth >= 2 && (strcmp(node_head(n), "this-rule") != 0 || n->first->next)) {
      problem_add(p, true, "function", file, n->line, "a template may not call \"%s\".",
                  *node_head(n) ? node_head(n) : "?");
      good = false;
    } else {
      good = check_template(n, file, depth + 1, p);
    }
  }
  return good;
}

void schema_add(struct schema *s, struct arena *arena, const char *file, const struct node *forms,
                struct problems *p)
{
  for (const struct node *n = forms->first; n; n = n->next) {
    const struct node *name = n->kind == NODE_LIST && n->first ? n->first->next : NULL;

    if (strcmp(node_head(n), "deftemplate") != 0 || !name || name->kind != NODE_WORD)
      problem_add(p, true, "syntax", file, n->line,
                  "only (deftemplate ...) may stand in a file of templates.");
    else if (schema_find(s, name->text))
      problem_add(p, true, "duplicate-id", file, n->line, "template \"%s\" is defined twice.",
                  name->text);
    else if (!text_is_id(name->text))
      problem_add(p, true, "bad-id", file, n->line,
                  "\"%s\" is not an id: lower-case letters, digits and single hyphens only.", name->text);
    else if (s->count >= MAX_TEMPLATES)
      problem_add(p, true, "too-large", file, n->line, "more than 200 templates.");
    else if (check_template(n, file, 0, p))
      read_template(s, arena, n);
  }
}

const struct template *schema_find(const struct schema *s, const char *name)
{
  for (size_t i = 0; i < s->count; i++)
    if (same(s->items[i].name, name)) return &s->items[i];
  return NULL;
}

const struct slot *template_slot(const struct template *t, const char *name)
{
  for (size_t i = 0; i < t->slot_count; i++)
    if (same(t->slots[i].name, name)) return &t->slots[i];
  return NULL;
}

static const char *type_words(unsigned int types)
{
  if (types == TYPE_STRING) return "a text in double quotes";
  if (types == TYPE_SYMBOL) return "a word without quotes";
  if (types == TYPE_INTEGER) return "a whole number";
  if (types == TYPE_NUMBER) return "a number";
  return "a word or a number";
}

static bool type_fits(const struct slot *s, const struct node *v)
{
  switch (v->kind) {
  case NODE_STRING: return (s->types & TYPE_STRING) != 0;
  case NODE_WORD: return (s->types & TYPE_SYMBOL) != 0;
  case NODE_NUMBER:
    if (s->types & TYPE_NUMBER) return true;
    return (s->types & TYPE_INTEGER) != 0 && floor(v->number) == v->number;
  case NODE_LIST: return false;
  }
  return false;
}

static bool word_allowed(const struct slot *s, const char *word)
{
  for (const struct node *a = s->allowed; a; a = a->next)
    if (same(a->text, word)) return true;
  return s->allowed == NULL;
}

static void say_allowed(const struct slot *s, const char *file, const struct node *v,
                        struct problems *p)
{
  struct buf b = {0};

  for (const struct node *a = s->allowed; a; a = a->next)
    buf_addf(&b, "%s%s", b.len ? ", " : "", a->text);
  problem_add(p, true, "slot-value", file, v->line, "slot %s cannot be \"%s\"; it is one of: %s.",
              s->name, v->text, b.text);
  buf_free(&b);
}

static bool check_values(const struct slot *s, const char *file, const struct node *given,
                         struct problems *p)
{
  const struct node *v = given->first->next;
  size_t before = p->serious;

  if (!s->multi && (!v || v->next))
    problem_add(p, true, "slot-value", file, given->line, "slot %s takes exactly one value.", s->name);
  for (; v; v = v->next) {
    if (!type_fits(s, v))
      problem_add(p, true, "slot-value", file, v->line, "slot %s takes %s, not %s%s%s", s->name,
                  type_words(s->types), v->kind == NODE_LIST ? "a list: is a \")\" missing before it?" : "\"", v->text,
                  v->kind == NODE_LIST ? "" : "\".");
    else if (v->kind == NODE_WORD && !word_allowed(s, v->text))
      say_allowed(s, file, v, p);
    else if (v->kind == NODE_NUMBER && (v->number < s->low || v->number > s->high))
      problem_add(p, true, "slot-value", file, v->line, "slot %s must lie between %g and %g, not %s.",
                  s->name, s->low, s->high, v->text);
  }
  return p->serious == before;
}

/* An unknown slot: name the nearest one. */
static void say_unknown_slot(const struct template *t, const char *file, const struct node *given,
                             struct problems *p)
{
  const char *names[SCHEMA_MAX_PARTS];
  const char *word = node_head(given), *near;

  for (size_t i = 0; i < t->slot_count; i++) names[i] = t->slots[i].name;
  near = text_nearest(word, names, t->slot_count);
  if (*word && given->first->next && given->first->next->kind == NODE_LIST) /* an entry of its own */
    problem_add(p, true, "slot-name", file, given->line,
                "a %s has no slot \"%s\". Does the entry before this one lack its last \")\"?", t->name, word);
  else if (*word)
    problem_add(p, true, "slot-name", file, given->line, "a %s has no slot \"%s\"%s%s%s", t->name,
                word, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  else
    problem_add(p, true, "syntax", file, given->line,
                "\"%s\" stands inside a %s but belongs to no slot: write (slot value).", given->text,
                t->name);
}

const struct node *fact_values(const struct node *fact, const char *slot)
{
  for (const struct node *n = fact->first ? fact->first->next : NULL; n; n = n->next)
    if (strcmp(node_head(n), slot) == 0) return n->first->next;
  return NULL;
}

/* The number of the slot, or -1. Facts mostly have their slots in the order of the template, so
 * the look begins where the last one was found. */
static int slot_from(const struct template *t, const char *name, size_t start)
{
  for (size_t i = start; i < t->slot_count; i++)
    if (same(t->slots[i].name, name)) return (int)i;
  for (size_t i = 0; i < start; i++)
    if (same(t->slots[i].name, name)) return (int)i;
  return -1;
}

static void check_slots(const struct template *t, const char *file, const struct node *fact,
                        struct given_slots *given, struct problems *p)
{
  size_t next = 0;

  *given = (struct given_slots){{NULL}};
  for (const struct node *n = fact->first->next; n; n = n->next) {
    int at = slot_from(t, node_head(n), next);

    if (at < 0) {
      say_unknown_slot(t, file, n, p);
    } else if (given->at[at]) {
      problem_add(p, true, "slot-name", file, n->line, "slot %s is given twice.", t->slots[at].name);
    } else {
      check_values(&t->slots[at], file, n, p);
      given->at[at] = n;
      next = (size_t)at + 1;
    }
  }
  for (size_t i = 0; i < t->slot_count; i++)
    if (t->slots[i].required && (!given->at[i] || !given->at[i]->first->next))
      problem_add(p, true, "missing-slot", file, fact->line, "this %s lacks its %s.", t->name,
                  t->slots[i].name);
}

const struct template *schema_check(const struct schema *s, const char *file, const struct node *fact,
                                    struct given_slots *given, struct problems *p)
{
  const struct template *t = schema_find(s, node_head(fact));
  size_t before = p->serious;

  if (!t) {
    problem_add(p, true, "template", file, fact->line,
                "\"%s\" is not a kind of fact. See rules/templates/knowledge.clp for the kinds.",
                node_head(fact));
    return NULL;
  }
  if (node_count(fact) > SCHEMA_MAX_PARTS) {
    problem_add(p, true, "too-large", file, fact->line, "this %s has more than 64 slots.", t->name);
    return NULL;
  }
  check_slots(t, file, fact, given, p);
  return p->serious == before ? t : NULL;
}

void schema_free(struct schema *s)
{
  free(s->items);
  *s = (struct schema){0};
}
