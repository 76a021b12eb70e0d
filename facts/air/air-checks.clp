; Checks on the air side: joints, gaskets, boot, reed, filter, breather tube.
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts air-leak-checks "joints between carburettor and engine"
  (check (id intake-spray) (name "spray at the intake joints") (system air)
    (ask "Running: does a little spray at the intake joints change the speed?") (kind try)
    (results no-change speed-changes)
    (labels "no change at any joint" "speed or sound changes at one spot")
    (means
      "no outside leak there, or too small to hear"
      "air leaks in at that spot") (anyway 0.04) (minutes 5)
    (tools "water mist or low-flash leak spray with straw" "extinguisher in reach")
    (steps
      "Outdoors, extinguisher ready, engine idling or at light speed."
      "Water mist first: it cannot burn. Joint by joint, shaft ends last."
      "If fuel spray must be used: a second at a time, away from muffler and spark."
      "Repeat at the same spot: it must answer twice.") (engine running)
    (cautions spray-fire hot-parts carbon-monoxide moving-parts eye-protection)
    (mistakes
      "spraying a cloud: it is sucked in by the filter and fools you"
      "spraying at the hot muffler or a sparking lead"
      "hunting engine: wait for the same answer three times")
    (also-called "vacuum leak test" "air leak spray" "carb cleaner test")
    (basis common-practice))
  (check (id intake-joint-look) (name "intake joints, gaskets and rings") (system air)
    (ask "Are the nuts tight and gaskets, rings and boot whole?") (kind look)
    (results sound loose gasket-or-ring-bad)
    (labels
      "tight, whole and in place"
      "nuts or clamp loose"
      "gasket torn or sucked in, ring lost or pinched, boot cracked")
    (means
      "joints are sound"
      "loose joint draws air"
      "draws air at that joint") (anyway 0.01 0.01) (minutes 6)
    (tools "spanner" "lamp" "straightedge")
    (steps
      "Try the nuts before taking anything off."
      "Carburettor off: look at every gasket face for a wet or dusty track."
      "Look for the O-ring: on the carburettor, in the spacer, on the floor."
      "Lay a straightedge on the flange: bowed ears leak. Bend a rubber boot.") (off carburettor)
    (engine stopped) (cautions fuel-vapour no-spark-near-fuel aluminium-threads)
    (mistakes
      "taking it off without trying the nuts"
      "not seeing the O-ring that fell off as the carburettor came away")
    (also-called "manifold gasket" "intake gasket" "carb loose")
    (basis common-practice))
  (check (id plate-joint-look) (name "spacer plate and its ring") (system air)
    (ask "Behind the spacer plate: is its O-ring or gasket there and whole?") (kind look)
    (results ring-in-place ring-lost)
    (labels "in place and whole" "lost, flat or pinched")
    (means
      "spacer joint is sound"
      "air leaks behind the plate though the carburettor side is good") (anyway 0.003) (minutes 6)
    (tools "spanner" "lamp")
    (steps
      "Take off the spacer too, not just the carburettor."
      "Groove or face on the engine side: ring there, round, not flat?"
      "Look on the floor and in the rag before ordering.") (off carburettor)
    (needs carburettor-o-ring) (engine stopped) (cautions aluminium-threads)
    (mistakes "leaving the plate on because it looks tight")
    (basis common-practice))
  (check (id intake-pipe-look) (name "intake pipe to the head") (system air)
    (ask "Is the pipe between carburettor and head whole, flat and tight at the head?")
    (kind look) (results sound cracked-or-loose)
    (labels "whole, flat, tight" "cracked, bowed, or loose at the head")
    (means "pipe is not it" "air leaks in between carburettor and head") (anyway 0.004) (minutes 6)
    (tools "spanner" "lamp" "straightedge")
    (steps
      "Try the bolts at the head before anything comes off."
      "Flex the pipe by hand: a crack opens."
      "Off: straightedge over both flanges, gasket track looked for.") (off air-box)
    (needs four-stroke) (engine stopped) (cautions hot-parts aluminium-threads)
    (mistakes
      "looking only at the carburettor end"
      "tightening one bolt hard: the flange bows") (also-called "intake manifold" "inlet elbow")
    (basis common-practice))
  (check (id carburettor-gasket-order) (name "order of gaskets and spacer") (system air)
    (ask "Do gaskets and spacer lie as on the drawing, every hole open?") (kind look)
    (results right reversed-or-missing)
    (labels
      "right way, all holes open"
      "turned round, one missing, one too many")
    (means "put together right" "a passage is covered or open to air") (anyway 0.004) (minutes 6)
    (tools "parts drawing of the engine" "lamp")
    (steps
      "Lay out gasket, spacer, gasket in the order they came off."
      "Hold each gasket to its face: every hole in the metal has one in the gasket."
      "Look for the pulse, vent and primer holes in particular.") (off carburettor)
    (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "trusting the order in which the last man left it"
      "two gaskets stuck together counted as one")
    (basis common-practice))
  (check (id reed-look) (name "reed valve") (system air)
    (ask "Do the reed petals lie flat and whole?") (kind look) (results flat open-or-chipped)
    (labels "flat, no light" "stands open, chipped or cracked")
    (means "reed seals" "crankcase blows back: spits, hard start, weak") (anyway 0.02) (minutes 8)
    (tools "lamp" "feeler gauge")
    (steps
      "Carburettor and reed block off."
      "Hold to the light: petals flat, hardly any light."
      "Lift each by finger: springs back; look for chips at the corners."
      "A chip missing has gone through the engine.") (off carburettor intake-manifold)
    (needs reed-valve) (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "turning petals over to gain a year"
      "forgetting the gasket behind the block")
    (basis common-practice)))

