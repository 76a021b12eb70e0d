/* hidden.c - see hidden.h. */
#include "practice/hidden.h"

#include <stdlib.h>
#include <string.h>

#include "base/random.h"
#include "practice/reading.h"

enum { MOST_TRIES = 10000 };

static void set_up(const struct knowledge *k, int machine_class, struct hidden *h)
{
  struct conclusions none = {0};
  struct err e;

  case_begin(&h->machine, k);
  case_set_machine(&h->machine, k, machine_class, NULL, 0, NULL, 0, &e);
  casenet_build(&h->net, k, &h->machine, &none);
}

/* Every fault by its own base rate; "not listed" is left out, as it has no checks. */
static void draw_faults(struct hidden *h, struct random *r)
{
  h->fault_count = 0;
  for (size_t p = 0; p + 1 < h->net.count; p++)
    if (random_unit(r) < h->net.prior[p] && h->fault_count < HIDDEN_MOST_FAULTS)
      h->faults[h->fault_count++] = (int)p;
}

/* What the owner says: one of the complaints that the faults bring about, each fault trying
 * its own; the first to succeed, in an order drawn anew. */
static bool draw_complaint(struct hidden *h, struct random *r)
{
  const struct knowledge *k = h->net.k;

  for (size_t tries = h->fault_count; tries > 0; tries--) {
    size_t at = (size_t)(random_unit(r) * (double)tries);
    int place = h->faults[at];

    for (size_t s = 0; s < k->sign_count; s++) {
      const struct sign *sign = &k->signs[s];

      if (sign->complaint < 0 || sign->fault != h->net.fault_of[place]) continue;
      if (random_unit(r) >= sign->chance) continue;
      h->culprit = place;
      h->complaint = sign->complaint;
      return true;
    }
    h->faults[at] = h->faults[tries - 1]; /* behind the ones still to try */
    h->faults[tries - 1] = place;
  }
  return false;
}

static struct hidden nothing_yet(uint64_t seed)
{
  return (struct hidden){.seed = seed, .culprit = -1, .complaint = -1, .misled = -1};
}

void hidden_draw(const struct knowledge *k, int machine_class, uint64_t seed, struct hidden *out)
{
  struct random r = {seed};
  bool complained = false;

  *out = nothing_yet(seed);
  if (machine_class < 0) machine_class = (int)(random_unit(&r) * (double)k->class_count);
  set_up(k, machine_class, out);
  for (int tries = 0; !complained && tries < MOST_TRIES; tries++) {
    draw_faults(out, &r);
    complained = draw_complaint(out, &r);
  }
  if (complained) case_add_complaint(&out->machine, out->complaint);
}

/* ---- machines to practise on ------------------------------------------------------------ */

static int first_open(const struct bench_case *c, const struct knowledge *k)
{
  for (size_t i = 0; i < k->feature_count; i++)
    if (c->features[i] == TRI_UNKNOWN) return (int)i;
  return -1;
}

/* A machine that can be looked at has no open features: each is tossed for, and of a choice of
 * one the last that is left is taken. */
static void settle(struct bench_case *c, const struct knowledge *k, int machine_class, struct random *r)
{
  int *has = mem_array(k->feature_count, sizeof *has), *lacks = mem_array(k->feature_count, sizeof *lacks), f;
  size_t has_count = 0, lacks_count = 0;
  struct err e;

  case_set_machine(c, k, machine_class, NULL, 0, NULL, 0, &e);
  while ((f = first_open(c, k)) >= 0) {
    bool last = k->features[f].one_of;

    for (size_t i = 0; last && i < k->feature_count; i++)
      if ((int)i != f && strcmp(k->features[i].group, k->features[f].group) == 0)
        last = c->features[i] == TRI_LACKS;
    if (last || random_unit(r) < knowledge_setting(k, "unknown-need", 0.5)) has[has_count++] = f;
    else lacks[lacks_count++] = f;
    case_set_machine(c, k, machine_class, has, has_count, lacks, lacks_count, &e);
  }
  free(has);
  free(lacks);
}

/* How well a fault fits what is wanted: its odds on this machine, 0 when it does not fit. */
static double fit(const struct hidden *h, const struct hidden_wish *wish, enum hidden_kind kind, size_t place)
{
  const struct fault *f = &h->net.k->faults[h->net.fault_of[place]];

  if (wish->system && strcmp(f->system, wish->system) != 0) return 0;
  if (kind == HIDDEN_LAST_REPAIR && strcmp(f->sort, "assembly") != 0) return 0;
  if ((kind == HIDDEN_NOTHING) != (strcmp(f->sort, "use") == 0)) return 0;
  return h->net.prior[place] / (1 - h->net.prior[place]);
}

/* Chance that the fault leads to this complaint, or to any (-1), on this machine. */
static double leads(const struct hidden *h, int place, int complaint)
{
  const struct knowledge *k = h->net.k;
  double sum = 0;
  size_t open;

  for (size_t s = 0; s < k->sign_count && k->signs[s].check < 0; s++)
    if (k->signs[s].fault == h->net.fault_of[place] &&
        (complaint < 0 || k->signs[s].complaint == complaint) &&
        case_needs(&h->machine, &k->complaints[k->signs[s].complaint].needs, &open) != TRI_LACKS)
      sum += k->signs[s].chance;
  return sum;
}

