/* debrief.c - see debrief.h: what to say; how it is told is in debrief_text, _html and _json. */
#include "practice/debrief.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "practice/reading.h"
#include "practice/unsafe.h"
#include "practice/walk.h"
#include "units/parse.h"

/* ---- pieces ----------------------------------------------------------------------------- */

const char *debrief_fault(const struct knowledge *k, int fault)
{
  if (fault == -2) return "nothing broken";
  return fault < 0 ? "something not listed" : k->faults[fault].name;
}

void debrief_result(struct buf *out, const struct knowledge *k, const struct case_result *r)
{
  const struct check *c = &k->checks[r->check];
  char text[60];

  if (r->result >= 0) {
    buf_add(out, c->labels.items[r->result]);
    return;
  }
  amount_format(r->value * c->unit->factor + c->unit->offset, c->unit, text, sizeof text);
  buf_add(out, text);
}

/* Was it stopped here, before it was done? */
static bool stopped_at(const struct run *r, const struct step *s)
{
  return r->end == RUN_UNSAFE && s == &r->steps[r->step_count - 1];
}

/* How a repair came out, as far as one sees it: what was worn or dirty is in one's hand. */
static const char *outcome(const struct run *r, const struct step *s, const char *cured)
{
  return stopped_at(r, s) ? "not done"
         : s->fixed       ? cured
         : s->hit         ? "something was wrong there, but it is still the same"
                          : "still the same";
}

void debrief_step(struct buf *out, const struct run *r, const struct step *s)
{
  const struct knowledge *k = r->k;

  switch (s->entry.act) {
  case ACT_CHECK:
    buf_addf(out, "%s: ", k->checks[s->entry.at].name);
    if (s->result.sure > 0) debrief_result(out, k, &s->result);
    else buf_add(out, stopped_at(r, s) ? "not made" : "no clear answer");
    break;
  case ACT_OPEN: buf_addf(out, "took off the %s", k->covers[s->entry.at].name); break;
  case ACT_REPAIR:
    buf_addf(out, "%s: %s", k->repairs[s->entry.at].name, outcome(r, s, "it runs as it should"));
    break;
  case ACT_PROVE:
    buf_addf(out, "ran it as the owner does: %s",
             stopped_at(r, s) ? "not done"
             : s->fixed       ? "nothing wrong with it"
                              : "it does what the owner said");
    break;
  case ACT_DECLARE:
    buf_addf(out, "declared %s: %s", debrief_fault(k, s->entry.at), outcome(r, s, "that was it"));
    break;
  case ACT_GIVE_UP: buf_add(out, "gave it up"); break;
  default: buf_addf(out, "%s: not done", unsafe_act_name(s->entry.at)); break;
  }
}

void debrief_better(struct buf *out, const struct knowledge *k, const struct advice_step *s)
{
  if (s->kind == ADVICE_CHECK) buf_addf(out, "%s", k->checks[s->at].name);
  else if (s->kind == ADVICE_REPAIR) buf_addf(out, "%s", k->repairs[s->at].name);
  else if (s->kind == ADVICE_PROVE) buf_add(out, "run it as the owner does");
  else if (s->kind == ADVICE_LOOK_FURTHER) buf_add(out, "strip and look for what is not listed");
  else buf_add(out, "tell the owner, and stop");
}

static void add_times(struct buf *out, double chance)
{
  buf_addf(out, "%.*f", chance < 0.01, 100 * chance);
}

/* What is used wrongly is no broken part: the two rise and fall together. */
static const struct moved *use_that_rose(const struct run *r, const struct step *s)
{
  for (size_t i = 0; i < s->moved_count; i++)
    if (s->moved[i].fault >= 0 && s->moved[i].db > 0 &&
        strcmp(r->k->faults[s->moved[i].fault].sort, "use") == 0)
      return &s->moved[i];
  return NULL;
}

/* A fault that the result is no sign of: it goes up because others went down, and the other way
 * round. */
