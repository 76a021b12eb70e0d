/* run.c - see run.h. */
#include "practice/run.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "plan/next.h"
#include "practice/judge.h"
#include "practice/unsafe.h"

static bool engine_runs(const struct check *c)
{
  return strcmp(c->engine, "running") == 0 || strcmp(c->engine, "hot") == 0;
}

/* ---- how things stand ------------------------------------------------------------------- */

static int by_place(const void *x, const void *y)
{
  const struct ranked *a = x, *b = y;

  if (a->blame != b->blame) return a->blame > b->blame ? -1 : 1;
  return a->fault - b->fault;
}

/* What is certain here and the case has no word for: a repair on a practice machine takes, so
 * what was put right is not there any more; and once it was run as the owner does and did the
 * same, the complaint is not mere talk. */
static void tell_what_is_certain(struct run *r)
{
  const double never = 1e-9;
  struct casenet *n = &r->a.net;
  double *blame = mem_array(n->count, sizeof *blame);
  struct net net;

  for (size_t p = 0; p + 1 < n->count; p++)
    if (r->c.mended[n->fault_of[p]]) n->prior[p] = never;
  for (size_t i = 0; r->proved && i < n->evidence_count; i++)
    if (n->evidence[i].kind == EVIDENCE_COMPLAINT) {
      n->findings[i].leak[0] = 1 - never;
      n->findings[i].leak[1] = never;
    }
  net = casenet_view(n, n->evidence_count);
  if (net_solve(&net, r->a.belief, blame, NULL)) {
    for (size_t i = 0; i < r->a.ranking_count; i++) {
      struct ranked *x = &r->a.ranking[i];
      size_t place = x->fault >= 0 ? (size_t)n->place_of[x->fault] : n->count - 1;

      x->belief = r->a.belief[place];
      x->blame = blame[place];
    }
    if (r->proved) r->a.sound = 0;
    qsort(r->a.ranking, r->a.ranking_count, sizeof *r->a.ranking, by_place);
  }
  free(blame);
}

static bool anything_mended(const struct run *r)
{
  for (size_t f = 0; f < r->k->fault_count; f++)
    if (r->c.mended[f]) return true;
  return r->proved;
}

/* Weighs the case and works out what is best now. Results that cannot all be true (they are
 * drawn, and rules may know better) make the last one count for nothing. */
static int look_anew(struct run *r, struct err *e)
{
  int status;

  if (r->known) {
    assessment_free(&r->a);
    advice_free(&r->advice);
    r->known = false;
  }
  status = assess_case(r->assessor, &r->c, &r->a, e);
  if (status == EX_DATAERR && r->c.result_count > 0) {
    r->c.results[r->c.result_count - 1].sure = 0;
    status = assess_case(r->assessor, &r->c, &r->a, e);
  }
  if (status) return status;
  if (anything_mended(r)) tell_what_is_certain(r);
  judge_advise(r, r->c.off, &r->advice);
  r->known = true;
  return 0;
}

static double blame_of(const struct assessment *a, int fault)
{
  if (fault == -2) return a->sound;
  for (size_t i = 0; i < a->ranking_count; i++)
    if (a->ranking[i].fault == fault) return a->ranking[i].blame;
  return 0;
}

int run_leading(const struct run *r, double *chance)
{
  int best = -2;

  *chance = r->a.sound;
  for (size_t i = 0; i < r->a.ranking_count; i++)
    if (r->a.ranking[i].blame > *chance) {
      *chance = r->a.ranking[i].blame;
      best = r->a.ranking[i].fault;
    }
  return best;
}

double run_truth_chance(const struct run *r) { return r->culprit >= 0 ? blame_of(&r->a, r->culprit) : 0; }

double run_chance(const struct run *r, int repair)
{
  double none = 1;

  if (repair < 0) return r->a.sound;
  for (size_t i = 0; i < r->a.ranking_count; i++)
    if (r->a.ranking[i].fault >= 0 && r->k->faults[r->a.ranking[i].fault].repair == repair)
      none *= 1 - fmin(1, r->a.ranking[i].blame);
  return 1 - none;
}

