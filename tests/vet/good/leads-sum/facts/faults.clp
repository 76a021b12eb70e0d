(deffacts faults "faults"
  (fault (id tap-shut) (name "fuel tap shut") (system use) (sort use) (needs fuel-tap)
    (base-rate 0.02) (is "The tap is shut.") (comes-about "Shut for the journey.")
    (shows "No fuel at all.") (looks-like jet-blocked tap-position) (repair open-tap)
    (proof "Starts and runs five minutes.") (basis common-practice))
  (fault (id jet-blocked) (name "main jet blocked") (system fuel) (sort dirt)
    (base-rate 0.05) (is "Gum in the main jet.") (comes-about "Stood with fuel in it.")
    (shows "Runs on choke only.") (looks-like rings-worn jet-look) (repair clean-jet)
    (proof "Full load ten minutes.") (basis common-practice))
  (fault (id rings-worn) (name "piston rings worn") (system compression) (sort wear)
    (base-rate 0.02) (is "Rings no longer seal.") (comes-about "Dust and hours.")
    (shows "Weak, smokes.") (looks-like jet-blocked compression) (repair fit-rings)
    (proof "Compression as the card says.") (basis common-practice)))

(deffacts leads "what owners say of them"
  (leads (fault tap-shut) (complaint no-start) (chance 0.9) (basis estimate))
  (leads (fault jet-blocked) (complaint no-start) (chance 0.5) (basis estimate))
  (leads (fault jet-blocked) (complaint weak) (chance 0.4) (basis estimate))
  (leads (fault rings-worn) (complaint weak) (chance 0.7) (basis estimate)))

(deffacts signs "what they show"
  (sign (fault tap-shut) (check tap-position) (result shut) (chance always) (basis estimate))
  (sign (fault tap-shut) (check fuel-flow) (result none) (chance always) (basis estimate))
  (sign (fault jet-blocked) (check jet-look) (result blocked) (chance usually) (basis estimate))
  (sign (fault jet-blocked) (check fuel-age) (result old) (chance often) (basis estimate))
  (sign (fault rings-worn) (check compression) (result low) (chance usually) (basis estimate)))

(deffacts rates "where a class differs"
  (base-rate (fault rings-worn) (class saw) (chance 0.04) (basis estimate)))
