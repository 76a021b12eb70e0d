; Looks at switches, taps, levers and the ground the machine stands on.
; A first result means set as it should be. Add a check as a whole fact; check with: pullcord vet

(deffacts use-setting-checks "how the machine is set"
  (check (id stop-switch-position) (name "stop switch position") (system use) (kind look)
    (engine any) (minutes 0.5) (ask "Is the stop switch in run?") (results run off)
    (labels "in run" "in stop") (means "Look elsewhere." "That alone keeps it from sparking.")
    (anyway 0.01)
    (steps "Look at the switch and work it once to and fro: it should click into run."
      "On some machines stop is at the end of the throttle or choke lever.")
    (mistakes "Reading I and O the wrong way round." "Overlooking a second switch or key.")
    (basis common-practice))
  (check (id fuel-tap-position) (name "fuel tap position") (system use) (kind look) (engine any)
    (minutes 0.5) (ask "Is the fuel tap open?") (results open shut) (labels "open" "shut")
    (means "Fuel can run, if the tap itself is clear." "It runs on the bowl and then dies.")
    (anyway 0.01) (needs fuel-tap)
    (steps "Follow the lever to its stop in the open direction."
      "A lever along the pipe is usually open; see the marks.")
    (mistakes "Taking reserve or a half-way lever for open.") (basis common-practice))
  (check (id choke-setting) (name "choke as found") (system use) (kind look) (engine any)
    (minutes 0.5) (ask "How was the choke set for the state of the engine?")
    (results as-needed left-shut left-open)
    (labels "as needed" "left shut" "left open on a cold engine")
    (means "Shut for a cold start, open once warm."
      "Rich: floods, black smoke, weak, will not restart warm." "Too lean to fire from cold.")
    (anyway 0.04 0.04) (needs manual-choke)
    (steps "Note it before anyone touches it." "Look at the plate, not only at the lever.")
    (mistakes "Moving the lever first and asking afterwards.") (also-called "choke position")
    (basis common-practice))
  (check (id throttle-setting) (name "throttle as found") (system use) (kind look) (engine any)
    (minutes 0.5) (ask "Was the throttle where starting wants it?") (results as-needed wrong)
    (labels "as the book says" "wrong for starting")
    (means "Not the throttle." "Choke may be linked to the lever, or the idle too low to catch.")
    (anyway 0.03) (steps "See the marks on the lever: many machines choke only at its far end.")
    (mistakes "Setting every machine to full throttle out of habit.") (basis common-practice))
  (check (id load-engaged) (name "is the load engaged") (system use) (kind look) (engine any)
    (minutes 0.5) (ask "Is the tool, drive or pump engaged or under pressure while it is started?")
    (results free engaged) (labels "free" "engaged")
    (means "The engine turns only itself." "The starter drags the load with it.") (anyway 0.015)
    (steps
      "Blade, drive and auger levers out, pump gun squeezed, nothing plugged into a generator.")
    (cautions stand-clear-tool moving-parts)
    (mistakes "Missing the second lever (drive out, but blades in)."
      "Leaving a pressure washer's gun shut: the pump holds pressure against the rope.")
    (basis common-practice))
  (check (id interlock-state) (name "are the interlocks made") (system use) (kind look)
    (engine any) (minutes 1)
    (ask "Bar held, seat occupied, brake on, drive out: all as the machine wants?")
    (results made not-made) (labels "all made" "one is not made")
    (means "The operator has done his part; a switch may still be bad."
      "It will not spark or not crank as long as this is so.") (anyway 0.012)
    (steps "Go through bar, seat, brake, drive lever and key in turn."
      "A cable to the bar that has stretched counts as not made.")
    (cautions interlock-never-bypass) (mistakes "Tying a bar or bridging a switch to try it.")
    (also-called "dead man bar" "seat switch" "safety switch") (basis common-practice))
  (check (id machine-level) (name "does it stand level") (system use) (kind look) (engine any)
    (minutes 0.5) (ask "Does it stand level, within a few degrees?") (results level tilted)
    (labels "level" "tilted")
    (means "Oil and float are where they should be."
      "Oil switch trips, float and pump suction are upset.") (anyway 0.03)
    (steps "Look from the side; on soft ground look at the wheels or feet that have sunk.")
    (mistakes "Trying it on the level bench when it fails on the slope.") (basis common-practice))
)
