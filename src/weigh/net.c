/* net.c - see net.h.
 *
 * Steps: (1) what can be taken in per fault is (sound results, and the grades above a
 * plain result, which nobody may have brought); (2) faults that touch one remaining
 * finding only are folded into that finding's own start; (3) the rest run through the
 * dynamic programme forwards, then backwards for the single beliefs. */
#include "weigh/net.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

/* A finding that still couples faults. */
struct open_finding {
  int grades;
  size_t stride;                /* of its grade in the table of cells */
  double leak[NET_MAX_GRADES];
  double start[NET_MAX_GRADES]; /* grades from leak and folded faults */
  double seen[NET_MAX_GRADES];
  bool focus;
};

/* A fault's effect on one open finding. */
struct reach { int finding; double chance[NET_MAX_GRADES]; };

struct work {
  const struct net *net;
  double *present, *absent; /* weight of each fault being there or not, made to add to 1 */
  double log_chance;
  struct open_finding *open;
  size_t open_count, cells;
  struct reach *reaches; /* of fault f: reaches[first[f]] .. reaches[first[f + 1] - 1] */
  size_t *first;
  bool possible;
};

static double below_or_at(const double *chance, int grade)
{
  double sum = 0;

  for (int g = 0; g <= grade; g++) sum += chance[g];
  return sum;
}

/* The one grade that was seen, or -1 when more than one is possible. */
static int plain_grade(const struct net_finding *f)
{
  int only = -1;

  for (int g = 0; g < f->grades; g++) {
    if (f->seen[g] <= 0) continue;
    if (only >= 0) return -1;
    only = g;
  }
  return only;
}

/* One more cause: the grade becomes the higher of the two. Every grade is reached by the
 * one while the other stays at or below it, so there are only positive terms. */
static void join(double *grade, int grades, const double *chance)
{
  double lower = 0, reached = 0;

  for (int g = 0; g < grades; g++) {
    double was = grade[g];

    reached += chance[g];
    grade[g] = was * reached + lower * chance[g];
    lower += was;
  }
}

static bool says_nothing(const struct net_finding *f)
{
  if (f->soft_sound > 0) return false;
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] != f->seen[0]) return false;
  return true;
}

static void take_log(struct work *w, double factor)
{
  if (factor <= 0) w->possible = false;
  else w->log_chance += log(factor);
}

/* Step 1 for one finding. Returns the number of grades that stay open: 0 when it is
 * wholly taken in, 2 for a plain unsound result, else all its grades. */
static int take_in(struct work *w, const struct net_finding *f)
{
  int plain;

  if (f->soft_sound > 0) {
    take_log(w, 1 - f->soft_sound * (1 - f->leak[0]));
    for (size_t i = 0; i < f->link_count; i++)
      w->present[f->links[i].fault] *= 1 - f->soft_sound * (1 - f->links[i].chance[0]);
    return 0;
  }
  if (says_nothing(f)) {
    take_log(w, f->seen[0]);
    return 0;
  }
  plain = plain_grade(f);
  if (plain < 0) return f->grades;
  take_log(w, f->seen[plain] * below_or_at(f->leak, plain));
  for (size_t i = 0; i < f->link_count; i++)
    w->present[f->links[i].fault] *= below_or_at(f->links[i].chance, plain);
  return plain == 0 ? 0 : 2;
}

/* chance[] of a link or leak, as seen by an open finding of `grades` grades. */
static void project(const struct net_finding *f, int grades, const double *chance, double *out)
{
  int plain = plain_grade(f);
  double all;

  if (plain < 0) {
    memcpy(out, chance, (size_t)grades * sizeof *out);
    return;
  }
  all = below_or_at(chance, plain);
  out[1] = all > 0 ? chance[plain] / all : 0;
  out[0] = all > 0 ? below_or_at(chance, plain - 1) / all : 1;
}

static void open_finding(struct open_finding *o, const struct net_finding *f, int grades)
{
  o->grades = grades;
  o->focus = f->focus;
  project(f, grades, f->leak, o->leak);
  memcpy(o->start, o->leak, sizeof o->start);
  if (plain_grade(f) >= 0) {
    o->seen[0] = 0;
    o->seen[1] = 1;
  } else {
    memcpy(o->seen, f->seen, sizeof o->seen);
  }
}

