; Rules of the small clean knowledge; see facts/machines.clp.

(defrule shut-tap-explains-no-flow
  "[common-practice] With the tap shut no fuel can run: the line says nothing."
  (logical (finding (check tap-position) (result shut)) (finding (check fuel-flow) (result none)))
  =>
  (assert (weakens (check fuel-flow) (by 0.5))))

(defrule flow-shows-tap-open
  "[common-practice] Fuel runs, so the tap is open."
  (logical (has (feature fuel-tap)) (has (feature magneto)) (finding (check fuel-flow) (result runs)))
  =>
  (assert (implies (check tap-position) (result open) (strength 0.9))))

(defrule worn-rings-advice
  "[common-practice] Say what an engine costs before more minutes go in."
  (logical (belief (fault rings-worn) (chance ?p&:(> ?p 0.5))))
  =>
  (assert (advise (about worth))))
