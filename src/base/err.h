/* err.h - what went wrong, where, and what to do about it. */
#ifndef BASE_ERR_H
#define BASE_ERR_H

#include <sysexits.h>

/* One failure. status is a sysexits value (0 = no failure); file may be empty,
 * line 0 when there is none. text is one sentence or two: what is wrong and what
 * to do. Lower layers fill it; nobody overwrites it on the way up. */
struct err {
  int status;
  int line;
  char file[256];
  char text[768];
};

/* Sets *e and returns status, so that callers can `return err_set(...)`.
 * file may be NULL; line 0 for none. e may not be NULL. Text too long is cut, and control
 * characters in it become "?". */
int err_set(struct err *e, int status, const char *file, int line, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* Writes "file:line: text" (or just the text) into out, always ended. */
void err_format(const struct err *e, char *out, unsigned long size);

#endif
