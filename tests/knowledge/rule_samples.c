/* rule_samples.c - every rule has a sample: it fires on the one case with the conclusion that
 * is stated, and draws nothing on the other. Usage: rule_samples FOLDER [FILE-PART]
 * With FILE-PART only the files whose names hold it are run, and rules may lack samples. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "knowledge/load.h"
#include "sample.h"

static size_t passed, failed;

static void run(const struct knowledge *k, const struct sample *s)
{
  struct buf b = {0};

  if (s->rule < 0) {
    buf_add(&b, "there is no such rule");
  } else {
    sample_run(k, s, s->fires, s->conclusion, &b);
    if (b.len == 0) sample_run(k, s, s->quiet, NULL, &b);
  }
  if (b.len) printf("FAILED %s: rule %s %s\n", s->file, s->rule_id, b.text);
  if (b.len) failed++;
  else passed++;
  buf_free(&b);
}

/* Every rule wants a sample of its own. */
static void look_for_missing(const struct knowledge *k, const struct samples *s)
{
  for (size_t r = 0; r < k->rule_count; r++) {
    bool has = false;

    for (size_t i = 0; i < s->count; i++) has = has || s->items[i].rule == (int)r;
    if (has) continue;
    printf("FAILED %s:%d: rule %s has no sample\n", k->rules[r].origin.file, k->rules[r].origin.line,
           k->rules[r].id);
    failed++;
  }
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct samples s;
  struct buf b = {0};
  struct err e;
  char message[1200];

  if (argc < 2) return 2;
  if (load_knowledge(&k, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  samples_read(&k, argv[1], &s, &b);
  if (b.len) printf("FAILED %s", b.text);
  failed += b.len > 0;
  for (size_t i = 0; i < s.count; i++)
    if (argc < 3 || strstr(s.items[i].file, argv[2])) run(&k, &s.items[i]);
  if (argc < 3) look_for_missing(&k, &s);
  printf("%zu passed, %zu failed\n", passed, failed);
  buf_free(&b);
  samples_free(&s);
  knowledge_free(&k);
  return failed > 0 || passed == 0;
}
