/* card_care.c - what every card says: the outcome, cautions, storing, what to check last.
 *
 * The lines on storing and on the last checks are common practice; a maker's book goes
 * before them, and the card says so. */
#include <stdlib.h>
#include <string.h>

#include "report/card_parts.h"
#include "report/parts.h"

enum { MOST_FEATURES = 3 };

/* A line for machines that have any of these features and lack `but`. */
struct line {
  const char *text, *what, *any[MOST_FEATURES + 1], *but;
};

static enum tri has(const struct card *card, const char *feature)
{
  int f = knowledge_find(card->k, ENTRY_FEATURE, feature);

  return f < 0 ? TRI_LACKS : (enum tri)card->c->features[f];
}

static bool concerns(const struct card *card, const struct line *l)
{
  if (l->but && has(card, l->but) == TRI_HAS) return false;
  if (!l->any[0]) return true;
  for (size_t i = 0; i < MOST_FEATURES && l->any[i]; i++)
    if (has(card, l->any[i]) == TRI_HAS) return true;
  return false;
}

static const struct line *nth(const struct card *card, const struct line *lines, size_t count, size_t i)
{
  for (size_t l = 0; l < count; l++)
    if (concerns(card, &lines[l]) && i-- == 0) return &lines[l];
  return NULL;
}

const char *card_storing(const struct card *card, size_t i)
{
  static const struct line lines[] = {
      {.text = "Use petrol bought within the last month. Keep it in a closed can marked with the date, away "
               "from the "
               "house.",
       .but = "gas-fuel"},
      {.text = "Standing more than a month: shut the fuel tap and let the engine run until it stops. Then "
               "empty the "
               "tank, outdoors and cold.",
       .any = {"fuel-tap"},
       .but = "gas-fuel"},
      {.text = "Standing more than a month: empty the tank, outdoors and cold, then let the engine run until "
               "it stops.",
       .any = {"diaphragm", "suction-lift"},
       .but = "fuel-tap"},
      {.text = "Standing more than a month: empty the tank and the carburettor bowl, outdoors and cold.",
       .any = {"float-bowl"},
       .but = "fuel-tap"},
      {.text = "Shut the gas bottle and keep it outside, upright.", .any = {"gas-fuel"}},
      {.text = "Stand it level. Look at the oil before each start, and change it before the winter.",
       .any = {"four-stroke"}},
      {.text = "Measure the oil into the fuel, and shake the can before you fill up. Mix no more than a "
               "month's use.",
       .any = {"premix", "two-stroke"}},
      {.text = "Keep the battery charged through the winter; an empty one freezes.", .any = {"battery"}},
      {.text = "Drain the pump and its hoses before the first frost: ice splits the housing.",
       .any = {"water-pump-end", "pressure-pump-end"}},
      {.text = "Run it for a quarter of an hour with a load on, outdoors, every month or two.",
       .any = {"generator-end"}},
      {.text = "Take the lead off the plug before you clean the tool, and scrape it while the soil is soft.",
       .any = {"tines", "blade-on-crankshaft", "auger"}},
      {.text = "Clean and oil the chain, and put its guard on.", .any = {"cutting-chain"}},
      {.text = "A dry place without a flame or heater near it. Before the first start in spring look for "
               "nests in the "
               "air filter and the cooling fins."}};
  const struct line *l = nth(card, lines, sizeof lines / sizeof lines[0], i);

  return l ? l->text : NULL;
}

/* ---- cautions ------------------------------------------------------------------------- */

static void add(const struct card *card, int caution, int *ids, size_t *count)
{
  int at[] = {caution};
  struct refs own = {.at = at, .count = 1}, none = {0};

  if (caution >= 0) part_add_cautions(card->k, card->c, &own, &none, ids, count);
}

static void add_warnings(const struct card *card, int *ids, size_t *count)
{
  const struct conclusions *drawn = &card->a->drawn;

  for (size_t i = 0; i < drawn->count; i++)
    if (drawn->items[i].kind == WARN) add(card, drawn->items[i].a, ids, count);
}

