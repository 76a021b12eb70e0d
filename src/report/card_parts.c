/* card_parts.c - see card_parts.h. */
#include "report/card_parts.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "report/parts.h"
#include "units/parse.h"

static const double worth_a_line = 0.1;

double card_chance_of(double decibans) { return 1 / (1 + pow(10, -decibans / 10)); }

const char *card_percent(char out[16], double p)
{
  if (p >= 0.995) strcpy(out, "over 99 %");
  else if (p < 0.005) strcpy(out, "under 1 %");
  else snprintf(out, 16, "%.0f %%", 100 * p);
  return out;
}

/* ---- the course of the job ------------------------------------------------------------ */

static const char *step_words(struct card *card, struct doc *d, const struct evidence *e)
{
  const struct knowledge *k = card->k;
  const struct check *c;

  if (e->kind == EVIDENCE_COMPLAINT) return k->complaints[e->subject].name;
  c = &k->checks[e->subject];
  if (!e->reading) return doc_format(d, "%s: %s", c->name, c->labels.items[e->result]);
  return doc_format(d, "%s: %s", c->name, card_result(card, d, case_result_of(card->c, e->subject)));
}

static void list_steps(struct card *card, struct doc *d, struct course *out)
{
  const struct casenet *n = &card->a->net;

  out->steps = arena_array(d->arena, n->evidence_count + 2, sizeof *out->steps);
  out->steps[out->step_count++] = (struct course_step){COURSE_START, "to begin with", -1, 0};
  for (size_t i = 0; i < n->evidence_count; i++) {
    const struct evidence *e = &n->evidence[i];

    if (e->kind == EVIDENCE_COMPLAINT || e->kind == EVIDENCE_RESULT)
      out->steps[out->step_count++] =
          (struct course_step){e->kind == EVIDENCE_RESULT ? COURSE_RESULT : COURSE_COMPLAINT,
                               step_words(card, d, e), e->subject, i + 1};
    else { /* these come last, and stand as one */
      out->steps[out->step_count++] =
          (struct course_step){COURSE_REST, "what follows from these together", -1, n->evidence_count};
      break;
    }
  }
}

static double highest(const struct course *c, const double *odds, size_t places, size_t place)
{
  double top = 0;

  for (size_t i = 0; i < c->step_count; i++)
    top = fmax(top, card_chance_of(odds[c->steps[i].after * places + place]));
  return top;
}

static void add_cause(const struct card *card, struct course *c, int fault)
{
  for (size_t i = 0; i < c->cause_count; i++)
    if (c->causes[i] == fault) return;
  if (c->cause_count == COURSE_MOST) return;
  c->names[c->cause_count] = part_fault_name(card->k, fault);
  c->causes[c->cause_count++] = fault;
}

static size_t place_of(const struct casenet *n, int fault)
{
  return fault < 0 ? n->count - 1 : (size_t)n->place_of[fault];
}

static void list_causes(const struct card *card, const double *odds, struct course *c)
{
  const struct casenet *n = &card->a->net;

  for (size_t i = 0; i < card->repair_count; i++)
    if (n->place_of[card->repairs[i].fault] >= 0 && !card->c->mended[card->repairs[i].fault])
      add_cause(card, c, card->repairs[i].fault);
  for (size_t i = 0; i < card->a->ranking_count; i++) {
    int fault = card->a->ranking[i].fault;

    if (i == 0 || highest(c, odds, n->count, place_of(n, fault)) >= worth_a_line) add_cause(card, c, fault);
  }
}

bool card_course(struct card *card, struct doc *d, struct course *out)
{
  double *odds = card->a->bounded ? NULL : assess_odds(card->a);
  const struct casenet *n = &card->a->net;

  *out = (struct course){0};
  if (!odds) return false;
  list_steps(card, d, out);
  list_causes(card, odds, out);
  out->odds = arena_array(d->arena, out->step_count * COURSE_MOST, sizeof *out->odds);
  for (size_t s = 0; s < out->step_count; s++)
    for (size_t i = 0; i < out->cause_count; i++)
      out->odds[s * out->cause_count + i] =
          odds[out->steps[s].after * n->count + place_of(n, out->causes[i])];
  free(odds);
  return out->step_count > 1;
}

