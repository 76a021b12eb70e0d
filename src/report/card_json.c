/* card_json.c - the card for programs (docs/schema/card-1.json). */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "model/service.h"
#include "report/card_parts.h"
#include "report/parts.h"
#include "units/parse.h"

enum { MOST_RANKED = 15 };

static void put_some(struct json *o, const char *name, const char *text)
{
  if (*text) json_put_text(o, name, text);
}

static struct json *texts(const struct texts *t)
{
  struct json *list = json_list();

  for (size_t i = 0; i < t->count; i++) json_push_text(list, t->items[i]);
  return list;
}

static void put_origin(struct json *o, const struct knowledge *k, const struct origin *origin)
{
  json_put_text(o, "basis", basis_name(origin->basis));
  if (origin->source >= 0) json_put_text(o, "source", k->sources[origin->source].id);
  if (origin->place) json_put_text(o, "place", origin->place);
}

static struct json *cautions(const struct card *card, enum card_reader reader)
{
  int *ids = mem_array(card->k->caution_count + 1, sizeof *ids);
  size_t count = reader == CARD_OWNER ? card_owner_cautions(card, ids) : card_bench_cautions(card, ids);
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) {
    const struct caution *c = &card->k->cautions[ids[i]];
    struct json *o = json_object();

    json_put_text(o, "id", c->id);
    json_put_text(o, "text", c->text);
    json_put_text(o, "defer_to", c->defer_to);
    put_origin(o, card->k, &c->origin);
    json_push(list, o);
  }
  free(ids);
  return list;
}

static struct json *complaints(const struct card *card)
{
  struct json *list = json_list();

  for (size_t i = 0; i < card->c->complaint_count; i++) {
    const struct complaint *c = &card->k->complaints[card->c->complaints[i]];
    struct json *o = json_object();

    json_put_text(o, "id", c->id);
    json_put_text(o, "name", c->name);
    json_push(list, o);
  }
  return list;
}

static struct json *found(const struct card *card)
{
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t count = card_faults(card, faults);
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) {
    const struct fault *f = &card->k->faults[faults[i]];
    struct json *o = json_object();

    json_put_text(o, "fault", f->id);
    json_put_text(o, "name", f->name);
    json_put_text(o, "is", f->is);
    put_some(o, "comes_about", f->comes_about);
    put_some(o, "shows", f->shows);
    json_put_bool(o, "complaint_stayed", card->c->mended[faults[i]]);
    put_origin(o, card->k, &f->origin);
    json_push(list, o);
  }
  free(faults);
  return list;
}

static struct json *repairs(const struct card *card)
{
  struct json *list = json_list();

  for (size_t i = 0; i < card->repair_count; i++) {
    const struct card_repair *done = &card->repairs[i];
    const struct repair *r = &card->k->repairs[card->k->faults[done->fault].repair];
    struct json *o = json_object();

    json_put_text(o, "fault", card->k->faults[done->fault].id);
    json_put_text(o, "repair", r->id);
    json_put_text(o, "name", r->name);
    json_put_number(o, "minutes_listed", r->minutes);
    if (done->minutes >= 0) json_put_number(o, "minutes", done->minutes);
    json_put(o, "parts", texts(&done->parts));
    put_some(o, "when", done->when);
    put_some(o, "who", done->who);
    json_push(list, o);
  }
  return list;
}

static struct json *proof(const struct card *card)
{
  static const char *const names[] = {"none", "passed", "failed"};
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t count = card_faults(card, faults);
  struct json *o = json_object(), *repeat = json_list();

  json_put_text(o, "run", names[card->proof]);
  put_some(o, "words", card->texts[CARD_PROOF_WORDS]);
  for (size_t i = 0; i < count; i++)
    if (!card->c->mended[faults[i]]) json_push_text(repeat, card->k->faults[faults[i]].proof);
  json_put(o, "repeat", repeat);
  free(faults);
  return o;
}

static struct json *storing(const struct card *card)
{
  struct json *list = json_list();
  const char *line;

  for (size_t i = 0; (line = card_storing(card, i)); i++) json_push_text(list, line);
  return list;
}

/* ---- for the bench -------------------------------------------------------------------- */

static struct json *results(const struct card *card)
{
  struct json *list = json_list();

