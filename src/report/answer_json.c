/* answer_json.c - the answer for programs; see answer.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "assess/deeper.h"
#include "report/answer.h"
#include "report/answer_plan.h"
#include "report/parts.h"

enum { MOST_TOGETHER = 5, MOST_RANKED = 15, MOST_EXPLAINED = 3, MOST_STEPS = 5 };

static struct json *texts(const struct texts *t)
{
  struct json *list = json_list();

  for (size_t i = 0; i < t->count; i++) json_push_text(list, t->items[i]);
  return list;
}

static void put_origin(struct json *o, const struct knowledge *k, const struct origin *origin)
{
  struct buf at = {0};

  json_put_text(o, "basis", basis_name(origin->basis));
  if (origin->source >= 0) json_put_text(o, "source", k->sources[origin->source].id);
  else if (origin->source_id) json_put_text(o, "source", origin->source_id);
  if (origin->place) json_put_text(o, "place", origin->place);
  buf_addf(&at, "%s:%d", origin->file, origin->line);
  json_put_text(o, "stands_at", buf_text(&at));
  buf_free(&at);
}

static void put_rule(struct json *o, const struct knowledge *k, int rule)
{
  if (rule < 0) return;
  json_put_text(o, "rule", k->rules[rule].id);
  json_put_text(o, "why", k->rules[rule].reason);
  put_origin(o, k, &k->rules[rule].origin);
}

static struct json *cautions(const struct knowledge *k, const int *ids, size_t count)
{
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) {
    const struct caution *c = &k->cautions[ids[i]];
    struct json *o = json_object();

    json_put_text(o, "id", c->id);
    json_put_text(o, "text", c->text);
    json_put_text(o, "defer_to", c->defer_to);
    put_origin(o, k, &c->origin);
    json_push(list, o);
  }
  return list;
}

static struct json *cautions_of(const struct knowledge *k, const struct bench_case *c, const struct refs *own,
                                const struct refs *off)
{
  int *ids = mem_array(k->caution_count + 1, sizeof *ids);
  size_t count = 0;
  struct json *list;

  part_add_cautions(k, c, own, off, ids, &count);
  list = cautions(k, ids, count);
  free(ids);
  return list;
}

static struct json *covers(const struct knowledge *k, const struct bench_case *c, const struct refs *off)
{
  int *order = mem_array(k->cover_count + 1, sizeof *order);
  size_t count = part_covers(k, c, off, order);
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) json_push_text(list, k->covers[order[i]].id);
  free(order);
  return list;
}

static struct json *ranking(const struct knowledge *k, const struct assessment *a)
{
  struct json *list = json_list();
  size_t shown = part_shown(k, a, MOST_RANKED);

  for (size_t i = 0; i < shown; i++) {
    const struct ranked *r = &a->ranking[i];
    struct json *o = json_object();

    json_put_text(o, "fault", part_fault_id(k, r->fault));
    json_put_text(o, "name", part_fault_name(k, r->fault));
    json_put_number(o, "chance", r->blame);
    json_put_number(o, "there", r->belief);
    if (a->bounded) {
      json_put_number(o, "there_at_least", r->low);
      json_put_number(o, "there_at_most", r->high);
    }
    if (r->fault >= 0) {
      json_put_text(o, "system", k->faults[r->fault].system);
      json_put_text(o, "sort", k->faults[r->fault].sort);
      json_put_text(o, "repair", k->faults[r->fault].repair_id);
    }
    json_push(list, o);
  }
  return list;
}

static struct json *evidence_line(const struct knowledge *k, const struct evidence *e, int fault, double db)
{
  struct json *o = json_object();
  const struct sign *s = part_sign(k, e, fault);
  struct buf b = {0};

  part_evidence(&b, k, e);
  json_put_text(o, "what", buf_text(&b));
  buf_free(&b);
  if (e->kind == EVIDENCE_COMPLAINT) json_put_text(o, "complaint", k->complaints[e->subject].id);
  if (e->kind == EVIDENCE_RESULT || e->kind == EVIDENCE_IMPLIED) {
    json_put_text(o, "check", k->checks[e->subject].id);
    json_put_text(o, "result", k->checks[e->subject].results.items[e->result]);
    json_put_bool(o, "implied", e->kind == EVIDENCE_IMPLIED);
  }
  json_put_number(o, "counts", e->sure);
  json_put_number(o, "decibans", db);
  if (e->rule >= 0) put_rule(o, k, e->rule);
  if (e->weakened_by >= 0) json_put_text(o, "weakened_by", k->rules[e->weakened_by].id);
  if (s) {
    struct json *sign = json_object();

    json_put_number(sign, "chance", s->chance);
    if (*s->why) json_put_text(sign, "why", s->why);
    put_origin(sign, k, &s->origin);
    json_put(o, "sign", sign);
  }
  return o;
}

static struct json *explanation(const struct knowledge *k, const struct assessment *a, const double *odds,
                                int fault)
{
  size_t places = a->net.count, n = a->net.evidence_count;
  size_t p = fault >= 0 ? (size_t)a->net.place_of[fault] : places - 1;
  struct json *o = json_object(), *list = json_list(), *open = json_list();

  json_put_text(o, "fault", part_fault_id(k, fault));
  json_put_number(o, "start_decibans", odds[p]);
  for (size_t i = 0; i < n; i++)
    json_push(list, evidence_line(k, &a->net.evidence[i], fault, odds[(i + 1) * places + p] - odds[i * places + p]));
  json_put(o, "evidence", list);
  json_put_number(o, "total_decibans", odds[n * places + p]);
  for (size_t i = 0; i < n; i++)
    if (part_unexplained(k, &a->net.evidence[i], fault)) {
      struct buf b = {0};

      part_evidence(&b, k, &a->net.evidence[i]);
      json_push_text(open, buf_text(&b));
      buf_free(&b);
    }
  json_put(o, "unexplained", open);
  return o;
}

static struct json *explanations(const struct knowledge *k, struct assessment *a)
{
  struct json *list = json_list();
  double *odds = assess_odds(a);

  for (size_t i = 0; odds && i < a->ranking_count && i < MOST_EXPLAINED; i++)
    json_push(list, explanation(k, a, odds, a->ranking[i].fault));
  free(odds);
  return list;
}

static struct json *together(const struct knowledge *k, struct assessment *a)
{
  struct json *list = json_list();
  struct together sets[MOST_TOGETHER];
  size_t n = deeper_together(a, k, sets, MOST_TOGETHER);

  for (size_t i = 0; i < n; i++) {
    struct json *o = json_object(), *faults = json_list();

    for (size_t j = 0; j < sets[i].count; j++) json_push_text(faults, part_fault_id(k, sets[i].fault[j]));
    json_put(o, "faults", faults);
    json_put_number(o, "chance", sets[i].chance);
    json_push(list, o);
  }
  return list;
}

static struct json *accounted(const struct knowledge *k, struct assessment *a)
{
  struct json *list = json_list();
  struct accounted *by = mem_array(a->net.evidence_count + 1, sizeof *by);
  size_t n = deeper_accounted(a, by);

  for (size_t i = 0; i < n; i++) {
    struct json *o = json_object();
    struct buf b = {0};

    part_evidence(&b, k, &a->net.evidence[by[i].evidence]);
    json_put_text(o, "what", buf_text(&b));
    json_put_text(o, "by", part_fault_id(k, by[i].fault));
    json_put_number(o, "chance", by[i].chance);
    json_push(list, o);
    buf_free(&b);
  }
  free(by);
  return list;
}

/* The estimate that the first place hangs on; empty when none alone can change it. */
static struct json *hangs_on(const struct knowledge *k, struct assessment *a)
{
  struct json *o = json_object();
  struct sensitivity s;
  struct buf b = {0};
  int evidence;

