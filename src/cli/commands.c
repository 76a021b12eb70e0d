/* commands.c - see commands.h. */
#include "cli/commands.h"

#include <stddef.h>
#include <string.h>

#include "base/text.h"

#define SWITCH(name, member, help) {name, help, offsetof(struct args, member), NULL}
#define VALUE(name, member, value, help) {name, help, offsetof(struct args, member), value}

static const struct option global_options[] = {
    SWITCH("--help", help, "say what the program or a command does, and end"),
    SWITCH("--version", version, "print the versions of program, rule engine and knowledge, and end")};

static const struct option json_option[] = {
    SWITCH("--json", json, "print JSON for programs instead of words for people"), {0}};
static const struct option bench_options[] = {
    SWITCH("--new", new_job, "begin anew instead of going on with the job that was left open"), {0}};
static const struct option vet_options[] = {
    SWITCH("--json", json, "print JSON for programs instead of words for people"),
    VALUE("--against", against, "OLD", "also list the cases whose first answer is not that of the knowledge in "
          "folder OLD (a whole one, or an own folder)"),
    VALUE("--cases", cases, "DIR", "where those cases are (usually tests/cases)"), {0}};
static const struct option no_options[] = {{0}};

static const struct command all[] = {
    {"", "", "", 0, 0, "talk a job through at the bench",
     "Asks for the machine and the complaint, then one question at a time, always showing the leading "
     "causes and why it asks. Answer with the number or the word of a choice, or with ? for don't know. "
     "Anything else you saw or measured can be typed at any time, by the name of the check or by a "
     "reading with its unit. Every entry is kept at once: leave when you like and go on later. Type help "
     "there for all it takes.",
     bench_options, run_bench},
    {"assess", "CASE.json", "@file", 1, 1, "rank the causes of one case given as a file",
     "Reads a case (docs/schema/case-1.json; - is standard input) and prints the ranking with its "
     "reasons, cautions, the next checks and what to do: repair, keep looking, nothing broken, or hand over.",
     json_option, run_assess},
    {"list", "faults|checks|complaints|machines|features|covers|repairs|cautions|sources|rules|units",
     "faults checks complaints machines features covers repairs cautions sources rules units", 1, 1,
     "list everything of one kind",
     "Prints ids, names, choices and units. With --json all that a program needs to write a case.",
     json_option, run_list},
    {"show", "ID", "", 1, 1, "show one entry with all that is known of it and what that rests on",
     "Takes the id of a fault, check, complaint, machine, cover, repair, caution, source or rule. Of a "
     "source it also shows all that rests on it.",
     no_options, run_show},
    {"vet", "[DIR]", "@file", 0, 1, "look through the knowledge for mistakes",
     "Reads the shipped knowledge, and your own folder where there is one (or DIR instead), and reports "
     "by file, line and plain words what is wrong. Ends with 65 when anything has to be mended; what is "
     "only worth a look does not count for that.",
     vet_options, run_vet},
    {"print", "man|completion|own-folder|effective|coverage", "man completion own-folder effective coverage", 1, 1,
     "print the man page, the completion for bash, where your own knowledge goes, or what is used of it",
     "man and completion are what the install puts in place. effective is the whole knowledge as it is used, "
     "file by file, yours in place of the shipped. coverage says how much it covers and what that rests on.",
     no_options, run_print}};

static const struct pair statuses[] = {
    {"0", "done"},
    {"64", "the command line is wrong"},
    {"65", "a case or a knowledge file is wrong"},
    {"66", "a file is not there"},
    {"70", "a mistake in the program itself"},
    {"71", "out of memory"},
    {"73", "a file cannot be made"},
    {"74", "a file cannot be read or written"},
    {"75", "a limit of time or memory was reached"},
    {"77", "a file may not be read"},
    {"78", "the knowledge cannot be used"}};

static const struct pair variables[] = {
    {"NO_COLOR", "set and not empty: no colour"},
    {"PULLCORD_KNOWLEDGE", "folder that holds facts/ and rules/, instead of the installed one"},
    {"PULLCORD_NOW", "seconds since 1970 to take for the present time, for tests"},
    {"XDG_DATA_HOME", "your own knowledge is in pullcord/ below it (usually ~/.local/share)"},
    {"XDG_STATE_HOME", "open jobs are in pullcord/ below it (usually ~/.local/state)"}};

