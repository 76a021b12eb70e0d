/* vet_against.c - see vet_against.h. */
#include "cli/vet_against.h"

#include <dirent.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "assess/assess.h"
#include "base/buf.h"
#include "base/file.h"
#include "base/mem.h"
#include "report/parts.h"
#include "shop/casefile.h"

enum { MOST_DEPTH = 6 };

struct names {
  char **items;
  size_t count, room;
};

static bool is_folder(const char *path)
{
  struct stat st;

  return stat(path, &st) == 0 && S_ISDIR(st.st_mode);
}

static void add_name(struct names *n, char *name)
{
  void *items = n->items;

  mem_grow(&items, &n->room, n->count + 1, sizeof *n->items);
  n->items = items;
  n->items[n->count++] = name;
}

/* Case files below a folder. Depth is bounded, so links in a circle come to an end. */
static void find_cases(struct names *found, const char *folder, int depth)
{
  DIR *d = opendir(folder);
  struct dirent *entry;

  while (d && (entry = readdir(d))) {
    size_t n = strlen(entry->d_name);
    char *path;

    if (entry->d_name[0] == '.') continue;
    path = file_join(folder, entry->d_name);
    if (is_folder(path)) {
      if (depth < MOST_DEPTH) find_cases(found, path, depth + 1);
      free(path);
    } else if (n > 5 && strcmp(entry->d_name + n - 5, ".json") == 0) {
      add_name(found, path);
    } else {
      free(path);
    }
  }
  if (d) closedir(d);
}

static int by_name(const void *a, const void *b) { return strcmp(*(char *const *)a, *(char *const *)b); }

/* The first of the ranking, or a failure in *e. */
static int first_answer(const struct knowledge *k, const char *file, const struct json *j, struct buf *id,
                        double *chance, struct err *e)
{
  struct bench_case c;
  struct assessor *assessor = NULL;
  struct assessment a;
  int status = casefile_read(k, file, j, &c, e);

  if (status) return status;
  status = assessor_open(k, &assessor, e);
  if (status == 0) status = assess_case(assessor, &c, &a, e);
  if (status == 0) {
    buf_add(id, part_fault_id(k, a.ranking[0].fault));
    *chance = a.ranking[0].blame;
    assessment_free(&a);
  }
  assessor_close(assessor);
  case_free(&c);
  return status;
}

static char *copy(const char *text)
{
  char *p = mem_new(strlen(text) + 1);

  memcpy(p, text, strlen(text));
  return p;
}

/* Keeps the case when its answers differ, or when just one of the two can be had. */
static void compare_one(const struct knowledge *old, const struct knowledge *now, const char *file,
                        const struct json *j, struct changed_cases *out)
{
  struct buf was = {0}, is = {0};
  struct changed_case c = {.was_chance = 0};
  struct err before = {0}, after = {0};
  int old_status = first_answer(old, file, j, &was, &c.was_chance, &before);
  int new_status = first_answer(now, file, j, &is, &c.now_chance, &after);

  if (strcmp(buf_text(&was), buf_text(&is)) != 0) {
    void *items = out->items;

    c.file = copy(file);
    c.was = copy(buf_text(&was));
    c.now = copy(buf_text(&is));
    c.why = copy(new_status ? after.text : old_status ? before.text : "");
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    out->items[out->count++] = c;
  }
  buf_free(&was);
  buf_free(&is);
}

static int compare_file(const struct knowledge *old, const struct knowledge *now, const char *file,
                        struct changed_cases *out, struct err *e)
{
  struct json *j = NULL;
  char *text = NULL;
  size_t len;
  int status = file_read(file, JSON_MAX_BYTES, &text, &len, e);

  if (status == 0) status = json_read(file, text, len, &j, e);
  if (status == 0 && json_kind(j) == JSON_OBJECT) {
    const struct json *inner = json_member(j, "case");

    compare_one(old, now, file, inner ? inner : j, out);
    out->looked_at++;
  }
  json_free(j);
  free(text);
  return status;
}

int compare_cases(const struct knowledge *old, const struct knowledge *now, const char *folder,
                  struct changed_cases *out, struct err *e)
{
  struct names found = {0};
  int status = 0;

  *out = (struct changed_cases){0};
  find_cases(&found, folder, 0);
  if (found.count == 0)
    status = err_set(e, EX_NOINPUT, folder, 0, "holds no case files. Name a folder that does with --cases.");
  else qsort(found.items, found.count, sizeof *found.items, by_name);
  for (size_t i = 0; i < found.count; i++) {
    if (status == 0) status = compare_file(old, now, found.items[i], out, e);
    free(found.items[i]);
  }
  free(found.items);
  if (status) changed_cases_free(out);
  return status;
}

void changed_cases_free(struct changed_cases *c)
{
  for (size_t i = 0; i < c->count; i++) {
    free(c->items[i].file);
    free(c->items[i].was);
    free(c->items[i].now);
    free(c->items[i].why);
  }
  free(c->items);
  *c = (struct changed_cases){0};
}