static int repair_of(const struct run *r, const struct entry *entry)
{
  if (entry->act == ACT_REPAIR) return entry->at;
  return entry->act == ACT_DECLARE && entry->at >= 0 ? r->k->faults[entry->at].repair : -1;
}

bool run_not_worth_it(const struct run *r, int fault)
{
  const struct repair *rep = &r->k->repairs[r->k->faults[fault].repair];
  double cost = plan_minutes(r->k, &r->c, rep->minutes, &rep->off) +
                rep->parts_cost / knowledge_setting(r->k, "shop-rate", 0.7);

  return r->c.machine_class >= 0 && cost > r->k->classes[r->c.machine_class].worth;
}

double run_minutes(const struct run *r, const struct entry *entry, double *parts)
{
  const struct knowledge *k = r->k;
  int repair = repair_of(r, entry);

  *parts = 0;
  if (entry->act == ACT_DECLARE && entry->at >= 0 && run_not_worth_it(r, entry->at))
    return knowledge_setting(k, "give-up", 20);
  *parts = repair >= 0 ? k->repairs[repair].parts_cost : 0;
  if (repair >= 0) return plan_minutes(k, &r->c, k->repairs[repair].minutes, &k->repairs[repair].off);
  if (entry->act == ACT_CHECK)
    return plan_minutes(k, &r->c, k->checks[entry->at].minutes, &k->checks[entry->at].off) +
           (*k->checks[entry->at].destroys ? knowledge_setting(k, "destructive-check", 15) : 0);
  if (entry->act == ACT_OPEN)
    return plan_minutes(k, &r->c, 0, &(struct refs){.at = (int[]){entry->at}, .count = 1});
  if (entry->act == ACT_PROVE || entry->act == ACT_DECLARE) return knowledge_setting(k, "prove-sound", 10);
  if (entry->act == ACT_GIVE_UP) return knowledge_setting(k, "give-up", 20);
  return 0;
}

/* Does this cover go back on when the engine is run, with those that lie under it? Those in
 * `needed` (may be NULL) stay off. */
static bool goes_back(const struct run *r, size_t cover, const struct refs *needed)
{
  const struct knowledge *k = r->k;
  bool shut = false;

  for (int x = (int)cover; x >= 0; x = k->covers[x].under) shut = shut || !k->covers[x].run_without;
  for (size_t n = 0; needed && n < needed->count; n++)
    for (int x = needed->at[n]; x >= 0; x = k->covers[x].under)
      if (x == (int)cover) shut = false;
  return shut;
}

/* Their refitting was paid for when they came off. */
static void shut_to_run(struct run *r, const struct refs *needed)
{
  for (size_t i = 0; i < r->k->cover_count; i++)
    if (goes_back(r, i, needed)) r->c.off[i] = false;
}

double run_refit_minutes(const struct run *r, const struct entry *entry)
{
  const struct refs *needed = NULL;
  double sum = 0;

  if (entry->act == ACT_CHECK) {
    if (!engine_runs(&r->k->checks[entry->at])) return 0;
    needed = &r->k->checks[entry->at].off;
  } else if (entry->act != ACT_REPAIR && entry->act != ACT_PROVE && entry->act != ACT_DECLARE) {
    return 0;
  }
  for (size_t i = 0; i < r->k->cover_count; i++)
    if (r->c.off[i] && goes_back(r, i, needed))
      sum += r->k->covers[i].minutes_off + r->k->covers[i].minutes_on;
  return sum;
}

/* ---- doing it --------------------------------------------------------------------------- */

static struct step *add_step(struct run *r, const struct entry *entry)
{
  void *items = r->steps;
  struct step *s;

  mem_grow(&items, &r->step_room, r->step_count + 1, sizeof *r->steps);
  r->steps = items;
  s = &r->steps[r->step_count++];
  *s = (struct step){.entry = *entry, .rule = -1, .pointless_by = -1, .chance = -1, .falls_on = -1};
  if (entry->expect) {
    s->expect = mem_new(strlen(entry->expect) + 1);
    strcpy(s->expect, entry->expect);
  }
  s->entry.expect = s->expect;
  s->leading = run_leading(r, &s->leading_chance);
  s->truth_chance = run_truth_chance(r);
  return s;
}

