; Checks to make before a fault is taken as proved and a part is bought for it: the cheap thing
; that looks just like the dear one.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/ask-first.json. Check with: pullcord vet

(defrule ask-shield-before-coil
  "[common-practice] No spark with a metal-shielded boot on: try once with the shield off before
   a coil is bought. The spark often runs to the shield inside the rubber."
  (logical
    (finding (check spark-test) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature shielded-boot))
    (not (finding (check spark-boot-shield-off))))
  =>
  (assert (ask-first (check spark-boot-shield-off) (fault coil-dead)))
  (assert (ask-first (check spark-boot-shield-off) (fault coil-weak))))

(defrule ask-kill-lead-before-coil
  "[published faa-h-8083-32 opposed-engine troubleshooting figure] No coil is condemned with its
   stop wire still on: take the wire off and try again."
  (logical
    (finding (check spark-test) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-with-kill-lead-off))))
  =>
  (assert (ask-first (check spark-with-kill-lead-off) (fault coil-dead)))
  (assert (ask-first (check spark-with-kill-lead-off) (fault coil-weak))))

(defrule ask-cutout-before-coil
  "[common-practice] With an oil cut-out on it, unplug that (oil right first) before the coil is
   blamed."
  (logical
    (finding (check spark-test) (result none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature oil-cutout))
    (not (finding (check oil-cutout-disconnected))))
  =>
  (assert (ask-first (check oil-cutout-disconnected) (fault coil-dead))))

(defrule ask-interlock-before-coil
  "[common-practice] With bars and seat switches on it, measure each switch before the coil is
   blamed."
  (logical
    (finding (check spark-test) (result none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature interlock-bar|interlock-seat|interlock-drive))
    (not (finding (check interlock-switch-test))))
  =>
  (assert (ask-first (check interlock-switch-test) (fault coil-dead))))

(defrule ask-gap-before-coil
  "[common-practice] A coil set too far off gives no spark: gauge the gap before a coil is
   bought."
  (logical
    (finding (check spark-test) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check coil-air-gap))))
  =>
  (assert (ask-first (check coil-air-gap) (fault coil-dead)))
  (assert (ask-first (check coil-air-gap) (fault coil-weak))))

(defrule ask-boot-before-coil
  "[common-practice] An open resistor in the boot looks like a dead coil and costs a tenth."
  (logical
    (finding (check spark-test) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature resistor-plug))
    (not (finding (check plug-boot-resistance))))
  =>
  (assert (ask-first (check plug-boot-resistance) (fault coil-dead)))
  (assert (ask-first (check plug-boot-resistance) (fault coil-weak))))

(defrule ask-points-before-coil
  "[common-practice] On a points engine clean and gap the points before a coil is bought."
  (logical
    (finding (check spark-test) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature breaker-points))
    (not (finding (check points-look))))
  =>
  (assert (ask-first (check points-look) (fault coil-dead)))
  (assert (ask-first (check points-look) (fault coil-weak))))

(defrule ask-condenser-before-coil
  "[common-practice] On a points engine try another condenser before a coil is bought for a spark
   that goes with heat."
  (logical
    (has (feature breaker-points))
    (finding (check spark-hot) (result gone-hot) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check condenser-test))))
  =>
  (assert (ask-first (check condenser-test) (fault coil-fails-hot))))

(defrule ask-cap-before-hot-coil
  "[common-practice] Dies after minutes: loosen the cap once before a coil is bought for heat."
  (logical
    (complained (complaint dies-hot|no-start-hot))
    (not (finding (check spark-hot) (result gone-hot)))
    (not (finding (check spark-while-dying) (result spark-goes)))
    (not (finding (check cap-loosened))))
  =>
  (assert (ask-first (check cap-loosened) (fault coil-fails-hot))))

(defrule ask-hot-spark-before-hot-coil
  "[common-practice] A coil is blamed for heat only when the spark has been seen to go hot."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-hot))))
  =>
  (assert (ask-first (check spark-hot) (fault coil-fails-hot))))

(defrule ask-dry-before-coil
  "[common-practice] Wet from rain or washing: dry it out before any part of the ignition is
   bought."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check dry-out-test))))
  =>
  (assert (ask-first (check dry-out-test) (fault coil-dead)))
  (assert (ask-first (check dry-out-test) (fault coil-weak)))
  (assert (ask-first (check dry-out-test) (fault plug-lead-bad))))

