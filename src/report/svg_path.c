/* svg_path.c - see svg_path.h. */
#include "report/svg_path.h"

#include <math.h>
#include <stdio.h>

static const double WIDE = 680, BOX = 14, BOX_WIDE = 318, RAILS = 356, LETTERS = 12, LINE = 1.2, GAP = 11;
enum { FEW_ROWS = 14 };
static const double next_to_nothing = 0.95; /* decibans: less than a quarter more or less likely */

/* One row: a step, or several in turn that weigh next to nothing. */
struct row {
  size_t first, last;
  const char *what;
  enum course_kind kind;
};
struct path {
  struct drawing *d;
  struct doc *doc;
  const struct course *c;
  size_t causes;
  struct row *rows;
  size_t row_count;
};

static double rail_wide(const struct path *p) { return fmin(150, (WIDE - RAILS) / (double)p->causes); }

static double rail_x(const struct path *p, size_t cause)
{
  return RAILS + rail_wide(p) * ((double)cause + 0.5);
}

static double weight(const struct path *p, const struct row *r, size_t cause)
{
  const double *odds = p->c->odds;
  size_t n = p->c->cause_count;

  return odds[r->last * n + cause] - (r->first == 0 ? 0 : odds[(r->first - 1) * n + cause]);
}

/* Is this a result that hardly moves any of the causes shown? */
static bool idle(const struct path *p, size_t step)
{
  struct row r = {.first = step, .last = step};

  if (p->c->steps[step].kind != COURSE_RESULT) return false;
  for (size_t i = 0; i < p->causes; i++)
    if (fabs(weight(p, &r, i)) >= next_to_nothing) return false;
  return true;
}

/* Each step a row; on a long job, idle ones that follow each other share one. */
static void list_rows(struct path *p)
{
  bool crowded = p->c->step_count > FEW_ROWS;

  p->rows = arena_array(p->doc->arena, p->c->step_count, sizeof *p->rows);
  for (size_t s = 0, end; s < p->c->step_count; s = end) {
    struct row *r = &p->rows[p->row_count++];

    for (end = s + 1; crowded && idle(p, s) && end < p->c->step_count && idle(p, end);) end++;
    *r = (struct row){s, end - 1, p->c->steps[s].what, p->c->steps[s].kind};
    if (end > s + 1) r->what = doc_format(p->doc, "to %zu  results that change little here", end - 1);
  }
}

static const char *signed_text(const struct path *p, double db)
{
  return doc_format(p->doc, "%s%.1f", db < 0 ? "\xE2\x88\x92" : "+", fabs(db));
}

/* The weight of one step for one cause, on the line of the cause. */
static void bubble(const struct path *p, double x, double y, double db, bool start)
{
  double w = 44, h = 19;

  if (start) {
    drawing_box(p->d, x - w / 2, y - h / 2, w, h, 2, INK_BLACK, INK_WASH, 0.8, 0);
    drawing_text(p->d, x, y + 4.2, LETTERS, ALIGN_MIDDLE, false, INK_BLACK, signed_text(p, db));
  } else if (fabs(db) < next_to_nothing) {
    drawing_box(p->d, x - 3, y - 3, 6, 6, 3, INK_BLACK, INK_PAPER, 1, 0);
  } else if (db > 0) {
    drawing_box(p->d, x - w / 2, y - h / 2, w, h, h / 2, INK_BLACK, INK_BLACK, 1, 0);
    drawing_text(p->d, x, y + 4.2, LETTERS, ALIGN_MIDDLE, true, INK_PAPER, signed_text(p, db));
  } else {
    drawing_box(p->d, x - w / 2, y - h / 2, w, h, h / 2, INK_BLACK, INK_PAPER, 1.2, 2);
    drawing_text(p->d, x, y + 4.2, LETTERS, ALIGN_MIDDLE, false, INK_BLACK, signed_text(p, db));
  }
}

static const char *row_text(const struct path *p, const struct row *r)
{
  return doc_format(p->doc, "%zu  %s%s", r->first, r->kind == COURSE_COMPLAINT ? "complaint: " : "", r->what);
}

static void evidence_box(const struct path *p, const struct row *r, double y, double tall)
{
  bool complaint = r->kind == COURSE_COMPLAINT;
  bool plain = r->kind == COURSE_START || r->kind == COURSE_REST || r->last > r->first;

  drawing_box(p->d, BOX, y, BOX_WIDE, tall, complaint ? 11 : 2, INK_BLACK, plain ? INK_PAPER : INK_WASH,
              complaint ? 1.8 : 1, plain ? 2 : 0);
  drawing_words(p->d, BOX + 10, y + LETTERS + 4.5, BOX_WIDE - 20, LETTERS, ALIGN_LEFT, complaint, INK_BLACK,
                row_text(p, r));
}

static double box_tall(const struct path *p, const struct row *r)
{
  bool complaint = r->kind == COURSE_COMPLAINT;
  size_t lines =
      drawing_words(NULL, 0, 0, BOX_WIDE - 20, LETTERS, ALIGN_LEFT, complaint, INK_BLACK, row_text(p, r));

  return (double)lines * LETTERS * LINE + 10;
}

