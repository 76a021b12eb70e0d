/* ahead.c - see ahead.h. */
#include "simulate/ahead.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* LANES: so many are summed side by side. */
enum { MOST_ITEMS = SIM_MOST_ACTIVE + 1, LANES = 4, PROOF_RUN = -2 };

/* A fault in play that bears on a check. stake: what a check that tells it for certain could save
 * at most. */
struct bearing { int item; double weight, stake; const double *upto; };

/* Some check looked into: the faults in play that bear on it, their items, and all items in an
 * order that has those last. */
struct asked {
  int check, grades;
  size_t count, item_count;
  struct bearing by[SIM_MOST_ACTIVE]; /* item: place in this order */
  int items[MOST_ITEMS];
  double weight[MOST_ITEMS], cost[MOST_ITEMS];
};

/* A check that may be made. rate: what it can save a minute at most. */
struct candidate { int check; double minutes, rate; };

/* Items are what can be done to have the machine right: faults with one repair are one item; the
 * first is the proof run, in case nothing is behind it. */
struct sim_ahead {
  const struct sim_belief *x;
  size_t fault_count; /* faults in play, heaviest first */
  int fault[SIM_MOST_ACTIVE], item_of[SIM_MOST_ACTIVE];
  double fault_weight[SIM_MOST_ACTIVE], stake[SIM_MOST_ACTIVE];
  size_t count;
  int repair[MOST_ITEMS];
  double weight[MOST_ITEMS], cost[MOST_ITEMS];
  double pair[MOST_ITEMS][MOST_ITEMS]; /* min(w c', w' c); of itself w c */
  double row[MOST_ITEMS];              /* sum of pair[i] without itself */
  double pairs;                        /* all pairs, and each with itself */
  struct candidate *candidates;
  size_t candidate_count, open; /* the first `open` may still be the best */
  double *most; /* of each check: what it can save at most; 0 but for the candidates */
  int *place;   /* of each fault: place in fault[], -1 */
  int *system;  /* of each check: place in the fixed order */
};

/* Less than this behind the trouble, a fault is not planned for. */
static const double least_weight = 1e-3;

/* The order of one who always goes the same way. */
static const char *const fixed_order[] = {"fuel", "ignition", "compression", "air", "exhaust", "lubrication",
                                          "governor", "starting", "driven", "use"};

static int place_in_order(const char *system)
{
  int n = sizeof fixed_order / sizeof fixed_order[0];

  for (int i = 0; i < n; i++)
    if (strcmp(system, fixed_order[i]) == 0) return i;
  return n;
}

struct sim_ahead *sim_ahead_new(const struct sim_book *b)
{
  struct sim_ahead *a = mem_new(sizeof *a);

  a->candidates = mem_array(b->check_count, sizeof *a->candidates);
  a->most = mem_array(b->check_count, sizeof *a->most);
  a->place = mem_array(b->fault_count, sizeof *a->place);
  a->system = mem_array(b->check_count, sizeof *a->system);
  for (size_t f = 0; f < b->fault_count; f++) a->place[f] = -1;
  for (size_t c = 0; c < b->check_count; c++) a->system[c] = place_in_order(b->k->checks[c].system);
  return a;
}

void sim_ahead_free(struct sim_ahead *a)
{
  free(a->candidates);
  free(a->most);
  free(a->place);
  free(a->system);
  free(a);
}

/* ---- as things are ---------------------------------------------------------------------- */

double sim_repair_minutes(const struct sim_belief *x, int fault)
{
  const struct sim_book *b = x->model->book;

  return b->repair_minutes[fault] + sim_cover_minutes(x->model, b->repair_covers[fault], x->off);
}

static void pick_faults(struct sim_ahead *a, const struct sim_belief *x)
{
  size_t faults = x->model->book->fault_count;
  double from = least_weight * x->sum;

  for (size_t i = 0; i < a->fault_count; i++) a->place[a->fault[i]] = -1;
  a->fault_count = 0;
  for (size_t f = 0; f < faults; f++) {
    size_t at = a->fault_count;

    if (x->weight[f] < from) continue;
    while (at > 0 && a->fault_weight[at - 1] < x->weight[f]) at--;
    if (at == SIM_MOST_ACTIVE) continue;
    if (a->fault_count < SIM_MOST_ACTIVE) a->fault_count++;
    memmove(&a->fault[at + 1], &a->fault[at], (a->fault_count - 1 - at) * sizeof a->fault[0]);
    memmove(&a->fault_weight[at + 1], &a->fault_weight[at],
            (a->fault_count - 1 - at) * sizeof a->fault_weight[0]);
    a->fault[at] = (int)f;
    a->fault_weight[at] = x->weight[f];
  }
  for (size_t i = 0; i < a->fault_count; i++) a->place[a->fault[i]] = (int)i;
}

