/* show.c - one entry in full; see listing.h. */
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "report/answer.h"
#include "report/listing.h"
#include "report/parts.h"

struct page { struct buf *out; const struct knowledge *k; int width; };

static void line(struct page *p, const char *title, const char *text)
{
  struct buf b = {0}, first = {0};

  if (!text || !*text) return;
  buf_addf(&first, "%-12s ", title);
  text_wrap(&b, text, p->width, buf_text(&first), "             ");
  buf_addf(p->out, "%s\n", buf_text(&b));
  buf_free(&first);
  buf_free(&b);
}

static void linef(struct page *p, const char *title, const char *format, ...) __attribute__((format(printf, 3, 4)));

static void linef(struct page *p, const char *title, const char *format, ...)
{
  struct buf b = {0};
  va_list args;

  va_start(args, format);
  buf_addv(&b, format, args);
  va_end(args);
  line(p, title, buf_text(&b));
  buf_free(&b);
}

static void lines(struct page *p, const char *title, const struct texts *t)
{
  for (size_t i = 0; i < t->count; i++) line(p, i ? "" : title, t->items[i]);
}

static void refs(struct page *p, const char *title, const struct refs *r)
{
  struct buf b = {0};

  for (size_t i = 0; i < r->count; i++) buf_addf(&b, "%s%s", i ? ", " : "", r->ids[i]);
  line(p, title, buf_text(&b));
  buf_free(&b);
}

static void rests_on(struct page *p, const struct origin *o)
{
  struct buf b = {0};

  answer_basis(&b, p->k, o);
  line(p, "rests on", buf_text(&b));
  linef(p, "stands at", "%s:%d", o->file, o->line);
  buf_free(&b);
}

static void sign_line(struct page *p, const struct sign *s, const char *what)
{
  struct buf b = {0};

  answer_basis(&b, p->k, &s->origin);
  linef(p, "", "%s: %.0f %% (%s)%s%s", what, 100 * s->chance, buf_text(&b), *s->why ? " " : "", s->why);
  buf_free(&b);
}

static void show_fault(struct page *p, int at)
{
  const struct knowledge *k = p->k;
  const struct fault *f = &k->faults[at];

  linef(p, "fault", "%s (%s)", f->name, f->id);
  linef(p, "system", "%s; sort: %s", f->system, f->sort);
  line(p, "is", f->is);
  line(p, "comes about", f->comes_about);
  line(p, "shows", f->shows);
  refs(p, "needs", &f->needs);
  linef(p, "base rate", "%.3g (estimate)", f->base_rate);
  for (size_t i = 0; i + 1 < f->looks_like.count; i += 2)
    linef(p, i ? "" : "looks like", "%s; %s parts them", f->looks_like.items[i], f->looks_like.items[i + 1]);
  linef(p, "repair", "%s (%s)", k->repairs[f->repair].name, f->repair_id);
  line(p, "proof", f->proof);
  rests_on(p, &f->origin);
  line(p, "signs", "(chance of showing when it is there)");
  for (size_t i = 0; i < k->sign_count; i++) {
    const struct sign *s = &k->signs[i];
    struct buf b = {0};

    if (s->fault != at) continue;
    if (s->complaint >= 0) buf_addf(&b, "complaint %s", s->complaint_id);
    else buf_addf(&b, "%s %s", s->check_id, s->result_id);
    sign_line(p, s, buf_text(&b));
    buf_free(&b);
  }
}

/* One of the limits of a check: what the reading means, for which engines, and what to know. */
static void show_bands(struct page *p, const struct bands *b)
{
  struct buf t = {0};

  for (size_t r = 0; r < b->results.count; r++) {
    buf_addf(&t, "%s%s", r ? " | " : "", b->results.items[r]);
    if (r < b->limits.count) buf_addf(&t, " | %g %s", b->limits.items[r], b->unit_name);
  }
  buf_add(&t, b->needs.count ? " (" : " (any engine");
  for (size_t i = 0; i < b->needs.count; i++) buf_addf(&t, "%s%s", i ? ", " : "", b->needs.ids[i]);
  linef(p, "limits", "%s)", buf_text(&t));
  buf_free(&t);
  line(p, "", b->note);
  rests_on(p, &b->origin);
}

