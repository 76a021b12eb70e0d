/* counts.c - see counts.h. */
#include "weigh/counts.h"

#include <math.h>

struct beta beta_worth(double mean, double worth) { return (struct beta){mean * worth, (1 - mean) * worth}; }

struct beta beta_after(struct beta prior, double hits, double misses)
{
  return (struct beta){prior.a + hits, prior.b + misses};
}

double beta_mean(struct beta b) { return b.a / (b.a + b.b); }

/* Coefficient d of the continued fraction DLMF 8.17.22; n from 1. */
static double coefficient(double a, double b, double x, int n)
{
  double m = n / 2;

  if (n % 2 == 0) return m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
  return -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
}

/* 1 / (1 + d1 / (1 + d2 / (1 + ...))), for x below (a + 1) / (a + b + 2), where it is quick. */
static double fraction(double a, double b, double x)
{
  const double tiny = 1e-300, close = 1e-15;
  double value = 1, c = 1, d = 0;

  for (int n = 1; n < 10000; n++) {
    double k = coefficient(a, b, x, n), step;

    d = 1 + k * d;
    if (fabs(d) < tiny) d = tiny;
    c = 1 + k / c;
    if (fabs(c) < tiny) c = tiny;
    d = 1 / d;
    step = c * d;
    value *= step;
    if (fabs(step - 1) < close) break;
  }
  return 1 / value;
}

static double lower_part(double a, double b, double x)
{
  double log_front = a * log(x) + b * log1p(-x) + lgamma(a + b) - lgamma(a) - lgamma(b);

  return exp(log_front) / a * fraction(a, b, x);
}

double beta_below(struct beta b, double x)
{
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x < (b.a + 1) / (b.a + b.b + 2)) return lower_part(b.a, b.b, x);
  return 1 - lower_part(b.b, b.a, 1 - x);
}

double beta_at(struct beta b, double p)
{
  double low = 0, high = 1;

  while (high - low > 1e-12) {
    double middle = (low + high) / 2;

    if (beta_below(b, middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

struct limits beta_limits(struct beta b) { return (struct limits){beta_at(b, 0.05), beta_at(b, 0.95)}; }

double dirichlet_mean(double mean, double worth, double hits, double total)
{
  return (mean * worth + hits) / (worth + total);
}

double log_score(double chance) { return -log(chance > LOG_SCORE_FLOOR ? chance : LOG_SCORE_FLOOR); }

double brier_one(double chance, int came_true)
{
  double miss = came_true ? 1 - chance : chance;

  return miss * miss;
}

double brier(const double *chance, size_t n, size_t truth)
{
  double sum = 0;

  for (size_t i = 0; i < n; i++) sum += brier_one(chance[i], i == truth);
  return sum;
}

struct murphy murphy_of(const struct forecast_bin *bins, size_t n)
{
  struct murphy m = {0};
  double count = 0, hits = 0, base;

  for (size_t i = 0; i < n; i++) {
    count += (double)bins[i].count;
    hits += (double)bins[i].hits;
  }
  if (count <= 0) return m;
  base = hits / count;
  for (size_t i = 0; i < n; i++) {
    double share = (double)bins[i].count / count, seen;

    if (bins[i].count == 0) continue;
    seen = (double)bins[i].hits / (double)bins[i].count;
    m.reliability += share * (bins[i].chance - seen) * (bins[i].chance - seen);
    m.resolution += share * (seen - base) * (seen - base);
  }
  m.uncertainty = base * (1 - base);
  m.score = m.reliability - m.resolution + m.uncertainty;
  return m;
}
