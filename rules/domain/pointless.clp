; Checks that cannot be made, or can say nothing new, as things stand. They come back when the
; finding that bars them is put right.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/pointless.json. Check with: pullcord vet

(defrule pointless-running-checks-no-fire
  "[common-practice] It does not fire, so nothing can be tried that needs it running; fresh fuel
   alone may still make it run."
  (logical
    (finding (check runs-at-all) (result no-fire) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check choke-effect) (result runs-only-choked|runs-better)))
    (not (finding (check prime-test) (result starts-and-stays)))
    (check-engine (check ?c&~fresh-fuel-trial) (engine running)))
  =>
  (assert (pointless (check ?c))))

(defrule pointless-hot-checks-no-fire
  "[common-practice] It does not fire cold, so it cannot be made hot."
  (logical
    (finding (check runs-at-all) (result no-fire) (sure ?s1&:(> ?s1 0.4)))
    (not (complained (complaint no-start-hot|dies-hot)))
    (not (finding (check restart-after-cooling) (result starts-when-cool)))
    (check-engine (check ?c) (engine hot)))
  =>
  (assert (pointless (check ?c))))

(defrule pointless-long-checks-dies-at-once
  "[common-practice] It dies within seconds: no time to read a speed, a voltage or a pressure."
  (logical
    (finding (check when-it-dies) (result within-seconds) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check choke-effect) (result runs-only-choked))))
  =>
  (assert (pointless (check top-speed)))
  (assert (pointless (check idle-speed)))
  (assert (pointless (check speed-steady)))
  (assert (pointless (check output-voltage)))
  (assert (pointless (check output-frequency)))
  (assert (pointless (check charging-voltage)))
  (assert (pointless (check pump-pressure)))
  (assert (pointless (check pump-delivery)))
  (assert (pointless (check load-removed-run)))
  (assert (pointless (check head-temperature)))
  (assert (pointless (check crankcase-vacuum))))

(defrule pointless-vent-dies-at-once
  "[common-practice] It dies within seconds; a shut vent takes minutes to show."
  (logical
    (finding (check when-it-dies) (result within-seconds) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-level) (result enough) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (pointless (check cap-loosened)))
  (assert (pointless (check spark-hot))))

(defrule pointless-fuel-trials-no-spark
  "[common-practice] Without a spark nothing fires: prime, choke and other petrol tell nothing until it
   has one."
  (logical
    (finding (check spark-test) (result none) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check runs-at-all) (result runs|fires-then-dies))))
  =>
  (assert (pointless (check prime-test)))
  (assert (pointless (check choke-effect)))
  (assert (pointless (check clear-flood-start)))
  (assert (pointless (check fresh-fuel-trial))))

(defrule pointless-cutout-before-spark
  "[common-practice] First see whether it has a spark at all; the cut-out is unplugged when it has
   none."
  (logical
    (complained (complaint no-start-cold))
    (not (finding (check spark-test))))
  =>
  (assert (pointless (check oil-cutout-disconnected))))

(defrule pointless-prime-on-runner
  "[common-practice] It starts and runs; a prime would only show what is seen already."
  (logical
    (finding (check runs-at-all) (result runs) (sure ?s1&:(> ?s1 0.4)))
    (not (complained (complaint no-start-cold|hard-start-cold|no-start-hot|runs-on-choke-only))))
  =>
  (assert (pointless (check prime-test))))

(defrule pointless-fresh-fuel-on-fresh
  "[common-practice] Fuel fresh in the can and fresh in the tank: changing it again tells
   nothing."
  (logical
    (finding (check fuel-age) (result fresh) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-look-and-smell) (result fresh) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check water-in-sample) (result water|cloudy))))
  =>
  (assert (pointless (check fresh-fuel-trial))))

(defrule pointless-flood-start-dry-plug
  "[common-practice] The plug is dry: there is no flood to clear."
  (logical
    (finding (check plug-look) (result tan-dry) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result dry) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (pointless (check clear-flood-start))))

(defrule pointless-dry-out-not-wet
  "[common-practice] It has been neither washed nor rained on: drying it out changes nothing."
  (logical
    (finding (check damp-or-washed) (result no) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check altitude-and-weather) (result cold-damp))))
  =>
  (assert (pointless (check dry-out-test))))

(defrule pointless-ring-and-bore-tight
  "[common-practice] The cylinder is tight: no reason to look at rings, bore or valve seats."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6)))
    (not (complained (complaint uses-oil|smoke-blue|knocks))))
  =>
  (assert (pointless (check bore-look)))
  (assert (pointless (check ring-look)))
  (assert (pointless (check valve-seat-look)))
  (assert (pointless (check piston-crown-look))))

