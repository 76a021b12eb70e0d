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

/* ---- keeping and showing ---------------------------------------------------------------- */

static void keep(struct bench *b)
{
  struct err e;

  if (bench_keep(b->folder, b->k, &b->c, b->words, &e))
    bench_say("NOT KEPT: %s %s", e.file, e.text);
}

void bench_print(struct buf *out)
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

void bench_begin(struct bench *b)
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

static bool still_off(const struct bench *b)
{
  for (size_t i = 0; i < b->k->cover_count; i++)
    if (b->c.off[i]) return true;
  return false;
}

void bench_new(struct bench *b)
{
  char where[500];
  struct err e;

  if (still_off(b) && !bench_yes("Some covers are still off (see refit). Put the job aside all the same?", false)) return;
  if (bench_set_aside(b->folder, where, sizeof where, &e)) {
    bench_say("%s %s", e.file, e.text);
    return;
  }
  if (*where) bench_say("The job was put aside as %s.", where);
  bench_begin(b);
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

static void take_line(struct bench *b, char *line)
{
  if (!*line) return;
  if (b->feature >= 0 && answer_feature(b, line)) return;
  if (bench_run_changing(b, line)) return;
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
    if (show) bench_show_state(b);
    line = terminal_line("bench> ");
    if (!line) break;
    if (bench_run_showing(b, line)) {
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
                                         "fixed", "refit", "has", "lacks", "complaint", "machine", "new", "quit"};
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
  bench_new(b);
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
