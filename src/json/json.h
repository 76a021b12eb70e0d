/* json.h - JSON in and out; the only folder that includes the JSON library.
 *
 * Reading gives a tree whose texts are checked: valid UTF-8, no NUL inside. */
#ifndef JSON_JSON_H
#define JSON_JSON_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"

struct json; /* one value; owned by its document */

enum json_kind { JSON_NULL, JSON_BOOL, JSON_NUMBER, JSON_TEXT, JSON_LIST, JSON_OBJECT };

/* Limits: 8 MiB of text, 64 levels, which no case comes near. */
enum { JSON_MAX_BYTES = 8 * 1024 * 1024, JSON_MAX_DEPTH = 64 };

/* Reads len bytes. file is for messages, which carry the line. EX_DATAERR for anything
 * that is not exactly one JSON value in UTF-8, for a member given twice, and for a zero or a
 * bare control character inside a text. The caller frees *out with json_free. */
int json_read(const char *file, const char *text, size_t len, struct json **out, struct err *e);
void json_free(struct json *j);

enum json_kind json_kind(const struct json *j);
const char *json_kind_name(enum json_kind k); /* "a number", "a list" ... */

/* Members and items; NULL when absent. */
const struct json *json_member(const struct json *object, const char *name);
const struct json *json_first(const struct json *j); /* first item or member */
const struct json *json_next(const struct json *j);
const char *json_name(const struct json *j); /* a member's name, "" for items */

const char *json_text(const struct json *j); /* "" when not a text */
double json_number(const struct json *j);    /* 0 when not a number */
bool json_true(const struct json *j);

/* The line (from 1) on which the value at a path stands in text that json_read took: "figures/2/low"
 * is the member low of the third item of the member figures; a member that is missing gives the line
 * of what it is missing from. Members whose names are written with escapes are not found. */
int json_line(const char *text, size_t len, const char *path);

/* Writing: build a value, then print it. A new value belongs to what it is put into, or
 * is freed with json_free. Numbers are printed with at most 6 significant digits, so that
 * the same belief prints the same bytes everywhere. */
struct json *json_object(void);
struct json *json_list(void);
void json_put(struct json *object, const char *name, struct json *value);
void json_put_text(struct json *object, const char *name, const char *text);
void json_put_number(struct json *object, const char *name, double number);
void json_put_bool(struct json *object, const char *name, bool yes);
void json_push(struct json *list, struct json *value);
void json_push_text(struct json *list, const char *text);

/* The printed value, ended by a newline; the caller frees. */
char *json_print(const struct json *j);

/* The same on one line without blanks and without a newline; what was read from such a line
 * prints the same again. The caller frees. */
char *json_print_line(const struct json *j);

#endif
