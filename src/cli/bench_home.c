/* bench_home.c - from the repair to the machine going home; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "assess/deeper.h"
#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "report/answer.h"
#include "report/parts.h"
#include "units/parse.h"

static const char *const ending_words[] = {"repaired", "nothing broken", "handed over", "given up"};
enum { ENDINGS = 4, MOST_MINUTES = 6000 };

/* A repair was made: the proof run shows whether it was the right one, or is evidence that
 * something else is wrong. */
static void do_fixed(struct bench *b, const char *rest)
{
  int fault = bench_find_fault(b, rest), passed;
  size_t dropped;

  if (fault == -1)
    bench_say("The first place is something not listed. Name what you put right: fixed main jet.");
  if (fault < 0) return;
  job_say_fault(&b->news, "repair", b->k, fault);
  bench_keep(b);
  b->pending = b->feature = b->proved = -1;
  bench_say("Proof run: %s", b->k->faults[fault].proof);
  passed = bench_yes_or_end("Did it pass, with the complaint gone?", false);
  if (passed < 0) {
    bench_say("Not proved yet: type fixed %s again when it has run.", b->k->faults[fault].id);
  } else if (passed) {
    job_say_proof(&b->news, b->k, fault, true);
    b->c.mended[fault] = b->kept.mended[fault] = false; /* the proof says so already */
    b->proved = fault;
  } else {
    if (b->c.mended[fault]) job_say_proof(&b->news, b->k, fault, false); /* once more in vain */
    dropped = deeper_mend(&b->a, &b->c, fault);
    bench_say("So something else is wrong. %s leaves the case%s.", b->k->faults[fault].name,
              dropped ? ", and what it had brought about is to be looked at again" : "");
  }
  b->assessed = false;
}

/* Names of the covers that are off, or false when none is. */
static bool still_off(const struct bench *b, struct buf *names)
{
  int *order = mem_array(b->k->cover_count + 1, sizeof *order);
  size_t count = part_to_refit(b->k, &b->c, order);

  for (size_t i = 0; i < count; i++) buf_addf(names, "%s%s", i ? ", " : "", b->k->covers[order[i]].name);
  free(order);
  return count > 0;
}

static int ending_of(const char *words)
{
  if (words[0] >= '1' && words[0] < '1' + ENDINGS && !words[1]) return words[0] - '1';
  for (int i = 0; i < ENDINGS; i++)
    if (*words && (strcmp(words, ending_words[i]) == 0 || strcmp(words, job_ending((size_t)i)) == 0))
      return i;
  return -1;
}

static int ask_ending(const char *words)
{
  int ending = ending_of(words);

  while (ending < 0) {
    char *line = terminal_line("How did it end? 1 repaired, 2 nothing broken, 3 handed over, 4 given up: ");

    if (!line) return -1;
    text_lower(line);
    ending = ending_of(line);
    if (ending < 0 && !*line) {
      free(line);
      return -1;
    }
    free(line);
  }
  return ending;
}

/* What was proved since the job was opened. The caller frees. */
static int *confirmed(struct bench *b, size_t *count)
{
  int *faults;
  struct err e;
  struct job j;

  *count = 0;
  if (job_read(b->store, b->k, b->id, &j, &e)) return NULL;
  faults = mem_array(j.repair_count + 1, sizeof *faults);
  *count = job_confirmed(&j, faults);
  job_free(&j);
  return faults;
}

static void do_close(struct bench *b, const char *rest)
{
  struct buf question = {0}, off = {0};
  int ending, *faults;
  size_t count;
  bool go = true;

  if (still_off(b, &off)) {
    buf_addf(&question, "Still off: %s. Put them back first (refit), or close with them off?",
             buf_text(&off));
    go = bench_yes(buf_text(&question), false);
  }
  buf_free(&question);
  buf_free(&off);
  if (!go || !bench_keep(b)) return;
  ending = ask_ending(rest);
  if (ending < 0) {
    bench_say("The job stays open.");
    return;
  }
  faults = confirmed(b, &count);
  if (ending == 0 && count == 0)
    go = bench_yes("No repair has passed its proof run (fixed). Close it as repaired all the same?", false);
  if (go) {
    job_say_closed(&b->news, b->k, job_ending((size_t)ending), ending == 0 ? faults : NULL,
                   ending == 0 ? count : 0);
    if (bench_keep(b)) {
      bench_say("Closed: %s%s%s.", ending_words[ending], ending == 0 && count ? ", confirmed: " : "",
                ending == 0 && count ? b->k->faults[faults[0]].name : "");
      b->closed = b->over = true;
    }
  }
  free(faults);
}

static void do_minutes(struct bench *b, const char *rest)
{
  char *end;
  double minutes = strtod(rest, &end);

  b->silent = true;
  if (end == rest || strspn(end, " min") != strlen(end) || !(minutes > 0 && minutes <= MOST_MINUTES)) {
    bench_say("Give minutes as a number: minutes 20.");
    return;
  }
  job_say_minutes(&b->news, minutes);
  bench_say("Noted: %g minutes.", minutes);
}

static void do_text(struct bench *b, const char *kind, const char *rest)
{
  b->silent = true;
  if (!*rest) {
    bench_say("Say it on the same line: %s ...", kind);
    return;
  }
  job_say_text(&b->news, kind, rest);
  bench_say("Noted.");
}

bool bench_run_home(struct bench *b, const char *line)
{
  const char *rest;

  if (bench_is_command(line, "fixed", &rest)) do_fixed(b, rest);
  else if (bench_is_command(line, "close", &rest)) do_close(b, rest);
  else if (bench_is_command(line, "minutes", &rest)) do_minutes(b, rest);
  else if (bench_is_command(line, "owner", &rest)) do_text(b, "owner", rest);
  else if (bench_is_command(line, "note", &rest)) do_text(b, "note", rest);
  else if (bench_is_command(line, "part", &rest)) do_text(b, "part", rest);
  else return false;
  return true;
}
