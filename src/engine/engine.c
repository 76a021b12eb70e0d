/* engine.c - see engine.h. */
#include "engine/engine.h"

#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/mem.h"
#include "engine/clips.h"
#include "knowledge/rules.h"

static const struct engine_limits usual = {(size_t)192 << 20, 5, 2, 100000};

/* ---- what the library calls back ---------------------------------------------------- */

static void on_parse_error(void *env, const char *file, const char *warning, const char *error,
                           long line)
{
  struct engine *en = GetEnvironmentContext(env);
  const char *text = error ? error : warning;
  struct buf b = {0};

  if (en->load_error.status || !text) return;
  for (; *text; text++) /* one line, no runs of spaces */
    if (*text != '\n' && !(*text == ' ' && b.len && b.text[b.len - 1] == ' ')) buf_addn(&b, text, 1);
    else if (b.len && b.text[b.len - 1] != ' ') buf_add(&b, " ");
  err_set(&en->load_error, EX_CONFIG, file, (int)line, "the rule engine refuses this: %s", buf_text(&b));
  buf_free(&b);
}

int rule_firing(struct engine *en)
{
  struct defrule *rule = EngineData(en->env)->ExecutingRule;

  if (!rule) return -1;
  return knowledge_find(en->k, ENTRY_RULE, EnvGetDefruleName(en->env, rule));
}

/* (this-rule): the name of the rule that is firing; fills the slot rule of conclusions. */
static void *this_rule(void *env)
{
  struct engine *en = GetEnvironmentContext(env);

  en->last_rule = rule_firing(en);
  return EnvAddSymbol(env, en->last_rule >= 0 ? en->k->rules[en->last_rule].id : "none");
}

/* Called by the library between firings and inside its loops. */
static void on_period(void *env)
{
  struct engine *en = GetEnvironmentContext(env);

  if (guard_late(&en->guard)) {
    en->guard.tripped = "took longer than allowed";
    SetHaltExecution(env, TRUE);
  }
}

/* Nothing that the library prints reaches a person as it is. Errors in a file come by the
 * call-back; what goes wrong later (a division by nought, a value out of range) is only
 * printed, and the library goes on as if nothing were, so it is kept. */
static int quiet_query(void *env, const char *name)
{
  (void)env;
  return name[0] == 'w' || strcmp(name, "stdout") == 0 || strcmp(name, "t") == 0;
}

static int quiet_print(void *env, const char *name, const char *text)
{
  struct engine *en = GetEnvironmentContext(env);

  if (strcmp(name, "werror") != 0) return 1;
  for (; *text && en->grumbled + 1 < sizeof en->grumble; text++) {
    char c = *text == '\n' ? ' ' : *text, last = en->grumbled ? en->grumble[en->grumbled - 1] : ' ';

    if (c != ' ' || last != ' ') en->grumble[en->grumbled++] = c;
  }
  en->grumble[en->grumbled] = '\0';
  return 1;
}

static int quiet_exit(void *env, int code)
{
  (void)env;
  (void)code;
  return 1;
}

/* ---- making an engine --------------------------------------------------------------- */

static bool is_kept(const char *name)
{
  const char *kept;

  for (size_t i = 0; (kept = rules_allowed_function(i)); i++)
    if (strcmp(kept, name) == 0) return true;
  for (size_t i = 0; (kept = rules_inner_function(i)); i++)
    if (strcmp(kept, name) == 0) return true;
  return false;
}

static int refuse_construct(void *env, const char *name)
{
  (void)name;
  SetPPBufferStatus(env, TRUE); /* what the library prints after an error: it must be there */
  FlushPPBuffer(env);
  SavePPBuffer(env, "(");
  PrintErrorID(env, "GUARD", 1, FALSE); /* and takes down file and line */
  EnvPrintRouter(env, WERROR, "only templates and rules may stand here.");
  return TRUE; /* that is, an error */
}

