/* cmd_job.c - the command "job": its verbs, and those that open and end a job. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/desk.h"
#include "knowledge/load.h"
#include "report/parts.h"
#include "shop/words.h"

/* Score from which words are taken for a machine or a complaint without asking back. */
static const double clear_enough = 0.45;

enum way { ALONE, READS, WRITES };

static const struct verb {
  const char *name, *wants;
  enum way way;
  int least, most; /* operands, the verb included */
  int (*run)(struct desk *, struct err *);
} verbs[] = {
    {"open", "MACHINE [WORDS...]", WRITES, 2, 24, desk_open},
    {"add", "NAME WHAT...", WRITES, 3, 24, desk_add},
    {"list", "[--all]", READS, 1, 1, desk_list},
    {"find", "WORDS...", READS, 2, 24, desk_find},
    {"show", "[NAME]", READS, 1, 2, desk_show},
    {"back", "NAME [CHECK]", WRITES, 2, 24, desk_back},
    {"close", "NAME ENDING", WRITES, 3, 4, desk_close},
    {"reopen", "NAME [WHY...]", WRITES, 2, 24, desk_reopen},
    {"export", "[NAME] [--all]", READS, 1, 2, desk_export},
    {"import", "FILE", WRITES, 2, 2, desk_import},
    {"backup", "FILE", READS, 2, 2, desk_backup},
    {"restore", "FILE", ALONE, 2, 2, desk_restore},
    {"merge", "FILE", WRITES, 2, 2, desk_merge}};

enum { VERBS = sizeof verbs / sizeof verbs[0] };

char *desk_words(const struct desk *d, int from)
{
  struct buf b = {0};

  buf_add(&b, "");
  for (int i = from; i < d->args->positional_count; i++)
    buf_addf(&b, "%s%s", i > from ? " " : "", d->args->positional[i]);
  return b.text;
}

const char *desk_name(const char *id) { return id + STORE_ID - 1 - STORE_SHORT; }

int desk_resolve(const struct desk *d, char id[STORE_ID], struct err *e)
{
  const char *name = d->args->positional_count > 1 ? d->args->positional[1] : "last";

  return store_resolve(d->store, name, id, e);
}

int desk_read(const struct desk *d, struct job *out, struct err *e)
{
  char id[STORE_ID];
  int status = desk_resolve(d, id, e);

  return status ? status : job_read(d->store, &d->k, id, out, e);
}

int desk_write(const struct desk *d, const char *id, struct job_news *n, struct err *e)
{
  int status = n->count ? job_write(d->store, &d->k, id, d->who, n, e) : 0;

  if (status == 0) printf("Job %s: %s.\n", desk_name(id), n->count ? "kept" : "nothing changed");
  job_news_free(n);
  return status;
}

/* ---- opening and ending -------------------------------------------------------------------- */

static int find_machine(const struct desk *d, int *out, struct err *e)
{
  const char *said = d->args->positional[1];
  struct word_match m[1];

  *out = knowledge_find(&d->k, ENTRY_CLASS, said);
  if (*out < 0 && words_match_machines(&d->k, said, m, 1) == 1 && m[0].score >= clear_enough) *out = m[0].at;
  if (*out >= 0) return 0;
  return err_set(e, EX_DATAERR, NULL, 0,
                 "\"%.60s\" is no machine I know. \"pullcord list machines\" shows them.", said);
}

int desk_open(struct desk *d, struct err *e)
{
  struct job_news n = {0};
  struct bench_case none, c;
  struct words_said said = {.count = 0};
  char *words = desk_words(d, 2), id[STORE_ID];
  int machine, complaint = -1, status = find_machine(d, &machine, e);

  case_begin(&none, &d->k);
  case_begin(&c, &d->k);
  if (status == 0) status = case_set_machine(&c, &d->k, machine, NULL, 0, NULL, 0, e);
  if (status == 0) {
    if (d->args->owner) job_say_text(&n, "owner", d->args->owner);
    if (*words) job_say_text(&n, "words", words);
    if (*words) complaint = knowledge_find(&d->k, ENTRY_COMPLAINT, words);
    if (*words && complaint < 0) {
      words_complaints(&d->k, &c, words, &said);
      if (said.clear >= WORDS_FAIRLY) complaint = said.best[0].at;
    }
    if (complaint >= 0) case_add_complaint(&c, complaint);
    job_say_change(&n, &d->k, &none, &c);
    status = job_open(d->store, &d->k, d->who, &n, id, e);
  }
  if (status == 0) {
    printf("Job %s: %s", desk_name(id), d->k.classes[machine].name);
    if (complaint >= 0) printf(", %s", d->k.complaints[complaint].name);
    printf(".\n");
    if (*words && complaint < 0 && said.clear == WORDS_UNSURE)
      printf("I am not sure what those words mean; the nearest complaint is %s (%s).\n",
             d->k.complaints[said.best[0].at].id, d->k.complaints[said.best[0].at].name);
    if (*words && complaint < 0)
      printf("Those words match no complaint I know; add one: pullcord job add %s complaint ID\n",
             desk_name(id));
  }
  job_news_free(&n);
  case_free(&none);
  case_free(&c);
  free(words);
  return status;
}

