/* words.h - the owner's words and the bench's short forms, matched to what is known. */
#ifndef SHOP_WORDS_H
#define SHOP_WORDS_H

#include "base/err.h"
#include "model/case.h"

/* One candidate for what was meant, best first; score from 0 to 1. */
struct word_match { int at; double score; };

/* Matches free text against complaints (their names and what owners say), or checks (their
 * names, ids and other names). Fills matches[] (room for `most`) and returns how many came
 * above 0. The score, from 0 to 1, is half the share of
 * a saying's weight that the text holds, and for the rest the share of the text's weight that
 * stands in that saying (0.2) and in all sayings of its entry (0.3). Rare words weigh more:
 * those in the sayings of few entries (inverse document frequency; textbook information
 * retrieval). A word counts as shared when it is equal or stands for the same thing (petrol,
 * fuel), shares a stem, or is a typing mistake away.
 */
size_t words_match_complaints(const struct knowledge *k, const char *text, struct word_match *matches,
                              size_t most);
size_t words_match_checks(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most);
size_t words_match_machines(const struct knowledge *k, const char *text, struct word_match *matches,
                            size_t most);
size_t words_match_faults(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most);

/* Takes what was given for a result of a check: a result id, its label, the number of the
 * choice (from 1; not for measured checks), a reading with or without its unit,
 * "dont-know"/"?" (certainty 0). EX_DATAERR, saying what was expected. */
int words_result(const struct knowledge *k, int check, const char *text, struct case_result *out,
                 struct err *e);

/* Certainty by word: sure, fairly, unsure. False when the word is another. */
bool words_sure(const struct knowledge *k, const char *word, double *out);
const char *words_sure_name(const struct knowledge *k, double sure);

#endif
