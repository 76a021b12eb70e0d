/* card_doc.c - see card_doc.h. */
#include "report/card_doc.h"

#include <stdlib.h>
#include <string.h>

void doc_free(struct doc *d)
{
  for (size_t i = 0; i < d->count; i++) {
    if (d->items[i].table) free(d->items[i].table->cells);
    if (d->items[i].drawing) drawing_free(d->items[i].drawing);
  }
  free(d->items);
  *d = (struct doc){0};
}

static const char *format_args(struct doc *d, const char *format, va_list args)
{
  struct buf b = {0};
  const char *text;

  buf_addv(&b, format, args);
  text = arena_text(d->arena, buf_text(&b), b.len);
  buf_free(&b);
  return text;
}

const char *doc_format(struct doc *d, const char *format, ...)
{
  const char *text;
  va_list args;

  va_start(args, format);
  text = format_args(d, format, args);
  va_end(args);
  return text;
}

static struct block *add(struct doc *d, struct block b)
{
  mem_grow((void **)&d->items, &d->room, d->count + 1, sizeof *d->items);
  d->items[d->count] = b;
  return &d->items[d->count++];
}

struct block *doc_add(struct doc *d, enum block_kind kind, const char *format, ...)
{
  struct block b = {.kind = kind, .label = ""};
  va_list args;

  va_start(args, format);
  b.text = format_args(d, format, args);
  va_end(args);
  return add(d, b);
}

void doc_heading(struct doc *d, int level, const char *text)
{
  doc_add(d, BLOCK_HEADING, "%s", text)->level = level;
}

void doc_caution(struct doc *d, const struct knowledge *k, int caution)
{
  doc_add(d, BLOCK_CAUTION, "%s", k->cautions[caution].text)->label = k->cautions[caution].defer_to;
}

struct doc_table *doc_table(struct doc *d, enum block_kind kind, const char *name, size_t columns)
{
  struct doc_table *t = arena_new(d->arena, sizeof *t);

  t->name = name;
  t->columns = columns;
  add(d, (struct block){.kind = kind, .label = "", .text = "", .table = t});
  return t;
}

void doc_cell(struct doc *d, struct doc_table *t, const char *text)
{
  size_t used = 0;

  while (used < t->rows * t->columns && t->cells[used]) used++;
  if (used == t->rows * t->columns) {
    mem_grow((void **)&t->cells, &t->room, used + t->columns, sizeof *t->cells);
    t->rows++;
    for (size_t i = 0; i < t->columns; i++) t->cells[used + i] = NULL;
  }
  t->cells[used] = doc_format(d, "%s", text ? text : "");
}

void doc_fact(struct doc *d, struct doc_table *t, const char *name, const char *text)
{
  if (!*text) return;
  doc_cell(d, t, name);
  doc_cell(d, t, text);
}

const char *doc_capital(struct doc *d, const char *text)
{
  char *copy = arena_text(d->arena, text, strlen(text));

  if (*copy >= 'a' && *copy <= 'z') *copy = (char)(*copy - 'a' + 'A');
  return copy;
}

unsigned long doc_code_point(const char *text, size_t *bytes)
{
  const unsigned char *p = (const unsigned char *)text;
  size_t n = *p < 0x80 ? 1 : *p < 0xE0 ? 2 : *p < 0xF0 ? 3 : 4;
  unsigned long c = n == 1 ? *p : *p & (0xFFu >> (n + 1));

  for (size_t i = 1; i < n; i++) c = c << 6 | (p[i] & 0x3F);
  *bytes = n;
  return c;
}

void doc_break_words(struct buf *out, const char *text, size_t most)
{
  for (size_t run = 0, bytes; *text; text += bytes) {
    doc_code_point(text, &bytes);
    run = *text == ' ' || *text == '\n' ? 0 : run + 1;
    if (run > most) {
      buf_add(out, " ");
      run = 1;
    }
    buf_addn(out, text, bytes);
  }
}
