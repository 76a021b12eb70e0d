/* practice_talk.c - the practice conversation and the worked example; see practice.h. */
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "practice/unsafe.h"
#include "practice/walk.h"
#include "report/parts.h"

static const char help_text[] =
    "  spark test        make a check: by its name, its id, or its number in a list\n"
    "  checks [system]   what can be checked, with minutes; checks fuel 2: second page\n"
    "  how CHECK         cautions and how it is done (costs nothing)\n"
    "  covers            what can come off; open COVER takes it off (minutes!)\n"
    "  repair PART       repair or renew it, put together and try: repair clean jet, 60 %\n"
    "  run               run it as the owner does, nothing changed\n"
    "  declare CAUSE     you are sure: declare main jet blocked, 80 %. It is put right,\n"
    "                    and if that was it the run ends\n"
    "                    declare nothing: nothing is broken\n"
    "  lead off, lead on plug lead: off before hands go near blade, chain or belt\n"
    "  wipe              wipe up petrol that was let out\n"
    "  path, machine     what was done so far; what stands on the bench\n"
    "  hint              what is best now, and why (guided only)\n"
    "  give up           stop and tell the owner\n"
    "  quit              leave; \"pullcord practice\" goes on where you were\n"
    "Every check costs minutes, every part money, as in life. A result once seen stays\n"
    "so. Readings are yours to judge. Steps are judged by what could be known.\n";

int practice_keep(struct practice *p, struct err *e)
{
  summary_of(&p->run, &p->record.summary);
  return record_keep(p->path, p->k, &p->record, e);
}

/* ---- entries ---------------------------------------------------------------------------- */

/* A number from 0 to 100; -1 at the end of the input. */
static double ask_certainty(void)
{
  for (;;) {
    char *line = terminal_line("How sure are you, in per cent (0 to 100)? "), *end;
    double sure;

    if (!line) return -1;
    sure = strtod(line, &end);
    while (*end == ' ' || *end == '%') end++;
    if (isdigit((unsigned char)*line) && *end == '\0' && sure >= 0 && sure <= 100) {
      free(line);
      return sure / 100;
    }
    free(line);
    bench_say("A number, please: 50 is a coin, 100 is certain.");
  }
}

/* What has to be asked before it is done. False: not done after all. */
static bool prepare(struct practice *p, struct entry *entry, char **expect)
{
  bool guided = p->record.sitting.level == LEVEL_GUIDED;

  if (guided && entry->act == ACT_CHECK) {
    int *ids = mem_array(p->k->caution_count + 1, sizeof *ids);
    size_t count = 0;

    part_add_cautions(p->k, &p->run.c, &p->k->checks[entry->at].cautions, &p->k->checks[entry->at].off, ids,
                      &count);
    for (size_t i = 0; i < count; i++) bench_say("CAUTION: %s", p->k->cautions[ids[i]].text);
    free(ids);
    *expect = terminal_line("What do you expect this to show, and what would it tell you? ");
    if (!*expect) return false;
    entry->expect = *expect;
  }
  if (entry->act == ACT_REPAIR || (entry->act == ACT_DECLARE && entry->at >= 0)) {
    int repair = entry->act == ACT_REPAIR ? entry->at : p->k->faults[entry->at].repair;
    double parts, minutes = run_minutes(&p->run, entry, &parts);
    struct buf q = {0};
    bool yes;

    buf_addf(&q, "%s: %.0f minutes", p->k->repairs[repair].name, minutes);
    if (parts > 0) buf_addf(&q, ", parts %.0f", parts);
    if (entry->act == ACT_DECLARE) buf_addf(&q, ". You declare: %s", p->k->faults[entry->at].name);
    bench_say("%s.", buf_text(&q));
    buf_free(&q);
    yes = bench_yes("Do it?", true);
    if (!yes) return false;
  }
  if (entry->act == ACT_DECLARE && entry->sure < 0) {
    entry->sure = ask_certainty();
    return entry->sure >= 0;
  }
  return true;
}

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
  if (prepare(p, entry, &expect)) {
    status = run_do(&p->run, entry, e);
    record_add(&p->record, entry);
    if (status == 0) status = practice_keep(p, e);
    if (entry->act == ACT_WIPE) bench_say("Wiped up, and left to dry.");
    if (entry->act == ACT_LEAD)
      bench_say("The plug lead is %s.", p->run.lead_off ? "off and held clear" : "on");
    if (status == 0 && p->run.step_count > before) {
      practice_show_step(p, &p->run.steps[p->run.step_count - 1]);
      if (p->record.sitting.level == LEVEL_GUIDED && p->run.end != RUN_UNSAFE) comment(p);
      if (p->run.spilt && !spilt && p->run.end == RUN_OPEN)
        bench_say("Petrol was let out there, and it is not wiped up.");
    }
  } else {
    bench_say("Not done.");
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

/* Commands that only show. */
static bool show(struct practice *p, const char *line)
{
  const char *rest;

  if (begins(line, "help", &rest) || strcmp(line, "?") == 0) fputs(help_text, stdout);
  else if (begins(line, "checks", &rest)) practice_show_checks(p, rest);
  else if (begins(line, "covers", &rest)) practice_show_covers(p);
  else if (begins(line, "machine", &rest)) practice_show_machine(p);
  else if (begins(line, "path", &rest)) practice_show_path(p);
  else if (begins(line, "how", &rest)) show_how(p, rest);
  else if (begins(line, "hint", &rest) || begins(line, "next", &rest)) {
    if (p->record.sitting.level == LEVEL_GUIDED) practice_show_hint(p);
    else bench_say("Hints are for the guided level.");
  } else return false;
  return true;
}

int practice_talk(struct practice *p, struct err *e)
{
  int status = 0;

  while (status == 0 && p->run.end == RUN_OPEN) {
    struct entry entry;
    char *line;

    line = p->again;
    p->again = NULL;
    if (!line) {
      practice_show_standing(p);
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

    printf("\n");
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
