/* sample.c - see sample.h. */
#include "sample.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "knowledge/load.h"
#include "shop/jobfile.h"

static void must(int status, const struct err *e)
{
  if (status == 0) return;
  fprintf(stderr, "%s: %s\n", e->file, e->text);
  abort();
}

char *sample_folder(void)
{
  const char *base = getenv("TMPDIR");
  char *path = file_join(base && *base ? base : "/tmp", "pullcord-shop-XXXXXX");

  if (!mkdtemp(path)) abort();
  return path;
}

void sample_remove(char *folder)
{
  DIR *d = opendir(folder);
  struct dirent *x;

  while (d && (x = readdir(d))) {
    char *path = file_join(folder, x->d_name);

    unlink(path);
    free(path);
  }
  if (d) closedir(d);
  rmdir(folder);
  free(folder);
}

static void forget(void);
static struct knowledge knowledge;
static bool loaded;

const struct knowledge *sample_knowledge(void)
{
  struct err e;

  if (!loaded) {
    setenv("PULLCORD_KNOWLEDGE", PULLCORD_SOURCE, 1);
    setenv("XDG_DATA_HOME", "/nonexistent", 1);
    must(load_knowledge(&knowledge, &e), &e);
    loaded = true;
    atexit(forget);
  }
  return &knowledge;
}

static void forget(void) { knowledge_free(&knowledge); }

struct store *sample_store(const char *folder)
{
  struct store *s = NULL;
  struct err e;

  must(store_open(folder, true, &s, &e), &e);
  return s;
}

char *sample_export(struct store *s)
{
  char *text = NULL;
  size_t size = 0, jobs;
  FILE *f = open_memstream(&text, &size);
  struct err e;

  must(jobfile_export(s, NULL, f, &jobs, &e), &e);
  fclose(f);
  return text;
}

void sample_job(struct store *s, const char *words, char id[STORE_ID])
{
  struct job_news n = {0};
  struct err e;

  job_say_text(&n, "words", words);
  must(job_open(s, sample_knowledge(), "tester", &n, id, &e), &e);
  job_news_free(&n);
}

void sample_now(long long at)
{
  char text[30];

  snprintf(text, sizeof text, "%lld", at);
  setenv("PULLCORD_NOW", text, 1);
}
