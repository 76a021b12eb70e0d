; Results that say more together than each by itself: the inside of the engine, the starter and
; what the engine drives.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/combinations-engine.json. Check with: pullcord vet

(defrule speaks-wear-by-dust
  "[common-practice] Dust behind the filter and low compression: the dust has worn rings and
   bore."
  (logical
    (finding (check dust-track-in-throat) (result dust) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault rings-worn) (decibans 5)))
  (assert (speaks (fault air-filter-missing) (decibans 3))))

(defrule speaks-lean-mix-scoring
  "[common-practice] Too little oil in the mix and low compression: look at the piston through
   the port before anything else."
  (logical
    (has (feature two-stroke))
    (finding (check mix-ratio-asked) (result too-little-oil) (sure ?s2&:(> ?s2 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault two-stroke-lean-scoring) (decibans 7))))

(defrule speaks-locked-without-oil
  "[common-practice] Ran out of oil and is locked: it has seized, and the rod has suffered with
   it."
  (logical
    (finding (check oil-level) (result none) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crank-turn-by-hand) (result locked|tight) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault piston-seized) (decibans 5)))
  (assert (speaks (fault con-rod-bearing-worn) (decibans 4))))

(defrule speaks-locked-after-tipping
  "[common-practice] Locked since it was laid over: liquid on the piston, not a seizure. Plug out
   before it is called dead."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check rope-pull-feel) (result locked|hard) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check how-it-stopped) (result bang-or-crunch))))
  =>
  (assert (speaks (fault hydraulic-lock) (decibans 6)))
  (assert (speaks (fault piston-seized) (decibans -5))))

(defrule speaks-locked-by-the-impeller
  "[common-practice] Locked, and the impeller found held: the pump holds the engine. Free it and
   pull again before the engine is blamed."
  (logical
    (finding (check impeller-look) (result worn-or-jammed) (sure ?s1&:(> ?s1 0.4)))
    (finding (check rope-pull-feel) (result locked|hard) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault impeller-worn-or-jammed) (decibans 6)))
  (assert (speaks (fault piston-seized) (decibans -6))))

(defrule speaks-bang-and-no-feel
  "[common-practice] It went with a bang, and now turns over without any feel: the rod has let
   go."
  (logical
    (finding (check how-it-stopped) (result bang-or-crunch) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-feel) (result none) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check rope-and-spring-look) (result broken))))
  =>
  (assert (speaks (fault con-rod-broken) (decibans 6))))

(defrule speaks-smoke-after-tipping
  "[common-practice] It was laid over and smokes since: oil in cylinder or silencer burns off.
   That comes long before rings."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result white|blue) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check smoke-after-ten-minutes)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault oil-in-cylinder-after-tipping) (decibans 4)))
  (assert (speaks (fault rings-worn) (decibans -3))))

(defrule speaks-oily-plug-after-tipping
  "[common-practice] It was laid over and the plug is oily: oil ran up the bore; clean the plug
   and blow the cylinder out."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result oil-wet) (sure ?s2&:(> ?s2 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault oil-in-cylinder-after-tipping) (decibans 4)))
  (assert (speaks (fault rings-worn) (decibans -3))))

(defrule speaks-smoke-tipped-goes
  "[common-practice] Laid over, smoked, and the smoke is gone after ten minutes: that was all it
   was."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result white|blue) (sure ?s2&:(> ?s2 0.4)))
    (finding (check smoke-after-ten-minutes) (result gone) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault oil-in-cylinder-after-tipping) (decibans 4)))
  (assert (speaks (fault rings-worn) (decibans -5)))
  (assert (speaks (fault valve-guide-worn) (decibans -4))))

(defrule speaks-overheated-gasket
  "[common-practice] Fins clogged, and now low on compression with a loose head or soot: the heat
   has let the gasket go."
  (logical
    (finding (check cooling-fins) (result clogged) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault head-gasket-blown) (decibans 4)))
  (assert (speaks (fault exhaust-valve-burned) (decibans 2))))

(defrule speaks-oil-leak-by-pressure
  "[common-practice] Oil at a seal and pressure in the crankcase: the breather pushes it out, the
   seal need not be bad."
  (logical
    (finding (check oil-leak-where) (result crank-seal|rocker-cover|breather)
      (sure ?s1&:(> ?s1 0.4)))
    (finding (check crankcase-vacuum) (result none-or-pressure) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault breather-valve-stuck) (decibans 4)))
  (assert (speaks (fault crank-seal-oil-leak) (decibans -3))))

(defrule speaks-dry-rings-not-worn
  "[common-practice] Stood for months, weak dry, good with oil, no smoke when it ran: dry or
   stuck rings, not worn ones."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-wet) (result rises) (sure ?s2&:(> ?s2 0.4)))
    (not (complained (complaint smoke-blue|uses-oil))))
  =>
  (assert (speaks (fault cylinder-dry) (decibans 5)))
  (assert (speaks (fault rings-worn) (decibans -4))))

