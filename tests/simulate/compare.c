/* compare.c - how good and how quick simulated jobs are. Not a test: it prints figures.
 * Usage: compare_policies [--jobs N] [--wrong N] [--seed S] [--agree N] [--speed N] [--pictures FOLDER]
 * jobs: per class of machine, each by all policies; wrong: the same on machines whose chances are
 * other than believed; agree: jobs done by the full path too; speed: jobs for the speed. A seed is
 * one machine, the same for every policy. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "agree.h"
#include "base/file.h"
#include "chart.h"
#include "disturb.h"
#include "knowledge/load.h"

struct mean { double sum, squares; size_t count; };

static void add(struct mean *m, double x)
{
  m->sum += x;
  m->squares += x * x;
  m->count++;
}

static double mean_of(const struct mean *m) { return m->sum / (double)m->count; }

/* Half of the 95 % interval of the mean (normal). */
static double half_of(const struct mean *m)
{
  double mean = mean_of(m), n = (double)m->count;

  return n > 1 ? 1.96 * sqrt((m->squares / n - mean * mean) / (n - 1)) : 0;
}

/* [policy]; less: Pullcord's less the policy's, on the same jobs. */
struct figures { struct mean fault[SIM_POLICIES], cost[SIM_POLICIES], less_fault[SIM_POLICIES],
                 less_cost[SIM_POLICIES], checks[SIM_POLICIES], wrong[SIM_POLICIES]; size_t in_vain; };

/* Machines are drawn by `truth`, which is what the policies believe or not. */
struct world {
  const struct simulator *believed, *truth;
  struct sim_bench bench;
  struct sim_machine machine;
};

