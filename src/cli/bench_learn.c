/* bench_learn.c - the shop's own jobs at the bench: weighed with, and shown; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/bench.h"
#include "cli/like.h"
#include "cli/terminal.h"

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

static void like_now(struct bench *b, struct buf *out)
{
  struct outcome now = {.machine_class = -1, .complaint = -1};

  snprintf(now.id, sizeof now.id, "%s", b->id);
  history_case(b->k, &b->c, &now);
  like_words(out, b->k, &now, &b->history.past, terminal_width());
  free(now.results);
}

/* Only when it differs from what was shown last: it is the same for many turns. */
void bench_show_similar(struct bench *b)
{
  struct buf out = {0};

  like_now(b, &out);
  if (strcmp(buf_text(&out), buf_text(&b->like_shown)) != 0) terminal_put(buf_text(&out));
  buf_free(&out);
}

void bench_similar_shown(struct bench *b)
{
  buf_free(&b->like_shown);
  like_now(b, &b->like_shown);
}