  if (!deeper_hangs_on(a, &s, &evidence)) return o;
  part_estimate(&b, k, a, &s, evidence);
  json_put_text(o, "estimate", buf_text(&b));
  json_put_number(o, "now", s.now);
  json_put_number(o, "tipped", s.tipped);
  json_put_number(o, "odds_factor", s.factor);
  json_put_text(o, "against", part_fault_id(k, a->ranking[1].fault));
  buf_free(&b);
  return o;
}

static struct json *outcomes(const struct knowledge *k, const struct next_step *s)
{
  const struct check *c = &k->checks[s->check];
  struct json *list = json_list();

  for (int i = 0; i < s->outcome_count; i++) {
    const struct next_outcome *n = &s->outcomes[i];
    struct json *o = json_object();

    json_put_text(o, "result", c->results.items[n->result]);
    json_put_text(o, "label", c->labels.items[n->result]);
    json_put_text(o, "means", c->means.items[n->result]);
    json_put_number(o, "chance", n->chance);
    json_put_text(o, "then_first", part_fault_id(k, n->fault));
    json_put_number(o, "then_chance", n->belief);
    json_push(list, o);
  }
  return list;
}

static struct json *step(const struct knowledge *k, const struct bench_case *bench, const struct next_step *s)
{
  const struct check *c = &k->checks[s->check];
  struct json *o = json_object();

