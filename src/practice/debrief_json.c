/* debrief_json.c - a debrief for programs; see debrief.h. */
#include <stdio.h>
#include <stdlib.h>

#include "practice/debrief.h"

#define DEBRIEF_VERSION "debrief-1"

static void put_buf(struct json *j, const char *name, struct buf *b)
{
  json_put_text(j, name, buf_text(b));
  buf_free(b);
}

static const char *fault_id(const struct knowledge *k, int fault)
{
  return fault == -2 ? "nothing-broken" : fault < 0 ? "not-listed" : k->faults[fault].id;
}

static struct json *moved_json(const struct run *r, const struct step *s)
{
  struct json *list = json_list();

  for (size_t i = 0; i < s->moved_count; i++) {
    const struct moved *m = &s->moved[i];
    struct json *j = json_object();
    struct buf why = {0};

    json_put_text(j, "fault", fault_id(r->k, m->fault));
    json_put_number(j, "before", m->before);
    json_put_number(j, "after", m->after);
    json_put_number(j, "decibans", m->db);
    debrief_why(&why, r, s, m);
    if (why.len) json_put_text(j, "why", buf_text(&why));
    if (m->sign >= 0) json_put_text(j, "basis", basis_name(r->k->signs[m->sign].origin.basis));
    buf_free(&why);
    json_push(list, j);
  }
  return list;
}

static struct json *step_json(const struct run *r, const struct step *s)
{
  struct json *j = json_object();
  struct buf b = {0};

  json_put_text(j, "act", act_name(s->entry.act));
  json_put_text(j, "id", entry_id(r->k, &s->entry));
  debrief_step(&b, r, s);
  put_buf(j, "said", &b);
  json_put_number(j, "minutes", s->minutes);
  json_put_number(j, "parts", s->parts);
  json_put_number(j, "best", s->best);
  json_put_number(j, "chosen", s->chosen);
  json_put_number(j, "given-away", s->regret);
  json_put_bool(j, "right", s->right);
  debrief_better(&b, r->k, &s->better);
  put_buf(j, "better", &b);
  if (s->entry.act == ACT_CHECK && s->result.sure > 0 && s->result.result < 0) {
    json_put_number(j, "reading", s->result.value);
    json_put_text(j, "unit", r->k->checks[s->entry.at].unit->name);
  }
  if (s->falls_on >= 0) json_put_text(j, "result", r->k->checks[s->entry.at].results.items[s->falls_on]);
  if (s->entry.sure >= 0) json_put_number(j, "sure", s->entry.sure);
  json_put_text(j, "leading", fault_id(r->k, s->leading));
  json_put_number(j, "leading-chance", s->leading_chance);
  if (s->expect) json_put_text(j, "expected", s->expect);
  if (s->rule >= 0) json_put_text(j, "rule", r->k->rules[s->rule].id);
  json_put(j, "moved", moved_json(r, s));
  return j;
}

static struct json *path_json(const struct run *r)
{
  struct json *list = json_list();

  for (size_t i = 0; i < r->step_count; i++) json_push(list, step_json(r, &r->steps[i]));
  return list;
}

struct json *debrief_json(const struct debrief *d)
{
  struct json *j = json_object(), *list = json_list();
  struct buf b = {0};
  char text[32];

  json_put_text(j, "pullcord", DEBRIEF_VERSION);
  json_put_text(j, "apprentice", d->sitting->apprentice);
  json_put_text(j, "level", level_name(d->sitting->level));
  snprintf(text, sizeof text, "%llu", (unsigned long long)d->sitting->seed);
  json_put_text(j, "seed", text);
  json_put_text(j, "machine", d->k->classes[d->run->c.machine_class].id);
  json_put_text(j, "words", hidden_words(&d->run->hidden));
  json_put_text(j, "end", run_end_name(d->run->end));
  debrief_end(&b, d->run);
  put_buf(j, "ending", &b);
  json_put_number(j, "minutes", d->run->minutes);
  json_put_number(j, "parts", d->run->parts);
  json_put_number(j, "expected", d->run->expected);
  json_put_number(j, "given-away", d->run->regret);
  json_put_number(j, "score", run_score(d->run));
  if (d->run->brier >= 0) json_put_number(j, "brier", d->run->brier);
  json_put(j, "path", path_json(d->run));
  json_put(j, "best-path", path_json(&d->best));
  for (size_t i = 0; i < d->remark_count; i++) {
    struct json *x = json_object();

    json_put_number(x, "step", (double)d->remarks[i].step + 1);
    json_put_text(x, "astray", astray_name(d->remarks[i].kind));
    json_put_number(x, "given-away", d->remarks[i].regret);
    json_put_text(x, "text", d->remarks[i].text);
    json_push(list, x);
  }
  json_put(j, "astray", list);
  list = json_list();
  for (int i = 0; i < DEBRIEF_AWAY; i++) json_push_text(list, d->away[i]);
  json_put(j, "take-away", list);
  return j;
}
