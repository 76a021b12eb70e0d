/* case.h - the machine on the bench and what was found on it. */
#ifndef MODEL_CASE_H
#define MODEL_CASE_H

#include "base/err.h"
#include "model/given.h"
#include "model/knowledge.h"
#include "model/learned.h"

enum tri { TRI_LACKS = -1, TRI_UNKNOWN = 0, TRI_HAS = 1 };

/* One result as given. Either result is an index into the check's results, or reading
 * holds and result is -1. sure: 0 (don't know: counts nothing) to 1. */
struct case_result {
  int check, result;
  double value; /* the reading in the unit of the check; only when result is -1 */
  double sure;
};

enum { CARD_FROM = 40, CARD_ID = 64 };

/* A figure of the maker's: the limits of what is right, in the unit of the check. from says
 * where it is from ("plate", "maker's sheet", "measured"; "" when not told); by_card: it came
 * with the spec card that the case names, and goes with it. */
struct case_card { int check; double low, high; char from[CARD_FROM]; bool by_card; };

/* How words of the owner's were taken, to be shown with the answer: the complaints they were
 * taken for, how sure that is ("clear", "fairly", "unsure"; static text), and what they might
 * mean instead, likeliest first. text is cut off when it is longer. */
enum { SAID_TEXT = 160, SAID_MOST = 3 };
struct case_said {
  char text[SAID_TEXT];
  const char *sure;
  int took[SAID_MOST], instead[SAID_MOST];
  size_t took_count, instead_count;
};

struct bench_case {
  int machine_class;    /* index, -1 when not told */
  signed char *features; /* enum tri per feature of the knowledge, resolved */
  int *complaints;
  size_t complaint_count, complaint_room;
  struct case_said *said; /* only of complaints that came as words */
  size_t said_count, said_room;
  struct case_result *results; /* in the order they came; one per check */
  size_t result_count, result_room;
  struct case_card *cards;
  size_t card_count, card_room;
  char card_id[CARD_ID]; /* the spec card that the machine goes by, "" when none is named */
  struct given given[GIVEN_COUNT];
  bool *off;    /* per cover of the knowledge: is it off now? */
  bool *mended; /* per fault: was it put right on this job, the complaint staying? */
  const struct learned *learned; /* the shop's own chances, not the case's to free; NULL: as shipped */
};

/* An empty case for this knowledge: everything unknown. Free with case_free. */
void case_begin(struct bench_case *c, const struct knowledge *k);
void case_free(struct bench_case *c);

/* Sets the class and the features told: has/lacks hold feature indexes. What the class
 * usually has is taken as true, what some have stays open, the rest is lacking; what was
 * told comes first. Two members of a one-of group, or one feature both had and lacking,
 * are refused with EX_DATAERR. */
int case_set_machine(struct bench_case *c, const struct knowledge *k, int machine_class,
                     const int *has, size_t has_count, const int *lacks, size_t lacks_count,
                     struct err *e);

void case_add_complaint(struct bench_case *c, int complaint); /* once each */

/* Adds the complaints that were taken, and keeps how. */
void case_add_said(struct bench_case *c, const struct case_said *said);

/* Records a result; a second one for the same check replaces the first. */
void case_set_result(struct bench_case *c, struct case_result r);

/* Takes a result back. False when there was none. */
bool case_drop_result(struct bench_case *c, int check);

const struct case_result *case_result_of(const struct bench_case *c, int check);

void case_set_card(struct bench_case *c, struct case_card card);

/* The figure for a check, or NULL. */
const struct case_card *case_card_of(const struct bench_case *c, int check);

/* Takes the figure for a check away. False when there was none. */
bool case_drop_card(struct bench_case *c, int check);

/* Takes off the covers of a list with those that lie over them, as far as the machine has
 * them. Returns how many came off that were on. */
size_t case_take_off(struct bench_case *c, const struct knowledge *k, const struct refs *covers);

/* Do all these features apply? TRI_LACKS when one is lacking, TRI_UNKNOWN when none is
 * lacking but `*unknown` of them are open. */
enum tri case_needs(const struct bench_case *c, const struct refs *needs, size_t *unknown);

#endif
