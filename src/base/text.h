/* text.h - looking at text that came from outside. */
#ifndef BASE_TEXT_H
#define BASE_TEXT_H

#include <stdbool.h>
#include <stddef.h>

struct buf;

/* Byte offset of the first byte that is not valid UTF-8, or of the first NUL;
 * len when all is well. Overlong forms and surrogates count as invalid. */
size_t text_bad_byte(const char *text, size_t len);

/* Bytes of the UTF-8 character at the beginning of text (len of at least 1), 0 when there is
 * none or it is a NUL. */
size_t text_character(const char *text, size_t len);

/* Columns that UTF-8 text takes, one per code point. */
size_t text_columns(const char *text);

/* Number of single-character edits (insert, delete, change, swap neighbours)
 * between two words; gives up and returns limit + 1 above the limit. Words longer
 * than 64 bytes are never near. Damerau's restricted distance. */
int text_distance(const char *a, const char *b, int limit);

/* The word of the list nearest to `word`, or NULL when none is near enough (a third
 * of its length, at least 2 edits). list holds count strings. */
const char *text_nearest(const char *word, const char *const *list, size_t count);

/* Adds text wrapped to `width` columns; the first line starts after `first`, later
 * ones after `rest`. A line break in text is kept. No line break at the end. */
void text_wrap(struct buf *out, const char *text, int width, const char *first, const char *rest);

/* Copies text to out (size bytes with the end mark), cut between characters where it is too
 * long; control characters become spaces. */
void text_cut(char *out, size_t size, const char *text);

/* ASCII letters made small, in place; other bytes stay. */
void text_lower(char *text);

/* Is text made of lower-case letters, digits and single hyphens, letter first? */
bool text_is_id(const char *text);

#endif
