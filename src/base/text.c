/* text.c - see text.h. */
#include "base/text.h"

#include <string.h>

#include "base/buf.h"

size_t text_character(const char *text, size_t n)
{
  const unsigned char *p = (const unsigned char *)text;
  unsigned int low = 0x80, high = 0xBF;
  size_t need, i;

  if (p[0] == 0) return 0;
  if (p[0] < 0x80) return 1;
  if (p[0] < 0xC2 || p[0] > 0xF4) return 0;
  need = p[0] < 0xE0 ? 2 : p[0] < 0xF0 ? 3 : 4;
  if (n < need) return 0;
  if (p[0] == 0xE0) low = 0xA0;
  if (p[0] == 0xED) high = 0x9F;
  if (p[0] == 0xF0) low = 0x90;
  if (p[0] == 0xF4) high = 0x8F;
  if (p[1] < low || p[1] > high) return 0;
  for (i = 2; i < need; i++)
    if (p[i] < 0x80 || p[i] > 0xBF) return 0;
  return need;
}

size_t text_bad_byte(const char *text, size_t len)
{
  size_t i = 0;

  while (i < len) {
    size_t n = text_character(text + i, len - i);

    if (n == 0) return i;
    i += n;
  }
  return len;
}

size_t text_columns(const char *text)
{
  size_t n = 0;

  for (; *text; text++)
    if (((unsigned char)*text & 0xC0) != 0x80) n++;
  return n;
}

enum { LONGEST = 64 };

int text_distance(const char *a, const char *b, int limit)
{
  size_t la = strlen(a), lb = strlen(b), i, j;
  int row[3][LONGEST + 1];

  if (la > LONGEST || lb > LONGEST) return limit + 1;
  for (j = 0; j <= lb; j++) row[0][j] = (int)j;
  for (i = 1; i <= la; i++) {
    int *now = row[i % 3], *before = row[(i + 2) % 3], *earlier = row[(i + 1) % 3];

    now[0] = (int)i;
    for (j = 1; j <= lb; j++) {
      int best = before[j - 1] + (a[i - 1] != b[j - 1]);

      if (before[j] + 1 < best) best = before[j] + 1;
      if (now[j - 1] + 1 < best) best = now[j - 1] + 1;
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] && earlier[j - 2] + 1 < best)
        best = earlier[j - 2] + 1;
      now[j] = best;
    }
  }
  return row[la % 3][lb] <= limit ? row[la % 3][lb] : limit + 1;
}

const char *text_nearest(const char *word, const char *const *list, size_t count)
{
  const char *best = NULL;
  int limit = (int)(strlen(word) / 3);
  size_t i;

  if (limit < 2) limit = 2;
  for (i = 0; i < count; i++) {
    int d = text_distance(word, list[i], limit);

    if (d <= limit) {
      best = list[i];
      limit = d - 1;
      if (limit < 0) break;
    }
  }
  return best;
}

void text_wrap(struct buf *out, const char *text, int width, const char *first, const char *rest)
{
  size_t col = text_columns(first);

  buf_add(out, first);
  for (bool begin = true;;) {
    size_t len, cols = 0;

    while (*text == ' ') text++;
    if (!*text) return;
    len = strcspn(text, " \n");
    for (size_t i = 0; i < len; i++)
      if (((unsigned char)text[i] & 0xC0) != 0x80) cols++;
    if (*text == '\n' || (!begin && col + 1 + cols > (size_t)width)) {
      text += *text == '\n';
      buf_add(out, "\n");
      buf_add(out, rest);
      col = text_columns(rest);
      begin = true;
      continue;
    }
    if (!begin) {
      buf_add(out, " ");
      col++;
    }
    buf_addn(out, text, len);
    col += cols;
    begin = false;
    text += len;
  }
}

void text_lower(char *text)
{
  for (; *text; text++)
    if (*text >= 'A' && *text <= 'Z') *text = (char)(*text - 'A' + 'a');
}

void text_cut(char *out, size_t size, const char *text)
{
  size_t n = strlen(text);

  if (size == 0) return;
  if (n >= size)
    for (n = size - 1; n > 0 && ((unsigned char)text[n] & 0xC0) == 0x80;) n--;
  memcpy(out, text, n);
  out[n] = '\0';
  for (; *out; out++)
    if ((unsigned char)*out < ' ' || *out == 127) *out = ' ';
}

bool text_is_id(const char *text)
{
  if (*text < 'a' || *text > 'z') return false; /* islower asks the locale */
  for (; *text; text++) {
    if (*text == '-' && (text[1] == '-' || !text[1])) return false;
    if ((*text < 'a' || *text > 'z') && (*text < '0' || *text > '9') && *text != '-') return false;
  }
  return true;
}
