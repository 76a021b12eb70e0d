/* sexpr.c - see sexpr.h. */
#include "knowledge/sexpr.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "base/text.h"

enum { NODES = 256 }; /* made at a time */

struct reader {
  struct arena *arena;
  struct node *spare; /* nodes not yet used, and how many */
  size_t spares;
  const char *file;
  char *text;
  size_t len, at;
  size_t cut; /* where an end mark was put in place of the byte was_there, not yet taken */
  char was_there;
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
  struct node *n;

  if (r->spares == 0) {
    r->spares = NODES;
    r->spare = arena_array(r->arena, NODES, sizeof *n);
  }
  r->spares--;
  n = r->spare++;
  n->kind = kind;
  n->line = line;
  n->text = "";
  if (r->last[r->depth]) r->last[r->depth]->next = n;
  else r->open[r->depth]->first = n;
  r->last[r->depth] = n;
  return n;
}

/* What ends a run of bytes of one kind. A comment ends where it ends for the engine. */
enum { IN_WORD = 1, IN_STRING = 2, IN_COMMENT = 4 };
static const unsigned char ends[256] = {
    [' '] = IN_WORD, ['\t'] = IN_WORD, ['('] = IN_WORD, [')'] = IN_WORD, [';'] = IN_WORD,
    ['\r'] = IN_WORD | IN_COMMENT, ['\n'] = IN_WORD | IN_COMMENT | IN_STRING,
    ['"'] = IN_WORD | IN_STRING, ['\\'] = IN_STRING};

/* Where the run that begins here ends; the end of the file at most. */
static size_t pass(const struct reader *r, int in)
{
  const char *text = r->text;
  size_t at = r->at, len = r->len;

  while (at < len && !(ends[(unsigned char)text[at]] & in)) at++;
  return at;
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

/* A string: \" and \\ stand for the sign itself, as in the engine. It never grows, so it is
 * put in order where it stands. */
static int read_string(struct reader *r)
{
  size_t start = ++r->at, n = 0;
  int line = r->line;
  bool plain = true; /* nothing in it to be put in order */
  char *copy = r->text + start;

  for (;; r->at++) {
    r->at = pass(r, IN_STRING);
    if (r->at >= r->len || r->text[r->at] == '"') break;
    plain = false;
    if (r->text[r->at] == '\\') r->at++;
    if (r->at < r->len && r->text[r->at] == '\n') r->line++;
  }
  if (r->at >= r->len)
    return refuse(r, line, "a text in double quotes starts here and never ends.");
  if (r->at - start > SEXPR_MAX_STRING)
    return refuse(r, line, "a text is longer than 2000 bytes. Is a closing quote missing?");
  for (size_t i = plain ? r->at : start; i < r->at; i++) {
    if (r->text[i] == '\\') i++;
    if (r->text[i] == '\n') { /* a text may be broken over lines: one space instead */
      while (n > 0 && copy[n - 1] == ' ') n--;
      copy[n++] = ' ';
      while (i + 1 < r->at && (r->text[i + 1] == ' ' || r->text[i + 1] == '\t')) i++;
    } else {
      copy[n++] = r->text[i];
    }
  }
  copy[plain ? r->at - start : n] = '\0';
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

  r->at = pass(r, IN_WORD);
  if (r->at - start > SEXPR_MAX_WORD)
    return refuse(r, r->line, "a word is longer than 128 bytes. Is a space or a quote missing?");
  n = add(r, NODE_WORD, r->line);
  n->text = r->text + start;
  r->cut = r->at; /* the word ends in place; what stood there comes next */
  r->was_there = r->text[r->at];
  r->text[r->at] = '\0';
  if (curly_quote(n->text))
    return refuse(r, r->line, "curly quotes, as word processors make them, are no quotes. Type plain ones: \".");
  if (is_number(n->text)) {
    n->kind = NODE_NUMBER;
    n->number = number_value(n->text);
  }
  return 0;
}

/* Eight bytes that are all plain ASCII: none below a space, none above a tilde. */
static bool plain_bytes(const char *text)
{
  uint64_t ones = 0x0101010101010101u, w;

  memcpy(&w, text, sizeof w);
  return ((w | (w + ones) | (w - 0x20 * ones)) & 0x80 * ones) == 0;
}

/* Where the first byte is that may not stand in a file of knowledge: not UTF-8, a NUL, or
 * (*control) a control character. These stand for nothing, take hold of the screen they are
 * shown on, and some part words for the engine and not for us. */
static size_t odd_byte(const char *text, size_t len, bool *control)
{
  *control = false;
  for (size_t i = 0, n; i < len; i += n) {
    unsigned char c = (unsigned char)text[i];

    n = 8;
    if (len - i >= n && plain_bytes(text + i)) continue;
    n = text_character(text + i, len - i);
    *control = n > 0 && ((c < 0x20 && c != '\n' && c != '\t' && c != '\r') || c == 0x7F ||
                         (c == 0xC2 && (unsigned char)text[i + 1] < 0xA0)); /* U+0080 to 9F */
    if (n == 0 || *control) return i;
  }
  return len;
}

static int check_bytes(struct reader *r)
{
  size_t odd;
  bool control;
  int line = 1;

  if (r->len > SEXPR_MAX_BYTES)
    return refuse(r, 0, "is larger than 4 MiB. Split it into files about one thing each.");
  if (r->len >= 3 && memcmp(r->text, "\xEF\xBB\xBF", 3) == 0)
    return refuse(r, 1, "begins with a byte-order mark. Save the file as UTF-8 without one.");
  odd = odd_byte(r->text, r->len, &control);
  if (odd == r->len) return 0;
  for (size_t i = 0; i < odd; i++)
    if (r->text[i] == '\n') line++;
  if (control) return refuse(r, line, "holds a control character. Take it out, or put a space there.");
  return refuse(r, line,
                r->text[odd] == '\0'
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

int sexpr_read(struct arena *arena, const char *file, char *text, size_t len, struct node **out,
               struct err *e)
{
  struct reader r = {.arena = arena, .file = file, .text = text, .len = len, .cut = SIZE_MAX, .line = 1,
                     .e = e};
  int status = check_bytes(&r);

  r.open[0] = arena_new(arena, sizeof *r.open[0]);
  r.open[0]->text = "";
  while (status == 0 && r.at < r.len) {
    char c = r.at == r.cut ? r.was_there : r.text[r.at];

    if (c == '\n') {
      r.line++;
      r.at++;
    } else if (c == ' ' || c == '\t' || c == '\r') {
      r.at++;
    } else if (c == ';') {
      r.at = pass(&r, IN_COMMENT);
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
