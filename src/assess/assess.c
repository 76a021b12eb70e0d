/* assess.c - see assess.h. */
#include "assess/assess.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "weigh/bounds.h"

struct assessor { const struct knowledge *k; struct engine *engine; };

int assessor_open(const struct knowledge *k, struct assessor **out, struct err *e)
{
  struct assessor *a = mem_new(sizeof *a);
  int status = engine_open(k, NULL, &a->engine, e);

  a->k = k;
  if (status) free(a);
  else *out = a;
  return status;
}

void assessor_close(struct assessor *a)
{
  if (!a) return;
  engine_close(a->engine);
  free(a);
}

/* ---- what the results mean ------------------------------------------------------------ */

/* The result a reading falls on most, and how far it is to be believed. */
static bool judge(const struct knowledge *k, const struct bench_case *c, const struct case_result *r,
                  const struct conclusions *drawn, struct engine_finding *out)
{
  struct judged j;

  if (!reading_judge(k, c, drawn, r, &j)) return false;
  *out = (struct engine_finding){r->check, j.result, j.share[j.result] * r->sure};
  return true;
}

static size_t list_findings(const struct knowledge *k, const struct bench_case *c,
                            const struct conclusions *drawn, struct engine_finding *out)
{
  size_t n = 0;

  for (size_t i = 0; i < c->result_count; i++) {
    const struct case_result *r = &c->results[i];

    if (r->sure <= 0) continue;
    if (r->result >= 0) out[n++] = (struct engine_finding){r->check, r->result, r->sure};
    else if (judge(k, c, r, drawn, &out[n])) n++;
  }
  return n;
}

/* First pass: by what are readings judged? Second: what follows from all results? */
static int reason(struct assessor *a, const struct bench_case *c, struct engine_finding *findings,
                  size_t *count, struct conclusions *drawn, struct err *e)
{
  bool readings = false;
  int status;

  for (size_t i = 0; i < c->result_count; i++) readings = readings || c->results[i].result < 0;
  if (readings) {
    /* findings of plain results stay told, so that this pass changes little */
    *count = list_findings(a->k, c, drawn, findings);
    status = engine_tell(a->engine, c, findings, *count, NULL, 0, e);
    if (status == 0) status = engine_run(a->engine, drawn, e);
    if (status) return status;
  }
  *count = list_findings(a->k, c, drawn, findings);
  status = engine_tell(a->engine, c, findings, *count, NULL, 0, e);
  return status ? status : engine_run(a->engine, drawn, e);
}

/* ---- weighing ------------------------------------------------------------------------- */

/* Is this place a fault that counts as something broken? Use is not; not listed is. */
static bool is_broken(const struct casenet *n, size_t place)
{
  int f = n->fault_of[place];

  return f < 0 || strcmp(n->k->faults[f].sort, "use") != 0;
}

static bool is_unsound(const struct net_finding *f)
{
  return f->soft_sound <= 0 && (f->seen[0] < 0.999 || f->focus);
}

/* The chance that everything unsound came about without any broken part: broken parts
 * may be there, but each is then held to have brought about none of it. */
static double chance_sound(struct casenet *n, const struct net *net, double log_chance)
{
  struct net_finding *view = mem_array(net->finding_count ? net->finding_count : 1, sizeof *view);
  double *bias = mem_array(n->count, sizeof *bias), log_sound;
  struct arena arena = {0};
  struct net without = *net;
  bool good;

  memcpy(bias, net->bias, n->count * sizeof *bias);
  for (size_t i = 0; i < net->finding_count; i++) {
    struct net_link *links;

    view[i] = net->findings[i];
    if (!is_unsound(&view[i])) continue;
    links = arena_array(&arena, view[i].link_count, sizeof *links);
    view[i].links = links;
    view[i].link_count = 0;
    for (size_t j = 0; j < net->findings[i].link_count; j++) {
      const struct net_link *l = &net->findings[i].links[j];

      if (is_broken(n, (size_t)l->fault)) bias[l->fault] *= l->chance[0];
      else links[view[i].link_count++] = *l;
    }
  }
  without.bias = bias;
  without.findings = view;
  good = net_solve(&without, NULL, NULL, &log_sound);
  arena_free(&arena);
  free(view);
  free(bias);
  return good ? exp(log_sound - log_chance) : 0;
}

/* 1 - P(none) - P(exactly one), from the definition. */
static double chance_two(const struct casenet *n, const struct net *net, double log_chance)
{
  double *alone = mem_array(n->count, sizeof *alone), none, rest = 1;

  net_log_singles(net, &none, alone);
  for (size_t f = 0; f < n->count; f++) rest -= exp(alone[f] - log_chance);
  rest -= exp(none - log_chance);
  free(alone);
  return rest > 0 ? rest : 0;
}

/* How much being found, though not behind the complaint, counts for a place in the list. */
static const double found_share = 0.4;

