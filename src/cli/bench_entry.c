/* bench_entry.c - what was typed, taken as a result; see bench.h. */
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "report/answer.h"
#include "shop/words.h"
#include "units/parse.h"

enum { MOST_CANDIDATES = 6 };

/* Below this a name is not taken for a check at all; within the margin of the best one,
 * the person is asked which. */
static const double name_enough = 0.3, margin = 0.12;

static bool applies(const struct bench *b, int check)
{
  size_t open;

  return case_needs(&b->c, &b->k->checks[check].needs, &open) != TRI_LACKS;
}

void bench_record(struct bench *b, struct case_result r)
{
  struct buf said = {0};
  bool opened;

  case_set_result(&b->c, r);
  b->assessed = false;
  b->proved = -1;
  if (b->pending == r.check) b->pending = -1;
  if (r.result < 0) b->fresh = r.check + 1;
  opened = r.sure > 0 && case_take_off(&b->c, b->k, &b->k->checks[r.check].off) > 0;
  answer_result(&said, b->k, &r);
  bench_say("%s: %s.", bench_keep(b) ? "Noted" : "Taken, but not kept yet", buf_text(&said));
  buf_free(&said);
  if (opened)
    bench_say("I take it that what had to come off for this is off now; refit lists what goes back.");
}

/* Cuts a trailing ", fairly" or ", unsure" off the line. */
static double cut_sureness(const struct bench *b, char *line)
{
  static const char *const tails[] = {"fairly sure", "not sure", "fairly", "unsure", "sure"};
  size_t n = strlen(line);
  double sure = 1;

  for (size_t i = 0; i < sizeof tails / sizeof tails[0]; i++) {
    size_t m = strlen(tails[i]);

    if (n <= m || strcmp(line + n - m, tails[i]) != 0 || !strchr(" ,", line[n - m - 1])) continue;
    words_sure(b->k, tails[i], &sure);
    n -= m;
    while (n > 0 && strchr(" ,", line[n - 1])) n--;
    line[n] = '\0';
    break;
  }
  return sure;
}

/* Lets the person choose among checks. -1 when none of them; what is no number is taken as the next
 * line. */
static int choose(const struct bench *b, const int *checks, size_t count)
{
  char *line;
  int chosen = -1;

  for (size_t i = 0; i < count; i++) terminal_putf("  %zu. %s\n", i + 1, b->k->checks[checks[i]].name);
  terminal_putf("  0. none of these\n");
  line = terminal_line("which check? ");
  if (line && line[0] >= '1' && (size_t)(line[0] - '0') <= count && !line[1]) chosen = checks[line[0] - '1'];
  else if (line && !isdigit((unsigned char)line[0]) && *line) terminal_line_again(line);
  free(line);
  return chosen;
}

/* The matches that apply to this machine, best first; returns how many are within the
 * margin of the best. */
static size_t candidates(const struct bench *b, const char *words, int *out, double *best)
{
  struct word_match m[MOST_CANDIDATES * 2];
  size_t n = words_match_checks(b->k, words, m, MOST_CANDIDATES * 2), count = 0;

  *best = 0;
  for (size_t i = 0; i < n && count < MOST_CANDIDATES; i++) {
    if (m[i].score < name_enough || !applies(b, m[i].at)) continue;
    if (count == 0) *best = m[i].score;
    if (m[i].score >= *best - margin) out[count++] = m[i].at;
  }
  return count;
}

int bench_find_check(struct bench *b, const char *words)
{
  int found[MOST_CANDIDATES], exact = knowledge_find(b->k, ENTRY_CHECK, words);
  double best;
  size_t n;

  if (exact >= 0) return exact;
  n = candidates(b, words, found, &best);
  if (n == 0) {
    bench_say(
        "I know no check called \"%s\" for this machine. \"next\" lists what is worth doing; the tab key "
        "completes names.",
        words);
    return -1;
  }
  return n == 1 || best > 0.95 ? found[0] : choose(b, found, n);
}

/* "compression 62 psi", "spark none": tries every place where the name may end and the
 * result begin, and keeps the splits whose result fits the check. */
static size_t split_entries(const struct bench *b, const char *line, struct case_result *out, size_t most)
{
  size_t count = 0;
  double best_score = 0;

  for (const char *p = strchr(line, ' '); p; p = strchr(p + 1, ' ')) {
    int found[MOST_CANDIDATES];
    char head[200];
    double score;
    size_t n;

    if ((size_t)(p - line) >= sizeof head || p[-1] == ',' || p[-1] == ';') break; /* no name goes on there */
    memcpy(head, line, (size_t)(p - line));
    head[p - line] = '\0';
    n = candidates(b, head, found, &score);
    for (size_t i = 0; i < n; i++) {
      struct case_result r;
      struct err e;

      if (words_result(b->k, found[i], p + 1, &r, &e)) continue;
      if (score > best_score + 0.05) count = 0; /* a longer name fits better */
      if (score < best_score - 0.05) continue;
      if (score > best_score) best_score = score;
      if (count < most) out[count++] = r;
    }
  }
  return count;
}

