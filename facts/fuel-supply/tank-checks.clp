; Checks of the tank: vent, inside, tap, pickup filter, and where fuel leaks.
; Results, labels and means run in the same order. Check with: pullcord vet

(deffacts tank-vent-checks "does the tank breathe"
  (check (id cap-loosened) (name "run with the fuel cap loosened") (system fuel) (kind try)
    (engine running)
    (ask "When it dies or falters, does loosening the fuel cap bring it back?")
    (results no-change runs-on hiss)
    (labels "no change" "picks up or runs on" "air hisses in as the cap is loosened")
    (means "The vent is not the trouble." "Vent shut: the tank could not take in air."
      "The tank was under vacuum: vent shut.") (anyway 0.01 0.02) (minutes 8)
    (steps "Run it under load until the complaint shows."
      "At the first falter slacken the cap a turn and listen; not right off, and no full tank."
      "Leave the cap loose and repeat for as long as it took before.")
    (cautions refuel-cool fuel-vapour hot-parts moving-parts carbon-monoxide)
    (mistakes
      "Opening the cap before the trouble shows: a half-hour fault is not seen in two minutes."
      "Testing on a nearly empty tank: the more air above the fuel, the later it shows.")
    (also-called "gas cap test" "crack the cap")
    (basis common-practice))
  (check (id vent-look) (name "tank vent") (system fuel) (kind look) (engine stopped)
    (ask "Does the tank vent (in the cap, or the vent valve or hose) let air in?")
    (results clear blocked)
    (labels "air passes inwards" "shut, clogged or stuck")
    (means "The tank can breathe."
      "The tank goes under vacuum as fuel is drawn and the flow stops.") (anyway 0.008) (minutes 4)
    (tools "clean hose" "hand vacuum pump")
    (steps "Take the cap off, or pull the vent hose or valve."
      "Draw air through it in the inward direction with a clean hose or hand pump."
      "Valve types pass air inwards and hold outwards: test both.")
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "Blowing the wrong way through a one-way vent and calling it blocked."
      "Sucking on it by mouth.") (also-called "cap vent" "breather valve of the tank")
    (basis common-practice)))

