; Checks that must not be made as things stand, and why. They come free again when the finding is
; put right and recorded.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/unsafe.json. Check with: pullcord vet

(defrule unsafe-spark-by-overflow
  "[common-practice] Fuel is running out of the carburettor: no spark near it. Shut the tap, wipe
   up, let it air, then test."
  (logical
    (finding (check overflow) (result runs-out)))
  =>
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check spark-with-new-plug)))
  (assert (unsafe (check spark-with-kill-lead-off)))
  (assert (unsafe (check spark-boot-shield-off)))
  (assert (unsafe (check oil-cutout-disconnected)))
  (assert (unsafe (check spark-hot))))

(defrule unsafe-spark-by-leaking-line
  "[common-practice] A cracked or loose line drips fuel where the tester sparks. Put the line
   right and wipe up first."
  (logical
    (finding (check fuel-line-look) (result cracked-or-loose))
    (finding (check overflow) (result seeps) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check spark-with-new-plug)))
  (assert (unsafe (check spark-with-kill-lead-off)))
  (assert (unsafe (check spark-boot-shield-off)))
  (assert (unsafe (check oil-cutout-disconnected)))
  (assert (unsafe (check spark-hot))))

(defrule unsafe-spark-by-reported-leak
  "[common-practice] The owner reports a fuel leak and nobody has yet looked where. Find it and
   wipe up before any spark is made."
  (logical
    (complained (complaint leaks-fuel))
    (not (finding (check overflow))))
  =>
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check spark-with-new-plug)))
  (assert (unsafe (check spark-with-kill-lead-off)))
  (assert (unsafe (check spark-boot-shield-off)))
  (assert (unsafe (check oil-cutout-disconnected)))
  (assert (unsafe (check spark-hot))))

(defrule unsafe-prime-after-overflow
  "[common-practice] It runs over by itself: more fuel in the throat ends in a fire at the first
   backfire. Stop the overflow first."
  (logical
    (finding (check overflow) (result runs-out)))
  =>
  (assert (unsafe (check prime-test))))

(defrule unsafe-prime-when-spitting
  "[common-practice] It spits back through the carburettor: fuel dropped in the throat meets the
   flame. Check the timing key and the valves first."
  (logical
    (complained (complaint backfires-intake))
    (not (finding (check flywheel-key-look)))
    (not (finding (check valve-motion))))
  =>
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check intake-spray)))
  (assert (unsafe (check filter-off-run))))

(defrule unsafe-run-by-overflow
  "[common-practice] Fuel runs over beside a hot silencer. Do not start it until that has
   stopped."
  (logical
    (finding (check overflow) (result runs-out))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-start-by-overflow
  "[common-practice] Fuel runs over: no starting attempt until it has stopped and is wiped up."
  (logical
    (finding (check overflow) (result runs-out)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check fresh-fuel-trial)))
  (assert (unsafe (check clear-flood-start)))
  (assert (unsafe (check dry-out-test))))

(defrule unsafe-run-with-leaking-line
  "[common-practice] A line that leaks fuel over a running engine is a fire. Replace it first."
  (logical
    (finding (check fuel-line-look) (result cracked-or-loose))
    (complained (complaint leaks-fuel))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-bad-blade
  "[common-practice] A loose or bent blade or disc is not run, not even for a moment. Take it off
   or replace it first."
  (logical
    (finding (check blade-look) (result loose-or-bent))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-start-bad-blade
  "[common-practice] A loose or bent blade or disc is not started up."
  (logical
    (finding (check blade-look) (result loose-or-bent)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check clear-flood-start)))
  (assert (unsafe (check dry-out-test)))
  (assert (unsafe (check spark-with-new-plug))))

(defrule unsafe-run-bent-crank
  "[common-practice] On a bent crankshaft the blade and flywheel swing out and may break loose.
   Do not start it."
  (logical
    (finding (check crankshaft-run-out) (result bent))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-start-bent-crank
  "[common-practice] Do not start an engine with a bent crankshaft."
  (logical
    (finding (check crankshaft-run-out) (result bent)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check fresh-fuel-trial)))
  (assert (unsafe (check clear-flood-start))))

(defrule unsafe-start-after-strike
  "[common-practice] It struck something with the blade on its crankshaft. Blade, crankshaft and
   key are looked at before it is started again."
  (logical
    (finding (check struck-something) (result yes))
    (has (feature blade-on-crankshaft))
    (not (finding (check blade-look)))
    (not (finding (check crankshaft-run-out))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check idle-speed)))
  (assert (unsafe (check speed-steady)))
  (assert (unsafe (check load-removed-run))))

(defrule unsafe-run-broken-fan
  "[common-practice] A flywheel with broken fins is out of balance and may fly apart at speed.
   Replace it before it is run."
  (logical
    (finding (check flywheel-fan-look) (result blades-broken))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-crank-sheared-key
  "[common-practice] With the flywheel off its timing it kicks back through rope and hand. No
   more pulls until the key is replaced."
  (logical
    (finding (check flywheel-key-look) (result sheared)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check rope-pull-feel))))

(defrule unsafe-crank-full-cylinder
  "[common-practice] Tipped over and now hard to turn: oil or fuel may fill the cylinder, and
   forcing it bends the rod. Plug out first, turn it slowly by hand."
  (logical
    (finding (check tipped-over) (result yes))
    (finding (check rope-pull-feel) (result hard|locked) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check crank-turn-by-hand) (result free))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check cranking-speed)))
  (assert (unsafe (check compression))))

(defrule unsafe-crank-after-crunch
  "[common-practice] It stopped with a bang or crunch. Turn it slowly by hand with the plug out
   before anything is cranked by rope or starter."
  (logical
    (finding (check how-it-stopped) (result bang-or-crunch))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check compression)))
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check cranking-speed)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check fresh-fuel-trial)))
  (assert (unsafe (check clear-flood-start)))
  (assert (unsafe (check starter-direct-feed))))

(defrule unsafe-run-heavy-knock
  "[common-practice] A heavy knock is a rod or bearing on its way out, and a rod through the case
   throws metal. Stop it and do not start it again."
  (logical
    (finding (check knock-sound) (result heavy-knock))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-loose-rod
  "[common-practice] A knock at the rod felt by hand: one more run may put the rod through the
   case."
  (logical
    (finding (check crank-end-play-or-rod-knock) (result rod-knock))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-without-oil
  "[common-practice] No oil on the dipstick: not a turn more until it is filled, and look where
   it went."
  (logical
    (has (feature four-stroke))
    (finding (check oil-level) (result none))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-cutout-off-oil-low
  "[common-practice] The oil is low, so the cut-out does its work. Fill the oil before it is
   unplugged even for a try."
  (logical
    (finding (check oil-level) (result low|none) (sure ?s1&:(> ?s1 0.4)))
    (has (feature oil-cutout)))
  =>
  (assert (unsafe (check oil-cutout-disconnected))))

(defrule unsafe-run-metal-in-oil
  "[common-practice] Metal glitters in the oil: a bearing or the rod is going. Find out which
   before it is run again."
  (logical
    (finding (check oil-look) (result metal-glitter))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-fuel-in-oil
  "[common-practice] Petrol in the oil thins it to nothing and its vapour fills the crankcase.
   Change the oil and stop the leak before it runs."
  (logical
    (finding (check oil-smells-of-fuel) (result yes))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))