static void judge_and_pay(struct run *r, const struct entry *entry, struct step *s)
{
  struct step_worth j;
  int at;

  judge_entry(r, entry, &j);
  s->best = j.best;
  s->chosen = j.chosen;
  s->regret = j.regret;
  s->right = j.right;
  s->better = j.better;
  s->better_minutes = j.better_minutes;
  s->minutes = run_minutes(r, entry, &s->parts);
  s->refit = run_refit_minutes(r, entry);
  s->cost = s->minutes + s->parts / knowledge_setting(r->k, "shop-rate", 0.7);
  if (entry->act == ACT_REPAIR || entry->act == ACT_DECLARE) s->chance = run_chance(r, repair_of(r, entry));
  if (entry->act == ACT_CHECK) {
    s->again = case_result_of(&r->c, entry->at) != NULL;
    at = conclusion_find(&r->a.drawn, POINTLESS, entry->at, 0);
    if (at >= 0) s->pointless_by = r->a.drawn.items[at].rule;
  }
  r->regret += s->regret;
  r->minutes += s->minutes;
  r->parts += s->parts;
}

static void do_check(struct run *r, struct step *s)
{
  const struct check *c = &r->k->checks[s->entry.at];

  if (engine_runs(c)) shut_to_run(r, &c->off);
  case_take_off(&r->c, r->k, &c->off);
  if (unsafe_spills(r, &s->entry)) r->spilt = true;
  hidden_look(&r->hidden, s->entry.at, &s->result);
  case_set_result(&r->c, s->result);
}

/* What was repaired and did not cure leaves the case, with the results it may have made. */
static void leave_case(struct run *r, struct step *s, int repair)
{
  double most = -1;
  int fault = -1;

  for (size_t i = 0; i < r->a.ranking_count; i++) {
    const struct ranked *x = &r->a.ranking[i];

    if (x->fault < 0 || r->k->faults[x->fault].repair != repair) continue;
    if (x->blame > most) {
      most = x->blame;
      fault = x->fault;
    }
    r->c.mended[x->fault] = true;
  }
  if (fault >= 0) s->taken_back = (int)deeper_mend(&r->a, &r->c, fault);
}

static void do_repair(struct run *r, struct step *s)
{
  int repair = repair_of(r, &s->entry);
  size_t before = r->hidden.fault_count;

  case_take_off(&r->c, r->k, &r->k->repairs[repair].off);
  s->fixed = hidden_repair(&r->hidden, repair);
  s->hit = r->hidden.fault_count < before;
  if (!s->fixed) leave_case(r, s, repair);
  r->proved = true; /* it was run to see; what was spilt on the way was wiped up before */
  shut_to_run(r, NULL);
}

static bool only_use(const struct run *r)
{
  for (size_t i = 0; i < r->truth_count; i++)
    if (strcmp(r->k->faults[r->truth[i]].sort, "use") != 0) return false;
  return true;
}

static void finish(struct run *r, struct step *s, enum run_end end)
{
  r->end = end;
  r->right = s->fixed;
}

static void score_certainty(struct run *r, const struct step *s)
{
  double off = s->entry.sure - (s->hit ? 1 : 0);

  if (s->entry.sure < 0 || (s->entry.act != ACT_DECLARE && s->entry.act != ACT_REPAIR)) return;
  r->brier = (r->stated ? r->brier * r->stated : 0) + off * off;
  r->brier /= ++r->stated;
  r->stated_right += s->hit;
  r->stated_sum += s->entry.sure;
}

/* What was declared is put right and tried; what is not worth that, or is nothing, is told to
 * the owner. */
static void do_declare(struct run *r, struct step *s)
{
  int fault = s->entry.at;

  if (fault >= 0 && !run_not_worth_it(r, fault)) {
    do_repair(r, s);
  } else {
    s->fixed = s->hit = fault >= 0 ? hidden_has(&r->hidden, fault) : only_use(r);
    if (!s->fixed && fault >= 0) leave_case(r, s, repair_of(r, &s->entry));
    r->proved = true;
  }
  if (s->fixed) finish(r, s, RUN_DECLARED);
}

