/* practice_show.c - what the practice conversation shows; see practice.h. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "plan/next.h"
#include "report/answer.h"
#include "report/parts.h"

enum { PAGE = 15, SCREEN = 22, FOUND = 4 };

const char *practice_who(const struct practice *p)
{
  static char text[60];

  snprintf(text, sizeof text, " --as %s", p->who);
  return strcmp(p->who, "apprentice") == 0 ? "" : text;
}

void practice_show_machine(const struct practice *p)
{
  const struct run *r = &p->run;
  struct buf has = {0};

  for (size_t i = 0; i < p->k->feature_count; i++)
    if (r->c.features[i] == TRI_HAS) buf_addf(&has, "%s%s", has.len ? ", " : "", p->k->features[i].name);
  bench_say("A %s. The owner says: \"%s\"", p->k->classes[r->c.machine_class].name, hidden_words(&r->hidden));
  bench_say("It has: %s.", buf_text(&has));
  buf_free(&has);
}

/* The last steps in one line or two, oldest first. */
static void show_found(const struct run *r)
{
  struct buf b = {0};
  size_t from = r->step_count > FOUND ? r->step_count - FOUND : 0;

  if (r->step_count == 0) return;
  if (from) buf_addf(&b, "(%zu before) ", from);
  for (size_t i = from; i < r->step_count; i++) {
    if (i > from) buf_add(&b, " | ");
    debrief_step(&b, r, &r->steps[i]);
  }
  bench_say("So far: %s", buf_text(&b));
  buf_free(&b);
}

void practice_show_standing(const struct practice *p)
{
  const struct run *r = &p->run;
  struct buf b = {0};

  printf("\n");
  if (!p->shown) show_found(r);
  buf_addf(&b, "[%s, \"%s\" | %.*f min", p->k->classes[r->c.machine_class].name, hidden_words(&r->hidden),
           r->minutes > 0 && r->minutes < 10, r->minutes);
  if (r->parts > 0) buf_addf(&b, ", parts %.0f", r->parts);
  buf_addf(&b, " | plug lead %s", r->lead_off ? "OFF" : "on");
  if (r->spilt) buf_add(&b, " | PETROL SPILT");
  for (size_t i = 0, n = 0; i < p->k->cover_count; i++)
    if (r->c.off[i]) buf_addf(&b, "%s%s", n++ ? ", " : " | off: ", p->k->covers[i].name);
  bench_say("%s]", buf_text(&b));
  buf_free(&b);
}

/* Minutes of a check now, with its covers. */
static double minutes_of(const struct practice *p, int check)
{
  double parts;

  return run_minutes(&p->run, &(struct entry){.act = ACT_CHECK, .at = check}, &parts);
}

static bool can_be_made(const struct practice *p, int check)
{
  char why[300];

  return run_possible(&p->run, &(struct entry){.act = ACT_CHECK, .at = check, .sure = -1}, why, sizeof why);
}

static void show_systems(const struct practice *p)
{
  struct buf b = {0};

  for (size_t i = 0; i < p->k->check_count; i++) {
    const char *system = p->k->checks[i].system;
    size_t count = 0;
    bool before = false;

    for (size_t j = 0; j < p->k->check_count; j++) {
      if (strcmp(p->k->checks[j].system, system) != 0) continue;
      before = before || (j < i && strcmp(p->k->checks[j].system, system) == 0);
      count += can_be_made(p, (int)j);
    }
    if (!before && count) buf_addf(&b, "%s%s (%zu)", b.len ? ", " : "", system, count);
  }
  bench_say("Checks that this machine can have: %s. \"checks use\" lists what can be asked of the owner, "
            "\"checks fuel\" what can be looked at and measured there.",
            buf_text(&b));
  buf_free(&b);
}

/* By insertion: a list is short. */
static void cheapest_first(struct practice *p)
{
  for (size_t i = 1; i < p->listed_count; i++) {
    int check = p->listed[i];
    size_t at = i;

    for (; at > 0 && minutes_of(p, check) < minutes_of(p, p->listed[at - 1]); at--)
      p->listed[at] = p->listed[at - 1];
    p->listed[at] = check;
  }
}

