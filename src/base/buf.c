/* buf.c - see buf.h. */
#include "base/buf.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"

void buf_addn(struct buf *b, const char *text, size_t len)
{
  void *p = b->text;

  mem_grow(&p, &b->room, b->len + len + 1, 1);
  b->text = p;
  memcpy(b->text + b->len, text, len);
  b->len += len;
  b->text[b->len] = '\0';
}

void buf_add(struct buf *b, const char *text) { buf_addn(b, text, strlen(text)); }

void buf_addv(struct buf *b, const char *format, va_list args)
{
  char small[512];
  va_list again;
  int n;

  va_copy(again, args);
  n = vsnprintf(small, sizeof small, format, args);
  if (n >= 0 && (size_t)n < sizeof small) {
    buf_addn(b, small, (size_t)n);
  } else if (n >= 0) {
    char *big = mem_new((size_t)n + 1);

    vsnprintf(big, (size_t)n + 1, format, again);
    buf_addn(b, big, (size_t)n);
    free(big);
  }
  va_end(again);
}

void buf_addf(struct buf *b, const char *format, ...)
{
  va_list args;

  va_start(args, format);
  buf_addv(b, format, args);
  va_end(args);
}

const char *buf_text(const struct buf *b) { return b->text ? b->text : ""; }

void buf_free(struct buf *b)
{
  free(b->text);
  b->text = NULL;
  b->len = b->room = 0;
}
