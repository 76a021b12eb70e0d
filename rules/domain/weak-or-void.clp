; When a result counts for less, or for nothing, because of how things stood when it was taken.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/weak-or-void.json. Check with: pullcord vet

(defrule weak-wet-plug-after-choking
  "[common-practice] After many pulls on full choke any sound plug is wet; it says little about
   why the engine will not start."
  (logical
    (finding (check choked-starts-tried) (result many) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check plug-look) (by 0.7))))

(defrule weak-wet-plug-after-priming
  "[common-practice] The prime itself wets the plug when it does not burn."
  (logical
    (finding (check prime-test) (result nothing) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check choked-starts-tried) (result many))))
  =>
  (assert (weakens (check plug-look) (by 0.5))))

(defrule weak-oily-plug-after-tipping
  "[common-practice] Laid on its side, oil runs to the plug of a sound engine."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result oil-wet) (sure ?s2&:(> ?s2 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (weakens (check plug-look) (by 0.4))))

(defrule weak-colour-of-wrong-plug
  "[common-practice] The colour of a plug of the wrong heat range or reach is the plug, not the
   mixture."
  (logical
    (finding (check plug-right-kind) (result wrong) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result black-dry|white-blistered) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check plug-look) (by 0.5))))

(defrule weak-colour-of-new-plug
  "[common-practice] A plug fitted lately has had no time to take its colour; clean and dry says
   little."
  (logical
    (finding (check recent-work) (result ignition|filter-or-service) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result tan-dry) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check plug-look) (by 0.5))))

(defrule weak-black-plug-choke-shut
  "[common-practice] Run with the choke shut, any plug goes black; set the choke right and read
   it again."
  (logical
    (finding (check choke-setting) (result left-shut) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result black-dry) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check plug-look) (by 0.3))))

(defrule weak-no-spark-switch-off
  "[common-practice] With the stop switch off there must be no spark; the test says nothing."
  (logical
    (finding (check stop-switch-position) (result off))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 1))))

(defrule weak-no-spark-interlock-open
  "[common-practice] With the bar let go or the seat empty the coil is earthed on purpose; hold
   or seat everything and test again."
  (logical
    (finding (check interlock-state) (result not-made))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.4))))

(defrule weak-no-spark-oil-low
  "[common-practice] With the oil low the cut-out takes the spark away on purpose; fill it and
   test again."
  (logical
    (has (feature oil-cutout))
    (finding (check oil-level) (result low|none) (sure ?s2&:(> ?s2 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.3))))

(defrule weak-no-spark-cutout-tilted
  "[common-practice] On a slope the oil runs from the float and the cut-out takes the spark; set
   it level and test again."
  (logical
    (has (feature oil-cutout))
    (finding (check machine-level) (result tilted) (sure ?s2&:(> ?s2 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.3))))

(defrule weak-no-spark-slow-crank
  "[common-practice] A magneto needs speed; turned slowly even a sound one will not jump the
   tester."
  (logical
    (finding (check cranking-speed) (result slow) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.6))))

(defrule weak-no-spark-lazy-rope
  "[common-practice] A frayed or slow rope does not spin the flywheel fast enough for a fair
   spark test."
  (logical
    (finding (check rope-and-spring-look) (result frayed-or-slow) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.5))))

(defrule weak-no-spark-rope-free
  "[common-practice] The rope did not turn the flywheel, so there could be no spark."
  (logical
    (finding (check rope-pull-feel) (result free) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check starter-sound) (result turns-engine))))
  =>
  (assert (weakens (check spark-test) (by 1))))

(defrule weak-no-spark-wet-machine
  "[common-practice] Washed or left in the rain, lead and boot leak their spark away; dry them
   and test again before anything is blamed."
  (logical
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.4))))

(defrule weak-no-spark-loose-lead
  "[common-practice] With the lead loose in its boot the tester is fed by chance; push it home
   and test again."
  (logical
    (finding (check plug-lead-look) (result loose-or-cracked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.3))))

(defrule weak-kill-circuit-read-off
  "[common-practice] With the switch off, the stop wire reads to earth as it should."
  (logical
    (finding (check stop-switch-position) (result off))
    (finding (check kill-circuit-resistance) (result leaks-to-ground) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check kill-circuit-resistance) (by 1))))

(defrule weak-kill-circuit-interlock
  "[common-practice] With the bar let go or the seat empty, the stop wire reads to earth as it
   should."
  (logical
    (finding (check interlock-state) (result not-made))
    (finding (check kill-circuit-resistance) (result leaks-to-ground) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check kill-circuit-resistance) (by 0.9))))

(defrule weak-kill-circuit-oil-low
  "[common-practice] With the oil low the cut-out earths the stop wire as it should."
  (logical
    (has (feature oil-cutout))
    (finding (check oil-level) (result low|none) (sure ?s2&:(> ?s2 0.4)))
    (finding (check kill-circuit-resistance) (result leaks-to-ground) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check kill-circuit-resistance) (by 0.85))))

