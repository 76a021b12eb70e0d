; Results that say more together than each by itself, and faults that come in company: gum follows
; stale fuel, water in the tank means water in the bowl, a repair brings its own mistakes.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/combinations.json. Check with: pullcord vet

(defrule speaks-air-pocket-after-carburettor
  "[common-practice] The carburettor has just been off and nobody filled it: an air pocket in the
   line explains a no-start until it is primed."
  (logical
    (finding (check recent-work) (result carburettor) (sure ?s1&:(> ?s1 0.4)))
    (finding (check carburettor-primed-after-work) (result no) (sure ?s2&:(> ?s2 0.4)))
    (finding (check runs-at-all) (result no-fire|fires-then-dies) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault air-pocket-in-line) (decibans 6))))

(defrule speaks-joint-after-carburettor
  "[common-practice] Lean since the carburettor was refitted: look first for what was put back
   wrong - ring left out, gasket turned, nuts loose."
  (logical
    (finding (check recent-work) (result carburettor) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s2&:(> ?s2 0.4)))
    (complained (complaint after-repair)))
  =>
  (assert (speaks (fault carburettor-o-ring-lost) (decibans 4)))
  (assert (speaks (fault gasket-reversed) (decibans 4)))
  (assert (speaks (fault carburettor-loose) (decibans 4))))

(defrule speaks-flood-after-carburettor
  "[common-practice] Runs over since the carburettor was refitted: float hung wrongly, needle
   left loose, or dirt washed into its seat."
  (logical
    (finding (check recent-work) (result carburettor) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result seeps|runs-out) (sure ?s2&:(> ?s2 0.4)))
    (complained (complaint after-repair)))
  =>
  (assert (speaks (fault float-level-high) (decibans 4)))
  (assert (speaks (fault float-needle-leaking) (decibans 3)))
  (assert (speaks (fault bowl-gasket-leaking) (decibans 3))))

(defrule speaks-governor-after-carburettor
  "[common-practice] Hunts or races since the carburettor was off: rod and spring hang in the
   wrong holes more often than anything breaks."
  (logical
    (finding (check recent-work) (result carburettor|starter-or-controls) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint after-repair))
    (complained (complaint races|hunts))
    (has (feature governor-flyweight)))
  =>
  (assert (speaks (fault governor-spring-wrong-hole) (decibans 5)))
  (assert (speaks (fault governor-linkage-binding) (decibans 3))))

(defrule speaks-no-spark-after-cover
  "[common-practice] No spark since a cover or the coil was off: the stop wire lies trapped, or
   the coil was set wrongly."
  (logical
    (finding (check recent-work) (result ignition|engine-opened|starter-or-controls)
      (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4)))
    (complained (complaint after-repair|no-start-cold))
    (not (finding (check spark-with-kill-lead-off) (result no-change)))
    (not (finding (check coil-mount-look) (result clean))))
  =>
  (assert (speaks (fault kill-wire-trapped) (decibans 4)))
  (assert (speaks (fault coil-gap-wide) (decibans 3)))
  (assert (speaks (fault coil-ground-bad) (decibans 2))))

(defrule speaks-timing-after-engine-opened
  "[common-practice] The engine has been open and now spits or will not fire with a good spark:
   cam and crank may be a tooth out."
  (logical
    (finding (check recent-work) (result engine-opened) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result jumps) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s3&:(> ?s3 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (speaks (fault timing-gear-slipped) (decibans 6)))
  (assert (speaks (fault valve-clearance-tight) (decibans 3))))

(defrule speaks-plug-after-service
  "[common-practice] Worse since the service: a plug of the wrong kind, or one dropped and closed
   up, is the first thing the service touched."
  (logical
    (finding (check recent-work) (result filter-or-service|ignition) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint after-repair))
    (finding (check spark-with-new-plug) (result now-good) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault plug-wrong-kind) (decibans 4)))
  (assert (speaks (fault plug-cracked-or-bridged) (decibans 3)))
  (assert (speaks (fault plug-gap-narrow) (decibans 3))))

(defrule speaks-smoke-after-service
  "[common-practice] Smokes since the oil was changed: too much went in."
  (logical
    (finding (check recent-work) (result filter-or-service) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result white|blue) (sure ?s2&:(> ?s2 0.4)))
    (has (feature four-stroke))
    (complained (complaint after-repair)))
  =>
  (assert (speaks (fault oil-overfilled) (decibans 6))))

