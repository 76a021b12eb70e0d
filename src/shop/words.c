/* words.c - see words.h. */
#include "shop/words.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "shop/words_lexicon.h"

/* The parts of a score: what the saying holds, what it covers of the text, what all sayings of
 * its entry cover of the text. They add to 1. */
static const double of_saying = 0.4, of_text = 0.2, of_entry = 0.4;

/* "starts" is a little like "will not start": it is the same matter. */
static const double contrary = 0.4;

/* A thought of less weight is no complaint of its own. */
static const double enough_weight = 2;
/* Score from which a thought is taken out of talk that as a whole is nothing. */
static const double plain_sentence = 0.6;

/* What can be matched of one kind: several sayings per entry, those of one entry together. */
struct saying { int at; size_t first, count; };
struct sayings {
  struct lexicon *lexicon;
  struct saying *items;
  size_t count, room;
  int *ids; /* tokens of all sayings, one after the other */
  size_t id_count, id_room;
  double *weight; /* per token id: how rare it is */
  double greatest; /* weight of a word that one entry alone would have, or none */
};

static void add_saying(struct sayings *s, int at, const char *text)
{
  struct tokens tokens;
  void *items = s->items, *ids = s->ids;

  lexicon_learn(s->lexicon, text, &tokens);
  if (tokens.count == 0) return;
  mem_grow(&items, &s->room, s->count + 1, sizeof *s->items);
  s->items = items;
  mem_grow(&ids, &s->id_room, s->id_count + tokens.count, sizeof *s->ids);
  s->ids = ids;
  s->items[s->count++] = (struct saying){at, s->id_count, tokens.count};
  for (size_t i = 0; i < tokens.count; i++) s->ids[s->id_count++] = tokens.t[i].id;
}

/* How rare each token is: few entries have a saying that holds it. */
static void weigh_tokens(struct sayings *s)
{
  size_t size = lexicon_size(s->lexicon), entries = 0;
  size_t *last = mem_array(size, sizeof *last), *holding = mem_array(size, sizeof *holding);
  int at = -1;

  for (size_t i = 0; i < s->count; i++) {
    if (s->items[i].at != at) entries++;
    at = s->items[i].at;
    for (size_t j = 0; j < s->items[i].count; j++) {
      int id = s->ids[s->items[i].first + j];

      holding[id] += last[id] != entries; /* each entry once */
      last[id] = entries;
    }
  }
  s->weight = mem_array(size, sizeof *s->weight);
  for (size_t i = 0; i < size; i++)
    s->weight[i] = log((double)(entries + 1) / (double)(holding[i] + 1)) + 0.1;
  s->greatest = log((double)(entries + 1)) + 0.1;
  free(last);
  free(holding);
}

static void sayings_free(struct sayings *s)
{
  lexicon_free(s->lexicon);
  free(s->items);
  free(s->ids);
  free(s->weight);
}

/* The text being matched: per token id how surely it holds it. */
struct asked {
  struct tokens tokens;
  double *holds, all; /* all: weight of its tokens together */
};

static double weight_of(const struct sayings *s, const struct token *t)
{
  return t->id >= 0 ? s->weight[t->id] : s->greatest / 2; /* not known: it may be anything */
}

static void ask(const struct sayings *s, const struct tokens *tokens, struct asked *a)
{
  a->tokens = *tokens;
  a->holds = mem_array(lexicon_size(s->lexicon), sizeof *a->holds);
  a->all = 0;
  for (size_t i = 0; i < a->tokens.count; i++) {
    const struct token *t = &a->tokens.t[i];

    a->all += weight_of(s, t);
    if (t->id < 0) continue;
    a->holds[t->id] = fmax(a->holds[t->id], t->sure);
    a->holds[t->id ^ 1] = fmax(a->holds[t->id ^ 1], t->sure * contrary);
  }
}

/* Share of the saying's weight that the text holds; *weight: the whole. */
static double saying_held(const struct sayings *s, const struct saying *saying, const struct asked *a,
                          double *weight)
{
  double shared = 0;

  *weight = 0;
  for (size_t j = 0; j < saying->count; j++) {
    int id = s->ids[saying->first + j];

    shared += a->holds[id] * s->weight[id];
    *weight += s->weight[id];
  }
  return shared / *weight;
}

/* Share of the text's weight that stands in the sayings from..to. in: an array of zeros per
 * token id, left so. */
static double text_held(const struct sayings *s, size_t from, size_t to, const struct asked *a, double *in)
{
  size_t first = s->items[from].first, last = s->items[to - 1].first + s->items[to - 1].count;
  double shared = 0;

  for (size_t j = first; j < last; j++) {
    in[s->ids[j]] = 1;
    in[s->ids[j] ^ 1] = fmax(in[s->ids[j] ^ 1], contrary);
  }
  for (size_t i = 0; i < a->tokens.count; i++) {
    const struct token *t = &a->tokens.t[i];

    if (t->id >= 0) shared += in[t->id] * t->sure * s->weight[t->id];
  }
  for (size_t j = first; j < last; j++) in[s->ids[j]] = in[s->ids[j] ^ 1] = 0;
  return a->all > 0 ? shared / a->all : 0;
}

