/* test_real_advice.c - the advice on real cases and all that is shipped: it does not contradict
 * itself, asks nothing that may not be asked, and keeps within its bounds of work.
 * Usage: test_real_advice TOP-OF-SOURCES */
#include <dirent.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "assess/assess.h"
#include "base/file.h"
#include "check_advice.h"
#include "knowledge/load.h"
#include "shop/casefile.h"

/* Base policies that one decision may work out; a few microseconds each. */
enum { MOST_WORK = 25000, EVERY = 8 };

static struct knowledge k;
static char *folder;
static size_t cases;

static void may_be_asked(const struct bench_case *c, const struct conclusions *drawn, int check)
{
  size_t open;

  assert_null(case_result_of(c, check));
  assert_int_equal(conclusion_find(drawn, RULES_OUT_CHECK, check, 0), -1);
  assert_int_equal(conclusion_find(drawn, UNSAFE, check, 0), -1);
  assert_int_equal(conclusion_find(drawn, POINTLESS, check, 0), -1);
  assert_int_not_equal(case_needs(c, &k.checks[check].needs, &open), TRI_LACKS);
}

static void advise(struct assessment *a, const struct bench_case *c)
{
  bool *off = mem_array(k.cover_count, sizeof *off);
  struct advice v;

  for (int round = 0; round < 2; round++) {
    plan_advise(&a->net, c, &a->drawn, a->belief, round == 0 ? NULL : off, &v);
    check_advice(&k, &v);
    assert_true(v.steps <= MOST_WORK);
    for (size_t i = 0; i < v.count; i++)
      if (v.options[i].step.kind == ADVICE_CHECK) may_be_asked(c, &a->drawn, v.options[i].step.at);
    if (v.options[0].step.kind == ADVICE_CHECK) { /* again, with its covers off */
      const struct refs *need = &k.checks[v.options[0].step.at].off;

      for (size_t i = 0; i < need->count; i++) off[need->at[i]] = true;
    }
    advice_free(&v);
  }
  free(off);
}

static void run_case(const char *path)
{
  struct assessor *assessor = NULL;
  struct json *j = NULL;
  struct bench_case c;
  struct assessment a;
  struct err e = {0};
  char *text = NULL;
  size_t len;

  if (file_read(path, JSON_MAX_BYTES, &text, &len, &e) || json_read(path, text, len, &j, &e))
    fail_msg("%s", e.text);
  if (casefile_read(&k, path, json_member(j, "case"), &c, &e)) fail_msg("%s", e.text);
  if (assessor_open(&k, &assessor, &e) || assess_case(assessor, &c, &a, &e)) fail_msg("%s: %s", path, e.text);
  advise(&a, &c);
  cases++;
  assessment_free(&a);
  assessor_close(assessor);
  case_free(&c);
  json_free(j);
  free(text);
}

/* About every eighth case file, by the letters of its name. */
static bool picked(const char *name)
{
  unsigned sum = 0;

  while (*name) sum = sum * 31 + (unsigned char)*name++;
  return sum % EVERY == 0;
}

static void run_folder(const char *path)
{
  DIR *d = opendir(path);
  struct dirent *entry;

  while (d && (entry = readdir(d))) {
    char *inside = file_join(path, entry->d_name);
    size_t n = strlen(entry->d_name);

    if (n > 5 && strcmp(entry->d_name + n - 5, ".json") == 0) {
      if (picked(entry->d_name)) run_case(inside);
    } else if (entry->d_name[0] != '.') {
      run_folder(inside);
    }
    free(inside);
  }
  if (d) closedir(d);
}

static void real_cases(void **state)
{
  (void)state;
  run_folder(folder);
  assert_true(cases > 40);
}

static int load_shipped(const char *source)
{
  struct knowledge_files files = {0};
  struct problems problems = {0};
  struct err e = {0};
  int status = find_files(source, NULL, &files, &e);

  if (status == 0) status = load_files(&files, &k, &problems, &e);
  problems_free(&problems);
  find_free(&files);
  return status;
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(real_cases)};
  int failed;

  if (argc < 2 || load_shipped(argv[1])) return 2;
  folder = file_join(argv[1], "tests/cases");
  failed = cmocka_run_group_tests(tests, NULL, NULL);
  free(folder);
  knowledge_free(&k);
  return failed;
}