(defrule speaks-vent-cures-late-death
  "[common-practice] It dies after some minutes and runs on with the cap loosened: the vent, not
   the pump and not the coil."
  (logical
    (finding (check when-it-dies) (result after-minutes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check cap-loosened) (result runs-on) (sure ?s2&:(> ?s2 0.4)))
    (has (feature vented-cap)))
  =>
  (assert (speaks (fault cap-vent-blocked) (decibans 5)))
  (assert (speaks (fault coil-fails-hot) (decibans -5))))

(defrule speaks-vent-valve-cures-late-death
  "[common-practice] It dies after some minutes and runs on with the cap loosened: the vent valve
   of the tank does not let air in."
  (logical
    (finding (check when-it-dies) (result after-minutes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check cap-loosened) (result runs-on) (sure ?s2&:(> ?s2 0.4)))
    (has (feature tank-vent-valve)))
  =>
  (assert (speaks (fault tank-vent-valve-stuck) (decibans 5)))
  (assert (speaks (fault coil-fails-hot) (decibans -5))))

(defrule speaks-hot-no-spark-coil
  "[common-practice] Will not restart hot, no spark then, spark and start when cool: the coil
   fails with heat."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-hot) (result gone-hot) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature breaker-points))))
  =>
  (assert (speaks (fault coil-fails-hot) (decibans 5)))
  (assert (speaks (fault vapour-lock) (decibans -4))))

(defrule speaks-hot-no-spark-condenser
  "[common-practice] Spark gone hot and back when cool on a points engine: the condenser is as
   likely as the coil, and costs less."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-hot) (result gone-hot) (sure ?s2&:(> ?s2 0.4)))
    (has (feature breaker-points)))
  =>
  (assert (speaks (fault condenser-bad) (decibans 4)))
  (assert (speaks (fault coil-fails-hot) (decibans 3))))

(defrule speaks-hot-good-spark-fuel
  "[common-practice] Will not restart hot but sparks: fuel boiling in line or bowl, or a valve
   that closes up hot."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-hot) (result good-hot) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault vapour-lock) (decibans 4)))
  (assert (speaks (fault valve-clearance-tight) (decibans 3)))
  (assert (speaks (fault coil-fails-hot) (decibans -4))))

(defrule speaks-hot-weather-vapour
  "[common-practice] Very hot weather, and it restarts only when cool: fuel boils before it gets
   there."
  (logical
    (finding (check altitude-and-weather) (result very-hot) (sure ?s1&:(> ?s1 0.4)))
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check spark-hot) (result gone-hot))))
  =>
  (assert (speaks (fault vapour-lock) (decibans 5))))

(defrule speaks-icing-weather
  "[common-practice] Cold damp air, dies after minutes and starts again by itself a little later:
   ice in the throat that melts while one looks for the fault."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4)))
    (finding (check when-it-dies) (result after-minutes) (sure ?s2&:(> ?s2 0.4)))
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s3&:(> ?s3 0.4)))
    (not (finding (check cap-loosened) (result runs-on)))
    (not (finding (check spark-hot) (result gone-hot))))
  =>
  (assert (speaks (fault carburettor-icing) (decibans 6))))

(defrule speaks-starved-main-metering
  "[common-practice] Runs only while choked or primed, with a good spark and fuel at the inlet:
   the main metering is starved inside the carburettor."
  (logical
    (finding (check choke-effect) (result runs-only-choked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result jumps) (sure ?s2&:(> ?s2 0.6)))
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault main-jet-blocked) (decibans 4)))
  (assert (speaks (fault emulsion-tube-blocked) (decibans 2))))

