; Starting: charging repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts starting-charging-repairs "starting: charging repairs"
  (repair (id renew-charging-coil)
    (name "renew the charging coil") (minutes 75) (parts-cost 45)
    (parts "charging coil")
    (tools "flywheel puller"
      "torque wrench"
      "multimeter")
    (steps "Flywheel off by puller. Note wire route."
      "Coil on, screws with lock, wire clipped clear of the flywheel."
      "Clean taper, key, nut to torque. Measure a.c. and d.c.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller soft-key-only)
    (basis common-practice))
  (repair (id renew-charging-regulator)
    (name "renew rectifier or regulator") (minutes 25) (parts-cost 30)
    (parts "rectifier or regulator of the same kind")
    (tools "multimeter"
      "spanners")
    (steps "First clean its body ground and plug and measure again."
      "Battery minus off. Fit on bright metal."
      "Measure at full speed: over 13.3 V and under 15 V.")
    (cautions battery-short battery-acid-hydrogen moving-parts carbon-monoxide)
    (basis common-practice))
  (repair (id cure-battery-drain)
    (name "find and cure the drain") (minutes 40) (parts-cost 10)
    (parts "switch, regulator or wire as found")
    (tools "multimeter")
    (steps "Minus off, meter in line, key off."
      "Pull fuse, regulator, switch one after the other till it drops."
      "Renew that part; charge the battery; measure again.")
    (off battery-cover)
    (cautions battery-short battery-acid-hydrogen)
    (basis common-practice))
)
