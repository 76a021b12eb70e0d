/* answer_text.c - the answer in words; see answer.h. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "base/text.h"
#include "model/service.h"
#include "report/answer.h"
#include "report/answer_plan.h"
#include "report/parts.h"
#include "units/parse.h"

void answer_basis(struct buf *out, const struct knowledge *k, const struct origin *o)
{
  buf_add(out, basis_name(o->basis));
  if (o->source >= 0) buf_addf(out, ": %s", k->sources[o->source].title);
  if (o->place) buf_addf(out, ", %s", o->place);
}

/* Whole per cent: the estimates behind it are no better. Returns out. */
static const char *chance_words(char out[16], double p)
{
  if (p >= 0.995) strcpy(out, "over 99 %");
  else if (p < 0.01) strcpy(out, "under 1 %");
  else snprintf(out, 16, "%.0f %%", 100 * p);
  return out;
}

void answer_ranking(struct buf *out, const struct knowledge *k, const struct assessment *a, size_t most, int width)
{
  int name = width < 50 ? 18 : width < 78 ? width - 32 : 46; /* columns; two chances stand behind it */
  size_t shown = part_shown(k, a, most);

  buf_addf(out, "%-*s %10s %10s\n", name + 5, "Most likely:", "behind it", "is there");
  for (size_t i = 0; i < shown; i++) {
    const struct ranked *r = &a->ranking[i];
    char behind[16], there[16];

    chance_words(behind, r->blame);
    chance_words(there, r->belief);
    if (a->bounded) snprintf(there, sizeof there, "%.0f-%.0f %%", 100 * r->low, 100 * r->high);
    buf_addf(out, "  %zu. %-*.*s %10s %10s\n", i + 1, name, name, part_fault_name(k, r->fault), behind, there);
  }
  if (a->bounded) buf_add(out, "  Too many unsound results to weigh exactly: limits, and the middle of them.\n");
}

static void bullet(struct buf *out, const char *text, int width, const char *first, const char *rest)
{
  struct buf b = {0};

  text_wrap(&b, text, width, first, rest);
  buf_addf(out, "%s\n", buf_text(&b));
  buf_free(&b);
}

static bool ends_sentence(const char *text)
{
  size_t n = strlen(text);

  return n > 0 && strchr(".!?", text[n - 1]);
}

static void list(struct buf *out, const char *title, const struct texts *t, int width)
{
  struct buf b = {0};

  if (t->count == 0) return;
  for (size_t i = 0; i < t->count; i++) {
    const char *between = i == 0 ? "" : b.text[b.len - 1] == '.' ? " " : "; ";

    buf_addf(&b, "%s%s", between, t->items[i]);
  }
  bullet(out, buf_text(&b), width, title, "         ");
  buf_free(&b);
}

static void steps(struct buf *out, const struct texts *t, int width)
{
  for (size_t i = 0; i < t->count; i++) {
    char number[32];

    snprintf(number, sizeof number, "  %2zu. ", i + 1);
    bullet(out, t->items[i], width, number, "      ");
  }
}

static void cautions(struct buf *out, const struct knowledge *k, const int *ids, size_t count, int width)
{
  for (size_t i = 0; i < count; i++) {
    const struct caution *c = &k->cautions[ids[i]];
    struct buf b = {0};

    buf_addf(&b, "%s [%s]", c->text, c->defer_to);
    bullet(out, buf_text(&b), width, "  CAUTION: ", "           ");
    buf_free(&b);
  }
}

static void cautions_of(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                        const struct refs *own, const struct refs *off, int width)
{
  int *ids = mem_array(k->caution_count + 1, sizeof *ids);
  size_t count = 0;

  part_add_cautions(k, c, own, off, ids, &count);
  cautions(out, k, ids, count, width);
  free(ids);
}

