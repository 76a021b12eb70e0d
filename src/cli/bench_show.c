/* bench_show.c - what the bench conversation shows at every turn; see bench.h. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "report/answer.h"
#include "report/answer_plan.h"
#include "report/parts.h"

/* In how many words cautions are told: as they stand; those of the check in short; those of the case
 * too; all in short, one behind the other; and with the leading causes in a line below them, which
 * is on the screen in any case. They stand in full where the steps are (how). */
enum brevity { IN_FULL, OWN_SHORT, ALL_SHORT, RUN_ON, LED };

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

const struct next_step *bench_step_of(const struct bench *b, int check)
{
  for (size_t i = 0; i < b->a.plan.count; i++)
    if (b->a.plan.steps[i].check == check) return &b->a.plan.steps[i];
  return NULL;
}

/* Was this caution shown among the notes? */
static bool is_warned_of(const struct bench *b, int caution)
{
  for (size_t i = 0; i < b->a.drawn.count; i++)
    if (b->a.drawn.items[i].kind == WARN && b->a.drawn.items[i].a == caution) return true;
  return false;
}

/* noted: the notes stand just above, and what they warn of is not said twice. */
static void show_cautions(const struct bench *b, const struct check *c, enum brevity brevity, bool noted)
{
  int *ids = mem_array(b->k->caution_count + 1, sizeof *ids);
  size_t count = 0, shown = 0;
  struct buf run_on = {0};

  part_add_cautions(b->k, &b->c, &c->cautions, &c->off, ids, &count);
  for (size_t i = 0; i < count; i++) {
    struct buf text = {0};

    if (noted && is_warned_of(b, ids[i])) continue;
    if (brevity == IN_FULL) buf_add(&text, b->k->cautions[ids[i]].text);
    else part_caution_short(&text, b->k->cautions[ids[i]].text);
    if (brevity >= RUN_ON) buf_addf(&run_on, "%s%s", shown ? " - " : "", buf_text(&text));
    else if (brevity == IN_FULL) bench_say("CAUTION: %s", buf_text(&text));
    else {
      if (shown == 0) bench_say("CAUTION, in short (how: in full):");
      bench_say("- %s", buf_text(&text));
    }
    buf_free(&text);
    shown++;
  }
  if (run_on.len) bench_say("CAUTION, in short (how: in full): %s", buf_text(&run_on));
  buf_free(&run_on);
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
      terminal_putf("\n");
      col = 0;
    }
    terminal_putf("%s", text);
    col += n;
  }
  terminal_putf("\n");
}

/* Why this check: the two causes that its results would put first. */
static void show_reason(const struct bench *b, const struct next_step *s)
{
  const struct next_outcome *first = NULL, *second = NULL;
  double without = s->to_end + s->saving - s->minutes;
  char what[300] = "it makes surer";

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
    snprintf(what, sizeof what, "it tells \"%s\" from \"%s\"", part_fault_name(b->k, first->fault),
             part_fault_name(b->k, second->fault));
  if (without > s->to_end + 0.5)
    bench_say("  why: %s; about %.0f minutes to the end with it, %.0f without", what, s->to_end, without);
  else bench_say("  why: %s; about %.0f minutes to the end", what, s->to_end);
}

/* Is the engine to turn or run for this check while something that must not be missing is
 * off? Says what goes back first. */
static void show_put_back(const struct bench *b, const struct check *c)
{
  struct buf names = {0};

  if (strcmp(c->engine, "running") != 0 && strcmp(c->engine, "hot") != 0 &&
      strcmp(c->engine, "cranking") != 0)
    return;
  for (size_t i = 0; i < b->k->cover_count; i++)
    if (b->c.off[i] && !b->k->covers[i].run_without)
      buf_addf(&names, "%s%s", names.len ? ", " : "", b->k->covers[i].name);
  if (names.len) bench_say("First put back: %s (see refit).", buf_text(&names));
  buf_free(&names);
}

static void show_ask(const struct check *c, const struct next_step *s)
{
  terminal_putf("%s", terminal_heavy());
  bench_say("Next (%g min): %s", s ? s->minutes : c->minutes, c->ask);
  terminal_putf("%s", terminal_plain());
}

/* The leading causes in a line. */
static void show_leading(const struct bench *b)
{
  struct buf line = {0};

  for (size_t i = 0; i < 3 && i < b->a.ranking_count; i++)
    buf_addf(&line, "%s%s %s%.0f %%", i ? ", " : "", part_fault_name(b->k, b->a.ranking[i].fault),
             b->a.ranking[i].blame < 0.01 ? "under " : "", fmax(1, 100 * b->a.ranking[i].blame));
  if (line.len) bench_say("Most likely: %s", buf_text(&line));
  buf_free(&line);
}

static void show_feature(const struct bench *b)
{
  bench_say("About the machine: %s (yes, no, ? don't know)", b->k->features[b->feature].ask);
}