(defrule weak-secondary-through-bad-boot
  "[common-practice] Measured through a bad boot the coil reads open; take the boot off and
   measure at the bare lead."
  (logical
    (finding (check plug-boot-resistance) (result open-or-high) (sure ?s1&:(> ?s1 0.4)))
    (finding (check coil-secondary) (result open-or-high) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check coil-secondary) (by 0.75))))

(defrule weak-primary-points-shut
  "[common-practice] Shut points lie across the primary and it reads low; a slip of card between
   them first."
  (logical
    (has (feature breaker-points))
    (finding (check coil-primary) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check coil-primary) (by 0.5))))

(defrule weak-prime-switch-off
  "[common-practice] Primed with the switch off it cannot fire."
  (logical
    (finding (check stop-switch-position) (result off))
    (finding (check prime-test) (result nothing) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check prime-test) (by 1))))

(defrule weak-prime-interlock-open
  "[common-practice] Primed with the interlock not made it cannot fire."
  (logical
    (finding (check interlock-state) (result not-made))
    (finding (check prime-test) (result nothing) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check prime-test) (by 0.9))))

(defrule weak-prime-on-flooded
  "[common-practice] More fuel into a flooded cylinder fires nothing; blow it out, dry the plug
   and prime again."
  (logical
    (finding (check prime-test) (result nothing) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choked-starts-tried) (result many) (sure ?s2&:(> ?s2 0.4)))
    (finding (check plug-look) (result fuel-wet) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check prime-test) (by 0.75))))

(defrule weak-prime-on-overflow
  "[common-practice] The carburettor runs over, so the cylinder had fuel in plenty before the
   prime; that it did not fire says little."
  (logical
    (finding (check overflow) (result runs-out) (sure ?s1&:(> ?s1 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check prime-test) (by 0.6))))

(defrule weak-prime-rope-free
  "[common-practice] The rope did not turn the engine, so the prime could not fire."
  (logical
    (finding (check rope-pull-feel) (result free) (sure ?s1&:(> ?s1 0.4)))
    (finding (check prime-test) (result nothing) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check starter-sound) (result turns-engine))))
  =>
  (assert (weakens (check prime-test) (by 1))))

(defrule weak-start-switch-off
  "[common-practice] Tried with the switch off, no engine starts."
  (logical
    (finding (check stop-switch-position) (result off))
    (finding (check runs-at-all) (result no-fire) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 1))))

(defrule weak-start-interlock-open
  "[common-practice] Tried with the interlock not made, no engine starts."
  (logical
    (finding (check interlock-state) (result not-made))
    (finding (check runs-at-all) (result no-fire) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 0.9))))

(defrule weak-start-tank-empty
  "[common-practice] Tried with an empty tank: fill it and try again."
  (logical
    (finding (check fuel-level) (result empty))
    (finding (check runs-at-all) (result no-fire|fires-then-dies) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 0.9))))

(defrule weak-start-tap-shut
  "[common-practice] Tried with the tap shut: it runs the bowl empty at best."
  (logical
    (finding (check fuel-tap-position) (result shut))
    (finding (check runs-at-all) (result no-fire|fires-then-dies) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 0.8))))

(defrule weak-start-no-choke-cold
  "[common-practice] Tried cold with the choke open: most engines only cough. Choke it and try
   again."
  (logical
    (finding (check choke-setting) (result left-open) (sure ?s1&:(> ?s1 0.4)))
    (finding (check runs-at-all) (result no-fire|fires-then-dies) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 0.5))))

(defrule weak-start-load-engaged
  "[common-practice] Tried with the drive in, it turns too slowly to fire; free the drive and try
   again."
  (logical
    (finding (check load-engaged) (result engaged) (sure ?s1&:(> ?s1 0.4)))
    (finding (check runs-at-all) (result no-fire) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check runs-at-all) (by 0.5))))

(defrule weak-choke-test-choke-stuck
  "[common-practice] A choke that does not close cannot show what closing it would do."
  (logical
    (finding (check choke-moves) (result does-not-close) (sure ?s1&:(> ?s1 0.4)))
    (finding (check choke-effect) (result no-help) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check choke-effect) (by 1))))

(defrule weak-oily-foam
  "[common-practice] Foam is oiled on purpose: oil on it says little unless it drips."
  (logical
    (has (feature foam-filter))
    (not (has (feature paper-filter)))
    (finding (check air-filter-look) (result oil-or-fuel-soaked) (sure ?s1&:(> ?s1 0.4)))
    (not (finding (check tipped-over) (result yes)))
    (not (finding (check oil-level) (result high))))
  =>
  (assert (weakens (check air-filter-look) (by 0.3))))

(defrule weak-clean-paper-after-wet
  "[common-practice] Paper that was washed or got wet swells shut and dries looking clean: hold it
   to a lamp, or try ten seconds without it."
  (logical
    (has (feature paper-filter))
    (finding (check damp-or-washed) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check air-filter-look) (result clean) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check air-filter-look) (by 0.4))))
