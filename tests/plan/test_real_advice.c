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

/* What is looked at first on a complaint alone takes no longer than this: where a quick look comes
 * to nearly the same, no mechanic begins with a bowl, a carburettor or a pressure test (common
 * practice, no source). */
static const struct { const char *machine, *complaint; double most; } quick[] = {
  {"portable-generator", "pulls-hard", 7}, {"portable-generator", "hunts", 6}, {"chainsaw", "uses-oil", 5},
  {"walk-behind-mower", "leaks-oil", 6}, {"portable-generator", "no-output", 4}, {"walk-behind-mower", "hunts", 6},
};

static void quick_looks_come_first(void **state)
{
  struct assessor *assessor = NULL;
  struct err e = {0};

  (void)state;
  assert_int_equal(assessor_open(&k, &assessor, &e), 0);
  for (size_t i = 0; i < sizeof quick / sizeof quick[0]; i++) {
    int machine = knowledge_find(&k, ENTRY_CLASS, quick[i].machine);
    struct bench_case c;
    struct assessment a;

    case_begin(&c, &k);
    assert_true(machine >= 0);
    assert_int_equal(case_set_machine(&c, &k, machine, NULL, 0, NULL, 0, &e), 0);
    case_add_complaint(&c, knowledge_find(&k, ENTRY_COMPLAINT, quick[i].complaint));
    assert_int_equal(assess_case(assessor, &c, &a, &e), 0);
    assess_advise(&a, &c);
    assert_int_equal(a.advice.options[0].step.kind, ADVICE_CHECK);
    if (a.advice.options[0].minutes > quick[i].most)
      fail_msg("%s, %s: first %s, %.0f minutes", quick[i].machine, quick[i].complaint,
               k.checks[a.advice.options[0].step.at].id, a.advice.options[0].minutes);
    assessment_free(&a);
    case_free(&c);
  }
  assessor_close(assessor);
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
  const struct CMUnitTest tests[] = {cmocka_unit_test(real_cases), cmocka_unit_test(quick_looks_come_first)};
  int failed;

  if (argc < 2 || load_shipped(argv[1])) return 2;
  folder = file_join(argv[1], "tests/cases");
  failed = cmocka_run_group_tests(tests, NULL, NULL);
  free(folder);
  knowledge_free(&k);
  return failed;
}
