; Cautions that must be shown as soon as the case says so, whatever is done next.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/warnings.json. Check with: pullcord vet

(defrule warn-fuel-running-out
  "[common-practice] Fuel is running out of the carburettor: shut the tap, no flame, no spark,
   and wipe it up."
  (logical
    (finding (check overflow) (result seeps|runs-out)))
  =>
  (assert (warn (caution no-spark-near-fuel)))
  (assert (warn (caution fuel-vapour))))

(defrule warn-leak-reported
  "[common-practice] A machine that leaks fuel is put outside and looked at cold."
  (logical
    (complained (complaint leaks-fuel))
    (not (has (feature gas-fuel)))) ; a leak of gas is handed over
  =>
  (assert (warn (caution fuel-vapour)))
  (assert (warn (caution no-spark-near-fuel))))

(defrule warn-floods
  "[common-practice] A flooded engine throws fuel mist from its plug hole when it is turned over:
   no spark near it."
  (logical
    (complained (complaint floods))
    (not (finding (check spark-test))))
  =>
  (assert (warn (caution no-spark-near-fuel))))

(defrule warn-wet-plug-mist
  "[common-practice] The plug came out wet: mist comes from the hole when it is pulled over. Keep
   tester and lead well away."
  (logical
    (finding (check plug-look) (result fuel-wet) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution no-spark-near-fuel)))
  (assert (warn (caution kill-lead-isolate))))

(defrule warn-cracked-line
  "[common-practice] A cracked line lets go when it is touched: have a can and a rag under it."
  (logical
    (finding (check fuel-line-look) (result cracked-or-loose) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution fuel-vapour))))

(defrule warn-bad-fuel-to-dispose
  "[common-practice] This fuel is drained and not poured back: keep it apart and hand it in."
  (logical
    (finding (check fuel-look-and-smell) (result stale|water-or-dirt|diesel-smell|oily-mix)
      (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution waste-fuel)))
  (assert (warn (caution fuel-storage-container))))

(defrule warn-struck-blade
  "[common-practice] After a blow the blade may be split or loose and the crank under it bent:
   lead off before a hand goes near."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (has (feature blade-on-crankshaft)))
  =>
  (assert (warn (caution plug-lead-off)))
  (assert (warn (caution blade-edges)))
  (assert (warn (caution damaged-blade)))
  (assert (warn (caution bent-crankshaft))))

(defrule warn-bent-crankshaft
  "[common-practice] A bent crankshaft is not straightened and not run."
  (logical
    (finding (check crankshaft-run-out) (result bent) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution bent-crankshaft))))

(defrule warn-broken-fan
  "[common-practice] A flywheel with broken fins or a crack is scrap."
  (logical
    (finding (check flywheel-fan-look) (result blades-broken) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution damaged-flywheel))))

(defrule warn-bad-blade
  "[common-practice] A bent or split blade is replaced, never straightened or welded."
  (logical
    (finding (check blade-look) (result loose-or-bent) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution damaged-blade)))
  (assert (warn (caution plug-lead-off)))
  (assert (warn (caution blade-edges))))

(defrule warn-races
  "[common-practice] It races: a hand on the stop at every start, and off at once when it runs
   away."
  (logical
    (complained (complaint races)))
  =>
  (assert (warn (caution overspeed)))
  (assert (warn (caution stand-clear-tool))))

(defrule warn-overspeed-read
  "[common-practice] It turns over its limit."
  (logical
    (finding (check top-speed) (result high) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (warn (caution overspeed))))

(defrule warn-governor-hands-off
  "[common-practice] Its speed is set at the governor only by the book: a spring hooked one hole
   over can burst the engine."
  (logical
    (finding (check governor-linkage-look) (result off-or-binding|spring-in-wrong-hole)
      (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution overspeed)))
  (assert (warn (caution spring-tension-governor))))

(defrule warn-will-not-stop
  "[common-practice] It cannot be stopped by its switch: know how to stop it by fuel or choke
   before it is started."
  (logical
    (complained (complaint will-not-stop)))
  =>
  (assert (warn (caution moving-parts)))
  (assert (warn (caution stand-clear-tool)))
  (assert (warn (caution kill-lead-isolate))))

(defrule warn-kicks-back
  "[common-practice] It kicks back: no rope wound round the hand, and the plug lead off while the
   cause is looked for."
  (logical
    (complained (complaint pulls-hard))
    (not (finding (check recoil-off-turn))))
  =>
  (assert (warn (caution crank-kickback)))
  (assert (warn (caution plug-lead-off))))

(defrule warn-runs-interlock-not-made
  "[common-practice] It runs though the interlock is not made: somebody has bridged it, or it has
   failed. It goes out working or it does not go out."
  (logical
    (finding (check interlock-state) (result not-made) (sure ?s1&:(> ?s1 0.4)))
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (warn (caution interlock-never-bypass)))
  (assert (warn (caution moving-parts))))

(defrule warn-interlock-faulty
  "[common-practice] A faulty interlock switch is replaced; it is never bridged, not even to
   see."
  (logical
    (finding (check interlock-switch-test) (result faulty) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution interlock-never-bypass))))

