/* test_heap.c - after heap_begin the heap grows in one piece: what a start needs asks the system for
 * memory once or twice, and not fifty times. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/heap.h"
#include "base/mem.h"

enum { PIECES = 128, PIECE = 60 * 1024 }; /* 7.5 MiB, each too small for a mapping of its own */

static void test_grows_in_one_piece(void **state)
{
  struct arena a = {0};
  void *end = sbrk(0);
  int grown = 0;

  (void)state;
  heap_begin();
  for (int i = 0; i < PIECES; i++) {
    unsigned char *piece = arena_new(&a, PIECE);

    piece[PIECE - 1] = 1;
    if (sbrk(0) != end) grown++;
    end = sbrk(0);
  }
  arena_free(&a);
  assert_in_range(grown, 0, 2);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_grows_in_one_piece)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
