/* effective.c - the knowledge as it is used: which file each part comes from. */
#include <stdio.h>
#include <stdlib.h>

#include "base/file.h"
#include "cli/commands.h"
#include "knowledge/find.h"
#include "knowledge/sexpr.h"

static const char *where_from(const struct knowledge_file *f)
{
  if (f->replaces) return "yours, in place of the shipped file";
  return f->own ? "yours, added" : "shipped";
}

/* A comment line before each file keeps the whole readable as knowledge. */
static int print_file(const struct knowledge_file *f, struct err *e)
{
  char *text = NULL;
  size_t len;
  int status = file_read(f->path, SEXPR_MAX_BYTES, &text, &len, e);

  if (status) return status;
  printf("; ---- %s (%s): %s\n", f->name, where_from(f), f->path);
  fwrite(text, 1, len, stdout);
  printf("%s\n", len > 0 && text[len - 1] != '\n' ? "\n" : "");
  free(text);
  return 0;
}

int print_effective(struct err *e)
{
  struct knowledge_files files;
  char *shipped = NULL, *own = find_own();
  size_t mine = 0;
  int status = find_shipped(&shipped, e);

  if (status == 0) status = find_files(shipped, own, &files, e);
  if (status == 0) {
    for (size_t i = 0; i < files.count; i++) mine += files.items[i].own;
    printf("; The knowledge as it is used: %zu files, %zu of them yours%s%s.\n\n", files.count, mine,
           mine ? ", from " : "", mine ? own : "");
    for (size_t i = 0; i < files.count && status == 0; i++) status = print_file(&files.items[i], e);
    find_free(&files);
  }
  free(shipped);
  free(own);
  return status;
}
