/* words_lexicon.h - free text cut into tokens: words without their endings, words and phrases
 * that mean the same thing put into one (the same-words of the knowledge), and a "not" joined to
 * what it denies ("won't start", "refuses to fire" and "does not start" are all not-start).
 *
 * A lexicon is filled from what may be matched (sayings) and then reads what a person wrote:
 * words of theirs that it does not know are taken for the nearest that it does, when they are
 * long enough for that to be a slip of the finger and not another word. */
#ifndef SHOP_WORDS_LEXICON_H
#define SHOP_WORDS_LEXICON_H

#include "model/knowledge.h"

/* Longer texts are read up to here, longer words cut off. */
enum { MOST_TOKENS = 96, MOST_LETTERS = 31 };

/* meaning * 2, plus 1 when denied; -1 for a word not known. part counts from 0 and goes up at
 * each word or mark that parts two thoughts (and, but, a comma). sure: 1, or less after a
 * guess at the spelling. */
struct token { int id, part; double sure; };
struct tokens { struct token t[MOST_TOKENS]; size_t count; };

struct lexicon;

/* The knowledge's same-words, with those for complaints only or without; k must outlive it. Free
 * with lexicon_free. */
struct lexicon *lexicon_new(const struct knowledge *k, bool complaints);
void lexicon_free(struct lexicon *l);

/* Cuts a saying; its new words become known. */
void lexicon_learn(struct lexicon *l, const char *text, struct tokens *out);

/* Cuts what a person wrote; nothing becomes known. text ends with a NUL; any bytes may stand in it. */
void lexicon_read(struct lexicon *l, const char *text, struct tokens *out);

/* One more than the greatest token id. */
size_t lexicon_size(const struct lexicon *l);

#endif
