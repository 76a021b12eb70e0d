/* guard.h - limits around the rule engine's library.
 *
 * The library is linked with its calls to malloc, free, fopen, remove, rename, exit and
 * setlocale renamed to the functions below (see CMakeLists.txt), because it ends the
 * process when memory runs out and cannot be interrupted while it joins patterns. Memory
 * is counted and chained per guard; when a limit is reached the guard jumps out of the
 * library and everything it allocated is released at once. */
#ifndef ENGINE_GUARD_H
#define ENGINE_GUARD_H

#include <setjmp.h>
#include <stdbool.h>
#include <stddef.h>

struct guard {
  jmp_buf out;             /* where to go when a limit is reached */
  struct guard_block *all; /* every block in use */
  size_t used, most;       /* bytes in use; bytes allowed */
  double worked_until;     /* seconds of this thread's processor time */
  double early_until;      /* monotonic seconds: until then it cannot have worked so long */
  double until;            /* monotonic seconds */
  unsigned int calls;
  const char *tripped; /* what was reached, in words; NULL while all is well */
};

/* Puts g in force for this thread (NULL: none). Calls into the library are made only
 * while one is in force, after setjmp(g->out) returned 0. */
void guard_enter(struct guard *g);

/* Jumps out when the time has run out; looks at the clocks only now and then. */
void guard_look(void);

/* Has the time run out? For the library's periodic call, which must not jump. */
bool guard_late(const struct guard *g);

/* Allows so many seconds from now: of this thread's processor time, and ten times as many by the clock. */
void guard_start(struct guard *g, double seconds);

/* Releases every block that the library still holds. */
void guard_release(struct guard *g);

#endif
