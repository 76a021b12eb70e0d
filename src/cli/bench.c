/* bench.c - the bench conversation: the loop and its commands; see bench.h. */
#include "cli/bench.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/terminal.h"
#include "knowledge/load.h"
#include "report/answer.h"
#include "report/parts.h"
#include "shop/benchfile.h"
#include "shop/words.h"

static const char help_text[] =
    "  1, 2 ...          answer what was asked (or type the words of the answer)\n"
    "  ?                 don't know, or could not be tested\n"
    "  spark none        any other check, by name and result\n"
    "  gap 0.030 in      ... or by a reading with its unit; add \", fairly\" or \", unsure\"\n"
    "  how               how to make the check that was asked\n"
    "  why [cause]       what speaks for and against a cause, with weights and sources\n"
    "  next              other checks worth their minutes; next 2 takes the second\n"
    "  skip              not this check now\n"
    "  back [check]      take the last result back, or that of a check\n"
    "  path              what was entered so far, and what it did\n"
    "  causes            the longer list of causes\n"
    "  repair [cause]    how to put the first cause right, and how to prove it\n"
    "  has X, lacks X    the machine has, or has not, a part\n"
    "  complaint ...     another complaint\n"
    "  machine           begin again with another machine\n"
    "  new               put this job aside and begin another\n"
    "  quit              stop; the job is kept and goes on next time\n";

/* ---- keeping and showing ---------------------------------------------------------------- */

static void keep(struct bench *b)
{
  struct err e;

  if (bench_keep(b->folder, b->k, &b->c, b->words, &e))
    bench_say("NOT KEPT: %s %s", e.file, e.text);
}

static void print_buf(struct buf *out)
{
  fputs(buf_text(out), stdout);
  buf_free(out);
}

static bool assess(struct bench *b)
{
  struct err e;

  if (b->assessed) return true;
  assessment_free(&b->a);
  if (assess_case(b->assessor, &b->c, &b->a, &e) == 0) {
    b->assessed = true;
    return true;
  }
  bench_say("%s", e.text);
  if (e.status == EX_DATAERR) return false;
  /* the rules were stopped: go on with a fresh engine */
  assessor_close(b->assessor);
  b->assessor = NULL;
  if (assessor_open(b->k, &b->assessor, &e)) {
    bench_say("%s", e.text);
    b->over = true;
  }
  return false;
}

/* A feature that is open and that one of the leading causes, or the next check, needs. */
static int open_feature(const struct bench *b, const struct refs *needs)
{
  for (size_t i = 0; i < needs->count; i++)
    if (b->c.features[needs->at[i]] == TRI_UNKNOWN && !b->feature_asked[needs->at[i]]) return needs->at[i];
  return -1;
}

static const struct next_step *best_step(const struct bench *b)
{
  for (size_t i = 0; i < b->a.plan.count; i++)
    if (!b->skipped[b->a.plan.steps[i].check]) return &b->a.plan.steps[i];
  return NULL;
}

static const struct next_step *step_of(const struct bench *b, int check)
{
  for (size_t i = 0; i < b->a.plan.count; i++)
    if (b->a.plan.steps[i].check == check) return &b->a.plan.steps[i];
  return NULL;
}

static void show_cautions(const struct bench *b, const struct check *c)
{
  int *ids = mem_array(b->k->caution_count + 1, sizeof *ids);
  size_t count = 0;

  part_add_cautions(b->k, &b->c, &c->cautions, &c->off, ids, &count);
  for (size_t i = 0; i < count; i++) bench_say("CAUTION: %s", b->k->cautions[ids[i]].text);
  free(ids);
}

static void show_choices(const struct check *c)
{
  int width = terminal_width(), col = 0;

  if (c->kind == KIND_MEASURE) {
    bench_say("  Type the reading in %s or another unit, or in words: %s ... ? don't know", c->unit_name,
              c->labels.items[0]);
    return;
  }
  for (size_t i = 0; i <= c->results.count; i++) {
    char text[160];
    int n;

    if (i < c->results.count) snprintf(text, sizeof text, "  %zu %s", i + 1, c->labels.items[i]);
    else snprintf(text, sizeof text, "  ? don't know");
    n = (int)text_columns(text);
    if (col && col + n > width) {
      printf("\n");
      col = 0;
    }
    printf("%s", text);
    col += n;
  }
  printf("\n");
}

