/* spec_show.c - see spec_show.h. */
#include "cli/spec_show.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "base/text.h"
#include "cli/terminal.h"
#include "units/parse.h"

enum { NAME_WIDTH = 30 };

static const char *class_name(const struct knowledge *k, const struct spec_card *card)
{
  int at = *card->class_id ? knowledge_find(k, ENTRY_CLASS, card->class_id) : -1;

  return at >= 0 ? k->classes[at].name : "";
}

static size_t filled(const struct spec_card *card)
{
  size_t n = 0;

  for (size_t i = 0; i < card->figure_count; i++) n += !card->figures[i].blank;
  return n;
}

/* The unit in which a figure is shown. */
static const struct unit *shown_in(const struct spec_figure *f, enum unit_system system)
{
  const char *name = system == UNITS_METRIC ? f->kind->metric : f->kind->us;

  if (system == UNITS_AS_WRITTEN || !name) return f->unit;
  return unit_in_system(f->unit, unit_find(name, strlen(name)), system);
}

/* A value as it was written, or turned into a unit. */
static void put_value(struct buf *out, const char *text, double si, const struct spec_figure *f,
                      const struct unit *u)
{
  char said[64];

  if (!u || u == f->unit) {
    buf_add(out, text);
    return;
  }
  unit_round(si, u, said, sizeof said);
  buf_add(out, said);
}

/* "0.030 in (0.028 in to 0.032 in)" or "0.25 mm to 0.36 mm". */
static void put_figure(struct buf *out, const struct spec_figure *f, enum unit_system system)
{
  const struct unit *u = shown_in(f, system);
  bool range = *f->low_text != '\0', value = *f->text != '\0';

  if (value) put_value(out, f->text, f->value, f, u);
  if (value && range) buf_add(out, " (");
  if (range) {
    put_value(out, f->low_text, f->low, f, u);
    buf_add(out, " to ");
    put_value(out, f->high_text, f->high, f, u);
  }
  if (value && range) buf_add(out, ")");
}

static void put_label(struct buf *out, const struct spec_figure *f)
{
  buf_add(out, f->kind->label);
  if (*f->of) buf_addf(out, ", %s", f->of);
}

static void show_figure(struct buf *out, const struct spec_figure *f, enum unit_system system)
{
  struct buf label = {0}, text = {0};
  char first[NAME_WIDTH * 4 + 4], rest[NAME_WIDTH + 6];

  put_label(&label, f);
  put_figure(&text, f, system);
  buf_addf(&text, "  [%s]", f->from);
  if (*f->note) buf_addf(&text, " %s", f->note);
  snprintf(first, sizeof first, "  %-*.100s ", NAME_WIDTH, buf_text(&label));
  snprintf(rest, sizeof rest, "  %*s   ", NAME_WIDTH, "");
  text_wrap(out, buf_text(&text), terminal_width(), first, rest);
  buf_add(out, "\n");
  buf_free(&label);
  buf_free(&text);
}

void spec_card_text(struct buf *out, const struct knowledge *k, const struct spec_card *card,
                    enum unit_system system)
{
  size_t blank = card->figure_count - filled(card);

  buf_addf(out, "%s (%s)%s%s\n", card->name, card->id, *card->class_id ? ", " : "", class_name(k, card));
  for (size_t i = 0; i < card->also_count; i++) buf_addf(out, "%s%s", i ? ", " : "  also: ", card->also[i]);
  if (card->also_count) buf_add(out, "\n");
  if (*card->note) {
    text_wrap(out, card->note, terminal_width(), "  ", "  ");
    buf_add(out, "\n");
  }
  for (size_t i = 0; i < card->figure_count; i++)
    if (!card->figures[i].blank) show_figure(out, &card->figures[i], system);
  if (blank) buf_addf(out, "  %zu still to fill in, in %s\n", blank, card->path);
}

