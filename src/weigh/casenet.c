/* casenet.c - see casenet.h. */
#include "weigh/casenet.h"

#include <math.h>
#include <string.h>

_Static_assert((int)CHECK_MOST_RESULTS <= (int)NET_MAX_GRADES, "a finding must hold the results of a check");

enum { FLAT_OUT = 40 }; /* tolerances beyond which the normal curve is 0 or 1 */

/* ---- readings ------------------------------------------------------------------------ */

/* Share of the normal curve around value that lies below limit. */
static double below(double limit, double value, double tolerance)
{
  double z;

  if (tolerance <= 0) return value < limit ? 1 : 0;
  z = (limit - value) / tolerance;
  if (z > FLAT_OUT) return 1;
  if (z < -FLAT_OUT) return 0;
  return 0.5 * erfc(-z / sqrt(2));
}

static void shares_by_limits(const int *result_at, const double *limits, size_t limit_count,
                             double value, double tolerance, double *share)
{
  double before = 0;

  for (size_t i = 0; i <= limit_count; i++) {
    double up_to = i < limit_count ? below(limits[i], value, tolerance) : 1;

    if (result_at[i] >= 0) share[result_at[i]] += up_to - before;
    before = up_to;
  }
}

/* The most general bands of a check: their order of results serves the spec card. */
static const struct bands *general_bands(const struct knowledge *k, int check)
{
  const struct bands *best = NULL;

  for (size_t i = 0; i < k->bands_count; i++)
    if (k->bands[i].check == check && (!best || k->bands[i].needs.count < best->needs.count))
      best = &k->bands[i];
  return best;
}

/* A card for a check whose bands do not say where the sound range lies: right, or not. */
static void shares_in_or_out(const struct case_card *card, double value, double tolerance, double *share)
{
  bool within = value >= card->low && value <= card->high;

  share[0] = within;
  if (tolerance > 0) share[0] = below(card->high, value, tolerance) - below(card->low, value, tolerance);
  share[1] = 1 - share[0];
}

/* Limit number i when the limit `at` of the bands is replaced by a figure of the card:
 * those beyond it keep their proportion to it, and stay beyond it. */
static double moved_limit(const struct bands *b, size_t i, size_t at, double figure)
{
  double moved = b->limits.items[i];

  if (i == at) return figure;
  if (b->limits.items[at] != 0) moved *= figure / b->limits.items[at];
  return i < at ? fmin(moved, figure) : fmax(moved, figure);
}

/* Limits from a card: what lies between its figures is sound; the class limits beyond
 * keep their proportion to the figure that replaces their neighbour. */
static void shares_by_card(const struct knowledge *k, int check, const struct case_card *card,
                           double value, double *share)
{
  const struct bands *b = general_bands(k, check);
  double limits[NET_MAX_GRADES], tolerance = k->checks[check].tolerance;
  size_t sound = 0;

  while (b && sound < b->results.count && b->result_at[sound] != 0) sound++;
  if (!b || sound == b->results.count) {
    shares_in_or_out(card, value, tolerance, share);
    return;
  }
  for (size_t i = 0; i < b->limits.count; i++)
    limits[i] = i < sound ? moved_limit(b, i, sound - 1, card->low) : moved_limit(b, i, sound, card->high);
  shares_by_limits(b->result_at, limits, b->limits.count, value, tolerance, share);
}

void reading_shares(const struct knowledge *k, int check, int bands, const struct case_card *card,
                    double value, double *share)
{
  size_t n = k->checks[check].results.count;
  double sum = 0;

  for (size_t i = 0; i < n; i++) share[i] = 0;
  if (bands >= 0)
    shares_by_limits(k->bands[bands].result_at, k->bands[bands].limits.items,
                     k->bands[bands].limits.count, value, k->checks[check].tolerance, share);
  else if (card)
    shares_by_card(k, check, card, value, share);
  for (size_t i = 0; i < n; i++) sum += share[i];
  for (size_t i = 0; i < n; i++) share[i] = sum > 0 ? share[i] / sum : 1.0 / (double)n;
}

