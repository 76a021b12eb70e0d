/* test_lexicon.c - endings, same words, phrases, what is denied, and slips of the finger. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <string.h>

#include "base/stem.h"
#include "shop/words_lexicon.h"

static const char *stops[] = {"stalls", "conks out", "died"}, *goes_on[] = {"keeps running"};
static const char *off[] = {"switch off"}, *nos[] = {"not", "won't"}, *small[] = {"the", "it"};
static const char *links[] = {"out", "off", "on"}, *parts[] = {"and"};

#define LIST(name, kind, texts, contrary) \
  {.id = name, .sort = kind, .of = "everything", .opposite_id = "", \
   .words = {texts, sizeof texts / sizeof *texts}, .opposite = contrary, \
   .origin = {.file = "a.clp", .line = 1}}
static struct same_words lists[] = {
  LIST("stops", "thing", stops, -1), LIST("goes-on", "thing", goes_on, 0), LIST("off", "thing", off, -1),
  LIST("no", "no", nos, -1), LIST("little", "little", small, -1), LIST("links", "linking", links, -1),
  LIST("breaks", "break", parts, -1)};
static const struct knowledge k = {.same_words = lists, .same_words_count = sizeof lists / sizeof *lists};

enum { STOPS = 0, NOT_STOPS = 1, OFF = 4 };

static void test_endings(void **state)
{
  static const char *const pairs[][2] = {
    {"running", "run"}, {"surges", "surging"}, {"easily", "easy"}, {"batteries", "battery"},
    {"idles", "idling"}, {"vibration", "vibrates"}, {"pulled", "pulls"}, {"catches", "catch"},
    {"revving", "revs"}};
  static const char *const apart[][2] = {
    {"need", "ned"}, {"gas", "ga"}, {"string", "str"}, {"speed", "speak"}};

  (void)state;
  for (int same = 0; same < 2; same++)
    for (size_t i = 0; i < (same ? sizeof pairs / sizeof *pairs : sizeof apart / sizeof *apart); i++) {
      char a[32], b[32];

      strcpy(a, same ? pairs[i][0] : apart[i][0]);
      strcpy(b, same ? pairs[i][1] : apart[i][1]);
      text_stem(a);
      text_stem(b);
      if ((strcmp(a, b) == 0) != (same == 1)) fail_msg("%s and %s", a, b);
    }
}

static void read_text(const char *text, struct tokens *out)
{
  struct lexicon *l = lexicon_new(&k, true);
  struct tokens learned;

  lexicon_learn(l, "engine carburettor", &learned);
  lexicon_read(l, text, out);
  lexicon_free(l);
}

static void test_meanings(void **state)
{
  static const struct { const char *text; size_t count; int first; } reads[] = {
    {"it stalled", 1, STOPS}, {"Conks out!", 1, STOPS}, {"it won\xE2\x80\x99t stall", 1, NOT_STOPS},
    {"keeps running", 1, NOT_STOPS}, {"won't keep running", 1, STOPS}, {"switch the engine off", 2, OFF},
    {"not, it died", 2, 3 * 2}, {"not and died", 2, 3 * 2}, {"", 0, 0}, {"'''", 0, 0}};

  (void)state;
  for (size_t i = 0; i < sizeof reads / sizeof *reads; i++) {
    struct tokens t;

    read_text(reads[i].text, &t);
    if (t.count != reads[i].count || (t.count && t.t[0].id != reads[i].first))
      fail_msg("\"%s\": %zu tokens, first %d", reads[i].text, t.count, t.count ? t.t[0].id : -1);
  }
}

static void test_slips(void **state)
{
  struct tokens right, slip, other;

  (void)state;
  read_text("carburettor", &right);
  read_text("carburetor", &slip);
  read_text("calibrator", &other);
  assert_int_equal(slip.t[0].id, right.t[0].id);
  assert_true(slip.t[0].sure < 1 && right.t[0].sure >= 1);
  assert_int_equal(other.t[0].id, -1);
}

static void test_long(void **state)
{
  static char text[20001];
  struct tokens t;

  (void)state;
  for (size_t i = 0; i + 7 < sizeof text; i += 7) memcpy(text + i, "stalls ", 7);
  read_text(text, &t);
  assert_int_equal(t.count, MOST_TOKENS);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_endings), cmocka_unit_test(test_meanings),
                                     cmocka_unit_test(test_slips), cmocka_unit_test(test_long)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
