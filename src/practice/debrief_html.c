/* debrief_html.c - a debrief as one page that needs nothing else: the path beside the best
 * one drawn to scale, the belief over time, and the words; see debrief.h. */
#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "practice/debrief.h"

enum { WIDE = 860, ROW = 26, CHART = 220, LINES = 4 };
static const char *const colours[LINES] = {"#1b5e94", "#b3541e", "#3c7a3c", "#7a4a8c"};
static const char *const dashes[LINES] = {"none", "7 3", "2 3", "9 3 2 3"};

static const char head[] =
    "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\n"
    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
    "<title>Practice run: debrief</title>\n<style>\n"
    "body{font:16px/1.5 system-ui,sans-serif;max-width:58em;margin:1.5em auto;padding:0 "
    "1em;color:#1a1a1a;background:#fff}\n"
    "h1{font-size:1.4em}h2{font-size:1.1em;margin-top:1.8em;border-bottom:1px solid #bbb}\n"
    "svg{width:100%;height:auto}svg text{font:12px system-ui,sans-serif}\n"
    "table{border-collapse:collapse;width:100%}td,th{border-bottom:1px solid #ddd;padding:.35em .5em;"
    "text-align:left;vertical-align:top}\n.beside td:nth-child(2),.beside td:nth-child(4){width:43%}"
    ".beside "
    "td{font-size:.92em}.n{text-align:right;white-space:nowrap}.right{color:#205c20}.lost{color:#a02c00}\n"
    ".small{font-size:.88em;color:#444}\n@media "
    "print{h2{break-after:avoid}tr{break-inside:avoid}}\n</style></head><body>\n";

static void escape(struct buf *out, const char *text)
{
  for (; *text; text++) {
    if (*text == '&') buf_add(out, "&amp;");
    else if (*text == '<') buf_add(out, "&lt;");
    else if (*text == '>') buf_add(out, "&gt;");
    else if (*text == '"') buf_add(out, "&quot;");
    else buf_addn(out, text, 1);
  }
}

static void escape_buf(struct buf *out, struct buf *b)
{
  escape(out, buf_text(b));
  buf_free(b);
}

/* ---- the path drawn --------------------------------------------------------------------- */

static double cost_of(const struct run *r)
{
  double sum = 0;

  for (size_t i = 0; i < r->step_count; i++) sum += r->steps[i].cost;
  return sum;
}

static const char *fill_of(const struct step *s, bool judged)
{
  if (judged && !s->right) return "#d9825a";
  return s->entry.act == ACT_CHECK ? "#7fa8cc" : s->entry.act == ACT_OPEN ? "#c9c9a0" : "#86b386";
}

/* One path as a bar of its steps, each as wide as it cost; the numbers are the steps. */
static void draw_bar(struct buf *out, const struct run *r, double scale, int y, const char *name, bool judged)
{
  double x = 70;

  buf_addf(out, "<text x=\"0\" y=\"%d\">%s</text>\n", y + 17, name);
  for (size_t i = 0; i < r->step_count; i++) {
    const struct step *s = &r->steps[i];
    double wide = s->cost * scale;
    struct buf title = {0};

    debrief_step(&title, r, s);
    buf_addf(
        out,
        "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"%s\" stroke=\"#fff\"><title>%zu. ", x,
        y, fmax(wide, 2), ROW, fill_of(s, judged), i + 1);
    escape_buf(out, &title);
    buf_addf(out, " (%.1f min)</title></rect>\n", s->cost);
    if (wide > 14)
      buf_addf(out, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%zu%s</text>\n", x + wide / 2, y + 17,
               i + 1, judged && !s->right ? "*" : "");
    x += fmax(wide, 2);
  }
}

/* Step i of a path, in two cells: what was done, and its minutes. */
static void add_cells(struct buf *out, const struct run *r, size_t i, bool judged)
{
  struct buf b = {0};

  if (i >= r->step_count) {
    buf_add(out, "<td></td><td></td>");
    return;
  }
  debrief_step(&b, r, &r->steps[i]);
  buf_addf(out, "<td%s>", judged && !r->steps[i].right ? " class=\"lost\"" : "");
  escape_buf(out, &b);
  buf_addf(out, "%s</td><td class=\"n\">%.1f</td>", judged && !r->steps[i].right ? " *" : "",
           r->steps[i].cost);
}

