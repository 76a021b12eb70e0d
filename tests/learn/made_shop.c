/* made_shop.c - see made_shop.h. */
#include "made_shop.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/random.h"
#include "practice/hidden.h"
#include "weigh/casenet.h"

enum { CHECKS_MADE = 6, NOT_PROVED_EVERY = 7 };

/* The normal curve by Box and Muller (textbook, from memory). */
static double normal(struct random *r)
{
  double u = 1 - random_unit(r), v = random_unit(r);

  return sqrt(-2 * log(u)) * cos(6.283185307179586 * v);
}

static double moved(double chance, double by)
{
  double odds = chance / (1 - chance) * exp(by);

  return odds / (1 + odds);
}

static void *copy_of(const void *from, size_t count, size_t size)
{
  void *to = mem_array(count, size);

  memcpy(to, from, count * size);
  return to;
}

/* Signs of one fault at one check may not come to more than 1. */
static void move_signs(struct knowledge *k, double spread, struct random *r)
{
  for (size_t s = 0, j; s < k->sign_count; s = j) {
    double sum = 0;

    for (j = s; j < k->sign_count && k->signs[j].fault == k->signs[s].fault &&
                k->signs[j].check == k->signs[s].check && k->signs[j].check >= 0;
         j++) {
      k->signs[j].chance = moved(k->signs[j].chance, spread * normal(r));
      sum += k->signs[j].chance;
    }
    for (size_t i = s; i < j && sum > 0.99; i++) k->signs[i].chance *= 0.99 / sum;
    if (j == s) j++;
  }
}

void made_shop(const struct knowledge *shipped, uint64_t seed, double rates_spread, double signs_spread,
               struct made_shop *out)
{
  struct random r = {seed};
  struct knowledge *k = &out->truth;
  double *by = mem_array(shipped->fault_count, sizeof *by);

  *out = (struct made_shop){.truth = *shipped, .seed = seed};
  k->faults = copy_of(shipped->faults, shipped->fault_count, sizeof *shipped->faults);
  k->base_rates = copy_of(shipped->base_rates, shipped->base_rate_count, sizeof *shipped->base_rates);
  k->signs = copy_of(shipped->signs, shipped->sign_count, sizeof *shipped->signs);
  for (size_t f = 0; f < k->fault_count; f++) {
    by[f] = rates_spread * normal(&r);
    k->faults[f].base_rate = moved(k->faults[f].base_rate, by[f]);
  }
  for (size_t i = 0; i < k->base_rate_count; i++)
    k->base_rates[i].chance = moved(k->base_rates[i].chance, by[k->base_rates[i].fault]);
  move_signs(k, signs_spread, &r);
  for (int i = 0; i < 3; i++) out->classes[i] = (int)(random_unit(&r) * (double)k->class_count);
  free(by);
}

void made_shop_free(struct made_shop *shop)
{
  free(shop->truth.faults);
  free(shop->truth.base_rates);
  free(shop->truth.signs);
}

static void begin_like(const struct knowledge *k, const struct hidden *h, struct bench_case *out)
{
  struct err e;

  case_begin(out, k);
  case_set_machine(out, k, h->machine.machine_class, NULL, 0, NULL, 0, &e);
  if (h->complaint >= 0) case_add_complaint(out, h->complaint);
}

/* Blame of every place, complaints being in focus. */
static double *blames(struct casenet *net)
{
  double *belief = mem_array(net->count, sizeof *belief), *blame = mem_array(net->count, sizeof *blame);
  struct net view;

  for (size_t i = 0; i < net->evidence_count; i++)
    net->findings[i].focus = net->evidence[i].kind == EVIDENCE_COMPLAINT;
  view = casenet_view(net, net->evidence_count);
  if (!net_solve(&view, belief, blame, NULL)) memset(blame, 0, net->count * sizeof *blame);
  free(belief);
  return blame;
}

static int leader(const struct knowledge *k, struct bench_case *c, int after)
{
  struct conclusions none = {0};
  struct casenet net;
  double *blame;
  size_t best = 0;
  int fault;

  casenet_build(&net, k, c, &none);
  blame = blames(&net);
  for (int rank = 0; rank <= after; rank++) {
    if (rank > 0) blame[best] = -1;
    for (size_t p = 0, any = 0; p + 1 < net.count; p++)
      if (!any++ || blame[p] > blame[best]) best = p;
  }
  fault = net.fault_of[best];
  free(blame);
  casenet_free(&net);
  return fault;
}

/* The check, not made yet, at which the fault shows most. */
static int telling(const struct knowledge *k, const struct bench_case *c, int fault)
{
  double most = 0;
  int best = -1;

  for (size_t s = 0; s < k->sign_count; s++) {
    size_t open;

    if (k->signs[s].check < 0 || k->signs[s].fault != fault || k->signs[s].chance <= most) continue;
    if (case_result_of(c, k->signs[s].check)) continue;
    if (case_needs(c, &k->checks[k->signs[s].check].needs, &open) == TRI_LACKS) continue;
    most = k->signs[s].chance;
    best = k->signs[s].check;
  }
  return best;
}

int made_job(const struct made_shop *shop, const struct knowledge *shipped, uint64_t n,
             struct bench_case *out)
{
  struct hidden h;
  int fault = -1;

  hidden_draw(&shop->truth, shop->classes[n % 3], shop->seed * 1000003 + n, &h);
  begin_like(shipped, &h, out);
  for (int i = 0; i < CHECKS_MADE; i++) { /* the leader and those behind it by turns */
    int check = telling(shipped, out, leader(shipped, out, i % 3));

    if (check >= 0) case_set_result(out, (struct case_result){check, hidden_result(&h, check), 0, 1});
  }
  if (h.culprit >= 0) fault = h.net.fault_of[h.culprit];
  hidden_free(&h);
  return fault;
}

double made_chance(const struct knowledge *k, struct bench_case *c, const struct learned *learned, int fault)
{
  struct conclusions none = {0};
  struct casenet net;
  double *blame, sum = 0, chance = 0;

  c->learned = learned;
  casenet_build(&net, k, c, &none);
  blame = blames(&net);
  for (size_t p = 0; p + 1 < net.count; p++) sum += blame[p];
  if (net.place_of[fault] >= 0 && sum > 0) chance = blame[net.place_of[fault]] / sum;
  free(blame);
  casenet_free(&net);
  c->learned = NULL;
  return chance;
}

void made_history(const struct made_shop *shop, const struct knowledge *shipped, uint64_t from, uint64_t to,
                  struct outcomes *out)
{
  for (uint64_t n = from; n < to; n++) {
    struct bench_case c;
    int fault = made_job(shop, shipped, n, &c);
    struct outcome *o = outcomes_add(out);

    snprintf(o->id, sizeof o->id, "made-%06u", (unsigned)n);
    o->closed = (int64_t)(1000000 + n * 86400);
    o->machine_class = c.machine_class;
    o->complaint = c.complaint_count ? c.complaints[0] : -1;
    o->confirmed = fault >= 0 && n % NOT_PROVED_EVERY != 0;
    if (fault >= 0) o->faults[o->fault_count++] = fault;
    for (size_t i = 0; i < c.result_count; i++)
      outcome_add_result(o, c.results[i].check, c.results[i].result);
    case_free(&c);
  }
}