static void why_without_sign(struct buf *out, const struct run *r, const struct step *s,
                             const struct moved *m)
{
  const struct check *c = &r->k->checks[s->entry.at];
  const struct moved *use = use_that_rose(r, s);

  if (m->db > 0 && m->fault == -2 && use) {
    buf_addf(out, "\"%s\" is no broken part", r->k->faults[use->fault].name);
  } else if (m->db > 0) {
    buf_add(out, "others lost more by it");
  } else if (s->falls_on > 0) {
    buf_addf(out, "does not make for \"%s\"; by chance that shows in ", c->labels.items[s->falls_on]);
    add_times(out, c->anyway.items[s->falls_on - 1]);
    buf_addf(out, " of 100 [%s]", basis_name(c->origin.basis));
  } else {
    buf_add(out, "others gained by it");
  }
}

/* What was put right and tried, or run as it was, says something too. */
static void why_of_trying(struct buf *out, const struct run *r, const struct step *s, const struct moved *m)
{
  int repair = s->entry.act == ACT_REPAIR                        ? s->entry.at
               : s->entry.act == ACT_DECLARE && s->entry.at >= 0 ? r->k->faults[s->entry.at].repair
                                                                 : -1;

  if (s->fixed || (s->entry.act != ACT_PROVE && s->entry.act != ACT_REPAIR && s->entry.act != ACT_DECLARE))
    return;
  if (m->fault >= 0 && r->k->faults[m->fault].repair == repair)
    buf_add(out, s->hit ? "it was put right, and something else is wrong too"
                        : "it was put right, and that was not it");
  else if (m->fault == -2 && m->db < 0)
    buf_add(out, "it was run as the owner does, and did what the owner said");
  else if (m->db > 0) buf_add(out, "what was ruled out left more for it");
}

void debrief_why(struct buf *out, const struct run *r, const struct step *s, const struct moved *m)
{
  const struct sign *sign = m->sign >= 0 ? &r->k->signs[m->sign] : NULL;
  const struct check *c;

  if (s->entry.act != ACT_CHECK) why_of_trying(out, r, s, m);
  if (s->entry.act != ACT_CHECK || s->falls_on < 0) return;
  c = &r->k->checks[s->entry.at];
  if (!sign) {
    why_without_sign(out, r, s, m);
    return;
  }
  if (sign->why && *sign->why) {
    buf_addf(out, "%s ", sign->why);
  } else {
    buf_addf(out, "it %s \"%s\" %.0f times in 100, a sound machine ", m->db < 0 ? "would show" : "shows",
             c->labels.items[sign->result], 100 * sign->chance);
    add_times(out, c->anyway.items[sign->result - 1]);
    buf_add(out, " ");
  }
  buf_addf(out, "[%s%s%s]", basis_name(sign->origin.basis), sign->origin.source_id ? " " : "",
           sign->origin.source_id ? sign->origin.source_id : "");
}

static void add_amount(struct buf *out, const struct check *c, double value)
{
  char text[60];

  amount_format(value * c->unit->factor + c->unit->offset, c->unit, text, sizeof text);
  buf_add(out, text);
}

void debrief_reading(struct buf *out, const struct run *r, const struct step *s)
{
  const struct check *c = &r->k->checks[s->entry.at];
  const struct bands *b;
  size_t at = 0;

  if (s->entry.act != ACT_CHECK || s->result.result >= 0 || s->falls_on < 0) return;
  buf_addf(out, "For this engine that is: %s", c->labels.items[s->falls_on]);
  b = reading_bands(r->k, &r->hidden.machine, s->entry.at);
  while (b && at < b->results.count && b->result_at[at] != 0) at++;
  if (b && at < b->results.count && b->limits.count > 0) {
    buf_add(out, "; sound is ");
    if (at > 0) add_amount(out, c, b->limits.items[at - 1]);
    buf_add(out, at == 0 ? "below " : at < b->limits.count ? " to " : " and more");
    if (at < b->limits.count) add_amount(out, c, b->limits.items[at]);
    buf_addf(out, " [%s]", basis_name(b->origin.basis));
  }
  buf_add(out, ".");
}