static void carry_out(struct run *r, struct step *s)
{
  switch (s->entry.act) {
  case ACT_CHECK: do_check(r, s); break;
  case ACT_OPEN:
    case_take_off(&r->c, r->k, &(struct refs){.at = &s->entry.at, .count = 1});
    if (unsafe_spills(r, &s->entry)) r->spilt = true;
    break;
  case ACT_REPAIR:
    do_repair(r, s);
    if (s->fixed) finish(r, s, RUN_CURED);
    break;
  case ACT_PROVE:
    s->fixed = r->truth_count == 0;
    shut_to_run(r, NULL);
    r->proved = true;
    if (s->fixed) finish(r, s, RUN_CURED);
    break;
  case ACT_DECLARE: do_declare(r, s); break;
  case ACT_GIVE_UP: finish(r, s, RUN_GAVE_UP); break;
  default: break;
  }
  score_certainty(r, s);
}

/* ---- what it told ----------------------------------------------------------------------- */

static double odds_db(double p)
{
  p = fmin(fmax(p, 1e-6), 1 - 1e-6);
  return 10 * log10(p / (1 - p));
}

/* The result that a reading falls on; of any other check, its result. */
static int falls_on(const struct run *r, const struct step *s)
{
  if (s->entry.act != ACT_CHECK) return -1;
  for (size_t i = 0; i < r->a.net.evidence_count; i++)
    if (r->a.net.evidence[i].kind == EVIDENCE_RESULT && r->a.net.evidence[i].subject == s->entry.at)
      return r->a.net.evidence[i].result;
  return s->result.result;
}

static int sign_of(const struct run *r, const struct step *s, int fault)
{
  size_t first, last;
  int result = s->falls_on;

  if (fault < 0) return -1;
  knowledge_signs_of_check(r->k, s->entry.at, &first, &last);
  for (size_t i = first; i < last; i++)
    if (r->k->signs[i].fault == fault && (r->k->signs[i].result == result || result == 0)) return (int)i;
  return -1;
}

/* The leading fault, then those whose chance moved most. */
static void note_moved(struct run *r, struct step *s, const struct assessment *before)
{
  double chance;
  int leading = run_leading(r, &chance);

  while (s->moved_count < RUN_MOVED) {
    struct moved best = {.fault = -9};

    for (size_t i = 0; i <= r->a.ranking_count; i++) {
      int fault = i < r->a.ranking_count ? r->a.ranking[i].fault : -2;
      struct moved m = {fault, -1, blame_of(before, fault), blame_of(&r->a, fault), 0};
      bool had = s->moved_count == 0 && fault != leading;

      for (size_t j = 0; j < s->moved_count; j++) had = had || s->moved[j].fault == fault;
      if (!had && (best.fault == -9 || fabs(m.after - m.before) > fabs(best.after - best.before))) best = m;
    }
    if (best.fault == -9 || (s->moved_count > 0 && fabs(best.after - best.before) < 0.005)) break;
    best.db = odds_db(best.after) - odds_db(best.before);
    if (s->entry.act == ACT_CHECK) best.sign = sign_of(r, s, best.fault);
    s->moved[s->moved_count++] = best;
  }
}

/* A rule that spoke on account of this step: it weakened the result, or what it concludes was
 * not there before. */
static int rule_spoke(const struct run *r, const struct step *s, const struct assessment *before)
{
  for (size_t i = 0; i < r->a.net.evidence_count; i++) {
    const struct evidence *e = &r->a.net.evidence[i];
    bool old = false;

    if (e->kind == EVIDENCE_RESULT && e->subject == s->entry.at && e->weakened_by >= 0) return e->weakened_by;
    if (e->kind != EVIDENCE_SPEAKS) continue;
    for (size_t j = 0; j < before->net.evidence_count; j++)
      old = old ||
            (before->net.evidence[j].kind == EVIDENCE_SPEAKS && before->net.evidence[j].rule == e->rule);
    if (!old) return e->rule;
  }
  return -1;
}

