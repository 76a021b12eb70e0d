; Templates of the case in hand: what the program asserts (first part) and what rules may
; conclude from it (second part). Conclusions are asserted under (logical ...), so that a
; result taken back takes its conclusions with it.

; ---- asserted by the program -------------------------------------------------------

(deftemplate machine "The machine on the bench."
  (slot class (type SYMBOL)))

(deftemplate has "A feature this machine has."
  (slot feature (type SYMBOL)))

(deftemplate lacks "A feature this machine has not."
  (slot feature (type SYMBOL)))

(deftemplate complained "A complaint the owner made. runs: yes no dies unknown, from the
   complaint."
  (slot complaint (type SYMBOL))
  (slot runs (type SYMBOL)))

(deftemplate finding
  "The result of a check that was made. sure: 0 to 1, how far it is to be believed (the
   person's own certainty, and for a reading how far it lies from the limit)."
  (slot check (type SYMBOL))
  (slot result (type SYMBOL))
  (slot sure (type NUMBER) (range 0 1) (default 1.0)))

(deftemplate reading
  "A measured value, in the unit of its check."
  (slot check (type SYMBOL))
  (slot value (type NUMBER)))

(deftemplate card
  "A figure of the maker's from the spec card of this engine: the lower and upper limit of
   what is right, in the unit of the check, and where it is from."
  (slot check (type SYMBOL))
  (slot low (type NUMBER))
  (slot high (type NUMBER))
  (slot from (type SYMBOL) (allowed-symbols plate makers-sheet measured not-told)
    (default not-told)))

(deftemplate given
  "A figure of the machine or of the day that was told and that no check asks for: altitude in
   m, temperature in degC, petrol-age in days, poles, compression-ratio (8.5 is 8.5:1),
   blade-length in mm."
  (slot what (type SYMBOL)
    (allowed-symbols altitude temperature petrol-age poles compression-ratio blade-length))
  (slot value (type NUMBER)))

(deftemplate belief
  "What the weighing made of it: the chance of one fault, from 0.02 up."
  (slot fault (type SYMBOL))
  (slot chance (type NUMBER) (range 0 1)))

(deftemplate fault-needs "One feature that a fault needs."
  (slot fault (type SYMBOL)) (slot feature (type SYMBOL)))

(deftemplate check-needs "One feature that a check needs."
  (slot check (type SYMBOL)) (slot feature (type SYMBOL)))

(deftemplate complaint-needs "One feature that a complaint needs."
  (slot complaint (type SYMBOL)) (slot feature (type SYMBOL)))

(deftemplate bands-for
  "Bands for a check with the number of their needs; bands-needs names these."
  (slot bands (type SYMBOL)) (slot check (type SYMBOL)) (slot count (type INTEGER)))

(deftemplate bands-needs "One feature that bands need."
  (slot bands (type SYMBOL)) (slot feature (type SYMBOL)))

(deftemplate check-engine "What the engine must be doing for a check."
  (slot check (type SYMBOL)) (slot engine (type SYMBOL)))

; ---- concluded by rules ------------------------------------------------------------
; Every conclusion has a slot rule: it fills itself with the name of the rule that made it.

(deftemplate rules-out
  "This fault, check or complaint cannot apply to this machine."
  (slot kind (type SYMBOL) (allowed-symbols fault check complaint bands))
  (slot id (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate judge-by
  "A reading of this check is judged by these bands (or by the spec card)."
  (slot check (type SYMBOL))
  (slot bands (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate counts-as
  "A reading of this check is judged as if it were this value, in the unit of the check."
  (slot check (type SYMBOL))
  (slot value (type NUMBER))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate implies
  "What the results say about a check that was not made. strength: 0 to 1."
  (slot check (type SYMBOL))
  (slot result (type SYMBOL))
  (slot strength (type NUMBER) (range 0 1))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate weakens
  "A result counts for less here. by: 0 to 1; 1 makes it void."
  (slot check (type SYMBOL))
  (slot by (type NUMBER) (range 0 1))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate clash
  "Two results that cannot both be true: one of the checks wants repeating."
  (slot check-a (type SYMBOL))
  (slot check-b (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate speaks
  "What results in their combination say for (above 0) or against (below 0) a fault, over
   and above its signs, in decibans."
  (slot fault (type SYMBOL))
  (slot decibans (type NUMBER) (range -20 20))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate unsafe
  "This check must not be made now."
  (slot check (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate pointless
  "This check can say nothing new, or cannot be made, now."
  (slot check (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate ask-first
  "Make this check before that fault is taken as proved or a part is bought for it."
  (slot check (type SYMBOL))
  (slot fault (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate hand-over
  "Stop here: this is for someone else. to: the kind of person."
  (slot to (type SYMBOL)
    (allowed-symbols licensed-electrician licensed-gas-fitter engine-machinist
      makers-workshop doctor-now scrap-decision))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate advise
  "Words for the person, from the reason of the rule that made it."
  (slot about (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))

(deftemplate warn
  "A caution that must be shown now."
  (slot caution (type SYMBOL))
  (slot rule (type SYMBOL) (default-dynamic (this-rule))))
