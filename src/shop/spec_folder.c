/* spec_folder.c - see spec_folder.h. */
#include "shop/spec_folder.h"

#include <ctype.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/buf.h"
#include "base/file.h"
#include "base/text.h"
#include "knowledge/find.h"

enum { MOST_CARDS = 2000, MOST_WORDS = 12, WORD = 60 };

int spec_folder(char **out, struct err *e)
{
  char *own = find_own();

  if (!own)
    return err_set(e, EX_CONFIG, NULL, 0,
                   "there is no place for spec cards: set HOME or XDG_DATA_HOME to a folder.");
  *out = file_join(own, "specs");
  free(own);
  return 0;
}

/* ---- reading all ---------------------------------------------------------------------------- */

/* Is this the name of a card's file? */
static bool is_card_file(const char *name)
{
  char id[CARD_ID];
  size_t n = strlen(name);

  if (n < 6 || n - 5 >= sizeof id || strcmp(name + n - 5, ".json") != 0) return false;
  memcpy(id, name, n - 5);
  id[n - 5] = '\0';
  return text_is_id(id);
}

static void add_card(const struct knowledge *k, const char *folder, const char *name,
                     struct spec_entries *out)
{
  char *path = file_join(folder, name);
  struct spec_faults faults = {0};
  struct spec_entry *entry;
  void *items = out->items;
  struct stat st;

  if (stat(path, &st) == 0 && S_ISREG(st.st_mode)) { /* a pipe could be read for ever */
    mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
    out->items = items;
    entry = &out->items[out->count++];
    entry->good = spec_load(k, path, &entry->card, &faults);
    entry->why = faults.count ? faults.items[0] : (struct err){0};
  }
  spec_faults_free(&faults);
  free(path);
}

static int by_id(const void *a, const void *b)
{
  return strcmp(((const struct spec_entry *)a)->card.id, ((const struct spec_entry *)b)->card.id);
}

int spec_entries_read(const struct knowledge *k, struct spec_entries *out, struct err *e)
{
  char *folder = NULL;
  int status = spec_folder(&folder, e);
  struct dirent *entry;
  DIR *d;

  *out = (struct spec_entries){0};
  if (status) return status;
  d = opendir(folder);
  if (!d && errno != ENOENT)
    status = err_set(e, errno == EACCES ? EX_NOPERM : EX_IOERR, folder, 0, "cannot be read as a folder: %s.",
                     strerror(errno));
  while (d && status == 0 && (entry = readdir(d))) {
    if (!is_card_file(entry->d_name)) continue;
    if (out->count == MOST_CARDS)
      status = err_set(e, EX_DATAERR, folder, 0, "holds more than 2000 spec cards. Put some elsewhere.");
    else add_card(k, folder, entry->d_name, out);
  }
  if (d) closedir(d);
  if (status) spec_entries_free(out);
  else if (out->count > 1) qsort(out->items, out->count, sizeof *out->items, by_id);
  free(folder);
  return status;
}

void spec_entries_free(struct spec_entries *list)
{
  for (size_t i = 0; i < list->count; i++) spec_free(&list->items[i].card);
  free(list->items);
  *list = (struct spec_entries){0};
}

/* ---- finding -------------------------------------------------------------------------------- */

/* Parts text into small words of letters and digits. */
static size_t words_of(const char *text, char words[MOST_WORDS][WORD])
{
  size_t count = 0;

  while (*text && count < MOST_WORDS) {
    size_t n = 0;

    while (*text && !isalnum((unsigned char)*text) && (unsigned char)*text < 0x80) text++;
    while (*text && (isalnum((unsigned char)*text) || (unsigned char)*text >= 0x80)) {
      if (n < WORD - 1) words[count][n++] = *text;
      text++;
    }
    words[count][n] = '\0';
    text_lower(words[count]);
    count += n > 0;
  }
  return count;
}

