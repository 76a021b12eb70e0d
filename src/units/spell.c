/* spell.c - see spell.h. */
#include "units/spell.h"

#include <string.h>

/* Characters beyond ASCII that people and telephones type, and what they stand for. */
static const struct {
  const char *typed, *plain;
} signs[] = {
    {"\u00B0", "deg"}, {"\u00BA", "deg"}, {"\u2103", "degC"}, {"\u2109", "degF"},
    {"\u03A9", "ohm"}, {"\u2126", "ohm"}, {"\u00B5", "u"},    {"\u03BC", "u"},
    {"\u00B7", "."},   {"\u22C5", "."},   {"\u2022", "."},    {"\u2219", "."},
    {"\u00B2", "^2"},  {"\u00B3", "^3"},  {"\u2082", "2"},    {"\u2044", "/"},
    {"\u2033", "\""},  {"\u201C", "\""},  {"\u201D", "\""},   {"\u2032", "'"},
    {"\u2018", "'"},   {"\u2019", "'"},   {"\u2010", "-"},    {"\u2011", "-"},
    {"\u2012", "-"},   {"\u2013", "-"},   {"\u2212", "-"},    {"\u2236", ":"},
    {"\u00A0", " "},   {"\u2009", " "},   {"\u202F", " "},    {"\u2007", " "},
    {"\u00BD", " 1/2"}, {"\u00BC", " 1/4"}, {"\u00BE", " 3/4"}, {"\u215B", " 1/8"},
    {"\u215C", " 3/8"}, {"\u215D", " 5/8"}, {"\u215E", " 7/8"}, {"\u2153", " 1/3"},
    {"\u2154", " 2/3"},
};

/* Adds one plain piece, keeping spaces single and none in front. */
static size_t add(char *out, size_t n, const char *piece, size_t len)
{
  for (size_t i = 0; i < len; i++) {
    if (piece[i] == ' ' && (n == 0 || out[n - 1] == ' ')) continue;
    if (n < SPELL_ROOM - 1) out[n++] = piece[i];
  }
  return n;
}

/* The plain form of the character at text, whose bytes go to *used; NULL if it has none. */
static const char *plain_sign(const char *text, size_t len, size_t *used)
{
  for (size_t i = 0; i < sizeof signs / sizeof signs[0]; i++) {
    *used = strlen(signs[i].typed);
    if (*used <= len && memcmp(text, signs[i].typed, *used) == 0) return signs[i].plain;
  }
  return NULL;
}

bool spell_plain(const char *text, size_t len, char out[SPELL_ROOM], size_t *bad)
{
  size_t n = 0, i = 0;

  out[0] = '\0';
  *bad = SPELL_LONGEST;
  if (len > SPELL_LONGEST) return false;
  while (i < len) {
    size_t used = 1;
    const char *plain = &text[i];
    bool space = text[i] == '\t' || text[i] == '\n' || text[i] == '\r';

    if (space) plain = " ";
    else if (text[i] < ' ' || text[i] > '~') plain = plain_sign(&text[i], len - i, &used);
    if (!plain) {
      *bad = i;
      out[0] = '\0';
      return false;
    }
    n = add(out, n, plain, used > 1 ? strlen(plain) : 1);
    i += used;
  }
  if (n > 0 && out[n - 1] == ' ') n--;
  out[n] = '\0';
  return true;
}

static char small(char c)
{
  return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

static bool separates(char c)
{
  return c != '\0' && strchr(" .-*^()", c) != NULL;
}

/* Does " per " stand at p? */
static bool is_per(const char *p)
{
  static const char per[] = " per ";
  size_t i = 0;

  while (per[i] && small(p[i]) == per[i]) i++;
  return per[i] == '\0';
}

void spell_key(const char *plain, char key[SPELL_ROOM])
{
  size_t n = 0;

  for (const char *p = plain; *p && n < SPELL_ROOM - 1; p++) {
    if (n > 0 && is_per(p)) {
      key[n++] = '/';
      p += 4;
    } else if (!separates(*p)) {
      key[n++] = *p;
    }
  }
  key[n] = '\0';
}

bool spell_same(const char *key, const char *name, bool fold)
{
  for (;; key++, name++) {
    while (separates(*name)) name++;
    if (*key != *name && !(fold && small(*key) == small(*name))) return false;
    if (*key == '\0') return true;
  }
}