void debrief_judged(struct buf *out, const struct run *r, const struct step *s)
{
  bool fix = s->entry.act == ACT_REPAIR || s->entry.act == ACT_DECLARE;

  if (stopped_at(r, s)) {
    buf_add(out, "Stopped.");
  } else if (s->right) {
    buf_add(out, fix && !s->hit ? "Right to try, though it was not it" : "Right");
    if (s->regret < 0.05) {
      buf_add(out, fix && !s->hit ? "." : ": nothing better to do.");
    } else {
      buf_addf(out, ", within 2 %% of the best: gave away %.1f min. Best was: ", s->regret);
      debrief_better(out, r->k, &s->better);
      buf_add(out, ".");
    }
  } else {
    buf_addf(out, "Gave away %.1f min", s->regret);
    if (s->refit > 0 && s->regret > s->cost)
      buf_addf(out, " (%.1f of them since covers that were off go back on for it)",
               fmin(s->refit, s->regret - s->cost));
    buf_add(out, ". Better: ");
    debrief_better(out, r->k, &s->better);
    buf_addf(out, " (to the end about %.0f min instead of %.0f).", s->best, s->chosen);
  }
  if (s->pointless_by >= 0) buf_addf(out, " It could tell little: %s", r->k->rules[s->pointless_by].reason);
}

bool debrief_worth_telling(const struct moved *m)
{
  return fabs(m->db) >= 1 && fabs(m->after - m->before) >= 0.01;
}

bool debrief_told(const struct step *s)
{
  for (size_t i = 0; i < s->moved_count; i++)
    if (debrief_worth_telling(&s->moved[i])) return true;
  return false;
}

void debrief_moved(struct buf *out, const struct run *r, const struct moved *m, const char *arrow)
{
  const double all_but_certain = 40; /* decibans: ruled out by trying, not weighed */

  buf_addf(out, "%s %.0f %s %.0f %%", debrief_fault(r->k, m->fault), 100 * m->before, arrow, 100 * m->after);
  if (fabs(m->db) < all_but_certain) buf_addf(out, " (%+.0f db)", m->db);
}

const char debrief_decibans[] =
    "db: how far a result moved the odds; 3 db doubles them, 10 db makes ten of one, -10 db one of ten.";

void debrief_score(struct buf *out, const struct debrief *d)
{
  const struct run *r = d->run;

  buf_addf(out,
           "You spent %.0f minutes and %.0f in parts; the best path would have taken %.0f and %.0f here. ",
           r->minutes, r->parts, d->best.minutes, d->best.parts);
  if (r->end == RUN_UNSAFE) buf_add(out, "Score 0 of 100: an act that hurts people outweighs all else.");
  else
    buf_addf(out,
             "By choice you gave away %.0f minutes, where %.0f were to be expected of the best: score %.0f "
             "of 100. "
             "Luck does not count, only what could be known when you chose.",
             r->regret, r->expected, run_score(r));
  if (r->brier >= 0)
    buf_addf(
        out,
        " You were %.0f %% sure on average, and right %d time%s of %d: Brier %.2f (0 is best, 0.25 a coin).",
        100 * r->stated_sum / r->stated, r->stated_right, r->stated_right == 1 ? "" : "s", r->stated,
        r->brier);
}

static void list_truth(struct buf *out, const struct run *r)
{
  if (r->truth_count == 0) buf_add(out, "nothing was broken: more was expected of it than it does");
  for (size_t i = 0; i < r->truth_count; i++)
    buf_addf(out, "%s%s", i ? "; and " : "", r->k->faults[r->truth[i]].name);
}

void debrief_end(struct buf *out, const struct run *r)
{
  static const char *const how[] = {"The run is not over.", "It runs.", "", "You gave it up.",
                                    "Stopped: that hurts people."};

  if (r->end == RUN_DECLARED) buf_add(out, "What you declared was it.");
  else buf_add(out, how[r->end]);
  if (r->end == RUN_UNSAFE) buf_addf(out, " %s", r->unsafe);
  if (r->end == RUN_OPEN) return;
  buf_add(out, " What was wrong: ");
  list_truth(out, r);
  buf_add(out, ".");
  if (r->hidden.misled >= 0)
    buf_addf(out, " One result misled: \"%s\" looked sound, as it sometimes does.",
             r->k->checks[r->hidden.misled].name);
}

