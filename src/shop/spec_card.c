/* spec_card.c - see spec_card.h. */
#include "shop/spec_card.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/file.h"
#include "base/text.h"
#include "units/parse.h"

enum { MOST_FAULTS = 50, WORDS_LONGEST = 79 };

static const char *const sources[] = {"plate", "maker's sheet", "measured", NULL};

/* One reading: the text for lines, where faults go. */
struct reading {
  const struct knowledge *k;
  const char *path, *text;
  size_t len;
  struct spec_faults *faults;
};

static void keep_fault(struct spec_faults *f, const struct err *e)
{
  void *items = f->items;

  if (f->count == MOST_FAULTS) return;
  mem_grow(&items, &f->room, f->count + 1, sizeof *f->items);
  f->items = items;
  f->items[f->count++] = *e;
}

/* A fault at a path in the file; format takes two texts. Always false. */
static bool fault(struct reading *r, const char *where, const char *format, const char *a, const char *b)
{
  struct err e;

  err_set(&e, EX_DATAERR, r->path, json_line(r->text, r->len, where), format, a, b);
  keep_fault(r->faults, &e);
  return false;
}

/* "; did you mean "x"?" or "." */
static const char *or_near(const char *near, char *out, size_t size)
{
  if (near) snprintf(out, size, "; did you mean \"%s\"?", near);
  else snprintf(out, size, ".");
  return out;
}

/* Only these members may stand in an object; names ends with NULL. */
static bool want_members(struct reading *r, const struct json *object, const char *where, const char *what,
                         const char *const *names)
{
  bool good = true;
  size_t count = 0;

  while (names[count]) count++;
  for (const struct json *m = json_first(object); m; m = json_next(m)) {
    char near[100], path[200], said[160];
    size_t i = 0;

    while (i < count && strcmp(names[i], json_name(m)) != 0) i++;
    if (i < count) continue;
    snprintf(path, sizeof path, "%s%s%.60s", where, *where ? "/" : "", json_name(m));
    snprintf(said, sizeof said, "%s has no member \"%.60s\"", what, json_name(m));
    good = fault(r, path, "%s%s", said, or_near(text_nearest(json_name(m), names, count), near, sizeof near));
  }
  return good;
}

/* A member that is a text (or is not there: ""), cut to size. */
static bool read_text(struct reading *r, const struct json *object, const char *where, const char *name,
                      char *out, size_t size)
{
  const struct json *m = json_member(object, name);
  char path[200];

  *out = '\0';
  if (!m) return true;
  snprintf(path, sizeof path, "%s%s%s", where, *where ? "/" : "", name);
  if (json_kind(m) != JSON_TEXT)
    return fault(r, path, "\"%s\" must be a text, not %s.", name, json_kind_name(json_kind(m)));
  if (strlen(json_text(m)) >= size)
    return fault(r, path, "\"%s\" is too long. Put it in fewer words.%s", name, "");
  text_cut(out, size, json_text(m));
  return true;
}

/* ---- figures -------------------------------------------------------------------------------- */

/* "plug-gap" or "torque of head bolts". */
static void figure_name(const struct spec_figure *f, char *out, size_t size)
{
  snprintf(out, size, "%s%s%s", f->kind->id, *f->of ? " of " : "", f->of);
}

/* Can a figure of this kind be that? */
static bool within(struct reading *r, const char *path, const struct spec_kind *kind, const char *text,
                   double si)
{
  const struct unit *u = unit_find(kind->unit, strlen(kind->unit));
  double low = kind->low * u->factor + u->offset, high = kind->high * u->factor + u->offset;
  char from[40], to[40], said[160];

  if (si >= low * (1 - 1e-9) && si <= high * (1 + 1e-9)) return true;
  amount_format(low, u, from, sizeof from);
  amount_format(high, u, to, sizeof to);
  snprintf(said, sizeof said, "it lies between %s and %s", from, to);
  return fault(r, path, "%.60s cannot be right: %s. Look at the unit and the decimal point.", text, said);
}

