/* job.c - adds the entries of a job up; see job.h. */
#include "shop/job.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "shop/job_figures.h"
#include "shop/words.h"

struct replay { const struct knowledge *k; struct job *job; int64_t at; };

static const char *const endings[] = {"repaired", "nothing-broken", "handed-over", "given-up", NULL};

const char *job_ending(size_t i) { return i < sizeof endings / sizeof endings[0] ? endings[i] : NULL; }

/* A copy without control signs, which must not take hold of a screen. */
static char *clean(const char *text)
{
  char *copy = mem_new(strlen(text) + 1);

  strcpy(copy, text);
  for (char *c = copy; *c; c++)
    if ((unsigned char)*c < 0x20 || *c == 0x7F) *c = ' ';
  return copy;
}

static void set_text(char **at, const char *text)
{
  free(*at);
  *at = clean(text);
}

static void push_text(struct job_texts *list, int64_t at, const char *text)
{
  void *items = list->items;

  mem_grow(&items, &list->room, list->count + 1, sizeof *list->items);
  list->items = items;
  list->items[list->count++] = (struct job_text){at, clean(text)};
}

/* The entry of the knowledge with that id, or what took its place since. */
static int find(const struct knowledge *k, enum entry_kind kind, const struct json *id)
{
  const char *name = json_text(id);
  int at = *name ? knowledge_find(k, kind, name) : -1;

  for (size_t i = 0; at < 0 && *name && i < k->retired_count; i++)
    if (strcmp(k->retired[i].id, name) == 0) at = knowledge_find(k, kind, k->retired[i].replaced_by);
  return at;
}

/* ---- one function per kind; false: the entry says nothing to us --------------------------- */

static bool take_owner(struct replay *r, const struct json *b)
{
  set_text(&r->job->owner, json_text(json_member(b, "text")));
  return true;
}

static bool take_words(struct replay *r, const struct json *b)
{
  set_text(&r->job->words, json_text(json_member(b, "text")));
  return true;
}

static bool take_note(struct replay *r, const struct json *b)
{
  push_text(&r->job->notes, r->at, json_text(json_member(b, "text")));
  return true;
}

static bool take_part(struct replay *r, const struct json *b)
{
  push_text(&r->job->parts, r->at, json_text(json_member(b, "text")));
  return true;
}

static size_t features(const struct knowledge *k, const struct json *list, int *out)
{
  size_t count = 0;

  for (const struct json *i = list && json_kind(list) == JSON_LIST ? json_first(list) : NULL; i;
       i = json_next(i)) {
    int at = find(k, ENTRY_FEATURE, i);

    if (at >= 0 && count < k->feature_count) out[count++] = at;
  }
  return count;
}

static bool take_machine(struct replay *r, const struct json *b)
{
  const struct knowledge *k = r->k;
  int at = find(k, ENTRY_CLASS, json_member(b, "class"));
  int *has = mem_array(k->feature_count + 1, sizeof *has),
      *lacks = mem_array(k->feature_count + 1, sizeof *lacks);
  size_t has_count = features(k, json_member(b, "has"), has),
         lacks_count = features(k, json_member(b, "lacks"), lacks);
  bool good =
      (at >= 0 || !json_member(b, "class")) &&
      case_set_machine(&r->job->bench_case, k, at, has, has_count, lacks, lacks_count, &(struct err){0}) == 0;

  free(has);
  free(lacks);
  return good;
}

static bool take_complaint(struct replay *r, const struct json *b)
{
  int at = find(r->k, ENTRY_COMPLAINT, json_member(b, "complaint"));

  if (at >= 0) case_add_complaint(&r->job->bench_case, at);
  return at >= 0;
}

static bool take_result(struct replay *r, const struct json *b)
{
  int at = find(r->k, ENTRY_CHECK, json_member(b, "check"));
  const struct json *reading = json_member(b, "reading"), *sure = json_member(b, "sure");
  struct case_result result;

  if (at < 0) return false;
  if (reading && !figure_read(r->k, at, json_text(reading), &result)) return false;
  if (!reading && words_result(r->k, at, json_text(json_member(b, "result")), &result, &(struct err){0}) != 0)
    return false;
  if (sure && json_number(sure) >= 0 && json_number(sure) <= 1) result.sure *= json_number(sure);
  case_set_result(&r->job->bench_case, result);
  r->job->proof = PROOF_NONE;
  return true;
}

static bool take_spec(struct replay *r, const struct json *b)
{
  return figure_take_spec(r->k, &r->job->bench_case, find(r->k, ENTRY_CHECK, json_member(b, "check")), b);
}

