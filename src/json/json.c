/* json.c - see json.h. */
#include "json/json.h"

#include <cjson/cJSON.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/mem.h"
#include "base/text.h"

/* A struct json is the library's node under another name, so that nobody else sees it. */
static cJSON *in(struct json *j) { return (cJSON *)(void *)j; }
static const cJSON *look(const struct json *j) { return (const cJSON *)(const void *)j; }
static struct json *out_of(cJSON *c) { return (struct json *)(void *)c; }
static const struct json *show(const cJSON *c) { return (const struct json *)(const void *)c; }

static int line_at(const char *text, size_t at)
{
  int line = 1;

  for (size_t i = 0; i < at; i++) line += text[i] == '\n';
  return line;
}

/* What the library does not refuse: depth over our limit, zeros written as \u0000, and
 * control characters in texts (RFC 8259 section 7 wants them escaped). */
static int scan(const char *file, const char *text, size_t len, struct err *e)
{
  bool quoted = false;
  int depth = 0;

  for (size_t i = 0; i < len; i++) {
    if (quoted) {
      if ((unsigned char)text[i] < 0x20)
        return err_set(e, EX_DATAERR, file, line_at(text, i),
                       "a text holds a line break or another control character. Is a quote missing?");
      if (text[i] == '\\') {
        if (len - i > 5 && memcmp(text + i, "\\u0000", 6) == 0)
          return err_set(e, EX_DATAERR, file, line_at(text, i), "a text holds a zero character. Take it out.");
        i++;
      } else if (text[i] == '"') quoted = false;
    } else if (text[i] == '"') {
      quoted = true;
    } else if (text[i] == '{' || text[i] == '[') {
      if (++depth > JSON_MAX_DEPTH)
        return err_set(e, EX_DATAERR, file, line_at(text, i), "lists are nested more than 64 deep.");
    } else if (text[i] == '}' || text[i] == ']') {
      depth--;
    }
  }
  return 0;
}

static int refuse_twins_in(const char *file, const cJSON *object, struct err *e)
{
  size_t seen = 0;

  for (const cJSON *x = object->child; x; x = x->next) {
    for (const cJSON *y = object->child; y != x; y = y->next)
      if (strcmp(y->string, x->string) == 0)
        return err_set(e, EX_DATAERR, file, 0, "\"%s\" is given twice in one object.", x->string);
    if (++seen > 1000) return err_set(e, EX_DATAERR, file, 0, "an object has more than 1000 members.");
  }
  return 0;
}

/* Walks the whole tree with a list of its own: one waiting neighbour per level. */
static int refuse_twins(const char *file, const cJSON *root, struct err *e)
{
  const cJSON *waiting[2 * JSON_MAX_DEPTH + 4];
  size_t depth = 0;
  int status = 0;

  waiting[depth++] = root;
  while (depth > 0 && status == 0) {
    const cJSON *n = waiting[--depth];

    if (cJSON_IsObject(n)) status = refuse_twins_in(file, n, e);
    if (n->next) waiting[depth++] = n->next;
    if (n->child) waiting[depth++] = n->child;
  }
  return status;
}

int json_read(const char *file, const char *text, size_t len, struct json **out, struct err *e)
{
  size_t bad = text_bad_byte(text, len);
  const char *end = NULL;
  cJSON *root;
  int status;

  if (len > JSON_MAX_BYTES)
    return err_set(e, EX_DATAERR, file, 0, "is larger than 8 MiB, which no case needs.");
  if (bad < len)
    return err_set(e, EX_DATAERR, file, line_at(text, bad),
                   text[bad] ? "holds bytes that are not UTF-8 text." : "holds a zero byte.");
  status = scan(file, text, len, e);
  if (status) return status;
  root = cJSON_ParseWithLengthOpts(text, len, &end, 0);
  while (root && end < text + len && strchr(" \t\r\n", *end)) end++;
  if (!root || end != text + len) {
    size_t at = end ? (size_t)(end - text) : 0;

    cJSON_Delete(root);
    return err_set(e, EX_DATAERR, file, line_at(text, at < len ? at : len),
                   len == 0 ? "is empty." : "is not JSON from here on.");
  }
  status = refuse_twins(file, root, e);
  if (status) cJSON_Delete(root);
  else *out = out_of(root);
  return status;
}

