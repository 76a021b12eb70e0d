/* small_bench.c - see small_bench.h. */
#include "small_bench.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/file.h"
#include "knowledge/load.h"

static void stop(const struct err *e)
{
  char text[1200];

  err_format(e, text, sizeof text);
  fail_msg("%s", text);
}

void small_load(const char *source, struct knowledge *k)
{
  char *folder = file_join(source, "tests/plan/small");
  struct knowledge_files shipped = {0}, own = {0}, all = {0};
  struct problems problems = {0};
  struct err e = {0};

  if (find_files(source, NULL, &shipped, &e) || find_files(folder, NULL, &own, &e)) stop(&e);
  all.items = mem_array(shipped.count + own.count, sizeof *all.items);
  for (size_t i = 0; i < shipped.count; i++)
    if (strncmp(shipped.items[i].name, "rules/templates/", 16) == 0)
      all.items[all.count++] = shipped.items[i];
  for (size_t i = 0; i < own.count; i++) all.items[all.count++] = own.items[i];
  if (load_files(&all, k, &problems, &e)) stop(&e);
  for (size_t i = 0; i < problems.count && i < PROBLEMS_KEPT; i++)
    if (problems.items[i].serious)
      fail_msg("%s:%d: %s", problems.items[i].file, problems.items[i].line, problems.items[i].text);
  problems_free(&problems);
  free(all.items);
  find_free(&shipped);
  find_free(&own);
  free(folder);
}

int small_id(const struct knowledge *k, enum entry_kind kind, const char *id)
{
  int at = knowledge_find(k, kind, id);

  if (at < 0) fail_msg("there is no \"%s\"", id);
  return at;
}

void small_begin(struct small *s, const struct knowledge *k, const char *machine_class,
                 const char *complaint)
{
  struct err e = {0};

  memset(s, 0, sizeof *s);
  s->k = k;
  case_begin(&s->c, k);
  if (case_set_machine(&s->c, k, small_id(k, ENTRY_CLASS, machine_class), NULL, 0, NULL, 0, &e)) stop(&e);
  if (complaint) case_add_complaint(&s->c, small_id(k, ENTRY_COMPLAINT, complaint));
}

void small_result(struct small *s, const char *check, const char *result)
{
  int at = small_id(s->k, ENTRY_CHECK, check);

  case_set_result(&s->c, (struct case_result){at, check_result(&s->k->checks[at], result), 0, 1});
}

void small_draw(struct small *s, enum conclusion_kind kind, int a, int b)
{
  void *items = s->drawn.items;
  size_t at;

  mem_grow(&items, &s->drawn.room, s->drawn.count + 1, sizeof *s->drawn.items);
  s->drawn.items = items;
  at = s->drawn.count++;
  for (; at > 0 && (s->drawn.items[at - 1].kind > kind ||
                    (s->drawn.items[at - 1].kind == kind && s->drawn.items[at - 1].a > a)); at--)
    s->drawn.items[at] = s->drawn.items[at - 1];
  s->drawn.items[at] = (struct conclusion){.kind = kind, .a = a, .b = b, .rule = 7};
}

void small_weigh(struct small *s)
{
  struct net net;

  casenet_build(&s->net, s->k, &s->c, &s->drawn);
  s->belief = mem_array(s->net.count, sizeof *s->belief);
  net = casenet_view(&s->net, s->net.evidence_count);
  if (!net_solve(&net, s->belief, NULL, NULL)) fail_msg("cannot be weighed");
}

void small_end(struct small *s)
{
  free(s->belief);
  casenet_free(&s->net);
  conclusions_free(&s->drawn);
  case_free(&s->c);
}
