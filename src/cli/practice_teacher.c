/* practice_teacher.c - class sets, their results, and hand-written cases; see practice.h. */
#include <dirent.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/random.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "practice/casework.h"
#include "practice/walk.h"

#define SET_VERSION "practice-set-1"
enum { MOST_RUNS = 200 };

static int print_json(struct json *j)
{
  char *text = json_print(j);

  fputs(text, stdout);
  free(text);
  json_free(j);
  return 0;
}

/* ---- making a set ----------------------------------------------------------------------- */

/* The n-th machine of a set; its seed follows from the set's. */
static struct json *set_run(const struct practice *p, const struct sitting *s, int n, struct err *e)
{
  struct json *j;
  struct run r;
  char text[32];

  if (sitting_begin(s, p->k, p->assessor, false, &r, e)) {
    run_free(&r);
    return NULL;
  }
  j = json_object();
  json_put_number(j, "number", n);
  snprintf(text, sizeof text, "%llu", (unsigned long long)s->seed);
  json_put_text(j, "seed", text);
  json_put_text(j, "kind", hidden_kind_name(s->kind));
  if (*s->machine) json_put_text(j, "machine", s->machine);
  if (*s->system) json_put_text(j, "system", s->system);
  if (s->rates) json_put_number(j, "shop-jobs", (double)s->shop_jobs);
  if (s->rates) json_put(j, "shop-rates", rates_json(p->k, s->rates));
  json_put_number(j, "expected", r.expected); /* how hard: minutes of the best path */
  run_free(&r);
  return j;
}

int practice_make_set(struct practice *p, const struct args *args, struct err *e)
{
  struct sitting s = p->record.sitting;
  struct random r = {s.seed};
  long count = args->count ? strtol(args->count, NULL, 10) : 10;
  struct json *j = json_object(), *runs = json_list();
  char text[40];

  if (count < 1 || count > MOST_RUNS) {
    json_free(j);
    json_free(runs);
    return err_set(e, EX_USAGE, NULL, 0, "--count goes from 1 to %d.", MOST_RUNS);
  }
  json_put_text(j, "pullcord", SET_VERSION);
  snprintf(text, sizeof text, "set-%llu", (unsigned long long)s.seed);
  json_put_text(j, "name", text);
  snprintf(text, sizeof text, "%016llx", p->k->fingerprint);
  json_put_text(j, "knowledge", text);
  for (int n = 1; n <= count; n++) {
    struct json *run;

    s.seed = random_bits(&r) >> 16; /* short enough to be typed */
    snprintf(s.machine, sizeof s.machine, "%s", p->record.sitting.machine);
    run = args->history && practice_shop(p, &s, e) ? NULL : set_run(p, &s, n, e);
    if (!run) {
      json_free(j);
      json_free(runs);
      free(s.rates);
      return e->status;
    }
    json_push(runs, run);
  }
  free(s.rates);
  json_put(j, "runs", runs);
  return print_json(j);
}

/* ---- practising on a set ---------------------------------------------------------------- */

static int read_set(const char *file, struct json **out, struct err *e)
{
  char *text;
  size_t len;
  int status = file_read(file, JSON_MAX_BYTES, &text, &len, e);

  if (status) return status;
  status = json_read(file, text, len, out, e);
  free(text);
  if (status == 0 && strcmp(json_text(json_member(*out, "pullcord")), SET_VERSION) != 0) {
    json_free(*out);
    status = err_set(e, EX_DATAERR, file, 0, "is not a class set. \"pullcord practice set\" makes one.");
  }
  return status;
}

/* Has the apprentice begun number n of this set? */
static bool begun(const struct practice *p, const char *set, int n)
{
  int count = progress_count(p->state, p->who);
  bool found = false;

  for (int i = 1; i <= count && !found; i++) {
    char *path = progress_file(p->state, p->who, i);
    struct record x;
    struct err e;

    if (record_read(path, p->k, &x, &e) == 0) {
      found = strcmp(x.sitting.set, set) == 0 && x.sitting.number == n;
      record_free(&x);
    }
    free(path);
  }
  return found;
}