static double processor_seconds(void)
{
  struct timespec t;

  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

/* A job that some policy does not bring to its end counts as in_vain, and nowhere else. */
static void run_seed(struct world *w, uint64_t seed, struct figures *of_class, struct figures *all)
{
  struct sim_outcome out[SIM_POLICIES];
  struct figures *both[] = {of_class, all};

  for (int p = 0; p < SIM_POLICIES; p++) {
    draw_by_seed(w->truth, seed, &w->machine);
    if (!believe(w->believed, &w->machine) ||
        !sim_job(&w->bench, &w->machine, (enum sim_policy)p, &out[p])) {
      all->in_vain++;
      return;
    }
  }
  for (int b = 0; b < 2; b++)
    for (int p = 0; p < SIM_POLICIES; p++) {
      add(&both[b]->fault[p], out[p].to_fault);
      add(&both[b]->cost[p], out[p].cost);
      add(&both[b]->less_fault[p], out[0].to_fault - out[p].to_fault);
      add(&both[b]->less_cost[p], out[0].cost - out[p].cost);
      add(&both[b]->checks[p], (double)out[p].checks);
      add(&both[b]->wrong[p], (double)out[p].wrong);
    }
}

static void print_class(const char *name, const struct mean *m)
{
  printf("| %s |", name);
  for (int p = 0; p < SIM_POLICIES; p++) printf(" %.0f ± %.0f |", mean_of(&m[p]), half_of(&m[p]));
  putchar('\n');
}

static void print_table(const char *what, const struct knowledge *k, const struct figures *f, bool cost)
{
  printf("\n%s\n\n| class |", what);
  for (int p = 0; p < SIM_POLICIES; p++) printf(" %s |", sim_policy_name((enum sim_policy)p));
  printf("\n|---|---|---|---|---|\n");
  for (size_t c = 0; c <= k->class_count; c++)
    print_class(c < k->class_count ? k->classes[c].name : "all", cost ? f[c].cost : f[c].fault);
}

static void print_all(const struct figures *f)
{
  printf("\n| all classes | minutes to the fault | cost | checks | repairs in vain | minutes, Pullcord's less these | "
         "cost, Pullcord's less these |\n|---|---|---|---|---|---|---|\n");
  for (int p = 0; p < SIM_POLICIES; p++) {
    printf("| %s | %.1f ± %.1f | %.1f ± %.1f | %.1f | %.2f |", sim_policy_name((enum sim_policy)p),
           mean_of(&f->fault[p]), half_of(&f->fault[p]), mean_of(&f->cost[p]), half_of(&f->cost[p]),
           mean_of(&f->checks[p]), mean_of(&f->wrong[p]));
    if (p == 0) printf(" | |\n");
    else printf(" %.1f ± %.1f | %.1f ± %.1f |\n", mean_of(&f->less_fault[p]), half_of(&f->less_fault[p]),
                mean_of(&f->less_cost[p]), half_of(&f->less_cost[p]));
  }
  printf("%zu machines in all; left out, because some policy found nothing more to do: %zu\n", f->fault[0].count,
         f->in_vain);
}

static void draw(const char *folder, const char *file, const char *title, const struct knowledge *k,
                 const struct figures *f, bool cost)
{
  struct arena arena = {0};
  struct chart_row *rows = arena_array(&arena, k->class_count + 1, sizeof *rows);
  struct chart c = {.id = file, .title = title, .unit = "minutes", .scale = "minutes; equal steps are equal ratios",
                    .series_count = SIM_POLICIES, .rows = rows, .row_count = k->class_count + 1};
  struct drawing *d;
  struct buf svg = {0}, path = {0};
  FILE *to;

  for (int p = 0; p < SIM_POLICIES; p++) c.series[p] = sim_policy_name((enum sim_policy)p);
  for (size_t r = 0; r < c.row_count; r++) {
    const struct mean *m = cost ? f[r].cost : f[r].fault;

    rows[r].name = r < k->class_count ? k->classes[r].name : "all";
    for (int p = 0; p < SIM_POLICIES; p++) {
      rows[r].mean[p] = mean_of(&m[p]);
      rows[r].half[p] = half_of(&m[p]);
    }
  }
  d = chart_draw(&arena, &c);
  drawing_svg(d, &svg);
  buf_addf(&path, "%s/%s.svg", folder, file);
  to = fopen(buf_text(&path), "w");
  if (!to || fputs(buf_text(&svg), to) < 0 || fputc('\n', to) == EOF || fclose(to)) {
    fprintf(stderr, "%s cannot be written.\n", buf_text(&path));
    exit(1);
  }
  drawing_free(d);
  buf_free(&svg);
  buf_free(&path);
  arena_free(&arena);
}

static struct figures *run_all(const struct simulator *believed, const struct simulator *truth, size_t jobs,
                               uint64_t seed)
{
  size_t classes = believed->book.k->class_count;
  struct figures *f = mem_array(classes + 1, sizeof *f);
  struct world w = {.believed = believed, .truth = truth};

  sim_machine_room(&w.machine, &believed->book);
  sim_bench_open(&w.bench, &believed->book, NULL);
  for (uint64_t i = seed; i < seed + jobs * classes; i++) run_seed(&w, i, &f[i % classes], &f[classes]);
  printf("\n%zu jobs per class, seeds %llu to %llu; ± is half of the 95 %% interval\n", jobs,
         (unsigned long long)seed, (unsigned long long)(seed + jobs * classes - 1));
  sim_bench_close(&w.bench);
  sim_machine_free(&w.machine);
  return f;
}

static void compare(const struct simulator *s, size_t jobs, uint64_t seed, const char *pictures)
{
  const struct knowledge *k = s->book.k;
  size_t classes = k->class_count;
  struct figures *f = run_all(s, s, jobs, seed);

  print_table("Minutes to the true fault:", k, f, false);
  print_table("Cost of the whole job, parts at the shop rate, in minutes:", k, f, true);
  print_all(&f[classes]);
  if (pictures) {
    draw(pictures, "minutes-to-the-fault", "Minutes to the true fault", k, f, false);
    draw(pictures, "cost-of-the-job", "Cost of the whole job, parts included", k, f, true);
  }
  free(f);
}

/* The same when the estimates are wrong: all odds off by up to `by` either way. */
static int compare_wrong(const struct simulator *s, size_t jobs, uint64_t seed, double by, struct err *e)
{
  struct simulator truth;
  struct knowledge k;
  struct figures *f;
  int status = load_knowledge(&k, e);

  if (status) return status;
  disturb(&k, by, seed);
  status = sim_open(&truth, &k, e);
  if (status == 0) {
    f = run_all(s, &truth, jobs, seed);
    printf("All odds of base rates and signs other than believed, by up to %.0f times:\n", by);
    print_all(&f[k.class_count]);
    free(f);
  }
  sim_close(&truth);
  knowledge_free(&k);
  return status;
}

static void print_agreement(const struct simulator *s, struct assessor *assessor, size_t jobs, uint64_t seed)
{
  struct agreement a;
  double n = (double)jobs;

  agree_on(s, assessor, jobs, seed, &a);
  printf("\nQuick against full path, %zu jobs, %zu steps, seeds from %llu:\n", jobs, a.steps, (unsigned long long)seed);
  printf("same check %.1f %%, among the full plan's best three %.1f %% (of %zu steps); stop or go on alike %.1f %%\n",
         100 * (double)a.same_check / (double)a.both_check, 100 * (double)a.among_three / (double)a.both_check,
         a.both_check, 100 * (double)(a.both_check + a.same_step - a.same_check) / (double)a.steps);
  printf("same first place at the end %.1f %%; first place right: full %.1f %%, quick %.1f %%\n",
         100 * (double)a.same_first / n, 100 * (double)a.full_right / n, 100 * (double)a.quick_right / n);
  printf("checks %.1f and %.1f, their minutes %.1f and %.1f\n", a.full_steps / n, a.quick_steps / n,
         a.full_minutes / n, a.quick_minutes / n);
}

static void print_speed(const struct simulator *s, size_t jobs, uint64_t seed, bool remember)
{
  struct sim_memory *memory = remember ? sim_memory_new(s, 2000000) : NULL;
  struct sim_machine machine;
  struct sim_search out;
  struct sim_bench x;
  size_t steps = 0;
  double t;

  sim_machine_room(&machine, &s->book);
  sim_bench_open(&x, &s->book, memory);
  t = processor_seconds();
  for (size_t i = 0; i < jobs; i++) {
    draw_by_seed(s, seed + i, &machine);
    sim_search(&x, &machine, SIM_LOOK_AHEAD, AGREE_MOST_CHECKS, &out);
    steps += out.steps;
  }
  t = processor_seconds() - t;
  printf("%s: %.0f jobs a second of one core (%zu jobs, %.1f checks each, %.1f choices worked out each, %.1f us a choice)\n",
         remember ? "remembering" : "each anew", (double)jobs / t, jobs, (double)steps / (double)jobs,
         (double)x.asked / (double)jobs, 1e6 * t / (double)x.asked);
  sim_bench_close(&x);
  sim_machine_free(&machine);
  sim_memory_free(memory);
}

int main(int argc, char **argv)
{
  size_t jobs = 1000, wrong = 200, agree = 300, speed = 20000;
  const char *pictures = NULL;
  struct assessor *assessor;
  struct simulator s;
  struct knowledge k;
  uint64_t seed = 1;
  struct err e;

  for (int i = 1; i + 1 < argc; i += 2) {
    if (strcmp(argv[i], "--jobs") == 0) jobs = strtoul(argv[i + 1], NULL, 10);
    else if (strcmp(argv[i], "--wrong") == 0) wrong = strtoul(argv[i + 1], NULL, 10);
    else if (strcmp(argv[i], "--seed") == 0) seed = strtoull(argv[i + 1], NULL, 10);
    else if (strcmp(argv[i], "--agree") == 0) agree = strtoul(argv[i + 1], NULL, 10);
    else if (strcmp(argv[i], "--speed") == 0) speed = strtoul(argv[i + 1], NULL, 10);
    else if (strcmp(argv[i], "--pictures") == 0) pictures = argv[i + 1];
    else return fprintf(stderr, "%s is not known; see the head of compare.c\n", argv[i]), EX_USAGE;
  }
  if (load_knowledge(&k, &e) || sim_open(&s, &k, &e) || assessor_open(&k, &assessor, &e)) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  printf("%zu models of a class with a complaint\n", s.model_count);
  if (jobs) compare(&s, jobs, seed, pictures);
  if (wrong && (compare_wrong(&s, wrong, seed, 2, &e) || compare_wrong(&s, wrong, seed, 4, &e))) {
    fprintf(stderr, "%s\n", e.text);
    return 1;
  }
  if (agree) print_agreement(&s, assessor, agree, seed);
  if (speed) print_speed(&s, speed, seed, false);
  if (speed) print_speed(&s, speed, seed, true);
  assessor_close(assessor);
  sim_close(&s);
  knowledge_free(&k);
  return 0;
}
