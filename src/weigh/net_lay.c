/* net_lay.c - see net_work.h. */
#include "weigh/net_work.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

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

static bool says_nothing(const struct net_finding *f)
{
  if (f->soft_sound > 0) return false;
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] != f->seen[0]) return false;
  return true;
}

void net_take_log(struct net_work *w, double factor)
{
  if (factor <= 0) w->possible = false;
  else w->log_chance += log(factor);
}

/* Takes in one finding. Returns the number of grades that stay open: 0 when it is
 * wholly taken in, 2 for a plain unsound result, else all its grades. */
static int take_in(struct net_work *w, const struct net_finding *f)
{
  int plain;

  if (f->soft_sound > 0) {
    net_take_log(w, 1 - f->soft_sound * (1 - f->leak[0]));
    for (size_t i = 0; i < f->link_count; i++)
      w->present[f->links[i].fault] *= 1 - f->soft_sound * (1 - f->links[i].chance[0]);
    return 0;
  }
  if (says_nothing(f)) {
    net_take_log(w, f->seen[0]);
    return 0;
  }
  plain = plain_grade(f);
  if (plain < 0) return f->grades;
  net_take_log(w, f->seen[plain] * net_up_to(f->leak, plain));
  for (size_t i = 0; i < f->link_count; i++)
    w->present[f->links[i].fault] *= net_up_to(f->links[i].chance, plain);
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
  all = net_up_to(chance, plain);
  out[1] = all > 0 ? chance[plain] / all : 0;
  out[0] = all > 0 ? net_up_to(chance, plain - 1) / all : 1;
}

static void open_finding(struct net_open *o, const struct net_finding *f, int grades)
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

static bool lays_out(struct net_work *w, int *grades)
{
  const struct net *net = w->net;

  w->open = mem_array(net->finding_count ? net->finding_count : 1, sizeof *w->open);
  w->cells = 1;
  for (size_t i = 0; i < net->finding_count; i++) {
    struct net_open *o = &w->open[w->open_count];

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
static void list_reaches(struct net_work *w, const int *grades)
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
      struct net_reach *r = &w->reaches[at[l->fault]++];

      r->finding = (int)o;
      project(&net->findings[i], grades[i], l->chance, r->chance);
    }
    o++;
  }
  free(at);
}

bool net_lay_out(struct net_work *w, const struct net *net)
{
  int *grades = mem_array(net->finding_count ? net->finding_count : 1, sizeof *grades);
  bool fits;

  *w = (struct net_work){.net = net, .possible = true};
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

      net_take_log(w, sum);
      w->present[f] /= sum;
      w->absent[f] /= sum;
    }
  }
  free(grades);
  return fits && w->possible;
}

void net_put_away(struct net_work *w)
{
  free(w->present);
  free(w->absent);
  free(w->open);
  free(w->reaches);
  free(w->first);
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
