/* unsafe.c - see unsafe.h. */
#include "practice/unsafe.h"

#include <stdio.h>
#include <string.h>

/* What the cautions of the knowledge are called that these acts go by. */
static const char *const lead_caution[] = {"plug-lead-off", NULL};
static const char *const cuts[] = {"blade-edges",    "chain-edges",   "pinch-belts",
                                   "auger-clearing", "damaged-blade", NULL};
static const char *const spill_caution[] = {"waste-fuel", NULL};

struct forbidden {
  const char *name, *words[5], *only_on, *why;
};

static const struct forbidden acts[] = {
    {"starting-fluid",
     {"starting fluid", "ether", "easy start", "start spray", NULL},
     "two-stroke",
     "Starting fluid in a two-stroke: there is no oil in it, the oil film is washed off bore and bearings, "
     "and it can "
     "fire early and snatch the rope. A few drops of its own mix tell the same."},
    {"bypass-switch",
     {"bypass", "bridge the", "tie the bar", "tie down", NULL},
     NULL,
     "A safety switch is tested with a meter. Bridged or tied down, nothing stops the tool when a hand or "
     "foot is in it."},
    {"unhook-governor",
     {"unhook the governor", "disconnect the governor", "without governor", "hold the governor", NULL},
     NULL,
     "With the governor unhooked it runs away within seconds; flywheel, blade or rod can burst."},
    {"hold-lead",
     {"hold the lead", "hold the plug", "finger on the lead", NULL},
     NULL,
     "Tens of kilovolts. The lead goes to a tester clipped to bare metal, never into a hand."},
    {"petrol-in-throat",
     {"pour petrol", "pour fuel", "pour gas", NULL},
     NULL,
     "Petrol poured into the throat flares at the first backfire. A few drops, can shut and away, is the "
     "way."},
    {"flame",
     {"lighter", "match", "naked flame", NULL},
     NULL,
     "No flame near fuel. The vapour creeps to it along the floor."}};

enum { ACT_COUNT = sizeof acts / sizeof acts[0] };

static bool among(const char *id, const char *const *list)
{
  for (; *list; list++)
    if (strcmp(*list, id) == 0) return true;
  return false;
}

static bool has_caution(const struct refs *cautions, const char *const *list)
{
  for (size_t i = 0; i < cautions->count; i++)
    if (among(cautions->ids[i], list)) return true;
  return false;
}

/* Cautions of the entry itself or of covers that must still come off for it. */
static bool warned(const struct run *r, const struct entry *entry, const char *const *list)
{
  const struct knowledge *k = r->k;
  const struct refs *off = NULL, *own = NULL;
  size_t open;

  if (entry->act == ACT_CHECK) {
    own = &k->checks[entry->at].cautions;
    off = &k->checks[entry->at].off;
  } else if (entry->act == ACT_REPAIR) {
    own = &k->repairs[entry->at].cautions;
    off = &k->repairs[entry->at].off;
  } else if (entry->act == ACT_OPEN) {
    return has_caution(&k->covers[entry->at].cautions, list);
  }
  if (!own) return false;
  for (size_t i = 0; i < off->count; i++)
    if (!r->c.off[off->at[i]] && case_needs(&r->c, &k->covers[off->at[i]].needs, &open) != TRI_LACKS &&
        has_caution(&k->covers[off->at[i]].cautions, list))
      return true;
  return has_caution(own, list);
}

static bool engine_turns(const struct check *c)
{
  return strcmp(c->engine, "running") == 0 || strcmp(c->engine, "hot") == 0 ||
         strcmp(c->engine, "cranking") == 0;
}

bool unsafe_wants_lead_off(const struct run *r, const struct entry *entry)
{
  if (entry->act == ACT_CHECK && engine_turns(&r->k->checks[entry->at])) return false;
  return warned(r, entry, lead_caution) && warned(r, entry, cuts);
}

bool unsafe_makes_spark(const struct run *r, const struct entry *entry)
{
  if (entry->act == ACT_PROVE) return true;
  if (entry->act != ACT_CHECK) return false;
  return engine_turns(&r->k->checks[entry->at]);
}

bool unsafe_spills(const struct run *r, const struct entry *entry) { return warned(r, entry, spill_caution); }

int unsafe_act(const char *line)
{
  for (int i = 0; i < ACT_COUNT; i++)
    for (size_t w = 0; acts[i].words[w]; w++)
      if (strstr(line, acts[i].words[w])) return i;
  return -1;
}

const char *unsafe_act_name(int act) { return acts[act].name; }

int unsafe_act_named(const char *name)
{
  for (int i = 0; i < ACT_COUNT; i++)
    if (strcmp(acts[i].name, name) == 0) return i;
  return -1;
}

bool unsafe_act_here(const struct run *r, int act, char *why, size_t size)
{
  int feature = acts[act].only_on ? knowledge_find(r->k, ENTRY_FEATURE, acts[act].only_on) : -1;

  if (feature >= 0 && r->c.features[feature] != TRI_HAS) {
    snprintf(why, size,
             "That is not done here: it tells nothing that a few drops of petrol would not, kicks back, and "
             "wears the bore. See \"how prime test\".");
    return false;
  }
  snprintf(why, size, "%s", acts[act].why);
  return true;
}

bool unsafe_now(const struct run *r, const struct entry *entry, char *why, size_t size)
{
  int at;

  if (entry->act == ACT_FORBIDDEN) return unsafe_act_here(r, entry->at, why, size);
  if (!r->lead_off && unsafe_wants_lead_off(r, entry)) {
    snprintf(why, size,
             "The plug lead was still on. A warm engine can fire when the shaft is turned, and hands were by "
             "blade, chain or belt. Type \"lead off\" before such work.");
    return true;
  }
  if (r->spilt && unsafe_makes_spark(r, entry)) {
    snprintf(why, size,
             "Petrol was let out and not wiped up, and this turns the engine: one spark, or a hot silencer, "
             "and the vapour fires. Type \"wipe\" first, and let it dry.");
    return true;
  }
  if (entry->act != ACT_CHECK) return false;
  at = conclusion_find(&r->a.drawn, UNSAFE, entry->at, 0);
  if (at >= 0) snprintf(why, size, "%s", r->k->rules[r->a.drawn.items[at].rule].reason);
  return at >= 0;
}
