/* expect.c - see expect.h. */
#include "expect.h"

#include <dirent.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "base/file.h"
#include "report/parts.h"
#include "shop/casefile.h"

enum { NOT_THERE = 9999, NO_RANK = 10000 };

int case_file_read(const struct knowledge *k, const char *path, struct case_file *out, struct err *e)
{
  char *text = NULL;
  size_t len;
  int status = file_read(path, JSON_MAX_BYTES, &text, &len, e);

  *out = (struct case_file){0};
  if (status == 0) status = json_read(path, text, len, &out->json, e);
  free(text);
  if (status) return status;
  out->want = json_member(out->json, "expect");
  if (!json_member(out->json, "case") || !out->want)
    status = err_set(e, EX_DATAERR, path, 0, "lacks \"case\" or \"expect\"");
  if (status == 0) status = casefile_read(k, path, json_member(out->json, "case"), &out->c, e);
  if (status) {
    json_free(out->json);
    return status;
  }
  out->path = mem_new(strlen(path) + 1);
  memcpy(out->path, path, strlen(path));
  return 0;
}

void case_file_free(struct case_file *f)
{
  case_free(&f->c);
  json_free(f->json);
  free(f->path);
}

/* ---- expectations --------------------------------------------------------------------- */

static size_t rank_of(const struct knowledge *k, const struct assessment *a, const char *id)
{
  for (size_t i = 0; i < a->ranking_count; i++)
    if (strcmp(part_fault_id(k, a->ranking[i].fault), id) == 0) return i;
  return NOT_THERE;
}

static void complain(struct buf *b, const char *what, const char *id, size_t rank)
{
  buf_addf(b, "%s%s %s", b->len ? "; " : "", what, id);
  if (rank < NOT_THERE) buf_addf(b, " is number %zu", rank + 1);
  else if (rank == NOT_THERE) buf_add(b, " is not a fault of this machine");
}

/* Names a fault that there is: a name that is not known is a mistake in the case file. */
static void known(const struct knowledge *k, enum entry_kind kind, const char *id, struct buf *b)
{
  if (knowledge_find(k, kind, id) < 0 && strcmp(id, "not-listed") != 0)
    complain(b, "unknown id", id, NO_RANK);
}

/* Must the faults of a member rank in [from, to)? Each that does not is complained of. */
static void check_rank(const struct knowledge *k, const struct assessment *a, const struct json *want,
                       const char *member, size_t from, size_t to, struct buf *b)
{
  const struct json *m = json_member(want, member);
  const struct json *i = m && json_kind(m) == JSON_LIST ? json_first(m) : m;

  for (; i; i = i == m ? NULL : json_next(i)) {
    size_t rank = rank_of(k, a, json_text(i));

    known(k, ENTRY_FAULT, json_text(i), b);
    if (rank < from || rank >= to) complain(b, member, json_text(i), rank);
  }
}

static void check_cautions(const struct knowledge *k, const struct bench_case *c, const struct assessment *a,
                           const struct json *want, struct buf *b)
{
  const struct json *list = json_member(want, "cautions");
  int *ids = mem_array(k->caution_count + 1, sizeof *ids);
  size_t count = part_cautions(k, c, a, ids);

  for (const struct json *i = list ? json_first(list) : NULL; i; i = json_next(i)) {
    bool shown = false;

    known(k, ENTRY_CAUTION, json_text(i), b);
    for (size_t j = 0; j < count; j++) shown = shown || strcmp(k->cautions[ids[j]].id, json_text(i)) == 0;
    if (!shown) complain(b, "caution not shown", json_text(i), NO_RANK);
  }
  free(ids);
}

static void check_disposition(const struct knowledge *k, const struct assessment *a, const struct json *want,
                              struct buf *b)
{
  const struct json *d = json_member(want, "disposition");
  int top = a->ranking[0].fault;

  if (!d) return;
  if (strcmp(json_text(d), "not-accused") == 0) { /* no broken part may be taken as found */
    if (a->disposition == DISPOSITION_REPAIR && strcmp(k->faults[top].sort, "use") != 0)
      complain(b, "accused", k->faults[top].id, NO_RANK);
  } else if (strcmp(json_text(d), disposition_name(a->disposition)) != 0) {
    complain(b, "disposition is", disposition_name(a->disposition), NO_RANK);
  }
}

