/* learn.c - see learn.h. */
#include "shop/learn.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "model/case.h"

static const double least_sign = 0.005, most_base = 0.5;

/* ---- outcomes ---------------------------------------------------------------------------- */

struct outcome *outcomes_add(struct outcomes *o)
{
  void *items = o->items;
  struct outcome *x;

  mem_grow(&items, &o->room, o->count + 1, sizeof *o->items);
  o->items = items;
  x = &o->items[o->count++];
  *x = (struct outcome){.machine_class = -1, .complaint = -1, .ending = -1};
  return x;
}

void outcome_add_result(struct outcome *o, int check, int result)
{
  void *results = o->results;

  mem_grow(&results, &o->result_room, o->result_count + 1, sizeof *o->results);
  o->results = results;
  o->results[o->result_count++] = (struct outcome_result){check, result};
}

void outcomes_free(struct outcomes *o)
{
  for (size_t i = 0; i < o->count; i++) free(o->items[i].results);
  free(o->items);
  *o = (struct outcomes){0};
}

/* ---- shipped shares ---------------------------------------------------------------------- */

/* The chance that a fault, where it is, leads the owner to any complaint. */
static double *brings(const struct knowledge *k)
{
  double *silent = mem_array(k->fault_count, sizeof *silent);

  for (size_t f = 0; f < k->fault_count; f++) silent[f] = 1;
  for (size_t s = 0; s < k->sign_count; s++)
    if (k->signs[s].check < 0) silent[k->signs[s].fault] *= 1 - k->signs[s].chance;
  for (size_t f = 0; f < k->fault_count; f++) silent[f] = 1 - silent[f];
  return silent;
}

void learn_shares(const struct knowledge *k, int machine_class, double *share)
{
  double open_need = knowledge_setting(k, "unknown-need", 0.5), sum = 0, *lead = brings(k);
  struct bench_case usual;
  struct err e;

  case_begin(&usual, k);
  case_set_machine(&usual, k, machine_class, NULL, 0, NULL, 0, &e);
  for (size_t f = 0; f < k->fault_count; f++) {
    size_t open;

    share[f] = 0;
    if (case_needs(&usual, &k->faults[f].needs, &open) == TRI_LACKS) continue;
    share[f] = shipped_base(k, machine_class, (int)f) * lead[f];
    for (; open > 0; open--) share[f] *= open_need;
    sum += share[f];
  }
  for (size_t f = 0; f < k->fault_count; f++) share[f] = sum > 0 ? share[f] / sum : 0;
  case_free(&usual);
  free(lead);
}

/* ---- counting ---------------------------------------------------------------------------- */

struct learn_how learn_usual(void)
{
  return (struct learn_how){.rates_worth = 300, .signs_worth = 10, .most = 200};
}

/* The latest first, so that "the latest so many" does not depend on the order of telling. */
static int by_time(const void *x, const void *y)
{
  const struct outcome *a = *(struct outcome *const *)x, *b = *(struct outcome *const *)y;

  if (a->closed != b->closed) return a->closed > b->closed ? -1 : 1;
  return strcmp(a->id, b->id);
}

size_t learn_pair(const struct knowledge *k, size_t sign)
{
  while (sign > 0 && k->signs[sign - 1].check == k->signs[sign].check &&
         k->signs[sign - 1].fault == k->signs[sign].fault)
    sign--;
  return sign;
}

/* First sign of a fault at a check, sign_count when it has none. */
static size_t sign_at(const struct knowledge *k, int fault, int check)
{
  size_t first, last;

  knowledge_signs_of_check(k, check, &first, &last);
  for (size_t s = first; s < last; s++)
    if (k->signs[s].fault == fault) return s;
  return k->sign_count;
}

/* A result counts for the one confirmed fault that shows at the check; with two of them
 * nobody knows whose doing it was. */
static bool count_result(struct learn_counts *c, const struct outcome *o, const struct outcome_result *r)
{
  size_t found = c->k->sign_count;

  for (size_t i = 0; i < o->fault_count; i++) {
    size_t s = sign_at(c->k, o->faults[i], r->check);

    if (s == c->k->sign_count) continue;
    if (found != c->k->sign_count) return false;
    found = s;
  }
  if (found == c->k->sign_count || c->made[found] >= c->how.most) return false;
  c->made[found]++;
  c->shown[found * CHECK_MOST_RESULTS + (size_t)r->result]++;
  return true;
}

