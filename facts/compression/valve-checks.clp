; Checks of valves, their gear and the decompression release.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts valve-checks "valve clearances, motion, seats, guides, cam and release"
  (check (id valve-clearance-inlet) (name "intake valve clearance")
    (system compression) (kind measure) (engine cold) (minutes 15)
    (ask "What is the cold intake valve clearance?")
    (results right tight wide)
    (labels "within the figure" "tight" "wide")
    (means
      "Leave it."
      "Held off its seat when warm: low compression, spits back through the carburettor."
      "Ticks, opens late and little: weak at full speed.")
    (anyway 0.015 0.02)
    (quantity length) (unit "mm") (tolerance 0.02) (possible 0 5)
    (needs four-stroke)
    (off rocker-cover plug)
    (tools "feeler gauges")
    (steps
      "Cold engine, plug out, piston at top dead centre on compression, rocker cover off."
      "Turn on a quarter inch past the top so that the release is off its bump, if it has one."
      "Feeler between rocker and stem (side-valve: tappet and stem behind the breather cover)."
      "A light drag is right; note both valves before changing anything.")
    (mistakes
      "On the wrong stroke: the clearance seems huge or nothing."
      "Measured with the release lifting the valve: reads tight."
      "Measured warm.")
    (cautions plug-lead-off hot-parts)
    (also-called "valve lash intake" "tappet gap intake")
    (basis common-practice))
  (check (id valve-clearance-exhaust) (name "exhaust valve clearance")
    (system compression) (kind measure) (engine cold) (minutes 15)
    (ask "What is the cold exhaust valve clearance?")
    (results right tight wide)
    (labels "within the figure" "tight" "wide")
    (means
      "Leave it."
      "Held off its seat when warm: low compression, bangs in the silencer, burns the valve."
      "Ticks; an automatic release no longer lifts it, so it pulls hard.")
    (anyway 0.015 0.02)
    (quantity length) (unit "mm") (tolerance 0.02) (possible 0 5)
    (needs four-stroke)
    (off rocker-cover plug)
    (tools "feeler gauges")
    (steps
      "Cold engine, plug out, piston at top dead centre on compression, rocker cover off."
      "Turn on a quarter inch past the top so that the release is off its bump, if it has one."
      "Feeler between rocker and stem (side-valve: tappet and stem behind the breather cover)."
      "A light drag is right; note both valves before changing anything.")
    (mistakes
      "On the wrong stroke: the clearance seems huge or nothing."
      "Measured with the release lifting the valve: reads tight."
      "Measured warm.")
    (cautions plug-lead-off hot-parts)
    (also-called "valve lash exhaust" "tappet gap exhaust")
    (basis common-practice))
  (bands (id inlet-clearance-any) (check valve-clearance-inlet)
    (needs four-stroke)
    (results tight right wide) (limits 0.05 0.20) (unit "mm")
    (note "Maker figure first; most overhead-valve intakes lie at 0.08 to 0.15.")
    (basis common-practice))
  (bands (id inlet-clearance-side-valve) (check valve-clearance-inlet)
    (needs four-stroke side-valve)
    (results tight right wide) (limits 0.10 0.25) (unit "mm")
    (note "One small side-valve engine is given as 0.008 in (0.20 mm).")
    (basis common-practice))
  (bands (id exhaust-clearance-any) (check valve-clearance-exhaust)
    (needs four-stroke)
    (results tight right wide) (limits 0.07 0.25) (unit "mm")
    (note "Maker figure first; most lie at 0.10 to 0.20, exhaust wider than intake.")
    (basis common-practice))
  (bands (id exhaust-clearance-side-valve) (check valve-clearance-exhaust)
    (needs four-stroke side-valve)
    (results tight right wide) (limits 0.15 0.40) (unit "mm")
    (note "One small side-valve engine is given as 0.014 in (0.36 mm).")
    (basis common-practice))
  (check (id valve-motion) (name "valve motion")
    (system compression) (kind look) (engine stopped) (minutes 8)
    (ask "Turn it over by hand: do both valves open and shut fully?")
    (results both-full one-short-or-stuck pushrod-off)
    (labels
      "both, fully and alike"
      "one opens less or does not come back"
      "pushrod off or bent, valve does not move")
    (means
      "The valve gear moves as it should."
      "Stuck stem, worn cam lobe, weak spring or wide clearance."
      "The rod has left its seat: look why before putting it back.")
    (anyway 0.01 0.002)
    (needs four-stroke)
    (off rocker-cover plug)
    (steps
      "Lead off, plug out, rocker cover off (side-valve: tappet cover)."
      "Turn it over slowly through two turns, watch both valves rise and fall."
      "Roll each pushrod between the fingers when its valve is shut: bent ones wobble.")
    (mistakes
      "Looking at one turn only: each valve opens once in two."
      "Missing a small bump by the release, which belongs there.")
    (cautions plug-lead-off moving-parts)
    (basis common-practice))
  (check (id cam-lobe-lift) (name "cam lift compared")
    (system compression) (kind measure) (engine stopped) (minutes 10)
    (ask "What does the lower-lifting pushrod or tappet rise, in per cent of the other?")
    (results equal one-low)
    (labels "alike, or as the book says" "one rises clearly less")
    (means "The lobes are good." "That lobe or its tappet is worn away.")
    (anyway 0.006)
    (quantity ratio) (unit "%") (tolerance 3) (possible 0 150)
    (needs four-stroke)
    (off rocker-cover plug)
    (tools "dial gauge or vernier")
    (steps
      "Measure how far each pushrod (or tappet) rises from lowest to highest."
      "Set clearances first, or measure at the pushrod itself."
      "Less lift over more lift, times 100. A few tenths apart is a maker matter.")
    (mistakes
      "Comparing the lifts through unequal clearances."
      "Counting the release bump as lift.")
    (cautions plug-lead-off moving-parts)
    (basis common-practice))
  (bands (id cam-lobe-lift-any) (check cam-lobe-lift) (results one-low equal) (limits 82)
    (unit "%") (note "A third less is a worn lobe; makers may grind the two a tenth apart.")
    (basis estimate))
  (check (id valve-timing) (name "cam gear marks")
    (system compression) (kind look) (engine stopped) (minutes 45)
    (ask "Do the cam and crank gear marks line up?")
    (results right off)
    (labels "line up" "off by a tooth or more, or teeth gone")
    (means "Valve timing is right." "Wrongly put together, or the cam gear has stripped.")
    (anyway 0.003)
    (needs four-stroke)
    (off crankcase-cover)
    (steps
      "First watch both valves near the end of the exhaust stroke:"
      "around top dead centre both should be just open together."
      "If not, drain the oil, take the sump cover off and look at the gear marks.")
    (mistakes
      "Taking flywheel marks for cam marks."
      "Opening the crankcase before the quick look at the valves.")
    (cautions plug-lead-off used-oil)
    (destroys "sump gasket")
    (basis common-practice))
  (check (id valve-seat-look) (name "valves and seats, head off")
    (system compression) (kind look) (engine stopped) (minutes 30)
    (ask "With the head off: how do valve faces and seats look?")
    (results seated carboned burned-or-pitted insert-loose)
    (labels
      "even grey ring all round"
      "carbon or rust on the seat"
      "burnt, channelled or pitted"
      "seat ring loose in the head")
    (means
      "They seal."
      "Held off; may clean up."
      "Grind, or renew the valve."
      "The insert has come out of the aluminium.")
    (anyway 0.05 0.012 0.002)
    (needs four-stroke)
    (off cylinder-head)
    (tools "lamp" "paraffin")
    (steps
      "Head off. Pour a little paraffin into each port, valves shut: none must come through."
      "Look for a bright or black channel across the face."
      "Press on the seat ring with a brass drift: it must not move.")
    (mistakes "Judging by colour and not by the paraffin." "Scratching the gasket face.")
    (cautions plug-lead-off hot-parts gloves-solvent asbestos-like-dust)
    (destroys "head gasket")
    (basis common-practice))
  (check (id valve-stem-rock) (name "valve stem play")
    (system compression) (kind try) (engine stopped) (minutes 20)
    (ask "Do the valve stems rock in their guides?")
    (results snug rocks sticks)
    (labels "snug and sliding" "rocks clearly" "sticks or drags")
    (means
      "Guides are good."
      "Guide worn: oil gets in, the valve seats crooked."
      "Gum or carbon on the stem, or a guide that has moved.")
    (anyway 0.02 0.006)
    (needs four-stroke)
    (off cylinder-head)
    (tools "valve spring compressor")
    (steps
      "Valve a few millimetres open, spring off or pushed down."
      "Rock the head of the valve sideways; compare intake and exhaust."
      "Slide and turn it: it must move without dragging.")
    (mistakes "Judging with the valve shut." "Letting a valve drop into the cylinder.")
    (cautions plug-lead-off eye-protection)
    (destroys "head gasket")
    (basis common-practice))
  (check (id valve-spring-look) (name "valve springs")
    (system compression) (kind look) (engine stopped) (minutes 6)
    (ask "Are the valve springs whole and of one length?")
    (results whole broken-or-short)
    (labels "whole, equal, keepers in place" "broken, short or keeper off")
    (means "Springs are good." "Valve does not follow the cam or hangs open.")
    (anyway 0.004)
    (needs four-stroke)
    (off rocker-cover)
    (tools "lamp")
    (steps
      "Rocker cover off, look at each coil with a lamp."
      "Press each spring with a thumb: they feel alike."
      "Look at the keepers: one may have jumped.")
    (mistakes "Missing a crack in the bottom coil.")
    (cautions plug-lead-off eye-protection)
    (basis common-practice))
  (check (id decompression-works) (name "decompression release")
    (system compression) (kind try) (engine stopped) (minutes 5)
    (ask "Does the release let go when it should, and work when it should?")
    (results works stuck-open never-releases)
    (labels "works" "stays open: always bleeds" "never releases")
    (means
      "Release is good."
      "Takes the compression away while it runs or cranks."
      "Full compression against the starter: hard pull, kick, starter stalls.")
    (anyway 0.008 0.01)
    (needs decompression)
    (steps
      "Hand button: press in, pull: it should pop out at the first fire or be free to come out."
      "Automatic: rocker cover off, turn slowly; near the top a valve should lift a hair."
      "Flick it backwards: with the release out of play it should spring back.")
    (mistakes
      "Setting clearances wide: the small bump then never reaches the valve."
      "Testing the button with oil and sawdust packed round it.")
    (cautions plug-lead-off crank-kickback)
    (also-called "decomp" "compression release")
    (basis common-practice)))