static int tell(struct run *r, struct step *s, struct err *e)
{
  struct assessment before = r->a;
  int status;

  r->a = (struct assessment){.hand_over = -1};
  status = look_anew(r, e);
  if (status == 0) {
    s->falls_on = falls_on(r, s);
    note_moved(r, s, &before);
    if (s->entry.act == ACT_CHECK) s->rule = rule_spoke(r, s, &before);
  }
  assessment_free(&before);
  return status;
}

/* ---- the whole -------------------------------------------------------------------------- */

static void stop_unsafe(struct run *r, const struct entry *entry, const char *why)
{
  struct step *s = add_step(r, entry);

  s->right = false;
  s->best = r->advice.cost;
  s->chosen = s->best;
  s->better = r->advice.options[0].step;
  snprintf(r->unsafe, sizeof r->unsafe, "%s", why);
  r->end = RUN_UNSAFE;
}

int run_do(struct run *r, const struct entry *entry, struct err *e)
{
  char why[sizeof r->unsafe];
  struct step *s;
  int status = 0;

  if (entry->act == ACT_LEAD || entry->act == ACT_WIPE) {
    if (entry->act == ACT_LEAD) r->lead_off = entry->at == 0;
    else r->spilt = false;
    return 0;
  }
  if (unsafe_now(r, entry, why, sizeof why)) {
    stop_unsafe(r, entry, why);
    return 0;
  }
  if (entry->act == ACT_PROVE || entry->act == ACT_REPAIR || entry->act == ACT_DECLARE ||
      (entry->act == ACT_CHECK && strcmp(r->k->checks[entry->at].engine, "stopped") != 0))
    r->lead_off = false; /* it goes back on to be turned or run */
  s = add_step(r, entry);
  judge_and_pay(r, entry, s);
  carry_out(r, s);
  if (r->end == RUN_OPEN) status = tell(r, s, e);
  if (status == 0 && r->end == RUN_OPEN && r->step_count >= RUN_MOST_STEPS) r->end = RUN_GAVE_UP;
  return status;
}

void run_make_safe(struct run *r, const struct entry *entry)
{
  if (unsafe_wants_lead_off(r, entry)) r->lead_off = true;
  if (unsafe_makes_spark(r, entry)) r->spilt = false;
}

int run_begin(struct run *r, const struct knowledge *k, struct assessor *assessor, struct hidden *h,
              bool cheap, struct err *e)
{
  struct err ignored;
  int status;

  *r = (struct run){.k = k, .assessor = assessor, .hidden = *h, .cheap = cheap, .brier = -1, .culprit = -1};
  *h = (struct hidden){.culprit = -1};
  if (r->hidden.culprit >= 0) r->culprit = r->hidden.net.fault_of[r->hidden.culprit];
  for (size_t i = 0; i < r->hidden.fault_count; i++)
    r->truth[r->truth_count++] = r->hidden.net.fault_of[r->hidden.faults[i]];
  case_begin(&r->c, k);
  memcpy(r->c.features, r->hidden.machine.features, k->feature_count * sizeof *r->c.features);
  r->c.machine_class = r->hidden.machine.machine_class;
  r->c.learned = r->hidden.shop;
  for (size_t i = 0; i < r->hidden.machine.complaint_count; i++)
    case_add_complaint(&r->c, r->hidden.machine.complaints[i]);
  status = look_anew(r, e ? e : &ignored);
  if (status == 0) r->expected = r->advice.cost;
  return status;
}

double run_score(const struct run *r)
{
  if (r->end == RUN_UNSAFE) return 0;
  return r->expected + r->regret > 0 ? 100 * r->expected / (r->expected + r->regret) : 100;
}

const char *run_end_name(enum run_end end)
{
  static const char *const names[] = {"open", "cured", "declared", "gave-up", "unsafe"};

  return names[end];
}

void run_free(struct run *r)
{
  if (r->known) {
    assessment_free(&r->a);
    advice_free(&r->advice);
  }
  for (size_t i = 0; i < r->step_count; i++) free(r->steps[i].expect);
  free(r->steps);
  case_free(&r->c);
  hidden_free(&r->hidden);
  *r = (struct run){.hidden = {.culprit = -1}};
}