const struct command *commands_all(size_t *count)
{
  *count = sizeof all / sizeof all[0];
  return all;
}

const struct option *commands_global(size_t *count)
{
  *count = sizeof global_options / sizeof global_options[0];
  return global_options;
}

const struct pair *commands_statuses(size_t *count)
{
  *count = sizeof statuses / sizeof statuses[0];
  return statuses;
}

const struct pair *commands_variables(size_t *count)
{
  *count = sizeof variables / sizeof variables[0];
  return variables;
}

static const struct option *find_option(const struct command *c, const char *name)
{
  for (size_t i = 0; i < sizeof global_options / sizeof global_options[0]; i++)
    if (strcmp(global_options[i].name, name) == 0 || (strcmp(name, "-h") == 0 && i == 0))
      return &global_options[i];
  for (const struct option *o = c->options; o->name; o++)
    if (strcmp(o->name, name) == 0) return o;
  return NULL;
}

static int unknown_option(const struct command *c, const char *name, struct err *e)
{
  const char *names[16], *near;
  size_t count = 0;

  for (size_t i = 0; i < sizeof global_options / sizeof global_options[0]; i++) names[count++] = global_options[i].name;
  for (const struct option *o = c->options; o->name && count < 16; o++) names[count++] = o->name;
  near = text_nearest(name, names, count);
  return err_set(e, EX_USAGE, NULL, 0, "%s%s has no option \"%.40s\"%s%s%s", *c->name ? "" : "pullcord", c->name,
                 name, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
}

static int unknown_command(const char *name, struct err *e)
{
  const char *names[sizeof all / sizeof all[0]], *near;

  for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) names[i] = all[i].name;
  near = text_nearest(name, names, sizeof all / sizeof all[0]);
  if (near && !*near) near = NULL;
  return err_set(e, EX_USAGE, NULL, 0, "there is no command \"%.40s\"%s%s%s \"pullcord --help\" lists them.", name,
                 near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
}

/* The first word that is not an option is the command, wherever it stands. */
static int find_command(int argc, char **argv, struct args *args, int *at, struct err *e)
{
  *at = 0;
  args->command = &all[0];
  for (int i = 1; i < argc; i++) {
    if (argv[i][0] == '-') continue;
    for (size_t j = 1; j < sizeof all / sizeof all[0]; j++)
      if (strcmp(all[j].name, argv[i]) == 0) args->command = &all[j];
    if (args->command == &all[0]) return unknown_command(argv[i], e);
    *at = i;
    return 0;
  }
  return 0;
}

int commands_parse(int argc, char **argv, struct args *args, struct err *e)
{
  bool only_operands = false;
  int at, status;

  *args = (struct args){0};
  status = find_command(argc, argv, args, &at, e);
  for (int i = 1; i < argc && status == 0; i++) {
    const struct option *o;

    if (i == at) continue;
    if (!only_operands && strcmp(argv[i], "--") == 0) {
      only_operands = true;
      continue;
    }
    if (only_operands || argv[i][0] != '-' || strcmp(argv[i], "-") == 0) {
      if (args->positional_count == args->command->most)
        return err_set(e, EX_USAGE, NULL, 0, "\"%.60s\" is one operand too many for %s.", argv[i], args->command->name);
      args->positional[args->positional_count++] = argv[i];
      continue;
    }
    o = find_option(args->command, argv[i]);
    if (!o) return unknown_option(args->command, argv[i], e);
    if (o->value && ++i == argc)
      return err_set(e, EX_USAGE, NULL, 0, "%s wants a value: %s %s.", o->name, o->name, o->value);
    if (o->value) memcpy((char *)args + o->offset, &argv[i], sizeof argv[i]);
    else *(bool *)((char *)args + o->offset) = true;
  }
  if (status == 0 && !args->help && !args->version && args->positional_count < args->command->least)
    status = err_set(e, EX_USAGE, NULL, 0, "%s wants %s. \"pullcord %s --help\" says more.", args->command->name,
                     args->command->operands, args->command->name);
  return status;
}