/* Why this check: the two causes that its results would put first. */
static void show_reason(const struct bench *b, const struct next_step *s)
{
  const struct next_outcome *first = NULL, *second = NULL;

  if (s->ask_first >= 0) {
    bench_say("  first, because: %s", b->k->rules[s->ask_first].reason);
    return;
  }
  for (int i = 0; i < s->outcome_count; i++) {
    const struct next_outcome *o = &s->outcomes[i];

    if (!first || o->chance > first->chance) first = o;
  }
  for (int i = 0; first && i < s->outcome_count; i++)
    if (s->outcomes[i].fault != first->fault && (!second || s->outcomes[i].chance > second->chance))
      second = &s->outcomes[i];
  if (second)
    bench_say("  why: it tells \"%s\" from \"%s\"; saves about %.0f of %.0f minutes",
              part_fault_name(b->k, first->fault), part_fault_name(b->k, second->fault), s->saving, b->a.plan.cost_now);
  else bench_say("  why: it makes surer; saves about %.0f of %.0f minutes", s->saving, b->a.plan.cost_now);
}

static void show_question(const struct bench *b)
{
  const struct check *c = &b->k->checks[b->pending];
  const struct next_step *s = step_of(b, b->pending);
  int unsafe = conclusion_find(&b->a.drawn, UNSAFE, b->pending, 0);

  show_cautions(b, c);
  if (unsafe >= 0) bench_say("NOT NOW: %s", b->k->rules[b->a.drawn.items[unsafe].rule].reason);
  printf("%s", terminal_heavy());
  bench_say("Next (%g min): %s", s ? s->minutes : c->minutes, c->ask);
  printf("%s", terminal_plain());
  if (s) show_reason(b, s);
  show_choices(c);
}

static void show_end(const struct bench *b)
{
  if (b->a.disposition == DISPOSITION_REPAIR)
    bench_say("Found, as far as it goes: %s. Type repair for how to put it right, causes for the rest.",
              part_fault_name(b->k, b->a.ranking[0].fault));
  else if (b->a.disposition == DISPOSITION_NOTHING_BROKEN)
    bench_say("Nothing points to a broken part: look at how it is used or set. Type why, or add what you see.");
  else if (b->a.disposition == DISPOSITION_HAND_OVER)
    bench_say("Stop here and hand over (see above).");
  else bench_say("No check is worth its minutes now: repair the first cause, or add what you see.");
}

/* What leads, what to mind, and what comes next. */
static void show_state(struct bench *b)
{
  struct buf out = {0};
  const struct next_step *s;

  printf("\n");
  answer_ranking(&out, b->k, &b->a, 3);
  answer_notes(&out, b->k, &b->a, terminal_width());
  print_buf(&out);
  if (b->pending < 0 && b->feature < 0) {
    s = best_step(b);
    for (size_t i = 0; i < 4 && i < b->a.ranking_count && b->feature < 0; i++)
      if (b->a.ranking[i].fault >= 0) b->feature = open_feature(b, &b->k->faults[b->a.ranking[i].fault].needs);
    if (b->feature < 0 && s) b->feature = open_feature(b, &b->k->checks[s->check].needs);
    if (b->feature < 0 && s && b->a.disposition == DISPOSITION_KEEP_LOOKING) b->pending = s->check;
  }
  if (b->feature >= 0) bench_say("About the machine: %s (yes, no, ? don't know)", b->k->features[b->feature].ask);
  else if (b->pending >= 0) show_question(b);
  else show_end(b);
}

/* ---- commands --------------------------------------------------------------------------- */

static int fault_named(const struct bench *b, const char *words)
{
  struct word_match m[1];
  int exact;

  if (!*words) return b->a.ranking[0].fault;
  if (words[0] >= '1' && words[0] <= '9' && !words[1] && (size_t)(words[0] - '1') < b->a.ranking_count)
    return b->a.ranking[words[0] - '1'].fault;
  exact = knowledge_find(b->k, ENTRY_FAULT, words);
  if (exact >= 0) return exact;
  if (words_match_faults(b->k, words, m, 1) == 1 && m[0].score > 0.3) return m[0].at;
  bench_say("I know no cause called \"%s\". Type causes for the list.", words);
  return -3;
}

static void do_why(struct bench *b, const char *rest)
{
  int fault = fault_named(b, rest);
  struct buf out = {0};

  if (fault < -1) return;
  answer_why(&out, b->k, &b->c, &b->a, fault, terminal_width());
  print_buf(&out);
}

static void do_repair(struct bench *b, const char *rest)
{
  int fault = fault_named(b, rest);
  struct buf out = {0};

  if (fault == -1) bench_say("The first place is something not listed; there is no repair to show.");
  if (fault < 0) return;
  answer_repair(&out, b->k, &b->c, fault, terminal_width());
  print_buf(&out);
}

