/* bench_engine.h - an engine over the small or the shipped knowledge, with a rule text added
 * behind the back of the scan. */
#ifndef HOSTILE_BENCH_ENGINE_H
#define HOSTILE_BENCH_ENGINE_H

#include "engine/engine.h"
#include "sample.h"

struct bench_engine {
  struct sample s;
  struct loaded l;
  struct bench_case c;
  size_t scanned_texts;
  struct engine *en; /* NULL when it could not be opened */
  struct conclusions drawn;
  struct err e;
  int status;
};

/* Loads the small knowledge (shipped: the whole of facts/ and rules/ instead), with
 * scanned rules in rules/try.clp (may be NULL; they must pass the scan), then puts `unscanned`
 * (may be NULL) among the engine's texts as evil.clp and opens the engine. limits may be NULL. */
void bench_begin(struct bench_engine *b, bool shipped, const char *scanned, const char *unscanned,
                 const struct engine_limits *limits);
/* Another engine over the same knowledge, with another text behind the scan's back. */
void bench_reopen(struct bench_engine *b, const char *unscanned, const struct engine_limits *limits);

void bench_end(struct bench_engine *b);

/* Tells these findings ("check result", NULL at the end), each quite sure, and runs. Returns
 * the status, which is also b->status; b->drawn holds what was concluded. */
int bench_find(struct bench_engine *b, const char *const *findings);

/* Is there such a conclusion? id: of what it is about (a), or its word. */
bool bench_drew(const struct bench_engine *b, enum conclusion_kind kind, const char *id);

/* Opens a new engine over the small knowledge and draws a conclusion: does all work still? */
bool bench_works(void);

#endif
