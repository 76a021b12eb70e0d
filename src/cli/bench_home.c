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
  struct buf out = {0};
  size_t dropped;

  if (fault == -1)
    bench_say("The first place is something not listed. Name what you put right: fixed main jet.");
  if (fault < 0) return;
  job_say_fault(&b->news, "repair", b->k, fault);
  bench_keep(b);
  b->pending = b->feature = b->proved = -1;
  answer_proof(&out, b->k, &b->c, fault, terminal_width());
  bench_print(&out);
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

/* Asks what has to be asked before a job is called repaired. */
static bool may_be_repaired(const struct job *j, size_t confirmed)
{
  struct buf question = {0};
  bool go;

  if (confirmed == 0 &&
      !bench_yes("No repair has passed its proof run (fixed). Close it as repaired all the same?", false))
    return false;
  if (!bench_service_open(j, &question)) return true;
  buf_add(&question, ". Close it all the same?");
  go = bench_yes(buf_text(&question), false);
  buf_free(&question);
  return go;
}

/* Closes the job as it is in the store. */
static void close_as(struct bench *b, int ending)
{
  struct err e;
  struct job j;
  int *faults;
  size_t count;

  if (job_read(b->store, b->k, b->id, &j, &e)) {
    bench_say("%s", e.text);
    return;
  }
  faults = mem_array(j.repair_count + 1, sizeof *faults);
  count = ending == 0 ? job_confirmed(&j, faults) : 0;
  if (ending == 0 && !may_be_repaired(&j, count)) {
    bench_say("The job stays open.");
  } else {
    job_say_ended(&b->news, b->k, job_ending((size_t)ending), &j);
    if (bench_keep(b)) {
      bench_say("Closed: %s%s%s.", ending_words[ending], count ? ", confirmed: " : "",
                count ? b->k->faults[faults[0]].name : "");
      bench_say("Its card: pullcord card %s --output card.html", b->id + STORE_ID - 1 - STORE_SHORT);
      b->closed = b->over = true;
    }
  }
  free(faults);
  job_free(&j);
}

static void do_close(struct bench *b, const char *rest)
{
  struct buf question = {0}, off = {0};
  int ending;
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
  if (ending < 0) bench_say("The job stays open.");
  else close_as(b, ending);
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
  else if (bench_is_command(line, "service", &rest)) bench_service(b, rest);
  else if (bench_is_command(line, "minutes", &rest)) do_minutes(b, rest);
  else if (bench_is_command(line, "owner", &rest)) do_text(b, "owner", rest);
  else if (bench_is_command(line, "note", &rest)) do_text(b, "note", rest);
  else if (bench_is_command(line, "part", &rest)) do_text(b, "part", rest);
  else return false;
  return true;
}
