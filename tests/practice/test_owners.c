/* test_owners.c - what owners of made-up machines say: every complaint has several sayings of its
 * own, and the bench, which was not told of them, takes each for its complaint or for one that
 * owners mix up with it. */
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <setjmp.h>
#include <cmocka.h>

#include "shop/words.h"
#include "with.h"

enum { LEAST = 4 };

static bool is_near(const struct knowledge *k, int said, int taken)
{
  for (int both = 0; both < 2; both++) {
    const struct refs *near = &k->complaints[both ? taken : said].near;

    for (size_t i = 0; i < near->count; i++)
      if (near->at[i] == (both ? said : taken)) return true;
  }
  return said == taken;
}

/* A machine of the first class that can have the complaint. */
static void settle(const struct knowledge *k, int complaint, struct bench_case *c)
{
  struct err e;
  size_t open;

  for (size_t i = 0; i < k->class_count; i++) {
    case_begin(c, k);
    assert_int_equal(case_set_machine(c, k, (int)i, NULL, 0, NULL, 0, &e), 0);
    if (case_needs(c, &k->complaints[complaint].needs, &open) != TRI_LACKS) return;
    case_free(c);
  }
  fail_msg("no machine can have %s", k->complaints[complaint].id);
}

static void every_complaint_has_its_words(void **state)
{
  const struct knowledge *k = &((struct with *)*state)->k;

  for (size_t c = 0; c < k->complaint_count; c++) {
    size_t count = 0;

    for (size_t i = 0; i < k->owner_count; i++)
      if (k->owners[i].complaint == (int)c) count += k->owners[i].words.count;
    if (count < LEAST) fail_msg("%s: %zu sayings", k->complaints[c].id, count);
  }
}

static void the_bench_understands_them(void **state)
{
  const struct knowledge *k = &((struct with *)*state)->k;
  size_t said = 0, own = 0, wrong = 0;

  for (size_t i = 0; i < k->owner_count; i++) {
    struct bench_case c;

    settle(k, k->owners[i].complaint, &c);
    for (size_t j = 0; j < k->owners[i].words.count; j++) {
      const char *text = k->owners[i].words.items[j];
      struct words_said x;

      words_complaints(k, &c, text, &x);
      said++;
      own += x.count && x.best[0].at == k->owners[i].complaint;
      if (x.count && x.clear != WORDS_NOTHING && is_near(k, k->owners[i].complaint, x.best[0].at)) continue;
      wrong++;
      print_message("%s: \"%s\" taken for %s (%s)\n", k->owners[i].complaint_id, text,
                    x.count ? k->complaints[x.best[0].at].id : "nothing", words_clear_name(x.clear));
    }
    case_free(&c);
  }
  print_message("%zu sayings, %zu taken for their own complaint\n", said, own);
  assert_int_equal(wrong, 0);
  assert_true(own * 10 >= said * 9);
}

static void nothing_is_said_twice(void **state)
{
  const struct knowledge *k = &((struct with *)*state)->k;

  for (size_t i = 0; i < k->owner_count; i++)
    for (size_t a = 0; a < k->owners[i].words.count; a++)
      for (size_t j = i; j < k->owner_count; j++)
        for (size_t b = j == i ? a + 1 : 0; b < k->owners[j].words.count; b++)
          assert_string_not_equal(k->owners[i].words.items[a], k->owners[j].words.items[b]);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(every_complaint_has_its_words),
                                     cmocka_unit_test(the_bench_understands_them),
                                     cmocka_unit_test(nothing_is_said_twice)};

  return cmocka_run_group_tests(tests, with_begin, with_end);
}
