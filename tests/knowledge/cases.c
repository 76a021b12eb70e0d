/* cases.c - runs the case files of tests/cases: what must come first, what must not, which
 * cautions must show, what is to be done. Usage: cases FOLDER... [--list] [--max-failures N] */
#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "assess/assess.h"
#include "base/buf.h"
#include "base/file.h"
#include "knowledge/load.h"
#include "report/parts.h"
#include "shop/casefile.h"

static size_t passed, failed;

static size_t rank_of(const struct knowledge *k, const struct assessment *a, const char *id)
{
  for (size_t i = 0; i < a->ranking_count; i++)
    if (strcmp(part_fault_id(k, a->ranking[i].fault), id) == 0) return i;
  return 9999;
}

static void complain(struct buf *b, const char *what, const char *id, size_t rank)
{
  buf_addf(b, "%s%s %s", b->len ? "; " : "", what, id);
  if (rank < 9999) buf_addf(b, " is number %zu", rank + 1);
  else if (rank == 9999) buf_add(b, " is not a fault of this machine");
}

/* Names a fault that there is: a name that is not known is a mistake in the case file. */
static void known(const struct knowledge *k, enum entry_kind kind, const char *id, struct buf *b)
{
  if (knowledge_find(k, kind, id) < 0 && strcmp(id, "not-listed") != 0) complain(b, "unknown id", id, 10000);
}

static void check_ranks(const struct knowledge *k, const struct assessment *a, const struct json *want,
                        struct buf *b)
{
  const struct json *first = json_member(want, "first");

  if (first) {
    known(k, ENTRY_FAULT, json_text(first), b);
    if (rank_of(k, a, json_text(first)) != 0) complain(b, "first", json_text(first), rank_of(k, a, json_text(first)));
  }
  for (const struct json *i = json_member(want, "first-three") ? json_first(json_member(want, "first-three")) : NULL; i;
       i = json_next(i)) {
    known(k, ENTRY_FAULT, json_text(i), b);
    if (rank_of(k, a, json_text(i)) > 2) complain(b, "first-three", json_text(i), rank_of(k, a, json_text(i)));
  }
  for (const struct json *i = json_member(want, "not-first") ? json_first(json_member(want, "not-first")) : NULL; i;
       i = json_next(i)) {
    known(k, ENTRY_FAULT, json_text(i), b);
    if (rank_of(k, a, json_text(i)) == 0) complain(b, "not-first", json_text(i), 0);
  }
  for (const struct json *i = json_member(want, "not-in-first-three") ? json_first(json_member(want, "not-in-first-three")) : NULL;
       i; i = json_next(i)) {
    known(k, ENTRY_FAULT, json_text(i), b);
    if (rank_of(k, a, json_text(i)) < 3) complain(b, "not-in-first-three", json_text(i), rank_of(k, a, json_text(i)));
  }
}

static void check_cautions(const struct knowledge *k, const struct assessment *a, const struct json *want,
                           struct buf *b)
{
  const struct json *list = json_member(want, "cautions");
  int *ids = mem_array(k->caution_count + 1, sizeof *ids);
  size_t count = part_cautions(k, a, ids);

  for (const struct json *i = list ? json_first(list) : NULL; i; i = json_next(i)) {
    bool shown = false;

    known(k, ENTRY_CAUTION, json_text(i), b);
    for (size_t j = 0; j < count; j++) shown = shown || strcmp(k->cautions[ids[j]].id, json_text(i)) == 0;
    if (!shown) complain(b, "caution not shown", json_text(i), 10000);
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
      complain(b, "accused", k->faults[top].id, 10000);
  } else if (strcmp(json_text(d), disposition_name(a->disposition)) != 0) {
    complain(b, "disposition is", disposition_name(a->disposition), 10000);
  }
}

static void expect(const struct knowledge *k, const struct assessment *a, const struct json *want, struct buf *b)
{
  static const char *const known_members[] = {"first", "first-three", "not-first", "not-in-first-three",
                                              "cautions", "disposition"};
  size_t found = 0;

  for (const struct json *m = json_first(want); m; m = json_next(m)) {
    bool ok = false;

    for (size_t i = 0; i < sizeof known_members / sizeof known_members[0]; i++)
      ok = ok || strcmp(json_name(m), known_members[i]) == 0;
    if (!ok) complain(b, "unknown expectation", json_name(m), 10000);
    found++;
  }
  if (found == 0) complain(b, "expects", "nothing", 10000);
  check_ranks(k, a, want, b);
  check_cautions(k, a, want, b);
  check_disposition(k, a, want, b);
}

static void run_file(const struct knowledge *k, const char *path)
{
  struct json *j = NULL;
  struct bench_case c;
  struct assessor *assessor = NULL;
  struct assessment a;
  struct buf b = {0};
  struct err e = {0};
  char *text = NULL, message[1200];
  size_t len;
  bool bad = file_read(path, JSON_MAX_BYTES, &text, &len, &e) || json_read(path, text, len, &j, &e);

  if (!bad && (!json_member(j, "case") || !json_member(j, "expect")))
    bad = err_set(&e, EX_DATAERR, path, 0, "lacks \"case\" or \"expect\"");
  if (!bad && casefile_read(k, path, json_member(j, "case"), &c, &e) == 0) {
    if (assessor_open(k, &assessor, &e) == 0 && assess_case(assessor, &c, &a, &e) == 0) {
      expect(k, &a, json_member(j, "expect"), &b);
      if (b.len) buf_addf(&b, " [first: %s %.2f, sound %.2f]", part_fault_id(k, a.ranking[0].fault), a.ranking[0].blame, a.sound);
      assessment_free(&a);
    }
    assessor_close(assessor);
    case_free(&c);
  }
  if (e.status) {
    err_format(&e, message, sizeof message);
    buf_add(&b, message);
  }
  if (b.len) {
    printf("FAILED %s: %s\n", path, b.text);
    failed++;
  } else {
    passed++;
  }
  buf_free(&b);
  json_free(j);
  free(text);
}

static int by_name(const void *a, const void *b)
{
  return strcmp(*(char *const *)a, *(char *const *)b);
}

static void run_folder(const struct knowledge *k, const char *folder)
{
  DIR *d = opendir(folder);
  struct dirent *entry;
  char **names = NULL;
  size_t count = 0, room = 0;

  while (d && (entry = readdir(d))) {
    size_t n = strlen(entry->d_name);
    void *items = names;

    if (n < 6 || strcmp(entry->d_name + n - 5, ".json") != 0) continue;
    mem_grow(&items, &room, count + 1, sizeof *names);
    names = items;
    names[count++] = file_join(folder, entry->d_name);
  }
  if (d) closedir(d);
  if (count > 1) qsort(names, count, sizeof *names, by_name);
  for (size_t i = 0; i < count; i++) {
    run_file(k, names[i]);
    free(names[i]);
  }
  free(names);
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct err e;
  struct stat st;
  char message[1200];

  if (load_knowledge(&k, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  for (int i = 1; i < argc; i++)
    if (stat(argv[i], &st) == 0 && S_ISDIR(st.st_mode)) run_folder(&k, argv[i]);
    else run_file(&k, argv[i]);
  printf("%zu passed, %zu failed\n", passed, failed);
  knowledge_free(&k);
  return failed > 0 || passed == 0;
}