static int take_run(const struct practice *p, const char *file, const struct json *i, const char *name,
                    struct sitting *s, struct err *e)
{
  s->number = (int)json_number(json_member(i, "number"));
  snprintf(s->set, sizeof s->set, "%s", name);
  s->seed = strtoull(json_text(json_member(i, "seed")), NULL, 10);
  hidden_kind_named(json_text(json_member(i, "kind")), &s->kind);
  snprintf(s->machine, sizeof s->machine, "%s", json_text(json_member(i, "machine")));
  snprintf(s->system, sizeof s->system, "%s", json_text(json_member(i, "system")));
  if (json_member(i, "case")) s->laid = json_print(json_member(i, "case"));
  s->shop_jobs = (long)json_number(json_member(i, "shop-jobs"));
  return rates_read(file, p->k, json_member(i, "shop-rates"), &s->rates, e);
}

int practice_from_set(struct practice *p, const char *file, struct sitting *s, bool *done, struct err *e)
{
  struct json *j;
  const struct json *runs;
  const char *name;
  int status = read_set(file, &j, e);

  *done = true;
  if (status) return status;
  name = json_text(json_member(j, "name"));
  runs = json_member(j, "runs");
  for (const struct json *i = runs ? json_first(runs) : NULL; i; i = json_next(i)) {
    if (begun(p, name, (int)json_number(json_member(i, "number")))) continue;
    status = take_run(p, file, i, name, s, e);
    *done = false;
    break;
  }
  json_free(j);
  return status;
}

/* ---- results ---------------------------------------------------------------------------- */

static struct json *result_json(const struct record *x)
{
  struct json *j = json_object();
  const struct summary *s = &x->summary;

  json_put_text(j, "apprentice", x->sitting.apprentice);
  json_put_number(j, "number", x->sitting.number);
  json_put_bool(j, "over", s->over);
  if (!s->over) return j;
  json_put_text(j, "truth", s->truth);
  json_put_bool(j, "right", s->right);
  json_put_bool(j, "unsafe", s->unsafe);
  json_put_number(j, "steps", s->steps);
  json_put_number(j, "minutes", s->minutes);
  json_put_number(j, "parts", s->parts);
  json_put_number(j, "given-away", s->regret);
  json_put_number(j, "expected", s->expected);
  json_put_number(j, "score", s->score);
  if (s->brier >= 0) json_put_number(j, "brier", s->brier);
  return j;
}

static void result_csv(const struct record *x)
{
  const struct summary *s = &x->summary;

  printf("%s,%d,%s,%s,%s,%s,%d,%.1f,%.1f,%.1f,%.1f,%.1f,", x->sitting.apprentice, x->sitting.number,
         s->over ? "yes" : "no", s->over ? s->truth : "", s->over ? s->right ? "yes" : "no" : "",
         s->unsafe ? "yes" : "no", s->steps, s->minutes, s->parts, s->regret, s->expected, s->score);
  if (s->brier >= 0 && s->over) printf("%.3f", s->brier);
  printf("\n");
}

/* All results of one apprentice for the set. */
static void score_one(struct practice *p, const char *folder, const char *apprentice, const char *set,
                      bool csv, struct json *list)
{
  int count = progress_count(folder, apprentice);

  for (int i = 1; i <= count; i++) {
    char *path = progress_file(folder, apprentice, i);
    struct record x;
    struct err e;

    if (record_read(path, p->k, &x, &e) == 0) {
      if (strcmp(x.sitting.set, set) == 0) {
        if (csv) result_csv(&x);
        else json_push(list, result_json(&x));
      }
      record_free(&x);
    } else {
      fprintf(stderr, "pullcord: left out: %s %s\n", e.file, e.text);
    }
    free(path);
  }
}

