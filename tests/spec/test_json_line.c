/* test_json_line.c - a fault in a JSON file is said with the line on which it stands. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "json/json.h"

/* Lines counted by hand. */
static const char text[] = "{\n"                                   /* 1 */
                           " \"a\": 1, \"b\": [\n"                  /* 2 */
                           "  {\"x\": \"}],{\\\"\"},\n"             /* 3 */
                           "  [1,\n"                               /* 4 */
                           "   [2, {\"deep\": null}]],\n"           /* 5 */
                           "  {\"x\": -1.5e3,\n"                    /* 6 */
                           "   \"y\": true}\n"                      /* 7 */
                           " ],\n"                                 /* 8 */
                           " \"c\": {\"x\":\n"                      /* 9 */
                           "   \"last\"}\n"                         /* 10 */
                           "}\n";

static void test_lines(void **state)
{
  static const struct { const char *path; int line; } rows[] = {
      {"", 1},          {"a", 2},          {"b", 2},          {"b/0", 3},   {"b/0/x", 3}, {"b/1", 4},
      {"b/1/0", 4},     {"b/1/1", 5},      {"b/1/1/1/deep", 5}, {"b/2", 6}, {"b/2/x", 6}, {"b/2/y", 7},
      {"c", 9},         {"c/x", 10},
      /* what is missing stands where it is missing from */
      {"d", 1},         {"b/7", 2},        {"b/2/z", 6},      {"c/y", 9},   {"a/x", 2},   {"b/0/x/y", 3}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
    if (json_line(text, strlen(text), rows[i].path) != rows[i].line)
      fail_msg("\"%s\": line %d, not %d", rows[i].path, json_line(text, strlen(text), rows[i].path), rows[i].line);
}

/* Whatever the text, cut anywhere: an answer within its lines, and no byte behind its end is read
 * (the sanitizers and valgrind would say so). */
static void test_cut_anywhere(void **state)
{
  char copy[sizeof text];

  (void)state;
  for (size_t n = 0; n < sizeof text; n++) {
    memcpy(copy, text, n);
    assert_in_range(json_line(copy, n, "b/1/1/1/deep"), 1, 11);
    assert_in_range(json_line(copy, n, "c/x"), 1, 11);
  }
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_lines), cmocka_unit_test(test_cut_anywhere)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