static void covers(struct buf *out, const struct knowledge *k, const struct bench_case *c, const struct refs *off,
                   int width)
{
  int *order = mem_array(k->cover_count + 1, sizeof *order);
  size_t count = part_covers(k, c, off, order);
  struct buf b = {0};

  for (size_t i = 0; i < count; i++) buf_addf(&b, "%s%s", i ? ", then " : "", k->covers[order[i]].name);
  if (count) bullet(out, buf_text(&b), width, "  off:   ", "         ");
  buf_free(&b);
  free(order);
}

/* Tools of the list that this shop does not have. */
static void lacking(struct buf *out, const struct knowledge *k, const struct texts *tools, int width)
{
  for (size_t i = 0; i < k->no_tool_count; i++)
    for (size_t t = 0; t < tools->count; t++) {
      const struct no_tool *lacks = &k->no_tools[i];
      struct buf b = {0};

      if (strcasecmp(tools->items[t], lacks->name) != 0) continue;
      buf_addf(&b, "%s is not in the shop", tools->items[t]);
      if (lacks->borrow > 0) buf_addf(&b, "; the %g minutes to get it are counted", lacks->borrow);
      bullet(out, buf_text(&b), width, "  lacks: ", "         ");
      buf_free(&b);
    }
}

void answer_check(struct buf *out, const struct knowledge *k, const struct bench_case *bench,
                  const struct next_step *s, int width)
{
  const struct check *c = &k->checks[s->check];

  cautions_of(out, k, bench, &c->cautions, &c->off, width);
  covers(out, k, bench, &c->off, width);
  list(out, "  tools: ", &c->tools, width);
  lacking(out, k, &c->tools, width);
  steps(out, &c->steps, width);
  list(out, "  beware: ", &c->mistakes, width);
  if (*c->destroys) bullet(out, c->destroys, width, "  may not survive: ", "         ");
  for (int i = 0; i < s->outcome_count; i++) {
    const struct next_outcome *o = &s->outcomes[i];
    struct buf b = {0};
    char chance[16];

    buf_addf(&b, "%s (%s): %s%s Then first: %s.", c->labels.items[o->result], chance_words(chance, o->chance),
             c->means.items[o->result], ends_sentence(c->means.items[o->result]) ? "" : ".",
             part_fault_name(k, o->fault));
    bullet(out, buf_text(&b), width, "  if ", "     ");
    buf_free(&b);
  }
  for (size_t i = 0; s->outcome_count == 0 && i < c->results.count; i++) {
    struct buf b = {0};

    buf_addf(&b, "%s: %s", c->labels.items[i], c->means.items[i]);
    bullet(out, buf_text(&b), width, "  if ", "     ");
    buf_free(&b);
  }
  if (s->ask_first >= 0) bullet(out, k->rules[s->ask_first].reason, width, "  first, because: ", "     ");
}

/* What goes back on after the repair: all that is off by then, innermost first. */
static void back_on(struct buf *out, const struct knowledge *k, const struct bench_case *c, const struct refs *off,
                    int width)
{
  int *order = mem_array(k->cover_count + 1, sizeof *order);
  size_t count = part_covers(k, c, off, order);
  struct bench_case by_then = *c;
  struct buf b = {0};

  by_then.off = mem_array(k->cover_count + 1, sizeof *by_then.off);
  memcpy(by_then.off, c->off, k->cover_count * sizeof *by_then.off);
  for (size_t i = 0; i < count; i++) by_then.off[order[i]] = true;
  count = part_to_refit(k, &by_then, order);
  for (size_t i = 0; i < count; i++) buf_addf(&b, "%s%s", i ? ", then " : "", k->covers[order[i]].name);
  if (count) bullet(out, buf_text(&b), width, "  back:  ", "         ");
  buf_free(&b);
  free(by_then.off);
  free(order);
}

void answer_proof(struct buf *out, const struct knowledge *k, const struct bench_case *c, int fault, int width)
{
  struct buf b = {0};

  bullet(out, k->faults[fault].proof, width, "  proof: ", "         ");
  for (size_t i = 0; i < c->complaint_count; i++)
    buf_addf(&b, "%s%s", i ? "; " : "Run it as the owner told it, and this stays away: ",
             k->complaints[c->complaints[i]].name);
  if (b.len) {
    buf_add(&b, ".");
    bullet(out, buf_text(&b), width, "         ", "         ");
  }
  buf_free(&b);
}

