(deffacts checks "checks"
  (check (id fuel-age) (name "age of the fuel") (system use) (kind ask) ; advice: fits-nowhere
    (ask "How old is the fuel in the tank?") (results fresh old)
    (labels "this month's" "older") (means "Not the fuel." "It may have gone off.")
    (anyway 0.2) (needs two-stroke fuel-tap) (minutes 1) (basis common-practice))
  (check (id tap-position) (name "fuel tap") (system fuel) (kind look)
    (ask "Is the fuel tap open?") (results open shut)
    (labels "open" "shut") (means "Fuel can run." "That is all it was.")
    (anyway 0.05) (minutes 0.5) (steps "Look along the handle.") (needs fuel-tap)
    (basis common-practice))
  (check (id fuel-flow) (name "flow at the carburettor") (system fuel) (kind try)
    (engine stopped) (ask "Line off: does fuel run?") (results runs none)
    (labels "runs" "nothing") (means "Feed is clear." "Shut or blocked before here.")
    (anyway 0.03) (minutes 3) (off tank-cap) (steps "Line off into a jar, cap loose.")
    (mistakes "Cap left tight.") (cautions fuel-vapour) (basis common-practice))
  (check (id jet-look) (name "main jet") (system fuel) (kind look) (engine stopped)
    (ask "Is light seen through the jet?") (results clear blocked)
    (labels "clear" "blocked") (means "Jet is good." "Fuel cannot pass it.")
    (anyway 0.02) (minutes 2) (off carburettor) (steps "Hold it to the light.")
    (basis common-practice))
  (check (id compression) (name "compression") (system compression) (kind measure)
    (engine cranking) (ask "What does the gauge show?") (results right low)
    (labels "right" "low") (means "Rings and valves hold." "It leaks past rings or valves.")
    (anyway 0.05) (minutes 6) (quantity pressure) (unit "kPa") (tolerance 20)
    (tools "gauge") (steps "Throttle open, crank until the needle stands.")
    (mistakes "Throttle shut.") (cautions hot-parts) (basis common-practice)))

(deffacts bands "what readings mean"
  (bands (id compression-any) (check compression) (results low right) (limits 450)
    (unit "kPa") (basis common-practice))
  (bands (id compression-four-stroke) (check compression) (needs four-stroke)
    (results low right) (limits 500) (unit "kPa") (basis common-practice))
  (bands (id compression-two-stroke) (check compression) (needs two-stroke)
    (results low right) (limits 600) (unit "kPa") (basis common-practice)))

(deffacts elsewhere "for machines that there are not"
  (feature (id spark-plug) (name "spark plug") (group parts) (ask "Is there a spark plug?")) ; advice: fits-nowhere
  (bands (id compression-of-nothing) (check compression) (needs spark-plug) ; advice: fits-nowhere
    (results low right) (limits 100) (unit "kPa") (basis estimate))
  (base-rate (fault tap-shut) (class saw) (chance 0.1) (basis estimate))) ; advice: fits-nowhere
