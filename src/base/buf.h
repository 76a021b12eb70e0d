/* buf.h - a string that grows. */
#ifndef BASE_BUF_H
#define BASE_BUF_H

#include <stdarg.h>
#include <stddef.h>

/* text is always ended by a NUL once anything was added; NULL before that. */
struct buf {
  char *text;
  size_t len, room;
};

void buf_add(struct buf *b, const char *text);
void buf_addn(struct buf *b, const char *text, size_t len);
void buf_addf(struct buf *b, const char *format, ...) __attribute__((format(printf, 2, 3)));
void buf_addv(struct buf *b, const char *format, va_list args) __attribute__((format(printf, 2, 0)));
const char *buf_text(const struct buf *b); /* "" when nothing was added */
void buf_free(struct buf *b);

#endif
