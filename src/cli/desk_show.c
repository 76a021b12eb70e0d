/* desk_show.c - lists of jobs, and one job with all its entries; see desk.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/text.h"
#include "cli/desk.h"
#include "report/parts.h"

enum { WIDTH = 78, MOST_LISTED = 10000, MOST_FOUND = 200 };

static void print_wrapped(const char *first, const char *rest, const char *text)
{
  struct buf b = {0};

  text_wrap(&b, text, WIDTH, first, rest);
  printf("%s\n", buf_text(&b));
  buf_free(&b);
}

static void print_row(const struct store_job *j)
{
  struct buf what = {0};
  char first[60], when[24];

  clock_text(j->opened, when, sizeof when);
  snprintf(first, sizeof first, "%-6s %.10s  ", desk_name(j->id), when);
  buf_addf(&what, "%s", *j->machine ? j->machine : "a machine");
  if (*j->owner) buf_addf(&what, " (%s)", j->owner);
  if (*j->words) buf_addf(&what, ": \"%s\"", j->words);
  if (j->closed) {
    clock_text(j->closed, when, sizeof when);
    buf_addf(&what, " - %s %.10s", j->ending, when);
  }
  print_wrapped(first, "                   ", buf_text(&what));
  buf_free(&what);
}

static int print_jobs(struct store_jobs *jobs, const char *none)
{
  if (jobs->count) printf("%-6s %-10s\n", "name", "opened");
  else printf("%s\n", none);
  for (size_t i = 0; i < jobs->count; i++) print_row(&jobs->items[i]);
  store_jobs_free(jobs);
  return 0;
}

int desk_list(struct desk *d, struct err *e)
{
  struct store_jobs jobs;
  int status = store_list(d->store, d->args->all ? STORE_ALL : STORE_OPEN, MOST_LISTED, &jobs, e);

  return status ? status
                : print_jobs(&jobs, d->args->all ? "There is no job."
                                                 : "No job is open. --all lists the closed ones.");
}

int desk_find(struct desk *d, struct err *e)
{
  struct store_jobs jobs;
  char *words = desk_words(d, 1);
  int status = store_find(d->store, words, MOST_FOUND, &jobs, e);

  free(words);
  return status ? status : print_jobs(&jobs, "No job holds these words.");
}

/* ---- one job ------------------------------------------------------------------------------ */

/* The name of an entry of the knowledge, or its id where it is not known. */
static const char *name_of(const struct knowledge *k, enum entry_kind kind, const struct json *id)
{
  int at = knowledge_find(k, kind, json_text(id));

  if (at < 0) return json_text(id);
  if (kind == ENTRY_CHECK) return k->checks[at].name;
  if (kind == ENTRY_COMPLAINT) return k->complaints[at].name;
  if (kind == ENTRY_COVER) return k->covers[at].name;
  return kind == ENTRY_CLASS ? k->classes[at].name : k->faults[at].name;
}

static void add_list(struct buf *out, const char *before, const struct json *list)
{
  for (const struct json *i = list && json_kind(list) == JSON_LIST ? json_first(list) : NULL; i;
       i = json_next(i)) {
    buf_addf(out, "%s%s", before, json_text(i));
    before = ", ";
  }
}

/* A reading as people write it: the store keeps every digit. */
static void add_reading(struct buf *out, const char *text)
{
  char *end;
  double value = strtod(text, &end);

  buf_addf(out, "%.5g%s", value, end);
}

static void result_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  int check = knowledge_find(k, ENTRY_CHECK, json_text(json_member(b, "check")));
  const char *result = json_text(json_member(b, "result"));
  int at = check >= 0 && *result ? check_result(&k->checks[check], result) : -1;

  buf_addf(out, "%s: ", name_of(k, ENTRY_CHECK, json_member(b, "check")));
  if (at >= 0) buf_add(out, k->checks[check].labels.items[at]);
  else if (*result) buf_add(out, result);
  else add_reading(out, json_text(json_member(b, "reading")));
  if (json_member(b, "sure")) buf_addf(out, " (%g sure)", json_number(json_member(b, "sure")));
}

static void advice_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  const struct json *causes = json_member(b, "causes"), *first = causes ? json_first(causes) : NULL;

  buf_add(out, json_text(json_member(b, "do")));
  if (first)
    buf_addf(out, "; first %s (%.0f %%)", name_of(k, ENTRY_FAULT, json_member(first, "fault")),
             100 * json_number(json_member(first, "chance")));
  if (json_member(b, "next")) buf_addf(out, "; next %s", name_of(k, ENTRY_CHECK, json_member(b, "next")));
}

