/* test_shops.c - simulated shops whose true rates differ from the shipped: does the ranking
 * get better with the shop's jobs, and does it never get worse beyond noise with few?
 *
 * Paired: the same fresh machines are ranked with shipped and with learned chances, and the
 * difference of the log scores of the fault behind the complaint is averaged in each shop.
 * Shops are the sample: limits are mean -/+ 1.73 standard errors (Student's t, 19 degrees of
 * freedom, 90 % in the middle; table value from memory). */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "fixture.h"
#include "knowledge/load.h"
#include "made_shop.h"

enum { SHOPS = 20, FRESH = 150, FRESH_FROM = 100000, SIZES = 4 };

static const size_t sizes[SIZES] = {5, 20, 100, 500};
static const double student = 1.73;
static const char *source;

struct fresh {
  struct bench_case c[FRESH];
  int fault[FRESH];
  double shipped[FRESH];
};

static void rank_fresh(const struct knowledge *k, const struct made_shop *shop, struct fresh *f)
{
  for (int i = 0; i < FRESH; i++) {
    f->fault[i] = made_job(shop, k, (uint64_t)(FRESH_FROM + i), &f->c[i]);
    f->shipped[i] = f->fault[i] < 0 ? 0 : log_score(made_chance(k, &f->c[i], NULL, f->fault[i]));
  }
}

/* Mean gain in nats on the fresh machines from the first jobs of the history. */
static double gain(const struct knowledge *k, struct fresh *f, const struct outcomes *history, size_t jobs)
{
  struct outcomes part = {history->items, jobs, 0};
  struct learn_counts counts;
  struct learned learned;
  double sum = 0;

  learn_count(k, &part, learn_usual(), &counts);
  learn_chances(&counts, &learned);
  for (int i = 0; i < FRESH; i++)
    if (f->fault[i] >= 0) sum += f->shipped[i] - log_score(made_chance(k, &f->c[i], &learned, f->fault[i]));
  learned_free(&learned);
  learn_free(&counts);
  return sum / FRESH;
}

static void run_shop(const struct knowledge *k, uint64_t seed, double rates, double signs, double out[SIZES])
{
  struct made_shop shop;
  struct outcomes history = {0};
  struct fresh *f = mem_new(sizeof *f);

  made_shop(k, seed, rates, signs, &shop);
  made_history(&shop, k, 0, sizes[SIZES - 1], &history);
  rank_fresh(k, &shop, f);
  for (int i = 0; i < SIZES; i++) out[i] = gain(k, f, &history, sizes[i]);
  for (int i = 0; i < FRESH; i++) case_free(&f->c[i]);
  free(f);
  outcomes_free(&history);
  made_shop_free(&shop);
}

static void run_shops(const struct knowledge *k, uint64_t first, double rates, double signs,
                      struct limits out[SIZES])
{
  double gains[SHOPS][SIZES];

  for (int s = 0; s < SHOPS; s++) run_shop(k, first + (uint64_t)s, rates, signs, gains[s]);
  for (int i = 0; i < SIZES; i++) {
    double mean = 0, square = 0, wide;

    for (int s = 0; s < SHOPS; s++) mean += gains[s][i] / SHOPS;
    for (int s = 0; s < SHOPS; s++) square += (gains[s][i] - mean) * (gains[s][i] - mean);
    wide = student * sqrt(square / (SHOPS - 1) / SHOPS);
    out[i] = (struct limits){mean - wide, mean + wide};
    printf("spread of rates %.1f, of signs %.1f; shops %lu to %lu, %d machines each; %3zu jobs: "
           "gain %+.4f nats (90 %%: %+.4f to %+.4f)\n",
           rates, signs, (unsigned long)first, (unsigned long)(first + SHOPS - 1), FRESH, sizes[i], mean,
           out[i].low, out[i].high);
  }
}

/* True odds e times the shipped or a e-th of them are nothing unusual here. */
static void different_shops(void **state)
{
  struct knowledge k;
  struct limits gain_of[SIZES];

  (void)state;
  fixture_shipped(source, &k);
  run_shops(&k, 201, 1, .7, gain_of); /* N' was chosen on shops 1 to 10 */
  assert_true(gain_of[0].high >= 0);
  for (int i = 1; i < SIZES; i++) assert_true(gain_of[i].low > 0);
  knowledge_free(&k);
}

/* Where the shipped estimates are true there is nothing to gain, and whatever is learned costs a little:
 * estimating p chances from n jobs costs about p / 2n nats, held down by N'. Five jobs must cost less than
 * anybody could see, five hundred little. */
static void shop_as_shipped(void **state)
{
  struct knowledge k;
  struct limits gain_of[SIZES];

  (void)state;
  fixture_shipped(source, &k);
  run_shops(&k, 301, 0, 0, gain_of);
  assert_true(gain_of[0].low > -.005);
  assert_true(gain_of[SIZES - 1].low > -.06);
  knowledge_free(&k);
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(different_shops), cmocka_unit_test(shop_as_shipped)};

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, NULL, NULL);
}
