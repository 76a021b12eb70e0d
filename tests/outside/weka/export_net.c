/* export_net.c - the networks of real cases, cut down to their 12 most believed faults, as
 * XML-BIF, with our own beliefs worked out on exactly these networks.
 * Usage: export_net FOLDER CASE.json...; prints lines "net.xml evidence fault 1 belief
 * allowed-difference". The knowledge is found as the program finds it. */
#include <stdlib.h>
#include <string.h>

#include "knowledge/load.h"
#include "part.h"

enum { KEPT = 12 };

/* What is soft about the evidence, on standard error, so that the choice of cases shows. */
static void describe(const char *path, const struct net *net)
{
  size_t graded = 0, mixed = 0, soft = 0, biased = 0;

  for (size_t i = 0; i < net->finding_count; i++) {
    int several = 0;

    for (int g = 0; g < net->findings[i].grades; g++) several += net->findings[i].seen[g] > 0;
    graded += net->findings[i].grades > 2;
    mixed += several > 1;
    soft += net->findings[i].soft_sound > 0;
  }
  for (size_t f = 0; f < net->fault_count; f++) biased += net->bias[f] != 1;
  fprintf(stderr,
          "%s: %zu faults, %zu findings (%zu of more than two grades, %zu between grades, %zu softly sound), "
          "%zu faults biased\n",
          path, net->fault_count, net->finding_count, graded, mixed, soft, biased);
}

static int export_case(const struct knowledge *k, const char *folder, const char *path, int number)
{
  struct assessment a;
  struct part p;
  double belief[BIF_MAX_FAULTS];
  char file[1200], evidence[2000];
  FILE *f;
  bool good;

  if (part_assess(k, path, &a)) return 1;
  part_make(&p, &a, KEPT, KEPT);
  snprintf(file, sizeof file, "%s/case-%d.xml", folder, number);
  f = fopen(file, "w");
  good = f && net_solve(&p.net, belief, NULL, NULL) &&
         bif_write(f, &p.net, p.names, evidence, sizeof evidence);
  if (f && fclose(f) != 0) good = false;
  describe(path, &p.net);
  for (size_t i = 0; good && i < p.net.fault_count; i++)
    printf("%s %s %s 1 %.17g 1e-9\n", file, evidence, p.names[i], belief[i]);
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
