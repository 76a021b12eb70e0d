/* vet_rules.c - rules that feed a belief back, loop, can never fire, or change nothing. */
#include <stdlib.h>
#include <string.h>

#include "knowledge/rules.h"
#include "knowledge/vet_parts.h"

#define RULE_SAY(v, serious, kind, r, ...)                                                                   \
  problem_add((v)->p, serious, kind, (r)->file, (r)->line, __VA_ARGS__)

/* ---- how rules hang together ---------------------------------------------------------- */

/* Does a conclusion of a meet a pattern of b? */
static bool feeds(const struct rule_look *a, const struct rule_look *b)
{
  for (size_t i = 0; i < b->pattern_count; i++)
    for (size_t j = 0; j < a->draw_count; j++)
      if (pattern_meets(b->patterns[i].form, a->draws[j])) return true;
  return false;
}

static bool matches_conclusions(const struct rule_look *r)
{
  for (size_t i = 0; i < r->pattern_count; i++)
    if (rules_is_conclusion(node_head(r->patterns[i].form))) return true;
  return false;
}

/* Spreads marks along the rules that feed each other until nothing changes. Only rules
 * that match conclusions can be fed, and there are few. */
static void spread(const struct rule_looks *l, bool *mark)
{
  bool changed = true;

  while (changed) {
    changed = false;
    for (size_t b = 0; b < l->count; b++) {
      if (mark[b] || !matches_conclusions(&l->items[b])) continue;
      for (size_t a = 0; a < l->count && !mark[b]; a++)
        if (mark[a] && feeds(&l->items[a], &l->items[b])) changed = mark[b] = true;
    }
  }
}

static void loops(struct vet *v)
{
  bool *mark = mem_array(v->rules.count, sizeof *mark);

  for (size_t i = 0; i < v->rules.count; i++) {
    const struct rule_look *r = &v->rules.items[i];
    bool back = false;

    if (!matches_conclusions(r)) continue;
    memset(mark, 0, v->rules.count * sizeof *mark);
    for (size_t b = 0; b < v->rules.count; b++)
      mark[b] = matches_conclusions(&v->rules.items[b]) && feeds(r, &v->rules.items[b]);
    back = mark[i];
    spread(&v->rules, mark);
    if (back || mark[i])
      RULE_SAY(v, true, "rule-loop", r,
               "rule \"%s\" comes round to itself: what it concludes leads to its own "
               "conditions%s.",
               r->id, back ? "" : " by way of other rules");
  }
  free(mark);
}

static void mark_believers(struct vet *v)
{
  struct rule_looks *l = &v->rules;
  bool *mark = mem_array(l->count, sizeof *mark);

  for (size_t i = 0; i < l->count; i++)
    for (size_t j = 0; j < l->items[i].pattern_count; j++)
      mark[i] = mark[i] || strcmp(node_head(l->items[i].patterns[j].form), "belief") == 0;
  spread(l, mark);
  for (size_t i = 0; i < l->count; i++) l->items[i].believes = mark[i];
  free(mark);
}

/* What a belief leads to must not change a belief. */
static void feedback(struct vet *v, const struct rule_look *r)
{
  static const char *const harmless[] = {"advise", "warn", "hand-over", "unsafe", "pointless", "ask-first"};

  for (size_t i = 0; r->believes && i < r->draw_count; i++) {
    const char *head = node_head(r->draws[i]);
    bool good = false;

    for (size_t h = 0; h < sizeof harmless / sizeof harmless[0]; h++)
      good = good || strcmp(harmless[h], head) == 0;
    if (!good)
      problem_add(
          v->p, true, "belief-feedback", r->file, r->draws[i]->line,
          "rule \"%s\" goes by a belief and concludes \"%s\", which changes beliefs in turn. It may advise, "
          "warn, hand over, ask first, or call a check unsafe or pointless.",
          r->id, head);
  }
}

/* ---- rules that can never fire -------------------------------------------------------- */

static bool is(const struct rule_pattern *p, const char *template)
{
  return !p->negated && !p->either && strcmp(node_head(p->form), template) == 0;
}

/* Index of the check that a pattern names, -1 when it may be several. */
static int check_of(const struct vet *v, const struct node *pattern)
{
  const char *word = pattern_word(pattern, "check");

  return word ? knowledge_find(v->k, ENTRY_CHECK, word) : -1;
}

