/* drawing.c - see drawing.h. */
#include "report/drawing.h"

#include <stdlib.h>
#include <string.h>

/* Widths of the letters from space to ~ in Helvetica, thousandths of the size (the standard
 * metrics of that face, from memory); the faces named in the SVG have the same. */
static const short widths[95] = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333,  278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,  611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278,  556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,  500, 334, 260, 334, 584};
static const double bold_width = 1.09; /* of the plain letters: a little more than it takes */
enum { LONG_TEXT = 4 };                /* bytes from which a text is held to its width in an SVG */

struct drawing *drawing_begin(struct arena *arena, const char *id, double width)
{
  struct drawing *d = arena_new(arena, sizeof *d);

  *d = (struct drawing){.arena = arena, .width = width, .id = id, .title = "", .desc = ""};
  return d;
}

void drawing_free(struct drawing *d)
{
  free(d->marks);
  d->marks = NULL;
  d->count = d->room = 0;
}

static void add(struct drawing *d, struct mark m)
{
  mem_grow((void **)&d->marks, &d->room, d->count + 1, sizeof *d->marks);
  d->marks[d->count++] = m;
}

static struct point *copy_points(struct drawing *d, const struct point *points, size_t count)
{
  struct point *copy = arena_array(d->arena, count, sizeof *copy);

  memcpy(copy, points, count * sizeof *copy);
  return copy;
}

void drawing_line(struct drawing *d, const struct point *points, size_t count, enum ink ink, double width,
                  int dash)
{
  add(d, (struct mark){.kind = MARK_LINE,
                       .points = copy_points(d, points, count),
                       .count = count,
                       .ink = ink,
                       .width = width,
                       .dash = dash});
}

void drawing_box(struct drawing *d, double x, double y, double w, double h, double round, enum ink ink,
                 enum ink fill, double width, int dash)
{
  add(d, (struct mark){.kind = MARK_BOX,
                       .x = x,
                       .y = y,
                       .w = w,
                       .h = h,
                       .round = round,
                       .ink = ink,
                       .fill = fill,
                       .width = width,
                       .dash = dash});
}

void drawing_text(struct drawing *d, double x, double y, double size, enum align align, bool bold,
                  enum ink ink, const char *text)
{
  add(d, (struct mark){.kind = MARK_TEXT,
                       .x = x,
                       .y = y,
                       .size = size,
                       .align = align,
                       .bold = bold,
                       .ink = ink,
                       .text = arena_text(d->arena, text, strlen(text))});
}

static void polygon(struct drawing *d, const struct point *points, size_t count, enum ink ink)
{
  add(d, (struct mark){.kind = MARK_POLYGON,
                       .points = copy_points(d, points, count),
                       .count = count,
                       .ink = INK_PAPER,
                       .fill = ink,
                       .width = 0.8});
}

void drawing_area(struct drawing *d, const struct point *points, size_t count, enum ink fill)
{
  add(d, (struct mark){.kind = MARK_POLYGON,
                       .points = copy_points(d, points, count),
                       .count = count,
                       .ink = INK_NONE,
                       .fill = fill});
}

void drawing_arrow(struct drawing *d, double x, double y, double size, bool down, enum ink ink)
{
  struct point right[] = {{x, y}, {x - size, y - size / 2}, {x - size, y + size / 2}};
  struct point below[] = {{x, y}, {x - size / 2, y - size}, {x + size / 2, y - size}};

  polygon(d, down ? below : right, 3, ink);
}

void drawing_marker(struct drawing *d, double x, double y, double size, int series)
{
  double s = size, t = size / 3;
  struct point square[] = {{x - s, y - s}, {x + s, y - s}, {x + s, y + s}, {x - s, y + s}};
  struct point triangle[] = {{x, y - 1.3 * s}, {x + 1.2 * s, y + s}, {x - 1.2 * s, y + s}};
  struct point diamond[] = {{x, y - 1.4 * s}, {x + 1.4 * s, y}, {x, y + 1.4 * s}, {x - 1.4 * s, y}};
  struct point cross[] = {{x - t, y - s}, {x + t, y - s}, {x + t, y - t}, {x + s, y - t},
                          {x + s, y + t}, {x + t, y + t}, {x + t, y + s}, {x - t, y + s},
                          {x - t, y + t}, {x - s, y + t}, {x - s, y - t}, {x - t, y - t}};
  enum ink ink = (enum ink)(INK_SERIES + series);

  switch (series % DRAWING_SERIES) {
  case 0:
    add(d,
        (struct mark){
            .kind = MARK_CIRCLE, .x = x, .y = y, .w = 1.1 * s, .ink = INK_PAPER, .fill = ink, .width = 0.8});
    break;
  case 1: polygon(d, square, 4, ink); break;
  case 2: polygon(d, triangle, 3, ink); break;
  case 3: polygon(d, diamond, 4, ink); break;
  default: polygon(d, cross, 12, ink); break;
  }
}

double drawing_text_width(const char *text, double size, bool bold)
{
  double sum = 0;

  for (; *text; text++) {
    unsigned char c = (unsigned char)*text;

    if (c >= 0x20 && c < 0x7F) sum += widths[c - 0x20];
    else if (strncmp(text, "\xC2\xA0", 2) == 0) sum += widths[0]; /* a space that breaks no line */
    else if (strncmp(text, "\xE2\x88\x92", 3) == 0) sum += widths['+' - ' ']; /* minus */
    else if (c >= 0xC0) sum += c < 0xE0 ? 560 : 1000; /* a letter outside ASCII: wide enough */
  }
  return sum / 1000 * size * (bold ? bold_width : 1);
}

