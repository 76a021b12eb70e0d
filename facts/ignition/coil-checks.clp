; Checks of coil, flywheel, points, stop circuit, interlocks and oil cut-out. To add one: copy a
; (check ...); a measured check wants (bands ...). Check with: pullcord vet

(deffacts coil-checks "ignition: coil and flywheel"
  (check (id coil-air-gap) (name "coil air gap") (system ignition) (kind measure)
    (ask "What is the gap between coil legs and flywheel magnets?")
    (results right narrow wide) (labels "right" "too narrow or rubbing" "too wide")
    (means "Gap is not the trouble." "Legs touch when warm: rub marks, bent or loose coil."
      "Less voltage, most at pull speed: weak spark, hard to start.")
    (anyway 0.01 0.015) (minutes 12) (tools "brass or plastic feeler gauges" "screwdriver")
    (steps "Turn the magnets right under the coil legs." "Gauge both legs with a feeler."
      "Look for rub marks on magnets and legs; rock the flywheel for bearing play.")
    (off blower-housing) (engine stopped) (quantity length) (unit "mm") (tolerance 0.03) (possible 0 10)
    (cautions plug-lead-off)
    (mistakes "Steel feelers stick to the magnets and read wrong."
      "A business card is not a gauge." "Gauging one leg only.")
    (also-called "armature gap" "module gap" "magneto gap") (basis common-practice))
  (bands (id coil-air-gap-any) (check coil-air-gap) (results narrow right wide)
    (limits 0.15 0.42) (unit "mm")
    (note "Makers print from 0.25 to 0.40 mm (0.010 to 0.016 in); set the printed one.")
    (basis common-practice))
  (check (id coil-secondary) (name "coil secondary resistance") (system ignition) (kind measure)
    (ask "What does the coil measure from plug lead to laminations?")
    (results right low open-or-high) (labels "as it should" "too low" "open or too high")
    (means "Not proof that it is good: it can pass cold and fail hot." "Turns shorted."
      "Winding or lead broken.")
    (anyway 0.02 0.03) (minutes 6) (tools "multimeter")
    (steps "Boot and stop wire off. Meter from lead end to bare lamination."
      "Bend the lead while reading." "Compare with the maker's figure or a sister engine.")
    (off blower-housing) (engine stopped) (quantity resistance) (unit "kohm") (tolerance 0.2) (possible 0 100000)
    (cautions plug-lead-off)
    (mistakes "Condemning a coil by ohms where the maker prints none."
      "Measuring through a resistor boot." "Meter on laminations that are rust-covered.")
    (also-called "coil ohms" "coil resistance") (basis common-practice))
  (bands (id coil-secondary-any) (check coil-secondary) (results low right open-or-high)
    (limits 2.5 20) (unit "kohm")
    (note "Printed values run from 3 to 15 kilohm; many makers print none.")
    (basis common-practice))
  (check (id coil-primary) (name "coil primary resistance") (system ignition) (kind measure)
    (ask "What does the primary measure from points wire to ground?")
    (results right low open-or-high) (labels "as it should" "shorted" "open or too high")
    (means "Primary is whole." "Primary shorted, or points shut while measuring."
      "Primary broken or ground end off.")
    (anyway 0.04 0.04) (minutes 8) (tools "multimeter that reads tenths of an ohm")
    (steps "Open the points on the cam or put card between them; condenser wire off."
      "Zero the meter leads, then read points wire to laminations.")
    (off flywheel) (needs breaker-points) (engine stopped)
    (quantity resistance) (unit "ohm") (tolerance 0.1) (possible 0 100000000) (cautions plug-lead-off flywheel-puller)
    (mistakes "Points closed: it always reads short." "Meter lead resistance not taken off.")
    (also-called "primary winding") (basis common-practice))
  (bands (id coil-primary-any) (check coil-primary) (results low right open-or-high)
    (limits 0.15 4) (unit "ohm")
    (note "Printed values seen run from 0.2 to 1.5 ohm; a maker's figure goes first.")
    (basis common-practice))
  (check (id coil-mount-look) (name "coil seat, bolts and wiring") (system ignition) (kind look)
    (ask "Are coil feet clean and tight, wires where they belong and not pinched?")
    (results clean rusty-or-loose wire-trapped)
    (labels "clean, tight, wires free" "rusty feet or loose bolts" "wire trapped or on wrong tab")
    (means "Mounting is not the trouble." "Poor ground or a wandering gap."
      "A pinched stop wire or a wrong connection grounds the primary.")
    (anyway 0.03 0.003) (minutes 8) (tools "light" "screwdriver")
    (steps "Housing off; follow the stop wire from coil to where it leaves the shroud."
      "Look under the coil feet and between coil and post for a flattened wire."
      "Try the bolts; look for rust where feet meet posts and on the laminations.")
    (off blower-housing) (engine stopped) (cautions plug-lead-off)
    (mistakes "Stopping at the coil: the housing bolt pinches wires just as well."
      "Bolts into aluminium: snug and no more.")
    (also-called "coil bolts" "coil wiring" "rust on coil") (basis common-practice))
  (check (id flywheel-key-look) (name "flywheel key") (system ignition) (kind look)
    (ask "With the nut off, do the key slots of flywheel and shaft line up?")
    (results whole sheared) (labels "lines up, key whole" "stepped, bruised or sheared")
    (means "Timing by the key is right."
      "Timing has moved: spark is there but at the wrong moment.")
    (anyway 0.003) (minutes 15) (tools "socket" "strap wrench or flywheel holder" "light")
    (steps "Hold the flywheel, take nut and washer off." "Look down the slot: one straight line?"
      "Any step at all: flywheel off, key out, look at it and both slots."
      "After a blade strike look at crankshaft and blade boss as well.")
    (off blower-housing) (engine stopped)
    (cautions plug-lead-off flywheel-puller damaged-flywheel blade-edges)
    (mistakes "Passing it because there is spark." "Jamming a screwdriver in the fan blades.")
    (also-called "shear key" "woodruff key" "key sheared") (basis published)
    (source tm-5-4240-501-14p) (place "p. 289"))
  (check (id flywheel-magnet-pull) (name "pull of the flywheel magnets") (system ignition)
    (kind try)
    (ask "Does the magnet draw a screwdriver blade from about 19 mm?")
    (results strong weak) (labels "pulls strongly" "hardly pulls")
    (means "Magnets are good." "Magnets lost, cracked or come off: new flywheel.")
    (anyway 0.004) (minutes 10) (tools "small screwdriver")
    (steps "Hold the blade loosely 19 mm (3/4 in) from each magnet pole."
      "It should be drawn in. Compare both poles; look for cracks and loose magnets.")
    (off blower-housing) (engine stopped) (cautions plug-lead-off damaged-flywheel)
    (mistakes "Rust and swarf on the poles hide a good magnet."
      "Blaming magnets first: they seldom fade.")
    (also-called "weak magnets") (basis common-practice))
  (check (id timing-marks) (name "ignition timing") (system ignition) (kind look)
    (ask "Do the points just open, or the marks line up, where the maker says?")
    (results right off) (labels "right" "early or late")
    (means "Timing is right." "Key, points gap or plate has moved it.")
    (anyway 0.01) (minutes 20) (tools "timing light or continuity lamp" "piston stop or rule")
    (steps "Find the marks, or the piston height the maker gives."
      "Points: lamp across them, turn slowly in running direction, note where it opens."
      "Compare. A step of a few degrees is enough for kickback or a flat engine.")
    (off blower-housing) (needs breaker-points) (engine stopped) (cautions plug-lead-off)
    (mistakes "Turning backwards: backlash reads as late timing."
      "Setting timing before the points gap.")
    (also-called "timing" "ignition timing") (basis common-practice))
)

