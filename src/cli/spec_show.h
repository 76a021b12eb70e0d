/* spec_show.h - spec cards told to a person or to a program. */
#ifndef CLI_SPEC_SHOW_H
#define CLI_SPEC_SHOW_H

#include "base/buf.h"
#include "json/json.h"
#include "shop/spec_folder.h"
#include "units/system.h"

/* The version of the JSON (docs/schema/spec-1.json). */
#define SPEC_VERSION "spec-1"

/* All cards, one to a line; those that cannot be used say why. */
void spec_list_text(struct buf *out, const struct knowledge *k, const struct spec_entries *list);
struct json *spec_list_json(const struct spec_entries *list);

/* One card in the units of a system. */
void spec_card_text(struct buf *out, const struct knowledge *k, const struct spec_card *card,
                    enum unit_system system);
struct json *spec_card_json(const struct spec_card *card, enum unit_system system);

#endif