static void add_beside(struct buf *out, const struct debrief *d)
{
  size_t most = d->run->step_count > d->best.step_count ? d->run->step_count : d->best.step_count;

  buf_add(out, "<table class=\"beside\"><thead><tr><th scope=\"col\"></th><th scope=\"col\">your path</th>"
               "<th scope=\"col\" class=\"n\">min</th><th scope=\"col\">the best path on this machine</th>"
               "<th scope=\"col\" class=\"n\">min</th></tr></thead>\n<tbody>\n");
  for (size_t i = 0; i < most; i++) {
    buf_addf(out, "<tr><td class=\"n\">%zu</td>", i + 1);
    add_cells(out, d->run, i, true);
    add_cells(out, &d->best, i, false);
    buf_add(out, "</tr>\n");
  }
  buf_add(out, "</tbody></table>\n");
}

static void draw_paths(struct buf *out, const struct debrief *d)
{
  double most = fmax(fmax(cost_of(d->run), cost_of(&d->best)), 1), scale = (WIDE - 90) / most;
  double every = most > 300 ? 60 : most > 120 ? 30 : 10;

  buf_add(out, "<h2>The path walked, and the best one</h2>\n");
  buf_addf(out,
           "<svg viewBox=\"0 0 %d 108\" role=\"img\" aria-label=\"Your path of %.0f minutes and the best "
           "path of %.0f "
           "minutes, step by step\">\n",
           WIDE, cost_of(d->run), cost_of(&d->best));
  draw_bar(out, d->run, scale, 4, "yours", true);
  draw_bar(out, &d->best, scale, 44, "best", false);
  for (double t = 0; t <= most; t += every)
    buf_addf(out,
             "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"76\" y2=\"82\" stroke=\"#555\"/><text x=\"%.1f\" y=\"97\" "
             "text-anchor=\"middle\">%.0f</text>\n",
             70 + t * scale, 70 + t * scale, 70 + t * scale, t);
  buf_add(out, "</svg>\n<p class=\"small\">Minutes of shop time, parts included. Blue: a check. Green: a "
               "repair or a proof run. "
               "Orange, with a star: a step that gave minutes away. The numbers are the steps:</p>\n");
  add_beside(out, d);
}

/* ---- belief over time ------------------------------------------------------------------- */

struct series {
  int fault;
  double at[RUN_MOST_STEPS + 1];
};

/* The chance of a fault after each step: the last that was noted of it; of what was wrong it is
 * noted at every step. */
static void follow(const struct run *r, struct series *s)
{
  double now = -1;

  if (s->fault == r->culprit) {
    for (size_t i = 0; i < r->step_count; i++) s->at[i] = r->steps[i].truth_chance;
    s->at[r->step_count] = run_truth_chance(r);
    return;
  }
  for (size_t i = 0; i < r->step_count; i++) {
    for (size_t m = 0; m < r->steps[i].moved_count; m++)
      if (r->steps[i].moved[m].fault == s->fault) {
        if (now < 0)
          for (size_t j = 0; j <= i; j++) s->at[j] = r->steps[i].moved[m].before;
        now = r->steps[i].moved[m].after;
      }
    s->at[i + 1] = now < 0 ? 0 : now;
  }
}

static double highest(const struct series *s, size_t count)
{
  double most = 0;

  for (size_t i = 0; i <= count; i++) most = fmax(most, s->at[i]);
  return most;
}

/* The truth first, then the faults that were believed most at any time. */
static size_t choose(const struct run *r, struct series *out)
{
  size_t n = 0;

  if (r->culprit >= 0) {
    out[n].fault = r->culprit;
    follow(r, &out[n++]);
  }
  while (n < LINES) {
    struct series best = {.fault = -9};

    for (size_t i = 0; i < r->step_count; i++)
      for (size_t m = 0; m < r->steps[i].moved_count; m++) {
        struct series s = {.fault = r->steps[i].moved[m].fault};
        bool had = false;

        for (size_t j = 0; j < n; j++) had = had || out[j].fault == s.fault;
        if (had) continue;
        follow(r, &s);
        if (best.fault == -9 || highest(&s, r->step_count) > highest(&best, r->step_count)) best = s;
      }
    if (best.fault == -9) break;
    out[n++] = best;
  }
  return n;
}

