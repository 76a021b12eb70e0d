/* bench_ask.c - machine, complaint and features; see bench.h. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/terminal.h"
#include "shop/words.h"

/* A longer list is not read. */
enum { MOST_OFFERED = 3 };

static const double sure_enough = 0.8, worth_offering = 0.25;

void bench_say(const char *format, ...)
{
  struct buf text = {0}, out = {0};
  const char *start;
  va_list args;

  va_start(args, format);
  buf_addv(&text, format, args);
  va_end(args);
  start = buf_text(&text);
  while (*start == ' ') start++; /* text that begins indented stays so */
  text_wrap(&out, start, terminal_width(), start == text.text ? "" : "  ",
            start == text.text ? "  " : "    ");
  terminal_putf("%s\n", buf_text(&out));
  buf_free(&text);
  buf_free(&out);
}

int bench_yes_or_end(const char *question, bool otherwise)
{
  for (;;) {
    struct buf prompt = {0};
    char *line;
    int answer = otherwise;
    bool known = true;

    buf_addf(&prompt, "%s (yes or no%s) ", question, otherwise ? ", enter for yes" : "");
    line = terminal_line(buf_text(&prompt));
    buf_free(&prompt);
    if (!line) return -1;
    text_lower(line);
    if (*line == 'y') answer = 1;
    else if (*line == 'n') answer = 0;
    else known = *line == '\0';
    free(line);
    if (known) return answer;
    bench_say("Type yes or no.");
  }
}

bool bench_yes(const char *question, bool otherwise)
{
  int answer = bench_yes_or_end(question, otherwise);

  return answer < 0 ? otherwise : answer == 1;
}

/* Offers matches by number. Returns the index taken, -1 for none of them, -2 at the end of
 * the input; a line that is no number goes to *again (the caller frees). */
static int offer(const struct word_match *m, size_t count, const char *const *names, char **again)
{
  char *line;

  for (size_t i = 0; i < count; i++) terminal_putf("  %zu. %s\n", i + 1, names[i]);
  terminal_putf("  0. none of these\n");
  line = terminal_line("which? ");
  *again = NULL;
  if (!line) return -2;
  if (line[0] >= '0' && line[0] <= '9' && !line[1]) {
    size_t n = (size_t)(line[0] - '0');

    free(line);
    return n >= 1 && n <= count ? m[n - 1].at : -1;
  }
  if (*line == '\0') {
    free(line);
    return -1;
  }
  *again = line;
  return -1;
}

/* One round of asking: words are matched, the person confirms; clear: the first alone is offered
 * first. -1: ask again. */
static int settle(const struct word_match *m, size_t count, const char *const *names, bool clear, char **again)
{
  *again = NULL;
  if (count == 0) return -1;
  if (clear) {
    struct buf q = {0};
    bool yes;

    buf_addf(&q, "I take that as: %s. Right?", names[0]);
    yes = bench_yes(buf_text(&q), true);
    buf_free(&q);
    if (yes) return m[0].at;
  }
  return offer(m, count, names, again);
}

/* Matches worth offering: not too weak, and not far behind the best. */
static size_t worth(const struct word_match *m, size_t count)
{
  size_t n = 0;

  while (n < count && m[n].score >= worth_offering && m[n].score >= 0.6 * m[0].score) n++;
  return n;
}

static bool clear_first(const struct word_match *m, size_t count)
{
  return count > 0 && m[0].score >= sure_enough && (count == 1 || m[0].score - m[1].score > 0.15);
}

/* Word for word, and one only? */
static bool only_exact(const struct word_match *m, size_t count)
{
  return count > 0 && m[0].score > 0.99 && (count == 1 || m[1].score <= 0.99);
}

static void list_machines(const struct bench *b)
{
  struct buf names = {0};

  for (size_t i = 0; i < b->k->class_count; i++)
    buf_addf(&names, "%s%s", i ? ", " : "", b->k->classes[i].name);
  bench_say("I know: %s.", buf_text(&names));
  buf_free(&names);
}

