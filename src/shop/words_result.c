/* words_result.c - the bench's short forms for a result and for how sure it is; see words.h. */
#include <ctype.h>
#include <string.h>

#include "base/text.h"
#include "shop/words.h"
#include "units/parse.h"

static bool same_text(const char *a, const char *b)
{
  for (; *a && *b; a++, b++)
    if (tolower((unsigned char)*a) != tolower((unsigned char)*b) &&
        !((*a == ' ' || *a == '-') && (*b == ' ' || *b == '-'))) return false;
  return *a == *b;
}

bool words_dont_know(const char *text)
{
  static const char *const words[] = {"?", "dont-know", "don't know", "dont know", "dk", "could-not-test",
                                      "couldn't test", "could not test", "not-done", "unknown", "can't",
                                      "cant", "idk", "dunno", "i don't know", "i dont know", "can't tell", "can't test",
                                      "no idea", "not sure", "no clue"};

  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (same_text(text, words[i])) return true;
  return false;
}

/* A result that the text starts, when only one does. */
static int only_start(const struct check *c, const char *text)
{
  size_t n = strlen(text);
  int found = -1;

  for (size_t i = 0; n >= 3 && i < c->results.count; i++) {
    char head[64];

    if (n >= sizeof head) return -1;
    for (int both = 0; both < 2; both++) {
      const char *word = both ? c->labels.items[i] : c->results.items[i];

      if (strlen(word) < n) continue;
      memcpy(head, word, n);
      head[n] = '\0';
      if (!same_text(head, text)) continue;
      if (found >= 0 && found != (int)i) return -1;
      found = (int)i;
    }
  }
  return found;
}

static int refuse_result(const struct check *c, const char *text, struct err *e)
{
  const char *near = text_nearest(text, c->results.items, c->results.count);
  char list[420];
  size_t used = 0;

  list[0] = '\0';
  for (size_t i = 0; i < c->results.count && used + 70 < sizeof list; i++) {
    size_t n = strlen(c->results.items[i]);

    memcpy(list + used, i ? ", " : "", i ? 2 : 0);
    used += i ? 2 : 0;
    if (n > 60) n = 60;
    memcpy(list + used, c->results.items[i], n);
    used += n;
    list[used] = '\0';
  }
  return err_set(e, EX_DATAERR, NULL, 0,
                 "\"%.60s\" is not a result of %s%s%s%s It is one of: %s; or dont-know.", text, c->id,
                 near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".", list);
}

static int parse_reading(const struct check *c, const char *text, struct case_result *out, struct err *e)
{
  struct amount a;
  int status = amount_parse(text, strlen(text), c->quantity, c->unit, &a, e);

  if (status) return status;
  out->result = -1;
  out->value = unit_convert(a.value, a.unit, c->unit);
  if (c->possible.count == 2 && (out->value < c->possible.items[0] || out->value > c->possible.items[1]))
    return err_set(e, EX_DATAERR, NULL, 0,
                   "\"%.60s\" cannot be: %s is between %.6g and %.6g %s on any machine. Look at the point and "
                   "the unit.",
                   text, c->name, c->possible.items[0], c->possible.items[1], c->unit_name);
  return 0;
}

int words_result(const struct knowledge *k, int check, const char *text, struct case_result *out,
                 struct err *e)
{
  const struct check *c = &k->checks[check];
  bool number = isdigit((unsigned char)text[0]) || (strchr("-+.,", text[0]) && text[0]);

  *out = (struct case_result){check, -1, 0, 1};
  if (words_dont_know(text)) {
    out->sure = 0;
    out->result = 0;
    return 0;
  }
  for (size_t i = 0; i < c->results.count; i++)
    if (same_text(text, c->results.items[i]) || same_text(text, c->labels.items[i])) {
      out->result = (int)i;
      return 0;
    }
  if (c->kind == KIND_MEASURE && number) return parse_reading(c, text, out, e);
  if (c->kind != KIND_MEASURE && isdigit((unsigned char)text[0]) && !text[1] && text[0] > '0' &&
      (size_t)(text[0] - '0') <= c->results.count) {
    out->result = text[0] - '1';
    return 0;
  }
  out->result = only_start(c, text);
  return out->result >= 0 ? 0 : refuse_result(c, text, e);
}

bool words_sure(const struct knowledge *k, const char *word, double *out)
{
  if (same_text(word, "sure")) *out = 1;
  else if (same_text(word, "fairly") || same_text(word, "fairly sure"))
    *out = knowledge_setting(k, "sure-fairly", 0.8);
  else if (same_text(word, "unsure") || same_text(word, "not sure"))
    *out = knowledge_setting(k, "sure-unsure", 0.5);
  else return false;
  return true;
}

const char *words_sure_name(const struct knowledge *k, double sure)
{
  if (sure >= 0.999) return "sure";
  return sure >= knowledge_setting(k, "sure-fairly", 0.8) - 1e-9 ? "fairly" : "unsure";
}
