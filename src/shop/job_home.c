/* job_home.c - the entries that send a machine home: the service check and the ending; see
 * job.h. */
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "base/text.h"
#include "shop/job.h"

static const char *const state_words[] = {"open", "done", "found", "left", NULL};

const char *job_service_word(enum job_service_state state) { return state_words[state]; }

void job_say_service(struct job_news *n, const char *item, enum job_service_state state, const char *text)
{
  struct json *b = json_object();

  json_put_text(b, "item", item);
  json_put_text(b, "state", state_words[state]);
  if (*text) json_put_text(b, "text", text);
  job_say(n, "service", b);
}

static struct json *closed_body(const struct knowledge *k, const char *ending, const int *confirmed, size_t count)
{
  struct json *b = json_object(), *list = json_list();

  json_put_text(b, "ending", ending);
  for (size_t i = 0; i < count; i++) json_push_text(list, k->faults[confirmed[i]].id);
  json_put(b, "confirmed", list);
  return b;
}

void job_say_closed(struct job_news *n, const struct knowledge *k, const char *ending, const int *confirmed,
                    size_t count)
{
  job_say(n, "closed", closed_body(k, ending, confirmed, count));
}

void job_say_ended(struct job_news *n, const struct knowledge *k, const char *ending, const struct job *j)
{
  bool repaired = strcmp(ending, job_ending(0)) == 0, any = false;
  int *faults = mem_array(j->repair_count + 1, sizeof *faults);
  struct json *b = closed_body(k, ending, faults, repaired ? job_confirmed(j, faults) : 0);
  struct json *open = json_list();

  for (size_t i = 0; repaired && i < SERVICE_ITEMS; i++)
    if (job_service_open(j, i)) {
      json_push_text(open, service_id(i));
      any = true;
    }
  if (any) json_put(b, "open", open);
  else json_free(open);
  free(faults);
  job_say(n, "closed", b);
}

/* ---- what a person says ------------------------------------------------------------------- */

/* The state that a word names; SERVICE_OPEN when it names none. */
static enum job_service_state state_of(const char *word, size_t len)
{
  for (int i = SERVICE_DONE; state_words[i]; i++)
    if (strlen(state_words[i]) == len && strncmp(word, state_words[i], len) == 0)
      return (enum job_service_state)i;
  return SERVICE_OPEN;
}

/* Marks the items that a word names. */
static int mark(const char *word, bool *marked, struct err *e)
{
  static const char *const names[] = {"oil",   "plug",        "filter", "fuel",
                                      "leaks", "stop-switch", "speed",  "all"};
  int at = service_find(strcmp(word, "stop") == 0 ? "stop-switch" : word);
  const char *near;

  if (at >= 0) marked[at] = true;
  else if (strcmp(word, "all") == 0) memset(marked, true, SERVICE_ITEMS * sizeof *marked);
  else if (strcmp(word, "and") != 0 && strcmp(word, "switch") != 0) {
    near = text_nearest(word, names, sizeof names / sizeof names[0]);
    return err_set(e, EX_USAGE, NULL, 0,
                   "\"%.40s\" is nothing of the service check%s%s%s It is oil, plug, filter, fuel, leaks, "
                   "stop-switch, speed, or all; then done, found or left.",
                   word, near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
  }
  return 0;
}

/* Says a state of all items that are marked. */
static int say_marked(struct job_news *n, const bool *marked, enum job_service_state state, const char *text,
                      struct err *e)
{
  bool any = false;

  for (size_t i = 0; i < SERVICE_ITEMS; i++) any = any || marked[i];
  if (!any) return err_set(e, EX_USAGE, NULL, 0, "say of what: service oil %s.", state_words[state]);
  if (state != SERVICE_DONE && !*text)
    return err_set(e, EX_USAGE, NULL, 0,
                   state == SERVICE_FOUND ? "say what was found: service oil found low and milky."
                                          : "say why it was left: service speed left no tachometer here.");
  for (size_t i = 0; i < SERVICE_ITEMS; i++)
    if (marked[i]) job_say_service(n, service_id(i), state, text);
  return 0;
}

int job_service_read(struct job_news *n, const char *words, struct err *e)
{
  bool marked[SERVICE_ITEMS] = {false};
  char word[40];
  int status;

  while (*(words += strspn(words, " ,:"))) {
    size_t len = strcspn(words, " ,:");
    enum job_service_state state = state_of(words, len);

    if (state != SERVICE_OPEN) return say_marked(n, marked, state, words + len + strspn(words + len, " ,:"), e);
    memset(word, 0, sizeof word);
    memcpy(word, words, len < sizeof word ? len : sizeof word - 1);
    text_lower(word);
    status = mark(word, marked, e);
    if (status) return status;
    words += len;
  }
  return err_set(e, EX_USAGE, NULL, 0, "say how it is: done, found (what), or left (why): service oil done.");
}
