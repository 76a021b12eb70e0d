; What can apply to this machine at all. A fault, check, complaint or band is ruled out when
; it needs a feature that the machine lacks; what is not known stays open.

(defrule lacking-part-rules-out-fault
  "[common-practice] A part that this machine has not got cannot be at fault."
  (logical (fault-needs (fault ?f) (feature ?x)) (lacks (feature ?x)))
  =>
  (assert (rules-out (kind fault) (id ?f))))

(defrule lacking-part-rules-out-check
  "[common-practice] A part that this machine has not got cannot be checked."
  (logical (check-needs (check ?c) (feature ?x)) (lacks (feature ?x)))
  =>
  (assert (rules-out (kind check) (id ?c))))

(defrule lacking-part-rules-out-complaint
  "[common-practice] A complaint about a part that this machine has not got belongs to another machine."
  (logical (complaint-needs (complaint ?c) (feature ?x)) (lacks (feature ?x)))
  =>
  (assert (rules-out (kind complaint) (id ?c))))

(defrule lacking-part-rules-out-bands
  "[common-practice] Limits for another kind of engine do not judge this one."
  (logical (bands-needs (bands ?b) (feature ?x)) (lacks (feature ?x)))
  =>
  (assert (rules-out (kind bands) (id ?b))))

(defrule unsure-part-sets-bands-aside
  "[common-practice] Limits for a kind of engine that this one is not known to be are set aside for general ones."
  (logical (bands-needs (bands ?b) (feature ?x)) (not (has (feature ?x))) (not (lacks (feature ?x))))
  =>
  (assert (rules-out (kind bands) (id ?b))))
