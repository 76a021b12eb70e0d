/* knowledge.h - what is known about the trade, as plain structs.
 *
 * Everything here belongs to the arena of its struct knowledge and lives as long.
 * References between entries are indexes into the arrays of struct knowledge, -1
 * where there is none. Texts end with a NUL and hold none inside. */
#ifndef MODEL_KNOWLEDGE_H
#define MODEL_KNOWLEDGE_H

#include <stdbool.h>
#include <stddef.h>

#include "base/mem.h"
#include "units/quantity.h"

/* What a statement rests on. */
enum basis { BASIS_NONE, BASIS_PUBLISHED, BASIS_COMMON_PRACTICE, BASIS_MEMORY, BASIS_ESTIMATE };

/* Where a statement stands and what it rests on. */
struct origin {
  const char *file; /* as shown to people */
  int line;
  enum basis basis;
  int source;             /* index of a source, or -1 */
  const char *source_id;  /* as written, NULL when none */
  const char *place;      /* where in the source, NULL when none */
};

struct texts { const char **items; size_t count; };
struct numbers { double *items; size_t count; };
/* A list of ids with what they resolve to. */
struct refs { const char **ids; int *at; size_t count; };

struct source { const char *id, *title, *edition, *kind, *status, *note; struct origin origin; };

struct feature {
  const char *id, *name, *group, *ask;
  bool one_of; /* the features of its group are a choice of one */
  struct refs brings, bars;
  struct origin origin;
};

struct machine_class {
  const char *id, *name;
  struct refs has, may;
  struct texts also_called;
  double worth; /* shop minutes */
  struct origin origin;
};

struct caution { const char *id, *text, *defer_to; struct refs needs; struct origin origin; };

struct cover {
  const char *id, *name, *under_id, *may_damage;
  int under; /* cover that comes off first, or -1 */
  struct refs needs, cautions;
  struct texts tools, refit;
  double minutes_off, minutes_on;
  bool run_without;
  struct origin origin;
};

struct complaint {
  const char *id, *name, *ask, *runs;
  struct texts says;
  struct refs near, needs;
  double anyway; /* chance with nothing listed wrong */
  struct origin origin;
};

/* What owners of made-up machines say who have this complaint. */
struct owner_says { const char *complaint_id; int complaint; struct texts words; struct origin origin; };

/* A check has two to this many results. */
enum { CHECK_MOST_RESULTS = 8 };

enum check_kind { KIND_LOOK, KIND_LISTEN, KIND_MEASURE, KIND_TRY, KIND_ASK };

struct check {
  const char *id, *name, *system, *ask, *kind_id, *engine, *quantity_id, *unit_name, *destroys;
  enum check_kind kind;
  enum quantity quantity;
  const struct unit *unit; /* unit of bands and tolerance; NULL when not a measurement */
  double tolerance;        /* one standard deviation of the instrument, in unit */
  struct numbers possible; /* lowest and highest reading that can be true, in unit; or none: any */
  struct texts results;    /* ids; the first is what a sound machine shows */
  struct texts labels, means;
  struct numbers anyway; /* chances of results 1.., nothing listed being wrong */
  double minutes;
  struct texts tools, steps, mistakes, also_called;
  struct refs off, needs, cautions;
  const char *out_of_reach; /* a tool that it needs and this shop cannot have, or NULL */
  struct origin origin;
};

struct bands {
  const char *id, *check_id, *unit_name, *note;
  int check;
  struct refs needs;
  struct texts results;
  int *result_at;        /* index of each result in its check */
  struct numbers limits; /* rising, in the unit of the check */
  struct origin origin;
};

struct fault {
  const char *id, *name, *system, *sort, *is, *comes_about, *shows, *repair_id, *proof;
  struct refs needs;
  double base_rate;
  struct texts looks_like; /* fault, check, fault, check ... */
  int repair;
  struct origin origin;
};

struct base_rate {
  const char *fault_id, *class_id;
  int fault, machine_class;
  double chance;
  struct origin origin;
};

