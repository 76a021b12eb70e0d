/* read.c - from the words of a command line to the values of a calculation; see work.h. */
#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <strings.h>

#include "arith/recipes.h"
#include "base/text.h"
#include "units/number.h"

enum { TOKENS = WORK_INPUTS + 4 }; /* a few more than can be right, so that the message can say so */

/* One value as typed, put together from its words. */
struct token {
  char name[32]; /* "" when it was not named */
  char text[SPELL_ROOM];
};

static int input_count(const struct work_recipe *r)
{
  int n = 0;

  while (n < WORK_INPUTS && r->inputs[n].name) n++;
  return n;
}

/* ---- words into values ------------------------------------------------------------------ */

/* Is `word` one of the words of `list`, parted by spaces? In any case. */
static bool listed(const char *word, const char *list)
{
  size_t len = strlen(word);

  while (list && *list) {
    size_t n = strcspn(list, " ");

    if (n == len && strncasecmp(word, list, n) == 0) return true;
    list += n + (list[n] == ' ');
  }
  return false;
}

static bool choice_of(const struct work_recipe *r, const char *word)
{
  for (int i = 0; i < input_count(r); i++)
    if (listed(word, r->inputs[i].words)) return true;
  return false;
}

/* Length of the name in "name=value", 0 when there is none. */
static size_t named(const char *word)
{
  size_t n = strspn(word, "abcdefghijklmnopqrstuvwxyz-");

  return word[n] == '=' ? n : 0;
}

static bool is_digit(char c) { return isdigit((unsigned char)c) != 0; }

/* Is c, in any case, a letter that may stand before a number here (E10, M14)? Elsewhere letters with
 * digits are units (in H2O). */
static bool letter_of(const struct work_recipe *r, char c)
{
  for (int i = 0; i < input_count(r); i++)
    if (r->inputs[i].letter && r->inputs[i].letter == toupper((unsigned char)c)) return true;
  return false;
}

/* Does a number begin here: 5, -5, .5, E10? */
static bool numeric(const struct work_recipe *r, const char *w)
{
  if (is_digit(*w)) return true;
  return *w && (strchr("+-.,", *w) || letter_of(r, *w)) && is_digit(w[1]);
}

/* Does a number word go on with what stands before it: "1" "1/2", "8 to" "1", "SAE" "30",
 * "ratio=" "8:1"? */
static bool goes_on(const char *before, const char *word)
{
  size_t len = strlen(before), digits = strspn(word, "0123456789");

  if (len == 0 || (len > 3 && strcmp(before + len - 3, " to") == 0)) return true;
  if (strcasecmp(before, "sae") == 0) return true;
  return before[strspn(before, "0123456789")] == '\0' && digits > 0 && word[digits] == '/' &&
         is_digit(word[digits + 1]);
}

static bool begins(const struct work_recipe *r, const struct token *current, const char *word)
{
  char plain[SPELL_ROOM];
  size_t bad;

  if (!spell_plain(word, strlen(word), plain, &bad)) snprintf(plain, sizeof plain, "%.80s", word);
  if (named(word) || choice_of(r, word)) return true;
  if (!current || choice_of(r, current->text)) return true;
  return numeric(r, plain) && !goes_on(current->text, plain);
}

/* Adds one more word to the text of a value; false when it gets too long. */
static bool lengthen(struct token *t, const char *word)
{
  size_t len = strlen(t->text);

  if (len + 1 + strlen(word) > SPELL_LONGEST) return false;
  snprintf(t->text + len, sizeof t->text - len, "%s%s", len ? " " : "", word);
  return true;
}

static int group(const struct work_recipe *r, const char *const *words, int count, struct token *tokens,
                 int *n, struct err *e)
{
  *n = 0;
  for (int i = 0; i < count; i++) {
    const char *word = words[i];
    size_t name = named(word);

    if (begins(r, *n ? &tokens[*n - 1] : NULL, word)) {
      if (*n == TOKENS) return err_set(e, EX_USAGE, NULL, 0, "\"%.40s\" is one value too many.", word);
      tokens[*n] = (struct token){0};
      if (name) snprintf(tokens[*n].name, sizeof tokens[*n].name, "%.*s", (int)(name < 31 ? name : 31), word);
      word += name ? name + 1 : 0;
      ++*n;
    }
    if (!lengthen(&tokens[*n - 1], word))
      return err_set(e, EX_DATAERR, NULL, 0, "\"%.40s...\" is too long for a reading.", word);
  }
  return 0;
}

/* ---- a value for an input --------------------------------------------------------------- */

static int read_word(const struct work_input *in, const char *text, struct work_value *v, struct err *e)
{
  if (in->words && !listed(text, in->words))
    return err_set(e, EX_DATAERR, NULL, 0, "%s: \"%.40s\" is none of: %s.", in->name, text, in->words);
  v->si = (double)NAN;
  snprintf(v->text, sizeof v->text, "%s", text);
  if (in->words) text_lower(v->text);
  return 0;
}