static int pick_complaint(const struct hidden *h, int place, double share)
{
  const struct knowledge *k = h->net.k;
  int last = -1;

  share *= leads(h, place, -1);
  for (size_t c = 0; c < k->complaint_count && share >= 0; c++) {
    double chance = leads(h, place, (int)c);

    if (chance <= 0) continue;
    last = (int)c;
    share -= chance;
  }
  return last;
}

/* Draws one fault by weight[]; -1 when all are 0. */
static int pick_place(const double *weight, size_t count, struct random *r)
{
  double sum = 0, share;
  int last = -1;

  for (size_t p = 0; p < count; p++) sum += weight[p];
  share = random_unit(r) * sum;
  for (size_t p = 0; p < count && (share >= 0 || last < 0); p++) {
    if (weight[p] <= 0) continue;
    last = (int)p;
    share -= weight[p];
  }
  return last;
}

/* The fault behind the complaint, and the complaint: by the chance of both together. */
static bool pick_culprit(struct hidden *h, const struct hidden_wish *wish, enum hidden_kind kind,
                         struct random *r)
{
  double *weight = mem_array(h->net.count, sizeof *weight);

  for (size_t p = 0; p + 1 < h->net.count; p++) {
    double share = fit(h, wish, kind, p), lead = share > 0 ? leads(h, (int)p, -1) : 0;

    weight[p] = share * (lead < 1 ? lead : 1);
  }
  h->culprit = pick_place(weight, h->net.count - 1, r);
  if (h->culprit >= 0) {
    h->faults[h->fault_count++] = h->culprit;
    h->complaint = pick_complaint(h, h->culprit, random_unit(r));
    case_add_complaint(&h->machine, h->complaint);
  }
  free(weight);
  return h->culprit >= 0;
}

/* A second fault that alone would be enough for the same complaint, from any system. */
static bool pick_second(struct hidden *h, struct random *r)
{
  struct hidden_wish any = {-1, HIDDEN_TWO, NULL, NULL};
  double *weight = mem_array(h->net.count, sizeof *weight);
  int second;

  for (size_t p = 0; p + 1 < h->net.count; p++)
    if ((int)p != h->culprit &&
        h->net.k->faults[h->net.fault_of[p]].repair != h->net.k->faults[h->net.fault_of[h->culprit]].repair)
      weight[p] = fit(h, &any, HIDDEN_TWO, p) * leads(h, (int)p, h->complaint);
  second = pick_place(weight, h->net.count - 1, r);
  if (second >= 0) h->faults[h->fault_count++] = second;
  free(weight);
  return second >= 0;
}

/* A check that the fault makes unsound more often than not shows sound all the same. */
static bool pick_misled(struct hidden *h, struct random *r)
{
  const struct knowledge *k = h->net.k;
  double *weight = mem_array(k->check_count, sizeof *weight);
  size_t open;

  for (size_t s = 0; s < k->sign_count; s++)
    if (k->signs[s].check >= 0 && k->signs[s].fault == h->net.fault_of[h->culprit] &&
        k->signs[s].chance >= 0.5 &&
        case_needs(&h->machine, &k->checks[k->signs[s].check].needs, &open) != TRI_LACKS)
      weight[k->signs[s].check] = 1;
  h->misled = pick_place(weight, k->check_count, r);
  free(weight);
  return h->misled >= 0;
}

static enum hidden_kind settle_kind(enum hidden_kind kind, struct random *r)
{
  static const double share[] = {0.6, 0.12, 0.12, 0.08, 0.08};

  return kind == HIDDEN_ANY ? (enum hidden_kind)random_pick(random_unit(r), share, 5) : kind;
}

/* The machine is drawn, and later weighed, by the shop's own rates. */
static void take_rates(struct hidden *h, const struct knowledge *k, const double *rates, int machine_class)
{
  h->shop = mem_new(sizeof *h->shop);
  learned_begin(h->shop, k);
  memcpy(h->shop->base + (size_t)machine_class * k->fault_count, rates, k->fault_count * sizeof *rates);
  h->machine.learned = h->shop;
}

bool hidden_make(const struct knowledge *k, const struct hidden_wish *wish, uint64_t seed, struct hidden *out)
{
  struct random r = {seed};

  for (int tries = 0; tries < 50; tries++) {
    struct conclusions none = {0};
    enum hidden_kind kind = settle_kind(wish->kind, &r);
    int class = wish->machine_class >= 0 ? wish->machine_class
                                         : (int)(random_unit(&r) * (double)k->class_count);
    bool good;

    *out = nothing_yet(seed);
    case_begin(&out->machine, k);
    if (wish->rates && wish->machine_class >= 0) take_rates(out, k, wish->rates, class);
    settle(&out->machine, k, class, &r);
    casenet_build(&out->net, k, &out->machine, &none);
    good = pick_culprit(out, wish, kind, &r);
    if (good && kind == HIDDEN_TWO) good = pick_second(out, &r);
    if (good && kind == HIDDEN_MISLEADS) good = pick_misled(out, &r);
    if (good) return true;
    hidden_free(out);
  }
  return false;
}

