/* vet_texts.c - sentences that stand twice, names that two entries share, and texts that
 * are too long for the screen.
 *
 * What an entry says of itself has to be its own. Steps, tools and what may go back are
 * left out: where the work is the same, the same words are right. */
#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "knowledge/vet_parts.h"

enum {
  FEWEST_WORDS = 6, /* shorter sentences ("Needle and seat are good.") may meet by chance */
  MOST_NAME = 64,   /* names and labels: one line beside a number and a chance */
  MOST_TEXT = 160   /* anything else: two lines of a screen of 80 columns */
};

struct sentence {
  const char *kind, *id, *words;
  const struct origin *origin;
};

struct sentences {
  struct vet *v;
  struct arena arena;
  struct sentence *items;
  size_t count, room;
};

/* Letters and digits in lower case, one space between words; NULL for a short sentence. */
static const char *plain(struct arena *a, const char *text, size_t len)
{
  char *out = arena_new(a, len + 1);
  size_t n = 0, words = 0;

  for (size_t i = 0; i < len; i++) {
    unsigned char c = (unsigned char)text[i];

    if (isalnum(c) || c >= 0x80) {
      if (n == 0 || out[n - 1] == ' ') words++;
      out[n++] = (char)tolower(c);
    } else if (n > 0 && out[n - 1] != ' ') {
      out[n++] = ' ';
    }
  }
  while (n > 0 && out[n - 1] == ' ') n--;
  out[n] = '\0';
  return words >= FEWEST_WORDS ? out : NULL;
}

static void add_sentence(struct sentences *s, const char *kind, const char *id, const char *text, size_t len,
                         const struct origin *o)
{
  const char *words = plain(&s->arena, text, len);
  void *items = s->items;

  if (!words) return;
  mem_grow(&items, &s->room, s->count + 1, sizeof *s->items);
  s->items = items;
  s->items[s->count++] = (struct sentence){kind, id, words, o};
}

/* Takes a text apart at ".", "!" and "?" before a space. */
static void add_text(struct sentences *s, const char *kind, const char *id, const char *text,
                     const struct origin *o)
{
  size_t len = 0;

  if (!text) return;
  for (; text[len]; len++)
    if (strchr(".!?", text[len]) && (text[len + 1] == ' ' || !text[len + 1])) {
      add_sentence(s, kind, id, text, len, o);
      text += len + 1;
      len = (size_t)-1;
    }
  add_sentence(s, kind, id, text, len, o);
}

static void add_texts(struct sentences *s, const char *kind, const char *id, const struct texts *t,
                      const struct origin *o)
{
  for (size_t i = 0; i < t->count; i++) add_text(s, kind, id, t->items[i], o);
}

static int by_words(const void *a, const void *b)
{
  const struct sentence *x = a, *y = b;
  int d = strcmp(x->kind, y->kind);

  if (d == 0) d = strcmp(x->words, y->words);
  if (d == 0) d = strcmp(x->origin->file, y->origin->file);
  return d ? d : x->origin->line - y->origin->line;
}

static void say_repeated(struct sentences *s)
{
  if (s->count > 1) qsort(s->items, s->count, sizeof *s->items, by_words);
  for (size_t i = 1; i < s->count; i++) {
    const struct sentence *a = &s->items[i - 1], *b = &s->items[i];

    if (strcmp(a->kind, b->kind) == 0 && strcmp(a->words, b->words) == 0)
      VET_SAY(s->v, false, "repeated-text", b->origin,
              "%s \"%s\" says the same as \"%s\" (%s:%d): \"%.70s\".", b->kind, b->id, a->id, a->origin->file,
              a->origin->line, b->words);
  }
}

static void collect(struct sentences *s)
{
  const struct knowledge *k = s->v->k;

  for (size_t i = 0; i < k->fault_count; i++) {
    const struct fault *f = &k->faults[i];

    add_text(s, "fault", f->id, f->is, &f->origin);
    add_text(s, "fault", f->id, f->comes_about, &f->origin);
    add_text(s, "fault", f->id, f->shows, &f->origin);
    add_text(s, "fault", f->id, f->proof, &f->origin);
  }
  for (size_t i = 0; i < k->check_count; i++) {
    add_text(s, "check", k->checks[i].id, k->checks[i].ask, &k->checks[i].origin);
    add_texts(s, "check", k->checks[i].id, &k->checks[i].means, &k->checks[i].origin);
  }
  for (size_t i = 0; i < k->caution_count; i++)
    add_text(s, "caution", k->cautions[i].id, k->cautions[i].text, &k->cautions[i].origin);
  for (size_t i = 0; i < k->complaint_count; i++)
    add_text(s, "complaint", k->complaints[i].id, k->complaints[i].ask, &k->complaints[i].origin);
  for (size_t i = 0; i < k->bands_count; i++)
    add_text(s, "bands", k->bands[i].id, k->bands[i].note, &k->bands[i].origin);
  for (size_t i = 0; i < k->feature_count; i++)
    add_text(s, "feature", k->features[i].id, k->features[i].ask, &k->features[i].origin);
  for (size_t i = 0; i < k->rule_count; i++)
    add_text(s, "rule", k->rules[i].id, k->rules[i].reason, &k->rules[i].origin);
}

