(deffacts repairs "repairs"
  (repair (id open-tap) (name "open the tap") (minutes 1) (steps "Open it; show the owner.")
    (cautions fuel-vapour) (basis common-practice))
  (repair (id clean-jet) (name "clean the jet") (minutes 20) (off carburettor)
    (steps "Clean, blow out, look through.") (cautions fuel-vapour) (basis common-practice))
  (repair (id fit-rings) (name "fit new rings") (minutes 120) (parts-cost 25)
    (steps "Strip, measure the bore, fit.") (cautions hot-parts) (basis common-practice)))
