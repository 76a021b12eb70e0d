/* like.h - past jobs that were like this one, in words. */
#ifndef CLI_LIKE_H
#define CLI_LIKE_H

#include "base/buf.h"
#include "shop/similar.h"

/* Adds, wrapped to width columns: how many past jobs of this class with this complaint there
 * are and how they ended, then those whose checks gave the same. Nothing when there is none.
 * Only what was proved is named as a cause. */
void like_words(struct buf *out, const struct knowledge *k, const struct outcome *now,
                const struct outcomes *past, int width);

#endif
