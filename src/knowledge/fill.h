/* fill.h - turns checked fact forms into the structs of model/knowledge.h. */
#ifndef KNOWLEDGE_FILL_H
#define KNOWLEDGE_FILL_H

#include "knowledge/problem.h"
#include "knowledge/schema.h"
#include "knowledge/sexpr.h"
#include "model/knowledge.h"

/* Room that the growing arrays of a knowledge have, while it is being filled. */
struct fill {
  struct knowledge *k;
  size_t room[20]; /* one per kind of entry */
};

/* Adds one fact that schema_check has passed; form is its template. Slots left out take
 * the template's default. A fact that belongs to a case is a problem. */
void fill_fact(struct fill *f, const struct template *form, const char *file,
               const struct node *fact, struct problems *p);

/* Resolves every reference, sorts the signs, copies the arrays into the arena. */
void fill_finish(struct fill *f, struct problems *p);

#endif