/* What a fault makes a check show, or (check -1) which complaint it leads to. */
struct sign {
  const char *fault_id, *check_id, *result_id, *complaint_id, *why;
  int fault, check, result, complaint;
  double chance;
  struct origin origin;
};

struct repair {
  const char *id, *name, *reuse;
  double minutes, parts_cost;
  struct texts parts, consumables, tools, steps;
  struct refs off, cautions;
  struct origin origin;
};

struct setting { const char *id, *why; double value; struct origin origin; };

/* A tool that the shop lacks. borrow: minutes to get it, 0: it cannot be had. */
struct no_tool { const char *name; double borrow; struct origin origin; };

struct retired { const char *id, *replaced_by, *why; struct origin origin; };

/* Words that stand for one thing in free text; see the template. opposite: index, or -1. */
struct same_words {
  const char *id, *sort, *of, *opposite_id;
  struct texts words;
  int opposite;
  struct origin origin;
};

/* A rule's identity: its text stays with the engine. */
struct rule_card { const char *id, *reason; struct origin origin; };

/* A file of rules or templates for the engine, scanned and found fit to load. */
struct rule_text { const char *file; const char *text; size_t len; };

struct knowledge {
  struct arena arena;
  struct source *sources;             size_t source_count;
  struct feature *features;           size_t feature_count;
  struct machine_class *classes;      size_t class_count;
  struct caution *cautions;           size_t caution_count;
  struct cover *covers;               size_t cover_count;
  struct complaint *complaints;       size_t complaint_count;
  struct owner_says *owners;          size_t owner_count;
  struct check *checks;               size_t check_count;
  struct bands *bands;                size_t bands_count;
  struct fault *faults;               size_t fault_count;
  struct base_rate *base_rates;       size_t base_rate_count;
  struct sign *signs;                 size_t sign_count; /* sorted by check, complaint, fault */
  struct repair *repairs;             size_t repair_count;
  struct setting *settings;           size_t setting_count;
  struct no_tool *no_tools;           size_t no_tool_count;
  struct retired *retired;            size_t retired_count;
  struct same_words *same_words;      size_t same_words_count;
  struct rule_card *rules;            size_t rule_count;
  struct rule_text *texts;            size_t text_count;
  struct id_index *index;         /* made by knowledge_index */
  unsigned long long fingerprint; /* of all files read; see load.c */
};

enum entry_kind {
  ENTRY_SOURCE, ENTRY_FEATURE, ENTRY_CLASS, ENTRY_CAUTION, ENTRY_COVER, ENTRY_COMPLAINT,
  ENTRY_CHECK, ENTRY_FAULT, ENTRY_REPAIR, ENTRY_RULE, ENTRY_SETTING,
  ENTRY_SAME_WORDS
};

/* Makes the index that knowledge_find uses; again whenever entries were added. Of two
 * entries with one id the first is found. */
void knowledge_index(struct knowledge *k);

/* Index of the entry of that kind with that id, or -1. */
int knowledge_find(const struct knowledge *k, enum entry_kind kind, const char *id);

/* Ids of all entries of a kind, in file order: *out is an array of *count that the
 * caller frees (the texts stay the knowledge's). */
void knowledge_ids(const struct knowledge *k, enum entry_kind kind, const char ***out, size_t *count);

/* Index of a result of a check by id, or -1. */
int check_result(const struct check *c, const char *result);

/* The value of a setting, or `otherwise` when it is not there. */
double knowledge_setting(const struct knowledge *k, const char *id, double otherwise);

/* Signs of one check (or complaint): [*first, *last) in k->signs. */
void knowledge_signs_of_check(const struct knowledge *k, int check, size_t *first, size_t *last);
void knowledge_signs_of_complaint(const struct knowledge *k, int complaint, size_t *first, size_t *last);

/* "published", "common practice", "memory", "estimate". */
const char *basis_name(enum basis b);

/* Chance words: never seldom sometimes even often usually always. The only table of
 * them. chance_word gives 0 for an unknown word. */
double chance_word(const char *word);
const char *chance_word_at(size_t i, double *value); /* NULL past the end */

#endif
