/* test_text.c - UTF-8, nearness of words, wrapping, ids. */
#include <locale.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/buf.h"
#include "base/mem.h"
#include "base/text.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

/* ---- UTF-8 ---------------------------------------------------------------------------- */

/* Well-formed byte sequences: Unicode Standard, table 3-7 (from memory; every boundary of
 * each row is here). bad is the offset of the first byte that cannot stand. */
static const struct {
  const char *text;
  size_t len, bad;
} utf8[] = {
    {"", 0, 0},
    {"plug", 4, 4},
    {"pl\0ug", 5, 2},
    {"\x7f", 1, 1},
    {"\x80", 1, 0},     /* continuation without a start */
    {"\xc0\x80", 2, 0}, /* overlong NUL */
    {"\xc1\xbf", 2, 0}, /* overlong */
    {"\xc2\x80", 2, 2}, /* first of two bytes */
    {"\xdf\xbf", 2, 2},
    {"a\xc2", 2, 1}, /* cut off */
    {"\xc2\x7f", 2, 0},
    {"\xc2\xc0", 2, 0},
    {"\xe0\x9f\xbf", 3, 0}, /* overlong */
    {"\xe0\xa0\x80", 3, 3},
    {"\xe2\x82\xac", 3, 3},
    {"\xe2\x82", 2, 0},
    {"\xe2\x82\x28", 3, 0},
    {"\xed\x9f\xbf", 3, 3}, /* last before the surrogates */
    {"\xed\xa0\x80", 3, 0}, /* surrogate */
    {"\xed\xbf\xbf", 3, 0},
    {"\xee\x80\x80", 3, 3},
    {"\xef\xbf\xbf", 3, 3},
    {"\xf0\x8f\xbf\xbf", 4, 0}, /* overlong */
    {"\xf0\x90\x80\x80", 4, 4},
    {"\xf0\x90\x80", 3, 0},
    {"\xf4\x8f\xbf\xbf", 4, 4}, /* U+10FFFF */
    {"\xf4\x90\x80\x80", 4, 0}, /* beyond Unicode */
    {"\xf5\x80\x80\x80", 4, 0},
    {"\xff", 1, 0},
    {"ok \xc3\xa9 \xfe", 7, 6},
};

static void test_utf8(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(utf8); i++) {
    char *exact = mem_new(utf8[i].len); /* so that a sanitizer sees a byte read too many */

    memcpy(exact, utf8[i].text, utf8[i].len);
    if (text_bad_byte(exact, utf8[i].len) != utf8[i].bad)
      fail_msg("row %zu: %zu instead of %zu", i, text_bad_byte(exact, utf8[i].len), utf8[i].bad);
    free(exact);
  }
}

static void test_columns(void **state)
{
  (void)state;
  assert_int_equal(text_columns(""), 0);
  assert_int_equal(text_columns("plug"), 4);
  assert_int_equal(text_columns("\xc3\xa9t\xc3\xa9 \xe2\x82\xac"), 5);
}

/* ---- nearness ------------------------------------------------------------------------- */

/* Distances worked out by hand from the definition (restricted Damerau). */
static void test_distance(void **state)
{
  char word[66];

  (void)state;
  assert_int_equal(text_distance("plug", "plug", 3), 0);
  assert_int_equal(text_distance("plug", "plugs", 3), 1);
  assert_int_equal(text_distance("plug", "lug", 3), 1);
  assert_int_equal(text_distance("plug", "slug", 3), 1);
  assert_int_equal(text_distance("plug", "pulg", 3), 1); /* neighbours swapped */
  assert_int_equal(text_distance("", "coil", 9), 4);
  assert_int_equal(text_distance("coil", "", 9), 4);
  assert_int_equal(text_distance("", "", 0), 0);
  assert_int_equal(text_distance("ca", "abc", 5), 3); /* restricted: not 2 */
  assert_int_equal(text_distance("kitten", "sitting", 5), 3);
  assert_int_equal(text_distance("kitten", "sitting", 2), 3); /* limit + 1 */
  memset(word, 'a', 65);
  word[65] = '\0';
  assert_int_equal(text_distance(word, word, 2), 3); /* too long to be near anything */
  assert_int_equal(text_distance(word + 1, word + 1, 2), 0);
}

/* The same both ways round, for every pair of short words over two letters. */
static void test_distance_is_symmetric(void **state)
{
  char a[5], b[5];
  int seen = 0;

  (void)state;
  for (int x = 0; x < 16; x++)
    for (int y = 0; y < 16; y++) {
      for (int i = 0; i < 4; i++) {
        a[i] = x >> i & 1 ? 'b' : 'a';
        b[i] = y >> i & 1 ? 'b' : 'a';
      }
      a[4] = b[4] = '\0';
      assert_int_equal(text_distance(a, b, 9), text_distance(b, a, 9));
      assert_true((text_distance(a, b, 9) == 0) == (x == y));
      seen++;
    }
  assert_int_equal(seen, 256);
}

