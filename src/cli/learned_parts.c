/* learned_parts.c - what "learned" shows, worked out, and as JSON; see cmd_learned.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "cli/cmd_learned.h"

/* More often first; of equals the one that comes first in the knowledge. */
static int by_times(const void *x, const void *y)
{
  const struct learned_share *a = x, *b = y;

  return a->times != b->times ? (a->times > b->times ? -1 : 1) : a->fault - b->fault;
}

struct learned_share *learned_shares(const struct learned_view *v, int machine_class, size_t *count)
{
  const struct learn_counts *c = &v->counts;
  struct learned_share *out = mem_array(v->k->fault_count, sizeof *out);
  double *share = mem_array(v->k->fault_count, sizeof *share);

  *count = 0;
  learn_shares(v->k, machine_class, share);
  for (size_t f = 0; f < v->k->fault_count; f++) {
    long times = c->hits[(size_t)machine_class * v->k->fault_count + f], others;

    if (times == 0) continue;
    others = c->class_faults[machine_class] - times;
    out[(*count)++] = (struct learned_share){
        (int)f, times, share[f], learn_share_now(c, machine_class, (int)f, share[f]),
        beta_limits(beta_after(beta_worth(share[f], c->how.rates_worth), (double)times, (double)others))};
  }
  qsort(out, *count, sizeof *out, by_times);
  free(share);
  return out;
}

static int by_made(const void *x, const void *y)
{
  const struct learned_shown *a = x, *b = y;

  if (a->made != b->made) return a->made > b->made ? -1 : 1;
  return a->sign < b->sign ? -1 : 1;
}

struct learned_shown *learned_signs(const struct learned_view *v, size_t *count)
{
  const struct learn_counts *c = &v->counts;
  struct learned_shown *out = mem_array(v->k->sign_count, sizeof *out);

  *count = 0;
  for (size_t s = 0; s < v->k->sign_count; s++) {
    const struct sign *sign = &v->k->signs[s];
    size_t pair = sign->check >= 0 ? learn_pair(v->k, s) : s;
    long made = c->made[pair], shown;
    double shipped;
    struct beta now;

    if (sign->check < 0 || made == 0) continue;
    shown = c->shown[pair * CHECK_MOST_RESULTS + (size_t)sign->result];
    shipped = learn_shows(v->k, s);
    now = beta_after(beta_worth(shipped, c->how.signs_worth), (double)shown, (double)(made - shown));
    out[(*count)++] = (struct learned_shown){s, made, shown, shipped, beta_mean(now), beta_limits(now)};
  }
  qsort(out, *count, sizeof *out, by_made);
  return out;
}

struct limits learned_right(const struct learn_past *p)
{
  return beta_limits(beta_after((struct beta){0.5, 0.5}, (double)p->hits, (double)(p->count - p->hits)));
}

struct murphy learned_murphy(const struct learn_past *p, struct forecast_bin bins[LEARN_BINS])
{
  for (int i = 0; i < LEARN_BINS; i++)
    bins[i] =
        (struct forecast_bin){p->bin_count[i] ? (double)p->bin_chance[i] / 1e6 / (double)p->bin_count[i] : 0,
                              p->bin_count[i], p->bin_hits[i]};
  return murphy_of(bins, LEARN_BINS);
}

/* ---- JSON ------------------------------------------------------------------------------ */

static void put_limits(struct json *j, double shipped, double now, struct limits l)
{
  json_put_number(j, "shipped", shipped);
  json_put_number(j, "now", now);
  json_put_number(j, "low", l.low);
  json_put_number(j, "high", l.high);
}

static struct json *class_json(const struct learned_view *v, int machine_class)
{
  struct json *j = json_object(), *rates = json_list();
  size_t count;
  struct learned_share *shares = learned_shares(v, machine_class, &count);

