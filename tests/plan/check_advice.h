/* check_advice.h - what holds of any advice. */
#ifndef CHECK_ADVICE_H
#define CHECK_ADVICE_H

#include "plan/advise.h"

/* Fails the running test when the advice contradicts itself. */
void check_advice(const struct knowledge *k, const struct advice *a);

#endif
