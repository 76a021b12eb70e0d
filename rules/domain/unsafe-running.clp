; Checks that want the engine running or cranked, and why that must wait: a blow, overspeed, a
; leak, a full cylinder, oil low in an engine that complains of it.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/unsafe-running.json. Check with: pullcord vet

(defrule unsafe-run-after-strike
  "[common-practice] It struck something: not run for any check until blade and shaft end have been
   looked at."
  (logical
    (has (feature blade-on-crankshaft))
    (finding (check struck-something) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (or (not (finding (check blade-look)))
        (not (finding (check crankshaft-run-out))))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-at-overspeed
  "[common-practice] It runs over its speed: stopped, and not run again for any check until the
   governor has been put right."
  (logical
    (finding (check top-speed) (result high) (sure ?s1&:(> ?s1 0.6)))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-run-with-fuel-leak
  "[common-practice] The leak has been found: stop it before the engine is run for anything."
  (logical
    (finding (check fuel-leak-where) (result ~dry) (sure ?s1&:(> ?s1 0.4)))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))

(defrule unsafe-start-with-fuel-leak
  "[common-practice] Petrol outside where it should not be: no start and no spark until it is dry."
  (logical
    (finding (check fuel-leak-where) (result ~dry) (sure ?s1&:(> ?s1 0.4))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check when-it-dies)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check clear-flood-start)))
  (assert (unsafe (check dry-out-test)))
  (assert (unsafe (check starter-sound)))
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check spark-with-new-plug)))
  (assert (unsafe (check spark-with-kill-lead-off))))

(defrule unsafe-crank-cylinder-full
  "[common-practice] The cylinder held a liquid and locked the engine: plug stays out until it
   throws nothing, or the rod bends; and no spark beside what it throws."
  (logical
    (finding (check plug-hole-thrown) (result fuel|oil) (sure ?s1&:(> ?s1 0.4)))
    (or (complained (complaint will-not-turn))
        (finding (check rope-pull-feel) (result locked|hard))
        (finding (check crank-turn-by-hand) (result locked|tight))))
  =>
  (assert (unsafe (check runs-at-all)))
  (assert (unsafe (check prime-test)))
  (assert (unsafe (check compression)))
  (assert (unsafe (check cranking-speed)))
  (assert (unsafe (check starter-sound)))
  (assert (unsafe (check starter-direct-feed)))
  (assert (unsafe (check battery-crank-voltage)))
  (assert (unsafe (check spark-test)))
  (assert (unsafe (check spark-with-new-plug)))
  (assert (unsafe (check spark-with-kill-lead-off))))

(defrule unsafe-run-hot-or-knocking-oil-low
  "[common-practice] It knocks or runs hot and the oil is low: fill to the mark before it runs
   another minute."
  (logical
    (has (feature four-stroke))
    (finding (check oil-level) (result low) (sure ?s1&:(> ?s1 0.4)))
    (complained (complaint overheats|knocks))
    (check-engine (check ?c) (engine running|hot)))
  =>
  (assert (unsafe (check ?c))))
