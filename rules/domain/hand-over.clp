; When to stop: work for a licensed electrician, an engine machinist or the maker's workshop, and
; when the honest advice is to scrap it. What the findings say comes first; a belief alone hands
; over only where the next step would be the other trade's.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/hand-over.json. Check with: pullcord vet

(defrule hand-winding-found
  "[common-practice] The electrician found a winding bad: rewinding or a new generator end is his
   and the owner's decision, not bench work."
  (logical
    (finding (check electrician-report) (result winding) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-winding-likely
  "[common-practice] Everything cheap has been ruled out and a winding is left: windings and
   their insulation are tested by a licensed electrician."
  (logical
    (belief (fault generator-winding-open) (chance ?p1&:(> ?p1 0.5))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-no-output-all-good
  "[common-practice] Speed, breaker, brushes and capacitor are right and there is still no
   voltage: what is left are windings, for a licensed electrician."
  (logical
    (finding (check output-voltage) (result none) (sure ?s1&:(> ?s1 0.6)))
    (finding (check generator-breaker) (result in) (sure ?s2&:(> ?s2 0.4)))
    (finding (check generator-brushes) (result good) (sure ?s3&:(> ?s3 0.4)))
    (finding (check capacitor-test) (result good) (sure ?s4&:(> ?s4 0.4)))
    (not (has (feature inverter-generator))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-wet-generator
  "[common-practice] It got wet and gives nothing: its insulation is measured by a licensed
   electrician before it gives power to anybody."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (has (feature generator-end))
    (finding (check output-voltage) (result none) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-wet-generator-told
  "[common-practice] It got wet, runs at its speed and gives nothing: its insulation is measured by
   a licensed electrician before it gives power to anybody."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint no-output))
    (finding (check output-frequency) (result right) (sure ?s2&:(> ?s2 0.4)))
    (finding (check generator-breaker) (result in) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-breaker-trips-unloaded
  "[common-practice] The breaker trips within its rating: a short or an earth fault in the set or
   in what hangs on it is for a licensed electrician."
  (logical
    (finding (check generator-breaker) (result tripped) (sure ?s1&:(> ?s1 0.4)))
    (finding (check generator-load-asked) (result within-rating) (sure ?s2&:(> ?s2 0.4)))
    (finding (check load-removed-run) (result no-change) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-volts-high-speed-right
  "[common-practice] Voltage too high with the speed right: the regulator has let go, and the set
   is unsafe for whatever is plugged in. For a licensed electrician."
  (logical
    (finding (check output-voltage) (result high) (sure ?s1&:(> ?s1 0.6)))
    (finding (check output-frequency) (result right) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (hand-over (to licensed-electrician))))

(defrule hand-inverter-no-output
  "[common-practice] The engine of an inverter set runs right and there is no output: its
   electronics hold a dangerous charge and are changed as a unit by the maker's workshop."
  (logical
    (has (feature inverter-generator))
    (finding (check output-voltage) (result none|low) (sure ?s2&:(> ?s2 0.6)))
    (finding (check generator-breaker) (result in) (sure ?s3&:(> ?s3 0.4)))
    (finding (check runs-at-all) (result runs) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-bent-crank
  "[common-practice] The crankshaft is bent: it is not straightened at the bench. A machinist
   judges it, and a new one mostly costs more than the mower."
  (logical
    (finding (check crankshaft-run-out) (result bent) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-bore-scored
  "[common-practice] The bore is scored: boring or a new cylinder is a machinist's measure and
   the owner's money."
  (logical
    (finding (check bore-look) (result scored) (sure ?s1&:(> ?s1 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-seat-insert-loose
  "[common-practice] A loose seat ring is not staked at the bench: it drops again, and then
   through the piston. Machinist."
  (logical
    (finding (check valve-seat-look) (result insert-loose) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-seat-loose-likely
  "[common-practice] It looks like a loose valve seat: head to a machinist, who cuts and presses
   a new ring."
  (logical
    (belief (fault valve-seat-loose) (chance ?p1&:(> ?p1 0.5))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-seat-burned
  "[common-practice] Seat and face burnt or pitted beyond lapping: seats are cut by a machinist."
  (logical
    (finding (check valve-seat-look) (result burned-or-pitted) (sure ?s1&:(> ?s1 0.4)))
    (finding (check leak-down) (result leaks-badly) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-guide-worn
  "[common-practice] The valve rocks in its guide: reaming and new guides are a machinist's
   work."
  (logical
    (finding (check valve-stem-rock) (result rocks) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result blue) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-main-bearing
  "[common-practice] Main bearings out in an aluminium case: pressing and lining up are a
   machinist's work."
  (logical
    (finding (check bottom-end-strip) (result main-worn) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-case-holed
  "[common-practice] The rod is through the crankcase: nothing on it is worth the work."
  (logical
    (finding (check crankcase-look) (result cracked-or-holed) (sure ?s1&:(> ?s1 0.4)))
    (finding (check how-it-stopped) (result bang-or-crunch) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-rod-broken-likely
  "[common-practice] The connecting rod has let go: tell the owner what an engine costs before
   another minute is put in."
  (logical
    (belief (fault con-rod-broken) (chance ?p1&:(> ?p1 0.5))))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-seized-likely
  "[common-practice] Seized: a free-up by luck does not last. Let the owner decide between a
   cylinder and another machine."
  (logical
    (belief (fault piston-seized) (chance ?p1&:(> ?p1 0.6)))
    (not (finding (check drive-turns-by-hand) (result jammed)))
    (not (finding (check impeller-look) (result worn-or-jammed)))
    (exists
      (or (finding (check recoil-off-turn) (result still-locked))
          (finding (check crank-turn-by-hand) (result locked|tight))))
    (exists
      (or (finding (check piston-through-port|bore-look) (result scored))
          (finding (check oil-level) (result none))
          (finding (check plug-hole-thrown) (result dry)))))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-two-stroke-scored
  "[common-practice] Piston and cylinder of a small two-stroke are scored: a pair costs near the
   machine. Find out why it scored before the owner decides."
  (logical
    (finding (check piston-through-port) (result scored) (sure ?s1&:(> ?s1 0.4)))
    (machine (class string-trimmer|blower|hedge-trimmer)))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-metal-and-knock
  "[common-practice] Metal in the oil and a heavy knock: bearings are gone. Engine exchange or
   scrap, for the owner to decide."
  (logical
    (finding (check oil-look) (result metal-glitter) (sure ?s1&:(> ?s1 0.4)))
    (finding (check knock-sound) (result heavy-knock) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-worn-out-light-machine
  "[common-practice] Rings worn through on a light mower: the work is worth more than the
   machine. Owner decides."
  (logical
    (finding (check leak-down) (result leaks-badly) (sure ?s1&:(> ?s1 0.4)))
    (finding (check leak-down-where) (result breather) (sure ?s2&:(> ?s2 0.4)))
    (finding (check compression-wet) (result rises) (sure ?s3&:(> ?s3 0.4)))
    (machine (class walk-behind-mower)))
  =>
  (assert (hand-over (to scrap-decision))))

(defrule hand-worn-out-bore
  "[common-practice] Bore worn and leaking badly at the breather: a machinist measures whether it
   is worth boring."
  (logical
    (finding (check leak-down) (result leaks-badly) (sure ?s1&:(> ?s1 0.4)))
    (finding (check leak-down-where) (result breather) (sure ?s2&:(> ?s2 0.4)))
    (finding (check bore-look) (result worn|scored) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to engine-machinist))))

(defrule hand-governor-inside
  "[common-practice] Linkage and arm are right and it still overspeeds: the governor inside has
   failed. Not run again until one with the maker's figures has opened it."
  (logical
    (finding (check top-speed) (result high) (sure ?s1&:(> ?s1 0.6)))
    (finding (check governor-linkage-look) (result right) (sure ?s2&:(> ?s2 0.4)))
    (finding (check governor-arm-set) (result right) (sure ?s3&:(> ?s3 0.4)))
    (finding (check governor-pushes-back) (result does-not) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-governor-inside-races
  "[common-practice] The owner says it races, linkage and arm are right, and nothing pushes back:
   no run to measure it. The gear inside is gone: a job for the maker's workshop."
  (logical
    (complained (complaint races))
    (finding (check governor-linkage-look) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check governor-arm-set) (result right) (sure ?s2&:(> ?s2 0.4)))
    (finding (check governor-pushes-back) (result does-not) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-ride-on-drive
  "[common-practice] Belt sound, freewheel rod home, and it does not pull: a sealed drive with its
   oil and pump is for the maker's workshop."
  (logical
    (machine (class ride-on-mower))
    (finding (check belt-look) (result sound) (sure ?s2&:(> ?s2 0.4)))
    (finding (check tool-turns) (result slips|not-at-all) (sure ?s3&:(> ?s3 0.4)))
    (has (feature hydraulic-end))
    (finding (check drive-bypass-look) (result driving) (sure ?s4&:(> ?s4 0.4))))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-splitter-hydraulics
  "[common-practice] Oil at its mark, coupling whole, engine at speed, and the ram does not push:
   pump and valve are tested with gauges by a hydraulics workshop."
  (logical
    (finding (check hydraulic-oil-level) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-coupling-look) (result whole) (sure ?s2&:(> ?s2 0.4)))
    (finding (check top-speed) (result right) (sure ?s3&:(> ?s3 0.6)))
    (complained (complaint drive-slips|pump-weak)))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-oil-pump
  "[common-practice] No oil pressure with the right oil at its mark: pump and bearings are a job
   for one with the maker's figures, and the engine stays off until then."
  (logical
    (finding (check oil-pressure) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check oil-level) (result right) (sure ?s2&:(> ?s2 0.4)))
    (finding (check oil-grade-asked) (result right) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (hand-over (to makers-workshop))))

(defrule hand-gas-side
  "[common-practice] It runs on gas and it sparks: bottle, hose, regulator and mixer are work for a
   licensed gas fitter, not for the bench."
  (logical
    (has (feature gas-fuel))
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.4)))
    (exists (complained (complaint no-start-cold|hard-start-cold|no-start-hot|starts-then-dies
      |runs-on-choke-only|hunts|weak|bogs|no-full-speed|dies-under-load|smoke-black))))
  =>
  (assert (hand-over (to licensed-gas-fitter)))
  (assert (warn (caution gaseous-fuel))))

(defrule hand-gas-leak
  "[common-practice] A smell of gas: bottle shut, doors open, nothing switched, and the licensed
   gas fitter called."
  (logical
    (has (feature gas-fuel))
    (complained (complaint leaks-fuel)))
  =>
  (assert (hand-over (to licensed-gas-fitter)))
  (assert (warn (caution gaseous-fuel))))

(defrule hand-jet-through-skin
  "[common-practice] A jet under the skin looks like a pinprick and is a surgical emergency: to a
   hospital now, and say it was a pressure jet and of what."
  (logical
    (finding (check jet-injury-asked|hydraulic-injury-asked) (result yes) (sure ?s1&:(> ?s1 0.2))))
  =>
  (assert (hand-over (to doctor-now)))
  (assert (warn (caution high-pressure-injection))))

(defrule hand-joined-to-the-house
  "[common-practice] Joined to the house wiring it kills on the line and burns when the mains come
   back: a transfer switch is for a licensed electrician."
  (logical
    (finding (check house-wiring-asked) (result into-the-house) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (hand-over (to licensed-electrician)))
  (assert (warn (caution generator-back-feed))))

(defrule hand-flywheel-broken
  "[common-practice] Fan blades gone or the flywheel cracked: out of balance, and it may burst. Not
   welded, not run. The maker's workshop judges it and says which one fits."
  (logical
    (finding (check flywheel-fan-look) (result blades-broken) (sure ?s1&:(> ?s1 0.6))))
  =>
  (assert (hand-over (to makers-workshop)))
  (assert (warn (caution damaged-flywheel))))

(defrule hand-blade-and-mount-damaged
  "[common-practice] Blade bent and its seat loose after a blow: the shaft end took it too. An
   engine machinist measures it before a new blade goes on."
  (logical
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check blade-look) (result loose-or-bent) (sure ?s2&:(> ?s2 0.4)))
    (finding (check blade-bolt-torque) (result loose) (sure ?s3&:(> ?s3 0.4)))
    (not (finding (check crankshaft-run-out) (result true))))
  =>
  (assert (hand-over (to engine-machinist)))
  (assert (warn (caution damaged-blade))))
