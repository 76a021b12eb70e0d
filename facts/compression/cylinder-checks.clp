; Checks of the cylinder, its gasket and the plug hole, with the bands of the gauges.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts compression-gauge-checks "compression, wet test and leak-down"
  (check (id compression-feel) (name "compression felt by hand")
    (system compression) (kind try) (engine stopped) (minutes 1)
    (ask "Turn it slowly against compression: does it push back?")
    (results springs-back soft none)
    (labels "pushes back firmly" "pushes back, but soft" "nothing at all")
    (means
      "The cylinder seals well enough to start."
      "It leaks, or a release takes part of it away: use the gauge or a leak-down."
      "Nothing seals: valve held open, hole, plug out, or the rod is broken.")
    (anyway 0.05 0.003)
    (steps
      "Stop switch off, lead off the plug and held clear, plug left in and tight."
      "Turn slowly up to compression; it should hold you back for a second or more."
      "Or flick the flywheel backwards: a sound cylinder throws it back sharply."
      "A release lets a slow pull through: flick it backwards or pull briskly.")
    (mistakes
      "Calling it weak when an automatic release is doing its work."
      "Pulling with the decompression button pressed in.")
    (cautions plug-lead-off crank-kickback)
    (also-called "rebound test" "pull-over feel" "compression by hand")
    (basis common-practice))
  (check (id compression) (name "cranking compression")
    (system compression) (kind measure) (engine cranking) (minutes 6)
    (ask "What does the compression gauge show?")
    (results good weak very-low)
    (labels "good for this kind of engine" "weak" "very low")
    (means
      "The cylinder seals; look elsewhere."
      "It leaks; do the wet test and a leak-down to find where."
      "A valve held open, a gasket gone, a holed piston or a release stuck open.")
    (anyway 0.04 0.004)
    (quantity pressure) (unit "psi") (tolerance 5) (possible 0 400)
    (off plug)
    (tools "compression gauge with a valve at the plug end")
    (steps
      "Warm it up if it runs. Plug out, gauge screwed in, lead held to ground."
      "Throttle and choke wide open, stop switch off; a hand release left unpressed."
      "Pull or crank at least five compression strokes until the needle climbs no more."
      "Note what the first stroke gives as well as the last."
      "An automatic release keeps the reading low: then the leak-down decides.")
    (mistakes
      "Throttle or choke shut: reads low."
      "Two lazy pulls: reads low."
      "Holding a release engine to the figure of one without."
      "A long hose or car gauge without a valve at the plug end: reads low on a small cylinder.")
    (cautions compression-test-no-fire plug-lead-off no-spark-near-fuel moving-parts hot-parts
      carbon-monoxide)
    (also-called "comp test" "compression test" "compression gauge" "psi test")
    (basis common-practice))
  (bands (id compression-any) (check compression)
    (results very-low weak good) (limits 30 60) (unit "psi")
    (note "Last resort: kind of engine and release are not known. Maker first.")
    (basis estimate))
  (bands (id compression-four-stroke) (check compression)
    (needs four-stroke)
    (results very-low weak good) (limits 35 60) (unit "psi")
    (note "Release not known: under 60 asks for a leak-down, not for a strip.")
    (basis estimate))
  (bands (id compression-side-valve) (check compression)
    (needs four-stroke side-valve)
    (results very-low weak good) (limits 25 50) (unit "psi")
    (note "Old side-valves read low: some run happily at 60.")
    (basis common-practice))
  (bands (id compression-side-valve-release) (check compression)
    (needs four-stroke side-valve decompression)
    (results very-low weak good) (limits 15 35) (unit "psi")
    (note "With a release only a leak-down can condemn it.")
    (basis estimate))
  (bands (id compression-ohv) (check compression)
    (needs four-stroke ohv)
    (results very-low weak good) (limits 40 75) (unit "psi")
    (note "No release known. Makers differ: one says look into it under 90.")
    (basis estimate))
  (bands (id compression-ohv-release) (check compression)
    (needs four-stroke ohv decompression)
    (results very-low weak good) (limits 20 40) (unit "psi")
    (note "The release bleeds at cranking speed; makers mostly print no figure.")
    (basis estimate))
  (bands (id compression-ohc) (check compression)
    (needs four-stroke ohc)
    (results very-low weak good) (limits 40 75) (unit "psi")
    (note "No release known; take the maker figure where there is one.")
    (basis estimate))
  (bands (id compression-ohc-release) (check compression)
    (needs four-stroke ohc decompression)
    (results very-low weak good) (limits 20 40) (unit "psi")
    (note "The release bleeds at cranking speed: judge by leak-down.")
    (basis estimate))
  (bands (id compression-two-stroke) (check compression)
    (needs two-stroke)
    (results very-low weak good) (limits 65 92) (unit "psi")
    (note "New ones give 120 to 150; release button not pressed in.")
    (basis common-practice))
  (check (id compression-wet) (name "wet compression test")
    (system compression) (kind try) (engine cranking) (minutes 6)
    (ask "Does the gauge climb after a spoon of oil in the cylinder?")
    (results no-rise rises)
    (labels "no clear rise" "rises by a quarter or more")
    (means
      "The leak is past a valve, the gasket or a hole, or there is none."
      "Oil sealed the rings: rings, bore, or a cylinder that has dried out.")
    (anyway 0.06)
    (off plug)
    (tools "compression gauge" "oil can")
    (steps
      "Take the dry reading first."
      "A teaspoon to a tablespoon of engine oil through the plug hole, by bore size."
      "Turn it over twice by hand with a rag at the hole, then gauge again the same way."
      "Expect smoke at the next start until the oil has burnt off.")
    (mistakes
      "So much oil that it fills the chamber: everything reads high."
      "Not turning it over first: the oil has not reached the rings.")
    (cautions oil-on-cylinder-wet-test compression-test-no-fire plug-lead-off)
    (also-called "wet test" "oil test")
    (basis published) (source tm-5-4210-230-14p-1) (place "p. 883, compression test with oil"))
  (check (id leak-down) (name "leak-down test")
    (system compression) (kind measure) (engine stopped) (minutes 12)
    (ask "How much air does the cylinder lose at top dead centre?")
    (results tight leaks leaks-badly)
    (labels "holds" "leaks" "leaks badly")
    (means
      "Rings, valves and gasket are good."
      "Worn; listen where it goes before stripping."
      "Something is open: valve, gasket, hole, stuck rings.")
    (anyway 0.05 0.004)
    (quantity ratio) (unit "%") (tolerance 4) (possible 0 100)
    (off plug)
    (tools "leak-down tester" "air supply" "something that locks the crankshaft")
    (steps
      "Warm if it runs. Plug out, piston at top dead centre, both valves shut."
      "Lock the crankshaft: air on the piston turns the engine with force."
      "Raise the air slowly and read the loss; rock the piston a little and read again."
      "A two-stroke is tested with the piston right at the top, above its ports.")
    (mistakes
      "A few degrees past the top: the crank spins or a valve is just opening."
      "On the wrong stroke: the exhaust valve is open."
      "Testing a dry cold cylinder and calling it worn.")
    (cautions plug-lead-off compressed-air crank-kickback eye-protection moving-parts hot-parts)
    (also-called "leakdown" "differential pressure test" "cylinder leakage test")
    (basis common-practice))
  (bands (id leak-down-any) (check leak-down)
    (results tight leaks leaks-badly) (limits 20 40) (unit "%")
    (note "Not a standard. Small bores lose more than large: listen before judging.")
    (basis common-practice) (source ac-43-13-1b)
    (place "ch. 8, para 8-14, in copies: aircraft engines are looked into at about 60 of 80 psi"))
  (check (id leak-down-where) (name "where the air gets out")
    (system compression) (kind listen) (engine stopped) (minutes 4)
    (ask "With air in the cylinder, where does it come out?")
    (results nowhere exhaust intake breather head-joint)
    (labels
      "nowhere to speak of"
      "out of the silencer"
      "out of the carburettor"
      "breather or oil filler"
      "at the head joint or plug")
    (means
      "The cylinder holds."
      "Exhaust valve, or on a two-stroke piston and rings."
      "Intake valve, or on a two-stroke rings and piston."
      "Past the rings or through the piston. A little is normal."
      "Head gasket, head bolts, plug seat or plug thread.")
    (anyway 0.015 0.015 0.03 0.01)
    (off plug)
    (tools "leak-down tester or air adapter" "length of hose" "soapy water")
    (steps
      "Air on as for the leak-down, both valves shut, crankshaft locked."
      "Ear or hose at silencer, carburettor, oil filler; soapy water round head and plug."
      "Hissing at the valves: turn half a turn and bring it up again, then listen once more.")
    (mistakes
      "Blaming the rings for the light hiss every engine has at the filler."
      "Filler cap and choke left shut: the sound comes out elsewhere.")
    (cautions plug-lead-off compressed-air crank-kickback moving-parts eye-protection)
    (also-called "where does it hiss")
    (basis common-practice)))

