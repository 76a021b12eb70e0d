/* expect.h - case files with what is expected of them, for the programs of this folder. */
#ifndef TESTS_EXPECT_H
#define TESTS_EXPECT_H

#include "assess/assess.h"
#include "base/buf.h"
#include "json/json.h"

/* A file {"about", "basis", "case", "expect"}. */
struct case_file {
  char *path;
  struct json *json;
  struct bench_case c;
  const struct json *want;
};

/* Reads one; on failure (*e) nothing needs freeing. */
int case_file_read(const struct knowledge *k, const char *path, struct case_file *out, struct err *e);
void case_file_free(struct case_file *f);

/* Adds what does not come out as expected to b, with ids and places; nothing when all does.
 * An expectation that is not known, and a name that is no entry, count as failures. */
void expect_all(const struct knowledge *k, const struct case_file *f, const struct assessment *a,
                struct buf *b);

/* The members that an expectation may have, and of how many files with one it was met. */
enum { EXPECT_MEMBERS = 7 };
extern const char *const expect_members[EXPECT_MEMBERS];
struct expect_tally {
  size_t wanted, met;
};

/* expect_all; adds to the EXPECT_MEMBERS entries of tally. */
void expect_tallied(const struct knowledge *k, const struct case_file *f, const struct assessment *a,
                    struct buf *b, struct expect_tally *tally);

/* Does it name checks of which one must be recommended first ("next")? Then assess_advise is
 * wanted before expect_all. */
bool expects_next(const struct case_file *f);

/* Does the file expect anything of this fault by name? */
bool expects_fault(const struct case_file *f, const char *fault);

/* All *.json files in a folder and below it (or the file itself), sorted by name. The
 * caller frees each and the array. */
char **find_json(const char *path, size_t *count);

#endif
