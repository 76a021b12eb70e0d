/* test_kills.c - a writing program is killed at random points, again and again: each entry is
 * there or is not, none that was reported as kept is missing, and the store is whole.
 * Usage: test_kills [how many]   (1,000 when not said) */
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "base/random.h"
#include "sample.h"

enum { EARLY_US = 25000, LATE_US = 4000, MOST_HEARD = 3, PER_STORE = 100 };

static void give_up(const char *what, const struct err *e)
{
  printf("FAILED: %s %s\n", what, e ? e->text : "");
  exit(1);
}

/* Writes for ever: news of two entries each, which must come and go together. */
static void write_on(const char *folder, const char *id, int out)
{
  struct store *s = sample_store(folder);
  const int open = -1;
  struct err e;

  if (write(out, &open, sizeof open) != sizeof open) _exit(3);
  for (int i = 0;; i++) {
    struct job_news n = {0};
    struct json *b = json_object();

    json_put_number(b, "minutes", i);
    job_say(&n, "minutes", b);
    job_say_text(&n, "note", "after minutes");
    if (job_write(s, sample_knowledge(), id, "w", &n, &e)) _exit(2);
    job_news_free(&n);
    if (write(out, &i, sizeof i) != sizeof i) _exit(3); /* said to be kept */
  }
}

/* The next that the writer says was kept, -1 when its store is open; *last stays when it says no more. */
static bool hear(int in, int *last)
{
  int i;

  if (read(in, &i, sizeof i) != sizeof i) return false;
  *last = i;
  return true;
}

/* Checks what is there after the kill; returns how many pairs. */
static int check(const char *folder, const char *id, int said)
{
  struct store_entries x;
  struct store_jobs row;
  struct store *s;
  struct err e;
  int pairs;

  if (store_open(folder, true, &s, &e)) give_up("the store cannot be opened:", &e);
  if (store_entries(s, id, &x, &e)) give_up("the job cannot be read:", &e);
  if (x.count % 2 != 1) give_up("half of what belongs together is there", NULL);
  pairs = (int)(x.count - 1) / 2;
  for (int i = 0; i < pairs; i++) {
    char want[40];

    snprintf(want, sizeof want, "{\"minutes\":%d}", i);
    if (strcmp(x.items[1 + 2 * i].body, want) != 0 || strcmp(x.items[2 + 2 * i].kind, "note") != 0)
      give_up("the entries are not those that were written", NULL);
  }
  if (pairs < said + 1) give_up("an entry that was said to be kept is missing", NULL);
  if (pairs > said + 2) give_up("there is more than was written", NULL);
  if (store_row(s, id, &row, &e)) give_up("the list does not have the job:", &e);
  store_jobs_free(&row);
  store_entries_free(&x);
  store_close(s);
  return pairs;
}

/* One writer, killed at a random point: early, so many microseconds after it was started, while it
 * may still be opening its store; or late, some microseconds after it said that it had kept one to
 * three pairs, so that it is writing the next, however slow the machine is. */
static int kill_one(const char *folder, const char *id, bool late, struct random *r)
{
  int pipes[2], status, said = -1, wanted = late ? 1 + (int)(random_unit(r) * MOST_HEARD) : 0;
  struct timespec wait_for = {0, (long)(random_unit(r) * (late ? LATE_US : EARLY_US)) * 1000};
  pid_t pid;

  if (pipe(pipes)) exit(1);
  pid = fork();
  if (pid == 0) {
    close(pipes[0]);
    write_on(folder, id, pipes[1]);
  }
  close(pipes[1]);
  while (said < wanted - 1 && hear(pipes[0], &said)) continue;
  nanosleep(&wait_for, NULL);
  kill(pid, SIGKILL);
  if (waitpid(pid, &status, 0) != pid || !WIFSIGNALED(status)) give_up("the writer stopped by itself", NULL);
  while (hear(pipes[0], &said)) continue;
  close(pipes[0]);
  return said;
}

int main(int argc, char **argv)
{
  int kills = argc > 1 ? atoi(argv[1]) : 1000, pairs = 0, early = 0;
  struct random r = {42};
  char *folder = NULL;

  sample_knowledge();
  for (int i = 0; i < kills; i++) {
    char id[STORE_ID];
    struct store *s;
    int got;

    if (i % PER_STORE == 0) {
      if (folder) sample_remove(folder);
      folder = sample_folder();
    }
    s = sample_store(folder);
    sample_job(s, "killed", id);
    store_close(s);
    got = check(folder, id, kill_one(folder, id, i % 2, &r));
    pairs += got;
    early += got == 0;
  }
  sample_remove(folder);
  printf(
      "%d kills, %d of them before the first entry; %d pairs of entries were written, none lost or halved\n",
      kills, early, pairs);
  return pairs > kills / 2 ? 0 : 1; /* the kills must come while it writes */
}
