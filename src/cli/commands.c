/* commands.c - see commands.h. */
#include "cli/commands.h"

#include <stddef.h>
#include <stdlib.h>
#include <string.h>

#include "arith/names.h"
#include "base/text.h"

#define SWITCH(name, member, help) {name, help, offsetof(struct args, member), NULL}
#define VALUE(name, member, value, help) {name, help, offsetof(struct args, member), value}

static const struct option global_options[] = {
    SWITCH("--help", help, "say what the program or a command does, and end"),
    SWITCH("--version", version, "print the versions of program, rule engine and knowledge, and end")};

static const struct option json_option[] = {
    SWITCH("--json", json, "print JSON for programs instead of words for people"), {0}};
static const struct option bench_options[] = {
    SWITCH("--new", new_job, "begin another job instead of going on with one that was left open"),
    VALUE("--job", job, "NAME", "go on with this job (\"pullcord job list\" shows the names)"),
    VALUE("--by", by, "WHO", "who enters what is entered"), {0}};
static const struct option take_up_options[] = {
    VALUE("--by", by, "WHO", "who enters what is entered"), {0}};
static const struct option job_options[] = {
    SWITCH("--all", all, "list: closed jobs too; export: all jobs"),
    SWITCH("--covers-off", covers_off, "close: although covers are still off"),
    SWITCH("--service-open", service_open, "close: although the service check is not done"),
    VALUE("--owner", owner, "TEXT", "open: whose it is, or what you call it"),
    VALUE("--to", to, "FILE", "export: into this file instead of the screen"),
    VALUE("--by", by, "WHO", "who enters what is entered"), {0}};
static const struct option vet_options[] = {
    SWITCH("--json", json, "print JSON for programs instead of words for people"),
    VALUE("--against", against, "OLD", "also list the cases whose first answer is not that of the knowledge in "
          "folder OLD (a whole one, or an own folder)"),
    VALUE("--cases", cases, "DIR", "where those cases are (usually tests/cases)"), {0}};
static const struct option card_options[] = {
    VALUE("--for", reader, "WHOM", "owner (plain words; as it is without this) or bench (everything, with weights)"),
    VALUE("--format", format, "KIND", "html, md, text, json or pdf; without this it goes by the end of FILE, or is text"),
    VALUE("--output", output, "FILE", "into this file instead of the screen"), {0}};
static const struct option learned_options[] = {
    VALUE("--class", machine_class, "CLASS", "only this machine class, with all that was confirmed on it"),
    SWITCH("--json", json, "print JSON for programs instead of words for people"), {0}};
static const struct option practice_options[] = {
    SWITCH("--new", new_job, "begin another run instead of going on with the last"),
    VALUE("--as", apprentice, "NAME", "whose runs: small letters, digits, hyphens (without this: apprentice)"),
    VALUE("--level", level, "LEVEL", "worked (to read), guided, free or exam; without this it goes by your runs"),
    VALUE("--class", machine_class, "CLASS", "this kind of machine (\"pullcord list machines\")"),
    VALUE("--kind", kind, "KIND", "what is wrong: one, two (faults), misleading (a result), last-repair, nothing, any"),
    VALUE("--system", system, "SYSTEM", "a fault of this system: fuel, ignition, compression ..."),
    SWITCH("--history", history, "a machine as they come to this shop, by its proved jobs (\"pullcord learned\")"),
    VALUE("--seed", seed, "NUMBER", "this very machine: the same number makes the same one"),
    VALUE("--case", laid, "FILE", "a machine written by hand (docs/practice.md)"),
    VALUE("--set", set, "FILE", "the next machine of a class set, as an examination"),
    VALUE("--count", count, "NUMBER", "set: how many machines"),
    VALUE("--from", from, "DIR", "score: the state folder to read, instead of your own"),
    SWITCH("--html", html, "debrief: as a page with pictures"),
    SWITCH("--json", json, "debrief, progress, score: JSON for programs"), {0}};
