/* words.c - see words.h. */
#include "shop/words.h"

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "units/parse.h"

enum { MAX_WORDS = 40, WORD_LENGTH = 32 };

/* Text cut into small words. */
struct words { char w[MAX_WORDS][WORD_LENGTH]; size_t count; };

static bool is_one_of(const char *w, const char *const *list)
{
  for (; *list; list++)
    if (strcmp(*list, w) == 0) return true;
  return false;
}

/* Words that say nothing by themselves, and the ways of saying no, which are one word. */
static const char *const fillers[] = {"the", "a", "an", "it", "is", "i", "my", "to", "of", "and", "in",
                                      "on", "at", "that", "this", "when", "then", "but", "so", "me",
                                      "has", "have", "with", "for", "be", "just", "was", "its", "or",
                                      "does", "do", "will", "would", NULL};
static const char *const noes[] = {"wont", "doesnt", "cant", "cannot", "dont", "refuses", "never", "no",
                                   "isnt", "didnt", "wouldnt", "couldnt", "aint", "without", NULL};

/* Words for one and the same thing, and spellings too far off for one typing mistake; the
 * first of each row stands for all. Both sides of a match are put into these words. */
static const char *const same_words[][11] = {
  {"petrol", "gas", "gasoline", "fuel", NULL},
  {"rope", "cord", "string", NULL},
  {"exhaust", "muffler", "silencer", "exaust", NULL},
  {"carburettor", "carb", "carby", "carburetor", "carburator", NULL},
  {"throttle", "trigger", "accelerator", NULL},
  {"generator", "genny", "genset", "jenny", NULL},
  {"dies", "conks", "conk", "conked", "conking", "stalls", "stall", "stalling", "quits", "dying", NULL},
  {"idle", "tick", "ticks", "ticking", "tickover", "idling", NULL},
  {"revs", "revving", "reving", "revved", NULL},
  {"seized", "siezed", "ceased", NULL},
  {"choke", "choak", "chock", NULL},
  {"shakes", "shaking", "judders", "juddering", NULL},
  {"stinks", "smells", "smell", "reeks", "stink", NULL},
  {"dripping", "drips", "leaking", "leaks", "leak", "pouring", "weeping", NULL},
};

static const char *stands_for(const char *w)
{
  for (size_t i = 0; i < sizeof same_words / sizeof same_words[0]; i++)
    if (is_one_of(w, same_words[i])) return same_words[i][0];
  for (size_t i = 0; strlen(w) > 5 && i < sizeof same_words / sizeof same_words[0]; i++)
    for (const char *const *j = same_words[i]; *j; j++)
      if (strlen(*j) > 4 && text_distance(w, *j, 1) <= 1) return same_words[i][0];
  return w;
}

static void push_word(struct words *out, char *w, size_t *n)
{
  w[*n] = '\0';
  *n = 0;
  if (!*w || is_one_of(w, fillers) || out->count == MAX_WORDS) return;
  strcpy(out->w[out->count++], is_one_of(w, noes) ? "not" : stands_for(w));
}

static void cut_words(const char *text, struct words *out)
{
  char w[WORD_LENGTH];
  size_t n = 0;

  out->count = 0;
  for (; *text; text++) {
    unsigned char c = (unsigned char)*text;

    if (c == '\'') continue; /* won't = wont */
    if (isalnum(c) || c >= 0x80) {
      if (n + 1 < WORD_LENGTH) w[n++] = (char)tolower(c);
    } else if (n) {
      push_word(out, w, &n);
    }
  }
  if (n) push_word(out, w, &n);
}

/* Length of what two words share from the start. */
static size_t common_start(const char *a, const char *b)
{
  size_t n = 0;

  while (a[n] && a[n] == b[n]) n++;
  return n;
}

/* Two letters next to each other changed places. */
static bool is_swapped(const char *a, const char *b)
{
  size_t n = common_start(a, b);

  return a[n] && a[n + 1] && a[n] == b[n + 1] && a[n + 1] == b[n] && strcmp(a + n + 2, b + n + 2) == 0;
}

/* How alike two words are: 1 equal, 0.9 same stem, 0.7 one typing mistake, 0.6 two in a
 * longer word. */
static double likeness(const char *a, const char *b)
{
  size_t la = strlen(a), lb = strlen(b), n;

  if (strcmp(a, b) == 0) return 1;
  n = common_start(a, b);
  if (n >= 4 && la - n <= 3 && lb - n <= 3) return 0.9;
  if (n == 3 && la - n <= 1 && lb - n <= 1) return 0.9; /* dies / die, rev / revs */
  if (la > 4 && lb > 4 && text_distance(a, b, 1) <= 1) return 0.7;
  if (la > 3 && la == lb && is_swapped(a, b)) return 0.7;
  if (la > 5 && lb > 5 && text_distance(a, b, 2) <= 2) return 0.6;
  return 0;
}

