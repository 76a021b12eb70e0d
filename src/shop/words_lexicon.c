/* words_lexicon.c - see words_lexicon.h. */
#include "shop/words_lexicon.h"

#include <stdlib.h>
#include <string.h>

#include "base/stem.h"
#include "base/text.h"

enum { MOST_IN_PHRASE = 8, PHRASE_HEADS = 256 };

enum sort { SORT_THING, SORT_LITTLE, SORT_LINKING, SORT_NO, SORT_BREAK };

/* A word without its ending and what it means. letters has a bit for each letter in it. */
struct form {
  const char *text;
  size_t len;
  unsigned int letters;
  int meaning;
  enum sort sort; /* when the meaning is its own */
};

/* Words that mean something only together; next with the same first meaning, or -1. */
struct phrase { int meaning[MOST_IN_PHRASE], count, stands_for, next; };

struct lexicon {
  struct arena arena;
  const struct knowledge *k;
  struct form *forms;
  size_t count, room, places; /* places: a power of two */
  int *at;                    /* open addressing into forms, -1 empty */
  struct phrase *phrases;
  size_t phrase_count, phrase_room;
  int heads[PHRASE_HEADS];
  enum sort *sorts; /* per same-words */
};

/* ---- known words --------------------------------------------------------------------- */

static size_t hash_of(const char *word)
{
  size_t h = 2166136261u;

  for (; *word; word++) h = (h ^ (unsigned char)*word) * 16777619u;
  return h ^ h >> 15;
}

static int *place_of(const struct lexicon *l, const char *word)
{
  for (size_t i = hash_of(word);; i++) {
    int *p = &l->at[i & (l->places - 1)];

    if (*p < 0 || strcmp(l->forms[*p].text, word) == 0) return p;
  }
}

static void spread(struct lexicon *l)
{
  l->places = l->places ? l->places * 2 : 2048;
  free(l->at);
  l->at = mem_array(l->places, sizeof *l->at);
  for (size_t i = 0; i < l->places; i++) l->at[i] = -1;
  for (size_t i = 0; i < l->count; i++) *place_of(l, l->forms[i].text) = (int)i;
}

static unsigned int letters_of(const char *word)
{
  unsigned int letters = 0;

  for (; *word; word++) letters |= 1u << ((unsigned char)*word & 31);
  return letters;
}

/* The word's meaning; a word met for the first time gets `meaning`, or its own (-1) and the sort. */
static int know(struct lexicon *l, const char *word, int meaning, enum sort sort)
{
  int *place = place_of(l, word);
  void *forms = l->forms;
  struct form *f;

  if (*place >= 0) return l->forms[*place].meaning;
  mem_grow(&forms, &l->room, l->count + 1, sizeof *l->forms);
  l->forms = forms;
  f = &l->forms[l->count];
  f->len = strlen(word);
  f->text = arena_text(&l->arena, word, f->len);
  f->letters = letters_of(word);
  f->meaning = meaning >= 0 ? meaning : (int)(l->k->same_words_count + l->count);
  f->sort = sort;
  *place = (int)l->count++;
  if (l->count * 2 > l->places) spread(l);
  return f->meaning;
}

static int bits(unsigned int x)
{
  int n = 0;

  for (; x; x &= x - 1) n++;
  return n;
}

/* How sure it is that `word` is a slip of the finger, or another ending, for this form. */
static double slip(const char *word, size_t len, unsigned int letters, const struct form *f)
{
  size_t same = 0, less = len < f->len ? len : f->len, more = len < f->len ? f->len : len;
  /* tilerr is tiller, but banana is not balance */
  int d, most = less >= 7 || (less == 6 && letters == f->letters) ? 2 : 1;

  if (less < 4 || more - less > 3) return 0;
  while (same < less && word[same] == f->text[same]) same++;
  if (same == less && less >= 4) return 0.8;
  if (less < 5) return 0;
  if (more - less > (size_t)most || bits(letters ^ f->letters) > 2 * most) return 0;
  d = text_distance(word, f->text, most);
  return d == 1 ? 0.85 : d == 2 && most == 2 ? 0.6 : 0;
}

/* The nearest known word, or -1. The first of equals, in the order of the knowledge. */
static int nearest(const struct lexicon *l, const char *word, double *sure)
{
  size_t len = strlen(word);
  unsigned int letters = letters_of(word);
  int best = -1;

  *sure = 0;
  for (size_t i = 0; len >= 4 && i < l->count; i++) {
    double s = slip(word, len, letters, &l->forms[i]);

    if (s > *sure) {
      *sure = s;
      best = l->forms[i].meaning;
    }
  }
  return best;
}

static enum sort sort_of(const struct lexicon *l, int meaning)
{
  size_t lists = l->k->same_words_count;

