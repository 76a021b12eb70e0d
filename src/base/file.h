/* file.h - whole files, read and written safely. */
#ifndef BASE_FILE_H
#define BASE_FILE_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"

/* Reads all of path ("-" = standard input) into *out, ended by a NUL that len does
 * not count; the caller frees. More than max bytes is refused (EX_DATAERR), a missing
 * file is EX_NOINPUT, an I/O error EX_IOERR, a folder EX_NOINPUT. */
int file_read(const char *path, size_t max, char **out, size_t *len, struct err *e);

/* Writes len bytes to path so that either the old or the new content is there
 * whatever happens: temporary file beside it, fsync, rename. Mode 0600. */
int file_replace(const char *path, const char *text, size_t len, struct err *e);

/* Makes the folder and those above it, mode 0700. Existing ones are left alone. */
int file_make_folder(const char *path, struct err *e);

/* Joins a and b with one slash; the caller frees. */
char *file_join(const char *a, const char *b);

#endif
