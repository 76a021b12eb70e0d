/* sample.c - see sample.h. */
#include "sample.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "base/file.h"

static void must(bool good, const char *what)
{
  if (good) return;
  fprintf(stderr, "the sample cannot be made: %s\n", what);
  abort();
}

void sample_begin(struct sample *s)
{
  char command[600];

  strcpy(s->folder, "/tmp/pullcord-sample-XXXXXX");
  must(mkdtemp(s->folder) != NULL, "mkdtemp");
  snprintf(s->shipped, sizeof s->shipped, "%s/shipped", s->folder);
  snprintf(s->own, sizeof s->own, "%s/own", s->folder);
  snprintf(command, sizeof command,
           "cp -r '%s/tests/hostile/small' '%s' && cp -r '%s/rules/templates' '%s/rules/' && mkdir '%s'",
           PULLCORD_SOURCE, s->shipped, PULLCORD_SOURCE, s->shipped, s->own);
  must(system(command) == 0, command);
}

void sample_end(struct sample *s)
{
  char command[128];

  snprintf(command, sizeof command, "rm -rf '%s'", s->folder);
  must(system(command) == 0, command);
}

void sample_write(const char *root, const char *name, const char *text, size_t len)
{
  char *path = file_join(root, name), *slash = strrchr(path, '/');
  struct err e;

  *slash = '\0';
  must(file_make_folder(path, &e) == 0, path);
  *slash = '/';
  must(file_replace(path, text, len, &e) == 0, path);
  free(path);
}

void sample_load(const struct sample *s, struct loaded *l)
{
  struct knowledge_files files;

  *l = (struct loaded){0};
  l->status = find_files(s->shipped, s->own, &files, &l->e);
  if (l->status) return;
  l->status = load_files(&files, &l->k, &l->p, &l->e);
  find_free(&files);
}

void loaded_free(struct loaded *l)
{
  knowledge_free(&l->k);
  problems_free(&l->p);
}

bool loaded_says(const struct loaded *l, const char *kind, const char *file, int line, const char *says)
{
  size_t kept = l->p.count < PROBLEMS_KEPT ? l->p.count : PROBLEMS_KEPT;

  for (size_t i = 0; i < kept; i++) {
    const struct problem *x = &l->p.items[i];

    if (strcmp(x->kind, kind) == 0 && strcmp(x->file, file) == 0 && x->line == line && strstr(x->text, says))
      return true;
  }
  return false;
}

static size_t count_kind(const struct loaded *l, const char *kind)
{
  size_t n = 0;

  for (size_t i = 0; i < l->p.count && i < PROBLEMS_KEPT; i++) n += strcmp(l->p.items[i].kind, kind) == 0;
  return n;
}

bool sample_try(const struct sample *s, const char *name, const struct sample_row *r)
{
  bool both = true;

  for (int bad = 0; bad < 2; bad++) {
    const char *text = bad ? r->bad : r->good;
    struct loaded l;
    bool fine;

    sample_write(s->shipped, name, text, strlen(text));
    sample_load(s, &l);
    if (bad)
      fine = loaded_says(&l, r->kind, name, r->line, r->says) && l.p.count == count_kind(&l, r->kind) &&
             l.p.serious == l.p.count;
    else fine = l.p.count == 0;
    if (!fine || l.status) {
      loaded_print(&l);
      fprintf(stderr, "%s\n  wanted %s [%s] at line %d saying \"%s\"\n", text,
              bad ? "" : "nothing, being right for", r->kind, r->line, r->says);
      both = false;
    }
    loaded_free(&l);
  }
  return both;
}

void loaded_print(const struct loaded *l)
{
  size_t kept = l->p.count < PROBLEMS_KEPT ? l->p.count : PROBLEMS_KEPT;

  if (l->status) fprintf(stderr, "  status %d: %s: %s\n", l->status, l->e.file, l->e.text);
  for (size_t i = 0; i < kept && i < 20; i++)
    fprintf(stderr, "  %s:%d: [%s] %s\n", l->p.items[i].file, l->p.items[i].line, l->p.items[i].kind,
            l->p.items[i].text);
  fprintf(stderr, "  %zu problems\n", l->p.count);
}

double seconds_now(void)
{
  struct timespec t;

  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}