(defrule speaks-primed-only-metering
  "[common-practice] Fires on every prime and dies, and fuel runs at the inlet: what is missing
   lies between inlet and throat."
  (logical
    (finding (check prime-test) (result fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s2&:(> ?s2 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault main-jet-blocked) (decibans 3)))
  (assert (speaks (fault float-needle-stuck-shut) (decibans 3))))

(defrule speaks-full-line-dry-bowl
  "[common-practice] Fuel at the line, none in the bowl: the needle is stuck shut."
  (logical
    (finding (check fuel-flow-at-carburettor) (result steady) (sure ?s1&:(> ?s1 0.4)))
    (finding (check bowl-drain-flow) (result little|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault float-needle-stuck-shut) (decibans 5))))

(defrule speaks-solenoid-no-click-starved
  "[common-practice] Runs on prime only and the solenoid under the bowl does not click: it holds
   the jet shut, the jet itself may be clean."
  (logical
    (has (feature afterfire-solenoid))
    (finding (check solenoid-click) (result silent) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result fires-then-dies) (sure ?s3&:(> ?s3 0.4)))
    (not (finding (check solenoid-voltage))))
  =>
  (assert (speaks (fault solenoid-stuck-shut) (decibans 3)))
  (assert (speaks (fault solenoid-no-feed) (decibans 3)))
  (assert (speaks (fault main-jet-blocked) (decibans -4))))

(defrule speaks-gum-after-stale-fuel
  "[common-practice] Old fuel and now it starves: gum goes with stale fuel, and new petrol alone
   will not clear a jet."
  (logical
    (finding (check fuel-look-and-smell) (result stale) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s2&:(> ?s2 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault main-jet-blocked) (decibans 4)))
  (assert (speaks (fault idle-passages-blocked) (decibans 3))))

(defrule speaks-gum-after-storage
  "[common-practice] Stood for months with fuel in the bowl and now fires only on a prime: needle
   or jet is gummed."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-age) (result over-season) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result fires-then-dies) (sure ?s3&:(> ?s3 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault main-jet-blocked) (decibans 3)))
  (assert (speaks (fault float-needle-stuck-shut) (decibans 3)))
  (assert (speaks (fault idle-passages-blocked) (decibans 2))))

(defrule speaks-stiff-diaphragm-after-storage
  "[common-practice] A diaphragm that stood dry for months goes hard: fires on the prime and
   starves after it."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (has (feature diaphragm))
    (finding (check prime-test) (result fires-then-dies) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault metering-diaphragm-stiff) (decibans 4)))
  (assert (speaks (fault carburettor-screen-clogged) (decibans 2)))
  (assert (speaks (fault inlet-needle-stuck-diaphragm) (decibans 2))))

(defrule speaks-pickup-gum-suction-lift
  "[common-practice] A carburettor that sucks from the tank under it and stood for months: gum in
   the pickup screen and pipe before all else."
  (logical
    (has (feature suction-lift))
    (finding (check when-last-ran) (result months-ago) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result fires-then-dies) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault suction-pickup-gummed) (decibans 5)))
  (assert (speaks (fault suction-jet-blocked) (decibans 3))))

(defrule speaks-water-goes-to-bowl
  "[common-practice] Water in the tank: then there is water in the bowl too, and it stays there
   when the tank is emptied."
  (logical
    (finding (check water-in-sample) (result water|cloudy) (sure ?s1&:(> ?s1 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault bowl-water-or-sediment) (decibans 2))))

(defrule speaks-rust-goes-to-bowl
  "[common-practice] Rust in the tank gets past every filter in time: expect it in bowl and jet."
  (logical
    (finding (check tank-inside) (result rust) (sure ?s1&:(> ?s1 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault bowl-water-or-sediment) (decibans 2)))
  (assert (speaks (fault main-jet-blocked) (decibans 2))))

(defrule speaks-dirt-goes-downstream
  "[common-practice] Dirt in the tank: filter, tap and needle below it have had their share."
  (logical
    (finding (check tank-inside) (result dirt) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result slow|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault fuel-tap-clogged) (decibans 4)))
  (assert (speaks (fault inline-filter-clogged) (decibans 3)))
  (assert (speaks (fault pickup-filter-clogged) (decibans 3))))

(defrule speaks-dirt-under-needle
  "[common-practice] Dirt in the tank and it runs over: a grain under the needle, not a worn
   needle or a wrong float level."
  (logical
    (finding (check tank-inside) (result dirt|rust) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result seeps|runs-out) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault float-needle-leaking) (decibans 4)))
  (assert (speaks (fault float-level-high) (decibans -3))))

(defrule speaks-load-starves-line
  "[common-practice] Runs light, dies at work, and the flow from the line is slow: supply, not
   power."
  (logical
    (finding (check when-it-dies) (result when-loaded) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result slow) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault inline-filter-clogged) (decibans 3)))
  (assert (speaks (fault fuel-tap-clogged) (decibans 3)))
  (assert (speaks (fault overloaded) (decibans -4))))