/* What an entry says, in words. */
static void entry_text(struct buf *out, const struct knowledge *k, const char *kind, const struct json *b)
{
  if (strcmp(kind, "result") == 0) result_text(out, k, b);
  else if (strcmp(kind, "advice") == 0) advice_text(out, k, b);
  else if (strcmp(kind, "machine") == 0) {
    buf_add(out, name_of(k, ENTRY_CLASS, json_member(b, "class")));
    add_list(out, ", has ", json_member(b, "has"));
    add_list(out, ", lacks ", json_member(b, "lacks"));
  } else if (strcmp(kind, "complaint") == 0)
    buf_add(out, name_of(k, ENTRY_COMPLAINT, json_member(b, "complaint")));
  else if (strcmp(kind, "took-back") == 0) {
    if (json_member(b, "check")) buf_add(out, name_of(k, ENTRY_CHECK, json_member(b, "check")));
    else if (json_member(b, "complaint"))
      buf_add(out, name_of(k, ENTRY_COMPLAINT, json_member(b, "complaint")));
    else buf_add(out, name_of(k, ENTRY_FAULT, json_member(b, "repair")));
  } else if (strcmp(kind, "off") == 0 || strcmp(kind, "on") == 0)
    buf_add(out, name_of(k, ENTRY_COVER, json_member(b, "cover")));
  else if (strcmp(kind, "repair") == 0) buf_add(out, name_of(k, ENTRY_FAULT, json_member(b, "fault")));
  else if (strcmp(kind, "proof") == 0)
    buf_addf(out, "%s: %s", name_of(k, ENTRY_FAULT, json_member(b, "fault")),
             json_true(json_member(b, "passed")) ? "passed" : "failed");
  else if (strcmp(kind, "minutes") == 0) buf_addf(out, "%g", json_number(json_member(b, "minutes")));
  else if (strcmp(kind, "spec") == 0) {
    buf_addf(out, "%s: ", name_of(k, ENTRY_CHECK, json_member(b, "check")));
    add_reading(out, json_text(json_member(b, "low")));
    buf_add(out, " to ");
    add_reading(out, json_text(json_member(b, "high")));
  }
  else if (strcmp(kind, "closed") == 0) {
    buf_add(out, json_text(json_member(b, "ending")));
    add_list(out, ", confirmed ", json_member(b, "confirmed"));
  } else if (strcmp(kind, "reopened") == 0) buf_add(out, json_text(json_member(b, "why")));
  else buf_add(out, json_text(json_member(b, "text")));
}

/* Control signs must not take hold of a screen. */
static void tame(char *text)
{
  for (char *c = text; c && *c; c++)
    if ((unsigned char)*c < 0x20 || *c == 0x7F) *c = ' ';
}

static void print_entry(const struct knowledge *k, const struct store_entry *x)
{
  struct buf said = {0}, head = {0};
  struct json *b = NULL;
  char when[24];

  clock_text(x->at, when, sizeof when);
  buf_addf(&head, "  %.16s  %-9s ", when, x->kind);
  if (json_read("entry", x->body, strlen(x->body), &b, &(struct err){0}) == 0 && json_kind(b) == JSON_OBJECT)
    entry_text(&said, k, x->kind, b);
  if (strcmp(x->who, "bench") != 0 && *x->who) buf_addf(&said, " [%s]", x->who);
  tame(said.text);
  tame(head.text);
  print_wrapped(buf_text(&head), "                              ", buf_text(&said));
  json_free(b);
  buf_free(&said);
  buf_free(&head);
}

static void print_sums(const struct desk *d, const struct job *j)
{
  int *order = mem_array(d->k.cover_count + 1, sizeof *order);
  size_t count = part_to_refit(&d->k, &j->bench_case, order);

  if (j->minutes > 0) printf("Minutes: %g\n", j->minutes);
  for (size_t i = 0; i < j->parts.count; i++) print_wrapped("Part: ", "      ", j->parts.items[i].text);
  for (size_t i = 0; i < count; i++) printf("Still off: %s\n", d->k.covers[order[i]].name);
  if (j->unread)
    printf("%zu entries say nothing to this program and its knowledge; they are kept, but do not count.\n",
           j->unread);
  free(order);
}

int desk_show(struct desk *d, struct err *e)
{
  struct store_entries entries;
  struct store_jobs row;
  struct job j;
  char id[STORE_ID], when[24];
  int status = desk_resolve(d, id, e);

  if (status == 0) status = store_row(d->store, id, &row, e);
  if (status) return status;
  status = store_entries(d->store, id, &entries, e);
  if (status == 0) {
    clock_text(row.items[0].opened, when, sizeof when);
    printf("Job %s (%s), opened %s, %s\n", desk_name(id), id, when,
           row.items[0].closed ? row.items[0].ending : "open");
    if (*row.items[0].owner) print_wrapped("Owner: ", "       ", row.items[0].owner);
    for (size_t i = 0; i < entries.count; i++) print_entry(&d->k, &entries.items[i]);
    job_replay(&d->k, &entries, &j);
    print_sums(d, &j);
    job_free(&j);
    store_entries_free(&entries);
  }
  store_jobs_free(&row);
  return status;
}
