; Checks that must wait until something found before them is put right: a locked engine, a flat
; battery, a dry pump, a leaking case.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/pointless-until.json. Check with: pullcord vet

(defrule pointless-everything-locked
  "[common-practice] The engine is locked: nothing that needs it turned can be tried."
  (logical
    (finding (check crank-turn-by-hand) (result locked) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-feel)))
  (assert (pointless (check compression-wet)))
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check cranking-speed)))
  (assert (pointless (check when-it-dies))))

(defrule pointless-rope-does-not-catch
  "[common-practice] The rope does not turn the engine; put the starter right before anything is
   tried with it."
  (logical
    (finding (check rope-pull-feel) (result free) (sure ?s1&:(> ?s1 0.4)))
    (not (has (feature electric-start)))
    (not (finding (check recoil-off-turn) (result turns))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-feel)))
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test))))

(defrule pointless-rope-broken
  "[common-practice] With rope or spring broken nothing can be tried by pulling."
  (logical
    (finding (check rope-and-spring-look) (result broken) (sure ?s1&:(> ?s1 0.4)))
    (not (has (feature electric-start)))
    (not (finding (check recoil-off-turn) (result turns))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-feel)))
  (assert (pointless (check spark-test)))
  (assert (pointless (check runs-at-all)))
  (assert (pointless (check prime-test)))
  (assert (pointless (check rope-pull-feel))))

(defrule pointless-starter-checks-flat-battery
  "[common-practice] The battery is flat: charge it before cables, solenoid or starter are
   measured."
  (logical
    (finding (check battery-rest-voltage) (result flat) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (pointless (check battery-crank-voltage)))
  (assert (pointless (check starter-cable-drop)))
  (assert (pointless (check starter-solenoid-feed)))
  (assert (pointless (check cranking-speed)))
  (assert (pointless (check charging-voltage))))

(defrule pointless-cable-drop-no-current
  "[common-practice] The starter is dead silent: without current there is no drop along a cable
   to measure."
  (logical
    (finding (check starter-sound) (result silent) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check starter-cable-drop)))
  (assert (pointless (check cranking-speed))))

(defrule pointless-crank-volts-fuse-blown
  "[common-practice] The fuse is blown: replace it, and find what blew it, before the feed is
   measured."
  (logical
    (finding (check fuse-look) (result blown) (sure ?s1&:(> ?s1 0.4)))
    (has (feature electric-start)))
  =>
  (assert (pointless (check starter-solenoid-feed)))
  (assert (pointless (check starter-cable-drop)))
  (assert (pointless (check cranking-speed))))

(defrule pointless-carburettor-inside-no-flow
  "[common-practice] No fuel arrives at the carburettor: leave it shut until the line flows
   again."
  (logical
    (finding (check fuel-flow-at-carburettor) (result none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature gravity-feed))
    (not (finding (check fuel-tap-position) (result shut)))
    (not (finding (check fuel-level) (result empty))))
  =>
  (assert (pointless (check main-jet-look)))
  (assert (pointless (check bowl-inside)))
  (assert (pointless (check emulsion-and-bleeds)))
  (assert (pointless (check float-level)))
  (assert (pointless (check float-sinks)))
  (assert (pointless (check idle-passages))))

(defrule pointless-carburettor-inside-no-pulse
  "[common-practice] The pump gives nothing: the carburettor behind it need not be opened yet."
  (logical
    (finding (check pulse-pump-output) (result none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature pulse-pump))
    (not (finding (check fuel-level) (result empty))))
  =>
  (assert (pointless (check main-jet-look)))
  (assert (pointless (check emulsion-and-bleeds)))
  (assert (pointless (check idle-passages)))
  (assert (pointless (check metering-lever-height))))

(defrule pointless-metering-fires-not-on-prime
  "[common-practice] It does not even burn a prime: fuel metering is not what stops it.
   Compression and spark first."
  (logical
    (finding (check prime-test) (result nothing) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check plug-look) (result fuel-wet)))
    (not (finding (check stop-switch-position) (result off)))
    (not (finding (check interlock-state) (result not-made)))
    (not (finding (check overflow) (result runs-out))))
  =>
  (assert (pointless (check main-jet-look)))
  (assert (pointless (check idle-passages)))
  (assert (pointless (check emulsion-and-bleeds)))
  (assert (pointless (check mixture-screw-turns)))
  (assert (pointless (check diaphragm-look)))
  (assert (pointless (check metering-lever-height))))