/* Does one of the words of text begin with this one? */
static bool holds(const char *text, const char *word)
{
  char words[MOST_WORDS][WORD];
  size_t n = words_of(text, words);

  for (size_t i = 0; i < n; i++)
    if (strncmp(words[i], word, strlen(word)) == 0) return true;
  return false;
}

static bool card_holds(const struct knowledge *k, const struct spec_card *c, const char *word)
{
  int at = *c->class_id ? knowledge_find(k, ENTRY_CLASS, c->class_id) : -1;

  if (holds(c->id, word) || holds(c->name, word)) return true;
  for (size_t i = 0; i < c->also_count; i++)
    if (holds(c->also[i], word)) return true;
  return at >= 0 && holds(k->classes[at].name, word);
}

static bool is_called(const struct spec_card *c, const char *name)
{
  return strcmp(c->id, name) == 0 || strcasecmp(c->name, name) == 0;
}

/* The card whose name, or else a word of it, is nearest to what was typed: its id, or NULL. */
static const char *nearest(const struct spec_entries *list, const char *typed)
{
  enum { EACH = 2 + SPEC_ALSO + MOST_WORDS };
  const char **names = mem_array(list->count * EACH + 1, sizeof *names), *near, *id = NULL;
  char(*words)[MOST_WORDS][WORD] = mem_array(list->count + 1, sizeof *words);
  size_t count = 0, *of = mem_array(list->count * EACH + 1, sizeof *of);

  for (size_t i = 0; i < list->count; i++) {
    const struct spec_card *c = &list->items[i].card;
    size_t n = words_of(c->name, words[i]), from = count;

    names[count++] = c->id;
    if (*c->name) names[count++] = c->name;
    for (size_t j = 0; j < c->also_count; j++) names[count++] = c->also[j];
    for (size_t j = 0; j < n; j++) names[count++] = words[i][j];
    while (from < count) of[from++] = i;
  }
  near = text_nearest(typed, names, count);
  for (size_t i = 0; near && !id && i < count; i++)
    if (names[i] == near) id = list->items[of[i]].card.id;
  free(names);
  free(words);
  free(of);
  return id;
}

size_t spec_find(const struct knowledge *k, const struct spec_entries *list, const char *words, size_t *out,
                 const char **near)
{
  char each[MOST_WORDS][WORD];
  size_t n = words_of(words, each), count = 0;

  *near = NULL;
  for (size_t i = 0; i < list->count; i++)
    if (is_called(&list->items[i].card, words)) {
      out[0] = i;
      return 1;
    }
  for (size_t i = 0; i < list->count && n > 0; i++) {
    size_t held = 0;

    while (held < n && card_holds(k, &list->items[i].card, each[held])) held++;
    if (held == n) out[count++] = i;
  }
  if (count == 0) *near = nearest(list, words);
  return count;
}

static int take_out(struct spec_entries *list, size_t at, struct spec_card *out, struct err *e)
{
  if (!list->items[at].good) {
    *e = list->items[at].why;
    return e->status;
  }
  *out = list->items[at].card;
  list->items[at].card = (struct spec_card){0};
  return 0;
}

int spec_called(const struct knowledge *k, const char *name, struct spec_card *out, struct err *e)
{
  struct spec_entries list;
  int status = spec_entries_read(k, &list, e);
  const char *near;
  size_t at = 0;

  if (status) return status;
  while (at < list.count && !is_called(&list.items[at].card, name)) at++;
  if (at < list.count) {
    status = take_out(&list, at, out, e);
  } else {
    near = nearest(&list, name);
    status =
        err_set(e, EX_NOINPUT, NULL, 0, "there is no spec card \"%.60s\"%s%s%s \"pullcord spec\" lists them.",
                name, near ? "; did you mean \"" : "", near ? near : "", near ? "\"?" : ".");
  }
  spec_entries_free(&list);
  return status;
}

/* ---- a new one ------------------------------------------------------------------------------ */

