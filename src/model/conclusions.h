/* conclusions.h - what the rules made of a case. */
#ifndef MODEL_CONCLUSIONS_H
#define MODEL_CONCLUSIONS_H

#include <stddef.h>

/* a and b are indexes whose meaning goes with the kind:
 *   RULES_OUT_*   a = the fault, check, complaint or bands
 *   JUDGE_BY      a = check, b = bands (-1: the spec card)
 *   IMPLIES       a = check, b = result, number = strength 0..1
 *   WEAKENS       a = check, number = by how much 0..1
 *   CLASH         a, b = checks
 *   SPEAKS        a = fault, number = decibans
 *   UNSAFE, POINTLESS  a = check
 *   ASK_FIRST     a = check, b = fault
 *   HAND_OVER     word = to whom
 *   ADVISE        word = about what
 *   WARN          a = caution
 *   COUNTS_AS     a = check, number = the value at which its reading is judged, in the unit of the check
 * rule is the index of the rule card. */
enum conclusion_kind {
  RULES_OUT_FAULT, RULES_OUT_CHECK, RULES_OUT_COMPLAINT, RULES_OUT_BANDS, JUDGE_BY, IMPLIES,
  WEAKENS, CLASH, SPEAKS, UNSAFE, POINTLESS, ASK_FIRST, HAND_OVER, ADVISE, WARN, COUNTS_AS
};

struct conclusion {
  enum conclusion_kind kind;
  int a, b, rule;
  double number;
  char word[40];
};

/* Sorted by kind, a, b, rule: the same conclusions are always the same bytes. */
struct conclusions {
  struct conclusion *items;
  size_t count, room;
};

/* First conclusion of that kind about a, from index `from` on; -1 when there is none. */
int conclusion_find(const struct conclusions *c, enum conclusion_kind kind, int a, size_t from);

void conclusions_free(struct conclusions *c);

#endif
