/* practice_talk.c - the practice conversation and the worked example; see practice.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "practice/unsafe.h"
#include "practice/walk.h"

static const char help_text[] =
    "  spark test         make a check: by its name, or its number in a list\n"
    "  checks             what can be checked; \"checks fuel\": with minutes\n"
    "  how spark test     cautions and how it is done (costs nothing)\n"
    "  covers             what can come off; \"open air box\" takes it off\n"
    "  repair clean jet   repair or renew it, put together and try\n"
    "  declare fuel stale you are sure: it is put right, and if that was it the\n"
    "                     run ends; \"declare nothing\": nothing is broken\n"
    "                     add how sure you are: declare fuel stale, 80 %\n"
    "  run                run it as the owner does, nothing changed\n"
    "  lead off, lead on  plug lead: off before hands go near blade, chain, belt\n"
    "  wipe               wipe up petrol that was let out\n"
    "  path, machine      all that was done so far; what stands on the bench\n"
    "  hint               what is best now, and why (guided only)\n"
    "  give up, quit      stop and tell the owner; leave and come back later\n"
    "Checks cost minutes, parts cost money, as in life. The machine shows what it\n"
    "shows, and the same when asked again; what a reading means is yours to judge.\n"
    "Steps are judged by what could be known then, never by luck.\n";

static const char first_words[] =
    "What do you do first? Name a check (spark test), or see what there is: checks, then checks ignition. "
    "\"how spark test\" tells how it is done. When you know what it is: declare main jet blocked. \"help\" "
    "has the rest.";

int practice_keep(struct practice *p, struct err *e)
{
  summary_of(&p->run, &p->record.summary);
  return record_keep(p->path, p->k, &p->record, e);
}

/* ---- entries ----------------------------------------------------------------------------- */

static void comment(struct practice *p)
{
  const struct step *s = &p->run.steps[p->run.step_count - 1];
  struct buf b = {0};

  debrief_comment(&b, &p->run, s, terminal_width());
  bench_print(&b);
}

static int do_entry(struct practice *p, struct entry *entry, struct err *e)
{
  size_t before = p->run.step_count;
  bool spilt = p->run.spilt;
  char *expect = NULL, why[300];
  int status = 0;

  if (!run_possible(&p->run, entry, why, sizeof why)) {
    bench_say("%s", why);
    return 0;
  }
  if (practice_prepare(p, entry, &expect)) {
    status = run_do(&p->run, entry, e);
    record_add(&p->record, entry);
    if (status == 0) status = practice_keep(p, e);
    if (entry->act == ACT_WIPE) bench_say("Wiped up, and left to dry.");
    if (entry->act == ACT_LEAD)
      bench_say("The plug lead is %s.", p->run.lead_off ? "off and held clear" : "on");
    if (status == 0 && p->run.step_count > before) {
      if (p->run.end != RUN_UNSAFE) practice_show_step(p, &p->run.steps[p->run.step_count - 1]);
      if (p->record.sitting.level == LEVEL_GUIDED && p->run.end != RUN_UNSAFE) {
        practice_judge_reading(p, &p->run.steps[p->run.step_count - 1]);
        practice_compare(p, &p->run.steps[p->run.step_count - 1]);
        comment(p);
      }
      if (p->run.spilt && !spilt && p->run.end == RUN_OPEN)
        bench_say("Petrol was let out there, and it is not wiped up (\"wipe\").");
    }
  } else {
    bench_say(p->again ? "Not done; first:" : "Not done.");
  }
  free(expect);
  return status;
}

/* ---- the conversation ------------------------------------------------------------------- */

static bool begins(const char *line, const char *word, const char **rest)
{
  size_t n = strlen(word);

  if (strncmp(line, word, n) != 0 || (line[n] && line[n] != ' ')) return false;
  *rest = line + n;
  while (**rest == ' ') (*rest)++;
  return true;
}