static void never(struct vet *v, const struct rule_look *r, int line, const char *why, const char *what)
{
  problem_add(v->p, false, "never-fires", r->file, line, "rule \"%s\" can never fire: %s \"%s\".", r->id, why,
              what);
}

/* Every check that a pattern names must be able to give one of the results it names. */
static void results_that_cannot_be(struct vet *v, const struct rule_look *r, const struct node *f)
{
  size_t named = 0;

  if (!fact_values(f, "check") || !fact_values(f, "result")) return;
  for (size_t c = 0; c < v->k->check_count; c++) named += pattern_takes(f, "check", v->k->checks[c].id);
  for (size_t c = 0; c < v->k->check_count && named < v->k->check_count; c++) {
    const struct check *check = &v->k->checks[c];
    bool possible = false;

    if (!pattern_takes(f, "check", check->id)) continue;
    for (size_t i = 0; i < check->results.count; i++)
      possible = possible || pattern_takes(f, "result", check->results.items[i]);
    if (!possible)
      problem_add(v->p, true, "result-cannot-be", r->file, f->line,
                  "rule \"%s\" wants a result that check \"%s\" cannot give.", r->id, check->id);
  }
}

/* A check has one result: two patterns must agree on one, and none may rule it out. */
static void results_at_odds(struct vet *v, const struct rule_look *r, size_t i)
{
  const struct node *f = r->patterns[i].form;
  int check = check_of(v, f);

  for (size_t j = 0; check >= 0 && j < r->pattern_count; j++) {
    const struct rule_pattern *o = &r->patterns[j];
    const struct texts *results = &v->k->checks[check].results;
    bool possible = false, whole = o->negated && !o->either && !fact_values(o->form, "sure");

    if (j == i || strcmp(node_head(o->form), "finding") != 0 || check_of(v, o->form) != check) continue;
    if (!is(o, "finding") && !whole) continue;
    if (is(o, "finding") && j < i) continue;
    for (size_t n = 0; n < results->count; n++)
      possible = possible || (pattern_takes(f, "result", results->items[n]) &&
                              pattern_takes(o->form, "result", results->items[n]) != o->negated);
    if (!possible)
      never(v, r, o->form->line, "its conditions want different results of", v->k->checks[check].id);
  }
}

static void complaint_that_cannot_be(struct vet *v, const struct rule_look *r, const struct node *f)
{
  for (size_t i = 0; i < v->k->complaint_count; i++)
    if (pattern_takes(f, "complaint", v->k->complaints[i].id) &&
        pattern_takes(f, "runs", v->k->complaints[i].runs))
      return;
  never(v, r, f->line, "no complaint is as it wants", node_head(f));
}

static void nobody_concludes(struct vet *v, const struct rule_look *r, const struct node *f)
{
  if (!rules_is_conclusion(node_head(f))) return;
  for (size_t i = 0; i < v->rules.count; i++)
    for (size_t j = 0; j < v->rules.items[i].draw_count; j++)
      if (pattern_meets(f, v->rules.items[i].draws[j])) return;
  never(v, r, f->line, "no rule concludes the", node_head(f));
}

static void unmeasured(struct vet *v, const struct rule_look *r, const struct node *f)
{
  int check = check_of(v, f);

  if (check >= 0 && v->k->checks[check].kind != KIND_MEASURE)
    never(v, r, f->line, "there is never a reading of", v->k->checks[check].id);
}

static void look_at_pattern(struct vet *v, const struct rule_look *r, size_t i)
{
  const struct rule_pattern *p = &r->patterns[i];

  if (strcmp(node_head(p->form), "finding") == 0) results_that_cannot_be(v, r, p->form);
  if (p->negated || p->either) return;
  if (is(p, "finding")) results_at_odds(v, r, i);
  if (is(p, "complained")) complaint_that_cannot_be(v, r, p->form);
  if (is(p, "reading") || is(p, "card")) unmeasured(v, r, p->form);
  nobody_concludes(v, r, p->form);
}

/* ---- machines that a rule is for ------------------------------------------------------ */

/* What the conditions say of the machine. */
struct wanted {
  const struct refs *needs[64]; /* of the checks found, and the features it must have */
  size_t count;
  struct refs told[16];
  size_t told_count;
};

static void want(struct wanted *w, const struct refs *needs)
{
  if (w->count < sizeof w->needs / sizeof w->needs[0]) w->needs[w->count++] = needs;
}

