/* spell.h - one plain spelling for the many ways in which a reading is typed. */
#ifndef UNITS_SPELL_H
#define UNITS_SPELL_H

#include <stdbool.h>
#include <stddef.h>

enum {
  SPELL_LONGEST = 80,               /* bytes of typed text that are looked at, at most */
  SPELL_ROOM = 2 * SPELL_LONGEST + 1 /* no character grows to more than twice its bytes */
};

/* Writes len bytes of text from outside to out as printable ASCII: the ohm, degree and
 * micro signs become letters, raised 2 and 3 become ^2 and ^3, a half sign " 1/2", curly
 * quotes and primes plain ones, dots and dashes of all sorts plain ones, white space one
 * space and none at the ends. False when a byte (*bad = its offset) belongs to nothing of
 * that kind or the text is too long (*bad = SPELL_LONGEST); out is then empty. */
bool spell_plain(const char *text, size_t len, char out[SPELL_ROOM], size_t *bad);

/* Writes to key what counts in a unit typed as `plain` (from spell_plain, or a shorter ASCII
 * text): " per " becomes "/", separators (space . - * ^ and round brackets) go. */
void spell_key(const char *plain, char key[SPELL_ROOM]);

/* Is `name`, its separators left out, spelt like `key`? fold: capitals do not count. */
bool spell_same(const char *key, const char *name, bool fold);

#endif
