; Repairs of oil, leaks and cooling.
; To add a line: copy one; parts by kind, never by maker.
; check with: pullcord vet

(deffacts oil-repairs "oil repairs"
  (repair (id top-up-oil)
    (name "Bring the oil to its level")
    (minutes 6) (parts-cost 3)
    (consumables "engine oil")
    (tools "funnel")
    (steps
      "Level ground, stopped some minutes, filler wiped."
      "Right grade, small pours, wait a minute, read; stop short of the full mark."
      "Find where it went: leak, smoke, or never looked at.")
    (cautions hot-parts)
    (basis common-practice))
  (repair (id change-oil)
    (name "Change the oil")
    (minutes 20) (parts-cost 6)
    (parts "drain washer")
    (consumables "engine oil of the right grade")
    (tools "drain pan" "funnel")
    (steps
      "Run it warm, stop, lead off: warm oil drains best and carries the dirt."
      "Drain fully and wait; about a tenth stays behind all the same."
      "Drain plug with a good washer, snug and no more in aluminium."
      "Short of the book figure at first (book 650 mL, 22 US fl oz: pour 550), wait, read."
      "Bring it up between the marks in small pours; adding is easier than taking out."
      "Run a minute, look for leaks, let it settle, read again.")
    (cautions used-oil hot-parts plug-lead-off lifting-tipping aluminium-threads carbon-monoxide)
    (reuse "Drain washer if flat and unmarked.")
    (basis common-practice))
  (repair (id change-oil-twice)
    (name "Change watery oil twice")
    (minutes 35) (parts-cost 10)
    (consumables "engine oil, two fills")
    (tools "drain pan" "funnel")
    (steps
      "Drain warm, look how much water comes."
      "Cheap right-grade oil in, short of the figure; run ten minutes; drain again."
      "Short of the book figure at first (book 650 mL, 22 US fl oz: pour 550), wait, read."
      "Bring it up between the marks in small pours; adding is easier than taking out."
      "Dry the breather; then a long warm run boils off the rest.")
    (cautions used-oil hot-parts plug-lead-off lifting-tipping carbon-monoxide)
    (basis common-practice))
  (repair (id drain-excess-oil)
    (name "Take the excess oil out")
    (minutes 15) (parts-cost 5)
    (parts "air filter if soaked" "plug if fouled")
    (tools "suction pump or drain pan")
    (steps
      "Smell it first: fuel in it means a change, not a drop less."
      "Draw or drain to between the marks; look level, settled."
      "Filter box, breather tube and plug wiped dry; paper filter soaked: new one."
      "Run outdoors till the smoke is gone.")
    (cautions used-oil hot-parts carbon-monoxide)
    (reuse "Foam filter washed and oiled; soaked paper never.")
    (basis common-practice))
  (repair (id clear-tipped-oil)
    (name "Clear the tipped oil and run it clean")
    (minutes 20) (parts-cost 3)
    (parts "air filter if soaked")
    (tools "plug wrench" "rags")
    (steps
      "Upright. Plug out, lead grounded away, rag over the hole, turn it over till dry."
      "Wipe filter box and intake; level checked; dry plug in."
      "Start outdoors, half speed: white smoke for five to ten minutes, then none."
      "Show the owner which side goes up.")
    (off plug)
    (cautions plug-lead-off no-spark-near-fuel carbon-monoxide lifting-tipping hot-parts)
    (reuse "Plug cleaned; soaked paper filter never.")
    (basis common-practice))
  (repair (id fill-and-judge-damage)
    (name "Fill with oil and judge the damage")
    (minutes 30) (parts-cost 5)
    (consumables "engine oil")
    (tools "plug wrench" "funnel")
    (steps
      "Do not run it. Turn by hand with the plug out: free, tight, locked?"
      "A spoon of oil in the cylinder, oil in the sump, turn again; rock the crank for knock."
      "Free and no knock: run a minute light, listen, drain and look for glitter."
      "Knock, glitter or low gauge: go on as bearing or cylinder damage.")
    (off plug)
    (cautions plug-lead-off used-oil hot-parts carbon-monoxide)
    (reuse "Nothing that glittered.")
    (basis common-practice))
  (repair (id renew-oil-pump)
    (name "Clean strainer, renew pump or relief")
    (minutes 90) (parts-cost 40)
    (parts "pump parts" "gasket" "oil")
    (tools "feeler gauges" "oil pressure gauge")
    (steps
      "Pressure measured, level and grade right."
      "Cover or sump off; strainer washed, relief free, pump gaps gauged."
      "Fill the pump with oil, new gasket, watch the pressure at the first start.")
    (off crankcase-cover)
    (cautions used-oil plug-lead-off hot-parts aluminium-threads carbon-monoxide)
    (reuse "Gasket never.")
    (basis common-practice)))

