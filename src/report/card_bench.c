/* card_bench.c - the card for the bench: everything, with weights and what they rest on. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "model/service.h"
#include "report/answer.h"
#include "report/card_parts.h"
#include "report/parts.h"
#include "report/svg_chart.h"
#include "report/svg_path.h"

enum { MOST_RANKED = 6, MOST_WEIGHED = 3 };
/* Decibans: implied results, and plain ones, below these stand together. */
static const double worth_a_row = 0.5, worth_a_result = 0.1;

static void columns(struct doc_table *t, const char *const *heads, const int *shares, const bool *right)
{
  for (size_t i = 0; i < t->columns; i++) {
    t->heads[i] = heads[i];
    t->shares[i] = shares[i];
    t->right[i] = right[i];
  }
}

static const struct card_entry *entry_of(const struct card *card, int check)
{
  for (size_t i = card->entry_count; i-- > 0;)
    if (card->entries[i].check == check) return &card->entries[i];
  return NULL;
}

static void results(struct card *card, struct doc *d, const struct course *course, bool known)
{
  const struct bench_case *c = card->c;
  struct doc_table *t;

  doc_heading(d, 2, "Results in order");
  if (c->result_count == 0) {
    doc_add(d, BLOCK_TEXT, "None yet.");
    return;
  }
  t = doc_table(d, BLOCK_TABLE, "Results in the order in which they came", card->entry_count ? 4 : 3);
  columns(t, (const char *const[]){"Step", "Check", "Result", "Entered"},
          card->entry_count ? (const int[]){4, 23, 25, 23} : (const int[]){4, 33, 39, 0},
          (const bool[]){true, false, false, false});
  for (size_t i = 0; i < c->result_count; i++) {
    const struct card_entry *e = entry_of(card, c->results[i].check);
    size_t step = known ? card_step(course, COURSE_RESULT, c->results[i].check) : i + 1;

    doc_cell(d, t, step ? doc_format(d, "%zu", step) : "-");
    doc_cell(d, t, card->k->checks[c->results[i].check].name);
    doc_cell(d, t, card_result(card, d, &c->results[i]));
    if (card->entry_count)
      doc_cell(d, t, e ? doc_format(d, "%s%s%s", e->when, *e->when && *e->who ? ", " : "", e->who) : "");
  }
}

static void ranking(struct card *card, struct doc *d)
{
  const struct assessment *a = card->a;
  size_t shown = part_shown(card->k, a, MOST_RANKED);
  struct doc_table *t;
  char percent[16];

  doc_heading(d, 2, card->repair_count ? "Causes before the repair" : "Causes as they stand");
  t = doc_table(d, BLOCK_TABLE, "Leading causes with their chances", 4);
  columns(t, (const char *const[]){"", "Cause", "Behind it", "Is there"}, (const int[]){3, 51, 10, 10},
          (const bool[]){true, false, true, true});
  for (size_t i = 0; i < shown; i++) {
    doc_cell(d, t, doc_format(d, "%zu", i + 1));
    doc_cell(d, t, part_fault_name(card->k, a->ranking[i].fault));
    doc_cell(d, t, card_percent(percent, a->ranking[i].blame));
    if (a->bounded)
      doc_cell(d, t, doc_format(d, "%.0f-%.0f %%", 100 * a->ranking[i].low, 100 * a->ranking[i].high));
    else doc_cell(d, t, card_percent(percent, a->ranking[i].belief));
  }
  if (a->bounded) {
    doc_add(d, BLOCK_SMALL,
            "Too many unsound results to weigh exactly: limits, and the middle of them. So there are no "
            "weights and no pictures.");
    return;
  }
  doc_cell(d, t, "");
  doc_cell(d, t, "nothing broken");
  doc_cell(d, t, card_percent(percent, a->sound));
  doc_cell(d, t, "");
}

/* ---- weights -------------------------------------------------------------------------- */

