/* card_text.c - the card as plain text and as Markdown. */
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "report/card_doc.h"

/* ---- plain text ----------------------------------------------------------------------- */

static void wrapped(struct buf *out, const char *text, int width, const char *first, const char *rest)
{
  struct buf b = {0}, lines = {0};

  doc_break_words(&b, text, (size_t)width - text_columns(rest));
  text_wrap(&lines, buf_text(&b), width, first, rest);
  buf_addf(out, "%s\n", buf_text(&lines));
  buf_free(&lines);
  buf_free(&b);
}

static void underline(struct buf *out, const char *text, char with)
{
  size_t count = text_columns(text);

  wrapped(out, text, DOC_WIDTH, "", "");
  for (size_t i = 0; i < count && i < DOC_WIDTH; i++) buf_addn(out, &with, 1);
  buf_add(out, "\n");
}

/* One row: each cell wrapped into its column, then line by line. */
static void row(struct buf *out, const struct doc_table *t, const char *const *cells)
{
  struct buf wraps[TABLE_MOST_COLUMNS] = {{0}};
  const char *at[TABLE_MOST_COLUMNS];
  bool more = true;

  for (size_t i = 0; i < t->columns; i++) {
    wrapped(&wraps[i], cells[i] ? cells[i] : "", t->shares[i], "", "");
    at[i] = buf_text(&wraps[i]);
  }
  while (more) {
    struct buf line = {0};

    more = false;
    for (size_t i = 0; i < t->columns; i++) {
      size_t len = strcspn(at[i], "\n");
      char *piece = mem_new(len + 1);
      size_t pad;

      memcpy(piece, at[i], len);
      pad = text_columns(piece) < (size_t)t->shares[i] ? (size_t)t->shares[i] - text_columns(piece) : 0;
      buf_addf(&line, "%s%*s%s%*s", i ? " " : "", t->right[i] ? (int)pad : 0, "", piece,
               t->right[i] ? 0 : (int)pad, "");
      at[i] += len;
      at[i] += *at[i] == '\n';
      more = more || *at[i];
      free(piece);
    }
    while (line.len && line.text[line.len - 1] == ' ') line.text[--line.len] = '\0';
    buf_addf(out, "%s\n", buf_text(&line));
    buf_free(&line);
  }
  for (size_t i = 0; i < t->columns; i++) buf_free(&wraps[i]);
}

static void plain_table(struct buf *out, const struct doc_table *t)
{
  row(out, t, t->heads);
  for (size_t i = 0; i < t->columns; i++) {
    if (i) buf_add(out, " ");
    for (int j = 0; j < t->shares[i]; j++) buf_add(out, "-");
  }
  buf_add(out, "\n");
  for (size_t r = 0; r < t->rows; r++) row(out, t, t->cells + r * t->columns);
}

static void plain_facts(struct buf *out, const struct doc_table *t)
{
  for (size_t r = 0; r < t->rows; r++) {
    struct buf first = {0};

    buf_addf(&first, "%-12s", t->cells[2 * r]);
    wrapped(out, t->cells[2 * r + 1], DOC_WIDTH, buf_text(&first), "            ");
    buf_free(&first);
  }
}

static bool is_list(enum block_kind kind)
{
  return kind == BLOCK_BULLET || kind == BLOCK_STEP || kind == BLOCK_TICK || kind == BLOCK_CAUTION;
}

static void plain_figure(struct buf *out, const struct block *b)
{
  struct buf text = {0};

  buf_addf(&text, "Picture: %s", b->drawing->desc);
  wrapped(out, buf_text(&text), DOC_WIDTH, "  ", "  ");
  buf_free(&text);
}

/* What an item is about, then its text. */
static void labelled(struct buf *out, const struct block *b)
{
  buf_addf(out, "%s%s%s", b->label, *b->label ? ": " : "", b->text);
}

static void plain_block(struct buf *out, const struct block *b, int number)
{
  struct buf text = {0}, first = {0};

  switch (b->kind) {
  case BLOCK_HEADING:
    if (b->level < 3) underline(out, b->text, b->level == 1 ? '=' : '-');
    else wrapped(out, b->text, DOC_WIDTH, "* ", "  ");
    break;
  case BLOCK_TEXT:
  case BLOCK_SMALL: wrapped(out, b->text, DOC_WIDTH, "", ""); break;
  case BLOCK_QUOTE: wrapped(out, b->text, DOC_WIDTH, "  | ", "  | "); break;
  case BLOCK_BULLET:
    labelled(&text, b);
    wrapped(out, buf_text(&text), DOC_WIDTH, "- ", "  ");
    break;
  case BLOCK_STEP:
    labelled(&text, b);
    buf_addf(&first, "%2d. ", number);
    wrapped(out, buf_text(&text), DOC_WIDTH, buf_text(&first), "    ");
    break;
  case BLOCK_TICK:
    labelled(&text, b);
    wrapped(out, buf_text(&text), DOC_WIDTH, b->level ? "[x] " : "[ ] ", "    ");
    break;
  case BLOCK_CAUTION:
    buf_addf(&text, "%s [%s]", b->text, b->label);
    wrapped(out, buf_text(&text), DOC_WIDTH, "CAUTION: ", "         ");
    break;
  case BLOCK_VERDICT:
    buf_addf(&first, ">>> %s", b->label);
    wrapped(out, buf_text(&first), DOC_WIDTH, "", "    ");
    if (*b->text) wrapped(out, b->text, DOC_WIDTH, "    ", "    ");
    break;
  case BLOCK_FACTS: plain_facts(out, b->table); break;
  case BLOCK_TABLE: plain_table(out, b->table); break;
  case BLOCK_FIGURE: plain_figure(out, b); break;
  }
  buf_free(&text);
  buf_free(&first);
}

