/* weight.c - see weight.h. */
#include "weight.h"

#include <dirent.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"

static const double rounding = 0.05; /* statements are written with one decimal */

static double of_complaint(const struct knowledge *k, int fault, int complaint)
{
  double anyway = k->complaints[complaint].anyway, without = 1 - anyway;
  size_t first, last;

  knowledge_signs_of_complaint(k, complaint, &first, &last);
  for (size_t i = first; i < last; i++)
    if (k->signs[i].fault == fault) without *= 1 - k->signs[i].chance;
  return 10 * log10((1 - without) / anyway);
}

double weight_of(const struct knowledge *k, int fault, int check, int result)
{
  const struct check *c;
  double upto[2] = {1, 1}, anyway[2] = {1, 1}, with; /* chances of at most result - 1 and result */
  size_t first, last;

  if (check < 0) return of_complaint(k, fault, result);
  c = &k->checks[check];
  for (size_t g = 1; g < c->results.count; g++)
    for (int i = 0; i < 2; i++)
      if ((int)g > result - 1 + i) anyway[i] -= c->anyway.items[g - 1];
  knowledge_signs_of_check(k, check, &first, &last);
  for (size_t s = first; s < last; s++)
    for (int i = 0; i < 2; i++)
      if (k->signs[s].fault == fault && k->signs[s].result > result - 1 + i) upto[i] -= k->signs[s].chance;
  if (result == 0) upto[0] = anyway[0] = 0;
  with = upto[1] * anyway[1] - upto[0] * anyway[0];
  return 10 * log10(with / (anyway[1] - anyway[0]));
}

bool statement_holds(const struct knowledge *k, const struct statement *s)
{
  return weight_of(k, s->fault, s->check, s->result) >= s->least - rounding;
}

/* ---- files ---------------------------------------------------------------------------- */

/* Takes one line apart; false when it is no statement about entries that there are. */
static bool read_line(const struct knowledge *k, const char *line, struct statement *s)
{
  char fault[80], check[80], result[80], end;

  if (sscanf(line, "%79s %79s %79s %lf %c", fault, check, result, &s->least, &end) != 4) return false;
  s->fault = knowledge_find(k, ENTRY_FAULT, fault);
  s->check = strcmp(check, "complaint") == 0 ? -1 : knowledge_find(k, ENTRY_CHECK, check);
  if (s->fault < 0 || (s->check < 0 && strcmp(check, "complaint") != 0)) return false;
  s->result = s->check >= 0 ? check_result(&k->checks[s->check], result)
                            : knowledge_find(k, ENTRY_COMPLAINT, result);
  return s->result >= 0;
}

static void read_file(const struct knowledge *k, char *path, struct statements *out, struct buf *b)
{
  char *text = NULL, *next;
  size_t len;
  int line = 0;
  struct err e;

  if (file_read(path, 1 << 22, &text, &len, &e)) {
    buf_addf(b, "FAILED %s: %s\n", path, e.text);
    return;
  }
  for (char *at = text; at; at = next) {
    struct statement s = {.file = path, .line = ++line};
    void *items = out->items;

    next = strchr(at, '\n');
    if (next) *next++ = '\0';
    if (*at == '#' || !at[strspn(at, " \r")]) continue;
    if (!read_line(k, at, &s)) {
      buf_addf(b, "FAILED %s:%d: \"%.80s\" is no statement about a fault, check or complaint that there is\n",
               path, line, at);
      continue;
    }
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    out->items[out->count++] = s;
  }
  free(text);
}

static int by_sign(const void *a, const void *b)
{
  const struct statement *x = a, *y = b;
  int d = x->fault - y->fault;

  if (d == 0) d = x->check - y->check;
  return d ? d : x->result - y->result;
}

void statements_read(const struct knowledge *k, const char *folder, struct statements *out, struct buf *b)
{
  DIR *d = opendir(folder);
  struct dirent *entry;
  size_t room = 0;

  *out = (struct statements){0};
  while (d && (entry = readdir(d))) {
    size_t n = strlen(entry->d_name);
    void *items = out->files;

    if (n < 5 || strcmp(entry->d_name + n - 4, ".txt") != 0) continue;
    mem_grow(&items, &room, out->file_count + 1, sizeof *out->files);
    out->files = items;
    out->files[out->file_count] = file_join(folder, entry->d_name);
    read_file(k, out->files[out->file_count++], out, b);
  }
  if (d) closedir(d);
  if (out->count > 1) qsort(out->items, out->count, sizeof *out->items, by_sign);
}

void statements_free(struct statements *s)
{
  for (size_t i = 0; i < s->file_count; i++) free(s->files[i]);
  free(s->files);
  free(s->items);
  *s = (struct statements){0};
}

const struct statement *statement_find(const struct statements *s, const struct sign *sign)
{
  struct statement key = {.fault = sign->fault, .check = sign->check, .result = sign->result};

  if (sign->check < 0) key.result = sign->complaint;
  return s->count ? bsearch(&key, s->items, s->count, sizeof key, by_sign) : NULL;
}
