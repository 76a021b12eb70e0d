; Starting: electric repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts starting-electric-repairs "starting: electric repairs"
  (repair (id charge-battery)
    (name "charge the battery and find what emptied it") (minutes 20) (parts-cost 0)
    (consumables "distilled water for wet cells")
    (tools "charger"
      "multimeter")
    (steps "Wet cells: top up with distilled water after charge, glasses on."
      "Charge at about a tenth of its capacity; ventilate; charger off before clips."
      "Stand overnight; test while cranking."
      "Check charging voltage and drain before it goes home.")
    (off battery-cover)
    (cautions battery-acid-hydrogen battery-short eye-protection)
    (basis published) (source tm-5-4320-234-12) (place "Table 4-2"))
  (repair (id renew-battery)
    (name "renew the battery") (minutes 20) (parts-cost 45)
    (parts "battery of the same size and post side")
    (consumables "post grease")
    (tools "spanner"
      "wire brush")
    (steps "Minus off first, minus on last."
      "Clean clamps and tray; strap down."
      "Look at polarity twice: the wrong way kills the regulator."
      "Check charging voltage.")
    (off battery-cover)
    (cautions battery-acid-hydrogen battery-short eye-protection)
    (reuse "Old one to the collector as lead-acid waste.")
    (basis common-practice))
  (repair (id renew-battery-cables)
    (name "clean or renew clamps and cables") (minutes 30) (parts-cost 12)
    (parts "cable or clamp")
    (consumables "wire brush"
      "soda water"
      "post grease")
    (tools "spanner"
      "multimeter")
    (steps "Minus off first. Clean posts and eyes to bright metal."
      "Cable stiff or green under the sleeve: renew, same section."
      "Tight, greased over; measure the drop while cranking.")
    (off battery-cover)
    (cautions battery-acid-hydrogen battery-short eye-protection)
    (basis common-practice))
  (repair (id clean-ground-strap)
    (name "clean or renew the ground cable") (minutes 25) (parts-cost 8)
    (parts "ground cable or strap")
    (consumables "wire brush")
    (tools "spanner"
      "multimeter")
    (steps "Battery minus off. Eye, frame and engine to bright metal, star washer."
      "Strap from frame to engine past rubber mounts."
      "Measure the drop while cranking.")
    (off battery-cover)
    (cautions battery-short battery-acid-hydrogen)
    (basis published) (source tm-5-3805-254-20-1) (place "p. 2-94"))
  (repair (id renew-starter-solenoid)
    (name "renew the solenoid") (minutes 25) (parts-cost 18)
    (parts "solenoid of the same kind")
    (tools "spanners"
      "multimeter")
    (steps "Battery minus off. Note the wires; note body ground or ground wire."
      "Bright metal under the body; nuts snug, studs held."
      "Try ten starts; measure drop across studs.")
    (cautions battery-short battery-acid-hydrogen moving-parts)
    (basis common-practice))
  (repair (id renew-starter-motor)
    (name "renew or overhaul the starter") (minutes 50) (parts-cost 80)
    (parts "starter, or brushes and bushes")
    (tools "socket set"
      "multimeter")
    (steps "Battery minus off (mains kind: cord out). Starter off."
      "Brushes short, commutator black: overhaul if parts can be had."
      "Face clean, bolts snug; check mesh with ring gear."
      "Short cranks with rests between.")
    (off blower-housing)
    (cautions battery-short plug-lead-off moving-parts)
    (basis common-practice))
  (repair (id free-starter-drive)
    (name "clean or renew the starter drive") (minutes 35) (parts-cost 18)
    (parts "drive kit if worn")
    (tools "circlip pliers"
      "solvent")
    (steps "Battery minus off (mains kind: cord out). Cap and clip off, pinion and spring off."
      "Wash helix and pinion dry; no oil on a plastic pinion."
      "Renew worn teeth or clutch; look at the ring gear."
      "Try: out smartly, back by its spring.")
    (off blower-housing)
    (cautions battery-short gloves-solvent eye-protection moving-parts)
    (basis published) (source tm-5-4240-501-14p) (place "p. 173"))
  (repair (id renew-ring-gear)
    (name "renew ring gear or flywheel") (minutes 80) (parts-cost 60)
    (parts "ring gear or flywheel"
      "soft key")
    (tools "flywheel puller"
      "drill"
      "torque wrench")
    (steps "Flywheel off by puller. Bolted or riveted gear: change it; cast: new flywheel."
      "Clean dry taper, new key if marked, nut to torque."
      "New pinion with it if worn; reset coil gap.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller soft-key-only damaged-flywheel)
    (basis common-practice))
  (repair (id renew-start-switch)
    (name "renew the key or start switch") (minutes 25) (parts-cost 18)
    (parts "switch with the same pin plan")
    (tools "multimeter"
      "spanner")
    (steps "Battery minus off. Compare the pin plan: look-alikes differ inside."
      "Clean the plug. Fit so that it cannot turn."
      "Off must stop the engine, start must fall back by itself.")
    (off control-panel)
    (cautions battery-short plug-lead-off carbon-monoxide)
    (basis common-practice))
  (repair (id renew-start-fuse)
    (name "find the short and renew the fuse") (minutes 30) (parts-cost 2)
    (parts "fuse of the same rating")
    (tools "multimeter"
      "test lamp")
    (steps "Key off: meter the dead side to ground. Reads: unplug until it clears."
      "Mend the wire; holder clean and tight."
      "Same rating, never larger. Shake the loom with it on.")
    (cautions battery-short)
    (basis common-practice))
)