  json_put_text(j, "class", v->k->classes[machine_class].id);
  json_put_number(j, "jobs", (double)v->counts.class_jobs[machine_class]);
  json_put_number(j, "faults", (double)v->counts.class_faults[machine_class]);
  for (size_t i = 0; i < count; i++) {
    struct json *r = json_object();

    json_put_text(r, "fault", v->k->faults[shares[i].fault].id);
    json_put_number(r, "times", (double)shares[i].times);
    put_limits(r, shares[i].shipped, shares[i].now, shares[i].limits);
    json_put_number(r, "base_rate_shipped", shipped_base(v->k, machine_class, shares[i].fault));
    json_put_number(r, "base_rate", learned_base(&v->now, v->k, machine_class, shares[i].fault));
    json_push(rates, r);
  }
  json_put(j, "shares", rates);
  free(shares);
  return j;
}

static struct json *signs_json(const struct learned_view *v)
{
  struct json *list = json_list();
  size_t count;
  struct learned_shown *signs = learned_signs(v, &count);

  for (size_t i = 0; i < count; i++) {
    const struct sign *s = &v->k->signs[signs[i].sign];
    struct json *j = json_object();

    json_put_text(j, "fault", s->fault_id);
    json_put_text(j, "check", s->check_id);
    json_put_text(j, "result", s->result_id);
    json_put_number(j, "made", (double)signs[i].made);
    json_put_number(j, "shown", (double)signs[i].shown);
    put_limits(j, signs[i].shipped, signs[i].now, signs[i].limits);
    json_put_number(j, "chance_shipped", s->chance);
    json_put_number(j, "chance", learned_sign(&v->now, v->k, signs[i].sign));
    json_push(list, j);
  }
  free(signs);
  return list;
}

static void put_curve(struct json *j, const struct learn_past *p)
{
  struct forecast_bin bins[LEARN_BINS];
  struct murphy m = learned_murphy(p, bins);
  struct json *list = json_list();

  for (int i = 0; i < LEARN_BINS; i++) {
    struct json *b;

    if (bins[i].count == 0) continue;
    b = json_object();
    json_put_number(b, "chance", bins[i].chance);
    json_put_number(b, "count", (double)bins[i].count);
    json_put_number(b, "right", (double)bins[i].hits);
    json_push(list, b);
  }
  json_put(j, "bins", list);
  json_put_number(j, "reliability", m.reliability);
  json_put_number(j, "resolution", m.resolution);
  json_put_number(j, "uncertainty", m.uncertainty);
}

static struct json *past_json(const struct learn_past *p)
{
  struct json *j = json_object();
  struct limits right = learned_right(p);

  json_put_number(j, "count", (double)p->count);
  if (p->count == 0) return j;
  json_put_number(j, "right", (double)p->hits);
  json_put_number(j, "named", (double)p->named);
  json_put_number(j, "most_frequent_right", (double)p->usual_hits);
  json_put_number(j, "mean_chance", (double)p->chance / 1e6 / (double)p->count);
  json_put_number(j, "low", right.low);
  json_put_number(j, "high", right.high);
  json_put_number(j, "brier", (double)p->quadratic / 1e6 / (double)p->count);
  if (p->count >= LEARN_CURVE_FROM) put_curve(j, p);
  return j;
}

struct json *learned_json(const struct learned_view *v)
{
  struct json *j = json_object(), *worth = json_object(), *classes = json_list();
  char since[32];

  snprintf(since, sizeof since, "%lld", (long long)v->on.since);
  json_put_text(j, "pullcord", "learned-1");
  json_put_bool(j, "on", v->on.on);
  json_put_text(j, "since", since);
  json_put_number(j, "jobs", (double)v->counts.jobs);
  json_put_number(j, "unconfirmed", (double)v->counts.unconfirmed);
  json_put_number(j, "counted", (double)v->counts.counted);
  json_put_number(worth, "rates", v->counts.how.rates_worth);
  json_put_number(worth, "signs", v->counts.how.signs_worth);
  json_put_number(worth, "most", v->counts.how.most);
  json_put(j, "worth", worth);
  for (size_t i = 0; i < v->k->class_count; i++)
    if (v->counts.class_jobs[i] > 0 && (v->machine_class < 0 || v->machine_class == (int)i))
      json_push(classes, class_json(v, (int)i));
  json_put(j, "classes", classes);
  json_put(j, "signs", signs_json(v));
  json_put(j, "past", past_json(&v->counts.past));
  return j;
}