static bool count_faults(struct learn_counts *c, const struct outcome *o, const double *share)
{
  size_t class = (size_t)o->machine_class, possible = 0;

  for (size_t i = 0; i < o->fault_count; i++) possible += share[o->faults[i]] > 0;
  if (possible == 0 || c->class_faults[class] + (long)possible > c->how.most) return false;
  for (size_t i = 0; i < o->fault_count; i++)
    if (share[o->faults[i]] > 0) c->hits[class * c->k->fault_count + (size_t)o->faults[i]]++;
  c->class_faults[class] += (long)possible;
  c->class_jobs[class]++;
  return true;
}

static int64_t millionths(double x) { return llround(x * 1e6); }

static bool is_confirmed(const struct outcome *o, int fault)
{
  for (size_t i = 0; i < o->fault_count; i++)
    if (o->faults[i] == fault) return true;
  return false;
}

static int most_frequent(const struct knowledge *k, const double *share)
{
  size_t best = 0;

  for (size_t f = 1; f < k->fault_count; f++)
    if (share[f] > share[best]) best = f;
  return (int)best;
}

static void count_past(struct learn_counts *c, const struct outcome *o, const double *share)
{
  struct learn_past *p = &c->past;
  double chance = o->said[0].chance;
  bool hit = is_confirmed(o, o->said[0].fault), named = false;
  int bin = (int)(chance * LEARN_BINS);

  for (size_t i = 0; i < o->said_count; i++) named = named || is_confirmed(o, o->said[i].fault);
  if (bin >= LEARN_BINS) bin = LEARN_BINS - 1;
  p->count++;
  p->hits += hit;
  p->named += named;
  p->usual_hits += share && is_confirmed(o, most_frequent(c->k, share));
  p->chance += millionths(chance);
  p->quadratic += millionths(brier_one(chance, hit));
  p->bin_count[bin]++;
  p->bin_hits[bin] += hit;
  p->bin_chance[bin] += millionths(chance);
}

static void count_one(struct learn_counts *c, const struct outcome *o, const double *shares)
{
  const double *share = o->machine_class >= 0 ? shares + (size_t)o->machine_class * c->k->fault_count : NULL;
  bool used = false;

  c->jobs++;
  if (!o->confirmed || o->fault_count == 0) {
    c->unconfirmed++;
    return;
  }
  if (share) used = count_faults(c, o, share);
  for (size_t i = 0; i < o->result_count; i++) used = count_result(c, o, &o->results[i]) || used;
  if (o->said_count > 0) count_past(c, o, share);
  c->counted += used;
}

void learn_count(const struct knowledge *k, const struct outcomes *o, struct learn_how how,
                 struct learn_counts *out)
{
  const struct outcome **order = mem_array(o->count, sizeof *order);
  double *shares = mem_array(k->class_count * k->fault_count, sizeof *shares);

  *out = (struct learn_counts){.k = k, .how = how};
  out->class_jobs = mem_array(k->class_count, sizeof *out->class_jobs);
  out->class_faults = mem_array(k->class_count, sizeof *out->class_faults);
  out->hits = mem_array(k->class_count * k->fault_count, sizeof *out->hits);
  out->made = mem_array(k->sign_count, sizeof *out->made);
  out->shown = mem_array(k->sign_count * CHECK_MOST_RESULTS, sizeof *out->shown);
  for (size_t i = 0; i < k->class_count; i++) learn_shares(k, (int)i, shares + i * k->fault_count);
  for (size_t i = 0; i < o->count; i++) order[i] = &o->items[i];
  qsort(order, o->count, sizeof *order, by_time);
  for (size_t i = 0; i < o->count; i++) count_one(out, order[i], shares);
  free(shares);
  free(order);
}

void learn_free(struct learn_counts *c)
{
  free(c->class_jobs);
  free(c->class_faults);
  free(c->hits);
  free(c->made);
  free(c->shown);
  *c = (struct learn_counts){0};
}

/* ---- from counts to chances -------------------------------------------------------------- */

