; Used by one thing only: "hood" lies over another cover, "rubber-pads" is what that cover needs.
(deffacts covers "what comes off"
  (cover (id air-box) (name "air filter box") (minutes-off 2) (minutes-on 2) (run-without no)
    (cautions hot-parts) (refit "Gasket whole.") (basis common-practice))
  (cover (id hood) (name "hood") (minutes-off 1) (minutes-on 1) (run-without yes)
    (needs rubber-pads) (cautions hot-parts) (refit "Catches home.") (basis common-practice))
  (cover (id carburettor) (name "carburettor") (under air-box) (minutes-off 8) (minutes-on 10)
    (run-without no) (cautions fuel-vapour) (refit "O-ring there?") (basis common-practice))
  (cover (id tank-cap) (name "tank cap") (under hood) (minutes-off 0) (minutes-on 0.1)
    (run-without yes) (cautions fuel-vapour) (refit "Vent clear.") (basis common-practice)))
