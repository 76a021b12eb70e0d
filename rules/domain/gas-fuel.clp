; Engines run on bottled or piped gas. What petrol does wrong they cannot have, and no petrol goes
; into them. The gas side itself is handed over in hand-over.clp. One rule per (defrule ...);
; conditions inside (logical ...). Check with: pullcord vet

(defrule gas-has-no-petrol-faults
  "[common-practice] It runs on gas: nothing that petrol does wrong can be wrong with it."
  (logical (has (feature gas-fuel)))
  =>
  (assert (rules-out (kind fault) (id fuel-stale)))
  (assert (rules-out (kind fault) (id water-in-fuel)))
  (assert (rules-out (kind fault) (id diesel-in-petrol)))
  (assert (rules-out (kind fault) (id premix-in-four-stroke)))
  (assert (rules-out (kind fault) (id too-much-ethanol)))
  (assert (rules-out (kind fault) (id tank-empty)))
  (assert (rules-out (kind fault) (id tank-leaking)))
  (assert (rules-out (kind fault) (id tank-overfilled)))
  (assert (rules-out (kind fault) (id dirt-in-tank)))
  (assert (rules-out (kind fault) (id fuel-line-kinked)))
  (assert (rules-out (kind fault) (id fuel-line-cracked)))
  (assert (rules-out (kind fault) (id engine-flooded)))
  (assert (rules-out (kind fault) (id fuel-in-oil)))
  (assert (rules-out (kind fault) (id vapour-lock)))
  (assert (rules-out (kind fault) (id idle-passages-blocked)))
  (assert (rules-out (kind fault) (id carburettor-icing))))

(defrule gas-has-no-petrol-to-look-at
  "[common-practice] It runs on gas: there is no petrol in it to look at, to smell or to change."
  (logical (has (feature gas-fuel)))
  =>
  (assert (rules-out (kind check) (id fuel-age)))
  (assert (rules-out (kind check) (id fuel-look-and-smell)))
  (assert (rules-out (kind check) (id water-in-sample)))
  (assert (rules-out (kind check) (id ethanol-content)))
  (assert (rules-out (kind check) (id fuel-level)))
  (assert (rules-out (kind check) (id tank-inside)))
  (assert (rules-out (kind check) (id cap-loosened)))
  (assert (rules-out (kind check) (id vent-look)))
  (assert (rules-out (kind check) (id fuel-line-look)))
  (assert (rules-out (kind check) (id fuel-leak-where)))
  (assert (rules-out (kind check) (id air-in-line)))
  (assert (rules-out (kind check) (id overflow)))
  (assert (rules-out (kind check) (id clear-flood-start)))
  (assert (rules-out (kind check) (id fill-height-asked)))
  (assert (rules-out (kind check) (id leak-at-lower-level)))
  (assert (rules-out (kind check) (id carburettor-primed-after-work))))

(defrule unsafe-petrol-into-gas-engine
  "[common-practice] It runs on gas: no petrol in its throat and none fed to it. It may fire back,
   and there may be gas about it."
  (logical (has (feature gas-fuel)))
  =>
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check fresh-fuel-trial))))
