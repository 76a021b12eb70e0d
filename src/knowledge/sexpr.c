/* sexpr.c - see sexpr.h. */
#include "knowledge/sexpr.h"

#include <stdlib.h>
#include <string.h>

#include "base/text.h"

struct reader {
  struct arena *arena;
  const char *file, *text;
  size_t len, at;
  int line;
  struct node *open[SEXPR_MAX_DEPTH + 1]; /* lists not yet closed; [0] is the file */
  struct node *last[SEXPR_MAX_DEPTH + 1]; /* last child of each */
  int depth;
  struct err *e;
};

static int refuse(struct reader *r, int line, const char *what)
{
  return err_set(r->e, EX_DATAERR, r->file, line, "%s", what);
}

static struct node *add(struct reader *r, enum node_kind kind, int line)
{
  struct node *n = arena_new(r->arena, sizeof *n);

  n->kind = kind;
  n->line = line;
  n->text = "";
  if (r->last[r->depth]) r->last[r->depth]->next = n;
  else r->open[r->depth]->first = n;
  r->last[r->depth] = n;
  return n;
}

static int open_list(struct reader *r)
{
  struct node *n;

  if (r->depth == SEXPR_MAX_DEPTH)
    return refuse(r, r->line,
                  "brackets are nested more than 16 deep. No fact or rule needs that: look for "
                  "a missing \")\" above this line.");
  n = add(r, NODE_LIST, r->line);
  r->depth++;
  r->open[r->depth] = n;
  r->last[r->depth] = NULL;
  r->at++;
  return 0;
}

static int close_list(struct reader *r)
{
  if (r->depth == 0)
    return refuse(r, r->line, "there is a \")\" too many here: nothing is open that it could close.");
  r->depth--;
  r->at++;
  return 0;
}

/* A string: \" and \\ stand for the sign itself, as in the engine. */
static int read_string(struct reader *r)
{
  size_t start = ++r->at, n = 0;
  int line = r->line;
  char *copy;

  while (r->at < r->len && r->text[r->at] != '"') {
    if (r->text[r->at] == '\\') r->at++;
    if (r->at < r->len && r->text[r->at] == '\n') r->line++;
    r->at++;
  }
  if (r->at >= r->len)
    return refuse(r, line, "a text in double quotes starts here and never ends.");
  if (r->at - start > SEXPR_MAX_STRING)
    return refuse(r, line, "a text is longer than 2000 bytes. Is a closing quote missing?");
  copy = arena_new(r->arena, r->at - start + 1);
  for (size_t i = start; i < r->at; i++) {
    if (r->text[i] == '\\') i++;
    if (r->text[i] == '\n') { /* a text may be broken over lines: one space instead */
      while (n > 0 && copy[n - 1] == ' ') n--;
      copy[n++] = ' ';
      while (i + 1 < r->at && (r->text[i + 1] == ' ' || r->text[i + 1] == '\t')) i++;
    } else {
      copy[n++] = r->text[i];
    }
  }
  copy[n] = '\0';
  add(r, NODE_STRING, line)->text = copy;
  r->at++;
  return 0;
}

/* Is the word a plain decimal number? Exponents are not needed and not taken. */
static bool is_number(const char *w)
{
  size_t digits = 0;

  if (*w == '-' || *w == '+') w++;
  for (; *w >= '0' && *w <= '9'; w++) digits++;
  if (*w == '.')
    for (w++; *w >= '0' && *w <= '9'; w++) digits++;
  return *w == '\0' && digits > 0 && digits <= 15;
}

/* Value of such a number, whatever the locale says about points. */
static double number_value(const char *w)
{
  double sign = *w == '-' ? -1 : 1, value = 0, scale = 1;

  if (*w == '-' || *w == '+') w++;
  for (; *w >= '0' && *w <= '9'; w++) value = value * 10 + (*w - '0');
  if (*w == '.')
    for (w++; *w >= '0' && *w <= '9'; w++) {
      value = value * 10 + (*w - '0');
      scale *= 10;
    }
  return sign * (value / scale);
}

static bool ends_word(char c)
{
  return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '(' || c == ')' || c == '"' || c == ';';
}

/* The curly quotes of word processors, U+201C to U+201F and the low and angled ones. */
static bool curly_quote(const char *word)
{
  static const char *const quotes[] = {"\xe2\x80\x9c", "\xe2\x80\x9d", "\xe2\x80\x9e", "\xe2\x80\x9f",
                                       "\xc2\xab", "\xc2\xbb"};

  for (size_t i = 0; i < sizeof quotes / sizeof quotes[0]; i++)
    if (strstr(word, quotes[i])) return true;
  return false;
}

