/* casefile.h - a case as a JSON file (docs/schema/case-1.json). */
#ifndef SHOP_CASEFILE_H
#define SHOP_CASEFILE_H

#include "base/err.h"
#include "json/json.h"
#include "model/case.h"

/* The version that is read and written. */
#define CASEFILE_VERSION "case-1"

/* Turns a JSON case into *out (begun here; after success the caller frees with case_free).
 * A spec card that is named is read from the person's own folder (EX_NOINPUT when it is not there).
 * Unknown members, ids and units, wrong types, absurd readings, a check that is given twice
 * (in the results or on the card) and more than 20 complaints are refused with EX_DATAERR; file is for messages. A complaint may be an id or the
 * owner's words; words that match none well enough are refused with the nearest named. */
int casefile_read(const struct knowledge *k, const char *file, const struct json *j,
                  struct bench_case *out, struct err *e);

/* The same of a file whose len bytes of text json_read took: its messages carry the line. */
int casefile_read_text(const struct knowledge *k, const char *file, const char *text, size_t len,
                       const struct json *j, struct bench_case *out, struct err *e);

/* The case as JSON, in the form that casefile_read takes. The caller frees. */
struct json *casefile_write(const struct knowledge *k, const struct bench_case *c);

#endif