double learn_share_now(const struct learn_counts *c, int machine_class, int fault, double share)
{
  size_t class = (size_t)machine_class;

  return dirichlet_mean(share, c->how.rates_worth, (double)c->hits[class * c->k->fault_count + (size_t)fault],
                        (double)c->class_faults[class]);
}

/* Base rates move as the shares do; what brings machines in stays as much in all. */
static void rates_of_class(const struct learn_counts *c, int machine_class, struct learned *out)
{
  double *share = mem_array(c->k->fault_count, sizeof *share);

  learn_shares(c->k, machine_class, share);
  for (size_t f = 0; f < c->k->fault_count; f++) {
    double now;

    if (share[f] <= 0) continue;
    now = shipped_base(c->k, machine_class, (int)f) * learn_share_now(c, machine_class, (int)f, share[f]) /
          share[f];
    out->base[(size_t)machine_class * out->faults + f] = now < most_base ? now : most_base;
  }
  free(share);
}

/* Chances of a check's results with nothing listed wrong. */
static void anyway_of(const struct check *c, double *leak)
{
  leak[0] = 1;
  for (size_t g = 1; g < c->results.count; g++) leak[0] -= leak[g] = c->anyway.items[g - 1];
}

/* Shipped chances of the results on a machine with one fault: the later of what the fault and
 * what anything else brings about shows (noisy-MAX), so the chances "up to here" multiply.
 * link gets the fault's own. Returns the number of signs of the pair. */
static size_t pair_shows(const struct knowledge *k, size_t pair, double *leak, double *link, double *shows)
{
  const struct sign *s = &k->signs[pair];
  const struct check *c = &k->checks[s->check];
  double up_to_link = 0, up_to_leak = 0, before = 0;
  size_t n = 0;

  anyway_of(c, leak);
  memset(link, 0, c->results.count * sizeof *link);
  link[0] = 1;
  for (; pair + n < k->sign_count && s[n].check == s->check && s[n].fault == s->fault; n++) {
    link[s[n].result] = s[n].chance;
    link[0] -= s[n].chance;
  }
  for (size_t g = 0; g < c->results.count; g++) {
    up_to_link += link[g];
    up_to_leak += leak[g];
    shows[g] = up_to_link * up_to_leak - before;
    before = up_to_link * up_to_leak;
  }
  return n;
}

double learn_shows(const struct knowledge *k, size_t sign)
{
  double leak[CHECK_MOST_RESULTS], link[CHECK_MOST_RESULTS], shows[CHECK_MOST_RESULTS];

  pair_shows(k, learn_pair(k, sign), leak, link, shows);
  return shows[k->signs[sign].result];
}

/* The results that were counted, and then what shows anyway taken out again. */
static void signs_of_pair(const struct learn_counts *c, size_t pair, struct learned *out)
{
  const struct knowledge *k = c->k;
  const struct sign *s = &k->signs[pair];
  double leak[CHECK_MOST_RESULTS], link[CHECK_MOST_RESULTS], shows[CHECK_MOST_RESULTS], sum = 0;
  double up_to = 0, up_to_leak = 0, before = 0;
  size_t n = pair_shows(k, pair, leak, link, shows);

  for (size_t g = 0; g < k->checks[s->check].results.count; g++) {
    double now;

    up_to += dirichlet_mean(shows[g], c->how.signs_worth, (double)c->shown[pair * CHECK_MOST_RESULTS + g],
                            (double)c->made[pair]);
    up_to_leak += leak[g];
    now = up_to_leak > 0 ? up_to / up_to_leak : 0;
    if (now > 1) now = 1;
    link[g] = now > before ? now - before : 0;
    if (now > before) before = now;
  }
  for (size_t i = 0; i < n; i++) {
    double chance = link[s[i].result];

    out->sign[pair + i] = chance > least_sign ? chance : least_sign;
    sum += out->sign[pair + i];
  }
  for (size_t i = 0; i < n && sum > 1 - least_sign; i++) out->sign[pair + i] *= (1 - least_sign) / sum;
}

void learn_chances(const struct learn_counts *c, struct learned *out)
{
  learned_begin(out, c->k);
  for (size_t i = 0; i < c->k->class_count; i++)
    if (c->class_faults[i] > 0) rates_of_class(c, (int)i, out);
  for (size_t s = 0; s < c->k->sign_count; s++)
    if (c->made[s] > 0) signs_of_pair(c, s, out);
}
