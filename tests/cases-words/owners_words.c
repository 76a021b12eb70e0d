/* owners_words.c - how often a complaint in the owner's words is taken for the right one.
 *   owners_words FILE FIRST THREE NONE     fails when fewer than these percentages hold
 *   owners_words FILE                      prints every sentence that went wrong, and the figures
 * FILE is a list of {"words", "complaint", "also", "machine"}: also is a second complaint made in
 * the same breath, and a sentence without a complaint is one that must not be taken for any. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "json/json.h"
#include "knowledge/load.h"
#include "shop/words.h"

struct tally { size_t said, first, three, nothing, refused; };

static bool is_meant(const struct knowledge *k, int at, const struct json *one)
{
  const char *id = k->complaints[at].id;

  return strcmp(id, json_text(json_member(one, "complaint"))) == 0 ||
         (json_member(one, "also") && strcmp(id, json_text(json_member(one, "also"))) == 0);
}

static void show_wrong(const struct knowledge *k, const struct json *one, const struct word_match *m, size_t n)
{
  printf("%-20s \"%s\" ->", json_text(json_member(one, "complaint")), json_text(json_member(one, "words")));
  for (size_t i = 0; i < n; i++) printf(" %s %.2f", k->complaints[m[i].at].id, m[i].score);
  printf("\n");
}

static void try_one(const struct knowledge *k, const struct json *one, bool show, struct tally *t)
{
  const char *text = json_text(json_member(one, "words")), *machine = json_text(json_member(one, "machine"));
  struct word_match m[3];
  size_t n, at = 0;

  (void)machine;
  n = words_match_complaints(k, text, m, 3);
  if (!json_member(one, "complaint")) {
    bool refused = n == 0 || m[0].score < 0.45;

    t->nothing++;
    t->refused += refused;
    if (show && !refused) show_wrong(k, one, m, n);
    return;
  }
  while (at < n && !is_meant(k, m[at].at, one)) at++;
  t->said++;
  t->first += at == 0 && n > 0;
  t->three += at < n;
  if (show && (at > 0 || n == 0)) show_wrong(k, one, m, n);
}

static double percent(size_t part, size_t whole) { return whole ? 100.0 * (double)part / (double)whole : 100; }

static bool holds(const char *what, size_t part, size_t whole, const char *floor)
{
  double p = percent(part, whole);
  bool good = !floor || p >= atof(floor);

  printf("%s: %zu of %zu, %.1f %%%s%s%s\n", what, part, whole, p, good ? "" : ", and it should be ",
         good ? "" : floor, good ? "" : " %");
  return good;
}

int main(int argc, char **argv)
{
  struct knowledge k = {0};
  struct json *list = NULL;
  struct tally t = {0};
  struct err e = {0};
  char *text = NULL;
  size_t len = 0;
  bool good = true;

  if (argc != 2 && argc != 5) return 64;
  if (file_read(argv[1], JSON_MAX_BYTES, &text, &len, &e) || json_read(argv[1], text, len, &list, &e) ||
      load_knowledge(&k, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  for (const struct json *i = json_first(list); i; i = json_next(i)) try_one(&k, i, argc == 2, &t);
  good &= holds("right at first", t.first, t.said, argc > 2 ? argv[2] : NULL);
  good &= holds("right within three", t.three, t.said, argc > 2 ? argv[3] : NULL);
  good &= holds("no complaint and not taken for one", t.refused, t.nothing, argc > 2 ? argv[4] : NULL);
  json_free(list);
  knowledge_free(&k);
  free(text);
  return good ? 0 : 1;
}
