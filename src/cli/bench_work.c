/* bench_work.c - bench arithmetic in the conversation, with what the job knows filled in; see bench.h. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "arith/work.h"
#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "shop/spec_folder.h"

enum { MOST_WORDS = 24, MOST_FILLED = 4, FILLED = 120 };

/* A value that the job knows, as "altitude=1500 m". */
struct filled {
  char text[MOST_FILLED][FILLED];
  size_t count;
};

static void list_all(void)
{
  size_t n;
  const struct work *w = work_all(&n);
  struct buf out = {0};

  for (size_t i = 0; i < n; i++) {
    char first[80];

    snprintf(first, sizeof first, "  %-15s %-20s ", w[i].name, w[i].example);
    text_wrap(&out, w[i].what, terminal_width(), first, "                                        ");
    buf_add(&out, "\n");
  }
  bench_print(&out);
  bench_say("Type work, the name and the values, for example: work %s %s.", w[0].name, w[0].example);
}

static const struct work *find_work(const char *name)
{
  size_t n;
  const struct work *w = work_all(&n);

  for (size_t i = 0; i < n; i++)
    if (strcmp(w[i].name, name) == 0) return &w[i];
  return NULL;
}

/* Where an input is for something that is told of the machine or the day. */
static int given_for(const struct work *w, const char *input)
{
  if (strcmp(input, "altitude") == 0) return GIVEN_ALTITUDE;
  if (strcmp(input, "temperature") == 0 && strcmp(w->name, "plug-gap") != 0) return GIVEN_TEMPERATURE;
  if (strcmp(input, "poles") == 0) return GIVEN_POLES;
  if (strcmp(input, "age") == 0) return GIVEN_PETROL_AGE;
  if (strcmp(w->name, "compression") == 0 && strcmp(input, "ratio") == 0) return GIVEN_COMPRESSION_RATIO;
  if (strcmp(w->name, "blade-tip") == 0 && strcmp(input, "length") == 0) return GIVEN_BLADE_LENGTH;
  return -1;
}

/* The figure of the spec card that an input is for, or NULL. */
static const char *figure_for(const struct work *w, const char *input)
{
  if (strcmp(w->name, "oil-refill") == 0 && strcmp(input, "book") == 0) return "oil-capacity";
  if (strcmp(w->name, "oil-grade") == 0 && strcmp(input, "grade") == 0) return "oil-grade";
  if (strcmp(w->name, "premix") == 0 && strcmp(input, "ratio") == 0) return "mix-ratio";
  if (strcmp(w->name, "plug-gap") == 0 && strcmp(input, "gap") == 0) return "plug-gap";
  return NULL;
}

static bool known(const struct bench *b, const struct spec_card *card, const struct work *w,
                  const char *input, char *out, size_t size)
{
  int given = given_for(w, input);
  const char *kind = figure_for(w, input);
  const struct spec_figure *f = kind && card ? spec_figure_of(card, kind) : NULL;

  if (f && *f->text) {
    snprintf(out, size, "%s=%.80s", input, f->text);
    return true;
  }
  if (given < 0 || !b->c.given[given].told) return false;
  snprintf(out, size, "%s=", input);
  given_format((enum given_what)given, b->c.given[given].value, out + strlen(out), size - strlen(out));
  return true;
}

/* The inputs that were not typed and that the job or its card knows. */
static void fill(const struct bench *b, const struct work_request *typed, struct filled *out)
{
  struct spec_card card;
  struct err e;
  bool has_card = *b->c.card_id && spec_called(b->k, b->c.card_id, &card, &e) == 0;

  for (int i = 0; i < WORK_INPUTS && typed->work->recipe->inputs[i].name && out->count < MOST_FILLED; i++)
    if (!typed->values[i].given && known(b, has_card ? &card : NULL, typed->work,
                                         typed->work->recipe->inputs[i].name, out->text[out->count], FILLED))
      out->count++;
  if (has_card) spec_free(&card);
}

/* Parts the line, which is changed, into words. */
static int part(char *line, const char **words)
{
  int n = 0;

  for (char *p = line; *p && n < MOST_WORDS;) {
    while (*p == ' ') *p++ = '\0';
    if (*p) words[n++] = p;
    while (*p && *p != ' ') p++;
  }
  return n;
}

/* Reads the words, then once more with what the job knows. */
static int read_values(const struct bench *b, const char **words, int count, struct work_request *q,
                       struct err *e)
{
  struct filled filled = {.count = 0};
  int status;

  *q = (struct work_request){0};
  status = work_read(words, count, q, e);
  if (!find_work(words[0])) return status;
  q->work = find_work(words[0]);
  fill(b, q, &filled);
  for (size_t i = 0; i < filled.count && count < MOST_WORDS; i++) words[count++] = filled.text[i];
  if (filled.count == 0 || (status && status != EX_USAGE)) return status;
  status = work_read(words, count, q, e);
  for (size_t i = 0; i < filled.count && status == 0; i++) bench_say("Known of this job: %s", filled.text[i]);
  return status;
}

void bench_work(struct bench *b, const char *rest)
{
  char *line = mem_new(strlen(rest) + 1);
  const char *words[MOST_WORDS + MOST_FILLED];
  struct work_request request;
  struct work_answer answer;
  struct err e = {0};
  int count, status;

  strcpy(line, rest);
  count = part(line, words);
  if (count == 0) {
    list_all();
  } else {
    status = read_values(b, words, count, &request, &e);
    if (status == 0) status = work_run(&request, &answer, &e);
    if (status) bench_say("%s", e.text);
    else work_print(&request, &answer);
  }
  free(line);
}