static bool take_card(struct replay *r, const struct json *b)
{
  return figure_take_card(&r->job->bench_case, b);
}

static bool take_given(struct replay *r, const struct json *b)
{
  return figure_take_given(&r->job->bench_case, b);
}

static bool drop_complaint(struct bench_case *c, int complaint)
{
  for (size_t i = 0; i < c->complaint_count; i++)
    if (c->complaints[i] == complaint) {
      memmove(&c->complaints[i], &c->complaints[i + 1], (c->complaint_count - i - 1) * sizeof *c->complaints);
      c->complaint_count--;
      return true;
    }
  return false;
}

/* The last repair of that fault. */
static struct job_repair *repair_of(struct job *j, int fault)
{
  for (size_t i = j->repair_count; i > 0; i--)
    if (j->repairs[i - 1].fault == fault) return &j->repairs[i - 1];
  return NULL;
}

static bool drop_repair(struct job *j, int fault)
{
  struct job_repair *r = repair_of(j, fault);

  j->bench_case.mended[fault] = false;
  if (!r) return true;
  memmove(r, r + 1, (size_t)(j->repairs + j->repair_count - r - 1) * sizeof *r);
  j->repair_count--;
  j->proof = j->repair_count ? j->repairs[j->repair_count - 1].proof : PROOF_NONE;
  return true;
}

static bool take_took_back(struct replay *r, const struct json *b)
{
  int check = find(r->k, ENTRY_CHECK, json_member(b, "check")),
      fault = find(r->k, ENTRY_FAULT, json_member(b, "repair"));
  int complaint = find(r->k, ENTRY_COMPLAINT, json_member(b, "complaint"));
  int spec = find(r->k, ENTRY_CHECK, json_member(b, "spec"));
  const struct json *given = json_member(b, "given");

  if (spec >= 0) return case_drop_card(&r->job->bench_case, spec);
  if (given) return figure_drop_given(&r->job->bench_case, json_text(given));
  if (check >= 0) case_drop_result(&r->job->bench_case, check);
  if (complaint >= 0) drop_complaint(&r->job->bench_case, complaint);
  if (fault >= 0) drop_repair(r->job, fault);
  return check >= 0 || complaint >= 0 || fault >= 0;
}

static bool take_cover(struct replay *r, const struct json *b, bool off)
{
  int at = find(r->k, ENTRY_COVER, json_member(b, "cover"));

  if (at >= 0) r->job->bench_case.off[at] = off;
  return at >= 0;
}

static bool take_off(struct replay *r, const struct json *b) { return take_cover(r, b, true); }
static bool take_on(struct replay *r, const struct json *b) { return take_cover(r, b, false); }

static bool take_advice(struct replay *r, const struct json *b)
{
  struct job_advice *a = &r->job->advice;
  const struct json *causes = json_member(b, "causes");

  snprintf(a->disposition, sizeof a->disposition, "%s", json_text(json_member(b, "do")));
  a->next = find(r->k, ENTRY_CHECK, json_member(b, "next"));
  a->count = 0;
  for (const struct json *c = causes ? json_first(causes) : NULL; c && a->count < JOB_MOST_CAUSES;
       c = json_next(c))
    a->causes[a->count++] = (struct job_cause){find(r->k, ENTRY_FAULT, json_member(c, "fault")),
                                               json_number(json_member(c, "chance"))};
  return true;
}

/* The machine is taken apart again, or did not run right: all is to be looked at anew. */
static void open_service(struct job *j)
{
  for (size_t i = 0; i < SERVICE_ITEMS; i++) {
    free(j->service[i].text);
    j->service[i] = (struct job_service){0};
  }
}

static struct job_repair *push_repair(struct replay *r, int fault)
{
  void *items = r->job->repairs;

  mem_grow(&items, &r->job->repair_room, r->job->repair_count + 1, sizeof *r->job->repairs);
  r->job->repairs = items;
  r->job->repairs[r->job->repair_count] = (struct job_repair){fault, r->at, PROOF_NONE};
  r->job->proof = PROOF_NONE;
  return &r->job->repairs[r->job->repair_count++];
}

static bool take_repair(struct replay *r, const struct json *b)
{
  int at = find(r->k, ENTRY_FAULT, json_member(b, "fault"));

  if (at < 0) return false;
  push_repair(r, at);
  open_service(r->job);
  return true;
}

static void open_again(struct job *j)
{
  j->closed = 0;
  set_text(&j->ending, "");
}