/* Takes out of the library every construct but templates and rules (functions that call
 * themselves run the stack over), and every function that is not on the list. The library
 * has constructs taken out by RemoveConstruct, but then looks into freed memory. */
static void remove_rest(void *env)
{
  static const char *const constructs[] = {"deffunction", "defglobal",    "defgeneric", "defmethod",
                                           "defclass",    "definstances", "defmessage-handler",
                                           "deffacts",    "defmodule"};
  struct FunctionDefinition *f = GetFunctionList(env), *next;

  for (size_t i = 0; i < sizeof constructs / sizeof constructs[0]; i++) {
    struct construct *c = FindConstruct(env, constructs[i]);

    if (c) c->parseFunction = refuse_construct;
  }
  for (; f; f = next) {
    const char *name = ValueToString(f->callFunctionName);

    next = f->next;
    if (!is_kept(name)) UndefineFunction(env, name);
  }
}

static void set_up(struct engine *en)
{
  en->env = CreateEnvironment();
  SetEnvironmentContext(en->env, en);
  EnvAddRouter(en->env, "quiet", 20, quiet_query, quiet_print, NULL, NULL, quiet_exit);
  EnvDefineFunction2(en->env, "this-rule", 'w', PTIEF this_rule, "this_rule", "00");
  compare_define(en->env);
  sums_define(en->env);
  remove_rest(en->env);
  watch_joins(en);
  EnvSetDynamicConstraintChecking(en->env, TRUE);
  EnvSetConserveMemory(en->env, TRUE); /* keep no text of what was read */
  EnvSetParserErrorCallback(en->env, on_parse_error);
  EnvAddPeriodicFunction(en->env, "watch", on_period, 0);
}

static void close_reading(struct engine *en)
{
  if (en->reading) fclose(en->reading);
  en->reading = NULL;
}

/* While it reads the library writes down what it reads, neatly. A tenth of the time goes into
 * that, and it is of use only in the report of an error: so these notes are left off, and made
 * when a file that was refused is read again. The library takes it for granted that the place
 * for them is there, and drops it after every file. */
static void set_notes(struct engine *en)
{
  SetPPBufferEnabled(en->env, TRUE);
  SetPPBufferStatus(en->env, TRUE);
  SavePPBuffer(en->env, "(");
  FlushPPBuffer(en->env);
  SetPPBufferEnabled(en->env, en->notes);
}

/* The library reads from a stream in memory: by its own way for strings every byte costs a
 * search through all that could be read from. */
static int load_text(struct engine *en, const struct rule_text *t, struct err *e)
{
  char *name;
  int good;

  en->reading = fmemopen((void *)(size_t)t->text, t->len ? t->len : 1, "r");
  if (!en->reading) return err_set(e, EX_OSERR, t->file, 0, "cannot be handed to the rule engine.");
  set_notes(en);
  name = (char *)en->reading; /* the library tells a stream by its address */
  SetFastLoad(en->env, en->reading);
  EnvSetParsingFileName(en->env, t->file);
  good = LoadConstructsFromLogicalName(en->env, name);
  SetFastLoad(en->env, NULL);
  close_reading(en);
  if (en->load_error.status) {
    *e = en->load_error;
    return e->status;
  }
  if (!good) return err_set(e, EX_CONFIG, t->file, 0, "the rule engine refuses this file.");
  return 0;
}

static int limit_error(struct engine *en, const char *doing, struct err *e)
{
  const struct rule_card *r = en->last_rule >= 0 ? &en->k->rules[en->last_rule] : NULL;

  err_set(e, EX_TEMPFAIL, r ? r->origin.file : NULL, r ? r->origin.line : 0,
          "the rule engine %s while %s%s%s%s and was stopped. Nothing recorded is lost. "
          "Look at the rules added last.", en->guard.tripped, doing, r ? " (last rule: \"" : "",
          r ? r->id : "", r ? "\")" : "");
  en->ended = *e;
  return e->status;
}

