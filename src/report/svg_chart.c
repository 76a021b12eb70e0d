/* svg_chart.c - see svg_chart.h. */
#include "report/svg_chart.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const double WIDE = 680, LEFT = 46, RIGHT = 470, TOP = 34, BOTTOM = 220, LABEL = 484, LETTERS = 12,
                    KEY = 11;
static const double CALLOUT_LEAST = 60, CALLOUT_MOST = 230, worth_saying = 0.15;
static const double LINE = 1.2; /* from baseline to baseline, of the size of the letters */

static double chance(const struct course *c, size_t step, size_t cause)
{
  return card_chance_of(c->odds[step * c->cause_count + cause]);
}

static double step_x(const struct course *c, size_t step)
{
  double inset = 10;

  return LEFT + inset + (RIGHT - LEFT - 2 * inset) * (double)step / (double)(c->step_count - 1);
}

static double chance_y(double p) { return BOTTOM - p * (BOTTOM - TOP); }

static void axes(struct drawing *d, const struct course *c)
{
  size_t every = c->step_count / 26 + 1;
  char text[24];

  for (int i = 0; i <= 4; i++) {
    double y = chance_y(i / 4.0);
    struct point grid[] = {{LEFT, y}, {RIGHT, y}};

    drawing_line(d, grid, 2, i ? INK_FAINT : INK_BLACK, i ? 0.8 : 1.2, 0);
    snprintf(text, sizeof text, "%d %%", 25 * i);
    drawing_text(d, LEFT - 7, y + 4, LETTERS, ALIGN_RIGHT, false, INK_SOFT, text);
  }
  for (size_t s = 0; s < c->step_count; s++) {
    struct point tick[] = {{step_x(c, s), BOTTOM}, {step_x(c, s), BOTTOM + 5}};

    drawing_line(d, tick, 2, INK_BLACK, 1, 0);
    if (s % every) continue;
    snprintf(text, sizeof text, "%zu", s);
    drawing_text(d, step_x(c, s), BOTTOM + 19, LETTERS, ALIGN_MIDDLE, false, INK_BLACK, text);
  }
  drawing_text(d, LEFT - 40, TOP - 17, LETTERS, ALIGN_LEFT, false, INK_SOFT, "chance that it is there");
  drawing_text(d, RIGHT, BOTTOM + 36, LETTERS, ALIGN_RIGHT, false, INK_SOFT, "step of the job");
}

/* Where the line of a cause is highest. */
static size_t peak(const struct course *c, size_t cause)
{
  size_t at = 0;

  for (size_t s = 1; s < c->step_count; s++)
    if (chance(c, s, cause) > chance(c, at, cause)) at = s;
  return at;
}

/* The leading line lies on a wash and has a marker at each step; the others have one where they
 * are highest and one at their end, so that the foot of the chart stays clear. */
static void lines(struct drawing *d, struct doc *doc, const struct course *c)
{
  size_t last = c->step_count - 1;
  struct point *p = arena_array(doc->arena, c->step_count + 2, sizeof *p);

  for (size_t i = c->cause_count; i-- > 0;) { /* the leading one last, on top */
    for (size_t s = 0; s <= last; s++) p[s] = (struct point){step_x(c, s), chance_y(chance(c, s, i))};
    drawing_line(d, p, c->step_count, (enum ink)(INK_SERIES + i), i ? 1.8 : 2.8, (int)i);
  }
  for (size_t i = c->cause_count; i-- > 0;)
    for (size_t s = 0; s <= last; s++)
      if (i == 0 || s == last || s == peak(c, i))
        drawing_marker(d, step_x(c, s), chance_y(chance(c, s, i)), i ? 3.6 : 4.2, (int)i);
}

static void wash(struct drawing *d, struct doc *doc, const struct course *c)
{
  struct point *p = arena_array(doc->arena, c->step_count + 2, sizeof *p);

  for (size_t s = 0; s < c->step_count; s++) p[s] = (struct point){step_x(c, s), chance_y(chance(c, s, 0))};
  p[c->step_count] = (struct point){p[c->step_count - 1].x, BOTTOM};
  p[c->step_count + 1] = (struct point){p[0].x, BOTTOM};
  drawing_area(d, p, c->step_count + 2, INK_WASH);
}

/* Beside the steepest rise of the leading line, what brought it about; only where there is room
 * above and before it. */
static void callout(struct drawing *d, const struct course *c)
{
  const char *what;
  size_t at = 0, rows;
  double rise = worth_saying, right, w, y;

  for (size_t s = 1; s < c->step_count; s++)
    if (chance(c, s, 0) - chance(c, s - 1, 0) > rise) {
      rise = chance(c, s, 0) - chance(c, s - 1, 0);
      at = s;
    }
  what = c->steps[at].what;
  right = step_x(c, at) - 12;
  w = fmin(fmin(right - LEFT - 8, CALLOUT_MOST), drawing_text_width(what, LETTERS, false) + 1);
  if (!at || w < CALLOUT_LEAST) return;
  rows = drawing_words(NULL, 0, 0, w, LETTERS, ALIGN_RIGHT, false, INK_BLACK, what);
  y = fmax(chance_y(chance(c, at, 0)) + 4 - (double)(rows - 1) * LETTERS * LINE, TOP + LETTERS);
  for (size_t s = 0; s < at; s++)
    for (size_t i = 0; i < c->cause_count; i++)
      if (step_x(c, s) > right - w && chance_y(chance(c, s, i)) < y + (double)rows * LETTERS * LINE) return;
  drawing_box(d, right - w - 3, y - LETTERS, w + 6, (double)rows * LETTERS * LINE + 3, 0, INK_NONE, INK_PAPER,
              1, 0);
  drawing_words(d, right, y, w, LETTERS, ALIGN_RIGHT, false, INK_BLACK, what);
}

