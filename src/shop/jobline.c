/* jobline.c - see jobline.h. */
#include "shop/jobline.h"

#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "base/text.h"
#include "json/json.h"

/* Deeper, or with more members, than our own bodies are: left to the other reader. */
enum { DEEPEST = 6, MOST_MEMBERS = 16, MOST_DIGITS = 15 };

/* Where reading stands; high is set when a byte above ASCII was met. */
struct cursor { char *at; bool high; };

static bool take(struct cursor *c, const char *text)
{
  size_t n = strlen(text);

  if (strncmp(c->at, text, n) != 0) return false;
  c->at += n;
  return true;
}

static size_t digits(const char *at)
{
  size_t n = 0;

  while (at[n] >= '0' && at[n] <= '9') n++;
  return n;
}

/* A whole number that is written in one way only. */
static bool take_number(struct cursor *c, int64_t *out)
{
  size_t n = digits(c->at);

  if (n == 0 || n > MOST_DIGITS || (n > 1 && *c->at == '0')) return false;
  *out = 0;
  for (size_t i = 0; i < n; i++) *out = *out * 10 + (*c->at++ - '0');
  return true;
}

/* The rest of a text whose quote was taken, and its closing quote. escapes: those that are
 * written in one way only may stand in it. */
static bool skip_text(struct cursor *c, bool escapes)
{
  for (; *c->at != '"'; c->at++) {
    if ((unsigned char)*c->at < 0x20 || *c->at == 0x7F) return false;
    if ((unsigned char)*c->at >= 0x80) c->high = true;
    if (*c->at == '\\') {
      if (!escapes || !c->at[1] || !strchr("\"\\nrtbf", c->at[1])) return false;
      c->at++;
    }
  }
  c->at++;
  return true;
}

/* A number as the library prints it: no exponent, no digit that says nothing, and not so
 * small that it would be printed with one. */
static bool skip_number(struct cursor *c)
{
  size_t whole, part;

  c->at += *c->at == '-';
  whole = digits(c->at);
  if (whole == 0 || (whole > 1 && *c->at == '0')) return false;
  if (c->at[whole] != '.') {
    bool good = whole <= MOST_DIGITS && !strchr("eE", c->at[whole]) && (*c->at != '0' || c->at[-1] != '-');

    c->at += whole;
    return good;
  }
  part = digits(c->at + whole + 1);
  if (part == 0 || whole + part > MOST_DIGITS || c->at[whole + part] == '0') return false;
  if (*c->at == '0' && strncmp(c->at + 2, "000", 3) == 0) return false;
  c->at += whole + 1 + part;
  return *c->at != 'e' && *c->at != 'E';
}

static bool skip_value(struct cursor *c, int depth);

static bool skip_list(struct cursor *c, int depth)
{
  if (take(c, "]")) return true;
  do {
    if (!skip_value(c, depth + 1)) return false;
  } while (take(c, ","));
  return take(c, "]");
}

/* No member may stand twice in one object. */
static bool skip_object(struct cursor *c, int depth)
{
  struct { const char *at; size_t len; } names[MOST_MEMBERS];
  size_t count = 0;

  if (take(c, "}")) return true;
  do {
    const char *name = c->at + 1;
    size_t len;

    if (count == MOST_MEMBERS || !take(c, "\"") || !skip_text(c, false)) return false;
    len = (size_t)(c->at - name);
    for (size_t i = 0; i < count; i++)
      if (names[i].len == len && memcmp(names[i].at, name, len) == 0) return false;
    names[count].at = name;
    names[count++].len = len;
    if (!take(c, ":") || !skip_value(c, depth + 1)) return false;
  } while (take(c, ","));
  return take(c, "}");
}

/* Depth is bounded, so this may call itself. */
static bool skip_value(struct cursor *c, int depth)
{
  if (depth > DEEPEST) return false;
  switch (*c->at) {
  case '"': c->at++; return skip_text(c, true);
  case '[': c->at++; return skip_list(c, depth);
  case '{': c->at++; return skip_object(c, depth);
  case 't': return take(c, "true");
  case 'f': return take(c, "false");
  case 'n': return take(c, "null");
  default: return skip_number(c);
  }
}

/* An id of the store: whether it is a good one the store says. */
static bool take_id(struct cursor *c, char out[STORE_ID])
{
  char *from = c->at;

  if (!skip_text(c, false) || c->at - from != STORE_ID) return false;
  memcpy(out, from, STORE_ID - 1);
  out[STORE_ID - 1] = '\0';
  return true;
}

static bool take_text(struct cursor *c, char **out)
{
  *out = c->at;
  return skip_text(c, false);
}

static bool take_entry(struct cursor *c, struct store_entry *x)
{
  if (!take(c, "{\"uid\":\"") || !take_id(c, x->uid)) return false;
  if (!take(c, ",\"number\":") || !take_number(c, &x->number) || !take(c, ",\"at\":") ||
      !take_number(c, &x->at))
    return false;
  if (!take(c, ",\"who\":\"") || !take_text(c, &x->who) || !take(c, ",\"kind\":\"") ||
      !take_text(c, &x->kind))
    return false;
  if (c->at - x->kind < 2 || !take(c, ",\"body\":")) return false;
  x->body = c->at;
  return take(c, "{") && skip_object(c, 1) && take(c, "}");
}

static bool take_line(struct cursor *c, struct jobline *out)
{
  if (!take(c, "{\"pullcord\":\"job-1\",\"id\":\"") || !take_id(c, out->id)) return false;
  if (!take(c, ",\"opened\":") || !take_number(c, &out->opened) || !take(c, ",\"entries\":[")) return false;
  out->entries.count = 0;
  if (*c->at == ']') return take(c, "]}");
  do {
    void *items = out->entries.items;

    mem_grow(&items, &out->entries.room, out->entries.count + 1, sizeof *out->entries.items);
    out->entries.items = items;
    if (!take_entry(c, &out->entries.items[out->entries.count])) return false;
    items = out->ends;
    mem_grow(&items, &out->end_room, out->entries.count + 1, sizeof *out->ends);
    out->ends = items;
    out->ends[out->entries.count++] = c->at - 1;
  } while (take(c, ","));
  return take(c, "]}");
}

/* A text of who or kind ends at its quote; a body before the bracket that ends its entry. */
static void end_texts(struct jobline *out)
{
  for (size_t i = 0; i < out->entries.count; i++) {
    *strchr(out->entries.items[i].who, '"') = '\0';
    *strchr(out->entries.items[i].kind, '"') = '\0';
    *out->ends[i] = '\0';
  }
}

bool jobline_read(char *line, size_t len, struct jobline *out)
{
  struct cursor c = {line, false};

  if (len > JSON_MAX_BYTES || strlen(line) != len || !take_line(&c, out) || c.at != line + len) return false;
  if (c.high && text_bad_byte(line, len) < len) return false;
  end_texts(out);
  return true;
}

void jobline_free(struct jobline *j)
{
  free(j->entries.items);
  free(j->ends);
  *j = (struct jobline){0};
}
