/* fill.c - see fill.h. One table per template says which slot goes to which member. */
#include "knowledge/fill.h"

#include <stdlib.h>
#include <string.h>

#include "knowledge/link.h"
#include "knowledge/schema.h"

enum field_kind { FIELD_TEXT, FIELD_TEXTS, FIELD_REFS, FIELD_NUMBER, FIELD_CHANCE, FIELD_NUMBERS,
                  FIELD_CHANCES, FIELD_YES };

struct field { const char *slot; enum field_kind kind; size_t offset; };

#define F(type, member, name, kind) {name, kind, offsetof(struct type, member)}
#define END {NULL, FIELD_TEXT, 0}

static const struct field source_fields[] = {
    F(source, id, "id", FIELD_TEXT), F(source, title, "title", FIELD_TEXT),
    F(source, edition, "edition", FIELD_TEXT), F(source, kind, "kind", FIELD_TEXT),
    F(source, status, "status", FIELD_TEXT), F(source, note, "note", FIELD_TEXT), END};
static const struct field feature_fields[] = {
    F(feature, id, "id", FIELD_TEXT), F(feature, name, "name", FIELD_TEXT),
    F(feature, group, "group", FIELD_TEXT), F(feature, ask, "ask", FIELD_TEXT),
    F(feature, one_of, "one-of", FIELD_YES), F(feature, brings, "brings", FIELD_REFS),
    F(feature, bars, "bars", FIELD_REFS), END};
static const struct field class_fields[] = {
    F(machine_class, id, "id", FIELD_TEXT), F(machine_class, name, "name", FIELD_TEXT),
    F(machine_class, has, "has", FIELD_REFS), F(machine_class, may, "may", FIELD_REFS),
    F(machine_class, also_called, "also-called", FIELD_TEXTS),
    F(machine_class, worth, "worth", FIELD_NUMBER), END};
static const struct field caution_fields[] = {
    F(caution, id, "id", FIELD_TEXT), F(caution, text, "text", FIELD_TEXT),
    F(caution, defer_to, "defer-to", FIELD_TEXT), F(caution, needs, "needs", FIELD_REFS), END};
static const struct field cover_fields[] = {
    F(cover, id, "id", FIELD_TEXT), F(cover, name, "name", FIELD_TEXT),
    F(cover, under_id, "under", FIELD_TEXT), F(cover, may_damage, "may-damage", FIELD_TEXT),
    F(cover, needs, "needs", FIELD_REFS), F(cover, cautions, "cautions", FIELD_REFS),
    F(cover, tools, "tools", FIELD_TEXTS), F(cover, refit, "refit", FIELD_TEXTS),
    F(cover, minutes_off, "minutes-off", FIELD_NUMBER),
    F(cover, minutes_on, "minutes-on", FIELD_NUMBER),
    F(cover, run_without, "run-without", FIELD_YES), END};
static const struct field complaint_fields[] = {
    F(complaint, id, "id", FIELD_TEXT), F(complaint, name, "name", FIELD_TEXT),
    F(complaint, ask, "ask", FIELD_TEXT), F(complaint, runs, "runs", FIELD_TEXT),
    F(complaint, says, "says", FIELD_TEXTS), F(complaint, near, "near", FIELD_REFS),
    F(complaint, needs, "needs", FIELD_REFS),
    F(complaint, anyway, "anyway", FIELD_CHANCE), END};
static const struct field owner_fields[] = {
    F(owner_says, complaint_id, "complaint", FIELD_TEXT), F(owner_says, words, "words", FIELD_TEXTS), END};
static const struct field check_fields[] = {
    F(check, id, "id", FIELD_TEXT), F(check, name, "name", FIELD_TEXT),
    F(check, system, "system", FIELD_TEXT), F(check, ask, "ask", FIELD_TEXT),
    F(check, kind_id, "kind", FIELD_TEXT), F(check, engine, "engine", FIELD_TEXT),
    F(check, quantity_id, "quantity", FIELD_TEXT), F(check, unit_name, "unit", FIELD_TEXT),
    F(check, tolerance, "tolerance", FIELD_NUMBER), F(check, possible, "possible", FIELD_NUMBERS),
    F(check, destroys, "destroys", FIELD_TEXT),
    F(check, results, "results", FIELD_TEXTS), F(check, labels, "labels", FIELD_TEXTS),
    F(check, means, "means", FIELD_TEXTS), F(check, anyway, "anyway", FIELD_CHANCES),
    F(check, minutes, "minutes", FIELD_NUMBER), F(check, tools, "tools", FIELD_TEXTS),
    F(check, steps, "steps", FIELD_TEXTS), F(check, mistakes, "mistakes", FIELD_TEXTS),
    F(check, also_called, "also-called", FIELD_TEXTS), F(check, off, "off", FIELD_REFS),
    F(check, needs, "needs", FIELD_REFS), F(check, cautions, "cautions", FIELD_REFS), END};
