/* published_rows.c - counts the rows of published tables that the cases of a folder hold the
 * knowledge to. A row counts once, however many cases were made of it, and only when its
 * source is a regulator's, a standard, a handbook, an army manual or an extension service's,
 * and its text was read.
 *
 * Usage: published_rows FOLDER LEAST-ROWS LEAST-TABLES   (a table: a place with four rows or more) */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "expect.h"
#include "knowledge/load.h"

enum { MOST_ROWS = 2000, ROWS_OF_A_TABLE = 4 };

struct row { const char *source, *place, *row; };

static struct row rows[MOST_ROWS];
static size_t row_count, failed;

static void fail(const char *path, const char *what)
{
  printf("FAILED %s: %s\n", path, what);
  failed++;
}

/* A source that may stand for a published row. */
static bool official(const struct knowledge *k, const char *id)
{
  int at = knowledge_find(k, ENTRY_SOURCE, id);

  return at >= 0 && strcmp(k->sources[at].status, "memory") != 0 &&
         strcmp(k->sources[at].kind, "textbook") != 0;
}

static bool same_place(const struct row *a, const struct row *b)
{
  return strcmp(a->source, b->source) == 0 && strcmp(a->place, b->place) == 0;
}

static void keep(const struct row *r)
{
  for (size_t i = 0; i < row_count; i++)
    if (same_place(&rows[i], r) && strcmp(rows[i].row, r->row) == 0) return;
  if (row_count < MOST_ROWS) rows[row_count++] = *r;
}

static void look_at(const struct knowledge *k, const struct case_file *f)
{
  const struct json *row = json_member(f->json, "row");
  struct row r = {json_text(json_member(row, "source")), json_text(json_member(row, "place")),
                  json_text(json_member(row, "row"))};

  if (strcmp(json_text(json_member(f->json, "basis")), "published") != 0)
    fail(f->path, "its basis is not published");
  else if (!*r.source || !*r.place || !*r.row) fail(f->path, "its row lacks source, place or row");
  else if (!official(k, r.source)) fail(f->path, "its source is none that was read and is official");
  else if (!json_member(f->want, "first") && !json_member(f->want, "first-three"))
    fail(f->path, "it expects no cause");
  else keep(&r);
}

static size_t count_tables(void)
{
  size_t tables = 0;

  for (size_t i = 0; i < row_count; i++) {
    size_t before = 0, all = 0;

    for (size_t j = 0; j < row_count; j++)
      if (same_place(&rows[i], &rows[j])) {
        before += j < i;
        all++;
      }
    if (before > 0) continue;
    printf("%3zu  %s, %s\n", all, rows[i].source, rows[i].place);
    tables += all >= ROWS_OF_A_TABLE;
  }
  return tables;
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct err e = {0};
  char message[1200];
  size_t count = 0, tables;
  char **files;
  struct case_file *f;

  if (argc != 4) return 64;
  if (load_knowledge(&k, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  files = find_json(argv[1], &count);
  f = mem_array(count + 1, sizeof *f); /* kept to the end: the rows point into them */
  for (size_t i = 0; i < count; i++) {
    if (case_file_read(&k, files[i], &f[i], &e) == 0) look_at(&k, &f[i]);
    else fail(files[i], "it cannot be read");
  }
  tables = count_tables();
  printf("%zu rows, %zu tables of at least %d, %zu cases\n", row_count, tables, ROWS_OF_A_TABLE, count);
  if (row_count < strtoul(argv[2], NULL, 10)) fail(argv[1], "too few rows");
  if (tables < strtoul(argv[3], NULL, 10)) fail(argv[1], "too few tables");
  for (size_t i = 0; i < count; i++) {
    if (f[i].path) case_file_free(&f[i]);
    free(files[i]);
  }
  free(files);
  free(f);
  knowledge_free(&k);
  return failed > 0;
}
