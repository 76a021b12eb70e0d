; Results that cannot both be true. One of the two checks was misread or made under other
; conditions and wants making again; the text says which is the likelier.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/clashes.json. Check with: pullcord vet

(defrule clash-runs-without-spark
  "[common-practice] An engine that runs has a spark. Try the tester again: earth it well, switch
   on, pull briskly."
  (logical
    (finding (check runs-at-all) (result runs) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result none) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check spark-hot) (result gone-hot))))
  =>
  (assert (clash (check-a runs-at-all) (check-b spark-test))))

(defrule clash-primed-without-spark
  "[common-practice] It fired on the prime, so it has a spark. Try the tester again."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result none) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a prime-test) (check-b spark-test))))

(defrule clash-runs-without-compression
  "[common-practice] With next to no compression and no release on the engine it could not run.
   Measure again with the throttle open and the gauge screwed tight."
  (logical
    (finding (check runs-at-all) (result runs) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result very-low) (sure ?s2&:(> ?s2 0.6)))
    (not (has (feature decompression))))
  =>
  (assert (clash (check-a runs-at-all) (check-b compression))))

(defrule clash-primed-without-compression
  "[common-practice] It fired on the prime, so it presses. Measure the compression again with the
   throttle open."
  (logical
    (finding (check prime-test) (result starts-and-stays) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result very-low) (sure ?s2&:(> ?s2 0.6)))
    (not (has (feature decompression))))
  =>
  (assert (clash (check-a prime-test) (check-b compression))))

(defrule clash-runs-though-locked
  "[common-practice] A locked crankshaft does not run. Was it locked since, or was only the
   starter stuck?"
  (logical
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crank-turn-by-hand) (result locked) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a runs-at-all) (check-b crank-turn-by-hand))))

(defrule clash-normal-pull-locked-crank
  "[common-practice] A rope that pulls normally turns the crankshaft. Look whether the pawls
   catch, and try the crank again."
  (logical
    (finding (check rope-pull-feel) (result normal) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crank-turn-by-hand) (result locked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a rope-pull-feel) (check-b crank-turn-by-hand))))

(defrule clash-starter-off-and-crank
  "[common-practice] With the starter off it turned, by hand on the crank it was locked: it is
   one or the other. Try both with the plug out and the drive free."
  (logical
    (finding (check recoil-off-turn) (result turns) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crank-turn-by-hand) (result locked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a recoil-off-turn) (check-b crank-turn-by-hand))))

(defrule clash-good-gauge-no-feel
  "[common-practice] The gauge is good, but by hand there is nothing to feel. Feel again with the
   plug tight."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (finding (check compression-feel) (result none) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature decompression))))
  =>
  (assert (clash (check-a compression) (check-b compression-feel))))

(defrule clash-low-gauge-springs-back
  "[common-practice] It springs back hard by hand, so the gauge or its seal is wrong."
  (logical
    (finding (check compression) (result very-low) (sure ?s1&:(> ?s1 0.6)))
    (finding (check compression-feel) (result springs-back) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature decompression))))
  =>
  (assert (clash (check-a compression) (check-b compression-feel))))

(defrule clash-good-gauge-leaks-badly
  "[common-practice] A cylinder that leaks badly does not give a good gauge. Make sure the piston
   stood at top dead centre on the compression stroke."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (finding (check leak-down) (result leaks-badly) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a leak-down) (check-b compression))))

(defrule clash-low-gauge-tight-cylinder
  "[common-practice] A tight cylinder with no release gives a good gauge. Measure again with
   throttle and choke open and a tight adaptor."
  (logical
    (finding (check compression) (result very-low) (sure ?s1&:(> ?s1 0.6)))
    (finding (check leak-down) (result tight) (sure ?s2&:(> ?s2 0.6)))
    (not (has (feature decompression)))
    (not (finding (check valve-motion) (result one-short-or-stuck|pushrod-off))))
  =>
  (assert (clash (check-a compression) (check-b leak-down))))

(defrule clash-tight-but-heard-leaking
  "[common-practice] The tester says tight, yet air was heard getting out. Feel at the adaptor
   first: the hiss may be there."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6)))
    (finding (check leak-down-where) (result exhaust|intake|breather|head-joint)
      (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a leak-down) (check-b leak-down-where))))

(defrule clash-leaks-badly-from-nowhere
  "[common-practice] Air that goes in must come out somewhere: at exhaust, intake, breather, head
   joint or the adaptor itself. Listen again."
  (logical
    (finding (check leak-down) (result leaks-badly) (sure ?s1&:(> ?s1 0.6)))
    (finding (check leak-down-where) (result nowhere) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a leak-down) (check-b leak-down-where))))

