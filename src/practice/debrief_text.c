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
  if (s->entry.act == ACT_CHECK && s->rule < 0 && !debrief_told(s))
    line(out, "It changed next to nothing.", width, indent, "         ");
  for (size_t i = 0; i < s->moved_count && debrief_told(s); i++) {
    const struct moved *m = &s->moved[i];
    struct buf b = {0}, why = {0};

    if (!debrief_worth_telling(m)) continue;
    debrief_why(&why, r, s, m);
    debrief_moved(&b, r, m, "->");
    buf_addf(&b, "%s%s", why.len ? ": " : "", buf_text(&why));
    line(out, buf_text(&b), width, indent, "         ");
    buf_free(&b);
    buf_free(&why);
  }
  if (s->rule >= 0) {
    struct buf b = {0};

    buf_addf(&b, "rule %s: %s [%s]", r->k->rules[s->rule].id, r->k->rules[s->rule].reason,
             basis_name(r->k->rules[s->rule].origin.basis));
    line(out, buf_text(&b), width, indent, "         ");
    buf_free(&b);
  }
}

/* A piece of text in a line of its own, when there is any. */
static void piece(struct buf *out, struct buf *b, int width, const char *indent)
{
  if (b->len) line(out, buf_text(b), width, indent, "         ");
  buf_free(b);
}

static void judgement(struct buf *out, const struct run *r, const struct step *s, int width,
                      const char *indent)
{
  struct buf b = {0};

  debrief_judged(&b, r, s);
  piece(out, &b, width, indent);
  debrief_reading(&b, r, s);
  piece(out, &b, width, indent);
  add_moved(out, r, s, width, indent);
}

void debrief_comment(struct buf *out, const struct run *r, const struct step *s, int width)
{
  judgement(out, r, s, width, "    ");
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
}

enum { BESIDE = 36 }; /* columns of the words of one path; before them number and star, then minutes */

/* The next line of at most `room` columns of words that were wrapped, filled up with blanks. */
static void add_words(struct buf *out, const char **words, int room)
{
  int used = 0;

  for (; **words && **words != '\n'; (*words)++) {
    buf_addn(out, *words, 1);
    used += (**words & 0xC0) != 0x80;
  }
  if (**words) (*words)++;
  buf_addf(out, "%*s", used < room ? room - used : 0, "");
}

static void wrap_step(struct buf *out, const struct run *r, size_t i, int room)
{
  struct buf b = {0};

  if (i < r->step_count) {
    debrief_step(&b, r, &r->steps[i]);
    text_wrap(out, buf_text(&b), room, "", "");
  }
  buf_free(&b);
}

static void add_front(struct buf *out, const struct run *r, size_t i, bool first)
{
  if (first && i < r->step_count) buf_addf(out, "%2zu%c ", i + 1, r->steps[i].right ? ' ' : '*');
  else buf_add(out, "    ");
}

static void add_cost(struct buf *out, const struct run *r, size_t i, bool first)
{
  if (first && i < r->step_count) buf_addf(out, "%6.1f", r->steps[i].cost);
  else buf_add(out, "      ");
}

/* Step i of both paths, over as many lines as the longer one needs. */
static void add_row(struct buf *out, const struct run *yours, const struct run *best, size_t i, int room)
{
  struct buf left = {0}, right = {0};
  const char *l, *r;
  bool first = true;

  wrap_step(&left, yours, i, room);
  wrap_step(&right, best, i, room);
  l = buf_text(&left);
  r = buf_text(&right);
  for (; *l || *r; first = false) {
    add_front(out, yours, i, first);
    add_words(out, &l, room);
    add_cost(out, yours, i, first);
    buf_add(out, "  ");
    add_front(out, best, i, first);
    add_words(out, &r, room);
    add_cost(out, best, i, first);
    while (out->text[out->len - 1] == ' ') out->text[--out->len] = '\0';
    buf_add(out, "\n");
  }
  buf_free(&left);
  buf_free(&right);
}

/* Both paths, step beside step. A star stands at steps that gave minutes away. */
static void add_beside(struct buf *out, const struct debrief *d, int width)
{
  int room = (width - 2) / 2 - 10;
  size_t most = d->run->step_count > d->best.step_count ? d->run->step_count : d->best.step_count;

  if (room > BESIDE) room = BESIDE;
  if (room < 10) room = 10;
  buf_addf(out, "\n%-*s  %s\n", room + 10, "YOUR PATH", "THE BEST PATH on this machine");
  for (size_t i = 0; i < most; i++) add_row(out, d->run, &d->best, i, room);
  line(out, "Minutes, with parts at the shop rate. A star: gave minutes away.", width, "  ", "  ");
}

static void add_remarks(struct buf *out, const struct debrief *d, int width)
{
  buf_add(out, "\nWHERE IT WENT ASTRAY\n");
  if (d->remark_count == 0) line(out, "Nowhere. Every step was as good as any.", width, "  ", "  ");
  for (size_t i = 0; i < d->remark_count; i++) {
    const struct remark *x = &d->remarks[i];
    struct buf b = {0};

    debrief_where(&b, x);
    buf_addf(&b, ", %s: %s", astray_name(x->kind), x->text);
    if (x->last > x->step) buf_addf(&b, " (%.0f min in all.)", x->regret);
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
  debrief_score(&b, d);
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
  add_beside(out, d, width);
  buf_add(out, "\nYOUR STEPS, AND WHAT THEY WEIGHED\n");
  for (size_t i = 0; i < d->run->step_count; i++) add_step(out, d, i, width);
  line(out, debrief_decibans, width, "  ", "  ");
  add_remarks(out, d, width);
  buf_add(out, "\nTHREE THINGS TO TAKE AWAY\n");
  for (int i = 0; i < DEBRIEF_AWAY; i++) {
    char number[16];

    snprintf(number, sizeof number, "  %d. ", i + 1);
    line(out, d->away[i], width, number, "     ");
  }
}
