/* watch.c - looks at the clock inside those loops of the library that neither allocate nor
 * call anybody back: trying out joins, and taking back what has very many reasons. */
#include "engine/clips.h"

/* The library's calls of these two functions come here first (see FindCLIPS.cmake). */
int guard_EvaluateExpression(void *env, struct expr *e, DATA_OBJECT *out);
void guard_RemoveLogicalSupport(void *env, struct partialMatch *match);

int guard_EvaluateExpression(void *env, struct expr *e, DATA_OBJECT *out)
{
  guard_look();
  return EvaluateExpression(env, e, out);
}

void guard_RemoveLogicalSupport(void *env, struct partialMatch *match)
{
  guard_look();
  RemoveLogicalSupport(env, match);
}

/* Two patterns' variables are compared by functions out of a table, which can be changed. */
static intBool compare_short(void *env, void *value, DATA_OBJECT *out)
{
  struct engine *en = GetEnvironmentContext(env);

  guard_look();
  return en->compare[0](env, value, out);
}

static intBool compare_long(void *env, void *value, DATA_OBJECT *out)
{
  struct engine *en = GetEnvironmentContext(env);

  guard_look();
  return en->compare[1](env, value, out);
}

void watch_joins(struct engine *en)
{
  struct entityRecord *first = EvaluationData(en->env)->PrimitivesArray[FACT_JN_CMP1];
  struct entityRecord *second = EvaluationData(en->env)->PrimitivesArray[FACT_JN_CMP2];

  en->compare[0] = first->evaluateFunction;
  en->compare[1] = second->evaluateFunction;
  first->evaluateFunction = compare_short;
  second->evaluateFunction = compare_long;
}
