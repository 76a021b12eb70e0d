/* parts.c - see parts.h. */
#include "report/parts.h"

#include <stdlib.h>
#include <string.h>

const char *part_fault_name(const struct knowledge *k, int fault)
{
  if (fault >= 0) return k->faults[fault].name;
  return fault == NEXT_NOT_LISTED ? "something not listed" : "nothing broken";
}

const char *part_fault_id(const struct knowledge *k, int fault)
{
  if (fault >= 0) return k->faults[fault].id;
  return fault == NEXT_NOT_LISTED ? "not-listed" : "nothing-broken";
}

void part_evidence(struct buf *out, const struct knowledge *k, const struct evidence *e)
{
  switch (e->kind) {
  case EVIDENCE_COMPLAINT: buf_addf(out, "complaint: %s", k->complaints[e->subject].name); break;
  case EVIDENCE_SPEAKS: buf_addf(out, "taken together (%s)", k->rules[e->rule].id); break;
  case EVIDENCE_RESULT:
    buf_addf(out, "%s: %s", k->checks[e->subject].name, k->checks[e->subject].labels.items[e->result]);
    break;
  case EVIDENCE_IMPLIED:
    buf_addf(out, "%s: so most likely %s", k->checks[e->subject].name,
             k->checks[e->subject].labels.items[e->result]);
    break;
  }
}

const struct sign *part_sign(const struct knowledge *k, const struct evidence *e, int fault)
{
  const struct sign *best = NULL;
  size_t first, last;

  if (fault < 0 || e->kind == EVIDENCE_SPEAKS) return NULL;
  if (e->kind == EVIDENCE_COMPLAINT) knowledge_signs_of_complaint(k, e->subject, &first, &last);
  else knowledge_signs_of_check(k, e->subject, &first, &last);
  for (size_t i = first; i < last; i++)
    if (k->signs[i].fault == fault && (k->signs[i].result == e->result || (!best && e->result == 0)))
      best = &k->signs[i];
  return best;
}

bool part_unexplained(const struct knowledge *k, const struct evidence *e, int fault)
{
  if (e->kind == EVIDENCE_SPEAKS || e->kind == EVIDENCE_IMPLIED || e->result == 0 || fault < 0) return false;
  return part_sign(k, e, fault) == NULL;
}

void part_estimate(struct buf *out, const struct knowledge *k, const struct assessment *a,
                   const struct sensitivity *s, int evidence)
{
  struct buf what = {0};

  if (evidence >= 0) part_evidence(&what, k, &a->net.evidence[evidence]);
  switch (s->what.kind) {
  case ESTIMATE_PRIOR:
    buf_addf(out, "the base rate of \"%s\"", part_fault_name(k, a->net.fault_of[s->what.fault]));
    break;
  case ESTIMATE_LINK:
    buf_addf(out, "how often \"%s\" brings about \"%s\"", part_fault_name(k, a->net.fault_of[s->what.fault]),
             buf_text(&what));
    break;
  case ESTIMATE_LEAK: buf_addf(out, "how often \"%s\" comes about anyway", buf_text(&what)); break;
  }
  buf_free(&what);
}

size_t part_shown(const struct knowledge *k, const struct assessment *a, size_t most)
{
  double from = knowledge_setting(k, "show-belief", 0.02);
  size_t n = 0;

  while (n < a->ranking_count && n < most && (n < 3 || a->ranking[n].blame >= from)) n++;
  return n;
}

/* Is something that lies under this cover still to go back? */
static bool held_open(const struct knowledge *k, const bool *off, size_t cover)
{
  for (size_t i = 0; i < k->cover_count; i++)
    for (int x = off[i] ? k->covers[i].under : -1; x >= 0; x = k->covers[x].under)
      if (x == (int)cover) return true;
  return false;
}

/* The covers of a set in the order in which they go back; the set is emptied. */
static size_t innermost_first(const struct knowledge *k, bool *off, int *order)
{
  size_t count = 0, all = 0;

  for (size_t i = 0; i < k->cover_count; i++) all += off[i];
  while (count < all)
    for (size_t i = k->cover_count; i-- > 0;)
      if (off[i] && !held_open(k, off, i)) {
        order[count++] = (int)i;
        off[i] = false;
        break;
      }
  return count;
}

size_t part_covers(const struct knowledge *k, const struct bench_case *c, const struct refs *wanted,
                   int *order)
{
  bool *off = mem_array(k->cover_count + 1, sizeof *off);
  size_t count, open;

  for (size_t i = 0; i < wanted->count; i++)
    for (int x = wanted->at[i]; x >= 0; x = k->covers[x].under)
      off[x] = case_needs(c, &k->covers[x].needs, &open) != TRI_LACKS;
  count = innermost_first(k, off, order);
  for (size_t i = 0; i < count / 2; i++) {
    int other = order[i];

    order[i] = order[count - 1 - i];
    order[count - 1 - i] = other;
  }
  free(off);
  return count;
}

static void add_caution(const struct knowledge *k, const struct bench_case *c, int *ids, size_t *count,
                        int caution)
{
  size_t open;

  for (size_t i = 0; i < *count; i++)
    if (ids[i] == caution) return;
  if (case_needs(c, &k->cautions[caution].needs, &open) != TRI_LACKS) ids[(*count)++] = caution;
}

void part_add_cautions(const struct knowledge *k, const struct bench_case *c, const struct refs *own,
                       const struct refs *off, int *ids, size_t *count)
{
  int *order = mem_array(k->cover_count + 1, sizeof *order);
  size_t covers = part_covers(k, c, off, order);

  for (size_t i = 0; i < own->count; i++) add_caution(k, c, ids, count, own->at[i]);
  for (size_t i = 0; i < covers; i++)
    for (size_t j = 0; j < k->covers[order[i]].cautions.count; j++)
      add_caution(k, c, ids, count, k->covers[order[i]].cautions.at[j]);
  free(order);
}

size_t part_cautions(const struct knowledge *k, const struct bench_case *c, const struct assessment *a, int *ids)
{
  size_t count = 0;

  for (size_t i = 0; i < a->drawn.count; i++)
    if (a->drawn.items[i].kind == WARN) add_caution(k, c, ids, &count, a->drawn.items[i].a);
  if (a->disposition == DISPOSITION_REPAIR && a->ranking[0].fault >= 0) {
    const struct repair *r = &k->repairs[k->faults[a->ranking[0].fault].repair];

    part_add_cautions(k, c, &r->cautions, &r->off, ids, &count);
  } else if (a->plan.count > 0) {
    const struct check *next = &k->checks[a->plan.steps[0].check];

    part_add_cautions(k, c, &next->cautions, &next->off, ids, &count);
  }
  return count;
}

void part_caution_short(struct buf *out, const char *text)
{
  enum { SHORTEST = 40 };
  const char *end = text;

  do {
    end = strstr(end, ". ");
    end = end ? end + 1 : text + strlen(text);
  } while (*end && end - text < SHORTEST);
  buf_addn(out, text, (size_t)(end - text));
}

size_t part_to_refit(const struct knowledge *k, const struct bench_case *c, int *order)
{
  bool *off = mem_array(k->cover_count + 1, sizeof *off);
  size_t count;

  memcpy(off, c->off, k->cover_count * sizeof *off);
  count = innermost_first(k, off, order);
  free(off);
  return count;
}
