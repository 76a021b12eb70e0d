/* work.h - the calculations by name: what each takes, and its answer with basis and source.
 *
 * The sums themselves are in the other headers of this folder; here they get names, units as typed,
 * usual values for what is not given, and the words that go with the answer. */
#ifndef ARITH_WORK_H
#define ARITH_WORK_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"
#include "units/parse.h"
#include "units/spell.h"

enum { WORK_INPUTS = 6, WORK_LINES = 12, WORK_UNITS = 3, WORK_SAID = 160 };

/* What a line of an answer rests on. */
enum work_basis { WORK_COMPUTED, WORK_PUBLISHED, WORK_COMMON, WORK_MEMORY };

/* "computed", "published", "common-practice", "memory". */
const char *work_basis_name(enum work_basis basis);

/* One value that a calculation takes. */
struct work_input {
  const char *name;       /* "altitude" */
  enum quantity quantity; /* Q_NONE: a word */
  const char *bare;       /* unit of a bare number, NULL: the unit must be typed */
  const char *usual;      /* taken when it is not given ("0 m"); "": it does without; NULL: must be given */
  const char *words;      /* the words it may be, parted by spaces; NULL: any, for the sum to judge */
  char letter;            /* "E10", "M14": a letter that may stand before a bare number, or 0 */
  bool far;               /* may be longer than anything at a bench (a height above the sea) */
};

/* One value as given or taken. si is NAN when it does without one. */
struct work_value {
  double si;
  const struct unit *unit; /* as typed; NULL for words */
  char text[SPELL_ROOM];   /* as typed or as usual; "" when it does without */
  bool given;
};

/* A number in up to three units, or words. */
struct work_line {
  const char *name;
  enum work_basis basis;
  double si;
  const struct unit *shown[WORK_UNITS]; /* ended by NULL when fewer; none: said holds words */
  char said[WORK_SAID];
};

struct work_answer {
  struct work_line lines[WORK_LINES];
  int count;
};

/* The part of a calculation that is not in the list of names. */
struct work_recipe {
  struct work_input inputs[WORK_INPUTS]; /* ended by a name that is NULL when fewer */
  int (*run)(const struct work_value *in, struct work_answer *out, struct err *e);
  const char *leaves_out, *source; /* one sentence or two each */
};

struct work {
  const char *name, *example, *what;
  const struct work_recipe *recipe;
};

/* What was asked for, as read. */
struct work_request {
  const struct work *work;
  struct work_value values[WORK_INPUTS];
};

/* All of them in the order of names.h; *count gets how many. */
const struct work *work_all(size_t *count);

/* Reads a name and its values, as words of a command line ("premix", "50:1", "5", "L"), into *out.
 * A value is a number and its unit in one word or several; values stand in the order of the inputs,
 * one that may be left out is passed over when the unit fits a later one, and "name=VALUE" names
 * one. Returns 0; EX_USAGE when the name is not known, a value is missing, twice or too many;
 * EX_DATAERR when a value is not understood. */
int work_read(const char *const *words, int count, struct work_request *out, struct err *e);

/* Does the sum. Returns 0, or EX_DATAERR with *e when it does not hold for these values. */
int work_run(const struct work_request *request, struct work_answer *out, struct err *e);

/* "RATIO [ALTITUDE] [TEMPERATURE]" into out, always ended. */
void work_inputs(const struct work *work, char *out, size_t size);

/* A unit of an answer by its name in the unit table, or one of the few that only answers have
 * (m/s, ft/min, mph, km/h, kg/m3, lb/ft3, kW, hp, W, mPa.s, mm2/s); NULL when there is none. */
const struct unit *work_unit(const char *name);

#endif
