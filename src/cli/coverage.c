/* coverage.c - how much the knowledge covers and what that rests on, as Markdown. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/commands.h"
#include "knowledge/load.h"
#include "knowledge/parting.h"

enum { CLOSEST_SHOWN = 15, BASES = 5 };

static const char *const systems[] = {"fuel",        "air",      "ignition", "compression", "exhaust",
                                      "lubrication", "governor", "starting", "driven",      "use"};
enum { SYSTEMS = sizeof systems / sizeof systems[0] };

static size_t system_of(const char *id)
{
  size_t i = 0;

  while (i + 1 < SYSTEMS && strcmp(systems[i], id) != 0) i++;
  return i;
}

/* ---- what it rests on ----------------------------------------------------------------- */

static void basis_row(const char *what, const size_t *count)
{
  size_t all = 0;

  for (size_t b = 0; b < BASES; b++) all += count[b];
  printf("| %s | %zu | %zu | %zu | %zu | %zu |\n", what, all, count[BASIS_PUBLISHED],
         count[BASIS_COMMON_PRACTICE], count[BASIS_MEMORY], count[BASIS_ESTIMATE]);
}

#define BASIS_ROW(what, array, number)                                                                       \
  do {                                                                                                       \
    size_t count[BASES] = {0};                                                                               \
    for (size_t i = 0; i < (number); i++) count[(array)[i].origin.basis]++;                                  \
    basis_row(what, count);                                                                                  \
  } while (0)

static void print_basis(const struct knowledge *k)
{
  size_t signs[BASES] = {0}, leads[BASES] = {0};

  for (size_t i = 0; i < k->sign_count; i++)
    (k->signs[i].check >= 0 ? signs : leads)[k->signs[i].origin.basis]++;
  printf("## What it rests on\n\n| entries | all | published | common practice | memory | estimate |\n"
         "|---|---:|---:|---:|---:|---:|\n");
  BASIS_ROW("machine classes", k->classes, k->class_count);
  BASIS_ROW("complaints", k->complaints, k->complaint_count);
  BASIS_ROW("faults", k->faults, k->fault_count);
  basis_row("complaints that faults lead to", leads);
  BASIS_ROW("base rates of one machine class", k->base_rates, k->base_rate_count);
  BASIS_ROW("checks", k->checks, k->check_count);
  basis_row("signs", signs);
  BASIS_ROW("bands of readings", k->bands, k->bands_count);
  BASIS_ROW("covers", k->covers, k->cover_count);
  BASIS_ROW("repairs", k->repairs, k->repair_count);
  BASIS_ROW("cautions", k->cautions, k->caution_count);
  BASIS_ROW("rules", k->rules, k->rule_count);
  printf("\nChances and base rates are estimates almost everywhere: no published counts of such faults were "
         "found "
         "that would hold.\n%zu sources are named.\n\n",
         k->source_count);
}

/* ---- systems -------------------------------------------------------------------------- */

static void print_systems(const struct knowledge *k)
{
  size_t faults[SYSTEMS][BASES] = {{0}}, checks[SYSTEMS][BASES] = {{0}}, measured[SYSTEMS] = {0};

  for (size_t i = 0; i < k->fault_count; i++)
    faults[system_of(k->faults[i].system)][k->faults[i].origin.basis]++;
  for (size_t i = 0; i < k->check_count; i++) {
    checks[system_of(k->checks[i].system)][k->checks[i].origin.basis]++;
    measured[system_of(k->checks[i].system)] += k->checks[i].kind == KIND_MEASURE;
  }
  printf("## Systems\n\nPublished, common practice, memory and estimate in this order.\n\n"
         "| system | faults | by basis | checks | by basis | measured |\n|---|---:|---|---:|---|---:|\n");
  for (size_t s = 0; s < SYSTEMS; s++) {
    size_t f = 0, c = 0;

    for (size_t b = 0; b < BASES; b++) {
      f += faults[s][b];
      c += checks[s][b];
    }
    printf("| %s | %zu | %zu, %zu, %zu, %zu | %zu | %zu, %zu, %zu, %zu | %zu |\n", systems[s], f,
           faults[s][1], faults[s][2], faults[s][3], faults[s][4], c, checks[s][1], checks[s][2],
           checks[s][3], checks[s][4], measured[s]);
  }
  printf("\n");
}

/* Signs of the faults of one system (rows) at the checks of another (columns). */
static void print_matrix(const struct knowledge *k)
{
  size_t signs[SYSTEMS][SYSTEMS] = {{0}};

  for (size_t i = 0; i < k->sign_count; i++)
    if (k->signs[i].check >= 0)
      signs[system_of(k->faults[k->signs[i].fault].system)][system_of(k->checks[k->signs[i].check].system)]++;
  printf("## Where faults show\n\nSigns of the faults of a system (down) at the checks of a system "
         "(across).\n\n|");
  for (size_t s = 0; s < SYSTEMS; s++) printf(" | %s", systems[s]);
  printf(" |\n|---");
  for (size_t s = 0; s < SYSTEMS; s++) printf("|---:");
  printf("|\n");
  for (size_t f = 0; f < SYSTEMS; f++) {
    printf("| %s", systems[f]);
    for (size_t c = 0; c < SYSTEMS; c++) printf(" | %zu", signs[f][c]);
    printf(" |\n");
  }
  printf("\n");
}

/* ---- machines and complaints ---------------------------------------------------------- */

