/* record.c - see record.h. */
#include "practice/record.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/file.h"
#include "practice/casework.h"
#include "practice/unsafe.h"

static const char *const levels[] = {"worked", "guided", "free", "exam"};
static const char *const act_names[] = {"check",   "open", "repair", "prove",    "declare",
                                        "give-up", "lead", "wipe",   "forbidden"};
enum { LEVELS = 4, ACTS = 9 };

const char *level_name(enum level level) { return levels[level]; }

bool level_named(const char *name, enum level *out)
{
  for (int i = 0; i < LEVELS; i++)
    if (strcmp(levels[i], name) == 0) {
      *out = (enum level)i;
      return true;
    }
  return false;
}

const char *act_name(enum act act) { return act_names[act]; }

const char *entry_id(const struct knowledge *k, const struct entry *entry)
{
  switch (entry->act) {
  case ACT_CHECK: return k->checks[entry->at].id;
  case ACT_OPEN: return k->covers[entry->at].id;
  case ACT_REPAIR: return k->repairs[entry->at].id;
  case ACT_DECLARE: return entry->at >= 0 ? k->faults[entry->at].id : "nothing";
  case ACT_LEAD: return entry->at ? "on" : "off";
  case ACT_FORBIDDEN: return unsafe_act_name(entry->at);
  default: return "";
  }
}

void record_free(struct record *x)
{
  for (size_t i = 0; i < x->count; i++) free((char *)(uintptr_t)x->entries[i].expect);
  free(x->entries);
  free(x->sitting.laid);
  free(x->sitting.rates);
  *x = (struct record){0};
}

void record_add(struct record *x, const struct entry *entry)
{
  void *items = x->entries;
  struct entry *to;

  mem_grow(&items, &x->room, x->count + 1, sizeof *x->entries);
  x->entries = items;
  to = &x->entries[x->count++];
  *to = *entry;
  if (entry->expect) {
    char *copy = mem_new(strlen(entry->expect) + 1);

    to->expect = strcpy(copy, entry->expect);
  }
}

/* ---- beginning and doing again ---------------------------------------------------------- */

int sitting_begin(const struct sitting *s, const struct knowledge *k, struct assessor *assessor, bool cheap,
                  struct run *r, struct err *e)
{
  struct hidden_wish wish = {-1, s->kind, *s->system ? s->system : NULL, s->rates};
  struct hidden h;

  *r = (struct run){0};
  if (s->laid) {
    int status = casework_read(k, "case", s->laid, &h, e);

    return status ? status : run_begin(r, k, assessor, &h, cheap, e);
  }
  if (*s->machine) {
    wish.machine_class = knowledge_find(k, ENTRY_CLASS, s->machine);
    if (wish.machine_class < 0)
      return err_set(e, EX_DATAERR, NULL, 0,
                     "there is no machine \"%s\". \"pullcord list machines\" names them.", s->machine);
  }
  if (!hidden_make(k, &wish, s->seed, &h))
    return err_set(e, EX_DATAERR, NULL, 0, "no such machine can be made up%s%s. Leave an option out.",
                   *s->system ? ": nothing fits in system " : "", s->system);
  return run_begin(r, k, assessor, &h, cheap, e);
}

int record_replay(const struct record *x, const struct knowledge *k, struct assessor *assessor, size_t most,
                  struct run *r, struct err *e)
{
  int status = sitting_begin(&x->sitting, k, assessor, false, r, e);
  char why[200];

  for (size_t i = 0; status == 0 && i < x->count && i < most; i++) {
    if (!run_possible(r, &x->entries[i], why, sizeof why))
      return err_set(e, EX_DATAERR, NULL, 0, "entry %zu of the record cannot be done: %s", i + 1, why);
    status = run_do(r, &x->entries[i], e);
  }
  return status;
}

