/* job_write.c - the entries that say what happened on a job; see job.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/mem.h"
#include "shop/job.h"
#include "shop/job_figures.h"

/* ---- saying ------------------------------------------------------------------------------- */

void job_say(struct job_news *n, const char *kind, struct json *body)
{
  void *items = n->items;

  mem_grow(&items, &n->room, n->count + 1, sizeof *n->items);
  n->items = items;
  n->items[n->count++] = (struct job_item){kind, json_print_line(body)};
  json_free(body);
}

static void say_one(struct job_news *n, const char *kind, const char *member, const char *text)
{
  struct json *b = json_object();

  json_put_text(b, member, text);
  job_say(n, kind, b);
}

void job_say_text(struct job_news *n, const char *kind, const char *text) { say_one(n, kind, "text", text); }

void job_say_fault(struct job_news *n, const char *kind, const struct knowledge *k, int fault)
{
  say_one(n, kind, "fault", k->faults[fault].id);
}

void job_say_proof(struct job_news *n, const struct knowledge *k, int fault, bool passed)
{
  struct json *b = json_object();

  json_put_text(b, "fault", k->faults[fault].id);
  json_put_bool(b, "passed", passed);
  job_say(n, "proof", b);
}

void job_say_minutes(struct job_news *n, double minutes)
{
  struct json *b = json_object();

  json_put_number(b, "minutes", minutes);
  job_say(n, "minutes", b);
}

void job_say_reopened(struct job_news *n, const char *why) { say_one(n, "reopened", "why", why); }

void job_say_advice(struct job_news *n, const struct knowledge *k, const struct job_advice *a)
{
  struct json *b = json_object(), *causes = json_list();
  char print[20];

  json_put_text(b, "do", a->disposition);
  for (size_t i = 0; i < a->count; i++) {
    struct json *c = json_object();

    json_put_text(c, "fault", a->causes[i].fault >= 0 ? k->faults[a->causes[i].fault].id : "not-listed");
    json_put_number(c, "chance", a->causes[i].chance);
    json_push(causes, c);
  }
  json_put(b, "causes", causes);
  if (a->next >= 0) json_put_text(b, "next", k->checks[a->next].id);
  snprintf(print, sizeof print, "%016llx", k->fingerprint);
  json_put_text(b, "knowledge", print);
  job_say(n, "advice", b);
}

bool job_same_advice(const struct job_advice *a, const struct job_advice *b)
{
  if (strcmp(a->disposition, b->disposition) != 0 || a->count != b->count || a->next != b->next) return false;
  for (size_t i = 0; i < a->count; i++)
    if (a->causes[i].fault != b->causes[i].fault) return false;
  return true;
}

void job_news_free(struct job_news *n)
{
  for (size_t i = 0; i < n->count; i++) free(n->items[i].body);
  free(n->items);
  *n = (struct job_news){0};
}

/* ---- what changed ------------------------------------------------------------------------- */

static void say_result(struct job_news *n, const struct knowledge *k, const struct case_result *r)
{
  const struct check *c = &k->checks[r->check];
  struct json *b = json_object();

  json_put_text(b, "check", c->id);
  if (r->sure <= 0) json_put_text(b, "result", "dont-know");
  else if (r->result >= 0) json_put_text(b, "result", c->results.items[r->result]);
  else figure_put(b, "reading", c, r->value);
  if (r->sure > 0 && r->sure < 1) json_put_number(b, "sure", r->sure);
  job_say(n, "result", b);
}

static bool same_result(const struct case_result *a, const struct case_result *b)
{
  return a->result == b->result && a->sure == b->sure && (a->result >= 0 || a->value == b->value);
}

static void say_results(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                        const struct bench_case *now)
{
  for (size_t i = 0; i < before->result_count; i++)
    if (!case_result_of(now, before->results[i].check))
      say_one(n, "took-back", "check", k->checks[before->results[i].check].id);
  for (size_t i = 0; i < now->result_count; i++) {
    const struct case_result *old = case_result_of(before, now->results[i].check);

    if (!old || !same_result(old, &now->results[i])) say_result(n, k, &now->results[i]);
  }
}

static bool holds(const int *list, size_t count, int x)
{
  for (size_t i = 0; i < count; i++)
    if (list[i] == x) return true;
  return false;
}

static void say_complaints(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                           const struct bench_case *now)
{
  for (size_t i = 0; i < before->complaint_count; i++)
    if (!holds(now->complaints, now->complaint_count, before->complaints[i]))
      say_one(n, "took-back", "complaint", k->complaints[before->complaints[i]].id);
  for (size_t i = 0; i < now->complaint_count; i++)
    if (!holds(before->complaints, before->complaint_count, now->complaints[i]))
      say_one(n, "complaint", "complaint", k->complaints[now->complaints[i]].id);
}