static void show_how(struct practice *p, const char *words)
{
  int check = *words ? practice_find_check(p, words) : -1;

  if (!*words) bench_say("Name a check: how spark test.");
  if (check >= 0) practice_show_how(p, check);
}

/* "how old is the fuel", "how it stopped": a check by its name, not how a check is made. */
static bool is_a_question(const char *rest)
{
  static const char *const words[] = {"old",  "long", "much", "many", "often", "it",  "did",
                                      "does", "is",   "was",  "has",  "he",    "she", "they"};
  size_t n = strlen(rest);
  const char *after;

  if (n > 5 && (strcmp(rest + n - 5, " done") == 0 || strcmp(rest + n - 5, " made") == 0)) return false;
  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (begins(rest, words[i], &after)) return true;
  return false;
}

/* Commands that only show. */
static bool show(struct practice *p, const char *line)
{
  const char *rest;

  if (begins(line, "help", &rest)) fputs(help_text, stdout);
  else if (practice_unknown(line)) practice_show_stuck(p);
  else if (begins(line, "checks", &rest)) practice_show_checks(p, rest);
  else if (begins(line, "covers", &rest)) practice_show_covers(p);
  else if (begins(line, "machine", &rest)) practice_show_machine(p);
  else if (begins(line, "path", &rest)) {
    practice_show_path(p);
    p->shown = true;
  } else if (begins(line, "how", &rest) && !is_a_question(rest)) show_how(p, rest);
  else if (begins(line, "hint", &rest) || begins(line, "next", &rest)) {
    if (p->record.sitting.level == LEVEL_GUIDED) practice_show_hint(p);
    else bench_say("Hints are for the guided level (pullcord practice --level guided).");
  } else return false;
  return true;
}

int practice_talk(struct practice *p, struct err *e)
{
  int status = 0;

  if (p->run.step_count == 0) bench_say("%s", first_words);
  while (status == 0 && p->run.end == RUN_OPEN) {
    struct entry entry;
    char *line;

    line = p->again;
    p->again = NULL;
    if (!line) {
      practice_show_standing(p);
      p->shown = false;
      line = terminal_line("practice> ");
    }
    if (!line) {
      p->left = true;
      break;
    }
    text_lower(line);
    if (*line && !show(p, line) && practice_read_entry(p, line, &entry)) status = do_entry(p, &entry, e);
    free(line);
  }
  return status;
}

/* ---- the worked example ----------------------------------------------------------------- */

static bool go_on(void)
{
  char *line = terminal_line("[enter goes on] ");
  bool more = line != NULL;

  free(line);
  return more;
}

int practice_worked(struct practice *p, struct err *e)
{
  int status = 0;

  bench_say("A worked example: read how the best path goes and why. Nothing is asked of you.");
  while (status == 0 && p->run.end == RUN_OPEN) {
    struct entry entry = walk_best(&p->run);

    practice_show_standing(p);
    practice_show_hint(p);
    if (!go_on()) {
      p->left = true;
      return 0;
    }
    if (unsafe_wants_lead_off(&p->run, &entry) && !p->run.lead_off)
      bench_say("First the plug lead comes off.");
    if (unsafe_makes_spark(&p->run, &entry) && p->run.spilt)
      bench_say("First the petrol is wiped up and left to dry.");
    if (unsafe_wants_lead_off(&p->run, &entry))
      record_add(&p->record, &(struct entry){.act = ACT_LEAD, .sure = -1});
    if (unsafe_makes_spark(&p->run, &entry))
      record_add(&p->record, &(struct entry){.act = ACT_WIPE, .sure = -1});
    run_make_safe(&p->run, &entry);
    status = run_do(&p->run, &entry, e);
    record_add(&p->record, &entry);
    if (status == 0) status = practice_keep(p, e);
    if (status == 0) {
      practice_show_step(p, &p->run.steps[p->run.step_count - 1]);
      comment(p);
    }
  }
  return status;
}
