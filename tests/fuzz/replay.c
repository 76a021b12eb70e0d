/* replay.c - gives every file of the folders named to the fuzzer's function, in order of their
 * names, and says how many there were. Usage: replay FOLDER... (at least one file in all) */
#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "base/mem.h"
#include "fuzz.h"

static int by_name(const void *a, const void *b) { return strcmp(*(char *const *)a, *(char *const *)b); }

static size_t list_folder(const char *folder, char ***names)
{
  DIR *d = opendir(folder);
  struct dirent *entry;
  size_t count = 0, room = 0;

  while (d && (entry = readdir(d))) {
    void *items = *names;

    if (entry->d_name[0] == '.') continue;
    mem_grow(&items, &room, count + 1, sizeof **names);
    *names = items;
    (*names)[count++] = file_join(folder, entry->d_name);
  }
  if (d) closedir(d);
  if (count > 1) qsort(*names, count, sizeof **names, by_name);
  return count;
}

static void replay(const char *path)
{
  struct err e;
  uint8_t *exact;
  char *text;
  size_t len;

  printf("%s\n", path);
  fflush(stdout); /* so that the one that fails is the last line */
  if (file_read(path, 64 << 20, &text, &len, &e)) {
    printf("cannot be read: %s\n", e.text);
    exit(1);
  }
  exact = mem_new(len); /* no end mark behind it: a sanitizer sees a byte read too many */
  memcpy(exact, text, len);
  free(text);
  LLVMFuzzerTestOneInput(exact, len);
  free(exact);
}

int main(int argc, char **argv)
{
  size_t all = 0;

  for (int i = 1; i < argc; i++) {
    char **names = NULL;
    size_t count = list_folder(argv[i], &names);

    for (size_t j = 0; j < count; j++) {
      replay(names[j]);
      free(names[j]);
    }
    free(names);
    all += count;
  }
  printf("%zu inputs replayed\n", all);
  return all == 0;
}