/* How many bytes of text fit into w, at least one letter; a break at a space if there is one. */
static size_t fitting(const char *text, double w, double size, bool bold)
{
  size_t len = strcspn(text, "\n"), best = 0, any = 0;
  char *piece = mem_new(len + 1);

  for (size_t i = 0; i < len;) {
    size_t next = i + 1;

    while (((unsigned char)text[next] & 0xC0) == 0x80) next++;
    memcpy(piece + i, text + i, next - i);
    piece[next] = '\0';
    if (any > 0 && drawing_text_width(piece, size, bold) > w) break;
    any = next;
    if (text[next] == ' ' || next == len) best = next;
    i = next;
  }
  free(piece);
  return best ? best : any;
}

size_t drawing_words(struct drawing *d, double x, double y, double w, double size, enum align align,
                     bool bold, enum ink ink, const char *text)
{
  size_t lines = 0;

  for (;;) {
    size_t len;

    while (*text == ' ' || *text == '\n') text++;
    if (!*text) return lines;
    len = fitting(text, w, size, bold);
    if (d) {
      char *line = arena_text(d->arena, text, len);

      drawing_text(d, x, y + (double)lines * size * 1.2, size, align, bold, ink, line);
    }
    lines++;
    text += len;
  }
}

const double *drawing_dash(int dash)
{
  static const double dashes[DRAWING_DASHES][DRAWING_DASH_PARTS + 1] = {
      {0}, {8, 4, 0}, {2, 3, 0}, {11, 3, 2, 3, 0}, {14, 4, 2, 3, 2, 3, 0}};

  return dashes[dash % DRAWING_DASHES];
}

void drawing_rgb(enum ink ink, unsigned char rgb[3])
{
  static const unsigned char inks[][3] = {{0, 0, 0},       {26, 26, 26},    {85, 85, 85},  {190, 190, 190},
                                          {240, 240, 236}, {255, 255, 255}, {11, 72, 134}, {150, 56, 0},
                                          {32, 94, 50},    {107, 27, 122},  {70, 70, 70}};

  memcpy(rgb, inks[ink], 3);
}

/* ---- SVG ------------------------------------------------------------------------------ */

void drawing_escape(struct buf *out, const char *text)
{
  for (; *text; text++) switch (*text) {
    case '&': buf_add(out, "&amp;"); break;
    case '<': buf_add(out, "&lt;"); break;
    case '>': buf_add(out, "&gt;"); break;
    case '"': buf_add(out, "&quot;"); break;
    case '\'': buf_add(out, "&#39;"); break;
    default: buf_addn(out, text, 1); break;
    }
}

static void colour(struct buf *out, const char *what, enum ink ink)
{
  unsigned char rgb[3];

  if (ink == INK_NONE) {
    buf_addf(out, " %s=\"none\"", what);
    return;
  }
  drawing_rgb(ink, rgb);
  buf_addf(out, " %s=\"#%02x%02x%02x\"", what, rgb[0], rgb[1], rgb[2]);
}

static void stroke(struct buf *out, const struct mark *m)
{
  const double *dash = drawing_dash(m->dash);

  colour(out, "fill", m->fill);
  colour(out, "stroke", m->ink);
  buf_addf(out, " stroke-width=\"%.1f\"", m->width);
  for (size_t i = 0; dash[i] > 0; i++)
    buf_addf(out, "%s%.0f%s", i ? " " : " stroke-dasharray=\"", dash[i], dash[i + 1] > 0 ? "" : "\"");
  buf_add(out, "/>\n");
}

static void svg_mark(struct buf *out, const struct mark *m)
{
  static const char *const anchors[] = {"start", "middle", "end"};

  switch (m->kind) {
  case MARK_LINE:
  case MARK_POLYGON:
    buf_addf(out, "<%s points=\"", m->kind == MARK_LINE ? "polyline" : "polygon");
    for (size_t i = 0; i < m->count; i++)
      buf_addf(out, "%s%.1f,%.1f", i ? " " : "", m->points[i].x, m->points[i].y);
    buf_add(out, "\" stroke-linejoin=\"round\"");
    stroke(out, m);
    break;
  case MARK_BOX:
    buf_addf(out, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"%.1f\"", m->x, m->y, m->w,
             m->h, m->round);
    stroke(out, m);
    break;
  case MARK_CIRCLE:
    buf_addf(out, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"", m->x, m->y, m->w);
    stroke(out, m);
    break;
  case MARK_TEXT:
    buf_addf(out, "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"%s\"%s", m->x, m->y, m->size,
             anchors[m->align], m->bold ? " font-weight=\"bold\"" : "");
    colour(out, "fill", m->ink);
    /* Where the faces named are missing the browser takes one of its own, often wider: this keeps
     * the words as wide as they were reckoned, inside their boxes. */
    if (strlen(m->text) >= LONG_TEXT)
      buf_addf(out, " textLength=\"%.1f\" lengthAdjust=\"spacingAndGlyphs\"",
               drawing_text_width(m->text, m->size, m->bold));
    buf_add(out, ">");
    drawing_escape(out, m->text);
    buf_add(out, "</text>\n");
    break;
  }
}

void drawing_svg(const struct drawing *d, struct buf *out)
{
  buf_addf(out,
           "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" "
           "aria-labelledby=\"%s-title %s-desc\" font-family=\"Helvetica, Arial, 'Liberation Sans', "
           "sans-serif\">\n",
           d->width, d->height, d->id, d->id);
  buf_addf(out, "<title id=\"%s-title\">", d->id);
  drawing_escape(out, d->title);
  buf_addf(out, "</title>\n<desc id=\"%s-desc\">", d->id);
  drawing_escape(out, d->desc);
  buf_add(out, "</desc>\n");
  for (size_t i = 0; i < d->count; i++) svg_mark(out, &d->marks[i]);
  buf_add(out, "</svg>\n");
}
