/* debrief.h - a finished run looked back on: the path walked beside the best one, what each
 * result weighed, where the reasoning went astray, and what to take away. */
#ifndef PRACTICE_DEBRIEF_H
#define PRACTICE_DEBRIEF_H

#include "base/buf.h"
#include "practice/record.h"

enum astray {
  ASTRAY_UNSAFE,  /* an act that hurts people */
  ASTRAY_PART,    /* jumped to a part: a repair on too little */
  ASTRAY_IGNORED, /* went against what a result had said */
  ASTRAY_SOON,    /* stopped looking too soon */
  ASTRAY_COVER,   /* opened a cover too early */
  ASTRAY_REPEAT,  /* a check that could say nothing new */
  ASTRAY_LATE,    /* went on checking when the repair was due */
  ASTRAY_DEARER,  /* a check that told less for its minutes */
  ASTRAY_SURE,    /* surer, or less sure, than the results allowed */
  ASTRAY_KINDS
};

/* Of one step, or of several with the same fault up to step last. */
struct remark {
  enum astray kind;
  size_t step, last;
  double regret;
  char text[600];
};

enum { DEBRIEF_MOST = RUN_MOST_STEPS + 2, DEBRIEF_AWAY = 3 };

struct debrief {
  const struct knowledge *k;
  const struct sitting *sitting;
  const struct run *run;
  struct run best; /* the same machine, walked by the best step each time */
  struct remark remarks[DEBRIEF_MOST];
  size_t remark_count;
  char away[DEBRIEF_AWAY][400];
};

/* Looks back on a run (which need not be over). The run, the sitting, the knowledge and the
 * assessor must outlive *out. EX_TEMPFAIL from the engine's limits. Free with debrief_free in
 * every case. */
int debrief_make(struct debrief *out, const struct run *run, const struct sitting *sitting,
                 struct assessor *assessor, struct err *e);
void debrief_free(struct debrief *d);

/* "jumped to a part", ... */
const char *astray_name(enum astray kind);

/* Pieces that the ways of telling share: what a step was ("spark test: jumps"), what would have
 * been better, a fault's name (-1 not listed, -2 nothing broken), a reading or result. */
void debrief_step(struct buf *out, const struct run *r, const struct step *s);
void debrief_better(struct buf *out, const struct knowledge *k, const struct advice_step *s);
const char *debrief_fault(const struct knowledge *k, int fault);
void debrief_result(struct buf *out, const struct knowledge *k, const struct case_result *r);

/* How the result of a step bears on a fault that it moved, and what that rests on: "it shows ...
 * [estimate]"; "" for steps that are no checks. */
void debrief_why(struct buf *out, const struct run *r, const struct step *s, const struct moved *m);

/* What a reading amounts to on this machine, and where it would have been sound; "" for steps
 * without a reading. */
void debrief_reading(struct buf *out, const struct run *r, const struct step *s);

/* "Right ...", or what it gave away and what was better. */
void debrief_judged(struct buf *out, const struct run *r, const struct step *s);

/* "fuel stale 21 -> 2 % (-10 db)"; and is it worth showing? */
void debrief_moved(struct buf *out, const struct run *r, const struct moved *m, const char *arrow);
bool debrief_worth_telling(const struct moved *m);

/* "step 3", "steps 3 to 5". */
void debrief_where(struct buf *out, const struct remark *x);

/* Did the step tell anything, so that what it moved is worth showing? */
bool debrief_told(const struct step *s);

/* What decibans are, in a sentence; what was spent and given away, in two or three. */
extern const char debrief_decibans[];
void debrief_score(struct buf *out, const struct debrief *d);

/* How the run ended, in a sentence or two. */
void debrief_end(struct buf *out, const struct run *r);

void debrief_text(struct buf *out, const struct debrief *d, int width);
void debrief_html(struct buf *out, const struct debrief *d);
struct json *debrief_json(const struct debrief *d);

/* What one step cost in expectation and told, in a few lines: for the guided level. */
void debrief_comment(struct buf *out, const struct run *r, const struct step *s, int width);

#endif
