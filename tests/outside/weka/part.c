/* part.c - see part.h. */
#include "part.h"

#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/mem.h"
#include "shop/casefile.h"

static bool says_nothing(const struct net_finding *f)
{
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] != f->seen[0]) return false;
  return f->soft_sound <= 0;
}

/* The finding with the links of the kept faults only; number[] is each place's new number. */
static void keep_finding(struct part *p, const struct net_finding *from, const int *number,
                         struct net_finding *to)
{
  struct net_link *links = arena_array(&p->arena, from->link_count + 1, sizeof *links);

  *to = *from;
  to->links = links;
  to->link_count = 0;
  for (size_t i = 0; i < from->link_count; i++) {
    if (number[from->links[i].fault] < 0) continue;
    links[to->link_count] = from->links[i];
    links[to->link_count++].fault = number[from->links[i].fault];
  }
}

/* Does what was seen make its causes depend on each other? */
static bool couples(const struct net_finding *f)
{
  for (int g = 1; g < f->grades; g++)
    if (f->seen[g] > 0) return f->soft_sound <= 0 && !says_nothing(f);
  return false;
}

/* Would a finding that couples have more than `widest` of the kept faults, with one more? */
static bool too_wide(const struct net *all, const int *number, int more, size_t widest)
{
  for (size_t i = 0; i < all->finding_count; i++) {
    size_t count = 0;
    bool touched = false;

    if (!couples(&all->findings[i])) continue;
    for (size_t j = 0; j < all->findings[i].link_count; j++) {
      count += number[all->findings[i].links[j].fault] >= 0;
      touched = touched || all->findings[i].links[j].fault == more;
    }
    if (touched && count + 1 > widest) return true;
  }
  return false;
}

/* The most believed fault that is not numbered or passed over (-2) yet, or -1. */
static int next_believed(const struct assessment *a, const int *number)
{
  int best = -1;

  for (int i = 0; i < (int)a->net.count; i++)
    if (number[i] == -1 && (best < 0 || a->belief[i] > a->belief[best])) best = i;
  return best;
}

static void keep_faults(struct part *p, struct assessment *a, const struct net *all, int *number, size_t most,
                        size_t widest)
{
  int f;

  while (p->net.fault_count < most && (f = next_believed(a, number)) >= 0) {
    size_t n = p->net.fault_count;

    if (too_wide(all, number, f, widest)) {
      number[f] = -2;
      continue;
    }
    number[f] = (int)n;
    p->prior[n] = all->prior[f];
    p->bias[n] = all->bias[f];
    p->names[n] = a->net.fault_of[f] < 0 ? "not-listed" : a->net.k->faults[a->net.fault_of[f]].id;
    p->net.fault_count++;
  }
}

void part_make(struct part *p, struct assessment *a, size_t most, size_t widest)
{
  struct net all = casenet_view(&a->net, a->net.evidence_count);
  struct net_finding *findings;
  int *number = mem_array(a->net.count, sizeof *number);

  *p = (struct part){.net = {.prior = p->prior, .bias = p->bias}};
  for (size_t i = 0; i < a->net.count; i++) number[i] = -1;
  keep_faults(p, a, &all, number, most, widest);
  findings = arena_array(&p->arena, all.finding_count + 1, sizeof *findings);
  for (size_t i = 0; i < all.finding_count; i++) {
    keep_finding(p, &all.findings[i], number, &findings[p->net.finding_count]);
    if (findings[p->net.finding_count].link_count > 0 && !says_nothing(&all.findings[i]))
      p->net.finding_count++;
  }
  p->net.findings = findings;
  free(number);
}

void part_free(struct part *p) { arena_free(&p->arena); }

int part_assess(const struct knowledge *k, const char *path, struct assessment *a)
{
  struct json *j = NULL;
  struct bench_case c;
  struct assessor *assessor = NULL;
  struct err e = {0};
  char *text = NULL, message[1200];
  size_t len;
  int status = file_read(path, JSON_MAX_BYTES, &text, &len, &e);

  if (status == 0) status = json_read(path, text, len, &j, &e);
  if (status == 0) status = casefile_read(k, path, json_member(j, "case"), &c, &e);
  if (status == 0) {
    status = assessor_open(k, &assessor, &e);
    if (status == 0) status = assess_case(assessor, &c, a, &e);
    assessor_close(assessor);
    case_free(&c);
  }
  json_free(j);
  free(text);
  if (status) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
  }
  return status;
}