/* What the weight of this evidence for this fault rests on. */
static void reason(struct buf *out, const struct knowledge *k, const struct evidence *e, int fault, double db)
{
  const struct sign *s = part_sign(k, e, fault);

  if (e->rule >= 0 && e->kind != EVIDENCE_RESULT) {
    buf_addf(out, "%s (rule %s; ", k->rules[e->rule].reason, k->rules[e->rule].id);
    answer_basis(out, k, &k->rules[e->rule].origin);
    buf_add(out, ")");
  } else if (s && s->result == e->result) {
    buf_addf(out, "%s%sshows so in %.0f of 100 (", s->why, *s->why ? " " : "", 100 * s->chance);
    answer_basis(out, k, &s->origin);
    buf_add(out, ")");
  } else if (s) {
    buf_addf(out, "the unsound result would show in %.0f of 100 (", 100 * s->chance);
    answer_basis(out, k, &s->origin);
    buf_add(out, ")");
  } else {
    buf_add(out, e->kind == EVIDENCE_COMPLAINT || e->result > 0 ? "no sign of this cause"
                                                                : "says nothing of this cause");
    if (fabs(db) >= worth_a_row) buf_addf(out, "; it speaks %s others", db < 0 ? "for" : "against");
  }
  if (e->kind != EVIDENCE_COMPLAINT && e->sure < 0.999) buf_addf(out, "; counts %.0f %%", 100 * e->sure);
  if (e->weakened_by >= 0) buf_addf(out, "; counts less: %s", k->rules[e->weakened_by].reason);
}

static void weight_row(struct doc *d, struct doc_table *t, double db, const char *what, const char *why)
{
  doc_cell(d, t, doc_format(d, "%+.1f", fabs(db) < 0.05 ? 0.0 : db));
  doc_cell(d, t, what);
  doc_cell(d, t, why);
}

/* Does this move the fault so little that it needs no row of its own? */
static bool beside(const struct evidence *e, int fault, double db)
{
  switch (e->kind) {
  case EVIDENCE_SPEAKS: return e->subject != fault;
  case EVIDENCE_IMPLIED: return fabs(db) < worth_a_row;
  case EVIDENCE_RESULT: return fabs(db) < worth_a_result;
  case EVIDENCE_COMPLAINT: break;
  }
  return false;
}

static void weights_of(struct card *card, struct doc *d, const double *odds, int fault)
{
  const struct casenet *n = &card->a->net;
  size_t places = n->count, p = fault >= 0 ? (size_t)n->place_of[fault] : places - 1;
  struct doc_table *t;
  double rest = 0;
  size_t others = 0;
  char percent[16];

  doc_heading(d, 3, doc_capital(d, part_fault_name(card->k, fault)));
  t = doc_table(d, BLOCK_TABLE, doc_format(d, "Weights for %s", part_fault_name(card->k, fault)), 3);
  columns(t, (const char *const[]){"db", "Evidence", "What the weight rests on"}, (const int[]){6, 31, 39},
          (const bool[]){true, false, false});
  weight_row(d, t, odds[p], "to begin with", "base rate for this machine (estimate)");
  for (size_t i = 0; i < n->evidence_count; i++) {
    const struct evidence *e = &n->evidence[i];
    double db = odds[(i + 1) * places + p] - odds[i * places + p];
    struct buf what = {0}, why = {0};

    if (beside(e, fault, db)) {
      if (e->kind == EVIDENCE_RESULT) others++;
      rest += db;
      continue;
    }
    part_evidence(&what, card->k, e);
    reason(&why, card->k, e, fault, db);
    weight_row(d, t, db, buf_text(&what), buf_text(&why));
    buf_free(&what);
    buf_free(&why);
  }
  if (others || fabs(rest) >= 0.05)
    weight_row(d, t, rest,
               others ? doc_format(d, "%zu other result%s, and what follows from all, together", others,
                                   others == 1 ? "" : "s")
                      : "what else follows from these, together",
               others ? "each less than 0.1 for this cause" : "");
  weight_row(d, t, odds[n->evidence_count * places + p], "in all",
             doc_format(d, "the chance that it is there: %s",
                        card_percent(percent, card_chance_of(odds[n->evidence_count * places + p]))));
}

static void weights(struct card *card, struct doc *d, const struct course *course)
{
  double *odds = assess_odds(card->a);

  doc_heading(d, 2, "Weights");
  doc_add(d, BLOCK_TEXT,
          "In decibans: +10 makes a cause ten times likelier against the rest, -10 ten times less likely, "
          "and 0 in all is evens.");
  for (size_t i = 0; odds && i < course->cause_count && i < MOST_WEIGHED; i++)
    weights_of(card, d, odds, course->causes[i]);
  free(odds);
}

/* ---- repair and proof ----------------------------------------------------------------- */