void practice_show_checks(struct practice *p, const char *words)
{
  char system[40] = "";
  bool known = false; /* a system; any other word is looked for in the names */
  int page = 1;
  size_t shown = 0;

  if (sscanf(words, "%39s %d", system, &page) < 1) {
    show_systems(p);
    return;
  }
  for (size_t i = 0; i < p->k->check_count; i++) known = known || strcmp(p->k->checks[i].system, system) == 0;
  p->listed_count = 0;
  for (size_t i = 0; i < p->k->check_count && p->listed_count < sizeof p->listed / sizeof p->listed[0]; i++)
    if ((strcmp(p->k->checks[i].system, system) == 0 || (!known && strstr(p->k->checks[i].name, system))) &&
        can_be_made(p, (int)i))
      p->listed[p->listed_count++] = (int)i;
  cheapest_first(p);
  if (page < 1) page = 1;
  for (size_t i = (size_t)(page - 1) * PAGE; i < p->listed_count && shown < PAGE; i++, shown++)
    printf("%3zu. %-58.58s %5.1f min%s\n", i + 1, p->k->checks[p->listed[i]].name,
           minutes_of(p, p->listed[i]), case_result_of(&p->run.c, p->listed[i]) ? " made" : "");
  if (p->listed_count == 0) {
    bench_say("No system and no check here is called \"%s\".", system);
    show_systems(p);
  }
  if ((size_t)page * PAGE < p->listed_count) bench_say("More: checks %s %d", system, page + 1);
}

void practice_show_covers(const struct practice *p)
{
  const struct knowledge *k = p->k;
  size_t open;

  for (size_t i = 0; i < k->cover_count; i++) {
    const struct cover *c = &k->covers[i];

    if (case_needs(&p->run.c, &c->needs, &open) == TRI_LACKS) continue;
    printf("  %-44.44s %4.1f min off and on%s\n", c->name, c->minutes_off + c->minutes_on,
           p->run.c.off[i] ? ", off now" : "");
  }
}

void practice_show_step(const struct practice *p, const struct step *s)
{
  struct buf b = {0};

  debrief_step(&b, &p->run, s);
  buf_addf(&b, "  (%.1f min", s->minutes);
  if (s->parts > 0) buf_addf(&b, ", parts %.0f", s->parts);
  printf("%s", terminal_heavy());
  bench_say("%s)", buf_text(&b));
  printf("%s", terminal_plain());
  buf_free(&b);
  if (s->taken_back)
    bench_say(
        "%d earlier results may have come from what was put right: they would have to be looked at again.",
        s->taken_back);
}

void practice_show_path(const struct practice *p)
{
  size_t from = p->run.step_count > PAGE ? p->run.step_count - PAGE : 0;

  bench_say("The owner says: \"%s\"", hidden_words(&p->run.hidden));
  if (from) bench_say("(%zu earlier steps)", from);
  for (size_t i = from; i < p->run.step_count; i++) {
    struct buf b = {0};

    debrief_step(&b, &p->run, &p->run.steps[i]);
    printf("%3zu. %.72s\n", i + 1, buf_text(&b));
    buf_free(&b);
  }
  if (p->run.step_count == 0) bench_say("Nothing was done yet.");
}

void practice_show_how(const struct practice *p, int check)
{
  struct next_step s = {.check = check, .ask_first = -1, .minutes = minutes_of(p, check)};
  struct buf b = {0};

  answer_check(&b, p->k, &p->run.c, &s, terminal_width());
  bench_print(&b);
}

void practice_show_stuck(const struct practice *p)
{
  bench_say(
      "Not knowing is where it starts. An engine that will not run, or not well, has too little or too much "
      "of fuel, air, spark or compression, or too much to drive. Which of them would do what the owner says, "
      "and what is the cheapest look that parts them? \"checks\" lists what there is, by system.");
  if (p->record.sitting.level == LEVEL_GUIDED) bench_say("\"hint\" says what is best now, and why.");
}

/* Of each result of the best check: what it would mean, and what would come next. */
static void show_what_follows(const struct practice *p, const struct advice_option *o)
{
  for (size_t i = 0; i < o->result_count; i++) {
    const struct advice_result *r = &o->results[i];
    struct buf then = {0};

    debrief_better(&then, p->k, &r->next);
    if (r->chance >= 0.005)
      bench_say("  if %s (%.0f in 100): %s %.0f %%; then %s",
                p->k->checks[o->step.at].labels.items[r->result], 100 * r->chance,
                debrief_fault(p->k, r->fault), 100 * r->belief, buf_text(&then));
    buf_free(&then);
  }
}

