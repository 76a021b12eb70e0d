/* bench.c - the bench conversation: the loop and its commands; see bench.h. */
#include "cli/bench.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "arith/work.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/terminal.h"
#include "knowledge/load.h"
#include "report/answer.h"
#include "shop/words.h"

/* ---- showing ---------------------------------------------------------------- */

void bench_print(struct buf *out)
{
  terminal_put(buf_text(out));
  buf_free(out);
}

static bool assess(struct bench *b)
{
  struct err e;

  if (b->assessed) return true;
  assessment_free(&b->a);
  b->c.learned = b->history.jobs > 0 ? &b->history.chances : NULL;
  if (assess_case(b->assessor, &b->c, &b->a, &e) == 0) {
    b->assessed = true;
    if (b->a.disposition == DISPOSITION_HAND_OVER) b->pending = -1; /* what was asked waits too */
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

bool bench_is_command(const char *line, const char *word, const char **rest)
{
  size_t n = strlen(word);

  if (strncasecmp(line, word, n) != 0 || (line[n] && line[n] != ' ')) return false;
  *rest = line + n;
  while (**rest == ' ') (*rest)++;
  return true;
}

void bench_begin(struct bench *b)
{
  case_free(&b->c);
  case_begin(&b->c, b->k);
  free(b->words);
  b->words = NULL;
  b->pending = b->feature = b->chosen = b->proved = -1;
  b->assessed = false;
  memset(b->skipped, 0, b->k->check_count * sizeof *b->skipped);
  memset(b->told, 0, b->k->feature_count * sizeof *b->told);
  memset(b->feature_asked, 0, b->k->feature_count * sizeof *b->feature_asked);
  b->over = !bench_ask_machine(b) || !bench_ask_card(b) || !bench_ask_complaint(b);
  if (b->c.machine_class >= 0) bench_keep(b);
}

void bench_new(struct bench *b)
{
  if (*b->id) bench_say("That job stays open as %s.", b->id + STORE_ID - 1 - STORE_SHORT);
  bench_let_go(b);
  case_begin(&b->kept, b->k);
  b->kept_words = mem_new(1);
  bench_begin(b);
}

/* The answer to a question about the machine. False: it was something else. */
static bool answer_feature(struct bench *b, const char *line)
{
  int f = b->feature;
  bool yes = strcasecmp(line, "y") == 0 || strcasecmp(line, "yes") == 0;

  if (yes || strcasecmp(line, "n") == 0 || strcasecmp(line, "no") == 0) {
    b->feature = -1;
    bench_set_feature(b, f, yes);
    b->assessed = false;
    return true;
  }
  if (words_dont_know(line)) {
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

/* What only shows comes a screenful at a time, and then the question stands there again. */
static bool run_showing(struct bench *b, const char *line)
{
  size_t shown;
  bool ran;

  terminal_hold();
  ran = bench_run_showing(b, line);
  shown = terminal_held();
  if (ran && terminal_rows()) {
    terminal_put("\n");
    bench_ask_again(b);
  }
  terminal_release_pages(terminal_held() - shown);
  return ran;
}

static void converse(struct bench *b)
{
  bool show = true;

  while (!b->over) {
    char *line;

    bench_take_in(b);
    if (!assess(b) && !b->over) {
      bench_say("The last result is set aside so that we can go on.");
      if (b->c.result_count) case_drop_result(&b->c, b->c.results[b->c.result_count - 1].check);
      if (!assess(b)) return;
    }
    if (show) {
      bench_show_state(b);
      bench_keep_advice(b);
    }
    line = terminal_line("bench> ");
    if (!line) break;
    if (run_showing(b, line)) {
      show = false;
    } else {
      b->silent = false;
      take_line(b, line);
      if (!b->over) bench_keep(b);
      show = !b->silent;
    }
    free(line);
  }
}

/* ---- beginning and ending --------------------------------------------------------------- */

static void list_vocabulary(struct bench *b)
{
  static const char *const commands[] = {
      "help",  "how",     "why",   "next", "skip",  "back",  "plan",  "path",  "causes",  "repair",
      "fixed", "refit",   "has",   "lacks", "spec", "given", "work",  "owner", "note",    "minutes",
      "part",  "service", "close", "new",   "quit", "complaint", "machine"};
  const struct knowledge *k = b->k;
  size_t n = sizeof commands / sizeof commands[0], sums;
  const struct work *work = work_all(&sums);

  b->vocabulary = mem_array(n + sums + GIVEN_COUNT + k->check_count + k->fault_count + k->feature_count +
                                k->class_count, sizeof *b->vocabulary);
  for (size_t i = 0; i < n; i++) b->vocabulary[b->vocabulary_count++] = commands[i];
  for (size_t i = 0; i < sums; i++) b->vocabulary[b->vocabulary_count++] = work[i].name;
  for (int i = 0; i < GIVEN_COUNT; i++)
    b->vocabulary[b->vocabulary_count++] = given_kind((enum given_what)i)->id;
  for (size_t i = 0; i < k->check_count; i++) b->vocabulary[b->vocabulary_count++] = k->checks[i].id;
  for (size_t i = 0; i < k->fault_count; i++) b->vocabulary[b->vocabulary_count++] = k->faults[i].id;
  for (size_t i = 0; i < k->feature_count; i++) b->vocabulary[b->vocabulary_count++] = k->features[i].id;
  for (size_t i = 0; i < k->class_count; i++) b->vocabulary[b->vocabulary_count++] = k->classes[i].id;
  terminal_words(b->vocabulary, b->vocabulary_count);
}

/* What could not be written is tried once more; the status then says that it is lost. */
static int say_goodbye(struct bench *b, struct err *e)
{
  if (b->news.count && !bench_keep(b))
    return err_set(e, EX_IOERR, NULL, 0, "the last entries could not be kept (see above); write them down.");
  if (b->closed) bench_say("The job is kept. \"pullcord job reopen\" opens it again.");
  else if (*b->id) bench_say("The job is kept. \"pullcord\" goes on with it.");
  return 0;
}

static int converse_in(struct bench *b, const struct args *args, struct err *e)
{
  int status = assessor_open(b->k, &b->assessor, e);

  if (status == 0) status = bench_open_store(b, e);
  if (status) return status;
  b->skipped = mem_array(b->k->check_count, sizeof *b->skipped);
  b->told = mem_array(b->k->feature_count, sizeof *b->told);
  b->feature_asked = mem_array(b->k->feature_count, sizeof *b->feature_asked);
  list_vocabulary(b);
  bench_say("Pullcord at the bench. Type help for what I take, ? for don't know, quit to stop; every entry "
            "is kept. "
            "The maker's manual and licensed trades come before me.");
  bench_learn(b);
  status = bench_take_up(b, args, e);
  if (status == 0) {
    converse(b);
    status = say_goodbye(b, e);
  }
  terminal_end();
  return status;
}

int run_bench(const struct args *args, struct err *e)
{
  struct knowledge k;
  struct bench b = {
      .k = &k, .pending = -1, .feature = -1, .chosen = -1, .proved = -1, .who = commands_who(args)};
  int status = load_knowledge(&k, e);

  if (status) return status;
  status = converse_in(&b, args, e);
  assessment_free(&b.a);
  bench_let_go(&b);
  job_news_free(&b.news);
  assessor_close(b.assessor);
  store_close(b.store);
  history_free(&b.history);
  buf_free(&b.like_shown);
  free(b.skipped);
  free(b.told);
  free(b.feature_asked);
  free(b.vocabulary);
  knowledge_free(&k);
  return status;
}