(defrule clash-good-gauge-pushrod-off
  "[common-practice] With a pushrod off, one valve stays shut and the reading cannot be trusted.
   Look at the valves again."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (finding (check valve-motion) (result pushrod-off) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a compression) (check-b valve-motion))))

(defrule clash-spark-with-switch-off
  "[common-practice] With the switch off there should be no spark. Either it was on at the test,
   or it does not stop the engine: try that before anything is run."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check stop-switch-position) (result off) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a spark-test) (check-b stop-switch-position))))

(defrule clash-spark-and-kill-lead
  "[common-practice] It jumped with the stop wire on, so taking it off could not bring the spark
   back. Try both again, one after the other."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check spark-with-kill-lead-off) (result now-good) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check spark-hot) (result gone-hot))))
  =>
  (assert (clash (check-a spark-test) (check-b spark-with-kill-lead-off))))

(defrule clash-spark-and-earthed-stop-wire
  "[common-practice] A stop wire that lies to earth leaves no spark. Measure again with the coil
   unplugged from it, or look for a wire that touches only now and then."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check kill-circuit-resistance) (result leaks-to-ground) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a spark-test) (check-b kill-circuit-resistance))))

(defrule clash-spark-and-open-coil
  "[common-practice] A coil with an open secondary does not jump the tester. Measure at the bare
   lead without boot or plug."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check coil-secondary) (result open-or-high) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a spark-test) (check-b coil-secondary))))

(defrule clash-spark-and-dead-magnets
  "[common-practice] Magnets too weak for the screwdriver do not jump the tester. Hold the blade
   to the magnet poles and try again."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check flywheel-magnet-pull) (result weak) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a spark-test) (check-b flywheel-magnet-pull))))

(defrule clash-hot-spark-two-ways
  "[common-practice] The spark went with heat in one test and stayed while it died in the other.
   Repeat with the in-line tester on a hot engine."
  (logical
    (finding (check spark-hot) (result gone-hot) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-while-dying) (result spark-stays) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a spark-hot) (check-b spark-while-dying))))

(defrule clash-key-sheared-marks-right
  "[common-practice] If the key is sheared the marks seldom still meet. Look at the key with the
   flywheel off."
  (logical
    (finding (check flywheel-key-look) (result sheared) (sure ?s1&:(> ?s1 0.4)))
    (finding (check timing-marks) (result right) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a flywheel-key-look) (check-b timing-marks))))

(defrule clash-lean-and-black-smoke
  "[common-practice] Black smoke is too rich; running only on the choke is too lean. Look at the
   smoke with the choke open."
  (logical
    (finding (check choke-effect) (result runs-only-choked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result black) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check air-filter-look) (result oil-or-fuel-soaked))))
  =>
  (assert (clash (check-a choke-effect) (check-b exhaust-smoke))))

(defrule clash-choked-runs-prime-nothing
  "[common-practice] It runs while choked, so a prime must at least fire. Prime it again, a few
   drops, switch on."
  (logical
    (finding (check choke-effect) (result runs-only-choked|runs-better) (sure ?s1&:(> ?s1 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a choke-effect) (check-b prime-test))))

(defrule clash-overflow-without-flow
  "[common-practice] Fuel ran out of the carburettor, yet none came from the line. One of them
   was looked at with the tap shut."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a overflow) (check-b fuel-flow-at-carburettor))))

(defrule clash-overflow-empty-bowl
  "[common-practice] A carburettor that runs over has a full bowl. Open the drain again with the
   tap open; dirt may sit in the drain itself."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check bowl-drain-flow) (result none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a overflow) (check-b bowl-drain-flow))))

(defrule clash-overflow-needle-holds
  "[common-practice] The needle holds and the float is whole, yet it runs over. Test the needle
   again in its normal position, with the weight of its own float."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check float-needle-leak) (result holds) (sure ?s2&:(> ?s2 0.4)))
    (finding (check float-sinks) (result floats) (sure ?s3&:(> ?s3 0.4)))
    (not (finding (check float-level) (result high)))
    (not (finding (check bowl-vent) (result blocked))))
  =>
  (assert (clash (check-a overflow) (check-b float-needle-leak))))

(defrule clash-flow-from-empty-tank
  "[common-practice] A steady flow from an empty tank: look into the tank again."
  (logical
    (finding (check fuel-level) (result empty) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a fuel-level) (check-b fuel-flow-at-carburettor))))

(defrule clash-flow-through-shut-tap
  "[common-practice] A steady flow past a shut tap: the lever was read wrongly, or the tap no
   longer shuts."
  (logical
    (finding (check fuel-tap-position) (result shut) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a fuel-tap-position) (check-b fuel-flow-at-carburettor))))

