/* bench_spec.c - the spec card and what is given of machine and day, in the conversation; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/spec_show.h"
#include "cli/terminal.h"
#include "shop/spec_use.h"
#include "units/parse.h"

enum { MOST_OFFERED = 9 };

static void take(struct bench *b, const struct spec_card *card)
{
  size_t n = spec_use(b->k, card, &b->c);

  b->assessed = false;
  bench_say("Spec card: %s. Its figures judge %zu checks; where it says nothing, class figures do.",
            card->name, n);
}

/* ---- offering ------------------------------------------------------------------------------- */

/* Cards for this class of machine; places into out. */
static size_t that_fit(const struct bench *b, const struct spec_entries *list, size_t *out)
{
  size_t n = 0;

  for (size_t i = 0; i < list->count && n < MOST_OFFERED; i++)
    if (list->items[i].good && b->c.machine_class >= 0 &&
        strcmp(list->items[i].card.class_id, b->k->classes[b->c.machine_class].id) == 0)
      out[n++] = i;
  return n;
}

/* What was answered: the place of a card, -1 none, -2 not understood. */
static int answered(const struct bench *b, const struct spec_entries *list, const size_t *offered,
                    size_t count, const char *line)
{
  size_t *found, n;
  const char *near;
  int at = -2;

  if (!*line || strcmp(line, "?") == 0 || strcmp(line, "0") == 0 || strcmp(line, "no") == 0 ||
      strcmp(line, "none") == 0)
    return -1;
  if (line[0] >= '1' && line[0] <= '9' && !line[1])
    return (size_t)(line[0] - '0') <= count ? (int)offered[line[0] - '1'] : -2;
  found = mem_array(list->count + 1, sizeof *found);
  n = spec_find(b->k, list, line, found, &near);
  if (n == 1 && list->items[found[0]].good) at = (int)found[0];
  free(found);
  return at;
}

bool bench_ask_card(struct bench *b)
{
  struct spec_entries list;
  size_t offered[MOST_OFFERED], count;
  int at = -2;
  bool go_on = true;

  if (spec_entries_read(b->k, &list, &(struct err){0})) return true; /* pullcord spec says what is wrong */
  count = that_fit(b, &list, offered);
  for (size_t i = 0; i < count; i++) terminal_putf("  %zu. %s\n", i + 1, list.items[offered[i]].card.name);
  while (count > 0 && at == -2) {
    char *line = terminal_line("Is there a spec card for it? (number or name, enter for none) ");

    go_on = line != NULL;
    at = line ? answered(b, &list, offered, count, line) : -1;
    if (at == -2) bench_say("No such card. Type its number, or enter for none.");
    free(line);
  }
  if (at >= 0) take(b, &list.items[at].card);
  spec_entries_free(&list);
  return go_on;
}

/* ---- the commands --------------------------------------------------------------------------- */

static void show_card(const struct bench *b)
{
  struct spec_card card;
  struct buf out = {0};
  struct err e;

  if (!*b->c.card_id) {
    bench_say("This job goes by no spec card. Name one: spec NAME. \"pullcord spec\" lists them.");
    return;
  }
  if (spec_called(b->k, b->c.card_id, &card, &e)) {
    bench_say("%s The figures taken when it was named still count.", e.text);
    return;
  }
  spec_card_text(&out, b->k, &card, UNITS_AS_WRITTEN);
  bench_print(&out);
  spec_free(&card);
}

static void name_card(struct bench *b, const char *words)
{
  struct spec_entries list;
  size_t *found, n;
  const char *near;
  struct err e;

  if (spec_entries_read(b->k, &list, &e)) {
    bench_say("%s", e.text);
    return;
  }
  found = mem_array(list.count + 1, sizeof *found);
  n = spec_find(b->k, &list, words, found, &near);
  if (n == 1 && list.items[found[0]].good) take(b, &list.items[found[0]].card);
  else if (n == 1) bench_say("%s", list.items[found[0]].why.text);
  else if (n > 1) bench_say("%zu cards fit that. Say more of the name.", n);
  else
    bench_say("There is no spec card \"%s\"%s%s%s", words, near ? "; did you mean \"" : "", near ? near : "",
              near ? "\"?" : ".");
  free(found);
  spec_entries_free(&list);
}

void bench_spec(struct bench *b, const char *rest)
{
  b->silent = !*rest;
  if (!*rest) {
    show_card(b);
  } else if (strcmp(rest, "none") == 0) {
    spec_drop(&b->c);
    b->assessed = false;
    bench_say("No spec card any more: class figures judge.");
  } else {
    name_card(b, rest);
  }
}

static void list_given(const struct bench *b)
{
  for (int i = 0; i < GIVEN_COUNT; i++) {
    const struct given_kind *kind = given_kind((enum given_what)i);
    char text[64] = "not told";

    if (b->c.given[i].told) given_format((enum given_what)i, b->c.given[i].value, text, sizeof text);
    terminal_putf("  %-18s %-12s %s (%s)\n", kind->id, text, kind->what, kind->example);
  }
}

void bench_given(struct bench *b, const char *rest)
{
  size_t n = strcspn(rest, " ");
  char id[40], said[64];
  const char *amount = rest + n + strspn(rest + n, " "), *near = NULL;
  struct err e;
  int what;

  b->silent = true;
  if (!*rest) {
    list_given(b);
    return;
  }
  snprintf(id, sizeof id, "%.*s", (int)(n < 39 ? n : 39), rest);
  what = given_find(id, &near);
  if (what < 0) {
    bench_say("I know nothing given called \"%s\"%s%s%s Type given for the list.", id,
              near ? "; did you mean " : "", near ? near : "", near ? "?" : ".");
  } else if (strcmp(amount, "none") == 0) {
    b->c.given[what].told = b->assessed = b->silent = false;
    bench_say("Taken back: %s.", id);
  } else if (given_parse((enum given_what)what, amount, &b->c.given[what], &e)) {
    bench_say("%s", e.text);
  } else {
    b->assessed = b->silent = false;
    given_format((enum given_what)what, b->c.given[what].value, said, sizeof said);
    bench_say("Noted: %s %s.", given_kind((enum given_what)what)->what, said);
  }
}

/* ---- beside a question ---------------------------------------------------------------------- */

void bench_show_figure(const struct bench *b, int check)
{
  const struct case_card *card = case_card_of(&b->c, check);
  const struct unit *u = b->k->checks[check].unit;
  char low[64], high[64];

  if (!card) return;
  amount_format(card->low * u->factor + u->offset, u, low, sizeof low);
  amount_format(card->high * u->factor + u->offset, u, high, sizeof high);
  bench_say("  by the card: %s to %s%s%s%s", low, high, *card->from ? " (" : "", card->from,
            *card->from ? ")" : "");
}
