/* desk_add.c - one entry added or taken back from the command line; see desk.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "assess/deeper.h"
#include "base/text.h"
#include "cli/desk.h"
#include "report/answer.h"
#include "shop/spec_folder.h"
#include "shop/spec_use.h"
#include "shop/words.h"

static const double name_clear = 0.95;
enum { MOST_MINUTES = 6000, WIDTH = 78 };

/* One call: the job as it is, the case as it will be, and what goes into the store. */
struct adding { struct desk *d; struct job job; struct bench_case c; struct job_news news; };

static int find_id(const struct desk *d, enum entry_kind kind, const char *what, const char *id, int *out,
                   struct err *e)
{
  const char **ids, *near;
  size_t count;

  *out = knowledge_find(&d->k, kind, id);
  if (*out >= 0) return 0;
  knowledge_ids(&d->k, kind, &ids, &count);
  near = text_nearest(id, ids, count);
  err_set(e, EX_DATAERR, NULL, 0, "there is no %s \"%.60s\"%s%s%s \"pullcord list\" shows them.", what, id,
          near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  free(ids);
  return EX_DATAERR;
}

static int add_complaint(struct adding *a, const char *rest, struct err *e)
{
  struct words_said said;
  int at = knowledge_find(&a->d->k, ENTRY_COMPLAINT, rest);

  if (at < 0) {
    words_complaints(&a->d->k, &a->c, rest, &said);
    if (said.clear >= WORDS_FAIRLY) at = said.best[0].at;
  }
  if (at < 0) return find_id(a->d, ENTRY_COMPLAINT, "complaint", rest, &at, e);
  case_add_complaint(&a->c, at);
  return 0;
}

static int add_feature(struct adding *a, const char *rest, bool has, struct err *e)
{
  const struct knowledge *k = &a->d->k;
  signed char *told = mem_array(k->feature_count + 1, sizeof *told);
  int *with = mem_array(k->feature_count + 1, sizeof *with),
      *without = mem_array(k->feature_count + 1, sizeof *without);
  size_t n = 0, m = 0;
  int f, status = find_id(a->d, ENTRY_FEATURE, "feature", rest, &f, e);

  if (status == 0) {
    job_told(k, &a->c, told);
    for (size_t i = 0; has && k->features[f].one_of && i < k->feature_count; i++)
      if (strcmp(k->features[i].group, k->features[f].group) == 0) told[i] = TRI_UNKNOWN; /* displaced */
    told[f] = has ? TRI_HAS : TRI_LACKS;
    for (size_t i = 0; i < k->feature_count; i++) {
      if (told[i] == TRI_HAS) with[n++] = (int)i;
      if (told[i] == TRI_LACKS) without[m++] = (int)i;
    }
    status = case_set_machine(&a->c, k, a->c.machine_class, with, n, without, m, e);
  }
  free(told);
  free(with);
  free(without);
  return status;
}

static int add_has(struct adding *a, const char *rest, struct err *e)
{
  return add_feature(a, rest, true, e);
}
static int add_lacks(struct adding *a, const char *rest, struct err *e)
{
  return add_feature(a, rest, false, e);
}

static int add_cover(struct adding *a, const char *rest, bool off, struct err *e)
{
  int at, status = find_id(a->d, ENTRY_COVER, "cover", rest, &at, e);

  if (status == 0) a->c.off[at] = off;
  return status;
}

static int add_off(struct adding *a, const char *rest, struct err *e) { return add_cover(a, rest, true, e); }
static int add_on(struct adding *a, const char *rest, struct err *e) { return add_cover(a, rest, false, e); }

static int add_repair(struct adding *a, const char *rest, struct err *e)
{
  struct buf out = {0};
  int at, status = find_id(a->d, ENTRY_FAULT, "cause", rest, &at, e);

  if (status) return status;
  job_say_fault(&a->news, "repair", &a->d->k, at);
  answer_repair(&out, &a->d->k, &a->c, at, WIDTH);
  fputs(buf_text(&out), stdout);
  buf_free(&out);
  return 0;
}

/* What a fault brought about held before its repair only: when that did not cure the
 * complaint, those results go with it. */
static int leave_case(struct adding *a, int fault, struct err *e)
{
  struct assessor *assessor;
  struct assessment as;
  int status = assessor_open(&a->d->k, &assessor, e);

  if (status) return status;
  status = assess_case(assessor, &a->c, &as, e);
  if (status == 0) {
    deeper_mend(&as, &a->c, fault);
    assessment_free(&as);
  }
  assessor_close(assessor);
  return status;
}

static int add_proof(struct adding *a, const char *rest, struct err *e)
{
  char id[100];
  const char *gap = strrchr(rest, ' '), *how = gap ? gap + 1 : "";
  bool passed = strcmp(how, "passed") == 0;
  int at, status;

  if ((!passed && strcmp(how, "failed") != 0) || (size_t)(gap - rest) >= sizeof id)
    return err_set(e, EX_USAGE, NULL, 0, "a proof run is: proof CAUSE passed, or proof CAUSE failed.");
  snprintf(id, sizeof id, "%.*s", (int)(gap - rest), rest);
  status = find_id(a->d, ENTRY_FAULT, "cause", id, &at, e);
  if (status) return status;
  if (passed || a->c.mended[at]) {
    job_say_proof(&a->news, &a->d->k, at, passed);
    a->c.mended[at] = a->job.bench_case.mended[at] = !passed; /* the entry says so already */
    return 0;
  }
  if (a->job.closed) printf("The job is open again.\n");
  return leave_case(a, at, e);
}

static int add_service(struct adding *a, const char *rest, struct err *e)
{
  return job_service_read(&a->news, rest, e);
}

static int add_minutes(struct adding *a, const char *rest, struct err *e)
{
  char *end;
  double minutes = strtod(rest, &end);

  if (end == rest || *end || !(minutes > 0 && minutes <= MOST_MINUTES))
    return err_set(e, EX_USAGE, NULL, 0, "minutes are a number from 1 to %d.", (int)MOST_MINUTES);
  job_say_minutes(&a->news, minutes);
  return 0;
}

/* The spec card that the machine goes by; "none" takes it away. */
static int add_spec(struct adding *a, const char *rest, struct err *e)
{
  struct spec_card card;
  int status;

  if (strcmp(rest, "none") == 0) {
    spec_drop(&a->c);
    return 0;
  }
  status = spec_called(&a->d->k, rest, &card, e);
  if (status) return status;
  printf("Spec card: %s. Its figures judge %zu checks.\n", card.name, spec_use(&a->d->k, &card, &a->c));
  spec_free(&card);
  return 0;
}

/* "altitude 1500 m": what no check asks for; "altitude none" takes it back. */
static int add_given(struct adding *a, const char *rest, struct err *e)
{
  size_t n = strcspn(rest, " ");
  const char *amount = rest + n + strspn(rest + n, " "), *near = NULL;
  char id[60];
  int what;

  snprintf(id, sizeof id, "%.*s", (int)(n < sizeof id - 1 ? n : sizeof id - 1), rest);
  what = given_find(id, &near);
  if (what < 0)
    return err_set(e, EX_DATAERR, NULL, 0, "nothing given is called \"%s\"%s%s%s", id,
                   near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  if (strcmp(amount, "none") == 0) {
    a->c.given[what].told = false;
    return 0;
  }
  return given_parse((enum given_what)what, amount, &a->c.given[what], e);
}

/* ---- results -------------------------------------------------------------------------------- */

/* Cuts ", fairly" or ", unsure" off. */
static double cut_sureness(const struct desk *d, char *words)
{
  char *comma = strrchr(words, ',');
  double sure = 1;

  if (!comma || !words_sure(&d->k, comma + 1 + strspn(comma + 1, " "), &sure)) return 1;
  *comma = '\0';
  return sure;
}

static int named_check(const struct desk *d, const char *words)
{
  struct word_match m[2];
  int at = knowledge_find(&d->k, ENTRY_CHECK, words);
  size_t n;

  if (at >= 0) return at;
  n = words_match_checks(&d->k, words, m, 2);
  return n && m[0].score >= name_clear && (n == 1 || m[1].score < m[0].score) ? m[0].at : -1;
}

/* The first words name the check, the rest is its result: the longest name counts. */
static int add_result(struct adding *a, char *words, struct err *e)
{
  const struct knowledge *k = &a->d->k;
  double sure = cut_sureness(a->d, words);
  struct case_result r;

  for (size_t i = strlen(words); i > 0; i--) {
    int check, status;

    if (words[i] != ' ') continue;
    words[i] = '\0';
    check = named_check(a->d, words);
    words[i] = ' ';
    if (check < 0) continue;
    status = words_result(k, check, words + i + 1, &r, e);
    if (status) return status;
    r.sure *= sure;
    case_set_result(&a->c, r);
    if (r.sure > 0) case_take_off(&a->c, k, &k->checks[check].off);
    return 0;
  }
  return err_set(e, EX_DATAERR, NULL, 0,
                 "\"%.60s\" does not begin with the name of a check and go on with its result. "
                 "\"pullcord list checks\" shows them.",
                 words);
}

/* ---- the verbs ------------------------------------------------------------------------------ */

static int add_words(struct adding *a, char *words, struct err *e)
{
  static const struct {
    const char *word;
    int (*add)(struct adding *, const char *, struct err *);
  } special[] = {{"complaint", add_complaint},
                 {"has", add_has},
                 {"lacks", add_lacks},
                 {"off", add_off},
                 {"on", add_on},
                 {"repair", add_repair},
                 {"proof", add_proof},
                 {"service", add_service},
                 {"spec", add_spec},
                 {"given", add_given},
                 {"minutes", add_minutes}};
  static const char *const texts[] = {"note", "part", "owner", "words"};
  size_t n = strcspn(words, " ");
  const char *rest = words[n] ? words + n + 1 : "";

  for (size_t i = 0; *rest && i < sizeof special / sizeof special[0]; i++)
    if (strlen(special[i].word) == n && strncmp(words, special[i].word, n) == 0)
      return special[i].add(a, rest, e);
  for (size_t i = 0; *rest && i < sizeof texts / sizeof texts[0]; i++)
    if (strlen(texts[i]) == n && strncmp(words, texts[i], n) == 0) {
      job_say_text(&a->news, texts[i], rest);
      return 0;
    }
  return add_result(a, words, e);
}

static int begin(struct adding *a, struct desk *d, struct err *e)
{
  int status;

  *a = (struct adding){.d = d};
  status = desk_read(d, &a->job, e);
  if (status == 0) job_copy_case(&d->k, &a->job.bench_case, &a->c);
  return status;
}

static int end(struct adding *a, int status, struct err *e)
{
  if (status == 0) job_say_change(&a->news, &a->d->k, &a->job.bench_case, &a->c);
  if (status == 0) status = desk_write(a->d, a->job.id, &a->news, e);
  else job_news_free(&a->news);
  case_free(&a->c);
  job_free(&a->job);
  return status;
}

int desk_add(struct desk *d, struct err *e)
{
  struct adding a;
  char *words;
  int status = begin(&a, d, e);

  if (status) return status;
  words = desk_words(d, 2);
  if (a.job.closed && strncmp(words, "proof ", 6) != 0 && strncmp(words, "note ", 5) != 0)
    status = err_set(e, EX_DATAERR, NULL, 0,
                     "job %s is closed (%s); \"pullcord job reopen %s\" opens it again.", desk_name(a.job.id),
                     a.job.ending, desk_name(a.job.id));
  if (status == 0) status = add_words(&a, words, e);
  free(words);
  return end(&a, status, e);
}

int desk_back(struct desk *d, struct err *e)
{
  struct adding a;
  char *words;
  int check, status = begin(&a, d, e);

  if (status) return status;
  words = desk_words(d, 2);
  check = *words ? named_check(d, words) : a.c.result_count ? a.c.results[a.c.result_count - 1].check : -1;
  if (check >= 0 && case_drop_result(&a.c, check)) printf("Taken back: %s.\n", d->k.checks[check].name);
  else if (check >= 0)
    status = err_set(e, EX_DATAERR, NULL, 0, "there is no result for %s.", d->k.checks[check].id);
  else if (*words) status = find_id(d, ENTRY_CHECK, "check", words, &check, e);
  else status = err_set(e, EX_DATAERR, NULL, 0, "there is no result to take back.");
  free(words);
  return end(&a, status, e);
}
