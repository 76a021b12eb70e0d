/* cmd_learned.c - the command "learned": what the shop's own jobs say, and its switches. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/clock.h"
#include "base/text.h"
#include "cli/cmd_learned.h"
#include "cli/commands.h"
#include "knowledge/load.h"

enum { MOST_SHOWN = 12 };

static const char *of_jobs(long n) { return n == 1 ? "job" : "jobs"; }

static void print_head(const struct learned_view *v)
{
  const struct learn_counts *c = &v->counts;
  char since[32];

  printf("What this shop's jobs say, beside the shipped estimates.\n");
  printf("%ld closed %s, %ld counted; %ld without a repair that passed its proof run count for nothing.\n",
         c->jobs, of_jobs(c->jobs), c->counted, c->unconfirmed);
  if (v->on.since > 0) {
    clock_text(v->on.since, since, sizeof since);
    printf("Jobs closed up to %s are left out (\"pullcord learned reset\").\n", since);
  }
  printf("At the bench they are %s.\n",
         v->on.on ? "weighed with" : "NOT weighed with (\"pullcord learned on\")");
  printf("A shipped base rate is worth %.0f jobs, a sign %.0f results; the latest %d at most are counted.\n",
         c->how.rates_worth, c->how.signs_worth, c->how.most);
}

static void print_class(const struct learned_view *v, int machine_class)
{
  size_t count, most;
  struct learned_share *shares = learned_shares(v, machine_class, &count);

  most = v->machine_class >= 0 || count < MOST_SHOWN ? count : MOST_SHOWN;
  printf("\n%s: %ld %s\n  times  shipped     now  90 of 100        behind the complaint\n",
         v->k->classes[machine_class].name, v->counts.class_jobs[machine_class],
         of_jobs(v->counts.class_jobs[machine_class]));
  for (size_t i = 0; i < most; i++)
    printf("  %5ld  %5.1f %%  %5.1f %%  %4.1f to %4.1f %%  %s\n", shares[i].times, 100 * shares[i].shipped,
           100 * shares[i].now, 100 * shares[i].limits.low, 100 * shares[i].limits.high,
           v->k->faults[shares[i].fault].name);
  if (most < count)
    printf("  and %zu more (--class %s shows all)\n", count - most, v->k->classes[machine_class].id);
  free(shares);
}

static void print_signs(const struct learned_view *v)
{
  size_t count, most;
  struct learned_shown *signs = learned_signs(v, &count);

  most = count < MOST_SHOWN ? count : MOST_SHOWN;
  if (count) printf("\nSigns, on machines of all classes\n  shown      shipped   now  90 of 100\n");
  for (size_t i = 0; i < most; i++) {
    const struct sign *s = &v->k->signs[signs[i].sign];

    printf("  %3ld of %-3ld  %3.0f %%  %3.0f %%  %2.0f to %3.0f %%  %s: %s: %s\n", signs[i].shown,
           signs[i].made, 100 * signs[i].shipped, 100 * signs[i].now, 100 * signs[i].limits.low,
           100 * signs[i].limits.high, v->k->faults[s->fault].name, v->k->checks[s->check].name,
           v->k->checks[s->check].labels.items[s->result]);
  }
  if (most < count) printf("  and %zu more (\"pullcord learned export\" has all)\n", count - most);
  free(signs);
}

static void print_past(const struct learn_past *p)
{
  struct forecast_bin bins[LEARN_BINS];
  struct limits right = learned_right(p);
  struct murphy m;

  printf("\nPast rankings, as they stood before the repair: %ld\n", p->count);
  if (p->count == 0) return;
  printf("  First place was right in %ld (%.0f %%; 90 of 100: %.0f to %.0f %%). It had been given %.0f %% on "
         "average.\n",
         p->hits, 100.0 * (double)p->hits / (double)p->count, 100 * right.low, 100 * right.high,
         100 * (double)p->chance / 1e6 / (double)p->count);
  printf("  The fault was among the first %d in %ld. Always naming the most frequent fault: right in %ld.\n",
         OUTCOME_MOST_CAUSES, p->named, p->usual_hits);
  printf("  Quadratic score of the first place %.3f (0 is best).\n",
         (double)p->quadratic / 1e6 / (double)p->count);
  if (p->count < LEARN_CURVE_FROM) {
    printf("  Too few for a curve: that begins at %d.\n", LEARN_CURVE_FROM);
    return;
  }
  m = learned_murphy(p, bins);
  printf("  Reliability %.3f (0 is best), resolution %.3f, uncertainty %.3f.\n", m.reliability, m.resolution,
         m.uncertainty);
  for (int i = 0; i < LEARN_BINS; i++)
    if (bins[i].count)
      printf("  given %3.0f %%: right in %ld of %ld\n", 100 * bins[i].chance, bins[i].hits, bins[i].count);
}

static void print_text(const struct learned_view *v)
{
  bool any = false;

  print_head(v);
  for (size_t i = 0; i < v->k->class_count; i++) {
    bool wanted = v->machine_class < 0 || v->machine_class == (int)i;

    if (!wanted || v->counts.class_jobs[i] == 0) continue;
    print_class(v, (int)i);
    any = true;
  }
  if (!any && v->machine_class >= 0)
    printf("\nNo counted job on this class yet: %s\n", v->k->classes[v->machine_class].name);
  if (v->machine_class < 0) print_signs(v);
  print_past(&v->counts.past);
}

static void print_json(const struct learned_view *v)
{
  struct json *j = learned_json(v);
  char *text = json_print(j);

  fputs(text, stdout);
  free(text);
  json_free(j);
}

static int find_class(const struct knowledge *k, const char *id, int *out, struct err *e)
{
  const char **ids, *near;
  size_t count;

  *out = id ? knowledge_find(k, ENTRY_CLASS, id) : -1;
  if (!id || *out >= 0) return 0;
  knowledge_ids(k, ENTRY_CLASS, &ids, &count);
  near = text_nearest(id, ids, count);
  err_set(e, EX_USAGE, NULL, 0, "there is no machine \"%.40s\"%s%s%s \"pullcord list machines\" names them.",
          id, near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
  free(ids);
  return EX_USAGE;
}

/* A bench without a store has no jobs yet, which is nothing wrong. */
static int read_outcomes(const char *folder, const struct learned_view *v, struct outcomes *out,
                         struct err *e)
{
  struct store *s;
  int status = store_open(folder, false, &s, e);

