/* jobfile.h - jobs as JSON, one job on each line (docs/schema/job-1.json).
 *
 * What was exported, imported elsewhere and exported again is the same byte for byte. */
#ifndef SHOP_JOBFILE_H
#define SHOP_JOBFILE_H

#include <stdio.h>

#include "base/buf.h"
#include "shop/job.h"

#define JOBFILE_VERSION "job-1"

/* Adds one job with its newline. EX_DATAERR when what is kept in it is no JSON. */
int jobfile_line(struct buf *out, const char *id, int64_t opened, const struct store_entries *entries,
                 struct err *e);

/* Writes one job, or all of them in the order of their ids (id NULL). EX_IOERR when the file
 * cannot be written. */
int jobfile_export(struct store *s, const char *id, FILE *to, size_t *jobs, struct err *e);

/* Takes in every job of the file, all or nothing; name is for messages, which carry the
 * line. Entries that are here already are passed over. Counts the jobs and entries that were
 * new. EX_DATAERR for a line that is not a job of this version. */
struct jobfile_counts { size_t lines, jobs, entries; };
int jobfile_import(struct store *s, const struct knowledge *k, FILE *from, const char *name,
                   struct jobfile_counts *counts, struct err *e);

#endif