/* ---- where it went astray --------------------------------------------------------------- */

const char *astray_name(enum astray kind)
{
  static const char *const names[] = {"an act that hurts people",
                                      "jumped to a part",
                                      "went against a result",
                                      "stopped too soon",
                                      "opened a cover too early",
                                      "a check that could say nothing new",
                                      "checked on when the repair was due",
                                      "a check that told less for its minutes",
                                      "how sure was said"};

  return names[kind];
}

static bool is_fix(const struct step *s) { return s->entry.act == ACT_REPAIR || s->entry.act == ACT_DECLARE; }

static int repair_of(const struct run *r, const struct step *s)
{
  return s->entry.act == ACT_REPAIR ? s->entry.at : s->entry.at >= 0 ? r->k->faults[s->entry.at].repair : -1;
}

/* An earlier result that had spoken clearly against everything that this repair is for. */
static const struct step *spoke_against(const struct run *r, size_t at)
{
  int repair = repair_of(r, &r->steps[at]);

  for (size_t i = at; i-- > 0 && repair >= 0;)
    for (size_t m = 0; m < r->steps[i].moved_count; m++) {
      const struct moved *x = &r->steps[i].moved[m];

      if (x->fault >= 0 && r->k->faults[x->fault].repair == repair && x->db <= -5 &&
          r->steps[i].entry.act == ACT_CHECK)
        return &r->steps[i];
    }
  return NULL;
}

static double cover_minutes(const struct run *r, const struct step *s)
{
  return s->entry.act == ACT_CHECK ? s->minutes - r->k->checks[s->entry.at].minutes : s->minutes;
}

static enum astray kind_of(const struct run *r, size_t at)
{
  const struct step *s = &r->steps[at];

  if (is_fix(s) && s->chance < 0.5 && spoke_against(r, at)) return ASTRAY_IGNORED;
  if (s->entry.act == ACT_DECLARE || s->entry.act == ACT_GIVE_UP || s->entry.act == ACT_PROVE)
    return ASTRAY_SOON;
  if (is_fix(s)) return ASTRAY_PART;
  if (s->entry.act == ACT_OPEN) return ASTRAY_COVER;
  if (s->again || s->pointless_by >= 0) return ASTRAY_REPEAT;
  if (cover_minutes(r, s) >= 4) return ASTRAY_COVER;
  return s->better.kind == ADVICE_REPAIR ? ASTRAY_LATE : ASTRAY_DEARER;
}

static const char *luck(const struct step *s)
{
  return s->fixed ? " It was it: that was luck."
         : s->hit ? " It was one of two things wrong: that was luck."
                  : "";
}

static void add_chance(struct buf *out, double chance)
{
  if (chance > 0 && chance < 0.01) buf_add(out, "less than 1 in 100");
  else buf_addf(out, "%.0f in 100", 100 * chance);
}

static void say(struct buf *b, const struct run *r, size_t at, enum astray kind)
{
  const struct step *s = &r->steps[at], *against = spoke_against(r, at);
  struct buf better = {0};

  debrief_better(&better, r->k, &s->better);
  switch (kind) {
  case ASTRAY_IGNORED:
    buf_addf(b, "\"%s\" (step %zu) had spoken against it, which left ", r->k->checks[against->entry.at].name,
             (size_t)(against - r->steps) + 1);
    add_chance(b, s->chance);
    buf_addf(b, "; you did it all the same.%s", luck(s));
    break;
  case ASTRAY_PART:
    buf_addf(b, "%.0f minutes and %.0f in parts on ", s->minutes, s->parts);
    add_chance(b, s->chance);
    buf_addf(b, " that this was it. First: %s (%.1f min).%s", buf_text(&better), s->better_minutes, luck(s));
    break;
  case ASTRAY_SOON:
    if (s->chance >= 0) {
      buf_add(b, "It stood at ");
      add_chance(b, s->chance);
      buf_add(b, ". ");
    }
    buf_addf(b, "There was still something worth its minutes: %s (%.1f min).%s", buf_text(&better),
             s->better_minutes, luck(s));
    break;
  case ASTRAY_COVER:
    buf_addf(b, "%.0f minutes of covers before it was clear that they had to come off. First: %s (%.1f min).",
             cover_minutes(r, s), buf_text(&better), s->better_minutes);
    break;
  case ASTRAY_REPEAT:
    buf_addf(b,
             s->again ? "It had been made, and nothing had changed since. Next was: %s."
                      : "As things stood it could say nothing new. Next was: %s.",
             buf_text(&better));
    if (!s->again) buf_addf(b, " %s", r->k->rules[s->pointless_by].reason);
    break;
  case ASTRAY_LATE:
    buf_addf(b, "No result of it would have changed what to do: %s.", buf_text(&better));
    break;
  default:
    buf_addf(b, "%s (%.1f min) told more for its minutes.", buf_text(&better), s->better_minutes);
    break;
  }
  buf_free(&better);
}

