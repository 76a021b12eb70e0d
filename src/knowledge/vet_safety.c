/* vet_safety.c - findings that could hurt somebody, and claims without a place. */
#include <string.h>

#include "knowledge/vet_parts.h"

/* Only asking, and looking at a stopped engine, can be done without any hazard. */
static bool can_hurt(const struct check *c)
{
  if (c->kind == KIND_ASK) return false;
  return c->kind != KIND_LOOK || strcmp(c->engine, "running") == 0 || strcmp(c->engine, "hot") == 0 ||
         strcmp(c->engine, "cranking") == 0;
}

static void cautions(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->check_count; i++)
    if (k->checks[i].cautions.count == 0 && can_hurt(&k->checks[i]))
      VET_SAY(v, true, "no-caution", &k->checks[i].origin,
              "check \"%s\" is more than looking at a stopped engine, but names no caution.",
              k->checks[i].id);
  for (size_t i = 0; i < k->cover_count; i++)
    if (k->covers[i].cautions.count == 0)
      VET_SAY(v, true, "no-caution", &k->covers[i].origin,
              "cover \"%s\" comes off by hand, but names no caution.", k->covers[i].id);
  for (size_t i = 0; i < k->repair_count; i++)
    if (k->repairs[i].cautions.count == 0)
      VET_SAY(v, true, "no-caution", &k->repairs[i].origin, "repair \"%s\" names no caution.",
              k->repairs[i].id);
}

/* The engine runs for the check while a cover is off that it must not run without. */
static void running_uncovered(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->check_count; i++) {
    const struct check *c = &k->checks[i];

    if (strcmp(c->engine, "running") != 0) continue;
    for (size_t j = 0; j < c->off.count; j++)
      for (int at = c->off.at[j]; at >= 0; at = k->covers[at].under)
        if (!k->covers[at].run_without)
          VET_SAY(
              v, true, "runs-uncovered", &c->origin,
              "check \"%s\" runs the engine with cover \"%s\" off, which says that it must not run without.",
              c->id, k->covers[at].id);
  }
}

static void place(struct vet *v, const char *kind, const char *id, const struct origin *o)
{
  if (o->basis == BASIS_PUBLISHED && (!o->source_id || !o->place || !*o->place))
    VET_SAY(v, true, "no-place", o,
            "%s \"%s\" claims to be published, but not %s. Name it, or say common-practice.", kind, id,
            o->source_id ? "where in its source" : "in which source");
  if (o->basis == BASIS_MEMORY && !o->source_id)
    VET_SAY(v, false, "no-source", o, "%s \"%s\" is from memory, but does not say of which source.", kind,
            id);
}

static void places(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->caution_count; i++)
    place(v, "caution", k->cautions[i].id, &k->cautions[i].origin);
  for (size_t i = 0; i < k->cover_count; i++) place(v, "cover", k->covers[i].id, &k->covers[i].origin);
  for (size_t i = 0; i < k->complaint_count; i++)
    place(v, "complaint", k->complaints[i].id, &k->complaints[i].origin);
  for (size_t i = 0; i < k->class_count; i++)
    place(v, "machine class", k->classes[i].id, &k->classes[i].origin);
  for (size_t i = 0; i < k->check_count; i++) place(v, "check", k->checks[i].id, &k->checks[i].origin);
  for (size_t i = 0; i < k->bands_count; i++) place(v, "bands", k->bands[i].id, &k->bands[i].origin);
  for (size_t i = 0; i < k->fault_count; i++) place(v, "fault", k->faults[i].id, &k->faults[i].origin);
  for (size_t i = 0; i < k->repair_count; i++) place(v, "repair", k->repairs[i].id, &k->repairs[i].origin);
  for (size_t i = 0; i < k->setting_count; i++)
    place(v, "setting", k->settings[i].id, &k->settings[i].origin);
  for (size_t i = 0; i < k->base_rate_count; i++)
    place(v, "base rate of", k->base_rates[i].fault_id, &k->base_rates[i].origin);
  for (size_t i = 0; i < k->sign_count; i++)
    place(v, k->signs[i].check >= 0 ? "sign of" : "lead of", k->signs[i].fault_id, &k->signs[i].origin);
  for (size_t i = 0; i < k->rule_count; i++) place(v, "rule", k->rules[i].id, &k->rules[i].origin);
}

void vet_safety(struct vet *v)
{
  cautions(v);
  running_uncovered(v);
  places(v);
}
