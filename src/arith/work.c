/* work.c - see work.h: the list, and running one. */
#include "arith/work.h"

#include <ctype.h>
#include <stdio.h>
#include <string.h>

#include "arith/recipes.h"

#define WORK_ROW(variable, name, example, what) {name, example, what, &work_##variable},

static const struct work all[] = {WORK_NAMES(WORK_ROW)};

const struct work *work_all(size_t *count)
{
  *count = sizeof all / sizeof all[0];
  return all;
}

int work_run(const struct work_request *request, struct work_answer *out, struct err *e)
{
  out->count = 0;
  return request->work->recipe->run(request->values, out, e);
}

void work_inputs(const struct work *work, char *out, size_t size)
{
  size_t len = 0;

  if (size == 0) return;
  *out = '\0';
  for (int i = 0; i < WORK_INPUTS && work->recipe->inputs[i].name && len < size; i++) {
    const struct work_input *in = &work->recipe->inputs[i];
    char name[32];

    snprintf(name, sizeof name, "%s", in->name);
    for (char *p = name; *p; p++) *p = (char)toupper((unsigned char)*p);
    len += (size_t)snprintf(out + len, size - len, "%s%s%s%s", i ? " " : "", in->usual ? "[" : "", name,
                            in->usual ? "]" : "");
  }
}