void spec_list_text(struct buf *out, const struct knowledge *k, const struct spec_entries *list)
{
  if (list->count == 0) buf_add(out, "There is no spec card yet. \"pullcord spec new NAME\" begins one.\n");
  for (size_t i = 0; i < list->count; i++) {
    const struct spec_entry *one = &list->items[i];
    char line[1200];

    if (one->good) {
      buf_addf(out, "%-28s %s%s%s, %zu figures\n", one->card.id, one->card.name,
               *one->card.class_id ? ", " : "", class_name(k, &one->card), filled(&one->card));
    } else {
      err_format(&one->why, line, sizeof line);
      buf_addf(out, "%-28s cannot be used: %s\n", one->card.id, line);
    }
  }
}

/* ---- JSON ----------------------------------------------------------------------------------- */

static void put_number(struct json *o, const char *name, double si, const struct unit *u)
{
  if (!isnan(si) && u) json_put_number(o, name, (si - u->offset) / u->factor);
}

static struct json *figure_json(const struct spec_figure *f, enum unit_system system)
{
  const struct unit *u = shown_in(f, system);
  struct json *o = json_object();
  struct buf text = {0};
  double low, high;
  bool spread;

  json_put_text(o, "what", f->kind->id);
  json_put_text(o, "label", f->kind->label);
  if (*f->of) json_put_text(o, "of", f->of);
  put_figure(&text, f, system);
  json_put_text(o, "text", buf_text(&text));
  if (f->kind->quantity != Q_NONE) {
    put_number(o, "value", f->value, u);
    put_number(o, "low", f->low, u);
    put_number(o, "high", f->high, u);
    json_put_text(o, "unit", u->name);
  }
  json_put_text(o, "from", f->from);
  if (*f->note) json_put_text(o, "note", f->note);
  if (spec_limits(f, &low, &high, &spread)) {
    struct json *judges = json_object();

    json_put_text(judges, "check", f->kind->check);
    put_number(judges, "low", low, u);
    put_number(judges, "high", high, u);
    json_put_bool(judges, "usual_spread", spread);
    json_put(o, "judges", judges);
  }
  buf_free(&text);
  return o;
}

struct json *spec_card_json(const struct spec_card *card, enum unit_system system)
{
  struct json *o = json_object(), *also = json_list(), *figures = json_list(), *blank = json_list();

  json_put_text(o, "pullcord", SPEC_VERSION);
  json_put_text(o, "card", card->id);
  json_put_text(o, "file", card->path);
  json_put_text(o, "name", card->name);
  for (size_t i = 0; i < card->also_count; i++) json_push_text(also, card->also[i]);
  json_put(o, "also", also);
  if (*card->class_id) json_put_text(o, "class", card->class_id);
  if (*card->note) json_put_text(o, "note", card->note);
  for (size_t i = 0; i < card->figure_count; i++)
    if (card->figures[i].blank) json_push_text(blank, card->figures[i].kind->id);
    else json_push(figures, figure_json(&card->figures[i], system));
  json_put(o, "figures", figures);
  json_put(o, "blank", blank);
  return o;
}

struct json *spec_list_json(const struct spec_entries *list)
{
  struct json *o = json_object(), *cards = json_list();

  json_put_text(o, "pullcord", SPEC_VERSION);
  for (size_t i = 0; i < list->count; i++) {
    const struct spec_entry *one = &list->items[i];
    struct json *c = json_object();
    char line[1200];

    json_put_text(c, "card", one->card.id);
    json_put_text(c, "file", one->card.path);
    if (one->good) {
      json_put_text(c, "name", one->card.name);
      if (*one->card.class_id) json_put_text(c, "class", one->card.class_id);
      json_put_number(c, "figures", (double)filled(&one->card));
    } else {
      err_format(&one->why, line, sizeof line);
      json_put_text(c, "problem", line);
    }
    json_push(cards, c);
  }
  json_put(o, "cards", cards);
  return o;
}