(deffacts points-checks "ignition: breaker points"
  (check (id points-gap) (name "points gap") (system ignition) (kind measure)
    (ask "What is the points gap with the rubbing block on the peak of the cam?")
    (results right narrow wide) (labels "right" "too narrow" "too wide")
    (means "Gap is not the trouble." "Late and weak; points burn." "Early; short build-up.")
    (anyway 0.12 0.08) (minutes 10) (tools "clean feeler gauges" "screwdriver")
    (steps "Turn to the widest opening." "Clean feeler between the faces, light drag."
      "Wipe the faces afterwards with clean card.")
    (off flywheel) (needs breaker-points) (engine stopped)
    (quantity length) (unit "mm") (tolerance 0.03) (possible 0 5) (cautions plug-lead-off flywheel-puller)
    (mistakes "An oily feeler leaves a film that stops the spark."
      "Feeler over a pip: pitted faces read too narrow.")
    (also-called "breaker gap" "contact gap") (basis common-practice))
  (bands (id points-gap-any) (check points-gap) (results narrow right wide) (limits 0.30 0.60)
    (unit "mm")
    (note "An army manual prints 0.015 in (0.38 mm); others 0.020 in (0.51 mm).")
    (basis common-practice))
  (check (id points-look) (name "points faces") (system ignition) (kind look)
    (ask "Are the points clean, flat and dry?")
    (results clean pitted-or-oily) (labels "clean, flat, dry" "pitted, burnt, oily or corroded")
    (means "Faces can switch." "Poor contact: weak spark or none.")
    (anyway 0.06) (minutes 8) (tools "light" "clean card")
    (steps "Open them with a finger; look at both faces." "Pull clean card through: oil? dirt?"
      "Oil: look at the crank seal or plunger behind. Pip on one face: condenser.")
    (off flywheel) (needs breaker-points) (engine stopped) (cautions plug-lead-off flywheel-puller)
    (mistakes "Filing and leaving the grit in." "Passing grey oxide after storage: it insulates.")
    (also-called "contact breaker" "points dirty") (basis published)
    (source tm-9-4940-421-14) (place "Table 4-1, p. 4-2.3"))
  (check (id condenser-test) (name "condenser by meter or substitution") (system ignition)
    (kind try)
    (ask "Does a known good condenser, clipped in, put it right (or does the meter condemn it)?")
    (results good bad) (labels "good" "bad or better with another")
    (means "Condenser is good." "Open, leaking or shorted condenser.")
    (anyway 0.01) (minutes 10) (tools "capacitance meter" "known good condenser")
    (steps "Wire off the old one; clip in the good one between points wire and ground."
      "Spin: spark strong now, points no longer flash?"
      "Or meter it: about 0.15 to 0.30 microfarad and no leak.")
    (off flywheel) (needs breaker-points) (engine stopped)
    (cautions plug-lead-off capacitor-charge flywheel-puller)
    (mistakes "Leaving the old shorted one connected." "Handling it charged.")
    (also-called "capacitor" "condenser") (basis common-practice))
)