static struct remark *add_remark(struct debrief *d, enum astray kind, size_t step, double regret,
                                 const char *text)
{
  struct remark *x = &d->remarks[d->remark_count++];

  *x = (struct remark){.kind = kind, .step = step, .last = step, .regret = regret};
  snprintf(x->text, sizeof x->text, "%s", text);
  return x;
}

/* Is it what the last remark said of the step before? Then it is one remark of several steps. */
static bool goes_with_last(struct debrief *d, enum astray kind, size_t step)
{
  struct remark *last = d->remark_count ? &d->remarks[d->remark_count - 1] : NULL;
  const struct advice_step *was = last ? &d->run->steps[last->last].better : NULL,
                           *is = &d->run->steps[step].better;

  if (!last || last->kind != kind || kind != ASTRAY_DEARER || last->last + 1 != step) return false;
  if (was->kind != is->kind || was->at != is->at) return false;
  last->last = step;
  last->regret += d->run->steps[step].regret;
  return true;
}

static void remark_certainty(struct debrief *d, size_t at)
{
  const struct step *s = &d->run->steps[at];
  char text[300];

  if (s->entry.sure < 0 || s->chance < 0 || fabs(s->entry.sure - s->chance) < 0.25) return;
  snprintf(text, sizeof text, "You were %.0f %% sure; the results allowed %.0f %%. %s", 100 * s->entry.sure,
           100 * s->chance,
           s->entry.sure > s->chance ? "What else would have shown the same?"
                                     : "You had shown more than you trusted.");
  add_remark(d, ASTRAY_SURE, at, 0, text);
}

static void find_remarks(struct debrief *d)
{
  const struct run *r = d->run;

  for (size_t i = 0; i < r->step_count && d->remark_count + 1 < DEBRIEF_MOST; i++) {
    struct buf b = {0};
    enum astray kind;

    if (r->end == RUN_UNSAFE && i + 1 == r->step_count) {
      add_remark(d, ASTRAY_UNSAFE, i, 0, r->unsafe);
      continue;
    }
    if (r->steps[i].right || r->steps[i].regret < 0.5) continue;
    kind = kind_of(r, i);
    if (goes_with_last(d, kind, i)) continue;
    say(&b, r, i, kind);
    add_remark(d, kind, i, r->steps[i].regret, buf_text(&b));
    buf_free(&b);
  }
  for (size_t i = 0; i < r->step_count && d->remark_count < DEBRIEF_MOST; i++) remark_certainty(d, i);
}

void debrief_where(struct buf *out, const struct remark *x)
{
  if (x->last == x->step) buf_addf(out, "step %zu", x->step + 1);
  else buf_addf(out, "steps %zu to %zu", x->step + 1, x->last + 1);
}

/* ---- what to take away ------------------------------------------------------------------ */

static const char *lesson(enum astray kind)
{
  static const char *const lessons[] = {
      "First make it safe, then look. No answer is worth a hand.",
      "A part is bought when a check has pointed at it, not before. Ask what a cheap check would have to "
      "show first.",
      "When a result speaks against your favourite, lower it, and say aloud what would have to be true for "
      "it to stand.",
      "Before you stop, ask: is there a check left that is cheaper than being wrong?",
      "Covers come off last. Ask, look and listen from outside until only what lies under there is left.",
      "A check is worth its minutes only if one of its results would change what you do next.",
      "When every result of a check leads to the same repair, make the repair.",
      "Of two checks take the one that parts the leading causes for fewer minutes.",
      "Say how sure you are before you look, and keep the score: that is how it comes to be true."};

  return lessons[kind];
}

