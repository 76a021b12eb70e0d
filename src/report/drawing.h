/* drawing.h - a picture made of lines, boxes and words, for HTML (as SVG) and PDF alike.
 *
 * Lengths are in units of about 1/96 inch; x goes right, y goes down. Colours are dark
 * enough on white for words (4.5:1 and more, WCAG 2 formula); lines that must be told apart
 * also differ in dashes and markers, so that nothing hangs on colour. */
#ifndef REPORT_DRAWING_H
#define REPORT_DRAWING_H

#include <stdbool.h>
#include <stddef.h>

#include "base/buf.h"
#include "base/mem.h"

enum ink {
  INK_NONE, INK_BLACK, INK_SOFT, INK_FAINT, INK_WASH, INK_PAPER,
  INK_SERIES /* and the four after it */
};
enum { DRAWING_SERIES = 5, DRAWING_DASHES = 5, DRAWING_DASH_PARTS = 6 };
enum mark_kind { MARK_LINE, MARK_POLYGON, MARK_BOX, MARK_CIRCLE, MARK_TEXT };
enum align { ALIGN_LEFT, ALIGN_MIDDLE, ALIGN_RIGHT };

struct point { double x, y; };

struct mark {
  enum mark_kind kind;
  struct point *points; /* LINE, POLYGON */
  size_t count;
  double x, y, w, h;    /* BOX: left top, size; CIRCLE: centre, w = radius; TEXT: baseline */
  double round;         /* BOX: radius of its corners */
  enum ink ink, fill;   /* stroke (TEXT: letters) and inside */
  double width;         /* of the stroke */
  int dash;             /* 0 solid; see drawing_dash */
  const char *text;
  double size;          /* of letters */
  enum align align;
  bool bold;
};

struct drawing {
  struct arena *arena;
  double width, height;
  const char *title, *desc, *id; /* id: for the parts of one page to name each other */
  struct mark *marks;            /* the caller frees with drawing_free, the rest is the arena's */
  size_t count, room;
};

struct drawing *drawing_begin(struct arena *arena, const char *id, double width);
void drawing_free(struct drawing *d);

void drawing_line(struct drawing *d, const struct point *points, size_t count, enum ink ink,
                  double width, int dash);
void drawing_box(struct drawing *d, double x, double y, double w, double h, double round, enum ink ink,
                 enum ink fill, double width, int dash);
void drawing_text(struct drawing *d, double x, double y, double size, enum align align, bool bold,
                  enum ink ink, const char *text);
/* What the points enclose, without an outline. */
void drawing_area(struct drawing *d, const struct point *points, size_t count, enum ink fill);

/* Its tip is at x, y. */
void drawing_arrow(struct drawing *d, double x, double y, double size, bool down, enum ink ink);

/* The marker of a series (circle, square, triangle, diamond, cross): filled with its ink. */
void drawing_marker(struct drawing *d, double x, double y, double size, int series);

/* text wrapped into lines of at most w units, the first baseline at y; returns how many
 * lines. d NULL only counts. */
size_t drawing_words(struct drawing *d, double x, double y, double w, double size, enum align align,
                     bool bold, enum ink ink, const char *text);
double drawing_text_width(const char *text, double size, bool bold);

/* Lengths of dashes and gaps, ended by 0. */
const double *drawing_dash(int dash);
void drawing_rgb(enum ink ink, unsigned char rgb[3]);

/* The drawing as one SVG element with title and description. */
void drawing_svg(const struct drawing *d, struct buf *out);

/* text with & < > " ' as entities. */
void drawing_escape(struct buf *out, const char *text);

#endif
