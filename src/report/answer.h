/* answer.h - an assessment, told to a person or to a program. */
#ifndef REPORT_ANSWER_H
#define REPORT_ANSWER_H

#include "assess/assess.h"
#include "base/buf.h"
#include "json/json.h"

/* The version of the JSON answer (docs/schema/answer-1.json). */
#define ANSWER_VERSION "answer-1"

/* The whole answer as JSON. The caller frees. */
struct json *answer_json(const struct knowledge *k, const struct bench_case *c, struct assessment *a);

/* The whole answer in words, at most `width` columns. */
void answer_text(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                 struct assessment *a, int width);

/* Pieces of it, for the conversation. */
void answer_ranking(struct buf *out, const struct knowledge *k, const struct assessment *a, size_t most, int width);
void answer_together(struct buf *out, const struct knowledge *k, struct assessment *a, int width);
void answer_why(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                struct assessment *a, int fault, int width); /* fault -1: not listed */
/* What rules have to say of the case: whom to hand over to, what does not agree, advice, and the cautions
 * (in brief: by their first sentences). answer_warnings: those cautions alone, in full. */
void answer_notes(struct buf *out, const struct knowledge *k, const struct assessment *a, bool brief, int width);
void answer_warnings(struct buf *out, const struct knowledge *k, const struct assessment *a, int width);
void answer_check(struct buf *out, const struct knowledge *k, const struct bench_case *bench,
                  const struct next_step *s, int width); /* cautions, then how to do it */
void answer_repair(struct buf *out, const struct knowledge *k, const struct bench_case *c, int fault, int width);
/* How the repair of a fault is proved, and under what conditions of the complaints. */
void answer_proof(struct buf *out, const struct knowledge *k, const struct bench_case *c, int fault, int width);
void answer_refit(struct buf *out, const struct knowledge *k, const struct bench_case *c, int width);
void answer_result(struct buf *out, const struct knowledge *k, const struct case_result *r); /* in short */

/* A reading, what it comes to, and by what it was judged: "by the card" with the figure and where that
 * is from, or "class figure" with its basis. False (and nothing said) when it is no reading. */
bool answer_reading(struct buf *out, const struct knowledge *k, const struct bench_case *bench,
                    const struct assessment *a, const struct case_result *r);
void answer_readings(struct buf *out, const struct knowledge *k, const struct bench_case *c,
                     const struct assessment *a, int width); /* all of them */
struct json *answer_readings_json(const struct knowledge *k, const struct bench_case *bench,
                                  const struct assessment *a); /* the caller frees */

/* How complaints in the owner's words were taken, how sure that is and what else they may mean;
 * nothing when complaints came as ids. */
void answer_words(struct buf *out, const struct knowledge *k, const struct bench_case *c, int width);
struct json *answer_words_json(const struct knowledge *k, const struct bench_case *c); /* the caller frees */

/* "published (source, place)", "common practice", ... */
void answer_basis(struct buf *out, const struct knowledge *k, const struct origin *o);

#endif
