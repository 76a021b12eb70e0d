/* job_figures.c - see job_figures.h. */
#include "shop/job_figures.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "shop/words.h"

void figure_put(struct json *b, const char *member, const struct check *c, double value)
{
  char text[80];

  for (int digits = 6; digits <= 17; digits++) {
    snprintf(text, sizeof text, "%.*g", digits, value);
    if (strtod(text, NULL) == value) break;
  }
  snprintf(text + strlen(text), sizeof text - strlen(text), " %s", c->unit_name);
  json_put_text(b, member, text);
}

bool figure_read(const struct knowledge *k, int check, const char *text, struct case_result *out)
{
  const struct check *c = &k->checks[check];
  char *end;
  double value = strtod(text, &end);

  if (c->kind != KIND_MEASURE) return false;
  if (end > text && *end == ' ' && strcmp(end + 1, c->unit_name) == 0) {
    *out = (struct case_result){check, -1, value, 1};
    return true;
  }
  return words_result(k, check, text, out, &(struct err){0}) == 0 && out->result < 0;
}

/* ---- taking -------------------------------------------------------------------------------- */

bool figure_take_spec(const struct knowledge *k, struct bench_case *c, int check, const struct json *b)
{
  struct case_card card = {.check = check, .by_card = json_true(json_member(b, "by_card"))};
  struct case_result low, high;

  if (check < 0 || !figure_read(k, check, json_text(json_member(b, "low")), &low) ||
      !figure_read(k, check, json_text(json_member(b, "high")), &high) || low.value > high.value)
    return false;
  card.low = low.value;
  card.high = high.value;
  text_cut(card.from, sizeof card.from, json_text(json_member(b, "from")));
  case_set_card(c, card);
  return true;
}

bool figure_take_card(struct bench_case *c, const struct json *b)
{
  const struct json *card = json_member(b, "card");

  if (!card || json_kind(card) != JSON_TEXT) return false;
  text_cut(c->card_id, sizeof c->card_id, json_text(card));
  return true;
}

bool figure_take_given(struct bench_case *c, const struct json *b)
{
  int what = given_find(json_text(json_member(b, "what")), NULL);

  if (what < 0) return false;
  return given_parse((enum given_what)what, json_text(json_member(b, "amount")), &c->given[what],
                     &(struct err){0}) == 0;
}

bool figure_drop_given(struct bench_case *c, const char *id)
{
  int what = given_find(id, NULL);

  if (what >= 0) c->given[what].told = false;
  return what >= 0;
}

/* ---- saying -------------------------------------------------------------------------------- */

static void say_one(struct job_news *n, const char *kind, const char *member, const char *text)
{
  struct json *b = json_object();

  json_put_text(b, member, text);
  job_say(n, kind, b);
}

static void say_card(struct job_news *n, const struct knowledge *k, const struct case_card *card)
{
  const struct check *check = &k->checks[card->check];
  struct json *b = json_object();

  json_put_text(b, "check", check->id);
  figure_put(b, "low", check, card->low);
  figure_put(b, "high", check, card->high);
  if (*card->from) json_put_text(b, "from", card->from);
  if (card->by_card) json_put_bool(b, "by_card", true);
  job_say(n, "spec", b);
}

static bool same_card(const struct case_card *a, const struct case_card *b)
{
  return a->low == b->low && a->high == b->high && a->by_card == b->by_card && strcmp(a->from, b->from) == 0;
}

static void say_given(struct job_news *n, enum given_what what, double value)
{
  struct json *b = json_object();
  char text[80];

  given_format(what, value, text, sizeof text);
  json_put_text(b, "what", given_kind(what)->id);
  json_put_text(b, "amount", text);
  job_say(n, "given", b);
}

void figures_say_change(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                        const struct bench_case *now)
{
  if (strcmp(now->card_id, before->card_id) != 0) say_one(n, "spec-card", "card", now->card_id);
  for (size_t i = 0; i < before->card_count; i++)
    if (!case_card_of(now, before->cards[i].check))
      say_one(n, "took-back", "spec", k->checks[before->cards[i].check].id);
  for (size_t i = 0; i < now->card_count; i++) {
    const struct case_card *old = case_card_of(before, now->cards[i].check);

    if (!old || !same_card(old, &now->cards[i])) say_card(n, k, &now->cards[i]);
  }
  for (int i = 0; i < GIVEN_COUNT; i++) {
    const struct given *old = &before->given[i], *new = &now->given[i];

    if (new->told && (!old->told || old->value != new->value)) say_given(n, (enum given_what)i, new->value);
    if (old->told && !new->told) say_one(n, "took-back", "given", given_kind((enum given_what)i)->id);
  }
}