/* The service check in one line. */
static void service(struct buf *out, const struct knowledge *k, const struct bench_case *c, int width)
{
  const struct service_item *x;
  struct buf b = {0};

  buf_add(&b, "service check: ");
  for (size_t i = 0; (x = service_item(k, c, i)); i++) buf_addf(&b, "%s%s", i ? ", " : "", x->name);
  for (size_t i = 0; i < b.len; i++)
    if (b.text[i] >= 'A' && b.text[i] <= 'Z') b.text[i] = (char)(b.text[i] - 'A' + 'a');
  bullet(out, buf_text(&b), width, "  last:  ", "         ");
  buf_free(&b);
}

void answer_repair(struct buf *out, const struct knowledge *k, const struct bench_case *c, int fault, int width)
{
  const struct fault *f = &k->faults[fault];
  const struct repair *r = &k->repairs[f->repair];

  buf_addf(out, "Repair: %s (about %.0f minutes)\n", r->name, r->minutes);
  cautions_of(out, k, c, &r->cautions, &r->off, width);
  covers(out, k, c, &r->off, width);
  list(out, "  parts: ", &r->parts, width);
  list(out, "  also:  ", &r->consumables, width);
  list(out, "  tools: ", &r->tools, width);
  lacking(out, k, &r->tools, width);
  steps(out, &r->steps, width);
  if (*r->reuse) bullet(out, r->reuse, width, "  reuse: ", "         ");
  back_on(out, k, c, &r->off, width);
  answer_proof(out, k, c, fault, width);
  service(out, k, c, width);
}

void answer_refit(struct buf *out, const struct knowledge *k, const struct bench_case *c, int width)
{
  int *order = mem_array(k->cover_count + 1, sizeof *order);
  size_t count = part_to_refit(k, c, order);

  if (count == 0) buf_add(out, "Nothing is off.\n");
  for (size_t i = 0; i < count; i++) {
    const struct cover *x = &k->covers[order[i]];
    char number[32];

    snprintf(number, sizeof number, "  %zu. ", i + 1);
    bullet(out, x->name, width, number, "     ");
    for (size_t j = 0; j < x->cautions.count; j++)
      bullet(out, k->cautions[x->cautions.at[j]].text, width, "     CAUTION: ", "       ");
    for (size_t j = 0; j < x->refit.count; j++) bullet(out, x->refit.items[j], width, "     - ", "       ");
    if (!x->run_without) bullet(out, "The engine must not run before this is back.", width, "     - ", "       ");
  }
  free(order);
}

void answer_result(struct buf *out, const struct knowledge *k, const struct case_result *r)
{
  const struct check *c = &k->checks[r->check];
  char text[64];

  if (r->sure <= 0) buf_addf(out, "%s: don't know", c->name);
  else if (r->result >= 0) buf_addf(out, "%s: %s", c->name, c->labels.items[r->result]);
  else {
    amount_format(r->value * c->unit->factor + c->unit->offset, c->unit, text, sizeof text);
    buf_addf(out, "%s: %s", c->name, text);
  }
  if (r->sure > 0 && r->sure < 0.999) buf_add(out, " (not quite sure)");
}

/* ---- why ------------------------------------------------------------------------------ */

static void why_line(struct buf *out, const struct knowledge *k, const struct evidence *e, int fault,
                     double db, int width)
{
  const struct sign *s = part_sign(k, e, fault);
  struct buf what = {0}, line = {0};
  char weight[32];

  part_evidence(&what, k, e);
  snprintf(weight, sizeof weight, "%+6.1f db  ", fabs(db) < 0.05 ? 0.0 : db);
  buf_add(&line, buf_text(&what));
  if (e->kind != EVIDENCE_COMPLAINT && e->sure < 0.999) buf_addf(&line, " (counts %.0f %%)", 100 * e->sure);
  if (e->rule >= 0 && e->kind != EVIDENCE_RESULT) {
    buf_addf(&line, ". Rule %s: %s (", k->rules[e->rule].id, k->rules[e->rule].reason);
    answer_basis(&line, k, &k->rules[e->rule].origin);
    buf_add(&line, ")");
  } else if (s && s->result == e->result) {
    buf_addf(&line, ". It shows so in %.0f of 100 such cases%s%s (", 100 * s->chance, *s->why ? ": " : "", s->why);
    answer_basis(&line, k, &s->origin);
    buf_add(&line, ")");
  }
  if (e->weakened_by >= 0) buf_addf(&line, ". Counts less: %s", k->rules[e->weakened_by].reason);
  bullet(out, buf_text(&line), width, weight, "           ");
  buf_free(&what);
  buf_free(&line);
}

