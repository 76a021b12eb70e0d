/* belief.c - see belief.h. */
#include "simulate/belief.h"

#include <stdlib.h>
#include <string.h>

void sim_belief_room(struct sim_belief *x, const struct sim_book *b)
{
  *x = (struct sim_belief){.weight = mem_array(b->fault_count, sizeof *x->weight),
                           .beside = mem_array(b->fault_count, sizeof *x->beside),
                           .made = mem_array(b->check_count, sizeof *x->made),
                           .mended = mem_array(b->fault_count, sizeof *x->mended),
                           .seen = mem_array(SIM_MOST_MADE, sizeof *x->seen)};
}

void sim_belief_free(struct sim_belief *x)
{
  free(x->weight);
  free(x->beside);
  free(x->made);
  free(x->mended);
  free(x->seen);
  *x = (struct sim_belief){0};
}

static void add_up(struct sim_belief *x)
{
  x->sum = x->none;
  for (size_t f = 0; f < x->model->book->fault_count; f++) x->sum += x->weight[f];
}

/* As before the first result, but without what was put right. */
static void begin(struct sim_belief *x)
{
  const struct sim_model *m = x->model;
  size_t faults = m->book->fault_count;

  memcpy(x->weight, m->weight, faults * sizeof *x->weight);
  memcpy(x->beside, m->beside, faults * sizeof *x->beside);
  for (size_t f = 0; f < faults; f++)
    if (x->mended[f]) x->weight[f] = x->beside[f] = 0;
  x->none = x->proved ? 0 : m->none;
  x->sound = x->proved ? 0 : m->sound;
  x->seen_count = 0;
  memset(x->made, 0, m->book->check_count * sizeof *x->made);
  add_up(x);
}

void sim_start(struct sim_belief *x, const struct sim_model *m)
{
  x->model = m;
  x->off = 0;
  x->proved = false;
  memset(x->mended, 0, m->book->fault_count * sizeof *x->mended);
  begin(x);
}

/* ---- one result ------------------------------------------------------------------------- */

/* Chances of staying at or below the grade seen and the one under it. */
struct reach { double at, under; };

static double just(struct reach r) { return r.at > r.under ? r.at - r.under : 0; }

static struct reach reach_of(const double *upto, int grade)
{
  return (struct reach){upto[grade], grade > 0 ? upto[grade - 1] : 0};
}

/* A fault that is there with this chance, apart from being behind the complaint. */
static struct reach softened(struct reach r, double chance)
{
  return (struct reach){1 - chance * (1 - r.at), 1 - chance * (1 - r.under)};
}

static struct reach times(struct reach a, struct reach b) { return (struct reach){a.at * b.at, a.under * b.under}; }

static struct reach over(struct reach a, struct reach b)
{
  return (struct reach){b.at > 0 ? a.at / b.at : 0, b.under > 0 ? a.under / b.under : 0};
}

/* Nothing broken: what is broken beside must have brought nothing of this about; what is used
 * wrongly may have. */
static double sound_chance(const struct sim_belief *x, const struct sim_check *c, int grade)
{
  const struct sim_book *b = x->model->book;
  struct reach r = reach_of(c->leak_upto, grade);
  double idle = 1;

  for (size_t l = c->first; l < c->last; l++) {
    const struct sim_link *link = &b->links[l];

    if (b->use[link->fault]) r = times(r, softened(reach_of(link->upto, grade), sim_there(x, link->fault)));
    else idle *= 1 - x->beside[link->fault] * (1 - link->upto[0]);
  }
  return idle * just(r);
}

/* What the leak and everything beside bring, and what the fault behind it brings on average. */
static void sum_up(const struct sim_belief *x, const struct sim_check *c, int grade, struct reach *leak,
                   struct reach *behind)
{
  const struct sim_link *links = x->model->book->links;
  double rest = x->sum;

  *leak = reach_of(c->leak_upto, grade);
  *behind = (struct reach){0, 0};
  for (size_t l = c->first; l < c->last; l++) {
    struct reach own = reach_of(links[l].upto, grade);
    double w = x->weight[links[l].fault];

    *leak = times(*leak, softened(own, x->beside[links[l].fault]));
    behind->at += w * own.at;
    behind->under += w * own.under;
    rest -= w;
  }
  if (rest < 0) rest = 0;
  behind->at = (behind->at + rest) / x->sum;
  behind->under = (behind->under + rest) / x->sum;
}

