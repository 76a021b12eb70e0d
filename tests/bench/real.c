/* real.c - times with the real knowledge: loading, the engine, a conversation, the program. */
#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "base/mem.h"
#include "bench.h"
#include "knowledge/load.h"
#include "shop/casefile.h"

enum { LOADS = 21, CASES_EVERY = 23 };

/* ---- cases ---------------------------------------------------------------------------- */

struct list {
  char **items;
  size_t count, room;
};

static void list_folder(struct list *l, const char *folder, int depth)
{
  DIR *d = opendir(folder);
  struct dirent *entry;

  while (d && (entry = readdir(d))) {
    char *path = file_join(folder, entry->d_name);
    size_t n = strlen(entry->d_name);
    void *items = l->items;

    if (entry->d_name[0] != '.' && depth > 0) list_folder(l, path, depth - 1);
    if (n < 6 || strcmp(entry->d_name + n - 5, ".json") != 0) {
      free(path);
      continue;
    }
    mem_grow(&items, &l->room, l->count + 1, sizeof *l->items);
    l->items = items;
    l->items[l->count++] = path;
  }
  if (d) closedir(d);
}

static int by_name(const void *a, const void *b) { return strcmp(*(char *const *)a, *(char *const *)b); }

char **bench_cases(const char *source, size_t every, size_t *count)
{
  struct list l = {0};
  char *folder = file_join(source, "tests/cases");

  list_folder(&l, folder, 1);
  free(folder);
  if (l.count > 1) qsort(l.items, l.count, sizeof *l.items, by_name);
  *count = 0;
  for (size_t i = 0; i < l.count; i++)
    if (i % every == 0) l.items[(*count)++] = l.items[i];
    else free(l.items[i]);
  return l.items;
}

void bench_free_cases(char **paths, size_t count)
{
  for (size_t i = 0; i < count; i++) free(paths[i]);
  free(paths);
}

bool bench_read_case(const struct knowledge *k, const char *path, struct bench_case *c)
{
  struct json *j = NULL;
  struct err e;
  char *text = NULL;
  size_t len;
  bool good = file_read(path, JSON_MAX_BYTES, &text, &len, &e) == 0;

  good = good && json_read(path, text, len, &j, &e) == 0;
  good = good && casefile_read(k, path, json_member(j, "case"), c, &e) == 0;

  json_free(j);
  free(text);
  return good;
}

/* ---- loading -------------------------------------------------------------------------- */

void bench_load(void)
{
  double load[LOADS], open[LOADS];
  char note[100];

  for (int i = 0; i < LOADS; i++) {
    struct knowledge k;
    struct assessor *a;
    struct err e;
    double start = bench_now();

    if (load_knowledge(&k, &e)) return;
    load[i] = bench_now() - start;
    start = bench_now();
    if (assessor_open(&k, &a, &e)) return;
    open[i] = bench_now() - start;
    snprintf(note, sizeof note, "%zu faults, %zu checks, %zu signs, %zu rules", k.fault_count, k.check_count,
             k.sign_count, k.rule_count);
    assessor_close(a);
    knowledge_free(&k);
  }
  bench_add("parts of a start, shipped, warm", "knowledge: find, read, link", "ms", load, LOADS, 0, note);
  bench_add("parts of a start, shipped, warm", "engine: open, with all rules", "ms", open, LOADS, 0, NULL);
}

/* ---- one more answer ------------------------------------------------------------------ */

/* All results but the last are told; then the last one comes in. */
static double last_answer(struct assessor *a, struct bench_case *c, double *worked)
{
  struct case_result last = c->results[c->result_count - 1];
  struct assessment out;
  struct err e;
  double start;

  c->result_count--;
  if (assess_case(a, c, &out, &e)) return -1;
  assessment_free(&out);
  *worked = bench_worked();
  start = bench_now();
  case_set_result(c, last);
  if (assess_case(a, c, &out, &e)) return -1;
  start = bench_now() - start;
  *worked = bench_worked() - *worked;
  assessment_free(&out);
  return start;
}

/* Beliefs alone, of the whole network of the case. */
static double beliefs_of(struct assessment *a)
{
  struct net net = casenet_view(&a->net, a->net.evidence_count);
  double *belief = mem_array(net.fault_count, sizeof *belief);
  double *blame = mem_array(net.fault_count, sizeof *blame);
  double start = bench_now();
  bool good = net_solve(&net, belief, blame, NULL);

  start = bench_now() - start;
  free(belief);
  free(blame);
  return good ? start : -1;
}

static double first_look(const struct knowledge *k, const struct bench_case *c, double *beliefs)
{
  struct assessor *a;
  struct assessment out;
  struct err e;
  double start;

  if (assessor_open(k, &a, &e)) return -1;
  start = bench_now();
  if (assess_case(a, c, &out, &e) == 0) {
    start = bench_now() - start;
    *beliefs = beliefs_of(&out);
    assessment_free(&out);
  } else {
    start = -1;
  }
  assessor_close(a);
  return start;
}

/* The library alone: one more finding told and run, all rules being there. */
static double answer_floor(const struct bench_real *r)
{
  char file[] = "/tmp/pullcord-bench-XXXXXX";
  const char *const args[] = {r->floor, "answers", r->source, file, NULL};
  int fd = mkstemp(file);
  double ms = 0;
  FILE *f = fd >= 0 && bench_spawn(r->source, args).good ? fopen(file, "r") : NULL;

  if (f && fscanf(f, "%lf", &ms) != 1) ms = 0;
  if (f) fclose(f);
  if (fd >= 0) close(fd);
  if (fd >= 0) unlink(file);
  return ms;
}

void bench_conversation(const struct bench_real *r)
{
  size_t count, more = 0, whole = 0;
  char **paths = bench_cases(r->source, CASES_EVERY, &count), note[80];
  double *answer = mem_array(count + 1, sizeof *answer), *first = mem_array(count + 1, sizeof *first);
  double *beliefs = mem_array(count + 1, sizeof *beliefs), *worked = mem_array(count + 1, sizeof *worked);
  double bare = answer_floor(r), ratio;
  struct assessor *a;
  struct err e;

  if (assessor_open(r->k, &a, &e)) count = 0;
  for (size_t i = 0; i < count; i++) {
    struct bench_case c;
    double ms;

    if (!bench_read_case(r->k, paths[i], &c)) continue;
    ms = first_look(r->k, &c, &beliefs[whole]);
    if (ms >= 0) first[whole++] = ms;
    ms = c.result_count > 0 ? last_answer(a, &c, &worked[more]) : -1;
    if (ms >= 0) answer[more++] = ms;
    case_free(&c);
  }
  snprintf(note, sizeof note, "every %drd case of tests/cases", CASES_EVERY);
  bench_add("conversation", "whole case, fresh engine, to ranking and plan", "ms", first, whole, 0, note);
  bench_add("conversation", "of which beliefs of all faults, exact", "ms", beliefs, whole, 0, note);
  bench_add("conversation", "one more answer, to new ranking and plan", "ms", answer, more, 0.5, note);
  bench_add("conversation", "the same, of the processor", "ms", worked, more, 0, note);
  ratio = more && bare > 0 ? worked[more / 2] / bare : 0;
  bench_add("conversation", "floor: bare library, one more finding run", "ms", &bare, 1, 0,
            "median of all checks; no weighing, no machine told");
  bench_add("conversation", "one more answer over that floor", "x", &ratio, 1, 0, NULL);
  if (count) assessor_close(a);
  bench_free_cases(paths, count);
  free(answer);
  free(first);
  free(beliefs);
  free(worked);
}
