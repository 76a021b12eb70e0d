/* sizes.c - see sizes.h. */
#include "sizes.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/buf.h"
#include "base/file.h"
#include "knowledge/find.h"
#include "knowledge/schema.h"
#include "knowledge/sexpr.h"

/* How often each fault and check comes (0, 1 or 2), and which repairs are used. */
struct sizing {
  const struct knowledge *k;
  int *faults, *checks;
  bool *repairs;
  size_t rules_left;
};

/* Two of a kind: the second is told by this. */
static const char *const again = "-again";

/* ---- what stays ------------------------------------------------------------------------- */

struct mention { size_t at, count; };

static int most_mentioned(const void *a, const void *b)
{
  const struct mention *x = a, *y = b;

  if (x->count != y->count) return x->count > y->count ? -1 : 1;
  return (x->at > y->at) - (x->at < y->at);
}

/* Calls back for each id in a rule: the words, taken apart at the signs that join them. */
static void each_word(const struct node *n, void (*take)(void *, const char *), void *with)
{
  for (const struct node *c = n->first; c; c = c->next) each_word(c, take, with);
  if (n->kind != NODE_WORD) return;
  for (const char *at = n->text; *at;) {
    size_t len;
    char word[SEXPR_MAX_WORD + 1];

    at += strspn(at, "&|~:");
    len = strcspn(at, "&|~:");
    memcpy(word, at, len);
    word[len] = '\0';
    if (len > 0) take(with, word);
    at += len;
  }
}

struct counting { const struct knowledge *k; struct mention *faults, *checks; };

static void count_word(void *with, const char *word)
{
  struct counting *c = with;
  int fault = knowledge_find(c->k, ENTRY_FAULT, word), check = knowledge_find(c->k, ENTRY_CHECK, word);

  if (fault >= 0) c->faults[fault].count++;
  if (check >= 0) c->checks[check].count++;
}

/* Times of each, those first that rules mention most, so that enough rules can stay. */
static int *times_of(struct mention *m, size_t count, size_t wanted)
{
  int *times = mem_array(count, sizeof *times);

  qsort(m, count, sizeof *m, most_mentioned);
  for (size_t i = 0; i < wanted && i < 2 * count; i++) times[m[i % count].at]++;
  return times;
}

/* ---- writing trees ---------------------------------------------------------------------- */

static void print_string(struct buf *b, const char *text)
{
  buf_add(b, "\"");
  for (; *text; text++) {
    if (*text == '"' || *text == '\\') buf_add(b, "\\");
    buf_addn(b, text, 1);
  }
  buf_add(b, "\"");
}

static void print_node(struct buf *b, const struct node *n, const char *end)
{
  if (n->kind == NODE_LIST) {
    buf_add(b, "(");
    for (const struct node *c = n->first; c; c = c->next) {
      print_node(b, c, c == n->first ? "" : end);
      if (c->next) buf_add(b, " ");
    }
    buf_add(b, ")");
  } else if (n->kind == NODE_STRING) {
    print_string(b, n->text);
  } else {
    buf_add(b, n->text);
    buf_add(b, end);
  }
}

/* The fact without the slot looks-like, which is only for show; words of the slot `twin` get
 * the ending of the second one. */
static void print_fact(struct buf *b, const struct node *fact, const char *twin)
{
  buf_addf(b, "  (%s", node_head(fact));
  for (const struct node *s = fact->first->next; s; s = s->next) {
    if (strcmp(node_head(s), "looks-like") == 0) continue;
    buf_add(b, " ");
    print_node(b, s, strcmp(node_head(s), twin) == 0 ? again : "");
  }
  buf_add(b, ")\n");
}

static int times(const struct sizing *z, enum entry_kind kind, const struct node *fact, const char *slot)
{
  const struct node *id = fact_values(fact, slot);
  int at = id ? knowledge_find(z->k, kind, id->text) : -1;

  if (at < 0) return 1;
  return kind == ENTRY_FAULT ? z->faults[at] : kind == ENTRY_CHECK ? z->checks[at] : z->repairs[at];
}

static void size_fact(const struct sizing *z, const struct node *fact, struct buf *b)
{
  const char *kind = node_head(fact);
  const char *fault = strcmp(kind, "fault") == 0 ? "id" : "fault";
  const char *check = strcmp(kind, "check") == 0 ? "id" : "check";
  int faults = 1, checks = 1, repairs = 1;

  if (strcmp(kind, "fault") == 0 || strcmp(kind, "sign") == 0 || strcmp(kind, "leads") == 0 ||
      strcmp(kind, "base-rate") == 0)
    faults = times(z, ENTRY_FAULT, fact, fault);
  if (strcmp(kind, "check") == 0 || strcmp(kind, "sign") == 0) checks = times(z, ENTRY_CHECK, fact, check);
  if (strcmp(kind, "bands") == 0 && times(z, ENTRY_CHECK, fact, "check") == 0) checks = 0;
  if (strcmp(kind, "repair") == 0) repairs = times(z, ENTRY_REPAIR, fact, "id");
  if (faults == 0 || checks == 0 || repairs == 0) return;
  print_fact(b, fact, "");
  if (faults == 2) print_fact(b, fact, fault);
  if (checks == 2) print_fact(b, fact, check);
}

struct asking { const struct sizing *z; bool left_out; };

