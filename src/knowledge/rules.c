/* rules.c - see rules.h. */
#include "knowledge/rules.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"

enum { MAX_RULES = 5000 };
enum { MAX_PATTERNS = 12, MAX_OR = 2, MAX_WILDCARDS = 3, MAX_OPEN_GROUPS = 2, MAX_NAMES = 24 };

static const char *const allowed[] = {
    "=", "<>", "<", ">", "<=", ">=", /* compare numbers */
    "eq", "neq",                     /* compare words */
    "and", "or", "not",              /* combine */
    "+", "-", "*", "/", "min", "max", "abs", "float", /* arithmetic that cannot trap on doubles */
    "sea-level-psi", "most-compression-psi", "air-kg-m3", /* bench arithmetic: sums of numbers, */
    "engine-rpm", "blade-tip-m-s",                        /* nothing else (src/engine/sums.c) */
    "ethanol-lambda", "water-held-ml", "petrol-stage",
    NULL};

static const char *const inner[] = {
    "assert", "bind", "progn", "create$", "(create$)", "this-rule", "(set-evaluation-error)",
    "(expansion-call)", "expand$", "(get-loop-count)", "(gnrc-current-arg)", "(query-fact)",
    "(query-fact-slot)", "length$", NULL};

const char *rules_allowed_function(size_t i)
{
  return i < sizeof allowed / sizeof allowed[0] ? allowed[i] : NULL;
}

const char *rules_inner_function(size_t i)
{
  return i < sizeof inner / sizeof inner[0] ? inner[i] : NULL;
}

static bool in_list(const char *const *list, const char *word)
{
  for (; *list; list++)
    if (strcmp(*list, word) == 0) return true;
  return false;
}

bool rules_is_conclusion(const char *name)
{
  static const char *const names[] = {"rules-out", "judge-by", "implies", "weakens", "clash",
                                      "speaks", "unsafe", "pointless", "ask-first", "hand-over",
                                      "advise", "warn", "counts-as", NULL};

  return in_list(names, name);
}

/* Is this a template that the program asserts about the case? */
static bool is_case_fact(const char *name)
{
  static const char *const names[] = {"machine", "has", "lacks", "complained", "finding", "reading",
                                      "card", "given", "belief", "fault-needs", "check-needs",
                                      "complaint-needs", "bands-for", "bands-needs", "check-engine",
                                      NULL};

  return in_list(names, name);
}

/* One rule being looked at. */
struct look {
  const struct schema *schema;
  const char *file;
  struct problems *p;
  int patterns, ors, wildcards;
  /* Patterns without any constant, grouped by the variables they share. */
  struct { const char *names[MAX_NAMES]; size_t count; } open[MAX_PATTERNS];
  size_t open_count;
};

static void say(struct look *l, int line, const char *kind, const char *format, const char *word)
{
  problem_add(l->p, true, kind, l->file, line, format, word);
}

/* A function call: its head must be allowed, and so must those inside it. Depth is
 * bounded by the reader (16), so this recursion is too. */
static void look_at_call(struct look *l, const struct node *call)
{
  if (!in_list(allowed, node_head(call)))
    say(l, call->line, "function",
        "a rule may not call \"%s\". Rules may compare and calculate; they reach nothing outside.",
        *node_head(call) ? node_head(call) : "?");
  for (const struct node *n = call->first; n; n = n->next)
    if (n->kind == NODE_LIST) look_at_call(l, n);
}

/* Does one slot's constraint hold a constant, and which variable does it bind? */
static void look_at_slot(struct look *l, const struct node *slot, bool *constant,
                         const char **names, size_t *count)
{
  for (const struct node *v = slot->first->next; v; v = v->next) {
    if (v->kind == NODE_LIST) look_at_call(l, v);
    else if (strncmp(v->text, "$?", 2) == 0) l->wildcards++;
    else if (v->kind == NODE_WORD && v->text[0] == '?' && v->text[1] && *count < MAX_NAMES)
      names[(*count)++] = v->text;
    else if (v->kind != NODE_WORD || (v->text[0] != '?' && v->text[0] != '~' && v->text[0] != '&'))
      *constant = true;
  }
}