static size_t keep_best(struct word_match *matches, size_t count, size_t most, int at, double value)
{
  size_t i = count;

  for (; i > 0 && matches[i - 1].score < value; i--) continue;
  if (i >= most) return count;
  if (count == most) count--;
  memmove(&matches[i + 1], &matches[i], (count - i) * sizeof *matches);
  matches[i] = (struct word_match){at, value};
  return count + 1;
}

/* The best that one entry's sayings from..to give. */
static double entry_score(const struct sayings *s, size_t from, size_t to, const struct asked *a, double *in)
{
  double entry = text_held(s, from, to, a, in), best = 0;

  if (entry <= 0) return 0;
  for (size_t i = from; i < to; i++) {
    double weight, held = saying_held(s, &s->items[i], a, &weight), text, heavy;

    if (held <= 0) continue;
    text = text_held(s, i, i + 1, a, in);
    /* "dead" in a longer text shows less than a saying of several rare words */
    heavy = weight / (weight + s->greatest);
    best = fmax(best, of_saying * held * (heavy + (1 - heavy) * text) + of_text * text + of_entry * entry);
  }
  return best;
}

/* The entries that fit these tokens, best first. fit: per entry what its score is multiplied by;
 * NULL: 1 for all. */
static size_t rank(const struct sayings *s, const struct tokens *tokens, const double *fit,
                   struct word_match *matches, size_t most)
{
  double *in = mem_array(lexicon_size(s->lexicon), sizeof *in);
  struct asked a;
  size_t count = 0;

  ask(s, tokens, &a);
  for (size_t from = 0, to; from < s->count; from = to) {
    int at = s->items[from].at;
    double value;

    for (to = from; to < s->count && s->items[to].at == at; to++) continue;
    value = fit && fit[at] == 0 ? 0 : entry_score(s, from, to, &a, in) * (fit ? fit[at] : 1);
    if (value > 0.05) count = keep_best(matches, count, most, at, value);
  }
  for (size_t i = 0; i < count; i++) matches[i].score = fmin(matches[i].score, 1);
  free(in);
  free(a.holds);
  return count;
}

/* Matches and frees the sayings. */
static size_t match(struct sayings *s, const char *text, struct word_match *matches, size_t most)
{
  struct tokens tokens;
  size_t count;

  weigh_tokens(s);
  lexicon_read(s->lexicon, text, &tokens);
  count = rank(s, &tokens, NULL, matches, most);
  sayings_free(s);
  return count;
}

/* ---- complaints ---------------------------------------------------------------------- */

/* Of two complaints that fit alike, the one that only such machines have is meant: "no power" said
 * of a generator. */
static const double only_such_machines = 1.02;

/* What can be complained of; *fit: per complaint, 0 when this machine cannot have it (the caller
 * frees). */
static void complaint_sayings(const struct knowledge *k, const struct bench_case *c, struct sayings *s,
                              double **fit)
{
  size_t open;

  *s = (struct sayings){.lexicon = lexicon_new(k, true)};
  *fit = mem_array(k->complaint_count, sizeof **fit);
  for (size_t i = 0; i < k->complaint_count; i++) {
    const struct complaint *one = &k->complaints[i];

    (*fit)[i] = c && case_needs(c, &one->needs, &open) == TRI_LACKS ? 0
                : c && one->needs.count                             ? only_such_machines
                                                                    : 1;
    add_saying(s, (int)i, one->name);
    add_saying(s, (int)i, one->id);
    for (size_t j = 0; j < one->says.count; j++) add_saying(s, (int)i, one->says.items[j]);
  }
  weigh_tokens(s);
}

enum words_clear words_clear(const struct word_match *matches, size_t count)
{
  double best = count ? matches[0].score : 0, next = count > 1 ? matches[1].score : 0;

  if (best < 0.35) return WORDS_NOTHING;
  if (best > 0.99 && next <= 0.99) return WORDS_CLEAR;
  if (best >= 0.5 && next <= 0.85 * best) return WORDS_CLEAR;
  return best >= 0.5 || next <= 0.7 * best ? WORDS_FAIRLY : WORDS_UNSURE;
}

const char *words_clear_name(enum words_clear c)
{
  static const char *const names[] = {"nothing", "unsure", "fairly", "clear"};

  return names[c];
}

/* Owners mix the two up, so that one may be only another way of putting the other. Not when only
 * one of them says whether the engine runs at all: "stood all winter and will not start" is two. */
