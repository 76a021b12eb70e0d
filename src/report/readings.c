/* readings.c - by what each reading was judged: the spec card, or a class figure; see answer.h. */
#include <stdlib.h>

#include "base/text.h"
#include "report/answer.h"
#include "units/parse.h"
#include "weigh/casenet.h"

/* A value in the unit of a check, as text. */
static void say_value(char *out, size_t size, const struct check *c, double value)
{
  amount_format(value * c->unit->factor + c->unit->offset, c->unit, out, size);
}

/* "by the card (80 psi to 110 psi, maker's sheet)" */
static void say_card(struct buf *out, const struct check *c, const struct case_card *card)
{
  char low[64], high[64];

  say_value(low, sizeof low, c, card->low);
  say_value(high, sizeof high, c, card->high);
  buf_addf(out, "by the card (right from %s to %s%s%s)", low, high, *card->from ? ", " : "", card->from);
}

/* "class figure (compression-ohv: limits 40 psi, 75 psi; estimate)" */
static void say_bands(struct buf *out, const struct knowledge *k, const struct check *c,
                      const struct bands *b)
{
  buf_addf(out, "class figure (%s: ", b->id);
  for (size_t i = 0; i < b->limits.count; i++) {
    char limit[64];

    say_value(limit, sizeof limit, c, b->limits.items[i]);
    buf_addf(out, "%s%s", i ? ", " : b->limits.count > 1 ? "limits " : "limit ", limit);
  }
  buf_add(out, "; ");
  answer_basis(out, k, &b->origin);
  buf_add(out, ")");
}

bool answer_reading(struct buf *out, const struct knowledge *k, const struct bench_case *bench,
                    const struct assessment *a, const struct case_result *r)
{
  const struct check *c = &k->checks[r->check];
  struct judged j;
  char text[64];

  if (r->result >= 0 || r->sure <= 0 || !reading_judge(k, bench, &a->drawn, r, &j)) return false;
  say_value(text, sizeof text, c, r->value);
  buf_addf(out, "%s %s: %s, ", c->name, text, c->labels.items[j.result]);
  if (j.card) say_card(out, c, j.card);
  else say_bands(out, k, c, &k->bands[j.bands]);
  if (j.counts_as >= 0) {
    const struct conclusion *d = &a->drawn.items[j.counts_as];

    say_value(text, sizeof text, c, d->number);
    buf_addf(out, "; taken as %s: %s", text, k->rules[d->rule].reason);
  }
  return true;
}

void answer_readings(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                     const struct assessment *a, int width)
{
  size_t said = 0;

  for (size_t i = 0; i < c->result_count; i++) {
    struct buf line = {0};

    if (answer_reading(&line, k, c, a, &c->results[i])) {
      if (said++ == 0) buf_add(out, "Readings:\n");
      text_wrap(out, buf_text(&line), width, "  ", "    ");
      buf_add(out, "\n");
    }
    buf_free(&line);
  }
  if (said) buf_add(out, "\n");
}

/* ---- JSON ----------------------------------------------------------------------------------- */

static void put_value(struct json *o, const char *name, const struct check *c, double value)
{
  char text[64];

  say_value(text, sizeof text, c, value);
  json_put_text(o, name, text);
}

static void put_stands(struct json *o, const struct origin *origin)
{
  struct buf at = {0};

  buf_addf(&at, "%s:%d", origin->file, origin->line);
  json_put_text(o, "stands_at", buf_text(&at));
  buf_free(&at);
}

static void put_judge(struct json *o, const struct knowledge *k, const struct bench_case *bench,
                      const struct check *c, const struct judged *j)
{
  json_put_text(o, "by", j->card ? "card" : "class-figure");
  if (j->card) {
    put_value(o, "low", c, j->card->low);
    put_value(o, "high", c, j->card->high);
    if (*j->card->from) json_put_text(o, "from", j->card->from);
    if (j->card->by_card) json_put_text(o, "card", bench->card_id);
  } else {
    json_put_text(o, "bands", k->bands[j->bands].id);
    json_put_text(o, "basis", basis_name(k->bands[j->bands].origin.basis));
    put_stands(o, &k->bands[j->bands].origin);
  }
}

static void put_counts_as(struct json *o, const struct knowledge *k, const struct check *c,
                          const struct conclusion *d)
{
  struct json *as = json_object();

  put_value(as, "reading", c, d->number);
  json_put_text(as, "rule", k->rules[d->rule].id);
  json_put_text(as, "why", k->rules[d->rule].reason);
  json_put_text(as, "basis", basis_name(k->rules[d->rule].origin.basis));
  put_stands(as, &k->rules[d->rule].origin);
  json_put(o, "counts_as", as);
}

struct json *answer_readings_json(const struct knowledge *k, const struct bench_case *bench,
                                  const struct assessment *a)
{
  struct json *list = json_list();

  for (size_t i = 0; i < bench->result_count; i++) {
    const struct case_result *r = &bench->results[i];
    const struct check *c = &k->checks[r->check];
    struct judged j;
    struct json *o;

    if (r->result >= 0 || r->sure <= 0 || !reading_judge(k, bench, &a->drawn, r, &j)) continue;
    o = json_object();
    json_put_text(o, "check", c->id);
    put_value(o, "reading", c, r->value);
    json_put_text(o, "result", c->results.items[j.result]);
    json_put_number(o, "share", j.share[j.result]);
    put_judge(o, k, bench, c, &j);
    if (j.counts_as >= 0) put_counts_as(o, k, c, &a->drawn.items[j.counts_as]);
    json_push(list, o);
  }
  return list;
}
