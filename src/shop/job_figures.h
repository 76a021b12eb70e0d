/* job_figures.h - the figures of a stored job: readings, what the spec card says, what was given.
 * For the files of job.h only. */
#ifndef SHOP_JOB_FIGURES_H
#define SHOP_JOB_FIGURES_H

#include "shop/job.h"

/* Puts a value as a text in as few digits as bring it back exactly, then the unit of the check. */
void figure_put(struct json *b, const char *member, const struct check *c, double value);

/* The reading of a check: a number and the unit of the check stay exactly what they were; all
 * else is read as typed. False when it is no reading of it. */
bool figure_read(const struct knowledge *k, int check, const char *text, struct case_result *out);

/* Take the entries spec, spec-card and given into a case; false: the entry says nothing to us. */
bool figure_take_spec(const struct knowledge *k, struct bench_case *c, int check, const struct json *b);
bool figure_take_card(struct bench_case *c, const struct json *b);
bool figure_take_given(struct bench_case *c, const struct json *b);

/* Forgets what was given under that id; false when there is none of that id. */
bool figure_drop_given(struct bench_case *c, const char *id);

/* The entries by which the figures of one state of a case differ from the next. */
void figures_say_change(struct job_news *n, const struct knowledge *k, const struct bench_case *before,
                        const struct bench_case *now);

#endif
