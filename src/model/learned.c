/* learned.c - see learned.h. */
#include "model/learned.h"

#include <stdlib.h>

void learned_begin(struct learned *l, const struct knowledge *k)
{
  *l = (struct learned){k->fault_count, k->class_count, k->sign_count, NULL, NULL};
  l->base = mem_array(k->class_count * k->fault_count, sizeof *l->base);
  l->sign = mem_array(k->sign_count, sizeof *l->sign);
  for (size_t i = 0; i < k->class_count * k->fault_count; i++) l->base[i] = -1;
  for (size_t i = 0; i < k->sign_count; i++) l->sign[i] = -1;
}

void learned_free(struct learned *l)
{
  free(l->base);
  free(l->sign);
  *l = (struct learned){0};
}

double shipped_base(const struct knowledge *k, int machine_class, int fault)
{
  for (size_t i = 0; i < k->base_rate_count; i++)
    if (k->base_rates[i].fault == fault && k->base_rates[i].machine_class == machine_class)
      return k->base_rates[i].chance;
  return k->faults[fault].base_rate;
}

double learned_base(const struct learned *l, const struct knowledge *k, int machine_class, int fault)
{
  if (l && machine_class >= 0) {
    double own = l->base[(size_t)machine_class * l->faults + (size_t)fault];

    if (own >= 0) return own;
  }
  return shipped_base(k, machine_class, fault);
}

double learned_sign(const struct learned *l, const struct knowledge *k, size_t sign)
{
  return l && l->sign[sign] >= 0 ? l->sign[sign] : k->signs[sign].chance;
}
