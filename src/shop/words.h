/* words.h - the owner's words and the bench's short forms, matched to what is known. */
#ifndef SHOP_WORDS_H
#define SHOP_WORDS_H

#include "base/err.h"
#include "model/case.h"

/* One candidate for what was meant, best first; score from 0 to 1. */
struct word_match { int at; double score; };

/* Matches free text against checks (their names, ids and other names), machine classes (names and
 * other names) or faults (names and ids). Fills matches[] (room for `most`) and returns how many came above 0.05.
 *
 * Both sides are first put into the same words (words_lexicon.h): endings off, words for one thing
 * made one, "not" joined to what it denies. The score, from 0 to 1, is the share of a saying's
 * weight that the text holds (0.4; less for a saying of small weight in a longer text), and the share
 * of the text's weight that stands in that saying (0.2) and in all sayings of its entry (0.4). Rare words weigh more: those in the sayings of few entries (inverse document frequency;
 * textbook information retrieval). */
size_t words_match_checks(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most);
size_t words_match_machines(const struct knowledge *k, const char *text, struct word_match *matches,
                            size_t most);
size_t words_match_faults(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most);

/* How sure the taking of the best match is: by its score, and by how far the next lies behind.
 * Measured in tests/cases-words; see docs/how-good.md. WORDS_NOTHING: not to be taken. */
enum words_clear { WORDS_NOTHING, WORDS_UNSURE, WORDS_FAIRLY, WORDS_CLEAR };
enum words_clear words_clear(const struct word_match *matches, size_t count);
const char *words_clear_name(enum words_clear c); /* "nothing", "unsure", "fairly", "clear" */

/* What a text complains of, among the complaints that the machine of this case can have (their
 * needs; c may be NULL). best: of the text as a whole, best first. more: complaints made in the
 * same breath, each clear in a thought of its own ("hunts, and it leaks oil"). */
enum { WORDS_MOST_BEST = 5, WORDS_MOST_MORE = 2 };
struct words_said {
  struct word_match best[WORDS_MOST_BEST];
  size_t count, more_count;
  int more[WORDS_MOST_MORE];
  enum words_clear clear;
};
void words_complaints(const struct knowledge *k, const struct bench_case *c, const char *text,
                      struct words_said *out);

/* Is it "don't know", "?" or the like? */
bool words_dont_know(const char *text);

/* Takes what was given for a result of a check: a result id, its label, the number of the
 * choice (from 1; not for measured checks), a reading with or without its unit,
 * "dont-know"/"?" (certainty 0). EX_DATAERR, saying what was expected. */
int words_result(const struct knowledge *k, int check, const char *text, struct case_result *out,
                 struct err *e);

/* Certainty by word: sure, fairly, unsure. False when the word is another. */
bool words_sure(const struct knowledge *k, const char *word, double *out);
const char *words_sure_name(const struct knowledge *k, double sure);

#endif
