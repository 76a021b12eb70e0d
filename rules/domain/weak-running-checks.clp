; When a result taken on the running machine - speed, smoke, output, pressure, charging - counts
; for less because of how it was set or loaded.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/weak-running-checks.json. Check with: pullcord vet

(defrule weak-spray-while-hunting
  "[common-practice] On an engine that hunts by itself a change under the spray is easily missed;
   steady it with a little choke and spray again."
  (logical
    (finding (check speed-steady) (result hunts) (sure ?s1&:(> ?s1 0.4)))
    (finding (check intake-spray) (result no-change) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check intake-spray) (by 0.35))))

(defrule weak-top-speed-in-gear
  "[common-practice] Full speed is read with the drive out; with it in, it reads low."
  (logical
    (finding (check load-engaged) (result engaged) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check top-speed) (by 0.8))))

(defrule weak-top-speed-lever-wrong
  "[common-practice] Full speed was read with the lever not at full."
  (logical
    (finding (check throttle-setting) (result wrong) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check top-speed) (by 0.8))))

(defrule weak-top-speed-choked
  "[common-practice] On the choke no engine reaches its speed or runs evenly; open it and read
   again."
  (logical
    (finding (check choke-setting) (result left-shut) (sure ?s1&:(> ?s1 0.4)))
    (finding (check top-speed) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check top-speed) (by 0.7))))

(defrule weak-hunting-choked
  "[common-practice] With the choke left on it lopes by richness; open it and listen again."
  (logical
    (finding (check choke-setting) (result left-shut) (sure ?s1&:(> ?s1 0.4)))
    (finding (check speed-steady) (result hunts) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check speed-steady) (by 0.6))))

(defrule weak-idle-lever-wrong
  "[common-practice] Idle was read with the lever not at slow."
  (logical
    (finding (check throttle-setting) (result wrong) (sure ?s1&:(> ?s1 0.4)))
    (finding (check idle-speed) (result high) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check idle-speed) (by 0.8))))

(defrule weak-frequency-overloaded
  "[common-practice] An overloaded set drops its speed: take the load off and read the frequency
   again."
  (logical
    (finding (check generator-load-asked) (result over-rating) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-frequency) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check output-frequency) (by 0.8))))

(defrule weak-voltage-overloaded
  "[common-practice] An overloaded set sags; read the voltage with the load off before the
   windings are blamed."
  (logical
    (finding (check generator-load-asked) (result over-rating) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check output-voltage) (by 0.7))))

(defrule weak-voltage-slow-engine
  "[common-practice] Voltage follows speed: put the engine right before low voltage is held
   against the generator."
  (logical
    (finding (check top-speed) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result low) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature inverter-generator))))
  =>
  (assert (weakens (check output-voltage) (by 0.7))))

(defrule weak-voltage-breaker-out
  "[common-practice] With its breaker tripped the sockets are dead whatever the generator does."
  (logical
    (finding (check generator-breaker) (result tripped) (sure ?s1&:(> ?s1 0.4)))
    (finding (check output-voltage) (result none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check output-voltage) (by 0.95))))

(defrule weak-delivery-pump-dry
  "[common-practice] A pump that was not filled cannot deliver; fill it and look again."
  (logical
    (finding (check pump-primed) (result dry) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-delivery) (result weak|pulsing|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pump-delivery) (by 0.9))))

(defrule weak-pressure-starved-supply
  "[common-practice] Too little water in, too little pressure out: put the supply right and
   measure again."
  (logical
    (finding (check water-supply-flow) (result too-little) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-pressure) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pump-pressure) (by 0.8))))

(defrule weak-delivery-starved-supply
  "[common-practice] A washer that gets too little water pulses and fades though its pump is
   sound."
  (logical
    (finding (check water-supply-flow) (result too-little) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-delivery) (result weak|pulsing) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pump-delivery) (by 0.7))))

(defrule weak-pressure-slow-engine
  "[common-practice] Pressure was read with the engine below its speed; get the speed right
   first."
  (logical
    (finding (check top-speed) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-pressure) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pump-pressure) (by 0.6))))

(defrule weak-delivery-slow-engine
  "[common-practice] A pump turned too slowly is weak without being worn."
  (logical
    (finding (check top-speed) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check pump-delivery) (result weak) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pump-delivery) (by 0.5))))

(defrule weak-charging-flat-battery
  "[common-practice] A flat battery drags the charging voltage down; charge it first, then
   measure."
  (logical
    (finding (check battery-rest-voltage) (result flat) (sure ?s1&:(> ?s1 0.4)))
    (finding (check charging-voltage) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check charging-voltage) (by 0.6))))

(defrule weak-charging-slow-engine
  "[common-practice] Charging is measured at working speed; an engine that will not get there
   charges little."
  (logical
    (finding (check top-speed) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check charging-voltage) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check charging-voltage) (by 0.5))))

(defrule weak-sag-tight-engine
  "[common-practice] A tight engine pulls any battery down; free the engine before the battery is
   condemned."
  (logical
    (finding (check crank-turn-by-hand) (result tight|locked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check battery-crank-voltage) (result sags) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check battery-crank-voltage) (by 0.7))))

(defrule weak-slow-starter-load-in
  "[common-practice] With the drive in the starter has to turn the whole machine; free it and
   listen again."
  (logical
    (finding (check load-engaged) (result engaged) (sure ?s1&:(> ?s1 0.4)))
    (finding (check starter-sound) (result slow) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check starter-sound) (by 0.5))))

(defrule weak-head-hot-overloaded
  "[common-practice] A head read hot under an overload is the load; read it again at the rated
   load."
  (logical
    (finding (check generator-load-asked) (result over-rating) (sure ?s1&:(> ?s1 0.4)))
    (finding (check head-temperature) (result hot) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check head-temperature) (by 0.5))))

(defrule weak-unloaded-clutch-stuck
  "[common-practice] With the clutch stuck the tool is never out of drive; it was not a run
   without load."
  (logical
    (finding (check clutch-look) (result stuck-or-spring-broken) (sure ?s1&:(> ?s1 0.4)))
    (finding (check load-removed-run) (result no-change) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check load-removed-run) (by 0.6))))