static bool lays_out(struct work *w, int *grades)
{
  const struct net *net = w->net;

  w->open = mem_array(net->finding_count ? net->finding_count : 1, sizeof *w->open);
  w->cells = 1;
  for (size_t i = 0; i < net->finding_count; i++) {
    struct open_finding *o = &w->open[w->open_count];

    grades[i] = take_in(w, &net->findings[i]);
    if (grades[i] == 0) continue;
    if (w->cells > (size_t)NET_MAX_CELLS / (size_t)grades[i]) return false;
    open_finding(o, &net->findings[i], grades[i]);
    o->stride = w->cells;
    w->cells *= (size_t)grades[i];
    w->open_count++;
  }
  return true;
}

/* Which open findings each fault reaches. */
static void list_reaches(struct work *w, const int *grades)
{
  const struct net *net = w->net;
  size_t *at, total = 0;

  w->first = mem_array(net->fault_count + 2, sizeof *w->first);
  for (size_t i = 0; i < net->finding_count; i++)
    for (size_t j = 0; grades[i] && j < net->findings[i].link_count; j++, total++)
      w->first[net->findings[i].links[j].fault + 1]++;
  for (size_t f = 0; f < net->fault_count; f++) w->first[f + 1] += w->first[f];
  w->reaches = mem_array(total ? total : 1, sizeof *w->reaches);
  at = mem_array(net->fault_count + 1, sizeof *at);
  memcpy(at, w->first, (net->fault_count + 1) * sizeof *at);
  for (size_t i = 0, o = 0; i < net->finding_count; i++) {
    if (!grades[i]) continue;
    for (size_t j = 0; j < net->findings[i].link_count; j++) {
      const struct net_link *l = &net->findings[i].links[j];
      struct reach *r = &w->reaches[at[l->fault]++];

      r->finding = (int)o;
      project(&net->findings[i], grades[i], l->chance, r->chance);
    }
    o++;
  }
  free(at);
}

static bool begin(struct work *w, const struct net *net)
{
  int *grades = mem_array(net->finding_count ? net->finding_count : 1, sizeof *grades);
  bool fits;

  *w = (struct work){.net = net, .possible = true};
  w->present = mem_array(net->fault_count ? net->fault_count : 1, sizeof *w->present);
  w->absent = mem_array(net->fault_count ? net->fault_count : 1, sizeof *w->absent);
  for (size_t f = 0; f < net->fault_count; f++) {
    w->present[f] = net->prior[f] * (net->bias ? net->bias[f] : 1);
    w->absent[f] = 1 - net->prior[f];
  }
  fits = lays_out(w, grades);
  if (fits) {
    list_reaches(w, grades);
    for (size_t f = 0; f < net->fault_count; f++) {
      double sum = w->present[f] + w->absent[f];

      take_log(w, sum);
      w->present[f] /= sum;
      w->absent[f] /= sum;
    }
  }
  free(grades);
  return fits && w->possible;
}

static void finish(struct work *w)
{
  free(w->present);
  free(w->absent);
  free(w->open);
  free(w->reaches);
  free(w->first);
}

static size_t reach_count(const struct work *w, size_t f) { return w->first[f + 1] - w->first[f]; }

/* ---- step 2: faults that reach one open finding -------------------------------------- */

/* What fault f, being there or not, brings the finding it reaches to. */
static void own_grades(const struct work *w, size_t f, int grades, double *out)
{
  for (int g = 0; g < grades; g++) out[g] = w->present[f] * w->reaches[w->first[f]].chance[g];
  out[0] += w->absent[f];
}

static void fold(struct work *w)
{
  double own[NET_MAX_GRADES];

  for (size_t f = 0; f < w->net->fault_count; f++)
    if (reach_count(w, f) == 1) {
      struct open_finding *o = &w->open[w->reaches[w->first[f]].finding];

      own_grades(w, f, o->grades, own);
      join(o->start, o->grades, own);
    }
}

