/* card_owner.c - the card that goes home with the machine, in plain words. */
#include <stdlib.h>
#include <string.h>

#include "model/service.h"
#include "report/card_parts.h"
#include "report/parts.h"
#include "report/svg_chart.h"

enum { MOST_SHOWN_BY = 3, MOST_CANDIDATES = 3 };
static const double worth_telling = 2; /* decibans for the cause that was found */

void card_head(struct card *card, struct doc *d, const char *title)
{
  const char *const *t = card->texts, *more, *headline = card_outcome(card, d, &more);
  struct doc_table *facts;

  doc_heading(d, 1, *t[CARD_MACHINE] ? doc_format(d, "%s: %s", title, t[CARD_MACHINE]) : title);
  facts = doc_table(d, BLOCK_FACTS, "The job", 2);
  doc_fact(d, facts, "Bench", t[CARD_SHOP]);
  doc_fact(d, facts, "Job", t[CARD_JOB]);
  doc_fact(d, facts, "Owner", t[CARD_OWNER_REFERENCE]);
  doc_fact(d, facts, "Came in", t[CARD_OPENED]);
  doc_fact(d, facts, card->ending == CARD_HANDED_OVER ? "Handed over" : "Went home", t[CARD_CLOSED]);
  doc_fact(d, facts, "Done by", t[CARD_WHO]);
  if (facts->rows == 0) d->count--; /* nothing to tell */
  doc_add(d, BLOCK_VERDICT, "%s", more)->label = headline;
}

void card_told(struct card *card, struct doc *d)
{
  const struct bench_case *c = card->c;
  struct buf b = {0};

  if (*card->texts[CARD_WORDS]) doc_add(d, BLOCK_QUOTE, "%s", card->texts[CARD_WORDS]);
  for (size_t i = 0; i < c->complaint_count; i++)
    buf_addf(&b, "%s%s", i ? "; " : "", card->k->complaints[c->complaints[i]].name);
  if (b.len) doc_add(d, BLOCK_TEXT, "We took that as: %s.", buf_text(&b));
  else if (!*card->texts[CARD_WORDS]) doc_add(d, BLOCK_TEXT, "No complaint is written down.");
  buf_free(&b);
}

/* What step s of the course weighed for its first cause, decibans; 0 for what is no result. */
static double told_by(const struct course *c, size_t s)
{
  return c->steps[s].kind == COURSE_RESULT ? c->odds[s * c->cause_count] - c->odds[(s - 1) * c->cause_count]
                                           : 0;
}

/* The results that spoke most for the first cause of the course, in the order of the job. */
static void shown_by(struct doc *d, const struct course *course)
{
  bool said = false;

  for (size_t s = 1; s < course->step_count; s++) {
    double db = told_by(course, s);
    size_t stronger = 0;

    for (size_t t = 1; t < course->step_count; t++)
      stronger += told_by(course, t) > db || (t < s && told_by(course, t) == db);
    if (db < worth_telling || stronger >= MOST_SHOWN_BY) continue;
    if (!said) doc_add(d, BLOCK_TEXT, "What showed it:");
    said = true;
    doc_add(d, BLOCK_BULLET, "%s", course->steps[s].what);
  }
}

static void candidates(struct card *card, struct doc *d)
{
  bool bounded = card->a->bounded; /* no chance is known then */
  size_t shown = part_shown(card->k, card->a, MOST_CANDIDATES);
  char percent[16];

  if (card->a->disposition == DISPOSITION_NOTHING_BROKEN) {
    doc_add(d, BLOCK_TEXT, "Everything we saw can come about without a broken part.");
    return;
  }
  doc_add(d, BLOCK_TEXT, "%s come first%s:",
          card->ending == CARD_OPEN ? "Nothing is certain yet. These"
                                    : "Nothing was found for certain. These",
          bounded ? "" : ", with the chance that each is behind the trouble");
  for (size_t i = 0; i < shown; i++) {
    const struct ranked *r = &card->a->ranking[i];

    doc_add(d, BLOCK_BULLET, "%s%s%s", part_fault_name(card->k, r->fault), bounded ? "" : ": ",
            bounded ? "" : card_percent(percent, r->blame));
  }
}

/* What cured it comes before what was put right in vain; otherwise the order stays. */
static void cured_first(const struct card *card, int *faults, size_t count)
{
  for (size_t i = 1; i < count; i++)
    for (size_t j = i; j > 0 && !card->c->mended[faults[j]] && card->c->mended[faults[j - 1]]; j--) {
      int other = faults[j];

      faults[j] = faults[j - 1];
      faults[j - 1] = other;
    }
}

/* A fault that was put right: what it was, how it came about, what showed it; of one that was
 * not behind the trouble only that. */
static void one_found(struct card *card, struct doc *d, const struct course *course, int fault)
{
  const struct fault *f = &card->k->faults[fault];

  if (card->c->mended[fault]) {
    doc_add(d, BLOCK_TEXT,
            "%s. This was put right, but it was not what you brought it in for: that trouble stayed.",
            doc_capital(d, f->name));
    return;
  }
  doc_add(d, BLOCK_TEXT, "%s. %s", doc_capital(d, f->name), f->is);
  if (*f->comes_about) doc_add(d, BLOCK_TEXT, "How it comes about: %s", f->comes_about);
  if (course && course->causes[0] == fault) shown_by(d, course);
}

