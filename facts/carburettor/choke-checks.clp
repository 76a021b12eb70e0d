; Checks on choke, automatic choke, primer and shut-off solenoid.
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts choke-checks "choke plate and automatic choke"
  (check (id choke-moves) (name "choke plate from stop to stop") (system fuel)
    (ask "Worked by its control, does the choke plate shut fully and open fully?") (kind look)
    (results full-travel does-not-close does-not-open)
    (labels
      "shuts fully, opens fully"
      "does not shut fully"
      "does not open fully")
    (means
      "choke works"
      "no rich mixture for the cold start"
      "stays part shut: rich, black smoke, dies warm") (anyway 0.008 0.008) (minutes 3)
    (tools "lamp")
    (steps
      "Filter off; look at the plate, not at the lever."
      "Work the control end to end."
      "Automatic: cold, the plate stands shut; move it by finger, it is free."
      "Not full: unhook link or cable at the carburettor and work it there.") (off filter-element)
    (engine stopped) (cautions moving-parts)
    (mistakes
      "believing the lever: the plate slips on the shaft"
      "bending the link to suit a slack cable")
    (also-called "choke cable" "choke plate" "choke butterfly")
    (basis published) (source tm-5-4240-501-14p) (place "page 77, remote control misadjusted"))
  (check (id auto-choke-opens) (name "automatic choke opening in use") (system fuel)
    (ask "After the start, does the choke plate come open by itself?") (kind look)
    (results opens stays-shut)
    (labels "comes open as it should" "stays shut or half shut")
    (means
      "automatic choke works"
      "stays on: rich, loads up, dies warm or black smoke") (anyway 0.02) (minutes 6)
    (tools "lamp or mirror")
    (steps
      "Air vane: it opens as the engine comes up to speed."
      "Heat: it opens in one to five minutes."
      "Watch through the filter opening with a mirror, face to one side.") (off filter-element)
    (engine running) (cautions carbon-monoxide hot-parts moving-parts)
    (mistakes
      "putting the face over the throat"
      "too short a wait on a cold day") (also-called "auto choke" "self choke")
    (basis common-practice))
  (check (id choke-heater-warms) (name "heat at the choke element") (system fuel)
    (ask "Running some minutes, does the choke element get warm?") (kind try)
    (results warms stays-cold)
    (labels "gets clearly warm" "stays cold")
    (means
      "element or heat path works"
      "no heat: the choke never opens by itself") (anyway 0.02) (minutes 6)
    (tools "non-contact thermometer" "meter")
    (steps
      "Find what heats it: wires to the element, or exhaust heat through a plate or pipe."
      "Run five minutes; read the element housing every minute."
      "Electric and cold: look for volts at its plug, then for an open element."
      "Exhaust heated and cold: look for the heat plate left off or the tube blocked.")
    (needs auto-choke-heat) (engine running) (cautions hot-parts carbon-monoxide)
    (mistakes
      "touching the exhaust plate with the hand"
      "measuring the element with its plug on")
    (basis common-practice)))

(deffacts primer-checks "primer bulb and line"
  (check (id primer-feel) (name "feel of the primer bulb") (system fuel)
    (ask "Pressed, is the primer firm, and does fuel show in the throat?") (kind try)
    (results squirts soft-or-dry)
    (labels
      "firm, fuel squirts in the throat"
      "soft, stays in, hisses or no fuel")
    (means "primer works" "bulb, its valve or line does not pump") (anyway 0.02) (minutes 2)
    (tools "lamp")
    (steps
      "Tank full enough, machine level."
      "Press slowly three times, finger over the vent hole if the bulb has one."
      "Look down the throat for wet."
      "Feel the edge for air, look for cracks.") (needs primer) (engine stopped)
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "pressing with the machine tilted"
      "flooding it by pressing on and on") (also-called "primer" "priming bulb" "push bulb")
    (basis common-practice))
  (check (id primer-line-look) (name "primer hose and passage") (system fuel)
    (ask "Is the primer hose on at both ends and whole?") (kind look)
    (results on-and-sound off-or-cracked)
    (labels "on and sound" "off, cracked, pinched or passage gasket torn")
    (means "hose is not it" "no prime; an open spigot can draw air too") (anyway 0.005) (minutes 4)
    (tools "lamp")
    (steps
      "Follow the hose from bulb to carburettor; built-in primers have a gasket passage instead."
      "Bend it at the ends: cracks show."
      "Pull lightly at both ends.") (off air-box) (needs primer) (engine stopped)
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "leaving an open spigot on the carburettor")
    (basis common-practice)))

(deffacts solenoid-checks "shut-off solenoid on the bowl"
  (check (id solenoid-click) (name "click of the fuel solenoid") (system fuel)
    (ask "Key on and off: does the solenoid under the bowl click?") (kind listen)
    (results clicks silent)
    (labels "clicks each time" "silent")
    (means "it is fed and the plunger moves" "no feed, or plunger stuck") (anyway 0.008)
    (minutes 1) (tools "long driver as a listening rod")
    (steps
      "Key to run without cranking; finger on the solenoid."
      "On and off three times."
      "No click: measure at its plug next.") (needs afterfire-solenoid) (engine stopped)
    (cautions no-spark-near-fuel)
    (mistakes
      "hearing a relay and taking it for the solenoid"
      "battery so flat that nothing clicks")
    (also-called "anti-afterfire" "fuel cut solenoid" "carb solenoid")
    (basis common-practice))
  (check (id solenoid-voltage) (name "volts at the solenoid plug") (system fuel)
    (ask "Key at run: how many volts at the solenoid wire?") (kind measure) (results fed not-fed)
    (labels "battery voltage" "no or far too few volts")
    (means
      "feed is there: look at the plunger"
      "wire, fuse, switch or ground is the fault") (anyway 0.008) (minutes 3) (tools "meter")
    (steps
      "Plug off the solenoid, red probe to its wire, black to engine metal."
      "Key to run; read. While cranking it must hold."
      "Good at the wire and silent: try the ground of the solenoid body.")
    (needs afterfire-solenoid) (engine stopped) (quantity voltage) (unit "V") (tolerance 0.2) (possible -32 32)
    (cautions no-spark-near-fuel battery-short)
    (mistakes
      "probing at the engine block through paint"
      "reading with the key at off") (also-called "solenoid power")
    (basis common-practice))
  (bands (id solenoid-volts-12) (check solenoid-voltage) (results not-fed fed) (limits 9)
    (unit "V") (note "12 V machines: below 9 V most plungers do not pull in.")
    (basis common-practice)))
