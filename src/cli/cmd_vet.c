/* cmd_vet.c - looks through the knowledge for mistakes, and at what a change changes. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "base/file.h"
#include "cli/commands.h"
#include "cli/vet_against.h"
#include "engine/engine.h"
#include "json/json.h"
#include "knowledge/load.h"
#include "knowledge/vet.h"

/* What one run looks at. */
struct run {
  const struct args *args;
  char *shipped, *own; /* folders; own is NULL when there is none */
  size_t files, own_files; /* read, and how many of these from the own folder */
  struct knowledge k;
  struct problems p;
  bool compared;
  struct changed_cases changed;
};

static size_t kept(const struct problems *p) { return p->count < PROBLEMS_KEPT ? p->count : PROBLEMS_KEPT; }

/* ---- for programs --------------------------------------------------------------------- */

static struct json *changes_json(const struct changed_cases *c)
{
  struct json *o = json_object(), *list = json_list();

  for (size_t i = 0; i < c->count; i++) {
    const struct changed_case *x = &c->items[i];
    struct json *one = json_object();

    json_put_text(one, "file", x->file);
    json_put_text(one, "was", x->was);
    json_put_number(one, "was-chance", x->was_chance);
    json_put_text(one, "now", x->now);
    json_put_number(one, "now-chance", x->now_chance);
    json_put_text(one, "why", x->why);
    json_push(list, one);
  }
  json_put_number(o, "cases", (double)c->looked_at);
  json_put(o, "changed", list);
  return o;
}

static void print_json(const struct run *r)
{
  struct json *o = json_object(), *list = json_list();
  char *text;

  for (size_t i = 0; i < kept(&r->p); i++) {
    const struct problem *x = &r->p.items[i];
    struct json *one = json_object();

    json_put_text(one, "file", x->file);
    json_put_number(one, "line", x->line);
    json_put_text(one, "kind", x->kind);
    json_put_bool(one, "serious", x->serious);
    json_put_text(one, "text", x->text);
    json_push(list, one);
  }
  json_put_text(o, "pullcord", "vet-1");
  json_put_number(o, "count", (double)r->p.count);
  json_put_number(o, "serious", (double)r->p.serious);
  json_put(o, "problems", list);
  if (r->compared) json_put(o, "against", changes_json(&r->changed));
  text = json_print(o);
  fputs(text, stdout);
  free(text);
  json_free(o);
}

/* ---- for people ----------------------------------------------------------------------- */

static void print_answer(const char *when, const char *id, double chance)
{
  if (*id) printf("%s %s (%.0f %%)", when, id, 100 * chance);
  else printf("%s no answer", when);
}

static void print_changes(const struct changed_cases *c)
{
  for (size_t i = 0; i < c->count; i++) {
    const struct changed_case *x = &c->items[i];

    printf("%s: ", x->file);
    print_answer("was", x->was, x->was_chance);
    print_answer(", now", x->now, x->now_chance);
    printf("%s%s\n", *x->why ? ": " : "", x->why);
  }
  printf("%zu case%s compared: ", c->looked_at, c->looked_at == 1 ? "" : "s");
  if (c->count == 0) printf("all have the same first answer as before.\n");
  else printf("%zu changed %s first answer.\n", c->count, c->count == 1 ? "its" : "their");
}

static void print_text(const struct run *r)
{
  const struct knowledge *k = &r->k;

  for (size_t i = 0; i < kept(&r->p); i++) {
    const struct problem *x = &r->p.items[i];

    printf("%s:%d: %s%s\n", x->file, x->line, x->serious ? "" : "(worth a look) ", x->text);
  }
  if (r->p.count > kept(&r->p)) printf("... and %zu more\n", r->p.count - kept(&r->p));
  printf("%zu faults, %zu checks, %zu signs, %zu rules in %zu files, %zu of them yours, looked through: ",
         k->fault_count, k->check_count, k->sign_count, k->rule_count, r->files, r->own_files);
  if (r->p.count == 0) printf("nothing wrong.\n");
  else printf("%zu to mend, %zu worth a look.\n", r->p.serious, r->p.count - r->p.serious);
  if (r->compared) print_changes(&r->changed);
}

