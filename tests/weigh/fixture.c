/* fixture.c - see fixture.h. */
#include "fixture.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/file.h"
#include "base/mem.h"
#include "knowledge/load.h"

static void stop(const struct err *e)
{
  char text[1200];

  err_format(e, text, sizeof text);
  fail_msg("%s", text);
}

static void take_knowledge(const struct knowledge_files *files, struct knowledge *k)
{
  struct problems problems = {0};
  struct err e = {0};

  if (load_files(files, k, &problems, &e)) stop(&e);
  for (size_t i = 0; i < problems.count && i < PROBLEMS_KEPT; i++)
    if (problems.items[i].serious)
      fail_msg("%s:%d: %s", problems.items[i].file, problems.items[i].line, problems.items[i].text);
  problems_free(&problems);
}

static bool is_frame(const char *name)
{
  return strncmp(name, "rules/templates/", 16) == 0 || strncmp(name, "rules/core/", 11) == 0;
}

void fixture_small(const char *source, struct knowledge *k)
{
  char *folder = file_join(source, "tests/weigh/small");
  struct knowledge_files shipped = {0}, own = {0}, all = {0};
  struct err e = {0};

  if (find_files(source, NULL, &shipped, &e) || find_files(folder, NULL, &own, &e)) stop(&e);
  all.items = mem_array(shipped.count + own.count, sizeof *all.items);
  for (size_t i = 0; i < shipped.count; i++)
    if (is_frame(shipped.items[i].name)) all.items[all.count++] = shipped.items[i];
  for (size_t i = 0; i < own.count; i++) all.items[all.count++] = own.items[i];
  take_knowledge(&all, k);
  free(all.items);
  find_free(&shipped);
  find_free(&own);
  free(folder);
}

void fixture_shipped(const char *source, struct knowledge *k)
{
  struct knowledge_files files = {0};
  struct err e = {0};

  if (find_files(source, NULL, &files, &e)) stop(&e);
  take_knowledge(&files, k);
  find_free(&files);
}

int fixture_id(const struct knowledge *k, enum entry_kind kind, const char *id)
{
  int at = knowledge_find(k, kind, id);

  if (at < 0) fail_msg("there is no \"%s\"", id);
  return at;
}

void fixture_case(const struct knowledge *k, struct bench_case *c, const char *machine_class,
                  const char *feature)
{
  struct err e = {0};
  bool lacks = feature && feature[0] == '-';
  int at = feature ? fixture_id(k, ENTRY_FEATURE, feature + lacks) : -1;

  case_begin(c, k);
  if (case_set_machine(c, k, fixture_id(k, ENTRY_CLASS, machine_class), &at, feature && !lacks, &at,
                       feature && lacks, &e))
    stop(&e);
}

void fixture_result(const struct knowledge *k, struct bench_case *c, const char *check, const char *result,
                    double value, double sure)
{
  struct case_result r = {fixture_id(k, ENTRY_CHECK, check), -1, value, sure};

  if (result) r.result = check_result(&k->checks[r.check], result);
  if (result && r.result < 0) fail_msg("%s has no result \"%s\"", check, result);
  case_set_result(c, r);
}

size_t fixture_place(const struct assessment *a, const char *id)
{
  int place = id ? a->net.place_of[fixture_id(a->net.k, ENTRY_FAULT, id)] : (int)a->net.count - 1;

  if (place < 0) fail_msg("\"%s\" is ruled out", id);
  return (size_t)place;
}

const struct evidence *fixture_evidence(const struct assessment *a, enum evidence_kind kind, int subject)
{
  for (size_t i = 0; i < a->net.evidence_count; i++)
    if (a->net.evidence[i].kind == kind && a->net.evidence[i].subject == subject) return &a->net.evidence[i];
  return NULL;
}

void fixture_same(const struct assessment *a, const struct assessment *b)
{
  assert_int_equal(a->net.count, b->net.count);
  assert_memory_equal(a->belief, b->belief, a->net.count * sizeof *a->belief);
  assert_int_equal(a->ranking_count, b->ranking_count);
  for (size_t i = 0; i < a->ranking_count; i++) {
    assert_int_equal(a->ranking[i].fault, b->ranking[i].fault);
    assert_true(a->ranking[i].belief == b->ranking[i].belief && a->ranking[i].blame == b->ranking[i].blame);
  }
  assert_true(a->sound == b->sound && a->two_or_more == b->two_or_more && a->log_chance == b->log_chance);
  assert_int_equal(a->net.evidence_count, b->net.evidence_count);
  assert_int_equal(a->drawn.count, b->drawn.count);
}