(defrule ask-fuel-before-carburettor
  "[common-practice] On fuel over a season old try fresh fuel before the carburettor comes off."
  (logical
    (finding (check fuel-age) (result over-season|month-old) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fresh-fuel-trial))))
  =>
  (assert (ask-first (check fresh-fuel-trial) (fault main-jet-blocked)))
  (assert (ask-first (check fresh-fuel-trial) (fault idle-passages-blocked)))
  (assert (ask-first (check fresh-fuel-trial) (fault metering-diaphragm-stiff))))

(defrule ask-flow-before-carburettor
  "[common-practice] See that fuel reaches the carburettor before it is taken apart."
  (logical
    (finding (check prime-test) (result fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (has (feature float-bowl))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (ask-first (check fuel-flow-at-carburettor) (fault main-jet-blocked)))
  (assert (ask-first (check fuel-flow-at-carburettor) (fault float-needle-stuck-shut)))
  (assert (ask-first (check fuel-flow-at-carburettor) (fault emulsion-tube-blocked))))

(defrule ask-leak-before-carburettor
  "[common-practice] Hunts lean: try the joints for an air leak before the carburettor comes off
   for a jet."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result runs-better) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check intake-spray))))
  =>
  (assert (ask-first (check intake-spray) (fault main-jet-blocked)))
  (assert (ask-first (check intake-spray) (fault idle-passages-blocked)))
  (assert (ask-first (check intake-spray) (fault wrong-main-jet))))

(defrule ask-solenoid-before-jet
  "[common-practice] Turn the key and listen for the solenoid under the bowl before the jet is
   blamed."
  (logical
    (has (feature afterfire-solenoid))
    (finding (check prime-test) (result fires-then-dies) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check solenoid-click))))
  =>
  (assert (ask-first (check solenoid-click) (fault main-jet-blocked))))

(defrule ask-feed-before-solenoid
  "[common-practice] A solenoid that does not click may have no volts: measure at its wire before
   it is replaced."
  (logical
    (finding (check solenoid-click) (result silent) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check solenoid-voltage))))
  =>
  (assert (ask-first (check solenoid-voltage) (fault solenoid-stuck-shut))))

(defrule ask-filters-before-screws
  "[common-practice] Look at air filter and pickup filter before a mixture screw is touched."
  (logical
    (has (feature mixture-screws))
    (finding (check mixture-screw-turns) (result far-off) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check air-filter-look))))
  =>
  (assert (ask-first (check air-filter-look) (fault mixture-screws-off))))

(defrule ask-case-before-metering
  "[common-practice] On a two-stroke that hunts lean press-test the crankcase before the
   carburettor is blamed and before it is richened."
  (logical
    (has (feature two-stroke))
    (finding (check choke-effect) (result runs-better) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check crankcase-pressure-test))))
  =>
  (assert (ask-first (check crankcase-pressure-test) (fault mixture-screws-off)))
  (assert (ask-first (check crankcase-pressure-test) (fault metering-diaphragm-stiff))))

(defrule ask-pulse-line-before-pump
  "[common-practice] A cracked pulse line makes a good pump weak: look at it before a pump is
   bought."
  (logical
    (finding (check pulse-pump-output) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check pulse-line-look))))
  =>
  (assert (ask-first (check pulse-line-look) (fault pulse-pump-diaphragm-worn))))

(defrule ask-bowl-vent-before-needle
  "[common-practice] A shut bowl vent makes a sound needle run over: blow through it before
   needle and seat are bought."
  (logical
    (finding (check overflow) (result seeps|runs-out) (sure ?s1&:(> ?s1 0.4)))
    (has (feature float-bowl))
    (not (finding (check bowl-vent))))
  =>
  (assert (ask-first (check bowl-vent) (fault float-needle-leaking))))

(defrule ask-float-before-needle
  "[common-practice] A float with fuel in it makes a sound needle run over: shake the float
   before a needle is bought."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check float-needle-leak) (result leaks) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check float-sinks))))
  =>
  (assert (ask-first (check float-sinks) (fault float-needle-leaking))))

(defrule ask-leak-down-before-rings
  "[common-practice] No engine is opened for rings on a compression gauge alone: leak-down tells
   rings from valves."
  (logical
    (finding (check compression) (result weak|very-low) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check leak-down-where))))
  =>
  (assert (ask-first (check leak-down-where) (fault rings-worn)))
  (assert (ask-first (check leak-down-where) (fault cylinder-scored)))
  (assert (ask-first (check leak-down-where) (fault exhaust-valve-burned)))
  (assert (ask-first (check leak-down-where) (fault intake-valve-leaking)))
  (assert (ask-first (check leak-down-where) (fault head-gasket-blown))))

