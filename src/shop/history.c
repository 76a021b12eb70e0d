/* history.c - see history.h. */
#include "shop/history.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/mem.h"
#include "weigh/casenet.h"

#define SWITCH_FILE "learned.json"
#define SWITCH_VERSION "learned-switch-1"

enum { SWITCH_MAX = 4096 };
static const double sure_enough = 0.999, plain_enough = 0.9;

/* ---- the switch --------------------------------------------------------------------------- */

static int read_switch(const char *path, const struct json *j, struct learn_switch *out, struct err *e)
{
  const struct json *on = json_member(j, "on"), *since = json_member(j, "since");
  char *end = NULL;

  if (strcmp(json_text(json_member(j, "pullcord")), SWITCH_VERSION) == 0 && on &&
      json_kind(on) == JSON_BOOL && since) {
    out->on = json_true(on);
    out->since = strtoll(json_text(since), &end, 10);
  }
  if (end && end != json_text(since) && !*end) return 0;
  return err_set(e, EX_DATAERR, path, 0,
                 "is not a file of this program. \"pullcord learned on\" writes a new one.");
}

int learn_switch_read(const char *folder, struct learn_switch *out, struct err *e)
{
  char *path = file_join(folder, SWITCH_FILE), *text = NULL;
  struct json *j = NULL;
  size_t len;
  int status = file_read(path, SWITCH_MAX, &text, &len, e);

  *out = (struct learn_switch){.on = true};
  if (status == EX_NOINPUT) {
    free(path);
    return 0;
  }
  if (status == 0) status = json_read(path, text, len, &j, e);
  if (status == 0) status = read_switch(path, j, out, e);
  json_free(j);
  free(text);
  free(path);
  return status;
}

int learn_switch_write(const char *folder, const struct learn_switch *s, struct err *e)
{
  char *path = file_join(folder, SWITCH_FILE), *text, since[32];
  struct json *j = json_object();
  int status = file_make_folder(folder, e);

  snprintf(since, sizeof since, "%lld", (long long)s->since);
  json_put_text(j, "pullcord", SWITCH_VERSION);
  json_put_bool(j, "on", s->on);
  json_put_text(j, "since", since); /* as text: every digit stays */
  text = json_print(j);
  if (status == 0) status = file_replace(path, text, strlen(text), e);
  free(text);
  json_free(j);
  free(path);
  return status;
}

/* ---- from a case to plain results ---------------------------------------------------------- */

/* The bands a reading is judged by when there is no card: the most particular ones that fit.
 * -1 when that hangs on a feature nobody told. */
static int bands_for(const struct knowledge *k, const struct bench_case *c, int check)
{
  int best = -1;

  for (size_t i = 0; i < k->bands_count; i++) {
    size_t open;

    if (k->bands[i].check != check || case_needs(c, &k->bands[i].needs, &open) == TRI_LACKS) continue;
    if (best < 0 || k->bands[i].needs.count > k->bands[best].needs.count) best = (int)i;
  }
  if (best >= 0 && case_needs(c, &k->bands[best].needs, &(size_t){0}) != TRI_HAS) return -1;
  return best;
}

static int plain_result(const struct knowledge *k, const struct bench_case *c, const struct case_result *r)
{
  const struct case_card *card = NULL;
  double share[NET_MAX_GRADES];
  int bands = -1;

  if (r->sure < sure_enough || r->result >= 0) return r->sure < sure_enough ? -1 : r->result;
  if (c->given[GIVEN_ALTITUDE].told && k->checks[r->check].quantity == Q_PRESSURE)
    return -1; /* rules judge it at another value */
  card = case_card_of(c, r->check);
  if (!card && (bands = bands_for(k, c, r->check)) < 0) return -1;
  reading_shares(k, r->check, bands, card, r->value, share);
  for (size_t g = 0; g < k->checks[r->check].results.count; g++)
    if (share[g] >= plain_enough) return (int)g;
  return -1;
}

