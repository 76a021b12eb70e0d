; Repairs of fuel and tank faults. steps in the order they are done; parts by kind, never by maker;
; reuse says what may go back. Check with: pullcord vet

(deffacts fuel-repairs "put the fuel right"
  (repair (id fill-fresh-fuel) (name "fill with fresh fuel") (minutes 5)
    (consumables "fresh petrol, or fresh mix for a two-stroke")
    (steps "Engine cold, outdoors." "Fill to below the neck; two-stroke: mix at the book ratio."
      "Tap open, wait a minute for the bowl, or press the bulb until it is full."
      "Ask why it ran dry: leak, forgotten, or drained.")
    (cautions refuel-cool fuel-vapour no-spark-near-fuel fuel-storage-container)
    (reuse "No doubtful fuel from another can.")
    (basis common-practice))
  (repair (id drain-and-refill) (name "drain all old or wrong fuel and refill") (minutes 25)
    (consumables "fresh petrol" "spark plug if fouled" "rags")
    (tools "siphon or pump" "waste can" "plug spanner")
    (steps "Drain tank, line and bowl; not the tank alone."
      "Look at bowl and jets: gum there must be cleaned too."
      "Fit a new filter if the old one is dark."
      "Fresh fuel, a little swilled through and drained, then fill."
      "Clean or renew the plug, start, run ten minutes at load."
      "Tell the owner: fresh fuel within the month, drain or run dry for storage.")
    (cautions refuel-cool fuel-vapour no-spark-near-fuel gloves-solvent waste-fuel
      fuel-storage-container carbon-monoxide) (reuse "Stale fuel does not go back, nor is it thinned with new.")
    (basis published) (source tm-5-4240-501-14p)
    (place "tpub p. 285: drain tank and carburettor if unused 30 days"))
  (repair (id drain-water-and-refill) (name "drain the water and refill") (minutes 35)
    (consumables "fresh petrol" "fuel filter" "lint-free rag")
    (tools "siphon or pump" "clear jar" "waste can")
    (steps "Drain tank to the last drop; swab the bottom dry."
      "Drain line, filter and bowl; wipe the bowl."
      "A filter that has been wet with water is renewed."
      "Look at jet and needle for white crust." "Refill, draw a jar from the bowl: no beads."
      "Find the way in: cap seal, can, store.")
    (cautions refuel-cool fuel-vapour no-spark-near-fuel waste-fuel fuel-storage-container)
    (reuse
      "No additive turns water into fuel; it only spreads it. Separated fuel does not go back.")
    (basis published) (source unl-cropwatch)
    (place "additives against phase separation: 2 of 8 helped, by 0.23 tsp per gallon"))
  (repair (id drain-wrong-fuel) (name "drain diesel or other heavy fuel") (minutes 45)
    (consumables "fresh petrol" "spark plug" "fuel filter" "engine oil if it smells of fuel")
    (tools "siphon or pump" "waste can" "plug spanner")
    (steps "Drain tank, line, filter and bowl; flush twice with a little petrol."
      "Plug out, turn the engine over to clear the cylinder, new or cleaned plug."
      "Four-stroke: smell the oil; change it if it is thinned."
      "Refill, start, run until the smoke is gone.")
    (cautions refuel-cool fuel-vapour no-spark-near-fuel plug-lead-off spark-test-grounded
      waste-fuel used-oil carbon-monoxide) (reuse "The drained mixture is waste.")
    (basis common-practice))
  (repair (id drain-and-mix-right) (name "drain and refill with the right two-stroke mix")
    (minutes 25) (consumables "petrol" "two-stroke oil" "spark plug")
    (tools "measuring jug" "waste can" "plug spanner")
    (steps
      "Drain tank and press the bulb until empty; run the rest out only if there was oil in it."
      "Too little oil: look through the exhaust port first; a scored piston stops the job here."
      "Mix in a clean marked can: 25:1 is 40 mL a litre, 40:1 25 mL, 50:1 20 mL. Shake."
      "Refill, new plug." "Too much oil: clean exhaust port and screen as well.")
    (cautions two-stroke-lean-seizure refuel-cool fuel-vapour no-spark-near-fuel waste-fuel)
    (reuse "A can of unknown mix does not go back.")
    (basis common-practice)))