static void do_how(struct bench *b, const char *rest)
{
  const struct next_step *s;
  struct buf out = {0};
  int check = b->pending;

  if (*rest) check = bench_find_check(b, rest);
  if (check < 0) {
    if (!*rest) bench_say("No check was asked. Name one: how compression.");
    return;
  }
  s = step_of(b, check);
  answer_check(&out, b->k, &b->c, s ? s : &(struct next_step){.check = check, .ask_first = -1}, terminal_width());
  print_buf(&out);
}

static void do_next(struct bench *b, const char *rest)
{
  if (*rest) {
    size_t n = (size_t)strtoul(rest, NULL, 10);

    if (n >= 1 && n <= b->a.plan.count) {
      b->pending = b->a.plan.steps[n - 1].check;
      b->feature = -1;
      show_question(b);
    } else {
      bench_say("There is no number %s on the list.", rest);
    }
    return;
  }
  printf("   %-55s %7s %7s\n", "check", "minutes", "saves");
  for (size_t i = 0; i < b->a.plan.count && i < 9; i++)
    printf("%2zu. %-55.55s %7g %7.0f\n", i + 1, b->k->checks[b->a.plan.steps[i].check].name, b->a.plan.steps[i].minutes,
           b->a.plan.steps[i].saving);
  if (b->a.plan.count == 0) bench_say("No check is worth its minutes now.");
}

static void do_back(struct bench *b, const char *rest)
{
  int check;

  if (*rest) check = bench_find_check(b, rest);
  else if (b->c.result_count) check = b->c.results[b->c.result_count - 1].check;
  else check = -1;
  if (check < 0) {
    if (!*rest) bench_say("Nothing was entered yet.");
  } else if (case_drop_result(&b->c, check)) {
    bench_say("Taken back: %s. What followed from it is gone too.", b->k->checks[check].name);
    b->pending = -1;
    b->assessed = false;
  } else {
    bench_say("There is no result for %s.", b->k->checks[check].name);
  }
}

static void do_path(struct bench *b)
{
  double *odds = assess_odds(&b->a);
  size_t places = b->a.net.count;

  if (b->words) bench_say("The owner said: %s", b->words);
  for (size_t i = 0; i < b->c.result_count; i++) {
    struct buf said = {0};

    answer_result(&said, b->k, &b->c.results[i]);
    printf("  %2zu. %s\n", i + 1, buf_text(&said));
    buf_free(&said);
  }
  for (size_t i = 0; odds && i <= b->a.net.evidence_count; i++) {
    size_t best = 0;
    struct buf what = {0};

    if (i && b->a.net.evidence[i - 1].kind == EVIDENCE_IMPLIED) continue;
    for (size_t p = 1; p < places; p++)
      if (odds[i * places + p] > odds[i * places + best]) best = p;
    if (i) part_evidence(&what, b->k, &b->a.net.evidence[i - 1]);
    bench_say("  %s: most believed %s", i ? buf_text(&what) : "to begin with",
              part_fault_name(b->k, b->a.net.fault_of[best]));
    buf_free(&what);
  }
  free(odds);
}

static void do_feature(struct bench *b, const char *rest, bool has)
{
  const char **ids, *near;
  size_t count;
  int f = knowledge_find(b->k, ENTRY_FEATURE, rest);

  for (size_t i = 0; f < 0 && i < b->k->feature_count; i++)
    if (strcmp(b->k->features[i].name, rest) == 0) f = (int)i;
  if (f >= 0) {
    bench_set_feature(b, f, has);
    b->assessed = false;
    b->pending = b->feature = -1;
    bench_say("Noted: %s %s.", has ? "it has" : "it has not", b->k->features[f].name);
    return;
  }
  knowledge_ids(b->k, ENTRY_FEATURE, &ids, &count);
  near = text_nearest(rest, ids, count);
  bench_say("I know no part called \"%s\"%s%s%s. \"pullcord list features\" shows them.", rest,
            near ? "; did you mean " : "", near ? near : "", near ? "?" : "");
  free(ids);
}

static void do_causes(struct bench *b)
{
  struct buf out = {0};

  answer_ranking(&out, b->k, &b->a, 15);
  buf_add(&out, "Of these causes, just:\n");
  answer_together(&out, b->k, &b->a, terminal_width());
  print_buf(&out);
  bench_say("nothing broken %.0f %%; two or more things wrong (also beside the complaint) %.0f %%", 100 * b->a.sound,
            100 * b->a.two_or_more);
}

