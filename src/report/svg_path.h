/* svg_path.h - the way from complaint and results to the causes, as a graph. */
#ifndef REPORT_SVG_PATH_H
#define REPORT_SVG_PATH_H

#include "report/card_parts.h"

enum { PATH_MOST_CAUSES = 3 };

/* Down the left the complaints and results in their order; each is tied to the line of each
 * cause by its weight in decibans: black for, dashed outline against, a dot for next to
 * nothing. The lines end in the causes with the sum and the chance that it comes to. */
struct drawing *card_path(struct doc *d, const struct course *c);

#endif
