/* card.c - what the card is told; see card.h. */
#include "report/card.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "json/json.h"
#include "report/card_doc.h"

enum { SHORT_TEXT = 60 };

/* A code point that would move the text about on the screen or hide it. */
static bool is_odd(unsigned long c)
{
  if (c == '\n') return false;
  return c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0x200E && c <= 0x200F) ||
         (c >= 0x2028 && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0xFEFF;
}

static char *plain(struct card *card, const char *text)
{
  struct buf b = {0};
  char *copy;

  for (size_t len = strlen(text), good; len > 0;) {
    size_t step = 1;
    unsigned long c;

    good = text_bad_byte(text, len < 4 ? len : 4);
    if (good == 0) c = 0; /* a bad byte */
    else c = doc_code_point(text, &step);
    if (c == '\t') buf_add(&b, " ");
    else if (c == '\r') step = 1;
    else if (is_odd(c)) buf_add(&b, "?");
    else buf_addn(&b, text, step);
    text += step;
    len -= step;
  }
  copy = arena_text(&card->arena, buf_text(&b), b.len);
  buf_free(&b);
  return copy;
}

/* A date or a name, which must fit into a column: cut where it is longer than either. */
static char *short_plain(struct card *card, const char *text)
{
  char *copy = plain(card, text ? text : "");
  size_t letters = 0, bytes = 0, step;

  for (; copy[bytes] && letters < SHORT_TEXT; letters++) {
    doc_code_point(copy + bytes, &step);
    bytes += step;
  }
  copy[bytes] = '\0';
  for (char *p = copy; *p; p++)
    if (*p == '\n') *p = ' ';
  return copy;
}

void card_set(struct card *card, enum card_text which, const char *text)
{
  card->texts[which] = plain(card, text ? text : "");
}

void card_set_proof(struct card *card, enum card_proof proof) { card->proof = proof; }

void card_set_ending(struct card *card, enum card_ending ending) { card->ending = ending; }

void card_add_repair(struct card *card, int fault, double minutes, const char *const *parts,
                     size_t part_count, const char *when, const char *who)
{
  struct card_repair r = {.fault = fault, .minutes = minutes};
  size_t at = 0;

  r.parts.items = arena_array(&card->arena, part_count + 1, sizeof *r.parts.items);
  for (size_t i = 0; i < part_count; i++) r.parts.items[r.parts.count++] = plain(card, parts[i]);
  r.when = short_plain(card, when);
  r.who = short_plain(card, who);
  while (at < card->repair_count && card->repairs[at].fault != fault) at++;
  if (at == card->repair_count) {
    mem_grow((void **)&card->repairs, &card->repair_room, at + 1, sizeof *card->repairs);
    card->repair_count++;
  }
  card->repairs[at] = r;
}

void card_add_note(struct card *card, const char *text, const char *when, const char *who)
{
  mem_grow((void **)&card->notes, &card->note_room, card->note_count + 1, sizeof *card->notes);
  card->notes[card->note_count++] =
      (struct card_note){plain(card, text), short_plain(card, when), short_plain(card, who)};
}

void card_add_entry(struct card *card, int check, const char *when, const char *who)
{
  mem_grow((void **)&card->entries, &card->entry_room, card->entry_count + 1, sizeof *card->entries);
  card->entries[card->entry_count++] =
      (struct card_entry){check, short_plain(card, when), short_plain(card, who)};
}

void card_add_service(struct card *card, const char *item, enum card_service_state state, const char *text,
                      const char *when, const char *who)
{
  struct card_service s = {plain(card, item), state, plain(card, text), short_plain(card, when),
                           short_plain(card, who)};
  size_t at = 0;

  while (at < card->service_count && strcmp(card->services[at].item, item) != 0) at++;
  if (at == card->service_count) {
    mem_grow((void **)&card->services, &card->service_room, at + 1, sizeof *card->services);
    card->service_count++;
  }
  card->services[at] = s;
}

void card_drop_service(struct card *card, const char *item)
{
  for (size_t i = 0; i < card->service_count; i++)
    if (strcmp(card->services[i].item, item) == 0) {
      memmove(&card->services[i], &card->services[i + 1],
              (card->service_count - i - 1) * sizeof *card->services);
      card->service_count--;
      return;
    }
}

void card_add_line(struct card *card, const char *when, const char *who, const char *what, const char *text)
{
  mem_grow((void **)&card->lines, &card->line_room, card->line_count + 1, sizeof *card->lines);
  card->lines[card->line_count++] = (struct card_line){short_plain(card, when), short_plain(card, who),
                                                       short_plain(card, what), plain(card, text)};
}

void card_add_part(struct card *card, const char *text)
{
  mem_grow((void **)&card->parts.items, &card->part_room, card->parts.count + 1, sizeof *card->parts.items);
  card->parts.items[card->parts.count++] = plain(card, text);
}

void card_set_minutes(struct card *card, double minutes) { card->minutes = minutes; }

void card_from_case(struct card *card, const struct knowledge *k, const struct bench_case *c,
                    struct assessment *a)
{
  *card = (struct card){.k = k, .c = c, .a = a, .minutes = -1};
  for (int i = 0; i < CARD_TEXT_COUNT; i++) card->texts[i] = "";
  if (c->machine_class >= 0) card_set(card, CARD_MACHINE, k->classes[c->machine_class].name);
  for (size_t f = 0; f < k->fault_count; f++)
    if (c->mended[f]) card_add_repair(card, (int)f, -1, NULL, 0, NULL, NULL);
}

void card_free(struct card *card)
{
  free(card->repairs);
  free(card->notes);
  free(card->entries);
  free(card->services);
  free(card->lines);
  free(card->parts.items);
  arena_free(&card->arena);
  *card = (struct card){0};
}

int card_write(struct card *card, enum card_reader reader, enum card_format format, struct buf *out,
               struct err *e)
{
  struct doc doc = {.arena = &card->arena};
  int status = 0;

  if (format == CARD_JSON) {
    struct json *j = card_json(card, reader);
    char *text = json_print(j);

    buf_add(out, text);
    free(text);
    json_free(j);
    return 0;
  }
  if (reader == CARD_OWNER) card_owner(card, &doc);
  else card_bench(card, &doc);
  switch (format) {
  case CARD_HTML: card_html(&doc, out); break;
  case CARD_MARKDOWN: card_markdown(&doc, out); break;
  case CARD_TEXT: card_plain(&doc, out); break;
  case CARD_PDF: status = card_pdf(&doc, out, e); break;
  case CARD_JSON: break;
  }
  doc_free(&doc);
  return status;
}

bool card_format_by_name(const char *name, enum card_format *out)
{
  static const char *const names[] = {"html", "md", "text", "json", "pdf"};

  for (size_t i = 0; i < sizeof names / sizeof names[0]; i++)
    if (strcmp(names[i], name) == 0) {
      *out = (enum card_format)i;
      return true;
    }
  return false;
}

bool card_reader_by_name(const char *name, enum card_reader *out)
{
  if (strcmp(name, "owner") != 0 && strcmp(name, "bench") != 0) return false;
  *out = *name == 'o' ? CARD_OWNER : CARD_BENCH;
  return true;
}