bool bench_ask_machine(struct bench *b)
{
  char *line = NULL;
  int found = -1;

  while (found < 0) {
    struct word_match m[5];
    const char *names[5];
    size_t count;
    char *again = NULL;

    if (!line) line = terminal_line("What machine is it? (? lists them) ");
    if (!line) return false;
    count = worth(m, words_match_machines(b->k, line, m, 5));
    free(line);
    line = NULL;
    for (size_t i = 0; i < count; i++) names[i] = b->k->classes[m[i].at].name;
    found = count && m[0].score > 0.99 ? m[0].at : settle(m, count, names, clear_first(m, count), &again);
    if (count && found < 0) line = again;
    if (found == -2) return false;
    if (found < 0 && !line) list_machines(b);
  }
  free(line);
  case_set_machine(&b->c, b->k, found, NULL, 0, NULL, 0, &(struct err){0});
  return true;
}

/* What was said in the same breath, each asked for by itself. */
static void ask_for_more(struct bench *b, const struct words_said *said, int found)
{
  for (size_t i = 0; i < said->more_count; i++) {
    struct buf q = {0};

    if (said->more[i] == found) continue;
    buf_addf(&q, "And this as well: %s?", b->k->complaints[said->more[i]].name);
    if (bench_yes(buf_text(&q), true)) {
      case_add_complaint(&b->c, said->more[i]);
      bench_say("Noted as well: %s.", b->k->complaints[said->more[i]].name);
    }
    buf_free(&q);
  }
}

bool bench_ask_complaint(struct bench *b)
{
  struct words_said said = {.count = 0};
  char *line = NULL;
  int found = -1;

  while (found < 0) {
    const char *names[MOST_OFFERED];
    size_t count;
    char *again = NULL;

    if (!line) line = terminal_line("What does the owner say is wrong, in their words? (? if nothing) ");
    if (!line) return false;
    if (strcmp(line, "?") == 0) {
      free(line);
      return true;
    }
    words_complaints(b->k, &b->c, line, &said);
    count = worth(said.best, said.count < MOST_OFFERED ? said.count : MOST_OFFERED);
    free(b->words);
    b->words = line;
    line = NULL;
    for (size_t i = 0; i < count; i++) names[i] = b->k->complaints[said.best[i].at].name;
    found = only_exact(said.best, count) ? said.best[0].at
                                         : settle(said.best, count, names, said.clear == WORDS_CLEAR, &again);
    if (count && found < 0) line = again;
    if (found == -2) return false;
    if (found < 0 && !line)
      bench_say("I know no such complaint. Put it in other words, or type ? and go on with what you see.");
  }
  free(line);
  case_add_complaint(&b->c, found);
  bench_say("Complaint: %s.", b->k->complaints[found].name);
  ask_for_more(b, &said, found);
  return true;
}

void bench_set_feature(struct bench *b, int feature, bool has)
{
  const struct feature *new = &b->k->features[feature];
  int *with = mem_array(b->k->feature_count + 1, sizeof *with);
  int *without = mem_array(b->k->feature_count + 1, sizeof *without);
  size_t n = 0, m = 0;
  struct err e;

  /* what was said before stays, except what the new word displaces */
  for (size_t i = 0; has && new->one_of && i < b->k->feature_count; i++)
    if (strcmp(b->k->features[i].group, new->group) == 0) b->told[i] = TRI_UNKNOWN;
  b->told[feature] = has ? TRI_HAS : TRI_LACKS;
  b->feature_asked[feature] = true;
  for (size_t i = 0; i < b->k->feature_count; i++) {
    if (b->told[i] == TRI_HAS) with[n++] = (int)i;
    if (b->told[i] == TRI_LACKS) without[m++] = (int)i;
  }
  if (case_set_machine(&b->c, b->k, b->c.machine_class, with, n, without, m, &e)) bench_say("%s", e.text);
  free(with);
  free(without);
}
