/* stock.c - the shipped files are plain CLIPS: a plain environment, with nothing guarded and
 * nothing taken out, loads them all and finds as many facts and rules as our own reader.
 * Usage: stock FOLDER (which holds facts/ and rules/) */
#include <clips/clips.h>

#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "knowledge/find.h"
#include "knowledge/rules.h"
#include "knowledge/sexpr.h"

enum { MOST_KINDS = 100 };

/* How many facts of each kind, and how many rules. */
struct tally {
  struct {
    char name[64];
    long ours, theirs;
  } kinds[MOST_KINDS];
  size_t count;
  long our_rules, their_rules;
};

static long failures;

static void failed(const char *what, const char *name, long ours, long theirs)
{
  printf("FAILED %s %s: we read %ld, the stock engine %ld\n", what, name, ours, theirs);
  failures++;
}

static size_t kind_at(struct tally *t, const char *name)
{
  size_t i = 0;

  while (i < t->count && strcmp(t->kinds[i].name, name) != 0) i++;
  if (i == t->count) {
    if (t->count == MOST_KINDS) abort();
    snprintf(t->kinds[t->count++].name, sizeof t->kinds[0].name, "%s", name);
  }
  return i;
}

/* ---- our own reader --------------------------------------------------------------------- */

static void count_forms(struct tally *t, const struct node *forms)
{
  for (const struct node *n = forms->first; n; n = n->next) {
    if (strcmp(node_head(n), "defrule") == 0) t->our_rules++;
    if (strcmp(node_head(n), "deffacts") != 0) continue;
    for (const struct node *fact = n->first; fact; fact = fact->next)
      if (fact->kind == NODE_LIST) t->kinds[kind_at(t, node_head(fact))].ours++;
  }
}

static void read_ours(struct tally *t, const struct knowledge_file *file)
{
  struct arena arena = {0};
  struct node *forms;
  struct err e;
  char *text;
  size_t len;

  if (file_read(file->path, SEXPR_MAX_BYTES, &text, &len, &e) ||
      sexpr_read(&arena, file->shown, text, len, &forms, &e)) {
    printf("FAILED %s:%d: %s\n", e.file, e.line, e.text);
    failures++;
    return;
  }
  count_forms(t, forms);
  free(text);
  arena_free(&arena);
}

/* ---- the stock engine ------------------------------------------------------------------- */

static void *this_rule(void *env) { return EnvAddSymbol(env, "none"); }

static int hear(void *env, const char *name)
{
  (void)env;
  return strcmp(name, WERROR) == 0 || strcmp(name, WWARNING) == 0;
}

/* Warnings count as well: a rule defined twice is only warned of. */
static int hear_print(void *env, const char *name, const char *text)
{
  (void)env;
  (void)name;
  fputs(text, stdout);
  failures++;
  return 1;
}

static double no_sum(void *env)
{
  (void)env;
  return 0;
}

/* The sums of ours that rules may call: only their names matter for reading. */
static void define_sums(void *env)
{
  const char *name;

  for (size_t i = 0; (name = rules_allowed_function(i)); i++)
    if (!FindFunction(env, name)) EnvDefineFunction2(env, name, 'd', PTIEF no_sum, "no_sum", "**");
}

static void read_theirs(struct tally *t, const struct knowledge_files *files)
{
  void *env = CreateEnvironment();

  EnvAddRouter(env, "ear", 30, hear, hear_print, NULL, NULL, NULL);
  EnvDefineFunction2(env, "this-rule", 'w', PTIEF this_rule, "this_rule", "00");
  define_sums(env);
  for (int templates = 1; templates >= 0; templates--) /* first what the others need */
    for (size_t i = 0; i < files->count; i++) {
      if ((strncmp(files->items[i].name, "rules/templates/", 16) == 0) != (templates == 1)) continue;
      if (EnvLoad(env, files->items[i].path) != 1) {
        printf("FAILED %s: the stock engine does not load it\n", files->items[i].name);
        failures++;
      }
    }
  EnvReset(env);
  for (void *fact = EnvGetNextFact(env, NULL); fact; fact = EnvGetNextFact(env, fact))
    t->kinds[kind_at(t, EnvGetDeftemplateName(env, EnvFactDeftemplate(env, fact)))].theirs++;
  for (void *rule = EnvGetNextDefrule(env, NULL); rule; rule = EnvGetNextDefrule(env, rule)) t->their_rules++;
  DestroyEnvironment(env);
}

int main(int argc, char **argv)
{
  struct knowledge_files files;
  struct tally t = {0};
  struct err e;
  long facts = 0;

  if (argc != 2 || find_files(argv[1], NULL, &files, &e)) {
    fprintf(stderr, "usage: stock FOLDER (with facts/ and rules/ in it)\n");
    return 2;
  }
  for (size_t i = 0; i < files.count; i++) read_ours(&t, &files.items[i]);
  read_theirs(&t, &files);
  for (size_t i = 0; i < t.count; i++) {
    bool start = strcmp(t.kinds[i].name, "initial-fact") == 0; /* which every reset of that engine makes */

    if (t.kinds[i].ours + start != t.kinds[i].theirs)
      failed("facts of kind", t.kinds[i].name, t.kinds[i].ours, t.kinds[i].theirs);
    facts += t.kinds[i].ours;
  }
  if (t.our_rules != t.their_rules) failed("rules", "", t.our_rules, t.their_rules);
  if (facts == 0 || t.our_rules == 0) failed("anything", "", facts, t.our_rules);
  printf("%zu files, %ld facts, %ld rules: %s\n", files.count, facts, t.our_rules,
         failures ? "FAILED" : "agreed");
  find_free(&files);
  return failures > 0;
}
