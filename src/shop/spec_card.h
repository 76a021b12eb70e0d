/* spec_card.h - a spec card: the maker's figures for one engine, as a file (docs/schema/spec-card-1.json).
 *
 * Cards are made by spec_folder.h and laid beside a case by spec_use.h. */
#ifndef SHOP_SPEC_CARD_H
#define SHOP_SPEC_CARD_H

#include "base/err.h"
#include "json/json.h"
#include "model/case.h"
#include "shop/spec_kinds.h"
#include "units/spell.h"

/* The version that is read and written. */
#define SPEC_CARD_VERSION "spec-card-1"

enum { SPEC_MAX_BYTES = 256 * 1024, SPEC_FIGURES = 100, SPEC_ALSO = 12, SPEC_NAME = 80, SPEC_NOTE = 200 };

/* One figure. value, low and high are in the base of the quantity, NAN where not given; the texts are
 * as written ("" where not given). blank: on the card, but not filled in. */
struct spec_figure {
  const struct spec_kind *kind;
  bool blank;
  char of[SPEC_NAME], from[CARD_FROM], note[SPEC_NOTE];
  char text[SPELL_ROOM], low_text[SPELL_ROOM], high_text[SPELL_ROOM];
  double value, low, high;
  const struct unit *unit; /* as written, NULL for words */
  int line;
};

struct spec_card {
  char id[CARD_ID]; /* the name of its file, without the end */
  char *path;       /* as read */
  char name[SPEC_NAME], class_id[CARD_ID], note[SPEC_NOTE];
  char also[SPEC_ALSO][SPEC_NAME];
  size_t also_count;
  struct spec_figure *figures;
  size_t figure_count, figure_room;
};

/* Everything that is wrong with a card, in the order of the file, at most 50. */
struct spec_faults {
  struct err *items;
  size_t count, room;
};

/* Reads a card from text; path is for messages and names the card (its id is the last part without
 * ".json"). What is wrong goes to *faults, each with file, line, what, and what to do: broken JSON, a
 * member or a kind of figure that is not known (the nearest is named), a unit of another quantity, a
 * value that cannot be, a figure given twice, no word on where it is from. k is for the machine
 * class. *out is begun in any case; free it with spec_free. False when there is any fault. */
bool spec_read(const struct knowledge *k, const char *path, const char *text, size_t len,
               struct spec_card *out, struct spec_faults *faults);

/* The same from a file of at most SPEC_MAX_BYTES; one that cannot be read is a fault, too. */
bool spec_load(const struct knowledge *k, const char *path, struct spec_card *out,
               struct spec_faults *faults);

void spec_free(struct spec_card *card);
void spec_faults_free(struct spec_faults *faults);

/* What readings may be, by this figure, in the base of the quantity: its range, or as far round its
 * value as is usual for the kind (*spread is then set). False when it is blank or judges nothing. */
bool spec_limits(const struct spec_figure *f, double *low, double *high, bool *spread);

/* The first figure of that kind that is filled in, or NULL. */
const struct spec_figure *spec_figure_of(const struct spec_card *card, const char *kind);

#endif
