/* test_spec_card.c - spec cards: what is taken, what is refused and on which line, and what a card does
 * to a case. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/buf.h"
#include "base/file.h"
#include "knowledge/load.h"
#include "shop/spec_use.h"

static struct knowledge k;

static int begin(void **state)
{
  struct err e;

  (void)state;
  setenv("PULLCORD_KNOWLEDGE", PULLCORD_SOURCE, 1);
  setenv("XDG_DATA_HOME", "/nonexistent", 1);
  return load_knowledge(&k, &e);
}

static int end(void **state)
{
  (void)state;
  knowledge_free(&k);
  return 0;
}

/* A card with these figures, the first on line 2. */
static bool read_figures(const char *figures, struct spec_card *card, struct spec_faults *faults)
{
  struct buf b = {0};
  bool good;

  *faults = (struct spec_faults){0};
  buf_addf(&b, "{\"pullcord\": \"spec-card-1\", \"name\": \"A card\", \"figures\": [\n%s]}", figures);
  good = spec_read(&k, "cards/a-card.json", b.text, b.len, card, faults);
  buf_free(&b);
  return good;
}

/* ---- the table ------------------------------------------------------------------------------ */

/* Every kind fits the knowledge: its check is measured, in that quantity, and takes the kind's whole
 * range of values; its feature and what it gives are there. */
static void test_table(void **state)
{
  size_t count;
  const struct spec_kind *kinds = spec_kinds(&count);

  (void)state;
  for (size_t i = 0; i < count; i++) {
    const struct spec_kind *s = &kinds[i];
    int check = s->check ? knowledge_find(&k, ENTRY_CHECK, s->check) : -1;
    const struct unit *u = s->unit ? unit_find(s->unit, strlen(s->unit)) : NULL;

    assert_ptr_equal(spec_kind_find(s->id, NULL), s);
    assert_true((s->quantity == Q_NONE) == (u == NULL));
    if (u) assert_true(u->quantity == s->quantity && s->low < s->high);
    if (s->check && (check < 0 || k.checks[check].kind != KIND_MEASURE || k.checks[check].quantity != s->quantity))
      fail_msg("%s judges no measured check %s", s->id, s->check);
    if (s->check) assert_true(s->give > 0 && s->give < 0.5);
    if (s->check) assert_ptr_equal(spec_kind_of_check(s->check), s);
    if (s->need && knowledge_find(&k, ENTRY_FEATURE, s->need) < 0) fail_msg("%s needs %s", s->id, s->need);
    if (s->given && given_find(s->given, NULL) < 0) fail_msg("%s gives %s", s->id, s->given);
    if (s->metric) assert_true(unit_find(s->metric, strlen(s->metric))->quantity == s->quantity);
    if (s->us) assert_true(unit_find(s->us, strlen(s->us))->quantity == s->quantity);
  }
  assert_null(spec_kind_of_check("spark-test"));
}

/* The class limits that readings are judged by lie inside what a card may say. */
static void test_limits_inside(void **state)
{
  size_t count;
  const struct spec_kind *kinds = spec_kinds(&count);

  (void)state;
  for (size_t i = 0; i < count; i++)
    for (size_t b = 0; kinds[i].check && b < k.bands_count; b++) {
      const struct unit *u = unit_find(kinds[i].unit, strlen(kinds[i].unit));
      const struct check *c = &k.checks[k.bands[b].check];

      if (strcmp(c->id, kinds[i].check) != 0) continue;
      for (size_t n = 0; n < k.bands[b].limits.count; n++) {
        double v = unit_convert(k.bands[b].limits.items[n], c->unit, u);

        if (v < kinds[i].low || v > kinds[i].high) fail_msg("%s: %g %s", k.bands[b].id, v, u->name);
      }
    }
}

/* docs/schema/spec-card-1.json lists the same kinds. */
static void test_schema_has_them(void **state)
{
  const struct json *j, *list;
  struct json *whole;
  size_t count, n = 0, len;
  const struct spec_kind *kinds = spec_kinds(&count);
  char *text;
  struct err e;

  (void)state;
  assert_int_equal(file_read(PULLCORD_SOURCE "/docs/schema/spec-card-1.json", 1 << 20, &text, &len, &e), 0);
  assert_int_equal(json_read("schema", text, len, &whole, &e), 0);
  j = json_member(json_member(json_member(whole, "definitions"), "figure"), "properties");
  list = json_member(json_member(j, "what"), "enum");
  for (const struct json *i = json_first(list); i; i = json_next(i), n++)
    assert_string_equal(json_text(i), n < count ? kinds[n].id : "none");
  assert_int_equal(n, count);
  json_free(whole);
  free(text);
}

