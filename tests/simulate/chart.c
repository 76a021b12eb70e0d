/* chart.c - see chart.h. */
#include "chart.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const double WIDE = 720, LEFT = 200, RIGHT = 700, TOP = 84, ROW = 30, LETTERS = 12;

static const double ticks[] = {10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};
enum { TICKS = sizeof ticks / sizeof ticks[0] };

/* The ticks that the figures lie between. */
struct scale { size_t low, high; };

static struct scale scale_of(const struct chart *c)
{
  double low = INFINITY, high = 0;
  struct scale s = {0, TICKS - 1};

  for (size_t r = 0; r < c->row_count; r++)
    for (size_t i = 0; i < c->series_count; i++) {
      low = fmin(low, c->rows[r].mean[i] - c->rows[r].half[i]);
      high = fmax(high, c->rows[r].mean[i] + c->rows[r].half[i]);
    }
  while (s.low + 1 < TICKS && ticks[s.low + 1] <= low) s.low++;
  while (s.high > s.low + 1 && ticks[s.high - 1] >= high) s.high--;
  return s;
}

static double x_of(struct scale s, double value)
{
  double low = log(ticks[s.low]), share = (log(fmax(value, ticks[s.low])) - low) / (log(ticks[s.high]) - low);

  return LEFT + share * (RIGHT - LEFT);
}

static void axis(struct drawing *d, const struct chart *c, struct scale s, double bottom)
{
  char text[24];

  for (size_t i = s.low; i <= s.high; i++) {
    double x = x_of(s, ticks[i]);

    drawing_line(d, (struct point[]){{x, TOP - 8}, {x, bottom}}, 2, INK_FAINT, 0.8, 0);
    snprintf(text, sizeof text, "%.0f", ticks[i]);
    drawing_text(d, x, bottom + 17, LETTERS, ALIGN_MIDDLE, false, INK_BLACK, text);
  }
  drawing_text(d, RIGHT, bottom + 36, LETTERS, ALIGN_RIGHT, false, INK_SOFT, c->scale);
}

/* Two keys to a line, above the picture. */
static void key(struct drawing *d, const struct chart *c)
{
  for (size_t i = 0; i < c->series_count; i++) {
    double x = LEFT + (double)(i % 2) * 240, y = 46 + (double)(i / 2) * 18;

    drawing_marker(d, x + 4, y - 4, 4.5, (int)i);
    drawing_text(d, x + 16, y, LETTERS, ALIGN_LEFT, i == 0, INK_BLACK, c->series[i]);
  }
}

static void row(struct drawing *d, const struct chart *c, struct scale s, size_t at)
{
  const struct chart_row *r = &c->rows[at];
  double y = TOP + (double)at * ROW + ROW / 2, step = 4.5;

  drawing_text(d, LEFT - 12, y + 4, LETTERS, ALIGN_RIGHT, false, INK_BLACK, r->name);
  drawing_line(d, (struct point[]){{LEFT, y + ROW / 2}, {RIGHT, y + ROW / 2}}, 2, INK_FAINT, 0.5, 0);
  for (size_t i = c->series_count; i-- > 0;) { /* the first on top */
    double at_y = y + ((double)i - (double)(c->series_count - 1) / 2) * step;
    double from = x_of(s, r->mean[i] - r->half[i]), to = x_of(s, r->mean[i] + r->half[i]);

    drawing_line(d, (struct point[]){{from, at_y}, {to, at_y}}, 2, INK_BLACK, 1.2, 0);
    drawing_marker(d, x_of(s, r->mean[i]), at_y, 4.5, (int)i);
  }
}

static const char *described(struct arena *arena, const struct chart *c)
{
  struct buf b = {0};
  const char *text;

  buf_addf(&b, "Means with 95 %% intervals, %s, on a scale by ratios.", c->unit);
  for (size_t r = 0; r < c->row_count; r++) {
    buf_addf(&b, " %s:", c->rows[r].name);
    for (size_t i = 0; i < c->series_count; i++)
      buf_addf(&b, "%s %s %.0f", i ? "," : "", c->series[i], c->rows[r].mean[i]);
    buf_add(&b, ".");
  }
  text = arena_text(arena, buf_text(&b), b.len);
  buf_free(&b);
  return text;
}

struct drawing *chart_draw(struct arena *arena, const struct chart *c)
{
  struct drawing *d = drawing_begin(arena, c->id, WIDE);
  struct scale s = scale_of(c);
  double bottom = TOP + (double)c->row_count * ROW;

  d->title = c->title;
  d->desc = described(arena, c);
  d->height = bottom + 46;
  drawing_box(d, 0, 0, WIDE, d->height, 0, INK_NONE, INK_PAPER, 0, 0);
  drawing_text(d, 8, 20, 15, ALIGN_LEFT, true, INK_BLACK, c->title);
  key(d, c);
  axis(d, c, s, bottom);
  for (size_t r = 0; r < c->row_count; r++) row(d, c, s, r);
  return d;
}