(defrule pointless-flow-checks-tank-empty
  "[common-practice] The tank is empty: fill it before the flow is looked at."
  (logical
    (finding (check fuel-level) (result empty)))
  =>
  (assert (pointless (check fuel-flow-at-carburettor)))
  (assert (pointless (check fuel-flow-measured)))
  (assert (pointless (check tap-flow)))
  (assert (pointless (check bowl-drain-flow)))
  (assert (pointless (check purge-bulb-feel)))
  (assert (pointless (check air-in-line)))
  (assert (pointless (check pulse-pump-output)))
  (assert (pointless (check overflow)))
  (assert (pointless (check float-needle-leak)))
  (assert (pointless (check primer-feel))))

(defrule pointless-start-tank-empty
  "[common-practice] The tank is empty: fill it before it is tried again."
  (logical
    (finding (check fuel-level) (result empty)))
  =>
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check when-it-dies)))
  (assert (pointless (check choke-effect)))
  (assert (pointless (check cap-loosened))))

(defrule pointless-flow-checks-tap-shut
  "[common-practice] The tap is shut: open it before flow or overflow is looked at."
  (logical
    (finding (check fuel-tap-position) (result shut)))
  =>
  (assert (pointless (check fuel-flow-at-carburettor)))
  (assert (pointless (check fuel-flow-measured)))
  (assert (pointless (check tap-flow)))
  (assert (pointless (check overflow)))
  (assert (pointless (check bowl-drain-flow))))

(defrule pointless-start-tap-shut
  "[common-practice] The tap is shut: open it and wait for the bowl to fill before it is tried
   again."
  (logical
    (finding (check fuel-tap-position) (result shut)))
  =>
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check when-it-dies))))

(defrule pointless-spark-switch-off
  "[common-practice] The stop switch is off: put it to run before a spark or a start is looked
   for."
  (logical
    (finding (check stop-switch-position) (result off)))
  =>
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check spark-with-new-plug)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-spark-interlock-open
  "[common-practice] The interlock is not made: hold the bar, take the seat or free the drive
   before a spark or a start is looked for."
  (logical
    (finding (check interlock-state) (result not-made)))
  =>
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check spark-with-new-plug)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-spark-oil-low
  "[common-practice] The oil is low and the cut-out holds the spark down: fill the oil first."
  (logical
    (finding (check oil-level) (result low|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature oil-cutout)))
  =>
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check spark-with-new-plug)))
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-coil-checks-good-spark
  "[common-practice] It jumps the tester: coil, magnets and stop circuit have passed. They matter
   again only if the spark goes with heat or shaking."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (not (complained (complaint dies-hot|no-start-hot|dies-tilted|will-not-stop)))
    (not (finding (check spark-while-dying) (result spark-goes)))
    (not (finding (check spark-hot) (result gone-hot))))
  =>
  (assert (pointless (check spark-with-kill-lead-off)))
  (assert (pointless (check spark-boot-shield-off)))
  (assert (pointless (check oil-cutout-disconnected)))
  (assert (pointless (check flywheel-magnet-pull)))
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-points-checks-good-spark
  "[common-practice] It jumps the tester and keeps doing so, so points and condenser can wait."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (has (feature breaker-points))
    (not (complained (complaint dies-hot|no-start-hot|hard-start-cold|backfires-intake)))
    (not (finding (check spark-while-dying) (result spark-goes))))
  =>
  (assert (pointless (check condenser-test)))
  (assert (pointless (check points-look))))

(defrule pointless-coil-checks-kill-lead
  "[common-practice] The coil sparks with its stop wire off: there is nothing more to ask of the
   coil. Follow the wire."
  (logical
    (finding (check spark-with-kill-lead-off) (result now-good) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check coil-air-gap)))
  (assert (pointless (check flywheel-magnet-pull)))
  (assert (pointless (check spark-with-new-plug)))
  (assert (pointless (check spark-boot-shield-off)))
  (assert (pointless (check plug-boot-resistance))))

(defrule pointless-coil-checks-new-plug
  "[common-practice] A new plug brought the spark: the coil and its circuit are not the fault."
  (logical
    (finding (check spark-with-new-plug) (result now-good) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check coil-air-gap)))
  (assert (pointless (check flywheel-magnet-pull)))
  (assert (pointless (check spark-with-kill-lead-off)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-coil-checks-shield
  "[common-practice] With the shield off the boot it sparks: the boot is the fault, the coil is
   not."
  (logical
    (finding (check spark-boot-shield-off) (result now-good) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check coil-air-gap)))
  (assert (pointless (check flywheel-magnet-pull)))
  (assert (pointless (check spark-with-kill-lead-off)))
  (assert (pointless (check kill-circuit-resistance))))

(defrule pointless-coil-checks-cutout
  "[common-practice] With the oil cut-out unplugged the spark is back: leave the coil alone."
  (logical
    (finding (check oil-cutout-disconnected) (result spark-back) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check coil-primary)))
  (assert (pointless (check coil-secondary)))
  (assert (pointless (check coil-air-gap)))
  (assert (pointless (check flywheel-magnet-pull)))
  (assert (pointless (check spark-with-new-plug))))

