/* rulelook.h - rules read as trees: what each matches and what it concludes. */
#ifndef KNOWLEDGE_RULELOOK_H
#define KNOWLEDGE_RULELOOK_H

#include <stdbool.h>
#include <stddef.h>

#include "knowledge/sexpr.h"
#include "model/knowledge.h"

/* One pattern among the conditions. either: it stands inside an (or ...), so it need not
 * hold for the rule to fire. */
struct rule_pattern { const struct node *form; bool negated, either; };

struct rule_look {
  const char *id, *file;
  int line;
  struct rule_pattern *patterns;
  size_t pattern_count, pattern_room;
  const struct node **draws; /* the conclusions asserted */
  size_t draw_count, draw_room;
  bool believes; /* hangs on a belief, at first or second hand; see vet_rules */
};

struct rule_looks {
  struct arena arena;
  struct rule_look *items;
  size_t count, room;
  const char **words; /* every word in the rules, sorted, each once */
  size_t word_count, word_room;
};

/* Reads the rules of k, which have passed rules_scan. Free with rule_looks_free. */
void rule_looks_read(struct rule_looks *l, const struct knowledge *k);
void rule_looks_free(struct rule_looks *l);

/* Does any rule name this id? */
bool rule_looks_mention(const struct rule_looks *l, const char *id);

/* May the slot of this pattern hold the word? A slot left out may hold anything; calls
 * and variables are taken to hold for every word. */
bool pattern_takes(const struct node *pattern, const char *slot, const char *word);

/* The one word that the slot of a pattern or conclusion must hold, or NULL when it may
 * hold several. */
const char *pattern_word(const struct node *pattern, const char *slot);

/* Can a conclusion as asserted meet a pattern that matches it? */
bool pattern_meets(const struct node *pattern, const struct node *drawn);

#endif