/* The warnings of an entry and of the covers that come off for it, each with whose word goes before ours. */
static void show_cautions(struct page *p, const struct refs *own, const struct refs *off)
{
  int *ids = mem_array(p->k->caution_count + 1, sizeof *ids);
  struct bench_case any;
  static const struct refs none;
  size_t count = 0;

  case_begin(&any, p->k);
  part_add_cautions(p->k, &any, own, off ? off : &none, ids, &count);
  for (size_t i = 0; i < count; i++)
    linef(p, "CAUTION", "%s [%s]", p->k->cautions[ids[i]].text, p->k->cautions[ids[i]].defer_to);
  case_free(&any);
  free(ids);
}

static void show_check(struct page *p, int at)
{
  const struct knowledge *k = p->k;
  const struct check *c = &k->checks[at];
  bool banded = false;

  linef(p, "check", "%s (%s)", c->name, c->id);
  line(p, "asks", c->ask);
  show_cautions(p, &c->cautions, &c->off);
  linef(p, "kind", "%s, %s, engine %s, %.3g min", c->kind_id, c->system, c->engine, c->minutes);
  if (c->unit) linef(p, "measured in", "%s (tolerance %g)", c->unit_name, c->tolerance);
  if (c->possible.count == 2) linef(p, "possible", "%g to %g", c->possible.items[0], c->possible.items[1]);
  for (size_t i = 0; i < c->results.count; i++)
    linef(p, i ? "" : "results", "%s: %s. %s", c->results.items[i], c->labels.items[i], c->means.items[i]);
  for (size_t i = 0; i < k->bands_count; i++)
    if (k->bands[i].check == at) {
      if (!banded) line(p, "limits", "The maker's figure, from a spec card or with the case, comes before all of these.");
      banded = true;
      show_bands(p, &k->bands[i]);
    }
  refs(p, "needs", &c->needs);
  refs(p, "off first", &c->off);
  lines(p, "tools", &c->tools);
  lines(p, "steps", &c->steps);
  lines(p, "beware", &c->mistakes);
  line(p, "may destroy", c->destroys);
  rests_on(p, &c->origin);
}

static void show_complaint(struct page *p, int at)
{
  const struct complaint *c = &p->k->complaints[at];

  linef(p, "complaint", "%s (%s)", c->name, c->id);
  line(p, "asks", c->ask);
  lines(p, "owners say", &c->says);
  refs(p, "mixed up with", &c->near);
  line(p, "led to by", "(chance that the owner says so when it is there)");
  for (size_t i = 0; i < p->k->sign_count; i++)
    if (p->k->signs[i].complaint == at) sign_line(p, &p->k->signs[i], p->k->signs[i].fault_id);
  rests_on(p, &c->origin);
}

static void show_class(struct page *p, int at)
{
  const struct machine_class *m = &p->k->classes[at];

  linef(p, "machine", "%s (%s)", m->name, m->id);
  lines(p, "also called", &m->also_called);
  refs(p, "has", &m->has);
  refs(p, "may have", &m->may);
  rests_on(p, &m->origin);
}

static void show_cover(struct page *p, int at)
{
  const struct cover *c = &p->k->covers[at];

  linef(p, "cover", "%s (%s)", c->name, c->id);
  show_cautions(p, &c->cautions, NULL);
  if (c->under >= 0) line(p, "under", p->k->covers[c->under].name);
  linef(p, "minutes", "%g off, %g on; the engine %s run without it", c->minutes_off, c->minutes_on,
        c->run_without ? "may" : "must not");
  lines(p, "tools", &c->tools);
  lines(p, "refit", &c->refit);
  line(p, "may damage", c->may_damage);
  rests_on(p, &c->origin);
}

static void show_repair(struct page *p, int at)
{
  const struct repair *r = &p->k->repairs[at];

  linef(p, "repair", "%s (%s)", r->name, r->id);
  show_cautions(p, &r->cautions, &r->off);
  linef(p, "minutes", "%g, parts about %g", r->minutes, r->parts_cost);
  refs(p, "off first", &r->off);
  lines(p, "parts", &r->parts);
  lines(p, "also", &r->consumables);
  lines(p, "tools", &r->tools);
  lines(p, "steps", &r->steps);
  line(p, "reuse", r->reuse);
  rests_on(p, &r->origin);
}

static void show_caution(struct page *p, int at)
{
  const struct caution *c = &p->k->cautions[at];

  linef(p, "CAUTION", "%s", c->text);
  line(p, "defer to", c->defer_to);
  rests_on(p, &c->origin);
}

