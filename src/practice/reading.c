/* reading.c - see reading.h. */
#include "practice/reading.h"

#include <math.h>
#include <stdio.h>

#include "base/random.h"

/* How near the edge of its band a true value comes, and how far an open band is gone into, as
 * shares of the band (or of the limit, or of the band beside it). */
static const double edge = 0.12, into_open = 0.35;

const struct bands *reading_bands(const struct knowledge *k, const struct bench_case *c, int check)
{
  const struct bands *best = NULL;
  size_t open;

  for (size_t i = 0; i < k->bands_count; i++) {
    const struct bands *b = &k->bands[i];

    if (b->check != check || case_needs(c, &b->needs, &open) != TRI_HAS) continue;
    if (!best || b->needs.count > best->needs.count) best = b;
  }
  return best;
}

/* Ends of band i; an open one ends where a machine in that state is still likely to be. */
static void ends(const struct bands *b, size_t i, double *low, double *high)
{
  const double *limit = b->limits.items;
  size_t last = b->limits.count;
  double span = last > 1 ? limit[last - 1] - limit[0] : fabs(limit[0]);

  if (span <= 0) span = 1;
  *low = i > 0 ? limit[i - 1] : limit[0] - into_open * span;
  *high = i < last ? limit[i] : limit[last - 1] + into_open * span;
  if (*low < 0 && limit[0] >= 0) *low = 0;
  if (i == 0 && limit[0] > 0 && *low > limit[0] * 0.75) *low = limit[0] * 0.6;
}

/* Rounded as the instrument is read: to about a third of its error. */
static double as_read(double value, double tolerance)
{
  double step = tolerance > 0 ? pow(10, floor(log10(tolerance))) : 1e-3;

  return round(value / step) * step;
}

bool reading_draw(const struct knowledge *k, const struct bench_case *machine, uint64_t seed,
                  struct case_result *r)
{
  const struct check *c = &k->checks[r->check];
  const struct bands *b = c->kind == KIND_MEASURE ? reading_bands(k, machine, r->check) : NULL;
  double low, high, u, v, noise;
  char name[120];
  size_t at = 0, fitting = 0, chosen;

  for (size_t i = 0; b && i < b->results.count; i++) fitting += b->result_at[i] == r->result;
  if (fitting == 0 || b->limits.count == 0) return false;
  snprintf(name, sizeof name, "%s %d", c->id, r->result);
  u = random_fixed(seed, name);
  chosen = (size_t)(u * (double)fitting);
  u = u * (double)fitting - (double)chosen;
  while (b->result_at[at] != r->result || chosen-- > 0) at++;
  ends(b, at, &low, &high);
  snprintf(name, sizeof name, "%s %d radius", c->id, r->result);
  v = random_fixed(seed, name);
  snprintf(name, sizeof name, "%s %d angle", c->id, r->result);
  noise = sqrt(-2 * log(1 - v)) * cos(6.283185307179586 * random_fixed(seed, name));
  r->value = as_read(low + (high - low) * (edge + (1 - 2 * edge) * u) + noise * c->tolerance, c->tolerance);
  if (r->value < 0 && low >= 0) r->value = 0;
  return true;
}
