/* answer_plan.h - the advice, told to a person or to a program. */
#ifndef REPORT_ANSWER_PLAN_H
#define REPORT_ANSWER_PLAN_H

#include "assess/assess.h"
#include "base/buf.h"
#include "json/json.h"

/* The plan in words: what comes next and then, what it is expected to cost with and without
 * more checks, when to stop checking or to give up, and what is nearly free while covers are
 * off. The assessment must have been advised (assess_advise). */
void answer_plan(struct buf *out, const struct knowledge *k, const struct assessment *a, int width);

/* When something other than a check is the cheapest now: says so. Nothing otherwise. */
void answer_instead(struct buf *out, const struct knowledge *k, const struct assessment *a, int width);

/* The same as JSON (member "plan" of the answer). The caller frees or puts it somewhere. */
struct json *answer_plan_json(const struct knowledge *k, const struct assessment *a);

/* A step in a few words: "check: look and smell of the fuel". */
void answer_step(struct buf *out, const struct knowledge *k, const struct advice_step *s);

#endif
