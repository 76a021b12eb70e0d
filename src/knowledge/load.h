/* load.h - from files to struct knowledge. */
#ifndef KNOWLEDGE_LOAD_H
#define KNOWLEDGE_LOAD_H

#include "base/err.h"
#include "knowledge/find.h"
#include "knowledge/problem.h"
#include "model/knowledge.h"

/* Reads the files into *out. Everything that is wrong goes to problems; when any of it
 * is serious the knowledge must not be used (the caller frees it all the same). Returns
 * non-zero only when a file cannot be read at all. The caller frees *out with
 * knowledge_free and problems with problems_free in every case. */
int load_files(const struct knowledge_files *files, struct knowledge *out, struct problems *problems,
               struct err *e);

/* Finds, reads and insists: any serious problem becomes *e (EX_CONFIG, with the first
 * problem and how many more). On failure *out needs no freeing. */
int load_knowledge(struct knowledge *out, struct err *e);

void knowledge_free(struct knowledge *k);

#endif