(deffacts stop-circuit-checks "ignition: stop circuit, interlocks, oil cut-out, battery feed"
  (check (id kill-circuit-resistance) (name "stop circuit to ground, switch at run")
    (system ignition) (kind measure)
    (ask "Stop wire off the coil, switch at run, bar held: what does the wire read to ground?")
    (results open leaks-to-ground) (labels "open (no reading)" "reads to ground")
    (means "Stop circuit lets the coil fire."
      "Switch, wire, interlock or oil cut-out grounds the coil. Unplug one after the other.")
    (anyway 0.008) (minutes 8) (tools "multimeter")
    (steps "Pull the stop wire off the coil and meter from the wire to bare engine metal."
      "Switch at run, bar held, seat pressed, brake on: it should read open."
      "Wriggle the loom; unplug switch, interlocks and oil unit in turn to find which."
      "Switch to stop: it must now read near nothing.")
    (off blower-housing) (engine stopped) (quantity resistance) (unit "kohm") (tolerance 0.5) (possible 0 100000)
    (cautions plug-lead-off kill-lead-isolate interlock-never-bypass)
    (mistakes "Measuring with the coil still joined: the primary reads as a short."
      "Bar or seat not held: it should read ground then.")
    (also-called "kill switch ohms" "stop switch test") (basis common-practice))
  (bands (id kill-circuit-resistance-any) (check kill-circuit-resistance)
    (results leaks-to-ground open) (limits 20) (unit "kohm")
    (note "Should show no reading at all; damp switches show a few kilohm and spoil the spark.")
    (basis estimate))
  (check (id stop-wire-look) (name "stop wire from coil to switch") (system ignition) (kind look)
    (ask "Is the stop wire sound all the way, clear of hot, sharp and moving parts?")
    (results sound chafed) (labels "sound" "chafed, burnt or bare")
    (means "Nothing to be seen." "Bare copper meets metal, always or with the shake.")
    (anyway 0.01) (minutes 8) (tools "light")
    (steps "Follow it by hand: under the shroud, over the muffler side, up the handle."
      "Look hardest at clips, fold points, and where a cover clamps it.")
    (engine stopped) (cautions plug-lead-off hot-parts)
    (mistakes "Looking only at the part that can be seen with the shroud on.")
    (also-called "kill wire" "ground wire chafed") (basis common-practice))
  (check (id interlock-switch-test) (name "each interlock switch on the meter")
    (system ignition) (kind try)
    (ask "Unplugged and worked by hand, does each interlock switch change over as it should?")
    (results closed-as-should faulty) (labels "all change over" "one does not")
    (means "Switches are good; look at wire and plugs." "That switch or its striker is bad.")
    (anyway 0.01) (minutes 12) (tools "multimeter" "wiring diagram")
    (steps "Engine stopped, key out. Unplug one switch at a time."
      "Meter across it; work bar, seat or brake by hand and watch it change."
      "See that the striker really presses the plunger home."
      "Plug back in before the next. Leave none bridged.")
    (engine stopped) (cautions plug-lead-off interlock-never-bypass)
    (mistakes "Bridging a switch to see if it runs."
      "Not knowing whether the switch should be open or closed: two kinds look alike."
      "New switch, bent striker: same fault again.")
    (also-called "seat switch test" "safety switch" "dead man switch") (basis common-practice))
  (check (id seat-shift-test) (name "shift weight on the seat") (system ignition) (kind try)
    (ask "Tool out, brake on: does pressing, shifting or wriggling at the seat cut it or cure it?")
    (results no-change cuts-or-cures) (labels "no change" "cuts out, or comes right")
    (means "Not the seat switch." "Seat switch, its plug or its striker is on the edge.")
    (anyway 0.015) (minutes 4)
    (steps "Sit as the driver does, brake on, tool and drive out, machine outdoors."
      "Lean left, right, back; press the pad by hand; wriggle the plug under it."
      "Will not crank: hold the key while a helper presses the pad.")
    (needs interlock-seat) (engine any)
    (cautions interlock-never-bypass moving-parts stand-clear-tool carbon-monoxide)
    (mistakes "Doing it with the tool in." "A heavy driver hides a weak seat spring.")
    (also-called "seat wriggle") (basis common-practice))
  (check (id oil-cutout-disconnected) (name "spark with the oil cut-out unplugged")
    (system ignition) (kind try)
    (ask "Oil level right: does the spark come back with the oil cut-out wire unplugged?")
    (results no-change spark-back) (labels "no change" "spark is back")
    (means "Oil cut-out is not the trouble."
      "Float switch or its module grounds the coil with enough oil in.")
    (anyway 0.006) (minutes 6) (tools "fixed-gap spark tester")
    (steps "Level ground, oil to the mark: first thing." "Unplug the wire to the oil unit."
      "Spark test again. Plug it back when done.")
    (needs oil-cutout) (engine cranking)
    (cautions no-spark-near-fuel ignition-voltage kill-lead-isolate interlock-never-bypass
      spark-test-grounded)
    (mistakes "Doing it with low oil, then running: that is how rods go through the case."
      "Handing the machine back with it unplugged.")
    (also-called "low oil shutdown" "oil alert" "oil sensor") (basis common-practice))
  (check (id ignition-feed-voltage) (name "voltage at the ignition feed") (system ignition)
    (kind measure)
    (ask "Key on, what voltage is on the ignition feed wire?")
    (results fed not-fed) (labels "battery voltage" "low or none")
    (means "Feed is there: look at coil and trigger." "Fuse, switch or wire: find where it ends.")
    (anyway 0.01) (minutes 6) (tools "multimeter" "wiring diagram")
    (steps "Key on, engine stopped. Meter from feed wire at the coil to engine metal."
      "Read again while cranking: it must not vanish." "None: work back to switch and fuse.")
    (needs battery-ignition) (engine stopped) (quantity voltage) (unit "V") (tolerance 0.1) (possible -32 32)
    (cautions battery-short ignition-voltage)
    (mistakes "Leaving the key on for long: coils cook." "Reading only at rest.")
    (also-called "coil feed" "ignition live") (basis common-practice))
  (bands (id ignition-feed-voltage-any) (check ignition-feed-voltage) (results not-fed fed)
    (limits 9) (unit "V") (note "12 V system; within 1 V of the battery at rest.")
    (basis estimate))
)