(defrule clash-drain-flows-line-does-not
  "[common-practice] The bowl fills and empties freely, so the line flows. Look at the line again
   with the tap open."
  (logical
    (finding (check bowl-drain-flow) (result flows-clean) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result none) (sure ?s2&:(> ?s2 0.4)))
    (has (feature gravity-feed)))
  =>
  (assert (clash (check-a bowl-drain-flow) (check-b fuel-flow-at-carburettor))))

(defrule clash-vent-clear-cap-cures
  "[common-practice] Loosening the cap keeps it running, so the vent does not breathe, clear as
   it looks. Suck and blow through it."
  (logical
    (finding (check cap-loosened) (result runs-on|hiss) (sure ?s1&:(> ?s1 0.4)))
    (finding (check vent-look) (result clear) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a cap-loosened) (check-b vent-look))))

(defrule clash-fuel-fresh-and-stale
  "[common-practice] Said to be fresh, but it smells stale: topping up old fuel does not make it
   new. Ask again what was in the tank before."
  (logical
    (finding (check fuel-age) (result fresh) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-look-and-smell) (result stale) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a fuel-age) (check-b fuel-look-and-smell))))

(defrule clash-keeps-running-no-fire
  "[common-practice] It keeps running in one answer and does not fire in the other. Note which
   was before and which is now."
  (logical
    (finding (check when-it-dies) (result keeps-running) (sure ?s1&:(> ?s1 0.4)))
    (finding (check runs-at-all) (result no-fire|fires-then-dies) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a when-it-dies) (check-b runs-at-all))))

(defrule clash-speed-and-frequency
  "[published navedtra-14177 p. 3-14] Frequency is engine speed; the one cannot be right and the
   other wrong. Read both at the same time with no load."
  (logical
    (finding (check output-frequency) (result right) (sure ?s1&:(> ?s1 0.6)))
    (finding (check top-speed) (result low|high) (sure ?s2&:(> ?s2 0.6)))
    (has (feature generator-end))
    (not (has (feature inverter-generator))))
  =>
  (assert (clash (check-a output-frequency) (check-b top-speed))))

(defrule clash-frequency-and-right-speed
  "[published navedtra-14177 p. 3-14] The engine speed is right but the frequency is not: read
   both again at once, and check the pole count the speed was judged by."
  (logical
    (finding (check top-speed) (result right) (sure ?s1&:(> ?s1 0.6)))
    (finding (check output-frequency) (result low|high) (sure ?s2&:(> ?s2 0.6)))
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (not (finding (check generator-load-asked) (result over-rating))))
  =>
  (assert (clash (check-a output-frequency) (check-b top-speed))))

(defrule clash-breaker-out-voltage-right
  "[common-practice] Behind a tripped breaker the sockets are dead. Was the voltage read before
   the breaker, or reset since?"
  (logical
    (finding (check generator-breaker) (result tripped) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result right) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a generator-breaker) (check-b output-voltage))))

(defrule clash-flat-battery-brisk-starter
  "[common-practice] A flat battery does not spin the starter briskly. Measure the battery again
   at its own posts."
  (logical
    (finding (check battery-rest-voltage) (result flat) (sure ?s1&:(> ?s1 0.6)))
    (finding (check starter-sound) (result turns-engine) (sure ?s2&:(> ?s2 0.4)))
    (finding (check cranking-speed) (result brisk) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (clash (check-a battery-rest-voltage) (check-b starter-sound))))

(defrule clash-starter-runs-unfed
  "[common-practice] The starter turned, so its solenoid was fed. Measure again while the key is
   held."
  (logical
    (finding (check starter-solenoid-feed) (result not-fed) (sure ?s1&:(> ?s1 0.6)))
    (finding (check starter-sound) (result turns-engine|whirrs) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a starter-solenoid-feed) (check-b starter-sound))))

(defrule clash-dry-pump-delivers
  "[common-practice] A dry pump delivers nothing. Look again whether it is full."
  (logical
    (finding (check pump-primed) (result dry) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-delivery) (result steady) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a pump-primed) (check-b pump-delivery))))

(defrule clash-right-pressure-no-water
  "[common-practice] The gauge is right but little comes out: the nozzle is shut, or the gauge
   was read with the trigger off."
  (logical
    (finding (check pump-pressure) (result right) (sure ?s1&:(> ?s1 0.6)))
    (finding (check pump-delivery) (result none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a pump-pressure) (check-b pump-delivery))))