static void look_at_pattern(struct look *l, const struct node *pattern, bool positive)
{
  const struct template *t = schema_find(l->schema, node_head(pattern));
  const char *names[MAX_NAMES];
  size_t count = 0;
  bool constant = false;

  if (!t || (!is_case_fact(t->name) && !rules_is_conclusion(t->name))) {
    say(l, pattern->line, "template", "a rule cannot match \"%s\"; see rules/templates/case.clp.",
        node_head(pattern));
    return;
  }
  l->patterns++;
  for (const struct node *s = pattern->first->next; s; s = s->next) {
    if (s->kind != NODE_LIST || !template_slot(t, node_head(s)))
      say(l, s->line, "slot-name", "the pattern has no slot \"%s\".",
          s->kind == NODE_LIST ? node_head(s) : s->text);
    else look_at_slot(l, s, &constant, names, &count);
  }
  if (positive && !constant && l->open_count < MAX_PATTERNS) {
    memcpy(l->open[l->open_count].names, names, sizeof names);
    l->open[l->open_count++].count = count;
  }
}

static void look_at_condition(struct look *l, const struct node *ce, bool positive)
{
  const char *head = node_head(ce);

  if (ce->kind != NODE_LIST) {
    if (ce->text[0] != '?' && strcmp(ce->text, "<-") != 0)
      say(l, ce->line, "syntax", "\"%s\" does not belong among the conditions of a rule.", ce->text);
  } else if (strcmp(head, "test") == 0) {
    for (const struct node *n = ce->first->next; n; n = n->next)
      if (n->kind == NODE_LIST) look_at_call(l, n);
  } else if (strcmp(head, "declare") == 0) {
    say(l, ce->line, "salience", "a rule may not set its own rank with \"%s\": rules must not "
        "depend on their order.", head);
  } else if (strcmp(head, "logical") == 0 || strcmp(head, "and") == 0 || strcmp(head, "or") == 0 ||
             strcmp(head, "not") == 0 || strcmp(head, "exists") == 0 || strcmp(head, "forall") == 0) {
    bool inside = positive && (strcmp(head, "logical") == 0 || strcmp(head, "and") == 0 ||
                               strcmp(head, "or") == 0);

    if (strcmp(head, "or") == 0) l->ors++;
    for (const struct node *n = ce->first->next; n; n = n->next) look_at_condition(l, n, inside);
  } else {
    look_at_pattern(l, ce, positive);
  }
}

static void look_at_assert(struct look *l, const struct node *fact)
{
  const struct template *t = schema_find(l->schema, node_head(fact));

  if (!t || !rules_is_conclusion(t->name)) {
    say(l, fact->line, "template", "a rule cannot conclude \"%s\"; see rules/templates/case.clp.",
        node_head(fact));
    return;
  }
  for (const struct node *s = fact->first->next; s; s = s->next) {
    if (!template_slot(t, node_head(s)))
      say(l, s->line, "slot-name", "the conclusion has no slot \"%s\".", node_head(s));
    else if (strcmp(node_head(s), "rule") == 0)
      say(l, s->line, "slot-name", "slot %s fills itself; leave it out.", "rule");
    else
      for (const struct node *v = s->first->next; v; v = v->next)
        if (v->kind == NODE_LIST) look_at_call(l, v);
  }
}

static void look_at_action(struct look *l, const struct node *action)
{
  const char *head = node_head(action);

  if (strcmp(head, "assert") == 0) {
    for (const struct node *n = action->first->next; n; n = n->next) look_at_assert(l, n);
  } else if (strcmp(head, "bind") == 0) {
    for (const struct node *n = action->first->next; n; n = n->next)
      if (n->kind == NODE_LIST) look_at_call(l, n);
  } else {
    say(l, action->line, "function",
        "a rule may not do \"%s\". It may only assert conclusions (and bind values for them).",
        *head ? head : action->kind == NODE_LIST ? "?" : action->text);
  }
}