/* text with its last space made one at which no line is broken: a number stays with its sign. */
static const char *tied(const char *text, struct doc *doc)
{
  const char *last = strrchr(text, ' ');

  return last ? doc_format(doc, "%.*s\xC2\xA0%s", (int)(last - text), text, last + 1) : text;
}

/* Names beside the ends of the lines, pushed apart where they would overlap. */
static void labels(struct drawing *d, struct doc *doc, const struct course *c)
{
  double y[COURSE_MOST], tall[COURSE_MOST], lowest;
  const char *texts[COURSE_MOST];
  size_t order[COURSE_MOST], last = c->step_count - 1;
  char percent[16];

  for (size_t i = 0; i < c->cause_count; i++) {
    size_t at = i;

    texts[i] = tied(doc_format(doc, "%s, %s", c->names[i], card_percent(percent, chance(c, last, i))), doc);
    tall[i] = (double)drawing_words(NULL, 0, 0, WIDE - LABEL - 24, LETTERS, ALIGN_LEFT, i == 0, INK_BLACK,
                                    texts[i]) *
                  LETTERS * LINE +
              5;
    y[i] = chance_y(chance(c, last, i)) - tall[i] / 2;
    for (; at > 0 && y[order[at - 1]] > y[i]; at--) order[at] = order[at - 1];
    order[at] = i;
  }
  lowest = BOTTOM + 4;
  for (size_t n = c->cause_count; n-- > 0;) { /* up from the bottom, then down from the top */
    y[order[n]] = fmin(y[order[n]], lowest - tall[order[n]]);
    lowest = y[order[n]];
  }
  for (size_t n = 0; n < c->cause_count; n++) {
    size_t i = order[n];
    double end = chance_y(chance(c, last, i)), middle;

    if (n) y[i] = fmax(y[i], y[order[n - 1]] + tall[order[n - 1]]);
    else y[i] = fmax(y[i], 2);
    middle = y[i] + LETTERS * 0.75;
    drawing_line(d, (struct point[]){{RIGHT - 2, end}, {LABEL - 2, middle}}, 2, INK_SOFT, 0.7, 0);
    drawing_marker(d, LABEL + 5, middle, 4, (int)i);
    drawing_words(d, LABEL + 17, y[i] + LETTERS, WIDE - LABEL - 24, LETTERS, ALIGN_LEFT, i == 0,
                  (enum ink)(INK_SERIES + i), texts[i]);
  }
}

/* What each step was, in two columns read downwards. Returns where it ends. */
static double key(struct drawing *d, struct doc *doc, const struct course *c, double from)
{
  size_t half = (c->step_count + 1) / 2;
  double y = from, lowest = from, column = WIDE / 2;

  for (size_t s = 0; s < c->step_count; s++) {
    double x = s < half ? 4 : column + 4;
    const char *what =
        doc_format(doc, "%s%s", c->steps[s].kind == COURSE_COMPLAINT ? "complaint: " : "", c->steps[s].what);

    if (s == half) y = from;
    drawing_text(d, x + 16, y, KEY, ALIGN_RIGHT, true, INK_BLACK, doc_format(doc, "%zu", s));
    y += (double)drawing_words(d, x + 24, y, column - 34, KEY, ALIGN_LEFT, false, INK_BLACK, what) * KEY *
             LINE +
         2.5;
    lowest = fmax(lowest, y);
  }
  return lowest;
}

static const char *described(struct doc *doc, const struct course *c)
{
  struct buf b = {0};
  const char *text;
  char first[16], last[16];

  buf_addf(&b, "Line chart of the chance of each leading cause over %zu steps of the job. ",
           c->step_count - 1);
  for (size_t i = 0; i < c->cause_count; i++)
    buf_addf(&b, "%s: %s to begin with, %s at the end. ", c->names[i], card_percent(first, chance(c, 0, i)),
             card_percent(last, chance(c, c->step_count - 1, i)));
  text = doc_format(doc, "%.*s", (int)b.len - 1, buf_text(&b));
  buf_free(&b);
  return text;
}

struct drawing *card_chart(struct doc *doc, const struct course *c)
{
  struct drawing *d = drawing_begin(doc->arena, "chart", WIDE);

  d->title = "How the chance of each cause changed over the job";
  d->desc = described(doc, c);
  wash(d, doc, c);
  axes(d, c);
  callout(d, c);
  lines(d, doc, c);
  labels(d, doc, c);
  d->height = key(d, doc, c, BOTTOM + 58);
  return d;
}
