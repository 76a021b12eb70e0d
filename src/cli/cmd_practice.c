/* cmd_practice.c - pullcord practice: begins or goes on with a run, and all that is done with
 * runs afterwards. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/file.h"
#include "base/random.h"
#include "base/text.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "knowledge/load.h"
#include "practice/walk.h"
#include "shop/store.h"

/* ---- what was asked for ----------------------------------------------------------------- */

static int wrong_word(struct err *e, const char *option, const char *word, const char *words)
{
  return err_set(e, EX_USAGE, NULL, 0, "%s takes one of %s, not \"%.40s\".", option, words, word);
}

static int read_seed(const char *text, uint64_t *out, struct err *e)
{
  char *end;

  *out = strtoull(text, &end, 10);
  if (*text >= '0' && *text <= '9' && *end == '\0') return 0;
  return err_set(e, EX_USAGE, NULL, 0, "--seed takes a whole number, not \"%.40s\".", text);
}

static int read_laid(const char *file, struct sitting *s, struct err *e)
{
  size_t len;

  return file_read(file, JSON_MAX_BYTES, &s->laid, &len, e);
}

/* The options, as far as they say what machine and level; what is missing is left. */
static int read_sitting(const struct args *a, struct sitting *s, struct err *e)
{
  int status = 0;

  if (a->level && !level_named(a->level, &s->level))
    return wrong_word(e, "--level", a->level, "worked, guided, free, exam");
  if (a->kind && !hidden_kind_named(a->kind, &s->kind))
    return wrong_word(e, "--kind", a->kind, "one, two, misleading, last-repair, nothing, any");
  if (a->machine_class) snprintf(s->machine, sizeof s->machine, "%s", a->machine_class);
  if (a->system) snprintf(s->system, sizeof s->system, "%s", a->system);
  if (a->seed) status = read_seed(a->seed, &s->seed, e);
  if (status == 0 && a->laid) status = read_laid(a->laid, s, e);
  return status;
}

/* ---- beginning and going on ------------------------------------------------------------- */

/* A seed that no earlier run of this apprentice had. */
static uint64_t fresh_seed(const struct practice *p)
{
  struct random r = {(uint64_t)clock_now()};

  for (const char *c = p->who; *c; c++) r.state = random_bits(&r) ^ (unsigned char)*c;
  r.state ^= (uint64_t)progress_count(p->state, p->who);
  return random_bits(&r) >> 32;
}

/* What the options leave open: level, system and seed, from how the apprentice comes on. */
static void fill_in(struct practice *p, const struct args *args, struct sitting *s)
{
  struct progress progress;
  int bad;

  progress_read(p->state, p->who, p->k, &progress, &bad);
  if (!args->level && !args->set) s->level = progress.next_level;
  if (args->set && !args->level) s->level = LEVEL_EXAM;
  if (!args->seed && !args->set) s->seed = fresh_seed(p);
  if (!args->system && !args->set && !args->kind && !args->laid && !args->seed && !args->history &&
      progress.next_system) {
    snprintf(s->system, sizeof s->system, "%s", progress.next_system);
    if (strcmp(s->system, "use") == 0) s->kind = HIDDEN_NOTHING;
    bench_say("Next for you: %s.", progress.why);
  } else if (!args->kind && !args->system && !args->set && !args->seed && !args->laid) {
    s->kind = HIDDEN_ANY;
    bench_say("Next for you: %s.", progress.why);
  }
}

/* An example to read should come to a good end before one is tired: the first of a few seeds whose
 * best path finds the fault in not too many steps. What was asked for by its seed stays. */
static int pick_example(struct practice *p, struct sitting *s, struct err *e)
{
  enum { TRIES = 12, FEW = 9 };
  int status = 0;

  for (int i = 0; i < TRIES && status == 0; i++) {
    struct run r;
    bool good = false;

    status = sitting_begin(s, p->k, p->assessor, false, &r, e);
    if (status == 0) status = walk_to_the_end(&r, e);
    if (status == 0) good = r.right && r.step_count <= FEW;
    run_free(&r);
    if (good) break;
    s->seed++;
  }
  return status;
}

