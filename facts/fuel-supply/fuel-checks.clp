; Checks of the fuel itself: how much, how old, what is in it, what oil is in it.
; One check per (check ...) fact; results, labels and means run in the same order, the sound
; result first. Add a new one at the end of its group. Check with: pullcord vet

(deffacts fuel-quantity-and-age-checks "what is in the tank and since when"
  (check (id fuel-level) (name "fuel level") (system fuel) (kind look) (engine any)
    (ask "How much fuel is in the tank, seen at the pickup end?")
    (results enough low empty)
    (labels "enough over the pickup" "low, the pickup may uncover" "empty")
    (means "Level is not the trouble."
      "Fuel may run away from the pickup on a slope or when shaken."
      "Nothing to run on: fill it before anything else is touched.") (anyway 0.15 0.05)
    (minutes 0.5)
    (tools "torch")
    (steps "Stop the engine and let it cool."
      "Stand the machine level, open the cap, look with a torch."
      "Find the pickup or outlet and judge the level there, not at the filler.")
    (cautions refuel-cool fuel-vapour no-spark-near-fuel)
    (mistakes "Trusting a gauge or the owner's word." "Looking in with a naked light.")
    (also-called "petrol in the tank" "gas in it" "fuel gauge")
    (basis common-practice))
  (check (id fuel-age) (name "age of the fuel") (system fuel) (kind ask) (engine any)
    (ask "When was the petrol in the tank bought?")
    (results fresh month-old over-season)
    (labels "within the last month" "one to about three months ago" "last season or older")
    (means "Age is not against it."
      "Past the 30 days at which tank and carburettor should be drained; hard starting fits."
      "The light ends are gone and gum has formed; expect it in the jets too.") (anyway 0.3 0.2)
    (minutes 0.5)
    (steps "Ask when the can was filled, not when the tank was topped up."
      "Ask whether it stood in an open or vented can, and in the heat.")
    (mistakes "Taking the date of the last top-up for the age of the petrol."
      "Thinking a stabiliser makes old petrol new.")
    (also-called "how old is the petrol" "old gas")
    (basis published) (source tm-5-4240-501-14p)
    (place "tpub p. 285: drain tank and carburettor if unused 30 days or more"))
  (check (id fresh-fuel-trial) (name "run on fresh fuel from a bench tank") (system fuel)
    (kind try) (engine running)
    (ask
      "Fed with fresh fuel from a small bench tank straight to the carburettor, does it run well?")
    (results no-change runs-well)
    (labels "no change" "runs well")
    (means "The trouble is in the carburettor or beyond; tank, line and old fuel are cleared."
      "The trouble is in the fuel or between the tank and the carburettor.") (anyway 0.02)
    (minutes 10)
    (tools "small bench tank with hose" "hose clamp" "catch can" "fresh petrol, or fresh mix")
    (steps "Clamp the machine's own line and take it off at the carburettor."
      "Drain the bowl, or press the purge bulb until the old fuel is out."
      "Hang the bench tank as high as the machine's own and connect it."
      "Outdoors: start it and run two minutes at full speed under the owner's load."
      "Two-stroke: fresh mix at the book ratio, never plain petrol.")
    (cautions fuel-vapour no-spark-near-fuel carbon-monoxide moving-parts
      two-stroke-lean-seizure stand-clear-tool)
    (mistakes "Leaving the old fuel in the bowl and judging the first minute."
      "Hanging the bench tank much higher than the real one: it overrides a sticky needle.")
    (also-called "slave tank" "aux tank" "fresh gas test")
    (basis common-practice)))