void summary_of(const struct run *r, struct summary *out)
{
  const struct knowledge *k = r->k;
  int right = 0;

  *out = (struct summary){.over = r->end != RUN_OPEN,
                          .right = r->right,
                          .minutes = r->minutes,
                          .parts = r->parts,
                          .regret = r->regret,
                          .expected = r->expected,
                          .brier = r->brier,
                          .sure = -1,
                          .score = run_score(r),
                          .steps = (int)r->step_count,
                          .unsafe = r->end == RUN_UNSAFE};
  snprintf(out->end, sizeof out->end, "%s", run_end_name(r->end));
  snprintf(out->machine, sizeof out->machine, "%s", k->classes[r->c.machine_class].id);
  snprintf(out->system, sizeof out->system, "%s", r->culprit >= 0 ? k->faults[r->culprit].system : "use");
  snprintf(out->truth, sizeof out->truth, "%s", r->culprit >= 0 ? k->faults[r->culprit].id : "nothing");
  for (size_t i = 0; i < r->step_count; i++) {
    const struct step *s = &r->steps[i];

    right += s->right;
    out->again += s->again;
    out->parts_wrong += (s->entry.act == ACT_REPAIR || s->entry.act == ACT_DECLARE) && !s->hit;
  }
  out->stated = r->stated;
  out->stated_right = r->stated_right;
  if (r->stated) out->sure = r->stated_sum / r->stated;
  out->right_steps = r->step_count ? (double)right / (double)r->step_count : 0;
}

/* ---- the shop's own rates --------------------------------------------------------------- */

void sitting_take_rates(struct sitting *s, const struct knowledge *k, const struct learned *shop, long jobs)
{
  int class = knowledge_find(k, ENTRY_CLASS, s->machine);
  char text[32];

  free(s->rates);
  s->rates = mem_array(k->fault_count, sizeof *s->rates);
  s->shop_jobs = jobs;
  for (size_t f = 0; f < k->fault_count; f++) {
    snprintf(text, sizeof text, "%.6g", shop->base[(size_t) class * k->fault_count + f]);
    s->rates[f] = strtod(text, NULL);
  }
}

struct json *rates_json(const struct knowledge *k, const double *rates)
{
  struct json *j = json_object();

  for (size_t f = 0; f < k->fault_count; f++)
    if (rates[f] >= 0) json_put_number(j, k->faults[f].id, rates[f]);
  return j;
}

int rates_read(const char *path, const struct knowledge *k, const struct json *j, double **out, struct err *e)
{
  if (!j) return 0;
  *out = mem_array(k->fault_count, sizeof **out);
  for (size_t f = 0; f < k->fault_count; f++) (*out)[f] = -1;
  for (const struct json *i = json_first(j); i; i = json_next(i)) {
    int fault = knowledge_find(k, ENTRY_FAULT, json_name(i));
    double rate = json_number(i);

    if (fault < 0)
      return err_set(e, EX_DATAERR, path, 0, "names \"%.60s\", which this knowledge does not know.",
                     json_name(i));
    if (!(rate > 0 && rate <= 0.5))
      return err_set(e, EX_DATAERR, path, 0, "holds a rate of \"%.60s\" that is none.", json_name(i));
    (*out)[fault] = rate;
  }
  return 0;
}

/* ---- writing ---------------------------------------------------------------------------- */

static struct json *write_summary(const struct summary *s)
{
  struct json *j = json_object();

  json_put_text(j, "end", s->end);
  json_put_text(j, "machine", s->machine);
  json_put_text(j, "system", s->system);
  json_put_text(j, "truth", s->truth);
  json_put_bool(j, "right", s->right);
  json_put_number(j, "steps", s->steps);
  json_put_number(j, "right-steps", s->right_steps);
  json_put_number(j, "minutes", s->minutes);
  json_put_number(j, "parts", s->parts);
  json_put_number(j, "given-away", s->regret);
  json_put_number(j, "expected", s->expected);
  json_put_number(j, "score", s->score);
  json_put_number(j, "repeated", s->again);
  json_put_number(j, "repairs-for-nothing", s->parts_wrong);
  json_put_bool(j, "unsafe", s->unsafe);
  if (s->sure >= 0) json_put_number(j, "sure", s->sure);
  if (s->brier >= 0) json_put_number(j, "brier", s->brier);
  if (s->stated) json_put_number(j, "stated", s->stated);
  if (s->stated) json_put_number(j, "stated-right", s->stated_right);
  return j;
}

