/* net.h - exact belief in a set of independent faults, given what was found.
 *
 * A two-layer network: faults are independent with prior chances; each finding takes the
 * highest of the grades that the faults present, and its leak, bring about (noisy-MAX;
 * with two grades noisy-OR). Pure C, no I/O.
 *
 * Source of the method: Heckerman 1989 for the model (negative findings factorise); Diez
 * 1993 for noisy-MAX (from memory); the cancellation-free dynamic programme over grades
 * reached is the project's own arrangement (docs/how-it-weighs.md). Every term added is
 * positive, so nothing cancels. */
#ifndef WEIGH_NET_H
#define WEIGH_NET_H

#include <stdbool.h>
#include <stddef.h>

enum { NET_MAX_GRADES = 8 };

/* One fault's effect on one finding: chance[g] that it brings grade g; they add to 1. */
struct net_link { int fault; double chance[NET_MAX_GRADES]; };

/* One finding. seen[g] is how well what was seen fits grade g (1 at one grade and 0
 * elsewhere for a plain result). When soft_sound is above 0, the finding is grade 0
 * believed with that strength instead, and seen is not looked at: each cause then counts
 * as if it showed only soft_sound of the times it does, which keeps causes apart. */
struct net_finding {
  int grades; /* 2 .. NET_MAX_GRADES */
  double leak[NET_MAX_GRADES]; /* grades brought with no listed cause; add to 1 */
  double seen[NET_MAX_GRADES];
  double soft_sound;
  bool focus; /* belongs to what is to be accounted for; see net_solve */
  const struct net_link *links; /* at most one per fault */
  size_t link_count;
};

struct net {
  size_t fault_count;
  const double *prior; /* chance of each fault, 0 .. below 1 */
  const double *bias;  /* likelihood ratio from elsewhere, per fault; NULL = all 1 */
  const struct net_finding *findings;
  size_t finding_count;
};

/* The most grade combinations that are held at once; about 20 unsound findings. */
enum { NET_MAX_CELLS = 1 << 20 };

/* Chance of each fault given all findings, into belief[fault_count]; the chance that it is
 * there and brought about at least one finding in focus, into blame[fault_count]; and the
 * natural logarithm of the chance of the findings (biases counting as factors), into
 * *log_chance (blame and log_chance may be NULL).
 * A fault that is merely there beside the trouble is believed but not blamed. It brings a
 * plain result about when it brings just that grade, and one that may be several grades
 * when it brings any above 0; a sound result, or one that says nothing, is nobody's doing.
 * False when the unsound findings are too many (NET_MAX_CELLS) or when the findings are
 * impossible (or the unsound ones less likely than a double can hold, 1e-308). */
bool net_solve(const struct net *net, double *belief, double *blame, double *log_chance);

/* How many grade combinations net_solve would hold for this net; work grows with it. */
size_t net_cells(const struct net *net);

/* Natural logarithm of the joint chance of the findings and of exactly these faults
 * being present (set holds count different faults). Exact, by the definition. */
double net_log_joint(const struct net *net, const int *set, size_t count);

/* The same for every single fault alone, into out[fault_count], and for none of them, into
 * *none: in one walk over the links. -HUGE_VAL where it is impossible. */
void net_log_singles(const struct net *net, double *none, double *out);

/* Chance of each grade of a finding given exactly these faults, into out[grades]. */
void net_grade_chances(const struct net_finding *f, const int *set, size_t count, double *out);

#endif
