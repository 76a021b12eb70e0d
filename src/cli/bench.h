/* bench.h - what the files of the bench conversation share. */
#ifndef CLI_BENCH_H
#define CLI_BENCH_H

#include "assess/assess.h"
#include "base/buf.h"
#include "cli/commands.h"
#include "model/case.h"
#include "shop/history.h"
#include "shop/job.h"

/* The conversation. pending is the check that was asked (-1: none); feature the one (-1); chosen
 * the check that the person named to be asked (-1).
 * What is on disk, with the news that wait to be written, adds up to kept and kept_words. */
struct bench {
  const struct knowledge *k;
  struct assessor *assessor;
  struct bench_case c;
  struct assessment a;
  bool assessed, over;
  char *words;
  struct store *store;
  struct history history;   /* of the closed jobs, read once at the start */
  struct buf like_shown;    /* what was last shown of past jobs like this one */
  const char *who;
  char id[STORE_ID];        /* "": the job is not opened yet */
  int64_t last_number;      /* of its entries that we know */
  struct bench_case kept;
  char *kept_words;
  struct job_news news;
  struct job_advice advice; /* the last that was given */
  int proved;               /* fault whose repair passed its proof run, -1 none */
  bool closed;
  int fresh;                /* 1 + the check whose reading was just entered, 0 none */
  bool silent;              /* nothing changed that would be worth showing again */
  int pending, feature, chosen;
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

/* Offers the spec cards of this machine class, if there are any. False when the input ended. */
bool bench_ask_card(struct bench *b);

/* The commands spec, given and work, from what follows the word. */
void bench_spec(struct bench *b, const char *rest);
void bench_given(struct bench *b, const char *rest);
void bench_work(struct bench *b, const char *rest);

/* Shows what the card says of a reading that is asked for, if it does. */
void bench_show_figure(const struct bench *b, int check);

/* Asks yes or no; `otherwise` when only enter is pressed or the input ends. bench_yes_or_end
 * gives 1, 0, or -1 when the input ended. */
bool bench_yes(const char *question, bool otherwise);
int bench_yes_or_end(const char *question, bool otherwise);

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
void bench_show_question(struct bench *b);

/* What leads and the same question in short, after something that changed nothing. */
void bench_ask_again(const struct bench *b);

/* The planned step of a check, or NULL when it is not worth its minutes. */
const struct next_step *bench_step_of(const struct bench *b, int check);

/* Runs a command that only shows, or one that changes something; false when the line is
 * no such command. */
bool bench_run_showing(struct bench *b, const char *line);
bool bench_run_changing(struct bench *b, const char *line);

/* Asks for machine and complaint, of this job or of another that begins; what is open stays
 * open. */
void bench_begin(struct bench *b);
void bench_new(struct bench *b);

/* ---- the stored job (bench_job.c) */

/* Opens the store; a damaged one is put aside if the person says so. */
int bench_open_store(struct bench *b, struct err *e);

/* Reads how the shop's jobs turned out, and says so when they count (bench_learn.c). */
void bench_learn(struct bench *b);

/* Shows how past jobs of the same class and complaint ended, and which were alike. */
void bench_show_similar(struct bench *b);
void bench_similar_shown(struct bench *b); /* it was, and is not again until it changes */

/* Takes up the job that was asked for, the one that was left open, or a new one. */
int bench_take_up(struct bench *b, const struct args *args, struct err *e);

/* Writes what changed. False, having said so, when it cannot be written: then it waits, and
 * goes with the next. */
bool bench_keep(struct bench *b);

/* Takes in what other programs added to this job since. */
void bench_take_in(struct bench *b);

/* Keeps what was advised, when it differs from the last. */
void bench_keep_advice(struct bench *b);

/* Lets go of all that belongs to the job. */
void bench_let_go(struct bench *b);

/* The service check: words say how items are ("oil plug done"); without any, each open item is
 * asked in turn. Each is kept at once (bench_service.c). */
void bench_service(struct bench *b, const char *words);

/* What of the service check is open, as the beginning of a question; false when nothing is. */
bool bench_service_open(const struct job *j, struct buf *out);

/* fixed, close, service, owner, note, minutes, part. False when the line is none of them. */
bool bench_run_home(struct bench *b, const char *line);

/* True when the line begins with the command word; *rest is what follows. */
bool bench_is_command(const char *line, const char *word, const char **rest);

/* The fault that words (or a place in the ranking) name; "" is the first. -1 not listed, -3
 * unknown, having said so. */
int bench_find_fault(const struct bench *b, const char *words);

/* Prints and empties. */
void bench_print(struct buf *out);

#endif