static int find_ending(const char *said, const char **out, struct err *e)
{
  const char *names[8], *near;
  size_t count = 0;

  while ((names[count] = job_ending(count))) {
    if (strcmp(names[count], said) == 0) {
      *out = names[count];
      return 0;
    }
    count++;
  }
  near = text_nearest(said, names, count);
  return err_set(e, EX_USAGE, NULL, 0,
                 "a job ends as repaired, nothing-broken, handed-over or given-up, not \"%.40s\"%s%s%s", said,
                 near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
}

static int refuse_covers(const struct desk *d, const struct job *j, struct err *e)
{
  int *order = mem_array(d->k.cover_count + 1, sizeof *order), status = 0;
  size_t count = part_to_refit(&d->k, &j->bench_case, order);
  struct buf names = {0};

  for (size_t i = 0; i < count; i++) buf_addf(&names, "%s%s", i ? ", " : "", d->k.covers[order[i]].name);
  if (count && !d->args->covers_off)
    status = err_set(e, EX_DATAERR, NULL, 0,
                     "job %s is not closed: still off: %s. Put them back (job add %s on COVER), or "
                     "say --covers-off.",
                     desk_name(j->id), buf_text(&names), desk_name(j->id));
  buf_free(&names);
  free(order);
  return status;
}

/* A machine that is called repaired goes home looked over, or with a word that it was not. */
static int refuse_service(const struct desk *d, const struct job *j, struct err *e)
{
  struct buf names = {0};
  int status = 0;

  for (size_t i = 0; i < SERVICE_ITEMS; i++)
    if (job_service_open(j, i))
      buf_addf(&names, "%s%s%s", names.len ? ", " : "", service_id(i),
               j->service[i].state == SERVICE_FOUND ? " (found)" : "");
  if (names.len && !d->args->service_open)
    status = err_set(e, EX_DATAERR, NULL, 0,
                     "job %s is not closed: service check open: %s. Look at them (job add %s service ITEMS "
                     "done), or say --service-open.",
                     desk_name(j->id), buf_text(&names), desk_name(j->id));
  buf_free(&names);
  return status;
}

int desk_close(struct desk *d, struct err *e)
{
  const char *ending = NULL;
  struct job_news n = {0};
  struct job j;
  char *words = desk_words(d, 2);
  int *faults, status;
  size_t count = 0;

  for (char *c = words; *c; c++)
    if (*c == ' ') *c = '-';
  status = find_ending(words, &ending, e);
  free(words);
  if (status == 0) status = desk_read(d, &j, e);
  if (status) return status;
  faults = mem_array(j.repair_count + 1, sizeof *faults);
  if (j.closed)
    status = err_set(e, EX_DATAERR, NULL, 0, "job %s is closed already (%s).", desk_name(j.id), j.ending);
  if (status == 0) status = refuse_covers(d, &j, e);
  if (status == 0 && strcmp(ending, "repaired") == 0) status = refuse_service(d, &j, e);
  if (status == 0) {
    if (strcmp(ending, "repaired") == 0) count = job_confirmed(&j, faults);
    job_say_ended(&n, &d->k, ending, &j);
    status = desk_write(d, j.id, &n, e);
    for (size_t i = 0; status == 0 && i < count; i++) printf("Confirmed: %s.\n", d->k.faults[faults[i]].name);
    if (status == 0 && count == 0 && strcmp(ending, "repaired") == 0)
      printf("No repair of it has passed its proof run, so nothing is learned from it.\n");
    if (status == 0) printf("Its card: pullcord card %s --output card.html\n", desk_name(j.id));
  }
  free(faults);
  job_free(&j);
  return status;
}

int desk_reopen(struct desk *d, struct err *e)
{
  struct job_news n = {0};
  struct job j;
  char *why = desk_words(d, 2);
  int status = desk_read(d, &j, e);

  if (status == 0) {
    if (!j.closed) status = err_set(e, EX_DATAERR, NULL, 0, "job %s is open.", desk_name(j.id));
    if (status == 0) {
      job_say_reopened(&n, why);
      status = desk_write(d, j.id, &n, e);
    }
    job_free(&j);
  }
  free(why);
  return status;
}

/* ---- the command ---------------------------------------------------------------------------- */

static const struct verb *find_verb(const char *name, struct err *e)
{
  const char *names[VERBS], *near;

  for (size_t i = 0; i < VERBS; i++) {
    if (strcmp(verbs[i].name, name) == 0) return &verbs[i];
    names[i] = verbs[i].name;
  }
  near = text_nearest(name, names, VERBS);
  err_set(e, EX_USAGE, NULL, 0,
          "\"%.40s\" is nothing that can be done with a job%s%s%s \"pullcord job --help\" lists it.", name,
          near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  return NULL;
}

int run_job(const struct args *args, struct err *e)
{
  const struct verb *v = find_verb(args->positional[0], e);
  struct desk d = {.args = args, .who = commands_who(args)};
  int status;

  if (!v) return EX_USAGE;
  if (args->positional_count < v->least || args->positional_count > v->most)
    return err_set(e, EX_USAGE, NULL, 0, "job %s wants %s.", v->name, v->wants);
  status = load_knowledge(&d.k, e);
  if (status) return status;
  status = store_folder(&d.folder, e);
  if (status == 0 && v->way != ALONE) {
    status = store_open(d.folder, v->way == WRITES, &d.store, e);
    if (status == EX_NOINPUT && v->way == READS) {
      printf("No job is kept yet. \"pullcord\" begins one.\n");
      e->status = 0;
    }
  }
  if (status == 0) status = v->run(&d, e);
  else if (status == EX_NOINPUT && e->status == 0) status = 0;
  store_close(d.store);
  free(d.folder);
  knowledge_free(&d.k);
  return status;
}
