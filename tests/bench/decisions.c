/* decisions.c - see decisions.h. */
#include "decisions.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>

#include "assess/assess.h"
#include "base/file.h"
#include "plan/advise.h"
#include "shop/casefile.h"

double now_ms(void)
{
  struct timespec t;

  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec * 1e-6;
}

int by_size(const void *a, const void *b)
{
  const double *x = a, *y = b;

  return (*x > *y) - (*x < *y);
}

double at_share(const double *sorted, size_t count, double share)
{
  size_t i = (size_t)(share * (double)count);

  return count == 0 ? 0 : sorted[i < count ? i : count - 1];
}

static const char *step_name(const struct knowledge *k, struct advice_step s)
{
  if (s.kind == ADVICE_CHECK) return k->checks[s.at].id;
  if (s.kind == ADVICE_REPAIR) return k->repairs[s.at].id;
  if (s.kind == ADVICE_PROVE) return "(prove it)";
  return s.kind == ADVICE_GIVE_UP ? "(give up)" : "(look further)";
}

static const char *fault_name(const struct knowledge *k, int fault)
{
  return fault >= 0 ? k->faults[fault].id : fault == -1 ? "(not listed)" : "(nothing broken)";
}

static void show_option(const struct knowledge *k, size_t number, const struct advice_option *o)
{
  printf("  %zu %-34s %6.1f min  cost %6.1f without %6.1f break-even %6.1f%s%s\n", number,
         step_name(k, o->step), o->minutes, o->cost, o->without, o->break_even,
         o->ask_first >= 0 ? " FIRST" : "", o->held_by >= 0 ? " HELD" : "");
  for (size_t i = 0; i < o->also_count; i++) printf("      together with %s\n", k->repairs[o->also[i]].id);
  for (size_t i = 0; number == 1 && i < o->result_count; i++) {
    const struct advice_result *r = &o->results[i];

    printf("      %-20s %.2f -> %s %.2f, cost %.1f, next %s\n",
           k->checks[o->step.at].results.items[r->result], r->chance, fault_name(k, r->fault), r->belief,
           r->cost, step_name(k, r->next));
  }
}

static void show(const struct knowledge *k, const char *path, const struct assessment *a,
                 const struct advice *v)
{
  printf("\n%s\n  %s: cost %.1f, without checks %.1f, give up %.0f%s, %ld plans\n", path,
         advice_method_name(v->method), v->cost, v->no_checks, v->give_up_cost,
         v->stop_checking ? ", stop checking" : "", v->steps);
  for (size_t i = 0; i < 3 && i < a->ranking_count; i++)
    printf("  %s %.3f blame %.3f\n", fault_name(k, a->ranking[i].fault), a->ranking[i].belief,
           a->ranking[i].blame);
  for (size_t i = 0; i < v->count && i < 7; i++) show_option(k, i + 1, &v->options[i]);
  for (size_t i = 0; i < v->plan_count; i++) {
    const struct advice_planned *p = &v->plan[i];

    printf("  then %-30s %.1f min, chance %.2f%s%s\n", step_name(k, p->step), p->minutes, p->chance,
           p->result >= 0 ? " -> " : "",
           p->result >= 0 ? k->checks[p->step.at].results.items[p->result] : "");
  }
  for (size_t i = 0; i < v->beside_count; i++)
    printf("  beside %-28s %.1f min (alone %.1f), saves %.1f\n", k->checks[v->beside[i].check].id,
           v->beside[i].minutes, v->beside[i].alone, v->beside[i].saving);
}

/* near: share of the expected cost by which what is advised lies above the cheapest step, since
 * near ties go to the more telling check; one for each case. */
struct timing { double *ms, *near; size_t count, near_count, method[3]; };

static double above_the_cheapest(const struct advice *v)
{
  double least = v->cost;

  for (size_t i = 0; i < v->count; i++)
    if (v->options[i].cost < least) least = v->options[i].cost;
  return v->cost / least - 1;
}