/* One of value, low, high: as text into `text`, as number into *out; NAN when it is not there. */
static bool read_amount(struct reading *r, const struct json *figure, const char *where, const char *member,
                        struct spec_figure *f, char text[SPELL_ROOM], double *out)
{
  struct amount a;
  struct err e;
  char path[100];

  *out = (double)NAN;
  if (!read_text(r, figure, where, member, text, SPELL_ROOM)) return false;
  if (!*text || f->kind->quantity == Q_NONE) return true;
  snprintf(path, sizeof path, "%s/%s", where, member);
  if (amount_parse(text, strlen(text), f->kind->quantity,
                   strcmp(f->kind->unit, "1") ? NULL : unit_find("1", 1), &a, &e)) {
    return fault(r, path, "%s: %s", f->kind->id, e.text);
  }
  if (!f->unit) f->unit = a.unit;
  *out = a.si;
  return within(r, path, f->kind, text, a.si);
}

static bool read_from(struct reading *r, const char *where, const struct spec_figure *f)
{
  char path[100], near[100];

  snprintf(path, sizeof path, "%s/from", where);
  for (size_t i = 0; sources[i]; i++)
    if (strcmp(sources[i], f->from) == 0) return true;
  if (!*f->from)
    return fault(r, path, "%s does not say where it is from: \"from\" is plate, maker's sheet or measured.%s",
                 f->kind->id, "");
  return fault(r, path, "\"from\" is plate, maker's sheet or measured, not \"%.40s\"%s", f->from,
               or_near(text_nearest(f->from, sources, 3), near, sizeof near));
}

/* Do value, low and high go together? */
static bool fits_together(struct reading *r, const char *where, const struct spec_figure *f)
{
  if (f->kind->quantity == Q_NONE) {
    if (*f->low_text || *f->high_text)
      return fault(r, where, "%s is in words; it has no low and high.%s", f->kind->id, "");
    return true;
  }
  if (!*f->low_text != !*f->high_text)
    return fault(r, where, "%s has one end of its range only: give both \"low\" and \"high\".%s", f->kind->id,
                 "");
  if (f->low > f->high) return fault(r, where, "%s has \"low\" above \"high\".%s", f->kind->id, "");
  if (*f->text && *f->low_text && !(f->value >= f->low && f->value <= f->high))
    return fault(r, where, "%s has its \"value\" outside \"low\" and \"high\".%s", f->kind->id, "");
  return true;
}

static bool is_twice(struct reading *r, const char *where, const struct spec_card *card,
                     const struct spec_figure *f)
{
  char name[SPEC_NAME + 40], line[60];

  for (size_t i = 0; i < card->figure_count; i++)
    if (card->figures[i].kind == f->kind && strcmp(card->figures[i].of, f->of) == 0) {
      figure_name(f, name, sizeof name);
      snprintf(line, sizeof line, "line %d", card->figures[i].line);
      fault(r, where, "%s is given twice (the first is on %s). Keep the one that holds.", name, line);
      return true;
    }
  return false;
}

static bool read_what(struct reading *r, const struct json *j, const char *where, struct spec_figure *f)
{
  char what[SPEC_NAME], path[100], near[100];
  const char *nearest = NULL;

  snprintf(path, sizeof path, "%s/what", where);
  if (!read_text(r, j, where, "what", what, sizeof what)) return false;
  if (!*what)
    return fault(r, path, "a figure must say \"what\" it is%s%s", " (plug-gap, oil-capacity ...)", ".");
  f->kind = spec_kind_find(what, &nearest);
  if (f->kind) return true;
  return fault(r, path,
               "there is no figure \"%.60s\"%s A card made by \"pullcord spec new\" has all of them.", what,
               or_near(nearest, near, sizeof near));
}

