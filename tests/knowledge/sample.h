/* sample.h - rule samples: a case on which a rule fires with a stated conclusion, and one on
 * which it stays quiet (the files in tests/rules). */
#ifndef TESTS_SAMPLE_H
#define TESTS_SAMPLE_H

#include "assess/assess.h"
#include "base/buf.h"
#include "json/json.h"

/* One sample. rule is the index of the rule card, -1 when there is none of that name. */
struct sample {
  const char *file, *rule_id, *conclusion;
  int rule;
  const struct json *fires, *quiet;
};

struct samples {
  struct sample *items;
  size_t count, room;
  struct json **documents; /* own what the items point to */
  char **files;
  size_t document_count;
};

/* Reads all samples of a folder; what is wrong with a file goes to b. */
void samples_read(const struct knowledge *k, const char *folder, struct samples *out, struct buf *b);
void samples_free(struct samples *s);

/* Runs one case and says in b what is not as it should be: the rule must have drawn the
 * conclusion, or (conclusion NULL) nothing at all. */
void sample_run(const struct knowledge *k, const struct sample *s, const struct json *c,
                const char *conclusion, struct buf *b);

/* A conclusion in the words of the samples: "implies CHECK RESULT", "speaks FAULT",
 * "hand-over WHOM", "ask-first CHECK FAULT" and so on. */
void conclusion_words(const struct knowledge *k, const struct conclusion *c, struct buf *b);

#endif