(defrule speaks-stuck-valve-after-storage
  "[common-practice] Stood for months, no compression wet or dry: a valve has stuck open in its
   guide."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result very-low) (sure ?s2&:(> ?s2 0.4)))
    (finding (check compression-wet) (result no-rise) (sure ?s3&:(> ?s3 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault valve-stuck-open) (decibans 6))))

(defrule speaks-hot-soft-valve
  "[common-practice] Good when cold, soft and unwilling when hot, spark good: the clearance has
   closed up."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (finding (check valve-clearance-exhaust) (result tight|right) (sure ?s2&:(> ?s2 0.4)))
    (finding (check compression) (result weak) (sure ?s3&:(> ?s3 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault valve-clearance-tight) (decibans 3)))
  (assert (speaks (fault valve-seat-loose) (decibans 3))))

(defrule speaks-saw-weak-hot-screen
  "[common-practice] A two-stroke that has lost power little by little, pressing well and
   breathing well: the exhaust is carboned."
  (logical
    (has (feature two-stroke))
    (finding (check compression) (result good) (sure ?s2&:(> ?s2 0.4)))
    (finding (check air-filter-look) (result clean) (sure ?s3&:(> ?s3 0.4)))
    (complained (complaint weak|no-full-speed))
    (not (finding (check spark-arrester-look) (result clear)))
    (not (finding (check exhaust-port-look) (result clear))))
  =>
  (assert (speaks (fault spark-arrester-carboned) (decibans 4)))
  (assert (speaks (fault exhaust-port-carboned) (decibans 4)))
  (assert (speaks (fault muffler-blocked) (decibans 2))))

(defrule speaks-low-volts-low-hertz
  "[common-practice] Voltage and frequency are both low: the engine is slow, the generator is
   sound."
  (logical
    (finding (check output-frequency) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result low) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature inverter-generator))))
  =>
  (assert (speaks (fault generator-winding-open) (decibans -5)))
  (assert (speaks (fault regulator-or-capacitor-failed) (decibans -4)))
  (assert (speaks (fault top-speed-low) (decibans 3))))

(defrule speaks-low-volts-right-hertz
  "[common-practice] Frequency right, voltage low: the engine is well, the fault is in brushes,
   regulator or capacitor."
  (logical
    (finding (check output-frequency) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result low) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature inverter-generator)))
    (not (finding (check generator-brushes) (result good))))
  =>
  (assert (speaks (fault regulator-or-capacitor-failed) (decibans 4)))
  (assert (speaks (fault generator-brushes-worn) (decibans 3)))
  (assert (speaks (fault top-speed-low) (decibans -5))))

(defrule speaks-no-volts-after-standing
  "[common-practice] Stood for months and gives no volts though the engine is right and the
   breaker in: it has lost its magnetism."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result none) (sure ?s2&:(> ?s2 0.4)))
    (finding (check generator-breaker) (result in) (sure ?s3&:(> ?s3 0.4)))
    (not (has (feature inverter-generator))))
  =>
  (assert (speaks (fault residual-magnetism-lost) (decibans 5))))

(defrule speaks-bad-pump-good-supply
  "[common-practice] Water enough, nozzle sound, engine at speed, and it pulses: the pump
   valves."
  (logical
    (finding (check pump-delivery) (result pulsing) (sure ?s1&:(> ?s1 0.4)))
    (finding (check water-supply-flow) (result enough) (sure ?s2&:(> ?s2 0.4)))
    (finding (check nozzle-look) (result clear) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault pump-valves-worn) (decibans 5)))
  (assert (speaks (fault water-supply-too-small) (decibans -5))))

(defrule speaks-dry-run-seal
  "[common-practice] Run dry and now drips or will not draw: the seal burnt."
  (logical
    (finding (check ran-without-load-or-dry) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-primed) (result full) (sure ?s2&:(> ?s2 0.4)))
    (finding (check pump-delivery) (result weak|pulsing|none) (sure ?s3&:(> ?s3 0.4)))
    (has (feature water-pump-end)))
  =>
  (assert (speaks (fault pump-seal-worn) (decibans 5))))

(defrule speaks-belt-well-no-drive
  "[common-practice] Belt sound, nothing turns: pin, key or gear behind the belt."
  (logical
    (finding (check belt-look) (result sound) (sure ?s1&:(> ?s1 0.4)))
    (finding (check tool-turns) (result not-at-all) (sure ?s2&:(> ?s2 0.4)))
    (has (feature gearbox)))
  =>
  (assert (speaks (fault drive-gear-worn) (decibans 4)))
  (assert (speaks (fault auger-shear-pin-broken) (decibans 4))))

