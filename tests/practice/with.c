/* with.c - see with.h. */
#include "with.h"

#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <setjmp.h>
#include <cmocka.h>

#include "knowledge/load.h"

int with_begin(void **state)
{
  struct with *w = mem_new(sizeof *w);
  struct err e;

  if (load_knowledge(&w->k, &e) || assessor_open(&w->k, &w->assessor, &e)) {
    print_error("%s\n", e.text);
    return -1;
  }
  *state = w;
  return 0;
}

int with_end(void **state)
{
  struct with *w = *state;

  assessor_close(w->assessor);
  knowledge_free(&w->k);
  free(w);
  return 0;
}

void with_run(struct with *w, enum hidden_kind kind, const char *system, uint64_t seed, bool cheap,
              struct run *r)
{
  struct hidden_wish wish = {-1, kind, system, NULL};
  struct hidden h;
  struct err e = {0};

  assert_true(hidden_make(&w->k, &wish, seed, &h));
  if (run_begin(r, &w->k, w->assessor, &h, cheap, &e)) fail_msg("%s", e.text);
}
