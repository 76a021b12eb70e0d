/* desk.h - what the files of the command "job" share. */
#ifndef CLI_DESK_H
#define CLI_DESK_H

#include "base/buf.h"
#include "cli/commands.h"
#include "shop/job.h"

/* One call of the command. words are the operands from `from` on, parted by blanks. */
struct desk {
  const struct args *args;
  const char *who;
  struct knowledge k;
  struct store *store; /* NULL for restore */
  char *folder;
};

/* The operands from `from` on as one text, which the caller frees. */
char *desk_words(const struct desk *d, int from);

/* The job named by operand 1 ("last": the open one last worked on). */
int desk_resolve(const struct desk *d, char id[STORE_ID], struct err *e);
int desk_read(const struct desk *d, struct job *out, struct err *e);

/* Writes the news of a job, frees them, and says so. */
int desk_write(const struct desk *d, const char *id, struct job_news *n, struct err *e);

/* What people call a job by. */
const char *desk_name(const char *id);

/* The verbs. */
int desk_open(struct desk *d, struct err *e);
int desk_add(struct desk *d, struct err *e);
int desk_back(struct desk *d, struct err *e);
int desk_close(struct desk *d, struct err *e);
int desk_reopen(struct desk *d, struct err *e);
int desk_list(struct desk *d, struct err *e);
int desk_find(struct desk *d, struct err *e);
int desk_show(struct desk *d, struct err *e);
int desk_export(struct desk *d, struct err *e);
int desk_import(struct desk *d, struct err *e);
int desk_backup(struct desk *d, struct err *e);
int desk_restore(struct desk *d, struct err *e);
int desk_merge(struct desk *d, struct err *e);

#endif
