/* bench_do.c - the commands of the bench conversation; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "report/answer.h"
#include "report/answer_plan.h"
#include "report/parts.h"
#include "shop/words.h"

static const char help_text[] =
    "  1, 2 ...        answer what was asked, or type the words of the answer\n"
    "  ?               don't know, or could not be tested\n"
    "  spark jumps     any other check you have made, by name and result\n"
    "  gap 0.030 in    ... or reading and unit; several with commas; \", fairly\"\n"
    "                  or \", unsure\" behind it when you are not sure\n"
    "  why [cause]     what speaks for and against the first cause, or another\n"
    "  how [check]     how to make the check that was asked, its cautions first\n"
    "  next            other checks worth their minutes; next 2 takes the second\n"
    "  skip            not this check now\n"
    "  back [check]    take the last result back, or that of a check\n"
    "  path            what was entered, and what it did\n"
    "  causes          the longer list of causes; behind it: it makes the trouble;\n"
    "                  is there: it is wrong, whatever it makes\n"
    "  plan            the work ahead, step by step, with its minutes\n"
    "  repair [cause]  how to put the first cause right, and how to prove it\n"
    "  fixed [cause]   it was put right: proved by running it, or still the same\n"
    "  refit [number]  what is off, in the order it goes back; a number: it is on\n"
    "  service         the last look-over, item by item; or: service oil plug done\n"
    "  close [ending]  repaired, nothing broken, handed over, given up\n"
    "  quit            stop; the job is kept and goes on next time\n"
    "  has X, lacks X  the machine has, or has not, a part\n"
    "  complaint ...   another complaint\n"
    "  machine         begin again with another machine\n"
    "  new             begin another job; this one stays open\n"
    "  owner ...       whose it is; note ... anything; part ... used; minutes 20\n"
    "  spec [name]     the maker's figures it goes by; a name: that card\n"
    "  given ...       altitude 1500 m, temperature, petrol-age, poles\n"
    "  work [name ...] bench arithmetic: work oil-refill 650 mL\n";

int bench_find_fault(const struct bench *b, const char *words)
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
  int fault = bench_find_fault(b, rest);
  struct buf out = {0};

  if (fault < -1) return;
  answer_why(&out, b->k, &b->c, &b->a, fault, terminal_width());
  bench_print(&out);
}

static void do_repair(struct bench *b, const char *rest)
{
  int fault = bench_find_fault(b, rest);
  struct buf out = {0};

  if (fault == -1) bench_say("The first place is something not listed; there is no repair to show.");
  if (fault < 0) return;
  answer_repair(&out, b->k, &b->c, fault, terminal_width());
  bench_print(&out);
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
  s = bench_step_of(b, check);
  answer_warnings(&out, b->k, &b->a, terminal_width());
  answer_check(&out, b->k, &b->c, s ? s : &(struct next_step){.check = check, .ask_first = -1},
               terminal_width());
  bench_print(&out);
}

static void do_next(const struct bench *b)
{
  int name = terminal_width() < 79 ? terminal_width() - 24 : 55;

  if (b->a.plan.count == 0) {
    bench_say("No check is worth its minutes now.");
    return;
  }
  terminal_putf("   %-*s %7s %10s\n", name, "check", "minutes", "to the end");
  for (size_t i = 0; i < b->a.plan.count && i < 9; i++) {
    const struct next_step *s = &b->a.plan.steps[i];

    terminal_putf("%2zu. %-*.*s %7g %10.0f\n", i + 1, name, name, b->k->checks[s->check].name, s->minutes, s->to_end);
  }
  bench_say("To the end: minutes that the whole job is expected to take when this is done next. The first may be a "
            "little dearer than the second when it tells more. next 2 takes the second.");
}

static void take_next(struct bench *b, const char *rest)
{
  size_t n = (size_t)strtoul(rest, NULL, 10);

  b->silent = !(n >= 1 && n <= b->a.plan.count);
  if (b->silent) {
    bench_say("There is no number %s on the list.", rest);
    return;
  }
  b->pending = b->a.plan.steps[n - 1].check;
  b->feature = -1;
}

/* The check of an entered result: its number in the path, its id or words for it; "" is the last.
 * -1 when there is none. */
static int entered(const struct bench *b, const char *words)
{
  enum { MOST = 12 };
  size_t n = (size_t)strtoul(words, NULL, 10), count;
  struct word_match m[MOST];
  int exact = knowledge_find(b->k, ENTRY_CHECK, words);

  if (!*words) n = b->c.result_count;
  if (n >= 1) return n <= b->c.result_count ? b->c.results[n - 1].check : -1;
  if (exact >= 0) return case_result_of(&b->c, exact) ? exact : -1;
  count = words_match_checks(b->k, words, m, MOST);
  for (size_t i = 0; i < count; i++)
    if (m[i].score >= 0.3 && case_result_of(&b->c, m[i].at)) return m[i].at;
  return -1;
}

static void do_back(struct bench *b, const char *rest)
{
  int check = entered(b, rest);

  if (check >= 0) {
    case_drop_result(&b->c, check);
    bench_say("Taken back: %s. What followed from it is gone too.", b->k->checks[check].name);
    b->pending = -1;
    b->assessed = false;
  } else {
    b->silent = true;
    if (*rest) bench_say("No result was entered for \"%s\". path lists those that were.", rest);
    else bench_say("Nothing was entered yet.");
  }
}

