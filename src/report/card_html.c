/* card_html.c - the card as one HTML page that needs nothing else and prints on A4 and
 * Letter (no page size is named, so the printer's paper is taken; the width fits both). */
#include <string.h>

#include "report/card_doc.h"

static const char *const style =
    ":root{color-scheme:light}"
    "body{font:11pt/1.45 Helvetica,Arial,'Liberation Sans',sans-serif;color:#1a1a1a;background:#fff;"
    "max-width:178mm;margin:10mm auto;padding:0 5mm;overflow-wrap:break-word}\n"
    "h1{font-size:20pt;line-height:1.15;margin:0 0 4mm;padding-bottom:2.5mm;border-bottom:2.5pt solid "
    "#1a1a1a}\n"
    "h2{font-size:13.5pt;line-height:1.2;margin:6mm 0 2mm;padding-bottom:.8mm;border-bottom:.6pt solid "
    "#8a8a8a}\n"
    "h3{font-size:11.5pt;margin:4.5mm 0 1.5mm}\n"
    "p,ul,ol{margin:0 0 2mm}ul,ol{padding-left:6mm}li{margin:0 0 .9mm}\n"
    "dl{display:grid;grid-template-columns:max-content 1fr max-content 1fr;gap:.6mm 4mm;margin:0 0 4mm}"
    "dt{color:#555}dd{margin:0}\n"
    "blockquote{margin:0 0 2.5mm;padding:1mm 0 1mm 4mm;border-left:3pt solid #555;font-style:italic;"
    "white-space:pre-line}\n"
    ".verdict{border:1.6pt solid #1a1a1a;border-radius:2mm;padding:2.5mm 4mm;margin:0 0 4mm}"
    ".verdict strong{font-size:14pt;display:block}.verdict p{margin:0}\n"
    ".caution{border:.8pt solid #1a1a1a;border-left-width:5pt;padding:1.2mm 3mm;margin:0 0 "
    "1.6mm;font-size:10pt;"
    "line-height:1.35}.caution span{color:#555}\n"
    "table{border-collapse:collapse;width:100%;margin:0 0 3mm;font-size:9.5pt;line-height:1.3}"
    "th,td{text-align:left;vertical-align:top;padding:.9mm 2mm;border-bottom:.5pt solid #9a9a9a}"
    "th{border-bottom:1.2pt solid #1a1a1a}th.r,td.r{text-align:right;white-space:nowrap}"
    "tbody tr:last-child td{border-bottom:1.2pt solid "
    "#1a1a1a}caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}\n"
    "ul.ticks{list-style:none;padding-left:0}ul.ticks "
    "li{padding-left:8mm;position:relative;margin-bottom:1.4mm}"
    "ul.ticks li span{position:absolute;left:0;top:.5mm;width:3.6mm;height:3.6mm;border:1pt solid #1a1a1a;"
    "font:bold 9pt/3.6mm sans-serif;text-align:center}\n"
    "figure{margin:3mm 0 4mm}figcaption{font-size:10pt;color:#555;margin-bottom:1.5mm}"
    "svg{display:block;width:100%;height:auto;max-height:235mm}.small{font-size:9pt;color:#555;margin-top:"
    "3mm}\n"
    "@media(max-width:140mm){dl{grid-template-columns:max-content 1fr}}\n"
    "@page{margin:14mm 15mm}\n"
    "@media print{svg{width:88%}body{margin:0;padding:0;max-width:none;font-size:10pt}h2,h3{break-after:avoid}"
    "h2{margin-top:5mm}li{margin-bottom:.5mm}.caution{font-size:9pt;padding:.5mm 3mm;margin-bottom:1mm;"
    "border-width:0 0 0 5pt}figure,.caution,.verdict,tr,li,blockquote{break-inside:avoid}thead{display:table-header-group}"
    "p{orphans:3;widows:3}}\n";

static void element(struct buf *out, const char *open, const char *text, const char *close)
{
  buf_add(out, open);
  drawing_escape(out, text);
  buf_addf(out, "%s\n", close);
}

static const char *list_open(enum block_kind kind)
{
  switch (kind) {
  case BLOCK_BULLET: return "<ul>\n";
  case BLOCK_STEP: return "<ol>\n";
  case BLOCK_TICK: return "<ul class=\"ticks\">\n";
  default: return "";
  }
}

static const char *list_close(enum block_kind kind)
{
  return kind == BLOCK_STEP ? "</ol>\n" : kind == BLOCK_BULLET || kind == BLOCK_TICK ? "</ul>\n" : "";
}

