; "magneto" is matched by a rule only; "battery-fed" by nothing, but it is one of a choice.
(deffacts features "what machines have"
  (feature (id four-stroke) (name "four-stroke engine") (group stroke) (one-of yes)
    (ask "Is there oil in a sump of its own?"))
  (feature (id two-stroke) (name "two-stroke engine") (group stroke) (one-of yes)
    (ask "Does the oil go into the petrol?"))
  (feature (id magneto) (name "magneto") (group ignition) (one-of yes)
    (ask "Does it make its own spark?"))
  (feature (id battery-fed) (name "battery ignition") (group ignition) (one-of yes)
    (ask "Does a battery feed the coil?"))
  (feature (id rubber-pads) (name "rubber pads") (group looks) (ask "Does the hood lie on pads?"))
  (feature (id fuel-tap) (name "fuel tap") (group fuel-parts)
    (ask "Can the fuel be shut off by hand?")))

(deffacts classes "kinds of machine"
  (machine-class (id mower) (name "mower") (has four-stroke magneto)
    (may fuel-tap rubber-pads battery-fed) (basis estimate))
  (machine-class (id saw) (name "saw") (has two-stroke magneto) (basis estimate)))
