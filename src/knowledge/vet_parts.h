/* vet_parts.h - the parts of vet.h, for the files that make it up. */
#ifndef KNOWLEDGE_VET_PARTS_H
#define KNOWLEDGE_VET_PARTS_H

#include "knowledge/parting.h"
#include "knowledge/problem.h"
#include "knowledge/rulelook.h"
#include "model/knowledge.h"

/* What every part works on; nothing in it is changed but the list of problems. */
struct vet {
  const struct knowledge *k;
  struct parting *parting;
  struct rule_looks rules;
  struct problems *p;
};

void vet_safety(struct vet *v);   /* cautions, covers off while running, places in sources */
void vet_rules(struct vet *v);    /* rules that feed back, loop, never fire or do nothing */
void vet_bands(struct vet *v);    /* measured checks and their limits */
void vet_missing(struct vet *v);  /* steps, proof, look-alikes, words */
void vet_parting(struct vet *v);  /* faults and checks against each other */
void vet_uses(struct vet *v);     /* what nothing uses and what fits no machine */
void vet_texts(struct vet *v);    /* repeated and overlong text */
void vet_words(struct vet *v);    /* words that stand for one thing */

/* Adds one finding at an entry. */
#define VET_SAY(v, serious, kind, o, ...) \
  problem_add((v)->p, serious, kind, (o)->file, (o)->line, __VA_ARGS__)

#endif
