/* bench_engine.c - see bench_engine.h. */
#include "bench_engine.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void must(bool good, const char *what)
{
  if (good) return;
  fprintf(stderr, "the engine under test cannot be made: %s\n", what);
  abort();
}

void bench_reopen(struct bench_engine *b, const char *unscanned, const struct engine_limits *limits)
{
  struct knowledge *k = &b->l.k;

  engine_close(b->en);
  b->en = NULL;
  k->texts = realloc(k->texts, (b->scanned_texts + 1) * sizeof *k->texts);
  must(k->texts != NULL, "memory");
  k->text_count = b->scanned_texts;
  if (unscanned) k->texts[k->text_count++] = (struct rule_text){"evil.clp", unscanned, strlen(unscanned)};
  b->e = (struct err){0};
  b->status = engine_open(k, limits, &b->en, &b->e);
  if (b->status) b->en = NULL;
}

void bench_begin(struct bench_engine *b, bool shipped, const char *scanned, const char *unscanned,
                 const struct engine_limits *limits)
{
  *b = (struct bench_engine){0};
  sample_begin(&b->s);
  if (scanned) sample_write(b->s.own, "rules/try.clp", scanned, strlen(scanned));
  if (shipped) strcpy(b->s.shipped, PULLCORD_SOURCE);
  sample_load(&b->s, &b->l);
  if (b->l.status || b->l.p.serious) loaded_print(&b->l);
  must(b->l.status == 0 && b->l.p.serious == 0, "the rules do not pass the scan");
  b->scanned_texts = b->l.k.text_count;
  case_begin(&b->c, &b->l.k);
  must(case_set_machine(&b->c, &b->l.k, 0, NULL, 0, NULL, 0, &b->e) == 0, "machine");
  bench_reopen(b, unscanned, limits);
}

void bench_end(struct bench_engine *b)
{
  engine_close(b->en);
  conclusions_free(&b->drawn);
  case_free(&b->c);
  loaded_free(&b->l);
  sample_end(&b->s);
}

int bench_find(struct bench_engine *b, const char *const *findings)
{
  struct engine_finding f[20];
  size_t n = 0;

  for (; findings[n]; n++) {
    char check[80], result[80];

    must(sscanf(findings[n], "%79s %79s", check, result) == 2, findings[n]);
    f[n].check = knowledge_find(&b->l.k, ENTRY_CHECK, check);
    must(f[n].check >= 0, check);
    f[n].result = check_result(&b->l.k.checks[f[n].check], result);
    must(f[n].result >= 0, result);
    f[n].sure = 1;
  }
  b->e = (struct err){0};
  b->status = engine_tell(b->en, &b->c, f, n, NULL, 0, &b->e);
  if (b->status == 0) b->status = engine_run(b->en, &b->drawn, &b->e);
  return b->status;
}

static const char *id_of(const struct knowledge *k, const struct conclusion *c)
{
  switch (c->kind) {
  case RULES_OUT_FAULT:
  case SPEAKS: return k->faults[c->a].id;
  case RULES_OUT_COMPLAINT: return k->complaints[c->a].id;
  case RULES_OUT_BANDS: return k->bands[c->a].id;
  case HAND_OVER:
  case ADVISE: return c->word;
  case WARN: return k->cautions[c->a].id;
  default: return k->checks[c->a].id;
  }
}

bool bench_drew(const struct bench_engine *b, enum conclusion_kind kind, const char *id)
{
  for (size_t i = 0; i < b->drawn.count; i++)
    if (b->drawn.items[i].kind == kind && strcmp(id_of(&b->l.k, &b->drawn.items[i]), id) == 0) return true;
  return false;
}

bool bench_works(void)
{
  static const char *const found[] = {"plug-look wet", NULL};
  struct bench_engine b;
  bool good;

  bench_begin(&b, false, NULL, NULL, NULL);
  good = b.en && bench_find(&b, found) == 0 && bench_drew(&b, IMPLIES, "squeeze") &&
         bench_drew(&b, POINTLESS, "squeeze");
  bench_end(&b);
  return good;
}
