/* net.c - see net.h.
 *
 * Steps: (1) net_lay.c takes in what can be taken in per fault; (2) faults that touch one
 * remaining finding only are folded into that finding's own start; (3) the rest run through
 * the dynamic programme forwards, then backwards for the single beliefs. */
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "weigh/net_work.h"

static size_t reach_count(const struct net_work *w, size_t f) { return w->first[f + 1] - w->first[f]; }

/* ---- step 2: faults that reach one open finding -------------------------------------- */

/* What fault f, being there or not, brings the finding it reaches to. */
static void own_grades(const struct net_work *w, size_t f, int grades, double *out)
{
  for (int g = 0; g < grades; g++) out[g] = w->present[f] * w->reaches[w->first[f]].chance[g];
  out[0] += w->absent[f];
}

static void fold(struct net_work *w)
{
  double own[NET_MAX_GRADES];

  for (size_t f = 0; f < w->net->fault_count; f++)
    if (reach_count(w, f) == 1) {
      struct net_open *o = &w->open[w->reaches[w->first[f]].finding];

      own_grades(w, f, o->grades, own);
      net_join(o->start, o->grades, own);
    }
}

/* ---- step 3: the table of cells ------------------------------------------------------ */

/* Fills a table with the product over findings of value(finding, its grade). */
static void fill_table(const struct net_work *w, double *cells, bool seen)
{
  size_t filled = 1;

  cells[0] = 1;
  for (size_t o = 0; o < w->open_count; o++) {
    const double *v = seen ? w->open[o].seen : w->open[o].start;

    for (int g = w->open[o].grades - 1; g >= 0; g--)
      for (size_t i = 0; i < filled; i++) cells[(size_t)g * filled + i] = cells[i] * v[g];
    filled *= (size_t)w->open[o].grades;
  }
}

static void times(double *to, double factor, size_t n)
{
  for (size_t i = 0; i < n; i++) to[i] *= factor;
}

static void add_times(double *restrict to, const double *restrict from, double factor, size_t n)
{
  for (size_t i = 0; i < n; i++) to[i] += factor * from[i];
}

/* Nearly every finding has two grades: high becomes all of itself and `up` of low, low what is
 * left of it; both in one pass. */
static void raise_pair(double *restrict low, double *restrict high, const double *chance, double all,
                       size_t n)
{
  for (size_t i = 0; i < n; i++) {
    high[i] = high[i] * all + chance[1] * low[i];
    low[i] *= chance[0];
  }
}

/* The same seen from the end. */
static void lower_pair(double *restrict low, double *restrict high, const double *chance, double all,
                       size_t n)
{
  for (size_t i = 0; i < n; i++) {
    low[i] = low[i] * chance[0] + chance[1] * high[i];
    high[i] *= all;
  }
}

/* The fault brings a grade: every cell moves to the higher of its own and that grade. */
static void raise_block(double *base, const struct net_reach *r, int grades, size_t stride)
{
  for (int g = grades - 1; g >= 0; g--) {
    double *to = base + (size_t)g * stride;

    times(to, net_up_to(r->chance, g), stride);
    for (int h = 0; h < g; h++) add_times(to, base + (size_t)h * stride, r->chance[g], stride);
  }
}

/* The same step seen from the end: value of a cell before the fault acts. */
static void lower_block(double *base, const struct net_reach *r, int grades, size_t stride)
{
  for (int g = 0; g < grades; g++) {
    double *to = base + (size_t)g * stride;

    times(to, net_up_to(r->chance, g), stride);
    for (int h = g + 1; h < grades; h++) add_times(to, base + (size_t)h * stride, r->chance[h], stride);
  }
}

static void raise_table(const struct net_work *w, const struct net_reach *r, double *cells)
{
  const struct net_open *o = &w->open[r->finding];
  size_t stride = o->stride, block = stride * (size_t)o->grades;
  double all = net_up_to(r->chance, 1);

  for (double *base = cells; base < cells + w->cells; base += block)
    if (o->grades == 2) raise_pair(base, base + stride, r->chance, all, stride);
    else raise_block(base, r, o->grades, stride);
}

static void lower_table(const struct net_work *w, const struct net_reach *r, double *cells)
{
  const struct net_open *o = &w->open[r->finding];
  size_t stride = o->stride, block = stride * (size_t)o->grades;
  double all = net_up_to(r->chance, 1);

  for (double *base = cells; base < cells + w->cells; base += block)
    if (o->grades == 2) lower_pair(base, base + stride, r->chance, all, stride);
    else lower_block(base, r, o->grades, stride);
}