(deffacts tank-inside-checks "tank, tap, pickup"
  (check (id tank-inside) (name "inside of the tank") (system fuel) (kind look) (engine stopped)
    (ask "What lies on the bottom of the tank?")
    (results clean dirt rust)
    (labels "clean" "dirt, chaff, shreds or slime" "rust or scale")
    (means "Tank is not the source."
      "Dirt will go on reaching tap, filter and bowl until it is out."
      "Steel tank rusting: cleaning the carburettor alone will not last.") (anyway 0.04 0.012)
    (minutes 4)
    (tools "torch" "suction pump or siphon with primer bulb")
    (steps "Draw the fuel down until the bottom shows."
      "Look into the corners and round the outlet with a cold torch."
      "Wipe the bottom with a lint-free swab on a rod: brown powder on steel is rust."
      "A plastic tank cannot rust, but keeps dirt and shreds of seal or hose.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (mistakes "Looking at a full tank." "Taking dye or oil staining on plastic for rust.")
    (basis common-practice))
  (check (id pickup-filter-look) (name "pickup filter in the tank") (system fuel) (kind look)
    (engine stopped) (needs pickup-filter)
    (ask "Hooked out of the tank, how is the pickup filter?")
    (results clean clogged off-or-lost)
    (labels "clean, on its hose" "dark, slimy or hard"
      "off the hose, or the hose split or lost in the tank")
    (means "Pickup is clear." "Starves when fuel is wanted most: full throttle."
      "Sucks air as soon as the fuel moves, and lets dirt through.") (anyway 0.06 0.01) (minutes 4)
    (tools "hook of clean wire" "long-nosed pliers")
    (steps "Clean round the filler, fish the hose with the hook, never by the filter body alone."
      "Squeeze the filter: fuel should run out freely."
      "Bend the hose all round: look for splits where it enters the tank.")
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "Pulling the hose out of its grommet."
      "Calling it clean because it is white: felt clogs inside.")
    (also-called "fuel filter in the tank" "clunk filter")
    (basis common-practice))
  (check (id suction-pickup-look) (name "pickup pipe of the suction carburettor") (system fuel)
    (kind look) (engine stopped) (needs suction-lift) (off carburettor)
    (ask "Carburettor lifted off the tank: are pickup screen and check ball clean and free?")
    (results clear clogged)
    (labels "screen clean, ball rattles" "screen gummed, or ball stuck")
    (means "Fuel can be lifted." "Nothing, or too little, is lifted from the tank.") (anyway 0.05)
    (minutes 4)
    (tools "screwdriver" "catch tray")
    (steps "Lift carburettor and tank off together, then part them."
      "Shake the pipe: a ball, where fitted, must rattle." "Look through the screen at the light.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent)
    (mistakes "Soaking a plastic pipe in strong carburettor cleaner."
      "Tearing the tank gasket or diaphragm on parting.")
    (basis common-practice))
  (check (id tap-flow) (name "flow at the tap") (system fuel) (kind look) (engine stopped)
    (needs fuel-tap)
    (ask "Hose off at the tap outlet, tap open: how does it run?")
    (results steady slow none)
    (labels "steady full stream" "dribble or stream that dies away" "nothing")
    (means "Tank, vent and tap are clear." "Tap screen part clogged, or the tank is not venting."
      "Tap or its screen clogged, tap not really opening, or no fuel.") (anyway 0.03 0.01)
    (minutes 4)
    (tools "catch can" "hose clamp")
    (steps "Can under the outlet, cap loose, tap open."
      "Watch for half a minute, not two seconds."
      "Poor: take the cap right off and look again, then suspect the screen.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel fuel-storage-container)
    (mistakes "Forgetting the cap: a shut vent gives the same slow flow."
      "Not checking that the tap turns the part inside and not just the lever.")
    (also-called "petcock flow" "shut-off valve flow")
    (basis common-practice))
  (check (id fuel-leak-where) (name "where fuel leaks") (system fuel) (kind look) (engine stopped)
    (ask "Wiped dry and left standing, where does the first wet show?")
    (results dry tank-or-cap line-or-tap bowl-joint carburettor-throat)
    (labels "stays dry" "tank seam, grommet or cap" "hose, clip, filter or tap"
      "bowl joint or drain screw" "out of the carburettor throat, overflow or air filter")
    (means "No leak while standing." "Tank split, grommet hard, cap seal bad or overfilled."
      "Hose hard or split, clip slack, tap gland." "Bowl gasket, drain washer or bowl nut washer."
      "The needle does not shut: float, needle or seat.") (anyway 0.01 0.01 0.01 0.01) (minutes 12)
    (tools "rag" "torch")
    (steps "Wipe everything dry, tap open, tank half full, no hot parts near."
      "Wait ten minutes, then go from the top down with a dry rag."
      "The highest wet spot is the leak.")
    (cautions fuel-vapour no-spark-near-fuel hot-parts)
    (mistakes "Blaming the lowest wet part." "Testing with an empty tank.")
    (also-called "petrol leak")
    (basis common-practice))
  (check (id fill-height-asked) (name "fill height of the tank") (system fuel) (kind ask)
    (ask "When it dripped, how high had it been filled?")
    (results below-neck to-the-brim)
    (labels "below the neck" "to the brim, or nobody knows when to stop")
    (means "It was not the filling." "Fuel swells in the warm and has to go somewhere: vent or cap.")
    (anyway 0.15) (minutes 0.5)
    (steps "Ask whether it dripped just after filling, in the sun, or in the car."
      "Look for the highest wet mark inside the neck.")
    (mistakes "Asking whether it was overfilled: nobody says yes to that.")
    (also-called "overfilled" "filled to the top") (basis common-practice))
  (check (id leak-at-lower-level) (name "does it leak with the tank half full") (system fuel)
    (kind try) (engine stopped)
    (ask "Fuel down to half, wiped dry, half an hour: does it get wet again?")
    (results dry-now still-wet) (labels "stays dry" "wet again")
    (means "No leak, or one that shows only when it is filled into the neck."
      "A true leak: tank, hose, tap, bowl or needle.") (anyway 0.03) (minutes 8)
    (tools "siphon hand pump" "fuel can" "rag")
    (steps "Engine cold. Draw the fuel down to half into a can on the ground."
      "Wipe everything dry, tap open, leave it level for half an hour with other work."
      "Look again from the top down.")
    (cautions fuel-vapour no-spark-near-fuel fuel-storage-container hot-parts)
    (mistakes "Siphoning by mouth." "Judging by smell: the first spill is still drying.")
    (also-called "lower the fuel level") (basis common-practice)))