static int begin(struct practice *p, const struct args *args, bool *done, struct err *e)
{
  struct sitting *s = &p->record.sitting;
  char *folder;
  int status = 0;

  snprintf(s->apprentice, sizeof s->apprentice, "%s", p->who);
  s->began = clock_now();
  fill_in(p, args, s);
  if (args->set) status = practice_from_set(p, args->set, s, done, e);
  else if (args->history) status = practice_shop(p, s, e);
  if (status == 0 && s->level == LEVEL_WORKED && !args->seed && !args->set && !args->laid && !args->history)
    status = pick_example(p, s, e);
  if (status || *done) return status;
  p->record.knowledge = p->k->fingerprint;
  folder = progress_folder(p->state, p->who);
  status = file_make_folder(folder, e);
  free(folder);
  p->path = progress_file(p->state, p->who, progress_count(p->state, p->who) + 1);
  if (status == 0) status = sitting_begin(s, p->k, p->assessor, false, &p->run, e);
  if (status == 0) status = practice_keep(p, e);
  return status;
}

/* Takes up the last run when it is not over. */
static bool take_up(struct practice *p, const struct args *args)
{
  int count = progress_count(p->state, p->who);
  struct record last;
  struct err e;

  if (count == 0 || args->new_job) return false;
  p->path = progress_file(p->state, p->who, count);
  if (record_read(p->path, p->k, &last, &e)) {
    bench_say("The run that was kept cannot be gone on with: %s", e.text);
  } else if (!last.summary.over && last.knowledge == p->k->fingerprint &&
             record_replay(&last, p->k, p->assessor, last.count, &p->run, &e) == 0) {
    record_free(&p->record);
    p->record = last;
    bench_say("Run %d goes on (%s, %zu steps done). --new begins another.", count,
              level_name(last.sitting.level), p->run.step_count);
    return true;
  } else {
    if (!last.summary.over) bench_say("Run %d was made with other knowledge and stays as it is.", count);
    run_free(&p->run);
    record_free(&last);
  }
  free(p->path);
  p->path = NULL;
  return false;
}

static const char *level_text(enum level level)
{
  static const char *const texts[] = {
      "worked, to read through", "guided: I ask before each check what you expect, and comment after",
      "free: nothing is said until the debrief", "exam: no help, and the debrief when the class is through"};

  return texts[level];
}

static int sit_down(struct practice *p, const struct args *args, struct err *e)
{
  bool done = false;
  int status = 0;

  terminal_begin(NULL);
  bench_say("Practice: nobody gets hurt here. Type help for what I take, quit to leave; every step is kept.");
  if (!take_up(p, args)) status = begin(p, args, &done, e);
  if (status == 0 && done)
    bench_say("You have begun every machine of this set. \"pullcord practice score FILE\" shows the marks.");
  if (status == 0 && !done) {
    if (p->record.sitting.number)
      bench_say("%s, machine %d.", p->record.sitting.set, p->record.sitting.number);
    if (p->record.sitting.rates)
      bench_say("Drawn as machines come to this shop (%ld proved jobs).", p->record.sitting.shop_jobs);
    bench_say("Level: %s.", level_text(p->record.sitting.level));
    practice_show_machine(p);
    status = p->record.sitting.level == LEVEL_WORKED ? practice_worked(p, e) : practice_talk(p, e);
    if (status == 0 && p->left) bench_say("Kept. To go on with it: pullcord practice%s", practice_who(p));
    if (status == 0 && !p->left) {
      practice_show_end(p);
      if (p->record.sitting.level == LEVEL_WORKED) practice_show_lessons(p, e);
      else if (p->record.sitting.level < LEVEL_EXAM && bench_yes_or_end("See the debrief now?", true) == 1)
        practice_show_debrief(p, e);
      if (p->record.sitting.level == LEVEL_WORKED)
        bench_say("Now one of your own: pullcord practice%s.", practice_who(p));
      else if (p->record.sitting.level < LEVEL_EXAM)
        bench_say(
            "Later, with pictures: pullcord practice debrief%s --html > debrief.html. The next machine: "
            "pullcord practice%s.",
            practice_who(p), practice_who(p));
    }
  }
  terminal_end();
  return status;
}

