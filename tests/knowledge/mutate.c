/* mutate.c - would the tests notice if an entry of the knowledge were taken away? Takes away
 * one sign, one complaint that a fault leads to, or one rule at a time and runs the cases and
 * samples that it can bear on until one of them fails.
 *
 * Usage: mutate CASES RULE-SAMPLES SIGN-SAMPLES [--signs N] [--leads N] [--rules N] [--seed N]
 *               [--least PERCENT] [--list] [--thorough]
 * N is how many are drawn (0 none, "all"; usually 120 each); --list names what goes
 * unnoticed; with --least the status is 1 when a smaller share of one sort is noticed. Cases
 * are run only for what the samples do not notice, with --thorough for all.
 *
 * Signs do not reach the engine, so one assessor serves all cases then; it is checked first
 * that it answers as fresh ones do. Without a rule the engine is made anew. A case is held
 * to be able to notice a sign only when it has a result (or what rules imply) for its check,
 * or its complaint or a neighbour of it: what a sign does to the plan alone is not looked at. */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "expect.h"
#include "knowledge/load.h"
#include "sample.h"
#include "weight.h"

/* A case with what it has to do with: evidence on checks, complaints that count for it, faults
 * that it can have, rules that drew something. */
struct prepared {
  struct case_file file;
  bool *check, *complaint, *fault, *rule;
};

struct bench {
  struct knowledge k;
  struct prepared *cases;
  size_t count, failing;
  struct samples samples;
  struct statements statements;
  struct assessor *assessor; /* for all cases while only signs change */
  bool list, thorough;
};

/* Cases are run for what the samples do not notice; when thorough, for all. */
struct score {
  size_t noticed, by_samples, by_cases, tried;
};

/* SplitMix64 (Steele, Lea and Flood 2014, from memory): the same seed draws the same. */
static uint64_t next_random(uint64_t *state)
{
  uint64_t z = *state += 0x9E3779B97F4A7C15u;

  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
  return z ^ (z >> 31);
}

/* `wanted` of the numbers 0..count-1 in random order, or all in order. The caller frees. */
static size_t *draw(size_t count, size_t *wanted, uint64_t *state)
{
  size_t *all = mem_array(count, sizeof *all);

  for (size_t i = 0; i < count; i++) all[i] = i;
  if (*wanted >= count) {
    *wanted = count;
    return all;
  }
  for (size_t i = 0; i < *wanted; i++) {
    size_t j = i + (size_t)(next_random(state) % (count - i)), t = all[i];

    all[i] = all[j];
    all[j] = t;
  }
  return all;
}

/* ---- cases ---------------------------------------------------------------------------- */

/* Does the case come out as expected, with this assessor or (NULL) a fresh one? */
static bool passes(struct bench *b, const struct prepared *p, struct assessor *assessor,
                   struct assessment *keep)
{
  struct assessor *fresh = NULL;
  struct assessment a;
  struct buf wrong = {0};
  struct err e;
  bool good = false;

  if (!assessor && assessor_open(&b->k, &fresh, &e)) return false;
  if (assess_case(assessor ? assessor : fresh, &p->file.c, &a, &e) == 0) {
    expect_all(&b->k, &p->file, &a, &wrong);
    good = wrong.len == 0;
    if (keep) *keep = a;
    else assessment_free(&a);
  }
  assessor_close(fresh);
  buf_free(&wrong);
  return good;
}

static void note_complaints(const struct knowledge *k, struct prepared *p)
{
  for (size_t i = 0; i < p->file.c.complaint_count; i++) {
    const struct complaint *c = &k->complaints[p->file.c.complaints[i]];

    p->complaint[p->file.c.complaints[i]] = true;
    for (size_t n = 0; n < c->near.count; n++) p->complaint[c->near.at[n]] = true;
  }
}

