/* where.c - on which line a value stands; see json_line in json.h. */
#include <stdlib.h>
#include <string.h>

#include "json/json.h"

/* Text being walked, which is known to be good JSON; at is never beyond len. */
struct walk {
  const char *text;
  size_t len, at;
};

static char now(const struct walk *w) { return w->at < w->len ? w->text[w->at] : '\0'; }

static void blanks(struct walk *w)
{
  while (now(w) == ' ' || now(w) == '\n' || now(w) == '\r' || now(w) == '\t') w->at++;
}

/* Goes behind the closing quote of the text that begins here. */
static void pass_text(struct walk *w)
{
  w->at++;
  while (w->at < w->len && now(w) != '"') w->at += now(w) == '\\' ? 2 : 1;
  if (w->at < w->len) w->at++;
  if (w->at > w->len) w->at = w->len;
}

/* Goes behind the value that begins here. */
static void pass_value(struct walk *w)
{
  size_t depth = 0;

  do {
    char c = now(w);

    if (c == '"') {
      pass_text(w);
      continue;
    }
    if (depth == 0 && (c == ',' || c == '}' || c == ']')) return;
    if (c == '{' || c == '[') depth++;
    if (c == '}' || c == ']') depth--;
    if (w->at < w->len) w->at++;
    if (depth == 0 && (c == '}' || c == ']')) return;
  } while (w->at < w->len && (depth > 0 || !strchr(",}]", now(w))));
}

/* From the "{" or "[" here to the member or item of that name; false: it is not there. */
static bool enter(struct walk *w, const char *name, size_t length)
{
  bool object = now(w) == '{';
  size_t item = 0, wanted = (size_t)strtoul(name, NULL, 10);

  if (!object && now(w) != '[') return false;
  w->at++;
  for (;;) {
    bool found = !object && item == wanted;

    blanks(w);
    if (w->at >= w->len || now(w) == '}' || now(w) == ']') return false;
    if (object) {
      size_t from = w->at + 1;

      pass_text(w);
      found = w->at - 1 - from == length && memcmp(w->text + from, name, length) == 0;
      blanks(w);
      w->at++; /* the colon */
      blanks(w);
    }
    if (found) return true;
    pass_value(w);
    blanks(w);
    if (now(w) == ',') w->at++;
    item++;
  }
}

int json_line(const char *text, size_t len, const char *path)
{
  struct walk w = {text, len, 0}, next;
  int line = 1;

  blanks(&w);
  while (*path) {
    size_t n = strcspn(path, "/");

    next = w;
    if (!enter(&next, path, n)) break;
    w = next;
    path += n + (path[n] == '/');
  }
  for (size_t i = 0; i < w.at; i++) line += text[i] == '\n';
  return line;
}
