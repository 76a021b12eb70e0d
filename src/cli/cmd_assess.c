/* cmd_assess.c - one case in, one answer out. */
#include <stdio.h>
#include <stdlib.h>

#include "base/file.h"
#include "cli/commands.h"
#include "knowledge/load.h"
#include "report/answer.h"
#include "shop/casefile.h"

static void print_answer(const struct knowledge *k, const struct bench_case *c, struct assessment *a, bool json)
{
  if (json) {
    struct json *j = answer_json(k, c, a);
    char *text = json_print(j);

    fputs(text, stdout);
    free(text);
    json_free(j);
  } else {
    struct buf b = {0};

    answer_text(&b, k, c, a, 78);
    fputs(buf_text(&b), stdout);
    buf_free(&b);
  }
}

static int assess(const struct knowledge *k, const struct bench_case *c, bool json, struct err *e)
{
  struct assessor *assessor;
  struct assessment a;
  int status = assessor_open(k, &assessor, e);

  if (status) return status;
  status = assess_case(assessor, c, &a, e);
  if (status == 0) {
    print_answer(k, c, &a, json);
    assessment_free(&a);
  }
  assessor_close(assessor);
  return status;
}

int run_assess(const struct args *args, struct err *e)
{
  struct knowledge k;
  struct bench_case c;
  const char *path = args->positional[0], *name = path[0] == '-' && !path[1] ? "standard input" : path;
  struct json *j = NULL;
  char *text = NULL;
  size_t len;
  int status = file_read(path, JSON_MAX_BYTES, &text, &len, e);

  if (status == 0) status = json_read(name, text, len, &j, e);
  if (status == 0) status = load_knowledge(&k, e);
  if (status == 0) {
    status = casefile_read_text(&k, name, text, len, j, &c, e);
    if (status == 0) {
      status = assess(&k, &c, args->json, e);
      case_free(&c);
    }
    knowledge_free(&k);
  }
  json_free(j);
  free(text);
  return status;
}