/* The items that put the faults right, with weights that add to 1. */
static void list_items(struct sim_ahead *a, const struct sim_belief *x)
{
  const struct sim_book *b = x->model->book;
  double sum = x->none;

  for (size_t i = 0; i < a->fault_count; i++) sum += a->fault_weight[i];
  if (sum <= 0) sum = 1;
  a->repair[0] = PROOF_RUN;
  a->weight[0] = x->none / sum;
  a->cost[0] = b->prove;
  a->count = 1;
  for (size_t i = 0; i < a->fault_count; i++) {
    int fault = a->fault[i];
    size_t at = 1;

    a->fault_weight[i] /= sum;
    while (at < a->count && a->repair[at] != b->repair[fault]) at++;
    if (at == a->count) {
      a->repair[at] = b->repair[fault];
      a->cost[at] = sim_repair_minutes(x, fault) + b->parts[fault];
      a->weight[at] = 0;
      a->count++;
    }
    a->item_of[i] = (int)at;
    a->weight[at] += a->fault_weight[i];
  }
}

static double lesser(double a, double b) { return a < b ? a : b; }

static void add_pairs(struct sim_ahead *a)
{
  a->pairs = 0;
  for (size_t i = 0; i < a->count; i++) {
    a->row[i] = 0;
    a->pairs += a->pair[i][i] = a->weight[i] * a->cost[i];
    for (size_t j = 0; j < i; j++) {
      double p = lesser(a->weight[i] * a->cost[j], a->weight[j] * a->cost[i]);

      a->pair[i][j] = a->pair[j][i] = p;
      a->row[i] += p;
      a->row[j] += p;
      a->pairs += p;
    }
  }
}

static double minutes_of(const struct sim_ahead *a, int check)
{
  const struct sim_check *c = &a->x->model->book->checks[check];

  return c->minutes + sim_cover_minutes(a->x->model, c->covers, a->x->off);
}

/* A pair of items saves by a check no more than its cost times how far apart their results lie
 * (total variation): sum of min(a p, b q) is at least min(a, b) times sum of min(p, q). By
 * coupling, an item lies no further from those that the check does not bear on than the chance
 * that it shows; two that it bears on, no further than both together. So no check saves more than
 * the sum over its items of their pairs times their chances to show (own bound). A fault's stake
 * is its share of that. */
static void find_stakes(struct sim_ahead *a)
{
  for (size_t i = 0; i < a->fault_count; i++) {
    int item = a->item_of[i];

    a->stake[i] = a->weight[item] > 0 ? a->row[item] * a->fault_weight[i] / a->weight[item] : 0;
  }
}

/* The checks that bear on a fault in play and may be made. */
static void list_candidates(struct sim_ahead *a)
{
  const struct sim_model *m = a->x->model;
  const struct sim_book *b = m->book;
  size_t count = 0, kept = 0;

  for (size_t i = 0; i < a->candidate_count; i++) a->most[a->candidates[i].check] = 0;
  for (size_t i = 0; i < a->fault_count; i++) {
    const struct sim_touch *t = b->touches + b->touch_first[a->fault[i]];
    const struct sim_touch *last = b->touches + b->touch_first[a->fault[i] + 1];

    for (; t < last; t++) {
      double most = a->stake[i] * t->shows;

      if (most <= 0) continue;
      if (a->most[t->check] <= 0) a->candidates[count++].check = t->check;
      a->most[t->check] += most;
    }
  }
  for (size_t i = 0; i < count; i++) {
    int check = a->candidates[i].check;
    double minutes = minutes_of(a, check), most = a->most[check];

    if (!m->allowed[check] || a->x->made[check]) {
      a->most[check] = 0;
      continue;
    }
    a->candidates[kept++] = (struct candidate){check, minutes, most / (minutes + b->turn)};
  }
  a->candidate_count = kept;
}

/* Items that the check does not bear on come first. */
static void order_items(const struct sim_ahead *a, struct asked *q)
{
  int place[MOST_ITEMS] = {0};
  size_t n = 0;

  for (size_t i = 0; i < q->count; i++) place[q->by[i].item] = 1;
  for (int borne = 0; borne < 2; borne++) {
    if (borne) q->item_count = a->count - n;
    for (size_t i = 0; i < a->count; i++) {
      if ((place[i] != 0) != borne) continue;
      q->items[n] = (int)i;
      q->weight[n] = a->weight[i];
      q->cost[n++] = a->cost[i];
    }
  }
  for (size_t i = 0; i < a->count; i++) place[q->items[i]] = (int)i;
  for (size_t i = 0; i < q->count; i++) q->by[i].item = place[q->by[i].item];
}

