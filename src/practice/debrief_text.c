/* debrief_text.c - a debrief in words for a screen; see debrief.h. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/text.h"
#include "practice/debrief.h"

static void line(struct buf *out, const char *text, int width, const char *first, const char *rest)
{
  text_wrap(out, text, width, first, rest);
  buf_add(out, "\n");
}

static void add_moved(struct buf *out, const struct run *r, const struct step *s, int width,
                      const char *indent)
{
  for (size_t i = 0; i < s->moved_count; i++) {
    const struct moved *m = &s->moved[i];
    struct buf b = {0}, why = {0};

    if (fabs(m->db) < 1 && i > 0) continue;
    debrief_why(&why, r, m);
    buf_addf(&b, "%s %.0f -> %.0f %% (%+.0f db)%s%s", debrief_fault(r->k, m->fault), 100 * m->before,
             100 * m->after, m->db, why.len ? ": " : "", buf_text(&why));
    line(out, buf_text(&b), width, indent, "         ");
    buf_free(&b);
    buf_free(&why);
  }
  if (s->rule >= 0) {
    struct buf b = {0};

    buf_addf(&b, "rule %s: %s", r->k->rules[s->rule].id, r->k->rules[s->rule].reason);
    line(out, buf_text(&b), width, indent, "         ");
    buf_free(&b);
  }
}

static void judgement(struct buf *out, const struct run *r, const struct step *s, int width,
                      const char *indent)
{
  struct buf b = {0};

  if (r->end == RUN_UNSAFE && s == &r->steps[r->step_count - 1]) buf_add(&b, "Stopped.");
  else if (s->right) buf_add(&b, "Right: no step was expected to cost less in the end.");
  else {
    buf_addf(&b, "Gave away %.1f min. Better: ", s->regret);
    debrief_better(&b, r->k, &s->better);
    buf_addf(&b, " (to the end %.0f min instead of %.0f).", s->best, s->chosen);
  }
  line(out, buf_text(&b), width, indent, "         ");
  buf_free(&b);
}

/* What a reading amounts to, which the person had to judge. */
static void add_falls_on(struct buf *out, const struct run *r, const struct step *s, int width,
                         const char *indent)
{
  struct buf b = {0};

  if (s->entry.act != ACT_CHECK || s->result.result >= 0 || s->falls_on < 0) return;
  buf_addf(&b, "For this engine that is: %s.", r->k->checks[s->entry.at].labels.items[s->falls_on]);
  line(out, buf_text(&b), width, indent, "         ");
  buf_free(&b);
}

void debrief_comment(struct buf *out, const struct run *r, const struct step *s, int width)
{
  judgement(out, r, s, width, "    ");
  add_falls_on(out, r, s, width, "    ");
  add_moved(out, r, s, width, "    ");
}

static void add_step(struct buf *out, const struct debrief *d, size_t i, int width)
{
  const struct run *r = d->run;
  const struct step *s = &r->steps[i];
  struct buf b = {0};

  buf_addf(&b, "%2zu. ", i + 1);
  debrief_step(&b, r, s);
  buf_addf(&b, "  (%.1f min", s->minutes);
  if (s->parts > 0) buf_addf(&b, ", parts %.0f", s->parts);
  buf_add(&b, ")");
  line(out, buf_text(&b), width, "  ", "      ");
  buf_free(&b);
  buf_addf(&b, "Believed then: %s %.0f %%.", debrief_fault(r->k, s->leading), 100 * s->leading_chance);
  if (s->expect && *s->expect) buf_addf(&b, " You expected: %s", s->expect);
  line(out, buf_text(&b), width, "      ", "         ");
  buf_free(&b);
  judgement(out, r, s, width, "      ");
  add_falls_on(out, r, s, width, "      ");
  add_moved(out, r, s, width, "      ");
}

static void add_best(struct buf *out, const struct debrief *d, int width)
{
  const struct run *r = &d->best;

  buf_addf(out, "\nTHE BEST PATH on this machine, step by step (%.0f min, parts %.0f):\n", r->minutes,
           r->parts);
  for (size_t i = 0; i < r->step_count; i++) {
    struct buf b = {0};

    buf_addf(&b, "%2zu. ", i + 1);
    debrief_step(&b, r, &r->steps[i]);
    buf_addf(&b, "  (%.1f min)", r->steps[i].minutes);
    line(out, buf_text(&b), width, "  ", "      ");
    buf_free(&b);
  }
}

static void add_remarks(struct buf *out, const struct debrief *d, int width)
{
  buf_add(out, "\nWHERE IT WENT ASTRAY\n");
  if (d->remark_count == 0) line(out, "Nowhere. Every step was as good as any.", width, "  ", "  ");
  for (size_t i = 0; i < d->remark_count; i++) {
    const struct remark *x = &d->remarks[i];
    struct buf b = {0};

    buf_addf(&b, "step %zu, %s: %s", x->step + 1, astray_name(x->kind), x->text);
    line(out, buf_text(&b), width, "  ", "    ");
    buf_free(&b);
  }
}

static void add_score(struct buf *out, const struct debrief *d, int width)
{
  const struct run *r = d->run;
  struct buf b = {0};

  debrief_end(&b, r);
  line(out, buf_text(&b), width, "", "");
  buf_free(&b);
  buf_addf(
      &b,
      "You spent %.0f minutes and %.0f in parts. At the start the best path was expected to take %.0f "
      "minutes; "
      "your choices gave away %.0f (score %.0f of 100). Chance does not count: only what could be known.",
      r->minutes, r->parts, r->expected, r->regret, run_score(r));
  if (r->brier >= 0)
    buf_addf(&b, " You said %.0f %% sure on average: Brier %.2f (0 is best, 0.25 is a coin).",
             100 * r->stated_sum / r->stated, r->brier);
  line(out, buf_text(&b), width, "", "");
  buf_free(&b);
}

void debrief_text(struct buf *out, const struct debrief *d, int width)
{
  struct buf b = {0};

  buf_addf(&b, "DEBRIEF  %s: \"%s\"", d->k->classes[d->run->c.machine_class].name,
           hidden_words(&d->run->hidden));
  line(out, buf_text(&b), width, "", "  ");
  buf_free(&b);
  add_score(out, d, width);
  buf_add(out, "\nYOUR PATH\n");
  for (size_t i = 0; i < d->run->step_count; i++) add_step(out, d, i, width);
  add_best(out, d, width);
  add_remarks(out, d, width);
  buf_add(out, "\nTHREE THINGS TO TAKE AWAY\n");
  for (int i = 0; i < DEBRIEF_AWAY; i++) {
    char number[16];

    snprintf(number, sizeof number, "  %d. ", i + 1);
    line(out, d->away[i], width, number, "     ");
  }
}
