/* test_reader.c - what the reader of knowledge files takes, and every refusal with its line. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/buf.h"
#include "knowledge/sexpr.h"
#include "sample.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

/* Reads a copy of exactly len bytes and the one for the end mark, so that a sanitizer sees a byte
 * read too many. The tree stands in the copy, which therefore stays until the next one. */
static int read_exact(struct arena *a, const char *text, size_t len, struct node **out, struct err *e)
{
  static char *exact;

  free(exact);
  exact = mem_new(len + 1);
  memcpy(exact, text, len);
  exact[len] = 'x'; /* nothing may hang on what stands there */
  return sexpr_read(a, "x.clp", exact, len, out, e);
}

static void refuses(const char *text, size_t len, int line, const char *says)
{
  struct arena a = {0};
  struct node *out;
  struct err e = {0};

  if (read_exact(&a, text, len, &out, &e) != EX_DATAERR) fail_msg("taken: %.60s", text);
  assert_string_equal(e.file, "x.clp");
  if (e.line != line) fail_msg("line %d instead of %d: %s", e.line, line, e.text);
  if (!strstr(e.text, says)) fail_msg("\"%s\" does not say \"%s\"", e.text, says);
  arena_free(&a);
}

static const struct {
  const char *text;
  int line;
  const char *says;
} refused[] = {
    {"(a\n(b)", 1, "never closed"},
    {"\n\n(a \"x\ny\" (b)\n", 3, "never closed"},
    /* an entry without its last bracket, a slot without its own, and what can only be guessed at */
    {"(deffacts f \"\"\n (a (b c))\n (d (e f)\n (g (h i)))", 3, "\"(g\" in line 4 stands inside it"},
    {"(deffacts f \"\"\n (a\n  (b c\n  (d e)))\n", 3, "\"(d\" in line 4 stands inside it"},
    {"(deffacts f \"\"\n (a (b c))\n", 1, "opened here is never closed."},
    {"(defrule r (a (b (c d)))\n", 1, "opened here is never closed."},
    {"(a)\n(b \xe2\x80\x9c" "c\xe2\x80\x9d)", 2, "curly quotes"},
    {"(a)\n)\n", 2, "too many"},
    {"(a))", 1, "too many"},
    {"(a\n\n \"open\n text)", 3, "never ends"},
    {"(a \"ends in a stroke\\", 1, "never ends"},
    {"(a)\n\n\x01", 3, "control character"},
    {"(a \"\x1b[2J\")", 1, "control character"},
    {"; \x07", 1, "control character"},
    {"(a\x0c(b))", 1, "control character"}, /* a blank for the engine, a letter for us */
    {"(a\x0b)", 1, "control character"},
    {"\n(a \x7f)", 2, "control character"},
    {"\n(a \xc2\x9b)", 2, "control character"}, /* U+009B, ESC [ in one */
    {"(a)\n\xff", 2, "UTF-8"},
    {"(a)\n\n(b \"\xc0\x80\")", 3, "UTF-8"},
    {"\xef\xbb", 1, "UTF-8"},
    {"; \xed\xa0\x80", 1, "UTF-8"},
    {"\xef\xbb\xbf(a)", 1, "byte-order mark"},
};

static void test_refusals(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(refused); i++)
    refuses(refused[i].text, strlen(refused[i].text), refused[i].line, refused[i].says);
  refuses("(a)\n(b \0 c)", 11, 2, "zero byte");
  refuses("\0", 1, 1, "zero byte");
}

/* Each limit is taken, and one more is refused. */
static void test_limits(void **state)
{
  struct arena a = {0};
  struct node *out;
  struct err e;
  struct buf b = {0};

  (void)state;
  for (int more = 0; more < 2; more++) {
    b.len = 0;
    buf_add(&b, "\n");
    for (int i = 0; i < SEXPR_MAX_DEPTH + more; i++) buf_add(&b, "(a\n");
    for (int i = 0; i < SEXPR_MAX_DEPTH + more; i++) buf_add(&b, ")");
    if (more) refuses(b.text, b.len, 2 + SEXPR_MAX_DEPTH, "16 deep");
    else assert_int_equal(read_exact(&a, b.text, b.len, &out, &e), 0);

    b.len = 0;
    buf_add(&b, "(a\n ");
    for (int i = 0; i < SEXPR_MAX_WORD + more; i++) buf_add(&b, "w");
    buf_add(&b, ")");
    if (more) refuses(b.text, b.len, 2, "128 bytes");
    else assert_int_equal(read_exact(&a, b.text, b.len, &out, &e), 0);

    b.len = 0;
    buf_add(&b, "(a\n\n \"");
    for (int i = 0; i < SEXPR_MAX_STRING + more; i++) buf_add(&b, i % 50 ? "t" : "\n");
    buf_add(&b, "\")");
    if (more) refuses(b.text, b.len, 3, "2000 bytes");
    else assert_int_equal(read_exact(&a, b.text, b.len, &out, &e), 0);

    b.len = 0;
    for (int i = 0; i < SEXPR_MAX_BYTES + more; i++) buf_addn(&b, "\n", 1);
    if (more) refuses(b.text, b.len, 0, "4 MiB");
    else assert_int_equal(read_exact(&a, b.text, b.len, &out, &e), 0);
  }
  buf_free(&b);
  arena_free(&a);
}

