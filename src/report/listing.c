/* listing.c - lists; see listing.h. Each kind gives one row per entry: id, name and a
 * short note for people, and an object for programs. */
#include "report/listing.h"

#include <string.h>

#include "base/text.h"

static struct json *texts(const struct texts *t)
{
  struct json *list = json_list();

  for (size_t i = 0; i < t->count; i++) json_push_text(list, t->items[i]);
  return list;
}

static struct json *ids(const struct refs *r)
{
  struct json *list = json_list();

  for (size_t i = 0; i < r->count; i++) json_push_text(list, r->ids[i]);
  return list;
}

static struct json *named(const char *id, const char *name)
{
  struct json *o = json_object();

  json_put_text(o, "id", id);
  json_put_text(o, "name", name);
  return o;
}

static void row(struct buf *out, const char *id, const char *name, const char *note)
{
  buf_addf(out, "%-34s %s%s%s\n", id, name, *note ? "; " : "", note);
}

static void text_faults(struct buf *out, const struct knowledge *k)
{
  for (size_t i = 0; i < k->fault_count; i++) row(out, k->faults[i].id, k->faults[i].name, k->faults[i].system);
}

static struct json *json_faults(const struct knowledge *k)
{
  struct json *list = json_list();

  for (size_t i = 0; i < k->fault_count; i++) {
    const struct fault *f = &k->faults[i];
    struct json *o = named(f->id, f->name);

    json_put_text(o, "system", f->system);
    json_put_text(o, "sort", f->sort);
    json_put(o, "needs", ids(&f->needs));
    json_put_text(o, "is", f->is);
    json_put_text(o, "shows", f->shows);
    json_put_text(o, "repair", f->repair_id);
    json_push(list, o);
  }
  return list;
}

static void text_checks(struct buf *out, const struct knowledge *k)
{
  for (size_t i = 0; i < k->check_count; i++) {
    const struct check *c = &k->checks[i];

    row(out, c->id, c->name, c->kind == KIND_MEASURE ? c->unit_name : "");
    buf_add(out, "   ");
    for (size_t r = 0; r < c->results.count; r++) buf_addf(out, "%s %s", r ? " |" : "", c->results.items[r]);
    buf_add(out, "\n");
  }
}

static struct json *json_checks(const struct knowledge *k)
{
  struct json *list = json_list();

  for (size_t i = 0; i < k->check_count; i++) {
    const struct check *c = &k->checks[i];
    struct json *o = named(c->id, c->name), *choices = json_list();

    json_put_text(o, "system", c->system);
    json_put_text(o, "kind", c->kind_id);
    json_put_text(o, "ask", c->ask);
    for (size_t r = 0; r < c->results.count; r++) {
      struct json *choice = json_object();

      json_put_text(choice, "result", c->results.items[r]);
      json_put_text(choice, "label", c->labels.items[r]);
      json_put_text(choice, "means", c->means.items[r]);
      json_push(choices, choice);
    }
    json_put(o, "results", choices);
    if (c->kind == KIND_MEASURE) {
      json_put_text(o, "quantity", c->quantity_id);
      json_put_text(o, "unit", c->unit_name);
      if (c->possible.count == 2) {
        struct json *possible = json_object();

        json_put_number(possible, "lowest", c->possible.items[0]);
        json_put_number(possible, "highest", c->possible.items[1]);
        json_put(o, "possible", possible);
      }
    }
    json_put_number(o, "minutes", c->minutes);
    json_put(o, "needs", ids(&c->needs));
    json_put(o, "off", ids(&c->off));
    json_put_text(o, "engine", c->engine);
    json_put(o, "also_called", texts(&c->also_called));
    json_push(list, o);
  }
  return list;
}

static void text_complaints(struct buf *out, const struct knowledge *k)
{
  for (size_t i = 0; i < k->complaint_count; i++) row(out, k->complaints[i].id, k->complaints[i].name, "");
}

static struct json *json_complaints(const struct knowledge *k)
{
  struct json *list = json_list();

  for (size_t i = 0; i < k->complaint_count; i++) {
    const struct complaint *c = &k->complaints[i];
    struct json *o = named(c->id, c->name);

    json_put_text(o, "ask", c->ask);
    json_put(o, "says", texts(&c->says));
    json_put(o, "needs", ids(&c->needs));
    json_push(list, o);
  }
  return list;
}

static void text_machines(struct buf *out, const struct knowledge *k)
{
  for (size_t i = 0; i < k->class_count; i++) row(out, k->classes[i].id, k->classes[i].name, "");
}

static struct json *json_machines(const struct knowledge *k)
{
  struct json *list = json_list();

