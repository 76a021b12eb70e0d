/* svg_chart.h - belief over the course of the job, as a line chart. */
#ifndef REPORT_SVG_CHART_H
#define REPORT_SVG_CHART_H

#include "report/card_parts.h"

/* The chance of each cause of the course after each step. The lines differ in dashes and
 * markers and carry their names; a numbered key below says what each step was. */
struct drawing *card_chart(struct doc *d, const struct course *c);

#endif
