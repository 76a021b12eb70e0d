/* entry_words.h - what an entry of a stored job says, in words for people. */
#ifndef CLI_ENTRY_WORDS_H
#define CLI_ENTRY_WORDS_H

#include "base/buf.h"
#include "json/json.h"
#include "model/knowledge.h"

/* Adds what an entry of this kind (shop/job.h) with this body says. Texts of people are added
 * as they were stored: control signs are the caller's to take out. */
void entry_words(struct buf *out, const struct knowledge *k, const char *kind, const struct json *body);

#endif
