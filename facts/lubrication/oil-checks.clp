; Checks of the oil, leaks, crankcase vacuum and breather.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts oil-checks "oil level, looks, grade and pressure"
  (check (id oil-level) (name "oil level")
    (system lubrication) (kind look) (engine stopped) (minutes 2)
    (ask "How high is the oil, machine level?")
    (results right low none high)
    (labels "between the marks" "under the low mark" "none on the stick" "over the full mark")
    (means
      "Enough."
      "Top up; find where it went."
      "It may have run dry: turn it by hand before anything."
      "Overfilled, or fuel has run in: smell it.")
    (anyway 0.015 0.001 0.01)
    (needs four-stroke)
    (steps
      "Level ground, engine stopped some minutes."
      "Wipe the stick and put it back the way the maker says (screwed in or resting)."
      "Read twice; smell it.")
    (mistakes
      "Reading it tilted."
      "Screwing in a stick meant to rest, or the other way round."
      "Reading right after pouring.")
    (cautions hot-parts)
    (also-called "dipstick" "oil quantity")
    (basis common-practice))
  (check (id oil-look) (name "look and smell of the oil")
    (system lubrication) (kind look) (engine stopped) (minutes 2)
    (ask "How does the oil on the stick look and smell?")
    (results clean dirty-black milky thin-fuel-smell metal-glitter)
    (labels "clear to brown" "black, thick or gritty" "milky" "thin, smells of petrol" "glitters")
    (means
      "Good."
      "Old: change it."
      "Water in it."
      "Fuel has run in past needle and rings."
      "Metal: something is wearing fast.")
    (anyway 0.1 0.004 0.01 0.003)
    (needs four-stroke)
    (steps
      "A drop on white paper, look and smell."
      "Rub between gloved fingers: grit or glitter?"
      "If thin, do not run it: drain first.")
    (mistakes
      "Calling the first black of a fresh change dirty."
      "Missing a fuel smell because the tank is next to it.")
    (cautions used-oil fuel-vapour gloves-solvent)
    (also-called "milky oil" "oil colour")
    (basis common-practice))
  (check (id oil-grade-asked) (name "oil grade")
    (system lubrication) (kind ask) (engine any) (minutes 1)
    (ask "What oil was put in, and is it right for the season?")
    (results right wrong)
    (labels "right grade" "wrong grade or kind")
    (means "Grade is not it." "Too thick drags in the cold; too thin is burnt in the heat.")
    (anyway 0.08)
    (needs four-stroke)
    (steps
      "Ask for the can. Single-grade 30 suits warm weather; thinner or multigrade under 5 degC."
      "The maker book comes first.")
    (mistakes "Taking hydraulic, gear or two-stroke oil for engine oil.")
    (basis published) (source tm-5-4240-501-14p) (place "p. 285, oil by temperature"))
  (check (id oil-pressure) (name "oil pressure")
    (system lubrication) (kind measure) (engine hot) (minutes 15)
    (ask "What is the oil pressure, warm, at full speed?")
    (results holds low)
    (labels "holds" "low")
    (means
      "Pump and bearings are good."
      "Little oil, thin oil, pump, strainer, relief valve or worn bearings.")
    (anyway 0.04)
    (quantity pressure) (unit "psi") (tolerance 2) (possible 0 150)
    (needs pressure-oil)
    (tools "oil pressure gauge")
    (steps
      "Level and grade right first."
      "Gauge in place of the pressure switch. Warm, full speed, no load."
      "Stop at once if there is next to nothing.")
    (mistakes "Measuring cold: reads high.")
    (cautions hot-parts moving-parts carbon-monoxide noise-hearing)
    (basis common-practice))
  (bands (id oil-pressure-any) (check oil-pressure)
    (needs pressure-oil)
    (results low holds) (limits 15) (unit "psi")
    (note "Maker figure first; hot at full speed most show 20 to 50.")
    (basis estimate)))

(deffacts leak-and-breather-checks "oil leaks, crankcase vacuum and breather"
  (check (id oil-leak-where) (name "where oil leaks")
    (system lubrication) (kind look) (engine running) (minutes 18)
    (ask "Where does the oil come from?")
    (results dry rocker-cover crank-seal drain-or-filler breather)
    (labels
      "dry"
      "rocker cover"
      "behind flywheel or drive"
      "drain or filler"
      "breather or air filter box")
    (means
      "No leak."
      "Cover gasket or bolts."
      "Crank seal."
      "Plug, washer or cap."
      "Breather, overfill, or blow-by.")
    (anyway 0.03 0.02 0.03 0.02)
    (needs four-stroke)
    (steps
      "Wash and dry it, chalk or paper round the joints, run ten minutes, stop, then look."
      "The highest wet place is the leak: air from the fan carries oil back."
      "Level too high or crankcase pressure pushes oil out of good seals: look at those first.")
    (mistakes "New seals on an engine with a stuck breather." "Hunting on a dirty engine.")
    (cautions hot-parts used-oil moving-parts carbon-monoxide)
    (basis common-practice))
  (check (id crankcase-vacuum) (name "crankcase vacuum")
    (system lubrication) (kind measure) (engine running) (minutes 10)
    (ask "What vacuum does the crankcase show, warm, full speed, no load?")
    (results vacuum none-or-pressure)
    (labels "vacuum" "little, none, or pressure")
    (means
      "Breather, seals and rings are good."
      "Breather stuck, blow-by, a leaking seal, or a blocked exhaust.")
    (anyway 0.08)
    (quantity pressure) (unit "inH2O") (tolerance 0.5) (possible -100 100)
    (needs four-stroke)
    (tools "water manometer" "filler adapter")
    (steps
      "Water gauge on the filler with a tight adapter and a clamp on the hose."
      "Start with the hose clamped, open it at speed, clamp before stopping."
      "Write pressure as a minus figure.")
    (mistakes
      "Stopping with the hose open: the water goes into the engine."
      "A leaking adapter: reads nothing.")
    (cautions moving-parts hot-parts carbon-monoxide noise-hearing)
    (also-called "manometer test")
    (basis common-practice))
  (bands (id crankcase-vacuum-any) (check crankcase-vacuum)
    (needs four-stroke)
    (results none-or-pressure vacuum) (limits 4) (unit "inH2O")
    (note "At 3200 to 3750 rpm. Some makers ask only for a slight vacuum.")
    (basis common-practice))
  (check (id breather-valve) (name "breather valve")
    (system lubrication) (kind try) (engine stopped) (minutes 10)
    (ask "Does the breather let air out and not back in?")
    (results works stuck)
    (labels "one way only" "both ways, or blocked")
    (means "Breather is good." "Crankcase pressure: leaks, oil in the air filter, smoke.")
    (anyway 0.01)
    (needs four-stroke)
    (off breather-cover)
    (steps
      "Breather off, clean with solvent, dry."
      "Suck and blow through a clean hose: out of the engine yes, in no."
      "Look that the reed lies flat, its gap is right and the drain hole is open.")
    (mistakes "Putting it back upside down: it drains no oil.")
    (cautions gloves-solvent hot-parts)
    (also-called "pcv" "crankcase breather")
    (basis common-practice)))