/* Steps that gave minutes away stand on a ground of their own. */
static void shade_lost(struct buf *out, const struct run *r, double wide)
{
  for (size_t i = 0; i < r->step_count; i++)
    if (!r->steps[i].right)
      buf_addf(out, "<rect x=\"%.1f\" y=\"10\" width=\"%.1f\" height=\"%d\" fill=\"#f7e3da\"/>\n",
               40 + wide * (double)i / (double)r->step_count, wide / (double)r->step_count, CHART);
}

static void draw_belief(struct buf *out, const struct debrief *d)
{
  struct series lines[LINES] = {{0}};
  const struct run *r = d->run;
  size_t n = choose(r, lines), last = r->step_count ? r->step_count : 1;
  double wide = WIDE - 60, top = 0.25;

  if (n == 0) return;
  for (size_t s = 0; s < n; s++)
    while (top < 1 && highest(&lines[s], r->step_count) > top) top += 0.25;
  buf_add(out, "<h2>What was believed, step by step</h2>\n");
  buf_addf(out,
           "<svg viewBox=\"0 0 %d %zu\" role=\"img\" aria-label=\"Belief in the leading causes after each "
           "step\">\n",
           WIDE, CHART + 46 + 18 * n);
  shade_lost(out, r, wide);
  for (int p = 0; p <= 100 * top; p += top > 0.5 ? 25 : 10)
    buf_addf(out,
             "<line x1=\"40\" x2=\"%.0f\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#ddd\"/><text x=\"0\" "
             "y=\"%.1f\">%d %%</text>\n",
             40 + wide, 10 + CHART * (1 - p / top / 100), 10 + CHART * (1 - p / top / 100),
             14 + CHART * (1 - p / top / 100), p);
  for (size_t i = 0; i <= r->step_count; i += 1 + last / 20)
    buf_addf(out, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%zu</text>\n",
             40 + wide * (double)i / (double)last, CHART + 28, i);
  for (size_t s = 0; s < n; s++) {
    buf_addf(out,
             "<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"2.5\" stroke-dasharray=\"%s\" points=\"",
             colours[s], dashes[s]);
    for (size_t i = 0; i <= r->step_count; i++)
      buf_addf(out, "%.1f,%.1f ", 40 + wide * (double)i / (double)last,
               10 + CHART * (1 - lines[s].at[i] / top));
    buf_addf(out,
             "\"/>\n<line x1=\"40\" x2=\"80\" y1=\"%zu\" y2=\"%zu\" stroke=\"%s\" stroke-width=\"2.5\" "
             "stroke-dasharray=\"%s\"/><text x=\"88\" y=\"%zu\">",
             CHART + 44 + 18 * s, CHART + 44 + 18 * s, colours[s], dashes[s], CHART + 48 + 18 * s);
    escape(out, debrief_fault(d->k, lines[s].fault));
    buf_addf(out, "%s</text>\n", lines[s].fault == r->culprit ? " (this was it)" : "");
  }
  buf_add(
      out,
      "</svg>\n<p class=\"small\">The chance that each is behind the complaint, as the results so far "
      "allowed it, after step 0 (the owner's words), 1, 2 ... Orange ground: steps that gave minutes away."
      "</p>\n");
}

/* ---- the words -------------------------------------------------------------------------- */

static void add_moved(struct buf *out, const struct run *r, const struct step *s)
{
  struct buf b = {0};

  debrief_reading(&b, r, s);
  if (b.len) {
    escape_buf(out, &b);
    buf_add(out, "<br>");
  }
  if (s->entry.act == ACT_CHECK && s->rule < 0 && !debrief_told(s))
    buf_add(out, "It changed next to nothing.");
  for (size_t i = 0; i < s->moved_count && debrief_told(s); i++) {
    const struct moved *m = &s->moved[i];
    struct buf why = {0}, moved = {0};

    if (!debrief_worth_telling(m)) continue;
    debrief_moved(&moved, r, m, "\xe2\x86\x92");
    buf_add(out, "<b>");
    escape_buf(out, &moved);
    buf_add(out, "</b>");
    debrief_why(&why, r, s, m);
    if (why.len) buf_add(out, ": ");
    escape_buf(out, &why);
    buf_add(out, "<br>");
  }
  if (s->rule < 0) return;
  buf_addf(out, "rule %s: ", r->k->rules[s->rule].id);
  escape(out, r->k->rules[s->rule].reason);
  buf_addf(out, " [%s]", basis_name(r->k->rules[s->rule].origin.basis));
}

