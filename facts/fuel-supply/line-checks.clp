; Checks from the tank outlet to the carburettor inlet: line, filter, pump, purge bulb, air.
; Results, labels and means run in the same order. Check with: pullcord vet

(deffacts fuel-flow-checks "does fuel reach the carburettor"
  (check (id fuel-flow-at-carburettor) (name "fuel flow at the carburettor") (system fuel)
    (kind look) (engine stopped) (needs float-bowl)
    (ask "Line off at the carburettor, into a can: how does the fuel run?")
    (results steady slow none)
    (labels "steady full stream" "dribbles or dies away" "nothing")
    (means "Tank, vent, tap, filter and line are cleared: go to needle, bowl and jets."
      "A restriction or a shut vent upstream: step back towards the tank."
      "No fuel, tap shut, line or filter blocked, or the pump dead.") (anyway 0.02 0.01)
    (minutes 4)
    (tools "catch can" "hose clamp" "pliers")
    (steps "Engine cold, can under, tap open."
      "Pull the line off the carburettor inlet and let it run half a minute."
      "With a pulse pump: lead off the plug and earthed, crank, and watch for spurts."
      "Slow: loosen the cap and look again.")
    (cautions fuel-vapour no-spark-near-fuel spark-test-grounded waste-fuel plug-lead-off)
    (mistakes "Watching two seconds of what was standing in the hose."
      "Holding the end higher than the carburettor inlet.")
    (also-called "fuel flow" "line off test")
    (basis common-practice))
  (check (id fuel-flow-measured) (name "measured fuel flow") (system fuel) (kind measure)
    (engine stopped) (needs float-bowl gravity-feed)
    (ask "How much fuel runs out of the line at carburettor height in one minute?")
    (results steady slow none)
    (labels "plenty" "too little for full load" "next to nothing")
    (means "More than the engine can burn." "May start and idle but starves at full load."
      "Line, tap, filter or vent shut.") (anyway 0.03 0.01) (minutes 6) (quantity flow)
    (unit "mL/min") (tolerance 10) (possible 0 5000)
    (tools "measuring jug" "watch" "hose clamp")
    (steps "Cap on and shut, tank half full, line end at the height of the inlet."
      "Let it run one minute by the watch into the jug."
      "Repeat with the cap loose: a clear rise points at the vent.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel fuel-storage-container)
    (mistakes "Measuring with the cap off: it hides the vent." "Line end lower than the inlet.")
    (also-called "fuel flow rate")
    (basis common-practice))
  (bands (id fuel-flow-measured-any) (check fuel-flow-measured)
    (results none slow steady) (limits 5 60) (unit "mL/min")
    (note
      "5 hp burns about 30 mL a minute flat out; twice that is asked for. No maker prints a limit.")
    (basis estimate))
  (check (id air-in-line) (name "air bubbles in the line") (system fuel) (kind look) (engine any)
    (ask "Do bubbles pass in a clear line or purge return, or is there an air gap?")
    (results none bubbles)
    (labels "solid fuel" "bubbles or an air gap")
    (means "The line draws fuel only."
      "Air gets in at a split, joint or pickup, or is trapped in a loop, or the fuel boils.")
    (anyway 0.04) (minutes 5)
    (tools "short piece of clear fuel hose")
    (steps
      "Put a short clear hose in the line just before the carburettor, or watch the purge return."
      "Press the bulb, or run it at full throttle."
      "Follow the line back, joint by joint, until bubbles stop.")
    (cautions fuel-vapour no-spark-near-fuel moving-parts carbon-monoxide)
    (mistakes "Counting the first bubbles after the line was opened."
      "Clear hose of a kind that petrol hardens, left in for good.")
    (basis common-practice)))

(deffacts fuel-line-look-checks "line and filter"
  (check (id fuel-line-look) (name "fuel line") (system fuel) (kind look) (engine stopped)
    (ask "How is the fuel line from end to end?")
    (results sound cracked-or-loose kinked-or-soft)
    (labels "supple, clipped, no sharp bends" "split, hard, or slack on its pipe"
      "kinked, pinched, swollen or sucked flat")
    (means "Line is not the trouble." "Leaks standing, sucks air where there is a pump or a lift."
      "Chokes the flow, worst at full throttle or when warm.") (anyway 0.02 0.008) (minutes 4)
    (tools "torch" "mirror")
    (steps "Follow it from tank to carburettor."
      "Bend every part: cracks open on the outside of the bend and at the clips."
      "Squeeze: mushy is swollen, hard is finished.")
    (cautions fuel-vapour no-spark-near-fuel hot-parts)
    (mistakes "Not looking under the shroud or where the line passes the tank wall.")
    (also-called "fuel hose" "gas line")
    (basis common-practice))
  (check (id inline-filter-look) (name "filter in the line") (system fuel) (kind look)
    (engine stopped) (needs inline-filter)
    (ask "How is the filter in the fuel line?")
    (results clean clogged)
    (labels "clean, fuel passes" "dark, full of dirt or does not pass")
    (means "Filter is clear." "Chokes the flow: new filter, then find where the dirt comes from.")
    (anyway 0.02) (minutes 4)
    (tools "hose clamps" "catch can")
    (steps "Clamp both sides, take it out, tip it onto a white rag from the inlet end."
      "Compare the flow with and without it.")
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "Judging by a bubble of air in it: half-empty is often normal on gravity feed.")
    (also-called "fuel filter")
    (basis common-practice))
  (check (id inline-filter-arrow) (name "filter direction") (system fuel) (kind look) (engine any)
    (needs inline-filter)
    (ask "Does the arrow on the line filter point to the carburettor?")
    (results with-flow against-flow)
    (labels "arrow to the carburettor, or no arrow" "arrow to the tank")
    (means "Fitted right." "Fitted backwards: clogs early and sheds dirt into the carburettor.")
    (anyway 0.004) (minutes 0.5)
    (steps "Find the arrow or the IN and OUT marks."
      "No mark: the side with the wider cup is usually the inlet.")
    (cautions fuel-vapour)
    (mistakes "Turning a used filter round: its dirt goes straight to the needle.")
    (basis common-practice)))