/* ---- what is taken -------------------------------------------------------------------------- */

static void test_good(void **state)
{
  struct spec_faults faults = {0};
  struct spec_card card;
  const struct spec_figure *f;
  double low, high;
  bool spread;

  (void)state;
  assert_true(spec_load(&k, PULLCORD_SOURCE "/demo/specs/millrace-tiller.json", &card, &faults));
  assert_string_equal(card.id, "millrace-tiller");
  assert_string_equal(card.class_id, "tiller");
  f = spec_figure_of(&card, "plug-gap");
  assert_true(fabs(f->value - 0.76e-3) < 1e-12 && fabs(f->low - 0.70e-3) < 1e-12);
  assert_string_equal(f->unit->name, "mm");
  assert_true(spec_limits(f, &low, &high, &spread) && !spread && low == f->low && high == f->high);
  f = spec_figure_of(&card, "coil-air-gap"); /* no range: as far round it as is usual, a fifth */
  assert_true(spec_limits(f, &low, &high, &spread) && spread);
  assert_true(fabs(low - 0.8 * 0.254e-3) < 1e-12 && fabs(high - 1.2 * 0.254e-3) < 1e-12);
  assert_false(spec_limits(spec_figure_of(&card, "oil-capacity"), &low, &high, &spread));
  assert_null(spec_figure_of(&card, "pump-pressure"));
  assert_int_equal(faults.count, 0);
  spec_free(&card);
}

static void test_blank(void **state)
{
  struct spec_faults faults;
  struct spec_card card;

  (void)state;
  assert_true(read_figures("{\"what\": \"plug-gap\", \"value\": \"\", \"from\": \"\"},\n{\"what\": \"torque\"}",
                           &card, &faults));
  assert_int_equal(card.figure_count, 2);
  assert_true(card.figures[0].blank && card.figures[1].blank);
  assert_null(spec_figure_of(&card, "plug-gap"));
  spec_free(&card);
}

/* ---- what is refused ------------------------------------------------------------------------ */

struct bad { const char *figures; int line; const char *says; };

#define MEASURED "\"from\": \"measured\"}"

static const struct bad bad_figures[] = {
    {"{\"what\": \"plug-gap\", \"value\": \"62 psi\", " MEASURED, 2, "is a pressure; a length is expected"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76\", " MEASURED, 2, "has no unit"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 furlong\", " MEASURED, 2, "the unit furlong is not known"},
    {"{\"what\": \"plug-gap\", \"value\": \"76 mm\", " MEASURED, 2, "lies between 0.2 mm and 2 mm"},
    {"{\"what\": \"oil-capacity\", \"value\": \"20 UK gal\", " MEASURED, 2, "cannot be right"},
    {"{\"what\": \"oil-capacity\", \"value\": \"1 gal\", " MEASURED, 2, "may be US gal or UK gal"},
    {"{\"what\": \"compression\", \"value\": \"1e9 psi\", " MEASURED, 2, "power of ten"},
    {"{\"what\": \"coil-primary\",\n \"value\": \"-1 ohm\",\n " MEASURED, 3, "cannot be right"},
    {"{\"what\": \"pluggap\", \"value\": \"0.76 mm\", " MEASURED, 2, "did you mean \"plug-gap\"?"},
    {"{\"value\": \"0.76 mm\", " MEASURED, 2, "must say \"what\" it is"},
    {"{\"what\": \"plug-gap\", \"vale\": \"0.76 mm\", " MEASURED, 2, "did you mean \"value\"?"},
    {"{\"what\": \"plug-gap\", \"value\": 0.76, " MEASURED, 2, "must be a text, not a number"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 mm\"}", 2, "does not say where it is from"},
    {"{\"what\": \"plug-gap\",\n\"value\": \"0.76 mm\",\n\"from\": \"plat\"}", 4, "did you mean \"plate\"?"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 mm\", \"from\": \"a friend\"}", 2, "plate, maker's sheet or measured"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 mm\", " MEASURED ",\n\n{\"what\": \"plug-gap\", \"value\": "
     "\"0.7 mm\", " MEASURED, 4, "given twice (the first is on line 2)"},
    {"{\"what\": \"torque\", \"of\": \"plug\", \"value\": \"20 N.m\", " MEASURED ",\n{\"what\": \"torque\", \"of\": "
     "\"plug\", \"value\": \"20 N.m\", " MEASURED, 3, "torque of plug is given twice"},
    {"{\"what\": \"torque\", \"value\": \"20 N.m\", " MEASURED, 2, "must say what \"of\""},
    {"{\"what\": \"plug-gap\", \"of\": \"plug\", \"value\": \"0.76 mm\", " MEASURED, 2, "takes no \"of\""},
    {"{\"what\": \"plug-gap\", \"low\": \"0.7 mm\", " MEASURED, 2, "one end of its range only"},
    {"{\"what\": \"plug-gap\", \"low\": \"0.8 mm\", \"high\": \"0.7 mm\", " MEASURED, 2, "\"low\" above \"high\""},
    {"{\"what\": \"plug-gap\", \"value\": \"1 mm\", \"low\": \"0.7 mm\", \"high\": \"0.8 mm\", " MEASURED, 2,
     "its \"value\" outside"},
    {"{\"what\": \"oil-grade\", \"low\": \"10W\", \"high\": \"30\", " MEASURED, 2, "is in words"},
    {"\"plug-gap\"", 2, "must be an object"},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 mm\\u0000\", " MEASURED, 2, ""},
    {"{\"what\": \"plug-gap\", \"value\": \"0.76 mm\", " MEASURED ",", 2, ""}};