static void print_machines(const struct knowledge *k, const struct parting *t)
{
  printf("## Machines\n\nWhat a machine of the class can have and where it can be looked for.\n\n"
         "| machine | faults | checks | complaints |\n|---|---:|---:|---:|\n");
  for (size_t m = 0; m < k->class_count; m++) {
    size_t faults = 0, checks = 0, complaints = 0;
    const struct refs *needs;

    for (size_t i = 0; i < k->fault_count; i++) {
      needs = &k->faults[i].needs;
      faults += parting_fits(t, (int)m, &needs, 1);
    }
    for (size_t i = 0; i < k->check_count; i++) {
      needs = &k->checks[i].needs;
      checks += parting_fits(t, (int)m, &needs, 1);
    }
    for (size_t i = 0; i < k->complaint_count; i++) {
      needs = &k->complaints[i].needs;
      complaints += parting_fits(t, (int)m, &needs, 1);
    }
    printf("| %s | %zu | %zu | %zu |\n", k->classes[m].name, faults, checks, complaints);
  }
  printf("\n");
}

static void print_complaints(const struct knowledge *k)
{
  printf("## Complaints\n\n| complaint | faults that lead to it |\n|---|---:|\n");
  for (size_t i = 0; i < k->complaint_count; i++) {
    size_t first, last;

    knowledge_signs_of_complaint(k, (int)i, &first, &last);
    printf("| %s | %zu |\n", k->complaints[i].name, last - first);
  }
  printf("\n");
}

/* ---- faults --------------------------------------------------------------------------- */

/* The pair in which this fault is parted least. */
static const struct parted *closest(const struct parted *pairs, size_t count, int fault)
{
  for (size_t i = 0; i < count; i++)
    if (pairs[i].a == fault || pairs[i].b == fault) return &pairs[i];
  return NULL;
}

static void print_fault(const struct knowledge *k, const struct parted *pairs, size_t count, int fault)
{
  const struct fault *f = &k->faults[fault];
  const struct parted *p = closest(pairs, count, fault);
  size_t checks = 0, complaints = 0;

  for (size_t i = 0; i < k->sign_count; i++)
    if (k->signs[i].fault == fault) {
      bool again = i > 0 && k->signs[i - 1].fault == fault && k->signs[i - 1].check == k->signs[i].check;

      if (k->signs[i].check < 0) complaints++;
      else checks += !again;
    }
  printf("| %s | %s | %zu | %zu | ", f->id, basis_name(f->origin.basis), checks, complaints);
  if (p)
    printf("%s | %s, %.0f %%", k->faults[p->a == fault ? p->b : p->a].id,
           p->check >= 0 ? k->checks[p->check].id : "nothing", 100 * p->distance);
  else printf("|");
  printf(" |\n");
}

static void print_faults(const struct knowledge *k, const struct parted *pairs, size_t count)
{
  printf("## Faults\n\nFor each: on how many checks it shows, how many complaints it leads to, the fault "
         "that is "
         "hardest to tell from it\non the same machine, and the check that does it best: in how many of a "
         "hundred "
         "machines it comes out differently.\n");
  for (size_t s = 0; s < SYSTEMS; s++) {
    printf("\n### %s\n\n| fault | basis | checks | complaints | hardest to tell from | by |\n"
           "|---|---|---:|---:|---|---|\n",
           systems[s]);
    for (size_t i = 0; i < k->fault_count; i++)
      if (system_of(k->faults[i].system) == s) print_fault(k, pairs, count, (int)i);
  }
  printf("\n");
}

static void print_groups(const struct knowledge *k, const struct parted *pairs, size_t count)
{
  int *group = mem_array(k->fault_count, sizeof *group);
  size_t found = 0;

  parting_groups(pairs, count, k->fault_count, group);
  printf("## Ambiguity groups\n\nFaults that no check parts on at least %.0f of a hundred machines:\n\n",
         100 * PARTING_LEAST);
  for (size_t f = 0; f < k->fault_count; f++) {
    if (group[f] != (int)f) continue;
    found++;
    printf("-");
    for (size_t i = f; i < k->fault_count; i++)
      if (group[i] == (int)f) printf(" %s", k->faults[i].id);
    printf("\n");
  }
  if (found == 0) printf("none.\n");
  printf("\nThe pairs that are parted least, of %zu that one machine can have:\n\n"
         "| fault | fault | best check | parts |\n|---|---|---|---:|\n",
         count);
  for (size_t i = 0; i < count && i < CLOSEST_SHOWN; i++)
    printf("| %s | %s | %s | %.0f %% |\n", k->faults[pairs[i].a].id, k->faults[pairs[i].b].id,
           pairs[i].check >= 0 ? k->checks[pairs[i].check].id : "none", 100 * pairs[i].distance);
  free(group);
}

int print_coverage(struct err *e)
{
  struct knowledge k;
  struct parting *t;
  struct parted *pairs;
  size_t count;
  int status = load_knowledge(&k, e);

  if (status) return status;
  t = parting_open(&k);
  parting_pairs(t, &pairs, &count);
  printf("# What the knowledge covers\n\nMade by `pullcord print coverage`; not to be edited by hand.\n\n");
  print_basis(&k);
  print_systems(&k);
  print_matrix(&k);
  print_machines(&k, t);
  print_complaints(&k);
  print_faults(&k, pairs, count);
  print_groups(&k, pairs, count);
  free(pairs);
  parting_close(t);
  knowledge_free(&k);
  return 0;
}
