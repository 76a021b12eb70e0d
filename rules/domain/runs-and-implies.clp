; What one result implies about checks that were not made: an engine that ran turned over, sparked
; and pressed. An implication is always weaker than the check itself and falls away when the check
; is made.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/runs-and-implies.json. Check with: pullcord vet

(defrule implies-run-has-spark
  "[common-practice] It ran, if only for a moment: so the plug fired then. A weak spark is not
   ruled out."
  (logical
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-while-dying) (result spark-goes)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.75))))

(defrule implies-run-has-compression
  "[common-practice] An engine that fires has compression enough to fire; only its loss of power
   or a gauge tells how much."
  (logical
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.7))))

(defrule implies-run-crank-free
  "[common-practice] It ran, so the crankshaft goes round."
  (logical
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check how-it-stopped) (result bang-or-crunch)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.9))))

(defrule implies-run-pushrods-in-place
  "[common-practice] A four-stroke single that runs works both its valves."
  (logical
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check valve-motion))))
  =>
  (assert (implies (check valve-motion) (result both-full) (strength 0.8))))

(defrule implies-steady-run-fuel-flows
  "[common-practice] It goes on running, so the carburettor is being filled as fast as it is
   emptied, at least at this load."
  (logical
    (finding (check when-it-dies) (result keeps-running) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.75))))

(defrule implies-steady-run-vent-clear
  "[common-practice] It runs on for as long as one likes with the cap tight, so air gets into the
   tank."
  (logical
    (finding (check when-it-dies) (result keeps-running) (sure ?s1&:(> ?s1 0.4)))
    (has (feature vented-cap))
    (not (complained (complaint dies-hot)))
    (not (finding (check cap-loosened))))
  =>
  (assert (implies (check cap-loosened) (result no-change) (strength 0.85))))

(defrule implies-choke-run-has-spark
  "[common-practice] It runs on the choke: it turns over, presses and sparks, and only the
   mixture is wrong."
  (logical
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-while-dying) (result spark-goes)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.8))))

(defrule implies-choke-run-has-compression
  "[common-practice] It runs on the choke, so the cylinder draws and presses well enough."
  (logical
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.75))))

(defrule implies-choke-run-crank-free
  "[common-practice] It runs on the choke, so nothing inside is stuck."
  (logical
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.92))))

(defrule implies-prime-fires-spark
  "[common-practice] It fired on the prime, so it sparks, and near enough at the right moment."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.85))))

(defrule implies-prime-fires-compression
  "[common-practice] It fired on the prime, so it presses enough to light a charge."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.8))))

(defrule implies-prime-fires-key-whole
  "[common-practice] A flywheel that has shifted far on its key spits or kicks on a prime; it
   does not run it off cleanly."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (complained (complaint backfires-intake|pulls-hard)))
    (not (finding (check flywheel-key-look))))
  =>
  (assert (implies (check flywheel-key-look) (result whole) (strength 0.7))))

(defrule implies-prime-fires-exhaust-open
  "[common-practice] An engine with its exhaust shut coughs at most; this one burnt its prime, so
   gas gets out."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check muffler-look))))
  =>
  (assert (implies (check muffler-look) (result clear) (strength 0.7))))

(defrule implies-prime-fires-valves-move
  "[common-practice] It burnt the prime: inlet and exhaust both open."
  (logical
    (finding (check prime-test) (result starts-and-stays|fires-then-dies) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke))
    (not (finding (check valve-motion))))
  =>
  (assert (implies (check valve-motion) (result both-full) (strength 0.8))))

(defrule implies-stays-running-fuel-comes
  "[common-practice] Once started on the prime it goes on by itself: fuel does reach the
   carburettor, and the enrichment for the cold start is what it lacks."
  (logical
    (finding (check prime-test) (result starts-and-stays) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.75))))

(defrule implies-stays-running-main-jet-open
  "[common-practice] It goes on running without help after the prime; a shut main jet would not
   let it."
  (logical
    (finding (check prime-test) (result starts-and-stays) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check choke-effect) (result runs-only-choked)))
    (not (finding (check main-jet-look))))
  =>
  (assert (implies (check main-jet-look) (result clear) (strength 0.7))))

