/* link.c - see link.h. */
#include "knowledge/link.h"

#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "base/text.h"

static const struct { enum entry_kind kind; const char *name; } kinds[] = {
    {ENTRY_SOURCE, "source"},       {ENTRY_FEATURE, "feature"}, {ENTRY_CLASS, "machine class"},
    {ENTRY_CAUTION, "caution"},     {ENTRY_COVER, "cover"},     {ENTRY_COMPLAINT, "complaint"},
    {ENTRY_CHECK, "check"},         {ENTRY_FAULT, "fault"},     {ENTRY_REPAIR, "repair"},
    {ENTRY_SETTING, "setting"},   {ENTRY_SAME_WORDS, "list of same words"}};

static const char *kind_name(enum entry_kind kind)
{
  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
    if (kinds[i].kind == kind) return kinds[i].name;
  return "rule";
}

static int resolve(const struct knowledge *k, enum entry_kind kind, const char *id,
                   const struct origin *o, struct problems *p)
{
  int at = knowledge_find(k, kind, id);

  if (at < 0) {
    const char **ids, *near;
    size_t count;

    if (p->count >= PROBLEMS_KEPT) { /* nobody would see the nearest, and looking takes time */
      problem_add(p, true, "unknown-id", o->file, o->line, "there is no \"%s\".", id);
      return at;
    }
    knowledge_ids(k, kind, &ids, &count);
    near = text_nearest(id, ids, count);
    problem_add(p, true, "unknown-id", o->file, o->line, "there is no %s \"%s\"%s%s%s",
                kind_name(kind), id, near ? "; did you mean \"" : "", near ? near : "",
                near ? "\"?" : ".");
    free(ids);
  }
  return at;
}

static void resolve_refs(const struct knowledge *k, enum entry_kind kind, struct refs *r,
                         const struct origin *o, struct problems *p)
{
  for (size_t i = 0; i < r->count; i++) r->at[i] = resolve(k, kind, r->ids[i], o, p);
}

static void resolve_origin(const struct knowledge *k, struct origin *o, struct problems *p)
{
  if (o->source_id) o->source = resolve(k, ENTRY_SOURCE, o->source_id, o, p);
  if (o->basis == BASIS_PUBLISHED && !o->source_id)
    problem_add(p, true, "missing-basis", o->file, o->line,
                "the basis is published, but no source is named. Name it, or say common-practice.");
  if (o->basis == BASIS_PUBLISHED && o->source >= 0 &&
      strcmp(k->sources[o->source].status, "memory") == 0)
    problem_add(p, true, "missing-basis", o->file, o->line,
                "source %s is only remembered, so the basis is memory, not published.", o->source_id);
}

/* Ids of one kind: well formed, used once, not retired. */
static void check_ids(const struct knowledge *k, enum entry_kind kind, struct problems *p,
                      const struct origin *(*origin)(const struct knowledge *, size_t))
{
  const char **ids;
  size_t count;

  knowledge_ids(k, kind, &ids, &count);
  for (size_t i = 0; i < count; i++) {
    const struct origin *o = origin(k, i);
    int first = knowledge_find(k, kind, ids[i]);

    if (!text_is_id(ids[i]))
      problem_add(p, true, "bad-id", o->file, o->line,
                  "\"%s\" is not an id: lower-case letters, digits and single hyphens only.", ids[i]);
    if ((size_t)first != i)
      problem_add(p, true, "duplicate-id", o->file, o->line, "%s \"%s\" is already at %s:%d.",
                  kind_name(kind), ids[i], origin(k, (size_t)first)->file,
                  origin(k, (size_t)first)->line);
    for (size_t r = 0; r < k->retired_count; r++)
      if (strcmp(k->retired[r].id, ids[i]) == 0)
        problem_add(p, true, "retired-id", o->file, o->line,
                    "id \"%s\" was retired (%s:%d) and must not be used again. Give yours another id.",
                    ids[i], k->retired[r].origin.file, k->retired[r].origin.line);
  }
  free(ids);
}

#define ORIGIN_OF(name, array) \
  static const struct origin *name(const struct knowledge *k, size_t i) { return &k->array[i].origin; }
