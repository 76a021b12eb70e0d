/* cmd_card.c - the job card of a case in a file, and how any card is given out. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "cli/commands.h"
#include "knowledge/load.h"
#include "report/card.h"
#include "shop/casefile.h"

/* Which format: as said, or by the end of the file's name, or text. */
static int choose_format(const struct args *args, enum card_format *out, struct err *e)
{
  const char *end = args->output ? strrchr(args->output, '.') : NULL;

  *out = CARD_TEXT;
  if (args->format && !card_format_by_name(args->format, out))
    return err_set(e, EX_USAGE, NULL, 0, "there is no format \"%.40s\"; take html, md, text, json or pdf.",
                   args->format);
  if (!args->format && end && !card_format_by_name(end + 1, out) && strcmp(end, ".txt") != 0)
    return err_set(e, EX_USAGE, NULL, 0,
                   "\"%.40s\" says no format; add --format html, md, text, json or pdf.", end);
  if (*out == CARD_PDF && !args->output && isatty(STDOUT_FILENO))
    return err_set(e, EX_USAGE, NULL, 0, "a PDF is nothing for the screen; add --output FILE.");
  return 0;
}

int card_give(struct card *card, const struct args *args, struct err *e)
{
  enum card_reader reader = CARD_OWNER;
  enum card_format format;
  struct buf out = {0};
  int status = choose_format(args, &format, e);

  if (status == 0 && args->reader && !card_reader_by_name(args->reader, &reader))
    status = err_set(e, EX_USAGE, NULL, 0, "a card is for the owner or for the bench, not for \"%.40s\".",
                     args->reader);
  if (status == 0) status = card_write(card, reader, format, &out, e);
  if (status == 0 && args->output) status = file_replace(args->output, out.text, out.len, e);
  else if (status == 0) fwrite(out.text, 1, out.len, stdout);
  buf_free(&out);
  return status;
}

/* A complaint that is not an id is told in the owner's words. */
static void add_words(struct buf *words, const struct knowledge *k, const struct json *j)
{
  if (json_kind(j) != JSON_TEXT || knowledge_find(k, ENTRY_COMPLAINT, json_text(j)) >= 0) return;
  buf_addf(words, "%s%s", words->len ? "; " : "", json_text(j));
}

/* What the file tells beside the case. */
static void tell(struct card *card, const struct json *file)
{
  const struct json *one = json_member(file, "complaint"), *more = json_member(file, "complaints");
  const struct json *note = json_member(file, "note");
  struct buf words = {0};

  if (one) add_words(&words, card->k, one);
  for (const struct json *j = more ? json_first(more) : NULL; j; j = json_next(j))
    add_words(&words, card->k, j);
  card_set(card, CARD_WORDS, buf_text(&words));
  if (note && json_kind(note) == JSON_TEXT) card_add_note(card, json_text(note), NULL, NULL);
  buf_free(&words);
}

static int write_card(const struct knowledge *k, const struct bench_case *c, const struct json *file,
                      const struct args *args, struct err *e)
{
  struct assessor *assessor;
  struct assessment a;
  struct card card;
  int status = assessor_open(k, &assessor, e);

  if (status) return status;
  status = assess_case(assessor, c, &a, e);
  if (status == 0) {
    card_from_case(&card, k, c, &a);
    tell(&card, file);
    status = card_give(&card, args, e);
    card_free(&card);
    assessment_free(&a);
  }
  assessor_close(assessor);
  return status;
}

/* Is this operand a file, and not the name of a job? A name is letters and digits. */
static bool is_file(const char *path)
{
  return strcmp(path, "-") == 0 || strchr(path, '/') || strchr(path, '.') || access(path, F_OK) == 0;
}

int run_card(const struct args *args, struct err *e)
{
  const char *path = args->positional[0], *name = strcmp(path, "-") == 0 ? "standard input" : path;
  struct knowledge k;
  struct bench_case c;
  struct json *file = NULL;
  char *text;
  size_t len;
  int status;

  if (!is_file(path)) return card_of_job(args, path, e);
  status = file_read(path, JSON_MAX_BYTES, &text, &len, e);
  if (status) return status;
  status = json_read(name, text, len, &file, e);
  if (status == 0) status = load_knowledge(&k, e);
  if (status == 0) {
    status = casefile_read_text(&k, name, text, len, file, &c, e);
    if (status == 0) {
      status = write_card(&k, &c, file, args, e);
      case_free(&c);
    }
    knowledge_free(&k);
  }
  json_free(file);
  free(text);
  return status;
}
