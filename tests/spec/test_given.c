/* test_given.c - what is given of machine and day, and that jobs keep it. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <math.h>
#include <string.h>

#include <cmocka.h>

#include "model/given.h"

static void test_taken(void **state)
{
  static const struct { enum given_what what; const char *text; double value; } rows[] = {
      {GIVEN_ALTITUDE, "1500 m", 1500},     {GIVEN_ALTITUDE, "5000 ft", 1524}, /* 1 ft = 0.3048 m */
      {GIVEN_ALTITUDE, "-30 m", -30},       {GIVEN_TEMPERATURE, "86 degF", 30},
      {GIVEN_TEMPERATURE, "20", 20},        {GIVEN_PETROL_AGE, "6 weeks", 42},
      {GIVEN_PETROL_AGE, "90", 90},         {GIVEN_POLES, "4", 4},
      {GIVEN_COMPRESSION_RATIO, "8.5:1", 8.5}, {GIVEN_BLADE_LENGTH, "21 in", 533.4}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    struct given got = {0};
    struct err e = {0};

    if (given_parse(rows[i].what, rows[i].text, &got, &e)) fail_msg("%s: %s", rows[i].text, e.text);
    assert_true(got.told);
    if (fabs(got.value - rows[i].value) > 1e-9) fail_msg("%s: %.9g", rows[i].text, got.value);
  }
}

static void test_refused(void **state)
{
  static const struct { enum given_what what; const char *text, *says; } rows[] = {
      {GIVEN_ALTITUDE, "1500", "no unit"},        {GIVEN_ALTITUDE, "9000 m", "lies between -500 m and 6000 m"},
      {GIVEN_ALTITUDE, "62 psi", "altitude: "},   {GIVEN_ALTITUDE, "high", "altitude: "},
      {GIVEN_TEMPERATURE, "120 degC", "lies between"}, {GIVEN_TEMPERATURE, "20 m", "temperature: "},
      {GIVEN_PETROL_AGE, "30 years", "petrol-age: "},  {GIVEN_PETROL_AGE, "-3", "lies between"},
      {GIVEN_POLES, "3", "is even"},              {GIVEN_POLES, "0", "lies between"},
      {GIVEN_COMPRESSION_RATIO, "85:1", "lies between 3:1 and 15:1"},
      {GIVEN_BLADE_LENGTH, "5 mm", "lies between"}, {GIVEN_BLADE_LENGTH, "", "Nothing was typed"}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    struct given got = {.told = false, .value = 7};
    struct err e = {0};

    assert_int_equal(given_parse(rows[i].what, rows[i].text, &got, &e), EX_DATAERR);
    if (!strstr(e.text, rows[i].says)) fail_msg("\"%s\" does not say \"%s\"", e.text, rows[i].says);
    assert_true(got.value == 7 && !got.told);
  }
}

/* What was typed reads the same when it is said again: the store keeps words, not doubles. */
static void test_there_and_back(void **state)
{
  (void)state;
  for (int i = 0; i < GIVEN_COUNT; i++) {
    const struct given_kind *k = given_kind((enum given_what)i);

    for (int part = 0; part <= 40; part++) {
      struct given once, twice;
      struct err e;
      char text[64], again[64];
      double value = k->low + (k->high - k->low) * part / 40;

      if (k->even) value = 2 * round(value / 2);
      given_format((enum given_what)i, value, text, sizeof text);
      assert_int_equal(given_parse((enum given_what)i, text, &once, &e), 0);
      given_format((enum given_what)i, once.value, again, sizeof again);
      assert_int_equal(given_parse((enum given_what)i, again, &twice, &e), 0);
      if (once.value != twice.value) fail_msg("%s: %.17g, then %.17g", text, once.value, twice.value);
    }
  }
}

static void test_names(void **state)
{
  const char *near;

  (void)state;
  for (int i = 0; i < GIVEN_COUNT; i++) assert_int_equal(given_find(given_kind((enum given_what)i)->id, NULL), i);
  assert_int_equal(given_find("altitud", &near), -1);
  assert_string_equal(near, "altitude");
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_taken), cmocka_unit_test(test_refused),
                                     cmocka_unit_test(test_there_and_back), cmocka_unit_test(test_names)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
