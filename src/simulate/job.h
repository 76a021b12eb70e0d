/* job.h - simulated jobs, from the complaint to a finding or to a repaired machine. */
#ifndef SIMULATE_JOB_H
#define SIMULATE_JOB_H

#include "simulate/ahead.h"
#include "simulate/draw.h"

/* How the search ended: as the dispositions of assess_case; that no check pays any more; that
 * the most checks were made. */
enum sim_end { SIM_END_FOUND, SIM_END_SOUND, SIM_END_NOTHING_PAYS, SIM_END_CHECKS_SPENT };

/* leading: the fault most likely behind the complaint at the end, with its chance; -1 when it is
 * likelier that nothing is. */
struct sim_search {
  enum sim_end end;
  int leading;
  double chance, minutes; /* minutes of the checks and their covers, turning to them left out */
  size_t steps;
  struct sim_seen seen[SIM_MOST_MADE];
};

/* What was worked out before, by history: jobs with one model that showed the same so far go on
 * alike. The same jobs come out the same with and without it. */
struct sim_memory;
struct sim_memory *sim_memory_new(const struct simulator *s, size_t most);
void sim_memory_free(struct sim_memory *m);
size_t sim_memory_count(const struct sim_memory *m); /* histories held */

/* A bench to run jobs on, one at a time. memory may be NULL; what it holds belongs to the
 * policy it was filled with, so use one per policy and limit of checks. */
struct sim_bench {
  struct sim_belief belief;
  struct sim_ahead *ahead;
  struct sim_memory *memory;
  long asked, remembered; /* choices worked out, and taken from memory */
};

void sim_bench_open(struct sim_bench *x, const struct sim_book *b, struct sim_memory *memory);
void sim_bench_close(struct sim_bench *x);

/* Looks at the machine as the policy goes, at most most_checks times (up to SIM_MOST_MADE),
 * until it is found, found sound, or nothing pays. The machine stays as it is. */
void sim_search(struct sim_bench *x, const struct sim_machine *machine, enum sim_policy policy,
                size_t most_checks, struct sim_search *out);

/* A whole job. to_fault: minutes until the last fault that was behind it is taken in hand (or
 * until the proof run that shows that nothing is): checks, turning to them, covers, repairs of
 * other things. cost: all minutes until it is right, the right repairs among them, and all parts
 * in minutes at the shop rate. wrong: repairs that put nothing right that was behind it. */
struct sim_outcome { double to_fault, cost; size_t checks, wrong; };

/* Looks, repairs, looks again, until the machine is right; nobody gives up. Stopping and repairs
 * are the same whatever the policy: when no check pays any more, the repair (or proof run) of the
 * best chance over cost is made. Repairs are perfect. Covers that came off stay off, so each is
 * paid once. Changes the machine. True when it is right at the end; false when all that was thought
 * possible was put right in vain. */
bool sim_job(struct sim_bench *x, struct sim_machine *machine, enum sim_policy policy, struct sim_outcome *out);

#endif