(defrule clash-nothing-struck-bent-crank
  "[common-practice] A crankshaft does not bend by itself. Ask again, without blame, what it
   hit."
  (logical
    (finding (check struck-something) (result no) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crankshaft-run-out) (result bent) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a struck-something) (check-b crankshaft-run-out))))

(defrule clash-shut-silencer-full-speed
  "[common-practice] With the silencer shut it could not reach its speed. Look through the
   silencer again."
  (logical
    (finding (check muffler-look) (result blocked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result right|high) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a muffler-look) (check-b top-speed))))

(defrule clash-shut-throttle-full-speed
  "[common-practice] With a throttle plate that does not open it could not reach its speed. Watch
   the plate again while the lever is worked."
  (logical
    (finding (check throttle-plate-travel) (result does-not-open) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result right|high) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a throttle-plate-travel) (check-b top-speed))))

(defrule clash-clean-filter-helps-off
  "[common-practice] The filter looks clean, yet it runs better without it. Hold it to the light,
   or try a new one: paper soaked fine with dust looks clean."
  (logical
    (finding (check air-filter-look) (result clean) (sure ?s1&:(> ?s1 0.4)))
    (finding (check filter-off-run) (result runs-better) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a air-filter-look) (check-b filter-off-run))))

(defrule clash-clear-silencer-helps-off
  "[common-practice] The silencer looks clear, yet it runs better without it. Look at the screen
   and the port, and blow through the silencer."
  (logical
    (finding (check muffler-look) (result clear) (sure ?s1&:(> ?s1 0.4)))
    (finding (check muffler-off-run) (result runs-better) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check spark-arrester-look) (result carboned)))
    (not (finding (check exhaust-port-look) (result carboned))))
  =>
  (assert (clash (check-a muffler-look) (check-b muffler-off-run))))

(defrule clash-bulb-fills-empty-tank
  "[common-practice] The purge bulb fills with fuel, yet the tank is empty: look into the tank
   again."
  (logical
    (finding (check purge-bulb-feel) (result fills) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-level) (result empty) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a purge-bulb-feel) (check-b fuel-level))))

(defrule clash-dry-tank-flooded
  "[common-practice] An empty tank does not flood an engine. Was it emptied since?"
  (logical
    (finding (check fuel-level) (result empty) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result runs-out) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a fuel-level) (check-b overflow))))

(defrule clash-belt-off-tool-turns
  "[common-practice] The belt is off, so the tool cannot have turned as it should. Look which
   belt it was."
  (logical
    (finding (check belt-look) (result off) (sure ?s1&:(> ?s1 0.4)))
    (finding (check tool-turns) (result as-it-should) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a belt-look) (check-b tool-turns))))

(defrule clash-chain-brake-tool-turns
  "[common-practice] With the chain brake on the chain does not go round. Look at the brake
   again."
  (logical
    (finding (check chain-brake-state) (result on) (sure ?s1&:(> ?s1 0.4)))
    (finding (check tool-turns) (result as-it-should) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a chain-brake-state) (check-b tool-turns))))

(defrule clash-stops-by-switch-contacts-open
  "[common-practice] The switch stops it, yet its contacts never close: measure again at the stop
   wire end, down to bare metal of the engine."
  (logical
    (finding (check stop-switch-works) (result stops) (sure ?s1&:(> ?s1 0.4)))
    (finding (check stop-switch-continuity) (result stays-open) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a stop-switch-works) (check-b stop-switch-continuity))))

(defrule clash-no-smoke-still-smokes
  "[common-practice] No smoke in one look and still smoking after ten minutes in the other: note
   when each was seen."
  (logical
    (finding (check exhaust-smoke) (result none) (sure ?s1&:(> ?s1 0.4)))
    (finding (check smoke-after-ten-minutes) (result still-smokes) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a exhaust-smoke) (check-b smoke-after-ten-minutes))))

(defrule clash-oil-none-pressure-holds
  "[common-practice] Oil pressure with no oil on the dipstick: wipe it and dip again on level
   ground."
  (logical
    (finding (check oil-level) (result none) (sure ?s1&:(> ?s1 0.4)))
    (finding (check oil-pressure) (result holds) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (clash (check-a oil-level) (check-b oil-pressure))))

(defrule clash-governor-slipped-speed-right
  "[common-practice] A slipped governor arm does not hold the right speed. Read the speed again
   with a tachometer, no load."
  (logical
    (finding (check governor-arm-set) (result slipped) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result right) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (clash (check-a governor-arm-set) (check-b top-speed))))
