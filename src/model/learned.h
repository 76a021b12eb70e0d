/* learned.h - chances that the shop's own history puts in place of the shipped ones.
 *
 * Plain arrays in step with one knowledge; a number below 0 is "as shipped". A case that
 * points to one of these is weighed with it (model/case.h). */
#ifndef MODEL_LEARNED_H
#define MODEL_LEARNED_H

#include "model/knowledge.h"

struct learned {
  size_t faults, classes, signs; /* of the knowledge it belongs to */
  double *base;                  /* [class * faults + fault]: base rate, 0 < x <= 0.5 */
  double *sign;                  /* [index in knowledge.signs]: chance, 0 < x < 1 */
};

/* Everything as shipped. Free with learned_free. */
void learned_begin(struct learned *l, const struct knowledge *k);
void learned_free(struct learned *l);

/* The base rate of a fault on a machine of that class (-1: not told), and the chance of a
 * sign: learned, or as shipped where nothing was learned or l is NULL. */
double learned_base(const struct learned *l, const struct knowledge *k, int machine_class, int fault);
double learned_sign(const struct learned *l, const struct knowledge *k, size_t sign);

/* The base rate as shipped: that of the class where there is one. */
double shipped_base(const struct knowledge *k, int machine_class, int fault);

#endif
