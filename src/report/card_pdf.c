/* card_pdf.c - the card as PDF, A4; the only file that includes the PDF library.
 *
 * Letters are those of Windows code page 1252, which the fonts of every reader have; what
 * is not among them becomes "?", and the card says so at its end. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include <hpdf.h>

#include "report/card_doc.h"

#if HPDF_MAJOR_VERSION > 2 || HPDF_MINOR_VERSION > 3
typedef HPDF_REAL dash_length;
#else
typedef HPDF_UINT16 dash_length;
#endif

enum { MOST_PAGES = 200 };
static const float WIDE = 595.28f, TALL = 841.89f, SIDE = 46, TOP = 48, FOOT = 58, LEAD = 1.36f;
static const float SIZE = 10, SMALL = 8.5f, HEADING = 44; /* HEADING: more than a heading is tall */

enum face { PLAIN, BOLD, ITALIC, FACES };

struct sheet {
  HPDF_Doc pdf;
  HPDF_Page page, pages[MOST_PAGES];
  HPDF_Font fonts[FACES];
  size_t count;
  float y;             /* of the top of what comes next */
  bool replaced, full; /* a letter was replaced; the card is longer than any card */
  HPDF_STATUS error;
};

static void HPDF_STDCALL on_error(HPDF_STATUS error, HPDF_STATUS detail, void *user)
{
  struct sheet *s = user;

  (void)detail;
  if (!s->error) s->error = error;
}

/* ---- letters -------------------------------------------------------------------------- */

/* Windows-1252 byte of a code point, 0 when it has none. Source: the Unicode mapping table
 * of that code page (from memory). */
