/* file.c - see file.h. */
#include "base/file.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/buf.h"
#include "base/mem.h"

static int read_all(int fd, const char *name, size_t max, struct buf *b, struct err *e)
{
  char piece[65536];

  for (;;) {
    ssize_t n = read(fd, piece, sizeof piece);

    if (n < 0 && errno == EINTR) continue;
    if (n < 0) {
      int status = errno == EISDIR ? EX_NOINPUT : EX_IOERR;

      return err_set(e, status, name, 0, "cannot be read: %s.", strerror(errno));
    }
    if (n == 0) return 0;
    if ((size_t)n > max - b->len)
      return err_set(e, EX_DATAERR, name, 0,
                     "is larger than %zu bytes, which is more than such a file can need.", max);
    buf_addn(b, piece, (size_t)n);
  }
}

int file_read(const char *path, size_t max, char **out, size_t *len, struct err *e)
{
  bool is_stdin = strcmp(path, "-") == 0;
  const char *name = is_stdin ? "standard input" : path;
  int fd = is_stdin ? STDIN_FILENO : open(path, O_RDONLY | O_CLOEXEC);
  struct buf b = {0};
  int status;

  if (fd < 0) {
    int kind = errno == EACCES ? EX_NOPERM : EX_NOINPUT;

    return err_set(e, kind, path, 0, "cannot be opened: %s.", strerror(errno));
  }
  buf_add(&b, "");
  status = read_all(fd, name, max, &b, e);
  if (!is_stdin) close(fd);
  if (status) {
    buf_free(&b);
    return status;
  }
  *out = b.text;
  *len = b.len;
  return 0;
}

static int write_all(int fd, const char *text, size_t len)
{
  while (len > 0) {
    ssize_t n = write(fd, text, len);

    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return -1;
    text += n;
    len -= (size_t)n;
  }
  return 0;
}

int file_replace(const char *path, const char *text, size_t len, struct err *e)
{
  struct buf tmp = {0};
  int fd, status = 0;

  buf_addf(&tmp, "%s.%ld.tmp", path, (long)getpid());
  fd = open(tmp.text, O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (fd < 0) {
    status = err_set(e, EX_CANTCREAT, path, 0, "cannot be written: %s. The old one is as it was.",
                     strerror(errno));
    buf_free(&tmp);
    return status;
  }
  if (write_all(fd, text, len) != 0 || fsync(fd) != 0) status = errno;
  if (close(fd) != 0 && status == 0) status = errno;
  if (status == 0 && rename(tmp.text, path) != 0) status = errno;
  if (status != 0) {
    unlink(tmp.text);
    status = err_set(e, EX_IOERR, path, 0, "cannot be written: %s. The old one is as it was.",
                     strerror(status));
  }
  buf_free(&tmp);
  return status;
}

int file_make_folder(const char *path, struct err *e)
{
  char *copy = file_join(path, "");
  int status = 0;

  for (char *p = copy + 1; *p && status == 0; p++) {
    if (*p != '/') continue;
    *p = '\0';
    if (mkdir(copy, 0700) != 0) {
      struct stat st;
      int why = errno;

      if (why == EEXIST && (stat(copy, &st) != 0 || !S_ISDIR(st.st_mode))) why = ENOTDIR;
      if (why != EEXIST) status = err_set(e, EX_CANTCREAT, copy, 0, "cannot be made: %s.", strerror(why));
    }
    *p = '/';
  }
  free(copy);
  return status;
}

char *file_join(const char *a, const char *b)
{
  size_t la = strlen(a), lb = strlen(b);
  char *p = mem_new(la + lb + 2);

  memcpy(p, a, la);
  if (la == 0 || a[la - 1] != '/') p[la++] = '/';
  memcpy(p + la, b, lb);
  return p;
}
