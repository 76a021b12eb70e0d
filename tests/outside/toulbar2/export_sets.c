/* export_sets.c - the networks of real cases, cut down to their 30 most believed faults, as cost
 * function networks (CFN) whose cheapest assignment is the most probable set of faults.
 * Usage: export_sets FOLDER CASE.json...; prints lines "net.cfn cost set", the set being our
 * best as one digit for each fault, its cost -ln of the joint chance. Of each case three files:
 * as it is, without our best set, and without our best two, so that the first three places are
 * held to the solver. Costs come from going through every set of a finding's causes
 * (tests/weigh/brute.c), with nothing from src/weigh. */
#include <math.h>
#include <stdlib.h>

#include "brute.h"
#include "knowledge/load.h"
#include "part.h"
#include "weigh/sets.h"

/* As many as fit the bits of a set of brute.h; a table has 2^WIDEST costs. BEAM as in
 * src/assess/deeper.c. */
enum { KEPT = 30, WIDEST = 12, PLACES = 3, BEAM = 60 };

/* Costs have eleven decimals; what is impossible costs what the solver takes for "never". */
static const double never = 100000;

static double cost_of(long double chance) { return chance > 0 ? fmin((double)-logl(chance), never) : never; }

/* A plain sound result and a softly sound one are products over their causes, so each cause
 * has a cost of its own. */
static bool is_product(const struct net_finding *f)
{
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] > 0) return f->soft_sound > 0;
  return true;
}

static void write_product(FILE *out, const char *const *names, const struct net_finding *f, size_t at)
{
  long double none = brute_seen(f, 0);

  fprintf(out, ",\n \"n%zu\": {\"scope\": [], \"costs\": [%.11f]}", at, cost_of(none));
  for (size_t i = 0; i < f->link_count; i++)
    fprintf(out, ",\n \"n%zu-%zu\": {\"scope\": [\"%s\"], \"costs\": [0, %.11f]}", at, i,
            names[f->links[i].fault], cost_of(brute_seen(f, 1u << f->links[i].fault) / none));
}

/* The set of causes that a row of the table stands for; the last cause changes fastest. */
static unsigned row_set(const struct net_finding *f, unsigned row)
{
  unsigned set = 0;

  for (size_t i = 0; i < f->link_count; i++)
    if (row >> (f->link_count - 1 - i) & 1u) set |= 1u << f->links[i].fault;
  return set;
}

/* The least cost of the table stands by itself and the table begins at 0: toulbar2 1.1.1 counts
 * the least cost of a table of more than three variables twice (found by trying; a single such
 * table as the whole problem shows it). */
static void write_table(FILE *out, const char *const *names, const struct net_finding *f, size_t at)
{
  unsigned rows = 1u << f->link_count;
  double least = never;

  for (unsigned row = 0; row < rows; row++) least = fmin(least, cost_of(brute_seen(f, row_set(f, row))));
  fprintf(out, ",\n \"l%zu\": {\"scope\": [], \"costs\": [%.11f]}", at, least);
  fprintf(out, ",\n \"n%zu\": {\"scope\": [", at);
  for (size_t i = 0; i < f->link_count; i++)
    fprintf(out, "%s\"%s\"", i ? ", " : "", names[f->links[i].fault]);
  fprintf(out, "], \"costs\": [");
  for (unsigned row = 0; row < rows; row++)
    fprintf(out, "%s%.11f", row ? "," : "", cost_of(brute_seen(f, row_set(f, row))) - least);
  fprintf(out, "]}");
}

static bool holds(const struct fault_set *s, size_t fault)
{
  for (size_t i = 0; i < s->count; i++)
    if (s->fault[i] == (int)fault) return true;
  return false;
}

/* This set shall not be the answer. */
static void write_not(FILE *out, const struct part *p, const struct fault_set *s, size_t at)
{
  fprintf(out, ",\n \"not%zu\": {\"scope\": [", at);
  for (size_t f = 0; f < p->net.fault_count; f++) fprintf(out, "%s\"%s\"", f ? ", " : "", p->names[f]);
  fprintf(out, "], \"defaultcost\": 0, \"costs\": [");
  for (size_t f = 0; f < p->net.fault_count; f++) fprintf(out, "%d,", holds(s, f));
  fprintf(out, "%.0f]}", never);
}

static bool write_net(const char *path, const struct part *p, const struct fault_set *without, size_t count)
{
  FILE *out = fopen(path, "w");

  if (!out) return false;
  fprintf(out, "{\"problem\": {\"name\": \"case\", \"mustbe\": \"<%.11f\"},\n\"variables\": {", never);
  for (size_t f = 0; f < p->net.fault_count; f++) fprintf(out, "%s\"%s\": 2", f ? ", " : "", p->names[f]);
  fprintf(out, "},\n\"functions\": {");
  for (size_t f = 0; f < p->net.fault_count; f++)
    fprintf(out, "%s\n \"p%zu\": {\"scope\": [\"%s\"], \"costs\": [%.11f, %.11f]}", f ? "," : "", f,
            p->names[f], cost_of(1 - (long double)p->prior[f]),
            cost_of((long double)p->prior[f] * (long double)p->bias[f]));
  for (size_t i = 0; i < p->net.finding_count; i++)
    if (is_product(&p->net.findings[i])) write_product(out, p->names, &p->net.findings[i], i);
    else write_table(out, p->names, &p->net.findings[i], i);
  for (size_t i = 0; i < count; i++) write_not(out, p, &without[i], i);
  fprintf(out, "\n}}\n");
  return fclose(out) == 0;
}

static bool export_part(const struct part *p, const char *folder, int number)
{
  struct fault_set best[PLACES];
  int candidates[KEPT];
  size_t found;
  bool good = true;

  for (int f = 0; f < KEPT; f++) candidates[f] = f;
  found = net_best_sets(&p->net, candidates, p->net.fault_count, BEAM, best, PLACES);
  for (size_t i = 0; good && i < found; i++) {
    char path[1200];

    snprintf(path, sizeof path, "%s/case-%d-%zu.cfn", folder, number, i + 1);
    good = write_net(path, p, best, i);
    printf("%s %.11f ", path, -best[i].log_joint);
    for (size_t f = 0; f < p->net.fault_count; f++) putchar(holds(&best[i], f) ? '1' : '0');
    putchar('\n');
  }
  return good && found > 0;
}

static int export_case(const struct knowledge *k, const char *folder, const char *path, int number)
{
  struct assessment a;
  struct part p;
  size_t widest = 0, tables = 0;
  bool good;

  if (part_assess(k, path, &a)) return 1;
  part_make(&p, &a, KEPT, WIDEST);
  for (size_t i = 0; i < p.net.finding_count; i++) {
    if (is_product(&p.net.findings[i])) continue;
    tables++;
    if (p.net.findings[i].link_count > widest) widest = p.net.findings[i].link_count;
  }
  fprintf(stderr, "%s: %zu faults, %zu findings, %zu of them tables of up to %zu causes\n", path,
          p.net.fault_count, p.net.finding_count, tables, widest);
  good = export_part(&p, folder, number);
  part_free(&p);
  assessment_free(&a);
  return !good;
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct err e;
  int failed = 0;

  if (argc < 3) return 2;
  if (load_knowledge(&k, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  for (int i = 2; i < argc; i++) failed += export_case(&k, argv[1], argv[i], i - 1);
  knowledge_free(&k);
  return failed > 0;
}
