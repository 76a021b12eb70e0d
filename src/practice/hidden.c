/* hidden.c - see hidden.h. */
#include "practice/hidden.h"

#include <stdlib.h>
#include <string.h>

#include "base/random.h"

enum { MOST_TRIES = 10000 };

static void set_up(const struct knowledge *k, int machine_class, struct hidden *h)
{
  struct conclusions none = {0};
  struct err e;

  case_begin(&h->machine, k);
  case_set_machine(&h->machine, k, machine_class, NULL, 0, NULL, 0, &e);
  casenet_build(&h->net, k, &h->machine, &none);
}

/* Every fault by its own base rate; "not listed" is left out, as it has no checks. */
static void draw_faults(struct hidden *h, struct random *r)
{
  h->fault_count = 0;
  for (size_t p = 0; p + 1 < h->net.count; p++)
    if (random_unit(r) < h->net.prior[p] && h->fault_count < HIDDEN_MOST_FAULTS) h->faults[h->fault_count++] = (int)p;
}

/* What the owner says: one of the complaints that the faults bring about, each fault trying
 * its own; the first to succeed, in an order drawn anew. */
static bool draw_complaint(struct hidden *h, struct random *r)
{
  const struct knowledge *k = h->net.k;

  for (size_t tries = h->fault_count; tries > 0; tries--) {
    size_t at = (size_t)(random_unit(r) * (double)tries);
    int place = h->faults[at];

    for (size_t s = 0; s < k->sign_count; s++) {
      const struct sign *sign = &k->signs[s];

      if (sign->complaint < 0 || sign->fault != h->net.fault_of[place]) continue;
      if (random_unit(r) >= sign->chance) continue;
      h->culprit = place;
      h->complaint = sign->complaint;
      return true;
    }
    h->faults[at] = h->faults[tries - 1]; /* behind the ones still to try */
    h->faults[tries - 1] = place;
  }
  return false;
}

void hidden_draw(const struct knowledge *k, int machine_class, uint64_t seed, struct hidden *out)
{
  struct random r = {seed};
  bool complained = false;

  *out = (struct hidden){.seed = seed, .culprit = -1, .complaint = -1};
  if (machine_class < 0) machine_class = (int)(random_unit(&r) * (double)k->class_count);
  set_up(k, machine_class, out);
  for (int tries = 0; !complained && tries < MOST_TRIES; tries++) {
    draw_faults(out, &r);
    complained = draw_complaint(out, &r);
  }
  if (complained) case_add_complaint(&out->machine, out->complaint);
}

int hidden_result(struct hidden *h, int check)
{
  struct net_finding f;
  double chance[NET_MAX_GRADES];

  casenet_finding(&h->net, check, &f);
  net_grade_chances(&f, h->faults, h->fault_count, chance);
  return (int)random_pick(random_fixed(h->seed, h->net.k->checks[check].id), chance, (size_t)f.grades);
}

void hidden_free(struct hidden *h)
{
  casenet_free(&h->net);
  case_free(&h->machine);
}