/* Everything that can be matched of one kind: several sayings per entry. */
struct sayings { struct saying { int at; struct words words; } *items; size_t count, room; };

static void add_saying(struct sayings *s, int at, const char *text)
{
  void *items = s->items;

  mem_grow(&items, &s->room, s->count + 1, sizeof *s->items);
  s->items = items;
  s->items[s->count].at = at;
  cut_words(text, &s->items[s->count++].words);
}

/* How rare a word is: few entries have a saying that holds it. The sayings of one entry lie
 * together, so that each entry is counted once. */
static double rarity(const struct sayings *s, const char *word)
{
  size_t entries = 0, holding = 0;
  int last = -1, held = -1;

  for (size_t i = 0; i < s->count; i++) {
    int at = s->items[i].at;

    if (at != last) entries++;
    last = at;
    for (size_t j = 0; at != held && j < s->items[i].words.count; j++)
      if (strcmp(s->items[i].words.w[j], word) == 0) {
        holding++;
        held = at;
      }
  }
  return log((double)(entries + 1) / (double)(holding + 1)) + 0.1;
}

static double best_likeness(const char *w, const struct words *in, double best)
{
  for (size_t i = 0; i < in->count && best < 1; i++) best = fmax(best, likeness(w, in->w[i]));
  return best;
}

/* How much of the saying's weight the text holds. */
static double saying_held(const struct sayings *s, const struct saying *saying, const struct words *text)
{
  double shared = 0, all = 0;

  for (size_t j = 0; j < saying->words.count; j++) {
    double w = rarity(s, saying->words.w[j]);

    shared += best_likeness(saying->words.w[j], text, 0) * w;
    all += w;
  }
  return all > 0 ? shared / all : 0;
}

/* How much of the text's weight stands in the sayings from..to. */
static double text_held(const struct sayings *s, size_t from, size_t to, const struct words *text,
                        const double *weight)
{
  double shared = 0, all = 0;

  for (size_t i = 0; i < text->count; i++) {
    double best = 0;

    for (size_t j = from; j < to; j++) best = best_likeness(text->w[i], &s->items[j].words, best);
    shared += best * weight[i];
    all += weight[i];
  }
  return all > 0 ? shared / all : 0;
}

static size_t keep_best(struct word_match *matches, size_t count, size_t most, int at, double value)
{
  size_t i = 0;

  while (i < count && matches[i].at != at) i++;
  if (i < count) { /* the entry is there: keep its better saying */
    if (matches[i].score >= value) return count;
    memmove(&matches[i], &matches[i + 1], (count - i - 1) * sizeof *matches);
    count--;
  }
  for (i = count; i > 0 && matches[i - 1].score < value; i--) continue;
  if (i >= most) return count;
  if (count == most) count--;
  memmove(&matches[i + 1], &matches[i], (count - i) * sizeof *matches);
  matches[i] = (struct word_match){at, value};
  return count + 1;
}

static size_t match(struct sayings *s, const char *text, struct word_match *matches, size_t most)
{
  double weight[MAX_WORDS];
  struct words words;
  size_t count = 0;

  cut_words(text, &words);
  for (size_t i = 0; i < words.count; i++) weight[i] = rarity(s, words.w[i]);
  for (size_t from = 0, to; from < s->count; from = to) {
    double entry;

    for (to = from; to < s->count && s->items[to].at == s->items[from].at; to++) continue;
    entry = text_held(s, from, to, &words, weight);
    for (size_t i = from; i < to; i++) {
      double value = 0.5 * saying_held(s, &s->items[i], &words) +
                     0.2 * text_held(s, i, i + 1, &words, weight) + 0.3 * entry;

      if (value > 0.05) count = keep_best(matches, count, most, s->items[i].at, value);
    }
  }
  free(s->items);
  return count;
}

size_t words_match_complaints(const struct knowledge *k, const char *text, struct word_match *matches,
                              size_t most)
{
  struct sayings s = {0};

  for (size_t i = 0; i < k->complaint_count; i++) {
    add_saying(&s, (int)i, k->complaints[i].name);
    add_saying(&s, (int)i, k->complaints[i].id);
    for (size_t j = 0; j < k->complaints[i].says.count; j++)
      add_saying(&s, (int)i, k->complaints[i].says.items[j]);
  }
  return match(&s, text, matches, most);
}

size_t words_match_checks(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most)
{
  struct sayings s = {0};

  for (size_t i = 0; i < k->check_count; i++) {
    add_saying(&s, (int)i, k->checks[i].name);
    add_saying(&s, (int)i, k->checks[i].id);
    for (size_t j = 0; j < k->checks[i].also_called.count; j++)
      add_saying(&s, (int)i, k->checks[i].also_called.items[j]);
  }
  return match(&s, text, matches, most);
}