static bool read_figure(struct reading *r, const struct json *j, const char *where,
                        const struct spec_card *card, struct spec_figure *f)
{
  static const char *const members[] = {"what", "of", "value", "low", "high", "from", "note", NULL};
  bool good;

  f->line = json_line(r->text, r->len, where);
  if (json_kind(j) != JSON_OBJECT)
    return fault(r, where, "a figure must be an object {\"what\": ...}, not %s.%s",
                 json_kind_name(json_kind(j)), "");
  good = want_members(r, j, where, "a figure", members);
  if (!read_what(r, j, where, f)) return false;
  good = read_text(r, j, where, "of", f->of, sizeof f->of) && good;
  good = read_text(r, j, where, "from", f->from, sizeof f->from) && good;
  good = read_text(r, j, where, "note", f->note, sizeof f->note) && good;
  good = read_amount(r, j, where, "value", f, f->text, &f->value) && good;
  good = read_amount(r, j, where, "low", f, f->low_text, &f->low) && good;
  good = read_amount(r, j, where, "high", f, f->high_text, &f->high) && good;
  if (!good) return false;
  f->blank = !*f->text && !*f->low_text && !*f->high_text;
  if (f->blank) return !is_twice(r, where, card, f);
  if (f->kind->many && !*f->of)
    return fault(r, where, "%s must say what \"of\": head bolts, plug, flywheel nut.%s", f->kind->id, "");
  if (!f->kind->many && *f->of) return fault(r, where, "%s takes no \"of\".%s", f->kind->id, "");
  return read_from(r, where, f) && fits_together(r, where, f) && !is_twice(r, where, card, f);
}

static bool read_figures(struct reading *r, const struct json *list, struct spec_card *card)
{
  size_t at = 0;
  bool good = true;

  if (!list) return fault(r, "", "the card has no list of \"figures\".%s%s", "", "");
  if (json_kind(list) != JSON_LIST)
    return fault(r, "figures", "\"figures\" must be a list, not %s.%s", json_kind_name(json_kind(list)), "");
  for (const struct json *j = json_first(list); j; j = json_next(j), at++) {
    struct spec_figure f = {0};
    void *items = card->figures;
    char where[40];

    snprintf(where, sizeof where, "figures/%zu", at);
    if (at == SPEC_FIGURES)
      return fault(r, where, "more than 100 figures are too many for one card.%s%s", "", "");
    if (!read_figure(r, j, where, card, &f)) {
      good = false;
      continue;
    }
    mem_grow(&items, &card->figure_room, card->figure_count + 1, sizeof *card->figures);
    card->figures = items;
    card->figures[card->figure_count++] = f;
  }
  return good;
}

/* ---- the card ------------------------------------------------------------------------------- */

static bool read_also(struct reading *r, const struct json *list, struct spec_card *card)
{
  if (!list) return true;
  if (json_kind(list) != JSON_LIST)
    return fault(r, "also", "\"also\" must be a list of names, not %s.%s", json_kind_name(json_kind(list)),
                 "");
  for (const struct json *j = json_first(list); j; j = json_next(j)) {
    if (json_kind(j) != JSON_TEXT || strlen(json_text(j)) >= SPEC_NAME || !*json_text(j))
      return fault(r, "also", "\"also\" holds short names as texts.%s%s", "", "");
    if (card->also_count == SPEC_ALSO)
      return fault(r, "also", "more than 12 other names are too many.%s%s", "", "");
    text_cut(card->also[card->also_count++], SPEC_NAME, json_text(j));
  }
  return true;
}

static bool read_class(struct reading *r, struct spec_card *card)
{
  const char **ids, *near;
  size_t count;
  char said[100];

  if (!*card->class_id || knowledge_find(r->k, ENTRY_CLASS, card->class_id) >= 0) return true;
  knowledge_ids(r->k, ENTRY_CLASS, &ids, &count);
  near = text_nearest(card->class_id, ids, count);
  free(ids);
  return fault(r, "class", "there is no machine class \"%s\"%s", card->class_id,
               or_near(near, said, sizeof said));
}

