/* practice_find.c - what was meant by free words; see practice.h. */
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "practice/unsafe.h"
#include "shop/words.h"
#include "units/parse.h"

enum { MOST = 6 };
/* Of the score of words: worth offering; clear when nothing else comes near it; clear in any case;
 * as good as the name itself. */
static const double enough = 0.3, clear = 0.6, plain = 0.8, exact_score = 0.95, margin = 0.12, alone = 0.65;

static bool is_yes_or_no(const char *line)
{
  return strcmp(line, "yes") == 0 || strcmp(line, "y") == 0 || strcmp(line, "no") == 0 ||
         strcmp(line, "n") == 0;
}

/* Lets the person choose by number. -1: none of them; any other line is taken as the next. */
static int choose(struct practice *p, const char *const *names, const int *at, size_t count)
{
  int chosen = -1;

  for (size_t i = 0; i < count; i++) printf("  %zu. %s\n", i + 1, names[i]);
  printf("  0. none of these\n");
  for (;;) {
    char *line = terminal_line("which? ");

    if (line && line[0] >= '1' && (size_t)(line[0] - '0') <= count && !line[1]) chosen = at[line[0] - '1'];
    if (!line || !*line || chosen >= 0 || strcmp(line, "0") == 0) {
      free(line);
      return chosen;
    }
    if (isdigit((unsigned char)*line) || is_yes_or_no(line)) {
      bench_say("One of the numbers, please; 0 for none of these.");
      free(line);
      continue;
    }
    free(p->again);
    p->again = line;
    return -1;
  }
}

/* A name that only half fits, or that others fit nearly as well, is asked about, since making a check
 * costs minutes. next: the score of the one after it. */
static int confirmed(struct practice *p, int check, double score, double next)
{
  struct buf q = {0};
  bool yes;

  if (score >= plain || (score >= clear && next <= alone * score)) return check;
  buf_addf(&q, "Do you mean: %s?", p->k->checks[check].name);
  yes = practice_yes(p, buf_text(&q));
  buf_free(&q);
  return yes ? check : -1;
}

/* Says so, with what comes nearest. */
static void say_no_check(const struct practice *p, const char *words, const struct word_match *m, size_t n)
{
  struct buf b = {0};
  size_t open;

  for (size_t i = 0, near = 0; i < n && near < 3; i++)
    if (case_needs(&p->run.c, &p->k->checks[m[i].at].needs, &open) != TRI_LACKS)
      buf_addf(&b, "%s%s", near++ ? "; " : " Near to it: ", p->k->checks[m[i].at].name);
  if (b.len) buf_add(&b, ".");
  bench_say("I know no check called \"%s\" for this machine.%s \"checks\" lists them; \"help\" has the rest.",
            words, buf_text(&b));
  buf_free(&b);
}

int practice_find_check(struct practice *p, const char *words)
{
  struct word_match m[MOST * 3];
  const char *names[MOST];
  int at[MOST], exact = knowledge_find(p->k, ENTRY_CHECK, words);
  size_t n, count = 0, open;
  double best = 0, next = 0;

  if (exact >= 0) return exact;
  n = words_match_checks(p->k, words, m, MOST * 3);
  if (n && m[0].score >= plain && case_needs(&p->run.c, &p->k->checks[m[0].at].needs, &open) == TRI_LACKS)
    return m[0].at; /* why it cannot be made is said elsewhere */
  for (size_t i = 0; i < n && count < MOST; i++) {
    if (m[i].score < enough || case_needs(&p->run.c, &p->k->checks[m[i].at].needs, &open) == TRI_LACKS)
      continue;
    if (count == 0) best = m[i].score;
    if (m[i].score < best - margin) {
      next = m[i].score;
      break;
    }
    names[count] = p->k->checks[m[i].at].name;
    at[count++] = m[i].at;
  }
  if (count == 0) {
    say_no_check(p, words, m, n);
    return -1;
  }
  return count == 1 || best > exact_score ? confirmed(p, at[0], best, next) : choose(p, names, at, count);
}

/* Do all words of `words` stand in name, "the" and "a" left out? */
static bool holds(const char *name, const char *words)
{
  char copy[200], small[200];
  char *rest = copy, *word;

  snprintf(copy, sizeof copy, "%s", words);
  snprintf(small, sizeof small, "%s", name); /* "Fit new rings" */
  text_lower(small);
  while ((word = strtok_r(rest, " -", &rest)))
    if (strcmp(word, "the") != 0 && strcmp(word, "a") != 0 && !strstr(small, word)) return false;
  return true;
}

