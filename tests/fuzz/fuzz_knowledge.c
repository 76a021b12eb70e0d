/* fuzz_knowledge.c - any bytes as one more file of knowledge. The first byte says of which
 * sort: f facts, t templates, anything else rules. What passes the scan goes into the engine,
 * which may refuse it or stop it, and draws conclusions that make sense or none. */
#include "fuzz.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "engine/engine.h"

static char path[] = "/tmp/pullcord-fuzz-XXXXXX";
static FILE *file;

static void forget_file(void) { unlink(path); }

static void write_file(const uint8_t *data, size_t size)
{
  if (!file) {
    int fd = mkstemp(path);

    file = fd >= 0 ? fdopen(fd, "w") : NULL;
    must_hold(file != NULL, "a file for the input");
    atexit(forget_file);
  }
  rewind(file);
  must_hold(ftruncate(fileno(file), 0) == 0 && fwrite(data, 1, size, file) == size && fflush(file) == 0,
            "it is written");
}

static void check_drawn(const struct knowledge *k, const struct conclusions *drawn)
{
  for (size_t i = 0; i < drawn->count; i++) {
    const struct conclusion *c = &drawn->items[i];

    must_hold(c->rule >= 0 && (size_t)c->rule < k->rule_count, "every conclusion has its rule");
    must_hold(isfinite(c->number), "every number is one");
    must_hold(c->word[sizeof c->word - 1] == '\0', "every word ends");
  }
}

static void draw(const struct knowledge *k)
{
  static const struct engine_limits limits = {(size_t)64 << 20, 2, 0.5, 2000};
  struct engine_finding findings[2] = {{0, 1, 1}, {1, 1, 0.9}};
  struct conclusions drawn = {0};
  struct bench_case c;
  struct engine *en;
  struct err e = {0};
  int status = engine_open(k, &limits, &en, &e);

  must_hold(status == 0 || ((status == EX_CONFIG || status == EX_TEMPFAIL) && e.text[0]),
            "it opens or says why not");
  if (status) return;
  case_begin(&c, k);
  must_hold(case_set_machine(&c, k, 0, NULL, 0, NULL, 0, &e) == 0, "a saw is a saw");
  for (int round = 0; round < 3 && status == 0; round++) {
    status = engine_tell(en, &c, findings, round == 1 ? 0 : 2, NULL, 0, &e);
    if (status == 0) status = engine_run(en, &drawn, &e);
    if (status == 0) check_drawn(k, &drawn);
  }
  must_hold(status == 0 || status == EX_CONFIG || status == EX_TEMPFAIL, "it runs or says why not");
  conclusions_free(&drawn);
  case_free(&c);
  engine_close(en);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
  struct problems p = {0};
  struct knowledge k;
  const char *name;

  if (size == 0) return 0;
  name = data[0] == 'f' ? "facts/x.clp" : data[0] == 't' ? "rules/templates/x.clp" : "rules/x.clp";
  write_file(data + 1, size - 1);
  small_load(name, path, &k, &p);
  for (size_t i = 0; i < p.count && i < PROBLEMS_KEPT; i++)
    must_hold(p.items[i].text[0], "every problem says something");
  if (p.serious == 0) draw(&k);
  knowledge_free(&k);
  problems_free(&p);
  return 0;
}
