/* vet_words.c - the same-words: no word in two lists, no phrase of which nothing is left. */
#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "base/mem.h"
#include "base/stem.h"
#include "base/text.h"
#include "knowledge/vet_parts.h"

/* A word or phrase as it is compared: endings off, little words left out. */
struct plain { const char *text; size_t words; const struct same_words *in; };

static int by_text(const void *a, const void *b)
{
  const struct plain *x = a, *y = b;
  int d = strcmp(x->text, y->text);

  return d ? d : (x->in > y->in) - (x->in < y->in); /* in the order of the files */
}

/* A single word without apostrophe and ending, into word[32]; the rest of the text comes back. */
static const char *next_word(const char *text, char word[32])
{
  size_t n = 0;

  while (*text == ' ') text++;
  for (; *text && *text != ' '; text++)
    if (*text != '\'' && n < 31) word[n++] = *text;
  word[n] = '\0';
  text_lower(word);
  text_stem(word);
  return text;
}

static bool is_little(const struct plain *little, size_t count, const char *word)
{
  for (size_t i = 0; i < count; i++)
    if (strcmp(little[i].text, word) == 0) return true;
  return false;
}

static struct plain make_plain(struct arena *a, const char *text, const struct same_words *in,
                               const struct plain *little, size_t count)
{
  struct plain p = {.in = in};
  struct buf out = {0};
  char word[32];

  while (*text) {
    text = next_word(text, word);
    if (!*word || is_little(little, count, word)) continue;
    buf_addf(&out, "%s%s", p.words++ ? " " : "", word);
  }
  p.text = arena_text(a, buf_text(&out), strlen(buf_text(&out)));
  buf_free(&out);
  return p;
}

/* Puts all words of lists of sort little, or of all the others, into out[]. */
static size_t gather(struct vet *v, struct arena *a, bool little_ones, struct plain *out,
                     const struct plain *little, size_t little_count)
{
  size_t n = 0;

  for (size_t i = 0; i < v->k->same_words_count; i++) {
    const struct same_words *s = &v->k->same_words[i];
    bool little_list = strcmp(s->sort, "little") == 0 && strcmp(s->of, "complaints") != 0;

    if (little_list != little_ones) continue;
    for (size_t j = 0; j < s->words.count; j++) {
      out[n] = make_plain(a, s->words.items[j], s, little, little_count);
      if (out[n].words == 0 || (out[n].words == 1 && strchr(s->words.items[j], ' ')))
        VET_SAY(v, false, "no-effect", &s->origin,
                "\"%s\" of same-words \"%s\" is no phrase: of its words %s.", s->words.items[j], s->id,
                out[n].words ? "only one says anything" : "none says anything");
      n++;
    }
  }
  return n;
}

void vet_words(struct vet *v)
{
  struct arena a = {0};
  size_t room = 1, little_count, count;
  struct plain *little, *all;

  for (size_t i = 0; i < v->k->same_words_count; i++) room += v->k->same_words[i].words.count;
  little = mem_array(room, sizeof *little);
  all = mem_array(room, sizeof *all);
  little_count = gather(v, &a, true, little, NULL, 0);
  count = gather(v, &a, false, all, little, little_count);
  qsort(all, count, sizeof *all, by_text);
  for (size_t i = 1; i < count; i++)
    if (strcmp(all[i].text, all[i - 1].text) == 0 && all[i].in != all[i - 1].in)
      VET_SAY(v, false, "repeated-name", &all[i].in->origin,
              "\"%s\" stands in same-words \"%s\" and \"%s\"; only the first counts.", all[i].text,
              all[i - 1].in->id, all[i].in->id);
  free(little);
  free(all);
  arena_free(&a);
}