  json_put_text(o, "check", c->id);
  json_put_text(o, "name", c->name);
  json_put_text(o, "ask", c->ask);
  json_put_number(o, "minutes", s->minutes);
  json_put_number(o, "saves_minutes", s->saving);
  json_put_number(o, "saves_per_minute", s->per_minute);
  if (s->ask_first >= 0) {
    struct json *r = json_object();

    put_rule(r, k, s->ask_first);
    json_put(o, "asked_first_by", r);
  }
  json_put(o, "cautions", cautions_of(k, bench, &c->cautions, &c->off));
  json_put(o, "covers_off", covers(k, bench, &c->off));
  json_put(o, "tools", texts(&c->tools));
  json_put(o, "steps", texts(&c->steps));
  json_put(o, "mistakes", texts(&c->mistakes));
  if (*c->destroys) json_put_text(o, "may_destroy", c->destroys);
  json_put(o, "outcomes", outcomes(k, s));
  return o;
}

static struct json *next_steps(const struct knowledge *k, const struct bench_case *c, const struct assessment *a)
{
  struct json *list = json_list();

  for (size_t i = 0; i < a->plan.count && i < MOST_STEPS; i++) json_push(list, step(k, c, &a->plan.steps[i]));
  return list;
}

static struct json *repair(const struct knowledge *k, const struct bench_case *c, int fault)
{
  const struct repair *r = &k->repairs[k->faults[fault].repair];
  struct json *o = json_object();

  json_put_text(o, "for", k->faults[fault].id);
  json_put_text(o, "repair", r->id);
  json_put_text(o, "name", r->name);
  json_put(o, "cautions", cautions_of(k, c, &r->cautions, &r->off));
  json_put_number(o, "minutes", r->minutes);
  json_put(o, "covers_off", covers(k, c, &r->off));
  json_put(o, "parts", texts(&r->parts));
  json_put(o, "consumables", texts(&r->consumables));
  json_put(o, "tools", texts(&r->tools));
  json_put(o, "steps", texts(&r->steps));
  if (*r->reuse) json_put_text(o, "reuse", r->reuse);
  json_put_text(o, "proof", k->faults[fault].proof);
  put_origin(o, k, &r->origin);
  return o;
}

/* Conclusions of some kinds, each with its rule. */
static struct json *notes(const struct knowledge *k, const struct assessment *a, enum conclusion_kind kind,
                          const char *subject)
{
  struct json *list = json_list();

  for (size_t i = 0; i < a->drawn.count; i++) {
    const struct conclusion *d = &a->drawn.items[i];
    struct json *o;

    if (d->kind != kind) continue;
    o = json_object();
    if (kind == HAND_OVER || kind == ADVISE) json_put_text(o, subject, d->word);
    else if (kind == WARN) json_put_text(o, subject, k->cautions[d->a].id);
    else json_put_text(o, subject, k->checks[d->a].id);
    if (kind == CLASH) json_put_text(o, "against", k->checks[d->b].id);
    if (kind == WEAKENS) json_put_number(o, "by", d->number);
    put_rule(o, k, d->rule);
    json_push(list, o);
  }
  return list;
}

struct json *answer_json(const struct knowledge *k, const struct bench_case *c, struct assessment *a)
{
  struct json *o = json_object();
  int *ids = mem_array(k->caution_count + 1, sizeof *ids);
  char print[24];

  assess_advise(a, c);
  snprintf(print, sizeof print, "%016llx", k->fingerprint);
  json_put_text(o, "pullcord", ANSWER_VERSION);
  json_put_text(o, "knowledge", print);
  json_put(o, "words", answer_words_json(k, c));
  json_put_text(o, "disposition", disposition_name(a->disposition));
  json_put(o, "hand_over", notes(k, a, HAND_OVER, "to"));
  json_put(o, "cautions", cautions(k, ids, part_cautions(k, c, a, ids)));
  json_put_bool(o, "exact", !a->bounded);
  json_put(o, "ranking", ranking(k, a));
  json_put(o, "readings", answer_readings_json(k, c, a));
  json_put_number(o, "nothing_broken", a->sound);
  json_put_number(o, "not_listed", a->belief[a->net.count - 1]);
  json_put_number(o, "two_or_more", a->two_or_more);
  json_put(o, "together", together(k, a));
  json_put(o, "accounted_for", accounted(k, a));
  json_put(o, "hangs_on", hangs_on(k, a));
  json_put(o, "explanations", explanations(k, a));
  json_put(o, "next", next_steps(k, c, a));
  if (a->disposition == DISPOSITION_REPAIR) json_put(o, "repair", repair(k, c, a->ranking[0].fault));
  json_put(o, "contradictions", notes(k, a, CLASH, "check"));
  json_put(o, "weakened", notes(k, a, WEAKENS, "check"));
  json_put(o, "unsafe", notes(k, a, UNSAFE, "check"));
  json_put(o, "pointless", notes(k, a, POINTLESS, "check"));
  json_put(o, "advice", notes(k, a, ADVISE, "about"));
  json_put(o, "plan", answer_plan_json(k, a));
  free(ids);
  return o;
}
