/* vet_bands.c - measured checks and the limits that judge them. */
#include <string.h>

#include "knowledge/vet_parts.h"

static bool needs_feature(const struct refs *needs, int feature)
{
  for (size_t i = 0; i < needs->count; i++)
    if (needs->at[i] == feature) return true;
  return false;
}

/* Do these bands fit every machine that the check can be made on? */
static bool is_general(const struct bands *b, const struct check *c)
{
  for (size_t i = 0; i < b->needs.count; i++)
    if (!needs_feature(&c->needs, b->needs.at[i])) return false;
  return true;
}

/* Two sets of limits with as many needs can both fit one machine: which would judge? */
static void overlaps(struct vet *v, size_t b)
{
  const struct bands *x = &v->k->bands[b];

  for (size_t i = 0; i < b; i++) {
    const struct bands *y = &v->k->bands[i];
    const struct refs *needs[3] = {&x->needs, &y->needs, &v->k->checks[x->check].needs};

    if (y->check == x->check && y->needs.count == x->needs.count && parting_common(v->parting, needs, 3))
      VET_SAY(
          v, true, "bands-overlap", &x->origin,
          "bands \"%s\" and \"%s\" (%s:%d) can fit the same machine and ask for as many features, so nothing "
          "says which of them judges a reading.",
          x->id, y->id, y->origin.file, y->origin.line);
  }
}

static bool covered(const struct knowledge *k, int check, int result)
{
  for (size_t i = 0; i < k->bands_count; i++)
    for (size_t r = 0; k->bands[i].check == check && r < k->bands[i].results.count; r++)
      if (k->bands[i].result_at[r] == result) return true;
  return false;
}

static void measured(struct vet *v, size_t check)
{
  const struct knowledge *k = v->k;
  const struct check *c = &k->checks[check];
  size_t count = 0, general = 0;

  for (size_t i = 0; i < k->bands_count; i++)
    if (k->bands[i].check == (int)check) {
      count++;
      general += is_general(&k->bands[i], c);
    }
  if (count == 0) {
    VET_SAY(v, false, "no-bands", &c->origin,
            "check \"%s\" is measured, but no bands say what a reading means without the maker's figure.",
            c->id);
    return;
  }
  if (general == 0)
    VET_SAY(v, false, "bands-gap", &c->origin,
            "all bands of \"%s\" ask for features, so on other machines nothing says what a reading means.",
            c->id);
  for (size_t r = 0; r < c->results.count; r++)
    if (!covered(k, (int)check, (int)r))
      VET_SAY(v, false, "result-without-bands", &c->origin,
              "no reading of \"%s\" can come out as \"%s\": it is in none of its bands.", c->id,
              c->results.items[r]);
  if (c->tolerance <= 0)
    VET_SAY(v, false, "no-tolerance", &c->origin,
            "check \"%s\" has no tolerance, so a reading right at a limit counts as certain.", c->id);
}

void vet_bands(struct vet *v)
{
  for (size_t i = 0; i < v->k->bands_count; i++) {
    const struct bands *b = &v->k->bands[i];

    overlaps(v, i);
    if (v->k->checks[b->check].kind != KIND_MEASURE)
      VET_SAY(v, false, "bands-unmeasured", &b->origin,
              "bands \"%s\" judge check \"%s\", which is not measured.", b->id, b->check_id);
  }
  for (size_t i = 0; i < v->k->check_count; i++)
    if (v->k->checks[i].kind == KIND_MEASURE) measured(v, i);
}