size_t card_step(const struct course *c, enum course_kind kind, int subject)
{
  for (size_t i = 0; i < c->step_count; i++)
    if (c->steps[i].kind == kind && c->steps[i].subject == subject) return i;
  return 0;
}

/* ---- what was found ------------------------------------------------------------------- */

const char *card_result(struct card *card, struct doc *d, const struct case_result *r)
{
  const struct check *c = &card->k->checks[r->check];
  const char *sure = r->sure < 0.999 ? r->sure < 0.65 ? " (not sure)" : " (fairly sure)" : "";
  char text[64];

  if (r->sure <= 0) return "not known";
  if (r->result >= 0) return doc_format(d, "%s%s", c->labels.items[r->result], sure);
  amount_format(r->value * c->unit->factor + c->unit->offset, c->unit, text, sizeof text);
  return doc_format(d, "%s%s", text, sure);
}

const char *card_hand_over(const struct card *card, int *rule)
{
  static const struct {
    const char *word, *name;
  } names[] = {{"licensed-electrician", "a licensed electrician"},
               {"licensed-gas-fitter", "a licensed gas fitter"},
               {"engine-machinist", "an engine machinist"},
               {"makers-workshop", "the maker's workshop"},
               {"doctor-now", "a doctor, now"},
               {"scrap-decision", "the owner, who must say whether it is worth it"}};
  const struct assessment *a = card->a;

  *rule = -1;
  if (a->disposition != DISPOSITION_HAND_OVER || a->hand_over < 0) return "";
  *rule = a->drawn.items[a->hand_over].rule;
  for (size_t i = 0; i < sizeof names / sizeof names[0]; i++)
    if (strcmp(names[i].word, a->drawn.items[a->hand_over].word) == 0) return names[i].name;
  return a->drawn.items[a->hand_over].word;
}

size_t card_faults(const struct card *card, int *faults)
{
  size_t count = 0;
  bool cured = card->ending == CARD_MENDED || card->proof == CARD_PROOF_PASSED;

  for (size_t i = 0; i < card->repair_count; i++) faults[count++] = card->repairs[i].fault;
  if (count == 0 && !cured && card->a->disposition == DISPOSITION_REPAIR && card->a->ranking[0].fault >= 0)
    faults[count++] = card->a->ranking[0].fault;
  return count;
}

const char *card_parts(const struct card *card, struct doc *d)
{
  struct buf b = {0};
  const char *text;

  for (size_t i = 0; i < card->parts.count; i++) buf_addf(&b, "%s%s", i ? "; " : "", card->parts.items[i]);
  text = doc_format(d, "%s", buf_text(&b));
  buf_free(&b);
  return text;
}

size_t card_refit(const struct card *card, int *order)
{
  const struct knowledge *k = card->k;
  int *off = mem_array(k->cover_count + 1, sizeof *off),
      *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t fault_count = card_faults(card, faults), count = 0;
  struct bench_case all = *card->c;

  all.off = mem_array(k->cover_count + 1, sizeof *all.off);
  memcpy(all.off, card->c->off, k->cover_count * sizeof *all.off);
  for (size_t i = 0; i < fault_count; i++) {
    size_t n = part_covers(k, card->c, &k->repairs[k->faults[faults[i]].repair].off, off);

    for (size_t j = 0; j < n; j++) all.off[off[j]] = true;
  }
  count = part_to_refit(k, &all, order);
  free(all.off);
  free(off);
  free(faults);
  return count;
}

const struct card_service *card_serviced(const struct card *card, const char *item)
{
  for (size_t i = 0; i < card->service_count; i++)
    if (strcmp(card->services[i].item, item) == 0) return &card->services[i];
  return NULL;
}
