/* floor.c - what a start cannot take less than: all files read, and the rules loaded by the
 * library as Debian ships it, without any of our layers around it.
 * Usage: bench_floor none|read|rules FOLDER   (with facts/ and rules/ in it)
 *        bench_floor answers FOLDER FILE: one more finding, told to the library with all rules
 *        and run, then taken back; the median in milliseconds is written to FILE. */
#include <clips/clips.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "base/file.h"
#include "knowledge/load.h"
#include "knowledge/rules.h"

enum { MOST_ANSWERS = 500 };

static void *this_rule(void *env) { return EnvAddSymbol(env, "none"); }

static double no_sum(void *env)
{
  (void)env;
  return 0;
}

static int read_all(const struct knowledge_files *files)
{
  for (size_t i = 0; i < files->count; i++) {
    struct err e;
    char *text;
    size_t len;

    if (file_read(files->items[i].path, (size_t)1 << 23, &text, &len, &e)) return 1;
    free(text);
  }
  return 0;
}

static bool starts_with(const struct knowledge_file *f, const char *begin)
{
  return strncmp(f->name, begin, strlen(begin)) == 0;
}

/* The templates of the case, then the rules. NULL when the library refuses one. */
static void *load_rules(const struct knowledge_files *files)
{
  void *env = CreateEnvironment();
  const char *name;

  EnvDefineFunction2(env, "this-rule", 'w', PTIEF this_rule, "this_rule", "00");
  for (size_t i = 0; (name = rules_allowed_function(i)); i++)
    if (!FindFunction(env, name)) EnvDefineFunction2(env, name, 'd', PTIEF no_sum, "no_sum", "**");
  for (int rules = 0; rules < 2; rules++)
    for (size_t i = 0; i < files->count; i++) {
      const struct knowledge_file *f = &files->items[i];
      bool is_template = starts_with(f, "rules/templates/");

      if (!starts_with(f, "rules/") || is_template == rules) continue;
      if (strstr(f->name, "templates/knowledge.clp")) continue;
      if (EnvLoad(env, f->path) != 1) return NULL;
    }
  EnvReset(env);
  return env;
}

static double now(void)
{
  struct timespec t;

  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec * 1e3 + (double)t.tv_nsec / 1e6;
}

static int rising(const void *a, const void *b)
{
  double x = *(const double *)a, y = *(const double *)b;

  return (x > y) - (x < y);
}

/* Every check's second result in turn. */
static int answers(void *env, const struct knowledge_files *files, const char *path)
{
  double ms[MOST_ANSWERS];
  struct problems problems = {0};
  struct knowledge k;
  struct err e;
  size_t n = 0;
  FILE *f;

  if (load_files(files, &k, &problems, &e)) return 1;
  for (; n < k.check_count && n < MOST_ANSWERS; n++) {
    char text[300];
    double start = now();
    void *fact;

    snprintf(text, sizeof text, "(finding (check %s) (result %s) (sure 1.0))", k.checks[n].id,
             k.checks[n].results.items[1]);
    fact = EnvAssertString(env, text);
    if (!fact) return 1;
    EnvRun(env, -1);
    ms[n] = now() - start;
    EnvRetract(env, fact);
    EnvRun(env, -1);
  }
  knowledge_free(&k);
  problems_free(&problems);
  if (n == 0 || !(f = fopen(path, "w"))) return 1;
  qsort(ms, n, sizeof ms[0], rising);
  fprintf(f, "%.6f\n", ms[n / 2]);
  return fclose(f) != 0;
}

int main(int argc, char **argv)
{
  struct knowledge_files files;
  struct err e;
  bool rules = argc >= 3 && strcmp(argv[1], "rules") == 0;
  bool more = argc == 4 && strcmp(argv[1], "answers") == 0;
  void *env = NULL;

  if (argc == 3 && strcmp(argv[1], "none") == 0) return 0;
  if (argc < 3 || find_files(argv[2], NULL, &files, &e)) {
    fprintf(stderr, "usage: bench_floor none|read|rules FOLDER, or answers FOLDER FILE\n");
    return 2;
  }
  if (read_all(&files)) return 1;
  if (rules || more) env = load_rules(&files);
  if ((rules || more) && !env) return 1;
  return more ? answers(env, &files, argv[3]) : 0;
}