/* Fifty thousand brackets, which would run the engine's stack over. */
static void test_deep_brackets(void **state)
{
  char *text = mem_new(100001);
  double start = seconds_now();

  (void)state;
  memset(text, '(', 50000);
  memset(text + 50000, ')', 50000);
  refuses(text, 100000, 1, "16 deep");
  refuses(text, 50000, 1, "16 deep");
  assert_true(seconds_now() - start < 1);
  free(text);
}

/* ---- what is taken -------------------------------------------------------------------- */

static void test_tree(void **state)
{
  static const char text[] =
      "; head\n(defrule r \"why \\\"so\\\" and \\\\\" ; end\n  (has (x ?y&:(> ?y -1.50))))\n\"tail\" 007\n";
  struct arena a = {0};
  struct node *out, *r, *has;
  struct err e;

  (void)state;
  assert_int_equal(read_exact(&a, text, sizeof text - 1, &out, &e), 0);
  assert_int_equal(node_count(out), 3);
  r = out->first;
  assert_string_equal(node_head(r), "defrule");
  assert_int_equal(r->line, 2);
  assert_int_equal(node_count(r), 4);
  assert_int_equal(r->first->next->next->kind, NODE_STRING);
  assert_string_equal(r->first->next->next->text, "why \"so\" and \\");
  has = r->first->next->next->next;
  assert_int_equal(has->line, 3);
  assert_string_equal(has->first->next->first->next->text, "?y&:");
  assert_int_equal(has->first->next->first->next->next->first->next->next->kind, NODE_NUMBER);
  assert_true(has->first->next->first->next->next->first->next->next->number < -1.4999);
  assert_int_equal(r->next->kind, NODE_STRING);
  assert_int_equal(r->next->line, 4);
  assert_true(node_is_word(r->first, "defrule"));
  assert_false(node_is_word(r->next, "tail"));
  assert_false(node_is_word(NULL, "x"));
  assert_string_equal(node_head(r->next), "");
  assert_true(r->next->next->number > 6.99 && r->next->next->number < 7.01);
  arena_free(&a);
}

static void test_numbers(void **state)
{
  static const struct {
    const char *text;
    enum node_kind kind;
    double number;
  } rows[] = {{"0.25", NODE_NUMBER, 0.25},
              {"-3", NODE_NUMBER, -3},
              {"+4.", NODE_NUMBER, 4},
              {".5", NODE_NUMBER, 0.5},
              {"123456789012345", NODE_NUMBER, 123456789012345.0},
              {"1234567890123456", NODE_WORD, 0},
              {"1e5", NODE_WORD, 0},
              {"-", NODE_WORD, 0},
              {".", NODE_WORD, 0},
              {"1.2.3", NODE_WORD, 0},
              {"0x10", NODE_WORD, 0},
              {"nan", NODE_WORD, 0},
              {"inf", NODE_WORD, 0},
              {"1,5", NODE_WORD, 0}};

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    struct arena a = {0};
    struct node *out;
    struct err e;

    assert_int_equal(read_exact(&a, rows[i].text, strlen(rows[i].text), &out, &e), 0);
    if (out->first->kind != rows[i].kind) fail_msg("%s is of another kind", rows[i].text);
    if (out->first->number < rows[i].number || out->first->number > rows[i].number)
      fail_msg("%s is misread", rows[i].text);
    assert_string_equal(out->first->text, rows[i].text);
    arena_free(&a);
  }
}

/* A text broken over lines is one line with single blanks; lines after it count on. */
static void test_broken_text(void **state)
{
  static const char text[] = "(a \"one   \n\t  two\nthree\" b\n c)";
  struct arena a = {0};
  struct node *out;
  struct err e;

  (void)state;
  assert_int_equal(read_exact(&a, text, sizeof text - 1, &out, &e), 0);
  assert_string_equal(out->first->first->next->text, "one two three");
  assert_int_equal(out->first->first->next->line, 1);
  assert_int_equal(out->first->first->next->next->line, 3);
  assert_int_equal(out->first->first->next->next->next->line, 4);
  arena_free(&a);
}

/* For the engine a lone carriage return ends a comment: what follows it must be seen. */
static void test_comment_ends_where_the_engine_ends_it(void **state)
{
  static const char text[] = "; harmless\r(hidden)\r\n; more\r\n(shown)\n";
  struct arena a = {0};
  struct node *out;
  struct err e;

  (void)state;
  assert_int_equal(read_exact(&a, text, sizeof text - 1, &out, &e), 0);
  assert_int_equal(node_count(out), 2);
  assert_string_equal(node_head(out->first), "hidden");
  assert_string_equal(node_head(out->first->next), "shown");
  assert_int_equal(out->first->next->line, 3);
  arena_free(&a);
}

static void test_empty(void **state)
{
  static const char *const texts[] = {"", " \t\r\n", "; only a comment", "()", "(())"};
  static const size_t counts[] = {0, 0, 0, 1, 1};

  (void)state;
  for (size_t i = 0; i < COUNT(texts); i++) {
    struct arena a = {0};
    struct node *out;
    struct err e;

    assert_int_equal(read_exact(&a, texts[i], strlen(texts[i]), &out, &e), 0);
    assert_int_equal(node_count(out), counts[i]);
    if (out->first) assert_string_equal(node_head(out->first), "");
    arena_free(&a);
  }
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_refusals),
      cmocka_unit_test(test_limits),
      cmocka_unit_test(test_deep_brackets),
      cmocka_unit_test(test_tree),
      cmocka_unit_test(test_numbers),
      cmocka_unit_test(test_broken_text),
      cmocka_unit_test(test_comment_ends_where_the_engine_ends_it),
      cmocka_unit_test(test_empty),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
