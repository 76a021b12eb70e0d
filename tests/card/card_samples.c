/* card_samples.c - writes job cards of invented jobs: card_samples FOLDER
 *
 * The jobs: "mended" is a whole job that went home; "in-vain" one whose repair did not cure
 * it; "hostile" is full of text that every format has to escape; "letters" uses letters of
 * other scripts; "empty" is a machine and nothing else; "long" has as many results as a
 * case may well have, "bounded" so many unsound ones that they cannot be weighed exactly.
 * Each for owner and bench in every format, and all once more as *-again.* so that the bytes
 * can be compared. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "knowledge/load.h"
#include "report/card.h"
#include "shop/casefile.h"

static const char *const hostile = "<script>alert(1)</script> \"quoted\" 'single' & &amp; ]]> --> | pipe * "
                                   "star _under_ # hash `tick` [a](b) \\ \x1B[31m"
                                   " \xE2\x80\xAE"
                                   "backwards \xFF bad";
static const char *const letters = "Gro\xC3\x9F \xC5\x81ukasz \xD0\x98\xD0\xB2\xD0\xB0\xD0\xBD \xE8\x8A\x9D "
                                   "5 \xE2\x82\xAC \xE2\x80\x93 na\xC3\xAFve";

static void fail(const struct err *e)
{
  char text[1200];

  err_format(e, text, sizeof text);
  fprintf(stderr, "card_samples: %s\n", text);
  exit(1);
}

static void write_all(struct card *card, const char *folder, const char *name)
{
  static const char *const formats[] = {"html", "md", "text", "json", "pdf"}, *const readers[] = {"owner",
                                                                                                  "bench"};

  for (int again = 0; again < 2; again++)
    for (size_t r = 0; r < 2; r++)
      for (size_t f = 0; f < 5; f++) {
        enum card_format format;
        enum card_reader reader;
        struct buf out = {0};
        struct err e;
        char path[1024];

        if (!card_format_by_name(formats[f], &format) || !card_reader_by_name(readers[r], &reader)) exit(1);
        if (card_write(card, reader, format, &out, &e)) fail(&e);
        snprintf(path, sizeof path, "%s/%s-%s%s.%s", folder, name, readers[r], again ? "-again" : "",
                 formats[f]);
        if (file_replace(path, out.text, out.len, &e)) fail(&e);
        buf_free(&out);
      }
}

static void in_full(struct card *card, const struct knowledge *k, const char *text)
{
  const char *parts[] = {"intake gasket set", text};
  int fault = knowledge_find(k, ENTRY_FAULT, "intake-gasket-leak");

  card_set(card, CARD_JOB, "plots-0042");
  card_set(card, CARD_SHOP, "Millrace Plots, tool library");
  card_set(card, CARD_MACHINE, "the big tiller");
  card_set(card, CARD_OWNER_REFERENCE, text);
  card_set(card, CARD_WORDS, text);
  card_set(card, CARD_OPENED, "2026-09-12 10:04 UTC");
  card_set(card, CARD_CLOSED, "2026-09-15 17:30 UTC");
  card_set(card, CARD_WHO, text);
  card_set(card, CARD_PROOF_WORDS, text);
  card_set(card, CARD_ENDING_WORDS, text);
  card_add_repair(card, fault, 35, parts, 2, "2026-09-15 16:40 UTC", text);
  card_add_part(card, text);
  card_set_minutes(card, 55);
  card_add_note(card, text, "2026-09-13 09:00 UTC", text);
  for (size_t i = 0; i < card->c->result_count; i++)
    card_add_entry(card, card->c->results[i].check, "2026-09-13 09:15 UTC", text);
  card_set_proof(card, CARD_PROOF_PASSED);
  card_set_ending(card, CARD_MENDED);
}

/* Fills the case with the result number `result` of many checks, as a slow job would. */
static void fill(const struct knowledge *k, struct bench_case *c, size_t result)
{
  for (size_t i = 0; i < k->check_count && c->result_count < 30; i++)
    if (k->checks[i].kind != KIND_MEASURE &&
        !case_result_of(c, (int)i) && result < k->checks[i].results.count)
      case_set_result(c, (struct case_result){.check = (int)i, .result = (int)result, .sure = 1});
}

static void change(const struct knowledge *k, struct bench_case *c, const char *name)
{
  int fault = knowledge_find(k, ENTRY_FAULT, "main-jet-blocked"),
      cover = knowledge_find(k, ENTRY_COVER, "air-box");

  if (strcmp(name, "in-vain") == 0) {
    c->mended[fault] = true;
    c->off[cover] = true;
  }
  if (strcmp(name, "empty") == 0) c->complaint_count = c->result_count = 0;
  if (strcmp(name, "long") == 0) fill(k, c, 0);
  if (strcmp(name, "bounded") == 0) fill(k, c, 1);
}

static void sample(const struct knowledge *k, struct assessor *assessor, const struct json *file,
                   const char *folder, const char *name)
{
  struct bench_case c;
  struct assessment a;
  struct card card;
  struct err e;

  if (casefile_read(k, "tiller", file, &c, &e)) fail(&e);
  change(k, &c, name);
  if (assess_case(assessor, &c, &a, &e)) fail(&e);
  card_from_case(&card, k, &c, &a);
  if (strcmp(name, "mended") == 0) {
    in_full(&card, k, "plot 17");
    card_set(&card, CARD_OWNER_REFERENCE, "plot 17, the long one by the mill");
    card_set(&card, CARD_WORDS,
             "It keeps surging, and it will not run without choke.\nIt was fine last Sunday.");
    card_set(&card, CARD_WHO, "the Saturday bench");
    card_set(&card, CARD_PROOF_WORDS, "Twenty minutes in the wet clay behind the hut, choke off.");
    card_set(&card, CARD_ENDING_WORDS, "");
  }
  if (strcmp(name, "hostile") == 0) in_full(&card, k, hostile);
  if (strcmp(name, "letters") == 0) in_full(&card, k, letters);
  write_all(&card, folder, name);
  card_free(&card);
  assessment_free(&a);
  case_free(&c);
}

int main(int argc, char **argv)
{
  static const char *const names[] = {"mended", "in-vain", "hostile", "letters", "empty", "long", "bounded"};
  struct assessor *assessor;
  struct knowledge k;
  struct json *file;
  struct err e;
  char path[1024], *text;
  size_t len;

  if (argc != 2 || !getenv("PULLCORD_SOURCE")) return 64;
  snprintf(path, sizeof path, "%s/demo/tiller-3-found.json", getenv("PULLCORD_SOURCE"));
  if (file_read(path, JSON_MAX_BYTES, &text, &len, &e) || json_read(path, text, len, &file, &e)) fail(&e);
  if (load_knowledge(&k, &e) || assessor_open(&k, &assessor, &e)) fail(&e);
  for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) sample(&k, assessor, file, argv[1], names[i]);
  assessor_close(assessor);
  knowledge_free(&k);
  json_free(file);
  free(text);
  return 0;
}