(deffacts fuel-quality-checks "what the fuel is"
  (check (id fuel-look-and-smell) (name "look and smell of the fuel") (system fuel) (kind look)
    (engine any)
    (ask "A little fuel in a clear jar: how does it look and smell?")
    (results fresh stale water-or-dirt oily-mix diesel-smell)
    (labels "clear and sharp-smelling" "dark or sour, varnish smell" "water, cloud or dirt in it"
      "oily or dyed, although it should be plain petrol"
      "smells of diesel or paraffin, feels greasy")
    (means "Nothing against the fuel." "Old petrol: drain it all and look at the jets."
      "Drain tank, line and bowl and find how it got in."
      "Two-stroke mix in a four-stroke: smoke and a fouled plug."
      "Wrong fuel: will not vaporise cold.") (anyway 0.05 0.015 0.003 0.001) (minutes 2)
    (tools "clear jar" "clean fresh sample to compare")
    (steps "Draw the sample from the lowest point: bowl drain, line end or tank bottom."
      "Hold it to the light beside fresh petrol."
      "Fan the vapour towards you; do not sniff the jar."
      "On a two-stroke the dye of the oil is right: judge cloud, dirt and sourness only.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent waste-fuel)
    (mistakes "Sampling from the top of the tank: water and dirt lie at the bottom."
      "A dirty jar.") (also-called "smell the gas" "fuel sample")
    (basis common-practice))
  (check (id water-in-sample) (name "water in a settled sample") (system fuel) (kind look)
    (engine any)
    (ask "Left to settle in a clear jar, does the sample show water?")
    (results none water cloudy)
    (labels "one clear layer" "a layer or beads at the bottom" "cloudy all through")
    (means "No water to see."
      "Free water, or the watery alcohol layer of separated ethanol petrol: drain everything."
      "Ethanol petrol at the edge of what it holds (E10: 3 tsp a US gallon); parts when cold.")
    (anyway 0.005 0.005) (minutes 6)
    (tools "clear jar with lid")
    (steps "Take the sample from the lowest drain, first run included."
      "Let it stand five minutes." "Tilt: water rolls as a bead or a line at the bottom."
      "In doubt add a drop of water: it sinks and joins the lower layer if that is watery.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (mistakes
      "Taking a jar full of nothing but water for clear petrol: smell it and look for a line."
      "Draining the tank only; the bowl keeps its own water.")
    (also-called "jar test" "settle test")
    (basis published) (source unl-cropwatch)
    (place "water held per US gallon: E0 none, E10 3.06 tsp, E15 6.47 tsp"))
  (check (id ethanol-content) (name "alcohol in the petrol") (system fuel) (kind measure)
    (engine any)
    (ask "How much alcohol does the shake test show, in per cent?")
    (results within-limit over-limit)
    (labels "10 per cent or less" "over 10 per cent")
    (means "Allowed fuel." "Over the limit for such engines: runs lean and hot, attacks rubber.")
    (anyway 0.02) (minutes 8) (quantity ratio) (unit "%") (tolerance 2) (possible 0 100)
    (tools "100 mL measuring cylinder with stopper" "water")
    (steps "Water to the 10 mL line, fuel to the 100 mL line."
      "Stopper, shake gently, vent, stand ten minutes."
      "The bottom layer has grown: (new reading less 10) mL over 90 mL of fuel."
      "Per cent = growth times 100 divided by 90.")
    (cautions fuel-vapour no-spark-near-fuel ethanol-limit waste-fuel)
    (mistakes "Reading before the layers have parted." "Testing fuel that has already separated.")
    (also-called "ethanol test" "E15 test")
    (basis common-practice))
  (bands (id ethanol-content-limit) (check ethanol-content)
    (results within-limit over-limit) (limits 10) (unit "%")
    (note "Over 10 per cent by volume is barred in nonroad engines; the shake test is good to 2.")
    (basis published) (source cfr-40-80-1504) (place "(a)(1)"))
  (check (id mix-ratio-asked) (name "two-stroke mix as told") (system fuel) (kind ask) (engine any)
    (needs premix)
    (ask "How much oil was mixed into how much petrol, and by which measure?")
    (results right too-much-oil too-little-oil)
    (labels "the book ratio, measured" "more oil than the book says" "less oil, or none")
    (means "Mix is right as told." "Smoke, fouled plug, carboned port and screen."
      "Stop: no running until it is drained. The piston may be scored.") (anyway 0.08 0.02)
    (minutes 1)
    (steps "Ask for litres and millilitres, not a ratio by heart."
      "25:1 is 40 mL to the litre, 32:1 31 mL, 40:1 25 mL, 50:1 20 mL."
      "Ask whether the can is shared with a four-stroke.")
    (cautions two-stroke-lean-seizure)
    (mistakes "Accepting 'a capful'." "Mixing up US gallons and litres.")
    (also-called "mix ratio" "oil in the gas")
    (basis common-practice))
  (check (id oil-spot-test) (name "oil left by a drop on paper") (system fuel) (kind look)
    (engine any) (needs premix)
    (ask "A drop of the mix dried on plain paper: what does it leave?")
    (results oil-ring heavy-spot no-ring)
    (labels "the same thin oily ring as a known good mix" "a much heavier oily spot"
      "dries away clean")
    (means "There is oil in about the right amount." "Much too much oil."
      "No oil in it: do not run.") (anyway 0.03 0.01) (minutes 6)
    (tools "plain white paper" "known good mix to compare")
    (steps "One drop of the sample, one of a good mix, side by side."
      "Let both dry well away from flame." "Compare: it tells none from some, not 40:1 from 50:1.")
    (cautions no-spark-near-fuel two-stroke-lean-seizure)
    (mistakes "Judging a fine ratio by it." "Glossy paper.") (also-called "paper test for mix")
    (basis common-practice))
  (check (id oil-smells-of-fuel) (name "engine oil smells of petrol") (system fuel) (kind look)
    (engine any) (needs four-stroke)
    (ask "Does the oil on the dipstick smell of petrol or feel thin as water?")
    (results no yes)
    (labels "no" "yes, smells of petrol or is thin")
    (means "No fuel in the sump."
      "Petrol has run into the sump: do not start it; change the oil and stop the leak first.")
    (anyway 0.02) (minutes 1)
    (tools "rag")
    (steps "Level the machine, wipe the dipstick, dip, smell."
      "Rub between the fingers: petrol feels thin and cold."
      "Note the level: above full with nobody having topped up means fuel.")
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "Smelling the petrol on your own hands."
      "Bringing a flame to the dipstick as a test.") (also-called "gas in the oil")
    (basis common-practice)))
