/* random.c - see random.h. */
#include "base/random.h"

uint64_t random_bits(struct random *r)
{
  uint64_t z = (r->state += 0x9E3779B97F4A7C15u);

  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
  return z ^ (z >> 31);
}

double random_unit(struct random *r) { return (double)(random_bits(r) >> 11) * 0x1p-53; }

double random_fixed(uint64_t seed, const char *name)
{
  struct random r = {seed};

  for (; *name; name++) r.state = random_bits(&r) ^ (unsigned char)*name;
  return random_unit(&r);
}

size_t random_pick(double share, const double *chance, size_t count)
{
  for (size_t i = 0; i + 1 < count; i++) {
    if (share < chance[i]) return i;
    share -= chance[i];
  }
  return count - 1;
}