  if (meaning < 0) return SORT_THING;
  return (size_t)meaning < lists ? l->sorts[meaning] : l->forms[(size_t)meaning - lists].sort;
}

/* ---- cutting ------------------------------------------------------------------------- */

/* Letters and digits of ASCII, and every byte of other letters. isalnum would ask the locale. */
static bool in_word(unsigned char c)
{
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c >= 0x80;
}

static bool is_apostrophe(const unsigned char *t)
{
  return t[0] == '\'' || t[0] == '`' || (t[0] == 0xE2 && t[1] == 0x80 && t[2] == 0x99);
}

/* The next word in lower case without apostrophes and without its ending; false at the end of
 * the text. *parted: a mark between thoughts stood before it. */
static bool next_word(const unsigned char **text, char word[MOST_LETTERS + 1], bool *parted)
{
  const unsigned char *t = *text;
  size_t n = 0;

  *parted = false;
  for (; *t && (n == 0 || in_word(*t) || is_apostrophe(t)); t++) {
    if (is_apostrophe(t)) t += *t == 0xE2 ? 2 : 0;
    else if (!in_word(*t)) *parted |= strchr(",.;:!?\n", *t) != NULL;
    else if (n < MOST_LETTERS) word[n++] = (char)(*t >= 'A' && *t <= 'Z' ? *t - 'A' + 'a' : *t);
  }
  word[n] = '\0';
  *text = t;
  text_stem(word);
  return n > 0;
}

static void push(struct tokens *out, int id, int part, double sure)
{
  if (out->count < MOST_TOKENS) out->t[out->count++] = (struct token){id, part, sure};
}

/* Each word by its meaning, little words left out. */
static void cut(struct lexicon *l, const char *text, bool learn, struct tokens *out)
{
  const unsigned char *t = (const unsigned char *)text;
  char word[MOST_LETTERS + 1];
  bool parted;
  int part = 0;

  out->count = 0;
  while (next_word(&t, word, &parted)) {
    double sure = 1;
    int meaning, *place = place_of(l, word);

    if (*place >= 0) meaning = l->forms[*place].meaning;
    else meaning = learn ? know(l, word, -1, SORT_THING) : nearest(l, word, &sure);
    part += parted && out->count > 0;
    if (sort_of(l, meaning) != SORT_LITTLE) push(out, meaning, part, meaning < 0 ? 1 : sure);
  }
}

/* "plug the kettle in", "turn the engine off": the second word of a phrase after one thing. */
static bool has_gap(const struct lexicon *l, const struct tokens *in, size_t from, int second)
{
  return from + 2 < in->count && sort_of(l, second) == SORT_LINKING && in->t[from + 2].id == second &&
         in->t[from + 2].part == in->t[from].part && sort_of(l, in->t[from + 1].id) == SORT_THING;
}

static const struct phrase *phrase_at(const struct lexicon *l, const struct tokens *in, size_t from)
{
  const struct phrase *best = NULL, *apart = NULL;

  if (in->t[from].id < 0) return NULL;
  for (int i = l->heads[in->t[from].id % PHRASE_HEADS]; i >= 0; i = l->phrases[i].next) {
    const struct phrase *p = &l->phrases[i];
    int n = 0;

    while (n < p->count && from + (size_t)n < in->count && in->t[from + (size_t)n].id == p->meaning[n]) n++;
    if (n == p->count && (!best || p->count > best->count)) best = p;
    if (n == 1 && p->count == 2 && has_gap(l, in, from, p->meaning[1])) apart = p;
  }
  return best ? best : apart;
}

/* Phrases become one token, the longest that fits first. */
static void join_phrases(const struct lexicon *l, struct tokens *tokens)
{
  size_t n = 0;

  for (size_t i = 0; i < tokens->count;) {
    const struct phrase *p = phrase_at(l, tokens, i);
    struct token first = tokens->t[i];

    if (p) first.id = p->stands_for;
    if (p && p->count == 2 && tokens->t[i + 1].id != p->meaning[1]) { /* the thing in between stays */
      struct token between = tokens->t[i + 1];

      tokens->t[n++] = first;
      tokens->t[n++] = between;
      i += 3;
    } else {
      tokens->t[n++] = first;
      i += p ? (size_t)p->count : 1;
    }
  }
  tokens->count = n;
}

/* The token of a thing, denied or not. */
static struct token denied_by(const struct lexicon *l, struct token t, bool denied, int part)
{
  if (t.id >= 0 && (size_t)t.id < l->k->same_words_count && l->k->same_words[t.id].opposite >= 0) {
    t.id = l->k->same_words[t.id].opposite;
    denied = !denied;
  }
  if (t.id >= 0) t.id = t.id * 2 + denied;
  t.part = part;
  return t;
}