bool reading_judge(const struct knowledge *k, const struct bench_case *c, const struct conclusions *drawn,
                   const struct case_result *r, struct judged *out)
{
  *out = (struct judged){.by = conclusion_find(drawn, JUDGE_BY, r->check, 0), .bands = -1, .value = r->value};
  out->counts_as = conclusion_find(drawn, COUNTS_AS, r->check, 0);
  if (out->by < 0) return false; /* nothing says what this reading means */
  if (out->counts_as >= 0) out->value = drawn->items[out->counts_as].number;
  out->bands = drawn->items[out->by].b;
  if (out->bands < 0) out->card = case_card_of(c, r->check);
  if (out->bands < 0 && !out->card) return false;
  reading_shares(k, r->check, out->bands, out->card, out->value, out->share);
  for (size_t g = 1; g < k->checks[r->check].results.count; g++)
    if (out->share[g] > out->share[out->result]) out->result = (int)g;
  return true;
}

/* ---- faults of the case -------------------------------------------------------------- */

static void list_faults(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn)
{
  const struct knowledge *k = n->k;
  double open_need = knowledge_setting(k, "unknown-need", 0.5);

  n->fault_of = arena_array(&n->arena, k->fault_count + 1, sizeof *n->fault_of);
  n->place_of = arena_array(&n->arena, k->fault_count + 1, sizeof *n->place_of);
  n->prior = arena_array(&n->arena, k->fault_count + 1, sizeof *n->prior);
  for (size_t f = 0; f < k->fault_count; f++) {
    size_t open;

    n->place_of[f] = -1;
    if (conclusion_find(drawn, RULES_OUT_FAULT, (int)f, 0) >= 0) continue;
    if (case_needs(c, &k->faults[f].needs, &open) == TRI_LACKS) continue;
    n->prior[n->count] = learned_base(c->learned, k, c->machine_class, (int)f) * pow(open_need, (double)open);
    if (c->mended[f]) n->prior[n->count] *= knowledge_setting(k, "mended-share", 0.1);
    n->place_of[f] = (int)n->count;
    n->fault_of[n->count++] = (int)f;
  }
  n->prior[n->count] = knowledge_setting(k, "not-listed-base-rate", 0.03);
  n->fault_of[n->count++] = -1;
}

/* ---- findings ------------------------------------------------------------------------ */

/* Adds the link of one fault, from its signs for one check, which stand together. */
static void add_link(const struct casenet *n, struct net_link *l, const struct sign *s, size_t count)
{
  double rest = 1;

  l->fault = n->place_of[s->fault];
  memset(l->chance, 0, sizeof l->chance);
  for (size_t i = 0; i < count; i++) {
    double chance = learned_sign(n->learned, n->k, (size_t)(s + i - n->k->signs));

    l->chance[s[i].result] = chance;
    rest -= chance;
  }
  l->chance[0] = rest > 0 ? rest : 0;
}

static void link_signs(struct casenet *n, struct net_finding *f, size_t first, size_t last,
                       double unlisted)
{
  const struct sign *s = n->k->signs;
  struct net_link *links = arena_array(&n->arena, last - first + 1, sizeof *links);
  size_t count = 0;

  for (size_t i = first, j; i < last; i = j) {
    for (j = i + 1; j < last && s[j].fault == s[i].fault; j++) continue;
    if (n->place_of[s[i].fault] >= 0) add_link(n, &links[count++], &s[i], j - i);
  }
  links[count].fault = (int)n->count - 1; /* not listed: a little of every unsound result */
  links[count].chance[0] = 1 - unlisted;
  for (int g = 1; g < f->grades; g++) links[count].chance[g] = unlisted / (f->grades - 1);
  f->links = links;
  f->link_count = count + 1;
}

