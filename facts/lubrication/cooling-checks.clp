; Checks of the cooling air and of heat.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts cooling-checks "cooling checks"
  (check (id cooling-fins) (name "cooling fins and screen")
    (system lubrication) (kind look) (engine stopped) (minutes 8)
    (ask "Are fins and air screen clean, with the housing off?")
    (results clean clogged)
    (labels "clean" "packed with grass, dust or a nest")
    (means "Air gets through." "It overheats, first at the exhaust side.")
    (anyway 0.025)
    (off blower-housing)
    (tools "lamp")
    (steps
      "Blower housing off. Look between all fins with a lamp, the exhaust side first."
      "Screen and governor side as well; note a nest or chewed wires.")
    (mistakes "Blowing dirt deeper from outside." "Looking at the screen only.")
    (cautions hot-parts plug-lead-off recoil-spring)
    (also-called "fins")
    (basis common-practice))
  (check (id flywheel-fan-look) (name "flywheel fan")
    (system lubrication) (kind look) (engine stopped) (minutes 6)
    (ask "Are all fan blades of the flywheel whole, and the flywheel without a crack?")
    (results whole blades-broken)
    (labels "all there, no crack" "blades broken or missing, or a crack")
    (means "Fan is good." "Hot, out of balance, or about to burst: the flywheel is scrap.")
    (anyway 0.003)
    (off blower-housing)
    (steps
      "Housing off. Turn the flywheel a full turn, count the blades."
      "Look for cracks at their roots, at hub, keyway and magnets, and for the missing piece.")
    (mistakes "Running it with broken blades, or to see whether a crack matters.")
    (cautions plug-lead-off damaged-flywheel)
    (basis common-practice))
  (check (id shroud-look) (name "shrouds and air baffles")
    (system lubrication) (kind look) (engine stopped) (minutes 3)
    (ask "Are all shrouds and baffles in place?")
    (results fitted missing-or-loose)
    (labels "all fitted and tight" "missing, loose or melted")
    (means "The air goes where it should." "The air takes the short way: hot cylinder.")
    (anyway 0.015)
    (steps
      "Look behind and under the cylinder for the small baffles."
      "Compare with the parts picture.")
    (mistakes "Leaving the small inner baffle on the bench.")
    (cautions hot-parts moving-parts)
    (basis common-practice))
  (check (id head-temperature) (name "head temperature")
    (system lubrication) (kind measure) (engine hot) (minutes 15)
    (ask "How hot is the head at the plug after hard work?")
    (results normal hot)
    (labels "as it should be" "too hot")
    (means "Cooling is good." "Air path, lean mixture, spark timing, oil or overload.")
    (anyway 0.04)
    (quantity temperature) (unit "degC") (tolerance 10) (possible -30 500)
    (tools "thermocouple or infrared thermometer")
    (steps
      "Full work for ten minutes, then at once."
      "Probe under the plug washer or held on the head by the plug."
      "Infrared on a black spot between fins: same spot each time.")
    (mistakes "Infrared on bright aluminium: reads far too low." "Measuring after it has idled.")
    (cautions hot-parts moving-parts carbon-monoxide noise-hearing)
    (basis common-practice))
  (bands (id head-temperature-any) (check head-temperature)
    (results normal hot) (limits 210) (unit "degC")
    (note "Rough limit at the plug seat in full work; maker figure first.")
    (basis estimate)))