/* The rule that the library's report names after `word`, or NULL. */
static const struct rule_card *rule_named(const struct engine *en, const char *word)
{
  const char *at = strstr(en->grumble, word);
  char name[160];
  size_t n;
  int rule;

  if (!at) return NULL;
  at += strlen(word);
  n = strcspn(at, " .");
  if (n >= sizeof name) return NULL;
  memcpy(name, at, n);
  name[n] = '\0';
  rule = knowledge_find(en->k, ENTRY_RULE, name);
  return rule >= 0 ? &en->k->rules[rule] : NULL;
}

/* Did a rule go wrong? Then what was concluded is not all there is, and cannot be used. */
static int check_grumble(struct engine *en, struct err *e)
{
  const struct rule_card *r = rule_named(en, "of defrule ");

  if (en->grumbled == 0) return 0;
  if (!r) r = rule_named(en, "in rule ");
  err_set(e, EX_CONFIG, r ? r->origin.file : NULL, r ? r->origin.line : 0,
          "%s%s%s cannot be worked out: %s", r ? "rule \"" : "a rule", r ? r->id : "", r ? "\"" : "",
          en->grumble);
  en->ended = *e;
  return e->status;
}

static void tell_needs(struct engine *en, const char *template, const char *slot, const char *id,
                       const struct refs *needs)
{
  for (size_t i = 0; i < needs->count; i++) {
    struct want w = {template, {{slot, id, 0, false}, {"feature", needs->ids[i], 0, false}}, 2};

    fact_assert(en, &w);
  }
}

/* Facts that hold for every case: what needs which feature, which bands there are. */
static void tell_knowledge(struct engine *en)
{
  const struct knowledge *k = en->k;

  for (size_t i = 0; i < k->fault_count; i++)
    tell_needs(en, "fault-needs", "fault", k->faults[i].id, &k->faults[i].needs);
  for (size_t i = 0; i < k->complaint_count; i++)
    tell_needs(en, "complaint-needs", "complaint", k->complaints[i].id, &k->complaints[i].needs);
  for (size_t i = 0; i < k->check_count; i++) {
    const struct check *c = &k->checks[i];
    struct want w = {"check-engine", {{"check", c->id, 0, false}, {"engine", c->engine, 0, false}}, 2};

    tell_needs(en, "check-needs", "check", c->id, &c->needs);
    fact_assert(en, &w);
  }
  for (size_t i = 0; i < k->bands_count; i++) {
    const struct bands *b = &k->bands[i];
    struct want w = {"bands-for",
                     {{"bands", b->id, 0, false}, {"check", b->check_id, 0, false},
                      {"count", NULL, (double)b->needs.count, true}}, 3};

    tell_needs(en, "bands-needs", "bands", b->id, &b->needs);
    fact_assert(en, &w);
  }
}

static int load_guarded(struct engine *en, struct err *e)
{
  set_up(en);
  for (size_t i = 0; i < en->k->text_count; i++) {
    const struct rule_text *t = &en->k->texts[i];

    /* The templates of knowledge serve the reader; rules see the case's templates. */
    if (!strstr(t->file, "templates/knowledge.clp") && load_text(en, t, e)) return e->status;
  }
  en->grumbled = 0;
  tell_knowledge(en);
  return check_grumble(en, e);
}

static int load_all(struct engine *en, struct err *e)
{
  int status;

  if (setjmp(en->guard.out)) {
    guard_enter(NULL);
    close_reading(en);
    return limit_error(en, "reading the rules", e);
  }
  guard_enter(&en->guard);
  status = load_guarded(en, e);
  guard_enter(NULL);
  return status;
}

int engine_open(const struct knowledge *k, const struct engine_limits *limits, struct engine **out,
                struct err *e)
{
  struct engine *en = mem_new(sizeof *en);
  int status;