(defrule ask-clearance-before-valves
  "[common-practice] A tight clearance holds a good valve open: set it before the head comes off
   for a burnt one."
  (logical
    (finding (check leak-down-where) (result exhaust) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check valve-clearance-exhaust))))
  =>
  (assert (ask-first (check valve-clearance-exhaust) (fault exhaust-valve-burned))))

(defrule ask-inlet-clearance-before-valves
  "[common-practice] A tight clearance holds a good inlet valve open: set it before the head
   comes off."
  (logical
    (finding (check leak-down-where) (result intake) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check valve-clearance-inlet))))
  =>
  (assert (ask-first (check valve-clearance-inlet) (fault intake-valve-leaking))))

(defrule ask-release-before-rings
  "[common-practice] Look at the decompression release before weak compression is called wear."
  (logical
    (has (feature decompression))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check decompression-works))))
  =>
  (assert (ask-first (check decompression-works) (fault rings-worn)))
  (assert (ask-first (check decompression-works) (fault cylinder-scored))))

(defrule ask-plug-tight-before-gasket
  "[common-practice] Hissing on the pull: see that the plug is tight before the head comes off."
  (logical
    (finding (check compression-feel) (result soft|none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check plug-tightness))))
  =>
  (assert (ask-first (check plug-tightness) (fault head-gasket-blown))))

(defrule ask-smoke-time-before-rings
  "[common-practice] Smoke after laying it over or overfilling is run off for ten minutes before
   rings are ordered."
  (logical
    (finding (check exhaust-smoke) (result blue|white) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check smoke-after-ten-minutes))))
  =>
  (assert (ask-first (check smoke-after-ten-minutes) (fault rings-worn)))
  (assert (ask-first (check smoke-after-ten-minutes) (fault valve-guide-worn))))

(defrule ask-oil-level-before-rings
  "[common-practice] Too much oil smokes like worn rings: dip it first."
  (logical
    (finding (check exhaust-smoke) (result blue) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check oil-level))))
  =>
  (assert (ask-first (check oil-level) (fault rings-worn)))
  (assert (ask-first (check oil-level) (fault valve-guide-worn)))
  (assert (ask-first (check oil-level) (fault breather-valve-stuck))))

(defrule ask-breather-before-seal
  "[common-practice] A stuck breather pushes oil past good seals: check it before a seal is
   pulled."
  (logical
    (finding (check oil-leak-where) (result crank-seal) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check breather-valve))))
  =>
  (assert (ask-first (check breather-valve) (fault crank-seal-oil-leak))))

(defrule ask-drive-before-seizure
  "[common-practice] Locked: free the drive and try again before the engine is called seized."
  (logical
    (finding (check crank-turn-by-hand) (result locked|tight) (sure ?s1&:(> ?s1 0.4)))
    (not (has (feature no-governor)))
    (not (finding (check drive-turns-by-hand))))
  =>
  (assert (ask-first (check drive-turns-by-hand) (fault piston-seized)))
  (assert (ask-first (check drive-turns-by-hand) (fault con-rod-broken))))

(defrule ask-plug-hole-before-locked-is-seized
  "[common-practice] Still locked with the starter off: plug out and turn it once. Fuel or oil on
   the piston locks it just as hard and costs nothing."
  (logical
    (finding (check recoil-off-turn) (result still-locked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check plug-hole-thrown)))
    (not (finding (check piston-through-port) (result scored))))
  =>
  (assert (ask-first (check plug-hole-thrown) (fault piston-seized))))

(defrule ask-impeller-before-seizure
  "[common-practice] Pump and engine share the shaft: a stone or frost in the volute locks both.
   Open the pump before the engine is called seized."
  (logical
    (has (feature water-pump-end))
    (or (finding (check rope-pull-feel) (result locked) (sure ?s1&:(> ?s1 0.4)))
        (finding (check recoil-off-turn) (result still-locked) (sure ?s1&:(> ?s1 0.4))))
    (not (finding (check impeller-look))))
  =>
  (assert (ask-first (check impeller-look) (fault piston-seized))))

(defrule ask-starter-off-before-seizure
  "[common-practice] The rope is locked: take the starter off and turn the flywheel before the
   engine is called seized."
  (logical
    (finding (check rope-pull-feel) (result locked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check recoil-off-turn))))
  =>
  (assert (ask-first (check recoil-off-turn) (fault piston-seized)))
  (assert (ask-first (check recoil-off-turn) (fault con-rod-broken)))
  (assert (ask-first (check recoil-off-turn) (fault hydraulic-lock))))

