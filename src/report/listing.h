/* listing.h - everything of one kind, and one entry in full. */
#ifndef REPORT_LISTING_H
#define REPORT_LISTING_H

#include "base/buf.h"
#include "base/err.h"
#include "json/json.h"
#include "model/knowledge.h"

/* kind is one of the words of `pullcord list`. EX_USAGE, with the words there are, when it
 * is another. */
int listing_text(struct buf *out, const struct knowledge *k, const char *kind, struct err *e);
int listing_json(struct json **out, const struct knowledge *k, const char *kind, struct err *e);

/* One entry of any kind, by id, with what it rests on. EX_DATAERR with the nearest id when
 * there is none. */
int listing_show(struct buf *out, const struct knowledge *k, const char *id, int width, struct err *e);

#endif
