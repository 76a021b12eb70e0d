/* progress.c - see progress.h. */
#include "practice/progress.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "base/text.h"

/* The order in which systems are practised, one after another, before they are mixed. */
static const char *const systems[PROGRESS_SYSTEMS] = {"fuel",     "ignition", "air",     "compression",
                                                      "starting", "governor", "exhaust", "lubrication",
                                                      "driven",   "use"};
/* Blocked: so many runs of a system in a row, from the first so many systems. Guided: so many
 * runs. A system got wrong comes back after so many runs of others. */
enum { IN_BLOCK = 3, BLOCKS = 4, GUIDED = 3, COMES_BACK = 2 };

bool progress_name_good(const char *name) { return text_is_id(name) && strlen(name) <= 30; }

char *progress_folder(const char *state, const char *apprentice)
{
  char *practice = file_join(state, "practice"), *folder = file_join(practice, apprentice);

  free(practice);
  return folder;
}

char *progress_file(const char *state, const char *apprentice, int run)
{
  char *folder = progress_folder(state, apprentice), name[32], *path;

  snprintf(name, sizeof name, "run-%d.json", run);
  path = file_join(folder, name);
  free(folder);
  return path;
}

int progress_count(const char *state, const char *apprentice)
{
  for (int n = 1;; n++) {
    char *path = progress_file(state, apprentice, n);
    bool there = access(path, F_OK) == 0;

    free(path);
    if (!there) return n - 1;
  }
}

void progress_begin(struct progress *p, const char *apprentice)
{
  *p = (struct progress){0};
  snprintf(p->apprentice, sizeof p->apprentice, "%s", apprentice);
  for (int i = 0; i < PROGRESS_SYSTEMS; i++)
    p->systems[i] = (struct system_progress){.name = systems[i], .since = 1000};
}

static bool went_well(const struct summary *s) { return s->right && !s->unsafe && s->score >= 80; }

static void add_latest(struct progress *p, double given_away)
{
  if (p->latest_count == PROGRESS_LATEST) {
    memmove(p->latest, p->latest + 1, (PROGRESS_LATEST - 1) * sizeof p->latest[0]);
    p->latest_count--;
  }
  p->latest[p->latest_count++] = given_away;
}

void progress_add(struct progress *p, const struct record *x)
{
  const struct summary *s = &x->summary;

  p->runs++;
  if (!s->over || x->sitting.level == LEVEL_WORKED) return;
  p->over++;
  p->found += s->right;
  p->unsafe += s->unsafe;
  p->steps += s->steps;
  p->minutes += s->minutes;
  p->given_away += s->regret;
  p->expected += s->expected;
  add_latest(p, s->regret);
  if (s->brier >= 0 && s->stated > 0) {
    p->brier += s->brier * s->stated;
    p->sure += s->sure * s->stated;
    p->sure_right += s->stated_right;
    p->brier_count += s->stated;
  }
  for (int i = 0; i < PROGRESS_SYSTEMS; i++) {
    struct system_progress *y = &p->systems[i];

    y->since++;
    if (strcmp(y->name, s->system) != 0) continue;
    y->runs++;
    y->found += s->right;
    y->given_away += s->regret;
    y->expected += s->expected;
    y->since = 0;
    y->in_row = went_well(s) ? y->in_row + 1 : 0;
  }
}

/* A system that went wrong last time comes back, but not at once. */
static const struct system_progress *comes_back(const struct progress *p)
{
  const struct system_progress *back = NULL;

  for (int i = 0; i < PROGRESS_SYSTEMS; i++) {
    const struct system_progress *y = &p->systems[i];

    if (y->runs >= IN_BLOCK && y->in_row == 0 && y->since >= COMES_BACK && (!back || y->since > back->since))
      back = y;
  }
  return back;
}

void progress_end(struct progress *p)
{
  const struct system_progress *back = comes_back(p);

  p->next_system = NULL;
  p->next_level = p->over < GUIDED ? LEVEL_GUIDED : LEVEL_FREE;
  if (back) {
    p->next_system = back->name;
    snprintf(p->why, sizeof p->why, "%s went wrong last time and is due again", back->name);
    return;
  }
  for (int i = 0; i < BLOCKS; i++)
    if (p->systems[i].runs < IN_BLOCK) {
      p->next_system = p->systems[i].name;
      snprintf(p->why, sizeof p->why, "one system at a time to begin with: %s, run %d of %d",
               p->systems[i].name, p->systems[i].runs + 1, IN_BLOCK);
      return;
    }
  snprintf(p->why, sizeof p->why, "mixed: not knowing the system is now part of the job");
}

void progress_read(const char *state, const char *apprentice, const struct knowledge *k, struct progress *out,
                   int *bad)
{
  int count = progress_count(state, apprentice);

  *bad = 0;
  progress_begin(out, apprentice);
  for (int n = 1; n <= count; n++) {
    char *path = progress_file(state, apprentice, n);
    struct record x;
    struct err e;

    if (record_read(path, k, &x, &e) == 0) {
      progress_add(out, &x);
      record_free(&x);
    } else {
      (*bad)++;
    }
    free(path);
  }
  progress_end(out);
}

