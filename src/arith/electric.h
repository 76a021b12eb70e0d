/* electric.h - what jumps a plug gap, and what is lost between battery and starter. */
#ifndef ARITH_ELECTRIC_H
#define ARITH_ELECTRIC_H

#include "base/err.h"

#define SPARK_ROOM 293.15 /* K, at which the constants below were fitted */

/* Volts that break down a gap of `gap` m (50 um to 25 mm) in air of `pressure` Pa absolute (20 kPa
 * to 5 MPa) and `temperature` K (230 to 1500), into *volts.
 *   V = B p d / (ln(A p d) - ln ln(1 + 1/g)),  p taken at the density that counts: p T0 / T
 *   A = 112.50 /(kPa cm), B = 2737.50 V/(kPa cm), g = 0.01, T0 = 293.15 K
 * Source: Paschen's law, textbook; constants for air as printed by one calculator page, and in other
 * units with g by another (neasmn.org: A 15, B 365 per cm and Torr).
 * Holds for a uniform field and p d from 0.5 to 400 kPa cm (EX_DATAERR outside). From 0.7 mm of open
 * air up it reads a tenth to a fifth above the straight line of that page, 1.35 kV + 30 kV/cm, and
 * above sphere gaps (from memory).
 * Left out: sharp electrodes (lower), fuel, ions of a burning charge and glowing edges (lower), wear
 * and fouling, the coil's rise time (higher). Returns 0, or EX_DATAERR with *e. */
int spark_breakdown(double gap, double pressure, double temperature, double *volts, struct err *e);

/* The gap m in open air (sea level, 20 degC) that needs the same volts, for the same arguments. */
double spark_open_gap(double gap, double pressure, double temperature);

/* What is lost on a stretch of a circuit. */
struct voltage_drop {
  double volts, share; /* share of the voltage before it, 0 to 1 */
  double resistance;   /* ohm; NAN without a current */
  double heat;         /* W; NAN without a current */
};

/* From the voltages before and behind the stretch (V against the same point, both while the current
 * flows; before 1 to 100 V, behind 0 to before) and the current A (0.1 to 2000; NAN: not measured).
 *   drop = before - behind    R = drop / I    heat = drop I
 * Source: Ohm's law. Left out: a meter lead in the wrong place, a cold or a stalled starter drawing
 * another current. Returns 0, or EX_DATAERR with *e. */
int voltage_drop(double before, double behind, double current, struct voltage_drop *out, struct err *e);

/* Charge, 0 to 1, of a 12 V lead-acid battery from its voltage after an hour's rest (10.5 to 13.5 V).
 * Source: 12.65 V 100 %, 12.45 75 %, 12.24 50 %, 12.06 25 %, 11.9 0, from memory; straight lines
 * between. Left out: temperature, surface charge after charging, other kinds (sealed ones stand
 * 0.1 to 0.2 V higher), a battery that has charge but no strength. NAN outside the range. */
double battery_charge(double volts);

#endif