static bool shares(const struct look *l, size_t a, size_t b)
{
  for (size_t i = 0; i < l->open[a].count; i++)
    for (size_t j = 0; j < l->open[b].count; j++)
      if (strcmp(l->open[a].names[i], l->open[b].names[j]) == 0) return true;
  return false;
}

/* Number of groups of open patterns that share no variable: each group multiplies the
 * engine's work by the number of facts. */
static size_t open_groups(const struct look *l)
{
  size_t group[MAX_PATTERNS], groups = 0;

  for (size_t i = 0; i < l->open_count; i++) group[i] = i;
  for (size_t round = 0; round < l->open_count; round++)
    for (size_t i = 0; i < l->open_count; i++)
      for (size_t j = 0; j < i; j++)
        if (shares(l, i, j)) group[i] = group[j] = group[i] < group[j] ? group[i] : group[j];
  for (size_t i = 0; i < l->open_count; i++) groups += group[i] == i;
  return groups;
}

static void check_limits(struct look *l, const struct node *rule)
{
  const char *name = rule->first->next->text;

  if (l->patterns > MAX_PATTERNS)
    say(l, rule->line, "too-large", "rule \"%s\" has more than 12 patterns. Split it.", name);
  if (l->ors > MAX_OR)
    say(l, rule->line, "too-large",
        "rule \"%s\" has more than 2 (or ...): every one doubles the rules. Split it.", name);
  if (l->wildcards > MAX_WILDCARDS)
    say(l, rule->line, "too-large", "rule \"%s\" has more than 3 wildcards $?.", name);
  if (open_groups(l) > MAX_OPEN_GROUPS)
    say(l, rule->line, "unconnected",
        "rule \"%s\" joins patterns that share no variable and name nothing: every fact would be "
        "tried with every other. Connect them or name what they are about.", name);
}

/* "[basis source place] reason" -> card. */
static bool read_card(struct arena *arena, const char *file, const struct node *name,
                      const struct node *comment, struct rule_card *card)
{
  static const struct { const char *word; enum basis basis; } words[] = {
      {"published", BASIS_PUBLISHED}, {"common-practice", BASIS_COMMON_PRACTICE},
      {"memory", BASIS_MEMORY}, {"estimate", BASIS_ESTIMATE}};
  const char *text = comment->text, *end = strchr(text, ']');
  size_t i, n;

  if (text[0] != '[' || !end) return false;
  *card = (struct rule_card){.id = arena_text(arena, name->text, strlen(name->text))};
  card->origin = (struct origin){.file = file, .line = name->line, .source = -1};
  n = strcspn(text + 1, " ]");
  for (i = 0; i < 4; i++)
    if (strlen(words[i].word) == n && strncmp(words[i].word, text + 1, n) == 0) card->origin.basis = words[i].basis;
  if (card->origin.basis == BASIS_NONE) return false;
  text += 1 + n;
  while (*text == ' ') text++;
  n = strcspn(text, " ]");
  if (n > 0) card->origin.source_id = arena_text(arena, text, n);
  text += n;
  while (*text == ' ') text++;
  if (text < end) card->origin.place = arena_text(arena, text, (size_t)(end - text));
  for (end++; *end == ' '; end++) continue;
  card->reason = arena_text(arena, end, strlen(end));
  return *end != '\0';
}

/* A conclusion goes with its reasons only when these stand inside (logical ...). */
static void check_logical(struct look *l, const struct node *rule)
{
  const struct node *n = rule->first->next->next;
  bool logical = false;

  for (; n && !node_is_word(n, "=>"); n = n->next) {
    const char *head = node_head(n);

    if (n->kind != NODE_LIST || strcmp(head, "test") == 0 || strcmp(head, "declare") == 0) continue;
    logical = strcmp(head, "logical") == 0;
    if (!logical) break;
  }
  if (!logical)
    say(l, n && n->kind == NODE_LIST ? n->line : rule->line, "not-logical",
        "rule \"%s\" must have its conditions inside (logical ...), so that what it concludes goes when a "
        "result is taken back.", rule->first->next->text);
}