static int read_word(struct reader *r)
{
  size_t start = r->at;
  struct node *n;

  while (r->at < r->len && !ends_word(r->text[r->at])) r->at++;
  if (r->at - start > SEXPR_MAX_WORD)
    return refuse(r, r->line, "a word is longer than 128 bytes. Is a space or a quote missing?");
  n = add(r, NODE_WORD, r->line);
  n->text = arena_text(r->arena, r->text + start, r->at - start);
  if (curly_quote(n->text))
    return refuse(r, r->line, "curly quotes, as word processors make them, are no quotes. Type plain ones: \".");
  if (is_number(n->text)) {
    n->kind = NODE_NUMBER;
    n->number = number_value(n->text);
  }
  return 0;
}

/* Control characters stand for nothing, take hold of the screen they are shown on, and some
 * part words for the engine and not for us. */
static size_t control_byte(const char *text, size_t len)
{
  size_t i = 0;

  for (; i < len; i++) {
    unsigned char c = (unsigned char)text[i];

    if ((c < 0x20 && c != '\n' && c != '\t' && c != '\r') || c == 0x7F) break;
    if (c == 0xC2 && i + 1 < len && (unsigned char)text[i + 1] < 0xA0) break; /* U+0080 to 9F */
  }
  return i;
}

static int check_bytes(struct reader *r)
{
  size_t bad, control;
  int line = 1;

  if (r->len > SEXPR_MAX_BYTES)
    return refuse(r, 0, "is larger than 4 MiB. Split it into files about one thing each.");
  if (r->len >= 3 && memcmp(r->text, "\xEF\xBB\xBF", 3) == 0)
    return refuse(r, 1, "begins with a byte-order mark. Save the file as UTF-8 without one.");
  bad = text_bad_byte(r->text, r->len);
  control = control_byte(r->text, bad);
  if (control == r->len) return 0;
  for (size_t i = 0; i < control; i++)
    if (r->text[i] == '\n') line++;
  if (control < bad) return refuse(r, line, "holds a control character. Take it out, or put a space there.");
  return refuse(r, line,
                r->text[bad] == '\0'
                    ? "holds a zero byte. It is not a text file, or it is damaged."
                    : "holds bytes that are not UTF-8 text. Save the file as UTF-8.");
}

static const struct node *first_list(const struct node *n)
{
  for (const struct node *c = n->first; c; c = c->next)
    if (c->kind == NODE_LIST) return c;
  return NULL;
}

/* Where the lost bracket most likely belongs. Facts are three lists deep, so a list inside a slot
 * is something that should have begun after it: the entry before swallowed the next one, whose
 * slots then look like lists inside a slot, or one slot swallowed the next. */
static int refuse_unclosed(struct reader *r)
{
  const struct node *top = r->open[1];

  for (const struct node *entry = top->first; entry && node_is_word(top->first, "deffacts"); entry = entry->next)
    for (const struct node *slot = entry->first; slot; slot = slot->next) {
      const struct node *inner = first_list(slot);
      const struct node *lost = inner && slot->first->next == inner ? entry : slot;

      if (!inner) continue;
      if (lost == entry) inner = slot;
      return err_set(r->e, EX_DATAERR, r->file, lost->line,
                     "the bracket opened here is never closed: \"(%s\" in line %d stands inside it.",
                     node_head(inner), inner->line);
    }
  return refuse(r, top->line, "the bracket opened here is never closed.");
}

int sexpr_read(struct arena *arena, const char *file, const char *text, size_t len,
               struct node **out, struct err *e)
{
  struct reader r = {.arena = arena, .file = file, .text = text, .len = len, .line = 1, .e = e};
  int status = check_bytes(&r);

  r.open[0] = arena_new(arena, sizeof *r.open[0]);
  r.open[0]->text = "";
  while (status == 0 && r.at < r.len) {
    char c = r.text[r.at];

    if (c == '\n') {
      r.line++;
      r.at++;
    } else if (c == ' ' || c == '\t' || c == '\r') {
      r.at++;
    } else if (c == ';') { /* a comment ends where it ends for the engine */
      while (r.at < r.len && r.text[r.at] != '\n' && r.text[r.at] != '\r') r.at++;
    } else if (c == '(') {
      status = open_list(&r);
    } else if (c == ')') {
      status = close_list(&r);
    } else if (c == '"') {
      status = read_string(&r);
    } else {
      status = read_word(&r);
    }
  }
  if (status == 0 && r.depth > 0) status = refuse_unclosed(&r);
  *out = r.open[0];
  return status;
}

const char *node_head(const struct node *n)
{
  return n->kind == NODE_LIST && n->first && n->first->kind == NODE_WORD ? n->first->text : "";
}

bool node_is_word(const struct node *n, const char *word)
{
  return n && n->kind == NODE_WORD && strcmp(n->text, word) == 0;
}

size_t node_count(const struct node *n)
{
  size_t count = 0;

  for (const struct node *c = n->first; c; c = c->next) count++;
  return count;
}