(deffacts tank-repairs "put the tank right"
  (repair (id clean-tank) (name "clean the tank") (minutes 45) (off fuel-tank)
    (parts "fuel filter" "tap or outlet seal") (consumables "clean petrol" "lint-free rags")
    (tools "siphon or pump" "catch can" "strainer cloth")
    (steps "Drain, take the tank off."
      "Swill with a little petrol, shake, pour through a cloth; again until clean."
      "Clean or renew outlet screen, tap screen and pickup filter."
      "Clean the bowl: it has had the same dirt."
      "Dry in the open air, refit, fill, check the joints for leaks.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent waste-fuel eye-protection)
    (reuse "Sound plastic tanks and grommets go back; hard grommets and split seals do not.")
    (basis common-practice))
  (repair (id clean-or-replace-steel-tank) (name "clean or replace the rusted steel tank")
    (minutes 90) (off fuel-tank) (parts "fuel tank" "tap" "fuel filter") (parts-cost 40)
    (consumables "clean petrol" "rust remover as its maker says")
    (tools "siphon or pump" "length of chain or clean gravel" "torch")
    (steps "Drain, take tank and tap off."
      "Press at the seams and bottom: soft or pinholed, replace it."
      "Light rust: rattle with a chain, rinse, rust remover, rinse, dry, wet with petrol at once."
      "New tap screen, fit a clear filter in the line where the maker allows it."
      "Clean bowl, needle and jets.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent eye-protection waste-fuel)
    (reuse "A pinholed tank does not go back. Never weld or braze one that has held petrol.")
    (basis common-practice))
  (repair (id replace-tank-or-seal) (name "replace tank, grommet or cap seal") (minutes 40)
    (off fuel-tank) (parts "tank, grommet or cap with seal") (parts-cost 30)
    (tools "pliers" "waste can")
    (steps "Drain and find the wet spot for certain."
      "Grommet or cap seal: renew it. Split or pinholed tank: renew it."
      "Refit with its rubbers so that it does not chafe." "Fill, wipe dry, stand, tip as in use.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (reuse "A split plastic tank is not glued.")
    (basis common-practice))
  (repair (id clear-cap-vent) (name "clear or replace the fuel cap") (minutes 10)
    (parts "fuel cap of the same kind") (parts-cost 8)
    (tools "soft brush" "hand vacuum pump")
    (steps "Take the cap off and apart where it is made so."
      "Wash in clean petrol, dry, draw air through inwards."
      "Sticky valve or swollen seal: new cap of the same kind."
      "Never drill a larger hole: it spills and lets water in.")
    (cautions fuel-vapour no-spark-near-fuel)
    (reuse "A cap that passes air freely inwards goes back.")
    (basis common-practice))
  (repair (id replace-tank-vent) (name "replace the tank vent valve") (minutes 15)
    (parts "tank vent valve") (parts-cost 8)
    (tools "hooked wire" "hand vacuum pump")
    (steps "Drain below the vent." "Draw the old valve, clean round its hole."
      "Press in the new one, test: in freely, out held."
      "Press the bulb with the cap tight: quick return.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel) (reuse "Clogged felt does not go back.")
    (basis common-practice))
  (repair (id open-fuel-tap) (name "open the fuel tap") (minutes 3)
    (steps "Open the tap fully." "Wait a minute for the bowl to fill."
      "Start with choke as from cold." "Show the owner the two positions.")
    (cautions fuel-vapour carbon-monoxide)
    (basis common-practice))
  (repair (id clean-or-replace-tap) (name "clean or replace the fuel tap") (minutes 25)
    (parts "fuel tap" "tap seal") (parts-cost 12)
    (tools "spanner" "catch can")
    (steps "Drain the tank, take the tap out with its screen."
      "Wash the screen; torn or gummed hard, renew it." "Swollen or weeping tap: renew it."
      "Swab the tank bottom round the outlet."
      "New seal, refit, measure: a full steady stream for a minute.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent waste-fuel)
    (reuse "The sealing washer does not go back.")
    (basis common-practice))
  (repair (id replace-pickup-filter) (name "replace the pickup filter") (minutes 10)
    (parts "pickup filter") (parts-cost 6)
    (tools "hook of clean wire" "pliers")
    (steps "Clean round the filler, hook out the hose, hold it."
      "Pull the old filter, push the new one fully on."
      "Look at the tank bottom and rinse it if dirty."
      "See that the filter reaches every corner of the tank.")
    (cautions fuel-vapour no-spark-near-fuel)
    (reuse "Felt and sintered filters do not go back once clogged; never run without one.")
    (basis common-practice))
  (repair (id replace-pickup-hose) (name "replace the pickup hose") (minutes 25)
    (parts "fuel hose of the right bore" "tank grommet" "pickup filter") (parts-cost 10)
    (tools "hooked wire" "long-nosed pliers") (off handheld-top-cover)
    (steps "Draw the old hose and keep it for length."
      "Cut the new one with a long taper, draw it through the wall."
      "Fit the filter, see that it follows the fuel in every position."
      "Renew the return hose of the bulb if it is as old.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (reuse "Hard or split hose does not go back.")
    (basis common-practice))
  (repair (id lower-fuel-level) (name "take fuel down below the neck") (minutes 8)
    (tools "siphon or pump" "rag")
    (steps "Engine cold: draw fuel off to below the neck."
      "Dry cap, vent and filter; wipe all wet parts." "Let it air before starting."
      "Show the owner the fill mark.")
    (cautions fuel-vapour no-spark-near-fuel refuel-cool waste-fuel)
    (basis common-practice))
  (repair (id clean-suction-pickup) (name "clean the suction pickup and tank") (minutes 40)
    (off carburettor) (parts "carburettor diaphragm" "tank gasket") (parts-cost 10)
    (consumables "carburettor cleaner")
    (tools "screwdriver" "low-pressure air")
    (steps "Lift carburettor with tank, part them, keep the diaphragm flat."
      "Wash screen and ball; blow through lightly; ball must rattle. Stuck: new pipe."
      "Wash out the tank and its small well."
      "New diaphragm and gasket, refit with no leak at the joint." "Fill half, start.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent compressed-air eye-protection
      passages-no-wire carbon-monoxide)
    (reuse
      "A creased or stiff diaphragm does not go back; strong cleaner off all plastic and rubber.")
    (basis common-practice)))