static void do_plan(struct bench *b)
{
  struct buf out = {0};

  answer_instead(&out, b->k, &b->a, terminal_width());
  answer_plan(&out, b->k, &b->a, terminal_width());
  bench_print(&out);
}

static void do_path(struct bench *b)
{
  double *odds = assess_odds(&b->a);
  size_t places = b->a.net.count;

  if (b->words) bench_say("The owner said: %s", b->words);
  for (size_t i = 0; i < b->c.result_count; i++) {
    struct buf said = {0};

    answer_result(&said, b->k, &b->c.results[i]);
    terminal_putf("  %2zu. %s\n", i + 1, buf_text(&said));
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

static void do_refit(struct bench *b, const char *rest)
{
  int *order = mem_array(b->k->cover_count + 1, sizeof *order);
  size_t count = part_to_refit(b->k, &b->c, order), n = (size_t)strtoul(rest, NULL, 10);
  struct buf out = {0};

  if (*rest && n >= 1 && n <= count) {
    b->c.off[order[n - 1]] = false;
    b->assessed = false;
    bench_say("Back on: %s.", b->k->covers[order[n - 1]].name);
    count = part_to_refit(b->k, &b->c, order);
    if (count) bench_say("%zu still off.", count);
  } else if (*rest) {
    bench_say("There is no number %s among what is off.", rest);
  } else {
    answer_refit(&out, b->k, &b->c, terminal_width());
    bench_print(&out);
  }
  free(order);
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

  answer_ranking(&out, b->k, &b->a, 15, terminal_width());
  buf_add(&out, "Of these causes, just:\n");
  answer_together(&out, b->k, &b->a, terminal_width());
  bench_print(&out);
  bench_say("nothing broken %.0f %%; two or more things wrong (also beside the complaint) %.0f %%",
            100 * b->a.sound, 100 * b->a.two_or_more);
}

static void do_complaint(struct bench *b, const char *rest)
{
  struct words_said said;

  words_complaints(b->k, &b->c, rest, &said);
  if (!*rest) b->over = !bench_ask_complaint(b);
  else if (said.clear >= WORDS_FAIRLY) {
    case_add_complaint(&b->c, said.best[0].at);
    b->proved = -1;
    bench_say("Noted as well: %s.", b->k->complaints[said.best[0].at].name);
  } else if (said.clear == WORDS_UNSURE) {
    bench_say("I am not sure what that is; the nearest is: %s. Put it in other words.",
              b->k->complaints[said.best[0].at].name);
  } else bench_say("I know no such complaint; put it in other words.");
  b->assessed = false;
  b->pending = -1;
}

/* Another machine: what was entered of this one goes, so that is asked first. */
static void do_machine(struct bench *b)
{
  if (b->c.result_count == 0 ||
      bench_yes("Begin again with another machine? The results of this one are taken back; new keeps them.", false))
    bench_begin(b);
}

/* Runs a command that only shows. */
bool bench_run_showing(struct bench *b, const char *line)
{
  const char *rest;

  if (bench_is_command(line, "help", &rest)) terminal_put(help_text);
  else if (bench_is_command(line, "how", &rest)) do_how(b, rest);
  else if (bench_is_command(line, "why", &rest)) do_why(b, rest);
  else if (bench_is_command(line, "next", &rest) && !*rest) do_next(b);
  else if (bench_is_command(line, "plan", &rest)) do_plan(b);
  else if (bench_is_command(line, "path", &rest)) do_path(b);
  else if (bench_is_command(line, "causes", &rest)) do_causes(b);
  else if (bench_is_command(line, "repair", &rest)) do_repair(b, rest);
  else if (bench_is_command(line, "refit", &rest) && !*rest) do_refit(b, rest);
  else if (bench_is_command(line, "work", &rest)) bench_work(b, rest);
  else return false;
  return true;
}

/* Runs a command that changes something; the state is shown again after it. */
bool bench_run_changing(struct bench *b, const char *line)
{
  const char *rest;

  if (bench_is_command(line, "skip", &rest)) {
    if (b->pending >= 0) b->skipped[b->pending] = true;
    if (b->feature >= 0) b->feature_asked[b->feature] = true;
    b->pending = b->feature = -1;
  } else if (bench_is_command(line, "back", &rest)) do_back(b, rest);
  else if (bench_is_command(line, "refit", &rest) && *rest) do_refit(b, rest);
  else if (bench_is_command(line, "next", &rest)) take_next(b, rest);
  else if (bench_is_command(line, "has", &rest)) do_feature(b, rest, true);
  else if (bench_is_command(line, "lacks", &rest)) do_feature(b, rest, false);
  else if (bench_is_command(line, "spec", &rest)) bench_spec(b, rest);
  else if (bench_is_command(line, "given", &rest)) bench_given(b, rest);
  else if (bench_is_command(line, "complaint", &rest)) do_complaint(b, rest);
  else if (bench_is_command(line, "machine", &rest) && !*rest) do_machine(b);
  else if (bench_is_command(line, "new", &rest) && !*rest) bench_new(b);
  else return bench_run_home(b, line);
  return true;
}