static const struct option spec_options[] = {
    SWITCH("--metric", metric, "figures in metric units, whatever they are written in"),
    SWITCH("--us", us, "figures in US customary units"),
    VALUE("--class", machine_class, "CLASS", "new: only the figures that this machine class can have"),
    SWITCH("--json", json, "print JSON for programs instead of words for people"), {0}};
static const struct option no_options[] = {{0}};

static const struct command all[] = {
    {"", "", "", 0, 0, "talk a job through at the bench",
     "Asks for the machine and the complaint, then one question at a time, always showing the leading "
     "causes and why it asks. Answer with the number or the word of a choice, or with ? for don't know. "
     "Anything else you saw or measured can be typed at any time, by the name of the check or by a "
     "reading with its unit. Every entry is kept at once: leave when you like and go on later. Type help "
     "there for all it takes.",
     bench_options, run_bench},
    {"bench", "[NAME]", "", 0, 1, "take up one of several open jobs, or a closed one, at the bench",
     "NAME is what \"pullcord job list\" shows: five letters, or the id from its beginning, or \"last\" "
     "for the open job last worked on. A closed job is opened again, after asking.",
     take_up_options, run_bench},
    {"job", "WHAT [NAME] [...]", "open add list find show back close reopen export import backup restore merge",
     1, 24, "open, record, list, search and close jobs; copy and merge the store that holds them",
     "NAME is what the list shows, or \"last\" for the open job last worked on. open MACHINE [WORDS...] opens "
     "a job. add NAME CHECK RESULT records a result (add \", fairly\" when not sure); also add NAME with note, "
     "part, owner, words, complaint, has, lacks, off, on and what it is; minutes N; repair FAULT; proof FAULT "
     "passed or failed; service ITEMS done, found WHAT or left WHY (oil, plug, filter, fuel, leaks, stop-switch, "
     "speed, or all); spec CARD (or none), given WHAT AMOUNT (altitude 1500 m). back NAME [CHECK] takes a result back. close NAME ENDING: repaired, nothing-broken, "
     "handed-over, given-up. reopen NAME [WHY...]. list, show [NAME], find WORDS...\n"
     "export [NAME] [--all] writes jobs as JSON, one on a line (docs/schema/job-1.json); import FILE takes them "
     "in. backup FILE copies the whole store, restore FILE puts a copy in its place (what was there is kept "
     "beside it), merge FILE adds what another bench's store or backup has. Nothing is ever taken in twice.",
     job_options, run_job},
    {"assess", "CASE.json", "@file", 1, 1, "rank the causes of one case given as a file",
     "Reads a case (docs/schema/case-1.json; - is standard input) and prints the ranking with its "
     "reasons, cautions, the next checks and what to do: repair, keep looking, nothing broken, or hand over.",
     json_option, run_assess},
    {"card", "JOB|CASE.json", "@file", 1, 1, "write the job card of a stored job, or of a case given as a file",
     "JOB is what \"pullcord job list\" shows, or \"last\" for the open job last worked on; a file is read as assess "
     "does. For the owner the card tells what was told, found and done, what to watch, how to store it and cautions; "
     "for the bench results, causes, weights, repair, refit list, proof run, service check, and of a stored job every "
     "entry with its time and who made it. HTML and PDF have pictures of how the belief moved and of the way to the cause, and "
     "print on A4 and Letter. JSON is docs/schema/card-1.json.",
     card_options, run_card},
    {"learned", "[off|on|reset|export]", "off on reset export", 0, 1, "show what the shop's own jobs say beside the shipped estimates",
     "Counts closed jobs whose repair passed its proof run: which faults they were, and what checks showed that "
     "were made before. Shows how many jobs that rests on, and how often past rankings were right. off and on: "
     "whether the bench weighs with it; reset: count only jobs closed from now on (none is lost); export: all of "
     "it as JSON. What is counted, and how: docs/learning.md.",
     learned_options, run_learned},
    {"list", "faults|checks|complaints|machines|features|covers|repairs|cautions|sources|rules|units",
     "faults checks complaints machines features covers repairs cautions sources rules units", 1, 1,
     "list everything of one kind",
     "Prints ids, names, choices and units. With --json all that a program needs to write a case.",
     json_option, run_list},
    {"show", "ID", "", 1, 1, "show one entry with all that is known of it and what that rests on",
     "Takes the id of a fault, check, complaint, machine, cover, repair, caution, source or rule. Of a "
     "source it also shows all that rests on it.",
     no_options, run_show},
    {"spec", "[NAME]", "new check", 0, 24, "find and show a spec card: the maker's figures for one engine",
     "Without NAME: lists the cards. NAME may be part of a name (\"plot 7\"). A card is a JSON file in the folder "
     "specs of your own folder (\"pullcord print own-folder\"); its form is docs/schema/spec-card-1.json. spec new "
     "NAME begins a blank one there and never writes over another; spec check FILE says by line what has to be "
     "mended. A case or job that names its card has its readings judged by it first. A blank card has every kind of figure there is.",
     spec_options, run_spec},
    {"work", "NAME VALUES...", WORK_WORDS, 1, 24, "bench arithmetic: premix, compression, jets, plug torque and more",
     "Does one calculation. Values are numbers with their units, in any unit; in the order shown, or named "
     "(exponent=1.25). With the name alone it says what it takes. Answers are in metric and US or imperial "
     "units, each with what it rests on; what is left out stands below. Each with an example:" WORK_LIST,
     json_option, run_work},
    {"vet", "[DIR]", "@file", 0, 1, "look through the knowledge for mistakes",
     "Reads the shipped knowledge, and your own folder where there is one (or DIR instead), and reports "
     "by file, line and plain words what is wrong. Ends with 65 when anything has to be mended; what is "
     "only worth a look does not count for that.",
     vet_options, run_vet},
    {"practice", "[WHAT] [RUN] [...]", "run debrief replay what-if progress forget set score case", 0, 24,
     "find the fault in a made-up dead machine, and see afterwards how well each step was chosen",
     "Without WHAT: begins a run or goes on with the last. You ask, look, measure and repair; every step costs "
     "minutes and is judged by what could be known then, never by luck. debrief [RUN] walks back over a run; "
     "replay [RUN] does it again; what-if RUN STEP ENTRY tries something else at a step; progress shows how you "
     "come on; forget deletes your runs. For a teacher: set --seed N --count N writes a class set, score FILE lists "
     "its results as CSV (--json: JSON), case --case FILE says whether a machine written by hand can be solved and "
     "how hard it is. Nothing here touches the jobs of the bench.",
     practice_options, run_practice},
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
    {"78", "the knowledge, or the store of jobs, cannot be used"}};