static void look_into(const struct sim_ahead *a, int check, struct asked *q)
{
  const struct sim_book *b = a->x->model->book;
  const struct sim_check *c = &b->checks[check];

  q->check = check;
  q->grades = c->grades;
  q->count = 0;
  for (size_t l = c->first; l < c->last; l++) {
    int i = a->place[b->links[l].fault];

    if (i >= 0) q->by[q->count++] = (struct bearing){a->item_of[i], a->fault_weight[i], a->stake[i], b->links[l].upto};
  }
  order_items(a, q);
}

/* ---- one question ahead ----------------------------------------------------------------- */

/* How likely each grade of a check is to be stayed under with all that may lie beside. */
static void leak_of(const struct sim_ahead *a, int check, double *upto)
{
  const struct sim_book *b = a->x->model->book;
  const struct sim_check *c = &b->checks[check];

  memcpy(upto, c->leak_upto, sizeof c->leak_upto);
  for (size_t l = c->first; l < c->last; l++) {
    double beside = a->x->beside[b->links[l].fault];

    if (beside > 0)
      for (int g = 0; g + 1 < c->grades; g++) upto[g] *= 1 - beside * (1 - b->links[l].upto[g]);
  }
}

/* Weights of the items after a result, into weight[]; those that the check does not bear on are
 * all multiplied by what is returned. */
static double after(const struct asked *q, size_t count, const double *leak, int grade, double *weight)
{
  double under = grade > 0 ? leak[grade - 1] : 0, plain = leak[grade] - under;

  for (size_t i = 0; i < count; i++) weight[i] = q->weight[i] * plain;
  for (size_t i = 0; i < q->count; i++) {
    const double *upto = q->by[i].upto;
    double just = leak[grade] * upto[grade] - (grade > 0 ? under * upto[grade - 1] : 0);

    weight[q->by[i].item] += q->by[i].weight * (just - plain);
  }
  return plain;
}

/* Cost of this item by itself and of its pairs with all before it. */
static double paired(const double *weight, const double *cost, size_t at)
{
  double w = weight[at], c = cost[at], sum[LANES] = {w * c};
  size_t j = 0;

  for (; j + LANES <= at; j += LANES)
    for (size_t l = 0; l < LANES; l++) sum[l] += lesser(w * cost[j + l], weight[j + l] * c);
  for (; j < at; j++) sum[0] += lesser(w * cost[j], weight[j] * c);
  return sum[0] + sum[1] + (sum[2] + sum[3]);
}

/* Cost of the pairs that the check does not bear on, as things are: they only change their weight
 * by a result. */
static double cost_beside(const struct sim_ahead *a, const struct asked *q)
{
  double cost = a->pairs;

  for (size_t i = a->count - q->item_count; i < a->count; i++) {
    const double *pair = a->pair[q->items[i]];

    cost -= a->row[q->items[i]] + pair[q->items[i]];
    for (size_t j = a->count - q->item_count; j < i; j++) cost += pair[q->items[j]]; /* counted from both sides */
  }
  return cost;
}

/* The bound of find_stakes once more, with how far apart the results are with all that may lie
 * beside. */
static double most_saving(const struct asked *q, const double *leak)
{
  double most = 0;

  for (size_t i = 0; i < q->count; i++) {
    double apart = 0;

    for (int g = 0; g < q->grades; g++) {
      double under = g > 0 ? leak[g - 1] : 0, under_own = g > 0 ? q->by[i].upto[g - 1] : 0;
      double more = leak[g] * q->by[i].upto[g] - under * under_own - (leak[g] - under);

      if (more > 0) apart += more;
    }
    most += q->by[i].stake * apart;
  }
  return most;
}

/* What the check saves; 0 when it cannot be `least` or more. */
static double saving_of(const struct sim_ahead *a, const struct asked *q, double least)
{
  double leak[NET_MAX_GRADES], weight[MOST_ITEMS], saving = a->pairs, beside;

  leak_of(a, q->check, leak);
  if (most_saving(q, leak) < least) return 0;
  beside = cost_beside(a, q);
  for (int g = 0; g < q->grades; g++) {
    saving -= after(q, a->count, leak, g, weight) * beside;
    for (size_t i = a->count - q->item_count; i < a->count; i++) saving -= paired(weight, q->cost, i);
  }
  return saving;
}

/* Puts a candidate behind those that may still be the best. */
static void put_aside(struct sim_ahead *a, size_t at)
{
  struct candidate c = a->candidates[at];

  a->candidates[at] = a->candidates[--a->open];
  a->candidates[a->open] = c;
}

/* Of the checks that may still save `rate` a minute or more, the one that may save most, put aside;
 * NULL when there is none. */
