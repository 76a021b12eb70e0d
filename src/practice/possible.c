/* possible.c - what can be done at all on the machine of a practice run; see run.h. */
#include <stdio.h>
#include <string.h>

#include "practice/run.h"
#include "practice/unsafe.h"

/* Can it be heard, seen or measured only while the engine runs? What is tried may start it, and the
 * owner can be asked in any case. */
static bool wants_it_running(const struct check *c)
{
  return (strcmp(c->engine, "running") == 0 || strcmp(c->engine, "hot") == 0) && c->kind != KIND_TRY &&
         c->kind != KIND_ASK;
}

/* As long as the complaint is there, a machine that will not start does not run. */
static bool engine_goes(const struct run *r)
{
  for (size_t i = 0; i < r->c.complaint_count; i++)
    if (strcmp(r->k->complaints[r->c.complaints[i]].runs, "no") == 0) return false;
  return true;
}

static bool check_possible(const struct run *r, int check, char *why, size_t size)
{
  const struct check *c = &r->k->checks[check];
  int at = conclusion_find(&r->a.drawn, RULES_OUT_CHECK, check, 0);
  size_t open;

  if (case_needs(&r->c, &c->needs, &open) == TRI_LACKS) {
    for (size_t i = 0; i < c->needs.count; i++)
      if (r->c.features[c->needs.at[i]] == TRI_LACKS)
        snprintf(why, size, "This machine has no %s: nothing to be had from \"%s\".",
                 r->k->features[c->needs.at[i]].name, c->name);
    return false;
  }
  if (at >= 0)
    snprintf(why, size, "That cannot be checked now: %s", r->k->rules[r->a.drawn.items[at].rule].reason);
  if (at < 0 && wants_it_running(c) && !engine_goes(r)) {
    snprintf(why, size,
             "It would have to run for that, and it does not. What can be found while it stands, or while "
             "it is cranked?");
    return false;
  }
  return at < 0;
}

bool run_repairable(const struct run *r, int repair)
{
  size_t open;

  for (size_t f = 0; f < r->k->fault_count; f++)
    if (r->k->faults[f].repair == repair && case_needs(&r->c, &r->k->faults[f].needs, &open) != TRI_LACKS)
      return true;
  return false;
}

bool run_possible(const struct run *r, const struct entry *entry, char *why, size_t size)
{
  size_t open;

  if (r->end != RUN_OPEN) {
    snprintf(why, size, "This run is over.");
    return false;
  }
  if (entry->act == ACT_CHECK) return check_possible(r, entry->at, why, size);
  if (entry->act == ACT_OPEN) {
    const struct cover *c = &r->k->covers[entry->at];

    if (case_needs(&r->c, &c->needs, &open) == TRI_LACKS)
      snprintf(why, size, "This machine has no %s.", c->name);
    else if (r->c.off[entry->at]) snprintf(why, size, "The %s is off already.", c->name);
    else return true;
    return false;
  }
  if (entry->act == ACT_REPAIR && !run_repairable(r, entry->at)) {
    snprintf(why, size, "There is nothing on this machine to %s.", r->k->repairs[entry->at].name);
    return false;
  }
  if (entry->act == ACT_DECLARE && entry->at >= 0 &&
      case_needs(&r->c, &r->k->faults[entry->at].needs, &open) == TRI_LACKS) {
    snprintf(why, size, "That cannot be wrong with this machine: it has no such part.");
    return false;
  }
  if (entry->act == ACT_FORBIDDEN) return unsafe_act_here(r, entry->at, why, size);
  return true;
}
