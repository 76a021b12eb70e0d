/* compare.c - most information for its cost: kept to show why it is not followed. */
#include "plan/policy.h"

#include <math.h>

double plan_disorder(const struct plan_problem *p, const struct plan_state *s)
{
  double sum = plan_weight(p, s), bits = 0;

  for (size_t h = 0; h < p->hypotheses; h++)
    if (s->w[h] > 0) bits -= s->w[h] * log2(s->w[h] / sum);
  return bits;
}

static double largest(const struct plan_problem *p, const struct plan_state *s)
{
  double most = 0;

  for (size_t h = 0; h < p->hypotheses; h++)
    if (s->w[h] > most) most = s->w[h];
  return most;
}

double plan_information(const struct plan_problem *p, const struct plan_state *s, int q)
{
  double gain = plan_disorder(p, s);
  struct plan_state to;

  for (int o = 0; o < p->questions[q].outcomes; o++)
    if (plan_outcome(p, s, q, o, &to) > 0) gain -= plan_disorder(p, &to);
  return gain;
}

/* The question with most information for its cost, or -1. */
static int most_telling(const struct plan_problem *p, const struct plan_state *s)
{
  double best = 1e-12, weight = plan_weight(p, s);
  int choice = -1;

  for (size_t q = 0; q < p->question_count; q++) {
    double gain;

    if (s->asked >> q & 1) continue;
    gain = plan_information(p, s, (int)q) / (weight * plan_question_cost(p, s, &p->questions[q]));
    if (gain <= best) continue;
    best = gain;
    choice = (int)q;
  }
  return choice;
}

struct informing { const struct plan_problem *p; double sure; };

static double informed(void *with, const struct plan_state *s)
{
  const struct informing *i = with;

  return plan_most_information(i->p, s, i->sure);
}

double plan_most_information(const struct plan_problem *p, const struct plan_state *s, double sure)
{
  struct informing next = {p, sure};
  struct plan_move ask = plan_asking(-1);

  if (largest(p, s) <= sure * plan_weight(p, s)) ask.at = most_telling(p, s);
  return ask.at < 0 ? plan_folded(p, s, NULL) : plan_move_value(p, s, &ask, informed, &next, 1e300);
}