static int by_place(const void *x, const void *y)
{
  const struct ranked *a = x, *b = y;
  double p = a->blame + found_share * a->found, q = b->blame + found_share * b->found;

  if (p != q) return p > q ? -1 : 1;
  if (a->belief != b->belief) return a->belief > b->belief ? -1 : 1;
  return a->fault - b->fault;
}

/* Puts complaints in focus, or, when there is none or `everything` is asked for, all that
 * is unsound. */
static void set_focus(struct casenet *n, bool everything)
{
  bool complaint = false;

  for (size_t i = 0; i < n->evidence_count; i++) complaint = complaint || n->evidence[i].kind == EVIDENCE_COMPLAINT;
  for (size_t i = 0; i < n->evidence_count; i++)
    n->findings[i].focus = everything || !complaint || n->evidence[i].kind == EVIDENCE_COMPLAINT;
}

/* The chance of each fault that it brought about anything unsound. */
static void find_found(struct casenet *n, double *found)
{
  double *belief = mem_array(n->count, sizeof *belief);
  struct net net;

  set_focus(n, true);
  net = casenet_view(n, n->evidence_count);
  net_solve(&net, belief, found, NULL);
  set_focus(n, false);
  free(belief);
}

/* Beyond the reach of the exact programme: limits instead. */
static bool weigh_bounded(struct assessment *out, const struct net *net, double *blame)
{
  double *low = mem_array(out->net.count, sizeof *low), *high = mem_array(out->net.count, sizeof *high);
  bool good = net_bounds(net, low, high);

  out->bounded = true;
  for (size_t i = 0; good && i < out->net.count; i++) {
    out->belief[i] = blame[i] = (low[i] + high[i]) / 2;
    out->ranking[i].low = low[i];
    out->ranking[i].high = high[i];
  }
  free(low);
  free(high);
  return good;
}

static int weigh(struct assessment *out, const struct knowledge *k, const struct bench_case *c,
                 struct err *e)
{
  double *blame, *found;
  struct net net;
  bool good = true;

  casenet_build(&out->net, k, c, &out->drawn);
  set_focus(&out->net, false);
  found = mem_array(out->net.count, sizeof *found);
  net = casenet_view(&out->net, out->net.evidence_count);
  out->belief = mem_array(out->net.count, sizeof *out->belief);
  out->ranking = mem_array(out->net.count, sizeof *out->ranking);
  blame = mem_array(out->net.count, sizeof *blame);
  out->ranking_count = out->net.count;
  if (net_solve(&net, out->belief, blame, &out->log_chance)) {
    for (size_t i = 0; i < out->net.count; i++) out->ranking[i].low = out->ranking[i].high = out->belief[i];
    out->sound = chance_sound(&out->net, &net, out->log_chance);
    out->two_or_more = chance_two(&out->net, &net, out->log_chance);
    find_found(&out->net, found);
  } else {
    good = weigh_bounded(out, &net, blame);
  }
  for (size_t i = 0; i < out->net.count; i++) {
    out->ranking[i].fault = out->net.fault_of[i];
    out->ranking[i].belief = out->belief[i];
    out->ranking[i].blame = blame[i];
    out->ranking[i].found = found[i];
  }
  qsort(out->ranking, out->ranking_count, sizeof *out->ranking, by_place);
  free(found);
  free(blame);
  return good ? 0 : err_set(e, EX_DATAERR, NULL, 0, "these results cannot all be true together.");
}

/* ---- what to do ----------------------------------------------------------------------- */

/* Before anything unsound was told or found nobody is to blame: then what is believed to be
 * there is planned for. */
static void plan(struct assessment *out, const struct bench_case *c)
{
  double *blame = mem_array(out->net.count, sizeof *blame), sum = 0;

  for (size_t i = 0; i < out->ranking_count; i++) {
    const struct ranked *r = &out->ranking[i];
    int place = r->fault >= 0 ? out->net.place_of[r->fault] : (int)out->net.count - 1;

    sum += blame[place] = r->blame;
  }
  next_plan(&out->net, c, &out->drawn, out->belief, sum > 1e-6 ? blame : out->belief, out->sound, &out->plan);
  free(blame);
}

static bool must_ask_first(const struct assessment *a, int fault)
{
  for (size_t i = 0; i < a->plan.count; i++)
    if (a->plan.steps[i].ask_first >= 0) {
      int at = conclusion_find(&a->drawn, ASK_FIRST, a->plan.steps[i].check, 0);

      for (; at >= 0; at = conclusion_find(&a->drawn, ASK_FIRST, a->plan.steps[i].check, (size_t)at + 1))
        if (a->drawn.items[at].b == fault) return true;
    }
  return false;
}

