/* sample.h - what the tests of stored jobs share: a folder of their own, the knowledge, and
 * short ways to say things. Anything that goes wrong here ends the test. */
#ifndef SHOP_SAMPLE_H
#define SHOP_SAMPLE_H

#include "shop/job.h"

/* A new folder for a store, removed with all it holds by sample_remove. */
char *sample_folder(void);
void sample_remove(char *folder);

/* The shipped knowledge, read once. */
const struct knowledge *sample_knowledge(void);

/* Opens the store for writing. */
struct store *sample_store(const char *folder);

/* All jobs of a store as JSON lines. The caller frees. */
char *sample_export(struct store *s);

/* A job with this text in its words; its id goes to id. */
void sample_job(struct store *s, const char *words, char id[STORE_ID]);

/* Fixes the clock. */
void sample_now(long long at);

#endif