void history_case(const struct knowledge *k, const struct bench_case *c, struct outcome *out)
{
  out->machine_class = c->machine_class;
  out->complaint = c->complaint_count ? c->complaints[0] : -1;
  for (size_t i = 0; i < c->result_count; i++) {
    int result = plain_result(k, c, &c->results[i]);

    if (result >= 0) outcome_add_result(out, c->results[i].check, result);
  }
}

/* ---- one job ------------------------------------------------------------------------------- */

static bool is_among(int fault, const int *faults, size_t count)
{
  for (size_t i = 0; i < count; i++)
    if (faults[i] == fault) return true;
  return false;
}

/* The fault of that id, or what took its place since; -1. */
static int fault_named(const struct knowledge *k, const char *id)
{
  int at = *id ? knowledge_find(k, ENTRY_FAULT, id) : -1;

  for (size_t i = 0; at < 0 && *id && i < k->retired_count; i++)
    if (strcmp(k->retired[i].id, id) == 0) at = knowledge_find(k, ENTRY_FAULT, k->retired[i].replaced_by);
  return at;
}

size_t history_known_from(const struct knowledge *k, const struct store_entries *entries, const int *faults,
                          size_t count)
{
  for (size_t i = 0; i < entries->count; i++) {
    const struct store_entry *x = &entries->items[i];
    struct json *body = NULL;
    bool names = false;

    if (strcmp(x->kind, "repair") != 0 && strcmp(x->kind, "proof") != 0) continue;
    if (json_read("entry", x->body, strlen(x->body), &body, &(struct err){0}) == 0)
      names = is_among(fault_named(k, json_text(json_member(body, "fault"))), faults, count);
    json_free(body);
    if (names) return i;
  }
  return entries->count;
}

static void take_advice(const struct job *before, struct outcome *out)
{
  for (size_t i = 0; i < before->advice.count && i < OUTCOME_MOST_CAUSES; i++) {
    double chance = before->advice.causes[i].chance;

    if (!(chance >= 0 && chance <= 1)) return;
    out->said[out->said_count++] = (struct outcome_cause){before->advice.causes[i].fault, chance};
  }
}

/* Does nothing from there on change the case or the advice? Then the whole job tells as well
 * what there was before, and is not gone through twice. */
static bool same_until_end(const struct store_entries *entries, size_t from)
{
  static const char *const telling[] = {"result", "took-back", "advice", "machine", "complaint", "spec"};

  for (size_t i = from; i < entries->count; i++)
    for (size_t j = 0; j < sizeof telling / sizeof telling[0]; j++)
      if (strcmp(entries->items[i].kind, telling[j]) == 0) return false;
  return true;
}

/* The results there were before the repair, less those taken back later. */
static void take_before(const struct knowledge *k, const struct store_entries *entries, size_t count,
                        const struct job *whole, struct outcome *out)
{
  struct store_entries first = {entries->items, count, 0};
  struct job before;

  if (same_until_end(entries, count)) {
    history_case(k, &whole->bench_case, out);
    take_advice(whole, out);
    return;
  }
  job_replay(k, &first, &before);
  for (size_t i = before.bench_case.result_count; i > 0; i--)
    if (!case_result_of(&whole->bench_case, before.bench_case.results[i - 1].check))
      case_drop_result(&before.bench_case, before.bench_case.results[i - 1].check);
  history_case(k, &before.bench_case, out);
  take_advice(&before, out);
  job_free(&before);
}