static void act(const struct net_work *w, size_t f, double *cells, bool forwards)
{
  for (size_t i = w->first[f]; i < w->first[f + 1]; i++)
    if (forwards) raise_table(w, &w->reaches[i], cells);
    else lower_table(w, &w->reaches[i], cells);
}

/* The fault acts (seen from the end), but brings about nothing that is in focus. Returns
 * the chance of that. */
static double act_beside(const struct net_work *w, size_t f, double *cells)
{
  double chance = 1;

  for (size_t i = w->first[f]; i < w->first[f + 1]; i++)
    if (w->open[w->reaches[i].finding].focus) chance *= w->reaches[i].chance[0];
    else lower_table(w, &w->reaches[i], cells);
  return chance;
}

/* cells = absent * cells + present * (cells after the fault acted). */
static void mix(const struct net_work *w, size_t f, double *cells, double *spare, bool forwards)
{
  memcpy(spare, cells, w->cells * sizeof *cells);
  act(w, f, spare, forwards);
  for (size_t i = 0; i < w->cells; i++) cells[i] = w->absent[f] * cells[i] + w->present[f] * spare[i];
}

/* In four sums side by side: quicker, and the same on every machine. */
static double dot(const double *a, const double *b, size_t n)
{
  double sum[4] = {0};
  size_t i = 0;

  for (; i + 4 <= n; i += 4)
    for (size_t j = 0; j < 4; j++) sum[j] += a[i + j] * b[i + j];
  for (; i < n; i++) sum[i % 4] += a[i] * b[i];
  return (sum[0] + sum[1]) + (sum[2] + sum[3]);
}

/* Tables before each shared fault are kept at every `every`-th and made again between,
 * so that memory grows with the root of the number of faults; all of them when they are
 * small together. */
enum { KEPT_ALL = 1 << 20 };
struct keep { double *tables; size_t every, cells; };

static void forwards_from(const struct net_work *w, const size_t *shared, size_t from, size_t to,
                          double *cells, double *spare)
{
  for (size_t i = from; i < to; i++) mix(w, shared[i], cells, spare, true);
}

/* Beliefs of the shared faults, last to first; at the end `back` is the value of each
 * starting cell. */
static void walk_back(const struct net_work *w, const size_t *shared, size_t count, const struct keep *k,
                      double *back, double total, double *belief, double *blame)
{
  double *segment = mem_array(k->every * w->cells, sizeof *segment);
  double *spare = mem_array(w->cells, sizeof *spare);
  size_t have = count; /* first index that the segment holds; count: none */
  double beside = 0;

  for (size_t i = count; i-- > 0;) {
    size_t from = i / k->every * k->every;

    if (have > from || i == count - 1) {
      memcpy(segment, k->tables + from / k->every * w->cells, w->cells * sizeof *segment);
      for (size_t j = from + 1; j <= i; j++) {
        double *cells = segment + (j - from) * w->cells;

        memcpy(cells, cells - w->cells, w->cells * sizeof *cells);
        mix(w, shared[j - 1], cells, spare, true);
      }
      have = from;
    }
    if (blame) {
      memcpy(spare, back, w->cells * sizeof *spare);
      beside = act_beside(w, shared[i], spare);
      beside *= w->present[shared[i]] * dot(segment + (i - from) * w->cells, spare, w->cells) / total;
    }
    memcpy(spare, back, w->cells * sizeof *spare);
    act(w, shared[i], spare, false);
    belief[shared[i]] = w->present[shared[i]] * dot(segment + (i - from) * w->cells, spare, w->cells) / total;
    if (blame) blame[shared[i]] = belief[shared[i]] > beside ? belief[shared[i]] - beside : 0;
    for (size_t c = 0; c < w->cells; c++)
      back[c] = w->absent[shared[i]] * back[c] + w->present[shared[i]] * spare[c];
  }
  free(segment);
  free(spare);
}

/* after[g]: chance of the findings when finding o starts at grade g. */
static void start_values(const struct net_work *w, size_t o, const double *start, const double *back,
                         double *after)
{
  const struct net_open *f = &w->open[o];

  for (int g = 0; g < f->grades; g++) after[g] = 0;
  for (size_t c = 0; c < w->cells; c++) {
    int g = (int)(c / f->stride % (size_t)f->grades);

    if (f->start[g] > 0) after[g] += start[c] / f->start[g] * back[c];
  }
}

/* Belief and blame of one folded fault; rest is the grade that the leak and the other
 * folded faults bring. */
