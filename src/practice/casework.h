/* casework.h - a practice machine written by hand.
 *
 *   {"pullcord": "practice-case-1", "machine": "tiller", "has": [], "lacks": [],
 *    "complaint": "runs-on-choke-only", "words": "Without the choke it dies.",
 *    "faults": ["main-jet-blocked"], "seed": "7", "results": {"spark-test": "jumps", "compression": 62}}
 *
 * has, lacks, words, results and seed may be left out. What results does not name is drawn from the
 * model by the seed; a number is a reading in the unit of the check. */
#ifndef PRACTICE_CASEWORK_H
#define PRACTICE_CASEWORK_H

#include "practice/hidden.h"

#define CASEWORK_VERSION "practice-case-1"

/* Reads the text into *out (free with hidden_free). file is for messages. EX_DATAERR for
 * anything unknown, or that cannot be true of that machine. */
int casework_read(const struct knowledge *k, const char *file, const char *text, struct hidden *out,
                  struct err *e);

#endif