static const struct field bands_fields[] = {
    F(bands, id, "id", FIELD_TEXT), F(bands, check_id, "check", FIELD_TEXT),
    F(bands, unit_name, "unit", FIELD_TEXT), F(bands, note, "note", FIELD_TEXT),
    F(bands, needs, "needs", FIELD_REFS), F(bands, results, "results", FIELD_TEXTS),
    F(bands, limits, "limits", FIELD_NUMBERS), END};
static const struct field fault_fields[] = {
    F(fault, id, "id", FIELD_TEXT), F(fault, name, "name", FIELD_TEXT),
    F(fault, system, "system", FIELD_TEXT), F(fault, sort, "sort", FIELD_TEXT),
    F(fault, is, "is", FIELD_TEXT), F(fault, comes_about, "comes-about", FIELD_TEXT),
    F(fault, shows, "shows", FIELD_TEXT), F(fault, repair_id, "repair", FIELD_TEXT),
    F(fault, proof, "proof", FIELD_TEXT), F(fault, needs, "needs", FIELD_REFS),
    F(fault, base_rate, "base-rate", FIELD_CHANCE),
    F(fault, looks_like, "looks-like", FIELD_TEXTS), END};
static const struct field base_rate_fields[] = {
    F(base_rate, fault_id, "fault", FIELD_TEXT), F(base_rate, class_id, "class", FIELD_TEXT),
    F(base_rate, chance, "chance", FIELD_CHANCE), END};
static const struct field leads_fields[] = {
    F(sign, fault_id, "fault", FIELD_TEXT), F(sign, complaint_id, "complaint", FIELD_TEXT),
    F(sign, chance, "chance", FIELD_CHANCE), END};
static const struct field sign_fields[] = {
    F(sign, fault_id, "fault", FIELD_TEXT), F(sign, check_id, "check", FIELD_TEXT),
    F(sign, result_id, "result", FIELD_TEXT), F(sign, why, "why", FIELD_TEXT),
    F(sign, chance, "chance", FIELD_CHANCE), END};
static const struct field repair_fields[] = {
    F(repair, id, "id", FIELD_TEXT), F(repair, name, "name", FIELD_TEXT),
    F(repair, reuse, "reuse", FIELD_TEXT), F(repair, minutes, "minutes", FIELD_NUMBER),
    F(repair, parts_cost, "parts-cost", FIELD_NUMBER), F(repair, parts, "parts", FIELD_TEXTS),
    F(repair, consumables, "consumables", FIELD_TEXTS), F(repair, tools, "tools", FIELD_TEXTS),
    F(repair, steps, "steps", FIELD_TEXTS), F(repair, off, "off", FIELD_REFS),
    F(repair, cautions, "cautions", FIELD_REFS), END};
static const struct field setting_fields[] = {
    F(setting, id, "id", FIELD_TEXT), F(setting, why, "why", FIELD_TEXT),
    F(setting, value, "value", FIELD_NUMBER), END};
static const struct field no_tool_fields[] = {
    F(no_tool, name, "name", FIELD_TEXT), F(no_tool, borrow, "borrow", FIELD_NUMBER), END};
static const struct field retired_fields[] = {
    F(retired, id, "id", FIELD_TEXT), F(retired, replaced_by, "replaced-by", FIELD_TEXT),
    F(retired, why, "why", FIELD_TEXT), END};
static const struct field same_words_fields[] = {
    F(same_words, id, "id", FIELD_TEXT), F(same_words, sort, "sort", FIELD_TEXT),
    F(same_words, of, "of", FIELD_TEXT),
    F(same_words, opposite_id, "opposite", FIELD_TEXT), F(same_words, words, "words", FIELD_TEXTS), END};

/* Where the entries of a template go. */
struct target {
  const char *kind;
  const struct field *fields;
  size_t size, origin, array, count;
};

#define T(name, type, fields, arr, num)                                                    \
  {name, fields, sizeof(struct type), offsetof(struct type, origin),                       \
   offsetof(struct knowledge, arr), offsetof(struct knowledge, num)}