/* Assesses it with a fresh engine and keeps what bears on it. False when it fails. */
static bool prepare(struct bench *b, struct prepared *p)
{
  const struct knowledge *k = &b->k;
  struct assessment a = {0};
  bool good;

  p->check = mem_array(k->check_count, sizeof(bool));
  p->complaint = mem_array(k->complaint_count, sizeof(bool));
  p->fault = mem_array(k->fault_count, sizeof(bool));
  p->rule = mem_array(k->rule_count, sizeof(bool));
  good = passes(b, p, NULL, &a);
  if (!good) {
    assessment_free(&a);
    return false;
  }
  note_complaints(k, p);
  for (size_t i = 0; i < a.net.evidence_count; i++)
    if (a.net.evidence[i].kind == EVIDENCE_RESULT || a.net.evidence[i].kind == EVIDENCE_IMPLIED)
      p->check[a.net.evidence[i].subject] = true;
  for (size_t f = 0; f < k->fault_count; f++) p->fault[f] = a.net.place_of[f] >= 0;
  for (size_t i = 0; i < a.drawn.count; i++)
    if (a.drawn.items[i].rule >= 0) p->rule[a.drawn.items[i].rule] = true;
  assessment_free(&a);
  if (passes(b, p, b->assessor, NULL)) return true;
  printf("%s: an engine that served another case answers otherwise than a fresh one\n", p->file.path);
  exit(1);
}

static void release(struct prepared *p)
{
  free(p->check);
  free(p->complaint);
  free(p->fault);
  free(p->rule);
  case_file_free(&p->file);
}

static void read_cases(struct bench *b, const char *folder)
{
  size_t found;
  char **files = find_json(folder, &found);

  b->cases = mem_array(found, sizeof *b->cases);
  for (size_t i = 0; i < found; i++) {
    struct prepared p = {0};
    struct err e;

    if (case_file_read(&b->k, files[i], &p.file, &e) == 0) {
      if (prepare(b, &p)) b->cases[b->count++] = p;
      else {
        b->failing++;
        release(&p);
      }
    } else {
      b->failing++;
    }
    free(files[i]);
  }
  free(files);
}

/* ---- taking a sign away ---------------------------------------------------------------- */

static bool bears_on(const struct prepared *p, const struct sign *s)
{
  if (!p->fault[s->fault]) return false;
  return s->check >= 0 ? p->check[s->check] : p->complaint[s->complaint];
}

static void count(struct score *s, bool by_sample, bool by_case)
{
  s->tried++;
  s->by_samples += by_sample;
  s->by_cases += by_case;
  s->noticed += by_sample || by_case;
}

/* Does a case notice that a sign is gone? Those that name its fault come first, for they
 * notice soonest. */
static bool case_notices_sign(struct bench *b, const struct sign *gone)
{
  for (int named = 1; named >= 0; named--)
    for (size_t i = 0; i < b->count; i++)
      if (bears_on(&b->cases[i], gone) &&
          expects_fault(&b->cases[i].file, b->k.faults[gone->fault].id) == (named == 1) &&
          !passes(b, &b->cases[i], b->assessor, NULL))
        return true;
  return false;
}

static void take_sign(struct bench *b, size_t at, struct score *score)
{
  struct knowledge *k = &b->k;
  struct sign gone = k->signs[at];
  const struct statement *statement = statement_find(&b->statements, &gone);
  bool by_sample, by_case;

  memmove(&k->signs[at], &k->signs[at + 1], (k->sign_count - at - 1) * sizeof gone);
  k->sign_count--;
  by_sample = statement && !statement_holds(k, statement);
  by_case = (!by_sample || b->thorough) && case_notices_sign(b, &gone);
  memmove(&k->signs[at + 1], &k->signs[at], (k->sign_count - at) * sizeof gone);
  k->sign_count++;
  k->signs[at] = gone;
  count(score, by_sample, by_case);
  if (!by_sample && !by_case && b->list)
    printf("unnoticed %s:%d: %s %s %s\n", gone.origin.file, gone.origin.line, gone.fault_id,
           gone.check >= 0 ? gone.check_id : "leads to",
           gone.check >= 0 ? gone.result_id : gone.complaint_id);
}

