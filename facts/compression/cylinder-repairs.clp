; Repairs of rings, bore and head joint.
; To add a line: copy one; parts by kind, never by maker.
; check with: pullcord vet

(deffacts cylinder-repairs "repairs of cylinder and head"
  (repair (id fit-rings)
    (name "Fit new rings")
    (minutes 210) (parts-cost 45)
    (parts "ring set" "head gasket" "sump gasket" "oil")
    (tools "ring compressor" "torque wrench" "feeler gauges")
    (steps
      "Drain oil and fuel, head and sump off, mark rod and cap, piston out upwards."
      "Gauge the bore; over the limit: rebore or new block instead of rings."
      "Break the glaze lightly, wash with hot soapy water, dry, oil."
      "Gap each ring in the bore, gaps spread round, marks to the top."
      "Rod cap its own way round, bolts drawn up in turn to the figure."
      "Run in at changing load, top up, re-torque the head if the book says so.")
    (off cylinder-head crankcase-cover)
    (cautions plug-lead-off hot-parts gloves-solvent used-oil aluminium-threads asbestos-like-dust
      carbon-monoxide)
    (reuse "Piston and rod may go back if in limits; gaskets never.")
    (basis common-practice))
  (repair (id free-or-renew-rings)
    (name "Free or renew the rings")
    (minutes 150) (parts-cost 25)
    (parts "ring set" "gaskets")
    (consumables "penetrating oil" "solvent")
    (tools "ring expander" "scraper of wood or brass")
    (steps
      "Try first: a spoon of penetrating oil in the warm cylinder overnight, then run it."
      "No better: piston out, rings eased off, grooves cleaned with a piece of old ring."
      "Rings that are scored, broken or dead are renewed as a set."
      "Clean port, crown and silencer as well; correct the oil or mix that gummed it.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent waste-fuel carbon-monoxide)
    (reuse "Free, springy rings with a good gap may go back in their own grooves.")
    (basis common-practice))
  (repair (id replace-cylinder-and-piston)
    (name "Replace piston and cylinder, or the engine")
    (minutes 240) (parts-cost 160)
    (parts "piston and rings" "cylinder or short engine" "gasket set" "oil")
    (tools "micrometer" "torque wrench" "flywheel puller")
    (steps
      "Find why first: oil, cooling, mixture, timing, plug, filter."
      "Reckon parts and time against a short engine or the worth of the machine."
      "Strip, flush every bit of metal out of crankcase and passages."
      "New piston, rings, pin clips; cylinder new or bored to suit; rod checked."
      "Fresh oil, run in at changing load, change the oil early.")
    (off flywheel cylinder-head crankcase-cover)
    (cautions plug-lead-off hot-parts gloves-solvent flywheel-puller used-oil aluminium-threads
      carbon-monoxide)
    (reuse "Pin clips, gaskets and rod locks never; the rod only if it gauges well.")
    (basis common-practice))
  (repair (id replace-piston-two-stroke)
    (name "Replace the two-stroke piston, clean or renew the cylinder")
    (minutes 120) (parts-cost 70)
    (parts "piston with rings, pin and clips" "base gasket" "cylinder if its plating is gone")
    (tools "piston stop" "torque wrench")
    (steps
      "Find the cause first: pressure test, fuel and mix, filter, screen, fins, tool, mixture."
      "Cylinder off. Smeared aluminium on plating comes off with fine paper."
      "Acid eats chrome: only where the maker allows it, outdoors, face shield and rubber gloves."
      "Plating gone or deep scores: new cylinder as well."
      "New piston, rings and clips, arrow to the exhaust, clip gaps up or down; oil all parts."
      "Rinse the crankcase, new base gasket, bolts drawn up in turn."
      "Fresh mix, screws rich to start, no full throttle at length for a tankful.")
    (off muffler carburettor plug-boot)
    (cautions plug-lead-off hot-parts gloves-solvent two-stroke-lean-seizure emission-sealed-screws
      eye-protection aluminium-threads carbon-monoxide)
    (reuse "Clips, base gasket and fuel in the tank never.")
    (basis common-practice))
  (repair (id oil-the-cylinder)
    (name "Oil the dry cylinder")
    (minutes 15) (parts-cost 0)
    (consumables "engine oil")
    (tools "plug wrench" "oil can")
    (steps
      "Plug out, a teaspoon of oil in, turn it over slowly a few times, wipe the plug."
      "Let excess out with a rag at the hole. Plug back, fresh fuel, start as the book says."
      "Run ten minutes warm and gauge it dry again. Smoke at first is the oil.")
    (off plug)
    (cautions oil-on-cylinder-wet-test plug-lead-off no-spark-near-fuel carbon-monoxide)
    (basis common-practice))
  (repair (id decarbonise)
    (name "Take the carbon out")
    (minutes 60) (parts-cost 10)
    (parts "head gasket")
    (tools "brass scraper" "torque wrench")
    (steps
      "Piston at top, both valves shut. Head off (or port open on a two-stroke)."
      "Wood or brass scraper; leave the thin ring at the bore edge; blow out every crumb."
      "New gasket, bolts drawn up in turn. Cure the cause: oil, mixture, mix.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent compressed-air eye-protection
      aluminium-threads)
    (reuse "Head gasket never.")
    (basis common-practice))
  (repair (id replace-head-gasket)
    (name "Replace the head gasket")
    (minutes 60) (parts-cost 15)
    (parts "head gasket")
    (tools "torque wrench" "glass plate" "feeler gauges")
    (steps
      "Cold engine. Bolts out crosswise; note long and short ones, keep pushrods in order."
      "Clean both faces without gouging; lay the head on glass: over about 0.1 mm true it up."
      "New gasket dry unless the maker says otherwise. Bolts in turn, in steps to the figure."
      "Set valve clearances, run warm, cool; re-torque only if the maker says so.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent asbestos-like-dust aluminium-threads
      carbon-monoxide)
    (reuse "Gasket never; bolts if straight with clean threads.")
    (basis common-practice))
  (repair (id tighten-head-bolts)
    (name "Draw up or mend the head bolts")
    (minutes 30) (parts-cost 8)
    (parts "thread insert if stripped")
    (tools "torque wrench")
    (steps
      "Cold. Slacken none: bring each in turn to the figure in steps, crosswise."
      "One that keeps turning: thread insert, then a new gasket."
      "If soot shows at the joint, the gasket is done as well.")
    (cautions hot-parts aluminium-threads plug-lead-off)
    (reuse "Bolts if straight with clean threads.")
    (basis common-practice))
  (repair (id clear-the-cylinder)
    (name "Clear the flooded or oiled cylinder")
    (minutes 20) (parts-cost 10)
    (parts "oil if thinned" "plug")
    (tools "plug wrench" "rags")
    (steps
      "Tap shut, lead off and grounded away. Plug out, rag over the hole, turn it over till dry."
      "Look at the oil: over full or smelling of fuel, change it before it runs."
      "Dry filter and silencer. Mend what filled it: needle, tap habit, tipping, overfill."
      "Dry or new plug; start outdoors; white smoke for some minutes is right.")
    (off plug)
    (cautions plug-lead-off no-spark-near-fuel fuel-vapour eye-protection lifting-tipping
      carbon-monoxide)
    (reuse "Plug if it dries and sparks.")
    (basis common-practice)))