static enum disposition decide(const struct assessment *a, const struct knowledge *k,
                               const struct bench_case *c)
{
  const struct ranked *top = &a->ranking[0];
  double repair_at = knowledge_setting(k, "repair-at", 0.8), blame_at = knowledge_setting(k, "blame-at", 0.35);

  if (a->hand_over >= 0) return DISPOSITION_HAND_OVER;
  if (c->result_count == 0) return DISPOSITION_KEEP_LOOKING;
  if (a->sound >= knowledge_setting(k, "sound-at", 0.6)) return DISPOSITION_NOTHING_BROKEN;
  if (top->fault >= 0 && top->belief >= repair_at && top->blame >= blame_at && !must_ask_first(a, top->fault))
    return DISPOSITION_REPAIR;
  return DISPOSITION_KEEP_LOOKING;
}

/* The rules hear what is believed, and may advise, warn or hand over. */
static int tell_beliefs(struct assessor *a, const struct bench_case *c, struct assessment *out,
                        const struct engine_finding *findings, size_t count, struct err *e)
{
  struct engine_belief *beliefs = mem_array(out->net.count, sizeof *beliefs);
  double from = knowledge_setting(a->k, "show-belief", 0.02);
  size_t n = 0;
  int status;

  for (size_t i = 0; i < out->ranking_count; i++)
    if (out->ranking[i].fault >= 0 && out->ranking[i].blame >= from)
      beliefs[n++] = (struct engine_belief){out->ranking[i].fault, out->ranking[i].blame};
  status = engine_tell(a->engine, c, findings, count, beliefs, n, e);
  if (status == 0) status = engine_run(a->engine, &out->drawn, e);
  free(beliefs);
  return status;
}

int assess_case(struct assessor *a, const struct bench_case *c, struct assessment *out, struct err *e)
{
  struct engine_finding *findings = mem_array(c->result_count + 1, sizeof *findings);
  size_t count = 0;
  int status;

  *out = (struct assessment){.hand_over = -1};
  status = reason(a, c, findings, &count, &out->drawn, e);
  if (status == 0) status = weigh(out, a->k, c, e);
  if (status == 0) status = tell_beliefs(a, c, out, findings, count, e);
  if (status == 0) {
    for (size_t i = 0; i < out->drawn.count && out->hand_over < 0; i++)
      if (out->drawn.items[i].kind == HAND_OVER) out->hand_over = (int)i;
    plan(out, c);
    out->disposition = decide(out, a->k, c);
  } else {
    assessment_free(out);
  }
  free(findings);
  return status;
}

/* A check among the options, in the form of the quick plan. */
static struct next_step as_step(const struct advice_option *o)
{
  struct next_step s = {.check = o->step.at, .minutes = o->minutes, .saving = o->break_even, .to_end = o->cost,
                        .ask_first = o->ask_first, .outcome_count = (int)o->result_count};

  s.per_minute = s.minutes > 0 ? s.saving / s.minutes : s.saving;
  for (size_t i = 0; i < o->result_count; i++)
    s.outcomes[i] = (struct next_outcome){o->results[i].result, o->results[i].chance, o->results[i].fault,
                                          o->results[i].belief};
  return s;
}

void assess_advise(struct assessment *a, const struct bench_case *c)
{
  size_t n = 0;

  if (a->advised) return;
  plan_advise(&a->net, c, &a->drawn, a->belief, c->off, &a->advice);
  a->advised = true;
  for (size_t i = 0; i < a->advice.count; i++) {
    const struct advice_option *o = &a->advice.options[i];
    void *items = a->plan.steps;

    if (o->step.kind != ADVICE_CHECK || o->result_count == 0) continue;
    mem_grow(&items, &a->plan.room, n + 1, sizeof *a->plan.steps);
    a->plan.steps = items;
    a->plan.steps[n++] = as_step(o);
  }
  a->plan.count = n;
  a->plan.cost_now = a->advice.no_checks;
}

void assessment_free(struct assessment *a)
{
  if (a->advised) advice_free(&a->advice);
  conclusions_free(&a->drawn);
  casenet_free(&a->net);
  next_free(&a->plan);
  free(a->ranking);
  free(a->belief);
  *a = (struct assessment){.hand_over = -1};
}

static double odds_db(double p)
{
  double floor = 1e-12;

  if (p < floor) p = floor;
  if (p > 1 - floor) p = 1 - floor;
  return 10 * log10(p / (1 - p));
}

double *assess_odds(struct assessment *a)
{
  size_t places = a->net.count, rows = a->net.evidence_count + 1;
  double *odds = mem_array(rows * places, sizeof *odds);

  for (size_t i = 0; i < rows; i++) {
    struct net net = casenet_view(&a->net, i);
    double *row = odds + i * places;

    if (!net_solve(&net, row, NULL, NULL)) {
      free(odds);
      return NULL;
    }
    for (size_t p = 0; p < places; p++) row[p] = odds_db(row[p]);
  }
  return odds;
}

const char *disposition_name(enum disposition d)
{
  static const char *const names[] = {"keep-looking", "repair", "nothing-broken", "hand-over"};

  return names[d];
}
