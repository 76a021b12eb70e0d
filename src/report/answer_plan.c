/* answer_plan.c - see answer_plan.h. */
#include "report/answer_plan.h"

#include "base/text.h"
#include "report/parts.h"

static const char *const kinds[] = {"check", "repair", "prove", "look-further", "give-up"};

static const char *step_id(const struct knowledge *k, const struct advice_step *s)
{
  if (s->kind == ADVICE_CHECK) return k->checks[s->at].id;
  return s->kind == ADVICE_REPAIR ? k->repairs[s->at].id : kinds[s->kind];
}

void answer_step(struct buf *out, const struct knowledge *k, const struct advice_step *s)
{
  switch (s->kind) {
  case ADVICE_CHECK: buf_addf(out, "check: %s", k->checks[s->at].name); break;
  case ADVICE_REPAIR: buf_addf(out, "repair on trial: %s", k->repairs[s->at].name); break;
  case ADVICE_PROVE: buf_add(out, "run it as the owner does, nothing being changed"); break;
  case ADVICE_LOOK_FURTHER: buf_add(out, "strip it further and look for something not listed"); break;
  case ADVICE_GIVE_UP: buf_add(out, "give up and tell the owner"); break;
  }
}

static void line(struct buf *out, const char *text, int width, const char *first, const char *rest)
{
  struct buf b = {0};

  text_wrap(&b, text, width, first, rest);
  buf_addf(out, "%s\n", buf_text(&b));
  buf_free(&b);
}

void answer_instead(struct buf *out, const struct knowledge *k, const struct assessment *a, int width)
{
  const struct advice_option *o = a->advice.count ? &a->advice.options[0] : NULL;
  struct buf b = {0};

  if (!o || o->step.kind == ADVICE_CHECK) return;
  buf_add(&b, "Cheapest now, without another check: ");
  answer_step(&b, k, &o->step);
  buf_addf(&b, " (%.3g min", o->minutes);
  if (o->step.kind == ADVICE_REPAIR) buf_addf(&b, ", cures it in %.0f of 100", 100 * o->chance);
  buf_add(&b, "). To be surer first:");
  line(out, buf_text(&b), width, "", "  ");
  buf_free(&b);
}

static void planned_line(struct buf *out, const struct knowledge *k, const struct advice_planned *p, int width)
{
  struct buf b = {0};

  answer_step(&b, k, &p->step);
  buf_addf(&b, " (%.3g min)", p->minutes);
  if (p->step.kind == ADVICE_CHECK && p->result >= 0)
    buf_addf(&b, "; most likely: %s", k->checks[p->step.at].labels.items[p->result]);
  line(out, buf_text(&b), width, "  - ", "    ");
  buf_free(&b);
}

static void beside_line(struct buf *out, const struct knowledge *k, const struct advice *v, int width)
{
  struct buf b = {0};

  if (v->beside_count == 0) return;
  buf_add(&b, "While you are in there: ");
  for (size_t i = 0; i < v->beside_count; i++)
    buf_addf(&b, "%s%s (%.2g min now, %.2g at another time)", i ? "; " : "", k->checks[v->beside[i].check].name,
             v->beside[i].minutes, v->beside[i].alone);
  line(out, buf_text(&b), width, "", "  ");
  buf_free(&b);
}

void answer_plan(struct buf *out, const struct knowledge *k, const struct assessment *a, int width)
{
  const struct advice *v = &a->advice;
  struct buf b = {0};

  buf_addf(out, "Plan: about %.0f minutes to the end; %.0f if nothing more is checked.\n", v->cost, v->no_checks);
  for (size_t i = 0; i < v->plan_count; i++) planned_line(out, k, &v->plan[i], width);
  beside_line(out, k, v, width);
  if (v->stop_checking && !v->give_up) line(out, "No check pays for itself now: try the first repair.", width, "", "  ");
  if (v->give_up) {
    buf_addf(&b, "It costs more than the machine is worth (%.0f minutes): tell the owner before going on.", v->give_up_cost);
    line(out, buf_text(&b), width, "", "  ");
  }
  buf_free(&b);
}

/* ---- JSON ----------------------------------------------------------------------------- */

static struct json *step_json(const struct knowledge *k, const struct advice_step *s)
{
  struct json *o = json_object();

  json_put_text(o, "kind", kinds[s->kind]);
  json_put_text(o, "id", step_id(k, s));
  return o;
}

static struct json *option_json(const struct knowledge *k, const struct advice_option *x)
{
  struct json *o = step_json(k, &x->step), *also = json_list();

  json_put_number(o, "minutes", x->minutes);
  json_put_number(o, "expected_minutes", x->cost);
  json_put_number(o, "without_it", x->without);
  json_put_number(o, "break_even_minutes", x->break_even);
  if (x->step.kind == ADVICE_REPAIR) {
    json_put_number(o, "chance_that_it_cures", x->chance);
    for (size_t i = 0; i < x->also_count; i++) json_push_text(also, k->repairs[x->also[i]].id);
  }
  json_put(o, "with", also);
  return o;
}

static struct json *planned_json(const struct knowledge *k, const struct advice_planned *p)
{
  struct json *o = step_json(k, &p->step);

  json_put_number(o, "minutes", p->minutes);
  json_put_number(o, "chance_of_getting_here", p->chance);
  if (p->step.kind == ADVICE_CHECK && p->result >= 0)
    json_put_text(o, "most_likely", k->checks[p->step.at].results.items[p->result]);
  return o;
}

struct json *answer_plan_json(const struct knowledge *k, const struct assessment *a)
{
  const struct advice *v = &a->advice;
  struct json *o = json_object(), *options = json_list(), *steps = json_list(), *beside = json_list();

  json_put_text(o, "method", advice_method_name(v->method));
  json_put_number(o, "expected_minutes", v->cost);
  json_put_number(o, "without_more_checks", v->no_checks);
  json_put_bool(o, "stop_checking", v->stop_checking);
  json_put_bool(o, "give_up", v->give_up);
  json_put_number(o, "give_up_minutes", v->give_up_cost);
  for (size_t i = 0; i < v->count && i < 8; i++) json_push(options, option_json(k, &v->options[i]));
  json_put(o, "options", options);
  for (size_t i = 0; i < v->plan_count; i++) json_push(steps, planned_json(k, &v->plan[i]));
  json_put(o, "steps", steps);
  for (size_t i = 0; i < v->beside_count; i++) {
    struct json *x = json_object();

    json_put_text(x, "check", k->checks[v->beside[i].check].id);
    json_put_number(x, "minutes", v->beside[i].minutes);
    json_put_number(x, "alone", v->beside[i].alone);
    json_push(beside, x);
  }
  json_put(o, "while_in_there", beside);
  return o;
}
