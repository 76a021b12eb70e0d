/* unsafe.h - acts that hurt people, whatever they would have found. */
#ifndef PRACTICE_UNSAFE_H
#define PRACTICE_UNSAFE_H

#include "practice/run.h"

/* Is it unsafe to do this now? The reason goes to why. Looked at: checks that rules call unsafe
 * now; hands by blade, chain or belt with the plug lead on; a spark beside spilt petrol; the
 * forbidden acts. */
bool unsafe_now(const struct run *r, const struct entry *entry, char *why, size_t size);

/* Does this entry put hands where the machine cuts or nips? Does it turn the engine, which
 * makes sparks (what was repaired is tried)? Does it let petrol out, and leave it there? */
bool unsafe_wants_lead_off(const struct run *r, const struct entry *entry);
bool unsafe_makes_spark(const struct run *r, const struct entry *entry);
bool unsafe_spills(const struct run *r, const struct entry *entry);

/* The forbidden act that a typed line (in small letters) means, or -1. A question to the owner is none. */
int unsafe_act(const char *line);
const char *unsafe_act_name(int act);
int unsafe_act_named(const char *name);

/* Is a forbidden act unsafe on this machine? If not it is merely not done: why says so. */
bool unsafe_act_here(const struct run *r, int act, char *why, size_t size);

#endif