/* Times the decision on one case; false when the file is no case. */
static bool time_case(const struct knowledge *k, const char *path, int rounds, bool showing, struct timing *t)
{
  struct assessor *assessor = NULL;
  struct json *j = NULL;
  struct bench_case c;
  struct assessment a;
  struct advice v;
  struct err e = {0};
  char *text = NULL;
  size_t len;
  bool good = file_read(path, JSON_MAX_BYTES, &text, &len, &e) == 0 &&
              json_read(path, text, len, &j, &e) == 0 && json_member(j, "case") &&
              casefile_read(k, path, json_member(j, "case"), &c, &e) == 0;

  if (good) {
    good = assessor_open(k, &assessor, &e) == 0 && assess_case(assessor, &c, &a, &e) == 0;
    for (int r = 0; good && r < rounds; r++) {
      double start = now_ms();

      plan_advise(&a.net, &c, &a.drawn, a.belief, NULL, &v);
      t->ms[t->count++] = now_ms() - start;
      if (r == 0) t->method[v.method]++;
      if (r == 0 && v.options[0].ask_first < 0) t->near[t->near_count++] = above_the_cheapest(&v);
      if (r == 0 && showing) show(k, path, &a, &v);
      advice_free(&v);
    }
    if (good) assessment_free(&a);
    assessor_close(assessor);
    case_free(&c);
  }
  json_free(j);
  free(text);
  return good;
}

struct paths { char **items; size_t count, room; };

/* Case files under a folder, or the file itself. */
static void list_cases(const char *path, struct paths *out)
{
  size_t length = strlen(path);
  struct dirent *entry;
  struct stat st;
  DIR *folder;

  if (stat(path, &st) == 0 && !S_ISDIR(st.st_mode)) {
    void *items = out->items;

    if (length < 5 || strcmp(path + length - 5, ".json") != 0) return;
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    out->items[out->count++] = strdup(path);
    return;
  }
  folder = opendir(path);
  while (folder && (entry = readdir(folder))) {
    char *inside;

    if (entry->d_name[0] == '.') continue;
    inside = file_join(path, entry->d_name);
    list_cases(inside, out);
    free(inside);
  }
  if (folder) closedir(folder);
}

static int by_name(const void *a, const void *b)
{
  return strcmp(*(char *const *)a, *(char *const *)b);
}

static void print_near(struct timing *t)
{
  double sum = 0;

  qsort(t->near, t->near_count, sizeof *t->near, by_size);
  for (size_t i = 0; i < t->near_count; i++) sum += t->near[i];
  printf("  advised above the cheapest step, by near ties: mean %.2f %%, p95 %.2f %%, max %.2f %% (%zu cases)\n",
         t->near_count ? 100 * sum / (double)t->near_count : 0, 100 * at_share(t->near, t->near_count, 0.95),
         100 * at_share(t->near, t->near_count, 1), t->near_count);
}

void time_decisions(const struct knowledge *k, char **arg, int count, size_t most, int rounds, bool showing)
{
  struct paths found = {0};
  struct timing t = {0};
  size_t step, cases = 0;

  for (int i = 0; i < count; i++) list_cases(arg[i], &found);
  if (found.count > 1) qsort(found.items, found.count, sizeof *found.items, by_name);
  step = found.count > most ? found.count / most : 1;
  t.ms = mem_array(found.count * (size_t)rounds, sizeof *t.ms);
  t.near = mem_array(found.count, sizeof *t.near);
  for (size_t i = 0; i < found.count; i += step) cases += time_case(k, found.items[i], rounds, showing, &t);
  qsort(t.ms, t.count, sizeof *t.ms, by_size);
  printf("\nnext step on %zu real cases, %zu faults, %zu checks, %d rounds; processor time, ms\n", cases,
         k->fault_count, k->check_count, rounds);
  printf("  %-36s %9s %9s %9s %9s\n", "", "median", "p95", "p99", "max");
  printf("  %-36s %9.1f %9.1f %9.1f %9.1f\n", "full plan", at_share(t.ms, t.count, 0.5),
         at_share(t.ms, t.count, 0.95), at_share(t.ms, t.count, 0.99), at_share(t.ms, t.count, 1));
  printf("  %-36s %9s %9s %9s\n", "goal at most", "", "", "50");
  printf("  exact %zu, rollout %zu, look-ahead %zu\n", t.method[ADVICE_EXACT], t.method[ADVICE_ROLLOUT],
         t.method[ADVICE_LOOK_AHEAD]);
  print_near(&t);
  for (size_t i = 0; i < found.count; i++) free(found.items[i]);
  free(found.items);
  free(t.ms);
  free(t.near);
}
