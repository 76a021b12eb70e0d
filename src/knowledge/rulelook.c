/* rulelook.c - see rulelook.h. */
#include "knowledge/rulelook.h"

#include <stdlib.h>
#include <string.h>

#include "base/buf.h"
#include "knowledge/schema.h"

static void add_pattern(struct rule_look *r, const struct node *form, bool negated, bool either)
{
  void *items = r->patterns;

  mem_grow(&items, &r->pattern_room, r->pattern_count + 1, sizeof *r->patterns);
  r->patterns = items;
  r->patterns[r->pattern_count++] = (struct rule_pattern){form, negated, either};
}

/* The reader bounds the depth (16), and so this recursion. */
static void read_condition(struct rule_look *r, const struct node *ce, bool negated, bool either)
{
  const char *head = node_head(ce);

  if (ce->kind != NODE_LIST || strcmp(head, "test") == 0) return;
  if (strcmp(head, "logical") == 0 || strcmp(head, "and") == 0 || strcmp(head, "exists") == 0 ||
      strcmp(head, "or") == 0 || strcmp(head, "not") == 0 || strcmp(head, "forall") == 0) {
    bool turned = negated || strcmp(head, "not") == 0;

    /* inside (or ...), or several together inside (not ...), none of them need hold alone */
    if (negated || strcmp(head, "or") == 0 || strcmp(head, "forall") == 0) either = true;
    for (const struct node *n = ce->first->next; n; n = n->next) read_condition(r, n, turned, either);
  } else {
    add_pattern(r, ce, negated, either);
  }
}

static void read_rule(struct rule_look *r, const struct node *rule)
{
  bool actions = false;

  for (const struct node *n = rule->first->next->next; n; n = n->next) {
    if (node_is_word(n, "=>")) {
      actions = true;
    } else if (!actions) {
      read_condition(r, n, false, false);
    } else if (strcmp(node_head(n), "assert") == 0) {
      for (const struct node *d = n->first->next; d; d = d->next) {
        void *items = r->draws;

        mem_grow(&items, &r->draw_room, r->draw_count + 1, sizeof *r->draws);
        r->draws = items;
        r->draws[r->draw_count++] = d;
      }
    }
  }
}

/* Adds the words of a tree, taken apart at the signs that join them in a constraint. */
static void add_words(struct rule_looks *l, const struct node *n)
{
  for (const struct node *c = n->first; c; c = c->next) add_words(l, c);
  if (n->kind != NODE_WORD) return;
  for (const char *at = n->text; *at;) {
    size_t skip = strspn(at, "&|~:"), len = strcspn(at + skip, "&|~:");
    void *items = l->words;

    at += skip;
    if (len == 0) continue;
    mem_grow(&items, &l->word_room, l->word_count + 1, sizeof *l->words);
    l->words = items;
    l->words[l->word_count++] = arena_text(&l->arena, at, len);
    at += len;
  }
}

static int by_word(const void *a, const void *b)
{
  return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static void sort_words(struct rule_looks *l)
{
  size_t kept = 0;

  if (l->word_count > 1) qsort(l->words, l->word_count, sizeof *l->words, by_word);
  for (size_t i = 0; i < l->word_count; i++)
    if (kept == 0 || strcmp(l->words[kept - 1], l->words[i]) != 0) l->words[kept++] = l->words[i];
  l->word_count = kept;
}

void rule_looks_read(struct rule_looks *l, const struct knowledge *k)
{
  *l = (struct rule_looks){0};
  for (size_t i = 0; i < k->text_count; i++) {
    struct node *forms = NULL;
    struct err bad;
    char *text = arena_text(&l->arena, k->texts[i].text, k->texts[i].len);

    if (sexpr_read(&l->arena, k->texts[i].file, text, k->texts[i].len, &forms, &bad)) continue;
    for (const struct node *n = forms->first; n; n = n->next) {
      void *items = l->items;

      if (strcmp(node_head(n), "defrule") != 0) continue;
      mem_grow(&items, &l->room, l->count + 1, sizeof *l->items);
      l->items = items;
      l->items[l->count] =
          (struct rule_look){.id = n->first->next->text, .file = k->texts[i].file, .line = n->line};
      read_rule(&l->items[l->count++], n);
      add_words(l, n);
    }
  }
  sort_words(l);
}

void rule_looks_free(struct rule_looks *l)
{
  for (size_t i = 0; i < l->count; i++) {
    free(l->items[i].patterns);
    free(l->items[i].draws);
  }
  free(l->items);
  free(l->words);
  arena_free(&l->arena);
  *l = (struct rule_looks){0};
}

bool rule_looks_mention(const struct rule_looks *l, const char *id)
{
  return l->word_count > 0 && bsearch(&id, l->words, l->word_count, sizeof *l->words, by_word);
}

/* A constraint on one line: calls become "*". It may be written with or without spaces. */
static void constraint(struct buf *b, const struct node *values)
{
  for (; values; values = values->next) buf_add(b, values->kind == NODE_LIST ? "*" : values->text);
}

/* One term: ~word, word, or anything that only the case decides. */
static bool term_takes(const char *term, size_t len, const char *word)
{
  bool not = len > 0 && *term == '~', same;

  if (not ) {
    term++;
    len--;
  }
  if (len == 0 || *term == '?' || *term == '$' || *term == ':' || *term == '=' || *term == '*') return true;
  same = strlen(word) == len && strncmp(term, word, len) == 0;
  return same != not ;
}

/* In a constraint & binds closer than |. */
bool pattern_takes(const struct node *pattern, const char *slot, const char *word)
{
  const struct node *values = fact_values(pattern, slot);
  struct buf b = {0};
  bool taken = false;

  if (!values) return true;
  constraint(&b, values);
  for (const char *at = buf_text(&b); !taken; at++) {
    size_t len = strcspn(at, "|");
    const char *end = at + len;
    bool all = true;

    for (const char *t = at; t <= end; t++) {
      size_t n = strcspn(t, "&|");

      all = all && term_takes(t, n, word);
      t += n;
    }
    taken = all;
    at = end;
    if (!*at) break;
  }
  buf_free(&b);
  return taken;
}

const char *pattern_word(const struct node *pattern, const char *slot)
{
  const struct node *values = fact_values(pattern, slot);

  if (!values || values->next || values->kind != NODE_WORD) return NULL;
  return strpbrk(values->text, "?$&|~:=") ? NULL : values->text;
}

bool pattern_meets(const struct node *pattern, const struct node *drawn)
{
  if (strcmp(node_head(pattern), node_head(drawn)) != 0) return false;
  for (const struct node *s = drawn->first->next; s; s = s->next) {
    const char *word = s->kind == NODE_LIST ? pattern_word(drawn, node_head(s)) : NULL;

    if (word && !pattern_takes(pattern, node_head(s), word)) return false;
  }
  return true;
}
