/* schema.h - the templates of facts, read from rules/templates, and facts checked
 * against them. */
#ifndef KNOWLEDGE_SCHEMA_H
#define KNOWLEDGE_SCHEMA_H

#include <stdbool.h>
#include <stddef.h>

#include "knowledge/problem.h"
#include "knowledge/sexpr.h"

/* Value types a slot takes. */
enum { TYPE_SYMBOL = 1, TYPE_STRING = 2, TYPE_NUMBER = 4, TYPE_INTEGER = 8 };

struct slot {
  const char *name;
  bool multi, required;
  unsigned int types;
  const struct node *allowed;  /* words allowed, or NULL */
  const struct node *otherwise; /* default value, or NULL */
  double low, high;            /* range of numbers */
};

struct template {
  const char *name;
  struct slot *slots;
  size_t slot_count;
};

struct schema {
  struct template *items;
  size_t count, room;
};

/* Adds the deftemplates among the forms of one file. */
void schema_add(struct schema *s, struct arena *arena, const char *file, const struct node *forms,
                struct problems *p);

const struct template *schema_find(const struct schema *s, const char *name);

/* The slot, or NULL. */
const struct slot *template_slot(const struct template *t, const char *name);

/* No fact, template or list of words is longer; longer ones would only cost time. */
enum { SCHEMA_MAX_PARTS = 64 };

/* The bracket that a fact has for each slot of its template, in their order; NULL for one that
 * is left out. */
struct given_slots { const struct node *at[SCHEMA_MAX_PARTS]; };

/* Checks one fact form against its template: known slots, once each, right number of
 * values, types, allowed words, ranges, nothing required missing. Returns the template and
 * fills *given, or returns NULL when the fact cannot be used. Problems go to p. */
const struct template *schema_check(const struct schema *s, const char *file, const struct node *fact,
                                    struct given_slots *given, struct problems *p);

/* The values given for a slot in a fact (NULL when absent): first value node. */
const struct node *fact_values(const struct node *fact, const char *slot);

void schema_free(struct schema *s);

#endif