size_t card_owner_cautions(const struct card *card, int *ids)
{
  /* what: the caution; first those that kill */
  static const struct line lines[] = {
      {.what = "generator-outdoors", .any = {"generator-end"}},
      {.what = "generator-back-feed", .any = {"generator-end"}},
      {.what = "carbon-monoxide", .but = "generator-end"},
      {.what = "refuel-cool", .but = "gas-fuel"},
      {.what = "gaseous-fuel", .any = {"gas-fuel"}},
      {.what = "plug-lead-off", .any = {"blade-on-crankshaft", "tines", "auger"}},
      {.what = "plug-lead-off", .any = {"chipping-disc", "cutting-chain", "cutting-head"}},
      {.what = "auger-clearing", .any = {"auger"}},
      {.what = "chain-edges", .any = {"cutting-chain"}},
      {.what = "high-pressure-injection", .any = {"pressure-pump-end"}},
      {.what = "hydraulic-injection", .any = {"hydraulic-end"}},
      {.what = "interlock-never-bypass", .any = {"interlock-bar", "interlock-seat", "interlock-drive"}},
      {.what = "hot-parts"},
      {.what = "two-stroke-lean-seizure", .any = {"two-stroke"}},
      {.what = "starting-fluid"},
      {.what = "ethanol-limit", .but = "gas-fuel"},
      {.what = "fuel-storage-container", .but = "gas-fuel"},
      {.what = "battery-acid-hydrogen", .any = {"battery"}},
      {.what = "pump-never-dry", .any = {"water-pump-end", "pressure-pump-end"}},
      {.what = "waste-fuel", .but = "gas-fuel"}};
  size_t count = 0;

  if (card->ending != CARD_MENDED) add_warnings(card, ids, &count); /* else they are of the work that is done */
  for (size_t l = 0; l < sizeof lines / sizeof lines[0]; l++)
    if (concerns(card, &lines[l]))
      add(card, knowledge_find(card->k, ENTRY_CAUTION, lines[l].what), ids, &count);
  return count;
}

size_t card_bench_cautions(const struct card *card, int *ids)
{
  int *faults = mem_array(card->repair_count + 1, sizeof *faults);
  size_t fault_count = card_faults(card, faults), count = 0;

  add_warnings(card, ids, &count);
  for (size_t i = 0; i < fault_count; i++) {
    const struct repair *r = &card->k->repairs[card->k->faults[faults[i]].repair];

    part_add_cautions(card->k, card->c, &r->cautions, &r->off, ids, &count);
  }
  if (fault_count == 0) {
    size_t more = 0;
    int *now = mem_array(card->k->caution_count + 1, sizeof *now);

    more = part_cautions(card->k, card->c, card->a, now);
    for (size_t i = 0; i < more; i++) add(card, now[i], ids, &count);
    free(now);
  }
  free(faults);
  return count;
}

/* ---- outcome -------------------------------------------------------------------------- */

static bool all_in_vain(const struct card *card)
{
  for (size_t i = 0; i < card->repair_count; i++)
    if (!card->c->mended[card->repairs[i].fault]) return false;
  return card->repair_count > 0;
}

static const char *open_outcome(const struct card *card, struct doc *d, const char **more)
{
  const struct assessment *a = card->a;
  const char *to;
  int rule;

  to = card_hand_over(card, &rule);
  if (rule >= 0) {
    *more = doc_format(d, "This is for %s. %s", to, card->k->rules[rule].reason);
    return "Stop: to be handed over";
  }
  if (card->proof == CARD_PROOF_FAILED || all_in_vain(card)) {
    *more = "The trouble is still there after what was done. The job goes on.";
    return "Not cured yet";
  }
  if (card->proof == CARD_PROOF_PASSED) {
    *more = "It was run the way the trouble was told, and the trouble stayed away.";
    return "Mended and proved";
  }
  if (card->repair_count > 0) {
    *more = "It has yet to be run the way the trouble was told.";
    return "Repaired, proof run to come";
  }
  *more = "";
  switch (a->disposition) {
  case DISPOSITION_REPAIR:
    *more = "The cause is found. The repair has yet to be done.";
    return "Found, repair to come";
  case DISPOSITION_NOTHING_BROKEN:
    *more = "Nothing points to a broken part. Look at how it is used or set.";
    return "No broken part found";
  case DISPOSITION_HAND_OVER: return "To be handed over";
  case DISPOSITION_KEEP_LOOKING: break;
  }
  *more = "No cause is sure enough yet to take a spanner to.";
  return "Still looking";
}

const char *card_outcome(const struct card *card, struct doc *d, const char **more)
{
  const char *headline = "";

  *more = "";
  switch (card->ending) {
  case CARD_OPEN: headline = open_outcome(card, d, more); break;
  case CARD_MENDED:
    headline = card->proof == CARD_PROOF_PASSED ? "Mended and proved" : "Mended";
    *more = card->proof == CARD_PROOF_PASSED
                ? "It was run the way the trouble was told, and the trouble stayed away."
            : card->proof == CARD_PROOF_FAILED ? "But the last proof run on record failed."
                                               : "No proof run is on record.";
    break;
  case CARD_NOTHING_BROKEN: headline = "Nothing was broken"; break;
  case CARD_HANDED_OVER:
    headline = "Handed over";
    *more = "It was not mended here. Do not take it into use until it has been put right.";
    break;
  case CARD_NOT_MENDED:
    headline = "Not mended";
    *more = "It goes home as it is. Do not take it into use until it has been put right.";
    break;
  }
  if (*card->texts[CARD_ENDING_WORDS])
    *more = doc_format(d, "%s%s%s", *more, **more ? " " : "", card->texts[CARD_ENDING_WORDS]);
  return headline;
}
