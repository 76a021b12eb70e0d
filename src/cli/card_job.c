/* card_job.c - the job card of a stored job: all that was entered for it; see commands.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "cli/commands.h"
#include "cli/entry_words.h"
#include "knowledge/load.h"
#include "report/card.h"
#include "shop/history.h"

enum { MOST_WHO = 6 };

/* One stored job. The card is about the case as it stood before the repair that cured it, so
 * that its ranking is what the repair was chosen by; what was seen later is told later. */
struct telling {
  const struct knowledge *k;
  struct store_entries entries;
  struct job job;      /* all of it */
  struct job before;   /* up to the repair that cured it */
  size_t cut;          /* how many entries that is */
  int64_t opened;
};

static void from_prefix(struct telling *t)
{
  struct store_entries first = {t->entries.items, 0, 0};
  int *faults = mem_array(t->job.repair_count + 1, sizeof *faults);
  size_t count = job_confirmed(&t->job, faults);

  t->cut = count ? history_known_from(t->k, &t->entries, faults, count) : t->entries.count;
  first.count = t->cut;
  job_replay(t->k, &first, &t->before);
  if (t->cut < t->entries.count) {
    struct bench_case *c = &t->before.bench_case;

    for (size_t i = c->result_count; i > 0; i--)
      if (!case_result_of(&t->job.bench_case, c->results[i - 1].check))
        case_drop_result(c, c->results[i - 1].check); /* taken back later */
    memcpy(c->off, t->job.bench_case.off, t->k->cover_count * sizeof *c->off);
  }
  free(faults);
}

static int read_job(struct telling *t, struct store *s, const char *name, struct err *e)
{
  struct store_jobs row;
  char id[STORE_ID];
  int status = store_resolve(s, name, id, e);

  if (status == 0) status = store_row(s, id, &row, e);
  if (status) return status;
  t->opened = row.items[0].opened;
  store_jobs_free(&row);
  status = store_entries(s, id, &t->entries, e);
  if (status) return status;
  job_replay(t->k, &t->entries, &t->job);
  snprintf(t->job.id, sizeof t->job.id, "%s", id);
  from_prefix(t);
  return 0;
}

/* ---- telling the card ---------------------------------------------------------------------- */

static void tell_service(struct card *card, const struct json *b, const char *when, const char *who)
{
  int item = service_find(json_text(json_member(b, "item")));
  const char *state = json_text(json_member(b, "state"));

  if (item < 0) return;
  card_add_service(card, json_text(json_member(b, "item")),
                   strcmp(state, "found") == 0  ? CARD_SERVICE_FOUND
                   : strcmp(state, "left") == 0 ? CARD_SERVICE_LEFT
                                                : CARD_SERVICE_DONE,
                   json_text(json_member(b, "text")), when, who);
}

/* The repair as the job has it: one that was taken back is told in the account only. */
static void tell_repair(struct card *card, const struct job *j, const struct json *b, const char *when,
                        const char *who)
{
  int fault = knowledge_find(card->k, ENTRY_FAULT, json_text(json_member(b, "fault")));

  for (size_t i = 0; i < j->repair_count; i++)
    if (j->repairs[i].fault == fault) {
      card_add_repair(card, fault, -1, NULL, 0, when, who);
      return;
    }
}

static void tell_entry(struct card *card, const struct telling *t, const struct store_entry *x,
                       const struct json *b)
{
  struct buf said = {0}, what = {0};
  char when[24];

  clock_text(x->at, when, sizeof when);
  if (strcmp(x->kind, "result") == 0) {
    int check = knowledge_find(t->k, ENTRY_CHECK, json_text(json_member(b, "check")));

    if (check >= 0 && x < t->entries.items + t->cut) card_add_entry(card, check, when, x->who);
  } else if (strcmp(x->kind, "repair") == 0) tell_repair(card, &t->job, b, when, x->who);
  else if (strcmp(x->kind, "note") == 0) card_add_note(card, json_text(json_member(b, "text")), when, x->who);
  else if (strcmp(x->kind, "service") == 0) tell_service(card, b, when, x->who);
  else if (strcmp(x->kind, "proof") == 0) {
    buf_addf(&said, "Proof run on %.10s, by %s.", when, x->who);
    card_set(card, CARD_PROOF_WORDS, buf_text(&said));
    buf_free(&said);
  }
  entry_words(&said, t->k, x->kind, b);
  buf_add(&what, strcmp(x->kind, "took-back") == 0 ? "taken back" : x->kind);
  when[16] = '\0'; /* to the minute; the head of the column says which time */
  card_add_line(card, when, x->who, buf_text(&what), buf_text(&said));
  buf_free(&said);
  buf_free(&what);
}

