; Checks of crankshaft, rod, bearings, crankcase and the two-stroke piston.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts bottom-end-checks "crank, rod, bearings and case"
  (check (id crank-turn-by-hand) (name "crankshaft turned with the plug out")
    (system compression) (kind try) (engine stopped) (minutes 3)
    (ask "Plug out: does the crankshaft turn freely by hand?")
    (results free tight locked)
    (labels "turns freely through two turns" "tight or catches at a place" "will not turn")
    (means
      "Nothing is locked inside."
      "Scoring, bent crank, rust in the bore or something caught."
      "Seized, jammed by a broken part, or held by what it drives.")
    (anyway 0.03 0.005)
    (off plug)
    (steps
      "Lead off, plug out, drive and blade free."
      "Turn at the flywheel nut, the way it runs, by hand only."
      "If it went free with the plug out, look for liquid in the cylinder."
      "If locked: take the starter and the load off it before blaming the engine.")
    (mistakes "Long bar on the flywheel nut." "Forgetting a blade brake, belt or jammed auger.")
    (cautions plug-lead-off blade-edges moving-parts crank-kickback)
    (also-called "turn by hand" "is it seized")
    (basis common-practice))
  (check (id crank-end-play-or-rod-knock) (name "crank play and rod knock by hand")
    (system compression) (kind try) (engine stopped) (minutes 4)
    (ask "Any end play, side play or knock when the crank is rocked?")
    (results none play rod-knock)
    (labels
      "none beyond a little end play"
      "side play or much end play"
      "knocks before the piston moves")
    (means
      "Bearings and rod are good."
      "Main bearings are worn."
      "Rod bearing or piston pin is worn.")
    (anyway 0.015 0.01)
    (off plug blower-housing)
    (steps
      "Plug out. Rock the flywheel a few degrees back and forth near mid-stroke."
      "A finger or soft rod on the piston: the crank must not move before it does."
      "Lift and push the flywheel and the drive end: side play is bearing wear.")
    (mistakes
      "Taking play in the drive or a loose flywheel for a rod."
      "Calling normal end play a fault.")
    (cautions plug-lead-off moving-parts blade-edges)
    (basis common-practice))
  (check (id piston-moves) (name "piston follows the crank")
    (system compression) (kind try) (engine stopped) (minutes 2)
    (ask "Through the plug hole: does the piston go up and down with the crank?")
    (results moves does-not-move)
    (labels "moves full stroke" "stays still or hangs loose")
    (means "Rod and crank are joined." "The connecting rod is broken.")
    (anyway 0.003)
    (off plug)
    (tools "plastic straw")
    (steps
      "Plug out. A plastic straw or soft rod resting on the piston, held loosely."
      "Turn the crank slowly by hand through one turn and watch the straw.")
    (mistakes "A hard rod that jams or scratches." "Letting go of the straw.")
    (cautions plug-lead-off moving-parts)
    (basis common-practice))
  (check (id crankcase-look) (name "outside of the crankcase")
    (system compression) (kind look) (engine stopped) (minutes 3)
    (ask "Is the crankcase whole all round?")
    (results whole cracked-or-holed)
    (labels "whole" "cracked or holed")
    (means "No damage to be seen." "Rod through the case or a blow: the engine is mostly done for.")
    (anyway 0.005)
    (tools "lamp")
    (steps
      "Look all round, under the starter and round the sump with a lamp."
      "Fresh oil under a dry-looking engine: look again, by the cam side.")
    (mistakes "Missing a crack under caked dirt.")
    (cautions hot-parts used-oil blade-edges)
    (basis common-practice))
  (check (id case-joint-look) (name "crankcase joint")
    (system lubrication) (kind look) (engine any) (minutes 8)
    (ask "Is the crankcase joint dry?")
    (results dry wet)
    (labels "dry" "oily or black along the seam")
    (means "The joint holds." "It leaks there: oil out, or air in on a two-stroke.")
    (anyway 0.05)
    (steps
      "Wipe clean, run a few minutes outdoors or leave overnight; stopped, look at the lowest point."
      "Follow the wet upward: the highest wet place is the leak."
      "Try the case bolts.")
    (mistakes "Blaming the seam for oil from higher up.")
    (cautions hot-parts used-oil carbon-monoxide)
    (basis common-practice))
  (check (id knock-sound) (name "knock heard")
    (system compression) (kind listen) (engine running) (minutes 3)
    (ask "Does it knock, and how?")
    (results none light-pinging heavy-knock)
    (labels "none" "light pinging under load" "heavy knock")
    (means
      "No knock."
      "Early spark, carbon, heat or poor fuel; light tap may be wide clearance."
      "Rod, pin or bearing; or a loose blade, flywheel or mount.")
    (anyway 0.04 0.01)
    (steps
      "Run briefly at idle, then half speed. Listen with a rod at cylinder, case and drive."
      "Stop at once if it is heavy: check the oil first."
      "Take the load off: blade and pulley knocks go with it.")
    (mistakes
      "Running a knocking engine to hear it better."
      "Condemning the rod for a loose blade or flywheel.")
    (cautions moving-parts noise-hearing carbon-monoxide hot-parts)
    (basis common-practice)))