void bench_ask_again(const struct bench *b)
{
  const struct next_step *s = b->pending >= 0 ? bench_step_of(b, b->pending) : NULL;

  if (!b->assessed || b->proved >= 0) return;
  show_leading(b);
  if (b->feature >= 0) show_feature(b);
  else if (b->pending >= 0) {
    show_ask(&b->k->checks[b->pending], s);
    if (s) show_reason(b, s);
    show_choices(&b->k->checks[b->pending]);
  }
}

static void show_question(const struct bench *b, enum brevity brevity, bool noted)
{
  const struct check *c = &b->k->checks[b->pending];
  const struct next_step *s = bench_step_of(b, b->pending);
  int unsafe = conclusion_find(&b->a.drawn, UNSAFE, b->pending, 0);

  show_cautions(b, c, brevity, noted);
  show_put_back(b, c);
  if (unsafe >= 0) bench_say("NOT NOW: %s", b->k->rules[b->a.drawn.items[unsafe].rule].reason);
  if (brevity == LED) show_leading(b);
  show_ask(c, s);
  if (s) show_reason(b, s);
  bench_show_figure(b, b->pending);
  show_choices(c);
}

static void show_end(const struct bench *b)
{
  if (b->a.disposition == DISPOSITION_REPAIR)
    bench_say("Found, as far as it goes: %s. Type repair for how to put it right, causes for the rest.",
              part_fault_name(b->k, b->a.ranking[0].fault));
  else if (b->a.disposition == DISPOSITION_NOTHING_BROKEN)
    bench_say(
        "Nothing points to a broken part: look at how it is used or set. Type why, or add what you see.");
  else if (b->a.disposition == DISPOSITION_HAND_OVER)
    bench_say("Stop here and hand over (see above).");
  else bench_say("No check is worth its minutes now: repair the first cause, or add what you see.");
}

/* By what the reading that was just entered is judged. */
static void show_fresh(const struct bench *b)
{
  const struct case_result *r = b->fresh ? case_result_of(&b->c, b->fresh - 1) : NULL;
  struct buf said = {0};

  if (r && answer_reading(&said, b->k, &b->c, &b->a, r)) bench_say("%s.", buf_text(&said));
  buf_free(&said);
}

/* What is asked next: a feature of the machine, or a check. */
static void choose_question(struct bench *b)
{
  const struct next_step *s = best_step(b);

  /* a question stays while it is worth its minutes: whoever went to look answers it */
  if (b->pending >= 0 && b->pending != b->chosen && !bench_step_of(b, b->pending)) b->pending = -1;
  if (b->pending >= 0 || b->feature >= 0) return;
  for (size_t i = 0; i < 4 && i < b->a.ranking_count && b->feature < 0; i++)
    if (b->a.ranking[i].fault >= 0) b->feature = open_feature(b, &b->k->faults[b->a.ranking[i].fault].needs);
  if (b->feature < 0 && s) b->feature = open_feature(b, &b->k->checks[s->check].needs);
  if (b->feature < 0 && s && b->a.disposition == DISPOSITION_KEEP_LOOKING) b->pending = s->check;
}

/* What leads, what to mind, and what comes next. */
static void show_whole(struct bench *b, enum brevity brevity)
{
  struct buf out = {0};

  terminal_put("\n");
  show_fresh(b);
  if (brevity < LED) answer_ranking(&out, b->k, &b->a, 3, terminal_width());
  answer_notes(&out, b->k, &b->a, brevity >= ALL_SHORT, terminal_width());
  bench_print(&out);
  bench_show_similar(b);
  if (b->pending >= 0) {
    answer_instead(&out, b->k, &b->a, terminal_width());
    bench_print(&out);
  }
  if (b->pending >= 0 && b->feature < 0) {
    show_question(b, brevity, true);
    return;
  }
  if (brevity == LED) show_leading(b);
  if (b->feature >= 0) show_feature(b);
  else show_end(b);
}

/* Shows a part of the talk in as many words as the screen takes, so that nothing of it has to be
 * scrolled back for. */
static void fit(struct bench *b, void (*show)(struct bench *b, enum brevity brevity))
{
  size_t rows = terminal_rows();

  for (int brevity = IN_FULL; brevity <= LED; brevity++) {
    terminal_hold();
    show(b, (enum brevity)brevity);
    if (rows == 0 || terminal_held() < rows || brevity == LED) break;
    terminal_drop();
  }
  terminal_release();
}

static void show_asked(struct bench *b, enum brevity brevity) { show_question(b, brevity, false); }

void bench_show_question(struct bench *b) { fit(b, show_asked); }

void bench_show_state(struct bench *b)
{
  if (b->proved >= 0 && b->pending < 0) {
    terminal_put("\n");
    bench_say("Proved: %s was behind it. Put back what is off (refit), do the service check (service), "
              "and type close when it goes home. Or go on with what you see.",
              b->k->faults[b->proved].name);
    return;
  }
  assess_advise(&b->a, &b->c);
  choose_question(b);
  fit(b, show_whole);
  b->fresh = 0;
  bench_similar_shown(b);
}
