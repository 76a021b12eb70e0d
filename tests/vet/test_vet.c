/* test_vet.c - every kind of finding has a sample in bad/ that gives just that finding, at
 * the line that says so ("; serious: KIND ..." or "; advice: KIND ..."), and nothing else; base/ and
 * the near misses in good/ give none at all.
 *
 * Usage: test_vet BASE SAMPLES. A sample is a folder whose files replace those of BASE. */
#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/mem.h"
#include "knowledge/load.h"
#include "knowledge/vet.h"

/* Every kind of finding there is. The engine's own refusals are in test_vet_command.sh. */
static const char *const kinds[] = {"bad-id",
                                    "bands",
                                    "chance",
                                    "cover-loop",
                                    "duplicate-id",
                                    "duplicate-sign",
                                    "function",
                                    "lengths",
                                    "missing-basis",
                                    "missing-slot",
                                    "not-logical",
                                    "retired-id",
                                    "salience",
                                    "sign-of-sound",
                                    "slot-name",
                                    "slot-value",
                                    "syntax",
                                    "template",
                                    "too-large",
                                    "unconnected",
                                    "unit",
                                    "unknown-id",
                                    "ambiguity-group",
                                    "bands-gap",
                                    "bands-overlap",
                                    "bands-unmeasured",
                                    "belief-feedback",
                                    "does-not-part",
                                    "fits-nowhere",
                                    "leads-sum",
                                    "looks-like",
                                    "never-fires",
                                    "no-bands",
                                    "no-caution",
                                    "no-complaint",
                                    "no-effect",
                                    "no-looks-like",
                                    "no-minutes",
                                    "no-mistakes",
                                    "no-place",
                                    "no-proof",
                                    "no-sign",
                                    "no-source",
                                    "no-steps",
                                    "no-tolerance",
                                    "no-tools",
                                    "no-words",
                                    "parts-nothing",
                                    "repeated-base-rate",
                                    "repeated-name",
                                    "repeated-text",
                                    "result-cannot-be",
                                    "result-without-bands",
                                    "rule-loop",
                                    "runs-uncovered",
                                    "too-long",
                                    "unused"};
enum { KINDS = sizeof kinds / sizeof kinds[0], MOST = 40 };

struct expected {
  char kind[40], file[400];
  int line;
  bool serious, met;
};

static size_t samples, failures;

static void fail(const char *sample, const char *what, const char *kind, const char *file, int line)
{
  printf("FAILED %s: %s %s at %s:%d\n", sample, what, kind, file, line);
  failures++;
}

/* Takes the kinds that stand after a mark, one or several words up to the end of the line. */
static size_t read_kinds(const char *at, const char *path, int line, bool serious, struct expected *expect,
                         size_t count)
{
  for (at += strspn(at, " "); *at && *at != '\n' && count < MOST; at += strspn(at, " ")) {
    int n = (int)strcspn(at, " \n");
    struct expected *x = &expect[count++];

    *x = (struct expected){.line = line, .serious = serious};
    snprintf(x->file, sizeof x->file, "%s", path);
    snprintf(x->kind, sizeof x->kind, "%.*s", n, at);
    at += n;
  }
  return count;
}

/* Takes the marks of one file into expect. */
static size_t read_marks(const char *path, struct expected *expect, size_t count)
{
  static const char *const marks[] = {"; advice:", "; serious:"};
  char *text;
  size_t len;
  struct err e;
  int line = 1;

  if (file_read(path, 1 << 20, &text, &len, &e)) {
    fail(path, "cannot be read:", e.text, path, 0);
    return count;
  }
  for (const char *at = text; *at; line++) {
    size_t n = strcspn(at, "\n");

    for (int m = 0; m < 2; m++) {
      const char *mark = strstr(at, marks[m]);

      if (mark && mark < at + n)
        count = read_kinds(mark + strlen(marks[m]), path, line, m == 1, expect, count);
    }
    at += n + (at[n] == '\n');
  }
  free(text);
  return count;
}

static struct expected *find(struct expected *expect, size_t count, const struct problem *x)
{
  for (size_t i = 0; i < count; i++)
    if (!expect[i].met && strcmp(expect[i].kind, x->kind) == 0 && strcmp(expect[i].file, x->file) == 0 &&
        expect[i].line == x->line && expect[i].serious == x->serious)
      return &expect[i];
  return NULL;
}

/* Vets base with the sample's files in it; every finding must be marked and every mark met. */
static void run(const char *base, const char *sample, bool bad)
{
  struct knowledge_files files;
  struct problems p = {0};
  struct knowledge k = {0};
  struct err e;
  struct expected *expect = mem_array(MOST, sizeof *expect);
  size_t count = 0;
  int status = find_files(base, sample, &files, &e);

  samples++;
  if (status == 0) {
    for (size_t i = 0; i < files.count; i++)
      if (files.items[i].own) count = read_marks(files.items[i].path, expect, count);
    status = load_files(&files, &k, &p, &e);
    if (status == 0 && p.serious == 0) vet_knowledge(&k, &p);
    find_free(&files);
  }
  if (status) fail(sample, e.text, "", e.file, e.line);
  if (bad && count == 0) fail(sample, "marks", "nothing", sample, 0);
  for (size_t i = 0; i < p.count; i++) {
    struct expected *x = find(expect, count, &p.items[i]);

    if (x) x->met = true;
    else fail(sample, p.items[i].text, p.items[i].kind, p.items[i].file, p.items[i].line);
  }
  for (size_t i = 0; i < count; i++)
    if (!expect[i].met) fail(sample, "does not find", expect[i].kind, expect[i].file, expect[i].line);
  knowledge_free(&k);
  problems_free(&p);
  free(expect);
}

/* Runs all samples of a folder; in bad/ there must be one for every kind and no other. */
static void run_all(const char *base, const char *folder, bool bad)
{
  DIR *d = opendir(folder);
  struct dirent *entry;
  size_t known = 0;

  while (d && (entry = readdir(d))) {
    char *sample = file_join(folder, entry->d_name);
    size_t i = 0;

    while (i < KINDS && strcmp(kinds[i], entry->d_name) != 0) i++;
    known += i < KINDS;
    if (entry->d_name[0] != '.') {
      if (i == KINDS) fail(sample, "there is no kind", entry->d_name, sample, 0);
      else run(base, sample, bad);
    }
    free(sample);
  }
  if (d) closedir(d);
  if (bad && known != KINDS) fail(folder, "lacks a sample of some kind", "", folder, 0);
  if (known == 0) fail(folder, "has no samples", "", folder, 0);
}

int main(int argc, char **argv)
{
  char *bad, *good;

  if (argc != 3) return 2;
  bad = file_join(argv[2], "bad");
  good = file_join(argv[2], "good");
  run(argv[1], NULL, false);
  run_all(argv[1], bad, true);
  run_all(argv[1], good, false);
  free(bad);
  free(good);
  printf("%zu samples, %zu failures\n", samples, failures);
  return failures > 0;
}