static void want_of_pattern(struct vet *v, struct wanted *w, const struct rule_pattern *p)
{
  int check = is(p, "finding") || is(p, "reading") ? check_of(v, p->form) : -1, feature;
  const char *word = is(p, "has") ? pattern_word(p->form, "feature") : NULL;
  struct refs *told = &w->told[w->told_count];

  if (check >= 0) want(w, &v->k->checks[check].needs);
  if (!word || w->told_count == sizeof w->told / sizeof w->told[0]) return;
  feature = knowledge_find(v->k, ENTRY_FEATURE, word);
  if (feature < 0) return;
  told->at = arena_array(&v->rules.arena, 1, sizeof *told->at);
  told->at[0] = feature;
  told->count = 1;
  w->told_count++;
  want(w, told);
}

static bool class_taken(const struct vet *v, const struct rule_look *r, size_t c)
{
  for (size_t i = 0; i < r->pattern_count; i++)
    if (is(&r->patterns[i], "machine") && !pattern_takes(r->patterns[i].form, "class", v->k->classes[c].id))
      return false;
  return true;
}

/* Does the rule ask that the machine lack a feature that one of these needs? */
static const char *lacked(const struct vet *v, const struct rule_look *r, const struct refs *needs)
{
  for (size_t i = 0; i < r->pattern_count; i++) {
    const char *word = is(&r->patterns[i], "lacks") ? pattern_word(r->patterns[i].form, "feature") : NULL;

    for (size_t n = 0; word && n < needs->count; n++)
      if (strcmp(v->k->features[needs->at[n]].id, word) == 0) return word;
  }
  return NULL;
}

static void look_at_machine(struct vet *v, const struct rule_look *r)
{
  struct wanted w = {.count = 0};

  for (size_t i = 0; i < r->pattern_count; i++) want_of_pattern(v, &w, &r->patterns[i]);
  for (size_t i = 0; i < w.count; i++) {
    const char *word = lacked(v, r, w.needs[i]);

    if (word) {
      never(v, r, r->line, "it is for machines that lack and need", word);
      return;
    }
  }
  for (size_t c = 0; c < v->k->class_count; c++)
    if (class_taken(v, r, c) && parting_fits(v->parting, (int)c, w.needs, w.count)) return;
  if (w.count > 0) never(v, r, r->line, "no class of machine has all that its checks need, see", "needs");
}

/* ---- conclusions that change nothing -------------------------------------------------- */

static bool found_by(const struct vet *v, const struct rule_look *r, int check)
{
  for (size_t i = 0; i < r->pattern_count; i++)
    if (is(&r->patterns[i], "finding") && check_of(v, r->patterns[i].form) == check) return true;
  return false;
}

static const struct refs *needs_of_drawn(const struct vet *v, const struct node *d)
{
  const char *fault = pattern_word(d, "fault");
  int check = check_of(v, d), f = fault ? knowledge_find(v->k, ENTRY_FAULT, fault) : -1;

  if (f >= 0) return &v->k->faults[f].needs;
  return check >= 0 ? &v->k->checks[check].needs : NULL;
}

static void look_at_drawn(struct vet *v, const struct rule_look *r, const struct node *d)
{
  const struct refs *needs = needs_of_drawn(v, d);
  const char *head = node_head(d), *word = needs ? lacked(v, r, needs) : NULL;
  int check = check_of(v, d);

  if (word)
    problem_add(v->p, false, "no-effect", r->file, d->line,
                "rule \"%s\" concludes \"%s\" for machines without \"%s\", where it cannot apply.", r->id,
                head, word);
  if (check >= 0 && found_by(v, r, check) &&
      (strcmp(head, "implies") == 0 || strcmp(head, "pointless") == 0 || strcmp(head, "ask-first") == 0))
    problem_add(v->p, false, "no-effect", r->file, d->line,
                "rule \"%s\" concludes \"%s\" about check \"%s\", whose result is among its own conditions.",
                r->id, head, v->k->checks[check].id);
}

void vet_rules(struct vet *v)
{
  mark_believers(v);
  for (size_t i = 0; i < v->rules.count; i++) feedback(v, &v->rules.items[i]);
  loops(v);
  for (size_t i = 0; i < v->rules.count; i++) {
    const struct rule_look *r = &v->rules.items[i];

    for (size_t j = 0; j < r->pattern_count; j++) look_at_pattern(v, r, j);
    look_at_machine(v, r);
    for (size_t j = 0; j < r->draw_count; j++) look_at_drawn(v, r, r->draws[j]);
  }
}
