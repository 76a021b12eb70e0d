/* casefile.c - see casefile.h. */
#include "shop/casefile.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "shop/spec_folder.h"
#include "shop/spec_use.h"
#include "shop/words.h"
#include "units/parse.h"

/* Nobody complains of more things; each costs a look through everything that is ever said. */
enum { MOST_COMPLAINTS = 20 };

struct reading {
  const struct knowledge *k;
  const char *file;
  struct bench_case *c;
  struct err *e;
  char path[80]; /* of what is read now, for json_line */
};

static int refuse(struct reading *r, const char *format, const char *a, const char *b)
{
  return err_set(r->e, EX_DATAERR, r->file, 0, format, a, b);
}

/* Errors from deeper down carry no file: add it. */
static int in_file(struct reading *r, int status)
{
  struct err copy = *r->e;

  if (status && !copy.file[0]) err_set(r->e, status, r->file, 0, "%s", copy.text);
  return status;
}

static int want_kind(struct reading *r, const struct json *j, enum json_kind kind, const char *what)
{
  if (json_kind(j) == kind) return 0;
  return err_set(r->e, EX_DATAERR, r->file, 0, "\"%s\" must be %s, not %s.", what, json_kind_name(kind),
                 json_kind_name(json_kind(j)));
}

/* Only these members may stand in an object; names ends with NULL. */
static int want_members(struct reading *r, const struct json *object, const char *where,
                        const char *const *names)
{
  size_t count = 0;

  while (names[count]) count++;
  for (const struct json *m = json_first(object); m; m = json_next(m)) {
    const char *near;
    size_t i = 0;

    while (i < count && strcmp(names[i], json_name(m)) != 0) i++;
    if (i < count) continue;
    near = text_nearest(json_name(m), names, count);
    return err_set(r->e, EX_DATAERR, r->file, 0, "%s has no member \"%.60s\"%s%s%s", where, json_name(m),
                   near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  }
  return 0;
}

static int find_id(struct reading *r, enum entry_kind kind, const char *what, const char *id, int *out)
{
  const char **ids, *near;
  size_t count;

  *out = knowledge_find(r->k, kind, id);
  if (*out >= 0) return 0;
  knowledge_ids(r->k, kind, &ids, &count);
  near = text_nearest(id, ids, count);
  free(ids);
  err_set(r->e, EX_DATAERR, r->file, 0, "there is no %s \"%.60s\"%s%s%s \"pullcord list\" shows them.", what,
          id, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  return EX_DATAERR;
}

static int read_features(struct reading *r, const struct json *list, const char *what, int **out,
                         size_t *count)
{
  size_t room = 0;
  int status = list ? want_kind(r, list, JSON_LIST, what) : 0;

  for (const struct json *i = list && !status ? json_first(list) : NULL; i && !status; i = json_next(i)) {
    void *items = *out;
    int at = -1;

    status = want_kind(r, i, JSON_TEXT, what);
    if (status == 0) status = find_id(r, ENTRY_FEATURE, "feature", json_text(i), &at);
    if (status) break;
    mem_grow(&items, &room, *count + 1, sizeof **out);
    *out = items;
    (*out)[(*count)++] = at;
  }
  return status;
}

/* An id, or a name that such a machine goes by ("strimmer"), word for word. */
static int find_class(struct reading *r, const char *text, int *out)
{
  struct word_match m[2];
  size_t count;

  *out = knowledge_find(r->k, ENTRY_CLASS, text);
  if (*out >= 0) return 0;
  count = words_match_machines(r->k, text, m, 2);
  if (count == 0 || m[0].score <= 0.99 || (count > 1 && m[1].score > 0.99))
    return find_id(r, ENTRY_CLASS, "machine class", text, out);
  *out = m[0].at;
  return 0;
}

static int read_machine(struct reading *r, const struct json *m)
{
  static const char *const members[] = {"class", "has", "lacks", "spec", "note", NULL};
  int *has = NULL, *lacks = NULL, machine_class = -1, status;
  size_t has_count = 0, lacks_count = 0;

  if (!m) return refuse(r, "the machine is missing: give \"machine\": {\"class\": ...}.%s%s", "", "");
  status = want_kind(r, m, JSON_OBJECT, "machine");
  if (status == 0) status = want_members(r, m, "machine", members);
  if (status == 0 && json_member(m, "class")) {
    status = want_kind(r, json_member(m, "class"), JSON_TEXT, "class");
    if (status == 0) status = find_class(r, json_text(json_member(m, "class")), &machine_class);
  }
  if (status == 0) status = read_features(r, json_member(m, "has"), "has", &has, &has_count);
  if (status == 0) status = read_features(r, json_member(m, "lacks"), "lacks", &lacks, &lacks_count);
  if (status == 0)
    status = in_file(r, case_set_machine(r->c, r->k, machine_class, has, has_count, lacks, lacks_count, r->e));
  free(has);
  free(lacks);
  return status;
}

/* Takes the owner's words for what they say best, and keeps what else they might mean. */
static int read_words(struct reading *r, const char *text)
{
  struct words_said w;
  struct case_said said = {.took_count = 0};

  words_complaints(r->k, r->c, text, &w);
  if (w.count == 0)
    return refuse(r, "\"%.80s\" matches no known complaint. \"pullcord list complaints\" shows them.%s", text, "");
  if (w.clear == WORDS_NOTHING)
    return refuse(r, "\"%.80s\" matches no known complaint well enough; the nearest is \"%s\". "
                  "\"pullcord list complaints\" shows them all.", text, r->k->complaints[w.best[0].at].id);
  text_cut(said.text, sizeof said.text, text);
  said.sure = words_clear_name(w.clear);
  said.took[said.took_count++] = w.best[0].at;
  for (size_t i = 0; i < w.more_count && said.took_count < SAID_MOST; i++)
    said.took[said.took_count++] = w.more[i];
  for (size_t i = 1; i < w.count && said.instead_count < 2; i++) {
    bool taken = false;

    for (size_t j = 0; j < said.took_count; j++) taken |= said.took[j] == w.best[i].at;
    if (!taken) said.instead[said.instead_count++] = w.best[i].at;
  }
  case_add_said(r->c, &said);
  return 0;
}

static int read_complaint(struct reading *r, const struct json *j)
{
  int at;

  if (want_kind(r, j, JSON_TEXT, "complaint")) return r->e->status;
  at = knowledge_find(r->k, ENTRY_COMPLAINT, json_text(j));
  if (at < 0) return read_words(r, json_text(j));
  case_add_complaint(r->c, at);
  return 0;
}

static int read_complaints(struct reading *r, const struct json *one, const struct json *many)
{
  int status = one ? read_complaint(r, one) : 0;
  size_t count = 0;

  if (status == 0 && many) status = want_kind(r, many, JSON_LIST, "complaints");
  for (const struct json *i = many && !status ? json_first(many) : NULL; i && !status; i = json_next(i)) {
    snprintf(r->path, sizeof r->path, "complaints/%zu", count);
    status = ++count <= MOST_COMPLAINTS
                 ? read_complaint(r, i)
                 : refuse(r, "more than 20 complaints are too many for one case.%s%s", "", "");
  }
  return status;
}

static int read_sure(struct reading *r, const struct json *j, double *sure)
{
  if (!j) return 0;
  if (json_kind(j) == JSON_NUMBER && json_number(j) >= 0 && json_number(j) <= 1) {
    *sure = json_number(j);
    return 0;
  }
  if (json_kind(j) == JSON_TEXT && words_sure(r->k, json_text(j), sure)) return 0;
  return refuse(r, "\"sure\" is one of sure, fairly, unsure, or a number from 0 to 1.%s%s", "", "");
}

static int read_result(struct reading *r, const struct json *j)
{
  static const char *const members[] = {"check", "result", "reading", "sure", "note", NULL};
  const struct json *result, *reading;
  struct case_result out;
  double sure = 1;
  int check, status;

  if (want_kind(r, j, JSON_OBJECT, "results")) return r->e->status;
  if (want_members(r, j, "a result", members)) return r->e->status;
  if (!json_member(j, "check") || want_kind(r, json_member(j, "check"), JSON_TEXT, "check"))
    return refuse(r, "a result must name its check as a text.%s%s", "", "");
  if (find_id(r, ENTRY_CHECK, "check", json_text(json_member(j, "check")), &check)) return r->e->status;
  result = json_member(j, "result");
  reading = json_member(j, "reading");
  if (!result == !reading)
    return refuse(r, "%s wants either a \"result\" or a \"reading\".%s", r->k->checks[check].id, "");
  if (reading && r->k->checks[check].kind != KIND_MEASURE)
    return refuse(r, "%s is not measured; give a \"result\" instead of a \"reading\".%s", r->k->checks[check].id, "");
  if (reading && json_kind(reading) == JSON_NUMBER)
    return refuse(r, "the reading of %s wants to be a text with its unit, such as %s.", r->k->checks[check].id,
                  amount_example(r->k->checks[check].quantity));
  if (want_kind(r, result ? result : reading, JSON_TEXT, result ? "result" : "reading")) return r->e->status;
  status = in_file(r, words_result(r->k, check, json_text(result ? result : reading), &out, r->e));
  if (status == 0) status = read_sure(r, json_member(j, "sure"), &sure);
  if (status) return status;
  if (case_result_of(r->c, check))
    return refuse(r, "check %s is given twice. Keep the result that holds.%s", r->k->checks[check].id, "");
  out.sure *= sure;
  case_set_result(r->c, out);
  return 0;
}

static int read_figure(struct reading *r, const struct check *check, const struct json *j, double *out)
{
  struct amount a;
  int status;

  if (!j || want_kind(r, j, JSON_TEXT, "low/high"))
    return refuse(r, "the spec of %s wants \"low\" and \"high\" as texts with units.%s", check->id, "");
  status = amount_parse(json_text(j), strlen(json_text(j)), check->quantity, check->unit, &a, r->e);
  if (status == 0) *out = unit_convert(a.value, a.unit, check->unit);
  return in_file(r, status);
}

static int read_card(struct reading *r, const struct json *j)
{
  static const char *const members[] = {"check", "low", "high", "from", NULL};
  struct case_card card = {.check = -1};
  const struct check *check;

  if (want_kind(r, j, JSON_OBJECT, "spec") || want_members(r, j, "a spec", members)) return r->e->status;
  if (!json_member(j, "check") || want_kind(r, json_member(j, "check"), JSON_TEXT, "check"))
    return refuse(r, "a spec must name its check as a text.%s%s", "", "");
  if (find_id(r, ENTRY_CHECK, "check", json_text(json_member(j, "check")), &card.check)) return r->e->status;
  check = &r->k->checks[card.check];
  if (check->kind != KIND_MEASURE) return refuse(r, "%s is not measured, so it has no figures.%s", check->id, "");
  if (read_figure(r, check, json_member(j, "low"), &card.low)) return r->e->status;
  if (read_figure(r, check, json_member(j, "high"), &card.high)) return r->e->status;
  for (size_t i = 0; i < r->c->card_count; i++)
    if (r->c->cards[i].check == card.check)
      return refuse(r, "the spec of %s is given twice. Keep the one that holds.%s", check->id, "");
  if (card.low > card.high) return refuse(r, "the spec of %s has \"low\" above \"high\".%s", check->id, "");
  text_cut(card.from, sizeof card.from, json_text(json_member(j, "from")));
  case_set_card(r->c, card);
  return 0;
}

/* The spec card that the machine goes by; figures of the case itself come before those on it. */
static int read_card_named(struct reading *r, const struct json *name)
{
  struct spec_card card;
  int status = name ? want_kind(r, name, JSON_TEXT, "spec") : 0;

  if (!name || status) return status;
  if (!*json_text(name)) return refuse(r, "\"spec\" names no card.%s%s", "", "");
  status = in_file(r, spec_called(r->k, json_text(name), &card, r->e));
  if (status) return status;
  spec_use(r->k, &card, r->c);
  spec_free(&card);
  return 0;
}

static int read_given(struct reading *r, const struct json *given)
{
  int status = given ? want_kind(r, given, JSON_OBJECT, "given") : 0;

  for (const struct json *m = given && !status ? json_first(given) : NULL; m && !status; m = json_next(m)) {
    const char *near;
    int what = given_find(json_name(m), &near);

    if (what < 0)
      return err_set(r->e, EX_DATAERR, r->file, 0, "\"given\" has no member \"%.60s\"%s%s%s", json_name(m),
                     near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
    snprintf(r->path, sizeof r->path, "given/%s", given_kind((enum given_what)what)->id);
    status = want_kind(r, m, JSON_TEXT, json_name(m));
    if (status == 0)
      status = in_file(r, given_parse((enum given_what)what, json_text(m), &r->c->given[what], r->e));
  }
  return status;
}

static int read_cover_off(struct reading *r, const struct json *j)
{
  int at = -1;

  if (want_kind(r, j, JSON_TEXT, "covers_off")) return r->e->status;
  if (find_id(r, ENTRY_COVER, "cover", json_text(j), &at)) return r->e->status;
  r->c->off[at] = true;
  return 0;
}

static int read_repaired(struct reading *r, const struct json *j)
{
  int at = -1;

  if (want_kind(r, j, JSON_TEXT, "repaired")) return r->e->status;
  if (find_id(r, ENTRY_FAULT, "fault", json_text(j), &at)) return r->e->status;
  r->c->mended[at] = true;
  return 0;
}

static int read_list(struct reading *r, const struct json *list, const char *what,
                     int (*read)(struct reading *, const struct json *))
{
  int status = list ? want_kind(r, list, JSON_LIST, what) : 0;
  size_t at = 0;

  for (const struct json *i = list && !status ? json_first(list) : NULL; i && !status; i = json_next(i)) {
    snprintf(r->path, sizeof r->path, "%s/%zu", what, at++);
    status = read(r, i);
  }
  return status;
}

/* A member of the case, and where it stands. */
static const struct json *member(struct reading *r, const struct json *j, const char *name)
{
  snprintf(r->path, sizeof r->path, "%s", name);
  return json_member(j, name);
}

int casefile_read(const struct knowledge *k, const char *file, const struct json *j,
                  struct bench_case *out, struct err *e)
{
  return casefile_read_text(k, file, NULL, 0, j, out, e);
}

int casefile_read_text(const struct knowledge *k, const char *file, const char *text, size_t len,
                       const struct json *j, struct bench_case *out, struct err *e)
{
  static const char *const members[] = {"pullcord", "machine", "complaint", "complaints", "results",
                                        "spec", "given", "covers_off", "repaired", "note", NULL};
  struct reading r = {k, file, out, e, ""};
  int status;

  case_begin(out, k);
  status = want_kind(&r, j, JSON_OBJECT, "the case");
  if (status == 0) status = want_members(&r, j, "a case", members);
  if (status == 0 && strcmp(json_text(json_member(j, "pullcord")), CASEFILE_VERSION) != 0)
    status = refuse(&r, "the version is missing or unknown: give \"pullcord\": \"%s\".%s", CASEFILE_VERSION, "");
  if (status == 0) status = read_machine(&r, member(&r, j, "machine"));
  if (status == 0) status = read_complaints(&r, member(&r, j, "complaint"), json_member(j, "complaints"));
  if (status == 0) status = read_list(&r, member(&r, j, "results"), "results", read_result);
  if (status == 0) status = read_list(&r, member(&r, j, "spec"), "spec", read_card);
  if (status == 0) status = read_given(&r, member(&r, j, "given"));
  if (status == 0) status = read_card_named(&r, json_member(member(&r, j, "machine"), "spec"));
  if (status == 0) status = read_list(&r, member(&r, j, "covers_off"), "covers_off", read_cover_off);
  if (status == 0) status = read_list(&r, member(&r, j, "repaired"), "repaired", read_repaired);
  if (status && text && e->line == 0 && strcmp(e->file, file) == 0) e->line = json_line(text, len, r.path);
  if (status) case_free(out);
  return status;
}

/* ---- writing ------------------------------------------------------------------------- */

static struct json *write_machine(const struct knowledge *k, const struct bench_case *c)
{
  struct json *m = json_object(), *has = json_list(), *lacks = json_list();

  if (c->machine_class >= 0) json_put_text(m, "class", k->classes[c->machine_class].id);
  for (size_t i = 0; i < k->feature_count; i++)
    if (c->features[i] == TRI_HAS) json_push_text(has, k->features[i].id);
    else if (c->features[i] == TRI_LACKS) json_push_text(lacks, k->features[i].id);
  json_put(m, "has", has);
  json_put(m, "lacks", lacks);
  if (*c->card_id) json_put_text(m, "spec", c->card_id);
  return m;
}

static struct json *write_given(const struct bench_case *c)
{
  struct json *o = json_object();
  char text[64];

  for (int i = 0; i < GIVEN_COUNT; i++) {
    if (!c->given[i].told) continue;
    given_format((enum given_what)i, c->given[i].value, text, sizeof text);
    json_put_text(o, given_kind((enum given_what)i)->id, text);
  }
  return o;
}

static void put_amount(struct json *o, const char *name, const struct check *check, double value)
{
  char text[64];

  amount_format(value * check->unit->factor + check->unit->offset, check->unit, text, sizeof text);
  json_put_text(o, name, text);
}

struct json *casefile_write(const struct knowledge *k, const struct bench_case *c)
{
  struct json *j = json_object(), *complaints = json_list(), *results = json_list(), *spec = json_list();
  struct json *off = json_list(), *repaired = json_list();

  json_put_text(j, "pullcord", CASEFILE_VERSION);
  json_put(j, "machine", write_machine(k, c));
  for (size_t i = 0; i < c->complaint_count; i++) json_push_text(complaints, k->complaints[c->complaints[i]].id);
  json_put(j, "complaints", complaints);
  for (size_t i = 0; i < c->result_count; i++) {
    const struct case_result *r = &c->results[i];
    const struct check *check = &k->checks[r->check];
    struct json *o = json_object();

    json_put_text(o, "check", check->id);
    if (r->sure <= 0) json_put_text(o, "result", "dont-know");
    else if (r->result >= 0) json_put_text(o, "result", check->results.items[r->result]);
    else put_amount(o, "reading", check, r->value);
    if (r->sure > 0 && r->sure < 0.999) json_put_text(o, "sure", words_sure_name(k, r->sure));
    json_push(results, o);
  }
  json_put(j, "results", results);
  for (size_t i = 0; i < c->card_count; i++) {
    struct json *o = json_object();

    json_put_text(o, "check", k->checks[c->cards[i].check].id);
    put_amount(o, "low", &k->checks[c->cards[i].check], c->cards[i].low);
    put_amount(o, "high", &k->checks[c->cards[i].check], c->cards[i].high);
    if (*c->cards[i].from) json_put_text(o, "from", c->cards[i].from);
    json_push(spec, o);
  }
  json_put(j, "spec", spec);
  json_put(j, "given", write_given(c));
  for (size_t i = 0; i < k->cover_count; i++)
    if (c->off[i]) json_push_text(off, k->covers[i].id);
  json_put(j, "covers_off", off);
  for (size_t i = 0; i < k->fault_count; i++)
    if (c->mended[i]) json_push_text(repaired, k->faults[i].id);
  json_put(j, "repaired", repaired);
  return j;
}
