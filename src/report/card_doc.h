/* card_doc.h - the job card as a list of blocks, which every format draws in its own way. */
#ifndef REPORT_CARD_DOC_H
#define REPORT_CARD_DOC_H

#include "json/json.h"
#include "report/card.h"
#include "report/drawing.h"

enum block_kind {
  BLOCK_HEADING, /* level 1 (once, first) to 3, none left out */
  BLOCK_TEXT,
  BLOCK_QUOTE,   /* in somebody's own words */
  /* label of these three: what it is about, or "" */
  BLOCK_BULLET, BLOCK_STEP, /* steps are numbered from 1 in each run of them */
  BLOCK_TICK,    /* a box to tick; ticked when level is not 0 */
  BLOCK_CAUTION, /* label: whose word goes before ours */
  BLOCK_VERDICT, /* what matters most; label: the short of it */
  BLOCK_FACTS,   /* table of two columns: name, what it is */
  BLOCK_TABLE,
  BLOCK_FIGURE,  /* text: what it shows, for those who do not see it */
  BLOCK_SMALL    /* in small letters */
};

enum { TABLE_MOST_COLUMNS = 6, DOC_WIDTH = 78 };

/* shares: widths of the columns in letters, one space between, at most DOC_WIDTH in all. */
struct doc_table {
  const char *name; /* for those who hear it */
  size_t columns, rows, room;
  const char *heads[TABLE_MOST_COLUMNS];
  int shares[TABLE_MOST_COLUMNS];
  bool right[TABLE_MOST_COLUMNS];
  const char **cells; /* row by row */
};

struct block {
  enum block_kind kind;
  int level;
  const char *label, *text;
  struct doc_table *table;
  struct drawing *drawing;
};

/* All but the lists of blocks and cells lies in the arena. */
struct doc {
  struct arena *arena;
  struct block *items;
  size_t count, room;
};

void doc_free(struct doc *d);

/* A text of the doc's own. */
const char *doc_format(struct doc *d, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* Adds a block of one text; the text is copied. */
struct block *doc_add(struct doc *d, enum block_kind kind, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
void doc_heading(struct doc *d, int level, const char *text);
void doc_caution(struct doc *d, const struct knowledge *k, int caution);

/* A table without rows; heads and shares are set by the caller. */
struct doc_table *doc_table(struct doc *d, enum block_kind kind, const char *name, size_t columns);
/* The next cell, row by row; text NULL counts as "". */
void doc_cell(struct doc *d, struct doc_table *t, const char *text);
void doc_fact(struct doc *d, struct doc_table *t, const char *name, const char *text); /* "" is left out */

/* Adds text with its first letter made a capital (ASCII letters only). */
const char *doc_capital(struct doc *d, const char *text);

/* The code point at the beginning of valid UTF-8, and how many bytes it takes. */
unsigned long doc_code_point(const char *text, size_t *bytes);

/* Puts a space into words of more than `most` letters, so that they can be wrapped. */
void doc_break_words(struct buf *out, const char *text, size_t most);

/* What the two cards hold. */
void card_owner(struct card *card, struct doc *d);
void card_bench(struct card *card, struct doc *d);

/* Title, facts and outcome; the complaint: both cards begin with them. */
void card_head(struct card *card, struct doc *d, const char *title);
void card_told(struct card *card, struct doc *d);

/* The formats. */
void card_html(const struct doc *d, struct buf *out);
void card_markdown(const struct doc *d, struct buf *out);
void card_plain(const struct doc *d, struct buf *out);
int card_pdf(const struct doc *d, struct buf *out, struct err *e);
struct json *card_json(struct card *card, enum card_reader reader);

#endif
