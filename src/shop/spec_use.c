/* spec_use.c - see spec_use.h. */
#include "shop/spec_use.h"

#include <stdio.h>
#include <string.h>

#include "base/text.h"

static double in_unit(double si, const struct unit *u) { return (si - u->offset) / u->factor; }

static bool take_figure(const struct knowledge *k, const struct spec_figure *f, struct bench_case *c)
{
  struct case_card card = {.by_card = true};
  double low, high;
  bool spread;
  int check;

  if (!spec_limits(f, &low, &high, &spread)) return false;
  check = knowledge_find(k, ENTRY_CHECK, f->kind->check);
  if (check < 0 || k->checks[check].kind != KIND_MEASURE || k->checks[check].quantity != f->kind->quantity)
    return false; /* the person's own knowledge has made something else of it */
  if (case_card_of(c, check)) return false;
  card.check = check;
  card.low = in_unit(low, k->checks[check].unit);
  card.high = in_unit(high, k->checks[check].unit);
  text_cut(card.from, sizeof card.from, f->from);
  case_set_card(c, card);
  return true;
}

static void take_given(const struct spec_figure *f, struct bench_case *c)
{
  int what = f->kind->given && !f->blank && *f->text ? given_find(f->kind->given, NULL) : -1;

  if (what >= 0 && !c->given[what].told)
    given_parse((enum given_what)what, f->text, &c->given[what], &(struct err){0});
}

size_t spec_use(const struct knowledge *k, const struct spec_card *card, struct bench_case *c)
{
  size_t count = 0;

  spec_drop(c);
  snprintf(c->card_id, sizeof c->card_id, "%s", card->id);
  for (size_t i = 0; i < card->figure_count; i++) {
    count += take_figure(k, &card->figures[i], c);
    take_given(&card->figures[i], c);
  }
  return count;
}

void spec_drop(struct bench_case *c)
{
  *c->card_id = '\0';
  for (size_t i = c->card_count; i > 0; i--)
    if (c->cards[i - 1].by_card) case_drop_card(c, c->cards[i - 1].check);
}
