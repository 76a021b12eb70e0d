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

struct tally {
  size_t said, first, three, nothing, refused, seconds, heard, spurious;
  size_t took[4], right[4]; /* per enum words_clear */
};

static bool is_id(const struct knowledge *k, int at, const struct json *one, const char *member)
{
  return strcmp(k->complaints[at].id, json_text(json_member(one, member))) == 0;
}

static bool is_meant(const struct knowledge *k, int at, const struct json *one)
{
  return is_id(k, at, one, "complaint") || is_id(k, at, one, "also");
}

static void show_wrong(const struct knowledge *k, const struct json *one, const struct words_said *s)
{
  printf("%-20s \"%s\" ->", json_text(json_member(one, "complaint")),
         json_text(json_member(one, "words")));
  for (size_t i = 0; i < s->count && i < 3; i++)
    printf(" %s %.2f", k->complaints[s->best[i].at].id, s->best[i].score);
  for (size_t i = 0; i < s->more_count; i++) printf(" and %s", k->complaints[s->more[i]].id);
  printf("\n");
}

/* Of a sentence with two complaints both are wanted; of the others no second one. */
static void count_seconds(const struct knowledge *k, const struct json *one, const struct words_said *s,
                          struct tally *t)
{
  bool both = json_member(one, "also") && s->more_count > 0 && is_meant(k, s->best[0].at, one) &&
              is_meant(k, s->more[0], one);

  t->seconds += json_member(one, "also") != NULL;
  t->heard += both;
  t->spurious += !both && s->more_count > 0;
}

static void try_one(const struct knowledge *k, const struct json *one, bool show, struct tally *t)
{
  int machine = knowledge_find(k, ENTRY_CLASS, json_text(json_member(one, "machine")));
  struct words_said s;
  struct bench_case c;
  struct err e;
  size_t at = 0, most;

  case_begin(&c, k);
  case_set_machine(&c, k, machine, NULL, 0, NULL, 0, &e);
  words_complaints(k, &c, json_text(json_member(one, "words")), &s);
  case_free(&c);
  count_seconds(k, one, &s, t);
  if (!json_member(one, "complaint")) {
    t->nothing++;
    t->refused += s.clear <= WORDS_UNSURE;
    if (show && s.clear > WORDS_UNSURE) show_wrong(k, one, &s);
    return;
  }
  most = s.count < 3 ? s.count : 3;
  while (at < most && !is_meant(k, s.best[at].at, one)) at++;
  t->said++;
  t->first += at == 0 && most > 0;
  t->three += at < most;
  t->took[s.clear]++;
  t->right[s.clear] += at == 0 && most > 0;
  if (show && (at > 0 || most == 0)) show_wrong(k, one, &s);
}

static double percent(size_t part, size_t whole)
{
  return whole ? 100.0 * (double)part / (double)whole : 100;
}

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
  good &= holds("no complaint: taken for none, or as unsure", t.refused, t.nothing, argc > 2 ? argv[4] : NULL);
  for (int i = WORDS_CLEAR; i >= WORDS_NOTHING; i--)
    printf("%s: %zu, %zu of them right\n", words_clear_name((enum words_clear)i), t.took[i], t.right[i]);
  printf("two complaints: %zu, both heard: %zu; a second heard that is none: %zu\n", t.seconds, t.heard,
         t.spurious);
  json_free(list);
  knowledge_free(&k);
  free(text);
  return good ? 0 : 1;
}
