/* sexpr.h - reads a knowledge file into a tree before the rule engine sees a byte.
 *
 * Files of knowledge are data from strangers: size, depth, length of words, NULs, control
 * characters, UTF-8 and balance are checked here, without recursion, and every node remembers its
 * line. The rule engine crashes on some of what this refuses (decision 0002). */
#ifndef KNOWLEDGE_SEXPR_H
#define KNOWLEDGE_SEXPR_H

#include <stdbool.h>
#include <stddef.h>

#include "base/err.h"
#include "base/mem.h"

enum node_kind { NODE_LIST, NODE_WORD, NODE_NUMBER, NODE_STRING };

struct node {
  enum node_kind kind;
  int line;
  const char *text; /* word, number as written, or string without its quotes */
  double number;
  struct node *first, *next; /* children of a list; neighbour */
};

/* Limits; a real knowledge file stays far below all of them. */
enum {
  SEXPR_MAX_BYTES = 4 * 1024 * 1024,
  SEXPR_MAX_DEPTH = 16,
  SEXPR_MAX_WORD = 128,
  SEXPR_MAX_STRING = 2000
};

/* Reads text into a list of the top-level forms; the nodes are from `arena`. text is len bytes
 * and one more for an end mark; it is taken apart in place: the words and strings of the tree
 * stand in it, so it must live as long as these are used. file is used in messages only. On
 * failure: EX_DATAERR with the line and what to do. */
int sexpr_read(struct arena *arena, const char *file, char *text, size_t len, struct node **out,
               struct err *e);

/* The head word of a list, or "" when it has none. */
const char *node_head(const struct node *n);

bool node_is_word(const struct node *n, const char *word);

/* Number of children of a list. */
size_t node_count(const struct node *n);

#endif