/* Signs of checks, or (leads) complaints that faults lead to. */
static struct score try_signs(struct bench *b, bool leads, size_t wanted, uint64_t *state)
{
  size_t *list = mem_array(b->k.sign_count, sizeof *list), count = 0, *chosen;
  struct score s = {0, 0, 0, 0};

  for (size_t i = 0; i < b->k.sign_count; i++)
    if ((b->k.signs[i].check < 0) == leads) list[count++] = i;
  chosen = draw(count, &wanted, state);
  for (size_t i = 0; i < wanted; i++) take_sign(b, list[chosen[i]], &s);
  free(chosen);
  free(list);
  return s;
}

/* ---- taking a rule away ---------------------------------------------------------------- */

/* The end of the form that starts at text[at], which has passed the reader. */
static size_t form_end(const char *text, size_t at)
{
  size_t depth = 0;

  for (;; at++) {
    if (text[at] == '"') {
      for (at++; text[at] != '"'; at++) at += text[at] == '\\';
    } else if (text[at] == '(') {
      depth++;
    } else if (text[at] == ')' && --depth == 0) {
      return at + 1;
    }
  }
}

/* Where the rule stands in the texts for the engine: text number and byte, or false. */
static bool find_rule(const struct knowledge *k, const char *id, size_t *text, size_t *at)
{
  size_t n = strlen(id);

  for (*text = 0; *text < k->text_count; (*text)++) {
    const char *start = k->texts[*text].text, *p = start;

    while ((p = strstr(p, "(defrule "))) {
      const char *name = p + strlen("(defrule ");

      if (strncmp(name, id, n) == 0 && strchr(" \n\t\r(", name[n])) {
        *at = (size_t)(p - start);
        return true;
      }
      p = name;
    }
  }
  return false;
}

static bool sample_notices(struct bench *b, size_t rule)
{
  bool noticed = false;

  for (size_t i = 0; i < b->samples.count && !noticed; i++) {
    const struct sample *s = &b->samples.items[i];
    struct buf wrong = {0};

    if (s->rule != (int)rule) continue;
    sample_run(&b->k, s, s->fires, s->conclusion, &wrong);
    noticed = wrong.len > 0;
    buf_free(&wrong);
  }
  return noticed;
}

/* Few rules have hundreds of cases; the first that notices is enough. */
static bool case_notices(struct bench *b, size_t rule)
{
  for (size_t i = 0; i < b->count; i++)
    if (b->cases[i].rule[rule] && !passes(b, &b->cases[i], NULL, NULL)) return true;
  return false;
}

static void take_rule(struct bench *b, size_t rule, struct score *score)
{
  const struct rule_card *card = &b->k.rules[rule];
  struct rule_text old;
  size_t text, at;
  char *changed;
  bool by_sample, by_case;

  if (!find_rule(&b->k, card->id, &text, &at)) {
    printf("rule %s is not among the texts for the engine\n", card->id);
    exit(1);
  }
  old = b->k.texts[text];
  changed = mem_new(old.len + 1);
  memcpy(changed, old.text, old.len);
  for (size_t i = at, end = form_end(old.text, at); i < end; i++)
    if (changed[i] != '\n') changed[i] = ' ';
  b->k.texts[text].text = changed;
  by_sample = sample_notices(b, rule);
  by_case = (!by_sample || b->thorough) && case_notices(b, rule);
  b->k.texts[text] = old;
  free(changed);
  count(score, by_sample, by_case);
  if (!by_sample && !by_case && b->list)
    printf("unnoticed %s:%d: rule %s\n", card->origin.file, card->origin.line, card->id);
}

static struct score try_rules(struct bench *b, size_t wanted, uint64_t *state)
{
  size_t *chosen = draw(b->k.rule_count, &wanted, state);
  struct score s = {0, 0, 0, 0};

  for (size_t i = 0; i < wanted; i++) take_rule(b, chosen[i], &s);
  free(chosen);
  return s;
}

/* ---- all ------------------------------------------------------------------------------ */

struct wishes {
  size_t signs, leads, rules;
  uint64_t seed;
  double least;
  bool list, thorough;
};