static void facts(struct buf *out, const struct doc_table *t)
{
  buf_add(out, "<dl>\n");
  for (size_t r = 0; r < t->rows; r++) {
    element(out, "<dt>", t->cells[2 * r], "</dt>");
    element(out, "<dd>", t->cells[2 * r + 1], "</dd>");
  }
  buf_add(out, "</dl>\n");
}

static void table(struct buf *out, const struct doc_table *t)
{
  int all = 0;

  element(out, "<table>\n<caption>", t->name, "</caption>\n<colgroup>");
  for (size_t i = 0; i < t->columns; i++) all += t->shares[i];
  for (size_t i = 0; i < t->columns; i++)
    buf_addf(out, "<col style=\"width:%d%%\">", 100 * t->shares[i] / all);
  buf_add(out, "</colgroup>\n<thead><tr>\n");
  for (size_t i = 0; i < t->columns; i++) {
    const char *what = *t->heads[i] ? t->heads[i] : "No.";

    element(out, t->right[i] ? "<th scope=\"col\" class=\"r\">" : "<th scope=\"col\">", what, "</th>");
  }
  buf_add(out, "</tr></thead>\n<tbody>\n");
  for (size_t r = 0; r < t->rows; r++) {
    buf_add(out, "<tr>");
    for (size_t i = 0; i < t->columns; i++) {
      const char *text = t->cells[r * t->columns + i];

      element(out, t->right[i] ? "<td class=\"r\">" : "<td>", text ? text : "", "</td>");
    }
    buf_add(out, "</tr>\n");
  }
  buf_add(out, "</tbody>\n</table>\n");
}

/* The rest of an item: what it is about, then its text. */
static void labelled(struct buf *out, const struct block *b)
{
  if (*b->label) element(out, "<strong>", b->label, ":</strong>");
  element(out, "", b->text, "</li>");
}

static void block(struct buf *out, const struct block *b)
{
  static const char *const open[] = {"", "<h1>", "<h2>", "<h3>"}, *const close[] = {"", "</h1>", "</h2>",
                                                                                    "</h3>"};

  switch (b->kind) {
  case BLOCK_HEADING: element(out, open[b->level], b->text, close[b->level]); break;
  case BLOCK_TEXT: element(out, "<p>", b->text, "</p>"); break;
  case BLOCK_SMALL: element(out, "<p class=\"small\">", b->text, "</p>"); break;
  case BLOCK_QUOTE: element(out, "<blockquote>", b->text, "</blockquote>"); break;
  case BLOCK_BULLET:
  case BLOCK_STEP:
    buf_add(out, "<li>");
    labelled(out, b);
    break;
  case BLOCK_TICK:
    buf_addf(out, "<li><span role=\"img\" aria-label=\"%s\">%s</span>", b->level ? "done" : "to do",
             b->level ? "x" : "");
    labelled(out, b);
    break;
  case BLOCK_CAUTION:
    element(out, "<p class=\"caution\"><strong>Caution.</strong> ", b->text, "");
    element(out, "<span>[", b->label, "]</span></p>");
    break;
  case BLOCK_VERDICT:
    element(out, "<div class=\"verdict\"><strong>", b->label, "</strong>");
    if (*b->text) element(out, "<p>", b->text, "</p>");
    buf_add(out, "</div>\n");
    break;
  case BLOCK_FACTS: facts(out, b->table); break;
  case BLOCK_TABLE: table(out, b->table); break;
  case BLOCK_FIGURE:
    element(out, "<figure>\n<figcaption>", b->text, "</figcaption>");
    drawing_svg(b->drawing, out);
    buf_add(out, "</figure>\n");
    break;
  }
}

void card_html(const struct doc *d, struct buf *out)
{
  enum block_kind before = BLOCK_HEADING;

  buf_add(out, "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n"
               "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
               "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
               "'unsafe-inline'\">\n");
  element(out, "<title>", d->items[0].text, "</title>");
  buf_addf(out, "<style>\n%s</style>\n</head>\n<body>\n<main>\n", style);
  for (size_t i = 0; i < d->count; i++) {
    enum block_kind kind = d->items[i].kind;

    if (i == 0 || kind != before) {
      if (i) buf_add(out, list_close(before));
      buf_add(out, list_open(kind));
    }
    block(out, &d->items[i]);
    before = kind;
  }
  buf_addf(out, "%s</main>\n</body>\n</html>\n", list_close(before));
}