(defrule ask-plug-hole-before-seizure
  "[common-practice] Locked after standing or tipping: plug out and see what comes out of the
   hole before it is called seized."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crank-turn-by-hand) (result locked|tight) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check plug-hole-thrown))))
  =>
  (assert (ask-first (check plug-hole-thrown) (fault piston-seized))))

(defrule ask-brake-before-seizure
  "[common-practice] Hard to pull with a flywheel brake on it: hold the bar and look whether the
   pad lets go."
  (logical
    (has (feature flywheel-brake))
    (finding (check rope-pull-feel) (result hard|locked) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check flywheel-brake-look))))
  =>
  (assert (ask-first (check flywheel-brake-look) (fault piston-seized)))
  (assert (ask-first (check flywheel-brake-look) (fault recoil-binding))))

(defrule ask-piston-before-saw-carburettor
  "[common-practice] A weak saw: silencer off and a look at the piston costs five minutes and
   decides whether the carburettor is worth any work."
  (logical
    (has (feature two-stroke))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check piston-through-port))))
  =>
  (assert (ask-first (check piston-through-port) (fault mixture-screws-off)))
  (assert (ask-first (check piston-through-port) (fault metering-diaphragm-stiff)))
  (assert (ask-first (check piston-through-port) (fault rings-worn))))

(defrule ask-charge-before-starter
  "[common-practice] Charge and load the battery before starter or solenoid is bought."
  (logical
    (finding (check starter-sound) (result slow|click) (sure ?s1&:(> ?s1 0.4)))
    (has (feature battery))
    (not (finding (check battery-crank-voltage))))
  =>
  (assert (ask-first (check battery-crank-voltage) (fault starter-motor-worn)))
  (assert (ask-first (check battery-crank-voltage) (fault starter-solenoid-bad))))

(defrule ask-cables-before-starter
  "[common-practice] A corroded post robs the starter: measure the drop in cables and ground
   before a starter is bought."
  (logical
    (finding (check starter-sound) (result slow|click) (sure ?s1&:(> ?s1 0.4)))
    (finding (check battery-crank-voltage) (result holds) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check starter-cable-drop))))
  =>
  (assert (ask-first (check starter-cable-drop) (fault starter-motor-worn))))

(defrule ask-ground-before-starter
  "[common-practice] The ground side is half the circuit: measure its drop too."
  (logical
    (finding (check starter-sound) (result slow|click) (sure ?s1&:(> ?s1 0.4)))
    (finding (check starter-cable-drop) (result low) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check ground-side-drop))))
  =>
  (assert (ask-first (check ground-side-drop) (fault starter-motor-worn)))
  (assert (ask-first (check ground-side-drop) (fault starter-solenoid-bad))))

(defrule ask-feed-before-starter-solenoid
  "[common-practice] A silent solenoid may have no feed: fuse, key and interlocks first."
  (logical
    (finding (check starter-sound) (result silent) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check starter-solenoid-feed))))
  =>
  (assert (ask-first (check starter-solenoid-feed) (fault starter-solenoid-bad)))
  (assert (ask-first (check starter-solenoid-feed) (fault starter-motor-worn))))

(defrule ask-crank-free-before-starter
  "[common-practice] See that the engine turns by hand before the starter is blamed."
  (logical
    (finding (check starter-sound) (result slow|click) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (ask-first (check crank-turn-by-hand) (fault starter-motor-worn))))

(defrule ask-drain-before-charging
  "[common-practice] A battery flat after standing: look for a draw with the key off before the
   charging side is bought."
  (logical
    (finding (check battery-rest-voltage) (result flat) (sure ?s1&:(> ?s1 0.6)))
    (finding (check charging-voltage) (result charges) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check battery-drain))))
  =>
  (assert (ask-first (check battery-drain) (fault battery-sulphated))))

(defrule ask-coil-output-before-regulator
  "[common-practice] Measure the alternating volts ahead of the regulator before either part is
   bought."
  (logical
    (finding (check charging-voltage) (result low|none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check charging-coil-output))))
  =>
  (assert (ask-first (check charging-coil-output) (fault charging-regulator-bad)))
  (assert (ask-first (check charging-coil-output) (fault charging-coil-bad))))

