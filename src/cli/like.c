/* like.c - see like.h. */
#include "cli/like.h"

#include <string.h>

#include "base/text.h"
#include "shop/store.h"

enum { MOST_NAMED = 2 };

static void ended(struct buf *b, const struct knowledge *k, const struct similar_sum *sum)
{
  static const char *const others[SIMILAR_ENDINGS] = {"repaired, not proved", "nothing broken", "handed over",
                                                      "given up"};
  size_t not_proved = sum->endings[0] > sum->proved ? sum->endings[0] - sum->proved : 0;
  const char *between = ": ";

  for (size_t i = 0; i < sum->cause_count; i++) {
    buf_addf(b, "%s%zu %s", between, sum->causes[i].times, k->faults[sum->causes[i].fault].name);
    between = ", ";
  }
  for (int i = 0; i < SIMILAR_ENDINGS; i++) {
    size_t count = i == 0 ? not_proved : sum->endings[i];

    if (count == 0) continue;
    buf_addf(b, "%s%zu %s", between, count, others[i]);
    between = ", ";
  }
  buf_add(b, ".");
}

static void named(struct buf *b, const struct knowledge *k, const struct outcome *o, const struct similar *s)
{
  buf_addf(b, "Like job %s, %d of %d checks alike: it was ", o->id + strlen(o->id) - STORE_SHORT, s->same,
           s->same + s->other);
  for (size_t i = 0; i < o->fault_count; i++)
    buf_addf(b, "%s%s", i ? ", " : "", k->faults[o->faults[i]].name);
  buf_add(b, ".");
}

static void line(struct buf *out, struct buf *text, int width)
{
  text_wrap(out, buf_text(text), width, "  ", "    ");
  buf_add(out, "\n");
  buf_free(text);
}

void like_words(struct buf *out, const struct knowledge *k, const struct outcome *now,
                const struct outcomes *past, int width)
{
  struct similar found[MOST_NAMED];
  struct similar_sum sum;
  struct buf b = {0};
  size_t count;

  similar_sum(k, now, past, &sum);
  if (sum.jobs == 0) return;
  buf_addf(&b, "%zu past %s like it (%s, %s)", sum.jobs, sum.jobs == 1 ? "job" : "jobs",
           k->classes[now->machine_class].name, k->complaints[now->complaint].name);
  ended(&b, k, &sum);
  line(out, &b, width);
  count = similar_jobs(now, past, found, MOST_NAMED);
  for (size_t i = 0; i < count; i++) {
    const struct outcome *o = &past->items[found[i].job];

    if (found[i].same <= found[i].other || !o->confirmed || strlen(o->id) < STORE_SHORT) continue;
    named(&b, k, o, &found[i]);
    line(out, &b, width);
  }
}
