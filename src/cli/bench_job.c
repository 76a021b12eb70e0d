/* bench_job.c - the stored job behind the conversation; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/file.h"
#include "cli/bench.h"
#include "cli/terminal.h"

static char *copy_text(const char *text)
{
  char *copy = mem_new(strlen(text) + 1);

  return strcpy(copy, text);
}

static const char *called(const char *id) { return id + STORE_ID - 1 - STORE_SHORT; }

/* ---- opening ------------------------------------------------------------------------------ */

static int put_aside(const char *folder, struct err *e)
{
  char kept[500];
  int status = store_set_aside(folder, kept, sizeof kept, e);

  if (status == 0) bench_say("The damaged store was put aside as %s; nothing was thrown away.", kept);
  return status;
}

int bench_open_store(struct bench *b, struct err *e)
{
  char *folder, *history;
  int status = store_folder(&folder, e);

  if (status) return status;
  status = store_open(folder, true, &b->store, e);
  if (status == 0 || status == EX_DATAERR) {
    history = file_join(folder, "history");
    terminal_begin(history);
    free(history);
  }
  if (status == EX_DATAERR) {
    bench_say("%s %s", e->file, e->text);
    if (bench_yes("Or put the damaged store aside and begin an empty one?", false)) {
      status = put_aside(folder, e);
      if (status == 0) status = store_open(folder, true, &b->store, e);
    }
  }
  free(folder);
  return status;
}

/* ---- taking a job up ---------------------------------------------------------------------- */

/* Makes the stored job the one of the conversation; j is used up. */
static void take(struct bench *b, struct job *j)
{
  bench_let_go(b);
  memcpy(b->id, j->id, STORE_ID);
  b->last_number = j->last_number;
  b->advice = j->advice;
  if (j->proof == PROOF_PASSED) b->proved = j->repairs[j->repair_count - 1].fault;
  job_copy_case(b->k, &j->bench_case, &b->c);
  job_copy_case(b->k, &j->bench_case, &b->kept);
  b->words = copy_text(j->words);
  b->kept_words = copy_text(j->words);
  job_told(b->k, &b->c, b->told);
  if (j->unread)
    bench_say(
        "%zu of this job's entries name things that the present knowledge does not have. They are kept, but do "
        "not count.",
        j->unread);
  job_free(j);
}

static void describe(const struct bench *b, const struct job *j, struct buf *out)
{
  const struct bench_case *c = &j->bench_case;

  buf_addf(out, "%s%s%s, %zu %s",
           c->machine_class >= 0 ? b->k->classes[c->machine_class].name : "a machine",
           c->complaint_count ? ", " : "", c->complaint_count ? b->k->complaints[c->complaints[0]].name : "",
           c->result_count, c->result_count == 1 ? "result" : "results");
  if (*j->owner) buf_addf(out, " (%s)", j->owner);
}

/* The job that was asked for by name. One that is closed is opened again if the person says
 * so. */
static int take_named(struct bench *b, const char *name, struct err *e)
{
  char id[STORE_ID], when[24];
  struct buf q = {0};
  struct job j;
  int status = store_resolve(b->store, name, id, e);

  if (status == 0) status = job_read(b->store, b->k, id, &j, e);
  if (status) return status;
  if (j.closed) {
    clock_text(j.closed, when, sizeof when);
    buf_addf(&q, "That job was closed on %s (%s). Open it again?", when, j.ending);
    b->over = !bench_yes(buf_text(&q), false);
  } else {
    describe(b, &j, &q);
    bench_say("Job %s: %s.", called(id), buf_text(&q));
  }
  if (j.closed && !b->over) job_say_reopened(&b->news, "at the bench");
  buf_free(&q);
  if (b->over) {
    b->closed = true;
    job_free(&j);
    return 0;
  }
  take(b, &j);
  bench_keep(b);
  return 0;
}