/* ---- afterwards ------------------------------------------------------------------------- */

/* Reads run number text (NULL: the last) and does it again, up to `most` entries. */
static int remake(struct practice *p, const char *text, size_t most, struct err *e)
{
  int count = progress_count(p->state, p->who), n = text ? (int)strtol(text, NULL, 10) : count, status;

  if (count == 0)
    return err_set(e, EX_NOINPUT, NULL, 0, "%s has no practice runs yet. \"pullcord practice\" begins one.",
                   p->who);
  if (n < 1 || n > count) return err_set(e, EX_USAGE, NULL, 0, "runs of %s go from 1 to %d.", p->who, count);
  p->path = progress_file(p->state, p->who, n);
  status = record_read(p->path, p->k, &p->record, e);
  if (status == 0 && p->record.knowledge != p->k->fingerprint)
    fprintf(stderr, "pullcord: the knowledge has changed since this run; it may come out otherwise.\n");
  return status ? status : record_replay(&p->record, p->k, p->assessor, most, &p->run, e);
}

static int show_debrief(struct practice *p, const struct args *args, struct err *e)
{
  struct debrief d;
  struct buf b = {0};
  int status = remake(p, args->positional[1], SIZE_MAX, e);

  if (status) return status;
  if (p->run.end == RUN_OPEN)
    return err_set(e, EX_USAGE, NULL, 0,
                   "this run is not over, and a debrief tells what is wrong: go on with it, declare a "
                   "cause or give up.");
  status = debrief_make(&d, &p->run, &p->record.sitting, p->assessor, e);
  if (status == 0 && args->json) {
    struct json *j = debrief_json(&d);
    char *text = json_print(j);

    buf_add(&b, text);
    free(text);
    json_free(j);
  } else if (status == 0 && args->html) {
    debrief_html(&b, &d);
  } else if (status == 0) {
    debrief_text(&b, &d, terminal_width());
  }
  if (status == 0) bench_print(&b);
  debrief_free(&d);
  buf_free(&b);
  return status;
}

static int replay(struct practice *p, const struct args *args, struct err *e)
{
  struct summary now;
  int status = remake(p, args->positional[1], SIZE_MAX, e);

  if (status) return status;
  practice_show_machine(p);
  for (size_t i = 0; i < p->run.step_count; i++) practice_show_step(p, &p->run.steps[i]);
  summary_of(&p->run, &now);
  bench_say("%.1f minutes, %.1f given away: %s.", now.minutes, now.regret,
            !p->record.summary.over ? "the run is not over"
            : now.regret - p->record.summary.regret < 0.01 && p->record.summary.regret - now.regret < 0.01
                ? "as it was kept"
                : "NOT as it was kept");
  return 0;
}

/* practice what-if RUN STEP ENTRY...: the same run up to that step, then something else. */
static int what_if(struct practice *p, const struct args *args, struct err *e)
{
  struct entry entry;
  struct buf words = {0}, b = {0};
  size_t at = 0, steps = 0;
  char why[300];
  long n = args->positional_count > 3 ? strtol(args->positional[2], NULL, 10) : 0;
  int status;

  if (n < 1)
    return err_set(e, EX_USAGE, NULL, 0,
                   "practice what-if wants a run, a step and an entry: what-if 3 2 spark test");
  status = remake(p, args->positional[1], 0, e);
  while (status == 0 && at < p->record.count && steps + 1 < (size_t)n) {
    const struct entry *x = &p->record.entries[at++];

    status = run_do(&p->run, x, e);
    steps += x->act != ACT_LEAD && x->act != ACT_WIPE;
  }
  if (status) return status;
  for (int i = 3; i < args->positional_count; i++)
    buf_addf(&words, "%s%s", i > 3 ? " " : "", args->positional[i]);
  if (!practice_read_entry(p, buf_text(&words), &entry))
    status = err_set(e, EX_USAGE, NULL, 0, "that is no entry.");
  else if (!run_possible(&p->run, &entry, why, sizeof why)) status = err_set(e, EX_USAGE, NULL, 0, "%s", why);
  else {
    size_t before = p->run.step_count;

    status = run_do(&p->run, &entry, e);
    if (status == 0 && p->run.end == RUN_UNSAFE)
      bench_say("That would have stopped the run: %s", p->run.unsafe);
    else if (status == 0 && p->run.step_count > before) {
      bench_say("Had you at step %ld:", n);
      practice_show_step(p, &p->run.steps[before]);
      debrief_comment(&b, &p->run, &p->run.steps[before], terminal_width());
      bench_print(&b);
    }
  }
  buf_free(&words);
  return status;
}