(defrule warn-cutout-dead-oil-gone
  "[common-practice] No oil, yet it ran: the cut-out does not protect this engine."
  (logical
    (has (feature oil-cutout))
    (finding (check oil-level) (result none) (sure ?s2&:(> ?s2 0.4)))
    (finding (check runs-at-all) (result runs|fires-then-dies) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (warn (caution interlock-never-bypass))))

(defrule warn-generator-live-parts
  "[common-practice] A generator under a cover kills like the mains, and its capacitor holds its
   charge after it is stopped."
  (logical
    (complained (complaint no-output|wrong-frequency)))
  =>
  (assert (warn (caution generator-shock)))
  (assert (warn (caution capacitor-charge)))
  (assert (warn (caution generator-back-feed))))

(defrule warn-generator-high-voltage
  "[common-practice] The voltage is too high: unplug everything before something is burnt."
  (logical
    (finding (check output-voltage) (result high) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (warn (caution generator-shock)))
  (assert (warn (caution overspeed))))

(defrule warn-generator-damp
  "[common-practice] A generator that got wet can make its frame live."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (has (feature generator-end)))
  =>
  (assert (warn (caution generator-shock))))

(defrule warn-washer-jet
  "[common-practice] Hoses and gun of a washer hold pressure when it is stopped, and a pinhole
   jet goes into the flesh."
  (logical
    (has (feature pressure-pump-end))
    (complained (complaint pump-weak|pulls-hard|will-not-turn)))
  =>
  (assert (warn (caution high-pressure-injection)))
  (assert (warn (caution eye-protection))))

(defrule warn-splitter-jet
  "[common-practice] A pinhole in a splitter hose cannot be felt for with a hand: use card, and
   let the pressure off first."
  (logical
    (has (feature hydraulic-end))
    (complained (complaint drive-slips|leaks-oil|dies-under-load|pump-weak)))
  =>
  (assert (warn (caution hydraulic-injection)))
  (assert (warn (caution pinch-belts))))

(defrule warn-chain-creeps
  "[common-practice] The chain or head moves at idle: stand clear, chain brake on, and the tool
   away from legs."
  (logical
    (complained (complaint creeps-at-idle)))
  =>
  (assert (warn (caution chain-edges)))
  (assert (warn (caution stand-clear-tool))))

(defrule warn-auger-jam
  "[common-practice] A jammed auger is cleared with the engine stopped, the lead off and a stick;
   it can jump when the jam lets go."
  (logical
    (has (feature auger|chipping-disc|tines))
    (complained (complaint drive-slips|will-not-turn|dies-under-load|pulls-hard)))
  =>
  (assert (warn (caution auger-clearing)))
  (assert (warn (caution plug-lead-off))))

(defrule warn-impeller-blocked
  "[common-practice] A blocked housing is cleared with the plug lead off, never with a hand in
   the chute."
  (logical
    (finding (check impeller-or-housing-blocked) (result blocked) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution auger-clearing)))
  (assert (warn (caution plug-lead-off)))
  (assert (warn (caution moving-parts))))

(defrule warn-battery-work
  "[common-practice] Batteries give off gas that bursts, and a spanner across the posts welds
   itself on."
  (logical
    (complained (complaint starter-clicks|not-charging)))
  =>
  (assert (warn (caution battery-acid-hydrogen)))
  (assert (warn (caution battery-short))))

