/* fuzz_reader.c - any bytes as a file of knowledge: the reader gives a tree within its limits,
 * or refuses with a line that is in the file. */
#include "fuzz.h"

#include <stdlib.h>
#include <string.h>

#include "knowledge/sexpr.h"

static void look_through(const struct node *n, int depth, int lines)
{
  must_hold(depth <= SEXPR_MAX_DEPTH, "no tree is deeper than the limit");
  for (const struct node *c = n->first; c; c = c->next) {
    must_hold(c->line >= 1 && c->line <= lines, "every node has a line of the file");
    must_hold(strlen(c->text) <= SEXPR_MAX_STRING, "no text is longer than the limit");
    if (c->kind == NODE_LIST) look_through(c, depth + 1, lines);
    else must_hold(c->first == NULL, "only lists have children");
  }
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
  struct arena a = {0};
  struct node *forms = NULL;
  struct err e = {0};
  char *text = mem_new(size + 1);
  int lines = 1, status;

  if (size > 0) memcpy(text, data, size);
  status = sexpr_read(&a, "x.clp", text, size, &forms, &e);

  for (size_t i = 0; i < size; i++) lines += data[i] == '\n';
  if (status == 0) look_through(forms, 0, lines);
  else
    must_hold(status == EX_DATAERR && e.line >= 0 && e.line <= lines && e.text[0],
              "a refusal names its line");
  arena_free(&a);
  free(text);
  return 0;
}
