/* jobfile.c - see jobfile.h. */
#include "shop/jobfile.h"

#include <errno.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>

#include "base/mem.h"
#include "shop/jobline.h"

/* ---- writing ------------------------------------------------------------------------------ */

/* As the JSON library writes it: bytes above ASCII as they are. */
static void add_text(struct buf *out, const char *text)
{
  size_t plain;

  buf_addn(out, "\"", 1);
  while (*text) {
    for (plain = 0; (unsigned char)text[plain] >= 0x20 && text[plain] != '"' && text[plain] != '\\'; plain++)
      continue;
    if (plain) buf_addn(out, text, plain);
    text += plain;
    if (!*text) break;
    if (*text == '"' || *text == '\\') buf_addf(out, "\\%c", *text);
    else if (*text == '\n') buf_add(out, "\\n");
    else if (*text == '\t') buf_add(out, "\\t");
    else if (*text == '\r') buf_add(out, "\\r");
    else if (*text == '\b') buf_add(out, "\\b");
    else if (*text == '\f') buf_add(out, "\\f");
    else buf_addf(out, "\\u%04x", (unsigned char)*text);
    text++;
  }
  buf_addn(out, "\"", 1);
}

int jobfile_line(struct buf *out, const char *id, int64_t opened, const struct store_entries *entries,
                 struct err *e)
{
  buf_addf(out, "{\"pullcord\":\"%s\",\"id\":\"%s\",\"opened\":%lld,\"entries\":[", JOBFILE_VERSION, id,
           (long long)opened);
  for (size_t i = 0; i < entries->count; i++) {
    const struct store_entry *x = &entries->items[i];

    if (x->body[0] != '{')
      return err_set(e, EX_DATAERR, NULL, 0, "job %s: entry %s is no JSON object.", id, x->uid);
    buf_addf(out, "%s{\"uid\":\"%s\",\"number\":%lld,\"at\":%lld,\"who\":", i ? "," : "", x->uid,
             (long long)x->number, (long long)x->at);
    add_text(out, x->who);
    buf_add(out, ",\"kind\":");
    add_text(out, x->kind);
    buf_add(out, ",\"body\":");
    buf_add(out, x->body);
    buf_addn(out, "}", 1);
  }
  buf_add(out, "]}\n");
  return 0;
}

struct exporting { FILE *to; struct buf line; size_t jobs; };

static int export_one(void *context, const char *job, int64_t opened, const struct store_entries *entries,
                      struct err *e)
{
  struct exporting *x = context;
  int status;

  x->line.len = 0;
  status = jobfile_line(&x->line, job, opened, entries, e);
  if (status) return status;
  x->jobs++;
  if (fwrite(x->line.text, 1, x->line.len, x->to) == x->line.len) return 0;
  return err_set(e, EX_IOERR, NULL, 0, "the jobs cannot be written: %s.", strerror(errno));
}

int jobfile_export(struct store *s, const char *id, FILE *to, size_t *jobs, struct err *e)
{
  struct exporting x = {.to = to};
  struct store_entries entries;
  struct store_jobs row;
  int status;

  if (!id) status = store_walk(s, export_one, &x, e);
  else {
    status = store_row(s, id, &row, e);
    if (status) return status;
    status = store_entries(s, id, &entries, e);
    if (status == 0) status = export_one(&x, id, row.items[0].opened, &entries, e);
    if (status == 0) store_entries_free(&entries);
    store_jobs_free(&row);
  }
  if (status == 0 && fflush(to) != 0)
    status = err_set(e, EX_IOERR, NULL, 0, "the jobs cannot be written: %s.", strerror(errno));
  buf_free(&x.line);
  *jobs = x.jobs;
  return status;
}

/* ---- reading ------------------------------------------------------------------------------ */

static bool whole_number(const struct json *j, int64_t *out)
{
  double n = j ? json_number(j) : -1;

  if (!j || json_kind(j) != JSON_NUMBER || n < 0 || n > 9e15 || n != floor(n)) return false;
  *out = (int64_t)n;
  return true;
}

/* Just these members, each of its kind, in any order. */
static bool has_just(const struct json *object, const char *const *names, const enum json_kind *kinds,
                     size_t count)
{
  size_t seen = 0;

  if (!object || json_kind(object) != JSON_OBJECT) return false;
  for (const struct json *m = json_first(object); m; m = json_next(m)) {
    size_t i = 0;

    while (i < count && strcmp(names[i], json_name(m)) != 0) i++;
    if (i == count || json_kind(m) != kinds[i]) return false;
    seen++;
  }
  return seen == count;
}