static bool is_near(const struct knowledge *k, int a, int b)
{
  bool open_a = strcmp(k->complaints[a].runs, "unknown") == 0;
  bool open_b = strcmp(k->complaints[b].runs, "unknown") == 0;

  if (open_a != open_b) return false;
  for (int both = 0; both < 2; both++) {
    const struct refs *near = &k->complaints[both ? b : a].near;

    for (size_t i = 0; i < near->count; i++)
      if (near->at[i] == (both ? a : b)) return true;
  }
  return false;
}

/* A second complaint in the same breath: a thought that by itself is clearly another complaint,
 * says more than a word or two that stand in many ("... and dies"), and shows little of the first. */
static void look_for_more(const struct knowledge *k, const struct sayings *s, const struct tokens *all,
                          const double *fit, struct words_said *said)
{
  int last = all->count ? all->t[all->count - 1].part : 0;

  for (int part = 0; part <= last; part++) {
    struct tokens some = {.count = 0};
    struct word_match m[3];
    size_t n, first = 0;
    bool known = false;
    double weight = 0;

    for (size_t i = 0; i < all->count; i++)
      if (all->t[i].part == part) {
        weight += weight_of(s, &all->t[i]);
        some.t[some.count++] = all->t[i];
      }
    if (weight < enough_weight || some.count == all->count) continue;
    n = rank(s, &some, fit, m, 3);
    if (n == 0 || m[0].score < 0.6 || words_clear(m, n) != WORDS_CLEAR) continue;
    if (is_near(k, m[0].at, said->best[0].at)) continue;
    while (first < n && m[first].at != said->best[0].at) first++;
    for (size_t i = 0; i < said->more_count; i++) known |= said->more[i] == m[0].at;
    if (first == n && !known && said->more_count < WORDS_MOST_MORE) said->more[said->more_count++] = m[0].at;
  }
}

/* Much talk around one plain sentence ("lent it to my brother, now it will not fire, the oil is
 * right") drowns it: the thought that says most by itself is then what is complained of, but not
 * surely. */
static void look_in_parts(const struct sayings *s, const struct tokens *all, const double *fit,
                          struct words_said *said)
{
  int last = all->count ? all->t[all->count - 1].part : 0;

  for (int part = 0; part <= last; part++) {
    struct tokens some = {.count = 0};
    struct word_match m[WORDS_MOST_BEST];
    size_t n;

    for (size_t i = 0; i < all->count; i++)
      if (all->t[i].part == part) some.t[some.count++] = all->t[i];
    n = rank(s, &some, fit, m, WORDS_MOST_BEST);
    if (n == 0 || m[0].score < plain_sentence || words_clear(m, n) == WORDS_NOTHING) continue;
    if (said->clear != WORDS_NOTHING && m[0].score <= said->best[0].score) continue;
    memcpy(said->best, m, sizeof m);
    said->count = n;
    said->clear = WORDS_UNSURE;
  }
}

void words_complaints(const struct knowledge *k, const struct bench_case *c, const char *text,
                      struct words_said *out)
{
  struct sayings s;
  struct tokens tokens;
  double *fit;

  *out = (struct words_said){.count = 0};
  complaint_sayings(k, c, &s, &fit);
  lexicon_read(s.lexicon, text, &tokens);
  out->count = rank(&s, &tokens, fit, out->best, WORDS_MOST_BEST);
  out->clear = words_clear(out->best, out->count);
  if (out->clear != WORDS_NOTHING) look_for_more(k, &s, &tokens, fit, out);
  else look_in_parts(&s, &tokens, fit, out);
  sayings_free(&s);
  free(fit);
}

/* ---- checks, machines, faults -------------------------------------------------------- */

size_t words_match_checks(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most)
{
  struct sayings s = {.lexicon = lexicon_new(k, false)};

  for (size_t i = 0; i < k->check_count; i++) {
    add_saying(&s, (int)i, k->checks[i].name);
    add_saying(&s, (int)i, k->checks[i].id);
    for (size_t j = 0; j < k->checks[i].also_called.count; j++)
      add_saying(&s, (int)i, k->checks[i].also_called.items[j]);
  }
  return match(&s, text, matches, most);
}

size_t words_match_machines(const struct knowledge *k, const char *text, struct word_match *matches,
                            size_t most)
{
  struct sayings s = {.lexicon = lexicon_new(k, false)};

  for (size_t i = 0; i < k->class_count; i++) {
    add_saying(&s, (int)i, k->classes[i].name);
    for (size_t j = 0; j < k->classes[i].also_called.count; j++)
      add_saying(&s, (int)i, k->classes[i].also_called.items[j]);
  }
  return match(&s, text, matches, most);
}

size_t words_match_faults(const struct knowledge *k, const char *text, struct word_match *matches,
                          size_t most)
{
  struct sayings s = {.lexicon = lexicon_new(k, false)};

  for (size_t i = 0; i < k->fault_count; i++) {
    add_saying(&s, (int)i, k->faults[i].name);
    add_saying(&s, (int)i, k->faults[i].id);
  }
  return match(&s, text, matches, most);
}