(defrule ask-breaker-before-generator
  "[common-practice] See that the breaker is in before the generator is opened."
  (logical
    (finding (check output-voltage) (result none) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check generator-breaker))))
  =>
  (assert (ask-first (check generator-breaker) (fault generator-brushes-worn)))
  (assert (ask-first (check generator-breaker) (fault residual-magnetism-lost)))
  (assert (ask-first (check generator-breaker) (fault regulator-or-capacitor-failed)))
  (assert (ask-first (check generator-breaker) (fault generator-winding-open))))

(defrule ask-speed-before-generator
  "[common-practice] Low volts: read the engine speed or frequency before a regulator or
   capacitor is bought."
  (logical
    (finding (check output-voltage) (result low) (sure ?s1&:(> ?s1 0.4)))
    (not (has (feature inverter-generator)))
    (not (finding (check output-frequency))))
  =>
  (assert (ask-first (check output-frequency) (fault regulator-or-capacitor-failed)))
  (assert (ask-first (check output-frequency) (fault generator-winding-open)))
  (assert (ask-first (check output-frequency) (fault generator-brushes-worn))))

(defrule ask-brushes-before-winding
  "[common-practice] Look at the brushes before a winding is called open: lifted brushes look the
   same at the sockets."
  (logical
    (finding (check output-voltage) (result none) (sure ?s1&:(> ?s1 0.4)))
    (finding (check generator-breaker) (result in) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature inverter-generator)))
    (not (finding (check generator-brushes))))
  =>
  (assert (ask-first (check generator-brushes) (fault generator-winding-open))))

(defrule ask-supply-before-washer-pump
  "[common-practice] Measure what the tap gives in a minute before the pump is opened."
  (logical
    (finding (check pump-delivery) (result weak|pulsing) (sure ?s1&:(> ?s1 0.4)))
    (has (feature pressure-pump-end))
    (not (finding (check water-supply-flow))))
  =>
  (assert (ask-first (check water-supply-flow) (fault pump-valves-worn)))
  (assert (ask-first (check water-supply-flow) (fault unloader-stuck))))

(defrule ask-nozzle-before-washer-pump
  "[common-practice] A worn or wrong nozzle gives low pressure with a sound pump: look at it
   first."
  (logical
    (finding (check pump-pressure) (result low) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check nozzle-look))))
  =>
  (assert (ask-first (check nozzle-look) (fault pump-valves-worn)))
  (assert (ask-first (check nozzle-look) (fault unloader-stuck))))

(defrule ask-suction-before-impeller
  "[common-practice] Fill it and test the suction hose for air before the pump is opened for its
   impeller."
  (logical
    (finding (check pump-delivery) (result weak|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature water-pump-end))
    (not (finding (check suction-hose))))
  =>
  (assert (ask-first (check suction-hose) (fault impeller-worn-or-jammed)))
  (assert (ask-first (check suction-hose) (fault pump-seal-worn))))

(defrule ask-linkage-before-governor-gear
  "[common-practice] Look at rod, spring and arm before the crankcase is opened for the
   governor."
  (logical
    (finding (check top-speed) (result high) (sure ?s1&:(> ?s1 0.4)))
    (has (feature governor-flyweight))
    (not (finding (check governor-arm-set))))
  =>
  (assert (ask-first (check governor-arm-set) (fault governor-gear-failed))))

(defrule ask-load-before-engine
  "[common-practice] Weak at work: take the load off and listen before the engine is opened."
  (logical
    (complained (complaint weak|dies-under-load))
    (has (feature belt-drive|water-pump-end|pressure-pump-end|generator-end|hydraulic-end))
    (not (finding (check load-removed-run))))
  =>
  (assert (ask-first (check load-removed-run) (fault rings-worn)))
  (assert (ask-first (check load-removed-run) (fault exhaust-valve-burned)))
  (assert (ask-first (check load-removed-run) (fault carbon-in-chamber))))

(defrule ask-key-before-carburettor
  "[common-practice] It struck something: look at the flywheel key before carburettor or coil is
   bought."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result jumps) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check flywheel-key-look))))
  =>
  (assert (ask-first (check flywheel-key-look) (fault main-jet-blocked)))
  (assert (ask-first (check flywheel-key-look) (fault timing-gear-slipped)))
  (assert (ask-first (check flywheel-key-look) (fault coil-weak))))

(defrule ask-drain-before-bowl-off
  "[common-practice] There is a drain on the bowl: see what runs out of it before the bowl comes
   off and dirt and water are lost in the rag."
  (logical
    (has (feature bowl-drain))
    (not (finding (check bowl-drain-flow)))
    (not (finding (check bowl-inside))))
  =>
  (assert (ask-first (check bowl-drain-flow) (fault bowl-water-or-sediment))))