/* All steps from y down; returns where they end. Lines first, so that boxes lie on them. */
static double steps(const struct path *p, double top)
{
  double y = top, spine = BOX + 24;

  for (size_t n = 0; n < p->row_count; n++) {
    double tall = box_tall(p, &p->rows[n]), middle = y + tall / 2;

    drawing_line(p->d, (struct point[]){{BOX + BOX_WIDE, middle}, {rail_x(p, p->causes - 1), middle}}, 2,
                 INK_FAINT, 1, 0);
    if (n + 1 < p->row_count) {
      drawing_line(p->d, (struct point[]){{spine, y + tall}, {spine, y + tall + GAP - 3}}, 2, INK_BLACK, 1.2,
                   0);
      drawing_arrow(p->d, spine, y + tall + GAP, 7, true, INK_BLACK);
    }
    evidence_box(p, &p->rows[n], y, tall);
    for (size_t i = 0; i < p->causes; i++) bubble(p, rail_x(p, i), middle, weight(p, &p->rows[n], i), n == 0);
    y += tall + GAP;
  }
  return y;
}

/* Name at the head of each line; returns how tall the tallest is. */
static double heads(const struct path *p, bool draw, double y)
{
  double tallest = 0;

  for (size_t i = 0; i < p->causes; i++)
    tallest =
        fmax(tallest, (double)drawing_words(draw ? p->d : NULL, rail_x(p, i), y + LETTERS, rail_wide(p) - 12,
                                            LETTERS, ALIGN_MIDDLE, i == 0, INK_BLACK, p->c->names[i]) *
                          LETTERS * LINE);
  return tallest;
}

static void ends(const struct path *p, double y)
{
  size_t last = p->c->step_count - 1;
  char percent[16];

  drawing_words(p->d, BOX + BOX_WIDE, y + 19, BOX_WIDE, LETTERS, ALIGN_RIGHT, true, INK_BLACK, "in all");
  drawing_words(p->d, BOX + BOX_WIDE, y + 35, BOX_WIDE, LETTERS, ALIGN_RIGHT, true, INK_BLACK,
                "chance that it is there");
  for (size_t i = 0; i < p->causes; i++) {
    double odds = p->c->odds[last * p->c->cause_count + i], w = rail_wide(p) - 12;

    drawing_arrow(p->d, rail_x(p, i), y, 9, true, INK_BLACK);
    drawing_box(p->d, rail_x(p, i) - w / 2, y, w, 44, 3, INK_BLACK, INK_PAPER, i ? 1 : 2.6, 0);
    drawing_text(p->d, rail_x(p, i), y + 19, LETTERS, ALIGN_MIDDLE, i == 0, INK_BLACK,
                 doc_format(p->doc, "%s db", signed_text(p, odds)));
    drawing_text(p->d, rail_x(p, i), y + 35, LETTERS, ALIGN_MIDDLE, i == 0, INK_BLACK,
                 card_percent(percent, card_chance_of(odds)));
  }
}

/* What the marks mean. */
static void legend(const struct path *p, double y)
{
  bubble(p, BOX + 24, y, 3, false);
  drawing_text(p->d, BOX + 52, y + 4, LETTERS, ALIGN_LEFT, false, INK_BLACK, "speaks for it");
  bubble(p, BOX + 164, y, -3, false);
  drawing_text(p->d, BOX + 192, y + 4, LETTERS, ALIGN_LEFT, false, INK_BLACK, "speaks against it");
  bubble(p, BOX + 312, y, 0, false);
  drawing_text(p->d, BOX + 322, y + 4, LETTERS, ALIGN_LEFT, false, INK_BLACK, "next to nothing");
  drawing_text(p->d, WIDE - 4, y + 4, LETTERS, ALIGN_RIGHT, false, INK_SOFT,
               "decibans: +10 is ten times the odds");
}

static const char *described(const struct path *p)
{
  struct buf b = {0};
  const char *text;
  char percent[16];

  buf_addf(&b, "Graph of %zu steps, each tied to the leading causes by its weight.", p->c->step_count - 1);
  for (size_t i = 0; i < p->causes; i++) {
    size_t most = 0;

    for (size_t n = 1; n < p->row_count; n++)
      if (!most || weight(p, &p->rows[n], i) > weight(p, &p->rows[most], i)) most = n;
    buf_addf(
        &b, " %s: %s in all, most of it from step %zu, %s.", p->c->names[i],
        card_percent(percent, card_chance_of(p->c->odds[(p->c->step_count - 1) * p->c->cause_count + i])),
        p->rows[most].first, p->rows[most].what);
  }
  buf_add(&b, " The tables of weights say all of it in words.");
  text = doc_format(p->doc, "%s", buf_text(&b));
  buf_free(&b);
  return text;
}

struct drawing *card_path(struct doc *doc, const struct course *c)
{
  struct path p = {drawing_begin(doc->arena, "path", WIDE),
                   doc,
                   c,
                   c->cause_count < PATH_MOST_CAUSES ? c->cause_count : PATH_MOST_CAUSES,
                   NULL,
                   0};
  double top = heads(&p, false, 0) + 12, bottom = top;

  list_rows(&p);

  p.d->title = "The way from the complaint to the cause";
  p.d->desc = described(&p);
  for (size_t n = 0; n < p.row_count; n++) bottom += box_tall(&p, &p.rows[n]) + GAP;
  for (size_t i = 0; i < p.causes; i++)
    drawing_line(p.d, (struct point[]){{rail_x(&p, i), top - 2}, {rail_x(&p, i), bottom + 2}}, 2, INK_BLACK,
                 i ? 1 : 2.4, 0);
  heads(&p, true, 0);
  bottom = steps(&p, top + 4);
  ends(&p, bottom + 8);
  legend(&p, bottom + 76);
  p.d->height = bottom + 92;
  return p.d;
}