  for (size_t i = 0; i < card->c->result_count; i++) {
    const struct case_result *r = &card->c->results[i];
    const struct check *c = &card->k->checks[r->check];
    struct json *o = json_object();
    char text[64];

    json_put_text(o, "check", c->id);
    json_put_text(o, "name", c->name);
    if (r->result >= 0 && r->sure > 0) {
      json_put_text(o, "result", c->results.items[r->result]);
      json_put_text(o, "label", c->labels.items[r->result]);
    } else if (r->sure > 0) {
      amount_format(r->value * c->unit->factor + c->unit->offset, c->unit, text, sizeof text);
      json_put_text(o, "reading", text);
    }
    json_put_number(o, "sure", r->sure);
    for (size_t j = card->entry_count; j-- > 0;)
      if (card->entries[j].check == r->check) {
        put_some(o, "when", card->entries[j].when);
        put_some(o, "who", card->entries[j].who);
        break;
      }
    json_push(list, o);
  }
  return list;
}

static struct json *ranking(const struct card *card)
{
  struct json *list = json_list();
  size_t shown = part_shown(card->k, card->a, MOST_RANKED);

  for (size_t i = 0; i < shown; i++) {
    const struct ranked *r = &card->a->ranking[i];
    struct json *o = json_object();

    json_put_text(o, "fault", part_fault_id(card->k, r->fault));
    json_put_text(o, "name", part_fault_name(card->k, r->fault));
    json_put_number(o, "chance", r->blame);
    json_put_number(o, "there", r->belief);
    json_push(list, o);
  }
  return list;
}

static struct json *weight(const struct card *card, const struct evidence *e, int fault, double db)
{
  const struct sign *s = part_sign(card->k, e, fault);
  struct json *o = json_object();
  struct buf b = {0};

  part_evidence(&b, card->k, e);
  json_put_text(o, "what", buf_text(&b));
  buf_free(&b);
  json_put_number(o, "decibans", db);
  json_put_number(o, "counts", e->sure);
  if (e->rule >= 0 && e->kind != EVIDENCE_RESULT) {
    json_put_text(o, "rule", card->k->rules[e->rule].id);
    put_origin(o, card->k, &card->k->rules[e->rule].origin);
  } else if (s) {
    json_put_number(o, "chance", s->chance);
    put_origin(o, card->k, &s->origin);
  }
  return o;
}

static struct json *weights(const struct card *card, const struct course *course)
{
  const struct casenet *n = &card->a->net;
  double *odds = assess_odds(card->a);
  struct json *list = json_list();

  for (size_t i = 0; odds && i < course->cause_count; i++) {
    int fault = course->causes[i];
    size_t p = fault >= 0 ? (size_t)n->place_of[fault] : n->count - 1;
    struct json *o = json_object(), *evidence = json_list();

    json_put_text(o, "fault", part_fault_id(card->k, fault));
    json_put_number(o, "start_decibans", odds[p]);
    for (size_t e = 0; e < n->evidence_count; e++)
      json_push(evidence,
                weight(card, &n->evidence[e], fault, odds[(e + 1) * n->count + p] - odds[e * n->count + p]));
    json_put(o, "evidence", evidence);
    json_put_number(o, "total_decibans", odds[n->evidence_count * n->count + p]);
    json_push(list, o);
  }
  free(odds);
  return list;
}

/* What the chart shows: after each step the chance of each cause. */
static struct json *course_json(const struct card *card, const struct course *course)
{
  struct json *list = json_list();

  for (size_t s = 0; s < course->step_count; s++) {
    struct json *o = json_object(), *chances = json_object();

    json_put_number(o, "step", (double)s);
    json_put_text(o, "what", course->steps[s].what);
    for (size_t i = 0; i < course->cause_count; i++)
      json_put_number(chances, part_fault_id(card->k, course->causes[i]),
                      card_chance_of(course->odds[s * course->cause_count + i]));
    json_put(o, "chances", chances);
    json_push(list, o);
  }
  return list;
}

static struct json *refit(const struct card *card)
{
  int *order = mem_array(card->k->cover_count + 1, sizeof *order);
  size_t count = card_refit(card, order);
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) {
    const struct cover *x = &card->k->covers[order[i]];
    struct json *o = json_object();

    json_put_text(o, "cover", x->id);
    json_put_text(o, "name", x->name);
    json_put_bool(o, "off_now", card->c->off[order[i]]);
    json_put(o, "notes", texts(&x->refit));
    json_push(list, o);
  }
  free(order);
  return list;
}

