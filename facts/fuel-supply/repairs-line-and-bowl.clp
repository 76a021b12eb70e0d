; Repairs from the tank outlet to the float bowl, and after flooding. steps in the order they are
; done; reuse says what may go back. Check with: pullcord vet

(deffacts line-repairs "put line, filter and pump right"
  (repair (id replace-inline-filter) (name "replace the filter in the line") (minutes 12)
    (parts "fuel filter of the right kind" "hose clips") (parts-cost 6)
    (tools "hose clamps" "pliers")
    (steps
      "Clamp the line, take the filter out, tip it on a rag: what was in it came from the tank."
      "Gravity feed takes a gravity filter; a fine pump filter starves it."
      "Fit the new one, arrow to the carburettor."
      "Dirty tank: clean it now. Fill the bowl, look for leaks.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (reuse "A filter is not blown out and not turned round.")
    (basis common-practice))
  (repair (id replace-fuel-line) (name "replace the fuel line") (minutes 20) (off fuel-line)
    (parts "fuel hose of the right bore, fit for ethanol" "clips") (parts-cost 6)
    (tools "pliers" "knife")
    (steps "Tap shut or line clamped. Slit the old line where it sticks; do not tug at the pipes."
      "Same bore and length; falls all the way on gravity feed; clear of hot metal."
      "Clips at both ends."
      "Covers back on, then look again for pinching. Fill and look for leaks.")
    (cautions fuel-vapour no-spark-near-fuel hot-parts waste-fuel)
    (reuse "Hard, split or swollen hose does not go back; sound spring clips do.")
    (basis common-practice))
  (repair (id bleed-fuel-line) (name "bleed the air out of the line") (minutes 8)
    (tools "catch can")
    (steps "Tank at least half full, cap loose, tap open."
      "Open the bowl drain, or slacken the line at the carburettor."
      "Let it run until it comes without bubbles; lift or shake out any high loop."
      "Close, wipe, cap on, start.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel carbon-monoxide)
    (basis common-practice))
  (repair (id rebuild-pulse-pump) (name "rebuild or replace the pulse pump") (minutes 35)
    (parts "pump diaphragm and gasket set, or pump") (parts-cost 20)
    (tools "screwdriver" "catch can" "hand pump")
    (steps "Clamp the fuel lines. Mark the pump halves, part them."
      "New diaphragm, flaps and gaskets in the order they came."
      "Dirt inside: find out why the filter let it by."
      "Fuel in the pulse side: smell the engine oil; thinned oil is changed before it runs."
      "Refit, crank with the plug lead off and earthed: strong spurts.")
    (cautions fuel-vapour no-spark-near-fuel plug-lead-off spark-test-grounded waste-fuel used-oil)
    (reuse "Old diaphragm and gaskets do not go back.")
    (basis common-practice))
  (repair (id replace-pulse-line) (name "replace the pulse line or right its gasket") (minutes 20)
    (parts "pulse hose" "intake gasket") (parts-cost 6)
    (tools "pliers" "hand pump")
    (steps "Hose: same bore and stiffness, pushed fully home, clipped."
      "Passage: carburettor off, clean the hole, gasket with its hole over it."
      "Blow it clear of oil." "Test that it holds, then run.")
    (cautions fuel-vapour no-spark-near-fuel pressure-test-low carbon-monoxide)
    (reuse "A torn gasket or slack hose does not go back.")
    (basis common-practice))
  (repair (id replace-purge-bulb) (name "replace the purge bulb") (minutes 15)
    (parts "purge bulb or bulb body with valve" "short fuel hoses") (parts-cost 6)
    (tools "screwdriver")
    (steps "Take the retainer off, lift the bulb."
      "Look at the duckbill under it: stiff or curled, new body."
      "Fit the new bulb with its rim seated all round." "Press ten times: fills and returns.")
    (cautions fuel-vapour no-spark-near-fuel) (reuse "A split bulb is not glued.")
    (basis common-practice))
  (repair (id reroute-and-shield-line) (name "reroute the line and restore the heat shield")
    (minutes 30) (parts "fuel hose" "heat shield or insulating spacer") (parts-cost 15)
    (tools "spanners" "screwdriver")
    (steps "Let it cool. Lay the line clear of cylinder and silencer."
      "Refit or renew shield and spacer." "Clean the cooling fins and the screen."
      "Fresh fuel of the season." "Work it hot, stop ten minutes, restart.")
    (cautions hot-parts fuel-vapour no-spark-near-fuel carbon-monoxide)
    (basis common-practice)))

(deffacts bowl-repairs "put needle, float and bowl right"
  (repair (id clean-needle-and-seat) (name "clean or replace float needle and seat") (minutes 40)
    (off carburettor bowl) (parts "float needle" "seat where it comes out" "bowl gasket")
    (parts-cost 10) (consumables "carburettor cleaner" "rag")
    (tools "screwdriver" "low-pressure air" "hand pump")
    (steps "Bowl off, pin out, float and needle out together."
      "Wash needle, seat and inlet; swab the seat with a soft stick, never metal."
      "Ringed, hard or sticky tip: new needle, and seat where it comes out."
      "Refit, hold test at 2 to 3 psi, check the float height." "Find the dirt: filter and tank.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent compressed-air eye-protection
      pressure-test-low passages-no-wire)
    (reuse
      "A bowl gasket that is whole and did not leak may go back; a torn or swollen one may not.")
    (basis common-practice))
  (repair (id set-float-level) (name "set the float level") (minutes 35) (off carburettor bowl)
    (parts "float needle" "float if plastic and wrong") (parts-cost 8)
    (tools "depth gauge" "fine pliers")
    (steps "Measure upside down with the gasket off."
      "Metal tang: bend it a little at a time, held so the needle is not pressed."
      "Plastic float: no bending; wrong needle, seat washer or float is renewed."
      "Check drop and free movement, refit, stand with the tap open: dry.")
    (cautions fuel-vapour no-spark-near-fuel)
    (reuse "A whole bowl gasket that did not leak may go back; a torn one may not.")
    (basis common-practice))
  (repair (id replace-float) (name "replace the float") (minutes 30) (off carburettor bowl)
    (parts "float" "float needle") (parts-cost 12)
    (tools "screwdriver" "depth gauge")
    (steps "Bowl off, pin out." "New float, and needle where worn; pin free in its posts."
      "Set or check the height." "Refit, tap open half an hour: dry."
      "Smell the oil: fuel may have run into it.")
    (cautions fuel-vapour no-spark-near-fuel) (reuse "A float that took in fuel does not go back.")
    (basis common-practice))
  (repair (id clear-bowl-vent) (name "clear the bowl vent") (minutes 25) (off carburettor)
    (consumables "carburettor cleaner")
    (tools "low-pressure air" "hose")
    (steps "Find both ends of the vent: throat or outside, and above the bowl."
      "Covered by a gasket: set the gaskets in order, every hole over a hole."
      "Cleaner, then low-pressure air, both ways." "No wire or drill."
      "Outside vents: refit hose or screen clear of dirt.")
    (cautions fuel-vapour gloves-solvent compressed-air eye-protection passages-no-wire)
    (basis published) (source tm-5-4210-230-14p-1)
    (place "tpub p. 743: no drills or wires in passages"))
  (repair (id clean-bowl) (name "clean bowl and jets of water and dirt") (minutes 30) (off bowl)
    (parts "bowl gasket if torn") (parts-cost 4) (consumables "carburettor cleaner")
    (tools "spanner" "low-pressure air" "clear jar")
    (steps "Bowl off; wipe out water, dirt and crust."
      "Main jet and its tube out: look through, wash, blow."
      "Run fuel through the needle into a jar until clean."
      "Dirt or water still comes: clean the tank and filter."
      "Gasket in its groove, bowl on, fill, look for leaks.")
    (cautions fuel-vapour no-spark-near-fuel gloves-solvent compressed-air eye-protection
      passages-no-wire waste-fuel)
    (reuse "A bowl gasket that is whole and did not leak may go back; a torn one may not.")
    (basis common-practice))
  (repair (id replace-bowl-gasket) (name "replace bowl gasket or drain washer") (minutes 20)
    (off bowl) (parts "bowl gasket" "bowl nut washer" "drain washer") (parts-cost 4)
    (tools "spanner" "rag")
    (steps "Bowl off, clean rim and groove." "Look for a bent rim or a burr."
      "New gasket dry in its groove; new washers." "Tighten the nut gently: the stem strips."
      "Tap open, wiped dry: a quarter of an hour.")
    (cautions fuel-vapour no-spark-near-fuel)
    (reuse "A torn, swollen or leaking gasket does not go back.")
    (basis common-practice))
  (repair (id clear-flooding) (name "clear the flooded engine") (minutes 15) (off plug)
    (parts "spark plug if it will not dry clean") (parts-cost 4)
    (tools "plug spanner" "rag")
    (steps "Switch off, tap shut, plug out, lead earthed away from the hole."
      "Choke open, throttle wide, turn over ten times, air five minutes."
      "Dry or new plug; start with choke open and throttle wide; ease back as it clears."
      "Then ask why: drill, choke stuck, needle leaking, no spark.")
    (cautions no-spark-near-fuel fuel-vapour plug-lead-off spark-test-grounded moving-parts
      stand-clear-tool carbon-monoxide) (reuse "A clean dry plug may go back; one fouled inside does not.")
    (basis common-practice))
  (repair (id change-thinned-oil) (name "change the thinned oil and stop the cause") (minutes 30)
    (consumables "engine oil" "rags")
    (tools "drain pan" "spanner")
    (steps "Do not start it. Tap shut."
      "Find and cure the cause first: needle, float, pump diaphragm, choke."
      "Plug out, turn over slowly: fuel in the cylinder can lock it and bend a rod."
      "Drain the oil, new oil to the mark; filter element dry or new."
      "Run, stop, check level and smell next day.")
    (cautions fuel-vapour no-spark-near-fuel used-oil plug-lead-off spark-test-grounded
      waste-fuel carbon-monoxide)
    (reuse "Oil with petrol in it does not go back; a paper element soaked with it is renewed.")
    (basis common-practice)))
