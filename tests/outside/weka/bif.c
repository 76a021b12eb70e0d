/* bif.c - see bif.h. */
#include "bif.h"

#include <string.h>

#include "brute.h"

struct writing {
  FILE *f;
  const char *const *names;
  char *evidence;
  size_t size;
  bool fits;
};

static void add_evidence(struct writing *w, const char *kind, size_t at, int state)
{
  size_t len = strlen(w->evidence);
  int n = snprintf(w->evidence + len, w->size - len, "%s%s%zu=%d", len ? "," : "", kind, at, state);

  if (n < 0 || (size_t)n >= w->size - len) w->fits = false;
}

static void variable(struct writing *w, const char *name, int states)
{
  fprintf(w->f, "<VARIABLE TYPE=\"nature\"><NAME>%s</NAME>", name);
  for (int s = 0; s < states; s++) fprintf(w->f, "<OUTCOME>s%d</OUTCOME>", s);
  fprintf(w->f, "</VARIABLE>\n");
}

static void node(struct writing *w, const char *kind, size_t at, int states)
{
  char name[32];

  snprintf(name, sizeof name, "%s%zu", kind, at);
  variable(w, name, states);
}

static bool is_plain(const struct net_finding *f, int *grade)
{
  int count = 0;

  for (int g = 0; g < f->grades; g++)
    if (f->seen[g] > 0) {
      *grade = g;
      count++;
    }
  return count == 1;
}

static void finding_variables(struct writing *w, const struct net_finding *f, size_t at)
{
  int grade;

  if (f->soft_sound > 0) {
    node(w, "x", at, 2);
    add_evidence(w, "x", at, 1);
    return;
  }
  node(w, "x", at, f->grades);
  if (is_plain(f, &grade)) {
    add_evidence(w, "x", at, grade);
  } else {
    node(w, "seen", at, 2);
    add_evidence(w, "seen", at, 1);
  }
}

/* The set of faults that a row of a finding's table stands for: the first parent varies
 * slowest. */
static unsigned set_of_row(const struct net_finding *f, size_t row)
{
  unsigned set = 0;

  for (size_t i = 0; i < f->link_count; i++)
    if (row >> (f->link_count - 1 - i) & 1) set |= 1u << f->links[i].fault;
  return set;
}

static void finding_tables(struct writing *w, const struct net_finding *f, size_t at)
{
  int grade;

  fprintf(w->f, "<DEFINITION><FOR>x%zu</FOR>", at);
  for (size_t i = 0; i < f->link_count; i++) fprintf(w->f, "<GIVEN>%s</GIVEN>", w->names[f->links[i].fault]);
  fprintf(w->f, "<TABLE>\n");
  for (size_t row = 0; row < (size_t)1 << f->link_count; row++) {
    long double chance[NET_MAX_GRADES] = {0};
    int states = f->soft_sound > 0 ? 2 : f->grades;

    if (f->soft_sound > 0) {
      chance[1] = brute_seen(f, set_of_row(f, row));
      chance[0] = 1 - chance[1];
    } else {
      brute_grades(f, set_of_row(f, row), chance);
    }
    for (int s = 0; s < states; s++) fprintf(w->f, "%.17Lg ", chance[s]);
    fputc('\n', w->f);
  }
  fprintf(w->f, "</TABLE></DEFINITION>\n");
  if (f->soft_sound > 0 || is_plain(f, &grade)) return;
  fprintf(w->f, "<DEFINITION><FOR>seen%zu</FOR><GIVEN>x%zu</GIVEN><TABLE>", at, at);
  for (int g = 0; g < f->grades; g++) fprintf(w->f, "%.17g %.17g ", 1 - f->seen[g], f->seen[g]);
  fprintf(w->f, "</TABLE></DEFINITION>\n");
}

static void fault_tables(struct writing *w, const struct net *net, size_t at)
{
  double bias = net->bias ? net->bias[at] : 1, most = bias > 1 ? bias : 1;

  fprintf(w->f, "<DEFINITION><FOR>%s</FOR><TABLE>%.17g %.17g</TABLE></DEFINITION>\n", w->names[at],
          1 - net->prior[at], net->prior[at]);
  if (bias == 1) return;
  fprintf(
      w->f,
      "<DEFINITION><FOR>bias%zu</FOR><GIVEN>%s</GIVEN><TABLE>%.17g %.17g %.17g %.17g</TABLE></DEFINITION>\n",
      at, w->names[at], 1 - 1 / most, 1 / most, 1 - bias / most, bias / most);
}

bool bif_write(FILE *f, const struct net *net, const char *const *names, char *evidence, size_t size)
{
  struct writing w = {f, names, evidence, size, true};

  if (net->fault_count > BIF_MAX_FAULTS) return false;
  evidence[0] = 0;
  fprintf(f,
          "<?xml version=\"1.0\"?>\n<!DOCTYPE BIF [ <!ELEMENT BIF ANY> ]>\n<BIF VERSION=\"0.3\">\n<NETWORK>\n"
          "<NAME>case</NAME>\n");
  for (size_t d = 0; d < net->fault_count; d++) {
    variable(&w, names[d], 2);
    if (!net->bias || net->bias[d] == 1) continue;
    node(&w, "bias", d, 2);
    add_evidence(&w, "bias", d, 1);
  }
  for (size_t i = 0; i < net->finding_count; i++) finding_variables(&w, &net->findings[i], i);
  for (size_t d = 0; d < net->fault_count; d++) fault_tables(&w, net, d);
  for (size_t i = 0; i < net->finding_count; i++) finding_tables(&w, &net->findings[i], i);
  fprintf(f, "</NETWORK>\n</BIF>\n");
  if (!evidence[0]) snprintf(evidence, size, "-");
  return w.fits && !ferror(f);
}
