/* walk.c - see walk.h. */
#include "practice/walk.h"

/* Nothing more pays: what is most likely is told to the owner, when it is likely enough. */
static void tell_owner(const struct run *r, struct entry *entry)
{
  int fault = run_leading(r, &entry->sure);

  entry->at = -1;
  if (fault < 0 || entry->sure < 0.5) {
    entry->sure = -1;
    return;
  }
  entry->act = ACT_DECLARE;
  entry->at = fault;
}

struct entry walk_best(const struct run *r)
{
  struct entry entry = {.act = ACT_GIVE_UP, .at = -1, .sure = -1};

  if (r->advice.count == 0) return entry;
  entry.at = r->advice.options[0].step.at;
  switch (r->advice.options[0].step.kind) {
  case ADVICE_CHECK: entry.act = ACT_CHECK; break;
  case ADVICE_REPAIR: entry.act = ACT_REPAIR; break;
  case ADVICE_PROVE: entry.act = ACT_PROVE; break;
  default: tell_owner(r, &entry); break;
  }
  if (entry.act == ACT_REPAIR) entry.sure = run_chance(r, entry.at);
  return entry;
}

int walk_to_the_end(struct run *r, struct err *e)
{
  int status = 0;

  while (status == 0 && r->end == RUN_OPEN) {
    struct entry entry = walk_best(r);

    run_make_safe(r, &entry);
    status = run_do(r, &entry, e);
  }
  return status;
}