void casenet_finding(struct casenet *n, int check, struct net_finding *out)
{
  const struct check *c = &n->k->checks[check];
  size_t first, last;

  *out = (struct net_finding){.grades = (int)c->results.count};
  out->leak[0] = 1;
  for (size_t g = 1; g < c->results.count; g++) {
    out->leak[g] = c->anyway.items[g - 1];
    out->leak[0] -= out->leak[g];
  }
  knowledge_signs_of_check(n->k, check, &first, &last);
  link_signs(n, out, first, last, knowledge_setting(n->k, "not-listed-sign", 0.12));
}

/* Adds share times the chances that faults lead to a complaint. */
static void add_leads(const struct casenet *n, int complaint, double share, double *chance)
{
  size_t first, last;

  knowledge_signs_of_complaint(n->k, complaint, &first, &last);
  for (size_t i = first; i < last; i++) {
    int place = n->place_of[n->k->signs[i].fault];

    if (place >= 0) chance[place] += share * n->k->signs[i].chance;
  }
}

/* A complaint as a finding. Owners mix up neighbouring complaints, so a fault that leads
 * to one of them leads a little to this one too. */
static void complaint_finding(struct casenet *n, int complaint, struct net_finding *out)
{
  const struct complaint *c = &n->k->complaints[complaint];
  double *chance = arena_array(&n->arena, n->count, sizeof *chance);
  struct net_link *links = arena_array(&n->arena, n->count, sizeof *links);

  *out = (struct net_finding){.grades = 2, .links = links, .focus = true};
  out->leak[1] = c->anyway;
  out->leak[0] = 1 - out->leak[1];
  out->seen[1] = 1;
  add_leads(n, complaint, 1, chance);
  for (size_t i = 0; i < c->near.count; i++)
    add_leads(n, c->near.at[i], knowledge_setting(n->k, "said-loosely", 0.15), chance);
  chance[n->count - 1] = knowledge_setting(n->k, "not-listed-complaint", 0.08);
  for (size_t f = 0; f < n->count; f++) {
    double x = chance[f] < 0.97 ? chance[f] : 0.97;

    if (x > 0) links[out->link_count++] = (struct net_link){(int)f, {1 - x, x}};
  }
}

/* What was seen, from the certainty of a plain result or the shares of a reading. A
 * sound result counts per cause (soft_sound); any other is mixed with knowing nothing. */
static void set_seen(struct net_finding *f, const struct evidence *e)
{
  if (e->result == 0 && (!e->reading || e->share[0] > 0.999)) {
    f->soft_sound = e->sure;
    if (e->sure >= 0.999) {
      f->soft_sound = 0;
      f->seen[0] = 1;
    }
    return;
  }
  for (int g = 0; g < f->grades; g++) {
    double share = e->reading ? e->share[g] : g == e->result;

    if (share < 1e-6) share = 0; /* far from a limit a reading is plain */
    f->seen[g] = e->sure >= 0.999 ? share : e->sure * share + (1 - e->sure) / f->grades;
  }
}

static void push(struct casenet *n, struct evidence e)
{
  struct net_finding *f = &n->findings[n->evidence_count];

  if (e.kind == EVIDENCE_COMPLAINT) complaint_finding(n, e.subject, f);
  else if (e.kind != EVIDENCE_SPEAKS) {
    casenet_finding(n, e.subject, f);
    set_seen(f, &e);
  }
  n->evidence[n->evidence_count++] = e;
}

/* ---- from results to evidence -------------------------------------------------------- */

/* The strongest weakening of a check by rules; *rule is its card. */
static double weakening(const struct conclusions *drawn, int check, int *rule)
{
  double most = 0;

  *rule = -1;
  for (int i = conclusion_find(drawn, WEAKENS, check, 0); i >= 0;
       i = conclusion_find(drawn, WEAKENS, check, (size_t)i + 1))
    if (drawn->items[i].number > most) {
      most = drawn->items[i].number;
      *rule = drawn->items[i].rule;
    }
  return most;
}