static void test_bad_figures(void **state)
{
  (void)state;
  for (size_t i = 0; i < sizeof bad_figures / sizeof bad_figures[0]; i++) {
    const struct bad *b = &bad_figures[i];
    struct spec_faults faults;
    struct spec_card card;

    if (read_figures(b->figures, &card, &faults)) fail_msg("%s is let through", b->figures);
    assert_true(faults.count > 0);
    if (!strstr(faults.items[0].text, b->says)) fail_msg("\"%s\" does not say \"%s\"", faults.items[0].text, b->says);
    if (faults.items[0].line != b->line) fail_msg("%s: line %d", faults.items[0].text, faults.items[0].line);
    assert_string_equal(faults.items[0].file, "cards/a-card.json");
    assert_int_equal(faults.items[0].status, EX_DATAERR);
    spec_faults_free(&faults);
    spec_free(&card);
  }
}

/* All that is wrong is said at once, up to 50. */
static void test_all_faults(void **state)
{
  struct buf b = {0};
  struct spec_faults faults;
  struct spec_card card;

  (void)state;
  assert_false(read_figures("{\"what\": \"plug-gap\", \"value\": \"3 psi\", \"odd\": 1, \"from\": \"plate\"},\n"
                            "{\"what\": \"idle-speed\", \"value\": \"1750 rpm\"}", &card, &faults));
  assert_int_equal(faults.count, 3);
  spec_faults_free(&faults);
  spec_free(&card);
  for (int i = 0; i < 90; i++) buf_addf(&b, "%s{\"what\": \"no-%d\"}", i ? "," : "", i);
  assert_false(read_figures(b.text, &card, &faults));
  assert_int_equal(faults.count, 50);
  spec_faults_free(&faults);
  spec_free(&card);
  buf_free(&b);
}

static void test_bad_cards(void **state)
{
  static const struct { const char *text, *says; } rows[] = {
      {"", ""}, {"[]", "must be an object"}, {"{", ""}, {"{}", "version"}, {"nonsense", ""},
      {"{\"pullcord\": \"spec-card-2\", \"name\": \"x\", \"figures\": []}", "version"},
      {"{\"pullcord\": \"spec-card-1\", \"figures\": []}", "no \"name\""},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\"}", "no list of \"figures\""},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"figures\": {}}", "must be a list"},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"figures\": [], \"clas\": \"tiller\"}", "did you mean \"class\"?"},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"figures\": [], \"class\": \"tilller\"}", "did you mean \"tiller\"?"},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"figures\": [], \"also\": [3]}", "as texts"},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"name\": \"y\", \"figures\": []}", ""},
      {"{\"pullcord\": \"spec-card-1\", \"name\": \"\xff\", \"figures\": []}", ""}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    struct spec_faults faults = {0};
    struct spec_card card;

    if (spec_read(&k, "x.json", rows[i].text, strlen(rows[i].text), &card, &faults))
      fail_msg("%s is let through", rows[i].text);
    if (!strstr(faults.items[0].text, rows[i].says))
      fail_msg("\"%s\" does not say \"%s\"", faults.items[0].text, rows[i].says);
    spec_faults_free(&faults);
    spec_free(&card);
  }
}

