(deffacts repairs "repairs"
  (repair (id open-tap) (name "open the tap") (minutes 1) (steps "Open it; show the owner.")
    (cautions fuel-vapour) (basis common-practice))
  (repair (id clean-jet) (name "clean the jet") (minutes 20) (off carburettor)
    (steps "Clean, blow out, look through.") (cautions fuel-vapour) (basis common-practice))
  (repair (id free-rings) (name "free the rings") (minutes 60) (steps "Soak.") ; advice: unused
    (cautions fuel-vapour) (basis estimate))
  (repair (id fit-rings) (name "fit new rings") (minutes 120) (parts-cost 25)
    (steps "Strip, measure the bore, fit.") (cautions hot-parts) (basis common-practice)))

(deffacts not-used "by nothing"
  (feature (id paint) (name "paint") (group looks) (ask "Is it painted?")) ; advice: unused fits-nowhere
  (caution (id sharp-edges) (text "Gloves.") (defer-to "the manual") (basis estimate)) ; advice: unused
  (cover (id decal) (name "decal") (minutes-off 1) (minutes-on 1) (run-without yes) ; advice: unused
    (cautions hot-parts) (refit "Straight.") (basis estimate)))