static const struct target targets[] = {
    T("source", source, source_fields, sources, source_count),
    T("feature", feature, feature_fields, features, feature_count),
    T("machine-class", machine_class, class_fields, classes, class_count),
    T("caution", caution, caution_fields, cautions, caution_count),
    T("cover", cover, cover_fields, covers, cover_count),
    T("complaint", complaint, complaint_fields, complaints, complaint_count),
    T("owner-says", owner_says, owner_fields, owners, owner_count),
    T("check", check, check_fields, checks, check_count),
    T("bands", bands, bands_fields, bands, bands_count),
    T("fault", fault, fault_fields, faults, fault_count),
    T("base-rate", base_rate, base_rate_fields, base_rates, base_rate_count),
    T("leads", sign, leads_fields, signs, sign_count),
    T("sign", sign, sign_fields, signs, sign_count),
    T("repair", repair, repair_fields, repairs, repair_count),
    T("setting", setting, setting_fields, settings, setting_count),
    T("no-tool", no_tool, no_tool_fields, no_tools, no_tool_count),
    T("retired", retired, retired_fields, retired, retired_count),
    T("same-words", same_words, same_words_fields, same_words, same_words_count)};

enum { TARGETS = sizeof targets / sizeof targets[0] };

_Static_assert((int)TARGETS <= (int)FILL_KINDS, "more kinds of entries than there is room for");
_Static_assert(sizeof check_fields / sizeof check_fields[0] <= (size_t)FILL_MOST_FIELDS,
               "more fields than there is room for"); /* no entry has more than a check */

static size_t values_count(const struct node *v)
{
  size_t n = 0;

  for (; v; v = v->next) n++;
  return n;
}

static double chance_of(const char *file, const struct node *v, struct problems *p)
{
  double x = v->kind == NODE_NUMBER ? v->number : chance_word(v->text);

  if (v->kind == NODE_WORD && x <= 0)
    problem_add(p, true, "chance", file, v->line,
                "\"%s\" is not a chance. Write never, seldom, sometimes, even, often, usually, "
                "always, or a number between 0 and 1.", v->text);
  else if (x <= 0 || x >= 1)
    problem_add(p, true, "chance", file, v->line,
                "a chance of %s is certainty, which no sign gives: write a number between 0 and 1, "
                "both ends left out.", v->text);
  return x > 0 && x < 1 ? x : 0.5;
}

static void fill_texts(struct arena *a, struct texts *t, const struct node *v)
{
  t->items = arena_array(a, values_count(v), sizeof *t->items);
  for (; v; v = v->next) t->items[t->count++] = v->text;
}

static void fill_refs(struct arena *a, struct refs *r, const struct node *v)
{
  r->ids = arena_array(a, values_count(v), sizeof *r->ids);
  r->at = arena_array(a, values_count(v), sizeof *r->at);
  for (; v; v = v->next) r->ids[r->count++] = v->text;
}

static void fill_numbers(struct arena *a, struct numbers *n, const char *file, const struct node *v,
                         bool chances, struct problems *p)
{
  n->items = arena_array(a, values_count(v), sizeof *n->items);
  for (; v; v = v->next) n->items[n->count++] = chances ? chance_of(file, v, p) : v->number;
}

static void fill_field(struct arena *a, char *member, enum field_kind kind, const char *file,
                       const struct node *v, struct problems *p)
{
  double number;
  bool yes;

  switch (kind) {
  case FIELD_TEXT: memcpy(member, &v->text, sizeof v->text); break;
  case FIELD_TEXTS: fill_texts(a, (struct texts *)(void *)member, v); break;
  case FIELD_REFS: fill_refs(a, (struct refs *)(void *)member, v); break;
  case FIELD_NUMBERS: fill_numbers(a, (struct numbers *)(void *)member, file, v, false, p); break;
  case FIELD_CHANCES: fill_numbers(a, (struct numbers *)(void *)member, file, v, true, p); break;
  case FIELD_NUMBER: memcpy(member, &v->number, sizeof number); break;
  case FIELD_CHANCE:
    number = chance_of(file, v, p);
    memcpy(member, &number, sizeof number);
    break;
  case FIELD_YES:
    yes = strcmp(v->text, "yes") == 0;
    memcpy(member, &yes, sizeof yes);
    break;
  }
}

static enum basis basis_of(const char *word)
{
  if (strcmp(word, "published") == 0) return BASIS_PUBLISHED;
  if (strcmp(word, "common-practice") == 0) return BASIS_COMMON_PRACTICE;
  if (strcmp(word, "memory") == 0) return BASIS_MEMORY;
  return BASIS_ESTIMATE;
}

/* The first value given for a slot, NULL when there is none. */
static const struct node *value_of(const struct given_slots *given, int slot)
{
  return slot >= 0 && given->at[slot] ? given->at[slot]->first->next : NULL;
}

