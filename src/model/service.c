/* service.c - see service.h. */
#include "model/service.h"

#include <string.h>

/* An item has one wording for a machine with the feature `when` and one for all others. */
static const struct wording {
  const char *when;
  struct service_item item;
} wordings[] = {
    {"four-stroke", {"oil", "Oil", "level at the mark, clean, the grade of the book"}},
    {"premix", {"oil", "Oil", "mix ratio as the maker says; tank drained if in doubt"}},
    {"two-stroke", {"oil", "Oil", "mix ratio as the maker says; tank drained if in doubt"}},
    {NULL, {"oil", "Oil", "level or mix as the maker says"}},
    {NULL, {"plug", "Plug", "kind and gap right, tight, boot pushed home"}},
    {NULL, {"filter", "Filter", "clean, dry (foam: oiled), sealed all round, cover latched"}},
    {"gas-fuel", {"fuel", "Fuel", "bottle shut and open again: no smell of gas"}},
    {NULL, {"fuel", "Fuel", "fresh, no water, cap vents"}},
    {NULL, {"leaks", "Leaks", "fuel on and five minutes' wait: dry underneath; no oil after the run"}},
    {NULL, {"stop-switch", "Stop switch", "stops it at once; every bar, seat and brake switch too"}},
    {NULL, {"speed", "Speed", "idle and top speed by tachometer, against the maker's figure"}}};

static const char *const ids[SERVICE_ITEMS] = {"oil", "plug", "filter", "fuel", "leaks", "stop-switch", "speed"};

static bool has(const struct knowledge *k, const struct bench_case *c, const char *feature)
{
  int f = knowledge_find(k, ENTRY_FEATURE, feature);

  return f >= 0 && c->features[f] == TRI_HAS;
}

const struct service_item *service_item(const struct knowledge *k, const struct bench_case *c, size_t i)
{
  for (size_t w = 0; i < SERVICE_ITEMS && w < sizeof wordings / sizeof wordings[0]; w++)
    if (strcmp(wordings[w].item.id, ids[i]) == 0 && (!wordings[w].when || has(k, c, wordings[w].when)))
      return &wordings[w].item;
  return NULL;
}

const char *service_id(size_t i) { return ids[i]; }

int service_find(const char *id)
{
  for (int i = 0; i < SERVICE_ITEMS; i++)
    if (strcmp(ids[i], id) == 0) return i;
  return -1;
}
