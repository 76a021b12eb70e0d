/* err.c - see err.h. */
#include "base/err.h"

#include <stdarg.h>
#include <stdio.h>

int err_set(struct err *e, int status, const char *file, int line, const char *format, ...)
{
  va_list args;

  e->status = status;
  e->line = line;
  snprintf(e->file, sizeof e->file, "%s", file ? file : "");
  va_start(args, format);
  vsnprintf(e->text, sizeof e->text, format, args);
  va_end(args);
  for (char *c = e->text; *c; c++) /* what came from outside must not take hold of a screen */
    if (((unsigned char)*c < 0x20 && *c != '\n') || *c == 0x7F) *c = '?';
  return status;
}

void err_format(const struct err *e, char *out, unsigned long size)
{
  if (e->file[0] && e->line > 0) snprintf(out, size, "%s:%d: %s", e->file, e->line, e->text);
  else if (e->file[0]) snprintf(out, size, "%s: %s", e->file, e->text);
  else snprintf(out, size, "%s", e->text);
}