static bool read_entry(const struct json *j, struct store_entry *out)
{
  static const char *const names[] = {"uid", "number", "at", "who", "kind", "body"};
  static const enum json_kind kinds[] = {JSON_TEXT, JSON_NUMBER, JSON_NUMBER,
                                         JSON_TEXT, JSON_TEXT,   JSON_OBJECT};
  const char *uid, *who, *kind;

  if (!has_just(j, names, kinds, 6) || !whole_number(json_member(j, "number"), &out->number) ||
      !whole_number(json_member(j, "at"), &out->at))
    return false;
  uid = json_text(json_member(j, "uid"));
  who = json_text(json_member(j, "who"));
  kind = json_text(json_member(j, "kind"));
  if (strlen(uid) != STORE_ID - 1 || !*kind) return false;
  memcpy(out->uid, uid, STORE_ID);
  out->who = mem_new(strlen(who) + 1);
  strcpy(out->who, who);
  out->kind = mem_new(strlen(kind) + 1);
  strcpy(out->kind, kind);
  out->body = json_print_line(json_member(j, "body"));
  return true;
}

static bool read_entries(const struct json *list, struct store_entries *out)
{
  for (const struct json *i = json_first(list); i; i = json_next(i)) {
    void *items = out->items;

    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    if (!read_entry(i, &out->items[out->count])) return false;
    out->count++;
  }
  return true;
}

static int import_line(struct store *s, const struct knowledge *k, const char *name, int line,
                       const char *text, size_t len, struct jobfile_counts *counts, struct err *e)
{
  static const char *const names[] = {"pullcord", "id", "opened", "entries"};
  static const enum json_kind kinds[] = {JSON_TEXT, JSON_TEXT, JSON_NUMBER, JSON_LIST};
  struct store_entries entries = {0};
  struct json *j = NULL;
  int64_t opened;
  bool new = false;
  int status = json_read(name, text, len, &j, e);

  if (status) {
    e->line = line;
    return status;
  }
  if (json_kind(j) == JSON_OBJECT && strcmp(json_text(json_member(j, "pullcord")), JOBFILE_VERSION) != 0)
    status =
        err_set(e, EX_DATAERR, name, line, "is no job of version " JOBFILE_VERSION ". Nothing was taken in.");
  else if (!has_just(j, names, kinds, 4) || !whole_number(json_member(j, "opened"), &opened) ||
           !read_entries(json_member(j, "entries"), &entries))
    status = err_set(e, EX_DATAERR, name, line,
                     "is not a whole job (see docs/schema/job-1.json). Nothing was taken in.");
  else status = job_take(s, k, json_text(json_member(j, "id")), opened, &entries, &new, &counts->entries, e);
  counts->jobs += new;
  store_entries_free(&entries);
  json_free(j);
  return status;
}

static int import_lines(struct store *s, const struct knowledge *k, FILE *from, const char *name,
                        struct jobfile_counts *counts, struct err *e)
{
  struct jobline job = {0};
  char *line = NULL;
  size_t room = 0;
  ssize_t len;
  int status = 0;

  while (status == 0 && (len = getline(&line, &room, from)) >= 0) {
    while (len > 0 && (line[len - 1] == '\n' || line[len - 1] == '\r')) len--;
    line[len] = '\0';
    counts->lines++;
    if (len == 0) continue;
    if (jobline_read(line, (size_t)len, &job)) {
      bool new = false;

      status = job_take(s, k, job.id, job.opened, &job.entries, &new, &counts->entries, e);
      counts->jobs += new;
    } else status = import_line(s, k, name, (int)counts->lines, line, (size_t)len, counts, e);
  }
  if (status == 0 && ferror(from))
    status = err_set(e, EX_IOERR, name, 0, "cannot be read: %s.", strerror(errno));
  free(line);
  jobline_free(&job);
  return status;
}

int jobfile_import(struct store *s, const struct knowledge *k, FILE *from, const char *name,
                   struct jobfile_counts *counts, struct err *e)
{
  int status = store_batch_begin(s, e);
  struct err other;

  *counts = (struct jobfile_counts){0};
  if (status) return status;
  status = import_lines(s, k, from, name, counts, e);
  if (status == 0) return store_batch_end(s, true, e);
  store_batch_end(s, false, &other);
  return status;
}