static void why_unexplained(struct buf *out, const struct knowledge *k, const struct assessment *a,
                            int fault, int width)
{
  struct buf b = {0};

  for (size_t i = 0; i < a->net.evidence_count; i++)
    if (part_unexplained(k, &a->net.evidence[i], fault)) {
      if (b.len) buf_add(&b, "; ");
      part_evidence(&b, k, &a->net.evidence[i]);
    }
  if (b.len) bullet(out, buf_text(&b), width, "It leaves unexplained: ", "  ");
  buf_free(&b);
}

/* What of the unsound is another's doing, so that it says little for this fault. */
static void why_accounted(struct buf *out, const struct knowledge *k, struct assessment *a, int fault, int width)
{
  struct accounted *by = mem_array(a->net.evidence_count + 1, sizeof *by);
  size_t n = deeper_accounted(a, by);

  for (size_t i = 0; i < n; i++) {
    const struct evidence *e = &a->net.evidence[by[i].evidence];
    struct buf what = {0}, line = {0};

    if (by[i].chance < 0.6 || by[i].fault == fault || !part_sign(k, e, fault)) continue;
    part_evidence(&what, k, e);
    buf_addf(&line, "\"%s\" is already accounted for by \"%s\", so it says little here.", buf_text(&what),
             part_fault_name(k, by[i].fault));
    bullet(out, buf_text(&line), width, "", "  ");
    buf_free(&what);
    buf_free(&line);
  }
  free(by);
}

static void why_hangs_on(struct buf *out, const struct knowledge *k, struct assessment *a, int width)
{
  struct sensitivity s;
  struct buf line = {0};
  int evidence;

  if (!deeper_hangs_on(a, &s, &evidence)) return;
  buf_add(&line, "The first place hangs most on ");
  part_estimate(&line, k, a, &s, evidence);
  buf_addf(&line, ": at %.2g instead of %.2g (%.1f times the odds) \"%s\" would lead.", s.tipped, s.now, s.factor,
           part_fault_name(k, a->ranking[1].fault));
  bullet(out, buf_text(&line), width, "", "  ");
  buf_free(&line);
}

static void why_change(struct buf *out, const struct knowledge *k, const struct assessment *a, int width)
{
  size_t said = 0;

  for (size_t i = 0; i < a->plan.count && said < 3; i++)
    for (int o = 0; o < a->plan.steps[i].outcome_count; o++) {
      const struct next_outcome *n = &a->plan.steps[i].outcomes[o];
      const struct check *c = &k->checks[a->plan.steps[i].check];
      struct buf b = {0};

      if (n->fault == a->ranking[0].fault || n->chance < 0.02) continue;
      buf_addf(&b, "%s: %s would put \"%s\" first", c->name, c->labels.items[n->result], part_fault_name(k, n->fault));
      if (said == 0) buf_add(out, "What would change the ranking:\n");
      bullet(out, buf_text(&b), width, "  ", "    ");
      buf_free(&b);
      said++;
      break;
    }
}

/* What was only concluded and moves this fault little is not worth a line of its own. */
static bool beside(const struct evidence *e, int fault, double db)
{
  if (e->kind == EVIDENCE_SPEAKS) return e->subject != fault;
  return e->kind == EVIDENCE_IMPLIED && fabs(db) < 0.5;
}