static void same_name(struct vet *v, const char *kind, const char *a, const char *b, const char *other,
                      const struct origin *o)
{
  if (strcmp(a, b) == 0)
    VET_SAY(v, false, "repeated-name", o, "this %s is called \"%s\", and so is \"%s\".", kind, a, other);
}

static void names(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->fault_count; i++)
    for (size_t j = 0; j < i; j++)
      same_name(v, "fault", k->faults[i].name, k->faults[j].name, k->faults[j].id, &k->faults[i].origin);
  for (size_t i = 0; i < k->check_count; i++)
    for (size_t j = 0; j < i; j++)
      same_name(v, "check", k->checks[i].name, k->checks[j].name, k->checks[j].id, &k->checks[i].origin);
  for (size_t i = 0; i < k->repair_count; i++)
    for (size_t j = 0; j < i; j++)
      same_name(v, "repair", k->repairs[i].name, k->repairs[j].name, k->repairs[j].id, &k->repairs[i].origin);
  for (size_t i = 0; i < k->check_count; i++) {
    const struct texts *l = &k->checks[i].labels;

    for (size_t r = 0; r < l->count; r++)
      for (size_t q = 0; q < r; q++)
        same_name(v, "result", l->items[r], l->items[q], k->checks[i].results.items[q], &k->checks[i].origin);
  }
}

static void fit(struct vet *v, const char *kind, const char *id, const char *slot, const char *text,
                size_t most, const struct origin *o)
{
  size_t columns = text ? text_columns(text) : 0;

  if (columns > most)
    VET_SAY(v, false, "too-long", o,
            "%s \"%s\": its %s takes %zu columns; more than %zu do not fit the screen.", kind, id, slot,
            columns, most);
}

static void fit_all(struct vet *v, const char *kind, const char *id, const char *slot, const struct texts *t,
                    size_t most, const struct origin *o)
{
  for (size_t i = 0; i < t->count; i++) fit(v, kind, id, slot, t->items[i], most, o);
}

static void lengths_of_checks(struct vet *v)
{
  for (size_t i = 0; i < v->k->check_count; i++) {
    const struct check *c = &v->k->checks[i];

    fit(v, "check", c->id, "name", c->name, MOST_NAME, &c->origin);
    fit_all(v, "check", c->id, "labels", &c->labels, MOST_NAME, &c->origin);
    fit(v, "check", c->id, "ask", c->ask, MOST_TEXT, &c->origin);
    fit_all(v, "check", c->id, "means", &c->means, MOST_TEXT, &c->origin);
    fit_all(v, "check", c->id, "steps", &c->steps, MOST_TEXT, &c->origin);
    fit_all(v, "check", c->id, "mistakes", &c->mistakes, MOST_TEXT, &c->origin);
  }
}

static void lengths_of_faults(struct vet *v)
{
  for (size_t i = 0; i < v->k->fault_count; i++) {
    const struct fault *f = &v->k->faults[i];

    fit(v, "fault", f->id, "name", f->name, MOST_NAME, &f->origin);
    fit(v, "fault", f->id, "is", f->is, MOST_TEXT, &f->origin);
    fit(v, "fault", f->id, "comes-about", f->comes_about, MOST_TEXT, &f->origin);
    fit(v, "fault", f->id, "shows", f->shows, MOST_TEXT, &f->origin);
    fit(v, "fault", f->id, "proof", f->proof, MOST_TEXT, &f->origin);
  }
}

static void lengths_of_work(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->repair_count; i++) {
    fit(v, "repair", k->repairs[i].id, "name", k->repairs[i].name, MOST_NAME, &k->repairs[i].origin);
    fit_all(v, "repair", k->repairs[i].id, "steps", &k->repairs[i].steps, MOST_TEXT, &k->repairs[i].origin);
    fit(v, "repair", k->repairs[i].id, "reuse", k->repairs[i].reuse, MOST_TEXT, &k->repairs[i].origin);
  }
  for (size_t i = 0; i < k->cover_count; i++) {
    fit(v, "cover", k->covers[i].id, "name", k->covers[i].name, MOST_NAME, &k->covers[i].origin);
    fit_all(v, "cover", k->covers[i].id, "refit", &k->covers[i].refit, MOST_TEXT, &k->covers[i].origin);
  }
  for (size_t i = 0; i < k->caution_count; i++)
    fit(v, "caution", k->cautions[i].id, "text", k->cautions[i].text, MOST_TEXT, &k->cautions[i].origin);
  for (size_t i = 0; i < k->complaint_count; i++)
    fit(v, "complaint", k->complaints[i].id, "name", k->complaints[i].name, MOST_NAME,
        &k->complaints[i].origin);
  for (size_t i = 0; i < k->rule_count; i++)
    fit(v, "rule", k->rules[i].id, "reason", k->rules[i].reason, MOST_TEXT, &k->rules[i].origin);
}

void vet_texts(struct vet *v)
{
  struct sentences s = {.v = v};

  collect(&s);
  say_repeated(&s);
  free(s.items);
  arena_free(&s.arena);
  names(v);
  lengths_of_checks(v);
  lengths_of_faults(v);
  lengths_of_work(v);
}
