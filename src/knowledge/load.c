/* load.c - see load.h. */
#include "knowledge/load.h"

#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "knowledge/fill.h"
#include "knowledge/rules.h"
#include "knowledge/schema.h"
#include "knowledge/sexpr.h"

enum file_sort { SORT_FACTS, SORT_RULES, SORT_TEMPLATES };

/* A file that was read: its text and tree. */
struct parsed {
  enum file_sort sort;
  const char *shown, *text;
  size_t len;
  struct node *forms;
};

static enum file_sort sort_of(const char *name)
{
  if (strncmp(name, "rules/templates/", 16) == 0) return SORT_TEMPLATES;
  return strncmp(name, "rules/", 6) == 0 ? SORT_RULES : SORT_FACTS;
}

static int parse_file(struct knowledge *k, const struct knowledge_file *f, struct parsed *out,
                      struct problems *p, struct err *e)
{
  char *text;
  struct err bad;
  int status = file_read(f->path, SEXPR_MAX_BYTES + 1, &text, &out->len, e);

  if (status) return status;
  out->sort = sort_of(f->name);
  out->shown = arena_text(&k->arena, f->shown, strlen(f->shown));
  out->text = arena_text(&k->arena, text, out->len);
  free(text);
  for (size_t i = 0; i < out->len; i++) /* FNV-1a over everything read */
    k->fingerprint = (k->fingerprint ^ (unsigned char)out->text[i]) * 1099511628211ull;
  if (sexpr_read(&k->arena, out->shown, out->text, out->len, &out->forms, &bad)) {
    problem_add(p, true, "syntax", bad.file, bad.line, "%s", bad.text);
    out->forms = NULL;
  }
  return 0;
}

static void add_facts(struct fill *f, const struct schema *schema, const struct parsed *file,
                      struct problems *p)
{
  for (const struct node *n = file->forms->first; n; n = n->next) {
    const struct node *fact = n->kind == NODE_LIST && n->first ? n->first->next : NULL;

    if (strcmp(node_head(n), "deffacts") != 0 || !fact || fact->kind != NODE_WORD) {
      problem_add(p, true, "syntax", file->shown, n->line,
                  "only (deffacts name \"what it holds\" facts ...) may stand in a file of facts.");
      continue;
    }
    for (fact = fact->next; fact; fact = fact->next) {
      const struct template *t;

      if (fact->kind == NODE_STRING && fact == n->first->next->next) continue;
      if (fact->kind != NODE_LIST) {
        problem_add(p, true, "syntax", file->shown, fact->line, "\"%s\" is not a fact: write (kind (slot value) ...).",
                    fact->text);
        continue;
      }
      t = schema_check(schema, file->shown, fact, p);
      if (t && !template_slot(t, "rule")) fill_fact(f, t, file->shown, fact, p);
    }
  }
}

static void add_text(struct knowledge *k, size_t *room, const struct parsed *file)
{
  void *items = k->texts;

  mem_grow(&items, room, k->text_count + 1, sizeof *k->texts);
  k->texts = items;
  k->texts[k->text_count++] = (struct rule_text){file->shown, file->text, file->len};
}

/* Templates first, then facts, then rules: each needs what came before. */
static void assemble(struct knowledge *k, struct parsed *files, size_t count, struct problems *p)
{
  struct schema schema = {0};
  struct fill fill = {.k = k};
  struct rule_card *cards = NULL;
  size_t room = 0, text_room = 0;

  for (size_t i = 0; i < count; i++)
    if (files[i].sort == SORT_TEMPLATES && files[i].forms) {
      schema_add(&schema, &k->arena, files[i].shown, files[i].forms, p);
      add_text(k, &text_room, &files[i]);
    }
  for (size_t i = 0; i < count; i++)
    if (files[i].sort == SORT_FACTS && files[i].forms) add_facts(&fill, &schema, &files[i], p);
  for (size_t i = 0; i < count; i++)
    if (files[i].sort == SORT_RULES && files[i].forms) {
      rules_scan(&schema, &k->arena, files[i].shown, files[i].forms, &cards, &k->rule_count, &room, p);
      add_text(k, &text_room, &files[i]);
    }
  k->rules = arena_array(&k->arena, k->rule_count, sizeof *k->rules);
  if (k->rule_count) memcpy(k->rules, cards, k->rule_count * sizeof *cards);
  free(cards);
  fill_finish(&fill, p);
  for (size_t i = 0; i < count; i++)
    if (files[i].sort == SORT_RULES && files[i].forms)
      rules_check_ids(k, files[i].shown, files[i].forms, p);
  schema_free(&schema);
}

int load_files(const struct knowledge_files *files, struct knowledge *out, struct problems *problems,
               struct err *e)
{
  struct parsed *parsed = mem_array(files->count, sizeof *parsed);
  int status = 0;

  *out = (struct knowledge){.fingerprint = 1469598103934665603ull};
  for (size_t i = 0; i < files->count && status == 0; i++)
    status = parse_file(out, &files->items[i], &parsed[i], problems, e);
  if (status == 0) assemble(out, parsed, files->count, problems);
  problems_sort(problems);
  free(parsed);
  return status;
}

static int first_serious(const struct problems *p, struct err *e)
{
  size_t kept = p->count < PROBLEMS_KEPT ? p->count : PROBLEMS_KEPT;

  for (size_t i = 0; i < kept; i++) {
    const struct problem *x = &p->items[i];

    if (!x->serious) continue;
    if (p->serious == 1) return err_set(e, EX_CONFIG, x->file, x->line, "%s", x->text);
    return err_set(e, EX_CONFIG, x->file, x->line, "%s (and %zu more; \"pullcord vet\" lists them)",
                   x->text, p->serious - 1);
  }
  return err_set(e, EX_CONFIG, NULL, 0, "the knowledge has %zu faults; \"pullcord vet\" lists them.",
                 p->serious);
}

int load_knowledge(struct knowledge *out, struct err *e)
{
  struct knowledge_files files;
  struct problems problems = {0};
  char *shipped = NULL, *own = find_own();
  int status = find_shipped(&shipped, e);

  if (status == 0) status = find_files(shipped, own, &files, e);
  if (status == 0) {
    status = load_files(&files, out, &problems, e);
    if (status == 0 && problems.serious) status = first_serious(&problems, e);
    if (status) knowledge_free(out);
    find_free(&files);
  }
  problems_free(&problems);
  free(shipped);
  free(own);
  return status;
}

void knowledge_free(struct knowledge *k)
{
  free(k->texts);
  arena_free(&k->arena);
  *k = (struct knowledge){0};
}
