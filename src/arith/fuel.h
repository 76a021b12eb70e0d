/* fuel.h - two-stroke mix, old fuel, water in it, and ethanol blends. */
#ifndef ARITH_FUEL_H
#define ARITH_FUEL_H

#include "base/err.h"

#define FUEL_PETROL_DENSITY 745.0  /* kg/m3 near 15 degC, from memory; 720 to 775 is sold */
#define FUEL_ETHANOL_DENSITY 789.0 /* kg/m3 at 20 degC, from memory */
#define FUEL_PETROL_AIR 14.7       /* kg air per kg, by convention; 14.64 is also printed */
#define FUEL_ETHANOL_AIR 9.0       /* kg air per kg, published; 9.005 from C2H6O */
#define FUEL_ROAD_LIMIT 0.10       /* highest share of ethanol for nonroad engines, see below */

/* Oil in m3 for `petrol` m3 (10 mL to 200 L) at petrol:oil = ratio (8 to 200), by volume.
 *   oil = petrol / ratio
 * Source: what the ratio says; a table of fl oz per gallon agrees (128 / ratio).
 * Left out: oil already in the petrol. Returns 0, or EX_DATAERR with *e. */
int premix_oil(double ratio, double petrol, double *oil, struct err *e);

/* How old petrol stands against what is advised. */
enum fuel_age { FUEL_FRESH, FUEL_DRAIN, FUEL_STALE, FUEL_BEYOND };

#define FUEL_DRAIN_AFTER (30 * 86400.0)  /* s */
#define FUEL_STALE_AFTER (2 * 2628000.0) /* two months, as the unit "month" has them */
#define FUEL_BEYOND_AFTER (3 * 2628000.0) /* three months */

/* Age in s (0 to 10 years) into *out: FUEL_DRAIN past 30 days (TM 5-4240-501-14&P p. 285: drain
 * tank and carburettor), FUEL_STALE past two months (EPA advice on engine tanks, as quoted
 * elsewhere), FUEL_BEYOND past three (a study of mower tanks, as quoted elsewhere: E10 had not
 * separated sooner, but had gone stale first).
 * Left out: heat, a vented or a full tank, stabiliser, ethanol-free petrol, how old it was when
 * bought. The nose comes before the calendar. Returns 0, or EX_DATAERR with *e. */
int fuel_age_of(double age, enum fuel_age *out, struct err *e);

/* Water in m3 that `fuel` m3 (10 mL to 1000 L) with the share `ethanol` (0 to 0.15, by volume) holds
 * before it separates.  Linear between 0, E10 3.06 and E15 6.47 US tsp per US gal.
 * Source: F. J. Hay, UNL CropWatch, for these three; the line between is the author's.
 * Left out: temperature (their bench's; an EPA memo has about 0.5 % for E10 at 60 degF, from memory;
 * colder holds less, a weak source has 0.3 % at 10 degF), oil in the mix, additives (2 of 8 helped a
 * little). Returns 0, or EX_DATAERR with *e. */
int fuel_water_held(double ethanol, double fuel, double *water, struct err *e);

/* kg of air per kg of fuel with the share `ethanol` (0 to 1, by volume), weighted by mass.
 * Source: the constants above; E10 14.10, E15 13.80 and E85 9.8 elsewhere. NAN outside 0 to 1. */
double fuel_air_needed(double ethanol);

/* Density in kg/m3 of that blend, volumes added. NAN outside 0 to 1. */
double fuel_density(double ethanol);

/* Lambda of an engine that had 1 with the blend `was` and now burns the blend `is` (shares 0 to
 * 0.85) through the same jets, into *lambda; above 1 is leaner.
 *   lambda = (air needed(was) / air needed(is)) sqrt(density(was) / density(is))
 * Source: mass balance, and Bernoulli at the jet: fuel mass goes with the root of its density.
 * Left out: thickness of the fuel in a small jet, float level, heat of evaporation, distillation.
 * Ethanol over 10 % is barred from nonroad engines in the USA (40 CFR 80.1504(a)(1)).
 * Returns 0, or EX_DATAERR with *e. */
int fuel_blend_lambda(double was, double is, double *lambda, struct err *e);

#endif
