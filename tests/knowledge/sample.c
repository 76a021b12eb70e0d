/* sample.c - see sample.h. */
#include "sample.h"

#include <stdlib.h>
#include <string.h>

#include "base/file.h"
#include "expect.h"
#include "shop/casefile.h"

void conclusion_words(const struct knowledge *k, const struct conclusion *c, struct buf *b)
{
  switch (c->kind) {
  case RULES_OUT_FAULT: buf_addf(b, "rules-out fault %s", k->faults[c->a].id); break;
  case RULES_OUT_CHECK: buf_addf(b, "rules-out check %s", k->checks[c->a].id); break;
  case RULES_OUT_COMPLAINT: buf_addf(b, "rules-out complaint %s", k->complaints[c->a].id); break;
  case RULES_OUT_BANDS: buf_addf(b, "rules-out bands %s", k->bands[c->a].id); break;
  case JUDGE_BY:
    buf_addf(b, "judge-by %s %s", k->checks[c->a].id, c->b >= 0 ? k->bands[c->b].id : "spec-card");
    break;
  case IMPLIES: buf_addf(b, "implies %s %s", k->checks[c->a].id, k->checks[c->a].results.items[c->b]); break;
  case WEAKENS: buf_addf(b, "weakens %s", k->checks[c->a].id); break;
  case CLASH: buf_addf(b, "clash %s %s", k->checks[c->a].id, k->checks[c->b].id); break;
  case SPEAKS: buf_addf(b, "speaks %s", k->faults[c->a].id); break;
  case UNSAFE: buf_addf(b, "unsafe %s", k->checks[c->a].id); break;
  case POINTLESS: buf_addf(b, "pointless %s", k->checks[c->a].id); break;
  case ASK_FIRST: buf_addf(b, "ask-first %s %s", k->checks[c->a].id, k->faults[c->b].id); break;
  case HAND_OVER: buf_addf(b, "hand-over %s", c->word); break;
  case ADVISE: buf_addf(b, "advise %s", c->word); break;
  case COUNTS_AS: buf_addf(b, "counts-as %s %.1f", k->checks[c->a].id, c->number); break;
  case WARN: buf_addf(b, "warn %s", k->cautions[c->a].id); break;
  }
}

static void add_sample(const struct knowledge *k, const struct json *j, const char *file, struct samples *out,
                       struct buf *b)
{
  const struct json *fires = json_member(j, "fires"), *quiet = json_member(j, "quiet");
  void *items = out->items;
  struct sample *s;

  if (!json_member(j, "rule") || !fires || !quiet || !json_member(fires, "case") ||
      !json_member(fires, "conclusion") || !json_member(quiet, "case")) {
    buf_addf(b, "%s: a sample lacks rule, fires, quiet, case or conclusion\n", file);
    return;
  }
  mem_grow(&items, &out->room, out->count + 1, sizeof *out->items);
  out->items = items;
  s = &out->items[out->count++];
  s->file = file;
  s->rule_id = json_text(json_member(j, "rule"));
  s->rule = knowledge_find(k, ENTRY_RULE, s->rule_id);
  s->conclusion = json_text(json_member(fires, "conclusion"));
  s->fires = json_member(fires, "case");
  s->quiet = json_member(quiet, "case");
}

void samples_read(const struct knowledge *k, const char *folder, struct samples *out, struct buf *b)
{
  *out = (struct samples){0};
  out->files = find_json(folder, &out->document_count);
  out->documents = mem_array(out->document_count, sizeof(struct json *));
  for (size_t i = 0; i < out->document_count; i++) {
    char *text = NULL, message[1200];
    size_t len;
    struct err e;

    if (file_read(out->files[i], JSON_MAX_BYTES, &text, &len, &e) ||
        json_read(out->files[i], text, len, &out->documents[i], &e)) {
      err_format(&e, message, sizeof message);
      buf_addf(b, "%s\n", message);
    } else {
      for (const struct json *j = json_first(out->documents[i]); j; j = json_next(j))
        add_sample(k, j, out->files[i], out, b);
    }
    free(text);
  }
}

void samples_free(struct samples *s)
{
  for (size_t i = 0; i < s->document_count; i++) {
    json_free(s->documents[i]);
    free(s->files[i]);
  }
  free(s->documents);
  free(s->files);
  free(s->items);
  *s = (struct samples){0};
}

static void judge(const struct knowledge *k, const struct sample *s, const struct conclusions *drawn,
                  const char *conclusion, struct buf *b)
{
  struct buf all = {0};
  bool met = false;

  for (size_t i = 0; i < drawn->count; i++) {
    struct buf words = {0};

    if (drawn->items[i].rule != s->rule) continue;
    conclusion_words(k, &drawn->items[i], &words);
    met = met || (conclusion && strcmp(buf_text(&words), conclusion) == 0);
    if (all.len < 200) buf_addf(&all, "%s%s", all.len ? ", " : "", buf_text(&words));
    buf_free(&words);
  }
  if (conclusion && !met)
    buf_addf(b, "does not fire with \"%s\"%s%s", conclusion, all.len ? " but with " : "", buf_text(&all));
  if (!conclusion && all.len) buf_addf(b, "is not quiet: %s", buf_text(&all));
  buf_free(&all);
}

void sample_run(const struct knowledge *k, const struct sample *s, const struct json *c,
                const char *conclusion, struct buf *b)
{
  struct bench_case bench;
  struct assessor *assessor = NULL;
  struct assessment a;
  struct err e = {0};
  char message[1200];

  if (casefile_read(k, s->file, c, &bench, &e) == 0) {
    if (assessor_open(k, &assessor, &e) == 0 && assess_case(assessor, &bench, &a, &e) == 0) {
      judge(k, s, &a.drawn, conclusion, b);
      assessment_free(&a);
    }
    assessor_close(assessor);
    case_free(&bench);
  }
  if (e.status) {
    err_format(&e, message, sizeof message);
    buf_add(b, message);
  }
}