/* Offers the open job that was last worked on. */
static int take_last(struct bench *b, const struct store_jobs *open, struct err *e)
{
  struct buf q = {0}, said = {0};
  struct job j;
  int status = job_read(b->store, b->k, open->items[0].id, &j, e);
  bool yes;

  if (status) return status;
  describe(b, &j, &said);
  if (open->count > 1) {
    bench_say("%zu jobs are open. \"pullcord job list\" shows them; \"pullcord bench NAME\" takes one up.",
              open->count);
    buf_addf(&q, "The last one is %s: %s. Go on with it?", called(j.id), buf_text(&said));
  } else {
    buf_addf(&q, "A job was left open: %s. Go on with it?", buf_text(&said));
  }
  yes = bench_yes(buf_text(&q), true);
  buf_free(&q);
  buf_free(&said);
  if (yes) {
    take(b, &j);
    return 0;
  }
  bench_say("It stays open as %s.", called(j.id));
  job_free(&j);
  bench_new(b);
  return 0;
}

int bench_take_up(struct bench *b, const struct args *args, struct err *e)
{
  const char *name = args->job ? args->job : args->positional_count ? args->positional[0] : NULL;
  struct store_jobs open;
  int status;

  if (name) return take_named(b, name, e);
  status = store_list(b->store, STORE_OPEN, 1000, &open, e);
  if (status) return status;
  if (open.count && !args->new_job) status = take_last(b, &open, e);
  else bench_new(b);
  store_jobs_free(&open);
  return status;
}

/* ---- keeping ------------------------------------------------------------------------------ */

bool bench_keep(struct bench *b)
{
  struct err e;
  int status;

  if (b->words && *b->words && strcmp(b->words, b->kept_words) != 0) {
    job_say_text(&b->news, "words", b->words);
    free(b->kept_words);
    b->kept_words = copy_text(b->words);
  }
  job_say_change(&b->news, b->k, &b->kept, &b->c);
  case_free(&b->kept);
  job_copy_case(b->k, &b->c, &b->kept);
  if (b->news.count == 0) return true;
  status = *b->id ? job_write(b->store, b->k, b->id, b->who, &b->news, &e)
                  : job_open(b->store, b->k, b->who, &b->news, b->id, &e);
  if (status) {
    if (b->last_number == 0) b->id[0] = '\0'; /* it was not opened after all */
    bench_say("NOT KEPT: %s %s I go on, and try again with your next entry.", e.file, e.text);
    return false;
  }
  b->last_number += (int64_t)b->news.count;
  job_news_free(&b->news);
  return true;
}

void bench_take_in(struct bench *b)
{
  int64_t last = 0, known = b->last_number;
  struct err e;
  struct job j;

  if (!*b->id || b->news.count || store_last_number(b->store, b->id, &last, &e) || last == known) return;
  if (job_read(b->store, b->k, b->id, &j, &e)) return;
  take(b, &j);
  b->assessed = false;
  bench_say("Another program added entries to this job meanwhile; they are taken in.");
}

void bench_keep_advice(struct bench *b)
{
  struct job_advice now = {.next = b->pending};

  if (!b->assessed || b->proved >= 0) return;
  snprintf(now.disposition, sizeof now.disposition, "%s", disposition_name(b->a.disposition));
  for (size_t i = 0; i < b->a.ranking_count && now.count < JOB_MOST_CAUSES; i++)
    now.causes[now.count++] = (struct job_cause){b->a.ranking[i].fault, b->a.ranking[i].blame};
  if (job_same_advice(&now, &b->advice)) return;
  b->advice = now;
  job_say_advice(&b->news, b->k, &now);
  bench_keep(b);
}

void bench_let_go(struct bench *b)
{
  case_free(&b->c);
  case_free(&b->kept);
  free(b->words);
  free(b->kept_words);
  b->words = b->kept_words = NULL;
  b->id[0] = '\0';
  b->last_number = 0;
  buf_free(&b->like_shown);
  b->advice = (struct job_advice){.next = -1};
  b->proved = b->pending = b->feature = -1;
}
