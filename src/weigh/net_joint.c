/* net_joint.c - what one set of faults brings about, by the definition; see net.h. */
#include <math.h>
#include <string.h>

#include "weigh/net_work.h"

/* Every grade is reached by the one while the other stays at or below it, so there are only
 * positive terms. */
void net_join(double *grade, int grades, const double *chance)
{
  double lower = 0, reached = 0;

  for (int g = 0; g < grades; g++) {
    double was = grade[g];

    reached += chance[g];
    grade[g] = was * reached + lower * chance[g];
    lower += was;
  }
}

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

    if (l) net_join(out, f->grades, l->chance);
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