(defrule pointless-fuel-when-only-the-tool-fails
  "[common-practice] The owner blames only the starter, the charging or the driven end, and the
   engine runs up as it should: leave its fuel alone."
  (logical
    (exists (complained (complaint starter-clicks|starter-spins|not-charging|pulls-free|drive-slips
      |cuts-badly|pump-weak|no-output)))
    (not (complained (complaint ~starter-clicks&~starter-spins&~not-charging&~pulls-free
      &~drive-slips&~cuts-badly&~pump-weak&~no-output)))
    (not (finding (check top-speed|output-frequency) (result low)))
    (not (finding (check speed-steady) (result hunts)))
    (not (finding (check runs-at-all) (result no-fire|fires-then-dies)))
    (not (finding (check when-it-dies) (result ~keeps-running))))
  =>
  (assert (pointless (check fuel-age)))
  (assert (pointless (check fuel-look-and-smell)))
  (assert (pointless (check water-in-sample)))
  (assert (pointless (check fresh-fuel-trial)))
  (assert (pointless (check cap-loosened)))
  (assert (pointless (check bowl-drain-flow)))
  (assert (pointless (check choked-starts-tried)))
  (assert (pointless (check choke-effect))))

(defrule pointless-fuel-not-in-question
  "[common-practice] What the owner complains of does not come from old or dirty petrol: its age
   can be left alone."
  (logical
    (exists (complained (complaint races|will-not-stop|will-not-turn|pulls-hard|vibrates|noisy
      |leaks-oil|uses-oil|smoke-blue|creeps-at-idle)))
    (not (complained (complaint ~races&~will-not-stop&~will-not-turn&~pulls-hard&~vibrates&~noisy
      &~leaks-oil&~uses-oil&~smoke-blue&~creeps-at-idle)))
    (not (finding (check runs-at-all) (result no-fire|fires-then-dies)))
    (not (finding (check when-it-dies) (result ~keeps-running))))
  =>
  (assert (pointless (check fuel-age)))
  (assert (pointless (check water-in-sample)))
  (assert (pointless (check fresh-fuel-trial)))
  (assert (pointless (check cap-loosened))))

(defrule pointless-starter-when-it-runs
  "[common-practice] It is started and complained of as it runs: starter and battery are not in
   question."
  (logical
    (exists (complained (complaint ~not-charging) (runs yes)))
    (not (complained (runs no|dies|unknown)))
    (not (complained (complaint not-charging|hard-start-cold|wrong-frequency|no-output))))
  =>
  (assert (pointless (check starter-sound)))
  (assert (pointless (check battery-rest-voltage)))
  (assert (pointless (check battery-crank-voltage)))
  (assert (pointless (check cranking-speed)))
  (assert (pointless (check starter-cable-drop)))
  (assert (pointless (check ground-side-drop)))
  (assert (pointless (check solenoid-stud-drop))))

(defrule pointless-how-it-starts-when-it-runs
  "[common-practice] The owner has it running and does not say that it dies: trying whether it
   starts, warm or cold, or waiting for it to die answers nothing that was asked."
  (logical
    (exists (complained (runs yes)))
    (not (complained (runs no|dies|unknown)))
    (not (complained (complaint hard-start-cold))))
  =>
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check when-it-dies)))
  (assert (pointless (check restart-after-cooling))))

(defrule pointless-start-when-it-cannot-be-turned
  "[common-practice] It is brought in because it cannot be turned over: what needs it started or
   spun waits until it can."
  (logical
    (exists (complained (complaint will-not-turn|pulls-free|starter-clicks|starter-spins)))
    (not (complained (complaint ~will-not-turn&~pulls-free&~starter-clicks&~starter-spins)))
    (not (finding (check recoil-off-turn) (result turns)))
    (not (finding (check starter-sound) (result turns-engine))))
  =>
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check spark-with-new-plug)))
  (assert (pointless (check starting-drill-shown))))

(defrule pointless-petrol-not-in-question
  "[common-practice] Shaking, noise, racing, a stiff rope or an oil leak does not come from the
   petrol: leave can, bowl and choke habits alone."
  (logical
    (exists (complained (complaint races|will-not-stop|will-not-turn|pulls-hard|vibrates|noisy
      |leaks-oil|creeps-at-idle)))
    (not (complained (complaint ~races&~will-not-stop&~will-not-turn&~pulls-hard&~vibrates&~noisy
      &~leaks-oil&~creeps-at-idle)))
    (not (finding (check runs-at-all) (result no-fire|fires-then-dies)))
    (not (finding (check when-it-dies) (result ~keeps-running))))
  =>
  (assert (pointless (check fuel-look-and-smell)))
  (assert (pointless (check bowl-drain-flow)))
  (assert (pointless (check bowl-inside)))
  (assert (pointless (check choked-starts-tried))))
