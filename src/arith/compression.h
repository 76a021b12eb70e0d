/* compression.h - what a compression gauge can read, and what leak-down readings say. */
#ifndef ARITH_COMPRESSION_H
#define ARITH_COMPRESSION_H

#include "base/err.h"

/* Pressures in Pa over the air outside (as a gauge reads), temperature in K. */
struct compression {
  double air;         /* absolute, outside */
  double isothermal;  /* slow, all heat lost to the walls: n = 1 */
  double polytropic;  /* with the exponent given */
  double adiabatic;   /* no heat lost: n = 1.4; nothing reads above this */
  double temperature; /* of the air outside */
  double end;         /* of the charge at top dead centre, with the exponent given */
};

/* The limits of a cranking reading for the compression ratio (3 to 15), altitude m and air
 * temperature K (as air_at; NAN: standard) and exponent (1 to 1.4; 1.3 is the usual one).
 *   P = P_air (ratio^n - 1)    T = T_air ratio^(n - 1)
 * Source: gas relation P V^n = constant, textbook; air from air.h.
 * Left out, all of which lower the gauge: the inlet valve or port closing after bottom dead centre,
 * leakage at cranking speed, the compression release, a closed throttle, the gauge's own volume.
 * So each is an upper limit for its exponent. On a two-stroke the ratio counts from where the
 * exhaust port closes. Returns 0, or EX_DATAERR with *e. */
int compression_limits(double ratio, double altitude, double temperature, double exponent,
                       struct compression *out, struct err *e);

/* What `reading` (Pa on the gauge, 0 to 2.5 MPa) at this altitude and temperature (as above) would
 * be at sea level in standard air, into *out (Pa on the gauge).  P_sea = P P0 / P_air
 * Source: as above; ratio and exponent cancel. Left out: as above, and that the gauge starts at
 * zero in that air. Returns 0, or EX_DATAERR with *e. */
int compression_at_sea_level(double reading, double altitude, double temperature, double *out, struct err *e);

/* Share lost, 0 to 1, from the two gauges of a leak-down tester (Pa; supply 70 kPa to 1.4 MPa,
 * cylinder 0 to supply).  1 - cylinder / supply
 * Source: the definition of a differential-pressure reading. The share depends on the orifice
 * between the gauges: AC 43.13-1B para 8-14 (reproduction, in part) has 0.040 in for bores under
 * 5.00 in, 0.060 in from there, 0.250 in long with a 60 degree approach. Only readings with the same
 * orifice and supply compare. Left out: where it leaks, the gauges' errors, cold and dry rings.
 * Returns 0, or EX_DATAERR with *e. */
int leak_down(double supply, double cylinder, double *share, struct err *e);

/* What is usually said of such a share: "good" to 10 %, "usable" to 20 %, "doubtful" to 30 %, "a
 * problem" above. Common practice, no standard; sources differ (another says 5 to 12, to 20). */
const char *leak_down_word(double share);

#endif