/* The error of the best split, so that "compression 6200 psi" says what is wrong. */
static bool say_split_error(const struct bench *b, const char *line)
{
  for (const char *p = strchr(line, ' '); p; p = strchr(p + 1, ' ')) {
    int found[MOST_CANDIDATES];
    char head[200];
    struct case_result r;
    struct err e;
    double score;
    size_t n;

    if (!isdigit((unsigned char)p[p[1] == '-' ? 2 : 1]) || (size_t)(p - line) >= sizeof head) continue;
    memcpy(head, line, (size_t)(p - line));
    head[p - line] = '\0';
    n = candidates(b, head, found, &score);
    if (n == 0 || b->k->checks[found[0]].kind != KIND_MEASURE) continue;
    if (words_result(b->k, found[0], p + 1, &r, &e) == 0) continue;
    bench_say("%s%s%s", n == 1 ? b->k->checks[found[0]].name : "", n == 1 ? ": " : "", e.text);
    return true;
  }
  return false;
}

/* "0.030 in plug gap": the reading first, then the name. */
static bool reading_first(struct bench *b, const char *line, double sure)
{
  for (const char *p = strchr(line, ' '); p; p = strchr(p + 1, ' ')) {
    int found[MOST_CANDIDATES];
    struct case_result r;
    struct amount a;
    struct err e;
    char head[100];
    double score;

    /* with its unit: the "in" of "0.030 in plug gap" is one */
    if (amount_parse(line, (size_t)(p - line), Q_NONE, NULL, &a, &e)) continue;
    if ((size_t)(p - line) >= sizeof head || candidates(b, p + 1, found, &score) != 1) continue;
    memcpy(head, line, (size_t)(p - line));
    head[p - line] = '\0';
    if (b->k->checks[found[0]].kind != KIND_MEASURE || words_result(b->k, found[0], head, &r, &e)) continue;
    r.sure *= sure;
    bench_record(b, r);
    return true;
  }
  return false;
}

/* The measured checks of a quantity that apply. */
static size_t measured(const struct bench *b, enum quantity quantity, int *found)
{
  size_t n = 0;

  for (size_t i = 0; i < b->k->check_count && n < MOST_CANDIDATES; i++)
    if (b->k->checks[i].kind == KIND_MEASURE && b->k->checks[i].quantity == quantity && applies(b, (int)i))
      found[n++] = (int)i;
  return n;
}

/* A bare reading: which of the measured checks of its quantity was it? */
static bool bare_reading(struct bench *b, const char *line, double sure)
{
  int found[MOST_CANDIDATES], chosen;
  struct case_result r;
  struct amount a;
  struct err e;
  size_t n;

  if (!isdigit((unsigned char)line[0]) && line[0] != '.') return false;
  if (reading_first(b, line, sure)) return true;
  if (amount_parse(line, strlen(line), Q_NONE, NULL, &a, &e)) {
    bench_say("%s", e.text);
    return true;
  }
  n = measured(b, a.unit->quantity, found);
  if (n == 0) {
    bench_say("That is a %s, but nothing measured so applies to this machine.", quantity_name(a.unit->quantity));
    return true;
  }
  if (n > 1) terminal_put("What was measured?\n");
  chosen = n == 1 ? found[0] : choose(b, found, n);
  if (chosen < 0) return true;
  if (words_result(b->k, chosen, line, &r, &e)) {
    bench_say("%s", e.text);
    return true;
  }
  r.sure *= sure;
  bench_record(b, r);
  return true;
}

static bool volunteered(struct bench *b, const char *line, double sure)
{
  struct case_result found[MOST_CANDIDATES];
  size_t n = split_entries(b, line, found, MOST_CANDIDATES), at = 0;

  if (n == 0) return false;
  if (n > 1) {
    int checks[MOST_CANDIDATES], chosen;

    for (size_t i = 0; i < n; i++) checks[i] = found[i].check;
    terminal_putf("Which of these do you mean?\n");
    chosen = choose(b, checks, n);
    if (chosen < 0) return true;
    while (found[at].check != chosen) at++;
  }
  found[at].sure *= sure;
  bench_record(b, found[at]);
  return true;
}

/* The end of the first of several entries on one line, and where the next begins: ", ", "; " and
 * " and " stand between. */