/* The first recommended check must be one of these; with a repair found there need be none. Where
 * the work was not planned in full there is nothing to compare. */
static void check_next(const struct knowledge *k, const struct assessment *a, const struct json *want,
                       struct buf *b)
{
  const struct json *list = json_member(want, "next");
  bool good = !list || !a->advised || a->disposition != DISPOSITION_KEEP_LOOKING;

  for (const struct json *i = list ? json_first(list) : NULL; i; i = json_next(i)) {
    int check = knowledge_find(k, ENTRY_CHECK, json_text(i));

    known(k, ENTRY_CHECK, json_text(i), b);
    good = good || (a->plan.count > 0 && a->plan.steps[0].check == check);
  }
  if (!good) complain(b, "next is", a->plan.count ? k->checks[a->plan.steps[0].check].id : "nothing", NO_RANK);
}

bool expects_next(const struct case_file *f) { return json_member(f->want, "next") != NULL; }

const char *const expect_members[EXPECT_MEMBERS] = {
  "first", "first-three", "not-first", "not-in-first-three", "cautions", "disposition", "next"};

void expect_all(const struct knowledge *k, const struct case_file *f, const struct assessment *a,
                struct buf *b)
{
  struct expect_tally unread[EXPECT_MEMBERS] = {{0, 0}};

  expect_tallied(k, f, a, b, unread);
}

void expect_tallied(const struct knowledge *k, const struct case_file *f, const struct assessment *a,
                    struct buf *b, struct expect_tally *tally)
{
  size_t found = 0;

  for (const struct json *m = json_first(f->want); m; m = json_next(m)) {
    size_t i = 0;

    while (i < EXPECT_MEMBERS && strcmp(json_name(m), expect_members[i]) != 0) i++;
    if (i == EXPECT_MEMBERS) complain(b, "unknown expectation", json_name(m), NO_RANK);
    found++;
  }
  if (found == 0) complain(b, "expects", "nothing", NO_RANK);
  for (size_t i = 0; i < EXPECT_MEMBERS; i++) {
    static const size_t from[] = {0, 0, 1, 3}, to[] = {1, 3, NO_RANK, NO_RANK};
    size_t before = b->len;

    if (!json_member(f->want, expect_members[i])) continue;
    if (i < 4) check_rank(k, a, f->want, expect_members[i], from[i], to[i], b);
    else if (i == 4) check_cautions(k, &f->c, a, f->want, b);
    else if (i == 5) check_disposition(k, a, f->want, b);
    else check_next(k, a, f->want, b);
    tally[i].wanted++;
    tally[i].met += b->len == before;
  }
}

bool expects_fault(const struct case_file *f, const char *fault)
{
  for (const struct json *m = json_first(f->want); m; m = json_next(m)) {
    if (strcmp(json_text(m), fault) == 0) return true;
    for (const struct json *i = json_first(m); i; i = json_next(i))
      if (strcmp(json_text(i), fault) == 0) return true;
  }
  return false;
}

/* ---- files ---------------------------------------------------------------------------- */

struct names {
  char **items;
  size_t count, room;
};

static bool is_folder(const char *path)
{
  struct stat st;

  return stat(path, &st) == 0 && S_ISDIR(st.st_mode);
}

static void collect(struct names *n, const char *path)
{
  size_t len = strlen(path);
  struct dirent *entry;
  DIR *d;

  if (!is_folder(path)) {
    void *items = n->items;

    if (len < 5 || strcmp(path + len - 5, ".json") != 0) return;
    mem_grow(&items, &n->room, n->count + 1, sizeof *n->items);
    n->items = items;
    n->items[n->count] = mem_new(len + 1);
    memcpy(n->items[n->count++], path, len);
    return;
  }
  d = opendir(path);
  while (d && (entry = readdir(d))) {
    char *below;

    if (entry->d_name[0] == '.') continue;
    below = file_join(path, entry->d_name);
    collect(n, below);
    free(below);
  }
  if (d) closedir(d);
}

static int by_name(const void *a, const void *b) { return strcmp(*(char *const *)a, *(char *const *)b); }

char **find_json(const char *path, size_t *count)
{
  struct names n = {0};

  collect(&n, path);
  if (n.count > 1) qsort(n.items, n.count, sizeof *n.items, by_name);
  *count = n.count;
  return n.items;
}