(deffacts two-stroke-checks "piston through the port, crankcase tightness"
  (check (id piston-through-port) (name "piston seen through the exhaust port")
    (system compression) (kind look) (engine stopped) (minutes 8)
    (ask "Through the exhaust port: how do piston and rings look?")
    (results clean scored)
    (labels "even, tool marks or light brown" "upright scratches or smeared metal")
    (means
      "Piston is good."
      "Lean, straight petrol or overheated: find the cause before the parts.")
    (anyway 0.01)
    (needs two-stroke)
    (off muffler)
    (tools "lamp")
    (steps
      "Muffler off. Turn the piston past the port and look with a lamp."
      "Press each ring with a soft stick: it should spring."
      "Exhaust side only: heat or lean. All round: no oil in the fuel. Intake side: dirt.")
    (mistakes
      "Scratching the piston or port with a screwdriver."
      "Fitting a new cylinder without finding the cause.")
    (cautions plug-lead-off hot-parts two-stroke-lean-seizure)
    (also-called "look in the exhaust port")
    (basis common-practice))
  (check (id crankcase-pressure-test) (name "crankcase pressure and vacuum test")
    (system compression) (kind measure) (engine stopped) (minutes 25)
    (ask "Pumped to 7 psi (48 kPa): what does the crankcase still hold after ten seconds?")
    (results holds leaks)
    (labels "holds" "leaks")
    (means "Seals and joints are tight." "Air gets in: it runs lean, races and scores.")
    (anyway 0.05)
    (quantity pressure) (unit "psi") (tolerance 0.3) (possible 0 50)
    (needs two-stroke)
    (off muffler carburettor plug-boot)
    (tools "hand pump with gauge" "blanking plates")
    (steps
      "Block intake and exhaust at the cylinder, plug in, piston at the top."
      "Pump through the pulse nipple to 7 psi (48 kPa), no more; read after ten seconds."
      "Then the same with vacuum: a seal may hold one way only. Falls there too: it leaks."
      "Turn the crank slowly during the test.")
    (mistakes
      "Leaking blanking plates taken for the engine."
      "Too much pressure: it pushes seals out."
      "Pressure only, no vacuum.")
    (cautions pressure-test-low plug-lead-off two-stroke-lean-seizure)
    (also-called "crankcase leak test" "pressure test")
    (basis common-practice))
  (bands (id crankcase-pressure-two-stroke) (check crankcase-pressure-test) (needs two-stroke)
    (results leaks holds) (limits 6) (unit "psi")
    (note "Pumped to 7 psi. Some makers want less: their figure first, and never more.")
    (basis common-practice))
  (check (id crankcase-leak-where) (name "where the crankcase leaks")
    (system compression) (kind look) (engine stopped) (minutes 10)
    (ask "With pressure in the crankcase: where does it bubble?")
    (results nowhere cylinder-base crank-seal)
    (labels "nowhere" "cylinder base or case seam" "at a crank seal")
    (means "No leak." "Base gasket or case joint." "Seal hard or cut, or its shaft worn.")
    (anyway 0.02 0.02)
    (needs two-stroke)
    (off flywheel muffler carburettor)
    (tools "hand pump with gauge" "soapy water")
    (steps
      "Pressure on as above. Flywheel and clutch off to see both seals."
      "Soapy water at seals, seam, base and pulse nipple."
      "Turn the shaft while watching the seal lips.")
    (mistakes "Looking at one seal only.")
    (cautions pressure-test-low plug-lead-off flywheel-puller)
    (basis common-practice))
  (check (id ring-spring-through-port) (name "rings pressed through the port")
    (system compression) (kind try) (engine stopped) (minutes 5)
    (ask "Through the exhaust port: do the rings spring when pressed?")
    (results springy worn-or-stuck)
    (labels "spring back" "dead, stuck or very loose")
    (means "Rings are free." "Carbon holds them, or they are worn out.")
    (anyway 0.05)
    (needs two-stroke)
    (off muffler)
    (tools "wooden stick" "lamp")
    (steps
      "Muffler off, rings standing in the port."
      "Press each lightly with a wooden stick: it should go in and spring out.")
    (mistakes "A metal tool: it nicks ring and port.")
    (cautions plug-lead-off hot-parts)
    (basis common-practice))
  (check (id bottom-end-strip) (name "rod, pin and bearings, crankcase open")
    (system compression) (kind look) (engine stopped) (minutes 120)
    (ask "With the crankcase open: what has play?")
    (results sound pin-worn main-worn rod-worn)
    (labels "nothing beyond limits" "piston pin" "main bearings" "big end")
    (means
      "Look for the noise outside: blade, flywheel, mounts, drive."
      "Pin, piston or small end."
      "Bearings, and look at the seals."
      "Rod; gauge the crank pin before buying one.")
    (anyway 0.006 0.006 0.006)
    (needs four-stroke)
    (off flywheel crankcase-cover)
    (tools "micrometer" "torque wrench")
    (steps
      "Only after oil, blade, flywheel and mountings are cleared of the noise."
      "Oil out, crankcase open. Feel rod and pin for play, spin the bearings."
      "Gauge crank pin and rod where the maker gives a limit.")
    (mistakes "Turning the rod cap round at assembly." "Losing the order of cam and tappets.")
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent)
    (destroys "crankcase gasket")
    (basis common-practice)))