(defrule pointless-leak-where-tight
  "[common-practice] The cylinder is tight; there is no leak to listen for."
  (logical
    (finding (check leak-down) (result tight) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (pointless (check leak-down-where)))
  (assert (pointless (check compression-wet)))
  (assert (pointless (check head-bolts))))

(defrule pointless-wet-test-good-gauge
  "[common-practice] The gauge is good dry; oil can tell nothing."
  (logical
    (finding (check compression) (result good) (sure ?s1&:(> ?s1 0.6)))
    (not (finding (check plug-look) (result oil-wet))))
  =>
  (assert (pointless (check compression-wet))))

(defrule pointless-gauge-pushrod-off
  "[common-practice] A pushrod is off: put it back before compression or clearances are
   measured."
  (logical
    (finding (check valve-motion) (result pushrod-off) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-wet)))
  (assert (pointless (check valve-clearance-inlet)))
  (assert (pointless (check valve-clearance-exhaust)))
  (assert (pointless (check runs-at-all))))

(defrule pointless-gauge-valve-stuck
  "[common-practice] A valve hangs open or short: free it before compression is measured."
  (logical
    (finding (check valve-motion) (result one-short-or-stuck) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-wet))))

(defrule pointless-gauge-soot-track
  "[common-practice] Gas has blown past the head gasket: it comes off anyway, so the wet test
   tells nothing for it."
  (logical
    (finding (check head-gasket-soot) (result soot-track) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check compression-wet)))
  (assert (pointless (check head-bolts))))

(defrule pointless-release-gauge-leak-down-known
  "[common-practice] With a release on the engine and the leak-down known the gauge adds
   nothing."
  (logical
    (has (feature decompression))
    (finding (check leak-down) (result tight) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (pointless (check compression)))
  (assert (pointless (check compression-wet))))

(defrule pointless-filter-off-clean
  "[common-practice] Filter clean and fitted right: running without it only lets dust in."
  (logical
    (finding (check air-filter-look) (result clean) (sure ?s1&:(> ?s1 0.4)))
    (not (complained (complaint smoke-black))))
  =>
  (assert (pointless (check filter-off-run))))

(defrule pointless-silencer-off-clear
  "[common-practice] Silencer, screen and port are clear: running it open tells nothing."
  (logical
    (finding (check muffler-look) (result clear) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-port-look) (result clear) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (pointless (check muffler-off-run))))

(defrule pointless-screws-bad-fuel
  "[common-practice] On stale or fouled fuel the screws cannot be judged. Fresh fuel first."
  (logical
    (finding (check fuel-look-and-smell) (result stale|water-or-dirt|oily-mix|diesel-smell)
      (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check mixture-screw-turns))))

(defrule pointless-screws-clogged-pickup
  "[common-practice] With a clogged pickup filter it starves at any setting of the screws. Change
   the filter first."
  (logical
    (finding (check pickup-filter-look) (result clogged) (sure ?s1&:(> ?s1 0.4)))
    (has (feature mixture-screws)))
  =>
  (assert (pointless (check mixture-screw-turns))))

(defrule pointless-screws-dirty-air-filter
  "[common-practice] With a dirty air filter the screws are not to blame yet. Clean it first."
  (logical
    (finding (check air-filter-look) (result dirty|oil-or-fuel-soaked) (sure ?s1&:(> ?s1 0.4)))
    (has (feature mixture-screws)))
  =>
  (assert (pointless (check mixture-screw-turns))))

(defrule pointless-screws-air-leak
  "[common-practice] With air leaking in no screw setting holds. Seal it first."
  (logical
    (finding (check intake-spray) (result speed-changes) (sure ?s1&:(> ?s1 0.4)))
    (has (feature mixture-screws)))
  =>
  (assert (pointless (check mixture-screw-turns))))

(defrule pointless-carburettor-leaking-crankcase
  "[common-practice] The crankcase leaks: mixture and metering cannot be judged until it holds."
  (logical
    (finding (check crankcase-pressure-test) (result leaks) (sure ?s1&:(> ?s1 0.4)))
    (has (feature two-stroke)))
  =>
  (assert (pointless (check mixture-screw-turns)))
  (assert (pointless (check metering-lever-height)))
  (assert (pointless (check inlet-needle-pop-off))))

(defrule pointless-pump-checks-dry
  "[common-practice] The pump stands dry: fill it before pressure or delivery is looked at."
  (logical
    (finding (check pump-primed) (result dry)))
  =>
  (assert (pointless (check pump-pressure)))
  (assert (pointless (check pump-delivery))))

(defrule pointless-pump-inside-no-supply
  "[common-practice] Too little water comes in: the pump need not be opened before the supply is
   right."
  (logical
    (finding (check water-supply-flow) (result too-little) (sure ?s1&:(> ?s1 0.4)))
    (has (feature pressure-pump-end)))
  =>
  (assert (pointless (check pump-valves-look)))
  (assert (pointless (check unloader-valve)))
  (assert (pointless (check nozzle-look))))

(defrule pointless-output-slow-engine
  "[common-practice] The engine is below its speed: put that right before volts and hertz are
   read."
  (logical
    (finding (check top-speed) (result low) (sure ?s1&:(> ?s1 0.6)))
    (has (feature generator-end))
    (not (has (feature inverter-generator))))
  =>
  (assert (pointless (check output-voltage)))
  (assert (pointless (check output-frequency)))
  (assert (pointless (check capacitor-test)))
  (assert (pointless (check generator-brushes)))
  (assert (pointless (check residual-field-flash))))

(defrule pointless-generator-inside-good-output
  "[common-practice] The voltage is right: leave brushes, capacitor and field alone."
  (logical
    (finding (check output-voltage) (result right) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (pointless (check generator-brushes)))
  (assert (pointless (check capacitor-test)))
  (assert (pointless (check residual-field-flash))))

(defrule pointless-generator-inside-breaker
  "[common-practice] The breaker is tripped: reset it with nothing plugged in and measure, before
   the generator is opened."
  (logical
    (finding (check generator-breaker) (result tripped) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check generator-brushes)))
  (assert (pointless (check capacitor-test)))
  (assert (pointless (check residual-field-flash))))

(defrule pointless-frequency-inverter
  "[common-practice] On an inverter set the electronics make the frequency; it says nothing about
   engine speed."
  (logical
    (has (feature inverter-generator))
    (not (complained (complaint wrong-frequency))))
  =>
  (assert (pointless (check output-frequency))))

(defrule pointless-drive-checks-belt-off
  "[common-practice] The belt is off: put it back before anything it drives is judged."
  (logical
    (finding (check belt-look) (result off) (sure ?s1&:(> ?s1 0.4)))
    (has (feature belt-drive)))
  =>
  (assert (pointless (check load-removed-run)))
  (assert (pointless (check drive-turns-by-hand))))

(defrule pointless-chain-brake-on
  "[common-practice] The chain brake is on: release it before clutch, chain or load is judged."
  (logical
    (finding (check chain-brake-state) (result on)))
  =>
  (assert (pointless (check clutch-look)))
  (assert (pointless (check load-removed-run)))
  (assert (pointless (check top-speed)))
  (assert (pointless (check chain-look))))

(defrule pointless-bar-oil-not-running
  "[common-practice] The chain must run for bar oil to feed; it does not start."
  (logical
    (finding (check runs-at-all) (result no-fire) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check bar-oil-feed)))
  (assert (pointless (check restart-after-cooling)))
  (assert (pointless (check position-dependence))))

