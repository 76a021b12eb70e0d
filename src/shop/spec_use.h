/* spec_use.h - a spec card laid beside a case. */
#ifndef SHOP_SPEC_USE_H
#define SHOP_SPEC_USE_H

#include "shop/spec_card.h"

/* The case goes by this card from now on: figures that came with another card go, those of this one
 * are taken for the checks that the case has no figure of its own for, and what it gives (poles,
 * compression ratio, blade length) where nothing was told. Returns how many checks it judges. */
size_t spec_use(const struct knowledge *k, const struct spec_card *card, struct bench_case *c);

/* The case goes by no card any more. */
void spec_drop(struct bench_case *c);

#endif