static const char *part_end(const char *line, const char **next)
{
  for (const char *p = line; *p; p++) {
    size_t n = strncmp(p, ", and ", 6) == 0   ? 6
               : strncmp(p, " and ", 5) == 0  ? 5
               : p[0] && strchr(",;", p[0]) && p[1] == ' ' ? 2
                                              : 0;

    if (n == 0) continue;
    *next = p + n;
    return p;
  }
  *next = NULL;
  return line + strlen(line);
}

/* Goes through the parts of a line that are entries by themselves; takes each if `take`. Returns how
 * many there are, and in *unknown how many parts are none. */
static size_t through_parts(struct bench *b, const char *line, bool take, size_t *unknown)
{
  struct case_result found[MOST_CANDIDATES];
  size_t count = 0;

  *unknown = 0;
  for (const char *at = line, *next; at; at = next) {
    const char *end = part_end(at, &next);
    char *part = mem_new((size_t)(end - at) + 1);
    double sure;
    bool known;

    memcpy(part, at, (size_t)(end - at));
    if (next && words_sure(b->k, next, &sure)) next = NULL; /* ", fairly" belongs to the last */
    else sure = cut_sureness(b, part);
    known = split_entries(b, part, found, MOST_CANDIDATES) > 0;
    count += known;
    *unknown += !known;
    if (known && take) volunteered(b, part, sure);
    free(part);
  }
  return count;
}

/* "spark none, compression 62 psi": all of it, when every part is an entry by itself. */
static bool several(struct bench *b, const char *line)
{
  size_t unknown;

  if (through_parts(b, line, false, &unknown) < 2 || unknown) return false;
  through_parts(b, line, true, &unknown);
  return true;
}

/* A slip in the words of an answer, asked back. */
static bool nearly_answered(struct bench *b, const char *line)
{
  const struct check *c = &b->k->checks[b->pending];
  const struct texts *both[] = {&c->labels, &c->results};

  for (int i = 0; i < 2; i++) {
    const char *near = text_nearest(line, both[i]->items, both[i]->count);
    struct buf q = {0};
    struct case_result r;
    bool yes;

    if (!near || words_result(b->k, b->pending, near, &r, &(struct err){0})) continue;
    buf_addf(&q, "You mean: %s?", c->labels.items[r.result]);
    yes = bench_yes(buf_text(&q), true);
    buf_free(&q);
    if (yes) bench_record(b, r);
    return yes;
  }
  return false;
}

/* A line that is no entry: perhaps a check without a result. */
static void no_entry(struct bench *b, const char *line)
{
  int found[MOST_CANDIDATES], check;
  size_t unknown;
  double best;

  if (b->pending >= 0 && nearly_answered(b, line)) return;
  if (through_parts(b, line, false, &unknown) > 0) {
    bench_say("I know only a part of that, so nothing is noted. Type one result at a time.");
    return;
  }
  if (candidates(b, line, found, &best) > 0) {
    check = bench_find_check(b, line);
    if (check < 0) return;
    bench_say("No result in that: nothing is noted. Asked now: %s.", b->k->checks[check].name);
    b->pending = b->chosen = check;
    return;
  }
  bench_say("I do not know what \"%s\" means. Type %san answer, a check and its result (spark jumps), or help.",
            line, b->pending >= 0 ? "the number of " : "");
}

/* What answers the check that is asked. True when it did, or when it was meant to and cannot be. */
static bool answered(struct bench *b, const char *line, double sure)
{
  const struct check *c = &b->k->checks[b->pending];
  struct case_result r;
  struct amount a;
  struct err e = {0}, other;

  if (words_result(b->k, b->pending, line, &r, &e) == 0) {
    r.sure *= sure;
    bench_record(b, r);
    return true;
  }
  if (c->kind == KIND_MEASURE) { /* of its quantity, but not possible */
    if (amount_parse(line, strlen(line), c->quantity, c->unit, &a, &other)) return false;
    bench_say("%s", e.text);
    return true;
  }
  if (strspn(line, "0123456789") != strlen(line)) return false;
  bench_say("There are %zu choices.", c->results.count);
  return true;
}

void bench_entry(struct bench *b, const char *typed)
{
  char *line = mem_new(strlen(typed) + 1), *whole = mem_new(strlen(typed) + 1);
  double sure;
  int asked = b->pending;

  strcpy(line, typed);
  text_lower(line);
  strcpy(whole, line);
  sure = cut_sureness(b, line);
  if (!(b->pending >= 0 && answered(b, line, sure)) && !several(b, whole) && !volunteered(b, line, sure) &&
      !bare_reading(b, line, sure) && !say_split_error(b, line))
    no_entry(b, line);
  free(line);
  free(whole);
  if (asked >= 0 && b->assessed && b->pending == asked) {
    b->silent = true;
    bench_ask_again(b);
  }
}