/* Calls block for each, an empty line between blocks that do not make one list. */
static void each(const struct doc *d, struct buf *out, void (*block)(struct buf *, const struct block *, int))
{
  int number = 0;

  for (size_t i = 0; i < d->count; i++) {
    const struct block *b = &d->items[i];
    bool together = i > 0 && is_list(b->kind) && d->items[i - 1].kind == b->kind && b->kind != BLOCK_CAUTION;

    number = b->kind == BLOCK_STEP ? number + 1 : 0;
    if (i > 0 && !together) buf_add(out, "\n");
    block(out, b, number);
  }
}

void card_plain(const struct doc *d, struct buf *out) { each(d, out, plain_block); }

/* ---- Markdown ------------------------------------------------------------------------- */

/* Text with whatever Markdown or HTML would take for a mark escaped. A character that means
 * something only at the beginning of a line counts at the beginning of every word, since a
 * line may be broken anywhere. */
static void escape(struct buf *out, const char *text)
{
  bool begin = true;

  for (const char *p = text; *p; p++) {
    size_t digits = strspn(p, "0123456789");

    if (begin && digits && (p[digits] == '.' || p[digits] == ')') &&
        (!p[digits + 1] || p[digits + 1] == ' ')) {
      buf_addn(out, p, digits);
      buf_addf(out, "\\%c", p[digits]);
      p += digits;
    } else if (*p == '&') buf_add(out, "&amp;");
    else if (*p == '<') buf_add(out, "&lt;");
    else if (*p == '>') buf_add(out, "&gt;");
    else if (strchr("\\`*_[]|~#!", *p) || (begin && strchr("+-=:", *p))) buf_addf(out, "\\%c", *p);
    else buf_addn(out, p, 1);
    begin = *p == ' ' || *p == '\n';
  }
}

static void marked(struct buf *out, const char *text, const char *first, const char *rest)
{
  struct buf b = {0}, broken = {0};

  /* broken before it is escaped, and shorter, so that no escape is torn apart */
  doc_break_words(&broken, text, 30);
  escape(&b, buf_text(&broken));
  text_wrap(out, buf_text(&b), DOC_WIDTH, first, rest);
  buf_add(out, "\n");
  buf_free(&b);
  buf_free(&broken);
}

static void cell(struct buf *out, const char *text)
{
  struct buf b = {0};

  escape(&b, text);
  for (size_t i = 0; i < b.len; i++)
    if (b.text[i] == '\n') b.text[i] = ' ';
  buf_addf(out, " %s |", buf_text(&b));
  buf_free(&b);
}

static void marked_table(struct buf *out, const struct doc_table *t, bool facts)
{
  buf_add(out, "|");
  for (size_t i = 0; i < t->columns; i++) cell(out, facts ? "" : t->heads[i]);
  buf_add(out, "\n|");
  for (size_t i = 0; i < t->columns; i++) buf_add(out, t->right[i] ? "---:|" : "---|");
  buf_add(out, "\n");
  for (size_t r = 0; r < t->rows; r++) {
    buf_add(out, "|");
    for (size_t i = 0; i < t->columns; i++) {
      const char *text = t->cells[r * t->columns + i];

      cell(out, text ? text : "");
    }
    buf_add(out, "\n");
  }
}

static void marked_block(struct buf *out, const struct block *b, int number)
{
  struct buf text = {0}, first = {0};

  switch (b->kind) {
  case BLOCK_HEADING: marked(out, b->text, b->level == 1 ? "# " : b->level == 2 ? "## " : "### ", ""); break;
  case BLOCK_TEXT:
  case BLOCK_SMALL: marked(out, b->text, "", ""); break;
  case BLOCK_QUOTE: marked(out, b->text, "> ", "> "); break;
  case BLOCK_BULLET:
    labelled(&text, b);
    marked(out, buf_text(&text), "- ", "  ");
    break;
  case BLOCK_STEP:
    labelled(&text, b);
    buf_addf(&first, "%d. ", number);
    marked(out, buf_text(&text), buf_text(&first), "   ");
    break;
  case BLOCK_TICK:
    labelled(&text, b);
    marked(out, buf_text(&text), b->level ? "- [x] " : "- [ ] ", "      ");
    break;
  case BLOCK_CAUTION:
    buf_addf(&text, "%s (%s)", b->text, b->label);
    marked(out, buf_text(&text), "> **Caution:** ", "> ");
    break;
  case BLOCK_VERDICT:
    marked(out, b->label, "**Outcome:** ", "");
    if (*b->text) {
      buf_add(out, "\n");
      marked(out, b->text, "", "");
    }
    break;
  case BLOCK_FACTS: marked_table(out, b->table, true); break;
  case BLOCK_TABLE: marked_table(out, b->table, false); break;
  case BLOCK_FIGURE:
    buf_addf(&text, "Picture: %s", b->drawing->desc);
    marked(out, buf_text(&text), "", "");
    break;
  }
  buf_free(&first);
  buf_free(&text);
}

void card_markdown(const struct doc *d, struct buf *out) { each(d, out, marked_block); }