static void add_row(struct buf *out, const struct debrief *d, size_t i)
{
  const struct step *s = &d->run->steps[i];
  struct buf b = {0};

  buf_addf(out, "<tr><td class=\"n\">%zu</td><td>", i + 1);
  debrief_step(&b, d->run, s);
  escape_buf(out, &b);
  buf_add(out, "<div class=\"small\">believed then: ");
  escape(out, debrief_fault(d->k, s->leading));
  buf_addf(out, " %.0f %%", 100 * s->leading_chance);
  if (s->expect && *s->expect) {
    buf_add(out, "; you expected: ");
    escape(out, s->expect);
  }
  buf_addf(out, "</div></td><td class=\"n\">%.1f</td><td>", s->cost);
  if (s->entry.act == ACT_FORBIDDEN || (d->run->end == RUN_UNSAFE && i + 1 == d->run->step_count)) {
    buf_add(out, "<span class=\"lost\">stopped</span>");
  } else if (s->right) {
    buf_add(out, "<span class=\"right\">");
    debrief_judged(&b, d->run, s);
    escape_buf(out, &b);
    buf_add(out, "</span>");
  } else {
    buf_addf(out, "<span class=\"lost\">%.1f min given away</span><br>better: ", s->regret);
    debrief_better(&b, d->k, &s->better);
    escape_buf(out, &b);
  }
  buf_add(out, "</td><td class=\"small\">");
  add_moved(out, d->run, s);
  buf_add(out, "</td></tr>\n");
}

/* What matters most: what to take away, and where it went astray. */
static void add_lessons(struct buf *out, const struct debrief *d)
{
  buf_add(out, "<h2>Three things to take away</h2>\n<ol>\n");
  for (int i = 0; i < DEBRIEF_AWAY; i++) {
    buf_add(out, "<li>");
    escape(out, d->away[i]);
    buf_add(out, "</li>\n");
  }
  buf_add(out, "</ol>\n<h2>Where it went astray</h2>\n");
  if (d->remark_count == 0) buf_add(out, "<p>Nowhere. Every step was as good as any.</p>\n");
  for (size_t i = 0; i < d->remark_count; i++) {
    struct buf where = {0};

    debrief_where(&where, &d->remarks[i]);
    buf_addf(out, "<p><b>%c%s: %s.</b> ", toupper((unsigned char)*buf_text(&where)), buf_text(&where) + 1,
             astray_name(d->remarks[i].kind));
    buf_free(&where);
    escape(out, d->remarks[i].text);
    if (d->remarks[i].regret >= 0.5)
      buf_addf(out, " <span class=\"lost\">%.0f&nbsp;min.</span>", d->remarks[i].regret);
    buf_add(out, "</p>\n");
  }
}

static void add_steps(struct buf *out, const struct debrief *d)
{
  buf_add(out, "<h2>Your steps</h2>\n<table><thead><tr><th scope=\"col\">step</th><th scope=\"col\">done</th>"
               "<th scope=\"col\">minutes</th><th scope=\"col\">judged</th>"
               "<th scope=\"col\">what it weighed, and why</th></tr></thead>\n<tbody>\n");
  for (size_t i = 0; i < d->run->step_count; i++) add_row(out, d, i);
  buf_add(out, "</tbody></table>\n<p class=\"small\">");
  escape(out, debrief_decibans);
  buf_add(out, " In brackets: what it rests on.</p>\n");
}

void debrief_html(struct buf *out, const struct debrief *d)
{
  const struct run *r = d->run;
  struct buf b = {0};

  buf_add(out, head);
  buf_add(out, "<h1>");
  escape(out, d->k->classes[r->c.machine_class].name);
  buf_add(out, ": &ldquo;");
  escape(out, hidden_words(&r->hidden));
  buf_add(out, "&rdquo;</h1>\n<p>");
  debrief_end(&b, r);
  escape_buf(out, &b);
  buf_add(out, "</p>\n<p>");
  debrief_score(&b, d);
  escape_buf(out, &b);
  buf_add(out, "</p>\n");
  add_lessons(out, d);
  draw_paths(out, d);
  draw_belief(out, d);
  add_steps(out, d);
  buf_addf(out,
           "<p class=\"small\">Practice run of %s, level %s, seed %llu, knowledge %016llx. Made-up machine; "
           "the chances are "
           "mostly estimates.</p>\n</body></html>\n",
           d->sitting->apprentice, level_name(d->sitting->level), (unsigned long long)d->sitting->seed,
           d->k->fingerprint);
}