void answer_why(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                struct assessment *a, int fault, int width)
{
  size_t places = a->net.count, n = a->net.evidence_count;
  size_t p = fault >= 0 && a->net.place_of[fault] >= 0 ? (size_t)a->net.place_of[fault] : places - 1;
  double *odds = assess_odds(a), rest = 0;
  char chance[16];

  (void)c;
  if (fault >= 0 && a->net.place_of[fault] < 0) {
    int r = conclusion_find(&a->drawn, RULES_OUT_FAULT, fault, 0);

    buf_addf(out, "%s cannot be: %s\n", k->faults[fault].name,
             r >= 0 && a->drawn.items[r].rule >= 0 ? k->rules[a->drawn.items[r].rule].reason
                                                   : "this machine has not got the part.");
  } else if (odds) {
    buf_addf(out, "%s\n", part_fault_name(k, fault));
    if (fault >= 0) bullet(out, k->faults[fault].is, width, "  ", "  ");
    bullet(out, "Weights in decibans: +10 makes it ten times as likely against the rest, -10 a tenth.", width, "  ", "  ");
    buf_addf(out, "%+6.1f db  to begin with: the base rate for this machine (estimate)\n", odds[p]);
    for (size_t i = 0; i < n; i++) {
      double db = odds[(i + 1) * places + p] - odds[i * places + p];

      if (beside(&a->net.evidence[i], fault, db)) rest += db;
      else why_line(out, k, &a->net.evidence[i], fault, db, width);
    }
    if (fabs(rest) >= 0.05) buf_addf(out, "%+6.1f db  what else follows from these, together\n", rest);
    buf_addf(out, "%+6.1f db  in all: the chance that it is there is %s\n", odds[n * places + p],
             chance_words(chance, a->belief[p]));
    why_unexplained(out, k, a, fault, width);
    why_accounted(out, k, a, fault, width);
    if (fault == a->ranking[0].fault) why_hangs_on(out, k, a, width);
    why_change(out, k, a, width);
  }
  free(odds);
}

/* ---- notes ---------------------------------------------------------------------------- */

static void note(struct buf *out, const struct knowledge *k, const char *title, const char *subject, int rule,
                 int width)
{
  struct buf b = {0};

  buf_addf(&b, "%s%s%s", title, subject, *subject ? ": " : "");
  if (rule >= 0) buf_add(&b, k->rules[rule].reason);
  bullet(out, buf_text(&b), width, "! ", "  ");
  buf_free(&b);
}

static const char *person(const char *word)
{
  static const struct { const char *word, *name; } names[] = {
      {"licensed-electrician", "a licensed electrician"}, {"licensed-gas-fitter", "a licensed gas fitter"},
      {"engine-machinist", "an engine machinist"},        {"makers-workshop", "the maker's workshop"},
      {"doctor-now", "a doctor, now"},                    {"scrap-decision", "the owner: is it worth it?"}};

  for (size_t i = 0; i < sizeof names / sizeof names[0]; i++)
    if (strcmp(names[i].word, word) == 0) return names[i].name;
  return word;
}

/* Several rules may give one caution: they stand together. */
static bool warns(const struct assessment *a, size_t i)
{
  const struct conclusion *d = &a->drawn.items[i];

  return d->kind == WARN && (i == 0 || d[-1].kind != WARN || d[-1].a != d->a);
}

void answer_warnings(struct buf *out, const struct knowledge *k, const struct assessment *a, int width)
{
  for (size_t i = 0; i < a->drawn.count; i++)
    if (warns(a, i)) bullet(out, k->cautions[a->drawn.items[i].a].text, width, "! CAUTION: ", "  ");
}