/* The kinds of mistake that gave most away, dearest first, as lessons. */
static size_t lessons_from(struct debrief *d)
{
  double lost[ASTRAY_KINDS] = {0};
  size_t n = 0;

  for (size_t i = 0; i < d->remark_count; i++)
    lost[d->remarks[i].kind] += d->remarks[i].kind == ASTRAY_UNSAFE ? 1e6 : d->remarks[i].regret + 0.1;
  while (n < DEBRIEF_AWAY) {
    int most = 0;

    for (int i = 1; i < ASTRAY_KINDS; i++)
      if (lost[i] > lost[most]) most = i;
    if (lost[most] <= 0) break;
    if (lost[most] >= 1 && most != ASTRAY_UNSAFE)
      snprintf(d->away[n++], sizeof d->away[0], "%s (%.0f minutes given away.)", lesson((enum astray)most),
               lost[most]);
    else snprintf(d->away[n++], sizeof d->away[0], "%s", lesson((enum astray)most));
    lost[most] = 0;
  }
  return n;
}

/* The check that told most, and what it told. */
static bool lesson_of_best_check(const struct debrief *d, char *out, size_t size)
{
  const struct run *r = d->run->step_count > 1 ? d->run : &d->best;
  const struct step *best = NULL;
  const struct moved *moved = NULL;

  for (size_t i = 0; i < r->step_count; i++)
    for (size_t m = 0; m < r->steps[i].moved_count; m++)
      if (r->steps[i].entry.act == ACT_CHECK && r->steps[i].moved[m].fault >= 0 &&
          (!moved || fabs(r->steps[i].moved[m].after - r->steps[i].moved[m].before) >
                         fabs(moved->after - moved->before))) {
        best = &r->steps[i];
        moved = &best->moved[m];
      }
  if (!moved) return false;
  snprintf(
      out, size,
      "What told most: %s (%.1f min) moved \"%s\" from %.0f to %.0f %%. Remember it for such a complaint.",
      r->k->checks[best->entry.at].name, best->minutes, debrief_fault(r->k, moved->fault),
      100 * moved->before, 100 * moved->after);
  return true;
}

static bool lesson_of_proof(const struct debrief *d, char *out, size_t size)
{
  const struct run *r = d->run;

  if (r->culprit < 0 || r->end == RUN_OPEN) return false;
  snprintf(out, size, "%s: %s Proved by: %s", r->k->faults[r->culprit].name, r->k->faults[r->culprit].shows,
           r->k->faults[r->culprit].proof);
  return true;
}

static void take_away(struct debrief *d)
{
  size_t n = lessons_from(d);

  if (n < DEBRIEF_AWAY && lesson_of_best_check(d, d->away[n], sizeof d->away[0])) n++;
  if (n < DEBRIEF_AWAY && lesson_of_proof(d, d->away[n], sizeof d->away[0])) n++;
  if (n < DEBRIEF_AWAY) snprintf(d->away[n++], sizeof d->away[0], "%s", lesson(ASTRAY_REPEAT));
  if (n < DEBRIEF_AWAY) snprintf(d->away[n++], sizeof d->away[0], "%s", lesson(ASTRAY_SURE));
  if (n < DEBRIEF_AWAY) snprintf(d->away[n], sizeof d->away[0], "%s", lesson(ASTRAY_SOON));
}

int debrief_make(struct debrief *out, const struct run *run, const struct sitting *sitting,
                 struct assessor *assessor, struct err *e)
{
  int status;

  *out = (struct debrief){.k = run->k, .run = run, .sitting = sitting};
  status = sitting_begin(sitting, run->k, assessor, false, &out->best, e);
  if (status == 0) status = walk_to_the_end(&out->best, e);
  if (status) return status;
  find_remarks(out);
  take_away(out);
  return 0;
}

void debrief_free(struct debrief *d) { run_free(&d->best); }