int progress_forget(const char *state, const char *apprentice, struct err *e)
{
  char *folder = progress_folder(state, apprentice);
  int status = 0;

  for (int n = progress_count(state, apprentice); n > 0 && status == 0; n--) {
    char *path = progress_file(state, apprentice, n);

    if (unlink(path) != 0) status = err_set(e, EX_IOERR, path, 0, "cannot be removed: %s.", strerror(errno));
    free(path);
  }
  if (status == 0 && rmdir(folder) != 0 && errno != ENOENT)
    status = err_set(e, EX_IOERR, folder, 0, "cannot be removed: %s.", strerror(errno));
  free(folder);
  return status;
}

/* ---- telling it ------------------------------------------------------------------------- */

static void add_calibration(struct buf *out, const struct progress *p)
{
  if (p->brier_count == 0) return;
  buf_addf(out,
           "You said how sure you were %d times: %.0f %% on average, and were right %d times (%.0f %%). "
           "Brier %.2f; a "
           "coin gets 0.25.\n",
           p->brier_count, 100 * p->sure / p->brier_count, p->sure_right,
           100.0 * p->sure_right / p->brier_count, p->brier / p->brier_count);
  if (p->brier_count < 30) buf_add(out, "With so few, that is a hint and no more.\n");
}

static void add_systems(struct buf *out, const struct progress *p)
{
  buf_addf(out, "%-12s %5s %6s %18s\n", "system", "runs", "found", "given away per run");
  for (int i = 0; i < PROGRESS_SYSTEMS; i++) {
    const struct system_progress *y = &p->systems[i];
    double share = y->expected > 0 ? y->given_away / y->expected : 0;

    if (y->runs == 0) continue;
    buf_addf(out, "%-12s %5d %6d %14.0f min%s\n", y->name, y->runs, y->found, y->given_away / y->runs,
             y->runs < 2                             ? ""
             : share > 0.4 || y->found * 2 < y->runs ? "  weak"
             : share < 0.15 && y->found == y->runs   ? "  strong"
                                                     : "");
  }
}

void progress_text(struct buf *out, const struct progress *p, int width)
{
  struct buf b = {0};

  buf_addf(out, "%s: %d run%s, %d finished, cause put right in %d", p->apprentice, p->runs,
           p->runs == 1 ? "" : "s", p->over, p->found);
  if (p->unsafe) buf_addf(out, ", %d stopped as unsafe", p->unsafe);
  buf_add(out, "\n");
  if (p->over) {
    buf_addf(out, "given away per run: %.0f min of %.0f expected; lately:", p->given_away / p->over,
             p->expected / p->over);
    for (int i = 0; i < p->latest_count; i++) buf_addf(out, " %.0f", p->latest[i]);
    buf_add(out, "\n");
    add_systems(out, p);
    add_calibration(out, p);
  }
  buf_addf(&b, "Next: %s, level %s (%s).", p->next_system ? p->next_system : "any system",
           level_name(p->next_level), p->why);
  text_wrap(out, buf_text(&b), width, "", "  ");
  buf_add(out, "\n");
  buf_free(&b);
}

/* How often it was said how sure, how sure on average, how often it was so. */
static struct json *sure_json(const struct progress *p)
{
  struct json *j = json_object();

  json_put_number(j, "stated", p->brier_count);
  json_put_number(j, "right", p->sure_right);
  json_put_number(j, "mean", p->sure / p->brier_count);
  json_put_number(j, "brier", p->brier / p->brier_count);
  return j;
}

struct json *progress_json(const struct progress *p)
{
  struct json *j = json_object(), *list = json_list(), *latest = json_list();

  json_put_text(j, "pullcord", "progress-1");
  json_put_text(j, "apprentice", p->apprentice);
  json_put_number(j, "runs", p->runs);
  json_put_number(j, "finished", p->over);
  json_put_number(j, "put-right", p->found);
  json_put_number(j, "unsafe", p->unsafe);
  json_put_number(j, "minutes", p->minutes);
  json_put_number(j, "given-away", p->given_away);
  json_put_number(j, "expected", p->expected);
  if (p->brier_count) json_put(j, "sure", sure_json(p));
  for (int i = 0; i < p->latest_count; i++) {
    struct json *run = json_object();

    json_put_number(run, "given-away", p->latest[i]);
    json_push(latest, run);
  }
  json_put(j, "latest", latest);
  for (int i = 0; i < PROGRESS_SYSTEMS; i++) {
    struct json *y = json_object();

    if (p->systems[i].runs == 0) {
      json_free(y);
      continue;
    }
    json_put_text(y, "system", p->systems[i].name);
    json_put_number(y, "runs", p->systems[i].runs);
    json_put_number(y, "put-right", p->systems[i].found);
    json_put_number(y, "given-away", p->systems[i].given_away);
    json_put_number(y, "expected", p->systems[i].expected);
    json_push(list, y);
  }
  json_put(j, "systems", list);
  json_put_text(j, "next-system", p->next_system ? p->next_system : "any");
  json_put_text(j, "next-level", level_name(p->next_level));
  json_put_text(j, "why", p->why);
  return j;
}