static unsigned char byte_of(unsigned long c)
{
  static const unsigned short high[32] = {0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                          0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017D, 0,
                                          0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                          0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

  if (c == 0x2212) return 0x96; /* the minus sign looks like an en dash */
  if ((c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c <= 0xFF) || c == '\n') return (unsigned char)c;
  for (unsigned i = 0; i < 32; i++)
    if (high[i] == c && c) return (unsigned char)(0x80 + i);
  return 0;
}

static char *encoded(struct sheet *s, const char *text)
{
  char *out = mem_new(strlen(text) + 1), *p = out;

  for (size_t bytes; *text; text += bytes) {
    unsigned char b = byte_of(doc_code_point(text, &bytes));

    if (!b) s->replaced = true;
    *p++ = b ? (char)b : '?';
  }
  return out;
}

/* ---- pages and words ------------------------------------------------------------------ */

static void new_page(struct sheet *s)
{
  if (s->count == MOST_PAGES) {
    s->full = true;
    return;
  }
  s->page = s->pages[s->count++] = HPDF_AddPage(s->pdf);
  HPDF_Page_SetWidth(s->page, WIDE);
  HPDF_Page_SetHeight(s->page, TALL);
  s->y = TALL - TOP;
}

static void room(struct sheet *s, float need)
{
  if (s->y - need < FOOT && s->y < TALL - TOP - 1) new_page(s);
}

static void set_ink(struct sheet *s, enum ink ink, bool fill)
{
  unsigned char rgb[3];

  drawing_rgb(ink, rgb);
  if (fill) HPDF_Page_SetRGBFill(s->page, (float)rgb[0] / 255, (float)rgb[1] / 255, (float)rgb[2] / 255);
  else HPDF_Page_SetRGBStroke(s->page, (float)rgb[0] / 255, (float)rgb[1] / 255, (float)rgb[2] / 255);
}

static void show(struct sheet *s, float x, float y, float size, enum face face, enum ink ink,
                 const char *bytes)
{
  set_ink(s, ink, true);
  HPDF_Page_BeginText(s->page);
  HPDF_Page_SetFontAndSize(s->page, s->fonts[face], size);
  HPDF_Page_TextOut(s->page, x, y, bytes);
  HPDF_Page_EndText(s->page);
}

static float wide(struct sheet *s, const char *bytes, size_t len, float size, enum face face)
{
  HPDF_TextWidth w = HPDF_Font_TextWidth(s->fonts[face], (const HPDF_BYTE *)bytes, (HPDF_UINT)len);

  return (float)w.width * size / 1000;
}

/* Bytes of the next line of at most w points, at least one. */
static size_t line_of(struct sheet *s, const char *bytes, float w, float size, enum face face)
{
  size_t len = strcspn(bytes, "\n"), best = 0, i = 0;

  while (i < len) {
    size_t next = i + 1;

    while (next < len && bytes[next] != ' ') next++;
    if (wide(s, bytes, next, size, face) > w) break;
    best = i = next;
  }
  if (best) return best;
  for (i = 1; i < len && wide(s, bytes, i + 1, size, face) <= w; i++) continue;
  return i < len ? i : len;
}

struct style {
  float x, w, size;
  enum face face;
  enum ink ink;
  bool right;
};

/* Words from the top y down; returns how tall they are. draw false: only measures. paged:
 * goes on to the next page where one ends, and moves s->y. */
static float words(struct sheet *s, const struct style *how, float y, const char *text, bool draw, bool paged)
{
  char *bytes = encoded(s, text), *p = bytes;
  float lead = how->size * LEAD, tall = 0;

  while (!s->full) {
    size_t len;
    char end;

    while (*p == ' ' || *p == '\n') p++;
    if (!*p) break;
    len = line_of(s, p, how->w, how->size, how->face);
    end = p[len];
    p[len] = '\0';
    if (paged) {
      room(s, lead);
      y = s->y;
      s->y -= lead;
    }
    if (draw)
      show(s, how->right ? how->x + how->w - wide(s, p, len, how->size, how->face) : how->x,
           y - (paged ? 0 : tall) - how->size, how->size, how->face, how->ink, p);
    p[len] = end;
    p += len;
    tall += lead;
  }
  free(bytes);
  return tall;
}

static struct style style_of(float indent, float size, enum face face, enum ink ink)
{
  return (struct style){SIDE + indent, WIDE - 2 * SIDE - indent, size, face, ink, false};
}

static void paragraph(struct sheet *s, float indent, float size, enum face face, enum ink ink,
                      const char *text)
{
  struct style how = style_of(indent, size, face, ink);

  words(s, &how, s->y, text, true, true);
}

static void rule(struct sheet *s, float x1, float y1, float x2, float y2, float width, enum ink ink)
{
  HPDF_Page_SetDash(s->page, NULL, 0, 0);
  HPDF_Page_SetLineWidth(s->page, width);
  set_ink(s, ink, false);
  HPDF_Page_MoveTo(s->page, x1, y1);
  HPDF_Page_LineTo(s->page, x2, y2);
  HPDF_Page_Stroke(s->page);
}

/* ---- drawings ------------------------------------------------------------------------- */

struct place {
  struct sheet *s;
  float x, y, scale;
};

static float at_x(const struct place *p, double x) { return p->x + p->scale * (float)x; }
static float at_y(const struct place *p, double y) { return p->y - p->scale * (float)y; }

static void round_box(const struct place *p, const struct mark *m)
{
  HPDF_Page page = p->s->page;
  float l = at_x(p, m->x), r = at_x(p, m->x + m->w), t = at_y(p, m->y), b = at_y(p, m->y + m->h);
  float c = p->scale * (float)fmin(m->round, fmin(m->w, m->h) / 2), k = c * 0.4477f; /* of a quarter circle */

  HPDF_Page_MoveTo(page, l + c, b);
  HPDF_Page_LineTo(page, r - c, b);
  HPDF_Page_CurveTo(page, r - k, b, r, b + k, r, b + c);
  HPDF_Page_LineTo(page, r, t - c);
  HPDF_Page_CurveTo(page, r, t - k, r - k, t, r - c, t);
  HPDF_Page_LineTo(page, l + c, t);
  HPDF_Page_CurveTo(page, l + k, t, l, t - k, l, t - c);
  HPDF_Page_LineTo(page, l, b + c);
  HPDF_Page_CurveTo(page, l, b + k, l + k, b, l + c, b);
  HPDF_Page_ClosePath(page);
}

static void pen(const struct place *p, const struct mark *m)
{
  const double *dash = drawing_dash(m->dash);
  dash_length lengths[DRAWING_DASH_PARTS];
  HPDF_UINT count = 0;

  for (; dash[count] > 0; count++)
    lengths[count] = (dash_length)fmax(1, floor(dash[count] * (double)p->scale + 0.5));
  HPDF_Page_SetDash(p->s->page, count ? lengths : NULL, count, 0);
  HPDF_Page_SetLineWidth(p->s->page, p->scale * (float)m->width);
  if (m->ink != INK_NONE) set_ink(p->s, m->ink, false);
  if (m->fill != INK_NONE) set_ink(p->s, m->fill, true);
}

static void draw_text(const struct place *p, const struct mark *m)
{
  enum face face = m->bold ? BOLD : PLAIN;
  float size = p->scale * (float)m->size, w;
  char *bytes = encoded(p->s, m->text);

  w = wide(p->s, bytes, strlen(bytes), size, face);
  show(p->s, at_x(p, m->x) - w * (float)m->align / 2, at_y(p, m->y), size, face, m->ink, bytes);
  free(bytes);
}

static void draw_mark(const struct place *p, const struct mark *m)
{
  HPDF_Page page = p->s->page;

  if (m->kind == MARK_TEXT) {
    draw_text(p, m);
    return;
  }
  pen(p, m);
  if (m->kind == MARK_BOX) round_box(p, m);
  else if (m->kind == MARK_CIRCLE)
    HPDF_Page_Circle(page, at_x(p, m->x), at_y(p, m->y), p->scale * (float)m->w);
  else
    for (size_t i = 0; i < m->count; i++) {
      float x = at_x(p, m->points[i].x), y = at_y(p, m->points[i].y);

      if (i == 0) HPDF_Page_MoveTo(page, x, y);
      else HPDF_Page_LineTo(page, x, y);
    }
  if (m->kind == MARK_LINE) HPDF_Page_Stroke(page);
  else if (m->ink == INK_NONE) HPDF_Page_Fill(page);
  else if (m->fill != INK_NONE && m->kind == MARK_POLYGON) HPDF_Page_ClosePathFillStroke(page);
  else if (m->fill != INK_NONE) HPDF_Page_FillStroke(page);
  else HPDF_Page_Stroke(page);
}

/* How much a figure is made smaller or larger; *tall: its height with its caption. A page
 * must have room for it under a heading. */
static float figure_scale(const struct drawing *d, float *tall)
{
  float caption = SMALL * LEAD + 6, most = TALL - TOP - FOOT - caption - HEADING;
  float scale = fminf((WIDE - 2 * SIDE) / (float)d->width, most / (float)d->height);

  *tall = scale * (float)d->height + caption;
  return scale;
}

static void figure(struct sheet *s, const struct block *b)
{
  const struct drawing *d = b->drawing;
  float tall, scale = figure_scale(d, &tall);
  struct place p;

  room(s, tall);
  paragraph(s, 0, SMALL, PLAIN, INK_SOFT, b->text);
  p = (struct place){s, SIDE, s->y - 6, scale};
  for (size_t i = 0; i < d->count; i++) draw_mark(&p, &d->marks[i]);
  s->y = p.y - scale * (float)d->height - 10;
}

/* ---- blocks --------------------------------------------------------------------------- */

/* next: what must stay with it, or NULL. */
static void heading(struct sheet *s, const struct block *b, const struct block *next)
{
  static const float sizes[] = {0, 19, 13, 11}, above[] = {0, 0, 14, 9};
  char *bytes = encoded(s, b->text);
  float stays = 38;

  if (next && next->kind == BLOCK_FIGURE) figure_scale(next->drawing, &stays);
  room(s, fminf(above[b->level] + sizes[b->level] * LEAD + 8 + stays, TALL - TOP - FOOT));
  if (s->y < TALL - TOP - 1) s->y -= above[b->level];
  if (b->level == 2) { /* as a bookmark */
    HPDF_Outline mark = HPDF_CreateOutline(s->pdf, NULL, bytes, NULL);

    HPDF_Outline_SetDestination(mark, HPDF_Page_CreateDestination(s->page));
  }
  paragraph(s, 0, sizes[b->level], BOLD, INK_BLACK, b->text);
  if (b->level < 3) {
    rule(s, SIDE, s->y - 1, WIDE - SIDE, s->y - 1, b->level == 1 ? 2 : 0.5f,
         b->level == 1 ? INK_BLACK : INK_SOFT);
    s->y -= b->level == 1 ? 12 : 6;
  } else s->y -= 2;
  free(bytes);
}

/* A frame of text under a headline. */
static void verdict(struct sheet *s, const struct block *b)
{
  struct style head = style_of(12, 14, BOLD, INK_BLACK), more = style_of(12, SIZE, PLAIN, INK_BLACK);
  struct mark frame = {.kind = MARK_BOX, .round = 6, .ink = INK_BLACK, .fill = INK_NONE, .width = 1.5};
  float head_tall, tall;

  head.w = more.w = WIDE - 2 * SIDE - 24;
  head_tall = words(s, &head, 0, b->label, false, false);
  tall = head_tall + words(s, &more, 0, b->text, false, false) + 16;
  if (tall > TALL - TOP - FOOT) { /* somebody wrote a book: no frame */
    words(s, &head, s->y, b->label, true, true);
    words(s, &more, s->y, b->text, true, true);
    return;
  }
  room(s, tall);
  frame.w = (double)(WIDE - 2 * SIDE);
  frame.h = (double)tall;
  draw_mark(&(struct place){s, SIDE, s->y, 1}, &frame);
  words(s, &head, s->y - 7, b->label, true, false);
  words(s, &more, s->y - 7 - head_tall, b->text, true, false);
  s->y -= tall + 8;
}

static void caution(struct sheet *s, const struct block *b)
{
  struct style how = style_of(70, SIZE - 0.5f, PLAIN, INK_BLACK);
  struct buf text = {0};
  float tall;

  buf_addf(&text, "%s [%s]", b->text, b->label);
  tall = words(s, &how, 0, buf_text(&text), false, false) + 4;
  room(s, tall);
  rule(s, SIDE + 2, s->y, SIDE + 2, s->y - tall, 4, INK_BLACK);
  show(s, SIDE + 12, s->y - 2 - how.size, how.size, BOLD, INK_BLACK, "CAUTION");
  words(s, &how, s->y - 2, buf_text(&text), true, false);
  s->y -= tall + 3;
  buf_free(&text);
}

static void item(struct sheet *s, const struct block *b, int number)
{
  struct style how = style_of(b->kind == BLOCK_TICK ? 20 : 18, SIZE, PLAIN, INK_BLACK);
  struct buf mark = {0}, text = {0};
  float tall;

  buf_addf(&text, "%s%s%s", b->label, *b->label ? ": " : "", b->text);
  tall = words(s, &how, 0, buf_text(&text), false, false);
  room(s, fminf(tall, 4 * SIZE * LEAD));
  if (b->kind == BLOCK_TICK) {
    struct mark box = {.kind = MARK_BOX, .w = 9, .h = 9, .ink = INK_BLACK, .fill = INK_NONE, .width = 0.9};

    draw_mark(&(struct place){s, SIDE + 2, s->y - 2, 1}, &box);
    if (b->level) {
      rule(s, SIDE + 4, s->y - 4, SIDE + 9, s->y - 9, 1.4f, INK_BLACK);
      rule(s, SIDE + 4, s->y - 9, SIDE + 9, s->y - 4, 1.4f, INK_BLACK);
    }
  } else {
    if (b->kind == BLOCK_STEP) buf_addf(&mark, "%d.", number);
    else buf_add(&mark, "\x95"); /* bullet */
    show(s, SIDE + 5, s->y - SIZE, SIZE, PLAIN, INK_BLACK, buf_text(&mark));
  }
  words(s, &how, s->y, buf_text(&text), true, true);
  s->y -= b->kind == BLOCK_TICK ? 4 : 1.5f;
  buf_free(&text);
  buf_free(&mark);
}

static void quote(struct sheet *s, const struct block *b)
{
  struct style how = style_of(14, SIZE, ITALIC, INK_BLACK);
  float tall = words(s, &how, 0, b->text, false, false);
  bool bar = tall < TALL - TOP - FOOT;

  if (bar) {
    room(s, tall);
    rule(s, SIDE + 4, s->y, SIDE + 4, s->y - tall - 2, 2.4f, INK_SOFT);
  }
  words(s, &how, s->y, b->text, true, true);
  s->y -= 7;
}

static void facts(struct sheet *s, const struct doc_table *t)
{
  float half = (WIDE - 2 * SIDE) / 2, tall = 0;

  for (size_t r = 0; r < t->rows; r++) { /* two beside each other */
    float indent = r % 2 ? half : 0;
    struct style name = style_of(indent, SIZE, PLAIN, INK_SOFT),
                 what = style_of(indent + 64, SIZE, PLAIN, INK_BLACK);

    what.w = half - 76;
    if (r % 2 == 0) {
      tall = words(s, &what, 0, t->cells[2 * r + 1], false, false);
      if (r + 1 < t->rows) tall = fmaxf(tall, words(s, &what, 0, t->cells[2 * r + 3], false, false));
      room(s, tall);
    }
    words(s, &name, s->y, t->cells[2 * r], true, false);
    words(s, &what, s->y, t->cells[2 * r + 1], true, false);
    if (r % 2 || r + 1 == t->rows) s->y -= tall;
  }
  s->y -= 8;
}

static void row(struct sheet *s, const struct doc_table *t, const char *const *cells, bool head)
{
  float x[TABLE_MOST_COLUMNS], w[TABLE_MOST_COLUMNS], tall = 0, sum = 0, left = SIDE;
  float full = WIDE - 2 * SIDE;

  for (size_t i = 0; i < t->columns; i++) sum += (float)t->shares[i] + 1;
  for (size_t i = 0; i < t->columns; i++) {
    struct style how;

    x[i] = left;
    w[i] = full * ((float)t->shares[i] + 1) / sum - 8;
    left += w[i] + 8;
    how = (struct style){x[i], w[i], SIZE - 1, head ? BOLD : PLAIN, INK_BLACK, t->right[i]};
    tall = fmaxf(tall, words(s, &how, 0, cells[i] ? cells[i] : "", false, false));
  }
  room(s, tall + 5);
  for (size_t i = 0; i < t->columns; i++) {
    struct style how = {x[i], w[i], SIZE - 1, head ? BOLD : PLAIN, INK_BLACK, t->right[i]};

    words(s, &how, s->y - 1, cells[i] ? cells[i] : "", true, false);
  }
  s->y -= tall + 3;
  rule(s, SIDE, s->y, WIDE - SIDE, s->y, head ? 1 : 0.4f, head ? INK_BLACK : INK_SOFT);
  s->y -= 1;
}

static void table(struct sheet *s, const struct doc_table *t)
{
  size_t page = s->count;

  row(s, t, t->heads, true);
  for (size_t r = 0; r < t->rows; r++) {
    if (s->y - 34 < FOOT) new_page(s);
    if (s->count != page) row(s, t, t->heads, true);
    page = s->count;
    row(s, t, t->cells + r * t->columns, false);
  }
  s->y -= 8;
}

static void draw_block(struct sheet *s, const struct block *b, const struct block *next, int number)
{
  switch (b->kind) {
  case BLOCK_HEADING: heading(s, b, next); break;
  case BLOCK_TEXT:
    paragraph(s, 0, SIZE, PLAIN, INK_BLACK, b->text);
    s->y -= 4;
    break;
  case BLOCK_SMALL:
    s->y -= 6;
    paragraph(s, 0, SMALL, PLAIN, INK_SOFT, b->text);
    break;
  case BLOCK_QUOTE: quote(s, b); break;
  case BLOCK_BULLET:
  case BLOCK_STEP:
  case BLOCK_TICK: item(s, b, number); break;
  case BLOCK_CAUTION: caution(s, b); break;
  case BLOCK_VERDICT: verdict(s, b); break;
  case BLOCK_FACTS: facts(s, b->table); break;
  case BLOCK_TABLE: table(s, b->table); break;
  case BLOCK_FIGURE: figure(s, b); break;
  }
}

static void footers(struct sheet *s, const char *title)
{
  for (size_t i = 0; i < s->count; i++) {
    struct style how = style_of(0, SMALL, PLAIN, INK_SOFT);
    struct buf b = {0};

    s->page = s->pages[i];
    how.w -= 90;
    if (words(s, &how, 0, title, false, false) < 2 * SMALL) words(s, &how, FOOT - 20, title, true, false);
    buf_addf(&b, "page %zu of %zu", i + 1, s->count);
    how = style_of(0, SMALL, PLAIN, INK_SOFT);
    how.right = true;
    words(s, &how, FOOT - 20, buf_text(&b), true, false);
    buf_free(&b);
  }
}

static void draw_all(struct sheet *s, const struct doc *d)
{
  static const char *const faces[] = {"Helvetica", "Helvetica-Bold", "Helvetica-Oblique"};
  char *title;
  int number = 0;

  for (int f = 0; f < FACES; f++) s->fonts[f] = HPDF_GetFont(s->pdf, faces[f], "WinAnsiEncoding");
  HPDF_SetCompressionMode(s->pdf, HPDF_COMP_TEXT);
  HPDF_SetPageMode(s->pdf, HPDF_PAGE_MODE_USE_NONE);
  title = encoded(s, d->items[0].text);
  HPDF_SetInfoAttr(s->pdf, HPDF_INFO_TITLE, title);
  HPDF_SetInfoAttr(s->pdf, HPDF_INFO_CREATOR, "Pullcord");
  free(title);
  new_page(s);
  for (size_t i = 0; i < d->count && !s->full && !s->error; i++) {
    number = d->items[i].kind == BLOCK_STEP ? number + 1 : 0;
    if (i > 0 && d->items[i].kind != d->items[i - 1].kind && d->items[i].kind != BLOCK_HEADING) s->y -= 3;
    draw_block(s, &d->items[i], i + 1 < d->count ? &d->items[i + 1] : NULL, number);
  }
  if (s->replaced)
    paragraph(s, 0, SMALL, PLAIN, INK_BLACK,
              "Some letters are not among those of this PDF (Windows code page 1252) and stand as ?. The "
              "same card as "
              "HTML shows them all.");
  if (!s->error) footers(s, d->items[0].text);
}

static void take(struct sheet *s, struct buf *out)
{
  HPDF_BYTE bytes[4096];

  HPDF_SaveToStream(s->pdf);
  HPDF_ResetStream(s->pdf);
  for (HPDF_UINT32 left = HPDF_GetStreamSize(s->pdf); left > 0 && !s->error;) {
    HPDF_UINT32 n = left < sizeof bytes ? left : (HPDF_UINT32)sizeof bytes;

    HPDF_ReadFromStream(s->pdf, bytes, &n);
    if (n == 0) break;
    buf_addn(out, (const char *)bytes, n);
    left -= n;
  }
}

int card_pdf(const struct doc *d, struct buf *out, struct err *e)
{
  struct sheet *s = mem_new(sizeof *s);
  int status = 0;

  s->pdf = HPDF_New(on_error, s);
  if (s->pdf) draw_all(s, d);
  if (s->pdf && !s->error) take(s, out);
  if (!s->pdf || s->error)
    status = err_set(e, EX_SOFTWARE, NULL, 0,
                     "the PDF library failed (%lx); take --format html and print that.",
                     (unsigned long)s->error);
  else if (s->full)
    status =
        err_set(e, EX_DATAERR, NULL, 0, "the card is longer than %d pages; take --format html.", MOST_PAGES);
  if (s->pdf) HPDF_Free(s->pdf);
  free(s);
  return status;
}