static void listed(struct doc *d, const char *name, const struct texts *t)
{
  struct buf b = {0};

  if (t->count == 0) return;
  for (size_t i = 0; i < t->count; i++) buf_addf(&b, "%s%s", i ? "; " : "", t->items[i]);
  doc_add(d, BLOCK_BULLET, "%s: %s", name, buf_text(&b));
  buf_free(&b);
}

static void covers(const struct card *card, struct doc *d, const struct repair *r)
{
  int *order = mem_array(card->k->cover_count + 1, sizeof *order);
  size_t count = part_covers(card->k, card->c, &r->off, order);
  struct buf b = {0};

  for (size_t i = 0; i < count; i++) buf_addf(&b, "%s%s", i ? ", then " : "", card->k->covers[order[i]].name);
  if (count) doc_add(d, BLOCK_BULLET, "off: %s", buf_text(&b));
  buf_free(&b);
  free(order);
}

static void one_repair(struct card *card, struct doc *d, int fault, const struct card_repair *done)
{
  const struct fault *f = &card->k->faults[fault];
  const struct repair *r = &card->k->repairs[f->repair];
  struct buf b = {0};

  doc_heading(d, 3, doc_capital(d, r->name));
  buf_addf(&b, "for: %s", f->name);
  if (card->c->mended[fault]) buf_add(&b, " (the complaint stayed)");
  doc_add(d, BLOCK_BULLET, "%s", buf_text(&b));
  buf_free(&b);
  if (done && done->minutes >= 0)
    doc_add(d, BLOCK_BULLET, "minutes: %.0f (listed: %.0f)", done->minutes, r->minutes);
  else doc_add(d, BLOCK_BULLET, "minutes: listed %.0f", r->minutes);
  if (done && (*done->when || *done->who))
    doc_add(d, BLOCK_BULLET, "done: %s%s%s", done->when, *done->when && *done->who ? ", " : "", done->who);
  if (done) listed(d, "parts used", &done->parts);
  listed(d, done && done->parts.count ? "parts listed" : "parts", &r->parts);
  listed(d, "consumables", &r->consumables);
  covers(card, d, r);
  for (size_t i = 0; i < r->steps.count; i++) doc_add(d, BLOCK_STEP, "%s", r->steps.items[i]);
  if (*r->reuse) doc_add(d, BLOCK_TEXT, "Reuse or replace: %s", r->reuse);
}

static void repairs(struct card *card, struct doc *d)
{
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  int *ids = mem_array(card->k->caution_count + 1, sizeof *ids);
  size_t count = card_faults(card, faults), cautions = card_bench_cautions(card, ids);
  double sum = 0;

  doc_heading(d, 2, card->repair_count ? "Repairs" : count ? "Repair to do" : "Repairs");
  for (size_t i = 0; i < cautions; i++) doc_caution(d, card->k, ids[i]);
  if (count == 0) doc_add(d, BLOCK_TEXT, "None.");
  for (size_t i = 0; i < count; i++) {
    one_repair(card, d, faults[i], card->repair_count ? &card->repairs[i] : NULL);
    if (card->repair_count && card->repairs[i].minutes > 0) sum += card->repairs[i].minutes;
  }
  if (card->parts.count) doc_add(d, BLOCK_TEXT, "Parts used: %s.", card_parts(card, d));
  if (card->minutes >= 0) doc_add(d, BLOCK_TEXT, "Minutes of the whole job: %.0f.", card->minutes);
  if (sum > 0) doc_add(d, BLOCK_TEXT, "Repair minutes in all: %.0f.", sum);
  free(ids);
  free(faults);
}

static void refit(struct card *card, struct doc *d)
{
  int *order = mem_array(card->k->cover_count + 1, sizeof *order);
  size_t count = card_refit(card, order);

  if (count) doc_heading(d, 2, "Putting it together");
  for (size_t i = 0; i < count; i++) {
    const struct cover *x = &card->k->covers[order[i]];
    struct buf b = {0};

    for (size_t j = 0; j < x->refit.count; j++) buf_addf(&b, "%s%s", j ? " " : "", x->refit.items[j]);
    if (!x->run_without) buf_addf(&b, "%sThe engine must not run before this is back.", b.len ? " " : "");
    doc_add(d, BLOCK_STEP, "%s", buf_text(&b))->label =
        doc_format(d, "%s%s", doc_capital(d, x->name), card->c->off[order[i]] ? " (off now)" : "");
    buf_free(&b);
  }
  free(order);
}

