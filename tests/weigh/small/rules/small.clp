; Rules for tests/weigh: one of each kind that weighs. See facts/small.clp.

(defrule small-weak-wet
  "[estimate] Many pulls on full choke wet any plug."
  (logical (finding (check choked) (result many)) (finding (check wet) (result wet)))
  =>
  (assert (weakens (check wet) (by 0.7))))

(defrule small-weak-wet-a-little
  "[estimate] Any pull on full choke wets a plug a little."
  (logical (finding (check choked) (result many|few)) (finding (check wet) (result wet)))
  =>
  (assert (weakens (check wet) (by 0.2))))

(defrule small-void-flash
  "[estimate] With the switch at stop nothing sparks: the test is void."
  (logical (finding (check switch) (result at-stop)) (finding (check flash)))
  =>
  (assert (weakens (check flash) (by 1))))

(defrule small-implies-a
  "[estimate] It ran, so it sparked."
  (logical (finding (check ran) (result ran)))
  =>
  (assert (implies (check flash) (result jumps) (strength 0.75))))

(defrule small-implies-b
  "[estimate] It ran, so it sparked somehow."
  (logical (finding (check ran) (result ran)))
  =>
  (assert (implies (check flash) (result jumps) (strength 0.4))))

(defrule small-implies-c
  "[estimate] It ran, so it sparked, said once more."
  (logical (finding (check ran) (result ran)))
  =>
  (assert (implies (check flash) (result jumps) (strength 0.75))))

(defrule small-speaks
  "[estimate] Wet plug and a good spark: the bowl."
  (logical (finding (check wet) (result wet)) (finding (check flash) (result jumps)))
  =>
  (assert (speaks (fault bowl-floods) (decibans 6))))