static struct json *write_entries(const struct knowledge *k, const struct record *x)
{
  struct json *list = json_list();

  for (size_t i = 0; i < x->count; i++) {
    struct json *j = json_object();

    json_put_text(j, "act", act_name(x->entries[i].act));
    if (*entry_id(k, &x->entries[i])) json_put_text(j, "id", entry_id(k, &x->entries[i]));
    if (x->entries[i].sure >= 0) json_put_number(j, "sure", x->entries[i].sure);
    if (x->entries[i].expect) json_put_text(j, "expect", x->entries[i].expect);
    json_push(list, j);
  }
  return list;
}

struct json *record_json(const struct knowledge *k, const struct record *x)
{
  const struct sitting *s = &x->sitting;
  struct json *j = json_object(), *laid = NULL;
  char text[32];
  struct err e;

  json_put_text(j, "pullcord", RECORD_VERSION);
  json_put_text(j, "apprentice", s->apprentice);
  json_put_text(j, "level", level_name(s->level));
  snprintf(text, sizeof text, "%llu", (unsigned long long)s->seed);
  json_put_text(j, "seed", text); /* as a text: it may have more digits than a number keeps */
  json_put_text(j, "kind", hidden_kind_name(s->kind));
  if (*s->machine) json_put_text(j, "machine", s->machine);
  if (*s->system) json_put_text(j, "system", s->system);
  if (*s->set) json_put_text(j, "set", s->set);
  if (s->number) json_put_number(j, "number", s->number);
  snprintf(text, sizeof text, "%016llx", x->knowledge);
  json_put_text(j, "knowledge", text);
  clock_text(s->began, text, sizeof text);
  json_put_text(j, "began", text);
  if (s->laid && json_read("case", s->laid, strlen(s->laid), &laid, &e) == 0) json_put(j, "case", laid);
  if (s->rates) json_put_number(j, "shop-jobs", (double)s->shop_jobs);
  if (s->rates) json_put(j, "shop-rates", rates_json(k, s->rates));
  json_put_bool(j, "over", x->summary.over);
  json_put(j, "entries", write_entries(k, x));
  if (x->summary.over) json_put(j, "came-to", write_summary(&x->summary));
  return j;
}

int record_keep(const char *path, const struct knowledge *k, const struct record *x, struct err *e)
{
  struct json *j = record_json(k, x);
  char *text = json_print(j);
  int status = file_replace(path, text, strlen(text), e);

  free(text);
  json_free(j);
  return status;
}

/* ---- reading ---------------------------------------------------------------------------- */

static void take(char *to, const struct json *j, const char *name)
{
  snprintf(to, RECORD_NAME, "%s", json_text(json_member(j, name)));
}

static bool read_seed(const char *text, uint64_t *out)
{
  char *end;

  errno = 0;
  *out = strtoull(text, &end, 10);
  return *text >= '0' && *text <= '9' && *end == '\0' && errno == 0;
}

static int find_id(const struct knowledge *k, enum act act, const char *id)
{
  switch (act) {
  case ACT_CHECK: return knowledge_find(k, ENTRY_CHECK, id);
  case ACT_OPEN: return knowledge_find(k, ENTRY_COVER, id);
  case ACT_REPAIR: return knowledge_find(k, ENTRY_REPAIR, id);
  case ACT_DECLARE: return strcmp(id, "nothing") == 0 ? -2 : knowledge_find(k, ENTRY_FAULT, id);
  case ACT_LEAD: return strcmp(id, "on") == 0;
  case ACT_FORBIDDEN: return unsafe_act_named(id);
  default: return 0;
  }
}

static int read_entry(const char *path, const struct knowledge *k, const struct json *j, struct record *out,
                      struct err *e)
{
  const char *name = json_text(json_member(j, "act")), *id = json_text(json_member(j, "id"));
  struct entry entry = {.sure = -1};
  int act = 0;