static void proof(struct card *card, struct doc *d)
{
  static const char *const said[] = {"Not done yet.", "Passed.", "Failed: the trouble came back."};
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t count = card_faults(card, faults);
  bool passed = card->proof == CARD_PROOF_PASSED;

  doc_heading(d, 2, "Proof run");
  doc_add(d, BLOCK_TEXT, "%s%s%s", said[card->proof], *card->texts[CARD_PROOF_WORDS] ? " " : "",
          card->texts[CARD_PROOF_WORDS]);
  for (size_t i = 0; i < card->c->complaint_count; i++)
    doc_add(d, BLOCK_TICK, "run as the owner told it, and it stays away: %s",
            card->k->complaints[card->c->complaints[i]].name)
        ->level = passed;
  for (size_t i = 0; i < count; i++)
    if (!card->c->mended[faults[i]] && *card->k->faults[faults[i]].proof)
      doc_add(d, BLOCK_TICK, "%s", card->k->faults[faults[i]].proof)->level = passed;
  free(faults);
}

static void service(struct card *card, struct doc *d)
{
  static const char *const states[] = {"Done", "FOUND", "Left"};
  const struct service_item *x;

  doc_heading(d, 2, "Service check");
  for (size_t i = 0; (x = service_item(card->k, card->c, i)); i++) {
    const struct card_service *s = card_serviced(card, x->id);
    struct block *b;

    if (!s) b = doc_add(d, BLOCK_TICK, "%s", x->text);
    else
      b = doc_add(d, BLOCK_TICK, "%s. %s%s%s (%s%s%s)", x->text, states[s->state], *s->text ? ": " : "", s->text,
                  s->when, *s->when && *s->who ? ", " : "", s->who);
    b->label = x->name;
    b->level = s && s->state == CARD_SERVICE_DONE;
  }
}

/* The whole job, line by line, as it was entered. */
static void account(struct card *card, struct doc *d)
{
  struct doc_table *t;

  if (card->line_count == 0) return;
  doc_heading(d, 2, "The whole job, entry by entry");
  t = doc_table(d, BLOCK_TABLE, "Everything that was entered, in order", 4);
  columns(t, (const char *const[]){"When (UTC)", "Who", "What", "Entry"}, (const int[]){16, 8, 10, 41},
          (const bool[]){false, false, false, false});
  for (size_t i = 0; i < card->line_count; i++) {
    doc_cell(d, t, card->lines[i].when);
    doc_cell(d, t, card->lines[i].who);
    doc_cell(d, t, card->lines[i].what);
    doc_cell(d, t, card->lines[i].text);
  }
}

static void notes(struct card *card, struct doc *d)
{
  if (card->note_count) doc_heading(d, 2, "Notes");
  for (size_t i = 0; i < card->note_count; i++) {
    const struct card_note *n = &card->notes[i];
    bool dated = *n->when || *n->who;

    doc_add(d, BLOCK_BULLET, "%s%s%s%s%s", n->when, *n->when && *n->who ? ", " : "", n->who,
            dated ? ": " : "", n->text);
  }
}

void card_bench(struct card *card, struct doc *d)
{
  struct course course;
  bool known = card_course(card, d, &course);

  card_head(card, d, "Job card for the bench");
  doc_heading(d, 2, "The complaint");
  card_told(card, d);
  ranking(card, d);
  if (known) {
    doc_heading(d, 2, "Belief over the course of the job");
    doc_add(d, BLOCK_FIGURE, "The chance of each leading cause after each step")->drawing =
        card_chart(d, &course);
  }
  results(card, d, &course, known);
  if (known) {
    doc_heading(d, 2, "The way to the cause");
    doc_add(d, BLOCK_FIGURE, "What each step weighed, in decibans")->drawing = card_path(d, &course);
    weights(card, d, &course);
  }
  repairs(card, d);
  refit(card, d);
  proof(card, d);
  service(card, d);
  notes(card, d);
  account(card, d);
  doc_add(d, BLOCK_SMALL,
          "Knowledge %016llx. Chances and base rates are estimates unless a source is named. The maker's "
          "manual goes before everything on this card.",
          card->k->fingerprint);
}
