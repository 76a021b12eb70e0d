/* networks.c - beliefs in random networks of given size, by number of unsound findings.
 *
 * Base rates from 0.0001 to 0.03, even by size; links at random with chances from 0.1 to
 * 0.95; leaks from 0.002 to 0.05. Of each instance one to three faults are true; the
 * positives are findings that these bring about, filled up by leaks; every other finding
 * was made and is sound. The seeds are printed, so that any instance can be made again. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/mem.h"
#include "bench.h"
#include "random_net.h"

struct size {
  const char *name;
  size_t faults, findings, links;
};

struct instance {
  struct net net;
  double *prior, *belief, *blame;
  struct net_finding *findings;
  struct net_link *links;
};

static double between(uint64_t *dice, double low, double high)
{
  return low + (high - low) * random_share(dice);
}

static void two_grades(double *chance, double unsound)
{
  chance[0] = 1 - unsound;
  chance[1] = unsound;
}

/* Links are laid out finding by finding; each fault at most once in each. */
static void lay_links(struct instance *n, const struct size *s, uint64_t *dice)
{
  size_t used = 0;

  for (size_t i = 0; i < s->findings; i++) {
    struct net_finding *f = &n->findings[i];
    size_t want = (s->links * (i + 1)) / s->findings - used;

    *f = (struct net_finding){.grades = 2, .focus = true, .links = n->links + used};
    two_grades(f->leak, between(dice, 0.002, 0.05));
    while (f->link_count < want) {
      int fault = random_below(dice, (int)s->faults);
      bool there = false;

      for (size_t j = 0; j < f->link_count; j++) there = there || f->links[j].fault == fault;
      if (there) continue;
      n->links[used].fault = fault;
      two_grades(n->links[used++].chance, between(dice, 0.1, 0.95));
      f->link_count++;
    }
  }
}

/* Makes a finding unsound; 0 when it was so already. */
static size_t turn(struct net_finding *f)
{
  if (f->seen[1] == 1) return 0;
  f->seen[0] = 0;
  f->seen[1] = 1;
  return 1;
}

static void see(struct instance *n, const struct size *s, size_t positives, uint64_t *dice)
{
  int truth[3], count = 1 + random_below(dice, 3);
  size_t left = positives;

  for (int t = 0; t < count; t++) truth[t] = random_below(dice, (int)s->faults);
  for (size_t i = 0; i < s->findings; i++) n->findings[i].seen[0] = 1;
  for (size_t i = 0; i < s->findings && left > 0; i++) {
    struct net_finding *f = &n->findings[i];

    for (size_t j = 0; j < f->link_count; j++)
      for (int t = 0; t < count && left > 0; t++)
        if (f->links[j].fault == truth[t] && random_share(dice) < f->links[j].chance[1]) left -= turn(f);
  }
  while (left > 0) left -= turn(&n->findings[random_below(dice, (int)s->findings)]);
}

static void make(struct instance *n, const struct size *s, size_t positives, uint64_t seed)
{
  uint64_t dice = seed;

  n->net = (struct net){s->faults, n->prior, NULL, n->findings, s->findings};
  for (size_t f = 0; f < s->faults; f++) n->prior[f] = 0.03 * pow(1 / 300.0, random_share(&dice));
  lay_links(n, s, &dice);
  see(n, s, positives, &dice);
}

static void run(struct instance *n, const struct size *s, size_t positives, size_t count, double goal)
{
  double *both = mem_array(count, sizeof *both);
  char name[80], note[80];
  uint64_t first = s->faults * 1000000 + positives * 1000;

  for (size_t i = 0; i < count; i++) {
    double start;

    make(n, s, positives, first + i);
    start = bench_worked();
    if (!net_solve(&n->net, n->belief, n->blame, NULL))
      fprintf(stderr, "not solved: seed %zu\n", (size_t)first + i);
    both[i] = bench_worked() - start;
  }
  snprintf(name, sizeof name, "%s, %zu unsound", s->name, positives);
  snprintf(note, sizeof note, "seeds %zu to %zu", (size_t)first, (size_t)first + count - 1);
  bench_add("belief and blame, exact; processor time", name, "ms", both, count, goal, note);
  free(both);
}

void bench_networks(bool quick)
{
  static const struct size sizes[] = {{"100 faults x 150 checks", 100, 150, 1245},
                                      {"570 faults x 4000 checks", 570, 4000, 42041}};
  static const size_t positives[] = {3, 5, 8, 10, 12, 14, 16, 17};

  for (size_t i = 0; i < 2; i++) {
    const struct size *s = &sizes[i];
    struct instance n = {.prior = mem_array(s->faults, sizeof(double)),
                         .belief = mem_array(s->faults, sizeof(double)),
                         .blame = mem_array(s->faults, sizeof(double)),
                         .findings = mem_array(s->findings, sizeof *n.findings),
                         .links = mem_array(s->links, sizeof *n.links)};

    for (size_t p = 0; p < sizeof positives / sizeof positives[0]; p++) {
      size_t count = positives[p] <= 12 ? 200 : 100;
      double goal = i == 0 ? (positives[p] <= 12 ? 1 : 0) : (positives[p] <= 16 ? 50 : 0);

      run(&n, s, positives[p], quick ? count / 10 : count, goal);
    }
    free(n.prior);
    free(n.belief);
    free(n.blame);
    free(n.findings);
    free(n.links);
  }
}