size_t words_match_machines(const struct knowledge *k, const char *text, struct word_match *matches,
                            size_t most)
{
  struct sayings s = {0};

  for (size_t i = 0; i < k->class_count; i++) {
    add_saying(&s, (int)i, k->classes[i].name);
    for (size_t j = 0; j < k->classes[i].also_called.count; j++)
      add_saying(&s, (int)i, k->classes[i].also_called.items[j]);
  }
  return match(&s, text, matches, most);
}

size_t words_match_faults(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most)
{
  struct sayings s = {0};

  for (size_t i = 0; i < k->fault_count; i++) {
    add_saying(&s, (int)i, k->faults[i].name);
    add_saying(&s, (int)i, k->faults[i].id);
  }
  return match(&s, text, matches, most);
}

/* ---- results ------------------------------------------------------------------------- */

static bool same_text(const char *a, const char *b)
{
  for (; *a && *b; a++, b++)
    if (tolower((unsigned char)*a) != tolower((unsigned char)*b) &&
        !((*a == ' ' || *a == '-') && (*b == ' ' || *b == '-'))) return false;
  return *a == *b;
}

static bool is_dont_know(const char *text)
{
  static const char *const words[] = {"?", "dont-know", "don't know", "dont know", "dk", "could-not-test",
                                      "couldn't test", "could not test", "not-done", "unknown", "can't",
                                      "cant", "idk", "dunno", "no idea", "not sure", "no clue"};

  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (same_text(text, words[i])) return true;
  return false;
}

/* A result that the text starts, when only one does. */
static int only_start(const struct check *c, const char *text)
{
  size_t n = strlen(text);
  int found = -1;

  for (size_t i = 0; n >= 3 && i < c->results.count; i++) {
    char head[64];

    if (n >= sizeof head) return -1;
    for (int both = 0; both < 2; both++) {
      const char *word = both ? c->labels.items[i] : c->results.items[i];

      if (strlen(word) < n) continue;
      memcpy(head, word, n);
      head[n] = '\0';
      if (!same_text(head, text)) continue;
      if (found >= 0 && found != (int)i) return -1;
      found = (int)i;
    }
  }
  return found;
}

static int refuse_result(const struct check *c, const char *text, struct err *e)
{
  const char *near = text_nearest(text, c->results.items, c->results.count);
  char list[420];
  size_t used = 0;

  list[0] = '\0';
  for (size_t i = 0; i < c->results.count && used + 70 < sizeof list; i++) {
    size_t n = strlen(c->results.items[i]);

    memcpy(list + used, i ? ", " : "", i ? 2 : 0);
    used += i ? 2 : 0;
    if (n > 60) n = 60;
    memcpy(list + used, c->results.items[i], n);
    used += n;
    list[used] = '\0';
  }
  return err_set(e, EX_DATAERR, NULL, 0, "\"%.60s\" is not a result of %s%s%s%s It is one of: %s; or dont-know.",
                 text, c->id, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".", list);
}

static int parse_reading(const struct check *c, const char *text, struct case_result *out, struct err *e)
{
  struct amount a;
  int status = amount_parse(text, strlen(text), c->quantity, c->unit, &a, e);

  if (status) return status;
  out->result = -1;
  out->value = unit_convert(a.value, a.unit, c->unit);
  return 0;
}

int words_result(const struct knowledge *k, int check, const char *text, struct case_result *out,
                 struct err *e)
{
  const struct check *c = &k->checks[check];
  bool number = isdigit((unsigned char)text[0]) || (strchr("-+.,", text[0]) && text[0]);

  *out = (struct case_result){check, -1, 0, 1};
  if (is_dont_know(text)) {
    out->sure = 0;
    out->result = 0;
    return 0;
  }
  for (size_t i = 0; i < c->results.count; i++)
    if (same_text(text, c->results.items[i]) || same_text(text, c->labels.items[i])) {
      out->result = (int)i;
      return 0;
    }
  if (c->kind == KIND_MEASURE && number) return parse_reading(c, text, out, e);
  if (c->kind != KIND_MEASURE && isdigit((unsigned char)text[0]) && !text[1] && text[0] > '0' &&
      (size_t)(text[0] - '0') <= c->results.count) {
    out->result = text[0] - '1';
    return 0;
  }
  out->result = only_start(c, text);
  return out->result >= 0 ? 0 : refuse_result(c, text, e);
}

bool words_sure(const struct knowledge *k, const char *word, double *out)
{
  if (same_text(word, "sure")) *out = 1;
  else if (same_text(word, "fairly") || same_text(word, "fairly sure"))
    *out = knowledge_setting(k, "sure-fairly", 0.8);
  else if (same_text(word, "unsure") || same_text(word, "not sure"))
    *out = knowledge_setting(k, "sure-unsure", 0.5);
  else return false;
  return true;
}

const char *words_sure_name(const struct knowledge *k, double sure)
{
  if (sure >= 0.999) return "sure";
  return sure >= knowledge_setting(k, "sure-fairly", 0.8) - 1e-9 ? "fairly" : "unsure";
}
