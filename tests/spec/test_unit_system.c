/* test_unit_system.c - figures in either system of units; factors of NIST SP 811 (2008) B.8, as
 * quoted in src/units/quantity.c, the products worked out by hand. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "units/parse.h"
#include "units/system.h"

static const struct unit *named(const char *name) { return unit_find(name, strlen(name)); }

static void test_rounding(void **state)
{
  static const struct { const char *written, *unit, *shown; } rows[] = {
      {"0.030 in", "mm", "0.762 mm"},     /* x 25.4 */
      {"0.25 mm", "in", "0.0098 in"},     /* / 25.4 = 0.00984; feeler gauges end at tenths of a thou */
      {"20 N.m", "ft-lb", "14.75 ft-lb"}, /* / 1.355818 = 14.751 */
      {"18 ft-lb", "N.m", "24.4 N.m"},    /* x 1.355818 = 24.405 */
      {"90 psi", "kPa", "621 kPa"},       /* x 6.894757 = 620.53 */
      {"2000 psi", "bar", "137.9 bar"},   /* x 0.06894757 = 137.895; four digits from a 1 on */
      {"0.6 L", "US fl oz", "20.3 US fl oz"}, /* / 0.02957353 = 20.288 */
      {"650 mL", "L", "0.65 L"},
      {"0 mm", "in", "0 in"}};
  char said[64];
  struct amount a;
  struct err e;

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    assert_int_equal(amount_parse(rows[i].written, strlen(rows[i].written), Q_NONE, NULL, &a, &e), 0);
    unit_round(a.si, named(rows[i].unit), said, sizeof said);
    assert_string_equal(said, rows[i].shown);
  }
}

/* What is of the system already stays as it is written. */
static void test_which_unit(void **state)
{
  (void)state;
  assert_ptr_equal(unit_in_system(named("thou"), named("in"), UNITS_US), named("thou"));
  assert_ptr_equal(unit_in_system(named("mm"), named("in"), UNITS_US), named("in"));
  assert_ptr_equal(unit_in_system(named("mm"), named("mm"), UNITS_METRIC), named("mm"));
  assert_ptr_equal(unit_in_system(named("psi"), named("kPa"), UNITS_METRIC), named("kPa"));
  assert_ptr_equal(unit_in_system(named("psi"), named("kPa"), UNITS_AS_WRITTEN), named("psi"));
  assert_ptr_equal(unit_in_system(named("UK fl oz"), named("US fl oz"), UNITS_US), named("US fl oz"));
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_rounding), cmocka_unit_test(test_which_unit)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
