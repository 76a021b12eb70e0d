; What one result at the bench implies about checks of other parts that were not made: a spark
; clears the stop circuit, a flowing drain clears the tap and line. An implication is weaker than
; the check itself and falls away when the check is made.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/parts-and-imply.json. Check with: pullcord vet

(defrule implies-spark-magnet-strong
  "[common-practice] The magneto jumped the tester, so the magnets pull as they should."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature solid-state))
    (not (finding (check flywheel-magnet-pull))))
  =>
  (assert (implies (check flywheel-magnet-pull) (result strong) (strength 0.92))))

(defrule implies-spark-stop-circuit-open
  "[common-practice] There is a spark with the stop wire joined up, so nothing is earthing it
   now."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check position-dependence) (result dies-tilted)))
    (not (finding (check damp-or-washed) (result yes)))
    (not (finding (check kill-circuit-resistance))))
  =>
  (assert (implies (check kill-circuit-resistance) (result open) (strength 0.88))))

(defrule implies-spark-switch-on
  "[common-practice] It sparks, so the stop switch stood at run."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check stop-switch-position))))
  =>
  (assert (implies (check stop-switch-position) (result run) (strength 0.92))))

(defrule implies-spark-interlock-made
  "[common-practice] It sparks, so the bars and switches that stop it let it run."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature interlock-bar|interlock-seat|interlock-drive))
    (not (finding (check interlock-state))))
  =>
  (assert (implies (check interlock-state) (result made) (strength 0.88))))

(defrule implies-spark-interlock-switches
  "[common-practice] It sparks with every switch as in work, so none of the interlock switches is
   stuck."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check interlock-state) (result made) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check interlock-switch-test))))
  =>
  (assert (implies (check interlock-switch-test) (result closed-as-should) (strength 0.85))))

(defrule implies-spark-oil-cutout-quiet
  "[common-practice] It sparks, so the oil cut-out is not earthing the coil."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature oil-cutout))
    (not (finding (check machine-level) (result tilted)))
    (not (finding (check oil-cutout-disconnected))))
  =>
  (assert (implies (check oil-cutout-disconnected) (result no-change) (strength 0.9))))

(defrule implies-spark-points-fair
  "[common-practice] It jumps the tester, so the points open and make contact."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature breaker-points))
    (not (finding (check points-look))))
  =>
  (assert (implies (check points-look) (result clean) (strength 0.7))))

(defrule implies-spark-condenser-fair
  "[common-practice] A dead condenser gives a thin spark or none; this one jumps the tester."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature breaker-points))
    (not (finding (check condenser-test))))
  =>
  (assert (implies (check condenser-test) (result good) (strength 0.75))))

(defrule implies-new-plug-good-coil
  "[common-practice] A new plug brought the spark back: coil and flywheel are proved with it."
  (logical
    (finding (check spark-with-new-plug) (result now-good) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check coil-secondary))))
  =>
  (assert (implies (check coil-secondary) (result right) (strength 0.88))))

(defrule implies-new-plug-good-kill-open
  "[common-practice] A new plug brought the spark back, so the stop circuit was never to blame."
  (logical
    (finding (check spark-with-new-plug) (result now-good) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check kill-circuit-resistance))))
  =>
  (assert (implies (check kill-circuit-resistance) (result open) (strength 0.9))))

(defrule implies-kill-off-good-secondary
  "[common-practice] The coil sparks as soon as its stop wire is off: the coil is sound and the
   wire or a switch earths it."
  (logical
    (finding (check spark-with-kill-lead-off) (result now-good) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check coil-secondary))))
  =>
  (assert (implies (check coil-secondary) (result right) (strength 0.88))))

(defrule implies-kill-off-good-primary
  "[common-practice] The coil sparks as soon as its stop wire is off, so its primary is sound."
  (logical
    (finding (check spark-with-kill-lead-off) (result now-good) (sure ?s1&:(> ?s1 0.4)))
    (has (feature breaker-points))
    (not (finding (check coil-primary))))
  =>
  (assert (implies (check coil-primary) (result right) (strength 0.88))))