(defrule pointless-governor-engine-lean
  "[common-practice] It steadies when choked a little: it hunts from a lean mixture, and the
   governor only follows. Leave the governor until that is cured."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (pointless (check governor-arm-set)))
  (assert (pointless (check governor-linkage-look))))

(defrule pointless-icing-hot-dry
  "[common-practice] In heat no ice forms for long in the throat of a small engine."
  (logical
    (finding (check altitude-and-weather) (result very-hot) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (pointless (check carburettor-icing-signs))))

(defrule pointless-dust-track-filter-missing
  "[common-practice] The filter is missing: dust got in. Look at bore and oil instead."
  (logical
    (finding (check air-filter-look) (result missing-or-wrong) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (pointless (check dust-track-in-throat))))

(defrule pointless-leak-where-not-suspect
  "[common-practice] Nobody rigs air to a cylinder that has not been found weak: feel the
   compression or put the gauge on it first."
  (logical
    (not (finding (check compression) (result weak|very-low)))
    (not (finding (check compression-feel) (result soft|none)))
    (not (finding (check compression-wet)))
    (not (finding (check leak-down) (result leaks|leaks-badly)))
    (not (finding (check prime-test) (result nothing)))
    (not (finding (check head-gasket-soot) (result soot-track))))
  =>
  (assert (pointless (check leak-down-where))))

(defrule pointless-running-checks-no-spark
  "[common-practice] It does not start and the tester shows no spark: what has to be watched with
   the engine running cannot be watched yet."
  (logical
    (finding (check spark-test) (result none) (sure ?s1&:(> ?s1 0.6)))
    (complained (runs no))
    (not (complained (runs yes|dies)))
    (not (finding (check runs-at-all) (result runs|fires-then-dies)))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (pointless (check ?c))))
