/* number.h - numbers as people write them, whatever the locale. */
#ifndef UNITS_NUMBER_H
#define UNITS_NUMBER_H

/* What may be wrong with a number. */
enum number_fault {
  NUMBER_OK,
  NUMBER_NONE,        /* does not begin with a number */
  NUMBER_SEPARATOR,   /* 3,600 or 3 600 or 1.234.567: thousands or decimals? */
  NUMBER_TWO,         /* 28-30: more than one number */
  NUMBER_FRACTION,    /* 90/95, 1/0: no fraction of a rule or a turn */
  NUMBER_DIGITS,      /* more than 15 digits that count, or more than 22 decimals */
  NUMBER_EXPONENT     /* 1e3 */
};

/* Reads the number at the beginning of text (ASCII, ended by NUL): a sign, digits with a
 * point or a comma for decimals, "1/32", "1 1/2" or "2-7/8" with the denominators of rules
 * and turns (powers of two to 128, 3, 5, 6, 10, 12, 100, 1000). The double nearest to what
 * was typed goes to *value, the place after the number and any spaces to *rest; neither is
 * touched when there is a fault. */
enum number_fault number_read(const char *text, double *value, const char **rest);

/* 10 to the power of n, exact; n from 0 to 22 (nearest of those otherwise). */
double number_power(int n);

#endif
