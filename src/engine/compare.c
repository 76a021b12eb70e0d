/* compare.c - the engine's < > <= >= over again: what is no number is neither above nor below anything.
 *
 * The library's own take a comparison for true unless its contrary holds, so that with no number both
 * (> x 1) and (< x 1) hold. Sums that do not hold give no number (sums.c), and must not make rules
 * fire. Numbers are compared as doubles. */
#include "engine/clips.h"

static bool above(double a, double b) { return a > b; }
static bool below(double a, double b) { return a < b; }
static bool not_below(double a, double b) { return a >= b; }
static bool not_above(double a, double b) { return a <= b; }

/* Does every argument stand so to the next? */
static int all_stand(void *env, const char *name, bool (*stand)(double, double))
{
  int count = EnvRtnArgCount(env);
  double before = 0, value;

  for (int i = 1; i <= count; i++) {
    DATA_OBJECT arg;

    if (!EnvArgTypeCheck(env, name, i, INTEGER_OR_FLOAT, &arg)) return FALSE;
    value = GetType(arg) == FLOAT ? DOToDouble(arg) : (double)DOToLong(arg);
    if (i > 1 && !stand(before, value)) return FALSE;
    before = value;
  }
  return TRUE;
}

static int greater(void *env) { return all_stand(env, ">", above); }
static int less(void *env) { return all_stand(env, "<", below); }
static int greater_or_equal(void *env) { return all_stand(env, ">=", not_below); }
static int less_or_equal(void *env) { return all_stand(env, "<=", not_above); }

void compare_define(void *env)
{
  EnvDefineFunction2(env, ">", 'b', PTIEF greater, "greater", "2*n");
  EnvDefineFunction2(env, "<", 'b', PTIEF less, "less", "2*n");
  EnvDefineFunction2(env, ">=", 'b', PTIEF greater_or_equal, "greater_or_equal", "2*n");
  EnvDefineFunction2(env, "<=", 'b', PTIEF less_or_equal, "less_or_equal", "2*n");
}
