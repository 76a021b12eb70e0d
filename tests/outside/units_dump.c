/* units_dump.c - prints every unit with its factor and offset, for units_against_gnu.sh.
 *
 * One line each, parted by tabs: name, quantity, factor, offset, basis. With arguments
 * "value from to" it prints that one conversion instead. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "units/quantity.h"

static int convert(char **arg)
{
  const struct unit *from = unit_find(arg[1], strlen(arg[1]));
  const struct unit *to = unit_find(arg[2], strlen(arg[2]));

  if (!from || !to) {
    fprintf(stderr, "units_dump: no such unit\n");
    return 2;
  }
  printf("%.17g\n", unit_convert(strtod(arg[0], NULL), from, to));
  return 0;
}

int main(int argc, char **argv)
{
  const struct unit *u;
  size_t count;

  if (argc == 4) return convert(argv + 1);
  u = unit_table(&count);
  for (size_t i = 0; i < count; i++)
    printf("%s\t%s\t%.17g\t%.17g\t%s\n", u[i].name, quantity_name(u[i].quantity), u[i].factor,
           u[i].offset, u[i].basis);
  return 0;
}
