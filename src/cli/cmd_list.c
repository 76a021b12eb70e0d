/* cmd_list.c - lists, single entries, and what the install needs printed. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/commands.h"
#include "knowledge/load.h"
#include "report/listing.h"

int run_list(const struct args *args, struct err *e)
{
  struct knowledge k;
  int status = load_knowledge(&k, e);

  if (status) return status;
  if (args->json) {
    struct json *j;

    status = listing_json(&j, &k, args->positional[0], e);
    if (status == 0) {
      char *text = json_print(j);

      fputs(text, stdout);
      free(text);
      json_free(j);
    }
  } else {
    struct buf b = {0};

    status = listing_text(&b, &k, args->positional[0], e);
    fputs(buf_text(&b), stdout);
    buf_free(&b);
  }
  knowledge_free(&k);
  return status;
}

int run_show(const struct args *args, struct err *e)
{
  struct knowledge k;
  struct buf b = {0};
  int status = load_knowledge(&k, e);

  if (status) return status;
  status = listing_show(&b, &k, args->positional[0], 78, e);
  fputs(buf_text(&b), stdout);
  buf_free(&b);
  knowledge_free(&k);
  return status;
}

int run_print(const struct args *args, struct err *e)
{
  const char *what = args->positional[0];
  char *own;

  if (strcmp(what, "effective") == 0) return print_effective(e);
  if (strcmp(what, "coverage") == 0) return print_coverage(e);
  if (strcmp(what, "man") == 0) help_man();
  else if (strcmp(what, "completion") == 0) help_completion();
  else if (strcmp(what, "own-folder") == 0) {
    own = find_own();
    if (!own) return err_set(e, EX_CONFIG, NULL, 0, "neither XDG_DATA_HOME nor HOME is set.");
    printf("%s\n", own);
    free(own);
  } else {
    return err_set(e, EX_USAGE, NULL, 0, "print takes man, completion, own-folder, effective or coverage, not \"%.40s\".", what);
  }
  return 0;
}