static bool read_wishes(int argc, char **argv, struct wishes *w)
{
  *w = (struct wishes){120, 120, 120, 1, 0, false, false};
  for (int i = 4; i < argc; i++) {
    const char *value = i + 1 < argc ? argv[i + 1] : "";
    size_t number = strcmp(value, "all") == 0 ? (size_t)-1 : (size_t)strtoul(value, NULL, 10);

    if (strcmp(argv[i], "--list") == 0) {
      w->list = true;
      continue;
    }
    if (strcmp(argv[i], "--thorough") == 0) {
      w->thorough = true;
      continue;
    }
    if (strcmp(argv[i], "--signs") == 0) w->signs = number;
    else if (strcmp(argv[i], "--leads") == 0) w->leads = number;
    else if (strcmp(argv[i], "--rules") == 0) w->rules = number;
    else if (strcmp(argv[i], "--seed") == 0) w->seed = number;
    else if (strcmp(argv[i], "--least") == 0) w->least = (double)number;
    else return false;
    i++;
  }
  return argc >= 4;
}

static double print_score(const char *what, struct score s, size_t of)
{
  double share = s.tried ? 100.0 * (double)s.noticed / (double)s.tried : 100;

  printf("%-9s %5zu of %5zu taken away: %5zu noticed, %5.1f %% (%zu by a sample, %zu by a case)\n", what,
         s.tried, of, s.noticed, share, s.by_samples, s.by_cases);
  fflush(stdout);
  return share;
}

/* The smallest share of the three sorts. */
static double try_all(struct bench *b, const struct wishes *w)
{
  uint64_t state = w->seed;
  size_t leads = 0;
  struct score s, l, r, all;
  double worst = 100;

  for (size_t i = 0; i < b->k.sign_count; i++) leads += b->k.signs[i].check < 0;
  printf(
      "seed %llu; %zu cases, %zu rule samples, %zu sign samples; %zu cases fail as it is and are left out\n",
      (unsigned long long)w->seed, b->count, b->samples.count, b->statements.count, b->failing);
  fflush(stdout);
  r = try_rules(b, w->rules, &state);
  worst = fmin(worst, print_score("rules", r, b->k.rule_count));
  s = try_signs(b, false, w->signs, &state);
  worst = fmin(worst, print_score("signs", s, b->k.sign_count - leads));
  l = try_signs(b, true, w->leads, &state);
  worst = fmin(worst, print_score("leads", l, leads));
  all = (struct score){r.noticed + s.noticed + l.noticed, r.by_samples + s.by_samples + l.by_samples,
                       r.by_cases + s.by_cases + l.by_cases, r.tried + s.tried + l.tried};
  print_score("together", all, b->k.rule_count + b->k.sign_count);
  return worst;
}

int main(int argc, char **argv)
{
  struct bench b = {.count = 0};
  struct wishes w;
  struct buf wrong = {0};
  struct err e;
  char message[1200];
  double share;

  if (!read_wishes(argc, argv, &w)) {
    fprintf(stderr,
            "usage: mutate CASES RULE-SAMPLES SIGN-SAMPLES [--signs N] [--leads N] [--rules N] [--seed N] "
            "[--least PERCENT] [--list] [--thorough]\n");
    return 2;
  }
  if (load_knowledge(&b.k, &e) || assessor_open(&b.k, &b.assessor, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  b.list = w.list;
  b.thorough = w.thorough;
  samples_read(&b.k, argv[2], &b.samples, &wrong);
  statements_read(&b.k, argv[3], &b.statements, &wrong);
  read_cases(&b, argv[1]);
  share = try_all(&b, &w);
  printf("%s", buf_text(&wrong));
  buf_free(&wrong);
  for (size_t i = 0; i < b.count; i++) release(&b.cases[i]);
  free(b.cases);
  samples_free(&b.samples);
  statements_free(&b.statements);
  assessor_close(b.assessor);
  knowledge_free(&b.k);
  return share < w.least || b.count == 0;
}
