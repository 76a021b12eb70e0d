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

void part_make(struct part *p, struct assessment *a, size_t most)
{
  struct net all = casenet_view(&a->net, a->net.evidence_count);
  struct net_finding *findings;
  int *number = mem_array(a->net.count, sizeof *number);

  *p = (struct part){.net = {.prior = p->prior, .bias = p->bias}};
  for (size_t i = 0; i < a->net.count; i++) number[i] = -1;
  for (size_t n = 0; n < most && n < a->net.count; n++) {
    size_t best = a->net.count;

    for (size_t i = 0; i < a->net.count; i++)
      if (number[i] < 0 && (best == a->net.count || a->belief[i] > a->belief[best])) best = i;
    number[best] = (int)n;
    p->prior[n] = all.prior[best];
    p->bias[n] = all.bias[best];
    p->names[n] = a->net.fault_of[best] < 0 ? "not-listed" : a->net.k->faults[a->net.fault_of[best]].id;
    p->net.fault_count++;
  }
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
