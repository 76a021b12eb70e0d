/* test_real_cases.c - over a sample of tests/cases, with all the knowledge: weights add up
 * to the odds, and a result taken back leaves nothing behind.
 * Usage: test_real_cases TOP-OF-SOURCES */
#include <dirent.h>
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/file.h"
#include "base/mem.h"
#include "fixture.h"
#include "knowledge/load.h"
#include "shop/casefile.h"

enum { EVERY = 23 }; /* a prime, so that it goes through all the folders */

static const char *source;
static struct knowledge k;
static struct assessor *assessor;
static char **paths;
static size_t path_count, path_room;

static void list_folder(const char *folder, int depth)
{
  DIR *d = opendir(folder);
  struct dirent *entry;

  while (d && (entry = readdir(d))) {
    char *path = file_join(folder, entry->d_name);
    size_t n = strlen(entry->d_name);
    void *items = paths;

    if (entry->d_name[0] != '.' && depth > 0) list_folder(path, depth - 1);
    if (n < 6 || strcmp(entry->d_name + n - 5, ".json") != 0) {
      free(path);
      continue;
    }
    mem_grow(&items, &path_room, path_count + 1, sizeof *paths);
    paths = items;
    paths[path_count++] = path;
  }
  if (d) closedir(d);
}

static int by_name(const void *a, const void *b) { return strcmp(*(char *const *)a, *(char *const *)b); }

/* False for a case that cannot be read; which those are is for other tests to say. */
static bool open_case(const char *path, struct bench_case *c)
{
  struct json *j = NULL;
  struct err e = {0};
  char *text = NULL;
  size_t len;
  bool good;

  if (file_read(path, JSON_MAX_BYTES, &text, &len, &e) || json_read(path, text, len, &j, &e))
    fail_msg("%s: %s", path, e.text);
  good = casefile_read(&k, path, json_member(j, "case"), c, &e) == 0;
  json_free(j);
  free(text);
  return good;
}

static void assess(struct assessor *by, const char *path, const struct bench_case *c, struct assessment *a)
{
  struct err e = {0};

  if (assess_case(by, c, a, &e)) fail_msg("%s: %s", path, e.text);
}

static void odds_add_up(const char *path, struct assessment *a)
{
  double *odds = assess_odds(a);
  const double *last = odds + a->net.evidence_count * a->net.count;

  assert_non_null(odds);
  for (size_t p = 0; p < a->net.count; p++) {
    double want = 10 * log10(a->belief[p] / (1 - a->belief[p])), sum = odds[p];

    for (size_t i = 1; i <= a->net.evidence_count; i++)
      sum += odds[i * a->net.count + p] - odds[(i - 1) * a->net.count + p];
    if (a->belief[p] < 1e-12 || a->belief[p] > 1 - 1e-12) continue; /* shown as -120 or 120 */
    if (last[p] != want || fabs(sum - want) > 1e-9)
      fail_msg("%s: odds %.15g, belief %.15g, sum %.15g", path, last[p], want, sum);
  }
  free(odds);
}

static void test_odds(void **state)
{
  size_t done = 0;

  (void)state;
  for (size_t i = 0; i < path_count; i += EVERY) {
    struct bench_case c;
    struct assessment a;

    if (!open_case(paths[i], &c)) continue;
    done++;
    assess(assessor, paths[i], &c, &a);
    odds_add_up(paths[i], &a);
    assessment_free(&a);
    case_free(&c);
  }
  assert_true(done * EVERY > path_count * 9 / 10);
}

/* Told, and taken back: the same bytes as a fresh engine gives that never heard of it. */
static void taken_back(const char *path, struct bench_case *c, size_t at)
{
  struct case_result r = c->results[at];
  struct assessment never, after;
  struct assessor *fresh;
  struct err e = {0};

  assess(assessor, path, c, &after);
  assessment_free(&after);
  case_drop_result(c, r.check);
  assess(assessor, path, c, &after);
  assert_int_equal(assessor_open(&k, &fresh, &e), 0);
  assess(fresh, path, c, &never);
  assert_int_equal(after.net.count, never.net.count);
  assert_int_equal(after.drawn.count, never.drawn.count);
  if (memcmp(after.belief, never.belief, never.net.count * sizeof *never.belief) != 0)
    fail_msg("%s: something is left of %s", path, k.checks[r.check].id);
  assert_true(after.sound == never.sound && after.two_or_more == never.two_or_more);
  assert_int_equal(after.disposition, never.disposition);
  assessment_free(&after);
  assessment_free(&never);
  assessor_close(fresh);
}

static void test_taken_back(void **state)
{
  size_t done = 0;

  (void)state;
  for (size_t i = EVERY / 2; i < path_count; i += EVERY) {
    struct bench_case c;

    if (!open_case(paths[i], &c)) continue;
    if (c.result_count > 0) {
      taken_back(paths[i], &c, i % c.result_count);
      done++;
    }
    case_free(&c);
  }
  assert_true(done * EVERY > path_count / 2);
}

static int open_all(void **state)
{
  char *folder = file_join(source, "tests/cases");
  struct err e = {0};

  (void)state;
  fixture_shipped(source, &k);
  list_folder(folder, 1);
  free(folder);
  if (path_count < 500) return 1;
  qsort(paths, path_count, sizeof *paths, by_name);
  return assessor_open(&k, &assessor, &e);
}

static int close_all(void **state)
{
  (void)state;
  for (size_t i = 0; i < path_count; i++) free(paths[i]);
  free(paths);
  assessor_close(assessor);
  knowledge_free(&k);
  return 0;
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_odds), cmocka_unit_test(test_taken_back)};

  if (argc != 2) return 2;
  source = argv[1];
  return cmocka_run_group_tests(tests, open_all, close_all);
}