static void show_rule(struct page *p, int at)
{
  linef(p, "rule", "%s", p->k->rules[at].id);
  line(p, "reason", p->k->rules[at].reason);
  rests_on(p, &p->k->rules[at].origin);
}

static void show_feature(struct page *p, int at)
{
  const struct feature *f = &p->k->features[at];

  linef(p, "feature", "%s (%s), group %s%s", f->name, f->id, f->group, f->one_of ? ", one of" : "");
  line(p, "asks", f->ask);
  refs(p, "brings", &f->brings);
  refs(p, "bars", &f->bars);
}

static void rested(struct page *p, int source, const struct origin *o, const char *what)
{
  if (o->source == source) linef(p, "", "%s%s%s (%s:%d)", what, o->place ? ", " : "", o->place ? o->place : "", o->file, o->line);
}

static void show_source(struct page *p, int at)
{
  const struct knowledge *k = p->k;
  const struct source *s = &k->sources[at];
  size_t before;

  linef(p, "source", "%s (%s)", s->title, s->id);
  line(p, "edition", s->edition);
  linef(p, "kind", "%s; %s", s->kind, strcmp(s->status, "memory") == 0 ? "remembered, not read" : s->status);
  line(p, "note", s->note);
  line(p, "rests on it", "(id, place in the source, where it stands)");
  before = p->out->len;
  for (size_t i = 0; i < k->caution_count; i++) rested(p, at, &k->cautions[i].origin, k->cautions[i].id);
  for (size_t i = 0; i < k->cover_count; i++) rested(p, at, &k->covers[i].origin, k->covers[i].id);
  for (size_t i = 0; i < k->check_count; i++) rested(p, at, &k->checks[i].origin, k->checks[i].id);
  for (size_t i = 0; i < k->bands_count; i++) rested(p, at, &k->bands[i].origin, k->bands[i].id);
  for (size_t i = 0; i < k->fault_count; i++) rested(p, at, &k->faults[i].origin, k->faults[i].id);
  for (size_t i = 0; i < k->repair_count; i++) rested(p, at, &k->repairs[i].origin, k->repairs[i].id);
  for (size_t i = 0; i < k->sign_count; i++) rested(p, at, &k->signs[i].origin, k->signs[i].fault_id);
  for (size_t i = 0; i < k->rule_count; i++) rested(p, at, &k->rules[i].origin, k->rules[i].id);
  if (p->out->len == before) line(p, "", "nothing among facts and rules");
}

static const struct { enum entry_kind kind; void (*show)(struct page *, int); } pages[] = {
    {ENTRY_FAULT, show_fault},   {ENTRY_CHECK, show_check},     {ENTRY_COMPLAINT, show_complaint},
    {ENTRY_CLASS, show_class},   {ENTRY_COVER, show_cover},     {ENTRY_REPAIR, show_repair},
    {ENTRY_RULE, show_rule},     {ENTRY_CAUTION, show_caution}, {ENTRY_FEATURE, show_feature},
    {ENTRY_SOURCE, show_source}};

enum { PAGES = sizeof pages / sizeof pages[0] };

static int nothing_so_named(const struct knowledge *k, const char *id, struct err *e)
{
  const char *best = NULL;
  int limit = 99;

  for (size_t i = 0; i < PAGES; i++) {
    const char **ids, *near;
    size_t count;

    knowledge_ids(k, pages[i].kind, &ids, &count);
    near = text_nearest(id, ids, count);
    if (near && text_distance(id, near, 10) < limit) {
      limit = text_distance(id, near, 10);
      best = near;
    }
    free(ids);
  }
  return err_set(e, EX_DATAERR, NULL, 0,
                 "nothing is called \"%.60s\"%s%s%s \"pullcord list faults\" and the other lists show the ids.", id,
                 best ? "; did you mean \"" : "", best ? best : "", best ? "\"?" : ".");
}

int listing_show(struct buf *out, const struct knowledge *k, const char *id, int width, struct err *e)
{
  struct page p = {out, k, width};
  bool found = false;

  for (size_t i = 0; i < PAGES; i++) {
    int at = knowledge_find(k, pages[i].kind, id);

    if (at < 0) continue;
    if (found) buf_add(out, "\n");
    pages[i].show(&p, at);
    found = true;
  }
  return found ? 0 : nothing_so_named(k, id, e);
}
