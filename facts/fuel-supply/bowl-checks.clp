; Checks at the float bowl: what comes out of it, what is in it, needle, float, level, overflow,
; and clearing a flooded engine. Results, labels and means run in the same order.
; Check with: pullcord vet

(deffacts bowl-checks "float bowl from outside and inside"
  (check (id bowl-drain-flow) (name "flow from the bowl drain") (system fuel) (kind look)
    (engine stopped) (needs float-bowl)
    (ask "Drain open, tap open: what comes out of the bowl, and does it keep coming?")
    (results flows-clean dirt-or-water little none)
    (labels "a bowlful, then a steady clean run" "water, dirt or slime comes with it"
      "a bowlful or less, then a dribble" "nothing")
    (means "Tank to needle is clear: look at the jets."
      "Water or dirt in the bowl, and more upstream." "Needle sticking, or the feed is choked."
      "Needle stuck shut, or no fuel gets here.") (anyway 0.03 0.02 0.005) (minutes 3)
    (tools "screwdriver or spanner" "clear jar")
    (steps "Jar under the bowl, tap open."
      "Open the drain screw; no drain: slacken the bowl nut a turn."
      "Watch the first run for water, then let it run half a minute.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel hot-parts)
    (mistakes "Stopping after the first bowlful: it is the flow afterwards that tells."
      "Taking the solenoid for a drain screw.") (also-called "drain the float bowl")
    (basis common-practice))
  (check (id bowl-inside) (name "inside of the bowl") (system fuel) (kind look) (engine stopped)
    (needs float-bowl) (off bowl)
    (ask "Bowl off: what is in it?")
    (results clean sediment gum-or-corrosion)
    (labels "clean" "dirt, rust or water drops at the bottom" "varnish, white crust or pitting")
    (means "Bowl is not the source."
      "Dirt or water has come through: clean the jets and the tank too."
      "Fuel dried here: the jets and needle will be gummed too.") (anyway 0.03 0.03) (minutes 3)
    (tools "spanner" "clear jar" "torch")
    (steps "Catch the fuel in a jar as the bowl comes off."
      "Keep the bowl level and look before tipping it out."
      "Keep the gasket as it lies: whole and not leaking, it may go back.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent waste-fuel)
    (mistakes "Tipping the evidence out." "Prising the gasket off with a screwdriver.")
    (basis common-practice))
  (check (id bowl-gasket-look) (name "bowl gasket and drain washers") (system fuel) (kind look)
    (engine stopped) (needs float-bowl) (off bowl)
    (ask "How is the bowl gasket, and the washers of bowl nut and drain?")
    (results whole torn-or-swollen)
    (labels "whole, lies flat in its groove" "torn, swollen, shrunk or pinched")
    (means "May go back if it did not leak before." "Will leak: it may not go back.") (anyway 0.01)
    (minutes 1)
    (tools "torch")
    (steps "Lay it in its groove: it must fit without stretching or bulging."
      "Look for tears, flat spots, and pinch marks on the bowl rim.")
    (mistakes "Leaving it in carburettor cleaner: rubber swells and does not fit again."
      "Sealing a bad one with paste.")
    (cautions fuel-vapour)
    (basis common-practice))
  (check (id overflow) (name "fuel running over") (system fuel) (kind look) (engine stopped)
    (ask "Standing with the tap open, does fuel come out of the carburettor or filter box?")
    (results dry seeps runs-out)
    (labels "dry" "damp, a drop now and then" "runs out")
    (means "The needle shuts." "Needle dirty or worn, or the level a little high."
      "Needle held open, float holed or level far too high. Shut the tap.") (anyway 0.03 0.01)
    (minutes 6)
    (tools "rag" "torch")
    (steps "Tap open, machine level, engine stopped."
      "Look into the throat, at the overflow pipe and the filter box." "Wait five minutes.")
    (cautions fuel-vapour no-spark-near-fuel hot-parts)
    (mistakes "Testing tilted: any float bowl runs over on its side." "Looking only at the floor.")
    (also-called "carb overflowing" "fuel in the air box")
    (basis common-practice)))

(deffacts needle-and-float-checks "needle, float, level"
  (check (id float-needle-leak) (name "float needle hold test") (system fuel) (kind try)
    (engine stopped) (needs float-bowl) (off carburettor)
    (ask "Does the float needle hold when the float lifts it?")
    (results holds leaks)
    (labels "holds" "leaks or will not seal")
    (means "Needle and seat are good." "Needle, seat or the dirt between them lets fuel by.")
    (anyway 0.01) (minutes 6)
    (tools "hand pump with gauge" "clean hose")
    (steps "Carburettor upside down so that the float rests on the needle."
      "Pump to 2 or 3 psi at the inlet, no more: it should hold half a minute."
      "Let the float drop: the pressure must go at once, or the needle sticks."
      "Look at the needle tip through a glass: a ring means worn.")
    (cautions pressure-test-low eye-protection fuel-vapour gloves-solvent no-spark-near-fuel)
    (mistakes "Blowing by mouth."
      "Pushing on the float with a finger: it seals anything and marks the tip.")
    (also-called "inlet needle test" "needle and seat")
    (basis common-practice))
  (check (id float-needle-free) (name "float and needle drop freely") (system fuel) (kind try)
    (engine stopped) (needs float-bowl) (off bowl)
    (ask "Bowl off, does the float fall by its own weight and the needle come off its seat?")
    (results drops sticks)
    (labels "drops, fuel runs with the tap open" "sticks, or fuel does not run")
    (means "Needle and float are free." "Needle gummed in its seat or the float hangs on its pin.")
    (anyway 0.008) (minutes 2)
    (tools "catch can")
    (steps "Bowl off, can under, tap open." "Let the float hang: fuel must run."
      "Lift it with a finger just touching: the flow must stop, and start again when let go.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (mistakes "Knocking it free and calling it cured: the gum is still there.")
    (also-called "needle stuck")
    (basis common-practice))
  (check (id float-level) (name "float height") (system fuel) (kind measure) (engine stopped)
    (needs float-bowl) (off carburettor bowl)
    (ask "Carburettor upside down: from the bowl face to the top of the float, how many mm?")
    (results right low high)
    (labels "right" "fuel level low (float height too big)"
      "fuel level high (float height too small)")
    (means "The level is right." "Bowl stands low: lean, worst at full load."
      "Bowl stands high: rich, drips, floods.") (anyway 0.01 0.01) (minutes 4) (quantity length)
    (unit "mm") (tolerance 0.4) (possible 0 60)
    (tools "depth gauge or steel rule")
    (steps
      "Gasket off, carburettor upside down, float just resting on its needle, spring not squeezed."
      "Measure from the bare bowl face to the top of the float, opposite the pivot."
      "Without a figure: the float's mould line should lie level with the bowl face.")
    (cautions fuel-vapour)
    (mistakes "Measuring with the gasket on."
      "The float's weight pressing the sprung pin of the needle."
      "Bending a plastic float: it cannot be set, only replaced.") (also-called "float height")
    (basis common-practice))
  (bands (id float-level-any) (check float-level) (needs float-bowl)
    (results high right low) (limits 11.5 16.5) (unit "mm")
    (note "Last resort only: heights differ by make; one common 160-200 cc size is about 13.7 mm.")
    (basis estimate))
  (check (id float-sinks) (name "float: floats or sinks") (system fuel) (kind look)
    (engine stopped) (needs float-bowl) (off bowl)
    (ask "Taken out, does the float float, and is there fuel inside when shaken?")
    (results floats heavy-or-fuel-inside)
    (labels "light, floats level" "heavy, or fuel slops inside")
    (means "Float is good." "It hangs low and holds the needle open: replace it.") (anyway 0.004)
    (minutes 3)
    (tools "jar of clean fuel or warm water")
    (steps "Draw the pin, lift float and needle out together." "Shake at the ear."
      "Brass: hold it under hot water; bubbles show the hole."
      "Solid kinds: push it under in fuel; it must bob up.")
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "Heating it over a flame." "Soldering a float without emptying it: it can burst.")
    (basis common-practice)))

(deffacts flooding-checks "is it flooded"
  (check (id clear-flood-start) (name "start after clearing the flood") (system fuel) (kind try)
    (engine cranking)
    (ask "Plug dried, choke open, throttle full: does it start now and keep running?")
    (results no-change starts-clear)
    (labels "no change" "clears its throat and runs")
    (means "Not flooding alone: go on." "It was flooded. If it keeps happening, find out why.")
    (anyway 0.015) (minutes 8)
    (tools "plug spanner" "rag" "dry spare plug")
    (steps "Switch off, tap shut. Plug out, lead earthed away from the hole."
      "Choke open, throttle wide: turn it over ten times, then let it air five minutes."
      "Dry plug in, lead on, people clear, outdoors; throttle full, choke open: start.") (off plug)
    (cautions no-spark-near-fuel fuel-vapour plug-lead-off spark-test-grounded moving-parts
      stand-clear-tool carbon-monoxide crank-kickback)
    (mistakes "Choking again after drying it."
      "Cranking with the lead loose beside a wet plug hole."
      "Leaving the throttle wide once it fires.") (also-called "clear flooded engine")
    (basis common-practice)))
