/* find.h - where the knowledge lies: the shipped folder and the person's own. */
#ifndef KNOWLEDGE_FIND_H
#define KNOWLEDGE_FIND_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"

/* One file of knowledge. name is its path below the folder ("facts/fuel/tank.clp");
 * shown is what messages call it (own files: with their folder). */
struct knowledge_file {
  char *name, *path, *shown;
  bool own;      /* from the person's own folder */
  bool replaces; /* and takes the place of a shipped one */
};

struct knowledge_files {
  struct knowledge_file *items;
  size_t count, room, bytes;
};

/* The shipped folder: $PULLCORD_KNOWLEDGE, else share/pullcord beside the folder of the
 * program. The caller frees. EX_CONFIG with advice when there is none. */
int find_shipped(char **out, struct err *e);

/* The person's own folder, $XDG_DATA_HOME/pullcord or ~/.local/share/pullcord, whether
 * or not it exists; NULL when neither is set. The caller frees. */
char *find_own(void);

/* All *.clp files in facts/ and rules/ of `shipped`, then those of `own` (may be NULL): an
 * own file of the same name replaces, others add and come last. Sorted by name, so that
 * nothing depends on the order of a folder. More than 2000 files or 32 MiB are refused.
 * The caller frees with find_free. */
int find_files(const char *shipped, const char *own, struct knowledge_files *out, struct err *e);

void find_free(struct knowledge_files *files);

#endif
