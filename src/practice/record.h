/* record.h - a practice run on disk: who, which machine, and every entry in order.
 *
 * A run is remade from its record by doing the entries again: the same knowledge and seed give
 * the same run. What it came to is kept beside the entries, for lists and scores. */
#ifndef PRACTICE_RECORD_H
#define PRACTICE_RECORD_H

#include "json/json.h"
#include "practice/run.h"

#define RECORD_VERSION "practice-1"

enum level { LEVEL_WORKED, LEVEL_GUIDED, LEVEL_FREE, LEVEL_EXAM };

enum { RECORD_NAME = 40 };

/* Who practises on what. laid: a hand-written case (text of casework.h), NULL for a drawn one;
 * set and number: of a class set, "" and 0 when there is none. rates: of the machine's class, one
 * for each fault, when it is drawn by the shop's own history of shop_jobs jobs (hidden.h); they are
 * kept with the run, so that it stays the same when the history goes on. */
struct sitting {
  char apprentice[RECORD_NAME], system[RECORD_NAME], set[RECORD_NAME], machine[RECORD_NAME];
  enum level level;
  enum hidden_kind kind;
  uint64_t seed;
  int number;
  char *laid;
  double *rates;
  long shop_jobs;
  int64_t began;
};

/* What a run came to. machine, system and truth are ids ("nothing" when nothing was broken). */
struct summary {
  char end[16], machine[RECORD_NAME], system[RECORD_NAME], truth[64];
  bool over, right;
  double minutes, parts, regret, expected, brier, sure, score, right_steps;
  int steps, unsafe, again, parts_wrong, stated, stated_right;
};

struct record {
  struct sitting sitting;
  struct summary summary;
  unsigned long long knowledge; /* fingerprint of what it was made with */
  struct entry *entries;        /* their expect texts are the record's */
  size_t count, room;
};

void record_free(struct record *x);

/* Takes base rates from the shop's history for a sitting whose machine is told, rounded to what a
 * file keeps of them. */
void sitting_take_rates(struct sitting *s, const struct knowledge *k, const struct learned *shop, long jobs);

/* The rates of a sitting as an object by fault, and back: EX_DATAERR for what is no rate or names
 * a fault that this knowledge does not know. */
struct json *rates_json(const struct knowledge *k, const double *rates);
int rates_read(const char *path, const struct knowledge *k, const struct json *j, double **out,
               struct err *e);

/* Makes the machine of a sitting and begins the run. EX_DATAERR when there is no such machine. */
int sitting_begin(const struct sitting *s, const struct knowledge *k, struct assessor *assessor, bool cheap,
                  struct run *r, struct err *e);

void summary_of(const struct run *r, struct summary *out);

/* Adds an entry (its expect text is copied). */
void record_add(struct record *x, const struct entry *entry);

/* Writes and reads; k gives the ids. EX_DATAERR for anything that is not a record, or that
 * names what this knowledge does not know. */
int record_keep(const char *path, const struct knowledge *k, const struct record *x, struct err *e);
int record_read(const char *path, const struct knowledge *k, struct record *out, struct err *e);
struct json *record_json(const struct knowledge *k, const struct record *x);

/* Does the entries again, up to `most` of them. The caller frees *r in every case. */
int record_replay(const struct record *x, const struct knowledge *k, struct assessor *assessor, size_t most,
                  struct run *r, struct err *e);

const char *level_name(enum level level);
bool level_named(const char *name, enum level *out);

/* "check", "open" ...; and the id of what an entry is about ("" for none). */
const char *act_name(enum act act);
const char *entry_id(const struct knowledge *k, const struct entry *entry);

#endif
