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
static const double enough = 0.3, clear = 0.6, margin = 0.12;

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

/* A name that only half fits is asked about, since making a check costs minutes. */
static int confirmed(struct practice *p, int check, double score)
{
  struct buf q = {0};
  bool yes;

  if (score >= clear) return check;
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
  double best = 0;

  if (exact >= 0) return exact;
  n = words_match_checks(p->k, words, m, MOST * 3);
  if (n && m[0].score >= clear && case_needs(&p->run.c, &p->k->checks[m[0].at].needs, &open) == TRI_LACKS)
    return m[0].at; /* why it cannot be made is said elsewhere */
  for (size_t i = 0; i < n && count < MOST; i++) {
    if (m[i].score < enough || case_needs(&p->run.c, &p->k->checks[m[i].at].needs, &open) == TRI_LACKS)
      continue;
    if (count == 0) best = m[i].score;
    if (m[i].score < best - margin) break;
    names[count] = p->k->checks[m[i].at].name;
    at[count++] = m[i].at;
  }
  if (count == 0) {
    say_no_check(p, words, m, n);
    return -1;
  }
  return count == 1 || best > 0.95 ? confirmed(p, at[0], best) : choose(p, names, at, count);
}

/* Do all words of `words` stand in name? */
static bool holds(const char *name, const char *words)
{
  char copy[200];
  char *rest = copy, *word;

  snprintf(copy, sizeof copy, "%s", words);
  while ((word = strtok_r(rest, " -", &rest)))
    if (!strstr(name, word)) return false;
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
    bench_say("I know no cover called \"%s\"%s%s%s. \"covers\" lists them.", words,
              near ? "; did you mean " : "", near ? near : "", near ? "?" : "");
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

int practice_find_repair(struct practice *p, const char *words)
{
  const struct knowledge *k = p->k;
  const char **ids = mem_array(k->repair_count, sizeof *ids),
             **names = mem_array(k->repair_count, sizeof *names);
  int found, fault;

  for (size_t i = 0; i < k->repair_count; i++) {
    ids[i] = run_repairable(&p->run, (int)i) ? k->repairs[i].id : NULL;
    names[i] = k->repairs[i].name;
  }
  found = by_name(p, ids, names, k->repair_count, words);
  free(ids);
  free(names);
  if (found == NONE_OF_THESE && !p->again)
    bench_say("Then name it otherwise: by the part, or by what would be wrong with it.");
  if (found >= 0 || found == NONE_OF_THESE) return found;
  fault = practice_find_fault(p, words); /* "repair dirty jet": what puts that right */
  return fault >= 0 ? k->faults[fault].repair : -1;
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

static bool read_fix(struct practice *p, char *line, struct entry *out)
{
  const char *rest;

  if (!cut_certainty(line, &out->sure)) return false;
  if (begins(line, "repair", &rest) || begins(line, "replace", &rest) || begins(line, "fit", &rest)) {
    if (wants_name(rest, "repair clean carburettor, 60 %")) return false;
    out->act = ACT_REPAIR;
    out->at = practice_find_repair(p, rest);
  } else if (begins(line, "declare", &rest)) {
    if (wants_name(rest, "declare main jet blocked, 80 %")) return false;
    out->act = ACT_DECLARE;
    out->at = practice_find_fault(p, rest);
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

static bool read_check(struct practice *p, const char *line, struct entry *out)
{
  static const char *const verbs[] = {"check", "ask", "look", "measure", "test", "listen", "try"};
  const char *rest = line;
  char *end;
  unsigned long n = strtoul(line, &end, 10);

  out->act = ACT_CHECK;
  if (*line >= '0' && *line <= '9' && !*end) {
    if (n >= 1 && n <= p->listed_count) {
      out->at = p->listed[n - 1];
      return true;
    }
    bench_say("There is no number %lu; \"checks\" lists what can be done, with numbers.", n);
    return false;
  }
  for (size_t i = 0; i < sizeof verbs / sizeof verbs[0]; i++)
    if (begins(line, verbs[i], &rest) && *rest) break;
    else rest = line;
  if (*rest && rest[strcspn(rest, "0123456789")] && knowledge_find(p->k, ENTRY_CHECK, rest) < 0)
    return without_reading(p, rest, out);
  out->at = practice_find_check(p, rest);
  return out->at >= 0;
}

bool practice_read_entry(struct practice *p, const char *typed, struct entry *out)
{
  char line[400];
  const char *rest;

  *out = (struct entry){.sure = -1, .at = -1};
  snprintf(line, sizeof line, "%s", typed);
  text_lower(line);
  if (begins(line, "lead", &rest) || strcmp(line, "plug lead off") == 0 ||
      strcmp(line, "plug lead on") == 0) {
    *out = (struct entry){.act = ACT_LEAD, .at = strstr(line, "off") == NULL, .sure = -1};
    return true;
  }
  if (begins(line, "wipe", &rest)) out->act = ACT_WIPE;
  else if (strcmp(line, "run") == 0 || strcmp(line, "prove") == 0 || strcmp(line, "run it") == 0)
    out->act = ACT_PROVE;
  else if (strcmp(line, "give up") == 0) out->act = ACT_GIVE_UP;
  else if (begins(line, "repair", &rest) || begins(line, "replace", &rest) ||
           begins(line, "declare", &rest) || begins(line, "fit", &rest))
    return read_fix(p, line, out);
  else if (begins(line, "open", &rest)) {
    if (wants_name(rest, "open air box")) return false;
    out->act = ACT_OPEN;
    out->at = practice_find_cover(p, rest);
    return out->at >= 0;
  } else if ((out->at = unsafe_act(line)) >= 0) out->act = ACT_FORBIDDEN;
  else return read_check(p, line, out);
  return true;
}
