/* fuzz_case.c - any bytes as a case: refused with a reason, or taken; and what was taken is
 * the same after it was written out and read again. */
#include "fuzz.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "shop/casefile.h"

static int take(const char *text, size_t size, struct bench_case *c, struct err *e)
{
  struct json *j = NULL;
  int status = json_read("x.json", text, size, &j, e);

  if (status == 0) {
    status = casefile_read(small_knowledge(), "x.json", j, c, e);
    json_free(j);
  }
  return status;
}

static void must_be_alike(const struct bench_case *a, const struct bench_case *b)
{
  must_hold(a->machine_class == b->machine_class, "the class is the same");
  must_hold(memcmp(a->features, b->features, small_knowledge()->feature_count) == 0,
            "the features are the same");
  must_hold(a->complaint_count == b->complaint_count, "so are the complaints");
  for (size_t i = 0; i < a->complaint_count; i++)
    must_hold(a->complaints[i] == b->complaints[i], "each of them");
  must_hold(a->result_count == b->result_count, "and the results");
  for (size_t i = 0; i < a->result_count; i++) {
    const struct case_result *x = &a->results[i], *y = &b->results[i];

    must_hold(x->check == y->check && (x->sure > 0) == (y->sure > 0), "check and whether it is known");
    if (x->sure <= 0) continue;
    must_hold(x->result == y->result, "result");
    if (x->result < 0) must_hold(fabs(x->value - y->value) <= 1e-3 * fabs(x->value) + 1e-6, "and reading");
  }
  must_hold(a->card_count == b->card_count, "and the card");
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
  struct bench_case first, second;
  struct err e = {0};
  int status = take((const char *)data, size, &first, &e);
  struct json *written;
  char *text;

  if (status) {
    must_hold(status == EX_DATAERR && e.text[0], "a refusal has a reason");
    return 0;
  }
  written = casefile_write(small_knowledge(), &first);
  text = json_print(written);
  must_hold(take(text, strlen(text), &second, &e) == 0, "what was written can be read");
  must_be_alike(&first, &second);
  free(text);
  json_free(written);
  case_free(&first);
  case_free(&second);
  return 0;
}