static struct json *service(const struct card *card)
{
  static const char *const states[] = {"done", "found", "left"};
  struct json *list = json_list();
  const struct service_item *x;

  for (size_t i = 0; (x = service_item(card->k, card->c, i)); i++) {
    const struct card_service *s = card_serviced(card, x->id);
    struct json *o = json_object();

    json_put_text(o, "item", x->id);
    json_put_text(o, "what", x->name);
    json_put_text(o, "check", x->text);
    json_put_text(o, "state", s ? states[s->state] : "open");
    if (s) {
      put_some(o, "words", s->text);
      put_some(o, "when", s->when);
      put_some(o, "who", s->who);
    }
    json_push(list, o);
  }
  return list;
}

static struct json *account(const struct card *card)
{
  struct json *list = json_list();

  for (size_t i = 0; i < card->line_count; i++) {
    struct json *o = json_object();

    put_some(o, "when", card->lines[i].when);
    put_some(o, "who", card->lines[i].who);
    json_put_text(o, "what", card->lines[i].what);
    json_put_text(o, "text", card->lines[i].text);
    json_push(list, o);
  }
  return list;
}

static struct json *notes(const struct card *card)
{
  struct json *list = json_list();

  for (size_t i = 0; i < card->note_count; i++) {
    struct json *o = json_object();

    json_put_text(o, "text", card->notes[i].text);
    put_some(o, "when", card->notes[i].when);
    put_some(o, "who", card->notes[i].who);
    json_push(list, o);
  }
  return list;
}

static void put_bench(struct json *o, struct card *card, struct doc *d)
{
  struct course course;
  bool known = card_course(card, d, &course);

  json_put_bool(o, "exact", !card->a->bounded);
  json_put(o, "results", results(card));
  json_put(o, "ranking", ranking(card));
  if (!card->a->bounded) json_put_number(o, "nothing_broken", card->a->sound);
  json_put(o, "course", known ? course_json(card, &course) : json_list());
  json_put(o, "weights", known ? weights(card, &course) : json_list());
  json_put(o, "refit", refit(card));
  json_put(o, "service", service(card));
  json_put(o, "notes", notes(card));
  json_put(o, "account", account(card));
}

struct json *card_json(struct card *card, enum card_reader reader)
{
  static const char *const endings[] = {"open", "mended", "nothing-broken", "handed-over", "not-mended"};
  static const struct {
    const char *name;
    enum card_text text;
  } heads[] = {{"job", CARD_JOB},         {"shop", CARD_SHOP},
               {"machine", CARD_MACHINE}, {"owner", CARD_OWNER_REFERENCE},
               {"words", CARD_WORDS},     {"opened", CARD_OPENED},
               {"closed", CARD_CLOSED},   {"who", CARD_WHO}};
  struct doc d = {.arena = &card->arena};
  struct json *o = json_object(), *outcome = json_object();
  const char *headline, *more;
  char print[24];

  snprintf(print, sizeof print, "%016llx", card->k->fingerprint);
  json_put_text(o, "pullcord", CARD_VERSION);
  json_put_text(o, "for", reader == CARD_OWNER ? "owner" : "bench");
  json_put_text(o, "knowledge", print);
  for (size_t i = 0; i < sizeof heads / sizeof heads[0]; i++)
    put_some(o, heads[i].name, card->texts[heads[i].text]);
  if (card->c->machine_class >= 0) json_put_text(o, "class", card->k->classes[card->c->machine_class].id);
  json_put(o, "complaints", complaints(card));
  headline = card_outcome(card, &d, &more);
  json_put_text(outcome, "ending", endings[card->ending]);
  json_put_text(outcome, "disposition", disposition_name(card->a->disposition));
  json_put_text(outcome, "headline", headline);
  json_put_text(outcome, "words", more);
  json_put(o, "outcome", outcome);
  json_put(o, "found", found(card));
  json_put(o, "repairs", repairs(card));
  json_put(o, "parts", texts(&card->parts));
  if (card->minutes >= 0) json_put_number(o, "minutes", card->minutes);
  json_put(o, "proof", proof(card));
  json_put(o, "storing", storing(card));
  json_put(o, "cautions", cautions(card, reader));
  if (reader == CARD_BENCH) put_bench(o, card, &d);
  return o;
}