void job_told(const struct knowledge *k, const struct bench_case *now, signed char *told)
{
  int *has = mem_array(k->feature_count + 1, sizeof *has),
      *lacks = mem_array(k->feature_count + 1, sizeof *lacks);
  bool more = true;

  memset(told, 0, k->feature_count * sizeof *told);
  for (size_t round = 0; more && round <= k->feature_count; round++) {
    struct bench_case made;
    size_t has_count = 0, lacks_count = 0;

    for (size_t i = 0; i < k->feature_count; i++) {
      if (told[i] == TRI_HAS) has[has_count++] = (int)i;
      if (told[i] == TRI_LACKS) lacks[lacks_count++] = (int)i;
    }
    case_begin(&made, k);
    case_set_machine(&made, k, now->machine_class, has, has_count, lacks, lacks_count, &(struct err){0});
    more = false;
    for (size_t i = 0; i < k->feature_count; i++)
      if (made.features[i] != now->features[i] && told[i] != now->features[i]) {
        told[i] = now->features[i];
        more = true;
      }
    case_free(&made);
  }
  free(has);
  free(lacks);
}

static void say_machine(struct job_news *n, const struct knowledge *k, const struct bench_case *now)
{
  signed char *told = mem_array(k->feature_count + 1, sizeof *told);
  struct json *b = json_object(), *has = json_list(), *lacks = json_list();

  job_told(k, now, told);
  if (now->machine_class >= 0) json_put_text(b, "class", k->classes[now->machine_class].id);
  for (size_t i = 0; i < k->feature_count; i++)
    if (told[i] == TRI_HAS) json_push_text(has, k->features[i].id);
    else if (told[i] == TRI_LACKS) json_push_text(lacks, k->features[i].id);
  json_put(b, "has", has);
  json_put(b, "lacks", lacks);
  job_say(n, "machine", b);
  free(told);
}

void job_say_change(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                    const struct bench_case *now)
{
  if (now->machine_class != before->machine_class ||
      memcmp(now->features, before->features, k->feature_count * sizeof *now->features) != 0)
    say_machine(n, k, now);
  say_complaints(n, k, before, now);
  for (size_t i = 0; i < k->fault_count; i++) {
    if (now->mended[i] && !before->mended[i]) job_say_proof(n, k, (int)i, false);
    if (before->mended[i] && !now->mended[i]) say_one(n, "took-back", "repair", k->faults[i].id);
  }
  say_results(n, k, before, now);
  figures_say_change(n, k, before, now);
  for (size_t i = 0; i < k->cover_count; i++)
    if (now->off[i] != before->off[i]) say_one(n, now->off[i] ? "off" : "on", "cover", k->covers[i].id);
}

static void *copy_of(const void *from, size_t count, size_t size)
{
  void *to = mem_array(count, size);

  if (count) memcpy(to, from, count * size);
  return to;
}

void job_copy_case(const struct knowledge *k, const struct bench_case *from, struct bench_case *to)
{
  *to = *from;
  to->features = copy_of(from->features, k->feature_count, sizeof *to->features);
  to->off = copy_of(from->off, k->cover_count, sizeof *to->off);
  to->mended = copy_of(from->mended, k->fault_count, sizeof *to->mended);
  to->complaints = copy_of(from->complaints, from->complaint_count, sizeof *to->complaints);
  to->complaint_room = from->complaint_count;
  to->results = copy_of(from->results, from->result_count, sizeof *to->results);
  to->result_room = from->result_count;
  to->cards = copy_of(from->cards, from->card_count, sizeof *to->cards);
  to->card_room = from->card_count;
}

/* ---- writing ------------------------------------------------------------------------------ */

static int add_news(struct store *s, const struct knowledge *k, const char *id, const char *who,
                    const struct job_news *n, struct err *e)
{
  int status = 0;

  for (size_t i = 0; i < n->count && status == 0; i++)
    status = store_add(s, id, who, n->items[i].kind, n->items[i].body, e);
  return status ? status : job_describe(s, k, id, e);
}

/* Ends the transaction; an error that came first is the one that is told. */
static int end_batch(struct store *s, int status, struct err *e)
{
  struct err other;

  if (status == 0) return store_batch_end(s, true, e);
  store_batch_end(s, false, &other);
  return status;
}

int job_write(struct store *s, const struct knowledge *k, const char *id, const char *who,
              const struct job_news *n, struct err *e)
{
  int status = store_batch_begin(s, e);

  return status ? status : end_batch(s, add_news(s, k, id, who, n, e), e);
}

int job_open(struct store *s, const struct knowledge *k, const char *who, const struct job_news *n,
             char id[STORE_ID], struct err *e)
{
  int status = store_batch_begin(s, e);

  if (status) return status;
  status = store_new_job(s, id, e);
  if (status == 0) status = add_news(s, k, id, who, n, e);
  return end_batch(s, status, e);
}

/* ---- what lists show ----------------------------------------------------------------------- */

/* Everything that somebody may look for, each entry once, in the order it came. */
struct about {
  const struct knowledge *k;
  struct buf owner, machine, words, ending, text;
  int64_t touched, closed;
};