int hidden_lay_down(const struct knowledge *k, struct bench_case *machine, const int *faults, size_t count,
                    uint64_t seed, struct hidden *out, struct err *e)
{
  struct conclusions none = {0};

  if (count > HIDDEN_MOST_FAULTS)
    return err_set(e, EX_DATAERR, NULL, 0, "at most %d faults can be hidden in one machine.",
                   HIDDEN_MOST_FAULTS);
  *out = nothing_yet(seed);
  casenet_build(&out->net, k, machine, &none);
  for (size_t i = 0; i < count; i++) {
    int place = out->net.place_of[faults[i]];

    if (place < 0) {
      casenet_free(&out->net);
      return err_set(e, EX_DATAERR, NULL, 0, "\"%s\" cannot be wrong with this machine: it lacks the part.",
                     k->faults[faults[i]].id);
    }
    out->faults[out->fault_count++] = place;
  }
  out->culprit = count ? out->faults[0] : -1;
  out->complaint = machine->complaint_count ? machine->complaints[0] : -1;
  out->machine = *machine;
  *machine = (struct bench_case){.machine_class = -1};
  return 0;
}

/* ---- what it shows ---------------------------------------------------------------------- */

int hidden_result(struct hidden *h, int check)
{
  struct net_finding f;
  double chance[NET_MAX_GRADES];

  if (check == h->misled) return 0;
  casenet_finding(&h->net, check, &f);
  if (h->renewed && h->renewed[check]) memcpy(f.leak, (double[NET_MAX_GRADES]){1}, sizeof f.leak);
  net_grade_chances(&f, h->faults, h->fault_count, chance);
  return (int)random_pick(random_fixed(h->seed, h->net.k->checks[check].id), chance, (size_t)f.grades);
}

void hidden_look(struct hidden *h, int check, struct case_result *out)
{
  for (size_t i = 0; i < h->fixed_count; i++)
    if (h->fixed[i].check == check && !(h->renewed && h->renewed[check])) {
      *out = h->fixed[i];
      return;
    }
  *out = (struct case_result){check, hidden_result(h, check), 0, 1};
  if (reading_draw(h->net.k, &h->machine, h->seed, out)) out->result = -1;
}

/* Fresh fuel looks fresh: what a repair was for shows nothing unsound any more by mere chance,
 * nor because a hand-written case said so before. */
static void renew(struct hidden *h, int repair)
{
  const struct knowledge *k = h->net.k;

  if (!h->renewed) h->renewed = mem_array(k->check_count, sizeof *h->renewed);
  for (size_t s = 0; s < k->sign_count; s++)
    if (k->signs[s].check >= 0 && k->faults[k->signs[s].fault].repair == repair)
      h->renewed[k->signs[s].check] = true;
}

bool hidden_repair(struct hidden *h, int repair)
{
  size_t left = 0, before = h->fault_count;

  for (size_t i = 0; i < h->fault_count; i++)
    if (h->net.k->faults[h->net.fault_of[h->faults[i]]].repair != repair) h->faults[left++] = h->faults[i];
  h->fault_count = left;
  if (left < before) h->misled = -1;
  renew(h, repair);
  return before > 0 && left == 0;
}

bool hidden_has(const struct hidden *h, int fault)
{
  for (size_t i = 0; i < h->fault_count; i++)
    if (h->net.fault_of[h->faults[i]] == fault) return true;
  return false;
}

/* One of the texts, drawn by the seed. */
static const char *one_of(const struct hidden *h, const struct texts *t)
{
  return t->items[(size_t)(random_fixed(h->seed, "what the owner says") * (double)t->count)];
}

const char *hidden_words(const struct hidden *h)
{
  const struct knowledge *k = h->net.k;

  if (h->words) return h->words;
  if (h->complaint < 0) return "It is not right.";
  for (size_t i = 0; i < k->owner_count; i++)
    if (k->owners[i].complaint == h->complaint && k->owners[i].words.count)
      return one_of(h, &k->owners[i].words);
  return k->complaints[h->complaint].name; /* of a complaint in somebody's own folder */
}

static const char *const kinds[] = {"one", "two", "misleading", "last-repair", "nothing", "any"};

const char *hidden_kind_name(enum hidden_kind kind) { return kinds[kind]; }

bool hidden_kind_named(const char *name, enum hidden_kind *out)
{
  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
    if (strcmp(kinds[i], name) == 0) {
      *out = (enum hidden_kind)i;
      return true;
    }
  return false;
}

void hidden_free(struct hidden *h)
{
  casenet_free(&h->net);
  case_free(&h->machine);
  free(h->fixed);
  free(h->words);
  h->words = NULL;
  free(h->renewed);
  if (h->shop) learned_free(h->shop);
  free(h->shop);
  h->shop = NULL;
  h->fixed = NULL;
  h->renewed = NULL;
}