/* "not" goes to the next thing in the same thought, and stays by itself where there is none
 * ("the key does nothing"); contraries become the thing denied; ids become token ids. */
static void join_noes(const struct lexicon *l, struct tokens *tokens)
{
  const struct token none = {-1, 0, 0};
  struct token no = none; /* waiting for what it denies */
  size_t n = 0;
  int part = 0, last = 0;

  for (size_t i = 0; i < tokens->count; i++) {
    struct token t = tokens->t[i];
    enum sort sort = sort_of(l, t.id);

    if (sort == SORT_BREAK || t.part != last) {
      if (no.id >= 0) tokens->t[n++] = no;
      no = none;
      part++;
      last = t.part;
    }
    if (sort == SORT_NO) no = (struct token){t.id * 2, part, t.sure};
    if (sort != SORT_THING) continue;
    tokens->t[n++] = denied_by(l, t, no.id >= 0, part);
    no = none;
  }
  if (no.id >= 0) tokens->t[n++] = no;
  tokens->count = n;
}

void lexicon_learn(struct lexicon *l, const char *text, struct tokens *out)
{
  cut(l, text, true, out);
  join_phrases(l, out);
  join_noes(l, out);
}

void lexicon_read(struct lexicon *l, const char *text, struct tokens *out)
{
  cut(l, text, false, out);
  join_phrases(l, out);
  join_noes(l, out);
}

size_t lexicon_size(const struct lexicon *l)
{
  return 2 * (l->k->same_words_count + l->count);
}

/* ---- same words ---------------------------------------------------------------------- */

static bool is_phrase(const char *text)
{
  const unsigned char *t = (const unsigned char *)text;
  char word[MOST_LETTERS + 1];
  bool parted;

  return next_word(&t, word, &parted) && next_word(&t, word, &parted);
}

static void learn_word(struct lexicon *l, const char *text, int meaning)
{
  const unsigned char *t = (const unsigned char *)text;
  char word[MOST_LETTERS + 1];
  bool parted;

  if (!next_word(&t, word, &parted)) return;
  /* each linking word stays itself: "off" is not "on" in a phrase */
  if (l->sorts[meaning] == SORT_LINKING) know(l, word, -1, SORT_LINKING);
  else know(l, word, meaning, SORT_THING);
}

static void learn_phrase(struct lexicon *l, const char *text, int meaning)
{
  struct tokens words;
  void *phrases = l->phrases;
  struct phrase *p;

  cut(l, text, true, &words);
  if (words.count < 2 || words.count > MOST_IN_PHRASE) return;
  mem_grow(&phrases, &l->phrase_room, l->phrase_count + 1, sizeof *l->phrases);
  l->phrases = phrases;
  p = &l->phrases[l->phrase_count];
  for (size_t i = 0; i < words.count; i++) p->meaning[i] = words.t[i].id;
  p->count = (int)words.count;
  p->stands_for = meaning;
  p->next = l->heads[p->meaning[0] % PHRASE_HEADS];
  l->heads[p->meaning[0] % PHRASE_HEADS] = (int)l->phrase_count++;
}

struct lexicon *lexicon_new(const struct knowledge *k, bool complaints)
{
  struct lexicon *l = mem_new(sizeof *l);

  l->k = k;
  l->sorts = mem_array(k->same_words_count, sizeof *l->sorts);
  for (size_t i = 0; i < PHRASE_HEADS; i++) l->heads[i] = -1;
  spread(l);
  for (size_t i = 0; i < k->same_words_count; i++) {
    const char *sort = k->same_words[i].sort;

    l->sorts[i] = strcmp(sort, "little") == 0  ? SORT_LITTLE
                  : strcmp(sort, "linking") == 0 ? SORT_LINKING
                  : strcmp(sort, "no") == 0    ? SORT_NO
                  : strcmp(sort, "break") == 0 ? SORT_BREAK
                                               : SORT_THING;
  }
  /* single words first, so that the words of a phrase already stand for what they mean */
  for (int phrases = 0; phrases < 2; phrases++)
    for (size_t i = 0; i < k->same_words_count; i++)
      for (size_t j = 0; j < k->same_words[i].words.count; j++) {
        const char *text = k->same_words[i].words.items[j];

        if (is_phrase(text) != (phrases == 1)) continue;
        if (!complaints && strcmp(k->same_words[i].of, "complaints") == 0) continue;
        if (phrases) learn_phrase(l, text, (int)i);
        else learn_word(l, text, (int)i);
      }
  return l;
}

void lexicon_free(struct lexicon *l)
{
  if (!l) return;
  arena_free(&l->arena);
  free(l->forms);
  free(l->at);
  free(l->phrases);
  free(l->sorts);
  free(l);
}