static void scan_rule(struct look *l, struct arena *arena, const struct node *rule,
                      struct rule_card **cards, size_t *count, size_t *room)
{
  const struct node *name = rule->first->next, *comment = name->next, *n;
  bool actions = false;
  void *items;

  for (n = comment; n; n = n->next) {
    if (n == comment && n->kind == NODE_STRING) continue;
    if (node_is_word(n, "=>")) actions = true;
    else if (actions) look_at_action(l, n);
    else look_at_condition(l, n, true);
  }
  if (!actions) say(l, rule->line, "syntax", "rule \"%s\" has no =>.", name->text);
  check_logical(l, rule);
  check_limits(l, rule);
  items = *cards;
  mem_grow(&items, room, *count + 1, sizeof **cards);
  *cards = items;
  if (comment && comment->kind == NODE_STRING && read_card(arena, l->file, name, comment, &(*cards)[*count])) {
    (*count)++;
    return;
  }
  say(l, rule->line, "missing-basis",
      "rule \"%s\" needs a comment right after its name: \"[common-practice] the reason\" (or "
      "[published source place], [memory], [estimate]).", name->text);
}

void rules_scan(const struct schema *schema, struct arena *arena, const char *file,
                const struct node *forms, struct rule_card **cards, size_t *count, size_t *room,
                struct problems *p)
{
  for (const struct node *n = forms->first; n; n = n->next) {
    struct look l = {.schema = schema, .file = file, .p = p};
    const struct node *name = n->kind == NODE_LIST && n->first ? n->first->next : NULL;
    size_t before = *count;

    if (strcmp(node_head(n), "defrule") != 0 || !name || name->kind != NODE_WORD) {
      problem_add(p, true, "syntax", file, n->line,
                  "only (defrule name ...) may stand in a file of rules, not \"%s\".",
                  n->kind == NODE_LIST ? node_head(n) : n->text);
      continue;
    }
    if (before >= MAX_RULES) {
      problem_add(p, true, "too-large", file, n->line, "more than 5000 rules.");
      return;
    }
    if (!text_is_id(name->text)) /* MAIN::x would be x to the engine */
      say(&l, n->line, "bad-id", "\"%s\" is not an id: lower-case letters, digits and single hyphens only.",
          name->text);
    for (size_t i = 0; i < before; i++)
      if ((*cards)[i].id[0] == name->text[0] && strcmp((*cards)[i].id, name->text) == 0)
        problem_add(p, true, "duplicate-id", file, n->line,
                    "rule \"%s\" is already at %s:%d; one would silently replace the other. "
                    "Give yours another name.",
                    name->text, (*cards)[i].origin.file, (*cards)[i].origin.line);
    scan_rule(&l, arena, n, cards, count, room);
  }
}

/* ---- ids named in rules ------------------------------------------------------------ */

static bool slot_kind(const char *slot, enum entry_kind *kind)
{
  static const struct { const char *slot; enum entry_kind kind; } slots[] = {
      {"check", ENTRY_CHECK},         {"check-a", ENTRY_CHECK}, {"check-b", ENTRY_CHECK},
      {"fault", ENTRY_FAULT},         {"feature", ENTRY_FEATURE}, {"complaint", ENTRY_COMPLAINT},
      {"caution", ENTRY_CAUTION},     {"class", ENTRY_CLASS}};

  for (size_t i = 0; i < sizeof slots / sizeof slots[0]; i++)
    if (strcmp(slots[i].slot, slot) == 0) {
      *kind = slots[i].kind;
      return true;
    }
  return false;
}

