/* memo.h - what has been worked out already, by state of the job. */
#ifndef PLAN_MEMO_H
#define PLAN_MEMO_H

#include "plan/problem.h"

/* Which figure of a state; one state may have several. depth belongs to MEMO_FOLLOW. */
enum memo_kind { MEMO_LOOK = 1, MEMO_FOLLOW, MEMO_STEP, MEMO_EXACT };

struct memo_entry {
  struct plan_key key;
  int kind, depth; /* kind 0: free */
  bool bound;      /* MEMO_EXACT: the value is at least this, no more is known */
  struct plan_move move;
  double value;
};

struct memo {
  struct memo_entry *entries;
  size_t count, room; /* room is a power of 2 */
};

/* NULL when it is not there. Valid until the next memo_put. */
const struct memo_entry *memo_find(const struct memo *m, const struct plan_key *key, enum memo_kind kind,
                                   int depth);
void memo_put(struct memo *m, const struct memo_entry *e);

void memo_free(struct memo *m);

#endif