  en->k = k;
  en->last_rule = -1;
  en->limits = limits ? *limits : usual;
  if (!en->limits.bytes) en->limits.bytes = usual.bytes;
  if (en->limits.load_seconds <= 0) en->limits.load_seconds = usual.load_seconds;
  if (en->limits.run_seconds <= 0) en->limits.run_seconds = usual.run_seconds;
  if (en->limits.firings <= 0) en->limits.firings = usual.firings;
  en->guard.most = en->limits.bytes;
  guard_start(&en->guard, en->limits.load_seconds);
  status = load_all(en, e);
  if (status == EX_CONFIG) { /* once more, for a report that says all */
    guard_release(&en->guard);
    memset(&en->load_error, 0, sizeof en->load_error);
    en->notes = true;
    status = load_all(en, e);
  }
  if (status) {
    engine_close(en);
    return status;
  }
  *out = en;
  return 0;
}

/* ---- telling it the case ------------------------------------------------------------ */

/* A fact that the case wants, with its key. */
struct wanted { char *key; struct want want; };

struct wanted_list { struct wanted *items; size_t count, room; };

static void want_add(struct wanted_list *l, struct want w)
{
  struct buf b = {0};
  void *items = l->items;

  buf_add(&b, w.template);
  for (size_t i = 0; i < w.count; i++) {
    buf_add(&b, " ");
    if (w.slots[i].word) buf_add(&b, w.slots[i].word);
    else buf_addf(&b, "%.17g", w.slots[i].number);
  }
  mem_grow(&items, &l->room, l->count + 1, sizeof *l->items);
  l->items = items;
  l->items[l->count++] = (struct wanted){b.text, w};
}

static void want_machine(struct wanted_list *l, const struct knowledge *k, const struct bench_case *c)
{
  if (c->machine_class >= 0)
    want_add(l, (struct want){"machine", {{"class", k->classes[c->machine_class].id, 0, false}}, 1});
  for (size_t i = 0; i < k->feature_count; i++)
    if (c->features[i] != TRI_UNKNOWN)
      want_add(l, (struct want){c->features[i] == TRI_HAS ? "has" : "lacks",
                                {{"feature", k->features[i].id, 0, false}}, 1});
  for (size_t i = 0; i < c->complaint_count; i++) {
    const struct complaint *p = &k->complaints[c->complaints[i]];

    want_add(l, (struct want){"complained", {{"complaint", p->id, 0, false}, {"runs", p->runs, 0, false}}, 2});
  }
}

/* Where a figure is from, as one of the words that rules may ask for. */
static const char *from_word(const char *from)
{
  return strcmp(from, "plate") == 0           ? "plate"
         : strcmp(from, "maker's sheet") == 0 ? "makers-sheet"
         : strcmp(from, "measured") == 0      ? "measured"
                                              : "not-told";
}

static void want_results(struct wanted_list *l, const struct knowledge *k, const struct bench_case *c)
{
  for (size_t i = 0; i < c->result_count; i++)
    if (c->results[i].result < 0 && c->results[i].sure > 0)
      want_add(l, (struct want){"reading",
                                {{"check", k->checks[c->results[i].check].id, 0, false},
                                 {"value", NULL, c->results[i].value, false}}, 2});
  for (size_t i = 0; i < c->card_count; i++)
    want_add(l, (struct want){"card",
                              {{"check", k->checks[c->cards[i].check].id, 0, false},
                               {"low", NULL, c->cards[i].low, false},
                               {"high", NULL, c->cards[i].high, false},
                               {"from", from_word(c->cards[i].from), 0, false}}, 4});
  for (int i = 0; i < GIVEN_COUNT; i++)
    if (c->given[i].told)
      want_add(l, (struct want){"given",
                                {{"what", given_kind((enum given_what)i)->id, 0, false},
                                 {"value", NULL, c->given[i].value, false}}, 2});
}

static int by_key(const void *a, const void *b)
{
  return strcmp(((const struct wanted *)a)->key, ((const struct wanted *)b)->key);
}

