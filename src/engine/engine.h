/* engine.h - the rule engine, seen from outside: facts in, conclusions out.
 *
 * Nothing of the engine's own types shows here. One struct engine serves one case; make
 * a fresh one for the next (half a millisecond and the loading of the rules). */
#ifndef ENGINE_ENGINE_H
#define ENGINE_ENGINE_H

#include <stddef.h>

#include "base/err.h"
#include "model/case.h"
#include "model/conclusions.h"
#include "model/knowledge.h"

struct engine;

/* What the engine may use up. Zero means the usual: 192 MiB, 5 s to load, 2 s for one run (of the
 * processor; ten times as much by the clock), 100,000 firings. */
struct engine_limits {
  size_t bytes;
  double load_seconds, run_seconds;
  long firings;
};

/* What the results mean, for the rules: a check's most likely result, and how far it is
 * to be believed (0 to 1). */
struct engine_finding { int check, result; double sure; };

struct engine_belief { int fault; double chance; };

/* Makes an engine with the rules of k and the case-independent facts. k must outlive
 * it. EX_CONFIG with file and line when a rule cannot be loaded, EX_TEMPFAIL when a
 * limit was reached. limits may be NULL. An engine that was stopped by a limit or by a
 * rule that cannot be worked out stays stopped: telling and running give the same error. */
int engine_open(const struct knowledge *k, const struct engine_limits *limits, struct engine **out,
                struct err *e);

/* Tells the engine the case as it stands: what changed since the last call is asserted
 * or retracted, and conclusions go with their reasons. findings (how readings and
 * results are to be taken) and beliefs may be empty. EX_TEMPFAIL when a limit was reached,
 * EX_CONFIG when a rule's condition cannot be worked out. */
int engine_tell(struct engine *en, const struct bench_case *c, const struct engine_finding *findings,
                size_t finding_count, const struct engine_belief *beliefs, size_t belief_count,
                struct err *e);

/* Fires until nothing is left to fire and collects all conclusions (replacing what is in
 * *out; the caller frees). EX_TEMPFAIL, with the name and place of the last rule, when
 * the rules do not come to an end; EX_CONFIG when one cannot be worked out (division by
 * nought, a value out of range). */
int engine_run(struct engine *en, struct conclusions *out, struct err *e);

/* "CLIPS 6.30" - for --version. */
const char *engine_version(void);

void engine_close(struct engine *en);

#endif