  for (size_t i = 0; i < k->class_count; i++) {
    const struct machine_class *m = &k->classes[i];
    struct json *o = named(m->id, m->name);

    json_put(o, "also_called", texts(&m->also_called));
    json_put(o, "has", ids(&m->has));
    json_put(o, "may", ids(&m->may));
    json_push(list, o);
  }
  return list;
}

static void text_features(struct buf *out, const struct knowledge *k)
{
  for (size_t i = 0; i < k->feature_count; i++) row(out, k->features[i].id, k->features[i].name, k->features[i].group);
}

static struct json *json_features(const struct knowledge *k)
{
  struct json *list = json_list();

  for (size_t i = 0; i < k->feature_count; i++) {
    struct json *o = named(k->features[i].id, k->features[i].name);

    json_put_text(o, "group", k->features[i].group);
    json_put_bool(o, "one_of", k->features[i].one_of);
    json_put_text(o, "ask", k->features[i].ask);
    json_push(list, o);
  }
  return list;
}

/* Kinds that need no more than id, name and a note. */
#define PLAIN(kind, array, number, name_member, note_member)                                  \
  static void text_##kind(struct buf *out, const struct knowledge *k)                         \
  {                                                                                           \
    for (size_t i = 0; i < k->number; i++)                                                    \
      row(out, k->array[i].id, k->array[i].name_member, k->array[i].note_member);             \
  }                                                                                           \
  static struct json *json_##kind(const struct knowledge *k)                                  \
  {                                                                                           \
    struct json *list = json_list();                                                          \
    for (size_t i = 0; i < k->number; i++)                                                    \
      json_push(list, named(k->array[i].id, k->array[i].name_member));                        \
    return list;                                                                              \
  }

PLAIN(covers, covers, cover_count, name, may_damage)
PLAIN(repairs, repairs, repair_count, name, reuse)
PLAIN(cautions, cautions, caution_count, text, defer_to)
PLAIN(sources, sources, source_count, title, status)
PLAIN(rules, rules, rule_count, reason, origin.file)

static void text_units(struct buf *out, const struct knowledge *k)
{
  size_t count;
  const struct unit *u = unit_table(&count);

  (void)k;
  for (size_t i = 0; i < count; i++) row(out, u[i].name, quantity_name(u[i].quantity), u[i].basis);
}

static struct json *json_units(const struct knowledge *k)
{
  struct json *list = json_list();
  size_t count;
  const struct unit *u = unit_table(&count);

  (void)k;
  for (size_t i = 0; i < count; i++) {
    struct json *o = named(u[i].name, u[i].name);

    json_put_text(o, "quantity", quantity_name(u[i].quantity));
    json_put_text(o, "basis", u[i].basis);
    json_push(list, o);
  }
  return list;
}

static const struct kind {
  const char *name;
  void (*text)(struct buf *, const struct knowledge *);
  struct json *(*json)(const struct knowledge *);
} kinds[] = {
    {"faults", text_faults, json_faults},       {"checks", text_checks, json_checks},
    {"complaints", text_complaints, json_complaints}, {"machines", text_machines, json_machines},
    {"features", text_features, json_features}, {"covers", text_covers, json_covers},
    {"repairs", text_repairs, json_repairs},    {"cautions", text_cautions, json_cautions},
    {"sources", text_sources, json_sources},    {"rules", text_rules, json_rules},
    {"units", text_units, json_units}};

enum { KINDS = sizeof kinds / sizeof kinds[0] };

static const struct kind *find_kind(const char *name, struct err *e)
{
  const char *names[KINDS], *near;

  for (size_t i = 0; i < KINDS; i++)
    if (strcmp(kinds[i].name, name) == 0) return &kinds[i];
  for (size_t i = 0; i < KINDS; i++) names[i] = kinds[i].name;
  near = text_nearest(name, names, KINDS);
  err_set(e, EX_USAGE, NULL, 0, "there is no list of \"%.40s\"%s%s%s See \"pullcord list --help\".", name,
          near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  return NULL;
}

int listing_text(struct buf *out, const struct knowledge *k, const char *kind, struct err *e)
{
  const struct kind *found = find_kind(kind, e);

  if (!found) return e->status;
  found->text(out, k);
  return 0;
}

int listing_json(struct json **out, const struct knowledge *k, const char *kind, struct err *e)
{
  const struct kind *found = find_kind(kind, e);

  if (!found) return e->status;
  *out = json_object();
  json_put_text(*out, "pullcord", "list-1");
  json_put(*out, kind, found->json(k));
  return 0;
}
