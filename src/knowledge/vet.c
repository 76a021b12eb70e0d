/* vet.c - see vet.h. */
#include "knowledge/vet.h"

#include "knowledge/vet_parts.h"

void vet_knowledge(const struct knowledge *k, struct problems *p)
{
  struct vet v = {.k = k, .p = p, .parting = parting_open(k)};

  rule_looks_read(&v.rules, k);
  vet_safety(&v);
  vet_rules(&v);
  vet_bands(&v);
  vet_missing(&v);
  vet_parting(&v);
  vet_uses(&v);
  vet_texts(&v);
  vet_words(&v);
  rule_looks_free(&v.rules);
  parting_close(v.parting);
}
