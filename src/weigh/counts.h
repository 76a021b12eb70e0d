/* counts.h - what counted cases say: chances with their limits, and how good forecasts were.
 *
 * Sources: conjugate updating of Beta and Dirichlet by counts, the quadratic score (Brier
 * 1950), the logarithmic score (Good 1952) and Murphy's 1973 partition are textbook matter,
 * from memory. Sums run in the order given, so the same counts give the same bytes. */
#ifndef WEIGH_COUNTS_H
#define WEIGH_COUNTS_H

#include <stddef.h>

/* A Beta distribution of a chance: a for, b against, both above 0. */
struct beta { double a, b; };

/* What is thought of a chance: mean 0 < mean < 1, worth so many cases (above 0). */
struct beta beta_worth(double mean, double worth);

/* The same after so many more cases, for and against. */
struct beta beta_after(struct beta prior, double hits, double misses);

double beta_mean(struct beta b);

/* The chance that the chance lies below x, 0 <= x <= 1: the regularised incomplete beta
 * function. Source: continued fraction DLMF 8.17.22 by Lentz's method as modified by
 * Thompson and Barnett (from memory); relative error about 1e-13 for a, b up to 1e4. */
double beta_below(struct beta b, double x);

/* x below which the share p (0 < p < 1) lies, by halving, to 1e-12. */
double beta_at(struct beta b, double p);

/* The middle 90 %. */
struct limits { double low, high; };
struct limits beta_limits(struct beta b);

/* The mean share of one kind of `mean` before, worth N cases in all kinds together, after
 * `hits` of `total` cases were of that kind. */
double dirichlet_mean(double mean, double worth, double hits, double total);

/* The least chance that the log score looks at, so that one flat "never" is not the end. */
#define LOG_SCORE_FLOOR 1e-4

/* -ln of the chance given to what came true, in nats. */
double log_score(double chance);

/* The quadratic score of chances of n kinds of which `truth` came true: 0 best, 2 worst. */
double brier(const double *chance, size_t n, size_t truth);

/* The same for a yes-or-no forecast: 0 best, 1 worst. */
double brier_one(double chance, int came_true);

/* Forecasts put into bins: each with the one chance that was forecast, how many there were
 * and how many came true. The mean quadratic score is reliability - resolution +
 * uncertainty. All 0 when there are none. */
struct forecast_bin { double chance; long count, hits; };
struct murphy { double reliability, resolution, uncertainty, score; };
struct murphy murphy_of(const struct forecast_bin *bins, size_t n);

#endif
