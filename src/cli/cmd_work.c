/* cmd_work.c - bench arithmetic: one calculation, its answer in words or as JSON. */
#include <stdio.h>
#include <stdlib.h>

#include "arith/work.h"
#include "base/buf.h"
#include "base/text.h"
#include "cli/commands.h"
#include "json/json.h"

enum { WIDTH = 78, NAME_WIDTH = 26 };

/* "100 mL = 3.381 US fl oz = 3.52 UK fl oz", or the words. */
static void add_said(struct buf *b, const struct work_line *line)
{
  for (int i = 0; i < WORK_UNITS && line->shown[i]; i++) {
    char number[80];

    amount_format(line->si, line->shown[i], number, sizeof number);
    buf_addf(b, "%s%s", i ? " = " : "", number);
  }
  buf_add(b, line->said);
}

static void print_wrapped(const char *title, const char *text)
{
  struct buf b = {0};

  text_wrap(&b, text, WIDTH, title, "  ");
  printf("%s\n", buf_text(&b));
  buf_free(&b);
}

static void print_values(const struct work_request *q)
{
  struct buf b = {0};
  int n = 0;

  for (int i = 0; i < WORK_INPUTS && q->work->recipe->inputs[i].name; i++) {
    const struct work_value *v = &q->values[i];

    if (!*v->text) continue;
    buf_addf(&b, "%s%s %s%s", n++ ? ", " : "", q->work->recipe->inputs[i].name, v->text,
             v->given ? "" : " (not given)");
  }
  print_wrapped("with ", buf_text(&b));
  buf_free(&b);
}

void work_print(const struct work_request *q, const struct work_answer *a)
{
  printf("%s: %s\n", q->work->name, q->work->what);
  print_values(q);
  for (int i = 0; i < a->count; i++) {
    struct buf b = {0}, out = {0};
    char first[NAME_WIDTH + 8];

    add_said(&b, &a->lines[i]);
    buf_addf(&b, " [%s]", work_basis_name(a->lines[i].basis));
    snprintf(first, sizeof first, "  %-*s", NAME_WIDTH, a->lines[i].name);
    text_wrap(&out, buf_text(&b), WIDTH, first, "                              ");
    printf("%s\n", buf_text(&out));
    buf_free(&b);
    buf_free(&out);
  }
  print_wrapped("Leaves out: ", q->work->recipe->leaves_out);
  print_wrapped("Source: ", q->work->recipe->source);
}

/* ---- JSON ------------------------------------------------------------------------------ */

/* si in the unit, as a number. */
static double in_unit(double si, const struct unit *u) { return (si - u->offset) / u->factor; }

static struct json *value_json(const struct work_input *in, const struct work_value *v)
{
  struct json *j = json_object();

  json_put_text(j, "name", in->name);
  json_put_text(j, "text", v->text);
  json_put_bool(j, "given", v->given);
  if (v->unit) {
    json_put_number(j, "value", in_unit(v->si, v->unit));
    json_put_text(j, "unit", v->unit->name);
  }
  return j;
}

static struct json *line_json(const struct work_line *line)
{
  struct json *j = json_object(), *shown;

  json_put_text(j, "name", line->name);
  json_put_text(j, "basis", work_basis_name(line->basis));
  if (!line->shown[0]) {
    json_put_text(j, "text", line->said);
    return j;
  }
  shown = json_list();
  for (int i = 0; i < WORK_UNITS && line->shown[i]; i++) {
    struct json *one = json_object();

    json_put_number(one, "value", in_unit(line->si, line->shown[i]));
    json_put_text(one, "unit", line->shown[i]->name);
    json_push(shown, one);
  }
  json_put(j, "amounts", shown);
  return j;
}

static void print_json(const struct work_request *q, const struct work_answer *a)
{
  struct json *j = json_object(), *values = json_list(), *lines = json_list();
  char *text;

  json_put_text(j, "pullcord", "work-1");
  json_put_text(j, "calculation", q->work->name);
  for (int i = 0; i < WORK_INPUTS && q->work->recipe->inputs[i].name; i++)
    if (*q->values[i].text) json_push(values, value_json(&q->work->recipe->inputs[i], &q->values[i]));
  json_put(j, "values", values);
  for (int i = 0; i < a->count; i++) json_push(lines, line_json(&a->lines[i]));
  json_put(j, "results", lines);
  json_put_text(j, "leaves_out", q->work->recipe->leaves_out);
  json_put_text(j, "source", q->work->recipe->source);
  text = json_print(j);
  fputs(text, stdout);
  free(text);
  json_free(j);
}

int run_work(const struct args *args, struct err *e)
{
  struct work_request request;
  struct work_answer answer;
  int status = work_read(args->positional, args->positional_count, &request, e);

  if (status == 0) status = work_run(&request, &answer, e);
  if (status) return status;
  if (args->json) print_json(&request, &answer);
  else work_print(&request, &answer);
  return 0;
}
