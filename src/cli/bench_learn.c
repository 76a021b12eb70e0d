/* bench_learn.c - the shop's own jobs at the bench: weighed with, and shown; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/bench.h"
#include "shop/similar.h"

enum { MOST_SIMILAR = 2 };

void bench_learn(struct bench *b)
{
  char *folder = NULL;
  struct err e = {0};
  int status = store_folder(&folder, &e);

  if (status == 0) status = history_learn(b->store, folder, b->k, &b->history, &e);
  if (status) bench_say("%s %s The shop's own jobs are not weighed with.", e.file, e.text);
  else if (b->history.jobs > 0)
    bench_say("%ld proved job%s of this shop %s weighed with (\"pullcord learned\").", b->history.jobs,
              b->history.jobs == 1 ? "" : "s", b->history.jobs == 1 ? "is" : "are");
  free(folder);
}

static void show_one(const struct bench *b, const struct similar *s)
{
  const struct outcome *o = &b->history.past.items[s->job];
  struct buf faults = {0};

  for (size_t i = 0; i < o->fault_count; i++)
    buf_addf(&faults, "%s%s", i ? ", " : "", b->k->faults[o->faults[i]].name);
  bench_say("  Like job %s, %d of %d checks alike: it was %s.", o->id + strlen(o->id) - STORE_SHORT, s->same,
            s->same + s->other, buf_text(&faults));
  buf_free(&faults);
}

void bench_show_similar(const struct bench *b)
{
  struct outcome now = {.machine_class = -1, .complaint = -1};
  struct similar found[MOST_SIMILAR];
  size_t count;

  snprintf(now.id, sizeof now.id, "%s", b->id);
  history_case(b->k, &b->c, &now);
  count = similar_jobs(&now, &b->history.past, found, MOST_SIMILAR);
  for (size_t i = 0; i < count; i++)
    if (found[i].same > found[i].other && b->history.past.items[found[i].job].confirmed)
      show_one(b, &found[i]);
  free(now.results);
}
