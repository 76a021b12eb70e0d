/* fuzz_reading.c - anything a person may type for a result or a complaint: taken as one that
 * there is, or refused with a reason; and no more bytes are read than there are. */
#include "fuzz.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "shop/words.h"
#include "units/parse.h"

static void try_words(const struct knowledge *k, const char *text)
{
  struct word_match m[3];
  struct words_said said;
  struct case_result r;
  struct err e = {0};
  double sure;

  for (size_t i = 0; i < k->check_count; i++)
    if (words_result(k, (int)i, text, &r, &e) == 0) {
      must_hold(r.result < (int)k->checks[i].results.count, "it is a result of the check");
      must_hold(r.result >= 0 || isfinite(r.value), "or a reading");
    } else {
      must_hold(e.status == EX_DATAERR && e.text[0], "a refusal has a reason");
    }
  words_complaints(k, NULL, text, &said);
  for (size_t n = said.count; n-- > 0;)
    must_hold(said.best[n].at >= 0 && (size_t)said.best[n].at < k->complaint_count &&
                said.best[n].score > 0 && said.best[n].score <= 1,
              "a match is one");
  words_match_checks(k, text, m, 3);
  words_match_machines(k, text, m, 3);
  words_match_faults(k, text, m, 3);
  if (words_sure(k, text, &sure)) must_hold(sure >= 0 && sure <= 1, "certainty lies between 0 and 1");
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
  const struct knowledge *k = small_knowledge();
  struct amount a;
  struct err e = {0};
  char *text;

  for (int q = Q_NONE; q < Q_COUNT; q++)
    if (amount_parse((const char *)data, size, (enum quantity)q, NULL, &a, &e) == 0) {
      char out[64];

      must_hold(isfinite(a.si) && a.unit != NULL, "a reading is finite and has a unit");
      amount_format(a.si, a.unit, out, sizeof out);
      must_hold(strlen(out) > 0, "and can be shown");
    }
  text = mem_new(size + 1);
  memcpy(text, data, size);
  try_words(k, text); /* up to the first zero */
  free(text);
  return 0;
}