(defrule implies-kill-off-good-magnet
  "[common-practice] The coil sparks as soon as its stop wire is off, so the flywheel magnets are
   strong enough."
  (logical
    (finding (check spark-with-kill-lead-off) (result now-good) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check flywheel-magnet-pull))))
  =>
  (assert (implies (check flywheel-magnet-pull) (result strong) (strength 0.92))))

(defrule implies-dies-with-spark-coil-hot-good
  "[common-practice] The spark stayed while it died: the coil held out at the very moment it
   mattered."
  (logical
    (finding (check spark-while-dying) (result spark-stays) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-hot))))
  =>
  (assert (implies (check spark-hot) (result good-hot) (strength 0.88))))

(defrule implies-hot-spark-cold-spark
  "[common-practice] It sparks hot, so it sparks cold."
  (logical
    (finding (check spark-hot) (result good-hot) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.9))))

(defrule implies-marks-right-key-whole
  "[common-practice] The marks meet, so the flywheel has not moved on its key."
  (logical
    (finding (check timing-marks) (result right) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check flywheel-key-look))))
  =>
  (assert (implies (check flywheel-key-look) (result whole) (strength 0.88))))

(defrule implies-good-gauge-head-tight
  "[common-practice] The gauge reads what it should, so the head is down on its gasket."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check head-bolts))))
  =>
  (assert (implies (check head-bolts) (result tight) (strength 0.75))))

(defrule implies-good-gauge-no-soot
  "[common-practice] The gauge reads what it should, so no gas blows out past the head gasket."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check head-gasket-soot))))
  =>
  (assert (implies (check head-gasket-soot) (result none) (strength 0.8))))

(defrule implies-good-gauge-valves-move
  "[common-practice] A cylinder fills and presses only if its inlet valve opens and both shut."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (has (feature four-stroke))
    (not (finding (check valve-motion))))
  =>
  (assert (implies (check valve-motion) (result both-full) (strength 0.75))))

(defrule implies-tight-leak-down-gasket
  "[common-practice] Hardly any air gets out of the cylinder, so the gasket holds."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check head-gasket-soot))))
  =>
  (assert (implies (check head-gasket-soot) (result none) (strength 0.88))))

(defrule implies-tight-leak-down-wet-test
  "[common-practice] The cylinder holds its air, so oil on the rings would gain nothing."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check compression-wet))))
  =>
  (assert (implies (check compression-wet) (result no-rise) (strength 0.85))))

(defrule implies-tight-leak-down-no-tight-valve
  "[common-practice] The cylinder holds its air at top dead centre, so the exhaust valve is not
   held open by a tight clearance."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6)))
    (has (feature four-stroke))
    (not (finding (check valve-clearance-exhaust) (result wide)))
    (not (finding (check valve-clearance-exhaust))))
  =>
  (assert (implies (check valve-clearance-exhaust) (result right) (strength 0.75))))

(defrule implies-starter-off-turns
  "[common-practice] With the starter off the flywheel turns by hand: the engine is free and the
   trouble sits in the starter."
  (logical
    (finding (check recoil-off-turn) (result turns) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.93))))

(defrule implies-starter-off-locked
  "[common-practice] With the starter off it is still locked, so it is the engine, or what it
   drives, that holds it."
  (logical
    (finding (check recoil-off-turn) (result still-locked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result locked) (strength 0.75))))

(defrule implies-free-crank-locked-rope
  "[common-practice] The crank goes round by hand with the plug out but the rope will not come,
   and nothing lay in the cylinder: the starter is what is stuck."
  (logical
    (finding (check crank-turn-by-hand) (result free) (sure ?s1&:(> ?s1 0.4)))
    (finding (check rope-pull-feel) (result locked) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check tipped-over) (result yes)))
    (not (finding (check plug-hole-thrown) (result fuel|oil)))
    (not (finding (check recoil-off-turn))))
  =>
  (assert (implies (check recoil-off-turn) (result turns) (strength 0.75))))