ORIGIN_OF(source_origin, sources)
ORIGIN_OF(feature_origin, features)
ORIGIN_OF(class_origin, classes)
ORIGIN_OF(caution_origin, cautions)
ORIGIN_OF(cover_origin, covers)
ORIGIN_OF(complaint_origin, complaints)
ORIGIN_OF(check_origin, checks)
ORIGIN_OF(fault_origin, faults)
ORIGIN_OF(repair_origin, repairs)
ORIGIN_OF(setting_origin, settings)
ORIGIN_OF(same_words_origin, same_words)

static void check_all_ids(const struct knowledge *k, struct problems *p)
{
  check_ids(k, ENTRY_SOURCE, p, source_origin);
  check_ids(k, ENTRY_FEATURE, p, feature_origin);
  check_ids(k, ENTRY_CLASS, p, class_origin);
  check_ids(k, ENTRY_CAUTION, p, caution_origin);
  check_ids(k, ENTRY_COVER, p, cover_origin);
  check_ids(k, ENTRY_COMPLAINT, p, complaint_origin);
  check_ids(k, ENTRY_CHECK, p, check_origin);
  check_ids(k, ENTRY_FAULT, p, fault_origin);
  check_ids(k, ENTRY_REPAIR, p, repair_origin);
  check_ids(k, ENTRY_SETTING, p, setting_origin);
  check_ids(k, ENTRY_SAME_WORDS, p, same_words_origin);
}

static void link_machines(struct knowledge *k, struct problems *p)
{
  for (size_t i = 0; i < k->feature_count; i++) {
    resolve_refs(k, ENTRY_FEATURE, &k->features[i].brings, &k->features[i].origin, p);
    resolve_refs(k, ENTRY_FEATURE, &k->features[i].bars, &k->features[i].origin, p);
  }
  for (size_t i = 0; i < k->class_count; i++) {
    resolve_refs(k, ENTRY_FEATURE, &k->classes[i].has, &k->classes[i].origin, p);
    resolve_refs(k, ENTRY_FEATURE, &k->classes[i].may, &k->classes[i].origin, p);
  }
  for (size_t i = 0; i < k->complaint_count; i++) {
    resolve_refs(k, ENTRY_FEATURE, &k->complaints[i].needs, &k->complaints[i].origin, p);
    resolve_refs(k, ENTRY_COMPLAINT, &k->complaints[i].near, &k->complaints[i].origin, p);
  }
  for (size_t i = 0; i < k->owner_count; i++)
    k->owners[i].complaint = resolve(k, ENTRY_COMPLAINT, k->owners[i].complaint_id, &k->owners[i].origin, p);
}

static void link_same_words(struct knowledge *k, struct problems *p)
{
  for (size_t i = 0; i < k->same_words_count; i++) {
    struct same_words *s = &k->same_words[i];

    s->opposite = *s->opposite_id ? resolve(k, ENTRY_SAME_WORDS, s->opposite_id, &s->origin, p) : -1;
  }
}

/* Walks up from each cover, leaving its mark, as far as nobody walked before. */
static void find_cover_loops(struct knowledge *k, struct problems *p)
{
  size_t *mark = mem_array(k->cover_count, sizeof *mark);

  for (size_t i = 0; i < k->cover_count; i++) {
    int c = (int)i;

    for (; c >= 0 && mark[c] == 0; c = k->covers[c].under) mark[c] = i + 1;
    if (c < 0 || mark[c] != i + 1) continue;
    problem_add(p, true, "cover-loop", k->covers[c].origin.file, k->covers[c].origin.line,
                "cover \"%s\" ends up under itself. Take one (under ...) of that chain out.", k->covers[c].id);
    k->covers[c].under = -1; /* so that nobody walks round it for ever */
  }
  free(mark);
}

static void link_covers(struct knowledge *k, struct problems *p)
{
  for (size_t i = 0; i < k->cover_count; i++) {
    struct cover *c = &k->covers[i];

    resolve_refs(k, ENTRY_FEATURE, &c->needs, &c->origin, p);
    resolve_refs(k, ENTRY_CAUTION, &c->cautions, &c->origin, p);
    resolve_origin(k, &c->origin, p);
    c->under = strcmp(c->under_id, "nothing") == 0 ? -1 : resolve(k, ENTRY_COVER, c->under_id, &c->origin, p);
  }
  find_cover_loops(k, p);
}

static enum check_kind kind_of(const char *word)
{
  static const char *const words[] = {"look", "listen", "measure", "try", "ask"};

  for (int i = 0; i < 5; i++)
    if (strcmp(words[i], word) == 0) return (enum check_kind)i;
  return KIND_LOOK;
}