enum { NONE_OF_THESE = -3 };

/* An entry by id or by words in its name; ids that are NULL are not for this machine. -1 when there
 * is none, NONE_OF_THESE when several were offered and none was taken. */
static int by_name(struct practice *p, const char *const *ids, const char *const *names, size_t count,
                   const char *words)
{
  const char *offered[MOST];
  int at[MOST];
  size_t n = 0;

  for (size_t i = 0; i < count; i++)
    if (ids[i] && (strcmp(ids[i], words) == 0 || strcmp(names[i], words) == 0)) return (int)i;
  for (size_t i = 0; i < count && n < MOST; i++)
    if (ids[i] && *words && holds(names[i], words)) {
      offered[n] = names[i];
      at[n++] = (int)i;
    }
  if (n == 0) return -1;
  if (n == 1) return at[0];
  at[0] = choose(p, offered, at, n);
  return at[0] < 0 ? NONE_OF_THESE : at[0];
}

int practice_find_cover(struct practice *p, const char *words)
{
  const struct knowledge *k = p->k;
  const char **ids = mem_array(k->cover_count, sizeof *ids),
             **names = mem_array(k->cover_count, sizeof *names), *near;
  int found;

  for (size_t i = 0; i < k->cover_count; i++) {
    ids[i] = k->covers[i].id;
    names[i] = k->covers[i].name;
  }
  found = by_name(p, ids, names, k->cover_count, words);
  if (found < 0 && !p->again) {
    near = found == NONE_OF_THESE ? NULL : text_nearest(words, ids, k->cover_count);
    bench_say("I know no cover called \"%s\"%s%s%s \"covers\" lists them.", words,
              near ? "; did you mean \"" : ".", near ? near : "", near ? "\"?" : "");
  }
  free(ids);
  free(names);
  return found;
}

/* "nothing", "nothing wrong", "nothing broken". */
static bool means_nothing(const char *words)
{
  return strcmp(words, "nothing") == 0 || strcmp(words, "nothing wrong") == 0 ||
         strcmp(words, "nothing broken") == 0;
}

int practice_find_fault(struct practice *p, const char *words)
{
  struct word_match m[MOST];
  const char *names[MOST];
  int at[MOST], exact = knowledge_find(p->k, ENTRY_FAULT, words);
  size_t n, count = 0, open;

  if (means_nothing(words)) return -2;
  if (exact >= 0) return exact;
  n = words_match_faults(p->k, words, m, MOST);
  for (size_t i = 0; i < n; i++) {
    if (m[i].score < enough || case_needs(&p->run.c, &p->k->faults[m[i].at].needs, &open) == TRI_LACKS)
      continue;
    if (count && m[i].score < m[0].score - margin) break;
    names[count] = p->k->faults[m[i].at].name;
    at[count++] = m[i].at;
  }
  if (count == 0) {
    bench_say("I know no cause called \"%s\" for this machine. \"pullcord list faults\" names them all.",
              words);
    return -1;
  }
  return count == 1 || m[0].score > 0.95 ? at[0] : choose(p, names, at, count);
}

/* "repair dirty jet": what puts that right, by the names of the repairs. -1: nothing is near. */
static int by_what_is_wrong(struct practice *p, const char *words)
{
  struct word_match m[MOST * 2];
  const char *names[MOST];
  int at[MOST];
  size_t n = words_match_faults(p->k, words, m, MOST * 2), count = 0, open;

  for (size_t i = 0; i < n && count < MOST; i++) {
    int repair = p->k->faults[m[i].at].repair;
    bool had = false;

    if (m[i].score < enough || case_needs(&p->run.c, &p->k->faults[m[i].at].needs, &open) == TRI_LACKS)
      continue;
    if (count && m[i].score < m[0].score - 2 * margin) break;
    for (size_t j = 0; j < count; j++) had = had || at[j] == repair;
    if (had) continue;
    names[count] = p->k->repairs[repair].name;
    at[count++] = repair;
  }
  if (count == 0) return -1;
  if (count == 1) return at[0];
  at[0] = choose(p, names, at, count);
  return at[0] < 0 ? NONE_OF_THESE : at[0];
}

