/* help.c - help, man page and completion, made from the table of commands. */
#include <stdio.h>
#include <string.h>

#include "base/buf.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/version.h"

enum { WIDTH = 78 };

static void wrapped(const char *text, const char *first, const char *rest)
{
  struct buf b = {0};

  text_wrap(&b, text, WIDTH, first, rest);
  printf("%s\n", buf_text(&b));
  buf_free(&b);
}

static void print_option(const struct option *o)
{
  char first[40], name[24];

  snprintf(name, sizeof name, "%s%s%s", o->name, o->value ? " " : "", o->value ? o->value : "");
  snprintf(first, sizeof first, "  %-14s ", name);
  wrapped(o->help, first, "                 ");
}

static void print_options(const struct command *c)
{
  size_t n;
  const struct option *g = commands_global(&n);

  printf("\nOptions:\n");
  for (const struct option *o = c ? c->options : NULL; o && o->name; o++) print_option(o);
  for (size_t i = 0; i < n; i++) print_option(&g[i]);
}

static void print_command(const struct command *c)
{
  printf("pullcord%s%s%s%s - %s\n\n", *c->name ? " " : "", c->name, *c->operands ? " " : "", c->operands, c->help);
  wrapped(c->more, "", "");
  print_options(c);
}

static void print_program(void)
{
  size_t n;
  const struct command *c = commands_all(&n);

  printf("pullcord - fault-finding partner for small engines, at the bench and offline\n\n"
         "  pullcord                         talk a job through (try this first)\n"
         "  pullcord assess case.json        rank the causes of a case in a file\n"
         "  pullcord list complaints         the words it knows\n\nCommands:\n");
  for (size_t i = 1; i < n; i++) {
    char first[40];

    snprintf(first, sizeof first, "  %-14s ", c[i].name);
    wrapped(c[i].help, first, "                 ");
  }
  print_options(&c[0]);
  printf("\n\"pullcord COMMAND --help\" says more about one. Nothing leaves this machine.\n");
}

void help_print(const struct command *c)
{
  if (c && *c->name) print_command(c);
  else print_program();
}

/* ---- man page ------------------------------------------------------------------------- */

/* Text for roff: hyphens and backslashes as they are, no line that starts with a point. */
static void roff(const char *text)
{
  for (const char *p = text; *p; p++) {
    if (*p == '-') fputs("\\-", stdout);
    else if (*p == '\\') fputs("\\e", stdout);
    else if (*p == '.' && p == text) fputs("\\&.", stdout);
    else putchar(*p);
  }
  putchar('\n');
}

static void man_options(const struct option *o, size_t count)
{
  for (size_t i = 0; i < count && o[i].name; i++) {
    char tag[40];

    snprintf(tag, sizeof tag, o[i].value ? "%s \" %s\"" : "%s", o[i].name, o[i].value);
    printf(".TP\n.%s ", o[i].value ? "BI" : "B");
    roff(tag);
    roff(o[i].help);
  }
}

static void man_pairs(const char *title, const struct pair *p, size_t count)
{
  printf(".SH %s\n", title);
  for (size_t i = 0; i < count; i++) {
    printf(".TP\n.B %s\n", p[i].name);
    roff(p[i].what);
  }
}

void help_man(void)
{
  size_t n;
  const struct command *c = commands_all(&n);
  const struct option *g;
  const struct pair *pairs;

  printf(".TH PULLCORD 1 \"\" \"pullcord " PULLCORD_VERSION "\" \"User commands\"\n.SH NAME\n"
         "pullcord \\- fault\\-finding partner for small engines\n.SH SYNOPSIS\n");
  for (size_t i = 0; i < n; i++) {
    printf(".B pullcord%s%s\n", *c[i].name ? " " : "", c[i].name);
    if (*c[i].operands) printf(".I %s\n", c[i].operands);
    printf(".br\n");
  }
  printf(".SH DESCRIPTION\nTakes in a complaint and whatever is seen or measured, ranks the likely causes, shows "
         "why, and names the next check worth its minutes, with its cautions. Nothing leaves the machine.\n"
         ".SH COMMANDS\n");
  for (size_t i = 0; i < n; i++) {
    printf(".SS pullcord%s%s\n", *c[i].name ? " " : "", c[i].name);
    roff(c[i].more);
    man_options(c[i].options, 99);
  }
  printf(".SH OPTIONS\n");
  g = commands_global(&n);
  man_options(g, n);
  pairs = commands_statuses(&n);
  man_pairs("EXIT STATUS", pairs, n);
  pairs = commands_variables(&n);
  man_pairs("ENVIRONMENT", pairs, n);
  printf(".SH NOTES\nThe makers' manuals, local codes and licensed trades come before anything said here.\n");
}

/* ---- completion for bash --------------------------------------------------------------- */

static void complete_command(const struct command *c)
{
  printf("    %s) words=\"%s", c->name, strcmp(c->words, "@file") == 0 ? "" : c->words);
  for (const struct option *o = c->options; o->name; o++) printf(" %s", o->name);
  printf(" --help\"");
  if (strcmp(c->words, "@file") == 0) printf("; compopt -o default");
  printf(" ;;\n");
}

void help_completion(void)
{
  size_t n;
  const struct command *c = commands_all(&n);

  printf("# bash completion for pullcord, made by: pullcord print completion\n"
         "_pullcord() {\n  local words command= i\n"
         "  for ((i = 1; i < COMP_CWORD; i++)); do\n"
         "    [[ ${COMP_WORDS[i]} != -* ]] && { command=${COMP_WORDS[i]}; break; }\n  done\n"
         "  case $command in\n");
  for (size_t i = 1; i < n; i++) complete_command(&c[i]);
  printf("    *) words=\"");
  for (size_t i = 1; i < n; i++) printf("%s ", c[i].name);
  printf("--new --job --by --help --version\" ;;\n  esac\n"
         "  mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"${COMP_WORDS[COMP_CWORD]}\")\n}\n"
         "complete -F _pullcord pullcord\n");
}
