; By what a reading is judged: the maker's figure from the spec card first, then the limits
; for just this kind of engine, then the general ones.

(defrule reading-by-spec-card
  "[common-practice] The maker's figure for this engine comes before any class figure."
  (logical (reading (check ?c)) (card (check ?c)))
  =>
  (assert (judge-by (check ?c) (bands spec-card))))

(defrule reading-by-most-particular-bands
  "[common-practice] With no maker's figure, the limits for the most particular kind of engine that fits are used."
  (logical
    (reading (check ?c))
    (not (card (check ?c)))
    (bands-for (bands ?b) (check ?c) (count ?n))
    (not (rules-out (kind bands) (id ?b)))
    (not (and (bands-for (bands ?other&~?b) (check ?c) (count ?m&:(> ?m ?n)))
              (not (rules-out (kind bands) (id ?other))))))
  =>
  (assert (judge-by (check ?c) (bands ?b))))
