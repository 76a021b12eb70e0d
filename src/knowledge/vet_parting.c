/* vet_parting.c - faults against each other: what parts them, and what leads to them. */
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "knowledge/vet_parts.h"

/* Owners make about one complaint of a fault; further off the chances were not thought
 * of together. */
static const double leads_least = 0.7, leads_most = 1.5;

static void say_group(struct vet *v, const int *group, size_t first)
{
  const struct fault *f = &v->k->faults[first];
  struct buf b = {0};
  bool same = true;

  for (size_t i = first; i < v->k->fault_count; i++)
    if (group[i] == (int)first) {
      buf_addf(&b, "%s%s", b.len ? ", " : "", v->k->faults[i].id);
      same = same && v->k->faults[i].repair == f->repair;
    }
  if (!same) /* with one repair for all it does not matter which it is */
    VET_SAY(v, false, "ambiguity-group", &f->origin,
            "no check parts these faults, and their repairs differ: %s.", buf_text(&b));
  buf_free(&b);
}

static void groups(struct vet *v)
{
  struct parted *pairs;
  size_t count;
  int *group = mem_array(v->k->fault_count, sizeof *group);

  parting_pairs(v->parting, &pairs, &count);
  parting_groups(pairs, count, v->k->fault_count, group);
  for (size_t f = 0; f < v->k->fault_count; f++)
    if (group[f] == (int)f) say_group(v, group, f);
  free(group);
  free(pairs);
}

static void look_alike(struct vet *v, const struct fault *f, int other, int check)
{
  const struct knowledge *k = v->k;
  const struct fault *g = &k->faults[other];
  const struct refs *needs[3] = {&f->needs, &g->needs, &k->checks[check].needs};
  double d;

  if (f == g) {
    VET_SAY(v, false, "looks-like", &f->origin, "fault \"%s\" is said to look like itself.", f->id);
    return;
  }
  if (!parting_common(v->parting, needs, 2)) {
    VET_SAY(v, false, "looks-like", &f->origin,
            "\"%s\" is said to look like \"%s\", but no machine can have both.", f->id, g->id);
    return;
  }
  if (!parting_common(v->parting, needs, 3)) {
    VET_SAY(v, false, "looks-like", &f->origin,
            "check \"%s\" is to part \"%s\" and \"%s\", but cannot be made on a machine that has both.",
            k->checks[check].id, f->id, g->id);
    return;
  }
  d = parting_distance(v->parting, check, (int)(f - k->faults), other);
  if (d < PARTING_LEAST)
    VET_SAY(v, false, "does-not-part", &f->origin,
            "check \"%s\" is to part \"%s\" and \"%s\", but by their signs it comes out differently on only "
            "%.0f of "
            "100 machines.",
            k->checks[check].id, f->id, g->id, 100 * d);
}

static void look_alikes(struct vet *v)
{
  for (size_t i = 0; i < v->k->fault_count; i++) {
    const struct fault *f = &v->k->faults[i];

    for (size_t j = 0; j + 1 < f->looks_like.count; j += 2)
      look_alike(v, f, knowledge_find(v->k, ENTRY_FAULT, f->looks_like.items[j]),
                 knowledge_find(v->k, ENTRY_CHECK, f->looks_like.items[j + 1]));
  }
}

/* Per fault: how many checks show it, and how much its complaints add up to. */
static void shown_and_told(struct vet *v)
{
  const struct knowledge *k = v->k;
  size_t *shown = mem_array(k->fault_count, sizeof *shown);
  double *told = mem_array(k->fault_count, sizeof *told);

  for (size_t i = 0; i < k->sign_count; i++)
    if (k->signs[i].check >= 0) shown[k->signs[i].fault]++;
    else told[k->signs[i].fault] += k->signs[i].chance;
  for (size_t i = 0; i < k->fault_count; i++) {
    const struct fault *f = &k->faults[i];

    if (shown[i] == 0) VET_SAY(v, false, "no-sign", &f->origin, "fault \"%s\" shows at no check.", f->id);
    if (told[i] <= 0)
      VET_SAY(v, false, "no-complaint", &f->origin, "no complaint leads to fault \"%s\".", f->id);
    else if (told[i] < leads_least || told[i] > leads_most)
      VET_SAY(v, false, "leads-sum", &f->origin,
              "the chances of the complaints of \"%s\" add to %.2f; they should come to about 1.", f->id,
              told[i]);
  }
  free(shown);
  free(told);
}

static void part_nothing(struct vet *v)
{
  const struct knowledge *k = v->k;

  for (size_t i = 0; i < k->check_count; i++) {
    size_t first, last;

    knowledge_signs_of_check(k, (int)i, &first, &last);
    if (first == last && !rule_looks_mention(&v->rules, k->checks[i].id))
      VET_SAY(v, false, "parts-nothing", &k->checks[i].origin,
              "check \"%s\" parts nothing: no fault has a sign for it and no rule asks for it.",
              k->checks[i].id);
  }
}

void vet_parting(struct vet *v)
{
  groups(v);
  look_alikes(v);
  shown_and_told(v);
  part_nothing(v);
}
