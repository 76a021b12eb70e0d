/* fill.h - turns checked fact forms into the structs of model/knowledge.h. */
#ifndef KNOWLEDGE_FILL_H
#define KNOWLEDGE_FILL_H

#include "knowledge/problem.h"
#include "knowledge/schema.h"
#include "knowledge/sexpr.h"
#include "model/knowledge.h"

/* Which slot of the template goes where, worked out once for each kind of entry; -1: none. */
enum { FILL_KINDS = 20, FILL_MOST_FIELDS = 24 };
struct fill_plan {
  const struct template *form; /* NULL: not yet worked out */
  int slots[FILL_MOST_FIELDS], basis, source, place;
};

/* What is needed while a knowledge is being filled. */
struct fill {
  struct knowledge *k;
  size_t room[FILL_KINDS]; /* of the growing arrays, one per kind of entry */
  struct fill_plan plans[FILL_KINDS];
};

/* Adds one fact that schema_check has passed; form is its template, given what schema_check
 * found. Slots left out take the template's default. The texts are not copied: those of the
 * fact and of the template's defaults must live as long as the knowledge. A fact that belongs
 * to a case is a problem. */
void fill_fact(struct fill *f, const struct template *form, const struct given_slots *given,
               const char *file, const struct node *fact, struct problems *p);

/* Resolves every reference, sorts the signs, copies the arrays into the arena. */
void fill_finish(struct fill *f, struct problems *p);

#endif
