/* chart.h - means of several ways of working, class by class, as a picture. */
#ifndef TESTS_CHART_H
#define TESTS_CHART_H

#include "report/drawing.h"

enum { CHART_MOST_SERIES = 4 };

/* mean[series] and the half width of its 95 % interval. */
struct chart_row { const char *name; double mean[CHART_MOST_SERIES], half[CHART_MOST_SERIES]; };

struct chart {
  const char *id, *title, *unit, *scale; /* scale: told under the axis */
  const char *series[CHART_MOST_SERIES];
  size_t series_count;
  const struct chart_row *rows;
  size_t row_count;
};

/* One line per row, one marker per series with its interval, on a scale by ratios. The series
 * differ in the shape of their markers. The description tells all means. Free with drawing_free;
 * the rest is the arena's. */
struct drawing *chart_draw(struct arena *arena, const struct chart *c);

#endif