/* Retracts one fact or asserts another. False when a limit was reached. */
static bool change(struct engine *en, void *gone, const struct want *wanted, void **fact)
{
  if (setjmp(en->guard.out)) {
    guard_enter(NULL);
    return false;
  }
  guard_enter(&en->guard);
  if (gone) EnvRetract(en->env, gone);
  if (wanted) *fact = fact_assert(en, wanted);
  guard_enter(NULL);
  return true;
}

/* Walks the old and the new facts side by side: retracts what is gone, asserts what is
 * new, keeps the rest. Both lists are sorted by key. Once a limit was reached the engine
 * is left alone and only the lists are put in order. */
static bool merge(struct engine *en, struct wanted_list *l)
{
  struct told *now = mem_array(l->count ? l->count : 1, sizeof *now);
  size_t o = 0, n = 0, kept = 0;
  bool good = true;

  while (o < en->told_count || n < l->count) {
    int d = o == en->told_count ? 1 : n == l->count ? -1 : strcmp(en->told[o].key, l->items[n].key);

    if (d < 0) {
      if (good && en->told[o].fact) good = change(en, en->told[o].fact, NULL, NULL);
      free(en->told[o++].key);
    } else if (d > 0) {
      now[kept].key = l->items[n].key;
      if (good) good = change(en, NULL, &l->items[n].want, &now[kept].fact);
      kept++;
      n++;
    } else {
      now[kept++] = en->told[o++];
      free(l->items[n++].key);
    }
  }
  free(en->told);
  en->told = now;
  en->told_count = kept;
  return good;
}

int engine_tell(struct engine *en, const struct bench_case *c, const struct engine_finding *findings,
                size_t finding_count, const struct engine_belief *beliefs, size_t belief_count,
                struct err *e)
{
  struct wanted_list l = {0};
  const struct knowledge *k = en->k;
  bool good;

  if (en->ended.status) {
    *e = en->ended;
    return e->status;
  }
  want_machine(&l, k, c);
  want_results(&l, k, c);
  for (size_t i = 0; i < finding_count; i++) {
    const struct check *check = &k->checks[findings[i].check];

    want_add(&l, (struct want){"finding",
                               {{"check", check->id, 0, false},
                                {"result", check->results.items[findings[i].result], 0, false},
                                {"sure", NULL, findings[i].sure, false}}, 3});
  }
  for (size_t i = 0; i < belief_count; i++)
    want_add(&l, (struct want){"belief",
                               {{"fault", k->faults[beliefs[i].fault].id, 0, false},
                                {"chance", NULL, beliefs[i].chance, false}}, 2});
  if (l.count > 1) qsort(l.items, l.count, sizeof *l.items, by_key);
  guard_start(&en->guard, en->limits.run_seconds);
  good = merge(en, &l);
  free(l.items);
  return good ? check_grumble(en, e) : limit_error(en, "taking in the results", e);
}

int engine_run(struct engine *en, struct conclusions *out, struct err *e)
{
  if (en->ended.status) {
    *e = en->ended;
    return e->status;
  }
  guard_start(&en->guard, en->limits.run_seconds);
  if (setjmp(en->guard.out)) {
    guard_enter(NULL);
    return limit_error(en, "drawing conclusions", e);
  }
  guard_enter(&en->guard);
  SetHaltExecution(en->env, FALSE);
  if (EnvRun(en->env, en->limits.firings) >= en->limits.firings)
    en->guard.tripped = "fired more rules than allowed";
  if (!en->guard.tripped && en->grumbled == 0) harvest(en, out);
  guard_enter(NULL);
  return en->guard.tripped ? limit_error(en, "drawing conclusions", e) : check_grumble(en, e);
}

const char *engine_version(void) { return "CLIPS " VERSION_STRING; }

void engine_close(struct engine *en)
{
  if (!en) return;
  for (size_t i = 0; i < en->told_count; i++) free(en->told[i].key);
  free(en->told);
  conclusions_free(&en->drawn);
  guard_release(&en->guard); /* the whole environment at once */
  free(en);
}
