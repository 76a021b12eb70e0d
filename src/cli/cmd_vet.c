/* cmd_vet.c - looks through the knowledge for mistakes. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/commands.h"
#include "engine/engine.h"
#include "json/json.h"
#include "knowledge/load.h"

static void print_json(const struct problems *p, size_t kept)
{
  struct json *o = json_object(), *list = json_list();
  char *text;

  for (size_t i = 0; i < kept; i++) {
    struct json *x = json_object();

    json_put_text(x, "file", p->items[i].file);
    json_put_number(x, "line", p->items[i].line);
    json_put_text(x, "kind", p->items[i].kind);
    json_put_bool(x, "serious", p->items[i].serious);
    json_put_text(x, "text", p->items[i].text);
    json_push(list, x);
  }
  json_put_text(o, "pullcord", "vet-1");
  json_put_number(o, "count", (double)p->count);
  json_put_number(o, "serious", (double)p->serious);
  json_put(o, "problems", list);
  text = json_print(o);
  fputs(text, stdout);
  free(text);
  json_free(o);
}

static void print_text(const struct problems *p, size_t kept, const struct knowledge *k)
{
  for (size_t i = 0; i < kept; i++) {
    const struct problem *x = &p->items[i];

    printf("%s:%d: %s%s\n", x->file, x->line, x->serious ? "" : "(worth a look) ", x->text);
  }
  if (p->count > kept) printf("... and %zu more\n", p->count - kept);
  printf("%zu faults, %zu checks, %zu signs, %zu rules looked through: ", k->fault_count, k->check_count,
         k->sign_count, k->rule_count);
  if (p->count == 0) printf("nothing wrong.\n");
  else printf("%zu to mend, %zu worth a look.\n", p->serious, p->count - p->serious);
}

/* Rules that pass the scan must also load into the engine. */
static void try_engine(const struct knowledge *k, struct problems *p)
{
  struct engine *engine;
  struct err e;

  if (engine_open(k, NULL, &engine, &e) == 0) engine_close(engine);
  else problem_add(p, true, "engine", e.file, e.line, "%s", e.text);
}

int run_vet(const struct args *args, struct err *e)
{
  struct knowledge_files files;
  struct problems p = {0};
  struct knowledge k;
  char *shipped = NULL, *own = NULL;
  size_t kept;
  int status = find_shipped(&shipped, e);

  if (status) return status;
  if (args->positional_count == 0) own = find_own();
  status = find_files(shipped, args->positional_count ? args->positional[0] : own, &files, e);
  if (status == 0) {
    status = load_files(&files, &k, &p, e);
    if (status == 0 && p.serious == 0) try_engine(&k, &p);
    problems_sort(&p);
    kept = p.count < PROBLEMS_KEPT ? p.count : PROBLEMS_KEPT;
    if (status == 0 && args->json) print_json(&p, kept);
    else if (status == 0) print_text(&p, kept, &k);
    if (status == 0 && p.serious) {
      status = EX_DATAERR;
      e->status = 0; /* what is wrong was said already */
    }
    knowledge_free(&k);
    find_free(&files);
  }
  problems_free(&p);
  free(shipped);
  free(own);
  return status;
}
