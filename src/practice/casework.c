/* casework.c - see casework.h. */
#include "practice/casework.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "json/json.h"

enum { MOST_LISTED = 40, MOST_WORDS = 200 };

struct reader {
  const struct knowledge *k;
  const char *file;
  struct err *e;
};

static int unknown(const struct reader *x, const char *what, enum entry_kind kind, const char *id)
{
  const char **ids, *near;
  size_t count;
  int status;

  knowledge_ids(x->k, kind, &ids, &count);
  near = text_nearest(id, ids, count);
  status = err_set(x->e, EX_DATAERR, x->file, 0, "there is no %s \"%.60s\"%s%s%s", what, id,
                   near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
  free(ids);
  return status;
}

/* The ids of a list as indexes. */
static int read_list(const struct reader *x, const struct json *list, const char *what, enum entry_kind kind,
                     int *out, size_t *count)
{
  *count = 0;
  for (const struct json *i = list ? json_first(list) : NULL; i; i = json_next(i)) {
    int at = knowledge_find(x->k, kind, json_text(i));

    if (at < 0) return unknown(x, what, kind, json_text(i));
    if (*count == MOST_LISTED)
      return err_set(x->e, EX_DATAERR, x->file, 0, "a list holds more than %d.", MOST_LISTED);
    out[(*count)++] = at;
  }
  return 0;
}

/* What some machines of the class have is settled: what was not named is lacking. */
static int settle(const struct reader *x, struct bench_case *c, int class, int *has, size_t has_count,
                  int *lacks, size_t lacks_count)
{
  int *all = mem_array(x->k->feature_count + MOST_LISTED, sizeof *all);
  int status;

  memcpy(all, lacks, lacks_count * sizeof *all);
  status = case_set_machine(c, x->k, class, has, has_count, all, lacks_count, x->e);
  for (size_t i = 0; status == 0 && i < x->k->feature_count; i++)
    if (c->features[i] == TRI_UNKNOWN) all[lacks_count++] = (int)i;
  if (status == 0) status = case_set_machine(c, x->k, class, has, has_count, all, lacks_count, x->e);
  free(all);
  return status;
}

static int read_machine(const struct reader *x, const struct json *j, struct bench_case *c)
{
  int has[MOST_LISTED], lacks[MOST_LISTED],
      class = knowledge_find(x->k, ENTRY_CLASS, json_text(json_member(j, "machine")));
  int complaint = knowledge_find(x->k, ENTRY_COMPLAINT, json_text(json_member(j, "complaint"))), status;
  size_t has_count, lacks_count;

  if (class < 0) return unknown(x, "machine", ENTRY_CLASS, json_text(json_member(j, "machine")));
  if (complaint < 0) return unknown(x, "complaint", ENTRY_COMPLAINT, json_text(json_member(j, "complaint")));
  status = read_list(x, json_member(j, "has"), "feature", ENTRY_FEATURE, has, &has_count);
  if (status == 0)
    status = read_list(x, json_member(j, "lacks"), "feature", ENTRY_FEATURE, lacks, &lacks_count);
  if (status == 0) status = settle(x, c, class, has, has_count, lacks, lacks_count);
  if (status == 0) case_add_complaint(c, complaint);
  return status;
}

static int read_result(const struct reader *x, const struct json *i, struct case_result *out)
{
  int check = knowledge_find(x->k, ENTRY_CHECK, json_name(i));

  if (check < 0) return unknown(x, "check", ENTRY_CHECK, json_name(i));
  *out = (struct case_result){check, -1, json_number(i), 1};
  if (json_kind(i) == JSON_NUMBER && x->k->checks[check].kind == KIND_MEASURE) return 0;
  out->value = 0;
  out->result = check_result(&x->k->checks[check], json_text(i));
  if (out->result >= 0) return 0;
  return err_set(x->e, EX_DATAERR, x->file, 0,
                 "\"%.60s\" is no result of \"%s\": one of its results%s is wanted.", json_text(i),
                 json_name(i), x->k->checks[check].kind == KIND_MEASURE ? ", or a number," : "");
}

static int read_results(const struct reader *x, const struct json *list, struct hidden *h)
{
  size_t room = 0;

  for (const struct json *i = list ? json_first(list) : NULL; i; i = json_next(i)) {
    void *items = h->fixed;
    int status;

    mem_grow(&items, &room, h->fixed_count + 1, sizeof *h->fixed);
    h->fixed = items;
    status = read_result(x, i, &h->fixed[h->fixed_count++]);
    if (status) return status;
  }
  return 0;
}

/* What the owner says, when the teacher wrote it down. */
static int read_words(const struct reader *x, const struct json *j, struct hidden *h)
{
  const char *text = json_text(j);
  size_t n = strlen(text);

  if (!j) return 0;
  for (size_t i = 0; i < n; i++)
    if ((unsigned char)text[i] < ' ' || text[i] == 127)
      return err_set(x->e, EX_DATAERR, x->file, 0, "\"words\" is to be one line of text.");
  if (n == 0 || n > MOST_WORDS)
    return err_set(x->e, EX_DATAERR, x->file, 0, "\"words\" is to have 1 to %d characters.", MOST_WORDS);
  h->words = mem_new(n + 1);
  memcpy(h->words, text, n + 1);
  return 0;
}

static const struct {
  const char *name;
  enum json_kind kind;
} members[] = {{"pullcord", JSON_TEXT}, {"machine", JSON_TEXT},   {"has", JSON_LIST},
               {"lacks", JSON_LIST},    {"complaint", JSON_TEXT}, {"faults", JSON_LIST},
               {"seed", JSON_TEXT},     {"results", JSON_OBJECT}, {"words", JSON_TEXT}};

enum { MEMBERS = sizeof members / sizeof members[0] };

/* A member that is misspelt, or of another kind, would be passed over without a word. */
static int check_members(const struct reader *x, const struct json *j)
{
  const char *names[MEMBERS], *near, *seed = json_text(json_member(j, "seed"));

  for (size_t n = 0; n < MEMBERS; n++) names[n] = members[n].name;
  for (const struct json *i = json_first(j); i; i = json_next(i)) {
    size_t n = 0;

    while (n < MEMBERS && strcmp(names[n], json_name(i)) != 0) n++;
    if (n == MEMBERS) {
      near = text_nearest(json_name(i), names, MEMBERS);
      return err_set(x->e, EX_DATAERR, x->file, 0, "a practice case has no \"%.40s\"%s%s%s", json_name(i),
                     near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
    }
    if (json_kind(i) != members[n].kind)
      return err_set(x->e, EX_DATAERR, x->file, 0, "\"%s\" is to be %s, not %s.", names[n],
                     json_kind_name(members[n].kind), json_kind_name(json_kind(i)));
  }
  if (seed[strspn(seed, "0123456789")] || strlen(seed) > 20 || (json_member(j, "seed") && !*seed))
    return err_set(x->e, EX_DATAERR, x->file, 0, "\"seed\" is to be a whole number, as a text: \"7\".");
  return 0;
}

static int read_case(const struct reader *x, const struct json *j, struct hidden *out)
{
  struct bench_case c;
  int faults[MOST_LISTED], status;
  size_t count;

  if (strcmp(json_text(json_member(j, "pullcord")), CASEWORK_VERSION) != 0)
    return err_set(x->e, EX_DATAERR, x->file, 0, "is not a practice case: \"pullcord\" is to be \"%s\".",
                   CASEWORK_VERSION);
  status = check_members(x, j);
  if (status) return status;
  case_begin(&c, x->k);
  status = read_machine(x, j, &c);
  if (status == 0) status = read_list(x, json_member(j, "faults"), "fault", ENTRY_FAULT, faults, &count);
  if (status == 0)
    status = hidden_lay_down(x->k, &c, faults, count, strtoull(json_text(json_member(j, "seed")), NULL, 10),
                             out, x->e);
  case_free(&c);
  if (status) return status;
  status = read_results(x, json_member(j, "results"), out);
  if (status == 0) status = read_words(x, json_member(j, "words"), out);
  if (status) hidden_free(out);
  return status;
}

int casework_read(const struct knowledge *k, const char *file, const char *text, struct hidden *out,
                  struct err *e)
{
  struct reader x = {k, file, e};
  struct json *j = NULL;
  int status = json_read(file, text, strlen(text), &j, e);

  if (status == 0) status = read_case(&x, j, out);
  json_free(j);
  return status;
}
