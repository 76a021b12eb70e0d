/* desk_show.c - lists of jobs, and one job with all its entries; see desk.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/text.h"
#include "cli/desk.h"
#include "cli/entry_words.h"
#include "cli/like.h"
#include "report/parts.h"
#include "shop/history.h"

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
    entry_words(&said, k, x->kind, b);
  if (strcmp(x->who, "bench") != 0 && *x->who) buf_addf(&said, " [%s]", x->who);
  tame(said.text);
  tame(head.text);
  print_wrapped(buf_text(&head), "                              ", buf_text(&said));
  json_free(b);
  buf_free(&said);
  buf_free(&head);
}

/* Once something was repaired: what has yet to be looked at before it goes home. */
static void print_service(const struct job *j)
{
  struct buf b = {0};

  for (size_t i = 0; j->repair_count && i < SERVICE_ITEMS; i++) {
    const struct job_service *s = &j->service[i];

    if (!job_service_open(j, i)) continue;
    buf_addf(&b, "%s%s", b.len ? ", " : "", service_id(i));
    if (s->state == SERVICE_FOUND) buf_addf(&b, " (found: %s)", s->text);
  }
  if (b.len) print_wrapped("Service check open: ", "  ", buf_text(&b));
  buf_free(&b);
}

static void print_sums(const struct desk *d, const struct job *j)
{
  int *order = mem_array(d->k.cover_count + 1, sizeof *order);
  size_t count = part_to_refit(&d->k, &j->bench_case, order);

  if (j->minutes > 0) printf("Minutes: %g\n", j->minutes);
  for (size_t i = 0; i < j->parts.count; i++) print_wrapped("Part: ", "      ", j->parts.items[i].text);
  for (size_t i = 0; i < count; i++) printf("Still off: %s\n", d->k.covers[order[i]].name);
  print_service(j);
  if (j->unread)
    printf("%zu entries say nothing to this program and its knowledge; they are kept, but do not count.\n",
           j->unread);
  free(order);
}

/* Past jobs that were like this one; a switch that cannot be read leaves them all in. */
static int print_like(const struct desk *d, const struct job *j, struct err *e)
{
  struct outcome now = {.machine_class = -1, .complaint = -1};
  struct learn_switch on = {0};
  struct outcomes past;
  struct buf out = {0};
  int status;

  if (learn_switch_read(d->folder, &on, e)) on.since = 0;
  status = history_read(d->store, &d->k, on.since, &past, e);
  if (status) return status;
  snprintf(now.id, sizeof now.id, "%s", j->id);
  history_case(&d->k, &j->bench_case, &now);
  like_words(&out, &d->k, &now, &past, WIDTH);
  if (out.len) printf("Past jobs:\n%s", buf_text(&out));
  buf_free(&out);
  free(now.results);
  outcomes_free(&past);
  return 0;
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
    snprintf(j.id, sizeof j.id, "%s", id);
    print_sums(d, &j);
    status = print_like(d, &j, e);
    job_free(&j);
    store_entries_free(&entries);
  }
  store_jobs_free(&row);
  return status;
}
