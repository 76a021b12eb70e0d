/* test_memory.c - errors, checked memory, arenas and growing text. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/buf.h"
#include "base/err.h"
#include "base/mem.h"

/* ---- err ------------------------------------------------------------------------------ */

static void test_err_formats(void **state)
{
  struct err e = {0};
  char out[200];

  (void)state;
  assert_int_equal(err_set(&e, EX_DATAERR, "a.clp", 7, "%s is %d.", "x", 3), EX_DATAERR);
  err_format(&e, out, sizeof out);
  assert_string_equal(out, "a.clp:7: x is 3.");
  err_set(&e, EX_NOINPUT, "a.clp", 0, "is not there.");
  err_format(&e, out, sizeof out);
  assert_string_equal(out, "a.clp: is not there.");
  err_set(&e, EX_USAGE, NULL, 9, "no file, so no line either.");
  err_format(&e, out, sizeof out);
  assert_string_equal(out, "no file, so no line either.");
  assert_int_equal(e.status, EX_USAGE);
}

static void test_err_cuts_and_stays_ended(void **state)
{
  char *longest = malloc(5001), small[8];
  struct err e = {0};

  (void)state;
  assert_non_null(longest);
  memset(longest, 'x', 5000);
  longest[5000] = '\0';
  err_set(&e, EX_IOERR, longest, 1, "%s", longest);
  assert_int_equal(strlen(e.file), sizeof e.file - 1);
  assert_int_equal(strlen(e.text), sizeof e.text - 1);
  err_format(&e, small, sizeof small);
  assert_string_equal(small, "xxxxxxx");
  free(longest);
}

static void test_err_takes_no_orders_for_the_screen(void **state)
{
  struct err e = {0};

  (void)state;
  err_set(&e, EX_DATAERR, NULL, 0, "there is no \"%s\".", "a\x1b[2J\a\x7f\tb\nc");
  assert_string_equal(e.text, "there is no \"a?[2J???b\nc\".");
}

/* ---- mem ------------------------------------------------------------------------------ */

static void test_mem_zeroed_and_never_null(void **state)
{
  unsigned char *p = mem_new(100), *none = mem_new(0);
  int *a = mem_array(0, sizeof *a);

  (void)state;
  for (int i = 0; i < 100; i++) assert_int_equal(p[i], 0);
  assert_non_null(none);
  assert_non_null(a);
  *none = 1; /* size 0 counts as 1 */
  free(p);
  free(none);
  free(a);
}

static void test_mem_grow(void **state)
{
  int *items = NULL;
  size_t room = 0, before;
  void *p = NULL;

  (void)state;
  for (size_t n = 1; n <= 1000; n++) {
    before = room;
    p = items;
    mem_grow(&p, &room, n, sizeof *items);
    items = p;
    assert_true(room >= n);
    for (size_t i = before; i < room; i++) assert_int_equal(items[i], 0);
    items[n - 1] = (int)n;
  }
  for (size_t n = 1; n <= 1000; n++) assert_int_equal(items[n - 1], (int)n);
  before = room;
  p = items;
  mem_grow(&p, &room, 3, sizeof *items); /* enough already */
  assert_ptr_equal(p, items);
  assert_int_equal(room, before);
  free(items);
}

/* Runs ask() in a process of its own; it must end with status 71 and say so. */
static void must_run_out(void (*ask)(void))
{
  int ends[2], status;
  char said[200];
  ssize_t n;
  pid_t child;

  assert_int_equal(pipe(ends), 0);
  child = fork();
  assert_true(child >= 0);
  if (child == 0) {
    dup2(ends[1], STDERR_FILENO);
    close(ends[0]);
    ask();
    _exit(0);
  }
  close(ends[1]);
  n = read(ends[0], said, sizeof said - 1);
  close(ends[0]);
  assert_int_equal(waitpid(child, &status, 0), child);
  assert_true(WIFEXITED(status));
  assert_int_equal(WEXITSTATUS(status), 71); /* EX_OSERR */
  assert_true(n > 0);
  said[n] = '\0';
  assert_non_null(strstr(said, "out of memory"));
}

static void ask_array(void) { free(mem_array(SIZE_MAX / 4, 8)); }

static void ask_grow(void)
{
  void *p = NULL;
  size_t room = 0;

  mem_grow(&p, &room, SIZE_MAX / 2, 16);
}

static void ask_grow_far(void)
{
  void *p = NULL;
  size_t room = 0;

  mem_grow(&p, &room, SIZE_MAX, 1);
}

static void ask_arena_array(void)
{
  struct arena a = {0};

  arena_array(&a, SIZE_MAX / 4, 8);
}

static void ask_arena(void)
{
  struct arena a = {0};

  arena_new(&a, SIZE_MAX - 3);
}