(defrule speaks-tilt-kills-saw-pickup
  "[common-practice] A saw dies only when tilted, with fuel in the tank: the pickup has come off
   or its hose is cracked above the fuel."
  (logical
    (has (feature pickup-filter))
    (has (feature diaphragm))
    (finding (check position-dependence) (result dies-tilted) (sure ?s3&:(> ?s3 0.4)))
    (finding (check fuel-level) (result enough) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (speaks (fault pickup-hose-off) (decibans 4)))
  (assert (speaks (fault fuel-line-cracked) (decibans 3))))

(defrule speaks-low-tank-tilt
  "[common-practice] Nearly empty and dies on the slope: fill it first."
  (logical
    (finding (check fuel-level) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check position-dependence) (result dies-tilted) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault tank-empty) (decibans 5)))
  (assert (speaks (fault pickup-hose-off) (decibans -3))))

(defrule speaks-flooded-by-overflow
  "[common-practice] The carburettor runs over and the plug is wet: it is flooded, and will be
   again until needle or float is put right."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault engine-flooded) (decibans 5)))
  (assert (speaks (fault float-needle-leaking) (decibans 2))))

(defrule speaks-flooded-by-choking
  "[common-practice] Many pulls on the choke, a wet plug, a carburettor that does not run over:
   flooded by hand. Nothing need be broken."
  (logical
    (finding (check choked-starts-tried) (result many) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check overflow) (result seeps|runs-out))))
  =>
  (assert (speaks (fault engine-flooded) (decibans 4)))
  (assert (speaks (fault float-needle-leaking) (decibans -3))))

(defrule speaks-wet-without-choking
  "[common-practice] Few pulls, choke right, and the plug drips: something lets too much fuel
   in."
  (logical
    (finding (check choked-starts-tried) (result few) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4)))
    (finding (check choke-setting) (result as-needed) (sure ?s3&:(> ?s3 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault float-needle-leaking) (decibans 3)))
  (assert (speaks (fault float-level-high) (decibans 2)))
  (assert (speaks (fault choke-stuck-shut) (decibans 2))))

(defrule speaks-fuel-oil-from-needle
  "[common-practice] The oil smells of petrol and the carburettor runs over: it ran past the
   rings while it stood. Needle and oil belong to one job."
  (logical
    (finding (check oil-smells-of-fuel) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result seeps|runs-out) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault float-needle-leaking) (decibans 4)))
  (assert (speaks (fault fuel-in-oil) (decibans 5))))

(defrule speaks-fuel-oil-from-pulse-pump
  "[common-practice] The oil smells of petrol and nothing runs over: on a pulse pump a holed
   diaphragm sends fuel down its pulse line."
  (logical
    (has (feature pulse-pump))
    (has (feature four-stroke))
    (finding (check oil-smells-of-fuel) (result yes) (sure ?s3&:(> ?s3 0.4)))
    (finding (check overflow) (result dry) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (speaks (fault pulse-pump-diaphragm-worn) (decibans 6))))

(defrule speaks-strike-key
  "[published goldwasser-1998 blade strike, partial copy] It struck something, sparks and
   presses, and will not burn a prime: the flywheel has shifted on its key."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result jumps) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault flywheel-key-sheared) (decibans 7))))

(defrule speaks-strike-kickback
  "[common-practice] It struck something and now kicks back: the spark comes early because the
   key has given."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint pulls-hard|backfires-intake)))
  =>
  (assert (speaks (fault flywheel-key-sheared) (decibans 5))))

(defrule speaks-strike-shake
  "[common-practice] It struck something and shakes since: blade and crankshaft before engine
   mounts."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint vibrates))
    (has (feature blade-on-crankshaft)))
  =>
  (assert (speaks (fault blade-bent) (decibans 3)))
  (assert (speaks (fault crankshaft-bent) (decibans 4)))
  (assert (speaks (fault mounting-bolts-loose) (decibans -3))))

(defrule speaks-all-three-but-no-fire
  "[common-practice] Spark, compression and a prime, and still nothing: timing, a plug that
   breaks down under pressure, or an exhaust that is shut."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-feel) (result springs-back) (sure ?s2&:(> ?s2 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s3&:(> ?s3 0.4)))
    (not (finding (check plug-look) (result fuel-wet))))
  =>
  (assert (speaks (fault flywheel-key-sheared) (decibans 4)))
  (assert (speaks (fault plug-cracked-or-bridged) (decibans 3)))
  (assert (speaks (fault muffler-blocked) (decibans 3))))