static void ask_word(void *with, const char *word)
{
  struct asking *a = with;
  const struct knowledge *k = a->z->k;
  int fault = knowledge_find(k, ENTRY_FAULT, word), check = knowledge_find(k, ENTRY_CHECK, word);

  if (fault >= 0 && a->z->faults[fault] == 0) a->left_out = true;
  if (check >= 0 && a->z->checks[check] == 0) a->left_out = true;
  for (size_t i = 0; i < k->bands_count && !a->left_out; i++)
    if (strcmp(k->bands[i].id, word) == 0 && k->bands[i].check >= 0)
      a->left_out = a->z->checks[k->bands[i].check] == 0;
}

static void size_forms(struct sizing *z, const struct node *forms, struct buf *b)
{
  for (const struct node *n = forms->first; n; n = n->next) {
    struct asking a = {z, false};

    if (strcmp(node_head(n), "deffacts") == 0) {
      buf_addf(b, "(deffacts %s\n", n->first->next->text);
      for (const struct node *fact = n->first->next->next; fact; fact = fact->next)
        if (fact->kind == NODE_LIST) size_fact(z, fact, b);
      buf_add(b, ")\n");
      continue;
    }
    each_word(n, ask_word, &a);
    if (a.left_out || z->rules_left == 0) continue;
    z->rules_left--;
    print_node(b, n, "");
    buf_add(b, "\n");
  }
}

/* ---- files ------------------------------------------------------------------------------ */

static int read_tree(struct arena *arena, const struct knowledge_file *f, struct node **forms, char **text,
                     size_t *len, struct err *e)
{
  int status = file_read(f->path, SEXPR_MAX_BYTES, text, len, e);

  if (status) return status;
  return sexpr_read(arena, f->name, arena_text(arena, *text, *len), *len, forms, e);
}

static int write_file(const char *folder, const char *name, const char *text, size_t len, struct err *e)
{
  char *path = file_join(folder, name), *parent = file_join(folder, name);
  FILE *f;
  bool good;
  int status;

  *strrchr(parent, '/') = '\0';
  status = file_make_folder(parent, e);
  f = status ? NULL : fopen(path, "w");
  good = f && fwrite(text, 1, len, f) == len;
  if (f && fclose(f) != 0) good = false;
  if (status == 0 && !good) status = err_set(e, EX_CANTCREAT, path, 0, "cannot be written.");
  free(path);
  free(parent);
  return status;
}

static int size_file(struct sizing *z, const struct knowledge_file *f, const char *folder, struct err *e)
{
  struct arena arena = {0};
  struct node *forms;
  struct buf b = {0};
  char *text = NULL;
  size_t len;
  int status = read_tree(&arena, f, &forms, &text, &len, e);

  if (status == 0 && strncmp(f->name, "rules/templates/", 16) == 0) buf_addn(&b, text, len);
  else if (status == 0) size_forms(z, forms, &b);
  if (status == 0) status = write_file(folder, f->name, buf_text(&b), b.len, e);
  free(text);
  buf_free(&b);
  arena_free(&arena);
  return status;
}

static int count_mentions(const struct knowledge_files *files, struct counting *c, struct err *e)
{
  int status = 0;

  for (size_t i = 0; i < c->k->fault_count; i++) c->faults[i].at = i;
  for (size_t i = 0; i < c->k->check_count; i++) c->checks[i].at = i;
  for (size_t i = 0; i < files->count && status == 0; i++) {
    struct arena arena = {0};
    struct node *forms;
    char *text = NULL;
    size_t len;

    if (strncmp(files->items[i].name, "rules/", 6) != 0) continue;
    status = read_tree(&arena, &files->items[i], &forms, &text, &len, e);
    if (status == 0) each_word(forms, count_word, c);
    free(text);
    arena_free(&arena);
  }
  return status;
}

int sizes_write(const struct knowledge *k, const char *source, const char *folder, size_t faults,
                size_t checks, size_t rules)
{
  struct knowledge_files files;
  struct counting c = {k, mem_array(k->fault_count, sizeof *c.faults),
                       mem_array(k->check_count, sizeof *c.checks)};
  struct sizing z = {.k = k, .repairs = mem_array(k->repair_count, sizeof *z.repairs), .rules_left = rules};
  struct err e;
  int status = find_files(source, NULL, &files, &e);

  if (status == 0) {
    status = count_mentions(&files, &c, &e);
    z.faults = times_of(c.faults, k->fault_count, faults);
    z.checks = times_of(c.checks, k->check_count, checks);
    for (size_t i = 0; i < k->fault_count; i++)
      if (z.faults[i] > 0 && k->faults[i].repair >= 0) z.repairs[k->faults[i].repair] = true;
    for (size_t i = 0; i < files.count && status == 0; i++)
      status = size_file(&z, &files.items[i], folder, &e);
    find_free(&files);
  }
  if (status) fprintf(stderr, "%s: %s\n", e.file, e.text);
  free(c.faults);
  free(c.checks);
  free(z.faults);
  free(z.checks);
  free(z.repairs);
  return status;
}

/* Folders above the file, as long as they are empty. */
static void remove_upwards(const char *folder, const char *name)
{
  char *path = file_join(folder, name);
  size_t top = strlen(folder);

  unlink(path);
  for (char *slash = strrchr(path, '/'); slash && (size_t)(slash - path) > top; slash = strrchr(path, '/')) {
    *slash = '\0';
    if (rmdir(path) != 0) break;
  }
  free(path);
}

void sizes_remove(const char *source, const char *folder)
{
  struct knowledge_files files;
  struct err e;

  if (find_files(source, NULL, &files, &e)) return;
  for (size_t i = 0; i < files.count; i++) remove_upwards(folder, files.items[i].name);
  find_free(&files);
  rmdir(folder);
}
