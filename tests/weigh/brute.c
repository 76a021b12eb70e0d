/* brute.c - see brute.h. */
#include "brute.h"

#include <stdbool.h>
#include <string.h>

/* One more draw: the grade is the higher of what it was and what was drawn. */
static void draw(long double *grade, int grades, const double *chance)
{
  long double next[NET_MAX_GRADES] = {0};

  for (int was = 0; was < grades; was++)
    for (int drawn = 0; drawn < grades; drawn++)
      next[was > drawn ? was : drawn] += grade[was] * (long double)chance[drawn];
  memcpy(grade, next, sizeof next);
}

static bool in(unsigned set, int fault) { return set >> fault & 1u; }

/* The draws as a finding that is believed to be sound with some strength takes them: a
 * cause counts as if it showed only that share of the times it does. */
static void thinned(const struct net_finding *f, const double *chance, double *out)
{
  double shown = 0;

  for (int g = 1; g < f->grades; g++) {
    out[g] = chance[g] * f->soft_sound;
    shown += out[g];
  }
  out[0] = 1 - shown;
}

void brute_grades(const struct net_finding *f, unsigned set, long double *out)
{
  memset(out, 0, NET_MAX_GRADES * sizeof *out);
  out[0] = 1;
  draw(out, f->grades, f->leak);
  for (size_t i = 0; i < f->link_count; i++)
    if (in(set, f->links[i].fault)) draw(out, f->grades, f->links[i].chance);
}

static int possible_grades(const struct net_finding *f, int *last)
{
  int count = 0;

  for (int g = 0; g < f->grades; g++)
    if (f->seen[g] > 0) {
      count++;
      *last = g;
    }
  return count;
}

static bool all_alike(const struct net_finding *f)
{
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] != f->seen[0]) return false;
  return true;
}

/* Does a fault that draws this grade bring the finding about? A result that is plainly
 * one grade: only by drawing that grade. One that may be several: by any but the sound
 * one. A sound result, and one that says nothing, is brought about by nobody. */
static bool brings_about(const struct net_finding *f, int drawn)
{
  int last = 0;

  if (!f->focus || f->soft_sound > 0 || all_alike(f)) return false;
  if (possible_grades(f, &last) == 1) return last > 0 && drawn == last;
  return drawn > 0;
}

/* Chance of what was seen given the set; when beside is a fault, the chance of that and
 * of its not having brought the finding about. */
static long double seen_chance(const struct net_finding *f, unsigned set, int beside)
{
  long double grade[NET_MAX_GRADES] = {1}, sum = 0;
  double own[NET_MAX_GRADES];

  if (f->soft_sound > 0) {
    thinned(f, f->leak, own);
    draw(grade, f->grades, own);
    for (size_t i = 0; i < f->link_count; i++) {
      if (!in(set, f->links[i].fault)) continue;
      thinned(f, f->links[i].chance, own);
      draw(grade, f->grades, own);
    }
    return grade[0];
  }
  draw(grade, f->grades, f->leak);
  for (size_t i = 0; i < f->link_count; i++) {
    if (!in(set, f->links[i].fault)) continue;
    for (int g = 0; g < f->grades; g++)
      own[g] = f->links[i].fault == beside && brings_about(f, g) ? 0 : f->links[i].chance[g];
    draw(grade, f->grades, own);
  }
  for (int g = 0; g < f->grades; g++) sum += (long double)f->seen[g] * grade[g];
  return sum;
}

long double brute_seen(const struct net_finding *f, unsigned set) { return seen_chance(f, set, -1); }

static long double set_chance(const struct net *net, unsigned set)
{
  long double chance = 1;

  for (size_t f = 0; f < net->fault_count; f++)
    chance *= !in(set, (int)f) ? 1 - (long double)net->prior[f]
                               : (long double)net->prior[f] * (long double)(net->bias ? net->bias[f] : 1);
  return chance;
}

static long double joint_beside(const struct net *net, unsigned set, int beside)
{
  long double chance = set_chance(net, set);

  for (size_t i = 0; i < net->finding_count && chance > 0; i++)
    chance *= seen_chance(&net->findings[i], set, beside);
  return chance;
}

long double brute_joint(const struct net *net, unsigned set) { return joint_beside(net, set, -1); }

void brute_solve(const struct net *net, struct brute *out)
{
  *out = (struct brute){.best_chance = -1};
  for (unsigned set = 0; set < 1u << net->fault_count; set++) {
    long double chance = brute_joint(net, set);

    out->chance += chance;
    if (chance > out->best_chance) {
      out->best = set;
      out->best_chance = chance;
    }
    for (size_t f = 0; f < net->fault_count && chance > 0; f++) {
      if (!in(set, (int)f)) continue;
      out->belief[f] += chance;
      out->blame[f] += chance - joint_beside(net, set, (int)f);
    }
  }
  for (size_t f = 0; f < net->fault_count && out->chance > 0; f++) {
    out->belief[f] /= out->chance;
    out->blame[f] /= out->chance;
  }
}
