/* vet_uses.c - entries that nothing uses, and entries that fit no machine. */
#include <stdlib.h>
#include <string.h>

#include "knowledge/vet_parts.h"

struct used {
  bool *caution, *cover, *repair, *feature;
};

static void mark(bool *used, const struct refs *r)
{
  for (size_t i = 0; i < r->count; i++) used[r->at[i]] = true;
}

static void mark_work(const struct knowledge *k, struct used *u)
{
  for (size_t i = 0; i < k->cover_count; i++) {
    mark(u->caution, &k->covers[i].cautions);
    mark(u->feature, &k->covers[i].needs);
    if (k->covers[i].under >= 0) u->cover[k->covers[i].under] = true;
  }
  for (size_t i = 0; i < k->check_count; i++) {
    mark(u->caution, &k->checks[i].cautions);
    mark(u->cover, &k->checks[i].off);
    mark(u->feature, &k->checks[i].needs);
  }
  for (size_t i = 0; i < k->repair_count; i++) {
    mark(u->caution, &k->repairs[i].cautions);
    mark(u->cover, &k->repairs[i].off);
  }
}

static void mark_all(const struct knowledge *k, struct used *u)
{
  mark_work(k, u);
  for (size_t i = 0; i < k->fault_count; i++) {
    mark(u->feature, &k->faults[i].needs);
    u->repair[k->faults[i].repair] = true;
  }
  for (size_t i = 0; i < k->bands_count; i++) mark(u->feature, &k->bands[i].needs);
  for (size_t i = 0; i < k->complaint_count; i++) mark(u->feature, &k->complaints[i].needs);
  for (size_t i = 0; i < k->caution_count; i++) mark(u->feature, &k->cautions[i].needs);
  for (size_t i = 0; i < k->feature_count; i++)
    if (k->features[i].brings.count + k->features[i].bars.count > 0) u->feature[i] = true;
}

static void unused(struct vet *v, bool used, const char *kind, const char *id, const struct origin *o,
                   const char *by)
{
  if (!used && !rule_looks_mention(&v->rules, id))
    VET_SAY(v, false, "unused", o, "%s \"%s\" is used by no %s and no rule.", kind, id, by);
}

static void uses(struct vet *v)
{
  const struct knowledge *k = v->k;
  struct used u = {mem_array(k->caution_count, 1), mem_array(k->cover_count, 1),
                   mem_array(k->repair_count, 1), mem_array(k->feature_count, 1)};

  mark_all(k, &u);
  for (size_t i = 0; i < k->caution_count; i++)
    unused(v, u.caution[i], "caution", k->cautions[i].id, &k->cautions[i].origin, "check, cover, repair");
  for (size_t i = 0; i < k->cover_count; i++)
    unused(v, u.cover[i], "cover", k->covers[i].id, &k->covers[i].origin, "check, cover, repair");
  for (size_t i = 0; i < k->repair_count; i++)
    unused(v, u.repair[i], "repair", k->repairs[i].id, &k->repairs[i].origin, "fault");
  /* a choice of one needs all its members, to say "none of the others" */
  for (size_t i = 0; i < k->feature_count; i++)
    unused(v, u.feature[i] || k->features[i].one_of, "feature", k->features[i].id, &k->features[i].origin,
           "fault, check, cover, band");
  free(u.caution);
  free(u.cover);
  free(u.repair);
  free(u.feature);
}

static void fits(struct vet *v, const char *kind, const char *id, const struct refs *needs,
                 const struct origin *o)
{
  if (!parting_common(v->parting, &needs, 1))
    VET_SAY(v, false, "fits-nowhere", o, "%s \"%s\": no class of machine can have all that it needs.", kind,
            id);
}

/* A feature that a class has, may have, or gets along with another. */
static bool found_somewhere(const struct knowledge *k, size_t feature)
{
  for (size_t c = 0; c < k->class_count; c++) {
    for (size_t i = 0; i < k->classes[c].has.count; i++)
      if (k->classes[c].has.at[i] == (int)feature) return true;
    for (size_t i = 0; i < k->classes[c].may.count; i++)
      if (k->classes[c].may.at[i] == (int)feature) return true;
  }
  return false;
}

static void base_rates(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->base_rate_count; i++) {
    const struct base_rate *b = &k->base_rates[i];
    const struct refs *needs = &k->faults[b->fault].needs;

    if (!parting_fits(v->parting, b->machine_class, &needs, 1))
      VET_SAY(v, false, "fits-nowhere", &b->origin,
              "a base rate of \"%s\" for %s, which cannot have that fault.", b->fault_id, b->class_id);
    for (size_t j = 0; j < i; j++)
      if (k->base_rates[j].fault == b->fault && k->base_rates[j].machine_class == b->machine_class)
        VET_SAY(v, true, "repeated-base-rate", &b->origin,
                "the base rate of \"%s\" for %s is already at %s:%d; only that one counts.", b->fault_id,
                b->class_id, k->base_rates[j].origin.file, k->base_rates[j].origin.line);
  }
}

void vet_uses(struct vet *v)
{
  const struct knowledge *k = v->k;

  base_rates(v);
  uses(v);
  for (size_t i = 0; i < k->fault_count; i++)
    fits(v, "fault", k->faults[i].id, &k->faults[i].needs, &k->faults[i].origin);
  for (size_t i = 0; i < k->check_count; i++)
    fits(v, "check", k->checks[i].id, &k->checks[i].needs, &k->checks[i].origin);
  for (size_t i = 0; i < k->bands_count; i++)
    fits(v, "bands", k->bands[i].id, &k->bands[i].needs, &k->bands[i].origin);
  for (size_t i = 0; i < k->cover_count; i++)
    fits(v, "cover", k->covers[i].id, &k->covers[i].needs, &k->covers[i].origin);
  for (size_t i = 0; i < k->complaint_count; i++)
    fits(v, "complaint", k->complaints[i].id, &k->complaints[i].needs, &k->complaints[i].origin);
  for (size_t i = 0; i < k->caution_count; i++)
    fits(v, "caution", k->cautions[i].id, &k->cautions[i].needs, &k->cautions[i].origin);
  for (size_t i = 0; i < k->feature_count; i++)
    if (!found_somewhere(k, i))
      VET_SAY(v, false, "fits-nowhere", &k->features[i].origin,
              "feature \"%s\" is had by no class of machine.", k->features[i].id);
}
