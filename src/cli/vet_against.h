/* vet_against.h - which cases are answered otherwise by two versions of the knowledge. */
#ifndef CLI_VET_AGAINST_H
#define CLI_VET_AGAINST_H

#include "base/err.h"
#include "model/knowledge.h"

/* A case whose first answer is not the same. was and now are ids of faults, "not-listed",
 * or "" where that version cannot read or weigh the case; why then says what is wrong. */
struct changed_case { char *file, *was, *now, *why; double was_chance, now_chance; };

struct changed_cases {
  struct changed_case *items;
  size_t count, room, looked_at;
};

/* Assesses every case file (*.json; a case, or an object with a member "case") in folder
 * and the folders below it by both, in the order of their names. Free with
 * changed_cases_free. EX_NOINPUT when there is no case file at all. */
int compare_cases(const struct knowledge *old, const struct knowledge *now, const char *folder,
                  struct changed_cases *out, struct err *e);

void changed_cases_free(struct changed_cases *c);

#endif
