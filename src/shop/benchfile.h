/* benchfile.h - the job on the bench, kept on disk after every entry. */
#ifndef SHOP_BENCHFILE_H
#define SHOP_BENCHFILE_H

#include "base/err.h"
#include "model/case.h"

/* The folder for open jobs, $XDG_STATE_HOME/pullcord or ~/.local/state/pullcord, made if
 * need be (mode 0700). The caller frees. EX_CONFIG when neither is set. */
int bench_folder(char **out, struct err *e);

/* Keeps the case, with the owner's words, so that either the old or the new one is on disk
 * whatever happens. */
int bench_keep(const char *folder, const struct knowledge *k, const struct bench_case *c,
               const char *words, struct err *e);

/* Reads the kept job into *c (the caller frees) and *words (the caller frees). EX_NOINPUT
 * when there is none. */
int bench_resume(const char *folder, const struct knowledge *k, struct bench_case *c, char **words,
                 struct err *e);

/* Puts the kept job aside under its number, so that a new one can begin; nothing is lost.
 * The name it got is written to where (size bytes). */
int bench_set_aside(const char *folder, char *where, size_t size, struct err *e);

#endif