(deffacts leak-repairs "leak and breather repairs"
  (repair (id replace-oil-seal)
    (name "Replace the oil seal")
    (minutes 60) (parts-cost 8)
    (parts "oil seal")
    (tools "seal puller" "seal driver")
    (steps
      "Crankcase pressure first: level and breather, or the new one leaks too."
      "Blade, pulley or flywheel off. Wire or string round the shaft? Burrs off."
      "Prise the seal out without touching shaft or bore."
      "Lip oiled, sleeved past the keyway, pressed in square to its depth.")
    (cautions plug-lead-off blade-edges used-oil flywheel-puller damaged-blade)
    (reuse "Seal never.")
    (basis common-practice))
  (repair (id renew-rocker-gasket)
    (name "Renew the rocker cover gasket")
    (minutes 20) (parts-cost 4)
    (parts "rocker cover gasket")
    (tools "plastic scraper")
    (steps
      "Cover off, both faces clean, cover flat."
      "New gasket dry, or the thin sealant the maker names; bolts snug, no more.")
    (off rocker-cover)
    (cautions hot-parts aluminium-threads)
    (reuse "A rubber ring if soft; paper never.")
    (basis common-practice))
  (repair (id seal-drain-or-filler)
    (name "Seal drain or filler")
    (minutes 15) (parts-cost 3)
    (parts "drain washer" "filler ring or cap")
    (tools "spanner" "drain pan")
    (steps
      "Plug and seat wiped, new washer, snug."
      "Thread torn: insert or oversize plug, chips kept out."
      "Filler: ring and cap renewed, dipstick tube bolt and ring looked at.")
    (cautions used-oil hot-parts aluminium-threads)
    (reuse "Washer if flat.")
    (basis common-practice))
  (repair (id clean-breather)
    (name "Clean or renew the breather")
    (minutes 30) (parts-cost 10)
    (parts "breather or its gasket")
    (consumables "solvent")
    (tools "feeler gauges")
    (steps
      "Off, washed, dried. Reed flat, gap right, mesh clean, drain hole open."
      "Gasket new, right way up, tube clear down to the filter box."
      "Oiled filter box and filter cleaned as well.")
    (off breather-cover)
    (cautions gloves-solvent hot-parts)
    (reuse "Breather if its reed lies flat; gasket never.")
    (basis common-practice)))

(deffacts cooling-repairs "cooling repairs"
  (repair (id clean-the-fins)
    (name "Clean fins and screen")
    (minutes 30) (parts-cost 0)
    (consumables "solvent")
    (tools "brush" "wooden stick")
    (steps
      "Housing off, cold. Brush and stick between all fins, then low air from inside outward."
      "Oily dirt: solvent, wipe, find the oil leak."
      "Screen, governor links and coil side clean; chewed wires mended."
      "All baffles back.")
    (off blower-housing)
    (cautions hot-parts plug-lead-off compressed-air eye-protection gloves-solvent recoil-spring)
    (basis common-practice))
  (repair (id replace-flywheel)
    (name "Replace the flywheel")
    (minutes 45) (parts-cost 60)
    (parts "flywheel" "flywheel key")
    (tools "flywheel puller" "torque wrench" "feeler gauges")
    (steps
      "Nut off with a proper holder, puller, never a hammer on the magnets."
      "Find the broken pieces. Taper clean and dry, new soft key, nut to the figure."
      "Coil gap set; spun by hand, nothing touches.")
    (off blower-housing)
    (cautions plug-lead-off flywheel-puller damaged-flywheel recoil-spring eye-protection)
    (reuse "A flywheel with broken or glued blades never.")
    (basis common-practice))
  (repair (id refit-shroud)
    (name "Refit shroud and baffles")
    (minutes 20) (parts-cost 12)
    (parts "shroud or baffle" "screws")
    (tools "sockets")
    (steps
      "Compare with the parts picture; fetch the missing baffle."
      "All screws in, no rub on the flywheel, seals to the head fitted.")
    (cautions plug-lead-off hot-parts moving-parts)
    (reuse "Melted parts never.")
    (basis common-practice))
  (repair (id lighten-the-load)
    (name "Lighten the work, look for hidden damage")
    (minutes 15) (parts-cost 0)
    (tools "compression gauge")
    (steps
      "Full throttle at work, tool sharp, smaller bites, free air all round, out of its box."
      "Let it idle a minute before stopping."
      "Gauge it and look at oil and plug: heat may have left its mark.")
    (cautions hot-parts carbon-monoxide refuel-cool)
    (basis common-practice)))
