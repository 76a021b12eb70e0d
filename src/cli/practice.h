/* practice.h - what the files of the practice command share. */
#ifndef CLI_PRACTICE_H
#define CLI_PRACTICE_H

#include "cli/commands.h"
#include "practice/debrief.h"
#include "practice/progress.h"

/* One sitting at the practice bench. path: where its record is kept. listed: the checks that
 * were last listed by number. */
struct practice {
  const struct knowledge *k;
  struct assessor *assessor;
  char *state, *path;
  const char *who;
  struct record record;
  struct run run;
  int listed[400];
  size_t listed_count;
  char *again;     /* what was typed instead of a number, to be taken next */
  bool *cautioned; /* per caution: was read in this sitting */
  bool left;       /* the input ended, or quit was typed */
  bool shown;      /* the path was just shown: no need to tell it again */
};

/* The conversation, from where the record stands to its end or until it is left. */
int practice_talk(struct practice *p, struct err *e);

/* Asks what has to be asked before an entry is done: in a guided run what is expected (*expect, the
 * caller frees; the entry points to it), before a repair whether, before a declaration how sure.
 * False: it is not done after all. */
bool practice_prepare(struct practice *p, struct entry *entry, char **expect);

/* After a check of a guided run: what was expected beside what it showed, and of a reading, what it is
 * for this engine, asked and told. */
void practice_compare(const struct practice *p, const struct step *s);
void practice_judge_reading(const struct practice *p, const struct step *s);

/* Yes or no, enter for yes; false at the end of the input. Any other line means no and is taken as
 * the next. */
bool practice_yes(struct practice *p, const char *question);

/* "don't know", "stuck" ... (in small letters). */
bool practice_unknown(const char *line);

/* " --as anna", or "" for who needs none. Good until the next call. */
const char *practice_who(const struct practice *p);

/* A worked example, walked and explained step by step. */
int practice_worked(struct practice *p, struct err *e);

/* Keeps the record as it stands. */
int practice_keep(struct practice *p, struct err *e);

/* The machine; and where one stands: whose words, what it cost, what was found last. */
void practice_show_machine(const struct practice *p);
void practice_show_standing(const struct practice *p);
void practice_show_checks(struct practice *p, const char *words);
void practice_show_covers(const struct practice *p);
void practice_show_path(const struct practice *p);
void practice_show_how(const struct practice *p, int check);
void practice_show_hint(const struct practice *p);
void practice_show_stuck(const struct practice *p);
void practice_show_step(const struct practice *p, const struct step *s);
void practice_show_end(const struct practice *p);
void practice_show_debrief(struct practice *p, struct err *e);
void practice_show_lessons(struct practice *p, struct err *e);

/* What was meant by free words: an index, or -1 after having said why not. They ask back when
 * it is not clear. practice_find_fault gives -2 for "nothing". */
int practice_find_check(struct practice *p, const char *words);
int practice_find_cover(struct practice *p, const char *words);
int practice_find_repair(struct practice *p, const char *words);
int practice_find_fault(struct practice *p, const char *words);

/* Is the whole line as good as the name of a check? */
bool practice_names_check(const struct practice *p, const char *line);

/* Reads a typed line as an entry. False when it is none; then it has said why. Certainty that
 * is missing stays -1. */
bool practice_read_entry(struct practice *p, const char *line, struct entry *out);

/* Lays the machine of a sitting out by the shop's own history: its class, unless one was asked
 * for, and the base rates. EX_NOINPUT, saying so, when nothing was learned. */
int practice_shop(const struct practice *p, struct sitting *s, struct err *e);

/* What the teacher uses. */
int practice_make_set(struct practice *p, const struct args *args, struct err *e);
int practice_score(struct practice *p, const struct args *args, struct err *e);
int practice_check_case(struct practice *p, const struct args *args, struct err *e);

/* Fills the sitting from the set: the first of its machines that this apprentice has not begun.
 * EX_DATAERR when it is no set; *done when all were begun. */
int practice_from_set(struct practice *p, const char *file, struct sitting *s, bool *done, struct err *e);

#endif