bool history_outcome(const struct knowledge *k, const struct store_entries *entries, struct outcome *out)
{
  struct job whole;
  int *faults;
  size_t count;
  bool closed;

  job_replay(k, entries, &whole);
  closed = whole.closed > 0;
  faults = mem_array(whole.repair_count, sizeof *faults);
  count = job_confirmed(&whole, faults);
  out->closed = whole.closed;
  for (int i = 0; job_ending((size_t)i); i++)
    if (strcmp(whole.ending, job_ending((size_t)i)) == 0) out->ending = i;
  for (size_t i = 0; i < count && i < OUTCOME_MOST_FAULTS; i++) out->faults[out->fault_count++] = faults[i];
  out->confirmed = closed && count > 0 && strcmp(whole.ending, job_ending(0)) == 0;
  if (closed) {
    take_before(k, entries, history_known_from(k, entries, faults, count), &whole, out);
    out->machine_class = whole.bench_case.machine_class; /* it may have been told late */
    if (whole.bench_case.complaint_count) out->complaint = whole.bench_case.complaints[0];
  }
  free(faults);
  job_free(&whole);
  return closed;
}

/* Only the advice that stood at a repair, a proof run or the end is looked at; the rest is not
 * worth reading. */
static void drop_old_advice(struct store_entries *entries)
{
  bool later = false; /* is there a later advice with nothing decisive between? */
  size_t to = entries->count;

  for (size_t i = entries->count; i > 0; i--) {
    struct store_entry x = entries->items[i - 1];
    bool advice = strcmp(x.kind, "advice") == 0;

    if (advice && later) {
      free(x.who);
      free(x.kind);
      free(x.body);
      continue;
    }
    if (advice) later = true;
    else if (strcmp(x.kind, "repair") == 0 || strcmp(x.kind, "proof") == 0) later = false;
    entries->items[--to] = x;
  }
  memmove(entries->items, entries->items + to, (entries->count - to) * sizeof *entries->items);
  entries->count -= to;
}

/* ---- the store ----------------------------------------------------------------------------- */

static int read_one(struct store *s, const struct knowledge *k, const struct store_job *row, int64_t since,
                    struct outcomes *out, struct err *e)
{
  struct store_entries entries;
  struct outcome *o;
  int status = store_entries_telling(s, row->id, &entries, e);

  if (status) return status;
  drop_old_advice(&entries);
  o = outcomes_add(out);
  snprintf(o->id, sizeof o->id, "%s", row->id);
  if (!history_outcome(k, &entries, o) || o->closed <= since) {
    free(o->results);
    out->count--;
  }
  store_entries_free(&entries);
  return 0;
}

/* Of a full list the last second is left out: which of its jobs are in it is chance. */
static size_t whole_seconds(const struct store_jobs *rows)
{
  size_t count = rows->count;

  if (count < HISTORY_MOST) return count;
  while (count > 0 && rows->items[count - 1].touched == rows->items[rows->count - 1].touched) count--;
  return count;
}

int history_read(struct store *s, const struct knowledge *k, int64_t since, struct outcomes *out,
                 struct err *e)
{
  struct store_jobs rows;
  int status = store_list(s, STORE_CLOSED, HISTORY_MOST, &rows, e);

  *out = (struct outcomes){0};
  if (status) return status;
  status = store_read_begin(s, e);
  for (size_t i = 0, count = whole_seconds(&rows); i < count && status == 0; i++)
    status = read_one(s, k, &rows.items[i], since, out, e);
  store_read_end(s);
  store_jobs_free(&rows);
  if (status) outcomes_free(out);
  return status;
}

int history_learn(struct store *s, const char *folder, const struct knowledge *k, struct history *out,
                  struct err *e)
{
  struct learn_switch on;
  struct learn_counts counts;
  int status = learn_switch_read(folder, &on, e);

  *out = (struct history){0};
  learned_begin(&out->chances, k);
  if (status == 0) status = history_read(s, k, on.since, &out->past, e);
  if (status || !on.on) return status;
  learned_free(&out->chances);
  learn_count(k, &out->past, learn_usual(), &counts);
  learn_chances(&counts, &out->chances);
  out->jobs = counts.counted;
  learn_free(&counts);
  return 0;
}

void history_free(struct history *h)
{
  outcomes_free(&h->past);
  learned_free(&h->chances);
  h->jobs = 0;
}
