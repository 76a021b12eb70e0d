/* find.c - see find.h. */
#include "knowledge/find.h"

#include <dirent.h>
#include <errno.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/buf.h"
#include "base/file.h"
#include "base/mem.h"

enum { MAX_FILES = 2000, MAX_FOLDER_DEPTH = 6, MAX_BYTES = 32 << 20 };

static bool is_folder(const char *path)
{
  struct stat st;

  return stat(path, &st) == 0 && S_ISDIR(st.st_mode);
}

/* Anything else by that name (a pipe, a device) could be read for ever. */
static bool is_plain_file(const char *path, size_t *bytes)
{
  struct stat st;

  if (stat(path, &st) != 0 || !S_ISREG(st.st_mode)) return false;
  *bytes = (size_t)st.st_size;
  return true;
}

static char *copy_text(const char *text)
{
  char *p = mem_new(strlen(text) + 1);

  memcpy(p, text, strlen(text));
  return p;
}

int find_shipped(char **out, struct err *e)
{
  const char *set = getenv("PULLCORD_KNOWLEDGE");
  char exe[PATH_MAX];
  ssize_t n;

  if (set && *set) {
    if (!is_folder(set))
      return err_set(e, EX_CONFIG, set, 0,
                     "is not a folder, but PULLCORD_KNOWLEDGE names it. Correct or unset it.");
    *out = copy_text(set);
    return 0;
  }
  n = readlink("/proc/self/exe", exe, sizeof exe - 1);
  if (n > 0) {
    char *slash;

    exe[n] = '\0';
    slash = strrchr(exe, '/');
    if (slash) *slash = '\0';
    *out = file_join(exe, "../share/pullcord");
    if (is_folder(*out)) return 0;
    free(*out);
    *out = NULL;
  }
  return err_set(e, EX_CONFIG, NULL, 0,
                 "the knowledge folder is not beside the program (share/pullcord). Install again, "
                 "or set PULLCORD_KNOWLEDGE to the folder that holds facts/ and rules/.");
}

char *find_own(void)
{
  const char *data = getenv("XDG_DATA_HOME"), *home = getenv("HOME");
  char *share, *own;

  if (data && data[0] == '/') return file_join(data, "pullcord");
  if (!home || home[0] != '/') return NULL;
  share = file_join(home, ".local/share");
  own = file_join(share, "pullcord");
  free(share);
  return own;
}

static bool ends_with(const char *text, const char *end)
{
  size_t n = strlen(text), m = strlen(end);

  return n >= m && strcmp(text + n - m, end) == 0;
}

static struct knowledge_file *find_name(struct knowledge_files *f, const char *name)
{
  for (size_t i = 0; i < f->count; i++)
    if (strcmp(f->items[i].name, name) == 0) return &f->items[i];
  return NULL;
}

static void add_file(struct knowledge_files *f, const char *folder, const char *name, bool own)
{
  struct knowledge_file *old = find_name(f, name), *slot = old;
  char *path = file_join(folder, name);

  if (old) {
    free(old->name);
    free(old->path);
    free(old->shown);
  } else {
    void *items = f->items;

    mem_grow(&items, &f->room, f->count + 1, sizeof *f->items);
    f->items = items;
    slot = &f->items[f->count++];
  }
  slot->name = copy_text(name);
  slot->path = path;
  slot->shown = copy_text(own ? path : name);
  slot->own = own;
  slot->replaces = own && old;
}

/* Reads one folder; sub-folders are put on the list `todo` instead of being entered by
 * recursion. */
static int read_folder(struct knowledge_files *f, const char *root, const char *name, bool own,
                       char ***todo, size_t *count, size_t *room, struct err *e)
{
  char *path = file_join(root, name);
  DIR *d = opendir(path);
  struct dirent *entry;
  int status = 0;

  if (!d && errno != ENOENT)
    status = err_set(e, errno == EACCES ? EX_NOPERM : EX_CONFIG, path, 0, "cannot be read as a folder: %s.",
                     strerror(errno));
  while (d && status == 0 && (entry = readdir(d))) {
    char *below, *full;
    size_t bytes;

    if (entry->d_name[0] == '.') continue;
    below = file_join(name, entry->d_name);
    full = file_join(root, below);
    if (ends_with(below, ".clp") && is_plain_file(full, &bytes)) {
      f->bytes += bytes;
      if (f->count >= MAX_FILES)
        status = err_set(e, EX_CONFIG, path, 0, "holds more than 2000 files of knowledge.");
      else if (bytes > MAX_BYTES || f->bytes > MAX_BYTES)
        status = err_set(e, EX_CONFIG, full, 0,
                         "makes more than 32 MiB of knowledge, which cannot be right.");
      else add_file(f, root, below, own);
    } else {
      size_t depth = 0;

      for (const char *p = below; *p; p++) depth += *p == '/';
      if (is_folder(full) && depth < MAX_FOLDER_DEPTH) {
        void *items = *todo;

        mem_grow(&items, room, *count + 1, sizeof **todo);
        *todo = items;
        (*todo)[(*count)++] = below;
        below = NULL;
      }
    }
    free(full);
    free(below);
  }
  if (d) closedir(d);
  free(path);
  return status;
}

static int walk(struct knowledge_files *f, const char *root, const char *top, bool own, struct err *e)
{
  char **todo = NULL;
  size_t count = 0, room = 0;
  int status = read_folder(f, root, top, own, &todo, &count, &room, e);

  while (count > 0 && status == 0) {
    char *name = todo[--count];

    status = read_folder(f, root, name, own, &todo, &count, &room, e);
    free(name);
  }
  while (count > 0) free(todo[--count]);
  free(todo);
  return status;
}

static int by_name(const void *a, const void *b)
{
  const struct knowledge_file *x = a, *y = b;
  bool x_adds = x->own && !x->replaces, y_adds = y->own && !y->replaces;

  /* what an own file has in common with a shipped one is then said of the own file */
  return x_adds != y_adds ? x_adds - y_adds : strcmp(x->name, y->name);
}

int find_files(const char *shipped, const char *own, struct knowledge_files *out, struct err *e)
{
  int status;

  *out = (struct knowledge_files){0};
  status = walk(out, shipped, "facts", false, e);
  if (status == 0) status = walk(out, shipped, "rules", false, e);
  if (status == 0 && own) status = walk(out, own, "facts", true, e);
  if (status == 0 && own) status = walk(out, own, "rules", true, e);
  if (status == 0 && out->count == 0)
    status = err_set(e, EX_CONFIG, shipped, 0, "holds no knowledge: facts/ and rules/ are missing.");
  if (status) find_free(out);
  else qsort(out->items, out->count, sizeof *out->items, by_name);
  return status;
}

void find_free(struct knowledge_files *files)
{
  for (size_t i = 0; i < files->count; i++) {
    free(files->items[i].name);
    free(files->items[i].path);
    free(files->items[i].shown);
  }
  free(files->items);
  *files = (struct knowledge_files){0};
}