static bool read_object(struct reading *r, const struct json *j, struct spec_card *card)
{
  static const char *const members[] = {"pullcord", "name", "also", "class", "note", "figures", NULL};
  bool good;

  if (json_kind(j) != JSON_OBJECT)
    return fault(r, "", "a card must be an object {\"pullcord\": ...}, not %s.%s",
                 json_kind_name(json_kind(j)), "");
  if (strcmp(json_text(json_member(j, "pullcord")), SPEC_CARD_VERSION) != 0)
    return fault(r, "pullcord", "the version is missing or unknown: give \"pullcord\": \"%s\".%s",
                 SPEC_CARD_VERSION, "");
  good = want_members(r, j, "", "a card", members);
  good = read_text(r, j, "", "name", card->name, sizeof card->name) && good;
  good = read_text(r, j, "", "class", card->class_id, sizeof card->class_id) && good;
  good = read_text(r, j, "", "note", card->note, sizeof card->note) && good;
  if (!*card->name) good = fault(r, "name", "the card has no \"name\".%s%s", "", "");
  good = read_also(r, json_member(j, "also"), card) && good;
  good = read_class(r, card) && good;
  return read_figures(r, json_member(j, "figures"), card) && good;
}

static char *copy_text(const char *text)
{
  char *copy = mem_new(strlen(text) + 1);

  return strcpy(copy, text);
}

static void name_by_file(struct spec_card *card, const char *path)
{
  const char *slash = strrchr(path, '/'), *name = slash ? slash + 1 : path;
  size_t n = strlen(name);

  if (n > 5 && strcmp(name + n - 5, ".json") == 0) n -= 5;
  if (n >= sizeof card->id) n = sizeof card->id - 1;
  memcpy(card->id, name, n);
}

bool spec_read(const struct knowledge *k, const char *path, const char *text, size_t len,
               struct spec_card *out, struct spec_faults *faults)
{
  struct reading r = {k, path, text, len, faults};
  struct json *j = NULL;
  struct err e;
  bool good;

  *out = (struct spec_card){.path = copy_text(path)};
  name_by_file(out, path);
  if (json_read(path, text, len, &j, &e)) {
    keep_fault(faults, &e);
    return false;
  }
  good = read_object(&r, j, out);
  json_free(j);
  return good;
}

bool spec_load(const struct knowledge *k, const char *path, struct spec_card *out, struct spec_faults *faults)
{
  char *text;
  size_t len;
  struct err e;
  bool good;

  if (file_read(path, SPEC_MAX_BYTES, &text, &len, &e)) {
    *out = (struct spec_card){.path = copy_text(path)};
    name_by_file(out, path);
    keep_fault(faults, &e);
    return false;
  }
  good = spec_read(k, path, text, len, out, faults);
  free(text);
  return good;
}

void spec_free(struct spec_card *card)
{
  free(card->path);
  free(card->figures);
  *card = (struct spec_card){0};
}

void spec_faults_free(struct spec_faults *faults)
{
  free(faults->items);
  *faults = (struct spec_faults){0};
}

bool spec_limits(const struct spec_figure *f, double *low, double *high, bool *spread)
{
  if (f->blank || !f->kind->check) return false;
  *spread = !*f->low_text;
  *low = *spread ? f->value * (1 - f->kind->give) : f->low;
  *high = *spread ? f->value * (1 + f->kind->give) : f->high;
  return true;
}

const struct spec_figure *spec_figure_of(const struct spec_card *card, const char *kind)
{
  for (size_t i = 0; i < card->figure_count; i++)
    if (!card->figures[i].blank && strcmp(card->figures[i].kind->id, kind) == 0) return &card->figures[i];
  return NULL;
}