(defrule warn-flat-battery-jump
  "[common-practice] Jumping a flat battery: last clamp to the engine block, away from battery
   and fuel."
  (logical
    (finding (check battery-rest-voltage) (result flat|low) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (warn (caution battery-acid-hydrogen)))
  (assert (warn (caution battery-short))))

(defrule warn-cold-wet-shop
  "[published niosh-96-118 alert text] In the cold the door gets shut and the engine is tried
   inside: a small engine fills a room with poison in minutes."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution carbon-monoxide))))

(defrule warn-rich-runner
  "[common-practice] Black smoke is exhaust with far more carbon monoxide than usual: test it
   outside."
  (logical
    (finding (check exhaust-smoke) (result black) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution carbon-monoxide))))

(defrule warn-blowing-exhaust
  "[common-practice] An exhaust that blows at its joint burns what is near it, and the fuel tank
   is near."
  (logical
    (finding (check exhaust-noise) (result blowing) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution hot-parts)))
  (assert (warn (caution noise-hearing))))

(defrule warn-hot-trouble
  "[common-practice] Tests on a hot engine: silencer and head burn, and no fuel is poured while
   it is hot."
  (logical
    (complained (complaint no-start-hot|dies-hot|overheats)))
  =>
  (assert (warn (caution hot-parts)))
  (assert (warn (caution refuel-cool))))

(defrule warn-two-stroke-lean
  "[common-practice] A two-stroke that gets better when choked runs lean, and lean it seizes."
  (logical
    (has (feature two-stroke))
    (finding (check choke-effect) (result runs-better|runs-only-choked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (warn (caution two-stroke-lean-seizure))))

(defrule warn-two-stroke-air-leak
  "[common-practice] A two-stroke that draws air past a joint runs lean, and lean it seizes."
  (logical
    (has (feature two-stroke))
    (finding (check intake-spray) (result speed-changes) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (warn (caution two-stroke-lean-seizure))))

(defrule warn-two-stroke-screws-off
  "[common-practice] Screws far from the book on a two-stroke: set them rich before it is opened up."
  (logical
    (has (feature two-stroke))
    (finding (check mixture-screw-turns) (result far-off) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (warn (caution two-stroke-lean-seizure))))

(defrule warn-two-stroke-oil-short
  "[common-practice] Too little oil in the mix: not another minute on it."
  (logical
    (has (feature two-stroke))
    (finding (check mix-ratio-asked) (result too-little-oil) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (warn (caution two-stroke-lean-seizure)))
  (assert (warn (caution waste-fuel))))

(defrule warn-screws-sealed
  "[common-practice] Screws far from the book have been played with: caps and stops stay on, and
   the setting goes back to the maker's."
  (logical
    (finding (check mixture-screw-turns) (result far-off) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution emission-sealed-screws))))

(defrule warn-tipping
  "[common-practice] When this one is laid over: plug up, carburettor up, fuel out first."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (warn (caution lifting-tipping))))

(defrule warn-broken-spring
  "[common-practice] A broken or wound-up recoil spring comes out like a blade."
  (logical
    (finding (check rope-and-spring-look) (result broken|frayed-or-slow) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution recoil-spring)))
  (assert (warn (caution eye-protection))))

(defrule warn-key-job
  "[common-practice] The flywheel comes off for this: puller or knock-off nut by the book, no
   lever behind it and no hammer on the shaft."
  (logical
    (finding (check flywheel-key-look) (result sheared) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution flywheel-puller)))
  (assert (warn (caution crank-kickback))))

(defrule warn-pump-dry
  "[common-practice] This pump has stood dry: no running until it is full."
  (logical
    (finding (check pump-primed) (result dry) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution pump-never-dry))))

(defrule warn-cracked-lead
  "[common-practice] A cracked lead or boot bites the hand that holds it while it runs."
  (logical
    (finding (check plug-lead-look) (result loose-or-cracked) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution ignition-voltage))))

(defrule warn-wet-test-oil
  "[common-practice] Oil was put in the cylinder: first pulls with the plug out and a rag over
   the hole, and mind the eyes."
  (logical
    (finding (check compression-wet) (result rises|no-rise) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution oil-on-cylinder-wet-test)))
  (assert (warn (caution eye-protection))))

(defrule warn-fuel-in-sump
  "[common-practice] Oil with petrol in it burns: drained cold, kept apart, no flame."
  (logical
    (finding (check oil-smells-of-fuel) (result yes) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution fuel-vapour)))
  (assert (warn (caution used-oil))))

