/* cmd_spec.c - the command "spec": lists, shows, checks and begins spec cards. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/text.h"
#include "cli/commands.h"
#include "cli/spec_show.h"
#include "knowledge/load.h"
#include "shop/spec_folder.h"

static void print(struct buf *b)
{
  fputs(buf_text(b), stdout);
  buf_free(b);
}

static void print_json(struct json *j)
{
  char *text = json_print(j);

  fputs(text, stdout);
  free(text);
  json_free(j);
}

/* The operands from `from` on as one text. The caller frees. */
static char *words_from(const struct args *args, int from)
{
  struct buf b = {0};
  char *copy;

  for (int i = from; i < args->positional_count; i++)
    buf_addf(&b, "%s%s", i > from ? " " : "", args->positional[i]);
  copy = mem_new(strlen(buf_text(&b)) + 1);
  strcpy(copy, buf_text(&b));
  buf_free(&b);
  return copy;
}

static void list_all(const struct knowledge *k, const struct spec_entries *list, const struct args *args)
{
  struct buf b = {0};

  if (args->json) {
    print_json(spec_list_json(list));
    return;
  }
  spec_list_text(&b, k, list);
  print(&b);
}

/* Several fit: their names only. */
static int which_one(const struct spec_entries *list, const size_t *found, size_t count, const char *words,
                     struct err *e)
{
  struct buf names = {0};

  for (size_t i = 0; i < count && i < 12; i++)
    buf_addf(&names, "%s%s", i ? ", " : "", list->items[found[i]].card.id);
  err_set(e, EX_DATAERR, NULL, 0, "\"%.60s\" fits %zu spec cards: %s%s. Say more of its name.", words, count,
          buf_text(&names), count > 12 ? " ..." : "");
  buf_free(&names);
  return e->status;
}

static int no_card(const char *words, const char *near, struct err *e)
{
  return err_set(
      e, EX_NOINPUT, NULL, 0,
      "there is no spec card \"%.60s\"%s%s%s \"pullcord spec\" lists them; \"pullcord spec new NAME\" "
      "begins one.",
      words, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
}

static int show_one(const struct knowledge *k, const struct spec_entries *list, const char *words,
                    const struct args *args, struct err *e)
{
  enum unit_system system = args->metric ? UNITS_METRIC : args->us ? UNITS_US : UNITS_AS_WRITTEN;
  size_t *found = mem_array(list->count + 1, sizeof *found), count;
  const struct spec_entry *one;
  const char *near;
  struct buf b = {0};
  int status = 0;

  count = spec_find(k, list, words, found, &near);
  one = count ? &list->items[found[0]] : NULL;
  free(count == 1 ? found : NULL);
  if (count == 0) status = no_card(words, near, e);
  else if (count > 1) status = which_one(list, found, count, words, e);
  else if (!one->good) status = (*e = one->why).status;
  else if (args->json) print_json(spec_card_json(&one->card, system));
  else {
    spec_card_text(&b, k, &one->card, system);
    print(&b);
  }
  if (count != 1) free(found);
  return status;
}

static int look_up(const struct knowledge *k, const struct args *args, struct err *e)
{
  struct spec_entries list;
  int status = spec_entries_read(k, &list, e);
  char *words;

  if (status) return status;
  if (args->positional_count == 0) {
    list_all(k, &list, args);
  } else {
    words = words_from(args, 0);
    status = show_one(k, &list, words, args, e);
    free(words);
  }
  spec_entries_free(&list);
  return status;
}

static int check_file(const struct knowledge *k, const char *path, struct err *e)
{
  struct spec_faults faults = {0};
  struct spec_card card;
  size_t blank = 0;

  if (spec_load(k, path, &card, &faults)) {
    for (size_t i = 0; i < card.figure_count; i++) blank += card.figures[i].blank;
    printf("%s is in order: %zu figures", path, card.figure_count - blank);
    if (blank) printf(", %zu still to fill in", blank);
    printf(".\n");
  } else {
    for (size_t i = 0; i < faults.count; i++) {
      char line[1200];

      err_format(&faults.items[i], line, sizeof line);
      printf("%s\n", line);
    }
    if (faults.items[0].status == EX_DATAERR) err_set(e, EX_DATAERR, path, 0, "%zu to mend.", faults.count);
    else *e = faults.items[0];
  }
  spec_free(&card);
  spec_faults_free(&faults);
  return e->status;
}

static int begin_card(const struct knowledge *k, const struct args *args, struct err *e)
{
  int class_at = args->machine_class ? knowledge_find(k, ENTRY_CLASS, args->machine_class) : -1, status;
  char *name = words_from(args, 1), *path = NULL;

  if (args->machine_class && class_at < 0) {
    const char **ids, *near;
    size_t count;

    knowledge_ids(k, ENTRY_CLASS, &ids, &count);
    near = text_nearest(args->machine_class, ids, count);
    status =
        err_set(e, EX_DATAERR, NULL, 0,
                "there is no machine class \"%.60s\"%s%s%s \"pullcord list machines\" "
                "shows them.",
                args->machine_class, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
    free(ids);
  } else {
    status = spec_new(k, name, class_at, &path, e);
  }
  if (status == 0)
    printf("%s\nFill in what you know, each figure with its unit and where it is from (plate, maker's sheet, "
           "measured); leave the rest blank or take it out. Then: pullcord spec check %s\n",
           path, path);
  free(path);
  free(name);
  return status;
}

int run_spec(const struct args *args, struct err *e)
{
  const char *first = args->positional_count ? args->positional[0] : "";
  bool check = strcmp(first, "check") == 0, new = strcmp(first, "new") == 0;
  struct knowledge k;
  int status;

  *e = (struct err){0};
  if (args->metric && args->us)
    return err_set(e, EX_USAGE, NULL, 0, "--metric and --us do not go together. Take one.");
  if ((check && args->positional_count != 2) || (new && args->positional_count < 2))
    return err_set(e, EX_USAGE, NULL, 0, check ? "spec check wants one FILE." : "spec new wants a NAME.");
  status = load_knowledge(&k, e);
  if (status) return status;
  if (check) status = check_file(&k, args->positional[1], e);
  else if (new) status = begin_card(&k, args, e);
  else status = look_up(&k, args, e);
  knowledge_free(&k);
  return status;
}
