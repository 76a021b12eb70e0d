/* made_shop.h - simulated shops for the tests of learning: the truth differs from what is
 * shipped, and jobs come in by it. */
#ifndef TESTS_MADE_SHOP_H
#define TESTS_MADE_SHOP_H

#include <stdint.h>

#include "model/case.h"
#include "shop/learn.h"

/* Knowledge as it is in one shop: odds of base rates and signs multiplied by e^(spread * z),
 * z drawn from the normal curve. Everything else is shared with the shipped, which must
 * outlive it. */
struct made_shop { struct knowledge truth; uint64_t seed; int classes[3]; };

void made_shop(const struct knowledge *shipped, uint64_t seed, double rates_spread, double signs_spread,
               struct made_shop *out);
void made_shop_free(struct made_shop *shop);

/* Job number n of the shop, the machines being of its three classes in turn: the case as it
 * stood before the repair (weighed with shipped chances to choose the checks, six of them),
 * and the fault behind the complaint. Free the case with case_free. */
int made_job(const struct made_shop *shop, const struct knowledge *shipped, uint64_t n,
             struct bench_case *out);

/* The chance that the ranking of the case gives to that fault, blame being shared out among
 * the listed faults so that it adds to 1. */
double made_chance(const struct knowledge *k, struct bench_case *c, const struct learned *learned, int fault);

/* Adds jobs [from, to) as outcomes, every seventh without a passed proof run. */
void made_history(const struct made_shop *shop, const struct knowledge *shipped, uint64_t from, uint64_t to,
                  struct outcomes *out);

#endif