(defrule speaks-loose-blade-no-weight
  "[published tm-5-4240-501-14p p. 77] The blade is loose and it kicks or will not start: on a
   light flywheel the blade is part of the flywheel."
  (logical
    (finding (check blade-bolt-torque) (result loose) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint pulls-hard|no-start-cold|hard-start-cold)))
  =>
  (assert (speaks (fault blade-loose) (decibans 4)))
  (assert (speaks (fault flywheel-key-sheared) (decibans 2))))

(defrule speaks-hunt-not-lean
  "[common-practice] It hunts and the choke does nothing for it: not lean. Look at governor
   spring, rod and shaft."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result no-help|runs-worse) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature no-governor))))
  =>
  (assert (speaks (fault governor-linkage-binding) (decibans 4)))
  (assert (speaks (fault governor-spring-wrong-hole) (decibans 3)))
  (assert (speaks (fault idle-passages-blocked) (decibans -3))))

(defrule speaks-hunt-lean-sealed
  "[common-practice] Hunts, steadies when choked, and no joint answers to the spray: a lean
   passage, not a leak."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s2&:(> ?s2 0.4)))
    (finding (check intake-spray) (result no-change) (sure ?s3&:(> ?s3 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (speaks (fault main-jet-blocked) (decibans 3)))
  (assert (speaks (fault idle-passages-blocked) (decibans 3)))
  (assert (speaks (fault intake-gasket-leak) (decibans -3))))

(defrule speaks-hunts-held-steady
  "[common-practice] Held by hand at the throttle it runs even: the engine is well and the
   governor makes it hunt."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check speed-with-throttle-held) (result steadies) (sure ?s2&:(> ?s2 0.4)))
    (finding (check choke-effect) (result no-help) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault governor-linkage-binding) (decibans 3)))
  (assert (speaks (fault main-jet-blocked) (decibans -4))))

(defrule speaks-two-stroke-leak-runs-on
  "[common-practice] A two-stroke that races and hangs up when shut down runs lean on air from
   seal or boot."
  (logical
    (has (feature two-stroke))
    (finding (check idle-speed) (result high) (sure ?s2&:(> ?s2 0.4)))
    (finding (check choke-effect) (result runs-better) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault crank-seal-air-leak) (decibans 4)))
  (assert (speaks (fault intake-boot-cracked) (decibans 4)))
  (assert (speaks (fault idle-stop-high) (decibans -3))))

(defrule speaks-races-throttle-shut
  "[common-practice] Idle too high with the lever shut and the cable slack: the plate hangs, or
   air gets in behind it."
  (logical
    (finding (check idle-speed) (result high) (sure ?s1&:(> ?s1 0.4)))
    (finding (check throttle-cable) (result full-travel) (sure ?s2&:(> ?s2 0.4)))
    (finding (check governor-linkage-look) (result right) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (speaks (fault throttle-plate-stuck) (decibans 3)))
  (assert (speaks (fault intake-gasket-leak) (decibans 3))))

(defrule speaks-current-high-battery-gives
  "[common-practice] The starter draws more than it should: a battery or cable that is done for
   could not give so much. It sags because it is overdrawn; look at starter and engine."
  (logical
    (finding (check starter-current) (result high) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (speaks (fault battery-sulphated) (decibans -6)))
  (assert (speaks (fault battery-flat) (decibans -6)))
  (assert (speaks (fault battery-cables-corroded) (decibans -6)))
  (assert (speaks (fault ground-strap-bad) (decibans -6))))

(defrule speaks-needle-behind-the-flood
  "[common-practice] Wet plug, and the inlet needle does not hold: the needle floods it, and will
   again after every drying out."
  (logical
    (finding (check inlet-needle-pop-off) (result leaks) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (speaks (fault inlet-needle-leaking-diaphragm) (decibans 5)))
  (assert (speaks (fault engine-flooded) (decibans -5))))