static void unfold_one(const struct net_work *w, const struct net_open *o, size_t f, const double *rest,
                       const double *after, double total, double *belief, double *blame)
{
  double with[NET_MAX_GRADES], chance[NET_MAX_GRADES];
  size_t bytes = (size_t)o->grades * sizeof *with;

  memcpy(with, rest, bytes);
  net_join(with, o->grades, w->reaches[w->first[f]].chance);
  belief[f] = w->present[f] * dot(with, after, (size_t)o->grades) / total;
  if (!blame || !o->focus) return;
  memcpy(chance, w->reaches[w->first[f]].chance, bytes);
  chance[0] = 0; /* it brings the finding about */
  memcpy(with, rest, bytes);
  net_join(with, o->grades, chance);
  blame[f] = w->present[f] * dot(with, after, (size_t)o->grades) / total;
}

/* All the faults folded into one finding: the others of each are those before and after
 * it, so that nothing need be divided out. */
static void unfold(const struct net_work *w, size_t at, const double *after, double total, double *belief,
                   double *blame)
{
  const struct net_open *o = &w->open[at];
  size_t n = w->net->fault_count, count = 0;
  size_t *folded = mem_array(n, sizeof *folded);
  double *before = mem_array((n + 1) * NET_MAX_GRADES, sizeof *before);
  double behind[NET_MAX_GRADES] = {1}, own[NET_MAX_GRADES];

  memcpy(before, o->leak, sizeof o->leak);
  for (size_t f = 0; f < n; f++) {
    double *next = before + (count + 1) * NET_MAX_GRADES;

    if (reach_count(w, f) != 1 || w->reaches[w->first[f]].finding != (int)at) continue;
    own_grades(w, f, o->grades, own);
    memcpy(next, next - NET_MAX_GRADES, sizeof o->leak);
    net_join(next, o->grades, own);
    folded[count++] = f;
  }
  while (count-- > 0) {
    double *rest = before + count * NET_MAX_GRADES;

    net_join(rest, o->grades, behind);
    unfold_one(w, o, folded[count], rest, after, total, belief, blame);
    own_grades(w, folded[count], o->grades, own);
    net_join(behind, o->grades, own);
  }
  free(folded);
  free(before);
}

static void fold_back(const struct net_work *w, const double *back, double total, double *belief,
                      double *blame)
{
  double *start = mem_array(w->cells, sizeof *start);
  double after[NET_MAX_GRADES];

  fill_table(w, start, false);
  for (size_t o = 0; o < w->open_count; o++) {
    start_values(w, o, start, back, after);
    unfold(w, o, after, total, belief, blame);
  }
  free(start);
}

static size_t root(size_t n)
{
  size_t r = 1;

  while (r * r < n) r++;
  return r;
}

/* Runs the programme; belief and blame may be NULL. */
static bool run(struct net_work *w, double *belief, double *blame)
{
  size_t n = w->net->fault_count, count = 0;
  size_t *shared = mem_array(n ? n : 1, sizeof *shared);
  double *cells = mem_array(w->cells, sizeof *cells), *spare = mem_array(w->cells, sizeof *spare);
  double *seen = mem_array(w->cells, sizeof *seen), total;
  struct keep k = {.cells = w->cells};

  for (size_t f = 0; f < n && blame; f++) blame[f] = 0;
  for (size_t f = 0; f < n; f++)
    if (reach_count(w, f) > 1) shared[count++] = f;
    else if (reach_count(w, f) == 0 && belief) belief[f] = w->present[f];
  fold(w);
  fill_table(w, cells, false);
  fill_table(w, seen, true);
  k.every = count * w->cells <= KEPT_ALL ? 1 : root(count);
  k.tables = mem_array(((count ? count : 1) / k.every + 1) * w->cells, sizeof *k.tables);
  for (size_t i = 0; i < count; i += k.every) {
    memcpy(k.tables + i / k.every * w->cells, cells, w->cells * sizeof *cells);
    forwards_from(w, shared, i, i + k.every < count ? i + k.every : count, cells, spare);
  }
  total = dot(cells, seen, w->cells);
  net_take_log(w, total);
  if (w->possible && belief) {
    walk_back(w, shared, count, &k, seen, total, belief, blame);
    fold_back(w, seen, total, belief, blame);
  }
  free(shared);
  free(cells);
  free(spare);
  free(seen);
  free(k.tables);
  return w->possible;
}

bool net_solve(const struct net *net, double *belief, double *blame, double *log_chance)
{
  struct net_work w;
  bool good = net_lay_out(&w, net) && run(&w, belief, blame);

  if (log_chance) *log_chance = w.log_chance;
  net_put_away(&w);
  return good;
}