/* Less than this a result is never taken to be by itself, so that nothing is divided by 0. */
static const double least_plain = 1e-9;

static void weigh(struct sim_belief *x, const struct sim_check *c, int grade)
{
  const struct sim_link *links = x->model->book->links;
  struct reach leak, behind;
  double all, plain;

  sum_up(x, c, grade, &leak, &behind);
  all = just(times(leak, behind));
  plain = just(leak);
  if (all <= 0) return; /* it cannot be: nothing is learnt */
  if (plain < least_plain) plain = least_plain;
  x->sound *= sound_chance(x, c, grade) / all;
  if (x->sound > 1) x->sound = 1;
  for (size_t l = c->first; l < c->last; l++) {
    int f = links[l].fault;
    struct reach own = reach_of(links[l].upto, grade);
    struct reach with = times(over(leak, softened(own, x->beside[f])), own);

    x->beside[f] *= just(times(with, behind)) / all;
    if (x->beside[f] > 1) x->beside[f] = 1;
    x->weight[f] *= just(with) / plain; /* against those that do not bear on the check */
  }
}

static void keep_in_range(struct sim_belief *x)
{
  static const double far = 1e100;

  add_up(x);
  if (x->sum <= 0 || (x->sum < far && x->sum > 1 / far)) return;
  for (size_t f = 0; f < x->model->book->fault_count; f++) x->weight[f] /= x->sum;
  x->none /= x->sum;
  x->sum = 1;
}

void sim_see(struct sim_belief *x, int check, int result)
{
  const struct sim_check *c = &x->model->book->checks[check];

  x->off |= c->covers;
  x->made[check] = true;
  if (x->seen_count < SIM_MOST_MADE) x->seen[x->seen_count++] = (struct sim_seen){check, result};
  if (x->sum <= 0) return;
  weigh(x, c, result);
  keep_in_range(x);
}

/* ---- after a repair --------------------------------------------------------------------- */

/* Of all that may be there, is what was put right the likeliest to have shown this? */
static bool explained(const struct sim_belief *x, struct sim_seen seen, int repair)
{
  const struct sim_book *b = x->model->book;
  const struct sim_check *c = &b->checks[seen.check];
  bool by_repair = false;
  double best;

  if (seen.result == 0) return false;
  best = 1 - c->leak_upto[seen.result - 1];
  for (size_t l = c->first; l < c->last; l++) {
    int f = b->links[l].fault;
    double chance = sim_there(x, f) * (1 - b->links[l].upto[seen.result - 1]);

    if (chance <= best) continue;
    best = chance;
    by_repair = b->repair[f] == repair;
  }
  return by_repair;
}

void sim_mend(struct sim_belief *x, int repair)
{
  const struct sim_book *b = x->model->book;
  struct sim_seen kept[SIM_MOST_MADE];
  size_t count = 0;

  for (size_t i = 0; i < x->seen_count; i++)
    if (!explained(x, x->seen[i], repair)) kept[count++] = x->seen[i];
  for (size_t f = 0; f < b->fault_count; f++)
    if (b->repair[f] == repair) x->mended[f] = true;
  begin(x);
  for (size_t i = 0; i < count; i++) sim_see(x, kept[i].check, kept[i].result);
}

void sim_proved_wrong(struct sim_belief *x)
{
  x->proved = true;
  x->none = x->sound = 0;
  add_up(x);
}

/* ---- asked of it ------------------------------------------------------------------------ */

int sim_leading(const struct sim_belief *x)
{
  int best = -1;

  for (size_t f = 0; f < x->model->book->fault_count; f++)
    if (x->weight[f] > 0 && (best < 0 || x->weight[f] > x->weight[best])) best = (int)f;
  return best;
}

double sim_behind(const struct sim_belief *x, int fault) { return x->sum > 0 ? x->weight[fault] / x->sum : 0; }

double sim_there(const struct sim_belief *x, int fault)
{
  double behind = sim_behind(x, fault);

  return behind + (1 - behind) * x->beside[fault];
}

bool sim_is_sound(const struct sim_belief *x)
{
  return x->seen_count > 0 && x->sound >= x->model->book->sound_at;
}

bool sim_found(const struct sim_belief *x)
{
  const struct sim_book *b = x->model->book;
  int f = sim_leading(x);

  return x->seen_count > 0 && f >= 0 && (size_t)f + 1 < b->fault_count && sim_there(x, f) >= b->repair_at &&
         sim_behind(x, f) >= b->blame_at;
}