/* Bytes of zero, cut anywhere, and more than any card has. */
static void test_odd_files(void **state)
{
  static const char good[] = "{\"pullcord\": \"spec-card-1\", \"name\": \"x\", \"figures\": [{\"what\": \"plug-gap\", "
                             "\"value\": \"0.76 mm\", \"from\": \"plate\"}]}";
  char path[] = "/tmp/pullcord-spec-XXXXXX", *big = test_calloc(1, SPEC_MAX_BYTES + 10);
  struct spec_faults faults = {0};
  struct spec_card card;
  int fd = mkstemp(path);

  (void)state;
  for (size_t n = 0; n + 1 < sizeof good; n++) {
    char copy[sizeof good];

    memcpy(copy, good, sizeof good);
    assert_false(spec_read(&k, "x.json", copy, n, &card, &faults));
    spec_free(&card);
    copy[n] = '\0';
    assert_false(spec_read(&k, "x.json", copy, sizeof good - 1, &card, &faults));
    spec_free(&card);
  }
  spec_faults_free(&faults);
  memset(big, ' ', SPEC_MAX_BYTES + 10);
  assert_true(fd >= 0 && write(fd, big, SPEC_MAX_BYTES + 10) == SPEC_MAX_BYTES + 10 && close(fd) == 0);
  assert_false(spec_load(&k, path, &card, &faults));
  assert_int_equal(faults.items[0].status, EX_DATAERR);
  spec_faults_free(&faults);
  spec_free(&card);
  unlink(path);
  assert_false(spec_load(&k, path, &card, &faults));
  assert_int_equal(faults.items[0].status, EX_NOINPUT);
  spec_faults_free(&faults);
  spec_free(&card);
  test_free(big);
}

/* ---- beside a case -------------------------------------------------------------------------- */

static int check_id(const char *id) { return knowledge_find(&k, ENTRY_CHECK, id); }

static void test_use(void **state)
{
  struct case_card own = {.check = check_id("compression"), .low = 70, .high = 90};
  struct spec_faults faults = {0};
  struct spec_card card, other;
  struct bench_case c;

  (void)state;
  assert_true(spec_load(&k, PULLCORD_SOURCE "/demo/specs/millrace-tiller.json", &card, &faults));
  assert_true(read_figures("{\"what\": \"plug-gap\", \"value\": \"0.030 in\", \"from\": \"plate\"}", &other, &faults));
  case_begin(&c, &k);
  case_set_card(&c, own);
  assert_int_equal(spec_use(&k, &card, &c), 10); /* all that judge a check, but for compression */
  assert_string_equal(c.card_id, "millrace-tiller");
  assert_true(case_card_of(&c, check_id("compression"))->low == 70); /* the case's own comes first */
  assert_true(fabs(case_card_of(&c, check_id("top-speed"))->low - 3450) < 1e-9);
  assert_true(fabs(case_card_of(&c, check_id("coil-secondary"))->high - 12) < 1e-9); /* in kohm, as the check */
  assert_string_equal(case_card_of(&c, check_id("top-speed"))->from, "plate");
  assert_true(c.given[GIVEN_COMPRESSION_RATIO].told && fabs(c.given[GIVEN_COMPRESSION_RATIO].value - 8.2) < 1e-9);
  assert_int_equal(spec_use(&k, &other, &c), 1); /* another card: the first one's figures go */
  assert_null(case_card_of(&c, check_id("top-speed")));
  assert_true(fabs(case_card_of(&c, check_id("plug-gap"))->low - 0.9 * 0.762) < 1e-9);
  spec_drop(&c);
  assert_int_equal(c.card_count, 1);
  assert_string_equal(c.card_id, "");
  case_free(&c);
  spec_free(&card);
  spec_free(&other);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_table),     cmocka_unit_test(test_limits_inside), cmocka_unit_test(test_schema_has_them),
      cmocka_unit_test(test_good),      cmocka_unit_test(test_blank),         cmocka_unit_test(test_bad_figures),
      cmocka_unit_test(test_all_faults), cmocka_unit_test(test_bad_cards),    cmocka_unit_test(test_odd_files),
      cmocka_unit_test(test_use)};

  return cmocka_run_group_tests(tests, begin, end);
}
