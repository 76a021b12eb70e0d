/* card_parts.h - what the owner's card, the bench card and the JSON card have in common. */
#ifndef REPORT_CARD_PARTS_H
#define REPORT_CARD_PARTS_H

#include "report/card_doc.h"

enum { COURSE_MOST = DRAWING_SERIES };
enum course_kind { COURSE_START, COURSE_COMPLAINT, COURSE_RESULT, COURSE_REST };

/* One step of the job: the start, a complaint, a result, or what else followed from all. */
struct course_step {
  enum course_kind kind;
  const char *what;
  int subject;  /* complaint or check, -1 otherwise */
  size_t after; /* pieces of evidence weighed by then */
};

/* How the leading causes fared, step by step. steps[0] is the start; a number of a step is
 * its place in steps. */
struct course {
  struct course_step *steps;
  size_t step_count, cause_count;
  int causes[COURSE_MOST];        /* faults, -1 not listed; those whose repair cured first,
                                     then as ranked; each that ever reached 10 % */
  const char *names[COURSE_MOST];
  double *odds;                   /* decibans: [step * cause_count + cause] */
};

/* False when it cannot be worked out (assessment bounded), or nothing has come in. */
bool card_course(struct card *card, struct doc *d, struct course *out);
double card_chance_of(double decibans);

/* Whole per cent in words: "94 %", "over 99 %". */
const char *card_percent(char out[16], double p);

/* "not known", the label of the result, or the reading; and how sure, when not quite. */
const char *card_result(struct card *card, struct doc *d, const struct case_result *r);
/* Number of the step at which a check (complaint) was weighed, 0 when it was not. */
size_t card_step(const struct course *c, enum course_kind kind, int subject);

/* Who a case is handed over to, in words; "" and *rule -1 when nobody. */
const char *card_hand_over(const struct card *card, int *rule);

/* The faults to talk about: those repaired, or else the leading one where the assessment is
 * for its repair. Into faults (room for repair_count + 1). */
size_t card_faults(const struct card *card, int *faults);

/* Covers that came off for the repairs or are off now, in the order in which they go back,
 * into order (room for cover_count). */
size_t card_refit(const struct card *card, int *order);

/* Parts of the whole job in one line, "" when none is written down. */
const char *card_parts(const struct card *card, struct doc *d);

/* ---- what every card says (card_care.c) ---- */

/* Cautions that concern the owner of this machine, into ids (room for caution_count). */
size_t card_owner_cautions(const struct card *card, int *ids);
/* Cautions of the repairs and of what rules warn of, into ids (room for caution_count). */
size_t card_bench_cautions(const struct card *card, int *ids);
/* What to do for storing: the i-th line for this machine, NULL past the end. Common practice. */
const char *card_storing(const struct card *card, size_t i);
/* What was said of an item of the service check, NULL when nothing was. */
const struct card_service *card_serviced(const struct card *card, const char *item);
/* The headline of the outcome and what is to be said of it. */
const char *card_outcome(const struct card *card, struct doc *d, const char **more);

#endif
