/* desk_store.c - jobs in and out, and whole stores; see desk.h. */
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "cli/desk.h"
#include "shop/jobfile.h"

/* Into a file that only its owner can read: what owners say is nobody else's. */
static FILE *open_out(const char *path, struct err *e)
{
  int fd = open(path, O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  FILE *f = fd >= 0 ? fdopen(fd, "w") : NULL;

  if (!f) err_set(e, EX_CANTCREAT, path, 0, "cannot be written: %s.", strerror(errno));
  return f;
}

int desk_export(struct desk *d, struct err *e)
{
  char id[STORE_ID] = "";
  FILE *to = stdout;
  size_t jobs;
  int status = d->args->all ? 0 : desk_resolve(d, id, e);

  if (status == 0 && d->args->to) {
    to = open_out(d->args->to, e);
    if (!to) return EX_CANTCREAT;
  }
  if (status) return status;
  status = jobfile_export(d->store, d->args->all ? NULL : id, to, &jobs, e);
  if (to != stdout && fclose(to) != 0 && status == 0)
    status = err_set(e, EX_IOERR, d->args->to, 0, "cannot be written: %s.", strerror(errno));
  if (status == 0 && to != stdout) printf("%zu jobs written to %s.\n", jobs, d->args->to);
  return status;
}

int desk_import(struct desk *d, struct err *e)
{
  const char *path = d->args->positional[1];
  bool is_stdin = strcmp(path, "-") == 0;
  FILE *from = is_stdin ? stdin : fopen(path, "r");
  struct jobfile_counts counts;
  int status;

  if (!from)
    return err_set(e, errno == EACCES ? EX_NOPERM : EX_NOINPUT, path, 0, "cannot be opened: %s.",
                   strerror(errno));
  status = jobfile_import(d->store, &d->k, from, is_stdin ? "standard input" : path, &counts, e);
  if (!is_stdin) fclose(from);
  if (status == 0)
    printf("%zu %s and %zu %s were new.\n", counts.jobs, counts.jobs == 1 ? "job" : "jobs", counts.entries,
           counts.entries == 1 ? "entry" : "entries");
  return status;
}

int desk_backup(struct desk *d, struct err *e)
{
  int status = store_backup(d->store, d->args->positional[1], e);

  if (status == 0) printf("The whole store was copied to %s.\n", d->args->positional[1]);
  return status;
}

int desk_restore(struct desk *d, struct err *e)
{
  char kept[500];
  int status = store_restore(d->folder, d->args->positional[1], kept, sizeof kept, e);

  if (status == 0) printf("The store is now what %s holds.\n", d->args->positional[1]);
  if (*kept) printf("What was there before is kept as %s.\n", kept);
  return status;
}

int desk_merge(struct desk *d, struct err *e)
{
  size_t added;
  int status = job_merge(d->store, &d->k, d->args->positional[1], &added, e);

  if (status == 0) printf("%zu %s new.\n", added, added == 1 ? "entry was" : "entries were");
  return status;
}