int practice_find_repair(struct practice *p, const char *words)
{
  const struct knowledge *k = p->k;
  const char **ids = mem_array(k->repair_count, sizeof *ids),
             **names = mem_array(k->repair_count, sizeof *names);
  int found;

  for (size_t i = 0; i < k->repair_count; i++) {
    ids[i] = run_repairable(&p->run, (int)i) ? k->repairs[i].id : NULL;
    names[i] = k->repairs[i].name;
  }
  found = by_name(p, ids, names, k->repair_count, words);
  free(ids);
  free(names);
  if (found == -1) found = by_what_is_wrong(p, words);
  if (found == -1 && !p->again)
    bench_say(
        "I know nothing to be done on this machine called \"%s\". Name the part (repair main jet), or what "
        "would be wrong with it (repair fuel stale).",
        words);
  if (found == NONE_OF_THESE && !p->again)
    bench_say("Then name it otherwise: by the part, or by what would be wrong with it.");
  return found;
}

/* ---- a line as an entry ----------------------------------------------------------------- */

/* Cuts a trailing ", 80 %" off; -1 when there is none. False when it is no share of 100. */
static bool cut_certainty(char *line, double *sure)
{
  size_t n = strlen(line);
  char *start;

  *sure = -1;
  while (n && strchr(" %", line[n - 1])) n--;
  start = line + n;
  while (start > line && (isdigit((unsigned char)start[-1]) || start[-1] == '.')) start--;
  if (start == line + n || start == line || !strchr(" ,", start[-1])) return true;
  *sure = strtod(start, NULL) / 100;
  while (start > line && strchr(" ,", start[-1])) start--;
  *start = '\0';
  if (*sure <= 1) return true;
  bench_say("How sure you are goes from 0 to 100 %%.");
  return false;
}

/* True when the line begins with the word; *rest is what follows. */
static bool begins(const char *line, const char *word, const char **rest)
{
  size_t n = strlen(word);

  if (strncmp(line, word, n) != 0 || (line[n] && line[n] != ' ')) return false;
  *rest = line + n;
  while (**rest == ' ') (*rest)++;
  return true;
}

static bool wants_name(const char *rest, const char *example)
{
  if (*rest) return false;
  bench_say("Say which: %s.", example);
  return true;
}

/* "at the ", "whether ": words before the thing that is meant. */
static const char *past_small_words(const char *line)
{
  static const char *const small[] = {"at",      "for",   "the", "a",   "an",   "to",   "if",
                                      "whether", "about", "him", "her", "them", "owner"};
  const char *rest;

  for (size_t i = 0; i < sizeof small / sizeof small[0]; i++)
    if (begins(line, small[i], &rest) && *rest) {
      line = rest;
      i = (size_t)-1;
    }
  return line;
}

static bool read_fix(struct practice *p, char *line, struct entry *out)
{
  const char *rest;

  if (!cut_certainty(line, &out->sure)) return false;
  if (begins(line, "repair", &rest) || begins(line, "replace", &rest) || begins(line, "fit", &rest)) {
    if (wants_name(rest, "repair clean main jet, 60 %")) return false;
    out->act = ACT_REPAIR;
    out->at = practice_find_repair(p, past_small_words(rest));
  } else if (begins(line, "declare", &rest)) {
    if (wants_name(rest, "declare main jet blocked, 80 %")) return false;
    out->act = ACT_DECLARE;
    out->at = practice_find_fault(p, rest);
  } else {
    out->act = ACT_REPAIR;
    out->at = practice_find_repair(p, line);
  }
  return out->at >= 0 || out->at == -2;
}

/* "compression 88 psi", as at the bench: here the machine gives the reading. The number goes, its
 * unit is looked at, and the check is asked about. False: no check after all. */
static bool without_reading(struct practice *p, const char *line, struct entry *out)
{
  char name[400];
  struct amount amount;
  struct buf q = {0};
  struct err e = {0};
  const struct check *c;
  bool yes;

  snprintf(name, sizeof name, "%.*s", (int)strcspn(line, "0123456789"), line);
  for (size_t n = strlen(name); n && strchr(" :=,", name[n - 1]); n--) name[n - 1] = '\0';
  out->at = practice_find_check(p, *name ? name : line);
  if (out->at < 0) return false;
  c = &p->k->checks[out->at];
  if (c->kind == KIND_MEASURE &&
      amount_parse(line + strcspn(line, "0123456789"), strlen(line + strcspn(line, "0123456789")),
                   c->quantity, c->unit, &amount, &e))
    bench_say("%s", e.text);
  bench_say("Here you need not give the reading: you make the check, and the machine shows what it shows.");
  buf_addf(&q, "Make it: %s?", c->name);
  yes = practice_yes(p, buf_text(&q));
  buf_free(&q);
  return yes;
}