(deffacts fuel-heat-checks "heat near the fuel"
  (check (id heat-shield-look) (name "line and carburettor kept from the heat") (system fuel)
    (kind look) (engine stopped)
    (ask "Does the fuel line lie clear of hot metal, and are shield and spacer in place?")
    (results clear touching-or-missing)
    (labels "clear, shield and spacer in place"
      "line against hot metal, or shield or spacer missing")
    (means "Heat is kept off the fuel." "Fuel can boil there on a hot day.") (anyway 0.03)
    (minutes 2)
    (tools "torch")
    (steps "Engine cold: follow the line past cylinder, head and silencer."
      "Look for melted or glazed spots."
      "See that the insulating spacer sits between carburettor and head.")
    (cautions hot-parts fuel-vapour)
    (mistakes "Looking with the shroud off, when the line hangs differently.")
    (basis common-practice)))

(deffacts fuel-pump-checks "pulse pump and purge bulb"
  (check (id pulse-pump-output) (name "output of the pulse pump") (system fuel) (kind try)
    (engine cranking) (needs pulse-pump)
    (ask "While cranking, does the pump send fuel in strong pulses?")
    (results pulses weak none)
    (labels "strong spurts" "weak dribble" "nothing")
    (means "Pump, pulse line and feed are good." "Diaphragm, valves, pulse leak or a choked feed."
      "Pump dead, no pulse, or no fuel at its inlet.") (anyway 0.03 0.01) (minutes 8)
    (tools "catch can" "hose" "spark tester or earth clip")
    (steps "Plug lead off and earthed."
      "Outlet hose of the pump into a can well away from the plug." "Crank ten turns and watch."
      "None: feed the inlet from a can held level; still none, test the pulse line.")
    (cautions fuel-vapour no-spark-near-fuel spark-test-grounded plug-lead-off moving-parts)
    (mistakes "Calling the pump dead with a blocked filter before it."
      "Looking for an outlet where the pump is in the carburettor: judge by bulb and diaphragm.")
    (also-called "fuel pump test" "impulse pump")
    (basis common-practice))
  (check (id pulse-line-look) (name "pulse line") (system fuel) (kind look) (engine stopped)
    (needs pulse-pump)
    (ask "How is the pulse hose or passage from the crankcase to the pump?")
    (results sound cracked-or-oily)
    (labels "tight, supple, dry" "split, slack, full of oil, or its gasket hole covered")
    (means "The pump gets its pulse."
      "The pulse is lost: weak pump, and on a two-stroke an air leak too.") (anyway 0.01)
    (minutes 5)
    (tools "hand vacuum pump" "torch")
    (steps "Pull it off at both ends, bend it, look for splits."
      "Blow through: it must be open; shut one end: it must hold."
      "Pump in the carburettor: see that the pulse hole lines up through spacer and gaskets.")
    (cautions fuel-vapour pressure-test-low)
    (mistakes "Swapping it with the fuel hose on refitting."
      "Soft fuel hose in its place: it swallows the pulse.")
    (also-called "impulse hose" "vacuum line of the pump")
    (basis common-practice))
  (check (id purge-bulb-feel) (name "purge bulb") (system fuel) (kind try) (engine stopped)
    (needs purge-bulb)
    (ask "Press the purge bulb ten times: what does it do?")
    (results fills stays-flat will-not-draw-back)
    (labels "fills with fuel and returns to the tank"
      "springs back but stays full of air, or is split"
      "stays squashed, or comes back very slowly")
    (means "Filter, hose, carburettor inlet and return are open."
      "Sucks air: split bulb, pickup off, hose cracked, or tank empty."
      "Cannot draw: clogged pickup filter, kinked line, shut tank vent or gummed inlet.")
    (anyway 0.04 0.03) (minutes 1)
    (steps "Tank at least half full, machine level."
      "Press slowly and let it come back by itself, ten times."
      "Loosen the fuel cap and try again." "Look for fuel weeping round the bulb.")
    (cautions fuel-vapour)
    (mistakes "Pressing fast: a slow return is missed."
      "Taking a full bulb for proof that the jets are open.") (also-called "purge primer" "bubble")
    (basis common-practice))
  (check (id purge-bulb-look) (name "purge bulb, looked at") (system fuel) (kind look)
    (engine stopped) (needs purge-bulb)
    (ask "Is the purge bulb split, hard or weeping at its rim?")
    (results whole split)
    (labels "whole and supple" "split, hard or weeping")
    (means "The bulb itself is good." "It draws air: renew it, with the hoses if they are as old.")
    (anyway 0.03) (minutes 2)
    (tools "torch")
    (steps "Wipe it dry and press it slowly while looking round the rim."
      "Wet it with soapy water: bubbles on the return stroke show a split.")
    (cautions fuel-vapour)
    (mistakes "Judging a cloudy bulb as bad: only splits and hardness count.")
    (basis common-practice))
  (check (id carburettor-primed-after-work) (name "carburettor filled after work") (system fuel)
    (kind ask) (engine any)
    (ask
      "Since the line or carburettor was last opened, was the bowl filled before trying to start?")
    (results yes no)
    (labels "yes, or nothing was opened" "no, or nobody knows")
    (means "An air pocket is unlikely." "The line may hold an air pocket and the bowl be dry.")
    (anyway 0.06) (minutes 0.5)
    (steps "Ask whether fuel was seen at the bowl drain or overflow after the work."
      "Ask whether the cap was on while the bowl filled.")
    (mistakes "Stripping the carburettor again before bleeding it.")
    (basis common-practice)))