static int show_progress(struct practice *p, const struct args *args, struct err *e)
{
  struct progress progress;
  struct buf b = {0};
  int bad;

  (void)e;
  progress_read(p->state, p->who, p->k, &progress, &bad);
  if (args->json) {
    struct json *j = progress_json(&progress);
    char *text = json_print(j);

    buf_add(&b, text);
    free(text);
    json_free(j);
  } else {
    progress_text(&b, &progress, terminal_width());
    if (bad) buf_addf(&b, "%d kept runs cannot be read with this knowledge and are left out.\n", bad);
  }
  bench_print(&b);
  return 0;
}

static int forget(struct practice *p, const struct args *args, struct err *e)
{
  struct buf q = {0};
  int count = progress_count(p->state, p->who), status;
  bool yes;

  (void)args;
  buf_addf(&q, "Delete all %d runs of %s for good?", count, p->who);
  yes = bench_yes(buf_text(&q), false);
  buf_free(&q);
  if (!yes) {
    bench_say("Nothing was deleted.");
    return 0;
  }
  status = progress_forget(p->state, p->who, e);
  if (status == 0) bench_say("Deleted.");
  return status;
}

/* ---- the command ------------------------------------------------------------------------ */

static const struct {
  const char *word;
  int (*run)(struct practice *, const struct args *, struct err *);
} things[] = {{"run", sit_down},          {"debrief", show_debrief},   {"replay", replay},
              {"what-if", what_if},       {"progress", show_progress}, {"forget", forget},
              {"set", practice_make_set}, {"score", practice_score},   {"case", practice_check_case}};

enum { THINGS = sizeof things / sizeof things[0] };

static int dispatch(struct practice *p, const struct args *args, struct err *e)
{
  const char *word = args->positional_count ? args->positional[0] : "run", *words[THINGS], *near;

  for (int i = 0; i < THINGS; i++) {
    words[i] = things[i].word;
    if (strcmp(word, things[i].word) == 0) return things[i].run(p, args, e);
  }
  near = text_nearest(word, words, THINGS);
  return err_set(e, EX_USAGE, NULL, 0, "practice has no \"%.40s\"%s%s%s", word,
                 near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
}

int run_practice(const struct args *args, struct err *e)
{
  struct knowledge k;
  struct practice p = {.k = &k, .who = args->apprentice ? args->apprentice : "apprentice"};
  int status = load_knowledge(&k, e);

  if (status) return status;
  if (!progress_name_good(p.who))
    status = err_set(e, EX_USAGE, NULL, 0,
                     "--as takes a name of small letters, digits and hyphens, not \"%.40s\".", p.who);
  if (status == 0) status = read_sitting(args, &p.record.sitting, e);
  if (status == 0) status = store_folder(&p.state, e);
  if (status == 0) status = assessor_open(&k, &p.assessor, e);
  if (status == 0) status = dispatch(&p, args, e);
  run_free(&p.run);
  record_free(&p.record);
  if (p.assessor) assessor_close(p.assessor);
  free(p.state);
  free(p.path);
  free(p.again);
  free(p.cautioned);
  knowledge_free(&k);
  return status;
}