/* Free of control signs, which must not take hold of a screen. */
static void put(struct buf *b, const char *text)
{
  buf_free(b);
  buf_add(b, text);
  for (char *c = b->text; *c; c++)
    if ((unsigned char)*c < 0x20 || *c == 0x7F) *c = ' ';
}

static void look_for(struct about *a, const char *text)
{
  if (*text) buf_addf(&a->text, "%s%s", a->text.len ? "\n" : "", text);
}

static void look_for_id(struct about *a, enum entry_kind kind, const char *id)
{
  int at = *id ? knowledge_find(a->k, kind, id) : -1;

  if (at < 0) look_for(a, id);
  else if (kind == ENTRY_CLASS) look_for(a, a->k->classes[at].name);
  else if (kind == ENTRY_COMPLAINT) look_for(a, a->k->complaints[at].name);
  else look_for(a, a->k->faults[at].name);
}

static void about_entry(struct about *a, const struct store_entry *x, const struct json *b)
{
  const char *text = json_text(json_member(b, "text"));

  if (strcmp(x->kind, "machine") == 0) {
    const char *id = json_text(json_member(b, "class"));
    int at = *id ? knowledge_find(a->k, ENTRY_CLASS, id) : -1;

    put(&a->machine, at >= 0 ? a->k->classes[at].name : id);
    look_for_id(a, ENTRY_CLASS, id);
  } else if (strcmp(x->kind, "owner") == 0) put(&a->owner, text);
  else if (strcmp(x->kind, "words") == 0) put(&a->words, text);
  else if (strcmp(x->kind, "complaint") == 0)
    look_for_id(a, ENTRY_COMPLAINT, json_text(json_member(b, "complaint")));
  else if (strcmp(x->kind, "repair") == 0) look_for_id(a, ENTRY_FAULT, json_text(json_member(b, "fault")));
  else if (strcmp(x->kind, "closed") == 0) {
    const char *ending = json_text(json_member(b, "ending"));

    put(&a->ending, *ending ? ending : "closed");
    a->closed = x->at;
  }
  if (strcmp(x->kind, "reopened") == 0 ||
      (strcmp(x->kind, "proof") == 0 && !json_true(json_member(b, "passed")))) {
    buf_free(&a->ending);
    a->closed = 0;
  }
  look_for(a, text); /* owner, words, note, part */
}

/* Kinds that come most and say nothing that a list shows. */
static bool passes_by(const char *kind)
{
  static const char *const kinds[] = {"result", "advice",  "off", "on",
                                      "took-back", "minutes", "spec", "spec-card", "given"};

  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
    if (strcmp(kinds[i], kind) == 0) return true;
  return false;
}

static void add_up(struct about *a, const struct store_entries *entries)
{
  for (size_t i = 0; i < entries->count; i++) {
    const struct store_entry *x = &entries->items[i];
    struct json *b = NULL;

    if (x->at > a->touched) a->touched = x->at;
    if (passes_by(x->kind) || json_read("entry", x->body, strlen(x->body), &b, &(struct err){0}) != 0)
      continue;
    if (json_kind(b) == JSON_OBJECT) about_entry(a, x, b);
    json_free(b);
  }
}

static struct store_about shown(const struct about *a)
{
  return (struct store_about){buf_text(&a->owner),
                              buf_text(&a->machine),
                              buf_text(&a->words),
                              buf_text(&a->ending),
                              buf_text(&a->text),
                              a->touched,
                              a->closed};
}

static void free_about(struct about *a)
{
  buf_free(&a->owner);
  buf_free(&a->machine);
  buf_free(&a->words);
  buf_free(&a->ending);
  buf_free(&a->text);
}

int job_describe(struct store *s, const struct knowledge *k, const char *id, struct err *e)
{
  struct about a = {.k = k};
  struct store_about about;
  struct store_entries entries;
  int status = store_entries(s, id, &entries, e);

  if (status) return status;
  add_up(&a, &entries);
  about = shown(&a);
  status = store_describe(s, id, &about, e);
  store_entries_free(&entries);
  free_about(&a);
  return status;
}

int job_take(struct store *s, const struct knowledge *k, const char *id, int64_t opened,
             const struct store_entries *entries, bool *new_job, size_t *added, struct err *e)
{
  struct about a = {.k = k};
  struct store_about about;
  size_t before = *added;
  int status;

  add_up(&a, entries);
  about = shown(&a);
  status = store_take_job(s, id, opened, &about, new_job, e);
  if (status == 0) status = store_take(s, id, entries, added, e);
  free_about(&a);
  if (status || *new_job || *added == before) return status;
  return job_describe(s, k, id, e); /* what was here and what came add up to something else */
}

struct merging { struct store *s; const struct knowledge *k; };

static int describe_changed(void *context, const char *job, struct err *e)
{
  struct merging *m = context;

  return job_describe(m->s, m->k, job, e);
}

int job_merge(struct store *s, const struct knowledge *k, const char *path, size_t *added, struct err *e)
{
  struct merging m = {s, k};

  return store_merge(s, path, describe_changed, &m, added, e);
}