/* ---- the look itself ------------------------------------------------------------------ */

/* Rules that pass the scan must also load into the engine. */
static void try_engine(const struct knowledge *k, struct problems *p)
{
  struct engine *engine;
  struct err e;

  if (engine_open(k, NULL, &engine, &e) == 0) engine_close(engine);
  else problem_add(p, true, "engine", e.file, e.line, "%s", e.text);
}

static int want_folder(const char *path, struct err *e)
{
  struct stat st;

  if (stat(path, &st) == 0 && S_ISDIR(st.st_mode)) return 0;
  return err_set(e, EX_NOINPUT, path, 0, "is not a folder of knowledge that could be looked at.");
}

/* Does a folder hold a whole knowledge, and not only somebody's additions to it? */
static bool is_whole(const char *folder)
{
  char *path = file_join(folder, "rules/templates");
  struct stat st;
  bool whole = stat(path, &st) == 0;

  free(path);
  return whole;
}

static int load_old(const struct run *r, const char *folder, struct knowledge *out, struct err *e)
{
  struct knowledge_files files;
  struct problems p = {0};
  bool whole = is_whole(folder);
  int status = find_files(whole ? folder : r->shipped, whole ? NULL : folder, &files, e);

  if (status) return status;
  status = load_files(&files, out, &p, e);
  if (status == 0 && p.serious)
    status = err_set(e, EX_CONFIG, p.items[0].file, p.items[0].line, "the old knowledge cannot be used: %s",
                     p.items[0].text);
  if (status) knowledge_free(out);
  problems_free(&p);
  find_free(&files);
  return status;
}

static int compare(struct run *r, struct err *e)
{
  const char *cases = r->args->cases ? r->args->cases : "tests/cases";
  struct knowledge old;
  int status = load_old(r, r->args->against, &old, e);

  if (status) return status;
  status = compare_cases(&old, &r->k, cases, &r->changed, e);
  r->compared = status == 0;
  knowledge_free(&old);
  return status;
}

static int look(struct run *r, struct err *e)
{
  struct knowledge_files files;
  bool usable;
  int status = find_files(r->shipped, r->args->positional_count ? r->args->positional[0] : r->own, &files, e);

  if (status) return status;
  r->files = files.count;
  for (size_t i = 0; i < files.count; i++) r->own_files += files.items[i].own;
  status = load_files(&files, &r->k, &r->p, e);
  if (status == 0 && r->p.serious == 0) try_engine(&r->k, &r->p);
  usable = status == 0 && r->p.serious == 0;
  if (usable) vet_knowledge(&r->k, &r->p);
  problems_sort(&r->p);
  if (usable && r->args->against) status = compare(r, e);
  find_free(&files);
  return status;
}

int run_vet(const struct args *args, struct err *e)
{
  struct run r = {.args = args};
  int status;

  if (args->cases && !args->against)
    return err_set(e, EX_USAGE, NULL, 0, "--cases goes with --against: it says which cases are compared.");
  status = args->positional_count ? want_folder(args->positional[0], e) : 0;
  if (status == 0 && args->against) status = want_folder(args->against, e);
  if (status == 0) status = find_shipped(&r.shipped, e);
  if (status) return status;
  if (args->positional_count == 0) r.own = find_own();
  status = look(&r, e);
  if (status == 0 && args->json) print_json(&r);
  else if (status == 0) print_text(&r);
  if (status == 0 && r.p.serious) {
    status = EX_DATAERR;
    e->status = 0; /* what is wrong was said already */
  }
  changed_cases_free(&r.changed);
  knowledge_free(&r.k);
  problems_free(&r.p);
  free(r.shipped);
  free(r.own);
  return status;
}
