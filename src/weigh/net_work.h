/* net_work.h - a network laid out for the programme: shared by net.c, net_lay.c and net_joint.c
 * and by nothing else. */
#ifndef WEIGH_NET_WORK_H
#define WEIGH_NET_WORK_H

#include "weigh/net.h"

/* A finding that still couples faults. */
struct net_open {
  int grades;
  size_t stride;                /* of its grade in the table of cells */
  double leak[NET_MAX_GRADES];
  double start[NET_MAX_GRADES]; /* grades from leak and folded faults */
  double seen[NET_MAX_GRADES];
  bool focus;
};

/* A fault's effect on one open finding. */
struct net_reach { int finding; double chance[NET_MAX_GRADES]; };

struct net_work {
  const struct net *net;
  double *present, *absent; /* weight of each fault being there or not, made to add to 1 */
  double log_chance;
  struct net_open *open;
  size_t open_count, cells;
  struct net_reach *reaches; /* of fault f: reaches[first[f]] .. reaches[first[f + 1] - 1] */
  size_t *first;
  bool possible;
};

/* Takes in what can be taken in per fault (sound results, and the grades above a plain
 * result, which nobody may have brought) and lays out the rest. False when there is no room
 * or the findings are impossible. net_put_away either way. */
bool net_lay_out(struct net_work *w, const struct net *net);
void net_put_away(struct net_work *w);

/* One more factor of the chance of the findings. */
void net_take_log(struct net_work *w, double factor);

/* Chance of at most this grade. */
static inline double net_up_to(const double *chance, int grade)
{
  double sum = 0;

  for (int g = 0; g <= grade; g++) sum += chance[g];
  return sum;
}

/* One more cause: the grade becomes the higher of the two. */
void net_join(double *grade, int grades, const double *chance);

#endif
