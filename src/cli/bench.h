/* bench.h - what the files of the bench conversation share. */
#ifndef CLI_BENCH_H
#define CLI_BENCH_H

#include "assess/assess.h"
#include "base/buf.h"
#include "model/case.h"

/* The conversation. pending is the check that was asked (-1: none); feature the one (-1). */
struct bench {
  const struct knowledge *k;
  struct assessor *assessor;
  struct bench_case c;
  struct assessment a;
  bool assessed, over;
  char *folder, *words;
  int pending, feature;
  bool *skipped;          /* per check: not now */
  signed char *told;      /* enum tri per feature: what the person said, 0 for nothing */
  bool *feature_asked;    /* per feature: was asked, whatever the answer */
  const char **vocabulary; /* for completion */
  size_t vocabulary_count;
};

/* Prints wrapped to the terminal. */
void bench_say(const char *format, ...) __attribute__((format(printf, 1, 2)));

/* Asks what machine and complaint it is. False when the input ended. */
bool bench_ask_machine(struct bench *b);
bool bench_ask_complaint(struct bench *b);

/* Asks yes or no; `otherwise` when only enter is pressed or the input ends. */
bool bench_yes(const char *question, bool otherwise);

/* The person says that the machine has or lacks a feature. */
void bench_set_feature(struct bench *b, int feature, bool has);

/* Records a result, keeps the job and says what was taken. */
void bench_record(struct bench *b, struct case_result r);

/* Takes a typed line that is no command: an answer to what was asked, or any other check
 * by name or reading. Says what it did or what it did not understand. */
void bench_entry(struct bench *b, const char *line);

/* Names a check in free words: its index, or -1 after having said why. Asks back when it is
 * not clear. */
int bench_find_check(struct bench *b, const char *words);

/* Shows what leads, what to mind and what comes next, choosing what to ask. */
void bench_show_state(struct bench *b);

/* Shows the check that is asked, its cautions first. */
void bench_show_question(const struct bench *b);

/* The planned step of a check, or NULL when it is not worth its minutes. */
const struct next_step *bench_step_of(const struct bench *b, int check);

/* Runs a command that only shows, or one that changes something; false when the line is
 * no such command. */
bool bench_run_showing(struct bench *b, const char *line);
bool bench_run_changing(struct bench *b, const char *line);

/* Begins a job by asking; puts the present one aside first. */
void bench_begin(struct bench *b);
void bench_new(struct bench *b);

/* Prints and empties. */
void bench_print(struct buf *out);

#endif
