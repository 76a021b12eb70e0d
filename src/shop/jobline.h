/* jobline.h - reads a line that jobfile_line wrote, just as it wrote it, without building a
 * tree: most of what is ever imported, and many times quicker. */
#ifndef SHOP_JOBLINE_H
#define SHOP_JOBLINE_H

#include "shop/store.h"

/* Texts of the entries stand in the line itself. The lists are kept from call to call; free
 * with jobline_free in the end. Begin with all zero. */
struct jobline {
  char id[STORE_ID];
  int64_t opened;
  struct store_entries entries;
  char **ends; /* of the bodies */
  size_t end_room;
};

/* True when the line is of exactly that form, and anything else would read it the same; it
 * then holds the texts, ended by NULs. False: the line is as it was, and is for the reader of
 * all JSON, which takes it or says what is wrong. len does not count the NUL at its end. */
bool jobline_read(char *line, size_t len, struct jobline *out);
void jobline_free(struct jobline *j);

#endif