static void test_nearest(void **state)
{
  static const char *const list[] = {"compression", "spark-test", "plug-look", "fuel-look"};
  char word[70];

  (void)state;
  assert_string_equal(text_nearest("compresion", list, 4), "compression");
  assert_string_equal(text_nearest("plug-lokk", list, 4), "plug-look");
  assert_string_equal(text_nearest("plug-look", list, 4), "plug-look");
  assert_null(text_nearest("cmprssn", list, 4)); /* four letters gone: more than a third */
  assert_null(text_nearest("carburettor", list, 4));
  assert_null(text_nearest("plug-look", list, 0));
  memset(word, 'c', 69);
  word[69] = '\0';
  assert_null(text_nearest(word, list, 4));
}

static void test_nearest_takes_the_nearest(void **state)
{
  static const char *const list[] = {"coils", "coal", "coil", "foil"};

  (void)state;
  assert_string_equal(text_nearest("coil", list, 4), "coil");
  assert_string_equal(text_nearest("coill", list, 4), "coils"); /* as near as "coil": the first */
}

/* ---- wrapping ------------------------------------------------------------------------- */

static void wraps_to(const char *text, int width, const char *first, const char *rest, const char *want)
{
  struct buf b = {0};

  text_wrap(&b, text, width, first, rest);
  assert_string_equal(buf_text(&b), want);
  buf_free(&b);
}

static void test_wrap(void **state)
{
  (void)state;
  wraps_to("", 20, "", "", "");
  wraps_to("one two", 20, "- ", "  ", "- one two");
  wraps_to("one two three", 9, "- ", "  ", "- one two\n  three");
  wraps_to("one two", 7, "", "", "one two"); /* just fits */
  wraps_to("one two", 6, "", "", "one\ntwo");
  wraps_to("unbreakable word", 4, "> ", "> ", "> unbreakable\n> word");
  wraps_to("a\nb", 20, "", "  ", "a\n  b");
  wraps_to("a\n\nb", 20, "", "", "a\n\nb");
  wraps_to("a \nb", 20, "", "", "a\nb"); /* no blank left at the end of a line */
  wraps_to("  a   b  ", 20, "", "", "a b");
  wraps_to("\xc3\xa9\xc3\xa9 \xc3\xa9\xc3\xa9", 5, "", "",
           "\xc3\xa9\xc3\xa9 \xc3\xa9\xc3\xa9"); /* columns, not bytes */
}

/* No line of words that fit is longer than the width. */
static void test_wrap_keeps_the_width(void **state)
{
  (void)state;
  for (int width = 8; width < 60; width++) {
    struct buf b = {0};
    const char *line;

    text_wrap(&b, "check the spark with a tester across the gap, never by hand or by ear", width, "* ", "  ");
    for (line = b.text; line;) {
      const char *end = strchr(line, '\n');
      size_t len = end ? (size_t)(end - line) : strlen(line);

      assert_true(len <= (size_t)width);
      line = end ? end + 1 : NULL;
    }
    buf_free(&b);
  }
}

/* ---- small letters and ids ------------------------------------------------------------ */

static void test_lower(void **state)
{
  char text[] = "Plug GAP 0.7 mm \xc3\x89Z[`{@";

  (void)state;
  text_lower(text);
  assert_string_equal(text, "plug gap 0.7 mm \xc3\x89z[`{@");
}

static void test_ids(void **state)
{
  static const char *const good[] = {"a", "plug-look", "coil-2", "a1-b2-c3", "x9"};
  static const char *const bad[] = {"",          "-a",        "a-",    "a--b", "2-stroke",    "Plug",
                                    "plug look", "plug_look", "plug.", "a-B",  "caf\xc3\xa9", "\xe9t\xe9",
                                    "a\n",       "MAIN::a"};

  (void)state;
  setlocale(LC_CTYPE, ""); /* must make no difference */
  for (size_t i = 0; i < COUNT(good); i++)
    if (!text_is_id(good[i])) fail_msg("\"%s\" is an id", good[i]);
  for (size_t i = 0; i < COUNT(bad); i++)
    if (text_is_id(bad[i])) fail_msg("\"%s\" is no id", bad[i]);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_utf8),     cmocka_unit_test(test_columns),
      cmocka_unit_test(test_distance), cmocka_unit_test(test_distance_is_symmetric),
      cmocka_unit_test(test_nearest),  cmocka_unit_test(test_nearest_takes_the_nearest),
      cmocka_unit_test(test_wrap),     cmocka_unit_test(test_wrap_keeps_the_width),
      cmocka_unit_test(test_lower),    cmocka_unit_test(test_ids),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