static void push_result(struct casenet *n, const struct bench_case *c, const struct case_result *r,
                        const struct conclusions *drawn)
{
  struct evidence e = {.kind = EVIDENCE_RESULT, .subject = r->check, .result = r->result, .rule = -1};
  struct judged judged;

  e.sure = r->sure * (1 - weakening(drawn, r->check, &e.weakened_by));
  if (e.sure <= 0) return;
  if (r->result < 0) {
    if (!reading_judge(n->k, c, drawn, r, &judged)) return;
    e.reading = true;
    e.rule = drawn->items[judged.by].rule;
    e.result = judged.result;
    memcpy(e.share, judged.share, sizeof e.share);
  }
  push(n, e);
}

static bool has_result(const struct bench_case *c, int check)
{
  const struct case_result *r = case_result_of(c, check);

  return r && r->sure > 0;
}

/* Is no other implied result of this check stronger, and none as strong before it? */
static bool is_strongest(const struct conclusions *drawn, size_t i)
{
  const struct conclusion *d = &drawn->items[i];

  for (size_t j = 0; j < drawn->count; j++) {
    const struct conclusion *o = &drawn->items[j];

    if (j == i || o->kind != IMPLIES || o->a != d->a) continue;
    if (o->number > d->number || (o->number == d->number && j < i)) return false;
  }
  return true;
}

/* One implied result per check: the strongest. */
static void push_implied(struct casenet *n, const struct bench_case *c, const struct conclusions *drawn)
{
  for (size_t i = 0; i < drawn->count; i++) {
    const struct conclusion *d = &drawn->items[i];

    if (d->kind != IMPLIES || d->number <= 0 || has_result(c, d->a) || !is_strongest(drawn, i)) continue;
    push(n, (struct evidence){.kind = EVIDENCE_IMPLIED, .subject = d->a, .result = d->b,
                              .sure = d->number, .rule = d->rule, .weakened_by = -1});
  }
}

static void push_speaks(struct casenet *n, const struct conclusions *drawn)
{
  for (size_t i = 0; i < drawn->count; i++) {
    const struct conclusion *d = &drawn->items[i];

    if (d->kind == SPEAKS && n->place_of[d->a] >= 0)
      push(n, (struct evidence){.kind = EVIDENCE_SPEAKS, .subject = d->a, .sure = 1,
                                .decibans = d->number, .rule = d->rule, .weakened_by = -1});
  }
}

void casenet_build(struct casenet *n, const struct knowledge *k, const struct bench_case *c,
                   const struct conclusions *drawn)
{
  size_t most = c->complaint_count + c->result_count + 1;

  for (size_t i = 0; i < drawn->count; i++)
    most += drawn->items[i].kind == IMPLIES || drawn->items[i].kind == SPEAKS;
  *n = (struct casenet){.k = k, .learned = c->learned};
  list_faults(n, c, drawn);
  n->evidence = arena_array(&n->arena, most, sizeof *n->evidence);
  n->findings = arena_array(&n->arena, most, sizeof *n->findings);
  n->view = arena_array(&n->arena, most, sizeof *n->view);
  n->bias = arena_array(&n->arena, n->count, sizeof *n->bias);
  for (size_t i = 0; i < c->complaint_count; i++)
    push(n, (struct evidence){.kind = EVIDENCE_COMPLAINT, .subject = c->complaints[i], .result = 1,
                              .sure = 1, .rule = -1, .weakened_by = -1});
  for (size_t i = 0; i < c->result_count; i++) push_result(n, c, &c->results[i], drawn);
  push_implied(n, c, drawn);
  push_speaks(n, drawn);
}

struct net casenet_view(struct casenet *n, size_t count)
{
  size_t findings = 0;

  for (size_t f = 0; f < n->count; f++) n->bias[f] = 1;
  for (size_t i = 0; i < count; i++)
    if (n->evidence[i].kind == EVIDENCE_SPEAKS)
      n->bias[n->place_of[n->evidence[i].subject]] *= pow(10, n->evidence[i].decibans / 10);
    else n->view[findings++] = n->findings[i];
  return (struct net){n->count, n->prior, n->bias, n->view, findings};
}

void casenet_free(struct casenet *n)
{
  arena_free(&n->arena);
  *n = (struct casenet){0};
}
