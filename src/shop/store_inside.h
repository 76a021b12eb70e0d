/* store_inside.h - what the files of the store share; for nobody else. */
#ifndef SHOP_STORE_INSIDE_H
#define SHOP_STORE_INSIDE_H

#include <sqlite3.h>

#include "shop/store.h"

enum { STORE_MOST_KEPT = 40, STORE_VERSION = 2, STORE_MARK = 0x50756c6c /* "Pull" */ };

/* Statements are kept prepared, by the address of their text. */
struct store {
  sqlite3 *db;
  char *path;
  struct { const char *sql; sqlite3_stmt *q; } kept[STORE_MOST_KEPT];
  size_t kept_count;
  char last_job[STORE_ID]; /* the job asked for last, and its row; 0 when not known */
  int64_t last_row;
};

/* Sets *e from what went wrong last, with what to do about it. */
int store_fail(struct store *s, const char *doing, struct err *e);

int store_run(struct store *s, const char *sql, const char *doing, struct err *e);

/* A kept statement with texts (t) and whole numbers (i: int64_t) bound in order; NULL when it
 * cannot be had. It is in use until store_done. Texts must last as long. */
sqlite3_stmt *store_use(struct store *s, const char *sql, const char *types, ...);
void store_done(sqlite3_stmt *q);

/* Runs a statement that gives no rows. */
int store_finish(struct store *s, sqlite3_stmt *q, const char *doing, struct err *e);

/* The number that a statement without values gives, or -1. */
int64_t store_number(struct store *s, const char *sql);

/* Opens one file; mode 0600 when it is made. Checks mark and version, and that it is whole
 * when asked to or when it is small. The caller closes *out. */
enum store_way { STORE_READ, STORE_WRITE };
int store_open_file(const char *path, enum store_way way, bool whole, struct store **out, struct err *e);

/* The copy of a column, which the caller frees. */
char *store_column(sqlite3_stmt *q, int i);

#endif