(deffacts air-filter-checks "filter and breather tube"
  (check (id air-filter-look) (name "air filter") (system air)
    (ask "What does the air filter look like?") (kind look)
    (results clean dirty oil-or-fuel-soaked missing-or-wrong)
    (labels
      "clean and dry (foam: lightly oiled)"
      "clogged with dirt"
      "soaked with oil or petrol"
      "missing, torn, wrong or not seated")
    (means
      "filter passes air"
      "chokes the engine: rich and weak"
      "chokes it, and tells of tipping, overfill, breather or flooding"
      "lets dust into the engine") (anyway 0.12 0.015 0.015) (minutes 2) (tools "lamp")
    (steps
      "Cover off, element out."
      "Hold paper to a lamp: light must come through."
      "Squeeze foam: drips mean too much oil or fuel. Smell it."
      "Look at the seal rim and the clean side for dust.") (off filter-element) (engine stopped)
    (cautions fuel-vapour)
    (mistakes
      "tapping a soaked paper filter and putting it back"
      "blowing paper with high pressure") (also-called "air cleaner" "filter" "element")
    (basis common-practice))
  (check (id filter-off-run) (name "short run with the filter off") (system air)
    (ask "For ten seconds without the filter: does it run better?") (kind try)
    (results no-change runs-better runs-worse)
    (labels "the same" "clearly better, less smoke" "worse, leaner")
    (means
      "filter is not it"
      "filter was choking it"
      "it was lean: the filter helped it along") (anyway 0.03 0.03) (minutes 3)
    (steps
      "Clean place, no dust, no load."
      "Element out, box shut or open as the maker allows; run ten seconds, one rev up."
      "Put the filter straight back.") (off filter-element) (engine running)
    (cautions carbon-monoxide moving-parts hot-parts)
    (mistakes
      "working on without the filter"
      "face over the throat: it may spit flame") (also-called "run without filter")
    (basis common-practice))
  (check (id dust-track-in-throat) (name "dust behind the filter") (system air)
    (ask "Wipe the clean side: is there dust in throat or box?") (kind look) (results none dust)
    (labels "clean" "dust or grit on the clean side")
    (means
      "filter seals"
      "dust goes into the engine: measure compression next") (anyway 0.03) (minutes 2)
    (tools "white rag" "lamp")
    (steps
      "Element out; wipe the clean side of the box and the carburettor mouth with a white rag."
      "Look for a track to where it gets past."
      "Grit in the throat: look at compression and oil as well.") (off air-box filter-element)
    (engine stopped)
    (mistakes "knocking dust in while taking the element out")
    (basis common-practice))
  (check (id breather-tube-look) (name "crankcase breather tube") (system air)
    (ask "Is the breather tube on at both ends, whole and open?") (kind look)
    (results on-and-clear off-or-blocked)
    (labels "on and open" "off, split or blocked")
    (means
      "tube is sound"
      "off: oil mist outside and dust in; blocked: oil pushed out") (anyway 0.01) (minutes 3)
    (tools "lamp")
    (steps
      "Follow it from the breather on the engine to the air box or carburettor."
      "Take it off, blow through with the mouth through a clean rag."
      "Bend it: split ends show.") (off air-box) (needs breather-tube) (engine stopped)
    (cautions hot-parts)
    (mistakes
      "leaving it off after work: the engine breathes dust"
      "pinching it under the shroud") (also-called "breather hose" "crankcase vent")
    (basis common-practice)))