/* A word that names no entry, or no result of the check: with the nearest that there is. */
static void say_unknown(const struct knowledge *k, enum entry_kind kind, int check, const char *file,
                        int line, const char *word, struct problems *p)
{
  const char **ids = NULL, *near = NULL;
  size_t count;

  if (p->count < PROBLEMS_KEPT && check < 0) { /* beyond that nobody would see it */
    knowledge_ids(k, kind, &ids, &count);
    near = text_nearest(word, ids, count);
  }
  problem_add(p, true, "unknown-id", file, line, "the rule names \"%s\", but there is no such %s%s%s%s%s", word,
              check >= 0 ? "result of check " : "entry", check >= 0 ? k->checks[check].id : "",
              near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  free(ids);
}

/* Looks at every constant word in a constraint such as a|b or ?x&~a. */
static void check_words(const struct knowledge *k, enum entry_kind kind, int check,
                        const char *file, const struct node *v, struct problems *p)
{
  const char *at = v->text;

  if (v->kind != NODE_WORD) return;
  while (*at) {
    size_t skip = strspn(at, "&|~:"), n = strcspn(at + skip, "&|~:");
    char word[SEXPR_MAX_WORD + 1];

    memcpy(word, at + skip, n);
    word[n] = '\0';
    at += skip + n;
    if (n == 0 || word[0] == '?' || word[0] == '=' || word[0] == '$') continue;
    if (check >= 0 ? check_result(&k->checks[check], word) < 0 : knowledge_find(k, kind, word) < 0)
      say_unknown(k, kind, check, file, v->line, word, p);
  }
}

/* Bands that a rule names; a reading judged by none would be taken as judged by the card. */
static void check_bands(const struct knowledge *k, const char *file, const struct node *v, struct problems *p)
{
  if (!v || v->kind != NODE_WORD || strpbrk(v->text, "?&|~") || strcmp(v->text, "spec-card") == 0) return;
  for (size_t i = 0; i < k->bands_count; i++)
    if (strcmp(k->bands[i].id, v->text) == 0) return;
  problem_add(p, true, "unknown-id", file, v->line,
              "the rule names bands \"%s\", but there are none of that name.", v->text);
}

/* What is ruled out says by a word of its own what kind of thing it is. */
static void check_ruled_out(const struct knowledge *k, const char *file, const struct node *form,
                            struct problems *p)
{
  const struct node *kind = fact_values(form, "kind"), *id = fact_values(form, "id");

  if (!id) return;
  if (node_is_word(kind, "fault")) check_words(k, ENTRY_FAULT, -1, file, id, p);
  else if (node_is_word(kind, "check")) check_words(k, ENTRY_CHECK, -1, file, id, p);
  else if (node_is_word(kind, "complaint")) check_words(k, ENTRY_COMPLAINT, -1, file, id, p);
  else if (node_is_word(kind, "bands")) check_bands(k, file, id, p);
}

static void check_form(const struct knowledge *k, const char *file, const struct node *form,
                       struct problems *p)
{
  int check = -1;

  if (strcmp(node_head(form), "rules-out") == 0) check_ruled_out(k, file, form, p);
  for (const struct node *s = form->first; s; s = s->next) {
    enum entry_kind kind;
    const struct node *v;

    if (s->kind != NODE_LIST || !s->first) continue;
    if (strcmp(node_head(s), "result") == 0) {
      for (v = s->first->next; v && check >= 0; v = v->next) check_words(k, ENTRY_CHECK, check, file, v, p);
      continue;
    }
    if (strcmp(node_head(s), "bands") == 0) check_bands(k, file, s->first->next, p);
    if (!slot_kind(node_head(s), &kind)) {
      check_form(k, file, s, p); /* depth bounded by the reader */
      continue;
    }
    for (v = s->first->next; v; v = v->next) check_words(k, kind, -1, file, v, p);
    v = s->first->next;
    if (kind == ENTRY_CHECK && v && !v->next && v->kind == NODE_WORD) check = knowledge_find(k, kind, v->text);
  }
}

void rules_check_ids(const struct knowledge *k, const char *file, const struct node *forms,
                     struct problems *p)
{
  for (const struct node *n = forms->first; n; n = n->next)
    if (n->kind == NODE_LIST) check_form(k, file, n, p);
}
