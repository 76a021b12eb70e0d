; Rules with mistakes on purpose, for the check of what vet prints.
(defrule calls-out "[estimate] It would run a program."
  (logical (finding (check spark-test) (result none)))
  =>
  (system "true"))

(defrule no-basis "It does not say what it rests on."
  (logical (finding (check spark-test) (result none)))
  =>
  (assert (speaks (fault coil-dead) (decibans 1))))
