/* main.c - finds the command and runs it. */
#include <locale.h>
#include <signal.h>
#include <stdio.h>

#include "base/heap.h"
#include "cli/commands.h"
#include "cli/version.h"
#include "engine/engine.h"
#include "knowledge/load.h"

static int print_version(void)
{
  struct knowledge k;
  struct err e;

  printf("pullcord %s\nrule engine %s\n", PULLCORD_VERSION, engine_version());
  if (load_knowledge(&k, &e) == 0) {
    printf("knowledge %016llx: %zu faults, %zu checks, %zu rules\n", k.fingerprint, k.fault_count, k.check_count,
           k.rule_count);
    knowledge_free(&k);
  } else {
    printf("knowledge: cannot be used; \"pullcord vet\" says why\n");
  }
  return 0;
}

int main(int argc, char **argv)
{
  struct args args;
  struct err e = {0};
  char text[1200];
  int status;

  heap_begin();
  setlocale(LC_CTYPE, ""); /* only this: numbers are the same in every locale */
  signal(SIGPIPE, SIG_IGN);
  status = commands_parse(argc, argv, &args, &e);
  if (status == 0 && args.help) help_print(args.command);
  else if (status == 0 && args.version) status = print_version();
  else if (status == 0) status = args.command->run(&args, &e);
  if (status && e.status) {
    err_format(&e, text, sizeof text);
    fprintf(stderr, "pullcord: %s\n", text);
  }
  if (fflush(stdout) != 0 || ferror(stdout)) {
    if (status == 0) {
      fprintf(stderr, "pullcord: the output cannot be written in full.\n");
      status = EX_IOERR;
    }
  }
  return status;
}
