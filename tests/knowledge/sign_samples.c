/* sign_samples.c - every sign, and every complaint that a fault leads to, must say at least
 * as much for its fault as its line in tests/signs states.
 *
 * Usage: sign_samples FOLDER            checks
 *        sign_samples FOLDER --missing  prints a line for every sign that has none, at half of
 *                                       what it says now, to be looked through and put into
 *                                       the file of the fault's system */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "knowledge/load.h"
#include "weight.h"

static const double faint = 0.3; /* decibans below which a sign says too little to be held to it */

static size_t check_all(const struct knowledge *k, const struct statements *s)
{
  size_t failed = 0;

  for (size_t i = 0; i < s->count; i++) {
    const struct statement *x = &s->items[i];

    if (statement_holds(k, x)) continue;
    printf("FAILED %s:%d: %s %s speaks for %s with %.1f db, not the %.1f stated\n", x->file, x->line,
           x->check >= 0 ? k->checks[x->check].id : "complaint",
           x->check >= 0 ? k->checks[x->check].results.items[x->result] : k->complaints[x->result].id,
           k->faults[x->fault].id, weight_of(k, x->fault, x->check, x->result), x->least);
    failed++;
  }
  return failed;
}

static double half_of(const struct knowledge *k, const struct sign *s)
{
  return weight_of(k, s->fault, s->check, s->check >= 0 ? s->result : s->complaint) / 2;
}

static void print_missing(const struct knowledge *k, const struct statements *s)
{
  for (size_t f = 0; f < k->fault_count; f++)
    for (size_t i = 0; i < k->sign_count; i++) {
      const struct sign *x = &k->signs[i];
      double least = half_of(k, x);

      if (x->fault != (int)f || least < faint / 2 || statement_find(s, x)) continue;
      if (least < 0.1) least = 0.1;
      printf("%s %s %s %.1f\n", x->fault_id, x->check >= 0 ? x->check_id : "complaint",
             x->check >= 0 ? x->result_id : x->complaint_id, least);
    }
}

/* How many signs no statement holds to anything. */
static size_t count_missing(const struct knowledge *k, const struct statements *s)
{
  size_t missing = 0;

  for (size_t i = 0; i < k->sign_count; i++)
    missing += half_of(k, &k->signs[i]) >= faint / 2 && !statement_find(s, &k->signs[i]);
  return missing;
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct statements s;
  struct buf b = {0};
  struct err e;
  char message[1200];
  size_t failed;

  if (argc < 2) return 2;
  if (load_knowledge(&k, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  statements_read(&k, argv[1], &s, &b);
  failed = b.len > 0 || s.count == 0;
  if (argc > 2 && strcmp(argv[2], "--missing") == 0) {
    print_missing(&k, &s);
    failed = 0;
  } else {
    printf("%s", buf_text(&b));
    failed += check_all(&k, &s);
    printf(
        "%zu statements, %zu do not hold; %zu signs have none (sign_samples FOLDER --missing prints them)\n",
        s.count, failed, count_missing(&k, &s));
  }
  buf_free(&b);
  statements_free(&s);
  knowledge_free(&k);
  return failed > 0;
}
