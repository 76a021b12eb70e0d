; Rules of the small clean knowledge; see facts/machines.clp.

(defrule shut-tap-explains-no-flow
  "[common-practice] With the tap shut no fuel can run: the line says nothing."
  (logical (finding (check tap-position) (result shut))
    (not (finding (check tap-position) (result open)))
    (finding (check fuel-flow) (result none)))
  =>
  (assert (weakens (check fuel-flow) (by 0.5))))

(defrule flow-shows-tap-open
  "[common-practice] Fuel runs, so the tap is open."
  (logical (has (feature fuel-tap)) (finding (check fuel-flow) (result runs)))
  =>
  (assert (implies (check tap-position) (result open) (strength 0.9))))

(defrule worn-rings-advice
  "[common-practice] Say what an engine costs before more minutes go in."
  (logical (belief (fault rings-worn) (chance ?p&:(> ?p 0.5))))
  =>
  (assert (advise (about worth))))

(defrule on-the-same-result
  "[common-practice] Said twice."
  (logical
    (finding (check fuel-flow) (result runs))
    (not (finding (check fuel-flow) (result none)))
  )
  =>
  (assert (advise (about worth))))

(defrule one-of-two
  "[common-practice] Either will do."
  (logical
    (or (finding (check fuel-flow) (result runs)) (finding (check fuel-flow) (result none)))
  )
  =>
  (assert (advise (about worth))))

(defrule of-a-complaint
  "[common-practice] Somebody complains so."
  (logical
    (complained (complaint ?) (runs yes|dies))
  )
  =>
  (assert (advise (about worth))))

(defrule somebody-says-so
  "[common-practice] A rule doubts the flow."
  (logical
    (weakens (check ?c&~compression))
  )
  =>
  (assert (advise (about worth))))

(defrule reads-what-is-measured
  "[common-practice] It is measured."
  (logical
    (reading (check compression) (value ?x))
  )
  =>
  (assert (advise (about worth))))

(defrule mower-with-a-tap
  "[common-practice] Mowers may have one."
  (logical
    (machine (class saw|mower))
    (finding (check tap-position) (result shut))
  )
  =>
  (assert (advise (about worth))))

(defrule no-flow-without-a-tap
  "[common-practice] It does not need one."
  (logical
    (lacks (feature fuel-tap))
    (finding (check fuel-flow) (result none))
  )
  =>
  (assert (advise (about worth))))

