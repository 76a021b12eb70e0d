/* number.c - see number.h. */
#include "units/number.h"

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

enum { MOST_DIGITS = 15, MOST_DECIMALS = 22, FRACTION_DIGITS = 4 };

/* Digits gathered so far: the value is mantissa / 10^decimals. 15 digits and powers of ten
 * up to 22 are exact in a double, so one division gives the nearest double. */
struct digits {
  uint64_t mantissa;
  int significant, decimals;
  bool too_many;
};

double number_power(int n)
{
  static const double powers[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                  1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                  1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

  if (n < 0) n = 0;
  return powers[n > MOST_DECIMALS ? MOST_DECIMALS : n];
}

static bool digit(char c)
{
  return c >= '0' && c <= '9';
}

static const char *skip_spaces(const char *p)
{
  while (*p == ' ') p++;
  return p;
}

static size_t run(const char *p)
{
  size_t n = 0;

  while (digit(p[n])) n++;
  return n;
}

static const char *gather(const char *p, bool decimals, struct digits *d)
{
  for (; digit(*p); p++) {
    if (d->significant > 0 || *p != '0') d->significant++;
    if (decimals) d->decimals++;
    if (d->significant > MOST_DIGITS || d->decimals > MOST_DECIMALS) d->too_many = true;
    else d->mantissa = d->mantissa * 10 + (uint64_t)(*p - '0');
  }
  return p;
}

/* A whole number of at most four digits, or -1; *p is moved behind it. */
static int little(const char **p)
{
  int n = 0;

  if (run(*p) == 0 || run(*p) > FRACTION_DIGITS) return -1;
  while (digit(**p)) n = n * 10 + (*(*p)++ - '0');
  return n;
}

static bool is_denominator(int n)
{
  static const int fit[] = {2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64, 100, 128, 1000};

  for (size_t i = 0; i < sizeof fit / sizeof fit[0]; i++)
    if (n == fit[i]) return true;
  return false;
}

/* Reads "n/d" at p. */
static enum number_fault fraction(const char *p, double *value, const char **rest)
{
  int above = little(&p), below;

  p = skip_spaces(p);
  if (*p != '/') return NUMBER_FRACTION;
  p = skip_spaces(p + 1);
  below = little(&p);
  if (above < 1 || !is_denominator(below) || above >= below) return NUMBER_FRACTION;
  *value = (double)above / (double)below;
  *rest = p;
  return NUMBER_OK;
}

/* Does a fraction ("n/d") stand at p? */
static bool fraction_ahead(const char *p)
{
  size_t n = run(p);

  if (n == 0) return false;
  p = skip_spaces(p + n);
  return *p == '/' && digit(*skip_spaces(p + 1));
}

/* Is the comma at p, after whole digits that begin at first, one that may part thousands? */
static bool may_be_thousands(const char *first, const char *p)
{
  return p - first >= 1 && p - first <= 3 && *first != '0' && run(p + 1) == 3;
}

/* Looks at what stands behind a number for signs that it is not the whole of it. */
static enum number_fault behind(const char *p)
{
  const char *next = skip_spaces(p);

  if ((*p == '.' || *p == ',' || *p == '\'') && digit(p[1])) return NUMBER_SEPARATOR;
  if ((*p == 'e' || *p == 'E') && (digit(p[1]) || ((p[1] == '-' || p[1] == '+') && digit(p[2]))))
    return NUMBER_EXPONENT;
  if (next > p && run(next) == 3) return NUMBER_SEPARATOR;
  if (digit(*next)) return NUMBER_TWO;
  if (*next == '/') return NUMBER_FRACTION;
  if ((*next == '-' || *next == '+') && digit(*skip_spaces(next + 1))) return NUMBER_TWO;
  return NUMBER_OK;
}

/* Digits with or without a decimal mark. *whole: no mark was there. */
static enum number_fault decimal(const char **p, double *value, bool *whole)
{
  struct digits d = {0};
  const char *first = *p;

  *p = gather(first, false, &d);
  *whole = !((**p == '.' || **p == ',') && digit((*p)[1]));
  if (!*whole) {
    if (**p == ',' && may_be_thousands(first, *p)) return NUMBER_SEPARATOR;
    *p = gather(*p + 1, true, &d);
  } else if (*p == first) {
    return NUMBER_NONE;
  }
  if (d.too_many) return NUMBER_DIGITS;
  *value = (double)d.mantissa / number_power(d.decimals);
  return NUMBER_OK;
}

/* A number without its sign. */
static enum number_fault unsigned_number(const char **p, double *value)
{
  enum number_fault fault;
  double part = 0;
  const char *next;
  bool whole;

  if (fraction_ahead(*p)) return fraction(*p, value, p);
  fault = decimal(p, value, &whole);
  if (fault) return fault;
  next = **p == '-' ? *p + 1 : skip_spaces(*p);
  if (whole && next > *p && fraction_ahead(next)) {
    fault = fraction(next, &part, p);
    *value += part;
  }
  return fault;
}

enum number_fault number_read(const char *text, double *value, const char **rest)
{
  const char *p = skip_spaces(text);
  bool minus = *p == '-';
  enum number_fault fault;
  double v = 0;

  if (*p == '-' || *p == '+') p = skip_spaces(p + 1);
  fault = unsigned_number(&p, &v);
  if (!fault) fault = behind(p);
  if (fault) return fault;
  *value = minus && v > 0 ? -v : v;
  *rest = skip_spaces(p);
  return NUMBER_OK;
}