(deffacts head-and-plug-checks "head joint, plug hole and what can be seen through it"
  (check (id head-bolts) (name "head bolts")
    (system compression) (kind try) (engine cold) (minutes 8)
    (ask "Are the head bolts tight?")
    (results tight loose)
    (labels "all at the same torque" "one or more loose or stripped")
    (means "The clamp is sound." "The joint leaks or soon will.")
    (anyway 0.01)
    (needs four-stroke)
    (tools "torque wrench")
    (steps
      "Cold engine. Set the wrench to the maker figure and try each bolt in the star order."
      "A bolt that turns on and on has lost its thread in the aluminium."
      "Re-torquing does not mend a gasket that has already blown.")
    (mistakes "Loosening bolts first and losing the evidence." "Testing hot.")
    (cautions hot-parts aluminium-threads)
    (also-called "cylinder head bolts" "head torque")
    (basis common-practice))
  (check (id head-gasket-soot) (name "soot or oil track at the head joint")
    (system compression) (kind look) (engine stopped) (minutes 5)
    (ask "Is there a soot or oil track at the head joint?")
    (results none soot-track)
    (labels "clean all round" "black or wet track")
    (means "No sign of a leak to the outside." "Gas comes out there: gasket or loose head.")
    (anyway 0.015)
    (needs four-stroke)
    (off blower-housing)
    (tools "lamp")
    (steps
      "Wipe the joint, look between the fins with a lamp."
      "Look hardest where the head is hottest and by the pushrod tunnel."
      "Not sure: air in the cylinder as for the leak-down, soapy water along the joint: bubbles.")
    (mistakes
      "Taking oil thrown by the fan for gasket leakage."
      "Trusting a clean joint: it may leak into the pushrod tunnel.")
    (cautions hot-parts moving-parts compressed-air crank-kickback)
    (basis common-practice))
  (check (id piston-crown-look) (name "piston crown through the plug hole")
    (system compression) (kind look) (engine stopped) (minutes 3)
    (ask "What does the piston crown look like through the plug hole?")
    (results clean carboned damaged)
    (labels "tan to thin black, whole" "thick flaky carbon" "holed, melted or hammered")
    (means
      "Nothing wrong to be seen."
      "Carbon raises compression, glows and knocks."
      "Piston burnt through or something has been in there.")
    (anyway 0.08 0.002)
    (off plug)
    (tools "lamp or inspection camera")
    (steps
      "Plug out, piston halfway down, lamp or a small inspection camera."
      "Look at the edge by the exhaust for melting, and at the middle for a hole."
      "Bright dents mean a loose part: find it.")
    (mistakes "Calling wet oil on the crown carbon." "Letting dirt from round the plug fall in.")
    (cautions plug-lead-off hot-parts)
    (also-called "borescope" "look down the plug hole")
    (basis common-practice))
  (check (id plug-hole-thrown) (name "what the plug hole throws out")
    (system compression) (kind try) (engine stopped) (minutes 3)
    (ask "Plug out, turned over: does liquid come out of the hole?")
    (results dry fuel oil)
    (labels "only air" "petrol" "oil")
    (means
      "No liquid in the cylinder."
      "Flooded or filled past the float needle or the prime."
      "Oil has run in: tipped, overfilled or past worn rings.")
    (anyway 0.02 0.01)
    (off plug)
    (tools "plug wrench" "rag")
    (steps
      "Lead off and grounded away from the hole, stop switch off, tap shut."
      "Rag over the hole, face and hands clear. Turn it over slowly, then briskly."
      "Look at the rag and smell it.")
    (mistakes
      "Spark lead near the hole: the mist catches fire."
      "Forcing the rope of a locked engine before the plug is out.")
    (cautions plug-lead-off no-spark-near-fuel fuel-vapour eye-protection)
    (basis common-practice))
  (check (id bore-look) (name "cylinder bore")
    (system compression) (kind look) (engine stopped) (minutes 5)
    (ask "What does the bore look like?")
    (results clean worn scored)
    (labels
      "even, hone marks or a light polish"
      "polished with a ridge at the top"
      "scratched or smeared with metal")
    (means
      "The bore is good."
      "Worn by dirt or hours."
      "It has run dry, hot or with dirt; rings cannot seal.")
    (anyway 0.02 0.003)
    (off plug)
    (tools "inspection camera")
    (steps
      "Piston at the bottom, inspection camera through the plug hole, or head off."
      "Feel for a ridge with a fingernail at the top of ring travel."
      "Gauge it where the maker gives a limit.")
    (mistakes "Taking a smear of oil for a scratch." "Judging only the side that is easy to see.")
    (cautions plug-lead-off)
    (basis common-practice))
  (check (id ring-look) (name "piston rings, piston out")
    (system compression) (kind look) (engine stopped) (minutes 15)
    (ask "With the piston out: are the rings free and whole?")
    (results free worn stuck-or-broken)
    (labels
      "free and springy, faces even"
      "free, but faces dull, scratched or sharp-edged"
      "stuck in the groove or broken")
    (means "The rings are good." "Worn out." "Gummed, carboned or broken.")
    (anyway 0.015 0.004)
    (needs four-stroke)
    (off cylinder-head crankcase-cover)
    (tools "ring expander" "lamp")
    (steps
      "Look at each ring face all round: dull, scratched, sharp at the edge."
      "Roll each ring in its groove: it must move all round."
      "Look for gaps in line and for a ring put in upside down.")
    (mistakes "Breaking a stuck ring and calling it broken before." "Scraping grooves wider.")
    (cautions plug-lead-off gloves-solvent)
    (destroys "head and sump gaskets")
    (basis common-practice))
  (check (id ring-end-gap) (name "piston ring end gap")
    (system compression) (kind measure) (engine stopped) (minutes 15)
    (ask "Top ring square in the bore: what is the gap between its ends?")
    (results right wide)
    (labels "within the figure" "too wide")
    (means "Ring and bore still seal." "Ring or bore worn out; gauge the bore to tell which.")
    (anyway 0.03)
    (quantity length) (unit "mm") (tolerance 0.05) (possible 0 10)
    (needs four-stroke)
    (off cylinder-head crankcase-cover)
    (tools "feeler gauges" "ring expander")
    (steps
      "Ring off the piston with the expander, carbon off its ends."
      "Push it square into the bore with the piston crown, 25 mm down; gauge the gap."
      "Again near the bottom, where the bore is not worn: much less there means the bore.")
    (mistakes
      "Gauging a ring that stands askew."
      "Putting new rings into a bore that was never gauged.")
    (cautions plug-lead-off gloves-solvent eye-protection)
    (destroys "head and sump gaskets")
    (also-called "ring gap" "end gap")
    (basis common-practice))
  (bands (id ring-end-gap-any) (check ring-end-gap) (results right wide) (limits 0.8) (unit "mm")
    (note "New 0.2 to 0.5 mm on bores of 55 to 90 mm; makers reject at about 0.8 to 1.0 mm.")
    (basis estimate)))