(defrule implies-said-to-run-spark
  "[common-practice] What the owner complains of happens with the engine running, so it sparks,
   strongly enough for that."
  (logical
    (complained (runs yes))
    (not (complained (complaint hard-start-cold|weak|bogs|no-full-speed)))
    (not (finding (check runs-at-all)))
    (not (complained (runs no)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.65))))

(defrule implies-said-to-run-compression
  "[common-practice] The owner has it running and does not call it weak, so it presses."
  (logical
    (complained (runs yes))
    (not (complained (complaint weak|hard-start-cold|uses-oil|smoke-blue|cuts-badly)))
    (not (finding (check runs-at-all) (result no-fire)))
    (not (complained (runs no)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.65))))

(defrule implies-said-to-run-crank-free
  "[common-practice] The owner has it running, so it turns over."
  (logical
    (complained (runs yes))
    (not (finding (check runs-at-all) (result no-fire)))
    (not (complained (runs no)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (implies (check crank-turn-by-hand) (result free) (strength 0.9))))

(defrule implies-said-to-run-fuel
  "[common-practice] The owner has it running for long enough to work with it, so fuel gets
   through in some measure."
  (logical
    (complained (runs yes))
    (not (complained (complaint no-full-speed|bogs|weak|hunts|hard-start-cold)))
    (not (finding (check runs-at-all) (result no-fire)))
    (not (complained (runs no|dies)))
    (not (finding (check fuel-flow-at-carburettor))))
  =>
  (assert (implies (check fuel-flow-at-carburettor) (result steady) (strength 0.65))))

(defrule implies-dies-means-spark-cold
  "[common-practice] It starts and then dies, so it sparks when it starts; a spark that goes with
   heat is a test for later."
  (logical
    (complained (runs dies))
    (not (finding (check runs-at-all) (result no-fire)))
    (not (complained (runs no)))
    (not (finding (check spark-while-dying) (result spark-goes)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.65))))

(defrule implies-cool-restart-spark
  "[common-practice] It starts again once it is cool, so the cold spark will look good whatever
   the coil does hot."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.75))))

(defrule implies-cool-restart-compression
  "[common-practice] It starts again once it is cool, so cold compression is there, whatever it
   does hot."
  (logical
    (finding (check restart-after-cooling) (result starts-when-cool) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check compression-feel))))
  =>
  (assert (implies (check compression-feel) (result springs-back) (strength 0.6))))

(defrule implies-speed-read-spark
  "[common-practice] A running speed was read, so the engine was running and sparking."
  (logical
    (finding (check idle-speed|top-speed) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check spark-test))))
  =>
  (assert (implies (check spark-test) (result jumps) (strength 0.75))))

(defrule implies-top-speed-cable
  "[common-practice] It reaches its full speed, so the throttle cable pulls all the way."
  (logical
    (finding (check top-speed) (result right|high) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check throttle-cable))))
  =>
  (assert (implies (check throttle-cable) (result full-travel) (strength 0.8))))

(defrule implies-top-speed-plate
  "[common-practice] It reaches its full speed, so the throttle plate opens."
  (logical
    (finding (check top-speed) (result right|high) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check throttle-plate-travel) (result does-not-open)))
    (not (finding (check throttle-plate-travel))))
  =>
  (assert (implies (check throttle-plate-travel) (result full) (strength 0.75))))

(defrule implies-right-speed-governor
  "[common-practice] Full speed comes out right, so the governor is hooked up and set."
  (logical
    (finding (check top-speed) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check speed-steady) (result steady) (sure ?s2&:(> ?s2 0.4)))
    (has (feature governor-flyweight))
    (not (finding (check governor-linkage-look))))
  =>
  (assert (implies (check governor-linkage-look) (result right) (strength 0.8))))

(defrule implies-good-idle-passages
  "[common-practice] It idles steadily at the right speed, so the idle passages are open."
  (logical
    (finding (check idle-speed) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check speed-steady) (result steady) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check idle-passages))))
  =>
  (assert (implies (check idle-passages) (result clear) (strength 0.8))))
