/* link.h - resolves the references between entries. */
#ifndef KNOWLEDGE_LINK_H
#define KNOWLEDGE_LINK_H

#include "knowledge/problem.h"
#include "model/knowledge.h"

/* Turns every id into an index, every unit name into a unit, and sorts the signs.
 * Reports: ids used twice or retired, unknown ids (with the nearest one), lists whose
 * lengths disagree, limits that do not rise, chances of one check that add to more
 * than 1. */
void link_all(struct knowledge *k, struct problems *p);

#endif