/* ---- step 3: the table of cells ------------------------------------------------------ */

/* Fills a table with the product over findings of value(finding, its grade). */
static void fill_table(const struct work *w, double *cells, bool seen)
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

/* The fault brings a grade: every cell moves to the higher of its own and that grade. */
static void raise_table(const struct work *w, const struct reach *r, double *cells)
{
  const struct open_finding *o = &w->open[r->finding];
  size_t stride = o->stride, block = stride * (size_t)o->grades;

  for (double *base = cells; base < cells + w->cells; base += block)
    for (int g = o->grades - 1; g >= 0; g--) {
      double *to = base + (size_t)g * stride;

      times(to, below_or_at(r->chance, g), stride);
      for (int h = 0; h < g; h++) add_times(to, base + (size_t)h * stride, r->chance[g], stride);
    }
}

/* The same step seen from the end: value of a cell before the fault acts. */
static void lower_table(const struct work *w, const struct reach *r, double *cells)
{
  const struct open_finding *o = &w->open[r->finding];
  size_t stride = o->stride, block = stride * (size_t)o->grades;

  for (double *base = cells; base < cells + w->cells; base += block)
    for (int g = 0; g < o->grades; g++) {
      double *to = base + (size_t)g * stride;

      times(to, below_or_at(r->chance, g), stride);
      for (int h = g + 1; h < o->grades; h++) add_times(to, base + (size_t)h * stride, r->chance[h], stride);
    }
}

static void act(const struct work *w, size_t f, double *cells, bool forwards)
{
  for (size_t i = w->first[f]; i < w->first[f + 1]; i++)
    if (forwards) raise_table(w, &w->reaches[i], cells);
    else lower_table(w, &w->reaches[i], cells);
}

/* The fault acts (seen from the end), but brings about nothing that is in focus. Returns
 * the chance of that. */
static double act_beside(const struct work *w, size_t f, double *cells)
{
  double chance = 1;

  for (size_t i = w->first[f]; i < w->first[f + 1]; i++)
    if (w->open[w->reaches[i].finding].focus) chance *= w->reaches[i].chance[0];
    else lower_table(w, &w->reaches[i], cells);
  return chance;
}

/* cells = absent * cells + present * (cells after the fault acted). */
static void mix(const struct work *w, size_t f, double *cells, double *spare, bool forwards)
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

static void forwards_from(const struct work *w, const size_t *shared, size_t from, size_t to,
                          double *cells, double *spare)
{
  for (size_t i = from; i < to; i++) mix(w, shared[i], cells, spare, true);
}

/* Beliefs of the shared faults, last to first; at the end `back` is the value of each
 * starting cell. */
static void walk_back(const struct work *w, const size_t *shared, size_t count, const struct keep *k,
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
static void start_values(const struct work *w, size_t o, const double *start, const double *back,
                         double *after)
{
  const struct open_finding *f = &w->open[o];

  for (int g = 0; g < f->grades; g++) after[g] = 0;
  for (size_t c = 0; c < w->cells; c++) {
    int g = (int)(c / f->stride % (size_t)f->grades);

    if (f->start[g] > 0) after[g] += start[c] / f->start[g] * back[c];
  }
}

/* Belief and blame of one folded fault; rest is the grade that the leak and the other
 * folded faults bring. */
static void unfold_one(const struct work *w, const struct open_finding *o, size_t f, const double *rest,
                       const double *after, double total, double *belief, double *blame)
{
  double with[NET_MAX_GRADES], chance[NET_MAX_GRADES];
  size_t bytes = (size_t)o->grades * sizeof *with;

  memcpy(with, rest, bytes);
  join(with, o->grades, w->reaches[w->first[f]].chance);
  belief[f] = w->present[f] * dot(with, after, (size_t)o->grades) / total;
  if (!blame || !o->focus) return;
  memcpy(chance, w->reaches[w->first[f]].chance, bytes);
  chance[0] = 0; /* it brings the finding about */
  memcpy(with, rest, bytes);
  join(with, o->grades, chance);
  blame[f] = w->present[f] * dot(with, after, (size_t)o->grades) / total;
}

/* All the faults folded into one finding: the others of each are those before and after
 * it, so that nothing need be divided out. */
static void unfold(const struct work *w, size_t at, const double *after, double total, double *belief,
                   double *blame)
{
  const struct open_finding *o = &w->open[at];
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
    join(next, o->grades, own);
    folded[count++] = f;
  }
  while (count-- > 0) {
    double *rest = before + count * NET_MAX_GRADES;

    join(rest, o->grades, behind);
    unfold_one(w, o, folded[count], rest, after, total, belief, blame);
    own_grades(w, folded[count], o->grades, own);
    join(behind, o->grades, own);
  }
  free(folded);
  free(before);
}

