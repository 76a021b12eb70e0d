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

/* A file that was read: its tree, and its text until it has been taken. */
struct parsed {
  const char *shown;
  char *text;
  size_t len;
  struct node *forms;
};

static enum file_sort sort_of(const char *name)
{
  if (strncmp(name, "rules/templates/", 16) == 0) return SORT_TEMPLATES;
  return strncmp(name, "rules/", 6) == 0 ? SORT_RULES : SORT_FACTS;
}

/* One number that changes with every byte of the files: eight bytes at a time are mixed in as in
 * FNV-1a, and the high half, where the multiplication gathers differences, is brought down again. */
static void take_down(struct knowledge *k, const char *text, size_t len)
{
  unsigned long long h = k->fingerprint, w;

  for (size_t i = 0; i < len; i += 8) {
    const unsigned char *b = (const unsigned char *)text + i;
    size_t n = len - i < 8 ? len - i : 8;

    w = n; /* a last piece that is short is told from one that is filled up with zeros */
    if (n == 8)
      w = (unsigned long long)b[0] | (unsigned long long)b[1] << 8 | (unsigned long long)b[2] << 16 |
          (unsigned long long)b[3] << 24 | (unsigned long long)b[4] << 32 | (unsigned long long)b[5] << 40 |
          (unsigned long long)b[6] << 48 | (unsigned long long)b[7] << 56;
    else
      for (size_t j = 0; j < n; j++) w = w << 8 | b[j];
    h = (h ^ w) * 1099511628211ull;
    h ^= h >> 32;
  }
  k->fingerprint = h;
}

/* The tree's nodes go into `nodes`, its texts into `texts`. */
static int parse_file(struct knowledge *k, struct arena *nodes, struct arena *texts,
                      const struct knowledge_file *f, struct parsed *out, struct problems *p, struct err *e)
{
  char *tree_text;
  struct err bad;
  int status = file_read(f->path, SEXPR_MAX_BYTES + 1, &out->text, &out->len, e);

  if (status) return status;
  take_down(k, out->text, out->len);
  out->shown = arena_text(&k->arena, f->shown, strlen(f->shown));
  tree_text = arena_text(texts, out->text, out->len);
  if (sexpr_read(nodes, out->shown, tree_text, out->len, &out->forms, &bad)) {
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
      struct given_slots given;

      if (fact->kind == NODE_STRING && fact == n->first->next->next) continue;
      if (fact->kind != NODE_LIST) {
        problem_add(p, true, "syntax", file->shown, fact->line, "\"%s\" is not a fact: write (kind (slot value) ...).",
                    fact->text);
        continue;
      }
      t = schema_check(schema, file->shown, fact, &given, p);
      if (t) fill_fact(f, t, &given, file->shown, fact, p);
    }
  }
}

/* The engine reads byte by byte, and slowly: comments, indents and the comment string of
 * each rule (kept in its card) are left out, line breaks stay so that lines keep their
 * numbers. The text has passed the reader, so quotes and brackets are in order. */
static size_t shrink(const char *from, size_t len, char *to)
{
  size_t n = 0;
  bool in_head = false; /* between the bracket of a form and its first inner bracket */

  for (size_t i = 0, depth = 0; i < len; i++) {
    char c = from[i];

    if (c == ';') {
      while (i < len && from[i] != '\n' && from[i] != '\r') i++;
      i--;
    } else if (c == '"') {
      size_t start = i++;

      while (from[i] != '"') i += from[i] == '\\' ? 2 : 1;
      for (size_t j = start; j <= i; j++)
        if (!in_head || from[j] == '\n') to[n++] = from[j];
    } else if (c != ' ' || (n > 0 && to[n - 1] != ' ' && to[n - 1] != '\n')) {
      depth += c == '(';
      if (c == '(') in_head = depth == 1;
      depth -= c == ')';
      to[n++] = c;
    }
  }
  return n;
}

static void add_text(struct knowledge *k, size_t *room, const struct parsed *file)
{
  void *items = k->texts;
  char *text = arena_new(&k->arena, file->len + 1);

  mem_grow(&items, room, k->text_count + 1, sizeof *k->texts);
  k->texts = items;
  k->texts[k->text_count++] = (struct rule_text){file->shown, text, shrink(file->text, file->len, text)};
}

/* What is built up while the files are read. */
struct reading {
  struct knowledge *k;
  struct schema schema;
  struct fill fill;
  struct rule_card *cards;
  size_t card_room, text_room;
  struct problems *p;
};

static void add_rules(struct reading *r, const struct parsed *file)
{
  rules_scan(&r->schema, &r->k->arena, file->shown, file->forms, &r->cards, &r->k->rule_count, &r->card_room,
             r->p);
  add_text(r->k, &r->text_room, file);
}

/* Takes the files of one sort. Of facts and templates the texts stay with the knowledge, and
 * the trees of facts are dropped file by file; of rules both stay until all is linked. */
static int take_files(struct reading *r, const struct knowledge_files *files, enum file_sort sort,
                      struct arena *trees, struct parsed *parsed, struct err *e)
{
  struct arena own = {0};
  struct arena *nodes = sort == SORT_FACTS ? &own : trees;
  struct arena *texts = sort == SORT_RULES ? trees : &r->k->arena;
  int status = 0;

  for (size_t i = 0; i < files->count && status == 0; i++) {
    if (sort_of(files->items[i].name) != sort) continue;
    status = parse_file(r->k, nodes, texts, &files->items[i], &parsed[i], r->p, e);
    if (status == 0 && parsed[i].forms) {
      if (sort == SORT_FACTS) add_facts(&r->fill, &r->schema, &parsed[i], r->p);
      if (sort == SORT_RULES) add_rules(r, &parsed[i]);
      if (sort == SORT_TEMPLATES) {
        schema_add(&r->schema, trees, parsed[i].shown, parsed[i].forms, r->p);
        add_text(r->k, &r->text_room, &parsed[i]);
      }
    }
    free(parsed[i].text);
    arena_reset(&own);
  }
  arena_free(&own);
  return status;
}

static void settle_cards(struct reading *r)
{
  struct knowledge *k = r->k;

  k->rules = arena_array(&k->arena, k->rule_count, sizeof *k->rules);
  if (k->rule_count) memcpy(k->rules, r->cards, k->rule_count * sizeof *r->cards);
  free(r->cards);
}

/* Templates first, then facts, then rules: each needs what came before. The ids that rules
 * name are looked up last, when all entries are linked. */
int load_files(const struct knowledge_files *files, struct knowledge *out, struct problems *problems,
               struct err *e)
{
  struct parsed *parsed = mem_array(files->count, sizeof *parsed);
  struct reading r = {.k = out, .fill = {.k = out}, .p = problems};
  struct arena trees = {0};
  int status;

  *out = (struct knowledge){.fingerprint = 1469598103934665603ull};
  status = take_files(&r, files, SORT_TEMPLATES, &trees, parsed, e);
  if (status == 0) status = take_files(&r, files, SORT_FACTS, &trees, parsed, e);
  if (status == 0) status = take_files(&r, files, SORT_RULES, &trees, parsed, e);
  settle_cards(&r);
  fill_finish(&r.fill, problems);
  for (size_t i = 0; i < files->count && status == 0; i++)
    if (sort_of(files->items[i].name) == SORT_RULES && parsed[i].forms)
      rules_check_ids(out, parsed[i].shown, parsed[i].forms, problems);
  problems_sort(problems);
  schema_free(&r.schema);
  arena_free(&trees);
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