static void begin_job(struct bench *b)
{
  case_free(&b->c);
  case_begin(&b->c, b->k);
  free(b->words);
  b->words = NULL;
  b->pending = b->feature = -1;
  b->assessed = false;
  memset(b->skipped, 0, b->k->check_count * sizeof *b->skipped);
  memset(b->told, 0, b->k->feature_count * sizeof *b->told);
  memset(b->feature_asked, 0, b->k->feature_count * sizeof *b->feature_asked);
  b->over = !bench_ask_machine(b) || !bench_ask_complaint(b);
  if (b->c.machine_class >= 0) keep(b);
}

static void do_new(struct bench *b)
{
  char where[500];
  struct err e;

  if (bench_set_aside(b->folder, where, sizeof where, &e)) {
    bench_say("%s %s", e.file, e.text);
    return;
  }
  if (*where) bench_say("The job was put aside as %s.", where);
  begin_job(b);
}

static void do_complaint(struct bench *b, const char *rest)
{
  struct word_match m[1];

  if (!*rest) b->over = !bench_ask_complaint(b);
  else if (words_match_complaints(b->k, rest, m, 1) == 1 && m[0].score > 0.4) {
    case_add_complaint(&b->c, m[0].at);
    bench_say("Noted as well: %s.", b->k->complaints[m[0].at].name);
  } else bench_say("I know no such complaint; put it in other words.");
  b->assessed = false;
  b->pending = -1;
}

/* The answer to a question about the machine. False: it was something else. */
static bool answer_feature(struct bench *b, const char *line)
{
  int f = b->feature;

  if (strcmp(line, "y") == 0 || strcmp(line, "yes") == 0 || strcmp(line, "n") == 0 || strcmp(line, "no") == 0) {
    b->feature = -1;
    bench_set_feature(b, f, *line == 'y');
    b->assessed = false;
    return true;
  }
  if (strcmp(line, "?") == 0) {
    b->feature = -1;
    b->feature_asked[f] = true;
    return true;
  }
  return false;
}

/* True when the line begins with the command word; *rest is what follows. */
static bool is_command(const char *line, const char *word, const char **rest)
{
  size_t n = strlen(word);

  if (strncmp(line, word, n) != 0 || (line[n] && line[n] != ' ')) return false;
  *rest = line + n;
  while (**rest == ' ') (*rest)++;
  return true;
}

/* Runs a command that only shows. */
static bool run_showing(struct bench *b, const char *line)
{
  const char *rest;

  if (is_command(line, "help", &rest)) fputs(help_text, stdout);
  else if (is_command(line, "how", &rest)) do_how(b, rest);
  else if (is_command(line, "why", &rest)) do_why(b, rest);
  else if (is_command(line, "next", &rest)) do_next(b, rest);
  else if (is_command(line, "path", &rest)) do_path(b);
  else if (is_command(line, "causes", &rest)) do_causes(b);
  else if (is_command(line, "repair", &rest)) do_repair(b, rest);
  else return false;
  return true;
}

/* Runs a command that changes something; the state is shown again after it. */
static bool run_changing(struct bench *b, const char *line)
{
  const char *rest;

  if (is_command(line, "quit", &rest) || is_command(line, "exit", &rest)) b->over = true;
  else if (is_command(line, "skip", &rest)) {
    if (b->pending >= 0) b->skipped[b->pending] = true;
    if (b->feature >= 0) b->feature_asked[b->feature] = true;
    b->pending = b->feature = -1;
  } else if (is_command(line, "back", &rest)) do_back(b, rest);
  else if (is_command(line, "has", &rest)) do_feature(b, rest, true);
  else if (is_command(line, "lacks", &rest)) do_feature(b, rest, false);
  else if (is_command(line, "complaint", &rest)) do_complaint(b, rest);
  else if (is_command(line, "machine", &rest)) begin_job(b);
  else if (is_command(line, "new", &rest)) do_new(b);
  else return false;
  return true;
}

static void take_line(struct bench *b, char *line)
{
  if (!*line) return;
  if (b->feature >= 0 && answer_feature(b, line)) return;
  if (run_changing(b, line)) return;
  b->feature = -1;
  bench_entry(b, line);
}