  while (act < ACTS && strcmp(act_names[act], name) != 0) act++;
  if (act == ACTS) return err_set(e, EX_DATAERR, path, 0, "holds an entry \"%s\" that is none.", name);
  entry.act = (enum act)act;
  entry.at = find_id(k, entry.act, id);
  if (entry.at == -1)
    return err_set(e, EX_DATAERR, path, 0,
                   "names \"%s\", which this knowledge does not know: it was made with another.", id);
  if (json_member(j, "sure")) entry.sure = json_number(json_member(j, "sure"));
  if (entry.sure > 1) return err_set(e, EX_DATAERR, path, 0, "holds a certainty above 1.");
  if (json_member(j, "expect")) entry.expect = json_text(json_member(j, "expect"));
  record_add(out, &entry);
  return 0;
}

static void read_summary(const struct json *j, struct summary *s)
{
  const struct json *sure = json_member(j, "sure"), *brier = json_member(j, "brier");

  snprintf(s->end, sizeof s->end, "%s", json_text(json_member(j, "end")));
  take(s->machine, j, "machine");
  take(s->system, j, "system");
  snprintf(s->truth, sizeof s->truth, "%s", json_text(json_member(j, "truth")));
  s->right = json_true(json_member(j, "right"));
  s->unsafe = json_true(json_member(j, "unsafe"));
  s->steps = (int)json_number(json_member(j, "steps"));
  s->again = (int)json_number(json_member(j, "repeated"));
  s->parts_wrong = (int)json_number(json_member(j, "repairs-for-nothing"));
  s->right_steps = json_number(json_member(j, "right-steps"));
  s->minutes = json_number(json_member(j, "minutes"));
  s->parts = json_number(json_member(j, "parts"));
  s->regret = json_number(json_member(j, "given-away"));
  s->expected = json_number(json_member(j, "expected"));
  s->score = json_number(json_member(j, "score"));
  s->sure = sure ? json_number(sure) : -1;
  s->brier = brier ? json_number(brier) : -1;
  s->stated = (int)json_number(json_member(j, "stated"));
  s->stated_right = (int)json_number(json_member(j, "stated-right"));
}

static int read_sitting(const char *path, const struct knowledge *k, const struct json *j, struct sitting *s,
                        struct err *e)
{
  take(s->apprentice, j, "apprentice");
  take(s->machine, j, "machine");
  take(s->system, j, "system");
  take(s->set, j, "set");
  s->number = (int)json_number(json_member(j, "number"));
  if (!level_named(json_text(json_member(j, "level")), &s->level) ||
      !hidden_kind_named(json_text(json_member(j, "kind")), &s->kind) ||
      !read_seed(json_text(json_member(j, "seed")), &s->seed))
    return err_set(e, EX_DATAERR, path, 0, "has no level, kind or seed that can be read.");
  if (json_member(j, "case")) s->laid = json_print(json_member(j, "case"));
  s->shop_jobs = (long)json_number(json_member(j, "shop-jobs"));
  return rates_read(path, k, json_member(j, "shop-rates"), &s->rates, e);
}

int record_read(const char *path, const struct knowledge *k, struct record *out, struct err *e)
{
  struct json *j = NULL;
  char *text = NULL;
  size_t len;
  int status = file_read(path, JSON_MAX_BYTES, &text, &len, e);

  *out = (struct record){0};
  if (status == 0) status = json_read(path, text, len, &j, e);
  if (status == 0 && strcmp(json_text(json_member(j, "pullcord")), RECORD_VERSION) != 0)
    status = err_set(e, EX_DATAERR, path, 0, "is not a practice run that this program kept.");
  if (status == 0) status = read_sitting(path, k, j, &out->sitting, e);
  if (status == 0) {
    const struct json *came = json_member(j, "came-to"), *list = json_member(j, "entries");

    out->knowledge = strtoull(json_text(json_member(j, "knowledge")), NULL, 16);
    out->summary.over = json_true(json_member(j, "over"));
    if (came) read_summary(came, &out->summary);
    for (const struct json *i = list ? json_first(list) : NULL; i && status == 0; i = json_next(i))
      status = read_entry(path, k, i, out, e);
  }
  json_free(j);
  free(text);
  if (status) record_free(out);
  return status;
}
