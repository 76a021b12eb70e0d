/* practice_ask.c - what is asked before a step of a practice run, and after a reading; see
 * practice.h. */
#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"
#include "cli/bench.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "practice/reading.h"
#include "practice/unsafe.h"
#include "report/parts.h"

/* A number from 0 to 100; -1 at the end of the input. */
static double ask_certainty(void)
{
  for (;;) {
    char *line = terminal_line("How sure are you, in per cent (0 to 100)? "), *end;
    double sure;

    if (!line) return -1;
    sure = strtod(line, &end);
    while (*end == ' ' || *end == '%') end++;
    if (isdigit((unsigned char)*line) && *end == '\0' && sure >= 0 && sure <= 100) {
      free(line);
      return sure / 100;
    }
    free(line);
    bench_say("A number, please: 50 is a coin, 100 is certain.");
  }
}

bool practice_yes(struct practice *p, const char *question)
{
  struct buf prompt = {0};
  char *line;
  bool yes;

  buf_addf(&prompt, "%s (yes or no, enter for yes) ", question);
  line = terminal_line(buf_text(&prompt));
  buf_free(&prompt);
  if (!line) return false;
  text_lower(line);
  yes = !*line || strcmp(line, "y") == 0 || strcmp(line, "yes") == 0;
  if (yes || strcmp(line, "n") == 0 || strcmp(line, "no") == 0) {
    free(line);
    return yes;
  }
  free(p->again);
  p->again = line;
  return false;
}

bool practice_unknown(const char *line)
{
  static const char *const words[] = {"?",        "don't know", "dont know", "dont-know", "i don't know",
                                      "not sure", "no idea",    "unsure",    "stuck",     NULL};

  for (size_t i = 0; words[i]; i++)
    if (strcmp(line, words[i]) == 0) return true;
  return false;
}

/* Each caution in full once in a sitting; of those that were read it is enough to be told. */
static void show_cautions(struct practice *p, const struct refs *own, const struct refs *off)
{
  int *ids = mem_array(p->k->caution_count + 1, sizeof *ids);
  size_t count = 0, before = 0;

  if (!p->cautioned) p->cautioned = mem_array(p->k->caution_count + 1, sizeof *p->cautioned);
  part_add_cautions(p->k, &p->run.c, own, off, ids, &count);
  for (size_t i = 0; i < count; i++) {
    if (p->cautioned[ids[i]]) before++;
    else bench_say("CAUTION: %s", p->k->cautions[ids[i]].text);
    p->cautioned[ids[i]] = true;
  }
  if (before)
    bench_say("CAUTION: %zu that you have read already hold%s here too.", before, before == 1 ? "s" : "");
  free(ids);
}

static void show_choices(const struct practice *p, int check)
{
  const struct check *c = &p->k->checks[check];
  struct buf b = {0};

  if (c->kind == KIND_MEASURE) {
    bench_say("It shows a number in %s, and what that is for this engine is yours to judge.", c->unit->name);
    return;
  }
  for (size_t i = 0; i < c->labels.count; i++)
    buf_addf(&b, "%s%zu. %s", i ? "; " : "", i + 1, c->labels.items[i]);
  bench_say("It can show: %s.", buf_text(&b));
  buf_free(&b);
}

/* What each result would mean, as far as it was worked out. */
static void show_meanings(const struct practice *p, int check)
{
  const struct check *c = &p->k->checks[check];
  bool any = false;

  for (size_t i = 0; i < p->run.advice.count; i++) {
    const struct advice_option *o = &p->run.advice.options[i];

    if (o->step.kind != ADVICE_CHECK || o->step.at != check) continue;
    for (size_t r = 0; r < o->result_count; r++, any = true)
      bench_say("  if %s (%.0f in 100): most likely %s", c->labels.items[o->results[r].result],
                100 * o->results[r].chance, debrief_fault(p->k, o->results[r].fault));
  }
  if (!any) bench_say("Hardly any result of it would change what to do next. \"hint\" shows what would.");
}

/* Is what was typed as an expectation meant as the next thing to do? Then it is taken as that. */
static bool is_next_thing(const struct practice *p, const char *line)
{
  static const char *const words[] = {"lead",   "wipe", "mop",     "repair", "declare", "open", "checks",
                                      "covers", "path", "machine", "run",    "give",    "quit", "exit"};
  size_t n = strcspn(line, " ");

  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (strlen(words[i]) == n && strncmp(line, words[i], n) == 0) return true;
  return practice_names_check(p, line);
}

