; The rules of the small knowledge.
(defrule lacking-part-rules-out-fault
  "[common-practice] A part that is not there cannot be at fault."
  (logical (fault-needs (fault ?f) (feature ?x)) (lacks (feature ?x)))
  =>
  (assert (rules-out (kind fault) (id ?f))))

(defrule judged-by-the-only-bands
  "[common-practice] There is one set of limits for every engine."
  (logical (reading (check squeeze)))
  =>
  (assert (judge-by (check squeeze) (bands squeeze-any))))

(defrule wet-plug-implies-fuel
  "[estimate] A plug that is wet has had fuel and compression enough to draw it."
  (logical (finding (check plug-look) (result wet) (sure ?s&:(> ?s 0.4))))
  =>
  (assert (implies (check squeeze) (result good) (strength 0.3))))

(defrule weak-squeeze-speaks
  "[estimate] Weak on the gauge speaks for the rings."
  (logical (finding (check squeeze) (result weak)))
  =>
  (assert (speaks (fault rings-worn) (decibans 3))))

(defrule chain-of-two
  "[estimate] What is implied is looked at first."
  (logical (implies (check squeeze) (result good)))
  =>
  (assert (pointless (check squeeze))))
