/* bench_service.c - the service check at the bench; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/bench.h"
#include "cli/terminal.h"

bool bench_service_open(const struct job *j, struct buf *out)
{
  size_t count = 0;

  for (size_t i = 0; i < SERVICE_ITEMS; i++)
    if (job_service_open(j, i))
      buf_addf(out, "%s%s%s", count++ ? ", " : "The service check is open: ",
               service_id(i), j->service[i].state == SERVICE_FOUND ? " (found)" : "");
  return count > 0;
}

/* Reads what is said of the items and keeps it. */
static bool take(struct bench *b, const char *words)
{
  struct err e;

  if (job_service_read(&b->news, words, &e)) {
    bench_say("%s", e.text);
    return false;
  }
  if (bench_keep(b)) bench_say("Noted.");
  return true;
}

static bool is_state(const char *line)
{
  const char *rest;

  return bench_is_command(line, "done", &rest) || bench_is_command(line, "found", &rest) ||
         bench_is_command(line, "left", &rest);
}

/* Asks one item until it is understood; false when the person stops. */
static bool ask(struct bench *b, const struct service_item *x, const struct job_service *s)
{
  bool taken = false;

  bench_say("%s: %s.", x->name, x->text);
  if (s->state == SERVICE_FOUND) bench_say("  Found before: %s", s->text);
  while (!taken) {
    struct buf words = {0};
    char *line = terminal_line("done, found WHAT, left WHY (enter: stop here)> ");

    if (!line || !*line) {
      free(line);
      return false;
    }
    if (is_state(line)) {
      buf_addf(&words, "%s %s", x->id, line);
      taken = take(b, buf_text(&words));
      buf_free(&words);
    } else bench_say("Type done; found, and what; or left, and why.");
    free(line);
  }
  return true;
}

static void show(const struct job *j)
{
  for (size_t i = 0; i < SERVICE_ITEMS; i++) {
    const struct job_service *s = &j->service[i];

    bench_say("  %s: %s%s%s", service_id(i), job_service_word(s->state),
              s->text && *s->text ? ", " : "", s->text ? s->text : "");
  }
}

void bench_service(struct bench *b, const char *words)
{
  struct err e;
  struct job j;
  bool go = true;

  b->silent = true;
  if (!bench_keep(b) || !*b->id) return;
  if (*words) {
    take(b, words);
    return;
  }
  if (job_read(b->store, b->k, b->id, &j, &e)) {
    bench_say("%s", e.text);
    return;
  }
  for (size_t i = 0; i < SERVICE_ITEMS && go; i++)
    if (job_service_open(&j, i)) go = ask(b, service_item(b->k, &j.bench_case, i), &j.service[i]);
  job_free(&j);
  if (job_read(b->store, b->k, b->id, &j, &e) == 0) {
    show(&j);
    job_free(&j);
  }
}