bool practice_names_check(const struct practice *p, const char *line)
{
  struct word_match m;

  return words_match_checks(p->k, line, &m, 1) == 1 && m.score >= exact_score;
}

/* A number of the list that was shown last. */
static bool read_number(const struct practice *p, unsigned long n, struct entry *out)
{
  if (n >= 1 && n <= p->listed_count) {
    out->at = p->listed[n - 1];
    return true;
  }
  bench_say("There is no number %lu; \"checks\" lists what can be done, with numbers.", n);
  return false;
}

static bool read_check(struct practice *p, const char *line, struct entry *out)
{
  static const char *const verbs[] = {"check", "ask", "look", "measure", "test", "listen", "try", "inspect"};
  const char *rest = line;
  char *end;
  unsigned long n = strtoul(line, &end, 10);

  out->act = ACT_CHECK;
  if (*line >= '0' && *line <= '9' && !*end) return read_number(p, n, out);
  for (size_t i = 0; i < sizeof verbs / sizeof verbs[0] && !practice_names_check(p, line); i++)
    if (begins(line, verbs[i], &rest) && *rest) {
      rest = past_small_words(rest);
      break;
    } else {
      rest = line;
    }
  if (*rest && rest[strcspn(rest, "0123456789")] && knowledge_find(p->k, ENTRY_CHECK, rest) < 0)
    return without_reading(p, rest, out);
  out->at = practice_find_check(p, rest);
  return out->at >= 0;
}

/* "take the plug lead off", "lead on": 1 on, 0 off, -1 something else. */
static int lead_wanted(const char *line)
{
  static const char *const off[] = {"off", "disconnect", "pull", "remove", "unplug"};
  static const char *const on[] = {"on", "back", "refit", "connect"};
  const char *rest, *lead = strstr(line, "lead");

  if (begins(line, "lead", &rest)) return strstr(line, "off") == NULL;
  if (!lead || (lead[4] && lead[4] != ' ')) return -1;
  for (size_t i = 0; i < sizeof off / sizeof off[0]; i++)
    if (strstr(line, off[i])) return 0;
  for (size_t i = 0; i < sizeof on / sizeof on[0]; i++)
    if (begins(line, on[i], &rest) || strcmp(lead + 4 + (lead[4] == ' '), on[i]) == 0) return 1;
  return -1;
}

/* "clean the air filter", "new plug", unless a check is called so: "drain with all off". */
static bool means_repair(const struct practice *p, const char *line)
{
  static const char *const verbs[] = {"clean", "change", "adjust", "tighten", "sharpen", "drain",
                                      "swap",  "renew",  "fix",    "free",    "grind",   "charge"};
  const char *rest;

  for (size_t i = 0; i < sizeof verbs / sizeof verbs[0]; i++)
    if (begins(line, verbs[i], &rest) && *rest) return !practice_names_check(p, line);
  return false;
}

bool practice_read_entry(struct practice *p, const char *typed, struct entry *out)
{
  char line[400];
  const char *rest;
  int lead;

  *out = (struct entry){.sure = -1, .at = -1};
  snprintf(line, sizeof line, "%s", typed);
  text_lower(line);
  lead = lead_wanted(line);
  if (lead >= 0 && !practice_names_check(p, line)) {
    *out = (struct entry){.act = ACT_LEAD, .at = lead, .sure = -1};
    return true;
  }
  if (begins(line, "wipe", &rest) || begins(line, "mop", &rest)) out->act = ACT_WIPE;
  else if (strcmp(line, "run") == 0 || strcmp(line, "prove") == 0 || strcmp(line, "run it") == 0)
    out->act = ACT_PROVE;
  else if (begins(line, "give up", &rest)) out->act = ACT_GIVE_UP;
  else if (begins(line, "repair", &rest) || begins(line, "replace", &rest) ||
           begins(line, "declare", &rest) || begins(line, "fit", &rest))
    return read_fix(p, line, out);
  else if (begins(line, "open", &rest)) {
    if (wants_name(rest, "open air box")) return false;
    out->act = ACT_OPEN;
    out->at = practice_find_cover(p, rest);
    return out->at >= 0;
  } else if ((out->at = unsafe_act(line)) >= 0) out->act = ACT_FORBIDDEN;
  else if (means_repair(p, line)) return read_fix(p, line, out);
  else return read_check(p, line, out);
  return true;
}
