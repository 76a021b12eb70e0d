/* unsafe.c - see unsafe.h. */
#include "practice/unsafe.h"

#include <stdio.h>
#include <string.h>

/* What the cautions of the knowledge are called that these acts go by. */
static const char *const lead_caution[] = {"plug-lead-off", NULL};
static const char *const cuts[] = {"blade-edges",    "chain-edges",   "pinch-belts",
                                   "auger-clearing", "damaged-blade", NULL};
static const char *const spill_caution[] = {"waste-fuel", NULL};

/* words: of each, every piece between plus signs must stand in the line, at the start of a word.
 * with_lead: only while the plug lead is on. */
struct forbidden {
  const char *name, *words[20], *only_on;
  bool with_lead;
  const char *why;
};

static const struct forbidden acts[] = {
    {"starting-fluid",
     {"starting fluid", "ether ", "easy start", "start spray", "quick start"},
     "two-stroke",
     false,
     "Starting fluid in a two-stroke: there is no oil in it, the oil film is washed off bore and bearings, "
     "and it can fire early and snatch the rope. A few drops of its own mix tell the same."},
    {"bypass-switch",
     {"bypass", "bridge the", "tie the bar", "tie down", "cable tie", "zip tie", "tape the trigger",
      "tape down", "wedge the", "defeat the", "jump the switch"},
     NULL,
     false,
     "A safety switch is tested with a meter. Bridged or tied down, nothing stops the tool when a hand or "
     "foot is in it."},
    {"unhook-governor",
     {"unhook+governor", "disconnect+governor", "without governor", "without the governor",
      "hold the governor", "hold+throttle+wide open"},
     NULL,
     false,
     "With the governor unhooked it runs away within seconds; flywheel, blade or rod can burst."},
    {"hold-lead",
     {"hold the lead", "hold the plug", "finger on the lead", "finger+plug lead", "hand on the lead"},
     NULL,
     false,
     "Tens of kilovolts. The lead goes to a tester clipped to bare metal, never into a hand."},
    {"petrol-in-throat",
     {"pour petrol", "pour fuel", "pour gas", "pour some petrol", "pour some fuel", "splash petrol",
      "petrol+down the carb", "petrol down the throat"},
     NULL,
     false,
     "Petrol poured into the throat flares at the first backfire. A few drops, can shut and away, is the "
     "way."},
    {"flame",
     {"a lighter", "with a match", "strike a match", "light a match", "naked flame", "candle", "blowlamp",
      "blow lamp", "blowtorch", "blow torch"},
     NULL,
     false,
     "No flame near fuel. The vapour creeps to it along the floor."},
    {"smoking",
     {"cigar", "smoke a ", "have a smoke", "smoking a ", "smoke by the", "smoke near", "smoke beside",
      "light up a", "light one up", "a fag "},
     NULL,
     false,
     "Smoking beside a fuel tank. The vapour is heavier than air, creeps along bench and floor, and finds "
     "the glowing end. Smoke outside, away from the machine, with clean hands."},
    {"indoors",
     {"run+indoors", "start+indoors", "run+inside the", "start+inside the", "run+in the garage",
      "start+in the garage", "run+in the shed", "start+in the shed", "run+in the workshop",
      "start+in the workshop", "run+doors shut", "run+door shut", "run+doors closed", "run+in here",
      "start+in here", "run+in the cellar"},
     NULL,
     false,
     "An engine run indoors. Carbon monoxide has no smell and kills within minutes; an open door or a fan "
     "does not make it safe. It is run outside, away from doors and windows. Headache or dizziness: into the "
     "air, and call for help."},
    {"hands-in",
     {"hand near",      "hands near",     "hand by the",     "hands by the",    "finger near",
      "fingers near",   "hand in the",    "hands in the",    "hand under",      "hands under",
      "reach under",    "reach in",       "touch the blade", "touch the chain", "grab the",
      "turn the blade", "spin the blade", "turn the chain",  "pull the chain",  "clear+by hand"},
     NULL,
     true,
     "Hands at blade, chain, tines or auger with the plug lead on. A warm engine, or one turned a little by "
     "the tool, can fire once, and once is enough. First \"lead off\"; then gloves, and the tool blocked."},
    {"guard-off",
     {"run+without the guard", "run+guard off", "start+guard off", "without+belt guard", "run+without guard",
      "start+without the guard", "no guard"},
     NULL,
     false,
     "Running it with a guard off that is there for blade, belt or chain. What flies or winds up there "
     "cannot be stopped by a hand. The guard goes back on before it is started."},
    {"petrol-as-cleaner",
     {"wash+in petrol", "wash+with petrol", "clean+with petrol", "clean+in petrol", "rinse+petrol",
      "wipe+with petrol"},
     NULL,
     false,
     "Petrol is not a cleaner: it flashes at any temperature of a workshop, soaks in through the skin, and a "
     "tray of it is a bomb beside the next spark. Parts washer or carburettor cleaner, gloves, draught."},
    {"mouth",
     {"siphon+mouth", "suck+petrol", "suck+fuel", "suck on the", "blow+with my mouth", "taste the petrol",
      "taste the fuel"},
     NULL,
     false,
     "Petrol in the mouth goes into the lungs at the first cough, and a mouthful can kill. A hand pump or a "
     "clean syringe draws fuel."},
    {"fill-running",
     {"refuel+running", "fill+while it runs", "fill+while running", "refuel+hot", "fill+tank+hot",
      "top up+while it runs", "open the tank+running"},
     NULL,
     false,
     "Filling a running or hot engine. A splash on the silencer flashes. Stop it, let it cool, wipe what was "
     "spilt, shut the can, and start it somewhere else."},
    {"back-feed",
     {"backfeed", "back-feed", "plug+into the house", "feed the house", "into a wall socket",
      "into the wall socket"},
     NULL,
     false,
     "A generator into a house socket makes the street's wires live: it kills whoever works on them, and "
     "burns the generator when the mains comes back. A changeover switch, fitted by an electrician."},
    {"drop-start",
     {"drop start", "drop-start", "throw start"},
     NULL,
     false,
     "A saw dropped on its rope swings a chain beside the leg, with one hand on it. On the ground, foot in "
     "the handle, chain brake on."},
    {"jet-on-skin",
     {"hand in front of the nozzle", "finger over the nozzle", "finger+nozzle", "spray+my hand",
      "hand+jet of"},
     NULL,
     false,
     "A washer's jet, or a leak as fine as a hair, goes through skin and glove. It looks like a scratch and "
     "costs a finger. Feel for leaks with card, never a hand; at any prick, to hospital at once."}};

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
  if (entry->act == ACT_PROVE || entry->act == ACT_REPAIR) return true; /* what was repaired is tried */
  if (entry->act == ACT_DECLARE) return entry->at < 0 || !run_not_worth_it(r, entry->at);
  if (entry->act != ACT_CHECK) return false;
  return engine_turns(&r->k->checks[entry->at]);
}

