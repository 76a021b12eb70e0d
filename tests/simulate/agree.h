/* agree.h - the quick jobs of src/simulate against the full path: rules asked after every result,
 * exact weighing, the plan of assess_case. */
#ifndef TESTS_AGREE_H
#define TESTS_AGREE_H

#include "simulate/job.h"

/* Counts over the same drawn machines. steps: choices of the full path; same_step: the quick one,
 * told the same results, does the same (the same check, or stops too); both_check: both want a
 * check; same_check: the same one; among_three: the quick one's check is among the best three
 * of the full plan. Each then goes its own way to the end: same_first: the same fault in first
 * place (or both hold that nothing is behind it); full_right, quick_right: it is one that is
 * behind the complaint. */
struct agreement {
  size_t jobs, steps, same_step, both_check, same_check, among_three, same_first, full_right, quick_right;
  double full_minutes, quick_minutes, full_steps, quick_steps;
};

enum { AGREE_MOST_CHECKS = 15 };

/* Draws `jobs` machines, all classes in turn, seeds seed, seed + 1 and so on. Ends the program
 * with a message when a case cannot be assessed. */
void agree_on(const struct simulator *s, struct assessor *assessor, size_t jobs, uint64_t seed,
              struct agreement *out);

/* What s believes of the machine, which was drawn by another model; false when it has no model of
 * that class and complaint. */
bool believe(const struct simulator *s, struct sim_machine *x);

/* The machine that a seed stands for: class by turn, complaint by its chance, faults. */
void draw_by_seed(const struct simulator *s, uint64_t seed, struct sim_machine *out);

#endif
