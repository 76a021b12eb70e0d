/* small.c - see fuzz.h. */
#include "fuzz.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define SMALL PULLCORD_SOURCE "/tests/hostile/small/"

void must_hold(int good, const char *what)
{
  if (good) return;
  fprintf(stderr, "does not hold: %s\n", what);
  abort();
}

void small_load(const char *name, const char *path, struct knowledge *k, struct problems *p)
{
  static char names[5][40] = {"rules/templates/case.clp", "rules/templates/knowledge.clp", "facts/small.clp",
                              "rules/small.clp", ""};
  static char paths[5][400] = {PULLCORD_SOURCE "/rules/templates/case.clp",
                               PULLCORD_SOURCE "/rules/templates/knowledge.clp", SMALL "facts/small.clp",
                               SMALL "rules/small.clp", ""};
  struct knowledge_file items[5] = {{0}};
  struct knowledge_files files = {.items = items, .count = path ? 5 : 4};
  struct err e;

  snprintf(names[4], sizeof names[4], "%s", name ? name : "");
  snprintf(paths[4], sizeof paths[4], "%s", path ? path : "");
  for (size_t i = 0; i < files.count; i++)
    items[i] = (struct knowledge_file){.name = names[i], .path = paths[i], .shown = names[i]};
  must_hold(load_files(&files, k, p, &e) == 0 || path, "the small knowledge can be read");
}

const struct knowledge *small_knowledge(void)
{
  static struct knowledge k;
  static int loaded;
  struct problems p = {0};

  if (!loaded) {
    small_load(NULL, NULL, &k, &p);
    must_hold(p.count == 0, "nothing is wrong with the small knowledge");
    problems_free(&p);
    loaded = 1;
  }
  return &k;
}
