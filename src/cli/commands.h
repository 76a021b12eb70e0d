/* commands.h - the one list of commands, options, statuses and variables.
 *
 * The parser, --help, the man page and the completion are all made from it. */
#ifndef CLI_COMMANDS_H
#define CLI_COMMANDS_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"

/* What was typed after the command. */
struct args {
  const struct command *command;
  const char *positional[24];
  int positional_count;
  bool metric, us;                           /* of spec */
  bool json, help, version, new_job, all, covers_off, service_open;
  const char *machine_class, *against, *cases, *job, *by, *owner, *to, *format, *reader, *output; /* values of options, NULL when not given */
  bool html;                                 /* the rest is of practice */
  bool history;
  const char *apprentice, *level, *kind, *system, *seed, *set, *laid, *count, *from;
};

struct option {
  const char *name;     /* "--json" */
  const char *help;
  size_t offset;        /* of its bool in struct args; of a text when it takes a value */
  const char *value;    /* what the value is called, NULL for a switch */
};

struct command {
  const char *name;     /* "" is what runs when no command is given */
  const char *operands; /* as shown, "CASE.json" */
  const char *words;    /* words the operand can be, for completion, or "" ; "@file" */
  int least, most;      /* operands */
  const char *help;     /* one line */
  const char *more;     /* a paragraph or two */
  const struct option *options;
  int (*run)(const struct args *args, struct err *e);
};

const struct command *commands_all(size_t *count);
const struct option *commands_global(size_t *count);

/* Parses argv into *args. EX_USAGE with the nearest word when something is not known. */
int commands_parse(int argc, char **argv, struct args *args, struct err *e);

/* The commands themselves. Each prints to standard output and returns an exit status. */
int run_bench(const struct args *args, struct err *e);
int run_job(const struct args *args, struct err *e);
int run_assess(const struct args *args, struct err *e);
int run_card(const struct args *args, struct err *e);
int run_learned(const struct args *args, struct err *e);
int run_list(const struct args *args, struct err *e);
int run_show(const struct args *args, struct err *e);
int run_spec(const struct args *args, struct err *e);
int run_work(const struct args *args, struct err *e);
int run_vet(const struct args *args, struct err *e);
int run_practice(const struct args *args, struct err *e);
int run_print(const struct args *args, struct err *e);

/* Who enters what is entered: --by, $PULLCORD_BY, or "bench". */
const char *commands_who(const struct args *args);

/* What "pullcord print" has others print. */
int print_effective(struct err *e);
int print_coverage(struct err *e);

/* Gives out a job card as --for, --format and --output say; the card stays the caller's. */
struct card;
int card_give(struct card *card, const struct args *args, struct err *e);

/* The card of a stored job, called as "pullcord job" calls it. */
int card_of_job(const struct args *args, const char *name, struct err *e);

/* Prints a calculation with its answer in words. */
struct work_request;
struct work_answer;
void work_print(const struct work_request *q, const struct work_answer *a);

/* Texts made from the table. */
void help_print(const struct command *c); /* NULL: the whole program */
void help_man(void);
void help_completion(void);

/* Exit statuses and environment variables, for help and man. */
struct pair { const char *name, *what; };
const struct pair *commands_statuses(size_t *count);
const struct pair *commands_variables(size_t *count);

#endif