static int by_name(const void *x, const void *y) { return strcmp(*(char *const *)x, *(char *const *)y); }

/* The apprentices that have a folder, in the order of their names. The caller frees all. */
static char **list_apprentices(const char *state, size_t *count)
{
  char *folder = file_join(state, "practice"), **names = NULL;
  DIR *d = opendir(folder);
  const struct dirent *i;
  size_t room = 0;

  *count = 0;
  while (d && (i = readdir(d))) {
    void *items = names;

    if (!progress_name_good(i->d_name)) continue;
    mem_grow(&items, &room, *count + 1, sizeof *names);
    names = items;
    names[*count] = mem_new(strlen(i->d_name) + 1);
    strcpy(names[(*count)++], i->d_name);
  }
  if (d) closedir(d);
  free(folder);
  if (*count > 1) qsort(names, *count, sizeof *names, by_name);
  return names;
}

int practice_score(struct practice *p, const struct args *args, struct err *e)
{
  struct json *j = NULL, *out = json_object(), *list = json_list();
  char **names;
  size_t count;
  int status = read_set(args->positional[1] ? args->positional[1] : "", &j, e);

  if (status) {
    json_free(out);
    json_free(list);
    return status;
  }
  names = list_apprentices(args->from ? args->from : p->state, &count);
  if (!args->json)
    printf("apprentice,number,over,truth,right,unsafe,steps,minutes,parts,given-away,expected,score,brier\n");
  for (size_t i = 0; i < count; i++) {
    score_one(p, args->from ? args->from : p->state, names[i], json_text(json_member(j, "name")), !args->json,
              list);
    free(names[i]);
  }
  free(names);
  json_put_text(out, "pullcord", "practice-results-1");
  json_put_text(out, "set", json_text(json_member(j, "name")));
  json_put(out, "results", list);
  json_free(j);
  if (args->json) return print_json(out);
  json_free(out);
  return 0;
}

/* ---- a hand-written case ---------------------------------------------------------------- */

/* Does any hidden fault lead to the complaint? */
static bool leads(const struct run *r)
{
  for (size_t s = 0; s < r->k->sign_count; s++)
    for (size_t i = 0; i < r->truth_count; i++)
      if (r->k->signs[s].fault == r->truth[i] && r->k->signs[s].complaint == r->hidden.complaint) return true;
  return r->truth_count == 0;
}

int practice_check_case(struct practice *p, const struct args *args, struct err *e)
{
  struct run r = {0};
  bool leading;
  int status;

  if (!p->record.sitting.laid)
    return err_set(e, EX_USAGE, NULL, 0,
                   "practice case wants the file of a case: pullcord practice case --case FILE");
  (void)args;
  status = sitting_begin(&p->record.sitting, p->k, p->assessor, false, &r, e);
  if (status) {
    run_free(&r);
    return status;
  }
  leading = leads(&r);
  status = walk_to_the_end(&r, e);
  if (status == 0) {
    bench_say("%s: \"%s\"", p->k->classes[r.c.machine_class].name, hidden_words(&r.hidden));
    if (!leading)
      bench_say("Careful: none of its faults leads to that complaint in the knowledge, so nobody can reason "
                "it out.");
    bench_say("%s: expected minutes of the best path %.0f; on this machine it takes %.0f and %.0f in parts, "
              "in %zu steps.",
              r.right ? "Can be solved" : "The best path does NOT find it", r.expected, r.minutes, r.parts,
              r.step_count);
    if (r.right)
      bench_say("That is %s.", r.minutes <= 0.6 * r.expected   ? "easier than it looks at first"
                               : r.minutes <= 1.3 * r.expected ? "as hard as it looks at first"
                                                               : "harder than it looks at first");
    else
      status =
          err_set(e, EX_DATAERR, NULL, 0, "results, or the lack of signs, point away from what is wrong.");
  }
  run_free(&r);
  return status;
}
