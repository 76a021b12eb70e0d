; A small clean knowledge for the tests of vet: made up, and no more than each kind of
; finding needs. Samples replace single files of it.

(deffacts features "what machines have"
  (feature (id four-stroke) (name "four-stroke engine") (group stroke) (one-of yes)
    (ask "Is there oil in a sump of its own?"))
  (feature (id two-stroke) (name "two-stroke engine") (group stroke) (one-of yes)
    (ask "Does the oil go into the petrol?"))
  (feature (id fuel-tap) (name "fuel tap") (group fuel-parts)
    (ask "Can the fuel be shut off by hand?")))

(deffacts classes "kinds of machine"
  (machine-class (id mower) (name "mower") (has four-stroke) (may fuel-tap) (basis estimate))
  (machine-class (id saw) (name "saw") (has two-stroke) (basis estimate)))
