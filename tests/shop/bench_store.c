/* bench_store.c - how long a store of many jobs takes, on a store made by simulation: machines
 * and results are drawn from the knowledge. Prints a table with the goals; nothing fails for
 * being slow, and on a busy machine goals are missed that are met on an idle one.
 * Usage: bench_store [jobs]   (100,000 when not said)
 * The file system cache is warm; what is written is synced, so a slow disk shows. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>

#include "base/file.h"
#include "base/random.h"
#include "practice/hidden.h"
#include "sample.h"
#include "shop/history.h"
#include "shop/jobfile.h"

enum { CHECKS = 6, TIMES = 200, LEARNINGS = 50, MACHINES = 2000, START = 1600000000, APART = 1800 };
enum { GOAL_MS = 50, GOAL_RATE = 20000 }; /* p95 on an idle machine; jobs a second */

static double now(void)
{
  struct timespec t;

  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

/* Processor seconds of this program so far, which others on the machine do not lengthen. */
static double used(void)
{
  struct timespec t;

  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static void print_rate(const char *what, size_t jobs, double seconds, double processor)
{
  double rate = (double)jobs / seconds;

  printf("%s: %.0f jobs a second (%.0f by processor time); goal %d: %s\n", what, rate,
         (double)jobs / processor, GOAL_RATE, rate >= GOAL_RATE ? "met" : "missed");
  fflush(stdout);
}

static int rising(const void *a, const void *b)
{
  double x = *(const double *)a, y = *(const double *)b;

  return (x > y) - (x < y);
}

/* goal: there is one, for p95. */
static void print_times(const char *what, double *ms, size_t count, bool goal)
{
  double p95;

  qsort(ms, count, sizeof *ms, rising);
  p95 = ms[count * 95 / 100];
  printf("%-44s %9.2f %9.2f %9.2f", what, ms[count / 2], p95, ms[count - 1]);
  if (goal) printf("  %d: %s", GOAL_MS, p95 <= GOAL_MS ? "met" : "missed");
  printf("\n");
  fflush(stdout);
}

static void must(int status, const struct err *e)
{
  if (status == 0) return;
  printf("%s: %s\n", e->file, e->text);
  exit(1);
}

/* ---- a made-up job ------------------------------------------------------------------------- */

static void say_advice(struct job_news *n, const struct knowledge *k, struct random *r, int next,
                       const char *what)
{
  struct job_advice a = {.count = JOB_MOST_CAUSES, .next = next};

  snprintf(a.disposition, sizeof a.disposition, "%s", what);
  for (int i = 0; i < JOB_MOST_CAUSES; i++)
    a.causes[i] = (struct job_cause){(int)(random_unit(r) * (double)k->fault_count), random_unit(r)};
  job_say_advice(n, k, &a);
}

/* The news of a whole job of a machine: intake, checks with covers and advice, repair, home. */
static void make_news(const struct knowledge *k, struct hidden *h, struct random *r, struct job_news *n)
{
  struct bench_case before, c;
  int fault = h->culprit >= 0 ? h->net.fault_of[h->culprit] : -1;

  case_begin(&before, k);
  job_copy_case(k, &h->machine, &c);
  job_say_text(n, "owner", random_unit(r) < 0.5 ? "regular, brings two mowers a year" : "");
  job_say_text(n, "words",
               h->complaint >= 0 ? k->complaints[h->complaint].says.items[0] : "does not run right");
  job_say_change(n, k, &before, &c);
  for (int made = 0, tries = 0; made < CHECKS && tries < 100; tries++) {
    int check = (int)(random_unit(r) * (double)k->check_count);
    size_t open;

    if (case_needs(&c, &k->checks[check].needs, &open) == TRI_LACKS || case_result_of(&c, check)) continue;
    case_free(&before);
    job_copy_case(k, &c, &before);
    case_set_result(&c, (struct case_result){check, hidden_result(h, check), 0, 1});
    case_take_off(&c, k, &k->checks[check].off);
    job_say_change(n, k, &before, &c);
    if (made % 2 == 0) say_advice(n, k, r, check, "keep-looking");
    made++;
  }
  case_free(&before);
  if (fault >= 0) {
    say_advice(n, k, r, -1, "repair");
    job_say_fault(n, "repair", k, fault);
    job_say_proof(n, k, fault, true);
    job_say_text(n, "part",
                 k->repairs[k->faults[fault].repair].parts.count
                     ? k->repairs[k->faults[fault].repair].parts.items[0]
                     : "none");
    job_say_minutes(n, k->repairs[k->faults[fault].repair].minutes);
  }
  job_say_closed(n, k, fault >= 0 ? "repaired" : "nothing-broken", fault >= 0 ? &fault : NULL, fault >= 0);
  case_free(&c);
}

/* One line of JSON for the news of some machine, as job number i: what another bench would
 * have exported. One job in a thousand is still open. */
static void add_line(struct buf *out, const struct job_news *n, long i, char id[STORE_ID])
{
  static const char digits[] = "0123456789abcdefghjkmnpqrstvwxyz";
  struct store_entries x = {0};
  int64_t at = START + (int64_t)i * APART;
  struct err e;

  for (int d = 0; d < 7; d++) id[d] = digits[(at >> (5 * (6 - d))) & 31];
  for (int d = 0; d < 12; d++) id[7 + d] = digits[random_bits(&(struct random){(uint64_t)(i * 12 + d)}) & 31];
  id[19] = '\0';
  x.items = mem_array(n->count, sizeof *x.items);
  x.count = i % 1000 == 0 ? n->count - 1 : n->count;
  for (size_t m = 0; m < x.count; m++) {
    struct store_entry *y = &x.items[m];

    memcpy(y->uid, id, STORE_ID);
    y->uid[17] = digits[m / 32];
    y->uid[18] = digits[m % 32];
    y->number = (int64_t)m + 1;
    y->at = at + (int64_t)m * 60;
    y->who = (char *)(uintptr_t)"bench";
    y->kind = (char *)(uintptr_t)n->items[m].kind;
    y->body = n->items[m].body;
  }
  must(jobfile_line(out, id, at, &x, &e), &e);
  free(x.items);
}

/* Fills the store through an import, and prints how fast that goes. */
static void fill(struct store *s, const char *file, long jobs, char (*ids)[STORE_ID])
{
  const struct knowledge *k = sample_knowledge();
  struct job_news *news = mem_array(MACHINES, sizeof *news);
  struct jobfile_counts counts;
  FILE *f = fopen(file, "w");
  struct buf line = {0};
  struct err e;
  double start, processor;

  for (int i = 0; i < MACHINES; i++) {
    struct random r = {(uint64_t)i};
    struct hidden h;

    hidden_draw(k, -1, (uint64_t)i + 1, &h);
    make_news(k, &h, &r, &news[i]);
    hidden_free(&h);
  }
  for (long i = 0; i < jobs; i++) {
    line.len = 0;
    add_line(&line, &news[i % MACHINES], i, ids[i]);
    fwrite(line.text, 1, line.len, f);
  }
  fclose(f);
  for (int i = 0; i < MACHINES; i++) job_news_free(&news[i]);
  free(news);
  buf_free(&line);
  f = fopen(file, "r");
  start = now();
  processor = used();
  must(jobfile_import(s, k, f, file, &counts, &e), &e);
  printf("%zu jobs, %zu entries\n", counts.jobs, counts.entries);
  print_rate("import", counts.jobs, now() - start, used() - processor);
  fclose(f);
}

/* ---- measuring ------------------------------------------------------------------------------ */

static void time_export(struct store *s, const char *file)
{
  FILE *f = fopen(file, "w");
  double start = now(), processor = used();
  struct err e;
  size_t jobs;

  must(jobfile_export(s, NULL, f, &jobs, &e), &e);
  fclose(f);
  print_rate("export", jobs, now() - start, used() - processor);
}

static void time_opening(const char *folder)
{
  double ms[TIMES], start;
  struct err e;

  for (int way = 0; way < 2; way++) {
    for (int i = 0; i < TIMES; i++) {
      struct store *s = NULL;

      start = now();
      must(store_open(folder, way == 1, &s, &e), &e);
      ms[i] = 1e3 * (now() - start);
      store_close(s);
    }
    print_times(way ? "open for writing" : "open for reading", ms, TIMES, true);
  }
}

/* What a conversation does when it begins: how the latest closed jobs turned out, and what
 * that makes of the chances. */
static void time_learning(struct store *s)
{
  double ms[LEARNINGS], processor = used();
  struct history h;
  struct err e;

  for (int i = 0; i < LEARNINGS; i++) {
    double start = now();

    must(history_learn(s, "/nonexistent", sample_knowledge(), &h, &e), &e);
    ms[i] = 1e3 * (now() - start);
    if (i == 0) printf("(learning from %ld proved of %zu closed jobs)\n", h.jobs, h.past.count);
    history_free(&h);
  }
  processor = 1e3 * (used() - processor) / LEARNINGS;
  print_times("learn from the latest 1,000 closed jobs", ms, LEARNINGS, true);
  printf("%-44s %9.2f\n", "  its processor time, on average", processor);
}

static void time_work(struct store *s, long jobs, char (*ids)[STORE_ID])
{
  static const char *const words[] = {"tiller",  "main jet", "starts dies", "chainsaw plug",
                                      "regular", "water",    "zebra"};
  const struct knowledge *k = sample_knowledge();
  struct random r = {99};
  double ms[TIMES], start;
  struct store_jobs found;
  struct err e;

  for (int i = 0; i < TIMES; i++) {
    const char *id = ids[(long)(random_unit(&r) * (double)jobs)];
    struct job_news n = {0};

    job_say_text(&n, "note", "measured once more");
    start = now();
    must(job_write(s, k, id, "bench", &n, &e), &e);
    ms[i] = 1e3 * (now() - start);
    job_news_free(&n);
  }
  print_times("record an entry, synced", ms, TIMES, true);
  for (int i = 0; i < TIMES; i++) {
    struct job j;

    start = now();
    must(job_read(s, k, ids[(long)(random_unit(&r) * (double)jobs)], &j, &e), &e);
    ms[i] = 1e3 * (now() - start);
    job_free(&j);
  }
  print_times("read a job", ms, TIMES, false);
  for (int i = 0; i < TIMES; i++) {
    start = now();
    must(store_find(s, words[i % 7], 200, &found, &e), &e);
    ms[i] = 1e3 * (now() - start);
    store_jobs_free(&found);
  }
  print_times("search, up to 200 found", ms, TIMES, true);
  for (int i = 0; i < TIMES; i++) {
    start = now();
    must(store_list(s, STORE_OPEN, 1000, &found, &e), &e);
    ms[i] = 1e3 * (now() - start);
    store_jobs_free(&found);
  }
  print_times("list the open jobs", ms, TIMES, false);
  time_learning(s);
}

int main(int argc, char **argv)
{
  long jobs = argc > 1 ? strtol(argv[1], NULL, 10) : 100000;
  char (*ids)[STORE_ID] = mem_array((size_t)jobs, sizeof *ids);
  char *folder = sample_folder(), *file = file_join(folder, "all.json"), *path = file_join(folder, "jobs.db");
  struct store *s = sample_store(folder);
  struct stat st;
  double start;
  struct err e;

  fill(s, file, jobs, ids);
  time_export(s, file);
  store_close(s);
  if (stat(path, &st) == 0) printf("size: %.0f bytes a job\n", (double)st.st_size / (double)jobs);
  start = now();
  must(store_open(folder, true, &s, &e), &e); /* the first of the day looks it all through */
  printf("first opening of the day, all looked through: %.0f ms\n", 1e3 * (now() - start));
  store_close(s);
  printf("\n%-44s %9s %9s %9s  %s\n", "milliseconds", "median", "p95", "most", "goal for p95");
  time_opening(folder);
  s = sample_store(folder);
  time_work(s, jobs, ids);
  store_close(s);
  sample_remove(folder);
  free(file);
  free(path);
  free(ids);
  return 0;
}