(defrule speaks-slow-crank-good-battery
  "[common-practice] Battery charged and holding, cables good, and still slow: starter, or an
   engine that turns hard."
  (logical
    (finding (check starter-sound) (result slow) (sure ?s1&:(> ?s1 0.4)))
    (finding (check battery-crank-voltage) (result holds) (sure ?s2&:(> ?s2 0.4)))
    (finding (check starter-cable-drop) (result low) (sure ?s3&:(> ?s3 0.4)))
    (finding (check crank-turn-by-hand) (result free) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (speaks (fault starter-motor-worn) (decibans 4)))
  (assert (speaks (fault ground-strap-bad) (decibans 3))))

(defrule speaks-flat-again-charges
  "[common-practice] Goes flat while standing though it charges when running: something draws it
   down, or the battery does not hold."
  (logical
    (finding (check charging-voltage) (result charges) (sure ?s1&:(> ?s1 0.6)))
    (finding (check battery-rest-voltage) (result flat|low) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (speaks (fault battery-drained) (decibans 4)))
  (assert (speaks (fault battery-sulphated) (decibans 4)))
  (assert (speaks (fault charging-regulator-bad) (decibans -5))))

(defrule speaks-damp-no-spark
  "[common-practice] Washed or rained on and no spark since: water on lead and boot before the
   coil."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4)))
    (finding (check when-last-ran) (result recently) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault ignition-damp) (decibans 5)))
  (assert (speaks (fault coil-dead) (decibans -4))))

(defrule speaks-stops-over-bumps
  "[common-practice] Cuts dead and comes back by itself: a wire or switch that touches and lets
   go, not fuel."
  (logical
    (finding (check how-it-stopped) (result cut-dead) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-while-dying) (result spark-goes) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check restart-after-cooling) (result starts-when-cool))))
  =>
  (assert (speaks (fault stop-wire-chafed) (decibans 4)))
  (assert (speaks (fault stop-switch-shorted) (decibans 2)))
  (assert (speaks (fault coil-fails-hot) (decibans -3))))

(defrule speaks-faded-not-ignition
  "[common-practice] It faded away with the spark still there: fuel or air, not ignition."
  (logical
    (finding (check how-it-stopped) (result faded) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-while-dying) (result spark-stays) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault coil-fails-hot) (decibans -4)))
  (assert (speaks (fault stop-wire-chafed) (decibans -3))))

(defrule speaks-run-dry-and-broken
  "[common-practice] No oil on the stick and the damage that goes with it: it was run dry, and
   that is what broke it."
  (logical
    (finding (check oil-level) (result none) (sure ?s1&:(> ?s1 0.4)))
    (exists
      (or (finding (check piston-moves) (result does-not-move))
          (finding (check how-it-stopped) (result bang-or-crunch))
          (finding (check bore-look) (result scored))
          (finding (check crank-end-play-or-rod-knock) (result play|rod-knock))
          (finding (check recoil-off-turn) (result still-locked)))))
  =>
  (assert (speaks (fault no-oil) (decibans 5))))

(defrule speaks-coil-is-left
  "[common-practice] No spark with the stop wire off, and plug, gap and magnets passed: what is
   left is the coil."
  (logical
    (finding (check spark-test) (result none) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-with-kill-lead-off) (result no-change) (sure ?s2&:(> ?s2 0.4)))
    (exists
      (or (finding (check spark-with-new-plug) (result no-change))
          (finding (check flywheel-magnet-pull) (result strong))))
    (finding (check coil-air-gap) (result right) (sure ?s3&:(> ?s3 0.4)))
    (has (feature solid-state)))
  =>
  (assert (speaks (fault coil-dead) (decibans 4))))

(defrule speaks-two-stroke-smoke-is-mix
  "[common-practice] A two-stroke burns its oil with its fuel: blue smoke is the mix, or a carboned
   exhaust, long before it is rings."
  (logical
    (has (feature two-stroke))
    (exists (or (complained (complaint smoke-blue))
                (finding (check exhaust-smoke) (result blue) (sure ?s1&:(> ?s1 0.4))))))
  =>
  (assert (speaks (fault too-much-oil-in-mix) (decibans 3)))
  (assert (speaks (fault rings-worn) (decibans -6)))
  (assert (speaks (fault rings-stuck) (decibans -3))))

(defrule speaks-straight-petrol-scored
  "[common-practice] Hardly any oil in the mix and the piston is scored: the one did the other.
   Drain the tank before it is started again, whatever else is found."
  (logical
    (has (feature two-stroke))
    (finding (check mix-ratio-asked) (result too-little-oil) (sure ?s1&:(> ?s1 0.4)))
    (finding (check piston-through-port) (result scored) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault straight-petrol-in-two-stroke) (decibans 7)))
  (assert (speaks (fault two-stroke-lean-scoring) (decibans 5))))