(defrule warn-clutch-dust
  "[common-practice] A worn clutch or brake is full of dust that is not to be blown about or
   breathed."
  (logical
    (finding (check clutch-look) (result worn-or-oily|stuck-or-spring-broken)
      (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution asbestos-like-dust))))

(defrule warn-exhaust-valves-spitting
  "[common-practice] It spits back through the carburettor: keep the face and any spray away from
   the intake, filter box on."
  (logical
    (complained (complaint backfires-intake)))
  =>
  (assert (warn (caution spray-fire)))
  (assert (warn (caution fuel-vapour))))

(defrule warn-stop-lead-is-off
  "[common-practice] The stop wire has been off the coil: the switch does not stop it until it is
   back on."
  (logical
    (finding (check spark-with-kill-lead-off)))
  =>
  (assert (warn (caution kill-lead-isolate))))

(defrule warn-cutout-unplugged
  "[common-practice] The oil cut-out has been unplugged: plug it in again, or the next low oil
   costs the engine."
  (logical
    (finding (check oil-cutout-disconnected)))
  =>
  (assert (warn (caution kill-lead-isolate)))
  (assert (warn (caution interlock-never-bypass))))

(defrule warn-too-much-alcohol
  "[common-practice] The petrol holds more alcohol than these engines may have: drain it, do not
   thin it."
  (logical
    (finding (check ethanol-content) (result over-limit) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution ethanol-limit)))
  (assert (warn (caution waste-fuel))))

(defrule warn-generator-overrated-load
  "[common-practice] Asked for more than its rating: ask what hangs on it, and whether it is
   joined to the house."
  (logical
    (finding (check generator-load-asked) (result over-rating) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution generator-back-feed))))

(defrule warn-splitter-oil-low
  "[common-practice] Hydraulic oil is missing: look for where it went with card, never with a
   hand."
  (logical
    (finding (check hydraulic-oil-level) (result low) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution hydraulic-injection))))

(defrule warn-no-starting-fluid-two-stroke
  "[common-practice] No starting fluid in a two-stroke, however it was asked for: it carries no oil
   and washes bore and bearings dry. A few drops of its own mix tell the same."
  (logical
    (has (feature two-stroke))
    (complained (complaint no-start-cold|hard-start-cold|no-start-hot|after-storage)))
  =>
  (assert (warn (caution starting-fluid))))

(defrule warn-no-starting-fluid-heated
  "[common-practice] No starting fluid where a heat element or hot intake can light it: it goes off
   in the throat, and in your face."
  (logical
    (has (feature auto-choke-heat))
    (complained (complaint no-start-cold|hard-start-cold|no-start-hot|after-storage)))
  =>
  (assert (warn (caution starting-fluid))))

(defrule warn-gas-fuelled
  "[common-practice] It runs on gas: bottle shut before anything is looked at, and nothing on the
   gas side is undone here."
  (logical
    (has (feature gas-fuel)))
  =>
  (assert (warn (caution gaseous-fuel))))

(defrule warn-blade-runs-on
  "[published cfr-16-1205 section 1205.5] The blade takes more than three seconds to stop: the
   mower is not used and does not go back until it does."
  (logical
    (finding (check blade-stop-time) (result too-long) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (warn (caution blade-brake)))
  (assert (warn (caution plug-lead-off))))

(defrule advise-set-right-first
  "[common-practice] What was found shut, switched off or empty is put right first and it is tried
   again by the book: all other checks wait for that."
  (logical
    (or (finding (check fuel-tap-position|fuel-level) (result shut|empty) (sure ?s1&:(> ?s1 0.4)))
        (finding (check stop-switch-position) (result off) (sure ?s1&:(> ?s1 0.4))))
    (not (finding (check runs-at-all|when-it-dies) (result runs|keeps-running))))
  =>
  (assert (advise (about set-right-first))))

(defrule advise-make-interlocks-first
  "[common-practice] Bar held, seat taken, drive and tool out: make all of it and try again by the
   book before anything is taken apart."
  (logical
    (finding (check interlock-state|load-engaged) (result not-made|engaged) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check runs-at-all|when-it-dies) (result runs|keeps-running))))
  =>
  (assert (advise (about set-right-first))))