/* The person's words, or NULL: the check is not made after all. */
static char *ask_expectation(struct practice *p, int check)
{
  show_choices(p, check);
  bench_say("What do you expect, and what would it tell you? (don't know; back: the check is not made)");
  for (;;) {
    char *line = terminal_line("expect> ");

    if (!line) return NULL;
    text_lower(line);
    if (practice_unknown(line)) {
      show_meanings(p, check);
      if (practice_yes(p, "Make it?")) return line;
      free(line);
      return NULL;
    }
    if (strcmp(line, "how") == 0) {
      practice_show_how(p, check);
    } else if (strcmp(line, "hint") == 0) {
      practice_show_hint(p);
    } else if (strcmp(line, "back") == 0 || strcmp(line, "no") == 0 || strcmp(line, "help") == 0) {
      if (line[0] == 'h')
        bench_say("Say it in a few words (\"sound, so not the coil\"), or don't know, how, hint, back.");
      else {
        free(line);
        return NULL;
      }
    } else if (is_next_thing(p, line)) {
      free(p->again);
      p->again = line;
      return NULL;
    } else if (*line) {
      return line;
    } else {
      bench_say("A few words will do: a guess that was said can be learned from. Or: don't know, how, back.");
    }
    free(line);
  }
}

static bool ask_repair(struct practice *p, const struct entry *entry)
{
  int repair = entry->act == ACT_REPAIR ? entry->at : p->k->faults[entry->at].repair;
  double parts, minutes = run_minutes(&p->run, entry, &parts);
  struct buf q = {0};

  if (entry->act == ACT_DECLARE) buf_addf(&q, "You declare: %s. ", p->k->faults[entry->at].name);
  if (entry->act == ACT_DECLARE && run_not_worth_it(&p->run, entry->at))
    buf_addf(&q, "That is more than the machine is worth; it is told to the owner: %.0f minutes", minutes);
  else
    buf_addf(&q, "To %c%s: %.0f minutes", tolower((unsigned char)*p->k->repairs[repair].name),
             p->k->repairs[repair].name + 1, minutes);
  if (parts > 0) buf_addf(&q, ", parts %.0f", parts);
  bench_say("%s.", buf_text(&q));
  buf_free(&q);
  return practice_yes(p, "Do it?");
}

/* In a guided run one is asked once more before an act that hurts; what is typed instead of yes or no
 * is taken as the next thing. */
static bool thought_of_safety(struct practice *p, const struct entry *entry)
{
  char why[600], *line;
  bool yes;

  if (p->record.sitting.level != LEVEL_GUIDED || entry->act == ACT_FORBIDDEN ||
      !unsafe_now(&p->run, entry, why, sizeof why))
    return true;
  bench_say(
      "Stop and think: plug lead %s%s. Is it safe to do as things stand? (yes, no, or what comes first)",
      p->run.lead_off ? "off" : "on", p->run.spilt ? ", petrol spilt" : "");
  line = terminal_line("safe? ");
  if (!line) return false;
  text_lower(line);
  yes = strcmp(line, "y") == 0 || strcmp(line, "yes") == 0;
  if (yes || !*line || strcmp(line, "n") == 0 || strcmp(line, "no") == 0) {
    free(line);
    return yes;
  }
  free(p->again);
  p->again = line;
  return false;
}

bool practice_prepare(struct practice *p, struct entry *entry, char **expect)
{
  int repair = entry->act == ACT_REPAIR                      ? entry->at
               : entry->act == ACT_DECLARE && entry->at >= 0 ? p->k->faults[entry->at].repair
                                                             : -1;

  if (p->record.sitting.level == LEVEL_GUIDED && entry->act == ACT_CHECK)
    show_cautions(p, &p->k->checks[entry->at].cautions, &p->k->checks[entry->at].off);
  if (p->record.sitting.level == LEVEL_GUIDED && repair >= 0)
    show_cautions(p, &p->k->repairs[repair].cautions, &p->k->repairs[repair].off);
  if (!thought_of_safety(p, entry)) return false;
  if (p->record.sitting.level == LEVEL_GUIDED && entry->act == ACT_CHECK) {
    *expect = ask_expectation(p, entry->at);
    if (!*expect) return false;
    entry->expect = *expect;
  }
  if ((entry->act == ACT_REPAIR || (entry->act == ACT_DECLARE && entry->at >= 0)) && !ask_repair(p, entry))
    return false;
  if (entry->act == ACT_DECLARE && entry->sure < 0) {
    entry->sure = ask_certainty();
    return entry->sure >= 0;
  }
  return true;
}

