/* spec_folder.h - the folder of spec cards: specs/ in the person's own folder. */
#ifndef SHOP_SPEC_FOLDER_H
#define SHOP_SPEC_FOLDER_H

#include "shop/spec_card.h"

/* The folder, $XDG_DATA_HOME/pullcord/specs or ~/.local/share/pullcord/specs, whether or not it
 * exists. The caller frees. EX_CONFIG when neither variable is set. */
int spec_folder(char **out, struct err *e);

/* The cards of the folder, in the order of their ids. good is false for one that cannot be used:
 * its card then has id and path only, and why is the first thing wrong with it. */
struct spec_entry { struct spec_card card; bool good; struct err why; };
struct spec_entries { struct spec_entry *items; size_t count, room; };

/* Reads all cards (files NAME.json, NAME an id); none when the folder is not there. More than 2000
 * are refused (EX_DATAERR). Free with spec_entries_free. */
int spec_entries_read(const struct knowledge *k, struct spec_entries *out, struct err *e);
void spec_entries_free(struct spec_entries *list);

/* Places of the cards whose id, name, other names or class hold every word of `words` (or begin with
 * it), into out (room for list->count); returns how many. When there are none, *near gets the id
 * of the card whose name is nearest to the words, or NULL. A card that is called just so is the only one. */
size_t spec_find(const struct knowledge *k, const struct spec_entries *list, const char *words, size_t *out,
                 const char **near);

/* The card called so, by its id or its name in any case. EX_NOINPUT when there is none (the nearest is
 * named), EX_DATAERR when it is not good. Free *out with spec_free after success. */
int spec_called(const struct knowledge *k, const char *name, struct spec_card *out, struct err *e);

/* Writes a new card with all kinds of figures that the class can have (class_at -1: all kinds), still
 * blank, and gives its path, which the caller frees. EX_CANTCREAT when there is one of that name
 * already: nothing is ever overwritten. EX_DATAERR when no file can be named after it. */
int spec_new(const struct knowledge *k, const char *name, int class_at, char **path, struct err *e);

#endif