static void link_unit(struct check *c, struct problems *p)
{
  c->quantity = quantity_by_name(c->quantity_id);
  if (c->kind != KIND_MEASURE) return;
  c->unit = unit_find(c->unit_name, strlen(c->unit_name));
  if (!c->unit)
    problem_add(p, true, "unit", c->origin.file, c->origin.line,
                "check \"%s\" is measured, but \"%s\" is not a unit.", c->id, c->unit_name);
  else if (c->unit->quantity != c->quantity)
    problem_add(p, true, "unit", c->origin.file, c->origin.line,
                "unit %s does not measure %s.", c->unit_name, c->quantity_id);
}

/* Two numbers, the lower first, or none. */
static void link_possible(const struct check *c, struct problems *p)
{
  const struct numbers *n = &c->possible;

  if (n->count == 0 || (n->count == 2 && n->items[0] < n->items[1] && c->kind == KIND_MEASURE)) return;
  problem_add(p, true, "bands", c->origin.file, c->origin.line,
              "possible of check \"%s\" wants the lowest and the highest reading that can be true, of a measured check.",
              c->id);
}

static void link_check(struct knowledge *k, struct check *c, struct problems *p)
{
  double sum = 0;

  c->kind = kind_of(c->kind_id);
  resolve_refs(k, ENTRY_COVER, &c->off, &c->origin, p);
  resolve_refs(k, ENTRY_FEATURE, &c->needs, &c->origin, p);
  resolve_refs(k, ENTRY_CAUTION, &c->cautions, &c->origin, p);
  resolve_origin(k, &c->origin, p);
  link_unit(c, p);
  link_possible(c, p);
  for (size_t i = 0; i < c->anyway.count; i++) sum += c->anyway.items[i];
  if (c->results.count < 2 || c->labels.count != c->results.count || c->means.count != c->results.count ||
      c->anyway.count != c->results.count - 1)
    problem_add(p, true, "lengths", c->origin.file, c->origin.line,
                "check \"%s\" has %zu results, %zu labels, %zu means and %zu anyway: results, labels and "
                "means go together, anyway has one fewer.", c->id, c->results.count,
                c->labels.count, c->means.count, c->anyway.count);
  else if (c->results.count > CHECK_MOST_RESULTS)
    problem_add(p, true, "lengths", c->origin.file, c->origin.line,
                "check \"%s\" has %zu results; %d are the most. Join some, or make it two checks.", c->id,
                c->results.count, (int)CHECK_MOST_RESULTS);
  else if (sum >= 1)
    problem_add(p, true, "chance", c->origin.file, c->origin.line,
                "the chances in anyway of \"%s\" add to %.2f; they must leave room for \"%s\".", c->id,
                sum, c->results.items[0]);
}

static void link_bands(struct knowledge *k, struct bands *b, struct problems *p)
{
  const struct check *c;

  resolve_refs(k, ENTRY_FEATURE, &b->needs, &b->origin, p);
  resolve_origin(k, &b->origin, p);
  b->check = resolve(k, ENTRY_CHECK, b->check_id, &b->origin, p);
  b->result_at = arena_array(&k->arena, b->results.count, sizeof *b->result_at);
  if (b->limits.count + 1 != b->results.count)
    problem_add(p, true, "lengths", b->origin.file, b->origin.line,
                "bands \"%s\": %zu results want %zu limits between them, not %zu.", b->id,
                b->results.count, b->results.count - 1, b->limits.count);
  for (size_t i = 1; i < b->limits.count; i++)
    if (b->limits.items[i] <= b->limits.items[i - 1])
      problem_add(p, true, "bands", b->origin.file, b->origin.line,
                  "the limits of bands \"%s\" do not rise: %g after %g. Results and limits go from "
                  "the lowest reading up.", b->id, b->limits.items[i],
                  b->limits.items[i - 1]);
  if (b->check < 0) return;
  c = &k->checks[b->check];
  for (size_t i = 0; i < b->limits.count && c->possible.count == 2 && c->possible.items[0] < c->possible.items[1]; i++)
    if (b->limits.items[i] <= c->possible.items[0] || b->limits.items[i] >= c->possible.items[1])
      problem_add(p, true, "bands", b->origin.file, b->origin.line,
                  "limit %g of bands \"%s\" is outside what check %s calls possible, %g to %g.", b->limits.items[i],
                  b->id, c->id, c->possible.items[0], c->possible.items[1]);
  if (strcmp(b->unit_name, c->unit_name) != 0)
    problem_add(p, true, "unit", b->origin.file, b->origin.line,
                "bands \"%s\" are in %s, but check %s is in %s. Use the unit of the check.", b->id,
                b->unit_name, c->id, c->unit_name);
  for (size_t i = 0; i < b->results.count; i++) {
    b->result_at[i] = check_result(c, b->results.items[i]);
    if (b->result_at[i] < 0)
      problem_add(p, true, "unknown-id", b->origin.file, b->origin.line, "check %s has no result \"%s\".",
                  c->id, b->results.items[i]);
  }
}

