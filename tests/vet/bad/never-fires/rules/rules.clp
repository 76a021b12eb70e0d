; Rules of the small clean knowledge; see facts/machines.clp.

(defrule shut-tap-explains-no-flow
  "[common-practice] With the tap shut no fuel can run: the line says nothing."
  (logical (finding (check tap-position) (result shut))
    (finding (check tap-position) (result open)) ; advice: never-fires
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

(defrule on-another-result
  "[common-practice] Ruled out by its own condition."
  (logical
    (finding (check fuel-flow) (result runs))
    (not (finding (check fuel-flow) (result runs))) ; advice: never-fires
  )
  =>
  (assert (advise (about worth))))

(defrule of-no-complaint
  "[common-practice] Nobody complains so."
  (logical
    (complained (complaint no-start) (runs yes)) ; advice: never-fires
  )
  =>
  (assert (advise (about worth))))

(defrule nobody-says-so
  "[common-practice] No rule doubts compression."
  (logical
    (weakens (check compression)) ; advice: never-fires
  )
  =>
  (assert (advise (about worth))))

(defrule reads-what-is-asked
  "[common-practice] Age is asked, not measured."
  (logical
    (reading (check fuel-age) (value ?x)) ; advice: never-fires
  )
  =>
  (assert (advise (about worth))))

(defrule saw-with-a-tap ; advice: never-fires
  "[common-practice] Saws have no tap here."
  (logical
    (machine (class saw))
    (finding (check tap-position) (result shut))
  )
  =>
  (assert (advise (about worth))))

(defrule tap-without-a-tap ; advice: never-fires
  "[common-practice] It lacks what it needs."
  (logical
    (lacks (feature fuel-tap))
    (finding (check tap-position) (result shut))
  )
  =>
  (assert (advise (about worth))))

