/* service.h - what is looked at before any machine goes home, whatever was wrong with it.
 *
 * Common practice, no source: the maker's book goes before it. */
#ifndef MODEL_SERVICE_H
#define MODEL_SERVICE_H

#include "model/case.h"

enum { SERVICE_ITEMS = 7 };

/* id is what is stored and typed ("stop-switch"), name what people read, text what is right. */
struct service_item { const char *id, *name, *text; };

/* The i-th item, worded for this machine (its fuel, its strokes); NULL from SERVICE_ITEMS on.
 * The texts live as long as the program. */
const struct service_item *service_item(const struct knowledge *k, const struct bench_case *c, size_t i);

/* The id of the i-th item, whatever the machine; i below SERVICE_ITEMS. */
const char *service_id(size_t i);

/* The place of an item by its id, -1 when there is none called so. */
int service_find(const char *id);

#endif
