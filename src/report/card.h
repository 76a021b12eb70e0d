/* card.h - the job card: one job told to the owner in plain words, or to the bench in full.
 *
 * The card knows nothing of where jobs are kept: card_from_case takes the case, and the
 * caller adds what else there is to tell. Every text that is added is copied; control
 * characters and bad bytes in it become "?". */
#ifndef REPORT_CARD_H
#define REPORT_CARD_H

#include "assess/assess.h"
#include "base/buf.h"

/* The version of the JSON card (docs/schema/card-1.json). */
#define CARD_VERSION "card-1"

enum card_reader { CARD_OWNER, CARD_BENCH };
enum card_format { CARD_HTML, CARD_MARKDOWN, CARD_TEXT, CARD_JSON, CARD_PDF };
enum card_proof { CARD_PROOF_NONE, CARD_PROOF_PASSED, CARD_PROOF_FAILED };
enum card_ending { CARD_OPEN, CARD_MENDED, CARD_NOTHING_BROKEN, CARD_HANDED_OVER, CARD_NOT_MENDED };

/* Texts of the card; each is "" until it is set. MACHINE: what stands on the bench; OWNER:
 * whatever the bench calls its owner; WORDS: the complaint as told; WHO: who did the job;
 * PROOF and ENDING: what was said of them; dates as people read them. */
enum card_text {
  CARD_JOB, CARD_SHOP, CARD_MACHINE, CARD_OWNER_REFERENCE, CARD_WORDS, CARD_OPENED, CARD_CLOSED, CARD_WHO,
  CARD_PROOF_WORDS, CARD_ENDING_WORDS, CARD_TEXT_COUNT
};

struct card_repair {
  int fault;      /* that it was done for */
  double minutes; /* that it took; negative: not written down */
  struct texts parts;
  const char *when, *who;
};
struct card_note { const char *text, *when, *who; };
struct card_entry { int check; const char *when, *who; };

/* What was said of an item of the service check (model/service.h). */
enum card_service_state { CARD_SERVICE_DONE, CARD_SERVICE_FOUND, CARD_SERVICE_LEFT };
struct card_service { const char *item; enum card_service_state state; const char *text, *when, *who; };

/* One line of the account of the whole job. */
struct card_line { const char *when, *who, *what, *text; };

struct card {
  struct arena arena;
  const struct knowledge *k;
  const struct bench_case *c;
  struct assessment *a;
  const char *texts[CARD_TEXT_COUNT];
  struct card_repair *repairs; size_t repair_count, repair_room;
  struct card_note *notes;     size_t note_count, note_room;
  struct card_entry *entries;  size_t entry_count, entry_room;
  struct card_service *services; size_t service_count, service_room;
  struct card_line *lines; size_t line_count, line_room;
  struct texts parts; size_t part_room; /* used on the whole job */
  double minutes;                       /* of the whole job; negative: not written down */
  enum card_proof proof;
  enum card_ending ending;
};

/* A card of this case: machine class, complaints, results in their order, and as repairs
 * those that did not cure (case mended). k, c and a (the assessment of c) must outlive it.
 * Free with card_free. */
void card_from_case(struct card *card, const struct knowledge *k, const struct bench_case *c,
                    struct assessment *a);
void card_free(struct card *card);

void card_set(struct card *card, enum card_text which, const char *text);
void card_set_proof(struct card *card, enum card_proof proof);
void card_set_ending(struct card *card, enum card_ending ending);

/* A repair that was done, in the order of the job; the same fault again adds nothing but
 * replaces what was told before. minutes negative: not written down. when, who: or NULL. */
void card_add_repair(struct card *card, int fault, double minutes, const char *const *parts,
                     size_t part_count, const char *when, const char *who);
void card_add_note(struct card *card, const char *text, const char *when, const char *who);

/* Parts and minutes of the whole job, where they are not told repair by repair. */
void card_add_part(struct card *card, const char *text);
void card_set_minutes(struct card *card, double minutes);

/* When the result of a check came in, and from whom (or NULL). */
void card_add_entry(struct card *card, int check, const char *when, const char *who);

/* What was said of an item of the service check; said again, it replaces what was told
 * before. item: an id of model/service.h. text: what was found, why it was left, or "". */
void card_add_service(struct card *card, const char *item, enum card_service_state state, const char *text,
                      const char *when, const char *who);

void card_drop_service(struct card *card, const char *item); /* open again */

/* A line of the account of the whole job, which the card for the bench tells last: what kind
 * of thing happened, and it in words. In the order of the job. */
void card_add_line(struct card *card, const char *when, const char *who, const char *what, const char *text);

/* Adds the whole card to out; the same card gives the same bytes. EX_SOFTWARE when the PDF
 * library fails. Markdown and text are at most 78 columns wide, tables of Markdown aside.
 * PDF holds the letters of Windows code page 1252; another becomes "?", and the card says so. */
int card_write(struct card *card, enum card_reader reader, enum card_format format, struct buf *out,
               struct err *e);

/* By the words of the command line; false when the word is another. */
bool card_format_by_name(const char *name, enum card_format *out);
bool card_reader_by_name(const char *name, enum card_reader *out);

#endif
