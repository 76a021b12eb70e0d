/* heap.c - see heap.h. */
#include "base/heap.h"

#include <malloc.h>
#include <stdint.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <unistd.h>

enum { LARGE_PAGE = 2 << 20, IN_LARGE = 8 << 20, GROW = 16 << 20 };

void heap_begin(void)
{
  uintptr_t from, to;
  void *volatile first; /* the heap is there when something was allocated in it */

  mallopt(M_TOP_PAD, GROW);
  first = malloc(1);
  from = ((uintptr_t)first + LARGE_PAGE - 1) / LARGE_PAGE * LARGE_PAGE;
  to = (uintptr_t)sbrk(0);
  if (first && from + IN_LARGE <= to) madvise((void *)from, IN_LARGE, MADV_HUGEPAGE);
  free(first);
}