static void converse(struct bench *b)
{
  bool show = true;

  while (!b->over) {
    char *line;

    if (!assess(b) && !b->over) {
      bench_say("The last result is set aside so that we can go on.");
      if (b->c.result_count) case_drop_result(&b->c, b->c.results[b->c.result_count - 1].check);
      if (!assess(b)) return;
    }
    if (show) show_state(b);
    line = terminal_line("bench> ");
    if (!line) break;
    if (run_showing(b, line)) {
      show = false;
    } else {
      take_line(b, line);
      if (!b->over) keep(b);
      show = true;
    }
    free(line);
  }
}

/* ---- beginning and ending --------------------------------------------------------------- */

static void list_vocabulary(struct bench *b)
{
  static const char *const commands[] = {"help", "how", "why", "next", "skip", "back", "path", "causes", "repair",
                                         "has", "lacks", "complaint", "machine", "new", "quit"};
  const struct knowledge *k = b->k;
  size_t n = sizeof commands / sizeof commands[0];

  b->vocabulary = mem_array(n + k->check_count + k->fault_count + k->feature_count + k->class_count,
                            sizeof *b->vocabulary);
  for (size_t i = 0; i < n; i++) b->vocabulary[b->vocabulary_count++] = commands[i];
  for (size_t i = 0; i < k->check_count; i++) b->vocabulary[b->vocabulary_count++] = k->checks[i].id;
  for (size_t i = 0; i < k->fault_count; i++) b->vocabulary[b->vocabulary_count++] = k->faults[i].id;
  for (size_t i = 0; i < k->feature_count; i++) b->vocabulary[b->vocabulary_count++] = k->features[i].id;
  for (size_t i = 0; i < k->class_count; i++) b->vocabulary[b->vocabulary_count++] = k->classes[i].id;
  terminal_words(b->vocabulary, b->vocabulary_count);
}

/* What differs from the class was said by the person. */
static void recall_told(struct bench *b)
{
  struct bench_case usual;
  struct err e;

  case_begin(&usual, b->k);
  if (case_set_machine(&usual, b->k, b->c.machine_class, NULL, 0, NULL, 0, &e) == 0)
    for (size_t i = 0; i < b->k->feature_count; i++)
      if (b->c.features[i] != usual.features[i]) b->told[i] = b->c.features[i];
  case_free(&usual);
}

static void go_on_or_begin(struct bench *b, bool anew)
{
  struct err e = {0};
  int status = bench_resume(b->folder, b->k, &b->c, &b->words, &e);

  if (status == 0 && b->c.machine_class >= 0 && !anew) {
    struct buf q = {0};

    buf_addf(&q, "A job was left open: %s%s%s, %zu results. Go on with it?", b->k->classes[b->c.machine_class].name,
             b->c.complaint_count ? ", " : "", b->c.complaint_count ? b->k->complaints[b->c.complaints[0]].name : "",
             b->c.result_count);
    if (bench_yes(buf_text(&q), true)) {
      buf_free(&q);
      recall_told(b);
      return;
    }
    buf_free(&q);
  } else if (status && status != EX_NOINPUT) {
    bench_say("The job that was kept cannot be read (%s), so it is put aside, not thrown away.", e.text);
  }
  if (status) case_begin(&b->c, b->k);
  do_new(b);
}

static int converse_in(struct bench *b, const struct args *args, struct err *e)
{
  char *history;
  int status = bench_folder(&b->folder, e);

  if (status) return status;
  status = assessor_open(b->k, &b->assessor, e);
  if (status) return status;
  history = file_join(b->folder, "history");
  terminal_begin(history);
  free(history);
  b->skipped = mem_array(b->k->check_count, sizeof *b->skipped);
  b->told = mem_array(b->k->feature_count, sizeof *b->told);
  b->feature_asked = mem_array(b->k->feature_count, sizeof *b->feature_asked);
  list_vocabulary(b);
  bench_say("Pullcord at the bench. Type help for what I take, ? for don't know, quit to stop; every entry is kept. "
            "The maker's manual and licensed trades come before me.");
  go_on_or_begin(b, args->new_job);
  converse(b);
  if (b->c.machine_class >= 0) bench_say("The job is kept. \"pullcord\" goes on with it.");
  terminal_end();
  return 0;
}

int run_bench(const struct args *args, struct err *e)
{
  struct knowledge k;
  struct bench b = {.k = &k, .pending = -1, .feature = -1};
  int status = load_knowledge(&k, e);

  if (status) return status;
  status = converse_in(&b, args, e);
  assessment_free(&b.a);
  case_free(&b.c);
  assessor_close(b.assessor);
  free(b.folder);
  free(b.words);
  free(b.skipped);
  free(b.told);
  free(b.feature_asked);
  free(b.vocabulary);
  knowledge_free(&k);
  return status;
}