(defrule implies-rope-normal-crank-free
  "[common-practice] The rope pulls as it should, so the engine turns."
  (logical
    (finding (check rope-pull-feel) (result normal) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.9))))

(defrule implies-rope-normal-compression
  "[common-practice] The pull comes up against each stroke as it should, so there is compression
   to feel."
  (logical
    (finding (check rope-pull-feel) (result normal) (sure ?s1&:(> ?s1 0.4)))
    (not (has (feature decompression)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.7))))

(defrule implies-rope-normal-starter-sound
  "[common-practice] A pull that feels right comes from a rope, spring and pawls that work."
  (logical
    (finding (check rope-pull-feel) (result normal) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check rope-and-spring-look))))
  =>
  (assert (implies (check rope-and-spring-look) (result sound) (strength 0.85))))

(defrule implies-starter-turns-feed
  "[common-practice] The starter turns the engine, so its solenoid is fed."
  (logical
    (finding (check starter-sound) (result turns-engine) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check starter-solenoid-feed))))
  =>
  (assert (implies (check starter-solenoid-feed) (result fed) (strength 0.95))))

(defrule implies-starter-turns-battery
  "[common-practice] The starter turns the engine briskly, so the battery is not flat."
  (logical
    (finding (check starter-sound) (result turns-engine) (sure ?s1&:(> ?s1 0.4)))
    (has (feature battery))
    (not (finding (check battery-rest-voltage))))
  =>
  (assert (implies (check battery-rest-voltage) (result charged) (strength 0.7))))

(defrule implies-starter-turns-crank-free
  "[common-practice] The starter turns the engine, so it is not locked."
  (logical
    (finding (check starter-sound) (result turns-engine|slow) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.9))))

(defrule implies-drain-flows-line-flows
  "[common-practice] The bowl fills itself again at the drain, so line, tap and needle all pass
   fuel."
  (logical
    (finding (check bowl-drain-flow) (result flows-clean) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fuel-tap-position) (result shut)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.8))))

(defrule implies-flow-tap-open
  "[common-practice] Fuel runs from the line, so the tap is open and clear."
  (logical
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (has (feature fuel-tap))
    (not (finding (check tap-flow))))
  =>
  (assert (implies (check tap-flow) (result steady) (strength 0.92))))

(defrule implies-flow-filter-clean
  "[common-practice] A steady stream came through the filter in the line."
  (logical
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (has (feature inline-filter))
    (not (finding (check inline-filter-look))))
  =>
  (assert (implies (check inline-filter-look) (result clean) (strength 0.8))))

(defrule implies-flow-pickup-clean
  "[common-practice] A steady stream came through the pickup filter in the tank."
  (logical
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (has (feature pickup-filter))
    (not (finding (check pickup-filter-look) (result off-or-lost)))
    (not (finding (check pickup-filter-look))))
  =>
  (assert (implies (check pickup-filter-look) (result clean) (strength 0.75))))

(defrule implies-overflow-means-supply
  "[common-practice] Fuel runs out of the carburettor: whatever else, it gets there."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.92))))

(defrule implies-black-smoke-means-supply
  "[common-practice] Black smoke is too much fuel, so the supply is not starved."
  (logical
    (finding (check exhaust-smoke) (result black) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.8))))

(defrule implies-wet-plug-means-supply
  "[common-practice] The plug is wet with fuel and nobody has primed it, so fuel reaches the
   cylinder."
  (logical
    (finding (check plug-look) (result fuel-wet) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check prime-test)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.72))))

(defrule implies-purge-fills-pickup
  "[common-practice] The purge bulb fills, so fuel comes through the pickup filter."
  (logical
    (finding (check purge-bulb-feel) (result fills) (sure ?s1&:(> ?s1 0.4)))
    (has (feature pickup-filter))
    (not (finding (check pickup-filter-look))))
  =>
  (assert (implies (check pickup-filter-look) (result clean) (strength 0.72))))