static void found(struct card *card, struct doc *d, const struct course *course)
{
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t count = card_faults(card, faults);

  doc_heading(d, 2, "What we found");
  cured_first(card, faults, count);
  for (size_t i = 0; i < count; i++) one_found(card, d, course, faults[i]);
  if (count == 0 && card->ending != CARD_MENDED && card->ending != CARD_NOTHING_BROKEN) candidates(card, d);
  else if (count == 0 && card->ending == CARD_MENDED)
    doc_add(d, BLOCK_TEXT, "What was wrong is not written down.");
  if (course) {
    struct block *b = doc_add(d, BLOCK_FIGURE, "How sure we became, step by step");

    b->drawing = card_chart(d, course);
  }
  free(faults);
}

static void one_repair(struct card *card, struct doc *d, const struct card_repair *r)
{
  const struct repair *how = &card->k->repairs[card->k->faults[r->fault].repair];
  struct buf b = {0};

  buf_addf(&b, "%s", doc_capital(d, how->name));
  if (r->minutes >= 0) buf_addf(&b, ", %.0f minutes", r->minutes);
  for (size_t i = 0; i < r->parts.count; i++) buf_addf(&b, "%s%s", i ? ", " : ". New: ", r->parts.items[i]);
  buf_add(&b, ".");
  doc_add(d, BLOCK_BULLET, "%s", buf_text(&b));
  buf_free(&b);
}

/* The service check in one line: what was looked at and is right. */
static void serviced(struct card *card, struct doc *d)
{
  struct buf b = {0};

  for (size_t i = 0; i < card->service_count; i++) {
    int at = service_find(card->services[i].item);

    if (at < 0 || card->services[i].state != CARD_SERVICE_DONE) continue;
    buf_addf(&b, "%s%s", b.len ? ", " : "", service_item(card->k, card->c, (size_t)at)->name);
  }
  for (size_t i = 0; i < b.len; i++)
    if (b.text[i] >= 'A' && b.text[i] <= 'Z') b.text[i] = (char)(b.text[i] - 'A' + 'a');
  if (b.len) doc_add(d, BLOCK_BULLET, "Service check done: %s.", buf_text(&b));
  buf_free(&b);
}

static void done(struct card *card, struct doc *d)
{
  doc_heading(d, 2, "What we did");
  if (card->c->result_count)
    doc_add(d, BLOCK_BULLET, "Looked into it: %zu %s.", card->c->result_count,
            card->c->result_count == 1 ? "check" : "checks");
  for (size_t i = 0; i < card->repair_count; i++) one_repair(card, d, &card->repairs[i]);
  if (card->repair_count == 0) {
    const struct assessment *a = card->a;

    if (card->ending == CARD_OPEN && a->disposition == DISPOSITION_REPAIR && a->ranking[0].fault >= 0) {
      const struct repair *r = &card->k->repairs[card->k->faults[a->ranking[0].fault].repair];

      doc_add(d, BLOCK_BULLET, "Nothing has been repaired yet. To do: %s, about %.0f minutes.", r->name,
              r->minutes);
    } else doc_add(d, BLOCK_BULLET, "No repair is written down.");
  }
  if (card->parts.count) doc_add(d, BLOCK_BULLET, "New parts: %s.", card_parts(card, d));
  if (card->minutes >= 0) doc_add(d, BLOCK_BULLET, "Time in all: %.0f minutes.", card->minutes);
  if (card->proof != CARD_PROOF_NONE)
    doc_add(d, BLOCK_BULLET, "Ran it the way you told us the trouble comes. It %s. %s",
            card->proof == CARD_PROOF_PASSED ? "stayed away" : "came back", card->texts[CARD_PROOF_WORDS]);
  else if (*card->texts[CARD_PROOF_WORDS]) doc_add(d, BLOCK_BULLET, "%s", card->texts[CARD_PROOF_WORDS]);
  serviced(card, d);
}

static void watch(struct card *card, struct doc *d)
{
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t count = card_faults(card, faults);

  doc_heading(d, 2, "What to watch");
  for (size_t i = 0; i < card->service_count; i++) {
    const struct card_service *x = &card->services[i];
    int at = service_find(x->item);

    if (at < 0 || x->state == CARD_SERVICE_DONE) continue;
    doc_add(d, BLOCK_BULLET, "%s: %s.",
            x->state == CARD_SERVICE_FOUND ? "still to be put right" : "not looked at", x->text)
        ->label = service_item(card->k, card->c, (size_t)at)->name;
  }
  for (size_t i = 0; i < count; i++)
    if (!card->c->mended[faults[i]] && *card->k->faults[faults[i]].shows)
      doc_add(d, BLOCK_BULLET, "This would show that it is back: %s", card->k->faults[faults[i]].shows);
  doc_add(d, BLOCK_BULLET,
          "After the first hour of work: no drips of fuel or oil underneath, nothing loose.");
  doc_add(d, BLOCK_BULLET,
          "Each time: the stop switch must stop it at once. If it does not, leave it standing.");
  doc_add(d, BLOCK_BULLET, "If the trouble comes back, stop, and bring this card with the machine.");
  free(faults);
}

void card_owner(struct card *card, struct doc *d)
{
  int *ids = mem_array(card->k->caution_count + 1, sizeof *ids);
  size_t count = card_owner_cautions(card, ids);
  struct course course;
  bool known = card_course(card, d, &course);
  const char *line;

  card_head(card, d, "Job card");
  doc_heading(d, 2, "What you told us");
  card_told(card, d);
  found(card, d, known ? &course : NULL);
  done(card, d);
  watch(card, d);
  doc_heading(d, 2, "How to store it");
  for (size_t i = 0; (line = card_storing(card, i)); i++) doc_add(d, BLOCK_BULLET, "%s", line);
  doc_add(d, BLOCK_SMALL,
          "This is common practice. The maker's book for this machine goes before everything on this "
          "card.");
  doc_heading(d, 2, "For your safety");
  for (size_t i = 0; i < count; i++) doc_caution(d, card->k, ids[i]);
  free(ids);
}
