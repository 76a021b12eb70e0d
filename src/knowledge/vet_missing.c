/* vet_missing.c - what an entry ought to say and does not. */
#include <string.h>

#include "knowledge/vet_parts.h"

static void text(struct vet *v, const char *kind, const char *id, const char *slot, const char *value,
                 const struct origin *o)
{
  if (!value || !value[strspn(value, " ")])
    VET_SAY(v, false, "no-words", o, "%s \"%s\": its %s is empty.", kind, id, slot);
}

static void texts(struct vet *v, const char *kind, const char *id, const char *slot, const struct texts *t,
                  const struct origin *o)
{
  for (size_t i = 0; i < t->count; i++) text(v, kind, id, slot, t->items[i], o);
}

static void faults(struct vet *v)
{
  for (size_t i = 0; i < v->k->fault_count; i++) {
    const struct fault *f = &v->k->faults[i];

    text(v, "fault", f->id, "name", f->name, &f->origin);
    text(v, "fault", f->id, "is", f->is, &f->origin);
    text(v, "fault", f->id, "comes-about", f->comes_about, &f->origin);
    text(v, "fault", f->id, "shows", f->shows, &f->origin);
    if (!f->proof[strspn(f->proof, " ")])
      VET_SAY(v, false, "no-proof", &f->origin, "fault \"%s\" says of no run that proves the repair.", f->id);
    if (f->looks_like.count == 0)
      VET_SAY(v, false, "no-looks-like", &f->origin,
              "fault \"%s\" names nothing that it is confused with, and no check that parts them.", f->id);
  }
}

static void checks(struct vet *v)
{
  for (size_t i = 0; i < v->k->check_count; i++) {
    const struct check *c = &v->k->checks[i];

    text(v, "check", c->id, "name", c->name, &c->origin);
    text(v, "check", c->id, "ask", c->ask, &c->origin);
    texts(v, "check", c->id, "labels", &c->labels, &c->origin);
    texts(v, "check", c->id, "means", &c->means, &c->origin);
    if (c->kind == KIND_ASK) continue;
    if (c->steps.count == 0)
      VET_SAY(v, false, "no-steps", &c->origin, "check \"%s\" does not say how it is made.", c->id);
    if (c->mistakes.count == 0 && (c->kind == KIND_MEASURE || c->kind == KIND_TRY))
      VET_SAY(v, false, "no-mistakes", &c->origin, "check \"%s\" names no common mistake in making it.",
              c->id);
    if (c->tools.count == 0 && c->kind == KIND_MEASURE)
      VET_SAY(v, false, "no-tools", &c->origin, "check \"%s\" is measured, but not with what.", c->id);
  }
}

static void work(struct vet *v)
{
  for (size_t i = 0; i < v->k->repair_count; i++) {
    const struct repair *r = &v->k->repairs[i];

    text(v, "repair", r->id, "name", r->name, &r->origin);
    if (r->steps.count == 0)
      VET_SAY(v, false, "no-steps", &r->origin, "repair \"%s\" does not say how it is done.", r->id);
  }
  for (size_t i = 0; i < v->k->cover_count; i++) {
    const struct cover *c = &v->k->covers[i];

    text(v, "cover", c->id, "name", c->name, &c->origin);
    if (c->minutes_off + c->minutes_on <= 0)
      VET_SAY(v, false, "no-minutes", &c->origin, "cover \"%s\" takes no minutes off and on.", c->id);
    if (c->refit.count == 0)
      VET_SAY(v, false, "no-steps", &c->origin,
              "cover \"%s\" does not say what to look at when it goes back.", c->id);
  }
}

static void words(struct vet *v)
{
  for (size_t i = 0; i < v->k->complaint_count; i++) {
    const struct complaint *c = &v->k->complaints[i];

    text(v, "complaint", c->id, "name", c->name, &c->origin);
    text(v, "complaint", c->id, "ask", c->ask, &c->origin);
    if (c->says.count == 0)
      VET_SAY(v, false, "no-words", &c->origin, "complaint \"%s\" has none of the owner's own words.", c->id);
  }
  for (size_t i = 0; i < v->k->caution_count; i++) {
    text(v, "caution", v->k->cautions[i].id, "text", v->k->cautions[i].text, &v->k->cautions[i].origin);
    text(v, "caution", v->k->cautions[i].id, "defer-to", v->k->cautions[i].defer_to,
         &v->k->cautions[i].origin);
  }
  for (size_t i = 0; i < v->k->feature_count; i++) {
    text(v, "feature", v->k->features[i].id, "name", v->k->features[i].name, &v->k->features[i].origin);
    text(v, "feature", v->k->features[i].id, "ask", v->k->features[i].ask, &v->k->features[i].origin);
  }
}

void vet_missing(struct vet *v)
{
  faults(v);
  checks(v);
  work(v);
  words(v);
}