void answer_notes(struct buf *out, const struct knowledge *k, const struct assessment *a, bool brief, int width)
{
  for (size_t i = 0; i < a->drawn.count; i++) {
    const struct conclusion *d = &a->drawn.items[i];
    struct buf b = {0};

    if (d->kind == HAND_OVER) note(out, k, "Hand over to ", person(d->word), d->rule, width);
    if (d->kind == CLASH) {
      buf_addf(&b, "%s and %s", k->checks[d->a].name, k->checks[d->b].name);
      note(out, k, "Do not agree: ", buf_text(&b), d->rule, width);
    }
    if (warns(a, i)) {
      if (brief) part_caution_short(&b, k->cautions[d->a].text);
      else buf_add(&b, k->cautions[d->a].text);
      bullet(out, buf_text(&b), width, "! CAUTION: ", "  ");
    }
    if (d->kind == ADVISE) note(out, k, "", "", d->rule, width);
    buf_free(&b);
  }
}

static const char *verdict(enum disposition d)
{
  switch (d) {
  case DISPOSITION_REPAIR: return "Repair the first cause.";
  case DISPOSITION_NOTHING_BROKEN: return "Nothing points to a broken part: look at how it is used or set.";
  case DISPOSITION_HAND_OVER: return "Stop here and hand over.";
  case DISPOSITION_KEEP_LOOKING: break;
  }
  return "Keep looking.";
}

void answer_together(struct buf *out, const struct knowledge *k, struct assessment *a, int width)
{
  struct together sets[4];
  size_t n = deeper_together(a, k, sets, 4);
  char chance[16];

  for (size_t i = 0; i < n && (i == 0 || sets[i].chance >= 0.03); i++) {
    struct buf line = {0};

    for (size_t j = 0; j < sets[i].count; j++)
      buf_addf(&line, "%s%s", j ? " and " : "", part_fault_name(k, sets[i].fault[j]));
    if (sets[i].count == 0) buf_add(&line, "none of the causes in play");
    buf_addf(&line, "%s: %s", sets[i].count > 1 ? " together" : sets[i].count ? " alone" : "",
             chance_words(chance, sets[i].chance));
    bullet(out, buf_text(&line), width, "  ", "    ");
    buf_free(&line);
  }
}

/* After a hand-over nothing more is asked or planned. */
static void what_next(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                      const struct assessment *a, int width)
{
  if (a->disposition == DISPOSITION_HAND_OVER) return;
  if (a->disposition == DISPOSITION_REPAIR) {
    answer_repair(out, k, c, a->ranking[0].fault, width);
    return;
  }
  if (a->plan.count) {
    const struct next_step *s = &a->plan.steps[0];
    struct buf next = {0};

    answer_instead(out, k, a, width);
    buf_addf(&next, "%s (%g min", k->checks[s->check].ask, s->minutes);
    if (s->saving >= 0.5) buf_addf(&next, ", saves about %.0f min", s->saving);
    buf_add(&next, ")");
    bullet(out, buf_text(&next), width, "Next: ", "  ");
    buf_free(&next);
    answer_check(out, k, c, s, width);
    buf_add(out, "\n");
  }
  answer_plan(out, k, a, width);
}

/* Somebody is hurt: said before anything about the machine, and once more in its place. */
static void injury_first(struct buf *out, const struct knowledge *k, const struct assessment *a, int width)
{
  for (size_t i = 0; i < a->drawn.count; i++) {
    const struct conclusion *d = &a->drawn.items[i];

    if (d->kind != HAND_OVER || strcmp(d->word, "doctor-now") != 0) continue;
    note(out, k, "Hand over to ", person(d->word), d->rule, width);
    buf_add(out, "\n");
  }
}

void answer_text(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                 struct assessment *a, int width)
{
  char chance[16];

  assess_advise(a, c);
  injury_first(out, k, a, width);
  answer_words(out, k, c, width);
  answer_ranking(out, k, a, 6, width);
  buf_addf(out, "     %-46s %10s\n\n", "nothing broken", chance_words(chance, a->sound));
  buf_add(out, "Of these causes, just:\n");
  answer_together(out, k, a, width);
  buf_add(out, "\n");
  answer_readings(out, k, c, a, width);
  answer_notes(out, k, a, false, width);
  buf_addf(out, "%s\n\n", verdict(a->disposition));
  answer_why(out, k, c, a, a->ranking[0].fault, width);
  buf_add(out, "\n");
  what_next(out, k, c, a, width);
}
