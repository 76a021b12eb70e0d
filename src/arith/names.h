/* names.h - the one list of calculations: X(variable, name, values of an example, what it is for).
 *
 * Help, completion, man page and the tests of the examples are made from it. */
#ifndef ARITH_NAMES_H
#define ARITH_NAMES_H

#define WORK_NAMES(X)                                                                                     \
  X(oil_refill, "oil-refill", "650 mL", "fill up after a drain without overfilling")                       \
  X(oil_grade, "oil-grade", "10W-30", "how cold a grade still cranks, how thick it is hot")                \
  X(premix, "premix", "50:1 5 L", "oil for the petrol of a two-stroke mix")                                \
  X(fuel_age, "fuel-age", "6 weeks", "old petrol against what is advised")                                 \
  X(water_in_fuel, "water-in-fuel", "E10 5 L", "water that petrol holds before it separates")              \
  X(ethanol, "ethanol", "E10", "how far a blend shifts the mixture")                                       \
  X(air, "air", "1500 m 20 degC", "pressure and density of the air up there")                              \
  X(compression, "compression", "8.5:1 1500 m 20 degC", "what a compression gauge can read at most")       \
  X(sea_level, "sea-level", "100 psi 1500 m", "what a compression reading would be at sea level")          \
  X(leak_down, "leak-down", "80 psi 64 psi", "per cent lost, from the two gauges")                         \
  X(frequency, "frequency", "3600 rpm", "what a generator gives at a speed")                               \
  X(governed_speed, "governed-speed", "60 Hz", "the speed that a generator wants")                         \
  X(blade_tip, "blade-tip", "21 in 3100 rpm", "tip speed of a mower blade, and the limit")                 \
  X(belt, "belt", "3600 rpm 3 in 5 in", "speed of the driven pulley and of the belt")                      \
  X(belt_length, "belt-length", "3 in 5 in 14 in", "length of an open belt, and its wrap")                 \
  X(jet, "jet", "0.70 mm 1 kPa blocked=20%", "flow of a jet, clear and partly blocked")                    \
  X(jet_change, "jet-change", "0.70 mm 0.65 mm", "what another jet size does to the mixture")              \
  X(nozzle_flow, "nozzle-flow", "1.3 mm 150 bar", "flow of a nozzle at a pressure")                        \
  X(nozzle_size, "nozzle-size", "8 L/min 150 bar", "the nozzle for a pump's flow and pressure")            \
  X(nozzle_pressure, "nozzle-pressure", "8 L/min 1.3 mm", "pressure that a flow makes at a nozzle")        \
  X(pump_flow, "pump-flow", "10 L 45 s", "bucket and watch, against the plate if you like")                \
  X(plug_gap, "plug-gap", "0.030 in 120 psi", "volts that a plug gap needs under pressure")                \
  X(plug_torque, "plug-torque", "14 mm", "how tight a plug goes, by thread, seat and head")                \
  X(torque, "torque", "15 ft-lb", "one torque in all units")                                               \
  X(voltage_drop, "voltage-drop", "11.9 V 11.2 V 80 A", "what cable, switch and clamps eat")               \
  X(battery, "battery", "12.5 V 10.2 V 80 A", "charge at rest, sag and inner resistance on load")

/* Texts made of all of them: completion words, and the list for the help. A line that begins with
 * a space is a line of its own for the man page, too. */
#define WORK_WORD(variable, name, example, what) name " "
#define WORK_HELP(variable, name, example, what) "\n " name " " example ": " what
#define WORK_WORDS WORK_NAMES(WORK_WORD)
#define WORK_LIST WORK_NAMES(WORK_HELP)

#endif