static int by_band_id(const void *a, const void *b)
{
  const struct bands *x = *(const struct bands *const *)a, *y = *(const struct bands *const *)b;
  int d = strcmp(x->id, y->id);

  return d ? d : (x > y) - (x < y); /* in the order of the files */
}

static void check_band_ids(const struct knowledge *k, struct problems *p)
{
  const struct bands **sorted = mem_array(k->bands_count, sizeof *sorted);

  for (size_t i = 0; i < k->bands_count; i++) sorted[i] = &k->bands[i];
  if (k->bands_count > 1) qsort(sorted, k->bands_count, sizeof *sorted, by_band_id);
  for (size_t i = 1; i < k->bands_count; i++)
    if (strcmp(sorted[i - 1]->id, sorted[i]->id) == 0)
      problem_add(p, true, "duplicate-id", sorted[i]->origin.file, sorted[i]->origin.line,
                  "bands \"%s\" are already at %s:%d.", sorted[i]->id, sorted[i - 1]->origin.file,
                  sorted[i - 1]->origin.line);
  free(sorted);
}

static void link_faults(struct knowledge *k, struct problems *p)
{
  for (size_t i = 0; i < k->fault_count; i++) {
    struct fault *f = &k->faults[i];

    resolve_refs(k, ENTRY_FEATURE, &f->needs, &f->origin, p);
    resolve_origin(k, &f->origin, p);
    f->repair = resolve(k, ENTRY_REPAIR, f->repair_id, &f->origin, p);
    if (f->looks_like.count % 2 != 0)
      problem_add(p, true, "lengths", f->origin.file, f->origin.line,
                  "looks-like of \"%s\" must be pairs of a fault and a check.", f->id);
    for (size_t j = 0; j + 1 < f->looks_like.count; j += 2) {
      resolve(k, ENTRY_FAULT, f->looks_like.items[j], &f->origin, p);
      resolve(k, ENTRY_CHECK, f->looks_like.items[j + 1], &f->origin, p);
    }
  }
  for (size_t i = 0; i < k->base_rate_count; i++) {
    struct base_rate *b = &k->base_rates[i];

    b->fault = resolve(k, ENTRY_FAULT, b->fault_id, &b->origin, p);
    b->machine_class = resolve(k, ENTRY_CLASS, b->class_id, &b->origin, p);
  }
}

static void link_sign(struct knowledge *k, struct sign *s, struct problems *p)
{
  s->check = s->complaint = s->result = -1;
  if (!s->why) s->why = ""; /* a lead has none */
  s->fault = resolve(k, ENTRY_FAULT, s->fault_id, &s->origin, p);
  resolve_origin(k, &s->origin, p);
  if (s->complaint_id && *s->complaint_id) {
    s->complaint = resolve(k, ENTRY_COMPLAINT, s->complaint_id, &s->origin, p);
    s->result = 1;
    return;
  }
  s->check = resolve(k, ENTRY_CHECK, s->check_id, &s->origin, p);
  if (s->check < 0) return;
  s->result = check_result(&k->checks[s->check], s->result_id);
  if (s->result < 0)
    problem_add(p, true, "unknown-id", s->origin.file, s->origin.line, "check %s has no result \"%s\".",
                s->check_id, s->result_id);
  else if (s->result == 0)
    problem_add(p, true, "sign-of-sound", s->origin.file, s->origin.line,
                "\"%s\" is what a sound machine shows at %s: a sign names another result.", s->result_id,
                s->check_id);
}

