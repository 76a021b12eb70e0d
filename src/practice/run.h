/* run.h - a practice run: what was done to a made-up machine, what it cost and showed.
 *
 * Every step is judged by what was to be expected when it was chosen (judge.h), never by what
 * it happened to show. All costs are minutes of shop time; parts count at the shop rate. */
#ifndef PRACTICE_RUN_H
#define PRACTICE_RUN_H

#include "assess/deeper.h"
#include "plan/advise.h"
#include "practice/hidden.h"

/* LEAD: at 1 on, 0 off. WIPE: spilt petrol. FORBIDDEN: an act of unsafe.h. DECLARE: at is the
 * fault, -2 nothing broken. */
enum act {
  ACT_CHECK,
  ACT_OPEN,
  ACT_REPAIR,
  ACT_PROVE,
  ACT_DECLARE,
  ACT_GIVE_UP,
  ACT_LEAD,
  ACT_WIPE,
  ACT_FORBIDDEN
};

/* sure: stated certainty 0..1, -1 when none was stated. expect: what the person expected to see,
 * NULL when not asked; the run copies it. */
struct entry {
  enum act act;
  int at;
  double sure;
  const char *expect;
};

/* How far a step moved a fault: the chance that it is behind the complaint, before and after;
 * db: its odds moved by so many decibans; sign: the sign by which a result bears on it, -1. */
struct moved {
  int fault, sign;
  double before, after, db;
};

enum { RUN_MOVED = 4, RUN_MOST_STEPS = 60 };

struct step {
  struct entry entry;
  char *expect;                 /* the run's copy */
  struct case_result result;    /* of a check */
  bool again, fixed;            /* the check had been made; it cured */
  bool hit;                     /* something that was wrong was put right, or rightly named */
  double minutes, parts;        /* minutes of work; parts in money */
  double refit; /* minutes of covers that go back on for it and would have to come off again */
  double cost;                  /* both, as minutes */
  double best, chosen, regret;  /* expected minutes to the end: by the best step, by this one */
  bool right;
  struct advice_step better; /* the best step then */
  double better_minutes;
  double chance; /* belief in what was repaired or declared, when it was */
  int leading;   /* leading fault before the step, -1 not listed, -2 nothing broken */
  double leading_chance;
  double truth_chance; /* what was wrong at the start stood at that before the step; 0 when nothing was */
  struct moved moved[RUN_MOVED];
  size_t moved_count;
  int rule;       /* a rule that spoke because of this result, -1 when none */
  int pointless_by; /* the rule that calls the check pointless, -1 when none */
  int falls_on;   /* result that the check's reading falls on, -1 when none */
  int taken_back; /* results that a repair made out of date */
};

enum run_end { RUN_OPEN, RUN_CURED, RUN_DECLARED, RUN_GAVE_UP, RUN_UNSAFE };

struct run {
  const struct knowledge *k;
  struct assessor *assessor;
  struct hidden hidden;
  int culprit;                   /* knowledge fault, -1 when nothing was broken */
  int truth[HIDDEN_MOST_FAULTS]; /* knowledge faults that were hidden at the start */
  size_t truth_count;
  struct bench_case c;
  struct assessment a;
  struct advice advice;
  bool cheap, known;            /* cheap: judge.h; known: a and advice are those of c */
  struct advice_step ahead;     /* cheap only: the best step by looking one question ahead */
  bool lead_off, spilt, proved; /* proved: it was run as the owner does, and did the same */
  struct step *steps;
  size_t step_count, step_room;
  double minutes, parts, regret, expected; /* expected: minutes of the best path at the start */
  double brier;                            /* mean over the stated certainties; -1 when none was stated */
  int stated, stated_right;                /* how many there were; of these, how many were so */
  double stated_sum;                       /* of the certainties */
  bool right;                              /* what was declared or repaired at the end put it right */
  enum run_end end;
  char unsafe[600]; /* why it was stopped */
};

/* Begins a run on *h, which is taken over. cheap: judge with less looking ahead (for many
 * simulated runs). EX_TEMPFAIL from the engine's limits. Free with run_free in every case. The
 * knowledge and the assessor must outlive it. */
int run_begin(struct run *r, const struct knowledge *k, struct assessor *assessor, struct hidden *h,
              bool cheap, struct err *e);

/* Can this be done at all on this machine now? If not, why (one sentence) goes to why. */
bool run_possible(const struct run *r, const struct entry *entry, char *why, size_t size);

/* Is there anything on this machine that this repair could put right? */
bool run_repairable(const struct run *r, int repair);

/* Does it: judges the step, pays for it, and shows what comes of it (the last of r->steps; LEAD
 * and WIPE leave no step). It must be possible. What is declared is put right and tried; when that
 * was not it the run goes on. Ends the run when it is cured, rightly declared, given
 * up, unsafe, or RUN_MOST_STEPS long. EX_TEMPFAIL from the engine's limits. */
int run_do(struct run *r, const struct entry *entry, struct err *e);

/* What must be done first so that the entry is safe, done without a word: for programs. */
void run_make_safe(struct run *r, const struct entry *entry);

/* Minutes of an entry now, covers included, and the money for parts. */
double run_minutes(const struct run *r, const struct entry *entry, double *parts);

/* Minutes of covers that are off and go back on because this entry runs the engine: what it
 * costs to have them off again. */
double run_refit_minutes(const struct run *r, const struct entry *entry);

/* Would the repair of this fault cost more than the machine is worth? Then it is told to the
 * owner instead. */
bool run_not_worth_it(const struct run *r, int fault);

/* How likely it is that what this repair (or -1: nothing) puts right is behind it. */
double run_chance(const struct run *r, int repair);

/* The chance that the leading fault is behind the complaint; -2 for nothing broken. */
int run_leading(const struct run *r, double *chance);

/* How likely it is now that the fault that was hidden (the first of two) is behind it; 0 when nothing
 * was. */
double run_truth_chance(const struct run *r);

/* 100 when nothing was given away; 100 V / (V + what was given away). */
double run_score(const struct run *r);

const char *run_end_name(enum run_end end);

void run_free(struct run *r);

#endif
