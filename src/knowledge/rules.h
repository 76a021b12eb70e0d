/* rules.h - looks at rules before the engine does. */
#ifndef KNOWLEDGE_RULES_H
#define KNOWLEDGE_RULES_H

#include "knowledge/problem.h"
#include "knowledge/schema.h"
#include "model/knowledge.h"

/* Scans the forms of one file of rules. Every rule must have a name of its own and a
 * comment "[basis] reason", its conditions inside (logical ...), match and assert only
 * templates of the case, call only functions of the allow-list, and stay within the limits
 * that keep the engine's work bounded. Adds a card for each good rule to *cards (the caller
 * frees the array). */
void rules_scan(const struct schema *schema, struct arena *arena, const char *file,
                const struct node *forms, struct rule_card **cards, size_t *count, size_t *room,
                struct problems *p);

/* After the entries are linked: do the ids that rules name exist? */
void rules_check_ids(const struct knowledge *k, const char *file, const struct node *forms,
                     struct problems *p);

/* Functions that rules may call; everything else is taken out of the engine. Each has a
 * reason to be there. NULL past the end. */
const char *rules_allowed_function(size_t i);

/* Names the engine needs for itself although no rule may write them. */
const char *rules_inner_function(size_t i);

/* Is this a template of conclusions, that is, one that rules may assert? */
bool rules_is_conclusion(const char *template_name);

#endif
