/* vet.h - looks through knowledge that loads for what is missing, unsafe or of no use.
 *
 * load.h refuses what cannot be used at all; here is what can be used and should not be
 * left so. Findings that could hurt somebody, feed a belief back into itself or claim a
 * source without a place are serious; the rest is worth a look. */
#ifndef KNOWLEDGE_VET_H
#define KNOWLEDGE_VET_H

#include "knowledge/problem.h"
#include "model/knowledge.h"

/* Adds every finding to p, serious kinds first. k must have loaded without a serious
 * problem, so that all references are resolved. */
void vet_knowledge(const struct knowledge *k, struct problems *p);

#endif