static int read_value(const struct work_input *in, const char *text, struct work_value *v, struct err *e)
{
  const struct unit *bare = in->bare ? unit_find(in->bare, strlen(in->bare)) : NULL;
  const char *number = text;
  struct amount a;
  struct err why = {0};
  int status;

  *v = (struct work_value){0};
  if (in->quantity == Q_NONE) return read_word(in, text, v, e);
  if (in->letter && toupper((unsigned char)*text) == in->letter && is_digit(text[1])) number++;
  if (in->far) status = height_parse(number, strlen(number), &a, &why);
  else status = amount_parse(number, strlen(number), in->quantity, bare, &a, &why);
  if (status) return err_set(e, status, NULL, 0, "%s: %s", in->name, why.text);
  v->si = a.si;
  v->unit = a.unit;
  snprintf(v->text, sizeof v->text, "%s", text);
  return 0;
}

/* What a typed value measures, going by its unit alone; Q_NONE when that does not say. */
static enum quantity measures(const char *text)
{
  char plain[SPELL_ROOM], key[SPELL_ROOM];
  const struct unit *u;
  const char *rest;
  double value;
  size_t bad;

  if (!spell_plain(text, strlen(text), plain, &bad) || number_read(plain, &value, &rest)) return Q_NONE;
  spell_key(rest, key);
  u = *key ? unit_spelt(key, Q_NONE) : NULL;
  return u ? u->quantity : Q_NONE;
}

/* ---- values to inputs -------------------------------------------------------------------- */

static int too_many(const struct work *w, const char *text, struct err *e)
{
  char takes[200];

  work_inputs(w, takes, sizeof takes);
  return err_set(e, EX_USAGE, NULL, 0, "\"%.40s\" is one value too many: %s takes %s.", text, w->name, takes);
}

/* The first open input from *next on that the value fits; none: the message of the input that it was
 * most probably meant for. */
static int place(struct work_request *q, const char *text, int *next, struct err *e)
{
  const struct work_recipe *r = q->work->recipe;
  enum quantity is = measures(text);
  bool tried = false, meant = false;

  for (int i = *next; i < input_count(r); i++) {
    struct err why = {0};

    if (q->values[i].given) continue;
    if (read_value(&r->inputs[i], text, &q->values[i], &why) == 0) {
      q->values[i].given = true;
      *next = i + 1;
      return 0;
    }
    if (!tried || (!meant && is != Q_NONE && is == r->inputs[i].quantity)) *e = why;
    meant = meant || (is != Q_NONE && is == r->inputs[i].quantity);
    tried = true;
    if (!r->inputs[i].usual) break; /* this one is not to be passed over */
  }
  return tried ? e->status : too_many(q->work, text, e);
}

static int place_named(struct work_request *q, const struct token *t, struct err *e)
{
  const struct work_recipe *r = q->work->recipe;
  const char *names[WORK_INPUTS], *near;
  int n = input_count(r), status;

  for (int i = 0; i < n; i++) {
    names[i] = r->inputs[i].name;
    if (strcmp(names[i], t->name) != 0) continue;
    if (q->values[i].given) return err_set(e, EX_USAGE, NULL, 0, "%s is given twice.", t->name);
    status = read_value(&r->inputs[i], t->text, &q->values[i], e);
    q->values[i].given = status == 0;
    return status;
  }
  near = text_nearest(t->name, names, (size_t)n);
  return err_set(e, EX_USAGE, NULL, 0, "%s takes no value called \"%s\"%s%s%s.", q->work->name, t->name,
                 near ? "; did you mean \"" : "", near ? near : "", near ? "\"" : "");
}

/* Usual values for what was not given. */
static int complete(struct work_request *q, struct err *e)
{
  const struct work_recipe *r = q->work->recipe;
  int status = 0;

  for (int i = 0; i < input_count(r) && status == 0; i++) {
    const struct work_input *in = &r->inputs[i];
    struct work_value *v = &q->values[i];
    char takes[200];

    if (v->given) continue;
    if (!in->usual) {
      work_inputs(q->work, takes, sizeof takes);
      return err_set(e, EX_USAGE, NULL, 0, "%s takes %s; %s is missing. For example: %s %s", q->work->name,
                     takes, in->name, q->work->name, q->work->example);
    }
    if (*in->usual) status = read_value(in, in->usual, v, e);
    else *v = (struct work_value){.si = (double)NAN};
  }
  return status;
}

static const struct work *find(const char *name, struct err *e)
{
  const char *names[64], *near;
  size_t n;
  const struct work *w = work_all(&n);

  for (size_t i = 0; i < n; i++) {
    if (strcmp(w[i].name, name) == 0) return &w[i];
    if (i < 64) names[i] = w[i].name;
  }
  near = text_nearest(name, names, n < 64 ? n : 64);
  err_set(e, EX_USAGE, NULL, 0, "there is no calculation \"%.40s\"%s%s%s", name,
          near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  return NULL;
}

int work_read(const char *const *words, int count, struct work_request *out, struct err *e)
{
  struct token tokens[TOKENS];
  int n, next = 0, status;

  *out = (struct work_request){0};
  if (count < 1) return err_set(e, EX_USAGE, NULL, 0, "the name of a calculation is missing.");
  out->work = find(words[0], e);
  if (!out->work) return e->status;
  status = group(out->work->recipe, words + 1, count - 1, tokens, &n, e);
  for (int i = 0; i < n && status == 0; i++)
    if (*tokens[i].name) status = place_named(out, &tokens[i], e);
  for (int i = 0; i < n && status == 0; i++)
    if (!*tokens[i].name) status = place(out, tokens[i].text, &next, e);
  if (status == 0) status = complete(out, e);
  return status;
}