static int sign_order(const void *a, const void *b)
{
  const struct sign *x = a, *y = b;
  int d = x->check - y->check;

  if (d == 0) d = x->complaint - y->complaint;
  if (d == 0) d = x->fault - y->fault;
  if (d == 0) d = x->result - y->result;
  if (d == 0) d = strcmp(x->origin.file, y->origin.file);
  return d ? d : x->origin.line - y->origin.line;
}

/* Signs of one fault at one check: each result once, together at most 1. */
static void check_sums(const struct knowledge *k, struct problems *p)
{
  for (size_t i = 0; i < k->sign_count;) {
    const struct sign *s = &k->signs[i];
    double sum = 0;
    size_t j = i;

    for (; j < k->sign_count && k->signs[j].check == s->check && k->signs[j].complaint == s->complaint &&
           k->signs[j].fault == s->fault; j++) {
      if (j > i && k->signs[j].result == k->signs[j - 1].result && s->fault >= 0)
        problem_add(p, true, "duplicate-sign", k->signs[j].origin.file, k->signs[j].origin.line,
                    "this sign is already at %s:%d.", k->signs[j - 1].origin.file,
                    k->signs[j - 1].origin.line);
      sum += k->signs[j].chance;
    }
    if (sum > 1 + 1e-9 && s->fault >= 0)
      problem_add(p, true, "chance", s->origin.file, s->origin.line,
                  "the chances of %s at %s add to %.2f; together they can be at most 1.", s->fault_id,
                  s->check_id, sum);
    i = j;
  }
}

/* ---- tools that the shop lacks ------------------------------------------------------------ */

static bool among(const struct texts *tools, const char *name)
{
  for (size_t i = 0; i < tools->count; i++)
    if (strcasecmp(tools->items[i], name) == 0) return true;
  return false;
}

/* What can be borrowed makes its checks and repairs dearer; a check whose tool cannot be had is out
 * of reach. A repair is not: its tool has to be found, or the work goes elsewhere. */
static void link_no_tool(struct knowledge *k, const struct no_tool *t, struct problems *p)
{
  bool used = false;

  for (size_t i = 0; i < k->check_count; i++) {
    struct check *c = &k->checks[i];

    if (!among(&c->tools, t->name)) continue;
    used = true;
    c->minutes += t->borrow;
    if (t->borrow <= 0) c->out_of_reach = t->name;
  }
  for (size_t i = 0; i < k->repair_count; i++) {
    if (!among(&k->repairs[i].tools, t->name)) continue;
    used = true;
    k->repairs[i].minutes += t->borrow;
  }
  if (!used)
    problem_add(p, true, "unknown-id", t->origin.file, t->origin.line,
                "no check or repair needs a tool called \"%s\"; \"pullcord show\" and the id of a check tells "
                "what its tools are called.", t->name);
  if (t->borrow < 0)
    problem_add(p, true, "slot-value", t->origin.file, t->origin.line,
                "minutes to borrow \"%s\" cannot be less than 0.", t->name);
}

void link_all(struct knowledge *k, struct problems *p)
{
  check_all_ids(k, p);
  for (size_t i = 0; i < k->rule_count; i++) resolve_origin(k, &k->rules[i].origin, p);
  for (size_t i = 0; i < k->caution_count; i++) {
    resolve_origin(k, &k->cautions[i].origin, p);
    resolve_refs(k, ENTRY_FEATURE, &k->cautions[i].needs, &k->cautions[i].origin, p);
  }
  link_machines(k, p);
  link_same_words(k, p);
  link_covers(k, p);
  for (size_t i = 0; i < k->check_count; i++) link_check(k, &k->checks[i], p);
  for (size_t i = 0; i < k->bands_count; i++) link_bands(k, &k->bands[i], p);
  check_band_ids(k, p);
  for (size_t i = 0; i < k->repair_count; i++) {
    struct repair *r = &k->repairs[i];

    resolve_refs(k, ENTRY_COVER, &r->off, &r->origin, p);
    resolve_refs(k, ENTRY_CAUTION, &r->cautions, &r->origin, p);
    resolve_origin(k, &r->origin, p);
  }
  for (size_t i = 0; i < k->no_tool_count; i++) link_no_tool(k, &k->no_tools[i], p);
  link_faults(k, p);
  for (size_t i = 0; i < k->sign_count; i++) link_sign(k, &k->signs[i], p);
  if (k->sign_count > 1) qsort(k->signs, k->sign_count, sizeof *k->signs, sign_order);
  check_sums(k, p);
}