(defrule implies-purge-fills-line
  "[common-practice] The purge bulb fills and stays full of fuel, so the lines do not draw air at
   rest."
  (logical
    (finding (check purge-bulb-feel) (result fills) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check air-in-line) (result bubbles)))
    (not (finding (check fuel-line-look))))
  =>
  (assert (implies (check fuel-line-look) (result sound) (strength 0.72))))

(defrule implies-pump-pulses-pulse-line
  "[common-practice] The pump gives its pulses, so the line that brings them is whole."
  (logical
    (finding (check pulse-pump-output) (result pulses) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check pulse-line-look))))
  =>
  (assert (implies (check pulse-line-look) (result sound) (strength 0.85))))

(defrule implies-unloaded-well-spark
  "[common-practice] With the load off it runs well: ignition is as it should be."
  (logical
    (finding (check load-removed-run) (result runs-well) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check runs-at-all)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.85))))

(defrule implies-unloaded-well-speed
  "[common-practice] With the load off it runs up as it should, so its full speed will read about
   right."
  (logical
    (finding (check load-removed-run) (result runs-well) (sure ?s1&:(> ?s1 0.4)))
    (not (complained (complaint races|no-full-speed)))
    (not (finding (check top-speed))))
  =>
  (assert (implies (check top-speed) (result right) (strength 0.7))))

(defrule implies-steady-water-pump-primed
  "[common-practice] It delivers a steady stream, so the pump is full of water."
  (logical
    (finding (check pump-delivery) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check pump-primed))))
  =>
  (assert (implies (check pump-primed) (result full) (strength 0.95))))

(defrule implies-steady-water-suction-tight
  "[common-practice] A steady stream without pulsing means no air is drawn in at the suction
   side."
  (logical
    (finding (check pump-delivery) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check suction-hose))))
  =>
  (assert (implies (check suction-hose) (result tight) (strength 0.82))))

(defrule implies-frequency-right-speed-right
  "[published navedtra-14177 p. 3-14] On a generator frequency is speed: poles times revolutions
   over 120. Right frequency is right engine speed."
  (logical
    (finding (check output-frequency) (result right) (sure ?s1&:(> ?s1 0.6)))
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (not (finding (check top-speed))))
  =>
  (assert (implies (check top-speed) (result right) (strength 0.9))))

(defrule implies-frequency-low-speed-low
  "[published navedtra-14177 p. 3-14] On a generator frequency is speed, so a low frequency is an
   engine that turns too slowly."
  (logical
    (finding (check output-frequency) (result low) (sure ?s1&:(> ?s1 0.6)))
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (not (finding (check top-speed))))
  =>
  (assert (implies (check top-speed) (result low) (strength 0.88))))

(defrule implies-output-right-brushes
  "[common-practice] The voltage is right, so current gets through the brushes."
  (logical
    (finding (check output-voltage) (result right) (sure ?s1&:(> ?s1 0.6)))
    (has (feature generator-end))
    (not (finding (check generator-brushes))))
  =>
  (assert (implies (check generator-brushes) (result good) (strength 0.8))))

(defrule implies-output-right-capacitor
  "[common-practice] The voltage is right, so the capacitor or regulator does its part."
  (logical
    (finding (check output-voltage) (result right) (sure ?s1&:(> ?s1 0.6)))
    (has (feature generator-end))
    (not (finding (check capacitor-test))))
  =>
  (assert (implies (check capacitor-test) (result good) (strength 0.85))))

(defrule implies-stopped-by-hand-nothing-struck
  "[common-practice] It was switched off running well the last time, so it did not break
   something at work."
  (logical
    (finding (check how-it-stopped) (result by-operator) (sure ?s1&:(> ?s1 0.4)))
    (finding (check when-last-ran) (result weeks-ago|months-ago) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check struck-something))))
  =>
  (assert (implies (check struck-something) (result no) (strength 0.8))))