void json_free(struct json *j) { cJSON_Delete(in(j)); }

enum json_kind json_kind(const struct json *j)
{
  const cJSON *c = look(j);

  if (cJSON_IsObject(c)) return JSON_OBJECT;
  if (cJSON_IsArray(c)) return JSON_LIST;
  if (cJSON_IsString(c)) return JSON_TEXT;
  if (cJSON_IsNumber(c)) return JSON_NUMBER;
  return cJSON_IsBool(c) ? JSON_BOOL : JSON_NULL;
}

const char *json_kind_name(enum json_kind k)
{
  static const char *const names[] = {"null", "true or false", "a number", "a text", "a list", "an object"};

  return names[k];
}

const struct json *json_member(const struct json *object, const char *name)
{
  return show(cJSON_GetObjectItemCaseSensitive(look(object), name));
}

const struct json *json_first(const struct json *j) { return show(look(j)->child); }
const struct json *json_next(const struct json *j) { return show(look(j)->next); }
const char *json_name(const struct json *j) { return look(j)->string ? look(j)->string : ""; }

const char *json_text(const struct json *j)
{
  const char *text = j ? cJSON_GetStringValue(look(j)) : NULL;

  return text ? text : "";
}

double json_number(const struct json *j) { return j && cJSON_IsNumber(look(j)) ? look(j)->valuedouble : 0; }
bool json_true(const struct json *j) { return j && cJSON_IsTrue(look(j)); }

/* ---- writing ------------------------------------------------------------------------- */

static cJSON *made(cJSON *c)
{
  if (!c) {
    free(mem_new(0)); /* says so and ends when memory is truly gone */
    abort();
  }
  return c;
}

struct json *json_object(void) { return out_of(made(cJSON_CreateObject())); }
struct json *json_list(void) { return out_of(made(cJSON_CreateArray())); }

void json_put(struct json *object, const char *name, struct json *value)
{
  cJSON_AddItemToObject(in(object), name, in(value));
}

void json_put_text(struct json *object, const char *name, const char *text)
{
  json_put(object, name, out_of(made(cJSON_CreateString(text))));
}

/* Six significant digits, printed by ourselves: the library's way depends on its version. */
void json_put_number(struct json *object, const char *name, double number)
{
  char text[40];

  if (!isfinite(number)) number = 0;
  snprintf(text, sizeof text, "%.6g", number == 0 ? 0.0 : number);
  json_put(object, name, out_of(made(cJSON_CreateRaw(text))));
}

void json_put_bool(struct json *object, const char *name, bool yes)
{
  json_put(object, name, out_of(made(cJSON_CreateBool(yes))));
}

void json_push(struct json *list, struct json *value) { cJSON_AddItemToArray(in(list), in(value)); }

void json_push_text(struct json *list, const char *text)
{
  json_push(list, out_of(made(cJSON_CreateString(text))));
}

char *json_print(const struct json *j)
{
  char *text = cJSON_Print(look(j)), *copy;
  size_t n;

  if (!text) made(NULL);
  n = strlen(text);
  copy = mem_new(n + 2);
  memcpy(copy, text, n);
  copy[n] = '\n';
  cJSON_free(text);
  return copy;
}

char *json_print_line(const struct json *j)
{
  char *text = cJSON_PrintUnformatted(look(j)), *copy;

  if (!text) made(NULL);
  copy = mem_new(strlen(text) + 1);
  strcpy(copy, text);
  cJSON_free(text);
  return copy;
}