  *out = (struct outcomes){0};
  if (status == EX_NOINPUT) {
    *e = (struct err){0};
    return 0;
  }
  if (status) return status;
  status = history_read(s, v->k, v->on.since, out, e);
  store_close(s);
  return status;
}

static int show(const char *folder, const struct args *args, bool all, struct err *e)
{
  struct knowledge k;
  struct learned_view v = {.k = &k, .machine_class = -1};
  struct outcomes outcomes = {0};
  int status = load_knowledge(&k, e);

  if (status) return status;
  if (!all) status = find_class(&k, args->machine_class, &v.machine_class, e);
  if (status == 0) status = learn_switch_read(folder, &v.on, e);
  if (status == 0) status = read_outcomes(folder, &v, &outcomes, e);
  if (status == 0) {
    learn_count(&k, &outcomes, learn_usual(), &v.counts);
    learn_chances(&v.counts, &v.now);
    if (all || args->json) print_json(&v);
    else print_text(&v);
    learned_free(&v.now);
    learn_free(&v.counts);
  }
  outcomes_free(&outcomes);
  knowledge_free(&k);
  return status;
}

static int turn(const char *folder, const char *word, struct err *e)
{
  struct learn_switch s;
  int status = learn_switch_read(folder, &s, e);

  if (status == EX_DATAERR) status = 0; /* a file that is none of ours is written anew */
  if (status) return status;
  if (strcmp(word, "reset") == 0) s.since = clock_now();
  else s.on = strcmp(word, "on") == 0;
  status = learn_switch_write(folder, &s, e);
  if (status) return status;
  if (strcmp(word, "reset") == 0) printf("Jobs closed up to now do not count any more. They are all kept.\n");
  else
    printf("At the bench the shop's own jobs are %s.\n", s.on ? "weighed with" : "not weighed with any more");
  return 0;
}

int run_learned(const struct args *args, struct err *e)
{
  static const char *const words[] = {"off", "on", "reset", "export"};
  const char *word = args->positional_count ? args->positional[0] : NULL;
  char *folder = NULL;
  bool known = !word;
  int status;

  for (size_t i = 0; word && i < sizeof words / sizeof words[0]; i++)
    known = known || strcmp(word, words[i]) == 0;
  if (!known)
    return err_set(e, EX_USAGE, NULL, 0,
                   "\"%.40s\" is not one of off, on, reset, export. Alone it shows what was learned.", word);
  status = store_folder(&folder, e);
  if (status == 0)
    status = !word || strcmp(word, "export") == 0 ? show(folder, args, word != NULL, e)
                                                  : turn(folder, word, e);
  free(folder);
  return status;
}