static void fill_origin(struct origin *o, const struct fill_plan *plan, const struct given_slots *given,
                        const char *file, const struct node *fact)
{
  const struct node *basis = value_of(given, plan->basis), *source = value_of(given, plan->source);
  const struct node *place = value_of(given, plan->place);

  o->file = file;
  o->line = fact->line;
  o->basis = basis ? basis_of(basis->text) : BASIS_NONE;
  o->source = -1;
  o->source_id = source ? source->text : NULL;
  o->place = place ? place->text : NULL;
}

/* Members that a missing slot leaves empty must still be readable texts. */
static void empty_texts(char *entry, const struct field *fields)
{
  static const char *const empty = "";

  for (; fields->slot; fields++)
    if (fields->kind == FIELD_TEXT) memcpy(entry + fields->offset, &empty, sizeof empty);
}

/* leads and sign share one array, so they share its room too. */
static size_t room_of(size_t t)
{
  return strcmp(targets[t].kind, "sign") == 0 ? t - 1 : t;
}

static int slot_number(const struct template *form, const char *name)
{
  const struct slot *slot = template_slot(form, name);

  return slot ? (int)(slot - form->slots) : -1;
}

static void make_plan(struct fill_plan *plan, const struct template *form, const struct field *fields)
{
  plan->form = form;
  for (size_t i = 0; fields[i].slot; i++) plan->slots[i] = slot_number(form, fields[i].slot);
  plan->basis = slot_number(form, "basis");
  plan->source = slot_number(form, "source");
  plan->place = slot_number(form, "place");
}

/* Which of the targets takes facts of this template; TARGETS when none does. */
static size_t target_of(struct fill *f, const struct template *form)
{
  for (size_t t = 0; t < TARGETS; t++)
    if (f->plans[t].form == form) return t;
  for (size_t t = 0; t < TARGETS; t++)
    if (strcmp(targets[t].kind, form->name) == 0) {
      make_plan(&f->plans[t], form, targets[t].fields);
      return t;
    }
  return TARGETS;
}

static void fill_entry(struct fill *f, size_t t, char *entry, const struct given_slots *given,
                       const char *file, const struct node *fact, struct problems *p)
{
  const struct target *target = &targets[t];
  const struct fill_plan *plan = &f->plans[t];

  memset(entry, 0, target->size);
  empty_texts(entry, target->fields);
  for (size_t i = 0; target->fields[i].slot; i++) {
    const struct field *d = &target->fields[i];
    const struct node *v = value_of(given, plan->slots[i]);

    if (!v && plan->slots[i] >= 0) v = plan->form->slots[plan->slots[i]].otherwise;
    if (v) fill_field(&f->k->arena, entry + d->offset, d->kind, file, v, p);
  }
  fill_origin((struct origin *)(void *)(entry + target->origin), plan, given, file, fact);
}

void fill_fact(struct fill *f, const struct template *form, const struct given_slots *given,
               const char *file, const struct node *fact, struct problems *p)
{
  size_t t = target_of(f, form), count;
  char *base = (char *)f->k;
  void *items;

  if (t == TARGETS) {
    problem_add(p, true, "template", file, fact->line,
                "a \"%s\" belongs to a case: the program or a rule makes it, and no file of facts may.",
                form->name);
    return;
  }
  memcpy(&items, base + targets[t].array, sizeof items);
  memcpy(&count, base + targets[t].count, sizeof count);
  mem_grow(&items, &f->room[room_of(t)], count + 1, targets[t].size);
  fill_entry(f, t, (char *)items + count * targets[t].size, given, file, fact, p);
  count++;
  memcpy(base + targets[t].array, &items, sizeof items);
  memcpy(base + targets[t].count, &count, sizeof count);
}

/* Moves the grown arrays into the arena, so that one call frees everything. */
static void settle(struct fill *f)
{
  for (size_t t = 0; t < TARGETS; t++) {
    char *base = (char *)f->k;
    void *items, *kept;
    size_t count;

    if (room_of(t) != t) continue;
    memcpy(&items, base + targets[t].array, sizeof items);
    memcpy(&count, base + targets[t].count, sizeof count);
    if (!items) continue;
    kept = arena_array(&f->k->arena, count, targets[t].size);
    memcpy(kept, items, count * targets[t].size);
    free(items);
    memcpy(base + targets[t].array, &kept, sizeof kept);
  }
}

void fill_finish(struct fill *f, struct problems *p)
{
  settle(f);
  knowledge_index(f->k);
  link_all(f->k, p);
}
