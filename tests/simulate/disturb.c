/* disturb.c - see disturb.h. */
#include "disturb.h"

#include <math.h>

#include "base/random.h"

static double moved(double chance, double by, struct random *r)
{
  double odds = chance / (1 - chance) * pow(by, 2 * random_unit(r) - 1);

  return odds / (1 + odds);
}

/* Signs of one fault in one check stand together. */
static void keep_below_one(struct sign *signs, size_t count)
{
  static const double most = 0.98;

  for (size_t i = 0, next; i < count; i = next) {
    double sum = 0;

    for (next = i; next < count && signs[next].check == signs[i].check && signs[next].fault == signs[i].fault &&
                   signs[next].complaint == signs[i].complaint; next++)
      sum += signs[next].chance;
    for (size_t s = i; sum > most && s < next; s++) signs[s].chance *= most / sum;
  }
}

void disturb(struct knowledge *k, double by, uint64_t seed)
{
  struct random r = {seed};

  for (size_t f = 0; f < k->fault_count; f++) k->faults[f].base_rate = moved(k->faults[f].base_rate, by, &r);
  for (size_t b = 0; b < k->base_rate_count; b++) k->base_rates[b].chance = moved(k->base_rates[b].chance, by, &r);
  for (size_t s = 0; s < k->sign_count; s++) k->signs[s].chance = moved(k->signs[s].chance, by, &r);
  keep_below_one(k->signs, k->sign_count);
}
