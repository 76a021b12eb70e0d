/* sensitivity.h - which estimate the first place hangs on.
 *
 * Any joint chance is linear in one estimate, so two weighings give the whole line, and
 * the point where two faults change places follows. Source: Castillo 1997, Coupe and van
 * der Gaag 2000 for the linear form (from memory). */
#ifndef WEIGH_SENSITIVITY_H
#define WEIGH_SENSITIVITY_H

#include "weigh/net.h"

enum estimate_kind { ESTIMATE_PRIOR, ESTIMATE_LINK, ESTIMATE_LEAK };

/* One estimate of the net: the prior of a fault; the chance that a fault brings a grade of
 * a finding; or the chance that the grade comes about anyway. */
struct estimate { enum estimate_kind kind; int fault, finding, grade; };

struct sensitivity {
  struct estimate what;
  double now;    /* its value */
  double tipped; /* its value at which the two faults would be level */
  double factor; /* odds of the one over odds of the other, above 1 */
};

/* Where this one estimate would have to be for `second` to draw level with `first`; by blame
 * when by_blame, else by belief. False when no value of it does that. */
bool net_tipped(const struct net *net, const struct estimate *what, int first, int second, bool by_blame,
                struct sensitivity *out);

/* The estimate that would have to be wrong by the least factor (of odds) for `second` to
 * overtake `first`; by blame when by_blame, else by belief. Looks at the priors of both, and
 * at their links to, and the leaks of, all findings that are not plainly sound. False when
 * no estimate alone can do it. */
bool net_sensitivity(const struct net *net, int first, int second, bool by_blame, struct sensitivity *out);

#endif