/* The share of the longer words of a label that stand in the text. */
static double share_in(const char *label, const char *text)
{
  char copy[200];
  char *rest = copy, *word;
  double all = 0, in = 0;

  snprintf(copy, sizeof copy, "%s", label);
  text_lower(copy);
  while ((word = strtok_r(rest, " ,;:()-", &rest))) {
    if (strlen(word) < 2) continue;
    all += (double)strlen(word);
    if (strstr(text, word)) in += (double)strlen(word);
  }
  return all > 0 ? in / all : 0;
}

/* How far words and label are the same: the share of the label that was said, or of the first thing
 * said ("sharp, so it is not the chain") that stands in the label. */
static double likeness(const char *label, const char *text)
{
  char small[200], first[200];
  double said = share_in(label, text), back;

  snprintf(small, sizeof small, "%s", label);
  text_lower(small);
  snprintf(first, sizeof first, "%.*s", (int)strcspn(text, ",;."), text);
  back = share_in(first, small);
  if (strncmp(small, first, strlen(first)) == 0) back += 0.1; /* "jumps" is rather "jumps every time" */
  return fmax(said, back);
}

/* The result that the person's words name, by number or by its words; -1 when that is not clear, as
 * where something is denied. */
static int expected_result(const struct check *c, const char *text)
{
  char *end;
  unsigned long n = strtoul(text, &end, 10);
  double best = 0.3;
  int found = -1;

  if (n >= 1 && n <= c->labels.count && c->kind != KIND_MEASURE && (*end == '\0' || strchr(" .,;", *end)))
    return (int)n - 1;
  if (strncmp(text, "not ", 4) == 0) return -1;
  for (size_t i = 0; i < c->labels.count; i++) {
    double share = likeness(c->labels.items[i], text);

    if (share < best) continue;
    found = share > best ? (int)i : -1;
    best = share;
  }
  return found;
}

void practice_compare(const struct practice *p, const struct step *s)
{
  const struct check *c = &p->k->checks[s->entry.at];
  int expected;

  if (s->entry.act != ACT_CHECK || !s->expect || practice_unknown(s->expect) || s->falls_on < 0) return;
  expected = expected_result(c, s->expect);
  if (expected < 0)
    bench_say("You expected: %s. Does this fit it? If not, which cause has just become less likely?",
              s->expect);
  else if (expected == s->falls_on) bench_say("As you expected.");
  else
    bench_say("You expected: %s. It shows: %s. Which cause that you had in mind does that speak against?",
              c->labels.items[expected], c->labels.items[s->falls_on]);
}

/* Does the reading lie within the instrument's error of the limit to that result? */
static bool near_limit(const struct practice *p, const struct step *s, int said)
{
  const struct bands *b = reading_bands(p->k, &p->run.hidden.machine, s->entry.at);

  for (size_t i = 0; b && i < b->limits.count; i++) {
    bool beside = (b->result_at[i] == said && b->result_at[i + 1] == s->falls_on) ||
                  (b->result_at[i] == s->falls_on && b->result_at[i + 1] == said);

    if (beside && fabs(s->result.value - b->limits.items[i]) <= p->k->checks[s->entry.at].tolerance)
      return true;
  }
  return false;
}

void practice_judge_reading(const struct practice *p, const struct step *s)
{
  const struct check *c = &p->k->checks[s->entry.at];
  char *line, *end;
  unsigned long n;

  if (s->entry.act != ACT_CHECK || s->result.result >= 0 || s->falls_on < 0) return;
  for (size_t i = 0; i < c->labels.count; i++) printf("  %zu. %s\n", i + 1, c->labels.items[i]);
  line = terminal_line("What is that for this engine? ");
  if (!line) return;
  text_lower(line);
  n = strtoul(line, &end, 10);
  if (n < 1 || n > c->labels.count || *end) n = (unsigned long)(expected_result(c, line) + 1);
  if (n >= 1) {
    if ((int)n - 1 == s->falls_on) bench_say("So it is.");
    else if (near_limit(p, s, (int)n - 1))
      bench_say(
          "That may be said too: it lies on the limit, within what the instrument is off by. Such a reading "
          "weighs little either way.");
    else bench_say("Not quite.");
  }
  free(line);
}
