/* job.c - a whole job, to a machine that is right; see job.h. */
#include "simulate/job.h"

static void check(struct sim_bench *x, const struct sim_machine *machine, const struct sim_pick *pick,
                  struct sim_outcome *out)
{
  out->to_fault += pick->minutes + machine->model->book->turn;
  out->cost += pick->minutes + machine->model->book->turn;
  out->checks++;
  sim_see(&x->belief, pick->check, sim_result(machine, pick->check));
}

/* A proof run with nothing changed. True when that was all. */
static bool prove(struct sim_bench *x, const struct sim_machine *machine, struct sim_outcome *out)
{
  out->to_fault += machine->model->book->prove;
  out->cost += machine->model->book->prove;
  if (machine->behind_count == 0) return true;
  sim_proved_wrong(&x->belief);
  return false;
}

/* True when the machine is right after it. A repair that finds the last thing wrong ends the
 * search when it begins. */
static bool repair(struct sim_bench *x, struct sim_machine *machine, int fault, struct sim_outcome *out)
{
  const struct sim_book *b = machine->model->book;
  double minutes = sim_repair_minutes(&x->belief, fault);
  size_t before = machine->behind_count;
  bool right = sim_repair(machine, b->repair[fault]);

  out->cost += minutes + b->parts[fault];
  if (right) return true;
  out->to_fault += minutes;
  out->wrong += machine->behind_count == before;
  x->belief.off |= b->repair_covers[fault];
  sim_mend(&x->belief, b->repair[fault]);
  return false;
}

bool sim_job(struct sim_bench *x, struct sim_machine *machine, enum sim_policy policy, struct sim_outcome *out)
{
  *out = (struct sim_outcome){0};
  sim_start(&x->belief, machine->model);
  for (;;) {
    struct sim_pick pick = {.check = -1};
    int first;

    if (out->checks < SIM_MOST_MADE) {
      x->asked++;
      pick = sim_choose(x->ahead, &x->belief, policy);
    }
    if (pick.check >= 0) {
      check(x, machine, &pick, out);
      continue;
    }
    first = sim_repair_first(&x->belief);
    if (first == SIM_NOTHING_LEFT) return false;
    if (first == SIM_PROVE ? prove(x, machine, out) : repair(x, machine, first, out)) return true;
  }
}