/* "Plot 7 tiller" -> "plot-7-tiller". False when nothing is left that begins with a letter. */
static bool id_of(const char *name, char id[CARD_ID])
{
  size_t n = 0;

  for (; *name && n < CARD_ID - 1; name++) {
    char c = *name >= 'A' && *name <= 'Z' ? (char)(*name - 'A' + 'a') : *name;

    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) id[n++] = c;
    else if (n > 0 && id[n - 1] != '-') id[n++] = '-';
  }
  while (n > 0 && id[n - 1] == '-') n--;
  id[n] = '\0';
  return text_is_id(id);
}

/* Can a machine of this class have such a figure at all? */
static bool can_have(const struct knowledge *k, int class_at, const struct spec_kind *kind)
{
  const struct machine_class *m = class_at >= 0 ? &k->classes[class_at] : NULL;
  int need = kind->need ? knowledge_find(k, ENTRY_FEATURE, kind->need) : -1;

  if (!m || need < 0) return true;
  for (size_t i = 0; i < m->has.count; i++)
    if (m->has.at[i] == need) return true;
  for (size_t i = 0; i < m->may.count; i++)
    if (m->may.at[i] == need) return true;
  return false;
}

/* The text of a blank card, one figure to a line, so that it is filled in with any editor. */
static void write_blank(const struct knowledge *k, const char *name, int class_at, struct buf *b)
{
  struct json *title = json_list();
  char *quoted;
  size_t count;
  const struct spec_kind *kinds = spec_kinds(&count);

  json_push_text(title, name);
  quoted = json_print_line(title); /* ["..."]: quotes and all are as they must be */
  buf_addf(b, "{\n  \"pullcord\": \"%s\",\n  ", SPEC_CARD_VERSION);
  buf_add(b, "\"name\": ");
  buf_addn(b, quoted + 1, strlen(quoted) - 2);
  buf_add(b, ",\n");
  if (class_at >= 0) buf_addf(b, "  \"class\": \"%s\",\n", k->classes[class_at].id);
  buf_add(b, "  \"figures\": [");
  for (size_t i = 0, put = 0; i < count; i++) {
    if (!can_have(k, class_at, &kinds[i])) continue;
    buf_addf(b, "%s\n    {\"what\": \"%s\", %s\"value\": \"\", \"from\": \"\"}", put++ ? "," : "",
             kinds[i].id, kinds[i].many ? "\"of\": \"\", " : "");
  }
  buf_add(b, "\n  ]\n}\n");
  free(quoted);
  json_free(title);
}

static int write_new(const char *path, const struct buf *b, struct err *e)
{
  int fd = open(path, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  ssize_t n;

  if (fd < 0 && errno == EEXIST)
    return err_set(e, EX_CANTCREAT, path, 0, "is there already, and is left as it is. Choose another name.");
  if (fd < 0) return err_set(e, EX_CANTCREAT, path, 0, "cannot be made: %s.", strerror(errno));
  n = write(fd, b->text, b->len);
  if (n == (ssize_t)b->len && fsync(fd) == 0 && close(fd) == 0) return 0;
  err_set(e, EX_IOERR, path, 0, "cannot be written: %s.", strerror(errno));
  unlink(path);
  return e->status;
}

int spec_new(const struct knowledge *k, const char *name, int class_at, char **path, struct err *e)
{
  char id[CARD_ID], file[CARD_ID + 8], *folder = NULL;
  struct buf b = {0};
  int status;

  if (text_bad_byte(name, strlen(name)) != strlen(name) || strlen(name) >= SPEC_NAME || !id_of(name, id))
    return err_set(e, EX_DATAERR, NULL, 0,
                   "no card can be named \"%.60s\": a name begins with a letter and has at most 60.", name);
  status = spec_folder(&folder, e);
  if (status) return status;
  status = file_make_folder(folder, e);
  snprintf(file, sizeof file, "%s.json", id);
  *path = file_join(folder, file);
  if (status == 0) {
    write_blank(k, name, class_at, &b);
    status = write_new(*path, &b, e);
  }
  if (status) {
    free(*path);
    *path = NULL;
  }
  buf_free(&b);
  free(folder);
  return status;
}
