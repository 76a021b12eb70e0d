/* entry_words.c - see entry_words.h. */
#include "cli/entry_words.h"

#include <stdlib.h>
#include <string.h>

/* The name of an entry of the knowledge, or its id where it is not known. */
static const char *name_of(const struct knowledge *k, enum entry_kind kind, const struct json *id)
{
  int at = knowledge_find(k, kind, json_text(id));

  if (at < 0) return json_text(id);
  if (kind == ENTRY_CHECK) return k->checks[at].name;
  if (kind == ENTRY_COMPLAINT) return k->complaints[at].name;
  if (kind == ENTRY_COVER) return k->covers[at].name;
  return kind == ENTRY_CLASS ? k->classes[at].name : k->faults[at].name;
}

static void add_list(struct buf *out, const char *before, const struct json *list)
{
  for (const struct json *i = list && json_kind(list) == JSON_LIST ? json_first(list) : NULL; i;
       i = json_next(i)) {
    buf_addf(out, "%s%s", before, json_text(i));
    before = ", ";
  }
}

/* A reading as people write it: the store keeps every digit. */
static void add_reading(struct buf *out, const char *text)
{
  char *end;
  double value = strtod(text, &end);

  buf_addf(out, "%.5g%s", value, end);
}

static void result_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  int check = knowledge_find(k, ENTRY_CHECK, json_text(json_member(b, "check")));
  const char *result = json_text(json_member(b, "result"));
  int at = check >= 0 && *result ? check_result(&k->checks[check], result) : -1;

  buf_addf(out, "%s: ", name_of(k, ENTRY_CHECK, json_member(b, "check")));
  if (at >= 0) buf_add(out, k->checks[check].labels.items[at]);
  else if (*result) buf_add(out, result);
  else add_reading(out, json_text(json_member(b, "reading")));
  if (json_member(b, "sure"))
    buf_add(out, json_number(json_member(b, "sure")) < 0.65 ? " (not sure)" : " (fairly sure)");
}

static void advice_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  const struct json *causes = json_member(b, "causes"), *first = causes ? json_first(causes) : NULL;

  buf_add(out, json_text(json_member(b, "do")));
  if (first)
    buf_addf(out, "; first %s (%.0f %%)", name_of(k, ENTRY_FAULT, json_member(first, "fault")),
             100 * json_number(json_member(first, "chance")));
  if (json_member(b, "next")) buf_addf(out, "; next %s", name_of(k, ENTRY_CHECK, json_member(b, "next")));
}

static void service_text(struct buf *out, const struct json *b)
{
  const char *text = json_text(json_member(b, "text"));

  buf_addf(out, "%s %s%s%s", json_text(json_member(b, "item")), json_text(json_member(b, "state")),
           *text ? ": " : "", text);
}

static void spec_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  buf_addf(out, "%s: ", name_of(k, ENTRY_CHECK, json_member(b, "check")));
  add_reading(out, json_text(json_member(b, "low")));
  buf_add(out, " to ");
  add_reading(out, json_text(json_member(b, "high")));
  if (*json_text(json_member(b, "from"))) buf_addf(out, " (%s)", json_text(json_member(b, "from")));
}

static void took_back_text(struct buf *out, const struct knowledge *k, const struct json *b)
{
  if (json_member(b, "check")) buf_add(out, name_of(k, ENTRY_CHECK, json_member(b, "check")));
  else if (json_member(b, "complaint")) buf_add(out, name_of(k, ENTRY_COMPLAINT, json_member(b, "complaint")));
  else if (json_member(b, "given")) buf_add(out, json_text(json_member(b, "given")));
  else if (json_member(b, "spec"))
    buf_addf(out, "figure for %s", name_of(k, ENTRY_CHECK, json_member(b, "spec")));
  else buf_add(out, name_of(k, ENTRY_FAULT, json_member(b, "repair")));
}

static void card_text(struct buf *out, const struct json *b)
{
  const char *card = json_text(json_member(b, "card"));

  buf_add(out, *card ? card : "none any more");
}

static void closed_text(struct buf *out, const struct json *b)
{
  buf_add(out, json_text(json_member(b, "ending")));
  add_list(out, ", confirmed ", json_member(b, "confirmed"));
  add_list(out, ", service check open: ", json_member(b, "open"));
}

void entry_words(struct buf *out, const struct knowledge *k, const char *kind, const struct json *b)
{
  if (strcmp(kind, "result") == 0) result_text(out, k, b);
  else if (strcmp(kind, "advice") == 0) advice_text(out, k, b);
  else if (strcmp(kind, "machine") == 0) {
    buf_add(out, name_of(k, ENTRY_CLASS, json_member(b, "class")));
    add_list(out, ", has ", json_member(b, "has"));
    add_list(out, ", lacks ", json_member(b, "lacks"));
  } else if (strcmp(kind, "complaint") == 0)
    buf_add(out, name_of(k, ENTRY_COMPLAINT, json_member(b, "complaint")));
  else if (strcmp(kind, "took-back") == 0) took_back_text(out, k, b);
  else if (strcmp(kind, "off") == 0 || strcmp(kind, "on") == 0)
    buf_add(out, name_of(k, ENTRY_COVER, json_member(b, "cover")));
  else if (strcmp(kind, "repair") == 0) buf_add(out, name_of(k, ENTRY_FAULT, json_member(b, "fault")));
  else if (strcmp(kind, "proof") == 0)
    buf_addf(out, "%s: %s", name_of(k, ENTRY_FAULT, json_member(b, "fault")),
             json_true(json_member(b, "passed")) ? "passed" : "failed");
  else if (strcmp(kind, "minutes") == 0) buf_addf(out, "%g", json_number(json_member(b, "minutes")));
  else if (strcmp(kind, "spec") == 0) spec_text(out, k, b);
  else if (strcmp(kind, "spec-card") == 0) card_text(out, b);
  else if (strcmp(kind, "given") == 0)
    buf_addf(out, "%s %s", json_text(json_member(b, "what")), json_text(json_member(b, "amount")));
  else if (strcmp(kind, "service") == 0) service_text(out, b);
  else if (strcmp(kind, "closed") == 0) closed_text(out, b);
  else if (strcmp(kind, "reopened") == 0) buf_add(out, json_text(json_member(b, "why")));
  else buf_add(out, json_text(json_member(b, "text")));
}