/* Everybody who entered anything, in the order in which they first did. */
static void tell_who(struct card *card, const struct store_entries *entries)
{
  const char *names[MOST_WHO] = {NULL};
  struct buf b = {0};
  size_t count = 0;

  for (size_t i = 0; i < entries->count && count < MOST_WHO; i++) {
    bool known = *entries->items[i].who == '\0';

    for (size_t m = 0; m < count; m++) known = known || strcmp(names[m], entries->items[i].who) == 0;
    if (!known) names[count++] = entries->items[i].who;
  }
  for (size_t i = 0; i < count; i++) buf_addf(&b, "%s%s", i ? ", " : "", names[i]);
  card_set(card, CARD_WHO, buf_text(&b));
  buf_free(&b);
}

static enum card_ending ending_of(const struct job *j)
{
  static const enum card_ending endings[] = {CARD_MENDED, CARD_NOTHING_BROKEN, CARD_HANDED_OVER, CARD_NOT_MENDED};

  if (!j->closed) return CARD_OPEN;
  for (size_t i = 0; job_ending(i); i++)
    if (strcmp(j->ending, job_ending(i)) == 0) return endings[i];
  return CARD_NOT_MENDED;
}

static void tell_sums(struct card *card, const struct telling *t)
{
  static const enum card_proof proofs[] = {CARD_PROOF_FAILED, CARD_PROOF_NONE, CARD_PROOF_PASSED};
  const struct job *j = &t->job;
  char when[24];

  clock_text(t->opened, when, sizeof when);
  card_set(card, CARD_OPENED, when);
  if (j->closed) {
    clock_text(j->closed, when, sizeof when);
    card_set(card, CARD_CLOSED, when);
  }
  card_set(card, CARD_JOB, j->id + STORE_ID - 1 - STORE_SHORT);
  card_set(card, CARD_OWNER_REFERENCE, j->owner);
  card_set(card, CARD_WORDS, j->words);
  for (size_t i = 0; i < j->parts.count; i++) card_add_part(card, j->parts.items[i].text);
  if (j->minutes > 0) card_set_minutes(card, j->minutes);
  if (j->repair_count) card_set_proof(card, proofs[j->repairs[j->repair_count - 1].proof + 1]);
  card_set_ending(card, ending_of(j));
}

static void tell(struct card *card, const struct telling *t)
{
  tell_sums(card, t);
  tell_who(card, &t->entries);
  for (size_t i = 0; i < t->entries.count; i++) {
    const struct store_entry *x = &t->entries.items[i];
    struct json *b = NULL;

    if (json_read("entry", x->body, strlen(x->body), &b, &(struct err){0}) == 0 &&
        json_kind(b) == JSON_OBJECT)
      tell_entry(card, t, x, b);
    json_free(b);
  }
  /* a repair or a failed proof run opened the service check again */
  for (size_t i = 0; i < SERVICE_ITEMS; i++)
    if (t->job.service[i].state == SERVICE_OPEN)
      card_drop_service(card, service_id(i));
}

static int give(const struct telling *t, const struct args *args, struct err *e)
{
  struct assessor *assessor;
  struct assessment a;
  struct card card;
  int status = assessor_open(t->k, &assessor, e);

  if (status) return status;
  status = assess_case(assessor, &t->before.bench_case, &a, e);
  if (status == 0) {
    card_from_case(&card, t->k, &t->before.bench_case, &a);
    tell(&card, t);
    status = card_give(&card, args, e);
    card_free(&card);
    assessment_free(&a);
  }
  assessor_close(assessor);
  return status;
}

int card_of_job(const struct args *args, const char *name, struct err *e)
{
  struct knowledge k;
  struct telling t = {.k = &k};
  struct store *s = NULL;
  char *folder = NULL;
  int status = load_knowledge(&k, e);

  if (status) return status;
  status = store_folder(&folder, e);
  if (status == 0) status = store_open(folder, false, &s, e);
  if (status == EX_NOINPUT)
    status = err_set(e, EX_NOINPUT, NULL, 0,
                     "there is no file \"%.60s\", and no job is kept yet that could be called so.", name);
  if (status == 0) status = read_job(&t, s, name, e);
  if (status == 0) {
    status = give(&t, args, e);
    store_entries_free(&t.entries);
    job_free(&t.job);
    job_free(&t.before);
  }
  store_close(s);
  free(folder);
  knowledge_free(&k);
  return status;
}