static bool take_proof(struct replay *r, const struct json *b)
{
  int at = find(r->k, ENTRY_FAULT, json_member(b, "fault"));
  const struct json *passed = json_member(b, "passed");
  struct job_repair *repair;

  if (!passed || json_kind(passed) != JSON_BOOL) return false;
  if (!json_true(passed)) {
    open_again(r->job);
    open_service(r->job);
  }
  if (at < 0) return false;
  repair = repair_of(r->job, at);
  if (!repair) repair = push_repair(r, at);
  repair->proof = r->job->proof = json_true(passed) ? PROOF_PASSED : PROOF_FAILED;
  r->job->bench_case.mended[at] = !json_true(passed);
  return true;
}

static bool take_minutes(struct replay *r, const struct json *b)
{
  r->job->minutes += json_number(json_member(b, "minutes"));
  return true;
}

static bool take_service(struct replay *r, const struct json *b)
{
  static const char *const states[] = {"done", "found", "left"};
  int item = service_find(json_text(json_member(b, "item")));
  const char *said = json_text(json_member(b, "state"));

  for (int i = 0; item >= 0 && i < 3; i++)
    if (strcmp(said, states[i]) == 0) {
      struct job_service *s = &r->job->service[item];

      s->state = (enum job_service_state)(SERVICE_DONE + i);
      s->at = r->at;
      set_text(&s->text, json_text(json_member(b, "text")));
      return true;
    }
  return false;
}

static bool take_closed(struct replay *r, const struct json *b)
{
  const char *ending = json_text(json_member(b, "ending"));

  r->job->closed = r->at;
  set_text(&r->job->ending, *ending ? ending : "closed");
  return true;
}

static bool take_reopened(struct replay *r, const struct json *b)
{
  (void)b;
  open_again(r->job);
  return true;
}

static const struct { const char *kind; bool (*take)(struct replay *, const struct json *);
} kinds[] = {{"result", take_result},
             {"advice", take_advice},
             {"off", take_off},
             {"on", take_on},
             {"took-back", take_took_back},
             {"machine", take_machine},
             {"words", take_words},
             {"complaint", take_complaint},
             {"repair", take_repair},
             {"proof", take_proof},
             {"note", take_note},
             {"part", take_part},
             {"minutes", take_minutes},
             {"service", take_service},
             {"closed", take_closed},
             {"reopened", take_reopened},
             {"owner", take_owner},
             {"spec", take_spec},
             {"spec-card", take_card},
             {"given", take_given}};

static bool take(struct replay *r, const struct store_entry *x)
{
  struct json *body = NULL;
  bool good = false;

  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++) {
    if (strcmp(kinds[i].kind, x->kind) != 0) continue;
    if (json_read("entry", x->body, strlen(x->body), &body, &(struct err){0}) == 0)
      good = json_kind(body) == JSON_OBJECT && kinds[i].take(r, body);
    json_free(body);
    return good;
  }
  return false;
}

void job_replay(const struct knowledge *k, const struct store_entries *entries, struct job *out)
{
  struct replay r = {k, out, 0};

  *out = (struct job){.owner = clean(""), .words = clean(""), .ending = clean("")};
  case_begin(&out->bench_case, k);
  for (size_t i = 0; i < entries->count; i++) {
    r.at = entries->items[i].at;
    if (!take(&r, &entries->items[i])) out->unread++;
    if (r.at > out->touched) out->touched = r.at;
    out->last_number = entries->items[i].number;
  }
}

int job_read(struct store *s, const struct knowledge *k, const char *id, struct job *out, struct err *e)
{
  struct store_entries entries;
  int status = store_entries(s, id, &entries, e);

  if (status) return status;
  job_replay(k, &entries, out);
  snprintf(out->id, sizeof out->id, "%s", id);
  store_entries_free(&entries);
  return 0;
}

static void free_texts(struct job_texts *t)
{
  for (size_t i = 0; i < t->count; i++) free(t->items[i].text);
  free(t->items);
}

void job_free(struct job *j)
{
  case_free(&j->bench_case);
  free(j->owner);
  free(j->words);
  free(j->ending);
  free(j->repairs);
  open_service(j);
  free_texts(&j->parts);
  free_texts(&j->notes);
  *j = (struct job){0};
}

size_t job_confirmed(const struct job *j, int *out)
{
  size_t count = 0;

  for (size_t i = 0; i < j->repair_count; i++) {
    bool twice = j->repairs[i].proof != PROOF_PASSED;

    for (size_t m = 0; m < count; m++) twice = twice || out[m] == j->repairs[i].fault;
    if (!twice) out[count++] = j->repairs[i].fault;
  }
  return count;
}

bool job_service_open(const struct job *j, size_t item)
{
  return j->service[item].state == SERVICE_OPEN || j->service[item].state == SERVICE_FOUND;
}
