; Checks that must not be made as things stand on account of what the engine drives, its governor,
; its stop circuit or its clutch.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/unsafe-driven.json. Check with: pullcord vet

(defrule unsafe-run-pump-dry
  "[common-practice] A pump run dry burns its seal in seconds. Fill it, and connect the water,
   before the engine is run with it."
  (logical
    (finding (check pump-primed) (result dry))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-start-pump-dry
  "[common-practice] The pump is dry, and its seal lasts seconds without water: fill it and
   connect the water before the engine is started."
  (logical
    (finding (check pump-primed) (result dry))
    (has (feature water-pump-end)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check prime-test))))

(defrule unsafe-washer-without-water
  "[common-practice] The supply gives too little water: the washer pump overheats and tears its
   seals. Put the supply right before it is run under load."
  (logical
    (finding (check water-supply-flow) (result too-little))
    (has (feature pressure-pump-end)))
  =>
  (assert (unsafe (check pump-pressure)))
  (assert (unsafe (check unloader-valve)))
  (assert (unsafe (check pump-delivery))))

(defrule unsafe-washer-unloader-stuck
  "[common-practice] With the unloader stuck the pressure has no way out when the trigger shuts.
   Do not run it against a shut gun."
  (logical
    (finding (check unloader-valve) (result stuck)))
  =>
  (assert (unsafe (check pump-pressure))))

(defrule unsafe-run-governor-off
  "[common-practice] With the governor off, binding or wrongly hooked the engine may run away the
   moment it fires. Put the linkage right first."
  (logical
    (finding (check governor-linkage-look) (result off-or-binding))
    (not (has (feature no-governor)))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-vane-stuck
  "[common-practice] A stuck vane cannot close the throttle: the engine runs away. Free it
   first."
  (logical
    (finding (check air-vane-free) (result stuck-or-blocked))
    (has (feature governor-air-vane))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-when-overspeeding
  "[common-practice] It turns faster than it may: rod, flywheel and blade are not made for that.
   No more running until governor and throttle are put right."
  (logical
    (finding (check top-speed) (result high))
    (not (has (feature no-governor))))
  =>
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check muffler-off-run)))
  (assert (unsafe (check filter-off-run)))
  (assert (unsafe (check head-temperature)))
  (assert (unsafe (check charging-voltage)))
  (assert (unsafe (check output-voltage)))
  (assert (unsafe (check output-frequency))))

(defrule unsafe-run-when-races
  "[common-practice] The owner says it races. Look at linkage, spring and throttle with the
   engine stopped before it is started."
  (logical
    (complained (complaint races))
    (not (has (feature no-governor)))
    (not (finding (check governor-linkage-look)))
    (not (finding (check top-speed))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check muffler-off-run)))
  (assert (unsafe (check filter-off-run)))
  (assert (unsafe (check intake-spray))))

(defrule unsafe-run-no-stop
  "[common-practice] The switch does not stop it. Have a sure way to stop it first: fuel tap,
   choke, or the switch mended."
  (logical
    (finding (check stop-switch-works) (result does-not-stop)))
  =>
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check muffler-off-run)))
  (assert (unsafe (check filter-off-run)))
  (assert (unsafe (check intake-spray))))

(defrule unsafe-run-lean-two-stroke
  "[common-practice] Too little oil, or none, in the mix: every minute scores the piston. Drain
   and mix fresh before it runs."
  (logical
    (has (feature two-stroke))
    (finding (check mix-ratio-asked) (result too-little-oil))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-scored-piston
  "[common-practice] The piston is scored: running it only spoils the cylinder that might still
   be saved."
  (logical
    (finding (check piston-through-port) (result scored))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-clutch-stuck-chain
  "[common-practice] With the clutch stuck the chain or blade goes round from the first turn. Not
   run with the tool on."
  (logical
    (finding (check clutch-look) (result stuck-or-spring-broken))
    (has (feature cutting-chain|cutting-head))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-crank-jammed-drive
  "[common-practice] What it drives is jammed. Clear it with the engine stopped and the plug lead
   off before anything is cranked."
  (logical
    (finding (check drive-turns-by-hand) (result jammed)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check cranking-speed)))
  (assert (unsafe (check starter-sound))))

(defrule unsafe-run-loose-mounts
  "[common-practice] Loose on its mounts the engine walks, and belt and blade with it. Tighten it
   first."
  (logical
    (finding (check mounting-bolts) (result loose))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-unbalanced-tool
  "[common-practice] A tool out of balance is not run up to speed. Balance or replace it first."
  (logical
    (finding (check tool-balance) (result out-of-balance)))
  =>
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check idle-speed)))
  (assert (unsafe (check load-removed-run))))

(defrule unsafe-wet-generator
  "[common-practice] A wet generator is neither loaded nor measured. Dry it out first."
  (logical
    (finding (check damp-or-washed) (result yes))
    (has (feature generator-end)))
  =>
  (assert (unsafe (check output-voltage)))
  (assert (unsafe (check output-frequency)))
  (assert (unsafe (check residual-field-flash)))
  (assert (unsafe (check generator-breaker)))
  (assert (unsafe (check capacitor-test))))