static const struct pair variables[] = {
    {"NO_COLOR", "set and not empty: no colour"},
    {"PULLCORD_BY", "who enters what is entered, where --by does not say"},
    {"PULLCORD_KNOWLEDGE", "folder that holds facts/ and rules/, instead of the installed one"},
    {"PULLCORD_NOW", "seconds since 1970 to take for the present time, for tests"},
    {"XDG_DATA_HOME", "your own knowledge is in pullcord/ below it (usually ~/.local/share)"},
    {"XDG_STATE_HOME", "jobs are in pullcord/jobs.db, practice runs in pullcord/practice/ below it (usually ~/.local/state)"}};

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

const char *commands_who(const struct args *args)
{
  const char *by = args->by ? args->by : getenv("PULLCORD_BY");

  return by && *by ? by : "bench";
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

/* Is this an option of some command that takes a value? */
static bool takes_value(const char *name)
{
  for (size_t i = 0; i < sizeof all / sizeof all[0]; i++)
    for (const struct option *o = all[i].options; o->name; o++)
      if (o->value && strcmp(o->name, name) == 0) return true;
  return false;
}

/* The first word that is no option and no value of one is the command, wherever it stands. */
static int find_command(int argc, char **argv, struct args *args, int *at, struct err *e)
{
  *at = 0;
  args->command = &all[0];
  for (int i = 1; i < argc; i++) {
    if (argv[i][0] == '-') {
      i += takes_value(argv[i]);
      continue;
    }
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
    if (only_operands || argv[i][0] != '-' || strcmp(argv[i], "-") == 0 || strspn(argv[i] + 1, "0123456789") > 0) {
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