static void fold_back(const struct work *w, const double *back, double total, double *belief,
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
static bool run(struct work *w, double *belief, double *blame)
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
  take_log(w, total);
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
  struct work w;
  bool good = begin(&w, net) && run(&w, belief, blame);

  if (log_chance) *log_chance = w.log_chance;
  finish(&w);
  return good;
}

size_t net_cells(const struct net *net)
{
  size_t cells = 1;

  for (size_t i = 0; i < net->finding_count && cells <= (size_t)NET_MAX_CELLS; i++) {
    const struct net_finding *f = &net->findings[i];

    if (f->soft_sound > 0 || says_nothing(f) || plain_grade(f) == 0) continue;
    cells *= plain_grade(f) > 0 ? 2 : (size_t)f->grades;
  }
  return cells;
}

/* ---- by the definition --------------------------------------------------------------- */

static const struct net_link *link_of(const struct net_finding *f, int fault)
{
  for (size_t i = 0; i < f->link_count; i++)
    if (f->links[i].fault == fault) return &f->links[i];
  return NULL;
}

void net_grade_chances(const struct net_finding *f, const int *set, size_t count, double *out)
{
  memcpy(out, f->leak, (size_t)f->grades * sizeof *out);
  for (size_t i = 0; i < count; i++) {
    const struct net_link *l = link_of(f, set[i]);

    if (l) join(out, f->grades, l->chance);
  }
}

static double finding_chance(const struct net_finding *f, const int *set, size_t count)
{
  double grades[NET_MAX_GRADES], sum = 0;

  if (f->soft_sound > 0) {
    sum = 1 - f->soft_sound * (1 - f->leak[0]);
    for (size_t i = 0; i < count; i++) {
      const struct net_link *l = link_of(f, set[i]);

      if (l) sum *= 1 - f->soft_sound * (1 - l->chance[0]);
    }
    return sum;
  }
  net_grade_chances(f, set, count, grades);
  for (int g = 0; g < f->grades; g++) sum += f->seen[g] * grades[g];
  return sum;
}

double net_log_joint(const struct net *net, const int *set, size_t count)
{
  double sum = 0;

  for (size_t f = 0; f < net->fault_count; f++) sum += log(1 - net->prior[f]);
  for (size_t i = 0; i < count; i++) {
    double bias = net->bias ? net->bias[set[i]] : 1;

    sum += log(net->prior[set[i]] * bias) - log(1 - net->prior[set[i]]);
  }
  for (size_t i = 0; i < net->finding_count; i++)
    sum += log(finding_chance(&net->findings[i], set, count));
  return sum;
}

void net_log_singles(const struct net *net, double *none, double *out)
{
  *none = net_log_joint(net, NULL, 0);
  for (size_t f = 0; f < net->fault_count && *none == -HUGE_VAL; f++)
    out[f] = net_log_joint(net, &(int){(int)f}, 1);
  if (*none == -HUGE_VAL) return; /* nothing to divide by: each by itself */
  for (size_t f = 0; f < net->fault_count; f++)
    out[f] = *none + log(net->prior[f] * (net->bias ? net->bias[f] : 1) / (1 - net->prior[f]));
  for (size_t i = 0; i < net->finding_count; i++) {
    const struct net_finding *n = &net->findings[i];
    double alone = log(finding_chance(n, NULL, 0));

    for (size_t j = 0; j < n->link_count; j++)
      out[n->links[j].fault] += log(finding_chance(n, &n->links[j].fault, 1)) - alone;
  }
}
