/* recipes.h - what the files of recipes share, and their list. Only for this folder. */
#ifndef ARITH_RECIPES_H
#define ARITH_RECIPES_H

#include "arith/names.h"
#include "arith/work.h"

#define WORK_DECLARE(variable, name, example, what) extern const struct work_recipe work_##variable;
WORK_NAMES(WORK_DECLARE)
#undef WORK_DECLARE

/* Adds a number: si in the base of its quantity, shown in the units named, parted by "|". */
void work_add(struct work_answer *a, const char *name, double si, const char *units, enum work_basis basis);

/* Adds words. */
void work_say(struct work_answer *a, const char *name, enum work_basis basis, const char *format, ...)
    __attribute__((format(printf, 4, 5)));

#endif
