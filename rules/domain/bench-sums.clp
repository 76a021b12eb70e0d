; Rules that do sums: bench arithmetic (docs/arithmetic.md) on readings and on what was given of
; machine and day. The functions take plain numbers in the units of their names; where a sum does
; not hold its answer is no number and the rule stays quiet.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/bench-sums.json. Check with: pullcord vet

(defrule sums-compression-to-sea-level
  "[common-practice] Limits for compression are for near sea level: the reading is taken at what
   the same engine would show down there, in standard air."
  (logical
    (given (what altitude) (value ?h&:(> ?h 300)))
    (reading (check compression) (value ?p))
    (not (card (check compression) (from measured))))
  =>
  (assert (counts-as (check compression) (value (sea-level-psi ?p ?h)))))

(defrule sums-compression-over-ratio
  "[common-practice] More than this compression ratio can press even with no heat lost: wrong
   gauge, oil or fuel lying in the cylinder, or the ratio is not as told. Measure again."
  (logical
    (given (what compression-ratio) (value ?r))
    (reading (check compression) (value ?p&:(> ?p (most-compression-psi ?r 0)))))
  =>
  (assert (weakens (check compression) (by 0.8))))

(defrule sums-black-plug-thin-air
  "[common-practice] In air this thin a jet set for low ground runs rich; a black plug is the height
   before it is the carburettor."
  (logical
    (given (what altitude) (value ?h&:(< (air-kg-m3 ?h 15) 1.09)))
    (finding (check plug-look) (result black-dry) (sure ?s&:(> ?s 0.4)))
    (has (feature fixed-jet)))
  =>
  (assert (weakens (check plug-look) (by 0.5))))

(defrule sums-hertz-against-tachometer
  "[published navedtra-14177 p. 3-14] Hertz times 120 by poles is the engine speed, and it is not
   what the tachometer shows: that is set for other sparks a turn, or the poles are not as told."
  (logical
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (given (what poles) (value ?n))
    (reading (check output-frequency) (value ?f))
    (reading (check top-speed) (value ?s&:(or (> ?s (* 1.08 (engine-rpm ?f ?n)))
                                              (< ?s (* 0.92 (engine-rpm ?f ?n)))))))
  =>
  (assert (clash (check-a output-frequency) (check-b top-speed))))

(defrule sums-hertz-say-slow
  "[published navedtra-14177 p. 3-14] The hertz pass for a set of either mains, but with these poles
   they are an engine speed under the one on the card."
  (logical
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (given (what poles) (value ?n))
    (finding (check output-frequency) (result right))
    (reading (check output-frequency) (value ?f))
    (card (check top-speed) (low ?l&:(< (engine-rpm ?f ?n) ?l)))
    (not (reading (check top-speed))))
  =>
  (assert (implies (check top-speed) (result low) (strength 0.95)))
  (assert (weakens (check output-frequency) (by 1))))

(defrule sums-hertz-say-fast
  "[published navedtra-14177 p. 3-14] The hertz pass for a set of either mains, but with these poles
   they are an engine speed over the one on the card."
  (logical
    (has (feature generator-end))
    (not (has (feature inverter-generator)))
    (given (what poles) (value ?n))
    (finding (check output-frequency) (result right))
    (reading (check output-frequency) (value ?f))
    (card (check top-speed) (high ?t&:(> (engine-rpm ?f ?n) ?t)))
    (not (reading (check top-speed))))
  =>
  (assert (implies (check top-speed) (result high) (strength 0.95)))
  (assert (weakens (check output-frequency) (by 1))))

(defrule sums-blade-tip-too-fast
  "[common-practice] With a blade of this length the tip runs over 19 000 feet a minute, the usual limit for
   mowers: bring the speed down before anything else."
  (logical
    (has (feature blade-on-crankshaft))
    (given (what blade-length) (value ?b))
    (reading (check top-speed) (value ?s&:(> (blade-tip-m-s ?b ?s) 96.52))))
  =>
  (assert (warn (caution overspeed)))
  (assert (advise (about blade-tip-speed))))

(defrule sums-petrol-age-fresh
  "[published tm-5-4240-501-14p tpub p. 285] By its age the petrol is inside the 30 days after which
   tank and carburettor should be drained."
  (logical (given (what petrol-age) (value ?d&:(= (petrol-stage ?d) 0))))
  =>
  (assert (implies (check fuel-age) (result fresh) (strength 0.9))))

(defrule sums-petrol-age-months
  "[common-practice] By its age the petrol is past the 30 days after which it should be drained."
  (logical (given (what petrol-age)
                  (value ?d&:(and (> (petrol-stage ?d) 0) (< (petrol-stage ?d) 3)))))
  =>
  (assert (implies (check fuel-age) (result month-old) (strength 0.9))))

(defrule sums-petrol-age-season
  "[common-practice] Past three months petrol has lost its light ends."
  (logical (given (what petrol-age) (value ?d&:(= (petrol-stage ?d) 3))))
  =>
  (assert (implies (check fuel-age) (result over-season) (strength 0.8))))

(defrule sums-old-blend-parts
  "[common-practice] A blend past two months has had time to draw the water that it holds, and to part
   when it turned cold. Look at a settled sample before a jet is blamed."
  (logical
    (given (what petrol-age) (value ?d&:(> (petrol-stage ?d) 1)))
    (reading (check ethanol-content) (value ?e&:(> (water-held-ml ?e 1) 2)))
    (not (finding (check water-in-sample))))
  =>
  (assert (ask-first (check water-in-sample) (fault main-jet-blocked))))

(defrule sums-blend-leans-white-plug
  "[common-practice] A blend this strong leans a fixed jet by more than a twentieth: a white plug is
   the fuel before it is a blocked jet or an air leak."
  (logical
    (reading (check ethanol-content) (value ?e&:(> (ethanol-lambda 0 ?e) 1.05)))
    (finding (check plug-look) (result white-blistered) (sure ?s&:(> ?s 0.4)))
    (has (feature fixed-jet)))
  =>
  (assert (ask-first (check fresh-fuel-trial) (fault main-jet-blocked)))
  (assert (ask-first (check fresh-fuel-trial) (fault intake-gasket-leak))))

(defrule sums-volts-between-the-mains
  "[common-practice] Between 120 and 230 V is right on no plate: without one it is taken for a
   230 V set that gives too little, as half of it on a 115 V set."
  (logical
    (has (feature generator-end))
    (reading (check output-voltage) (value ?v&:(> ?v 145)&:(< ?v 195)))
    (not (card (check output-voltage))))
  =>
  (assert (counts-as (check output-voltage) (value (/ ?v 2)))))