void practice_show_hint(const struct practice *p)
{
  const struct run *r = &p->run;
  const struct advice_option *o = r->advice.options;
  struct buf b = {0};
  double chance;
  int leading = run_leading(r, &chance);

  debrief_better(&b, p->k, &o[0].step);
  if (o[0].step.kind == ADVICE_GIVE_UP)
    bench_say("Leading now: %s, %.0f %%. Best next: %s. To go on is expected to cost more than the machine "
              "is worth.",
              debrief_fault(p->k, leading), 100 * chance, buf_text(&b));
  else
    bench_say("Leading now: %s, %.0f %%. Best next: %s (%.1f min). To the end, all told, about %.0f min.",
              debrief_fault(p->k, leading), 100 * chance, buf_text(&b), o[0].minutes, o[0].cost);
  buf_free(&b);
  if (o[0].ask_first >= 0) bench_say("It comes first since: %s", p->k->rules[o[0].ask_first].reason);
  if (o[0].step.kind == ADVICE_REPAIR)
    bench_say("No check is worth its minutes any more: what it could show would not change what to do. The "
              "chance that this is it: %.0f %%.",
              100 * run_chance(r, o[0].step.at));
  show_what_follows(p, &o[0]);
  if (r->advice.count < 2) return;
  debrief_better(&b, p->k, &o[1].step);
  if (o[1].step.kind == ADVICE_GIVE_UP) bench_say("Next to it: %s.", buf_text(&b));
  else
    bench_say("Next to it: %s (%.1f min); to the end %.0f min%s.", buf_text(&b), o[1].minutes, o[1].cost,
              o[1].cost - o[0].cost < 0.5 ? ", as good as the same" : "");
  buf_free(&b);
}

void practice_show_end(const struct practice *p)
{
  const struct run *r = &p->run;
  struct buf b = {0};

  printf("\n");
  if (p->record.sitting.level == LEVEL_EXAM) {
    bench_say("That is the end of this one, and it is kept. When the class is through: pullcord practice "
              "debrief%s.",
              practice_who(p));
    return;
  }
  debrief_end(&b, r);
  bench_say("%s", buf_text(&b));
  buf_free(&b);
  if (p->record.sitting.level == LEVEL_WORKED || r->end == RUN_UNSAFE)
    bench_say("%.0f minutes, parts %.0f.%s", r->minutes, r->parts,
              r->end == RUN_UNSAFE ? " Score 0 of 100." : "");
  else
    bench_say(
        "%.0f minutes, parts %.0f. Given away by choice: %.0f min of an expected %.0f (score %.0f of 100).",
        r->minutes, r->parts, r->regret, r->expected, run_score(r));
}

/* A screenful at a time for a person; all at once for a pipe. */
static void show_in_pages(struct buf *b)
{
  bool person = isatty(STDIN_FILENO) && isatty(STDOUT_FILENO);
  size_t lines = 0;

  for (const char *at = buf_text(b), *end; *at; at = end) {
    end = strchr(at, '\n');
    end = end ? end + 1 : at + strlen(at);
    fwrite(at, 1, (size_t)(end - at), stdout);
    if (person && ++lines % SCREEN == 0 && *end) {
      char *line = terminal_line("[enter goes on, quit stops] ");
      bool stop = !line || *line == 'q';

      free(line);
      if (stop) break;
    }
  }
  buf_free(b);
}

/* Of a worked example there is no path of one's own to look back on. */
void practice_show_lessons(struct practice *p, struct err *e)
{
  struct debrief d;

  if (debrief_make(&d, &p->run, &p->record.sitting, p->assessor, e) == 0) {
    printf("\nTHREE THINGS TO TAKE AWAY\n");
    for (int i = 0; i < DEBRIEF_AWAY; i++) bench_say("  %d. %s", i + 1, d.away[i]);
  } else {
    bench_say("%s", e->text);
  }
  debrief_free(&d);
}

void practice_show_debrief(struct practice *p, struct err *e)
{
  struct debrief d;
  struct buf b = {0};

  if (debrief_make(&d, &p->run, &p->record.sitting, p->assessor, e) == 0) {
    debrief_text(&b, &d, terminal_width());
    show_in_pages(&b);
  } else {
    bench_say("%s", e->text);
  }
  debrief_free(&d);
}
