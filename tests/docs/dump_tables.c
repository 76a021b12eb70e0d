/* dump_tables.c - prints the tables of the program that documents repeat, one row per line,
 * fields parted by tabs, so that the checks here need not read C. */
#include <stdio.h>

#include "cli/commands.h"
#include "model/knowledge.h"

/* The table names what each command runs; nothing is run here. */
#define NOT_RUN(name) \
  int name(const struct args *args, struct err *e) { return err_set(e, (int)args->json, NULL, 0, "-"); }

NOT_RUN(run_bench)
NOT_RUN(run_job)
NOT_RUN(run_assess)
NOT_RUN(run_card)
NOT_RUN(run_learned)
NOT_RUN(run_list)
NOT_RUN(run_show)
NOT_RUN(run_spec)
NOT_RUN(run_work)
NOT_RUN(run_vet)
NOT_RUN(run_practice)
NOT_RUN(run_print)

int main(void)
{
  const struct command *c;
  const struct option *g;
  const struct pair *p;
  const char *word;
  double value;
  size_t n;

  c = commands_all(&n);
  for (size_t i = 0; i < n; i++) {
    printf("command\t%s\t%s\t%s\n", c[i].name, c[i].operands, c[i].words);
    for (const struct option *o = c[i].options; o->name; o++)
      printf("option\t%s\t%s\t%s\t%s\n", c[i].name, o->name, o->value ? o->value : "", o->help);
  }
  g = commands_global(&n);
  for (size_t i = 0; i < n; i++) printf("global\t%s\t%s\t%s\n", g[i].name, g[i].value ? g[i].value : "", g[i].help);
  p = commands_statuses(&n);
  for (size_t i = 0; i < n; i++) printf("status\t%s\t%s\n", p[i].name, p[i].what);
  p = commands_variables(&n);
  for (size_t i = 0; i < n; i++) printf("variable\t%s\t%s\n", p[i].name, p[i].what);
  for (size_t i = 0; (word = chance_word_at(i, &value)); i++) printf("chance\t%s\t%g\n", word, value);
  return 0;
}
