; Questions about the machine's history, and what it does when it is started.
; Other systems refer to these ids: do not rename results. The first result is what a
; sound machine shows. Add a check as a whole fact; check with: pullcord vet

(deffacts use-history-checks "questions to the owner"
  (check (id runs-at-all) (name "what it does when started") (system use) (kind try) (engine any)
    (minutes 3)
    (ask "Started by the book, fresh fuel in: does it run, fire and die, or not fire at all?")
    (results runs fires-then-dies no-fire)
    (labels "it starts and runs" "it fires or runs a moment and dies" "not one cough")
    (means "Fuel, spark and compression are there, at least to start on."
      "Spark and compression are there; the fuel does not keep coming, or it is cut."
      "Something it cannot do without is missing: spark, fuel, compression or timing.")
    (anyway 0.02 0.02)
    (steps "Switch on, tap open, interlocks made, choke and throttle as the book says, load off."
      "Six pulls or three short runs of the starter are enough; then stop and think."
      "A hot engine is tried without choke.")
    (cautions carbon-monoxide moving-parts crank-kickback fuel-vapour stand-clear-tool)
    (mistakes "Pulling on with the choke shut until the plug is wet: now there are two faults."
      "Trying it as the owner does instead of as the book says.")
    (also-called "does it start" "start it" "try to start") (basis common-practice))
  (check (id when-it-dies) (name "when it dies") (system use) (kind try) (engine running)
    (minutes 5) (ask "When does it die?")
    (results keeps-running within-seconds after-minutes when-loaded when-choke-opened
      when-throttle-opened)
    (labels "it keeps running" "within seconds of starting" "after some minutes"
      "when it is put to work" "when the choke is opened" "when the throttle is opened")
    (means "Nothing runs out or fails as it runs."
      "It burns what is in the throat or bowl and gets no more, or it cannot hold its idle."
      "Bowl runs down faster than it fills, tank vent shut, or a part that fails hot."
      "No power in hand, no fuel for full load, an interlock, or too much load."
      "Lean: the jets or an air leak, the choke covers it up."
      "Main circuit starved, or the tool is held fast.") (anyway 0.02 0.02 0.03 0.01 0.02)
    (tools "watch")
    (steps
      "Start it, let it warm with the choke coming off as usual, then open it up, then load it."
      "Write down the minute and what was just done when it dies.")
    (cautions carbon-monoxide moving-parts hot-parts noise-hearing stand-clear-tool)
    (mistakes "Giving it two minutes when the owner says it takes twenty."
      "Trying it without the load on which it dies.")
    (also-called "when does it stop" "stalls when") (basis common-practice))
  (check (id how-it-stopped) (name "the way it stopped") (system use) (kind ask) (engine any)
    (minutes 1) (ask "How did it stop the last time?")
    (results by-operator faded cut-dead bang-or-crunch)
    (labels "it was switched off" "it faded, spluttered and died" "it cut dead as if switched off"
      "a bang, crunch or sudden stop")
    (means "No fault showed while it last ran."
      "Fuel ran out slowly, or heat and wear took its power." "Ignition, interlock or cut-out."
      "Something broke, jammed or was struck.") (anyway 0.06 0.03 0.01)
    (steps "Ask for the last sound and the last ten seconds, not for the owner's diagnosis.")
    (mistakes "Taking 'it just stopped' for cut dead: ask whether it spluttered first.")
    (basis common-practice))
  (check (id when-last-ran) (name "when it last ran well") (system use) (kind ask) (engine any)
    (minutes 1) (ask "When did it last run well?") (results recently weeks-ago months-ago)
    (labels "in the last few days" "weeks ago" "months or a season ago")
    (means "Storage is not the reason." "Petrol in the bowl has begun to go off."
      "Stale fuel, gum, stuck needle or valve, rust, mice come first.") (anyway 0.2 0.25)
    (steps "Ask when it last did a full job without trouble, not when it was last started.")
    (mistakes "Counting a start in the shed as having run well.")
    (also-called "stood all winter" "last used") (basis common-practice))
  (check (id recent-work) (name "work done on it lately") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Has anyone worked on it since it last ran well, and on what?")
    (results none carburettor ignition engine-opened starter-or-controls filter-or-service)
    (labels "nobody touched it" "carburettor or fuel line" "plug, coil or wiring"
      "engine opened (head, valves, sump)" "starter, cables or controls"
      "service: oil, filter, plug, blade")
    (means "The fault came by itself or in use."
      "Gaskets, linkage, springs, jets and hoses go back wrong."
      "Gap, stop wire, plug lead and kind of plug are open to doubt."
      "Timing, clearances, gaskets and governor arm are open to doubt."
      "Cable travel, spring holes, stop switch and interlocks are open to doubt."
      "Overfill, wrong oil, filter fitted wrong, blade loose.") (anyway 0.05 0.03 0.015 0.03 0.12)
    (steps "Ask who did it, what was off, and what was left over."
      "Look for clean bolt heads and fresh tool marks.")
    (mistakes "Asking only the owner: the neighbour may have had it apart.")
    (also-called "been repaired" "serviced lately") (basis common-practice))
  (check (id restart-after-cooling) (name "does it start again when cool") (system use) (kind ask)
    (engine any) (minutes 1)
    (ask "After it has died, does it start again only when it has cooled?")
    (results as-usual starts-when-cool)
    (labels "no difference, or it does not die" "starts again after a rest")
    (means "Heat is not what stops it."
      "Coil or valve failing hot, vapour, a closed tank vent, or a flooded hot start.")
    (anyway 0.02)
    (steps
      "Ask how long the rest must be: one minute points to fuel or vent, half an hour to heat."
      "Ask whether they undid the fuel cap meanwhile.")
    (mistakes "Taking a one-minute rest for cooling: the bowl has only filled up again.")
    (basis common-practice))
  (check (id struck-something) (name "did the tool strike something") (system use) (kind ask)
    (engine any) (minutes 1)
    (ask "Has the blade or tool struck a stone, stump, kerb, pipe or wire?") (results no yes)
    (labels "no" "yes")
    (means "No reason to expect a sheared key or bent shaft."
      "Look at flywheel key, crankshaft, blade and mountings first.") (anyway 0.08)
    (steps "Ask plainly, and look at the blade and deck before you believe the answer.")
    (cautions plug-lead-off blade-edges)
    (mistakes "Taking no for an answer with a fresh notch in the blade.")
    (also-called "hit a rock" "hit a stump" "blade strike") (basis common-practice))
  (check (id tipped-over) (name "was it laid over") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Was it laid on its side, upside down or carried in a car?") (results no yes)
    (labels "no" "yes")
    (means "Oil and fuel are where they belong."
      "Oil in filter, cylinder or silencer; fuel in the filter; flooded.") (anyway 0.08)
    (steps "Ask which side was down: carburettor down wets the filter.")
    (mistakes "Forgetting the trip to the shop in the boot of a car.") (basis common-practice))
  (check (id ran-without-load-or-dry) (name "was the pump run dry") (system driven) (kind ask)
    (engine any) (minutes 1)
    (ask "Was the pump ever run without water, or was its water left shut off?") (results no yes)
    (labels "no" "yes")
    (means "Seals and valves have not been burned."
      "Seal faces and packings burn in a minute or less.") (anyway 0.06)
    (steps
      "Ask about an emptied pond, a kinked hose, a tap left shut, minutes idling with gun shut.")
    (cautions pump-never-dry) (mistakes "Running it dry now to see whether it sucks.")
    (also-called "ran dry") (basis common-practice))
  (check (id damp-or-washed) (name "damp or washed") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Was it washed, rained on or left in the damp just before?") (results no yes)
    (labels "no" "yes")
    (means "Damp is not the reason." "Water in boot, switch, filter or fuel; brake and belt wet.")
    (anyway 0.08) (steps "Ask about a pressure washer and about a cover that was left off.")
    (mistakes "Drying the outside and leaving water in the plug boot and filter box.")
    (basis common-practice))
  (check (id choked-starts-tried) (name "pulls with the choke shut") (system use) (kind ask)
    (engine any) (minutes 1)
    (ask "How many pulls did it get with the choke shut or the primer pumped?") (results few many)
    (labels "a few" "many")
    (means "Flooding by the operator is unlikely."
      "The cylinder is probably wet: clear it before any other test.") (anyway 0.12)
    (steps "Smell the exhaust; pull the plug if in doubt.")
    (mistakes "Asking 'did you choke it' instead of 'how many pulls'.") (basis common-practice))
  (check (id position-dependence) (name "does position matter") (system use) (kind ask)
    (engine any) (minutes 1) (ask "Does it die or change when it is tilted or turned?")
    (results none dies-tilted) (labels "no" "dies tilted or on a slope")
    (means "Pick-up, float and oil switch are not upset by position."
      "Low oil with a cut-out, low fuel, float or pick-up out of place, loose wire.") (anyway 0.02)
    (steps "Ask which way down, and whether the tank was full.") (cautions lifting-tipping)
    (mistakes "Tilting a four-stroke carburettor side down to try it.") (basis common-practice))
  (check (id altitude-and-weather) (name "place and weather") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Where and in what weather does it happen?")
    (results ordinary high-ground cold-damp very-hot)
    (labels "ordinary" "well above where it was set up (over 1000 m)"
      "near freezing to cool, and damp" "very hot")
    (means "Neither height nor weather explains it."
      "Thin air: rich, weaker by about a tenth for each 1000 m."
      "Carburettor ice, wet ignition, thick oil."
      "Vapour, thin oil, weak fan; a good cause of hot restarts failing.") (anyway 0.03 0.08 0.05)
    (steps "Ask whether it runs well in other places or weather.")
    (mistakes "Forgetting that it was bought and set up elsewhere.")
    (also-called "altitude" "mountain" "weather") (basis common-practice))
  (check (id starting-drill-shown) (name "starting as the owner does it") (system use) (kind ask)
    (engine any) (minutes 2) (ask "Have the owner show how it is started: is it as the book says?")
    (results as-the-book-says wrong) (labels "as the book says" "not as the book says")
    (means "Not how it is started." "Teach the drill before you take anything apart.")
    (anyway 0.06)
    (steps "Let the owner do it, hands off, without hints."
      "Watch choke or primer, throttle, switch, tap, bar and how the rope is pulled.")
    (cautions moving-parts crank-kickback carbon-monoxide stand-clear-tool)
    (mistakes "Explaining while they do it; you then see your own drill.")
    (also-called "starting procedure" "how do you start it") (basis common-practice))
  (check (id how-shut-down-asked) (name "the way it is shut down") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Is it run at idle a little before it is switched off?")
    (results idled-down from-full-speed) (labels "idled first" "switched off at full speed")
    (means "The silencer has cooled and cleared."
      "Unburned fuel goes into a hot silencer: the bang is of the operator's making.")
    (anyway 0.12) (steps "Ask for habit, not for what the book says.")
    (mistakes "Forgetting the solenoid: one that is stuck open gives the same bang.")
    (basis common-practice))
  (check (id work-asked) (name "what is asked of it") (system use) (kind ask) (engine any)
    (minutes 1) (ask "What work does it do when it fails: within what it was built for?")
    (results within-reason too-much) (labels "within reason" "too much for it")
    (means "Load does not explain it."
      "Wet hip-high grass, wood over size, too deep, too long a hose, too fast a feed.")
    (anyway 0.05)
    (steps "Ask for size, height, depth, length and how fast it is pushed."
      "Compare with the plate or the book.")
    (mistakes "Believing 'it always did it' without asking about this job.")
    (also-called "overloading" "too big for it") (basis common-practice))
  (check (id expectation-asked) (name "was it ever better") (system use) (kind ask) (engine any)
    (minutes 1) (ask "Has this machine ever done this same job better?")
    (results was-better never-better) (labels "yes, it used to" "no, or it is new to them")
    (means "Something changed: look for a fault." "It may be doing all it was made for.")
    (anyway 0.05) (steps "Ask what they had before and what they compare it with.")
    (mistakes "Settling on this before the measured values are right.")
    (also-called "is it normal") (basis common-practice))
)