static void test_sizes_are_checked(void **state)
{
  (void)state;
  must_run_out(ask_array);
  must_run_out(ask_grow);
  must_run_out(ask_grow_far);
  must_run_out(ask_arena_array);
  must_run_out(ask_arena);
}

/* ---- arena ---------------------------------------------------------------------------- */

static void test_arena_pieces_stay_apart(void **state)
{
  enum { PIECES = 3000 };
  struct arena a = {0};
  unsigned char **piece = mem_array(PIECES, sizeof *piece);

  (void)state;
  for (size_t i = 0; i < PIECES; i++) {
    piece[i] = arena_new(&a, i % 97);
    assert_int_equal((uintptr_t)piece[i] % 16, 0);
    for (size_t j = 0; j < i % 97; j++) assert_int_equal(piece[i][j], 0);
    memset(piece[i], (int)(i % 251), i % 97);
  }
  for (size_t i = 0; i < PIECES; i++)
    for (size_t j = 0; j < i % 97; j++) assert_int_equal(piece[i][j], i % 251);
  assert_true(a.used >= PIECES * 16);
  free(piece);
  arena_free(&a);
  assert_null(a.head);
  assert_int_equal(a.used, 0);
  arena_free(&a); /* twice is no harm */
}

static void test_arena_large_and_text(void **state)
{
  struct arena a = {0};
  char *small = arena_text(&a, "plug", 4), *large = arena_new(&a, 1000000),
       *after = arena_text(&a, "coils", 4);

  (void)state;
  memset(large, 'x', 1000000);
  assert_string_equal(small, "plug");
  assert_string_equal(after, "coil"); /* len, not the end mark, decides */
  assert_string_equal(arena_text(&a, "", 0), "");
  assert_non_null(arena_array(&a, 0, 8));
  arena_free(&a);
}

/* After a reset pieces are zeroed and aligned again, whatever was written before. */
static void test_arena_reset(void **state)
{
  static const unsigned char zero[3000];
  struct arena a = {0};

  (void)state;
  for (int round = 0; round < 3; round++) {
    for (size_t i = 0; i < 200; i++) {
      size_t size = i % 50 == 49 ? 70000 : 1 + i * 13 % sizeof zero;
      char *text = arena_text(&a, "gap", 3);
      unsigned char *piece = arena_new(&a, size);

      assert_string_equal(text, "gap");
      assert_int_equal((uintptr_t)piece % 16, 0);
      assert_memory_equal(piece, zero, size < sizeof zero ? size : sizeof zero);
      memset(piece, 0xA5, size);
    }
    arena_reset(&a);
    assert_int_equal(a.used, 0);
  }
  arena_free(&a);
  arena_reset(&a);
  assert_non_null(arena_new(&a, 1));
  arena_free(&a);
}

/* ---- buf ------------------------------------------------------------------------------ */

static void test_buf(void **state)
{
  struct buf b = {0};
  char *longest = mem_new(3001);

  (void)state;
  memset(longest, 'y', 3000);
  assert_string_equal(buf_text(&b), "");
  buf_add(&b, "");
  assert_non_null(b.text);
  buf_addn(&b, "abcdef", 3);
  buf_addf(&b, "-%d-", 42);
  assert_string_equal(buf_text(&b), "abc-42-");
  buf_addf(&b, "%s", longest); /* longer than any fixed piece inside */
  assert_int_equal(b.len, 7 + 3000);
  assert_int_equal(strlen(b.text), b.len);
  assert_string_equal(b.text + 7, longest);
  buf_free(&b);
  assert_null(b.text);
  assert_int_equal(b.len, 0);
  buf_add(&b, "again");
  assert_string_equal(buf_text(&b), "again");
  buf_free(&b);
  free(longest);
}

/* The formatted length from just under to just over the piece that is tried first. */
static void test_buf_formats_at_the_edge(void **state)
{
  char text[600];

  (void)state;
  for (int n = 505; n <= 520; n++) {
    struct buf b = {0};

    memset(text, 'z', sizeof text);
    text[n] = '\0';
    buf_addf(&b, "%s", text);
    assert_string_equal(b.text, text);
    buf_free(&b);
  }
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_err_formats),
      cmocka_unit_test(test_err_cuts_and_stays_ended),
      cmocka_unit_test(test_err_takes_no_orders_for_the_screen),
      cmocka_unit_test(test_mem_zeroed_and_never_null),
      cmocka_unit_test(test_mem_grow),
      cmocka_unit_test(test_sizes_are_checked),
      cmocka_unit_test(test_arena_pieces_stay_apart),
      cmocka_unit_test(test_arena_large_and_text),
      cmocka_unit_test(test_arena_reset),
      cmocka_unit_test(test_buf),
      cmocka_unit_test(test_buf_formats_at_the_edge),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