(defrule unsafe-flash-inverter
  "[common-practice] An inverter set has no field to flash; a battery on its terminals kills the
   electronics."
  (logical
    (has (feature inverter-generator)))
  =>
  (assert (unsafe (check residual-field-flash))))

(defrule unsafe-flash-burnt-brushes
  "[common-practice] With worn brushes flashing the field burns the rings. Brushes first."
  (logical
    (finding (check generator-brushes) (result worn)))
  =>
  (assert (unsafe (check residual-field-flash))))

(defrule unsafe-spray-hot-engine
  "[common-practice] Spray on a hot head or silencer catches fire. Let it cool, or leave the
   test."
  (logical
    (finding (check head-temperature) (result hot)))
  =>
  (assert (unsafe (check intake-spray))))

(defrule unsafe-spray-blowing-exhaust
  "[common-practice] The exhaust blows at a joint: hot gas next to the spray sets it alight. Mend
   the joint first."
  (logical
    (finding (check exhaust-noise) (result blowing)))
  =>
  (assert (unsafe (check intake-spray))))

(defrule unsafe-run-low-hydraulic-oil
  "[common-practice] A hydraulic pump low on oil draws air and wrecks itself. Fill it before the
   ram is worked."
  (logical
    (finding (check hydraulic-oil-level) (result low))
    (has (feature hydraulic-end)))
  =>
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check top-speed))))

(defrule unsafe-run-interlock-faulty
  "[common-practice] With an interlock switch that fails, nothing stops blade or drive when the
   hand goes off. Repair it before running tests with the tool in."
  (logical
    (finding (check interlock-switch-test) (result faulty) (sure ?s1&:(> ?s1 0.4)))
    (has (feature blade-on-crankshaft|cutting-head))
    (finding (check spark-test) (result jumps) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check idle-speed))))

(defrule unsafe-choke-run-hot-two-stroke
  "[common-practice] A two-stroke that runs only when choked is lean: at full throttle without
   load it seizes. Only short runs, no full speed."
  (logical
    (has (feature two-stroke))
    (finding (check choke-effect) (result runs-only-choked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check muffler-off-run)))
  (assert (unsafe (check filter-off-run)))
  (assert (unsafe (check load-removed-run))))

(defrule unsafe-battery-clamp-by-fuel
  "[common-practice] Clamping a battery throws a spark; not beside a carburettor that runs over."
  (logical
    (finding (check overflow) (result seeps|runs-out) (sure ?s1&:(> ?s1 0.4)))
    (has (feature electric-start)))
  =>
  (assert (unsafe (check starter-direct-feed)))
  (assert (unsafe (check solenoid-voltage))))

(defrule unsafe-crank-locked-by-force
  "[common-practice] It is locked: no starter, no second battery and no lever on the nut until it
   is known what holds it."
  (logical
    (finding (check crank-turn-by-hand) (result locked)))
  =>
  (assert (unsafe (check starter-direct-feed)))
  (assert (unsafe (check battery-crank-voltage)))
  (assert (unsafe (check starter-cable-drop)))
  (assert (unsafe (check ground-side-drop))))

(defrule unsafe-run-shroud-off
  "[common-practice] Without its shroud a fan-cooled engine cooks itself, and the flywheel stands
   open to the hand."
  (logical
    (finding (check shroud-look) (result missing-or-loose))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-rod-through-case
  "[common-practice] There is a hole in the crankcase: it is not turned under power again."
  (logical
    (finding (check crankcase-look) (result cracked-or-holed)))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check fresh-fuel-trial)))
  (assert (unsafe (check compression)))
  (assert (unsafe (check cranking-speed)))
  (assert (unsafe (check starter-direct-feed))))

(defrule unsafe-run-no-oil-pressure
  "[common-practice] The oil pressure does not hold: every minute costs the bearings."
  (logical
    (finding (check oil-pressure) (result low))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-blade-bolt-loose
  "[common-practice] The blade bolt was loose: no running until blade, key and adapter are looked
   at and the bolt is tight to its figure."
  (logical
    (finding (check blade-bolt-torque) (result loose))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-governor-gear-gone
  "[common-practice] The governor does not push back: nothing holds the speed but the hand on the
   throttle."
  (logical
    (finding (check governor-pushes-back) (result does-not))
    (not (finding (check governor-arm-set) (result slipped))))
  =>
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check muffler-off-run)))
  (assert (unsafe (check filter-off-run)))
  (assert (unsafe (check head-temperature))))

(defrule unsafe-generator-volts-high
  "[common-practice] The voltage is too high: with the load off it rises further, and flashing
   the field is out of the question."
  (logical
    (finding (check output-voltage) (result high))
    (has (feature generator-end)))
  =>
  (assert (unsafe (check residual-field-flash)))
  (assert (unsafe (check load-removed-run))))

(defrule unsafe-run-up-air-leak
  "[common-practice] No governor and an air leak at the intake: it may run away lean and seize.
   Seal the joint before it is run up."
  (logical
    (has (feature no-governor))
    (finding (check intake-joint-look) (result loose|gasket-or-ring-bad) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (unsafe (check top-speed)))
  (assert (unsafe (check load-removed-run)))
  (assert (unsafe (check muffler-off-run))))