static const struct candidate *most_promising(struct sim_ahead *a, double rate)
{
  double most = -1;
  size_t best = 0;

  for (size_t i = 0; i < a->open;) {
    if (a->candidates[i].rate < rate) {
      put_aside(a, i);
      continue;
    }
    if (a->candidates[i].rate > most) {
      most = a->candidates[i].rate;
      best = i;
    }
    i++;
  }
  if (a->open == 0) return NULL;
  put_aside(a, best);
  return &a->candidates[a->open];
}

/* Rounding must not strike out a check that is as good as the best. */
static const double slack = 1 - 1e-9;

/* The best by saving per minute; those that cannot come up to it are not worked out. */
static struct sim_pick look_ahead(struct sim_ahead *a)
{
  struct sim_pick best = {.check = -1};
  double turn = a->x->model->book->turn, best_rate = 1; /* a check must save more than it costs */
  const struct candidate *c;
  struct asked q;

  for (a->open = a->candidate_count; (c = most_promising(a, best_rate * slack));) {
    double minutes = c->minutes + turn, saving, rate;

    look_into(a, c->check, &q);
    saving = saving_of(a, &q, best_rate * slack * minutes);
    rate = saving / minutes;
    if (rate <= 1 || rate < best_rate || (rate == best_rate && best.check >= 0 && best.check < c->check)) continue;
    best_rate = rate;
    best = (struct sim_pick){c->check, true, c->minutes, saving};
  }
  return best;
}

/* ---- plainer habits --------------------------------------------------------------------- */

static double bits(double p, double sum) { return p > 0 ? -p * log2(p / sum) : 0; }

/* Expected fall of the entropy over what is to be put right, in bits. */
static double information(const struct sim_ahead *a, int check)
{
  double leak[NET_MAX_GRADES], told = 0;
  struct asked q;

  look_into(a, check, &q);
  leak_of(a, check, leak);
  for (size_t i = 0; i < a->count; i++) told += bits(a->weight[i], 1);
  for (int g = 0; g < q.grades; g++) {
    double weight[MOST_ITEMS], sum = 0;

    after(&q, a->count, leak, g, weight);
    for (size_t i = 0; i < a->count; i++) sum += weight[i];
    for (size_t i = 0; i < a->count; i++) told -= bits(weight[i], sum);
  }
  return told;
}

/* How little a policy wants this check, compared first by `first`, then by `second`. */
struct reluctance { double first, second; };

static struct reluctance reluctance(const struct sim_ahead *a, const struct candidate *c, enum sim_policy policy)
{
  double minutes = c->minutes + a->x->model->book->turn;

  if (policy == SIM_INFORMATION) return (struct reluctance){-information(a, c->check) / minutes, minutes};
  return (struct reluctance){policy == SIM_FIXED_ORDER ? a->system[c->check] : 0, minutes};
}

static bool before(struct reluctance r, int check, struct reluctance than, int than_check)
{
  if (r.first != than.first) return r.first < than.first;
  if (r.second != than.second) return r.second < than.second;
  return check < than_check;
}

static void choose_by(const struct sim_ahead *a, enum sim_policy policy, struct sim_pick *pick)
{
  struct reluctance least = {0, 0};

  pick->check = -1;
  for (size_t i = 0; i < a->candidate_count; i++) {
    const struct candidate *c = &a->candidates[i];
    struct reluctance r = reluctance(a, c, policy);

    if (pick->check >= 0 && !before(r, c->check, least, pick->check)) continue;
    least = r;
    pick->check = c->check;
    pick->minutes = c->minutes;
  }
}

struct sim_pick sim_choose(struct sim_ahead *a, const struct sim_belief *x, enum sim_policy policy)
{
  struct sim_pick pick;

  a->x = x;
  pick_faults(a, x);
  list_items(a, x);
  add_pairs(a);
  find_stakes(a);
  list_candidates(a);
  pick = look_ahead(a);
  if (pick.pays && policy != SIM_LOOK_AHEAD) choose_by(a, policy, &pick);
  return pick;
}

int sim_repair_first(const struct sim_belief *x)
{
  const struct sim_book *b = x->model->book;
  double best = x->none / b->prove;
  int first = best > 0 ? SIM_PROVE : SIM_NOTHING_LEFT;

  for (size_t f = 0; f < b->fault_count; f++) {
    double weight = 0, rate;

    if (x->weight[f] <= 0) continue;
    for (size_t g = 0; g < b->fault_count; g++)
      if (b->repair[g] == b->repair[f]) weight += x->weight[g];
    rate = weight / (sim_repair_minutes(x, (int)f) + b->parts[f]);
    if (first != SIM_NOTHING_LEFT && rate <= best) continue;
    best = rate;
    first = (int)f;
  }
  return first;
}

const char *sim_policy_name(enum sim_policy policy)
{
  static const char *const names[] = {"Pullcord's look-ahead", "cheapest check first", "most information per minute",
                                      "fuel, spark, compression"};

  return names[policy];
}