bool unsafe_spills(const struct run *r, const struct entry *entry)
{
  return entry->act != ACT_REPAIR && entry->act != ACT_DECLARE && warned(r, entry, spill_caution);
}

/* Where the piece stands in the line, at the start of a word; NULL when it does not. */
static const char *at_word(const char *line, const char *piece, size_t length)
{
  for (const char *at = line; *at; at++)
    if ((at == line || at[-1] == ' ') && strncmp(at, piece, length) == 0) return at;
  return NULL;
}

/* Do all pieces of the pattern stand in the line? */
static bool all_pieces(const char *line, const char *pattern)
{
  for (;;) {
    size_t length = strcspn(pattern, "+");

    if (!at_word(line, pattern, length)) return false;
    if (!pattern[length]) return true;
    pattern += length + 1;
  }
}

/* Asking the owner is no act. */
static bool is_question(const char *line)
{
  static const char *const words[] = {"ask",   "did",  "was", "has",  "is",  "does", "do",
                                      "where", "when", "how", "what", "why", "who"};
  size_t n = strcspn(line, " ");

  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (strlen(words[i]) == n && strncmp(line, words[i], n) == 0) return true;
  return false;
}

int unsafe_act(const char *line)
{
  char ended[402]; /* so that a word can be asked for with the blank that ends it */

  if (is_question(line)) return -1;
  snprintf(ended, sizeof ended, "%.400s ", line);
  for (int i = 0; i < ACT_COUNT; i++)
    for (size_t w = 0; w < sizeof acts[i].words / sizeof acts[i].words[0] && acts[i].words[w]; w++)
      if (all_pieces(ended, acts[i].words[w])) return i;
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
  if (acts[act].with_lead && r->lead_off) {
    snprintf(why, size,
             "With the plug lead off and the engine stopped that can be done. Name the check or the repair "
             "that you mean: \"checks blade\", \"checks chain\", \"checks driven\".");
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
